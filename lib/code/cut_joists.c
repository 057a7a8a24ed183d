/* Holes in sawn joists, beams, ceiling joists and rafters: IRC R502.8.1 and R802.7.1. */
#include <math.h>

#include "base/error.h"
#include "code/cuts.h"

/* How far apart the middles of the hole and the other cut must be; 0 when no other was told of. */
static double reach_of(const frame_code_hole_in *in, double gap) {
    return in->other_position_in == FRAME_NOT_GIVEN ? 0 : (in->diameter_in + in->other_length_in) / 2 + gap;
}

static frame_status hole_required(const frame_code_hole_in *in) {
    if (in->diameter_in == FRAME_NOT_GIVEN) return frame_cut_required("diameter_in", "the diameter of the hole");
    if (in->other_position_in != FRAME_NOT_GIVEN &&
        (in->position_in == FRAME_NOT_GIVEN || in->other_length_in == FRAME_NOT_GIVEN))
        return frame_cut_required(in->position_in == FRAME_NOT_GIVEN ? "position_in" : "other_length_in",
                                  "where both cuts lie and how long the other is");
    return frame_cut_within_span(in);
}

/* Where along the member the hole may be, near the other cut; not where it keeps away from it already. */
static double place_along(const frame_code_hole_in *in, double reach) {
    const frame_cut_stretch whole = {0, in->span_in == FRAME_NOT_GIVEN ? 1e9 : in->span_in};
    frame_cut_stretch left[2];
    return frame_cut_nearest(left, frame_cut_keep_away(&whole, 1, in->other_position_in, reach, left), in->position_in);
}

/* Holds where and y against what is allowed; says the nearest place that keeps both, if there is one. */
static const char *misplaced(const frame_code_hole_in *in, double y, double reach, frame_code_hole_out *out) {
    const frame_cut_stretch across = {out->edge_in + in->diameter_in / 2,
                                      out->depth_in - out->edge_in - in->diameter_in / 2};
    const int near_edge = !frame_cut_within(across.from, y) || !frame_cut_within(y, across.to);
    const int near_other = reach > 0 && !frame_cut_within(reach, fabs(in->position_in - in->other_position_in));
    const double along = near_other ? place_along(in, reach) : FRAME_NOT_GIVEN;
    if (!near_other || along != FRAME_NOT_GIVEN) {
        out->nearest_position_in = along;
        if (near_edge) out->nearest_offset_in = frame_cut_nearest(&across, 1, y);
    }
    return near_edge ? "the hole comes nearer than 2 in to an edge"
                     : (near_other ? "the hole comes nearer than 2 in to another hole or notch" : NULL);
}

frame_status frame_cut_joist_hole(const frame_code_hole_in *in, const frame_code_cuts_row *rule,
                                  frame_code_hole_out *out, frame_working *w) {
    const frame_status status = hole_required(in);
    if (status) return status;
    FRAME_GIVEN(w, d, out->depth_in, "in", "depth of the member");
    FRAME_GIVEN(w, D, in->diameter_in, "in", "diameter of the hole");
    FRAME_TABLE(w, E, rule->edge, "in", "least distance to the edges", out->source);
    FRAME_TABLE(w, R_D, rule->hole, "", "largest hole, part of the depth", out->source);
    FRAME_STEP(w, D_max, fmax(fmin(R_D * d, d - 2 * E), 0), "in", "largest hole that keeps to both", out->source);
    FRAME_GIVEN(w, y, in->offset_in == FRAME_NOT_GIVEN ? d / 2 : in->offset_in, "in",
                "its middle above the lower edge");
    out->limit_diameter_in = D_max;
    out->edge_in = E;
    if (!frame_cut_within(D, D_max)) {
        frame_cut_verdict(
            out, FRAME_CODE_NOT_ALLOWED,
            "the hole is larger than a third of the depth, or leaves less than 2 in to an edge wherever it is", w);
        return FRAME_OK;
    }
    const char *const why = misplaced(in, y, reach_of(in, rule->gap), out);
    frame_cut_verdict(out, why ? FRAME_CODE_NOT_ALLOWED : FRAME_CODE_ALLOWED,
                      why ? why : "within a third of the depth and 2 in from the edges and other cuts", w);
    return FRAME_OK;
}
