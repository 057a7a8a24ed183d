/* A beam as the equations see it: nodes at its supports and ends, spans between them, the loads of each span cut into
 * segments on which they change evenly. Everything is kept apart by kind of load; nothing is combined here.
 *
 * Directions: x from the left end, deflection ("drop") and loads down, turning clockwise, moments sagging, shear as it
 * is to the left of a positive reaction's right side: V' = -w, M' = V, E I turn' = -M, drop' = turn + V / (G A'). */
#ifndef FRAME_LIB_STRENGTH_BEAM_MODEL_H
#define FRAME_LIB_STRENGTH_BEAM_MODEL_H

#include <frame/strength.h>

#include "base/memory.h"
#include "load/cases.h"

/* Place 0 of the kinds is what offsets of supports do. */
enum { FRAME_BEAM_KINDS = FRAME_LOAD_KINDS, FRAME_BEAM_OFFSETS = 0 };

typedef struct frame_beam_node {
    double at;
    double spring, turning; /* lb/in and lb-in per radian; 0 for none */
    double offset;          /* down positive */
    frame_beam_support_kind kind;
    unsigned char held, clamped; /* against moving, against turning */
    unsigned char hinge;         /* the span to its left does not turn with it */
    unsigned char numbered;      /* one of the supports that the caller counts */
} frame_beam_node;

/* What acts in the section at a place, and where it is. */
typedef struct frame_beam_state {
    double shear, moment, turn, drop;
} frame_beam_state;

/* A load that changes evenly from the beginning of a segment, and the state there, behind what acts at that point. */
typedef struct frame_beam_line {
    double w, slope;
    double force, couple; /* at the beginning */
    frame_beam_state state;
} frame_beam_line;

typedef struct frame_beam_segment {
    double at, length; /* at: from the left end of its span */
} frame_beam_segment;

typedef struct frame_beam_span {
    double at, length, stiffness; /* stiffness: E I */
    double shear_ratio;           /* 12 E I / (G A' L^2) */
    size_t first, count;          /* its segments */
} frame_beam_span;

/* A load that begins, ends or stands at a place of a span. */
typedef struct frame_beam_event {
    double at, w, slope, force, couple;
    size_t span;
    int kind;  /* place among the kinds of this beam */
    int opens; /* 1 where a spread load begins, -1 where it ends, 0 for a point load */
} frame_beam_event;

/* What loads on far spans do to a span: states at its left end along one direction; weights of those along it and
 * against it. */
typedef struct frame_beam_group {
    frame_beam_state state;
    double along, against;
    size_t next; /* 1 + the next group of the same span and kind, 0 for none */
} frame_beam_group;

/* 2 x 2, symmetric. */
typedef struct frame_beam_block {
    double a, b, d;
} frame_beam_block;

typedef struct frame_beam {
    frame_arena arena;
    frame_beam_node *nodes;
    frame_beam_span *spans;
    size_t node_count, span_count, segment_count;
    size_t left; /* 1 with an overhang on the left */
    frame_beam_segment *segments;
    frame_beam_line *lines; /* segment by segment, kind by kind */
    frame_beam_event *events;
    size_t event_count;
    int kind_count, spare;
    int kind_of[FRAME_BEAM_KINDS];  /* frame_load_kind of a place, 0 for offsets */
    int place_of[FRAME_BEAM_KINDS]; /* the other way; -1 for a kind that is not there */
    double whole[FRAME_BEAM_KINDS]; /* loads on the whole beam, lb/in, by place */
    double total[FRAME_BEAM_KINDS]; /* all loads of a kind, lb */
    double shear_flexibility;       /* 1 / (G A'), 0 for none */
    double creep;
    int elastic; /* E and I were given: deflections mean something */
    int pattern;
    double (*fixed)[4];     /* span by span, kind by kind: forces on the ends were they clamped */
    double (*moved)[2];     /* node by node, kind by kind: drop and turn */
    double (*reactions)[2]; /* the same: reaction upward, couple clockwise */
    double (*links)[2][2];    /* span by span: what ties the movement of its right end to that of its left */
    frame_beam_block *blocks; /* node by node: stiffness of all that meets there */
    frame_beam_block *left_inverse, *right_inverse; /* of the stiffness of all to the left with the span to the right */
    double (*swing)[2];   /* pattern, node by node, kind by kind: sums of the positive and the negative reactions */
    double (*couples)[2]; /* the same of the couples */
    size_t *group_first;  /* span by span, kind by kind */
    frame_array groups;   /* frame_beam_group */
    frame_load_case cases[FRAME_LOAD_CASES];
    int case_count, full; /* full: the case with the largest load */
    frame_load_rules rules; /* of the combinations */
    int gives_drops;        /* deflections mean something and are under service loads */
} frame_beam;

/* The steps, in their order. */
frame_status frame_beam_read(const frame_beam_solve_in *in, frame_beam *beam);
frame_status frame_beam_cut(frame_beam *beam);
frame_status frame_beam_balance(frame_beam *beam);
frame_status frame_beam_pattern(frame_beam *beam);
void frame_beam_end(void *beam);

/* The stiffness of a span against drop and turn of its left and right end. */
void frame_beam_span_stiffness(const frame_beam *beam, size_t span, double k[4][4]);
/* The state at a distance from a state, under a load that changes evenly. */
frame_beam_state frame_beam_march(const frame_beam *beam, const frame_beam_span *span, const frame_beam_line *line,
                                  double x);
/* The forces on the ends of a span under one kind of load, were both clamped. */
void frame_beam_fixed_ends(const frame_beam *beam, size_t span, int kind, double forces[4]);
/* The state at the left end of a span from the forces on its ends and the movement of its left end. */
frame_beam_state frame_beam_left_state(const double forces[4], const double moved[2]);

static inline frame_beam_line *frame_beam_line_at(const frame_beam *beam, size_t segment, int kind) {
    return &beam->lines[segment * (size_t)beam->kind_count + (size_t)kind];
}
static inline size_t frame_beam_place_of(const frame_beam *beam, size_t i, int kind) {
    return i * (size_t)beam->kind_count + (size_t)kind;
}
/* Whether a kind is put on some spans only. */
static inline int frame_beam_is_patterned(const frame_beam *beam, int kind) {
    const int what = beam->kind_of[kind];
    return beam->pattern && (what == FRAME_LOAD_LIVE || what == FRAME_LOAD_ROOF_LIVE);
}

#endif
