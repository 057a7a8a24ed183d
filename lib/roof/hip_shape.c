/* The handbook's formulas of hips and valleys: the plan angle from the two slopes, then right triangles. The piece as a
 * stick in space is in hip_stick.c and knows none of these formulas; a test holds the two together. */
#include <math.h>

#include "base/error.h"
#include "material/lumber.h"
#include "roof/hip.h"

static const char trade[] = "common practice, conventions: hip and valley";
static const char triangle[] = "right triangle";

static frame_status clash(const char *field, double value) {
    return frame_fail_number(FRAME_CONFLICT, field, value, "what the size has, or size left out");
}

frame_status frame_hip_take_section(frame_hip_facts *facts) {
    facts->known = FRAME_KNOWN_USER;
    if (facts->size != FRAME_NOT_GIVEN_INT) {
        double thickness, depth;
        const frame_status status = frame_size_dressed(facts->size, 0, &thickness, &depth);
        if (status) return status;
        if (facts->depth_in != FRAME_NOT_GIVEN && fabs(facts->depth_in - depth) > 1e-9)
            return clash("depth_in", facts->depth_in);
        facts->depth_in = depth;
        if (facts->thickness_in == FRAME_NOT_GIVEN) facts->thickness_in = thickness;
        facts->known = FRAME_KNOWN_READ; /* PS 20 */
    }
    if (facts->thickness_in == FRAME_NOT_GIVEN) facts->thickness_in = 1.5;
    if (facts->height_above_plate_in != FRAME_NOT_GIVEN && facts->depth_in == FRAME_NOT_GIVEN)
        return frame_fail(FRAME_REQUIRED, "depth_in", "", "depth_in or size",
                          "depth_in: not given; a birdsmouth needs depth_in or size");
    return FRAME_OK;
}

/* The plan: where the planes meet, and what each side has to do with it. */
typedef struct plan {
    double alpha, beta, slope, run;
} plan;

static plan find_plan(const frame_hip_facts *in, frame_hip_figures *out, frame_working *w) {
    FRAME_HEADING(w, "In plan");
    FRAME_GIVEN(w, m_a, in->slope_a, "", "slope on side a, rise over run");
    FRAME_GIVEN(w, m_b, in->slope_b, "", "slope on side b, rise over run");
    FRAME_GIVEN(w, C, in->corner_deg, "deg",
                in->valley ? "corner, outside the building" : "corner, inside the building");
    FRAME_GIVEN(w, R_a, in->run_in, "in", "the common rafter's run on side a");
    FRAME_STEP(w, alpha, atan2(m_b * sin(C * FRAME_DEG), m_a + m_b * cos(C * FRAME_DEG)) / FRAME_DEG, "deg",
               "angle in plan to the eave of side a: both planes rise alike along it", triangle);
    FRAME_STEP(w, beta, C - alpha, "deg", "angle in plan to the eave of side b", triangle);
    FRAME_STEP(w, run_foot, 12 / sin(alpha * FRAME_DEG), "in", "its run for each foot of the common run", triangle);
    FRAME_STEP(w, run, R_a / sin(alpha * FRAME_DEG), "in", "its run", triangle);
    FRAME_STEP(w, R_b, R_a * m_a / m_b, "in", "the common run on side b to the same height", triangle);
    FRAME_STEP(w, m, m_a * sin(alpha * FRAME_DEG), "", "its slope, rise over run", triangle);
    FRAME_STEP(w, theta, atan(m) / FRAME_DEG, "deg", "its angle: the plumb cut's mitre", triangle);
    out->run_per_foot_in = run_foot;
    out->plan_run_in = run;
    out->run_b_in = R_b;
    out->slope = m;
    out->plumb_cut_deg = theta;
    out->level_cut_deg = 90 - theta;
    return (plan){alpha, beta, m, run};
}

/* Half of what the head is cut against, measured along the run. */
static double find_deduction(const frame_hip_facts *in, frame_working *w) {
    FRAME_GIVEN(w, against, in->against_thickness_in, "in", "thickness of what the head is cut against");
    FRAME_STEP(w, half, against / 2, "in", "half of it, square to it", trade);
    return half;
}

