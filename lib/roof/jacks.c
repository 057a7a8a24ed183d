/* Jacks: the common difference and the cheek from the plan angle of hip or valley, then each piece's length. A jack as
 * a stick is in jacks_stick.c. */
#include "roof/jacks.h"

#include <math.h>
#include <stdio.h>

#include "base/error.h"
#include "material/lumber.h"
#include "roof_facts.h"
#include "working/calculation.h"

static const char trade[] = "common practice, conventions: hip and valley";
static const char triangle[] = "right triangle";

static frame_status take_section(const frame_jacks_in *in, frame_jacks_shape *shape) {
    shape->known = FRAME_KNOWN_USER;
    shape->thickness = in->thickness_in;
    shape->depth = in->depth_in;
    if (in->size != FRAME_NOT_GIVEN_INT) {
        double thickness, depth;
        const frame_status status = frame_size_dressed(in->size, 0, &thickness, &depth);
        if (status) return status;
        if (shape->depth != FRAME_NOT_GIVEN && fabs(shape->depth - depth) > 1e-9)
            return frame_fail_number(FRAME_CONFLICT, "depth_in", shape->depth,
                                     "the depth of the size, or size left out");
        shape->depth = depth;
        if (shape->thickness == FRAME_NOT_GIVEN) shape->thickness = thickness;
        shape->known = FRAME_KNOWN_READ; /* PS 20 */
    }
    if (shape->thickness == FRAME_NOT_GIVEN) shape->thickness = 1.5;
    return FRAME_OK;
}

frame_status frame_jacks_resolve(const frame_jacks_in *in, frame_jacks_shape *shape) {
    const frame_status status = take_section(in, shape);
    if (status) return status;
    const double corner = in->corner_deg * FRAME_DEG;
    shape->other_slope = in->other_slope == FRAME_NOT_GIVEN ? in->slope : in->other_slope;
    shape->first = in->first_in == FRAME_NOT_GIVEN ? in->spacing_in : in->first_in;
    const double alpha = atan2(shape->other_slope * sin(corner), in->slope + shape->other_slope * cos(corner));
    if (alpha > 89 * FRAME_DEG)
        return frame_fail_number(
            FRAME_OUTSIDE_SCOPE, "corner_deg", in->corner_deg,
            "a corner whose hip or valley leans to this roof's eave: here it runs square to it or away");
    shape->alpha_deg = alpha / FRAME_DEG;
    const double hip = in->hip_thickness_in / 2 / cos(alpha), valley = in->valley_thickness_in / 2 / cos(alpha);
    const int low = in->kind == FRAME_JACK_VALLEY;
    shape->low_deduction = in->kind == FRAME_JACK_HIP ? 0 : low ? hip : valley;
    shape->high_deduction = low ? in->ridge_thickness_in / 2 : hip;
    return FRAME_OK;
}

double frame_jacks_run(const frame_jacks_in *in, const frame_jacks_shape *shape, int32_t number) {
    const double tangent = tan(shape->alpha_deg * FRAME_DEG);
    if (in->kind == FRAME_JACK_CRIPPLE) return in->between_in * tangent;
    return (shape->first + (number - 1) * in->spacing_in) * tangent;
}

frame_status frame_jacks_count(const frame_jacks_in *in, const frame_jacks_shape *shape, int32_t *count) {
    *count = 0;
    if (in->kind == FRAME_JACK_CRIPPLE) {
        *count = in->between_in != FRAME_NOT_GIVEN;
        return FRAME_OK;
    }
    if (in->run_in == FRAME_NOT_GIVEN) return FRAME_OK;
    const double tangent = tan(shape->alpha_deg * FRAME_DEG);
    const double reach = (in->run_in / tangent - shape->first) / in->spacing_in;
    if (reach > 1000)
        return frame_fail_number(FRAME_TOO_LARGE, "spacing_in", in->spacing_in,
                                 "a spacing that gives at most 1000 jacks");
    /* The one that would reach the hip's own end is the common rafter. */
    if (reach > 0) *count = (int32_t)ceil(reach - 1e-9);
    return FRAME_OK;
}

