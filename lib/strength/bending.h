/* A member in bending on one simple span under uniform load: the checks of NDS 2018 3.2 to 3.5 and 3.10, shared by all
 * calculations that need them. Inline: a check without a working compiles to the bare formulas. */
#ifndef FRAME_LIB_STRENGTH_BENDING_H
#define FRAME_LIB_STRENGTH_BENDING_H

#include "base/facts.h"
#include "strength/bearing.h"
#include "strength/deflection.h"
#include "strength/format.h"
#include "strength/one_span.h"
#include "strength/refusals.h"
#include "strength/shear.h"
#include "strength/stability.h"

#include "working/plain_math.h"

/* Plies side by side, or flat on one another, add up; they are never one block. */
FRAME_ALWAYS_INLINE void frame_bending_section(const frame_member *m, frame_bending *r, frame_working *record) {
    FRAME_HEADING(record, "Section");
    frame_record_edition(m->edition, record);
    FRAME_GIVEN(record, n, m->plies, "", "number of plies");
    FRAME_TABLE(record, b, m->breadth, "in", "breadth of one ply", m->section_source);
    FRAME_TABLE(record, d, m->depth, "in", "depth of one ply along the load", m->section_source);
    FRAME_STEP(record, A, n * b * d, "in2", "area", "rectangles");
    FRAME_STEP(record, S, n * b * pow(d, 2) / 6, "in3", "section modulus", "rectangles");
    FRAME_STEP(record, I, n * b * pow(d, 3) / 12, "in4", "moment of inertia", "rectangles");
    r->area = A;
    r->section_modulus = S;
    r->inertia = I;
}

/* E' and E_min': never with C_D. */
FRAME_ALWAYS_INLINE double frame_bending_stiffness_by(const frame_member *m, int want_min, int lrfd, frame_bending *r,
                                                      frame_working *record) {
    FRAME_HEADING(record, "Stiffness");
    FRAME_TABLE(record, C_M_E, m->wet->e, "", "wet service factor on E", m->wet->source);
    FRAME_TABLE(record, C_t_E, m->temperature_e, "", "temperature factor on E", "NDS 2018 table 2.3.3");
    FRAME_TABLE(record, C_i_E, m->incised->e, "", "incising factor on E", m->incised->source);
    FRAME_TABLE(record, C_fu_E, m->flat_use->e, "", "flat use factor on E", m->flat_use->source);
    FRAME_TABLE(record, E, m->lumber.e_psi, "psi", "modulus of elasticity", m->lumber.source);
    FRAME_STEP(record, E_prime, E * C_M_E * C_t_E * C_i_E * C_fu_E, "psi", "adjusted modulus of elasticity",
               "NDS 2018 table 4.3.1");
    r->e_adjusted = E_prime;
    if (!want_min) return 0;
    FRAME_TABLE(record, E_min, m->lumber.e_min_psi, "psi", "modulus for stability", m->lumber.source);
    if (lrfd) {
        FRAME_TABLE(record, K_F_E, FRAME_FORMAT_KF(FRAME_FORMAT_E_MIN), "", "format conversion factor on E_min",
                    FRAME_FORMAT_SOURCE);
        FRAME_TABLE(record, phi_E, FRAME_FORMAT_PHI(FRAME_FORMAT_E_MIN), "", "resistance factor on E_min",
                    FRAME_FORMAT_SOURCE);
        FRAME_STEP(record, E_min_prime, E_min * C_M_E * C_t_E * C_i_E * C_fu_E * K_F_E * phi_E, "psi",
                   "adjusted modulus for stability", "NDS 2018 table 4.3.1");
        return E_min_prime;
    }
    FRAME_STEP(record, E_min_prime, E_min * C_M_E * C_t_E * C_i_E * C_fu_E, "psi", "adjusted modulus for stability",
               "NDS 2018 table 4.3.1");
    return E_min_prime;
}

FRAME_ALWAYS_INLINE double frame_bending_no_buckling(frame_working *record) {
    FRAME_TABLE(record, C_L, 1, "", "beam stability factor", "NDS 2018 3.3.3");
    return C_L;
}

