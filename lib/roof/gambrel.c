/* A gambrel's two rafters. The building line is x = 0, the plate's top z = 0; the lower roof plane is z = h + m_l x up
 * to the knee, the upper one goes on from there. */
#include <math.h>

#include "base/error.h"
#include "roof/cut_list.h"
#include "roof_facts.h"
#include "working/calculation.h"

static const char triangle[] = "right triangle";
static const char trade[] = "common practice, conventions: rafter";

/* Both roof planes, and where the rafters end. */
typedef struct gambrel_shape {
    double knee, secant[2], slope[2], joint, ridge; /* joint, ridge: level deductions */
} gambrel_shape;

static double find_knee(const frame_gambrel_in *in, const gambrel_shape *shape) {
    if (in->knee_run_in != FRAME_NOT_GIVEN) return in->knee_run_in;
    return in->run_in * shape->secant[1] / (shape->secant[0] + shape->secant[1]);
}

/* How far the corners of a joint's cuts reach from its middle along a rafter. */
static double slant(const frame_gambrel_in *in, const gambrel_shape *shape, int upper) {
    const double half = (atan(shape->slope[0]) - atan(shape->slope[1])) / 2;
    return in->depth_in * (in->joint == FRAME_GAMBREL_JOINT_MITRE ? tan(fabs(half)) : shape->slope[upper]);
}

static frame_status refuse(const frame_gambrel_in *in, const gambrel_shape *shape) {
    const double lower = (shape->knee - shape->joint) * shape->secant[0];
    const double upper = (in->run_in - shape->knee - shape->joint - shape->ridge) * shape->secant[1];
    if (shape->knee >= in->run_in)
        return frame_fail_number(FRAME_IMPOSSIBLE, "knee_run_in", shape->knee,
                                 "less than the run: the knee lies short of the ridge");
    if (in->height_above_plate_in >= in->depth_in * shape->secant[0])
        return frame_fail_number(FRAME_IMPOSSIBLE, "height_above_plate_in", in->height_above_plate_in,
                                 "less than the rafter's plumb depth: there would be no seat");
    /* The foot's level cut takes up to the depth over the slope; beyond it the lower rafter must still be whole. */
    if (lower <= in->depth_in / shape->slope[0] + slant(in, shape, 0) ||
        upper <= in->depth_in * shape->slope[1] + slant(in, shape, 1))
        return frame_fail_number(FRAME_IMPOSSIBLE, "run_in", in->run_in,
                                 "more: cuts and deductions would take a whole rafter");
    return FRAME_OK;
}

static frame_status find_shape(const frame_gambrel_in *in, gambrel_shape *shape) {
    shape->slope[0] = in->lower_slope, shape->slope[1] = in->upper_slope;
    for (int i = 0; i < 2; i++) shape->secant[i] = sqrt(1 + shape->slope[i] * shape->slope[i]);
    shape->joint = in->joint == FRAME_GAMBREL_JOINT_PURLIN ? in->purlin_thickness_in / 2 : 0;
    shape->ridge = in->ridge_thickness_in / 2;
    shape->knee = find_knee(in, shape);
    return refuse(in, shape);
}

static void find_lengths(const frame_gambrel_in *in, const gambrel_shape *shape, frame_gambrel_out *out,
                         frame_working *w) {
    FRAME_HEADING(w, "Lengths");
    FRAME_GIVEN(w, run, in->run_in, "in", "run to the centre of the ridge");
    FRAME_GIVEN(w, m_l, in->lower_slope, "", "slope of the lower rafter");
    FRAME_GIVEN(w, m_u, in->upper_slope, "", "slope of the upper rafter");
    FRAME_GIVEN(w, run_knee, shape->knee, "in", "run to the knee");
    FRAME_GIVEN(w, joint, shape->joint, "in", "half the purlin at the knee, level");
    FRAME_GIVEN(w, ridge, shape->ridge, "in", "half the ridge, level");
    FRAME_STEP(w, rise_knee, run_knee * m_l, "in", "rise to the knee", triangle);
    FRAME_STEP(w, rise, rise_knee + (run - run_knee) * m_u, "in", "rise to the ridge", triangle);
    FRAME_STEP(w, line_l, run_knee * sqrt(1 + pow(m_l, 2)), "in", "line length of the lower rafter", triangle);
    FRAME_STEP(w, line_u, (run - run_knee) * sqrt(1 + pow(m_u, 2)), "in", "line length of the upper rafter", triangle);
    FRAME_STEP(w, length_l, line_l - joint * sqrt(1 + pow(m_l, 2)), "in", "lower rafter, shortened", trade);
    FRAME_STEP(w, length_u, line_u - (joint + ridge) * sqrt(1 + pow(m_u, 2)), "in", "upper rafter, shortened", trade);
    out->knee_run_in = run_knee, out->knee_rise_in = rise_knee, out->ridge_rise_in = rise;
    out->lower_line_length_in = line_l, out->upper_line_length_in = line_u;
    out->lower_length_in = length_l, out->upper_length_in = length_u;
}

