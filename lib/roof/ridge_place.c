/* Where two roofs over one span meet, whatever their slopes and the heights of their plates. */
#include "base/error.h"
#include "roof_facts.h"
#include "working/calculation.h"

static const char triangle[] = "right triangles";

static frame_status compute(const frame_ridge_place_in *in, frame_ridge_place_out *out, frame_working *w) {
    FRAME_GIVEN(w, span, in->span_in, "in", "span");
    FRAME_GIVEN(w, m_a, in->slope_a, "", "slope on side a");
    FRAME_GIVEN(w, m_b, in->slope_b == FRAME_NOT_GIVEN ? in->slope_a : in->slope_b, "", "slope on side b");
    FRAME_GIVEN(w, plate_b, in->plate_b_in, "in", "side b's plate above side a's");
    FRAME_STEP(w, run_a, (plate_b + m_b * span) / (m_a + m_b), "in", "run on side a: both roofs are as high there",
               triangle);
    FRAME_STEP(w, run_b, span - run_a, "in", "run on side b", triangle);
    if (run_a <= 0 || run_b <= 0)
        return frame_fail_number(
            FRAME_IMPOSSIBLE, "plate_b_in", plate_b,
            "a difference that the slopes take up within the span: one roof passes over the other's plate");
    FRAME_STEP(w, rise_a, run_a * m_a, "in", "rise over side a's plate", triangle);
    FRAME_STEP(w, rise_b, run_b * m_b, "in", "rise over side b's plate", triangle);
    FRAME_STEP(w, extra_run, run_a - run_b, "in", "what the run on side a is longer", triangle);
    FRAME_STEP(w, equivalent, 2 * run_a, "in", "span of a level gable with side a's rafters", triangle);
    out->run_a_in = run_a;
    out->run_b_in = run_b;
    out->rise_a_in = rise_a;
    out->rise_b_in = rise_b;
    out->extra_run_in = extra_run;
    out->equivalent_span_a_in = equivalent;
    out->known = FRAME_KNOWN_USER;
    if (m_a > 1.5 || m_b > 1.5) out->cautions = FRAME_BIT(FRAME_RIDGE_PLACE_CAUTION_SLOPE);
    out->not_checked = FRAME_BIT(FRAME_RIDGE_PLACE_UNCHECKED_THRUST);
    return FRAME_OK;
}

FRAME_IMPLEMENT(ridge_place, compute);