/* F_b*, under one combination: all factors but C_L and C_fu. factor: C_D, or lambda in LRFD. */
FRAME_ALWAYS_INLINE double frame_bending_star(const frame_member *m, double repetitive, int lrfd, double factor,
                                              frame_working *record) {
    FRAME_TABLE(record, F_b, m->lumber.fb_psi, "psi", "bending design value", m->lumber.source);
    FRAME_TABLE(record, C_M, m->wet->fb, "", "wet service factor", m->wet->source);
    FRAME_TABLE(record, C_t, m->temperature_stress, "", "temperature factor", "NDS 2018 table 2.3.3");
    FRAME_TABLE(record, C_F, m->size_factor, "", "size factor", m->lumber.size_source);
    FRAME_TABLE(record, C_i, m->incised->fb, "", "incising factor", m->incised->source);
    FRAME_TABLE(record, C_r, repetitive, "", "repetitive member factor", "NDS 2018 4.3.9");
    if (lrfd) {
        FRAME_TABLE(record, K_F_b, FRAME_FORMAT_KF(FRAME_FORMAT_FB), "", "format conversion factor on F_b",
                    FRAME_FORMAT_SOURCE);
        FRAME_TABLE(record, phi_b, FRAME_FORMAT_PHI(FRAME_FORMAT_FB), "", "resistance factor on F_b",
                    FRAME_FORMAT_SOURCE);
        FRAME_TABLE(record, lambda, factor, "", "time effect factor of this combination", FRAME_LAMBDA_SOURCE);
        FRAME_STEP(record, F_b_star, F_b * C_M * C_t * C_F * C_i * C_r * K_F_b * phi_b * lambda, "psi",
                   "bending design value, all factors but C_L and C_fu", "NDS 2018 table 4.3.1");
        return F_b_star;
    }
    FRAME_TABLE(record, C_D, factor, "", "load duration factor of this combination", FRAME_DURATION_SOURCE);
    FRAME_STEP(record, F_b_star, F_b * C_D * C_M * C_t * C_F * C_i * C_r, "psi",
               "bending design value, all factors but C_L and C_fu", "NDS 2018 table 4.3.1");
    return F_b_star;
}

/* F_b' under one combination. F_bE is 0 where C_L is 1 by rule. */
FRAME_ALWAYS_INLINE double frame_bending_allowed_by(const frame_member *m, double repetitive, int lrfd, double factor,
                                                    double F_bE, frame_bending *r, frame_working *record) {
    const double F_b_star = frame_bending_star(m, repetitive, lrfd, factor, record);
    const double C_L = F_bE > 0 ? frame_beam_stability(F_bE, F_b_star, record) : frame_bending_no_buckling(record);
    FRAME_TABLE(record, C_fu, m->flat_use->fb, "", "flat use factor", m->flat_use->source);
    FRAME_STEP(record, F_b_prime, F_b_star * C_L * C_fu, "psi", "adjusted bending design value",
               "NDS 2018 table 4.3.1");
    r->stability = C_L;
    return F_b_prime;
}

/* The same two for allowable stress design. */
FRAME_ALWAYS_INLINE double frame_bending_allowed(const frame_member *m, double repetitive, double load_duration,
                                                 double F_bE, frame_bending *r, frame_working *record) {
    return frame_bending_allowed_by(m, repetitive, 0, load_duration, F_bE, r, record);
}
FRAME_ALWAYS_INLINE double frame_bending_stiffness(const frame_member *m, int want_min, frame_bending *r,
                                                   frame_working *record) {
    return frame_bending_stiffness_by(m, want_min, 0, r, record);
}

/* C_L depends on C_D, so that with it the largest total over C_D need not govern: each is tried. */
FRAME_ALWAYS_INLINE int frame_bending_combination(const frame_member *m, double repetitive, int lrfd,
                                                  const frame_combinations *c, double F_bE, frame_bending *r) {
    int governs = 0;
    double most = 0;
    for (int i = 0; i < FRAME_COMBINATIONS; i++) {
        if (!(c->total[i] > 0)) continue;
        const double share = c->total[i] / frame_bending_allowed_by(m, repetitive, lrfd, c->factor[i], F_bE, r, NULL);
        if (share > most) most = share, governs = i;
    }
    return governs;
}

