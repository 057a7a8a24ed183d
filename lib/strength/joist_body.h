/* What every way of joist_check shares: which calls are plain, and the check itself. Inline, so that the plainer ways
 * are rid of all that cannot matter to them. */
#ifndef FRAME_LIB_STRENGTH_JOIST_BODY_H
#define FRAME_LIB_STRENGTH_JOIST_BODY_H

#include "strength/joist.h"

#include "working/plain_math.h"

/* How plain the check is known to be when it is compiled. */
typedef enum frame_joist_plainness {
    FRAME_JOIST_ANY = 0,
    FRAME_JOIST_USUAL = 1,  /* no factor but C_D, C_F and C_r, level, by allowable stress */
    FRAME_JOIST_IN_LINE = 2 /* usual, with bearing and both limits given, and no branch: rows side by side */
} frame_joist_plainness;

/* Figures that are given and in range, or open. */
FRAME_ALWAYS_INLINE int frame_joist_is_load(double value) {
    return (value >= 0 && value <= 1000) || !frame_given(value);
}
FRAME_ALWAYS_INLINE int frame_joist_is_limit(double value) {
    return (value >= 1 && value <= 10000) || !frame_given(value);
}

FRAME_ALWAYS_INLINE int frame_joist_is_open_or(int32_t value, int32_t usual_word) {
    return value == FRAME_NOT_GIVEN_INT || value == usual_word;
}

/* Whether nothing but what the usual check looks at was given, and all that in range: as frame_joist_check_in_read has
 * it. */
FRAME_ALWAYS_INLINE int frame_joist_in_order(const frame_joist_check_in *in) {
    return (in->use == FRAME_USE_FLOOR || in->use == FRAME_USE_CEILING || in->use == FRAME_USE_RAFTER) &&
           in->service == FRAME_NOT_GIVEN_INT && in->incised == FRAME_NOT_GIVEN_INT &&
           in->repetitive == FRAME_NOT_GIVEN_INT && frame_joist_is_open_or(in->compression_edge, FRAME_EDGE_HELD) &&
           frame_joist_is_open_or(in->temperature, FRAME_TEMPERATURE_100F) &&
           frame_joist_is_open_or(in->method, FRAME_METHOD_ASD) &&
           frame_joist_is_open_or(in->load_edition, FRAME_LOADS_ASCE_7_16) &&
           frame_joist_is_open_or(in->edition, FRAME_NDS_2018) && frame_joist_is_open_or(in->plies, 1) &&
           (in->span_in > 0 && in->span_in <= 1200) &&
           ((in->spacing_in > 0 && in->spacing_in <= 48) || !frame_given(in->spacing_in)) &&
           frame_joist_is_load(in->live_psf) && frame_joist_is_load(in->dead_psf) &&
           frame_joist_is_load(in->snow_psf) &&
           ((in->bearing_in > 0 && in->bearing_in <= 48) || !frame_given(in->bearing_in)) &&
           frame_joist_is_limit(in->deflection_limit) && frame_joist_is_limit(in->total_deflection_limit) &&
           ((in->creep_factor >= 1 && in->creep_factor <= 3) || !frame_given(in->creep_factor)) &&
           !frame_given(in->slope) && !frame_given(in->unbraced_length_in) &&
           (frame_given(in->live_psf) || frame_given(in->snow_psf)) &&
           frame_joist_is_plain(in->width_in, in->depth_in, in->fb_psi, in->fv_psi, in->fc_perp_psi, in->e_psi,
                                in->e_min_psi);
}

/* What the usual check looks at, with its defaults. */
FRAME_ALWAYS_INLINE void frame_joist_read_usual(const frame_joist_check_in *in, frame_joist_check_in *read) {
    read->use = in->use, read->service = read->incised = FRAME_NOT_GIVEN_INT;
    read->compression_edge = FRAME_EDGE_HELD;
    read->method = FRAME_METHOD_ASD, read->load_edition = FRAME_LOADS_ASCE_7_16;
    read->span_in = in->span_in, read->spacing_in = frame_or(in->spacing_in, 16);
    read->live_psf = in->live_psf, read->dead_psf = in->dead_psf, read->snow_psf = in->snow_psf;
    read->slope = FRAME_NOT_GIVEN, read->bearing_in = frame_or(in->bearing_in, 1.5);
    read->deflection_limit = in->deflection_limit, read->total_deflection_limit = in->total_deflection_limit;
    read->creep_factor = in->creep_factor;
}

FRAME_ALWAYS_INLINE void frame_joist_ask(const frame_joist_check_in *in, const frame_joist_defaults *by_use,
                                         double cosine, frame_bending_ask *ask) {
    ask->span = in->span_in;
    ask->slope_cosine = cosine;
    ask->unbraced = in->compression_edge == FRAME_EDGE_FREE ? frame_or(in->unbraced_length_in, in->span_in) : 0;
    ask->bearing = in->bearing_in;
    ask->notch = 0;
    ask->live_limit = by_use->live_limit;
    ask->total_limit = by_use->total_limit;
    ask->creep = by_use->creep;
    ask->shear_reduced = 0;
    ask->lrfd = in->method == FRAME_METHOD_LRFD;
    ask->edition = in->load_edition;
}

/* Of which loads combinations are formed in line: a rafter bears roof live load, another joist live load. */
FRAME_ALWAYS_INLINE int frame_joist_anyway(frame_joist_use use) {
    return FRAME_ANYWAY_SNOW | (use == FRAME_USE_RAFTER ? FRAME_ANYWAY_ROOF_LIVE : FRAME_ANYWAY_LIVE);
}

/* The loads and the checks. The caller has found the section, and set C_r in ask. */
FRAME_ALWAYS_INLINE frame_status frame_joist_body(const frame_joist_check_in *in, const frame_joist_defaults *by_use,
                                                  const frame_member *m, frame_bending_ask *ask, frame_bending *result,
                                                  frame_joist_plainness how, frame_working *record) {
    frame_loads loads = {.anyway = how == FRAME_JOIST_IN_LINE ? frame_joist_anyway(in->use) : 0};
    FRAME_HEADING(record, "Span and loads");
    FRAME_GIVEN(record, L, in->span_in, "in", "span on plan");
    FRAME_STEP(record, L_ft, L / 12, "ft", "span in feet", "");
    (void)L_ft;
    frame_joist_ask(in, by_use, how ? 1 : frame_joist_cosine(in->slope, record), ask);
    if (how) ask->unbraced = 0, ask->lrfd = 0, ask->edition = FRAME_LOADS_ASCE_7_16;
    ask->in_line = how == FRAME_JOIST_IN_LINE;
    frame_joist_loads(in->use, in->spacing_in, by_use->dead_psf, frame_or(in->live_psf, 0), frame_or(in->snow_psf, 0),
                      ask->slope_cosine, ask->edition, &loads, record);
    return frame_bending_check(m, ask, &loads, result, record);
}

#endif
