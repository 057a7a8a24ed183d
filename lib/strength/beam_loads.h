/* The loads of a beam: pounds per foot, or per square foot over the width it carries, and its own weight. */
#ifndef FRAME_LIB_STRENGTH_BEAM_LOADS_H
#define FRAME_LIB_STRENGTH_BEAM_LOADS_H

#include "strength/bending.h"

/* One kind of load, recorded as w_X: what is given per foot, and what is given per square foot over the width. */
#define FRAME_BEAM_LOAD(record, X, plf, psf, spacing, put, words)                                       \
    do {                                                                                                \
        if (frame_given(psf)) {                                                                         \
            FRAME_GIVEN(record, g_##X, frame_or(plf, 0), "plf", words ", given by the foot");           \
            FRAME_GIVEN(record, p_##X, psf, "psf", words ", given by the square foot");                 \
            FRAME_GIVEN(record, s_c, spacing, "in", "width that it carries");                           \
            FRAME_STEP(record, w_##X, g_##X + p_##X * s_c / 12, "plf", words " on a foot of beam", ""); \
            put = w_##X;                                                                                \
        } else {                                                                                        \
            FRAME_GIVEN(record, w_##X, frame_or(plf, 0), "plf", words " on a foot of beam");            \
            put = w_##X;                                                                                \
        }                                                                                               \
    } while (0)

/* Water in the wood that its own weight is taken with, percent: 19 is the most of dry service (NDS 4.1.4); 30 is about
 * where the fibres are full (from memory, USDA Wood Handbook). */
enum { FRAME_MOISTURE_DRY = 19, FRAME_MOISTURE_WET = 30 };

/* Adds the member's own weight to a dead load recorded as w_Dg. */
FRAME_ALWAYS_INLINE double frame_beam_own_weight(double gravity, frame_service service, double A, double w_Dg,
                                                 frame_working *record) {
    FRAME_TABLE(record, G, gravity, "", "specific gravity", "");
    FRAME_GIVEN(record, m_c, service == FRAME_SERVICE_WET ? FRAME_MOISTURE_WET : FRAME_MOISTURE_DRY, "%",
                "water in the wood");
    FRAME_STEP(record, rho, 62.4 * (G / (1 + G * 0.009 * m_c)) * (1 + m_c / 100), "pcf", "weight of the wood",
               "NDS Supplement 3.1.3 (from memory)");
    FRAME_STEP(record, w_0, rho * A / 144, "plf", "own weight", "");
    FRAME_STEP(record, w_D, w_Dg + w_0, "plf", "dead load on a foot of beam, own weight included", "");
    return w_D;
}

/* Snow of strength level, recorded as w_Su, brought down to service level. */
FRAME_ALWAYS_INLINE double frame_beam_service_snow(double w_Su, frame_working *record) {
    FRAME_STEP(record, w_S, 0.7 * w_Su, "plf", "snow brought down from strength level",
               "ASCE 7-22 2.4.1 (from memory)");
    return w_S;
}

FRAME_ALWAYS_INLINE void frame_beam_loads(const frame_beam_check_in *in, double gravity, double A, frame_loads *loads,
                                          frame_working *record) {
    if (in->self_weight) {
        FRAME_BEAM_LOAD(record, Dg, in->dead_plf, in->dead_psf, in->spacing_in, loads->dead, "dead load");
        loads->dead = frame_beam_own_weight(gravity, in->service, A, loads->dead, record);
    } else {
        FRAME_BEAM_LOAD(record, D, in->dead_plf, in->dead_psf, in->spacing_in, loads->dead, "dead load");
    }
    FRAME_BEAM_LOAD(record, L, in->live_plf, in->live_psf, in->spacing_in, loads->live, "live load");
    FRAME_BEAM_LOAD(record, Lr, in->roof_live_plf, in->roof_live_psf, in->spacing_in, loads->roof_live,
                    "roof live load");
    if (in->load_edition == FRAME_LOADS_ASCE_7_22) {
        FRAME_BEAM_LOAD(record, Su, in->snow_plf, in->snow_psf, in->spacing_in, loads->snow, "snow at strength level");
        loads->snow = frame_beam_service_snow(loads->snow, record);
    } else {
        FRAME_BEAM_LOAD(record, S, in->snow_plf, in->snow_psf, in->spacing_in, loads->snow, "snow");
    }
    loads->live_duration = in->live_duration;
}

#endif