/* Where the compression edge is held, or d is no more than b, C_L is 1 (NDS 3.3.3) and F_bE stays 0. */
FRAME_ALWAYS_INLINE frame_status frame_bending_buckling(const frame_member *m, const frame_bending_ask *ask,
                                                        double E_min_prime, double *F_bE, frame_bending *r,
                                                        frame_working *record) {
    const double n = m->plies, b = m->breadth, d = m->depth, l_u = ask->unbraced;
    *F_bE = 0;
    r->slenderness = FRAME_NOT_GIVEN;
    if (!(l_u > 0)) {
        FRAME_CASE(record, "the compression edge is held along its length", "C_L is 1", "NDS 2018 3.3.3.3");
        return FRAME_OK;
    }
    if (d <= b || (!m->flat && d <= n * b)) {
        FRAME_CASE(record, m->flat ? "d <= b" : "d <= n * b", "not deeper than broad: C_L is 1", "NDS 2018 3.3.3.1");
        return FRAME_OK;
    }
    FRAME_STEP(record, b_n, n * b, "in", "breadth of all plies", "");
    r->slenderness = frame_beam_slenderness(l_u, b_n, d, FRAME_LENGTH_UNIFORM, record);
    if (r->slenderness > 50) return frame_too_slender(r->slenderness, l_u);
    *F_bE = frame_beam_buckling(r->slenderness, E_min_prime, record);
    return FRAME_OK;
}

FRAME_ALWAYS_INLINE void frame_bending_stress(const frame_member *m, const frame_bending_ask *ask,
                                              const frame_combinations *c, double F_bE, frame_bending *r,
                                              frame_working *record) {
    const double L_ft = ask->span / 12, S = r->section_modulus;
    double total = c->governing_total, factor = c->governing_factor;
    r->combination = c->governs;
    if (F_bE > 0) {
        const int i = frame_bending_combination(m, ask->repetitive, ask->lrfd, c, F_bE, r);
        r->combination = i + 1;
        total = c->total[i];
        factor = c->factor[i];
    }
    FRAME_HEADING(record, "Bending");
    r->combination = FRAME_COMBINATION_WORD(ask, r->combination);
    FRAME_TABLE(record, w, total, "plf", "load of the combination that governs bending",
                FRAME_COMBINATION_NAME(r->combination));
    FRAME_STEP(record, M, 12 * w * pow(L_ft, 2) / 8, "lb-in", "bending moment at mid-span",
               "simple span, uniform load");
    FRAME_STEP(record, f_b, M / S, "psi", "bending stress", "NDS 2018 3.3.2");
    const double F_b_prime = frame_bending_allowed_by(m, ask->repetitive, ask->lrfd, factor, F_bE, r, record);
    FRAME_STEP(record, bending_ratio, f_b / F_b_prime, "", "share of the bending strength used", "NDS 2018 3.3.1");
    r->moment = M;
    r->fb = f_b;
    r->fb_adjusted = F_b_prime;
    r->load_duration = factor;
    r->bending_ratio = bending_ratio;
}

/* The largest ratio; one that was not checked is far below zero. */
FRAME_ALWAYS_INLINE void frame_bending_sum_up(frame_bending *r, frame_working *record) {
    r->ratio = r->bending_ratio;
    r->governs = FRAME_GOVERNS_BENDING;
    if (r->shear_ratio > r->ratio) r->ratio = r->shear_ratio, r->governs = FRAME_GOVERNS_SHEAR;
    if (r->bearing_ratio > r->ratio) r->ratio = r->bearing_ratio, r->governs = FRAME_GOVERNS_BEARING;
    if (r->deflection_ratio > r->ratio) r->ratio = r->deflection_ratio, r->governs = FRAME_GOVERNS_DEFLECTION;
    frame_record_result(r->ratio, r->governs, record);
}

FRAME_ALWAYS_INLINE frame_bool frame_bending_passes(const frame_bending *r) {
    return frame_holds(r->ratio);
}

/* All checks. The caller has found the section, and recorded the span L, the loads w_D, w_L, w_Lr, w_S and, for a
 * slope, its cosine c. */
FRAME_ALWAYS_INLINE frame_status frame_bending_check(const frame_member *m, const frame_bending_ask *ask,
                                                     const frame_loads *loads, frame_bending *r,
                                                     frame_working *record) {
    frame_combinations service, strength;
    double F_bE;
    frame_combine(loads, &service, record);
    if (ask->lrfd) frame_combine_strength(loads, ask->edition, &strength, record);
    const frame_combinations *c = ask->lrfd ? &strength : &service;
    const double E_min_prime = frame_bending_stiffness_by(m, ask->unbraced > 0, ask->lrfd, r, record);
    const frame_status status = frame_bending_buckling(m, ask, E_min_prime, &F_bE, r, record);
    if (status) return status;
    frame_bending_stress(m, ask, c, F_bE, r, record);
    frame_bending_shear(m, ask, c, r, record);
    frame_bending_bearing(m, ask, c, r, record);
    frame_bending_deflection(ask, loads->dead, &service, r, record);
    frame_bending_sum_up(r, record);
    return FRAME_OK;
}

#endif
