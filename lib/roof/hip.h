/* What hip and valley share. In plan both run along x, side a to the right (-y); x is 0 where the line in which the
 * roof planes meet crosses the building line of side a; z is 0 at the top of side a's plate. The distance d_a from that
 * building line into the building, and d_b from the other, are then
 *
 *     d_a = x sin(alpha) +- y cos(alpha)       d_b = x sin(beta) -+ y cos(beta) + k      upper signs: hip; lower:
 * valley
 *
 * with alpha + beta the corner, and the roof planes z = h + slope_a d_a and z = h + plate_b + slope_b d_b. */
#ifndef FRAME_LIB_ROOF_HIP_H
#define FRAME_LIB_ROOF_HIP_H

#include <frame/roof.h>

#include "working/record.h"

/* What is asked, of either. Fields that only one of the two has are set to what the other always does. */
typedef struct frame_hip_facts {
    int valley;
    double slope_a, slope_b, corner_deg, run_in, thickness_in, depth_in, overhang_in, height_above_plate_in;
    double against_thickness_in, plate_width_in;
    frame_size size;
    int32_t head;    /* a frame_hip_head, or a frame_valley_head */
    int32_t lowered; /* dropped */
    int32_t backed;
    frame_hip_tail tail;
    frame_unequal_eaves eaves;
    const char *name;
    frame_known known;
    /* A broken hip has a foot in place of a tail: at the face of a ridge along side b's eave, or plumb. */
    int foot;
    int32_t foot_cut; /* a frame_broken_hip_end */
    double foot_half; /* half of what the foot is cut against */
} frame_hip_facts;

#define FRAME_HIP_FIGURES(F) \
    F(length_in)             \
    F(line_length_in)        \
    F(shortened_length_in)   \
    F(tail_length_in)        \
    F(per_foot_in)           \
    F(run_per_foot_in)       \
    F(plan_run_in)           \
    F(rise_in)               \
    F(slope)                 \
    F(plumb_cut_deg)         \
    F(level_cut_deg)         \
    F(cheek_a_deg)           \
    F(cheek_b_deg)           \
    F(top_edge_a_deg)        \
    F(top_edge_b_deg)        \
    F(side_cut_a_in)         \
    F(side_cut_b_in)         \
    F(ridge_cheek_a_deg)     \
    F(ridge_cheek_b_deg)     \
    F(backing_a_deg)         \
    F(backing_b_deg)         \
    F(drop_a_in)             \
    F(drop_b_in)             \
    F(deduction_in)          \
    F(deduction_along_in)    \
    F(run_b_in)              \
    F(overhang_b_in)         \
    F(plate_b_in)            \
    F(planes_deg)            \
    F(sheathing_a_deg)       \
    F(sheathing_b_deg)       \
    F(height_in)             \
    F(seat_in)               \
    F(heel_in)               \
    F(notch_depth_in)        \
    F(notch_limit_in)        \
    F(square_blade_in)       \
    F(square_tongue_in)      \
    F(odd_step_in)

typedef struct frame_hip_figures {
#define FRAME_HIP_DECLARE(field) double field;
    FRAME_HIP_FIGURES(FRAME_HIP_DECLARE)
#undef FRAME_HIP_DECLARE
    int32_t full_steps;
} frame_hip_figures;

/* Copies every figure into an out-struct. */
#define FRAME_HIP_COPY(field) out->field = figures.field;
#define FRAME_HIP_GIVE(out, figures)              \
    do {                                          \
        FRAME_HIP_FIGURES(FRAME_HIP_COPY)         \
        (out)->full_steps = (figures).full_steps; \
    } while (0)

/* Takes thickness and depth from the size where they are left out. */
frame_status frame_hip_take_section(frame_hip_facts *facts);
/* The handbook's formulas; facts with their section taken. */
frame_status frame_hip_compute(const frame_hip_facts *facts, frame_hip_figures *figures, frame_working *w);
/* The same piece from planes in space. */
frame_status frame_hip_make_stick(const frame_hip_facts *facts, frame_stick **stick);
/* Records what that piece measures beside the formulas, where there is a working and a depth. */
frame_status frame_hip_beside_stick(const frame_hip_facts *facts, const frame_hip_figures *figures, frame_working *w);
/* Whether the head can lie against a common rafter of a side, at this angle in plan to that side's eave. */
static inline int frame_hip_has_common(double angle_deg) {
    return angle_deg < 89;
}
/* Whether a cheek needs more tilt than most saws have. */
int frame_hip_past_tilt(const frame_hip_facts *facts, const frame_hip_figures *figures);

#endif
