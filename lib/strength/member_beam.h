/* A beam of any spans as member_check sees it: its material, its analysis, and the stretches between the places where
 * an edge is held. */
#ifndef FRAME_LIB_STRENGTH_MEMBER_BEAM_H
#define FRAME_LIB_STRENGTH_MEMBER_BEAM_H

#include "base/answer.h"
#include "strength/beam_envelope.h"
#include "strength/bending.h"
#include "strength_facts.h"

/* The lists of the answer, in the order of the header. */
enum { FRAME_CHECKED_SPANS, FRAME_CHECKED_SUPPORTS, FRAME_CHECKED_STRETCHES, FRAME_CHECKED_CUTS };

/* A stretch of the beam along which an edge is not held, and the worst bending that presses that edge. */
typedef struct frame_stretch {
    double from, to;
    frame_member_edge edge;
    int row;                                 /* of effective_lengths */
    int used;                                /* there is compression in it */
    int by_case;                             /* place of the combination that governs */
    double slenderness, effective, buckling; /* not given, not given and 0 where C_L is 1 by rule */
    double volume_length;                    /* for C_V */
    double at, moment, ratio;
} frame_stretch;

typedef struct frame_checked {
    const frame_member_check_in *in;
    frame_answer *answer;
    frame_member_check_out *out;
    frame_working *record;
    frame_member m;
    frame_product product;
    int lrfd;
    double fb_negative, exponent, gravity, repetitive, creep, dead_plf, fc_perp_prime;
    frame_bending found; /* section and E' */
    double E_min_prime;
    frame_beam_solve *analysis;
    frame_beam *beam;
    frame_beam_factors factors[FRAME_LOAD_CASES];
    frame_beam_scratch scratch;
    frame_stretch *stretches;
    size_t stretch_count, upper_count; /* those of the upper edge come first */
    double longest;
} frame_checked;

/* The material: FRAME_REQUIRED or FRAME_CONFLICT for too little or too much, FRAME_REFUSED for what is not done. */
frame_status frame_checked_material(frame_checked *c);
/* The section, E' and E_min', recorded. */
void frame_checked_section(frame_checked *c);
/* The beam under its loads, cut where anything is looked at, and its combinations. */
frame_status frame_checked_analyse(frame_checked *c);
/* The stretches of both edges. */
frame_status frame_checked_stretches(frame_checked *c);
/* The stretch of an edge that a place lies in, from a place just inside it. */
frame_stretch *frame_checked_stretch_at(const frame_checked *c, frame_member_edge edge, double x);
/* F_b' in a stretch under a combination. */
double frame_checked_allowed(frame_checked *c, const frame_stretch *s, int by_case, double *C_L, double *C_V,
                             frame_working *record);
/* A curved glulam: what was given of it; F_b* with C_c, as it is without a curve; the stress along its radius. */
frame_status frame_checked_curve_given(const frame_checked *c);
double frame_checked_curved(const frame_checked *c, double straight, frame_working *record);
frame_status frame_checked_radial(frame_checked *c);
/* F_v' under a combination. */
double frame_checked_shear_allowed(const frame_checked *c, int by_case, int cut, frame_working *record);

/* The checks, each with its part of the answer and of the working. */
frame_status frame_checked_bending(frame_checked *c);
frame_status frame_checked_shear(frame_checked *c);
frame_status frame_checked_bearing(frame_checked *c);
frame_status frame_checked_deflection(frame_checked *c);
frame_status frame_checked_cuts(frame_checked *c);

/* A place of the beam must lie on it. */
frame_status frame_checked_place(const frame_checked *c, const char *list, size_t i, double at);
double frame_checked_length(const frame_member_check_in *in);
/* The bearing at a support, by its place in the caller's list; 0 without one. */
double frame_checked_bearing_at(const frame_member_check_in *in, size_t support);

static inline double frame_checked_duration(const frame_checked *c, int by_case) {
    return c->beam->cases[by_case].duration_factor;
}
static inline double frame_checked_time(const frame_checked *c, int by_case) {
    return c->beam->cases[by_case].time_effect;
}
/* Moments and shears smaller than this are rounding. */
static inline double frame_checked_nothing(const frame_checked *c, double largest) {
    (void)c;
    return 1e-9 * largest;
}

#endif
