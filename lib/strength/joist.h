/* What joist_check and joist_span share: their defaults by use, their loads, their not_checked. */
#ifndef FRAME_LIB_STRENGTH_JOIST_H
#define FRAME_LIB_STRENGTH_JOIST_H

#include "base/facts.h"
#include "strength/bending.h"
#include "strength/member_quick.h"
#include "table_joist_uses.h"

/* The row of defaults of a use. */
FRAME_ALWAYS_INLINE const frame_joist_uses_row *frame_joist_use_row(frame_joist_use use) {
    return &frame_joist_uses_table[use - 1];
}

/* What goes by the use where the caller says nothing. */
typedef struct frame_joist_defaults {
    frame_service service;
    int32_t incised; /* or FRAME_INCISED_BY_SPECIES */
    double dead_psf, live_limit, total_limit, creep;
} frame_joist_defaults;

/* A macro, because the two in-structs have fields of the same names; total is 0 where that is not checked. */
#define FRAME_JOIST_DEFAULTS(in, total, by_use)                                                                 \
    do {                                                                                                        \
        const frame_joist_uses_row *row = frame_joist_use_row((in)->use);                                       \
        (by_use)->service = frame_or_int((in)->service, row->wet != 0 ? FRAME_SERVICE_WET : FRAME_SERVICE_DRY); \
        (by_use)->incised = frame_or_int((in)->incised, row->incised != 0 ? FRAME_INCISED_BY_SPECIES : 0);      \
        (by_use)->dead_psf = frame_or((in)->dead_psf, row->dead_psf);                                           \
        (by_use)->live_limit = frame_or((in)->deflection_limit, row->live_limit);                               \
        (by_use)->total_limit = frame_or(total, row->total_limit);                                              \
        (by_use)->creep = frame_creep_factor((in)->creep_factor, (by_use)->service);                            \
    } while (0)

/* The member of a joist: for lumber of the tables, the usual case, without setting up all that might have been given.
 */
#define FRAME_JOIST_MEMBER(in, by_use, e_min, member)                                                                 \
    ((in)->edition == FRAME_NDS_2018 && frame_joist_is_plain((in)->width_in, (in)->depth_in, (in)->fb_psi,            \
                                                             (in)->fv_psi, (in)->fc_perp_psi, (in)->e_psi, e_min)     \
         ? frame_member_of_lumber((in)->size, (in)->species, (in)->grade, (in)->plies, FRAME_TURNED_ON_EDGE,          \
                                  (by_use).service, (by_use).incised, (in)->temperature, member)                      \
         : frame_member_find(                                                                                         \
               &(frame_member_ask){(in)->size, (in)->species, (in)->grade, (in)->plies, FRAME_TURNED_ON_EDGE,         \
                                   (by_use).service, (by_use).incised, (in)->temperature, (in)->width_in,             \
                                   (in)->depth_in, (in)->fb_psi, (in)->fv_psi, (in)->fc_perp_psi, (in)->e_psi, e_min, \
                                   (in)->edition, 0},                                                                 \
               member))

FRAME_ALWAYS_INLINE int frame_joist_is_plain(double width_in, double depth_in, double fb_psi, double fv_psi,
                                             double fc_perp_psi, double e_psi, double e_min_psi) {
    return !frame_given(width_in) && !frame_given(depth_in) && !frame_given(fb_psi) && !frame_given(fv_psi) &&
           !frame_given(fc_perp_psi) && !frame_given(e_psi) && !frame_given(e_min_psi);
}

/* 1 / sqrt(1 + slope squared), 1 for a level member. */
FRAME_ALWAYS_INLINE double frame_joist_cosine(double slope, frame_working *record) {
    if (!(slope > 0)) return 1;
    FRAME_GIVEN(record, s, slope, "", "slope, rise over run");
    FRAME_STEP(record, c, 1 / sqrt(1 + pow(s, 2)), "", "cosine of the slope", "");
    return c;
}

