/* A member in bending on one simple span under uniform load: the checks of NDS 2018 3.2 to 3.5 and 3.10, shared by all
 * calculations that need them. Inline: a check without a working compiles to the bare formulas. */
#ifndef FRAME_LIB_STRENGTH_BENDING_H
#define FRAME_LIB_STRENGTH_BENDING_H

#include "base/facts.h"
#include "load/combination.h"
#include "strength/member.h"
#include "strength/refusals.h"
#include "strength/stability.h"

#include "working/plain_math.h"

/* What the checks go by besides the member and its loads. */
typedef struct frame_bending_ask {
    double span;         /* in, on plan */
    double slope_cosine; /* 1 for a level member */
    double unbraced;     /* in; 0 where the compression edge is held */
    double bearing;      /* in; 0 where bearing is not checked */
    double notch;        /* in, at the ends, on the edge in tension */
    double repetitive;   /* C_r */
    double live_limit;   /* span over deflection; 0 where it is not checked */
    double total_limit;
    double creep;
    int shear_reduced; /* leave out what lies within d of the supports, NDS 3.4.3.1 */
} frame_bending_ask;

typedef struct frame_bending {
    double area, section_modulus, inertia;
    double moment, shear, reaction;
    double fb, fb_adjusted, fv, fv_adjusted, fc_perp, fc_perp_adjusted, e_adjusted;
    double deflection_live, deflection_total, live_limit, total_limit, bearing_needed;
    double bending_ratio, shear_ratio, bearing_ratio, live_ratio, total_ratio, deflection_ratio, ratio;
    double load_duration, shear_load_duration, stability, slenderness, transient;
    int combination, shear_combination; /* 0 to 5 */
    frame_governing governs;
} frame_bending;

FRAME_ALWAYS_INLINE int frame_given(double value) {
    return value != FRAME_NOT_GIVEN;
}
FRAME_ALWAYS_INLINE double frame_or(double value, double otherwise) {
    return frame_given(value) ? value : otherwise;
}
FRAME_ALWAYS_INLINE int32_t frame_or_int(int32_t value, int32_t otherwise) {
    return value != FRAME_NOT_GIVEN_INT ? value : otherwise;
}

/* NDS 3.5.2 (from memory): 1.5 for seasoned lumber, 2.0 for lumber that is or stays wet. */
FRAME_ALWAYS_INLINE double frame_creep_factor(double value, frame_service service) {
    return frame_or(value, service == FRAME_SERVICE_WET ? 2.0 : 1.5);
}

#define FRAME_COMBINATION_NAME(i) frame_word_text("load_combination", (i) + 1)

