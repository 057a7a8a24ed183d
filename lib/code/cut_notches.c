/* Notches in sawn joists, beams, ceiling joists and rafters, and in rafter tails: IRC R502.8.1, R802.7.1 and
 * R802.7.1.1. */
#include <math.h>

#include "base/error.h"
#include "code/cuts.h"

/* How far the middles of the notch and a hole must be apart; 0 without a hole. */
static double reach_of(const frame_code_hole_in *in, double gap) {
    if (in->other_position_in == FRAME_NOT_GIVEN || in->other_cut != FRAME_CODE_CUT_HOLE) return 0;
    return (in->notch_length_in + in->other_length_in) / 2 + gap;
}

/* A notch must lie in an outer third of the span, whole. */
static int in_middle_third(const frame_code_hole_in *in, double length) {
    const double from = in->position_in - length / 2, to = in->position_in + length / 2, third = in->span_in / 3;
    return !frame_cut_within(to, third) && !frame_cut_within(2 * third, from);
}

/* The nearest place in an outer third, away from the hole. */
static double place_along(const frame_code_hole_in *in, double reach) {
    const double half = in->notch_length_in / 2, third = in->span_in / 3;
    frame_cut_stretch thirds[2] = {{0, third - half}, {2 * third + half, in->span_in}}, left[4];
    if (third < half) return FRAME_NOT_GIVEN;
    if (!(reach > 0)) return frame_cut_nearest(thirds, 2, in->position_in);
    return frame_cut_nearest(left, frame_cut_keep_away(thirds, 2, in->other_position_in, reach, left), in->position_in);
}

static frame_status notch_required(const frame_code_hole_in *in) {
    if (in->notch_depth_in == FRAME_NOT_GIVEN) return frame_cut_required("notch_depth_in", "the depth of the notch");
    if (in->thickness_in == FRAME_NOT_GIVEN)
        return frame_cut_required("thickness_in", "the thickness of the member, or its size");
    if (in->end_notch) return FRAME_OK;
    if (in->notch_length_in == FRAME_NOT_GIVEN) return frame_cut_required("notch_length_in", "the length of the notch");
    if (in->span_in == FRAME_NOT_GIVEN) return frame_cut_required("span_in", "the span of the member");
    if (in->position_in == FRAME_NOT_GIVEN) return frame_cut_required("position_in", "the middle of the notch");
    if (in->other_position_in != FRAME_NOT_GIVEN && in->other_length_in == FRAME_NOT_GIVEN)
        return frame_cut_required("other_length_in", "how long the other cut is");
    return frame_cut_within_span(in);
}

static void end_notch(const frame_code_hole_in *in, frame_code_hole_out *out, frame_working *w) {
    const int fits = frame_cut_within(in->notch_depth_in, out->limit_notch_depth_in);
    frame_cut_verdict(
        out, fits ? FRAME_CODE_ALLOWED : FRAME_CODE_NOT_ALLOWED,
        fits ? "within a quarter of the depth at the end" : "deeper than a quarter of the depth at the end", w);
}

/* Why the notch may not be where it is; NULL when it may. */
static const char *misplaced(const frame_code_hole_in *in, double reach, frame_code_hole_out *out) {
    const int middle = in_middle_third(in, in->notch_length_in);
    const int near = reach > 0 && !frame_cut_within(reach, fabs(in->position_in - in->other_position_in));
    if (!middle && !near) return NULL;
    out->nearest_position_in = place_along(in, reach);
    if (middle) out->limit_notch_depth_in = 0;
    return middle ? "in the middle third of the span" : "nearer than 2 in to a hole";
}

frame_status frame_cut_joist_notch(const frame_code_hole_in *in, const frame_code_cuts_row *rule,
                                   frame_code_hole_out *out, frame_working *w) {
    const frame_status status = notch_required(in);
    if (status) return status;
    FRAME_GIVEN(w, d, out->depth_in, "in", "depth of the member");
    FRAME_TABLE(w, R_n, in->end_notch ? rule->notch_end : rule->notch, "", "deepest notch, part of the depth",
                out->source);
    FRAME_STEP(w, n_max, R_n * d, "in", "deepest notch", out->source);
    FRAME_TABLE(w, R_l, rule->notch_length, "", "longest notch, part of the depth", out->source);
    FRAME_STEP(w, l_max, R_l * d, "in", "longest notch", out->source);
    out->limit_notch_depth_in = n_max;
    if (in->end_notch) {
        end_notch(in, out, w);
        return FRAME_OK;
    }
    out->limit_notch_length_in = l_max;
    const char *why = NULL;
    if (in->side == FRAME_CODE_SIDE_BOTTOM && in->thickness_in >= 3.5 - 1e-9) {
        out->limit_notch_depth_in = 0;
        why = "members of 4 in nominal and thicker have no notch in the tension side but at their ends";
    } else if (!frame_cut_within(in->notch_depth_in, n_max)) {
        why = "deeper than a sixth of the depth";
    } else if (!frame_cut_within(in->notch_length_in, l_max)) {
        why = "longer than a third of the depth";
    } else {
        why = misplaced(in, reach_of(in, rule->gap), out);
    }
    frame_cut_verdict(out, why ? FRAME_CODE_NOT_ALLOWED : FRAME_CODE_ALLOWED,
                      why ? why : "within a sixth of the depth, a third of it long, and in an outer third of the span",
                      w);
    return FRAME_OK;
}

frame_status frame_cut_tail(const frame_code_hole_in *in, frame_code_hole_out *out, frame_working *w) {
    if (in->cut != FRAME_CODE_CUT_NOTCH)
        return frame_fail(FRAME_NO_VALUE, "cut", "hole", "notch",
                          "cut: R802.7.1.1 is about notches in a rafter's tail; a hole there is a rafter's hole");
    if (in->notch_depth_in == FRAME_NOT_GIVEN) return frame_cut_required("notch_depth_in", "the depth of the notch");
    if (in->tail_in == FRAME_NOT_GIVEN) return frame_cut_required("tail_in", "the length of the tail");
    FRAME_GIVEN(w, d, out->depth_in, "in", "depth of the rafter");
    FRAME_TABLE(w, d_least, 3.5, "in", "what a notched tail must leave", out->source);
    FRAME_STEP(w, n_max, fmax(d - d_least, 0), "in", "deepest notch of the tail", out->source);
    out->limit_notch_depth_in = n_max;
    if (in->tail_in > 24 + 1e-9)
        frame_cut_verdict(out, FRAME_CODE_NOT_ALLOWED, "the tail is longer than 24 in", w);
    else if (!frame_cut_within(in->notch_depth_in, n_max))
        frame_cut_verdict(out, FRAME_CODE_NOT_ALLOWED, "less than 3-1/2 in of the rafter is left", w);
    else
        frame_cut_verdict(out, FRAME_CODE_ALLOWED, "3-1/2 in or more is left of a tail of 24 in at most", w);
    return FRAME_OK;
}
