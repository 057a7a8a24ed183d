/* Holes in I-joists and engineered lumber: only by the maker's rule, as the caller gives it (IRC R502.8.2, R802.7.2).
 */
#include <math.h>

#include "base/error.h"
#include "code/cuts.h"

static frame_status required(const frame_code_hole_in *in) {
    const char *const name = frame_word_text("code_member", in->member);
    if (in->cut == FRAME_CODE_CUT_NOTCH)
        return frame_fail(FRAME_REFUSED, "cut", "notch", "a hole by the maker's rule",
                          "cut: %s is never notched but as its maker or a designer allows", name);
    if (in->diameter_in == FRAME_NOT_GIVEN) return frame_cut_required("diameter_in", "the diameter of the hole");
    if (in->maker_diameter_in == FRAME_NOT_GIVEN || in->maker_edge_in == FRAME_NOT_GIVEN ||
        in->maker_end_in == FRAME_NOT_GIVEN)
        return frame_fail(FRAME_REFUSED, "maker_diameter_in", "",
                          "maker_diameter_in, maker_edge_in and maker_end_in from the maker's sheet",
                          "maker_diameter_in: %s may be bored only as its maker allows: give the maker's largest hole, "
                          "distance to the edges and distance to a bearing",
                          name);
    if (in->position_in == FRAME_NOT_GIVEN) return frame_cut_required("position_in", "the middle of the hole");
    if (in->span_in == FRAME_NOT_GIVEN) return frame_cut_required("span_in", "the span of the member");
    return frame_cut_within_span(in);
}

/* Why the hole may not be where it is; NULL when it may. Says the nearest place that keeps edges and ends, if there is
 * one. */
static const char *misplaced(const frame_code_hole_in *in, double y, frame_code_hole_out *out) {
    const double edge = in->maker_edge_in + in->diameter_in / 2, end = in->maker_end_in + in->diameter_in / 2;
    const frame_cut_stretch across = {edge, out->depth_in - edge}, along = {end, in->span_in - end};
    const int near_edge = !frame_cut_within(across.from, y) || !frame_cut_within(y, across.to);
    const int near_end = !frame_cut_within(along.from, in->position_in) || !frame_cut_within(in->position_in, along.to);
    if (frame_cut_within(across.from, across.to) && frame_cut_within(along.from, along.to)) {
        if (near_edge) out->nearest_offset_in = frame_cut_nearest(&across, 1, y);
        if (near_end) out->nearest_position_in = frame_cut_nearest(&along, 1, in->position_in);
    }
    return near_edge ? "nearer to an edge or flange than the maker allows"
                     : (near_end ? "nearer to a bearing than the maker allows" : NULL);
}

frame_status frame_cut_by_maker(const frame_code_hole_in *in, frame_code_hole_out *out, frame_working *w) {
    const frame_status status = required(in);
    if (status) return status;
    FRAME_GIVEN(w, D, in->diameter_in, "in", "diameter of the hole");
    FRAME_GIVEN(w, D_max, in->maker_diameter_in, "in", "largest hole by the maker's rule");
    FRAME_GIVEN(w, y, in->offset_in == FRAME_NOT_GIVEN ? out->depth_in / 2 : in->offset_in, "in",
                "its middle above the lower edge");
    out->limit_diameter_in = D_max;
    out->edge_in = in->maker_edge_in;
    FRAME_CODE_WARN(out, MAKER);
    const char *const why =
        frame_cut_within(D, D_max) ? misplaced(in, y, out) : "larger than the maker allows at this place";
    frame_cut_verdict(out, why ? FRAME_CODE_NOT_ALLOWED : FRAME_CODE_ALLOWED,
                      why ? why : "within the maker's rule as given", w);
    return FRAME_OK;
}