static double deduct_commons(double half_of, const plan *at, frame_working *w) {
    FRAME_GIVEN(w, half, half_of, "in", "half the common rafter");
    const double a = frame_hip_has_common(at->alpha) ? at->alpha : 0, b = frame_hip_has_common(at->beta) ? at->beta : 0;
    FRAME_GIVEN(w, nearer, fmax(a, b), "deg", "angle in plan to the eave it runs nearest to square with");
    FRAME_STEP(w, deduction, half / cos(nearer * FRAME_DEG), "in",
               "deduction along the run: into the corner of two commons", trade);
    return deduction;
}

static double deduct_ridges(double half_of, double angle_of, frame_working *w) {
    FRAME_GIVEN(w, half, half_of, "in", "half the ridge");
    FRAME_GIVEN(w, angle, angle_of, "deg", "angle in plan to that ridge");
    FRAME_STEP(w, deduction, half / sin(angle * FRAME_DEG), "in", "deduction along the run: to the ridge's face",
               trade);
    return deduction;
}

static double deduct(const frame_hip_facts *in, const plan *at, frame_working *w) {
    const double half = find_deduction(in, w);
    if (in->head == FRAME_HIP_HEAD_PLUMB) return half; /* the same number in both lists */
    if (in->head == FRAME_HIP_HEAD_RIDGE) return deduct_ridges(half, at->alpha, w);
    if (in->valley)
        return deduct_ridges(half, sin(at->alpha * FRAME_DEG) < sin(at->beta * FRAME_DEG) ? at->alpha : at->beta, w);
    return deduct_commons(half, at, w);
}

static frame_status find_lengths(const frame_hip_facts *in, const plan *at, frame_hip_figures *out, frame_working *w) {
    FRAME_HEADING(w, "Lengths");
    FRAME_GIVEN(w, run, at->run, "in", "its run");
    FRAME_GIVEN(w, m, at->slope, "", "its slope");
    FRAME_GIVEN(w, run_foot, out->run_per_foot_in, "in", "its run for each foot of the common run");
    FRAME_GIVEN(w, alpha, at->alpha, "deg", "angle in plan to the eave of side a");
    FRAME_GIVEN(w, overhang, in->overhang_in, "in", "overhang on side a");
    FRAME_STEP(w, rise, run * m, "in", "rise over its run", triangle);
    FRAME_STEP(w, line_length, sqrt(pow(run, 2) + pow(rise, 2)), "in", "line length, unshortened", triangle);
    FRAME_STEP(w, per_foot, run_foot * sqrt(1 + pow(m, 2)), "in", "length for each foot of the common run", triangle);
    out->deduction_in = deduct(in, at, w);
    FRAME_GIVEN(w, deduction, out->deduction_in, "in", "deduction along the run");
    FRAME_STEP(w, deduction_along, deduction * sqrt(1 + pow(m, 2)), "in", "deduction along the slope", trade);
    FRAME_STEP(w, shortened, line_length - deduction_along, "in", "line length to the head's cut", trade);
    FRAME_STEP(w, tail, overhang / sin(alpha * FRAME_DEG) * sqrt(1 + pow(m, 2)), "in", "tail along the slope",
               triangle);
    FRAME_STEP(w, length, shortened + tail, "in", "along the centre line, tail to head", trade);
    out->rise_in = rise;
    out->line_length_in = line_length;
    out->per_foot_in = per_foot;
    out->deduction_along_in = deduction_along;
    out->shortened_length_in = shortened;
    out->tail_length_in = tail;
    out->length_in = length;
    if (!(fabs(deduction) < run))
        return frame_fail_number(FRAME_IMPOSSIBLE, "run_in", in->run_in,
                                 "more: the head's deduction takes the whole run");
    return FRAME_OK;
}

typedef struct side {
    double cheek, ridge_cheek, top_edge, side_cut, drop, backing, sheathing;
} side;

