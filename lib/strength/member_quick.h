/* The usual member without a call or a copy: dimension lumber of the tables on edge, dry, not incised, at usual
 * temperatures. All that is 1 is known to be 1 when this is compiled. */
#ifndef FRAME_LIB_STRENGTH_MEMBER_QUICK_H
#define FRAME_LIB_STRENGTH_MEMBER_QUICK_H

#include "material/lumber_rows.h"
#include "strength/one_span.h"

#include "working/plain_math.h"

static const frame_stress_factors frame_member_dry = {
    1, 1, 1, 1, 1, 1, 1, FRAME_KNOWN_READ, "dry in use, NDS 2018 4.3.3"};
static const frame_stress_factors frame_member_not_incised = {
    1, 1, 1, 1, 1, 1, 1, FRAME_KNOWN_READ, "not incised, NDS 2018 4.3.8"};
static const frame_stress_factors frame_member_on_edge = {
    1, 1, 1, 1, 1, 1, 1, FRAME_KNOWN_READ, "on edge, NDS 2018 4.3.7"};

FRAME_ALWAYS_INLINE void frame_member_values(const frame_lumber_values_row *row, frame_member *m) {
    m->lumber.fb_psi = row->fb_psi;
    m->lumber.fv_psi = row->fv_psi;
    m->lumber.fc_perp_psi = row->fc_perp_psi;
    m->lumber.e_psi = row->e_psi;
    m->lumber.e_min_psi = row->e_min_psi;
    m->lumber.doubtful = row->doubtful != 0;
    m->lumber.superseded = row->superseded != 0;
}

/* Sets up what a check without a working needs. 0 where there is no such dimension lumber: then frame_member_find says
 * why, or does it the long way. */
FRAME_ALWAYS_INLINE int frame_member_quick(frame_size size, frame_species species, frame_grade grade, int32_t plies,
                                           frame_member *m) {
    const frame_lumber_sizes_row *made = frame_size_row(size);
    const frame_lumber_values_row *row = made ? frame_lumber_row(species, grade, made) : NULL;
    const frame_lumber_size_factors_row *factors = row ? frame_lumber_size_factors(row, made) : NULL;
    if (!factors) return 0;
    m->plies = plies;
    m->breadth = made->dry_thickness_in;
    m->depth = made->dry_width_in;
    m->flat = m->user = 0;
    m->size_factor = factors->fb;
    m->wet = &frame_member_dry;
    m->incised = &frame_member_not_incised;
    m->flat_use = &frame_member_on_edge;
    m->temperature_stress = m->temperature_e = 1;
    m->known = row->known > factors->known ? row->known : factors->known;
    if (made->known > m->known) m->known = made->known;
    frame_member_values(row, m);
    return 1;
}

/* C_r of such a member where the caller leaves it to the rule. */
FRAME_ALWAYS_INLINE double frame_member_quick_sharing(int32_t plies, double spacing_in) {
    const double shared = frame_lumber_factors_table[FRAME_FACTORS_REPETITIVE].fb;
    return plies == 1 && spacing_in <= 24 ? shared : 1;
}

#endif
