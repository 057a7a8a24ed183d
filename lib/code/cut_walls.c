/* Holes and notches in studs and top plates: IRC R602.6 and R602.6.1. */
#include <math.h>

#include "code/cuts.h"

static void stud_notch(const frame_code_hole_in *in, const frame_code_cuts_row *rule, frame_code_hole_out *out,
                       frame_working *w) {
    FRAME_GIVEN(w, d, out->depth_in, "in", "depth of the stud");
    FRAME_TABLE(w, R_n, rule->notch, "", "deepest notch, part of the depth", out->source);
    FRAME_STEP(w, n_max, R_n * d, "in", "deepest notch", out->source);
    const int fits = frame_cut_within(in->notch_depth_in, n_max), bears = rule->member == FRAME_CUT_BEARING_STUD;
    out->limit_notch_depth_in = n_max;
    frame_cut_verdict(out, fits ? FRAME_CODE_ALLOWED : FRAME_CODE_NOT_ALLOWED,
                      bears  ? fits ? "within a quarter of the depth"
                                    : "deeper than a quarter of the depth of a stud in a bearing or outer wall"
                      : fits ? "within 40 percent of the depth"
                             : "deeper than 40 percent of the depth",
                      w);
}

/* Where across the stud the hole may be, when not where it is. */
static int keeps_edge(const frame_code_hole_in *in, const frame_code_cuts_row *rule, frame_code_hole_out *out) {
    const double offset = in->offset_in == FRAME_NOT_GIVEN ? out->depth_in / 2 : in->offset_in;
    const double low = rule->edge + in->diameter_in / 2, high = out->depth_in - low;
    if (frame_cut_within(low, offset) && frame_cut_within(offset, high)) return 1;
    if (low <= high + 1e-9) out->nearest_offset_in = offset < low ? low : high;
    return 0;
}

static void doubled_stud(const frame_code_hole_in *in, frame_code_hole_out *out, frame_working *w) {
    out->needs = "a second stud nailed to it, full height; no more than two such studs in a row";
    frame_cut_verdict(out, in->doubled ? FRAME_CODE_ALLOWED : FRAME_CODE_ALLOWED_DOUBLED,
                      "over 40 percent and within 60 percent of the depth of a stud in a bearing or outer wall", w);
}

/* Why no such hole may be in this stud, wherever across it; NULL when it may. */
static const char *never(const frame_code_hole_in *in, double most, double most_doubled) {
    if (!frame_cut_within(in->diameter_in, most_doubled)) return "the hole is larger than 60 percent of the depth";
    if (in->beside_notch) return "a notch lies in the same section";
    if (in->successive > 2 && !frame_cut_within(in->diameter_in, most))
        return "more than two doubled studs in a row would be bored over 40 percent";
    return NULL;
}

static void stud_hole(const frame_code_hole_in *in, const frame_code_cuts_row *rule, frame_code_hole_out *out,
                      frame_working *w) {
    const int bears = rule->member == FRAME_CUT_BEARING_STUD;
    FRAME_GIVEN(w, d, out->depth_in, "in", "depth of the stud");
    FRAME_GIVEN(w, D, in->diameter_in, "in", "diameter of the hole");
    FRAME_TABLE(w, R_D, rule->hole, "", "largest hole, part of the depth", out->source);
    FRAME_STEP(w, D_max, R_D * d, "in", "largest hole", out->source);
    FRAME_TABLE(w, R_D2, rule->hole_doubled, "", "largest hole in a doubled stud, part of the depth", out->source);
    FRAME_STEP(w, D_max2, R_D2 * d, "in", "largest hole in a doubled stud", out->source);
    out->limit_diameter_in = in->doubled ? D_max2 : D_max;
    out->edge_in = rule->edge;
    const char *const why = never(in, D_max, D_max2);
    if (why)
        frame_cut_verdict(out, FRAME_CODE_NOT_ALLOWED, why, w);
    else if (!keeps_edge(in, rule, out))
        frame_cut_verdict(out, FRAME_CODE_NOT_ALLOWED, "the hole comes nearer than 5/8 in to a face of the stud", w);
    else if (!frame_cut_within(D, D_max))
        doubled_stud(in, out, w);
    else
        frame_cut_verdict(out, FRAME_CODE_ALLOWED,
                          bears ? "within 40 percent of the depth" : "within 60 percent of the depth", w);
}

frame_status frame_cut_stud(const frame_code_hole_in *in, const frame_code_cuts_row *rule, frame_code_hole_out *out,
                            frame_working *w) {
    FRAME_CODE_WARN(out, PROTECT);
    if (in->bearing) FRAME_CODE_WARN(out, SHORE);
    if (in->cut == FRAME_CODE_CUT_NOTCH) {
        if (in->notch_depth_in == FRAME_NOT_GIVEN)
            return frame_cut_required("notch_depth_in", "the depth of the notch");
        stud_notch(in, rule, out, w);
        return FRAME_OK;
    }
    if (in->diameter_in == FRAME_NOT_GIVEN) return frame_cut_required("diameter_in", "the diameter of the hole");
    stud_hole(in, rule, out, w);
    return FRAME_OK;
}

frame_status frame_cut_plate(const frame_code_hole_in *in, const frame_code_cuts_row *rule, frame_code_hole_out *out,
                             frame_working *w) {
    const int hole = in->cut == FRAME_CODE_CUT_HOLE;
    const double cut = hole ? in->diameter_in : in->notch_depth_in;
    if (cut == FRAME_NOT_GIVEN)
        return frame_cut_required(hole ? "diameter_in" : "notch_depth_in", "how much of the plate's width is cut");
    FRAME_CODE_WARN(out, PROTECT);
    FRAME_GIVEN(w, b, out->depth_in, "in", "width of the plate");
    FRAME_TABLE(w, R, rule->hole, "", "what may be cut without a tie, part of the width", out->source);
    FRAME_STEP(w, c_max, R * b, "in", "largest cut without a tie", out->source);
    if (hole)
        out->limit_diameter_in = c_max;
    else
        out->limit_notch_depth_in = c_max;
    if (!in->bearing && !in->exterior)
        frame_cut_verdict(out, FRAME_CODE_ALLOWED, "the code asks for ties in bearing and outer walls only", w);
    else if (frame_cut_within(cut, c_max))
        frame_cut_verdict(out, FRAME_CODE_ALLOWED, "no more than half of the plate's width is cut", w);
    else if (in->sheathed)
        frame_cut_verdict(out, FRAME_CODE_ALLOWED, "the whole side of the wall is covered by wood structural panels",
                          w);
    else {
        out->needs =
            "a galvanised steel tie across the cut, 0.054 in (16 gauge) thick and 1-1/2 in wide, 6 in past it on each "
            "side, "
            "with eight 10d (0.148 x 1-1/2 in) nails on each side";
        frame_cut_verdict(out, FRAME_CODE_ALLOWED_TIE, "more than half of the plate's width is cut", w);
    }
    return FRAME_OK;
}