static void find_common(const frame_jacks_in *in, const frame_jacks_shape *shape, frame_jacks_out *out,
                        frame_working *w) {
    FRAME_HEADING(w, "What the jacks have in common");
    FRAME_GIVEN(w, m, in->slope, "", "slope of their roof, rise over run");
    FRAME_GIVEN(w, m_other, shape->other_slope, "", "slope of the roof on the other side");
    FRAME_GIVEN(w, C, in->corner_deg, "deg", "corner");
    FRAME_GIVEN(w, spacing, in->spacing_in, "in", "spacing along the eave");
    FRAME_GIVEN(w, first, shape->first, "in", "to the first jack");
    FRAME_GIVEN(w, t_hip, in->hip_thickness_in, "in", "thickness of the hip or valley");
    FRAME_STEP(w, alpha, atan2(m_other * sin(C * FRAME_DEG), m + m_other * cos(C * FRAME_DEG)) / FRAME_DEG, "deg",
               "angle in plan between hip or valley and eave: the cheek's bevel", triangle);
    FRAME_STEP(w, run_difference, spacing * tan(alpha * FRAME_DEG), "in",
               "what each jack's run is longer than the last", triangle);
    FRAME_STEP(w, difference, run_difference * sqrt(1 + pow(m, 2)), "in", "common difference, along the slope",
               triangle);
    FRAME_STEP(w, first_length, first * tan(alpha * FRAME_DEG) * sqrt(1 + pow(m, 2)), "in", "line length of the first",
               triangle);
    FRAME_STEP(w, theta, atan(m) / FRAME_DEG, "deg", "plumb cuts' mitre", triangle);
    FRAME_STEP(w, blade, 12 * sqrt(1 + pow(m, 2)), "in", "the common rafter's length for a foot of run", triangle);
    FRAME_STEP(w, tongue, 12 / tan(alpha * FRAME_DEG), "in",
               "tangent for a foot of run: along the eave, what the hip takes", trade);
    FRAME_STEP(w, top_edge, atan(tongue / blade) / FRAME_DEG, "deg",
               "cheek across the top edge, from the edge: the side cut", trade);
    FRAME_STEP(w, side_cut, 12 * tan(top_edge * FRAME_DEG), "in", "side cut on a square, against 12 in", trade);
    FRAME_STEP(w, deduction, t_hip / 2 / cos(alpha * FRAME_DEG), "in", "half the hip or valley, level along the jack",
               trade);
    FRAME_STEP(w, deduction_along, deduction * sqrt(1 + pow(m, 2)), "in", "the same along the slope", trade);
    out->run_difference_in = run_difference;
    out->difference_in = difference;
    out->first_length_in = first_length;
    out->plumb_cut_deg = theta;
    out->cheek_deg = alpha;
    out->top_edge_deg = top_edge;
    out->side_cut_in = side_cut;
    out->square_tongue_in = tongue;
    out->square_blade_in = blade;
    out->deduction_in = deduction;
    out->deduction_along_in = deduction_along;
}

static frame_status add_piece(const frame_jacks_in *in, const frame_jacks_shape *shape, int32_t number,
                              frame_answer *answer, const frame_jacks_out *out) {
    static const char *const kinds[3] = {"hip jack", "valley jack", "cripple jack"};
    char name[40];
    const double secant = sqrt(1 + in->slope * in->slope);
    const double run = frame_jacks_run(in, shape, number);
    const double length = (run - shape->low_deduction - shape->high_deduction) * secant;
    if (length <= 0) return FRAME_OK;
    frame_jacks_piece *piece = frame_answer_add(answer, 0);
    if (!piece) return FRAME_NO_MEMORY;
    const double tail = in->kind == FRAME_JACK_HIP ? in->overhang_in * secant : 0;
    snprintf(name, sizeof name, "%s %d", kinds[in->kind - 1], (int)number);
    piece->name = frame_answer_text(answer, name);
    if (in->kind != FRAME_JACK_CRIPPLE) piece->distance_in = shape->first + (number - 1) * in->spacing_in;
    piece->run_in = run;
    piece->line_length_in = run * secant;
    piece->length_in = length + tail;
    piece->long_point_in = piece->length_in + out->long_point_more_in * (in->kind == FRAME_JACK_CRIPPLE ? 2 : 1);
    return FRAME_OK;
}

static void note(const frame_jacks_in *in, const frame_jacks_shape *shape, frame_jacks_out *out) {
    out->cautions = FRAME_BIT(FRAME_JACKS_CAUTION_COMPOUND) | FRAME_BIT(FRAME_JACKS_CAUTION_PAIRS);
    if (out->cheek_deg > 45 + 1e-6) out->cautions |= FRAME_BIT(FRAME_JACKS_CAUTION_PAST_TILT);
    if (in->slope > 1.5 || shape->other_slope > 1.5) out->cautions |= FRAME_BIT(FRAME_JACKS_CAUTION_SLOPE);
    out->not_checked = FRAME_BIT(FRAME_JACKS_UNCHECKED_STRENGTH) | FRAME_BIT(FRAME_JACKS_UNCHECKED_THRUST);
    if (in->size != FRAME_NOT_GIVEN_INT) out->assumed &= ~FRAME_BIT(FRAME_ASSUMED_JACKS_IN_THICKNESS_IN);
    if (in->kind == FRAME_JACK_CRIPPLE) out->assumed &= ~FRAME_BIT(FRAME_ASSUMED_JACKS_IN_FIRST_IN);
    if (shape->depth == FRAME_NOT_GIVEN || in->height_above_plate_in == FRAME_NOT_GIVEN) return;
    const double secant = sqrt(1 + in->slope * in->slope);
    const double depth_of_notch = (shape->depth * secant - in->height_above_plate_in) / secant;
    if (depth_of_notch > shape->depth / 4) out->cautions |= FRAME_BIT(FRAME_JACKS_CAUTION_NOTCH);
}

static frame_status solve(const frame_jacks_in *in, frame_answer *answer, frame_jacks_out *out, frame_working *w) {
    frame_jacks_shape shape;
    int32_t count = 0;
    frame_status status = frame_jacks_resolve(in, &shape);
    if (!status) status = frame_jacks_count(in, &shape, &count);
    if (status) return status;
    find_common(in, &shape, out, w);
    out->long_point_more_in = shape.thickness / 2 * tan(shape.alpha_deg * FRAME_DEG) * sqrt(1 + in->slope * in->slope);
    for (int32_t i = 1; i <= count && !status; i++) status = add_piece(in, &shape, i, answer, out);
    out->count = (int32_t)frame_answer_count(answer, 0);
    out->known = shape.known;
    note(in, &shape, out);
    return status;
}

FRAME_IMPLEMENT_ANSWER(jacks, solve);
