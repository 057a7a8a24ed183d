/* Holes and notches in sawn joists, beams, ceiling joists and rafters: IRC R502.8.1, R802.7.1 and R802.7.1.1. */
#include <math.h>

#include "base/error.h"
#include "code/cuts.h"

/* The nearest place across the depth that keeps the edges; not given when there is none or the place is good. */
static void nearest_offset(double offset, double radius, double edge, frame_code_hole_out *out) {
    const double low = edge + radius, high = out->depth_in - edge - radius;
    if (low > high + 1e-9) return;
    if (!frame_cut_within(low, offset)) out->nearest_offset_in = low;
    if (!frame_cut_within(offset, high)) out->nearest_offset_in = high;
}

/* The nearest place along the member that keeps the gap to the other cut. */
static void nearest_position(const frame_code_hole_in *in, double reach, frame_code_hole_out *out) {
    const double back = in->other_position_in - reach, on = in->other_position_in + reach;
    const int may_back = back >= 0, may_on = in->span_in == FRAME_NOT_GIVEN || on <= in->span_in;
    if (!may_back && !may_on) return;
    out->nearest_position_in = may_back && (!may_on || in->position_in < in->other_position_in) ? back : on;
}

/* How far apart the middles of two cuts must be; 0 when no other was told of. */
static double reach_of(const frame_code_hole_in *in, double length, double gap) {
    if (in->other_position_in == FRAME_NOT_GIVEN) return 0;
    return length / 2 + (in->other_length_in == FRAME_NOT_GIVEN ? 0 : in->other_length_in) / 2 + gap;
}

frame_status frame_cut_joist_hole(const frame_code_hole_in *in, const frame_code_cuts_row *rule,
                                  frame_code_hole_out *out, frame_working *w) {
    if (in->diameter_in == FRAME_NOT_GIVEN) return frame_cut_required("diameter_in", "the diameter of the hole");
    if (in->other_position_in != FRAME_NOT_GIVEN &&
        (in->position_in == FRAME_NOT_GIVEN || in->other_length_in == FRAME_NOT_GIVEN))
        return frame_cut_required(in->position_in == FRAME_NOT_GIVEN ? "position_in" : "other_length_in",
                                  "where both cuts lie and how long the other is");
    FRAME_GIVEN(w, d, out->depth_in, "in", "depth of the member");
    FRAME_GIVEN(w, D, in->diameter_in, "in", "diameter of the hole");
    FRAME_TABLE(w, E, rule->edge, "in", "least distance to the edges", out->source);
    FRAME_TABLE(w, R_D, rule->hole, "", "largest hole, part of the depth", out->source);
    FRAME_STEP(w, D_max, fmax(fmin(R_D * d, d - 2 * E), 0), "in", "largest hole that keeps to both", out->source);
    FRAME_GIVEN(w, y, in->offset_in == FRAME_NOT_GIVEN ? d / 2 : in->offset_in, "in",
                "its middle above the lower edge");
    const double reach = reach_of(in, D, rule->gap);
    out->limit_diameter_in = D_max;
    out->edge_in = E;
    if (!frame_cut_within(D, D_max)) {
        frame_cut_verdict(
            out, FRAME_CODE_NOT_ALLOWED,
            "the hole is larger than a third of the depth, or leaves less than 2 in to an edge wherever it is", w);
        return FRAME_OK;
    }
    nearest_offset(y, D / 2, E, out);
    if (out->nearest_offset_in != FRAME_NOT_GIVEN) {
        frame_cut_verdict(out, FRAME_CODE_NOT_ALLOWED, "the hole comes nearer than 2 in to an edge", w);
        return FRAME_OK;
    }
    if (reach > 0 && !frame_cut_within(reach, fabs(in->position_in - in->other_position_in))) {
        nearest_position(in, reach, out);
        frame_cut_verdict(out, FRAME_CODE_NOT_ALLOWED, "the hole comes nearer than 2 in to another hole or notch", w);
        return FRAME_OK;
    }
    frame_cut_verdict(out, FRAME_CODE_ALLOWED, "within a third of the depth and 2 in from the edges and other cuts", w);
    return FRAME_OK;
}

/* A notch must lie in an outer third of the span, whole. */
static int in_middle_third(const frame_code_hole_in *in, double length) {
    const double from = in->position_in - length / 2, to = in->position_in + length / 2, third = in->span_in / 3;
    return !frame_cut_within(to, third) && !frame_cut_within(2 * third, from);
}

static void out_of_the_middle(const frame_code_hole_in *in, double length, frame_code_hole_out *out) {
    const double third = in->span_in / 3;
    const double left = third - length / 2, right = 2 * third + length / 2;
    if (left < 0) return;
    out->nearest_position_in = in->position_in <= in->span_in / 2 ? left : right;
}

static frame_status notch_required(const frame_code_hole_in *in) {
    if (in->notch_depth_in == FRAME_NOT_GIVEN) return frame_cut_required("notch_depth_in", "the depth of the notch");
    if (in->thickness_in == FRAME_NOT_GIVEN)
        return frame_cut_required("thickness_in", "the thickness of the member, or its size");
    if (in->end_notch) return FRAME_OK;
    if (in->notch_length_in == FRAME_NOT_GIVEN) return frame_cut_required("notch_length_in", "the length of the notch");
    if (in->span_in == FRAME_NOT_GIVEN) return frame_cut_required("span_in", "the span of the member");
    if (in->position_in == FRAME_NOT_GIVEN) return frame_cut_required("position_in", "the middle of the notch");
    if (in->position_in > in->span_in)
        return frame_fail(FRAME_IMPOSSIBLE, "position_in", frame_code_number(in->position_in).text, "within the span",
                          "position_in: lies beyond the span");
    return FRAME_OK;
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
        const int fits = frame_cut_within(in->notch_depth_in, n_max);
        frame_cut_verdict(
            out, fits ? FRAME_CODE_ALLOWED : FRAME_CODE_NOT_ALLOWED,
            fits ? "within a quarter of the depth at the end" : "deeper than a quarter of the depth at the end", w);
        return FRAME_OK;
    }
    out->limit_notch_length_in = l_max;
    if (in->side == FRAME_CODE_SIDE_BOTTOM && in->thickness_in >= 3.5 - 1e-9) {
        out->limit_notch_depth_in = 0;
        frame_cut_verdict(out, FRAME_CODE_NOT_ALLOWED,
                          "members of 4 in nominal and thicker have no notch in the tension side but at their ends", w);
    } else if (!frame_cut_within(in->notch_depth_in, n_max)) {
        frame_cut_verdict(out, FRAME_CODE_NOT_ALLOWED, "deeper than a sixth of the depth", w);
    } else if (!frame_cut_within(in->notch_length_in, l_max)) {
        frame_cut_verdict(out, FRAME_CODE_NOT_ALLOWED, "longer than a third of the depth", w);
    } else if (in_middle_third(in, in->notch_length_in)) {
        out->limit_notch_depth_in = 0;
        out_of_the_middle(in, in->notch_length_in, out);
        frame_cut_verdict(out, FRAME_CODE_NOT_ALLOWED, "in the middle third of the span", w);
    } else {
        frame_cut_verdict(out, FRAME_CODE_ALLOWED,
                          "within a sixth of the depth, a third of it long, and in an outer third of the span", w);
    }
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