static side find_side(const frame_hip_facts *in, int b, const plan *at, frame_working *w) {
    FRAME_HEADING(w, b ? "Side b" : "Side a");
    FRAME_GIVEN(w, angle, b ? at->beta : at->alpha, "deg", "angle in plan to the eave of this side");
    FRAME_GIVEN(w, m_side, b ? in->slope_b : in->slope_a, "", "slope of this side");
    FRAME_GIVEN(w, m, at->slope, "", "slope of the piece");
    FRAME_GIVEN(w, t, in->thickness_in, "in", "thickness");
    FRAME_STEP(w, cheek, angle <= 90 ? angle : 180 - angle, "deg", "cheek: the saw's bevel along the plumb line",
               trade);
    FRAME_STEP(w, ridge_cheek, fabs(90 - angle), "deg", "bevel against a ridge or fascia along this side's eave",
               trade);
    FRAME_STEP(w, top_edge, atan2(cos(cheek * FRAME_DEG), sin(cheek * FRAME_DEG) * sqrt(1 + pow(m, 2))) / FRAME_DEG,
               "deg", "the cheek across the top edge, from the edge: the side cut", triangle);
    FRAME_STEP(w, side_cut, 12 * tan(top_edge * FRAME_DEG), "in", "the side cut on a square, against 12 in", trade);
    FRAME_STEP(w, fall, m_side * cos(angle * FRAME_DEG), "", "fall of this side's plane across the piece", triangle);
    FRAME_STEP(w, drop, t / 2 * fall, "in", "drop: half the thickness times that fall", trade);
    FRAME_STEP(w, backing, atan(fall / sqrt(1 + pow(m, 2))) / FRAME_DEG, "deg",
               "backing, in the section square to the piece", triangle);
    FRAME_STEP(w, sheathing,
               atan2(sin(angle * FRAME_DEG) * sqrt(1 + pow(m_side, 2)), cos(angle * FRAME_DEG)) / FRAME_DEG, "deg",
               "angle to the eave in the roof plane", triangle);
    return (side){cheek, ridge_cheek, top_edge, side_cut, drop, backing, sheathing};
}

static void find_sides(const frame_hip_facts *in, const plan *at, frame_hip_figures *out, frame_working *w) {
    const side a = find_side(in, 0, at, w), b = find_side(in, 1, at, w);
    FRAME_HEADING(w, "Between the roof planes");
    FRAME_GIVEN(w, backing_a, a.backing, "deg", "backing on side a");
    FRAME_GIVEN(w, backing_b, b.backing, "deg", "backing on side b");
    FRAME_STEP(w, planes, 180 - backing_a - backing_b, "deg", "angle between the roof planes", triangle);
    out->planes_deg = planes;
    out->cheek_a_deg = a.cheek, out->cheek_b_deg = b.cheek;
    out->ridge_cheek_a_deg = a.ridge_cheek, out->ridge_cheek_b_deg = b.ridge_cheek;
    out->top_edge_a_deg = a.top_edge, out->top_edge_b_deg = b.top_edge;
    out->side_cut_a_in = a.side_cut, out->side_cut_b_in = b.side_cut;
    out->drop_a_in = a.drop, out->drop_b_in = b.drop;
    out->backing_a_deg = a.backing, out->backing_b_deg = b.backing;
    out->sheathing_a_deg = a.sheathing, out->sheathing_b_deg = b.sheathing;
}

static void find_eaves(const frame_hip_facts *in, frame_hip_figures *out, frame_working *w) {
    FRAME_HEADING(w, "Eaves");
    FRAME_GIVEN(w, m_a, in->slope_a, "", "slope on side a");
    FRAME_GIVEN(w, m_b, in->slope_b, "", "slope on side b");
    FRAME_GIVEN(w, overhang, in->overhang_in, "in", "overhang on side a");
    if (in->eaves == FRAME_EAVES_OVERHANGS_EQUAL) {
        FRAME_CASE(w, "overhangs equal", "the fascia is level, the plates differ in height", trade);
        FRAME_STEP(w, plate_b, overhang * (m_b - m_a), "in", "side b's plate above side a's", trade);
        out->overhang_b_in = overhang;
        out->plate_b_in = plate_b;
        return;
    }
    FRAME_CASE(w, "plates level", "the overhangs are in inverse ratio of the slopes", trade);
    FRAME_STEP(w, overhang_b, overhang * m_a / m_b, "in", "overhang on side b", trade);
    out->overhang_b_in = overhang_b;
    out->plate_b_in = 0;
}

