/* A broken hip: the hip between the higher roof and the far side of the lower ridge's. It is a hip whose building lines
 * are the ridges' heights: the lower ridge's centre stands for the corner of the walls. */
#include <math.h>

#include "base/error.h"
#include "roof/cut_list.h"
#include "roof/hip.h"
#include "roof_facts.h"
#include "working/calculation.h"

static const char trade[] = "common practice, conventions: hip and valley";

static frame_hip_facts read_facts(const frame_broken_hip_in *in) {
    return (frame_hip_facts){
        .slope_a = in->slope_a,
        .slope_b = in->slope_b,
        .corner_deg = in->corner_deg,
        .run_in = in->rise_in / in->slope_a,
        .thickness_in = in->thickness_in,
        .depth_in = in->depth_in,
        .height_above_plate_in = FRAME_NOT_GIVEN,
        .against_thickness_in = in->ridge_thickness_in,
        .size = in->size,
        .head = in->head == FRAME_BROKEN_HIP_END_RIDGE ? FRAME_HIP_HEAD_RIDGE : FRAME_HIP_HEAD_PLUMB,
        .lowered = in->top == FRAME_HIP_TOP_DROPPED,
        .backed = in->top == FRAME_HIP_TOP_BACKED,
        .tail = FRAME_HIP_TAIL_PLUMB,
        .eaves = FRAME_EAVES_PLATES_LEVEL,
        .name = in->name ? in->name : "broken hip",
        .foot = 1,
        .foot_cut = in->foot,
        .foot_half = in->lower_ridge_thickness_in / 2,
    };
}

/* What the foot's cut takes off, and what is left. */
static frame_status find_foot(const frame_hip_facts *facts, frame_hip_figures *figures, frame_broken_hip_out *out,
                              frame_working *w) {
    FRAME_HEADING(w, "Foot");
    FRAME_GIVEN(w, half, facts->foot_half, "in", "half the lower ridge");
    FRAME_GIVEN(w, beta, 90 - figures->ridge_cheek_b_deg, "deg", "angle in plan to the lower ridge");
    FRAME_GIVEN(w, turned, facts->foot_cut == FRAME_BROKEN_HIP_END_RIDGE, "", "1 against the ridge's face, 0 square");
    FRAME_GIVEN(w, m, figures->slope, "", "slope of the piece");
    FRAME_GIVEN(w, shortened, figures->shortened_length_in, "in", "line length to the head's cut");
    FRAME_STEP(w, foot, turned ? half / sin(beta * FRAME_DEG) : half, "in", "deduction along the run", trade);
    FRAME_STEP(w, foot_along, foot * sqrt(1 + pow(m, 2)), "in", "deduction along the slope", trade);
    FRAME_STEP(w, length, shortened - foot_along, "in", "along the centre line, foot to head", trade);
    out->foot_deduction_in = foot;
    out->foot_deduction_along_in = foot_along;
    figures->length_in = out->length_in = length;
    if (length > 0) return FRAME_OK;
    return frame_fail_number(FRAME_IMPOSSIBLE, "rise_in", facts->run_in * facts->slope_a,
                             "more: the deductions at head and foot take the whole of it");
}

static void find_steps(const frame_hip_figures *figures, frame_broken_hip_out *out, frame_working *w) {
    FRAME_HEADING(w, "Stepping off from the foot's cut");
    FRAME_GIVEN(w, blade, figures->square_blade_in, "in", "held on the blade");
    FRAME_GIVEN(w, m, figures->slope, "", "slope of the piece");
    FRAME_GIVEN(w, run_short, figures->plan_run_in - out->head_deduction_in - out->foot_deduction_in, "in",
                "run from cut to cut");
    FRAME_STEP(w, step, blade * sqrt(1 + pow(m, 2)), "in", "length of one step", "right triangle");
    FRAME_STEP(w, full_steps, floor(run_short / blade + 1e-9), "", "whole steps", trade);
    FRAME_STEP(w, odd_step, fmax(run_short - full_steps * blade, 0), "in", "odd step, on the blade", trade);
    out->square_blade_in = blade;
    out->square_tongue_in = figures->square_tongue_in;
    out->step_length_in = step;
    out->full_steps = (int32_t)full_steps;
    out->odd_step_in = odd_step;
}

