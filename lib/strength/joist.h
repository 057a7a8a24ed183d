/* What joist_check and joist_span share: their defaults by use, their loads, their not_checked. */
#ifndef FRAME_LIB_STRENGTH_JOIST_H
#define FRAME_LIB_STRENGTH_JOIST_H

#include "base/facts.h"
#include "strength/bending.h"
#include "table_joist_uses.h"

/* The row of defaults of a use. */
FRAME_ALWAYS_INLINE const frame_joist_uses_row *frame_joist_use_row(frame_joist_use use) {
    return &frame_joist_uses_table[use - 1];
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
                                           double snow_psf, double c, frame_loads *loads, frame_working *record) {
    FRAME_GIVEN(record, s_c, spacing_in, "in", "spacing, centre to centre");
    FRAME_GIVEN(record, p_D, dead_psf, "psf", "dead load");
    FRAME_GIVEN(record, p_L, live_psf, "psf", use == FRAME_USE_RAFTER ? "roof live load" : "live load");
    FRAME_GIVEN(record, p_S, snow_psf, "psf", "snow on plan");
    if (c < 1) {
        FRAME_STEP(record, w_D, p_D / c * s_c / 12, "plf", "dead load on the slope, on a foot of plan", "");
        loads->dead = w_D;
    } else {
        FRAME_STEP(record, w_D, p_D * s_c / 12, "plf", "dead load on one joist", "");
        loads->dead = w_D;
    }
    if (use == FRAME_USE_RAFTER) {
        FRAME_STEP(record, w_Lr, p_L * s_c / 12, "plf", "roof live load on one rafter", "");
        loads->roof_live = w_Lr;
        loads->live = 0;
    } else {
        FRAME_STEP(record, w_L, p_L * s_c / 12, "plf", "live load on one joist", "");
        loads->live = w_L;
        loads->roof_live = 0;
    }
    FRAME_STEP(record, w_S, p_S * s_c / 12, "plf", "snow on one joist", "");
    loads->snow = w_S;
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

FRAME_ALWAYS_INLINE uint64_t frame_joist_cautions(const frame_member *m, frame_joist_use use, double snow_psf) {
    uint64_t bits = frame_member_cautions(m);
    if (use == FRAME_USE_RAFTER) bits |= FRAME_BIT(FRAME_BENDING_CAUTION_RAFTER);
    if (snow_psf > 0) bits |= FRAME_BIT(FRAME_BENDING_CAUTION_SNOW_BASIS);
    return bits;
}

#endif
