/* Stepping off with a square. Roofs of one slope meet over a corner C in a hip or valley at C/2 in plan. */
#include <math.h>

#include "base/error.h"
#include "roof_facts.h"
#include "working/calculation.h"

enum { MARKS };

static const char triangle[] = "right triangle";
static const char trade[] = "common practice, conventions: rafter";

static void read_table(const frame_square_steps_in *in, frame_square_steps_out *out, frame_working *w) {
    FRAME_HEADING(w, "The square's table");
    FRAME_GIVEN(w, m, in->slope, "", "slope, rise over run");
    FRAME_GIVEN(w, C, in->corner_deg, "deg", "angle of the corner");
    FRAME_GIVEN(w, s, in->spacing_in, "in", "spacing of the jacks");
    FRAME_STEP(w, common, 12 * sqrt(1 + pow(m, 2)), "in", "common rafter for a foot of run", triangle);
    FRAME_STEP(w, alpha, C / 2, "deg", "angle in plan between hip and eave", triangle);
    FRAME_STEP(w, run_hip, 12 / sin(alpha * FRAME_DEG), "in", "the hip's own run for that foot", triangle);
    FRAME_STEP(w, hip, sqrt(pow(run_hip, 2) + pow(12 * m, 2)), "in", "hip or valley for a foot of common run",
               triangle);
    FRAME_STEP(w, jack_inch, tan(alpha * FRAME_DEG) * common / 12, "", "difference of jacks for each inch of spacing",
               triangle);
    FRAME_STEP(w, jack_s, s * jack_inch, "in", "difference of jacks at the spacing", triangle);
    FRAME_STEP(w, jack_16, 16 * jack_inch, "in", "difference of jacks 16 in apart", triangle);
    FRAME_STEP(w, jack_24, 24 * jack_inch, "in", "difference of jacks 24 in apart", triangle);
    FRAME_STEP(w, side_jack, 12 / jack_inch, "in", "side cut of jacks, against 12", triangle);
    FRAME_STEP(w, side_hip, 12 * run_hip / hip / tan(alpha * FRAME_DEG), "in",
               "side cut of hips and valleys, against 12", triangle);
    out->common_per_foot_in = common, out->hip_per_foot_in = hip, out->hip_run_per_foot_in = run_hip;
    out->jack_difference_in = jack_s, out->jack_difference_16_in = jack_16, out->jack_difference_24_in = jack_24;
    out->jack_side_cut_in = side_jack, out->hip_side_cut_in = side_hip;
}

static void find_steps(const frame_square_steps_in *in, frame_square_steps_out *out, frame_working *w) {
    const int hip = in->member == FRAME_SQUARE_HIP;
    FRAME_HEADING(w, "Steps");
    FRAME_GIVEN(w, run, in->run_in, "in", "the common run");
    FRAME_GIVEN(w, overhang, in->overhang_in, "in", "overhang");
    FRAME_GIVEN(w, blade, hip ? out->hip_run_per_foot_in : 12, "in", "held on the blade: the run of one step");
    FRAME_GIVEN(w, m, in->slope, "", "slope of the common rafter");
    FRAME_STEP(w, tongue, 12 * m, "in", "held on the tongue: the rise of one step", trade);
    FRAME_STEP(w, step, sqrt(pow(blade, 2) + pow(tongue, 2)), "in", "length of one step", triangle);
    FRAME_STEP(w, full, floor(run / 12 + 1e-9), "", "whole steps: one for each foot of the common run", trade);
    FRAME_STEP(w, odd, fmax(run / 12 - full, 0) * blade, "in", "odd step, on the blade", trade);
    FRAME_STEP(w, tail_full, floor(overhang / 12 + 1e-9), "", "whole steps of the tail", trade);
    FRAME_STEP(w, tail_odd, fmax(overhang / 12 - tail_full, 0) * blade, "in", "the tail's odd step", trade);
    FRAME_STEP(w, length, full * step + odd * step / blade, "in", "what the steps add up to", trade);
    FRAME_STEP(w, tail, tail_full * step + tail_odd * step / blade, "in", "the tail", trade);
    out->blade_in = blade, out->tongue_in = tongue, out->step_length_in = step;
    out->full_steps = (int32_t)full, out->odd_step_in = odd;
    out->tail_full_steps = (int32_t)tail_full, out->tail_odd_step_in = tail_odd;
    out->length_in = length, out->tail_length_in = tail;
}

/* A mark so many steps up from the building line, reached by a step on the blade. */
static frame_status add_mark(frame_answer *answer, const frame_square_steps_out *out, double steps, double blade) {
    frame_square_steps_mark *mark = frame_answer_add(answer, MARKS);
    if (!mark) return FRAME_NO_MEMORY;
    mark->along_in = steps * out->step_length_in;
    mark->run_in = steps * out->blade_in;
    mark->rise_in = steps * out->tongue_in;
    mark->blade_in = blade;
    mark->tongue_in = blade / out->blade_in * out->tongue_in;
    return FRAME_OK;
}

/* From the building line outward, the odd step last; listed from the tail's end. */
static frame_status add_tail(frame_answer *answer, const frame_square_steps_out *out) {
    frame_status status = FRAME_OK;
    if (out->tail_odd_step_in > 1e-9)
        status =
            add_mark(answer, out, -out->tail_full_steps - out->tail_odd_step_in / out->blade_in, out->tail_odd_step_in);
    for (int32_t i = out->tail_full_steps; i > 0 && !status; i--) status = add_mark(answer, out, -i, out->blade_in);
    return status;
}

static frame_status add_marks(frame_answer *answer, const frame_square_steps_out *out) {
    frame_status status = add_tail(answer, out);
    if (!status) status = add_mark(answer, out, 0, 0);
    for (int32_t i = 1; i <= out->full_steps && !status; i++) status = add_mark(answer, out, i, out->blade_in);
    if (!status && out->odd_step_in > 1e-9)
        status = add_mark(answer, out, out->full_steps + out->odd_step_in / out->blade_in, out->odd_step_in);
    return status;
}

static frame_status solve(const frame_square_steps_in *in, frame_answer *answer, frame_square_steps_out *out,
                          frame_working *w) {
    read_table(in, out, w);
    if (!(out->hip_run_per_foot_in < 120 && out->jack_difference_24_in < 1200))
        return frame_fail_number(FRAME_IMPOSSIBLE, "corner_deg", in->corner_deg,
                                 "nearer to square: no square steps off such a hip");
    find_steps(in, out, w);
    const frame_status status = add_marks(answer, out);
    out->cautions = FRAME_BIT(FRAME_SQUARE_STEPS_CAUTION_SUM);
    if (in->slope > 1.5) out->cautions |= FRAME_BIT(FRAME_SQUARE_STEPS_CAUTION_SLOPE);
    out->not_checked = FRAME_BIT(FRAME_SQUARE_STEPS_UNCHECKED_DEDUCTIONS);
    out->known = FRAME_KNOWN_USER;
    return status;
}

FRAME_IMPLEMENT_ANSWER(square_steps, solve);
