/* What a wall is: its section, its height by one of three ways, its top and what it stands on. */
#include <math.h>

#include "base/error.h"
#include "layout/wall.h"
#include "layout_facts.h"
#include "working/calculation.h"

static const char trade[] = "common practice, wall layout";

static frame_status take_section(const frame_wall_in *in, frame_wall_plan *plan, frame_answer *answer) {
    static const frame_layout_section_fields fields = {"size", "stud_thickness_in", "stud_depth_in"};
    plan->stud = (frame_layout_section){in->stud_thickness_in, in->stud_depth_in, in->size, NULL, 0};
    const frame_status status = frame_layout_take_section(answer, &fields, &plan->stud);
    if (status) return status;
    plan->t = plan->stud.thickness;
    plan->d = plan->stud.depth;
    plan->along = in->studs_flat ? plan->d : plan->t;
    plan->across = in->studs_flat ? plan->t : plan->d;
    plan->known = plan->stud.known;
    return FRAME_OK;
}

static frame_status take_top(const frame_wall_in *in, frame_wall_plan *plan) {
    plan->slope = in->slope;
    plan->peak = in->peak_in == FRAME_NOT_GIVEN ? INFINITY : in->peak_in;
    plan->far_slope = in->far_slope == FRAME_NOT_GIVEN ? -in->slope : in->far_slope;
    if (in->peak_in == FRAME_NOT_GIVEN) return FRAME_OK;
    if (in->peak_in >= in->length_in)
        return frame_fail_number(FRAME_IMPOSSIBLE, "peak_in", in->peak_in, "a place within the wall");
    if (plan->far_slope > plan->slope)
        return frame_fail_number(FRAME_IMPOSSIBLE, "far_slope", plan->far_slope,
                                 "at most the slope: beyond the peak the top falls away");
    return FRAME_OK;
}

static frame_status take_steps(const frame_wall_in *in, frame_wall_plan *plan) {
    double last = 0;
    plan->steps.item_size = sizeof(frame_wall_step);
    if (in->step_count && in->bottom_slope != 0)
        return frame_fail_number(FRAME_CONFLICT, "bottom_slope", in->bottom_slope, "0 where there are steps");
    for (size_t i = 0; i < in->step_count; i++) {
        frame_wall_step step;
        frame_wall_step_item(in->steps, i, &step);
        if (step.at_in < last + 2 * plan->t || step.at_in > in->length_in - 2 * plan->t) {
            frame_fail_number(FRAME_IMPOSSIBLE, "at_in", step.at_in,
                              "in order, two studs clear of the last and of the ends");
            return frame_fail_within("steps[%zu].", i);
        }
        last = step.at_in;
        if (!frame_array_push(&plan->steps, &step)) return FRAME_NO_MEMORY;
    }
    return FRAME_OK;
}

