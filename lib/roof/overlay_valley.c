/* A valley laid over sheathing. In plan the addition's ridge runs along y up the main roof and dies where both heights
 * agree; its jacks run along x from the valley to the ridge and stand on sleepers that lie flat on the sheathing. */
#include <math.h>

#include "base/error.h"
#include "roof/cut_list.h"
#include "roof_facts.h"
#include "working/calculation.h"

static const char triangle[] = "right triangle";

static void judge(const frame_overlay_valley_in *in, frame_overlay_valley_out *out) {
    out->cautions = FRAME_BIT(FRAME_OVERLAY_VALLEY_CAUTION_LOAD) | FRAME_BIT(FRAME_OVERLAY_VALLEY_CAUTION_STRIP) |
                    FRAME_BIT(FRAME_OVERLAY_VALLEY_CAUTION_COMPOUND);
    if (out->seat_bevel_deg > 45 + 1e-9) out->cautions |= FRAME_BIT(FRAME_OVERLAY_VALLEY_CAUTION_PAST_TILT);
    if (in->slope > 1.5 || in->slope_main > 1.5) out->cautions |= FRAME_BIT(FRAME_OVERLAY_VALLEY_CAUTION_SLOPE);
    out->not_checked = FRAME_BIT(FRAME_OVERLAY_VALLEY_UNCHECKED_STRENGTH);
    out->known = FRAME_KNOWN_USER;
}

static double first_of(const frame_overlay_valley_in *in) {
    return in->first_in == FRAME_NOT_GIVEN ? in->spacing_in : in->first_in;
}

static frame_status compute(const frame_overlay_valley_in *in, frame_overlay_valley_out *out, frame_working *w) {
    FRAME_GIVEN(w, m_main, in->slope_main, "", "slope of the roof below, rise over run");
    FRAME_GIVEN(w, m, in->slope, "", "slope of the addition's roof");
    FRAME_GIVEN(w, run, in->run_in, "in", "the addition's run");
    FRAME_STEP(w, reach, run * m / m_main, "in", "how far the ridge reaches over the roof, level", triangle);
    FRAME_STEP(w, up, reach * sqrt(1 + pow(m_main, 2)), "in", "the same along the sheathing", triangle);
    FRAME_STEP(w, valley, sqrt(pow(run, 2) + pow(up, 2)), "in", "the valley on the sheathing", triangle);
    FRAME_STEP(w, phi, atan(up / run) / FRAME_DEG, "deg", "its angle to the main eave, on the sheathing", triangle);
    FRAME_GIVEN(w, s, in->spacing_in, "in", "spacing of the jacks along the ridge");
    FRAME_STEP(w, difference, s * m_main / m * sqrt(1 + pow(m, 2)), "in", "common difference of the jacks", triangle);
    FRAME_GIVEN(w, y_1, first_of(in), "in", "from where the ridge dies to the first jack");
    FRAME_STEP(w, first, y_1 * m_main / m * sqrt(1 + pow(m, 2)), "in", "line length of the first jack", triangle);
    FRAME_GIVEN(w, t, in->sleeper_thickness_in, "in", "thickness of the sleeper");
    FRAME_STEP(w, lift, t * sqrt(1 + pow(m_main, 2)), "in", "its top above the sheathing, plumb", triangle);
    FRAME_STEP(w, deduction, lift / m, "in", "level deduction at a jack's foot", triangle);
    FRAME_STEP(w, along, deduction * sqrt(1 + pow(m, 2)), "in", "the same along the slope", triangle);
    FRAME_GIVEN(w, half_ridge, in->ridge_thickness_in / 2, "in", "half the ridge");
    FRAME_STEP(w, at_ridge, half_ridge * sqrt(1 + pow(m, 2)), "in", "deduction at the ridge, along the slope",
               triangle);
    FRAME_STEP(w, theta, atan(m) / FRAME_DEG, "deg", "plumb cuts", triangle);
    FRAME_STEP(w, level, 90 - theta, "deg", "the seat's mitre: a level line on the jack's side", triangle);
    FRAME_STEP(w, bevel, atan(m_main) / FRAME_DEG, "deg", "the seat's bevel: the roof below falls across the jack",
               triangle);
    if (y_1 >= reach)
        return frame_fail_number(FRAME_IMPOSSIBLE, "first_in", y_1,
                                 "less: the ridge reaches no farther over the roof, and no jack stands there");
    if (along + at_ridge >= first)
        return frame_fail_number(FRAME_IMPOSSIBLE, "first_in", y_1,
                                 "more: sleeper and ridge take the whole first jack");
    out->reach_in = reach;
    out->valley_length_in = valley, out->valley_deg = phi;
    out->difference_in = difference, out->first_length_in = first;
    out->sleeper_drop_in = lift;
    out->seat_deduction_in = deduction, out->seat_deduction_along_in = along;
    out->ridge_deduction_along_in = at_ridge;
    out->seat_mitre_deg = level, out->seat_bevel_deg = bevel;
    out->plumb_cut_deg = theta;
    judge(in, out);
    return FRAME_OK;
}

FRAME_IMPLEMENT(overlay_valley, compute);

frame_status frame_overlay_valley_stick(const frame_overlay_valley_in *given, frame_stick **stick) {
    frame_overlay_valley_in in;
    frame_overlay_valley_out out;
    uint64_t assumed = 0;
    frame_status status = frame_overlay_valley_in_read(given, &in, &assumed);
    if (!status) status = frame_overlay_valley(given, &out, NULL);
    if (status) return status;
    const double run = first_of(&in) * in.slope_main / in.slope, spare = 5.5 * in.slope + 3;
    const double foot[3] = {0, 0, out.sleeper_drop_in},
                 down[3] = {0, in.slope_main, -1}; /* the main roof rises to +y */
    const double top[3] = {run - in.ridge_thickness_in / 2, 0, 0}, out_of[3] = {1, 0, 0};
    frame_cut_list cuts = {.count = 0};
    frame_cut_list_add(&cuts, FRAME_STICK_LEVEL_CUT, foot, down, "seat on the sleeper");
    frame_cut_list_add(&cuts, FRAME_STICK_PLUMB_CUT, top, out_of, "ridge plumb cut");
    frame_stick_in facts;
    frame_stick_in_init(&facts);
    facts.name = "valley jack over sheathing";
    facts.thickness_in = 1.5, facts.depth_in = 5.5;
    facts.start_x_in = -spare, facts.start_z_in = -spare * in.slope;
    facts.end_x_in = run + spare, facts.end_y_in = 0, facts.end_z_in = (run + spare) * in.slope;
    facts.axis_at = FRAME_STICK_AXIS_TOP;
    facts.planes = cuts.planes;
    facts.plane_count = cuts.count;
    return frame_stick_new(&facts, stick);
}
