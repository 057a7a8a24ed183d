/* Compression across the grain over the supports: NDS 2018 3.10. */
#ifndef FRAME_LIB_STRENGTH_BEARING_H
#define FRAME_LIB_STRENGTH_BEARING_H

#include "strength/format.h"
#include "strength/one_span.h"

#include "working/plain_math.h"

/* F_c-perp': never with C_D; C_b is 1 at the end of a member. */
FRAME_ALWAYS_INLINE double frame_bending_crushing_by(const frame_member *m, int lrfd, frame_working *record) {
    FRAME_TABLE(record, F_c_perp, m->lumber.fc_perp_psi, "psi", "design value across the grain", m->lumber.source);
    FRAME_TABLE(record, C_M_p, m->wet->fc_perp, "", "wet service factor on F_c-perp", m->wet->source);
    FRAME_TABLE(record, C_t_p, m->temperature_stress, "", "temperature factor on F_c-perp", "NDS 2018 table 2.3.3");
    FRAME_TABLE(record, C_i_p, m->incised->fc_perp, "", "incising factor on F_c-perp", m->incised->source);
    FRAME_TABLE(record, C_b, 1, "", "bearing area factor at the end of a member", "NDS 2018 3.10.4 (from memory)");
    if (lrfd) {
        FRAME_TABLE(record, K_F_p, FRAME_FORMAT_KF(FRAME_FORMAT_FC_PERP), "", "format conversion factor on F_c-perp",
                    FRAME_FORMAT_SOURCE);
        FRAME_TABLE(record, phi_p, FRAME_FORMAT_PHI(FRAME_FORMAT_FC_PERP), "", "resistance factor on F_c-perp",
                    FRAME_FORMAT_SOURCE);
        FRAME_STEP(record, F_c_perp_prime, F_c_perp * C_M_p * C_t_p * C_i_p * C_b * K_F_p * phi_p, "psi",
                   "adjusted design value across the grain", "NDS 2018 table 4.3.1");
        return F_c_perp_prime;
    }
    FRAME_STEP(record, F_c_perp_prime, F_c_perp * C_M_p * C_t_p * C_i_p * C_b, "psi",
               "adjusted design value across the grain", "NDS 2018 table 4.3.1");
    return F_c_perp_prime;
}

/* The same for allowable stress design. */
FRAME_ALWAYS_INLINE double frame_bending_crushing(const frame_member *m, frame_working *record) {
    return frame_bending_crushing_by(m, 0, record);
}

FRAME_ALWAYS_INLINE void frame_bending_bearing(const frame_member *m, const frame_bending_ask *ask,
                                               const frame_combinations *c, frame_bending *r, frame_working *record) {
    const double L_ft = ask->span / 12;
    FRAME_HEADING(record, "Bearing");
    FRAME_TABLE(record, w_max, c->greatest, "plf", "largest load of the combinations",
                ask->lrfd ? "ASCE 7 2.3.1" : "ASCE 7 2.4.1");
    FRAME_STEP(record, R, w_max * L_ft / 2, "lb", "reaction at each end", "simple span, uniform load");
    FRAME_TABLE(record, b_b, m->flat ? m->breadth : m->plies * m->breadth, "in", "breadth that bears", "");
    const double F_c_perp_prime = frame_bending_crushing_by(m, ask->lrfd, record);
    r->reaction = R;
    r->fc_perp_adjusted = F_c_perp_prime;
    if (!ask->in_line && !(ask->bearing > 0)) {
        FRAME_STEP(record, l_needed, R / (b_b * F_c_perp_prime), "in", "length of bearing that would do",
                   "NDS 2018 3.10.2");
        r->bearing_needed = l_needed;
        r->fc_perp = r->bearing_ratio = FRAME_NOT_GIVEN;
        return;
    }
    FRAME_GIVEN(record, l_b, ask->bearing, "in", "length of bearing");
    FRAME_STEP(record, f_c_perp, R / (b_b * l_b), "psi", "bearing stress", "NDS 2018 3.10.2");
    FRAME_STEP(record, bearing_ratio, f_c_perp / F_c_perp_prime, "", "share of the bearing strength used",
               "NDS 2018 3.10.2");
    FRAME_STEP(record, l_needed, bearing_ratio * l_b, "in", "length of bearing that would do", "NDS 2018 3.10.2");
    r->fc_perp = f_c_perp;
    r->bearing_ratio = bearing_ratio;
    r->bearing_needed = l_needed;
}

#endif