/* The height over all at the start, by one of three. */
static frame_status take_height(const frame_wall_in *in, frame_wall_plan *plan, frame_working *w) {
    const int ways = (in->height_in != FRAME_NOT_GIVEN) + (in->ceiling_in != FRAME_NOT_GIVEN) +
                     (in->stud_length_in != FRAME_NOT_GIVEN);
    if (ways == 0)
        return frame_fail(FRAME_REQUIRED, "height_in", "", "height_in, ceiling_in or stud_length_in",
                          "height_in: not given; the wall's height, the ceiling's or the studs' length is required");
    if (ways > 1)
        return frame_fail(FRAME_CONFLICT, "height_in", "", "one of height_in, ceiling_in, stud_length_in",
                          "height_in: more than one of height_in, ceiling_in and stud_length_in is given");
    if (in->stud_length_in != FRAME_NOT_GIVEN && !plan->level)
        return frame_fail_number(FRAME_CONFLICT, "stud_length_in", in->stud_length_in,
                                 "left out where the wall is raked, slopes or steps: give height_in");
    FRAME_HEADING(w, "Height");
    FRAME_GIVEN(w, t, plan->t, "in", "thickness of studs and plates");
    FRAME_GIVEN(w, n_top, in->top_plates, "", "top plates");
    FRAME_GIVEN(w, n_bottom, in->bottom_plates, "", "bottom plates");
    FRAME_GIVEN(w, m_top, in->slope, "", "slope of the top");
    FRAME_GIVEN(w, m_bottom, in->bottom_slope, "", "slope of what it stands on");
    FRAME_STEP(w, plates, n_top * t * sqrt(1 + pow(m_top, 2)) + n_bottom * t * sqrt(1 + pow(m_bottom, 2)), "in",
               "plates, measured plumb", trade);
    if (in->ceiling_in != FRAME_NOT_GIVEN) {
        FRAME_GIVEN(w, c, in->ceiling_in, "in", "finished ceiling over the finished floor");
        FRAME_GIVEN(w, f_floor, in->floor_finish_in, "in", "finish on the floor the wall stands on");
        FRAME_GIVEN(w, f_ceiling, in->ceiling_finish_in, "in", "finish under the ceiling's framing");
        FRAME_STEP(w, h, c + f_floor + f_ceiling, "in", "height over all at the start", trade);
        plan->height = h;
    } else if (in->stud_length_in != FRAME_NOT_GIVEN) {
        FRAME_GIVEN(w, l, in->stud_length_in, "in", "length of the studs");
        FRAME_STEP(w, h, l + plates, "in", "height over all", trade);
        plan->height = h;
    } else {
        plan->height = in->height_in;
    }
    FRAME_GIVEN(w, height, plan->height, "in", "height over all at the start");
    FRAME_STEP(w, stud, height - plates, "in", "between the plates at the start", trade);
    if (stud <= 0) return frame_fail_number(FRAME_IMPOSSIBLE, "height_in", height, "more than the plates");
    return FRAME_OK;
}

/* Nowhere may the plates meet. */
static frame_status check_heights(const frame_wall_plan *plan) {
    const double length = plan->in->length_in;
    double least = fmin(frame_wall_stud_top(plan, 0) - frame_wall_stud_bottom(plan, 0, 1),
                        frame_wall_stud_top(plan, length) - frame_wall_stud_bottom(plan, length, -1));
    for (size_t i = 0; i < plan->steps.count; i++) {
        const double x = FRAME_ITEM(frame_wall_step, plan->steps, i).at_in;
        least = fmin(least, frame_wall_stud_top(plan, x) -
                                fmax(frame_wall_stud_bottom(plan, x, -1), frame_wall_stud_bottom(plan, x, 1)));
    }
    if (least > 0) return FRAME_OK;
    return frame_fail_number(FRAME_IMPOSSIBLE, "height_in", plan->height,
                             "more: somewhere the top plates would come down to the bottom plates");
}

frame_status frame_wall_take(const frame_wall_in *in, frame_wall_plan *plan, frame_answer *answer, frame_working *w) {
    plan->in = in;
    frame_status status = take_section(in, plan, answer);
    if (!status) status = take_top(in, plan);
    if (!status) status = take_steps(in, plan);
    if (status) return status;
    plan->level =
        in->slope == 0 && (isinf(plan->peak) || plan->far_slope == 0) && in->bottom_slope == 0 && in->step_count == 0;
    plan->start_other = in->start_other_in == FRAME_NOT_GIVEN ? plan->d : in->start_other_in;
    plan->end_other = in->end_other_in == FRAME_NOT_GIVEN ? plan->d : in->end_other_in;
    plan->sheet = in->sheet_in == FRAME_NOT_GIVEN ? frame_sheet_for(in->spacing_in) : in->sheet_in;
    if (fmax(in->length_in, fabs(in->datum_in)) / plan->sheet > 100000)
        return frame_fail_number(FRAME_TOO_LARGE, "sheet_in", plan->sheet, "at most 100,000 sheets");
    if (in->length_in < 2 * plan->t)
        return frame_fail_number(FRAME_IMPOSSIBLE, "length_in", in->length_in, "at least two studs");
    status = take_height(in, plan, w);
    return status ? status : check_heights(plan);
}
