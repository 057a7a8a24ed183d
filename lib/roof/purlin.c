/* A purlin against a hip or valley. The cut is the plumb plane along the hip's side; of its normal, taken apart along
 * the purlin, along its depth and through its thickness, the saw's two angles follow. */
#include <math.h>

#include "base/error.h"
#include "roof/cut_list.h"
#include "roof_facts.h"
#include "working/calculation.h"

static const char parts[] = "parts of the normal of the hip's side";
static const char triangle[] = "right triangle";

static double other_slope(const frame_purlin_in *in) {
    return in->other_slope == FRAME_NOT_GIVEN ? in->slope : in->other_slope;
}

static void find_cut(const frame_purlin_in *in, double alpha_of, frame_purlin_out *out, frame_working *w) {
    FRAME_GIVEN(w, alpha, alpha_of, "deg", "angle in plan between the eave and the hip");
    FRAME_GIVEN(w, m, in->slope, "", "slope, rise over run");
    FRAME_GIVEN(w, leans, in->stands == FRAME_PURLIN_SQUARE, "",
                "1 for a purlin square to the roof, 0 for a plumb one");
    FRAME_STEP(w, tilt, leans * atan(m) / FRAME_DEG, "deg", "how far it leans", triangle);
    FRAME_STEP(w, mitre,
               atan(fabs(cos(alpha * FRAME_DEG)) * sin(tilt * FRAME_DEG) / sin(alpha * FRAME_DEG)) / FRAME_DEG, "deg",
               "the saw's mitre on the wide face, from square", parts);
    FRAME_STEP(w, bevel, asin(fabs(cos(alpha * FRAME_DEG)) * cos(tilt * FRAME_DEG)) / FRAME_DEG, "deg",
               "the saw's bevel", parts);
    FRAME_STEP(w, across,
               atan(fabs(cos(alpha * FRAME_DEG)) * cos(tilt * FRAME_DEG) / sin(alpha * FRAME_DEG)) / FRAME_DEG, "deg",
               "across the narrow edge, from square", parts);
    FRAME_STEP(w, down_cut, 12 * tan(mitre * FRAME_DEG), "in", "the down cut on a square, against 12 in", triangle);
    FRAME_STEP(w, side_cut, 12 * tan(across * FRAME_DEG), "in", "the side cut on a square, against 12 in", triangle);
    out->tilt_deg = tilt;
    out->mitre_deg = mitre;
    out->bevel_deg = bevel;
    out->across_edge_deg = across;
    out->down_cut_in = down_cut;
    out->side_cut_in = side_cut;
}

static frame_status compute(const frame_purlin_in *in, frame_purlin_out *out, frame_working *w) {
    FRAME_GIVEN(w, m, in->slope, "", "slope, rise over run");
    FRAME_GIVEN(w, m_other, other_slope(in), "", "slope on the other side of the hip");
    FRAME_GIVEN(w, C, in->corner_deg, "deg", "angle of the corner");
    FRAME_STEP(w, alpha, atan2(m_other * sin(C * FRAME_DEG), m + m_other * cos(C * FRAME_DEG)) / FRAME_DEG, "deg",
               "angle in plan between the eave and the hip", triangle);
    find_cut(in, alpha, out, w);
    FRAME_GIVEN(w, half, in->hip_thickness_in / 2, "in", "half the hip or valley");
    FRAME_STEP(w, deduction, half / sin(alpha * FRAME_DEG), "in", "deduction along the purlin", triangle);
    out->deduction_in = deduction;
    if (in->run_in != FRAME_NOT_GIVEN) {
        FRAME_GIVEN(w, run, in->run_in, "in", "from the building line to the purlin");
        FRAME_STEP(w, offset, run * cos(alpha * FRAME_DEG) / sin(alpha * FRAME_DEG), "in",
                   "along the eave from the corner to the hip", triangle);
        out->corner_offset_in = offset;
    }
    out->cautions = FRAME_BIT(FRAME_PURLIN_CAUTION_SIZE);
    if (out->mitre_deg > 1e-9) out->cautions |= FRAME_BIT(FRAME_PURLIN_CAUTION_COMPOUND);
    if (out->bevel_deg > 45 + 1e-9) out->cautions |= FRAME_BIT(FRAME_PURLIN_CAUTION_PAST_TILT);
    if (in->slope > 1.5 || m_other > 1.5) out->cautions |= FRAME_BIT(FRAME_PURLIN_CAUTION_SLOPE);
    out->not_checked = FRAME_BIT(FRAME_PURLIN_UNCHECKED_STRENGTH);
    out->known = FRAME_KNOWN_USER;
    return FRAME_OK;
}

FRAME_IMPLEMENT(purlin, compute);

frame_status frame_purlin_stick(const frame_purlin_in *given, frame_stick **stick) {
    frame_purlin_in in;
    uint64_t assumed = 0;
    const frame_status status = frame_purlin_in_read(given, &in, &assumed);
    if (status) return status;
    const double corner = in.corner_deg * FRAME_DEG, m_other = other_slope(&in);
    const double alpha = atan2(m_other * sin(corner), in.slope + m_other * cos(corner));
    const double lean = in.stands == FRAME_PURLIN_SQUARE ? in.slope : 0, half = in.hip_thickness_in / 2;
    /* At the right end, seen from the eave: a hip runs away up to the left, a valley up to the right. */
    const double hand = in.against == FRAME_PURLIN_AGAINST_VALLEY ? -1 : 1;
    const double waste[3] = {sin(alpha), hand * cos(alpha), 0}, side[3] = {-half * waste[0], -half * waste[1], 0};
    /* The axis reaches past the cut's corners, which lie up to its slant from the middle. */
    const double slant = (in.depth_in + in.thickness_in) * fabs(cos(alpha)) / sin(alpha) + half / sin(alpha);
    frame_cut_list cuts = {.count = 0};
    frame_cut_list_add(&cuts, FRAME_STICK_CHEEK_CUT, side, waste,
                       in.against == FRAME_PURLIN_AGAINST_VALLEY ? "cut at the valley" : "cut at the hip");
    const frame_cut_list_body body = {.name = in.name ? in.name : "purlin",
                                      .thickness = in.thickness_in,
                                      .depth = in.depth_in,
                                      .from = {-slant - 48, 0, 0},
                                      .to = {slant + 1, 0, 0},
                                      .crown = {0, -lean, 1}};
    return frame_cut_list_stick(&cuts, &body, stick);
}

FRAME_DRAW_STICK(purlin);