static frame_status find_birdsmouth(const frame_hip_facts *in, frame_hip_figures *out, frame_working *w) {
    if (in->height_above_plate_in == FRAME_NOT_GIVEN) return FRAME_OK;
    FRAME_HEADING(w, "Birdsmouth");
    FRAME_GIVEN(w, h, in->height_above_plate_in, "in", "height above plate of the common rafters");
    FRAME_GIVEN(w, lowered, in->lowered ? fmax(out->drop_a_in, out->drop_b_in) : 0, "in", "what its top is dropped by");
    FRAME_GIVEN(w, d, in->depth_in, "in", "depth");
    FRAME_GIVEN(w, m, out->slope, "", "slope of the piece");
    FRAME_STEP(w, h_plate, h - lowered, "in", "its top above the plate at the building line", trade);
    FRAME_STEP(w, plumb_depth, d * sqrt(1 + pow(m, 2)), "in", "depth measured plumb", triangle);
    FRAME_STEP(w, heel, plumb_depth - h_plate, "in", "heel cut on the centre line, plumb", trade);
    FRAME_STEP(w, seat, heel / m, "in", "seat along the run, level", triangle);
    FRAME_STEP(w, notch_depth, seat * sin(atan(m)), "in", "depth of the birdsmouth, square to the edge", triangle);
    FRAME_STEP(w, notch_limit, d / 4, "in", "depth allowed", "NDS 2018 4.4.3, IRC 2021 R802.7.1.1 (from memory)");
    if (h_plate <= 0)
        return frame_fail_number(FRAME_IMPOSSIBLE, "height_above_plate_in", h,
                                 "more than the drop: this birdsmouth would cut the piece through");
    if (seat <= 0)
        return frame_fail_number(FRAME_IMPOSSIBLE, "height_above_plate_in", h,
                                 "less than the plumb depth and the drop: take a deeper piece, there would be no seat");
    out->height_in = h_plate;
    out->seat_in = seat;
    out->heel_in = heel;
    out->notch_depth_in = notch_depth;
    out->notch_limit_in = notch_limit;
    return FRAME_OK;
}

static void find_steps(const frame_hip_facts *in, frame_hip_figures *out, frame_working *w) {
    FRAME_HEADING(w, "Stepping off with a square");
    FRAME_GIVEN(w, blade, out->run_per_foot_in, "in", "held on the blade: its run for each foot of the common run");
    FRAME_GIVEN(w, m_a, in->slope_a, "", "slope on side a");
    FRAME_GIVEN(w, run_short, out->plan_run_in - out->deduction_in, "in", "run to the head's cut");
    FRAME_STEP(w, tongue, 12 * m_a, "in", "held on the tongue: the common rafter's rise for each foot", trade);
    FRAME_STEP(w, full_steps, floor(run_short / blade + 1e-9), "", "whole steps", trade);
    FRAME_STEP(w, odd_step, fmax(run_short - full_steps * blade, 0), "in", "odd step, on the blade", trade);
    out->square_blade_in = blade;
    out->square_tongue_in = tongue;
    out->full_steps = (int32_t)full_steps;
    out->odd_step_in = odd_step;
}

frame_status frame_hip_compute(const frame_hip_facts *facts, frame_hip_figures *figures, frame_working *w) {
#define FRAME_HIP_BLANK(field) figures->field = FRAME_NOT_GIVEN;
    FRAME_HIP_FIGURES(FRAME_HIP_BLANK)
#undef FRAME_HIP_BLANK
    const plan at = find_plan(facts, figures, w);
    if (!(at.run <= 12000 && figures->run_b_in <= 12000)) /* flat beside steep, or a corner that hardly turns */
        return frame_fail_number(
            FRAME_IMPOSSIBLE, "corner_deg", facts->corner_deg,
            "nearer to square, or slopes nearer to one another: nothing runs for more than 1,000 ft");
    frame_status status = find_lengths(facts, &at, figures, w);
    if (status) return status;
    find_sides(facts, &at, figures, w);
    find_eaves(facts, figures, w);
    status = find_birdsmouth(facts, figures, w);
    if (!status) find_steps(facts, figures, w);
    return status;
}

int frame_hip_past_tilt(const frame_hip_facts *facts, const frame_hip_figures *figures) {
    const double most = 45 + 1e-6;
    if (facts->tail == FRAME_HIP_TAIL_FASCIA &&
        (figures->ridge_cheek_a_deg > most || figures->ridge_cheek_b_deg > most))
        return 1;
    if (facts->head == FRAME_HIP_HEAD_PLUMB) return 0;
    if (facts->head == FRAME_HIP_HEAD_RIDGE) return figures->ridge_cheek_a_deg > most;
    if (facts->valley) return figures->ridge_cheek_a_deg > most || figures->ridge_cheek_b_deg > most;
    return figures->cheek_a_deg > most || figures->cheek_b_deg > most;
}
