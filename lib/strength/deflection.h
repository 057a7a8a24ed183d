/* Deflection: NDS 2018 3.5. */
#ifndef FRAME_LIB_STRENGTH_DEFLECTION_H
#define FRAME_LIB_STRENGTH_DEFLECTION_H

#include "strength/one_span.h"

#include "working/plain_math.h"

/* The sag at mid-span under a load of one plf. A sloped member is longer than its plan and carries only the part of the
 * load that is square to it: its sag, square to it, is that of the level span over the square of the cosine. */
FRAME_ALWAYS_INLINE double frame_bending_unit_sag(const frame_bending_ask *ask, double E_prime, double I,
                                                  frame_working *record) {
    const double L = ask->span, c = ask->slope_cosine;
    if (c < 1) {
        FRAME_STEP(record, Delta_1, 5 * pow(L, 4) / (12 * 384 * E_prime * I * pow(c, 2)), "in",
                   "deflection under one plf of plan, square to the rafter", "simple span, uniform load");
        return Delta_1;
    }
    FRAME_STEP(record, Delta_1, 5 * pow(L, 4) / (12 * 384 * E_prime * I), "in", "deflection under one plf",
               "simple span, uniform load");
    return Delta_1;
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
    const double Delta_1 = frame_bending_unit_sag(ask, r->e_adjusted, r->inertia, record);
    FRAME_STEP(record, Delta_t, Delta_1 * w_t, "in", "deflection under live load or snow", "");
    FRAME_STEP(record, Delta_D, Delta_1 * w_D, "in", "deflection under dead load", "");
    FRAME_TABLE(record, K_cr, ask->creep, "", "creep factor", "NDS 2018 3.5.2 (from memory)");
    FRAME_STEP(record, Delta_T, K_cr * Delta_D + Delta_t, "in", "deflection in all, with creep", "NDS 2018 3.5.2");
    FRAME_STEP(record, per_l, 1 / l, "1/in", "one over the span", "");
    r->transient = w_t;
    r->deflection_live = Delta_t;
    r->deflection_total = Delta_T;
    r->live_ratio = r->total_ratio = r->deflection_ratio = r->live_limit = r->total_limit = FRAME_NOT_GIVEN;
    if (ask->in_line || ask->live_limit > 0) {
        FRAME_GIVEN(record, limit_t, ask->live_limit, "", "span over allowed deflection under live load or snow");
        FRAME_STEP(record, live_ratio, Delta_t * limit_t * per_l, "", "share of the allowed deflection used", "");
        r->live_limit = l / limit_t;
        r->deflection_ratio = r->live_ratio = live_ratio;
    }
    if (ask->in_line || ask->total_limit > 0) {
        FRAME_GIVEN(record, limit_T, ask->total_limit, "", "span over allowed deflection in all");
        FRAME_STEP(record, total_ratio, Delta_T * limit_T * per_l, "", "share of the allowed deflection in all used", "");
        r->total_limit = l / limit_T;
        r->total_ratio = total_ratio;
        r->deflection_ratio = fmax(r->deflection_ratio, total_ratio);
    }
}

#endif
