/* The valley by the handbook's formulas, and as a stick. What it shares with the hip is in hip_shape.c and hip_stick.c.
 */
#include "roof/cut_list.h"
#include "roof/hip.h"
#include "roof_facts.h"
#include "working/calculation.h"

static frame_hip_facts read_facts(const frame_valley_in *in) {
    return (frame_hip_facts){
        .valley = 1,
        .slope_a = in->slope_a,
        .slope_b = in->slope_b,
        .corner_deg = in->corner_deg,
        .run_in = in->run_in,
        .thickness_in = in->thickness_in,
        .depth_in = in->depth_in,
        .overhang_in = in->overhang_in,
        .height_above_plate_in = in->height_above_plate_in,
        .against_thickness_in = in->against_thickness_in,
        .plate_width_in = in->plate_width_in,
        .size = in->size,
        .head = in->head,
        .tail = in->tail,
        .eaves = in->eaves,
        .name = in->name,
    };
}

static void note(const frame_hip_facts *in, const frame_hip_figures *figures, frame_valley_out *out) {
    out->cautions = FRAME_BIT(FRAME_VALLEY_CAUTION_BEAM) | FRAME_BIT(FRAME_VALLEY_CAUTION_COMPOUND) |
                    FRAME_BIT(FRAME_VALLEY_CAUTION_MEASURE) | FRAME_BIT(FRAME_VALLEY_CAUTION_PROUD);
    if (frame_hip_past_tilt(in, figures)) out->cautions |= FRAME_BIT(FRAME_VALLEY_CAUTION_PAST_TILT);
    if (in->slope_a > 1.5 || in->slope_b > 1.5) out->cautions |= FRAME_BIT(FRAME_VALLEY_CAUTION_SLOPE);
    if (figures->notch_depth_in > figures->notch_limit_in) out->cautions |= FRAME_BIT(FRAME_VALLEY_CAUTION_NOTCH);
    out->not_checked = FRAME_BIT(FRAME_VALLEY_UNCHECKED_STRENGTH) | FRAME_BIT(FRAME_VALLEY_UNCHECKED_SNOW);
}

static frame_status compute(const frame_valley_in *in, frame_valley_out *out, frame_working *w) {
    frame_hip_facts facts = read_facts(in);
    frame_hip_figures figures;
    frame_status status = frame_hip_take_section(&facts);
    if (!status) status = frame_hip_compute(&facts, &figures, w);
    if (!status) status = frame_hip_beside_stick(&facts, &figures, w);
    if (status) return status;
    FRAME_HIP_GIVE(out, figures);
    out->known = facts.known;
    if (facts.size != FRAME_NOT_GIVEN_INT) out->assumed &= ~FRAME_BIT(FRAME_ASSUMED_VALLEY_IN_THICKNESS_IN);
    note(&facts, &figures, out);
    return FRAME_OK;
}

FRAME_IMPLEMENT(valley, compute);

frame_status frame_valley_stick(const frame_valley_in *given, frame_stick **stick) {
    frame_valley_in in;
    uint64_t assumed = 0;
    frame_hip_figures figures;
    frame_status status = frame_valley_in_read(given, &in, &assumed);
    if (status) return status;
    frame_hip_facts facts = read_facts(&in);
    status = frame_hip_take_section(&facts);
    if (!status) status = frame_hip_compute(&facts, &figures, NULL); /* refuses what cannot be */
    return status ? status : frame_hip_make_stick(&facts, stick);
}

FRAME_DRAW_STICK(valley);
