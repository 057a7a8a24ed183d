/* One smooth nail in single shear, wood to wood, all else left to its default: the same formulas as the long way's,
 * without what cannot matter here. A test holds the two ways together to the last bit. */
#include "joint/lateral_usual.h"

#include <stddef.h>
#include <string.h>

#include "joint/small.h"
#include "joint/yield_single.h"
#include "joint_facts.h"
#include "material/lumber.h"

/* Whether any field from one to before another is not as the init function left it. */
FRAME_ALWAYS_INLINE uint64_t touched(const frame_dowel_lateral_in *in, size_t from, size_t end) {
    const char *ours = (const char *)in, *blank = frame_dowel_lateral_in_facts.blank;
    uint64_t bits = 0;
    for (size_t i = from; i < end; i += sizeof bits) {
        uint64_t one, other;
        memcpy(&one, ours + i, sizeof one);
        memcpy(&other, blank + i, sizeof other);
        bits |= one ^ other;
    }
    return bits;
}
#define TOUCHED(in, first, after) \
    touched(in, offsetof(frame_dowel_lateral_in, first), offsetof(frame_dowel_lateral_in, after))

FRAME_ALWAYS_INLINE int given(double value) {
    return value != FRAME_NOT_GIVEN;
}

/* Everything left to its default but what frame_lateral_usual may be given. */
FRAME_ALWAYS_INLINE int is_usual(const frame_dowel_lateral_in *in) {
    const int nail = in->kind >= FRAME_DOWEL_COMMON_NAIL && in->kind <= FRAME_DOWEL_SINKER_NAIL;
    const int members = (in->side_material == FRAME_NOT_GIVEN_INT) & (in->main_material == FRAME_NOT_GIVEN_INT) &
                        (in->shear_planes == FRAME_NOT_GIVEN_INT);
    const uint64_t bits = TOUCHED(in, short_penetration, size) | TOUCHED(in, root_diameter_in, length_in) |
                          TOUCHED(in, tip_in, side_thickness_in) |
                          TOUCHED(in, second_side_thickness_in, side_specific_gravity) |
                          TOUCHED(in, side_bearing_psi, load_duration_factor) |
                          touched(in, offsetof(frame_dowel_lateral_in, temperature_f), sizeof *in);
    return (nail & members) && !bits;
}

/* The specific gravity, by the species or given; 0 where the long way must say what is wrong. */
FRAME_ALWAYS_INLINE double gravity_of(frame_species species, double specific_gravity, frame_known *known) {
    if (species == FRAME_NOT_GIVEN_INT) {
        *known = FRAME_KNOWN_USER;
        return specific_gravity >= 0.2 && specific_gravity <= 1.2 ? specific_gravity : 0;
    }
    return given(specific_gravity) ? 0 : frame_species_gravity(species, known);
}

/* The nail by its size, or by diameter and length. */
FRAME_ALWAYS_INLINE int find_nail(const frame_dowel_lateral_in *in, frame_fastener *nail) {
    if (in->size) {
        if (given(in->diameter_in) || given(in->length_in)) return 0;
        return frame_fastener_find_quietly(in->kind, in->size, nail);
    }
    nail->nominal_in = in->diameter_in;
    nail->length_in = in->length_in;
    nail->known = FRAME_KNOWN_USER;
    return in->diameter_in > 0 && in->length_in > 0 && in->length_in <= 48;
}

FRAME_ALWAYS_INLINE uint64_t assumed(const frame_dowel_lateral_in *in, frame_dowel_hold hold) {
    const uint64_t always =
        FRAME_BIT(FRAME_ASSUMED_DOWEL_LATERAL_IN_SIDE_MATERIAL) |
        FRAME_BIT(FRAME_ASSUMED_DOWEL_LATERAL_IN_MAIN_MATERIAL) |
        FRAME_BIT(FRAME_ASSUMED_DOWEL_LATERAL_IN_SHEAR_PLANES) |
        FRAME_BIT(FRAME_ASSUMED_DOWEL_LATERAL_IN_SHORT_PENETRATION) |
        FRAME_BIT(FRAME_ASSUMED_DOWEL_LATERAL_IN_BEARING_ROUNDING) | FRAME_BIT(FRAME_ASSUMED_DOWEL_LATERAL_IN_SERVICE) |
        FRAME_BIT(FRAME_ASSUMED_DOWEL_LATERAL_IN_MADE) | FRAME_BIT(FRAME_ASSUMED_DOWEL_LATERAL_IN_END_GRAIN) |
        FRAME_BIT(FRAME_ASSUMED_DOWEL_LATERAL_IN_TOE_NAIL) | FRAME_BIT(FRAME_ASSUMED_DOWEL_LATERAL_IN_DIAPHRAGM) |
        FRAME_BIT(FRAME_ASSUMED_DOWEL_LATERAL_IN_BENDING_YIELD_PSI) |
        FRAME_BIT(FRAME_ASSUMED_DOWEL_LATERAL_IN_PENETRATION_IN) | FRAME_BIT(FRAME_ASSUMED_DOWEL_LATERAL_IN_GAP_IN) |
        FRAME_BIT(FRAME_ASSUMED_DOWEL_LATERAL_IN_TEMPERATURE_F) |
        FRAME_BIT(FRAME_ASSUMED_DOWEL_LATERAL_IN_GROUP_FACTOR) |
        FRAME_BIT(FRAME_ASSUMED_DOWEL_LATERAL_IN_GEOMETRY_FACTOR) | FRAME_BIT(FRAME_ASSUMED_DOWEL_LATERAL_IN_METHOD) |
        FRAME_BIT(FRAME_ASSUMED_DOWEL_LATERAL_IN_EDITION);
    uint64_t bits = always;
    if (in->size) bits |= FRAME_BIT(FRAME_ASSUMED_DOWEL_LATERAL_IN_LENGTH_IN);
    if (hold == FRAME_HOLD_BY_EQUATIONS) bits |= FRAME_BIT(FRAME_ASSUMED_DOWEL_LATERAL_IN_TIP_IN);
    if (!given(in->load_duration_factor)) bits |= FRAME_BIT(FRAME_ASSUMED_DOWEL_LATERAL_IN_LOAD_DURATION_FACTOR);
    return bits;
}

