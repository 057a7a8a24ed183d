/* A brace from a bearing wall to a purlin. Its foot is cut level; how far its head is from square follows from the
 * angles of brace and roof, both counted from plumb. */
#include <math.h>

#include "base/error.h"
#include "roof/cut_list.h"
#include "roof_facts.h"
#include "working/calculation.h"

static const char triangle[] = "right triangle";

/* The head's plane: its angle from square to the brace, which way round not counted, in degrees. */
static double head_angle(const frame_purlin_brace_in *in) {
    const double plumb = atan2(in->run_in, in->rise_in) / FRAME_DEG, roof = atan(in->slope) / FRAME_DEG;
    if (in->head == FRAME_BRACE_HEAD_LEVEL) return plumb;
    return in->leans == FRAME_BRACE_LEANS_EAVE ? fabs(roof - plumb) : roof + plumb;
}

static frame_status refuse(const frame_purlin_brace_in *in) {
    const double foot = atan2(in->run_in, in->rise_in), head = head_angle(in) * FRAME_DEG;
    const double slants = in->depth_in / 2 * (tan(foot) + fabs(tan(head)));
    if (head < 85 * FRAME_DEG && hypot(in->run_in, in->rise_in) > slants) return FRAME_OK;
    return frame_fail_number(FRAME_IMPOSSIBLE, "rise_in", in->rise_in,
                             "more: between such cuts there would be no whole section of the brace");
}

static frame_status compute(const frame_purlin_brace_in *in, frame_purlin_brace_out *out, frame_working *w) {
    const frame_status status = refuse(in);
    if (status) return status;
    FRAME_GIVEN(w, rise, in->rise_in, "in", "rise, middle of the foot to middle of the head");
    FRAME_GIVEN(w, run, in->run_in, "in", "run, in the same way");
    FRAME_GIVEN(w, d, in->depth_in, "in", "depth of the brace");
    FRAME_STEP(w, length, sqrt(pow(run, 2) + pow(rise, 2)), "in", "along the centre line", triangle);
    FRAME_STEP(w, foot_cut, atan2(run, rise) / FRAME_DEG, "deg", "its angle from plumb: the foot's mitre", triangle);
    FRAME_STEP(w, angle, 90 - foot_cut, "deg", "its angle from level", triangle);
    FRAME_GIVEN(w, head_cut, head_angle(in), "deg", "the head's mitre: the foot's and the roof's angle, put together");
    FRAME_STEP(w, long_point, length + d / 2 * (tan(foot_cut * FRAME_DEG) + tan(head_cut * FRAME_DEG)), "in",
               "from long point to long point", triangle);
    out->length_in = length;
    out->long_point_in = long_point;
    out->angle_deg = angle;
    out->foot_cut_deg = foot_cut;
    out->head_cut_deg = head_cut;
    out->square_blade_in = 12;
    out->square_tongue_in = 12 * run / rise;
    out->cautions = FRAME_BIT(FRAME_PURLIN_BRACE_CAUTION_WALL);
    if (angle < 45 - 1e-9) out->cautions |= FRAME_BIT(FRAME_PURLIN_BRACE_CAUTION_FLAT);
    if (long_point > 96 + 1e-9) out->cautions |= FRAME_BIT(FRAME_PURLIN_BRACE_CAUTION_LONG);
    if (in->slope > 1.5) out->cautions |= FRAME_BIT(FRAME_PURLIN_BRACE_CAUTION_SLOPE);
    out->not_checked = FRAME_BIT(FRAME_PURLIN_BRACE_UNCHECKED_STRENGTH);
    out->known = FRAME_KNOWN_READ; /* the limits: IRC R802.4.5 */
    return FRAME_OK;
}

FRAME_IMPLEMENT(purlin_brace, compute);

frame_status frame_purlin_brace_stick(const frame_purlin_brace_in *given, frame_stick **stick) {
    frame_purlin_brace_in in;
    uint64_t assumed = 0;
    frame_status status = frame_purlin_brace_in_read(given, &in, &assumed);
    if (!status) status = refuse(&in);
    if (status) return status;
    const double side = in.leans == FRAME_BRACE_LEANS_EAVE ? -1 : 1, length = hypot(in.run_in, in.rise_in);
    const double u[2] = {side * in.run_in / length, in.rise_in / length}, spare = length + 1;
    const double foot[3] = {0, 0, 0}, down[3] = {0, 0, -1}, head[3] = {side * in.run_in, 0, in.rise_in};
    const double over[3] = {in.head == FRAME_BRACE_HEAD_LEVEL ? 0 : -in.slope, 0, 1};
    frame_cut_list cuts = {.count = 0};
    frame_cut_list_add(&cuts, FRAME_STICK_LEVEL_CUT, foot, down, "foot level cut");
    frame_cut_list_add(&cuts, FRAME_STICK_MITRE_CUT, head, over, "head cut");
    const frame_cut_list_body body = {.name = in.name ? in.name : "purlin brace",
                                      .thickness = in.thickness_in,
                                      .depth = in.depth_in,
                                      .from = {-spare * u[0], 0, -spare * u[1]},
                                      .to = {head[0] + spare * u[0], 0, head[2] + spare * u[1]},
                                      .crown = {-side * u[1], 0, side * u[0]}};
    return frame_cut_list_stick(&cuts, &body, stick);
}

FRAME_DRAW_STICK(purlin_brace);
