/* One fastener of a frame's joint: the fields that all these joints share, and its values. */
#ifndef FRAME_LIB_JOINT_NAILING_H
#define FRAME_LIB_JOINT_NAILING_H

#include "joint/fastening.h"

/* The fastener and its two members, as the in-structs have them, and how the joint holds it. */
typedef struct frame_nailing {
    frame_dowel_kind kind;
    frame_design_method method;
    frame_species side_species, main_species;
    frame_service service, made;
    const char *size;
    double diameter_in, length_in, root_diameter_in, bending_yield_psi;
    double side_thickness_in, main_thickness_in;
    double side_specific_gravity, main_specific_gravity;
    double load_duration_factor, time_effect_factor;
    int toe_nail, end_grain, steel_side;
    double gap_in, side_angle_deg, main_angle_deg;
} frame_nailing;

#define FRAME_NAILING_OF(in)                                                                                        \
    {                                                                                                               \
        .kind = (in)->kind, .method = (in)->method, .side_species = (in)->side_species,                             \
        .main_species = (in)->main_species, .service = (in)->service, .made = (in)->made, .size = (in)->size,       \
        .diameter_in = (in)->diameter_in, .length_in = (in)->length_in, .root_diameter_in = (in)->root_diameter_in, \
        .bending_yield_psi = (in)->bending_yield_psi, .side_thickness_in = (in)->side_thickness_in,                 \
        .main_thickness_in = (in)->main_thickness_in, .side_specific_gravity = (in)->side_specific_gravity,         \
        .main_specific_gravity = (in)->main_specific_gravity, .load_duration_factor = (in)->load_duration_factor,   \
        .time_effect_factor = (in)->time_effect_factor                                                              \
    }

/* The adjusted lateral value, by dowel_lateral. */
frame_status frame_nailing_lateral(const frame_nailing *nailing, frame_dowel_lateral_out *value, frame_working *w);
/* The adjusted withdrawal value, by dowel_withdrawal; 0 where the fastener is in end grain and holds nothing. */
frame_status frame_nailing_withdrawal(const frame_nailing *nailing, double *value_lb, frame_known *known,
                                      frame_working *w);
/* Cautions that a fastener's value brings, and what no joint of several checks. */
uint64_t frame_nailing_cautions(const frame_nailing *nailing, const frame_dowel_lateral_out *value);
uint64_t frame_nailing_unchecked(void);
/* The defaults that this joint has no use for, of those whose bits are given: time_effect never is one; root of
 * threaded fasteners only; side, the default for toe-nails; driven, all that fasteners need. used: there are
 * fasteners. */
uint64_t frame_nailing_unused(const frame_nailing *nailing, int used, uint64_t root, uint64_t side, uint64_t driven);
#define FRAME_NAILING_FORGET(NAME, nailing, used, side, bits)                                                        \
    (bits) &= ~(FRAME_BIT(FRAME_ASSUMED_##NAME##_IN_TIME_EFFECT_FACTOR) |                                            \
                frame_nailing_unused(                                                                                \
                    nailing, used, FRAME_BIT(FRAME_ASSUMED_##NAME##_IN_ROOT_DIAMETER_IN), side,                      \
                    FRAME_BIT(FRAME_ASSUMED_##NAME##_IN_METHOD) | FRAME_BIT(FRAME_ASSUMED_##NAME##_IN_SERVICE) |     \
                        FRAME_BIT(FRAME_ASSUMED_##NAME##_IN_MADE) | FRAME_BIT(FRAME_ASSUMED_##NAME##_IN_LENGTH_IN) | \
                        FRAME_BIT(FRAME_ASSUMED_##NAME##_IN_BENDING_YIELD_PSI)))
/* A count that carries so many shares of one, not driven up by an error in the last bit. */
int32_t frame_count_for(double shares);
/* Within, but for an error in the last bit. */
static inline int frame_within(double ratio) {
    return ratio <= 1 + 1e-9;
}

#endif