FRAME_ALWAYS_INLINE void remarks(frame_dowel_lateral_out *out) {
    out->cautions = FRAME_BIT(FRAME_DOWEL_LATERAL_CAUTION_REACH);
    if (out->hold == FRAME_HOLD_BY_EQUATIONS) {
        out->known = FRAME_KNOWN_MEMORY;
        out->cautions |= FRAME_BIT(FRAME_DOWEL_LATERAL_CAUTION_SHORT);
    }
    if (out->known == FRAME_KNOWN_MEMORY) out->cautions |= FRAME_BIT(FRAME_DOWEL_LATERAL_CAUTION_MEMORY);
    out->not_checked = FRAME_BIT(FRAME_DOWEL_LATERAL_UNCHECKED_CORROSION + 1) - 1;
}

FRAME_ALWAYS_INLINE void give(const frame_yield *joint, const frame_yield_values *values,
                              frame_dowel_lateral_out *out) {
    out->mode = values->mode;
    out->z_lb = values->z;
    out->yield_lb = values->z * joint->R_d_I;
    out->z_im_lb = values->im;
    out->z_is_lb = values->is;
    out->z_ii_lb = values->ii;
    out->z_iiim_lb = values->iiim;
    out->z_iiis_lb = values->iiis;
    out->z_iv_lb = values->iv;
    out->reduction_i = out->reduction_ii = out->reduction_iii = joint->R_d_I;
    out->diameter_in = joint->D;
    out->fe_main_psi = joint->F_em;
    out->fe_side_psi = joint->F_es;
    out->fyb_psi = joint->F_yb;
    out->main_bearing_in = joint->l_m;
    out->side_bearing_in = joint->l_s;
    out->penetration_factor = 1;
    out->point_out_in = 0;
    out->wet_factor = out->temperature_factor = out->end_grain_factor = out->toe_nail_factor = 1;
    out->diaphragm_factor = out->format_factor = out->resistance_factor = 1;
    out->time_effect_factor = out->drift_pin_factor = 1;
    out->spare = 0;
}

FRAME_ALWAYS_INLINE int read_usual(const frame_dowel_lateral_in *in, frame_lateral_numbers *n) {
    frame_fastener nail;
    frame_known side_known = FRAME_KNOWN_USER, main_known = FRAME_KNOWN_USER;
    if (!is_usual(in) || !find_nail(in, &nail)) return 0;
    n->diameter = nail.nominal_in, n->length = nail.length_in, n->nail_known = nail.known;
    n->side_thickness = in->side_thickness_in;
    n->side_gravity = gravity_of(in->side_species, in->side_specific_gravity, &side_known);
    n->main_gravity = gravity_of(in->main_species, in->main_specific_gravity, &main_known);
    n->side_known = side_known, n->main_known = main_known;
    n->duration = given(in->load_duration_factor) ? in->load_duration_factor : 1;
    return (n->diameter < 0.25) & (n->side_gravity > 0) & (n->main_gravity > 0) & (n->side_thickness > 0) &
           (n->side_thickness <= 24) & (n->duration >= 0.9) & (n->duration <= 1.6);
}

int frame_lateral_is_usual(const frame_dowel_lateral_in *in, frame_lateral_numbers *numbers) {
    return read_usual(in, numbers);
}

int frame_lateral_usual(const frame_dowel_lateral_in *in, frame_dowel_lateral_out *out) {
    frame_lateral_numbers n;
    frame_yield joint;
    frame_yield_values values;
    frame_known steel_known;
    const char *source;
    if (!read_usual(in, &n)) return 0;
    const double D = n.diameter, t_s = n.side_thickness, p = n.length - t_s, p_min = 6 * D;
    if (!(p >= p_min - FRAME_DEPTH_PLAY) ||
        !frame_fastener_yield_quietly(in->kind, D, &joint.F_yb, &steel_known, &source))
        return 0;
    joint.D = D;
    joint.g = 0;
    joint.l_s = t_s;
    joint.l_m = frame_bearing_of_point(p, 2 * D, D, &out->hold, NULL);
    joint.F_em = frame_small_bearing(n.main_gravity, NULL);
    joint.F_es = n.side_gravity == n.main_gravity ? joint.F_em : frame_small_bearing(n.side_gravity, NULL);
    joint.R_d_I = joint.R_d_II = joint.R_d_III = frame_small_reduction(D, NULL);
    frame_yield_in_single_shear(&joint, &values, NULL);
    out->known =
        frame_known_worse(frame_known_worse(n.nail_known, steel_known),
                          frame_known_worse(frame_known_worse(n.side_known, n.main_known), FRAME_KNOWN_SECONDARY));
    give(&joint, &values, out);
    out->penetration_in = p;
    out->least_penetration_in = p_min;
    out->duration_factor = n.duration;
    out->adjusted_lb = values.z * n.duration;
    remarks(out);
    out->assumed = assumed(in, out->hold);
    return 1;
}