/* Pounds per foot of plan on one joist. A rafter's live load is roof live load; its dead load lies on the slope. */
FRAME_ALWAYS_INLINE void frame_joist_loads(frame_joist_use use, double spacing_in, double dead_psf, double live_psf,
                                           double snow_psf, double c, frame_load_edition edition, frame_loads *loads,
                                           frame_working *record) {
    FRAME_GIVEN(record, s_c, spacing_in, "in", "spacing, centre to centre");
    FRAME_GIVEN(record, p_D, dead_psf, "psf", "dead load");
    FRAME_GIVEN(record, p_L, live_psf, "psf", use == FRAME_USE_RAFTER ? "roof live load" : "live load");
    FRAME_GIVEN(record, p_S, snow_psf, "psf", "snow on plan");
    FRAME_STEP(record, s_ft, s_c / 12, "ft", "spacing in feet", "");
    if (c < 1) {
        FRAME_STEP(record, w_D, p_D * s_ft / c, "plf", "dead load on the slope, on a foot of plan", "");
        loads->dead = w_D;
    } else {
        FRAME_STEP(record, w_D, p_D * s_ft, "plf", "dead load on one joist", "");
        loads->dead = w_D;
    }
    if (use == FRAME_USE_RAFTER) {
        FRAME_STEP(record, w_Lr, p_L * s_ft, "plf", "roof live load on one rafter", "");
        loads->roof_live = w_Lr;
        loads->live = 0;
    } else {
        FRAME_STEP(record, w_L, p_L * s_ft, "plf", "live load on one joist", "");
        loads->live = w_L;
        loads->roof_live = 0;
    }
    if (edition == FRAME_LOADS_ASCE_7_22) {
        FRAME_STEP(record, w_S, 0.7 * p_S * s_ft, "plf", "snow on one joist, brought down from strength level",
                   "ASCE 7-22 2.4.1 (from memory)");
        loads->snow = w_S;
    } else {
        FRAME_STEP(record, w_S, p_S * s_ft, "plf", "snow on one joist", "");
        loads->snow = w_S;
    }
    loads->live_duration = FRAME_DURATION_TEN_YEARS;
}

/* What every joist leaves unchecked, by its use and loads. */
FRAME_ALWAYS_INLINE uint64_t frame_joist_not_checked(frame_joist_use use, double snow_psf, double slope) {
    uint64_t bits = FRAME_BIT(FRAME_BENDING_UNCHECKED_SUPPORTS) | FRAME_BIT(FRAME_BENDING_UNCHECKED_CUTS) |
                    FRAME_BIT(FRAME_BENDING_UNCHECKED_CONCENTRATED) | FRAME_BIT(FRAME_BENDING_UNCHECKED_WIND) |
                    FRAME_BIT(FRAME_BENDING_UNCHECKED_ROLLING) | FRAME_BIT(FRAME_BENDING_UNCHECKED_SIDE_HUNG);
    if (snow_psf > 0) bits |= FRAME_BIT(FRAME_BENDING_UNCHECKED_SNOW_FORMS);
    if (use == FRAME_USE_RAFTER) bits |= FRAME_BIT(FRAME_BENDING_UNCHECKED_THRUST);
    if (use == FRAME_USE_RAFTER && slope == FRAME_NOT_GIVEN) bits |= FRAME_BIT(FRAME_BENDING_UNCHECKED_SLOPE);
    if (use == FRAME_USE_FLOOR || use == FRAME_USE_DECK) bits |= FRAME_BIT(FRAME_BENDING_UNCHECKED_VIBRATION);
    return bits;
}

FRAME_ALWAYS_INLINE uint64_t frame_joist_cautions(const frame_member *m, frame_joist_use use, double snow_psf,
                                                  frame_load_edition edition) {
    uint64_t bits = frame_member_cautions(m);
    if (use == FRAME_USE_RAFTER) bits |= FRAME_BIT(FRAME_BENDING_CAUTION_RAFTER);
    if (snow_psf > 0 && edition != FRAME_LOADS_ASCE_7_22) bits |= FRAME_BIT(FRAME_BENDING_CAUTION_SNOW_BASIS);
    return bits;
}

#endif