static void find_cuts(const frame_gambrel_in *in, frame_gambrel_out *out, frame_working *w) {
    FRAME_HEADING(w, "Cuts");
    FRAME_GIVEN(w, m_l, in->lower_slope, "", "slope of the lower rafter");
    FRAME_GIVEN(w, m_u, in->upper_slope, "", "slope of the upper rafter");
    FRAME_GIVEN(w, d, in->depth_in, "in", "depth of the rafters");
    FRAME_GIVEN(w, h, in->height_above_plate_in, "in", "height above plate");
    FRAME_GIVEN(w, mitred, in->joint == FRAME_GAMBREL_JOINT_MITRE, "",
                "1 for a mitred knee, 0 for plumb cuts at a purlin");
    FRAME_STEP(w, theta_l, atan(m_l) / FRAME_DEG, "deg", "plumb cut of the lower rafter", triangle);
    FRAME_STEP(w, theta_u, atan(m_u) / FRAME_DEG, "deg", "plumb cut of the upper rafter", triangle);
    FRAME_STEP(w, planes, 180 - theta_l + theta_u, "deg", "angle between the roof planes", triangle);
    FRAME_STEP(w, knee_l, mitred ? fabs(theta_l - theta_u) / 2 : theta_l, "deg", "the lower rafter's cut at the knee",
               triangle);
    FRAME_STEP(w, knee_u, mitred ? fabs(theta_l - theta_u) / 2 : theta_u, "deg", "the upper rafter's", triangle);
    FRAME_STEP(w, seat, (d * sqrt(1 + pow(m_l, 2)) - h) / m_l, "in", "level cut at the foot", triangle);
    out->lower_plumb_cut_deg = theta_l, out->lower_level_cut_deg = 90 - theta_l, out->upper_plumb_cut_deg = theta_u;
    out->planes_deg = planes;
    out->knee_cut_lower_deg = knee_l, out->knee_cut_upper_deg = knee_u;
    out->seat_in = seat;
}

static void find_steps(const frame_gambrel_in *in, const gambrel_shape *shape, frame_gambrel_out *out,
                       frame_working *w) {
    FRAME_HEADING(w, "Stepping off with a square");
    FRAME_GIVEN(w, run_l, shape->knee - shape->joint, "in", "run of the lower rafter");
    FRAME_GIVEN(w, run_u, in->run_in - shape->knee - shape->joint - shape->ridge, "in", "run of the upper rafter");
    FRAME_STEP(w, steps_l, floor(run_l / 12 + 1e-9), "", "whole steps of the lower one", trade);
    FRAME_STEP(w, odd_l, fmax(run_l - 12 * steps_l, 0), "in", "its odd step", trade);
    FRAME_STEP(w, steps_u, floor(run_u / 12 + 1e-9), "", "whole steps of the upper one", trade);
    FRAME_STEP(w, odd_u, fmax(run_u - 12 * steps_u, 0), "in", "its odd step", trade);
    out->lower_tongue_in = 12 * in->lower_slope, out->upper_tongue_in = 12 * in->upper_slope;
    out->lower_full_steps = (int32_t)steps_l, out->lower_odd_step_in = odd_l;
    out->upper_full_steps = (int32_t)steps_u, out->upper_odd_step_in = odd_u;
}

