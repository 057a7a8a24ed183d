/* The most and the least of shear, moment and deflection under combinations of loads, over all patterns. */
#ifndef FRAME_LIB_STRENGTH_BEAM_ENVELOPE_H
#define FRAME_LIB_STRENGTH_BEAM_ENVELOPE_H

#include <math.h>

#include "strength/beam_model.h"
#include "strength/beam_roots.h"

typedef struct frame_beam_extreme {
    double most, most_at, least, least_at; /* at: from the left end of the beam */
} frame_beam_extreme;

typedef struct frame_beam_envelope {
    frame_beam_extreme shear, moment, drop, transient; /* transient: the drop without the dead load */
    frame_beam_extreme left, right;                    /* the moment at the ends of the span */
} frame_beam_envelope;

/* What multiplies each kind of load: for forces, for the drop (with creep) and for the drop without dead load. */
typedef struct frame_beam_factors {
    double force[FRAME_BEAM_KINDS], drop[FRAME_BEAM_KINDS], transient[FRAME_BEAM_KINDS];
    int creeps;                        /* the factors of the drop are not those of the forces */
    int all_transient, none_transient; /* the drop is all without dead load, or there is none */
    int varies;                        /* a load that may be left off some spans is in it */
} frame_beam_factors;

/* What varies on a segment: a load that may be there or not, or a direction of movement with its weights. */
typedef struct frame_beam_part {
    frame_beam_line line;
    double along, against;
    int kind, helps;    /* helps: whether the quantity in hand is positive where it is looked at */
    frame_polynomial p; /* the quantity in hand */
    double keeps_to;    /* where it first changes its sign */
} frame_beam_part;

/* Where a part changes its sign. */
typedef struct frame_beam_break {
    double at, keeps_to; /* keeps_to: where the part changes it again */
    size_t part;
} frame_beam_break;

/* Room for the parts of a span and the places where they change sign. */
typedef struct frame_beam_scratch {
    frame_beam_part *parts;
    frame_beam_break *breaks;
} frame_beam_scratch;

/* A segment that is looked at. */
typedef struct frame_beam_place {
    const frame_beam *beam;
    const frame_beam_span *span;
    double at, length;      /* at: from the left end of the beam */
    size_t segment, number; /* number: of the span */
} frame_beam_place;

frame_beam_factors frame_beam_factors_of(const frame_beam *beam, const frame_load_case *load_case);
/* Takes the room from the beam's arena. */
frame_status frame_beam_scratch_make(frame_beam *beam, frame_beam_scratch *scratch);
/* The envelopes of a span under all cases, factors and envelopes being arrays of as many as there are cases. */
void frame_beam_span_envelopes(const frame_beam *beam, size_t span, const frame_beam_factors *factors,
                               frame_beam_scratch *scratch, frame_beam_envelope *envelopes);
/* The same for one segment, but for the drop without dead load where that is all or nothing. */
void frame_beam_segment_envelopes(const frame_beam *beam, size_t span, size_t segment,
                                  const frame_beam_factors *factors, frame_beam_scratch *scratch,
                                  frame_beam_envelope *envelopes);
/* The same for one segment, where patterns vary. */
void frame_beam_patterned(const frame_beam_place *place, const frame_beam_factors *factors, frame_beam_scratch *scratch,
                          frame_beam_envelope *envelopes);

/* The loads of a segment and the state at its beginning, with each kind multiplied by its factor. */
frame_beam_line frame_beam_combined(const frame_beam *beam, size_t segment, const double factor[FRAME_BEAM_KINDS]);
/* Shear, moment and drop on a segment as polynomials. */
frame_polynomial frame_beam_shear(const frame_beam_line *line);
frame_polynomial frame_beam_moment(const frame_beam_line *line);
frame_polynomial frame_beam_drop(const frame_beam *beam, const frame_beam_span *span, const frame_beam_line *line);

void frame_beam_envelope_none(frame_beam_envelope *envelope);
static inline void frame_beam_extreme_none(frame_beam_extreme *e) {
    *e = (frame_beam_extreme){-HUGE_VAL, 0, HUGE_VAL, 0};
}
static inline void frame_beam_extreme_take(frame_beam_extreme *e, double value, double at) {
    if (value > e->most) e->most = value, e->most_at = at;
    if (value < e->least) e->least = value, e->least_at = at;
}
static inline void frame_beam_extreme_join(frame_beam_extreme *e, const frame_beam_extreme *other) {
    if (other->most > e->most) e->most = other->most, e->most_at = other->most_at;
    if (other->least < e->least) e->least = other->least, e->least_at = other->least_at;
}

/* Takes most and least of shear, moment and drop at a distance from the beginning of one of a span's segments into the
 * envelope. */
void frame_beam_point_envelope(const frame_beam *beam, size_t span, size_t segment, double t,
                               const frame_beam_factors *factors, frame_beam_envelope *envelope);

#endif