/* Plies side by side, or flat on one another, add up; they are never one block. */
FRAME_ALWAYS_INLINE void frame_bending_section(const frame_member *m, frame_bending *r, frame_working *record) {
    FRAME_HEADING(record, "Section");
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
FRAME_ALWAYS_INLINE double frame_bending_stiffness(const frame_member *m, int want_min, frame_bending *r,
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
    FRAME_STEP(record, E_min_prime, E_min * C_M_E * C_t_E * C_i_E * C_fu_E, "psi", "adjusted modulus for stability",
               "NDS 2018 table 4.3.1");
    return E_min_prime;
}

FRAME_ALWAYS_INLINE double frame_bending_no_buckling(frame_working *record) {
    FRAME_TABLE(record, C_L, 1, "", "beam stability factor", "NDS 2018 3.3.3");
    return C_L;
}

/* F_b' under one combination. F_bE is 0 where C_L is 1 by rule. */
FRAME_ALWAYS_INLINE double frame_bending_allowed(const frame_member *m, double repetitive, double load_duration,
                                                 double F_bE, frame_bending *r, frame_working *record) {
    FRAME_TABLE(record, F_b, m->lumber.fb_psi, "psi", "bending design value", m->lumber.source);
    FRAME_TABLE(record, C_D, load_duration, "", "load duration factor of this combination", FRAME_DURATION_SOURCE);
    FRAME_TABLE(record, C_M, m->wet->fb, "", "wet service factor", m->wet->source);
    FRAME_TABLE(record, C_t, m->temperature_stress, "", "temperature factor", "NDS 2018 table 2.3.3");
    FRAME_TABLE(record, C_F, m->size_factor, "", "size factor", m->lumber.size_source);
    FRAME_TABLE(record, C_i, m->incised->fb, "", "incising factor", m->incised->source);
    FRAME_TABLE(record, C_r, repetitive, "", "repetitive member factor", "NDS 2018 4.3.9");
    FRAME_STEP(record, F_b_star, F_b * C_D * C_M * C_t * C_F * C_i * C_r, "psi",
               "bending design value, all factors but C_L and C_fu", "NDS 2018 table 4.3.1");
    const double C_L = F_bE > 0 ? frame_beam_stability(F_bE, F_b_star, record) : frame_bending_no_buckling(record);
    FRAME_TABLE(record, C_fu, m->flat_use->fb, "", "flat use factor", m->flat_use->source);
    FRAME_STEP(record, F_b_prime, F_b_star * C_L * C_fu, "psi", "adjusted bending design value",
               "NDS 2018 table 4.3.1");
    r->stability = C_L;
    return F_b_prime;
}

/* C_L depends on C_D, so that with it the largest total over C_D need not govern. */
FRAME_ALWAYS_INLINE int frame_bending_combination(const frame_member *m, double repetitive, const frame_combinations *c,
                                                  double F_bE, frame_bending *r) {
    if (!(F_bE > 0)) return frame_combination_governing(c);
    int governs = 0;
    double most = 0;
    for (int i = 0; i < FRAME_COMBINATIONS; i++) {
        if (!(c->total[i] > 0)) continue;
        const double share = c->total[i] / frame_bending_allowed(m, repetitive, c->factor[i], F_bE, r, NULL);
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
    const double L = ask->span, S = r->section_modulus;
    const int i = r->combination = frame_bending_combination(m, ask->repetitive, c, F_bE, r);
    FRAME_HEADING(record, "Bending");
    FRAME_TABLE(record, w, c->total[i], "plf", "load of the combination that governs bending",
                FRAME_COMBINATION_NAME(i));
    FRAME_STEP(record, M, w / 12 * pow(L, 2) / 8, "lb-in", "bending moment at mid-span", "simple span, uniform load");
    FRAME_STEP(record, f_b, M / S, "psi", "bending stress", "NDS 2018 3.3.2");
    const double F_b_prime = frame_bending_allowed(m, ask->repetitive, c->factor[i], F_bE, r, record);
    FRAME_STEP(record, bending_ratio, f_b / F_b_prime, "", "share of the bending strength used", "NDS 2018 3.3.1");
    r->moment = M;
    r->fb = f_b;
    r->fb_adjusted = F_b_prime;
    r->load_duration = c->factor[i];
    r->bending_ratio = bending_ratio;
}

/* At a notch in the tension edge, NDS 3.4.3.2(a): the stress on what is left, raised by (d / d_n) squared. */
FRAME_ALWAYS_INLINE double frame_bending_notched(const frame_member *m, double V, double notch, frame_working *record) {
    const double n = m->plies, b = m->breadth, d = m->depth;
    FRAME_GIVEN(record, h, notch, "in", "depth of the notch");
    FRAME_STEP(record, d_n, d - h, "in", "depth left at the notch", "");
    FRAME_STEP(record, f_v, 3 * V / (2 * n * b * d_n) * pow(d / d_n, 2), "psi", "shear stress at the notch",
               "NDS 2018 3.4.3.2(a)");
    return f_v;
}

FRAME_ALWAYS_INLINE double frame_bending_shear_force(const frame_bending_ask *ask, double d, double w_v,
                                                     frame_working *record) {
    const double L = ask->span;
    if (ask->shear_reduced) {
        FRAME_STEP(record, V, w_v / 12 * fmax(L / 2 - d, 0), "lb", "shear at d from the support",
                   "NDS 2018 3.4.3.1(a)");
        return V;
    }
    FRAME_STEP(record, V, w_v / 12 * L / 2, "lb", "shear at the support", "simple span, uniform load");
    return V;
}

FRAME_ALWAYS_INLINE double frame_bending_shear_stress(const frame_member *m, const frame_bending_ask *ask, double V,
                                                      double A, frame_working *record) {
    if (ask->notch > 0) return frame_bending_notched(m, V, ask->notch, record);
    FRAME_STEP(record, f_v, 3 * V / (2 * A), "psi", "shear stress", "NDS 2018 3.4.2");
    return f_v;
}

FRAME_ALWAYS_INLINE double frame_bending_shear_allowed(const frame_member *m, double load_duration,
                                                       frame_working *record) {
    FRAME_TABLE(record, F_v, m->lumber.fv_psi, "psi", "shear design value", m->lumber.source);
    FRAME_TABLE(record, C_D_v, load_duration, "", "load duration factor of this combination", FRAME_DURATION_SOURCE);
    FRAME_TABLE(record, C_M_v, m->wet->fv, "", "wet service factor on F_v", m->wet->source);
    FRAME_TABLE(record, C_t_v, m->temperature_stress, "", "temperature factor on F_v", "NDS 2018 table 2.3.3");
    FRAME_TABLE(record, C_i_v, m->incised->fv, "", "incising factor on F_v", m->incised->source);
    FRAME_STEP(record, F_v_prime, F_v * C_D_v * C_M_v * C_t_v * C_i_v, "psi", "adjusted shear design value",
               "NDS 2018 table 4.3.1");
    return F_v_prime;
}

FRAME_ALWAYS_INLINE void frame_bending_shear(const frame_member *m, const frame_bending_ask *ask,
                                             const frame_combinations *c, frame_bending *r, frame_working *record) {
    const int i = r->shear_combination = frame_combination_governing(c);
    FRAME_HEADING(record, "Shear");
    FRAME_TABLE(record, w_v, c->total[i], "plf", "load of the combination that governs shear",
                FRAME_COMBINATION_NAME(i));
    const double V = frame_bending_shear_force(ask, m->depth, w_v, record);
    const double f_v = frame_bending_shear_stress(m, ask, V, r->area, record);
    const double F_v_prime = frame_bending_shear_allowed(m, c->factor[i], record);
    FRAME_STEP(record, shear_ratio, f_v / F_v_prime, "", "share of the shear strength used", "NDS 2018 3.4.1");
    r->shear = V;
    r->fv = f_v;
    r->fv_adjusted = F_v_prime;
    r->shear_load_duration = c->factor[i];
    r->shear_ratio = shear_ratio;
}

/* F_c-perp': never with C_D; C_b is 1 at the end of a member. */
FRAME_ALWAYS_INLINE double frame_bending_crushing(const frame_member *m, frame_working *record) {
    FRAME_TABLE(record, F_c_perp, m->lumber.fc_perp_psi, "psi", "design value across the grain", m->lumber.source);
    FRAME_TABLE(record, C_M_p, m->wet->fc_perp, "", "wet service factor on F_c-perp", m->wet->source);
    FRAME_TABLE(record, C_t_p, m->temperature_stress, "", "temperature factor on F_c-perp", "NDS 2018 table 2.3.3");
    FRAME_TABLE(record, C_i_p, m->incised->fc_perp, "", "incising factor on F_c-perp", m->incised->source);
    FRAME_TABLE(record, C_b, 1, "", "bearing area factor at the end of a member", "NDS 2018 3.10.4");
    FRAME_STEP(record, F_c_perp_prime, F_c_perp * C_M_p * C_t_p * C_i_p * C_b, "psi",
               "adjusted design value across the grain", "NDS 2018 table 4.3.1");
    return F_c_perp_prime;
}

FRAME_ALWAYS_INLINE void frame_bending_bearing(const frame_member *m, const frame_bending_ask *ask,
                                               const frame_combinations *c, frame_bending *r, frame_working *record) {
    const double L = ask->span;
    FRAME_HEADING(record, "Bearing");
    FRAME_TABLE(record, w_max, c->greatest, "plf", "largest load of the combinations", "ASCE 7-16 2.4.1");
    FRAME_STEP(record, R, w_max / 12 * L / 2, "lb", "reaction at each end", "simple span, uniform load");
    FRAME_TABLE(record, b_b, m->flat ? m->breadth : m->plies * m->breadth, "in", "breadth that bears", "");
    const double F_c_perp_prime = frame_bending_crushing(m, record);
    FRAME_STEP(record, l_needed, R / (b_b * F_c_perp_prime), "in", "length of bearing that would do",
               "NDS 2018 3.10.2");
    r->reaction = R;
    r->fc_perp_adjusted = F_c_perp_prime;
    r->bearing_needed = l_needed;
    r->fc_perp = r->bearing_ratio = FRAME_NOT_GIVEN;
    if (!(ask->bearing > 0)) return;
    FRAME_GIVEN(record, l_b, ask->bearing, "in", "length of bearing");
    FRAME_STEP(record, f_c_perp, R / (b_b * l_b), "psi", "bearing stress", "NDS 2018 3.10.2");
    FRAME_STEP(record, bearing_ratio, f_c_perp / F_c_perp_prime, "", "share of the bearing strength used",
               "NDS 2018 3.10.2");
    r->fc_perp = f_c_perp;
    r->bearing_ratio = bearing_ratio;
}

/* A sloped member is longer than its plan and carries only the part of the load that is square to it: the sag, square
 * to it, is that of the level span over the square of the cosine. */
FRAME_ALWAYS_INLINE double frame_bending_sag(const frame_bending_ask *ask, double w_t, double E_prime, double I,
                                             frame_working *record) {
    const double L = ask->span, c = ask->slope_cosine;
    if (c < 1) {
        FRAME_STEP(record, Delta_t, 5 * (w_t / 12) * pow(L, 4) / (384 * E_prime * I * pow(c, 2)), "in",
                   "deflection under live load or snow, square to the rafter", "simple span, uniform load");
        return Delta_t;
    }
    FRAME_STEP(record, Delta_t, 5 * (w_t / 12) * pow(L, 4) / (384 * E_prime * I), "in",
               "deflection under live load or snow", "simple span, uniform load");
    return Delta_t;
}

FRAME_ALWAYS_INLINE double frame_bending_sag_dead(const frame_bending_ask *ask, double w_D, double E_prime, double I,
                                                  frame_working *record) {
    const double L = ask->span, c = ask->slope_cosine;
    if (c < 1) {
        FRAME_STEP(record, Delta_D, 5 * (w_D / 12) * pow(L, 4) / (384 * E_prime * I * pow(c, 2)), "in",
                   "deflection under dead load, square to the rafter", "simple span, uniform load");
        return Delta_D;
    }
    FRAME_STEP(record, Delta_D, 5 * (w_D / 12) * pow(L, 4) / (384 * E_prime * I), "in", "deflection under dead load",
               "simple span, uniform load");
    return Delta_D;
}

FRAME_ALWAYS_INLINE double frame_bending_length(const frame_bending_ask *ask, frame_working *record) {
    const double L = ask->span, c = ask->slope_cosine;
    if (c < 1) {
        FRAME_STEP(record, l, L / c, "in", "span along the slope", "");
        return l;
    }
    FRAME_STEP(record, l, L, "in", "span", "");
    return l;
}

FRAME_ALWAYS_INLINE void frame_bending_deflection(const frame_bending_ask *ask, double w_D, const frame_combinations *c,
                                                  frame_bending *r, frame_working *record) {
    FRAME_HEADING(record, "Deflection");
    FRAME_TABLE(record, w_t, c->transient, "plf", "largest load of the combinations without the dead load",
                "ASCE 7-16 2.4.1");
    const double l = frame_bending_length(ask, record);
    const double Delta_t = frame_bending_sag(ask, w_t, r->e_adjusted, r->inertia, record);
    const double Delta_D = frame_bending_sag_dead(ask, w_D, r->e_adjusted, r->inertia, record);
    FRAME_TABLE(record, K_cr, ask->creep, "", "creep factor", "NDS 2018 3.5.2");
    FRAME_STEP(record, Delta_T, K_cr * Delta_D + Delta_t, "in", "deflection in all, with creep", "NDS 2018 3.5.2");
    r->transient = w_t;
    r->deflection_live = Delta_t;
    r->deflection_total = Delta_T;
    r->live_ratio = r->total_ratio = r->deflection_ratio = r->live_limit = r->total_limit = FRAME_NOT_GIVEN;
    if (ask->live_limit > 0) {
        FRAME_GIVEN(record, limit_t, ask->live_limit, "", "span over allowed deflection under live load or snow");
        FRAME_STEP(record, live_ratio, Delta_t / (l / limit_t), "", "share of the allowed deflection used", "");
        r->live_limit = l / limit_t;
        r->deflection_ratio = r->live_ratio = live_ratio;
    }
    if (ask->total_limit > 0) {
        FRAME_GIVEN(record, limit_T, ask->total_limit, "", "span over allowed deflection in all");
        FRAME_STEP(record, total_ratio, Delta_T / (l / limit_T), "", "share of the allowed deflection in all used", "");
        r->total_limit = l / limit_T;
        r->total_ratio = total_ratio;
        r->deflection_ratio = fmax(r->deflection_ratio, total_ratio);
    }
}

/* The largest ratio; one that was not checked is far below zero. */
FRAME_ALWAYS_INLINE void frame_bending_sum_up(frame_bending *r, frame_working *record) {
    r->ratio = r->bending_ratio;
    r->governs = FRAME_GOVERNS_BENDING;
    if (r->shear_ratio > r->ratio) r->ratio = r->shear_ratio, r->governs = FRAME_GOVERNS_SHEAR;
    if (r->bearing_ratio > r->ratio) r->ratio = r->bearing_ratio, r->governs = FRAME_GOVERNS_BEARING;
    if (r->deflection_ratio > r->ratio) r->ratio = r->deflection_ratio, r->governs = FRAME_GOVERNS_DEFLECTION;
    FRAME_HEADING(record, "Result");
    FRAME_TABLE(record, ratio, r->ratio, "", "the largest of the ratios", frame_word_text("governing", r->governs));
    FRAME_CASE(record, ratio <= 1 ? "ratio <= 1" : "ratio > 1", ratio <= 1 ? "it holds" : "it does not hold", "");
    (void)ratio;
}

/* A ratio of 1 stands as 1 whatever the rounding of the arithmetic made of it. */
FRAME_ALWAYS_INLINE frame_bool frame_bending_passes(const frame_bending *r) {
    return r->ratio <= 1 + 1e-9;
}

/* All checks. The caller has found the section, and recorded the span L, the loads w_D, w_L, w_Lr, w_S and, for a
 * slope, its cosine c. */
FRAME_ALWAYS_INLINE frame_status frame_bending_check(const frame_member *m, const frame_bending_ask *ask,
                                                     const frame_loads *loads, frame_bending *r,
                                                     frame_working *record) {
    frame_combinations c;
    double F_bE;
    frame_combine(loads, &c, record);
    const double E_min_prime = frame_bending_stiffness(m, ask->unbraced > 0, r, record);
    const frame_status status = frame_bending_buckling(m, ask, E_min_prime, &F_bE, r, record);
    if (status) return status;
    frame_bending_stress(m, ask, &c, F_bE, r, record);
    frame_bending_shear(m, ask, &c, r, record);
    frame_bending_bearing(m, ask, &c, r, record);
    frame_bending_deflection(ask, loads->dead, &c, r, record);
    frame_bending_sum_up(r, record);
    return FRAME_OK;
}

#endif