static void give(const frame_hip_figures *from, frame_broken_hip_out *out) {
    out->line_length_in = from->line_length_in;
    out->plan_run_in = from->plan_run_in;
    out->slope = from->slope;
    out->plumb_cut_deg = from->plumb_cut_deg, out->level_cut_deg = from->level_cut_deg;
    out->head_deduction_in = from->deduction_in, out->head_deduction_along_in = from->deduction_along_in;
    out->cheek_a_deg = from->cheek_a_deg, out->cheek_b_deg = from->cheek_b_deg;
    out->backing_a_deg = from->backing_a_deg, out->backing_b_deg = from->backing_b_deg;
    out->drop_a_in = from->drop_a_in, out->drop_b_in = from->drop_b_in;
    out->sheathing_a_deg = from->sheathing_a_deg, out->sheathing_b_deg = from->sheathing_b_deg;
}

static void note(const frame_broken_hip_in *in, const frame_hip_figures *figures, frame_broken_hip_out *out) {
    const double most = 45 + 1e-6;
    out->head_cheek_deg = in->head == FRAME_BROKEN_HIP_END_RIDGE ? figures->ridge_cheek_a_deg : 0;
    out->foot_cheek_deg = in->foot == FRAME_BROKEN_HIP_END_RIDGE ? figures->ridge_cheek_b_deg : 0;
    out->cautions = FRAME_BIT(FRAME_BROKEN_HIP_CAUTION_BEAM) | FRAME_BIT(FRAME_BROKEN_HIP_CAUTION_COMPOUND);
    if (out->head_cheek_deg > most || out->foot_cheek_deg > most)
        out->cautions |= FRAME_BIT(FRAME_BROKEN_HIP_CAUTION_PAST_TILT);
    if (in->slope_a > 1.5 || in->slope_b > 1.5) out->cautions |= FRAME_BIT(FRAME_BROKEN_HIP_CAUTION_SLOPE);
    out->not_checked = FRAME_BIT(FRAME_BROKEN_HIP_UNCHECKED_STRENGTH);
    if (in->size != FRAME_NOT_GIVEN_INT) out->assumed &= ~FRAME_BIT(FRAME_ASSUMED_BROKEN_HIP_IN_THICKNESS_IN);
}

static frame_status compute(const frame_broken_hip_in *in, frame_broken_hip_out *out, frame_working *w) {
    frame_hip_facts facts = read_facts(in);
    frame_hip_figures figures;
    frame_status status = frame_hip_take_section(&facts);
    if (!status) status = frame_hip_compute(&facts, &figures, w);
    if (status) return status;
    give(&figures, out);
    status = find_foot(&facts, &figures, out, w);
    if (status) return status;
    find_steps(&figures, out, w);
    out->known = facts.known;
    note(in, &figures, out);
    return frame_hip_beside_stick(&facts, &figures, w);
}

FRAME_IMPLEMENT(broken_hip, compute);

frame_status frame_broken_hip_stick(const frame_broken_hip_in *given, frame_stick **stick) {
    frame_broken_hip_in in;
    frame_broken_hip_out out;
    uint64_t assumed = 0;
    frame_status status = frame_broken_hip_in_read(given, &in, &assumed);
    if (!status) status = frame_broken_hip(given, &out, NULL); /* refuses what cannot be */
    if (status) return status;
    frame_hip_facts facts = read_facts(&in);
    status = frame_hip_take_section(&facts);
    return status ? status : frame_hip_make_stick(&facts, stick);
}

FRAME_DRAW_STICK(broken_hip);
