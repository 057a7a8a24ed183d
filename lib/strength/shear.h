/* Shear along the grain: NDS 2018 3.4. */
#ifndef FRAME_LIB_STRENGTH_SHEAR_H
#define FRAME_LIB_STRENGTH_SHEAR_H

#include "strength/format.h"
#include "strength/one_span.h"

#include "working/plain_math.h"

/* At a notch in the tension edge, NDS 3.4.3.2(a): the stress on what is left, raised by (d / d_n) squared. */
FRAME_ALWAYS_INLINE double frame_bending_notched(const frame_member *m, double V, double notch, frame_working *record) {
    const double n = m->plies, b = m->breadth, d = m->depth;
    FRAME_GIVEN(record, h, notch, "in", "depth of the notch");
    FRAME_STEP(record, d_n, d - h, "in", "depth left at the notch", "");
    FRAME_STEP(record, f_v, 3 * V / (2 * n * b * d_n) * pow(d / d_n, 2), "psi", "shear stress at the notch",
               "NDS 2018 3.4.3.2(a) (from memory)");
    return f_v;
}

FRAME_ALWAYS_INLINE double frame_bending_shear_force(const frame_bending_ask *ask, double d, double w_v,
                                                     frame_working *record) {
    const double L_ft = ask->span / 12;
    if (ask->shear_reduced) {
        FRAME_STEP(record, V, w_v * fmax(L_ft / 2 - d / 12, 0), "lb", "shear at d from the support",
                   "NDS 2018 3.4.3.1(a) (from memory)");
        return V;
    }
    FRAME_STEP(record, V, w_v * L_ft / 2, "lb", "shear at the support", "simple span, uniform load");
    return V;
}

FRAME_ALWAYS_INLINE double frame_bending_shear_stress(const frame_member *m, const frame_bending_ask *ask, double V,
                                                      double A, frame_working *record) {
    if (ask->notch > 0) return frame_bending_notched(m, V, ask->notch, record);
    FRAME_STEP(record, f_v, 3 * V / (2 * A), "psi", "shear stress", "NDS 2018 3.4.2");
    return f_v;
}

/* F_v'. factor: C_D, or lambda in LRFD. */
FRAME_ALWAYS_INLINE double frame_bending_shear_allowed_by(const frame_member *m, int lrfd, double factor,
                                                          frame_working *record) {
    FRAME_TABLE(record, F_v, m->lumber.fv_psi, "psi", "shear design value", m->lumber.source);
    FRAME_TABLE(record, C_M_v, m->wet->fv, "", "wet service factor on F_v", m->wet->source);
    FRAME_TABLE(record, C_t_v, m->temperature_stress, "", "temperature factor on F_v", "NDS 2018 table 2.3.3");
    FRAME_TABLE(record, C_i_v, m->incised->fv, "", "incising factor on F_v", m->incised->source);
    if (lrfd) {
        FRAME_TABLE(record, K_F_v, FRAME_FORMAT_KF(FRAME_FORMAT_FV), "", "format conversion factor on F_v",
                    FRAME_FORMAT_SOURCE " (from memory)");
        FRAME_TABLE(record, phi_v, FRAME_FORMAT_PHI(FRAME_FORMAT_FV), "", "resistance factor on F_v",
                    FRAME_FORMAT_SOURCE " (from memory)");
        FRAME_TABLE(record, lambda_v, factor, "", "time effect factor of this combination", FRAME_LAMBDA_SOURCE);
        FRAME_STEP(record, F_v_prime, F_v * C_M_v * C_t_v * C_i_v * K_F_v * phi_v * lambda_v, "psi",
                   "adjusted shear design value", "NDS 2018 table 4.3.1");
        return F_v_prime;
    }
    FRAME_TABLE(record, C_D_v, factor, "", "load duration factor of this combination", FRAME_DURATION_SOURCE);
    FRAME_STEP(record, F_v_prime, F_v * C_D_v * C_M_v * C_t_v * C_i_v, "psi", "adjusted shear design value",
               "NDS 2018 table 4.3.1");
    return F_v_prime;
}

/* The same for allowable stress design. */
FRAME_ALWAYS_INLINE double frame_bending_shear_allowed(const frame_member *m, double load_duration,
                                                       frame_working *record) {
    return frame_bending_shear_allowed_by(m, 0, load_duration, record);
}

FRAME_ALWAYS_INLINE void frame_bending_shear(const frame_member *m, const frame_bending_ask *ask,
                                             const frame_combinations *c, frame_bending *r, frame_working *record) {
    r->shear_combination = FRAME_COMBINATION_WORD(ask, c->governs);
    FRAME_HEADING(record, "Shear");
    FRAME_TABLE(record, w_v, c->governing_total, "plf", "load of the combination that governs shear",
                FRAME_COMBINATION_NAME(r->shear_combination));
    const double V = frame_bending_shear_force(ask, m->depth, w_v, record);
    const double f_v = frame_bending_shear_stress(m, ask, V, r->area, record);
    const double F_v_prime = frame_bending_shear_allowed_by(m, ask->lrfd, c->governing_factor, record);
    FRAME_STEP(record, shear_ratio, f_v / F_v_prime, "", "share of the shear strength used", "NDS 2018 3.4.1");
    r->shear = V;
    r->fv = f_v;
    r->fv_adjusted = F_v_prime;
    r->shear_load_duration = c->governing_factor;
    r->shear_ratio = shear_ratio;
}

#endif