static frame_status compute(const frame_gambrel_in *in, frame_gambrel_out *out, frame_working *w) {
    gambrel_shape shape;
    const frame_status status = find_shape(in, &shape);
    if (status) return status;
    find_lengths(in, &shape, out, w);
    find_cuts(in, out, w);
    find_steps(in, &shape, out, w);
    out->cautions = FRAME_BIT(FRAME_GAMBREL_CAUTION_KNEE);
    if (in->upper_slope >= in->lower_slope) out->cautions |= FRAME_BIT(FRAME_GAMBREL_CAUTION_STEEP);
    if (in->upper_slope > 1.5) out->cautions |= FRAME_BIT(FRAME_GAMBREL_CAUTION_SLOPE);
    out->not_checked = FRAME_BIT(FRAME_GAMBREL_UNCHECKED_STRENGTH);
    out->known = FRAME_KNOWN_USER;
    return FRAME_OK;
}

FRAME_IMPLEMENT(gambrel, compute);

/* The knee's cut of one rafter: along the plane that halves the angle, or plumb. */
static void cut_knee(const frame_gambrel_in *in, const gambrel_shape *shape, double height, frame_cut_list *cuts) {
    const int upper = in->piece == FRAME_GAMBREL_UPPER;
    const double side = upper ? -1 : 1, half = (atan(shape->slope[0]) + atan(shape->slope[1])) / 2;
    const double at[3] = {shape->knee - side * shape->joint, 0, height};
    const double halving[3] = {side * cos(half), 0, side * sin(half)}, level[3] = {side, 0, 0};
    if (in->joint == FRAME_GAMBREL_JOINT_MITRE)
        frame_cut_list_add(cuts, FRAME_STICK_MITRE_CUT, at, halving, "knee cut");
    else
        frame_cut_list_add(cuts, FRAME_STICK_PLUMB_CUT, at, level, "knee cut");
}

static void cut_other_end(const frame_gambrel_in *in, const gambrel_shape *shape, frame_cut_list *cuts) {
    const double ridge[3] = {in->run_in - shape->ridge, 0, 0}, ahead[3] = {1, 0, 0};
    const double foot[3] = {0, 0, 0}, down[3] = {0, 0, -1}, out[3] = {-1, 0, 0};
    if (in->piece == FRAME_GAMBREL_UPPER) {
        frame_cut_list_add(cuts, FRAME_STICK_PLUMB_CUT, ridge, ahead, "ridge plumb cut");
        return;
    }
    frame_cut_list_add(cuts, FRAME_STICK_LEVEL_CUT, foot, down, "foot level cut");
    if (in->height_above_plate_in > 0) frame_cut_list_add(cuts, FRAME_STICK_PLUMB_CUT, foot, out, "foot plumb cut");
}

frame_status frame_gambrel_stick(const frame_gambrel_in *given, frame_stick **stick) {
    frame_gambrel_in in;
    gambrel_shape shape;
    uint64_t assumed = 0;
    frame_status status = frame_gambrel_in_read(given, &in, &assumed);
    if (!status) status = find_shape(&in, &shape);
    if (status) return status;
    const int upper = in.piece == FRAME_GAMBREL_UPPER;
    const double knee = in.height_above_plate_in + shape.knee * shape.slope[0], m = shape.slope[upper];
    const double spare = in.depth_in * (m + 1) + 1; /* the axis reaches past every corner of the end cuts */
    const double from = (upper ? shape.knee : 0) - spare, to = (upper ? in.run_in : shape.knee) + spare;
    frame_cut_list cuts = {.count = 0};
    cut_knee(&in, &shape, knee, &cuts);
    cut_other_end(&in, &shape, &cuts);
    const frame_cut_list_body body = {.name = upper ? "upper rafter" : "lower rafter",
                                      .thickness = in.thickness_in,
                                      .depth = in.depth_in,
                                      .from = {from, 0, knee + (from - shape.knee) * m},
                                      .to = {to, 0, knee + (to - shape.knee) * m},
                                      .axis_at = FRAME_STICK_AXIS_TOP};
    return frame_cut_list_stick(&cuts, &body, stick);
}

FRAME_DRAW_STICK(gambrel);
