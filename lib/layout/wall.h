/* A wall while it is being laid out. x along it, y from outside to inside, z up; all in inches. */
#ifndef FRAME_LIB_LAYOUT_WALL_H
#define FRAME_LIB_LAYOUT_WALL_H

#include "layout/piece.h"
#include "marks/positions.h"
#include "working/record.h"

enum { FRAME_WALL_MARKS, FRAME_WALL_HEADERS, FRAME_WALL_PIECES, FRAME_WALL_GANGS };

/* An opening as it was resolved. */
typedef struct frame_wall_hole {
    const char *name;
    double from, to, low, head; /* the rough opening; low is where it begins, from the underside of the bottom plate */
    double header_low, header_top; /* above z = 0 */
    double bottom;                 /* z of the underside of the bottom plate under it */
    frame_layout_section header;   /* one ply */
    frame_turned turned;
    frame_header_at at;
    int door, filler, caps, jacks, kings, sills, plies;
    double filler_most;
    int number; /* as it was given, from 1 */
    double code_span;
    const char *source;
} frame_wall_hole;

/* A stretch of the wall that studs on centres keep out of. */
typedef struct frame_wall_group {
    double from, to;
    int hole;         /* its opening's place among the holes; -1 for none */
    const char *what; /* for messages: "openings" or "crossings"; NULL for the wall's own */
    int number;       /* its place in that list */
} frame_wall_group;

/* What stands upright. Its ends are those of the plates, unless they are given. */
typedef struct frame_wall_upright {
    double from, width, y, depth; /* along x, and across the wall */
    double low, high;             /* FRAME_NOT_GIVEN: from the bottom plate, to the top plate */
    frame_piece_kind kind;
    int hole;
    int turned; /* its depth lies along the wall */
} frame_wall_upright;

typedef struct frame_wall_plan {
    const frame_wall_in *in;
    frame_layout_section stud;
    double t, d;                   /* thickness and depth of studs and plates */
    double along, across;          /* of a stud on centres: along the wall and across it */
    double height;                 /* at the start, over all */
    double slope, far_slope, peak; /* of the top; peak: INFINITY without one */
    double start_other, end_other;
    int level;                           /* top and bottom level, without steps */
    frame_array holes, groups, uprights; /* of the structs above */
    frame_positions positions;
    double sheet;
    frame_array steps;  /* frame_wall_step, checked */
    frame_array joints; /* double: x of the joints of the plate layers before */
    frame_layout_set *set;
    frame_known known;
    int passes;
    uint64_t cautions;
} frame_wall_plan;

#define FRAME_WALL_HOLE(plan, i) (&FRAME_ITEM(frame_wall_hole, (plan)->holes, i))
#define FRAME_WALL_GROUP(plan, i) (&FRAME_ITEM(frame_wall_group, (plan)->groups, i))
#define FRAME_WALL_UPRIGHT(plan, i) (&FRAME_ITEM(frame_wall_upright, (plan)->uprights, i))

/* The underside of so many top plates (0: their top), and that of the bottom plate. Just at a step the side tells
 * which: -1 before it, +1 beyond it. */
double frame_wall_under(const frame_wall_plan *plan, double x, int plates);
double frame_wall_bottom(const frame_wall_plan *plan, double x, int side);
/* The first of them as if the stretch before the peak, or the one beyond it, went on for ever. */
double frame_wall_stretch(const frame_wall_plan *plan, double x, int plates, int beyond);
/* Vertical thickness of so many plates lying on a slope. */
double frame_wall_plates(const frame_wall_plan *plan, int count, double slope);
/* Underside of the top plates and top of the bottom plates: what studs stand between. */
double frame_wall_stud_top(const frame_wall_plan *plan, double x);
double frame_wall_stud_bottom(const frame_wall_plan *plan, double x, int side);
/* Where the studs are longest under a peak; INFINITY without one. */
double frame_wall_ridge(const frame_wall_plan *plan);
/* The slope of the top at a place; side as above, at the peak. */
double frame_wall_slope(const frame_wall_plan *plan, double x, int side);

/* Each step of laying it out, in this order. */
frame_status frame_wall_take(const frame_wall_in *in, frame_wall_plan *plan, frame_answer *answer, frame_working *w);
frame_status frame_wall_take_holes(frame_wall_plan *plan, frame_answer *answer);
frame_status frame_wall_size_header(frame_wall_plan *plan, const frame_wall_opening *opening, frame_wall_hole *hole,
                                    frame_answer *answer);
frame_status frame_wall_place_groups(frame_wall_plan *plan);
frame_status frame_wall_place_studs(frame_wall_plan *plan);
frame_status frame_wall_add_plates(frame_wall_plan *plan);
void frame_wall_add_uprights(frame_wall_plan *plan);
void frame_wall_add_holes(frame_wall_plan *plan);
frame_status frame_wall_add_blocks(frame_wall_plan *plan);

/* Adds an upright; 0 without memory. */
int frame_wall_stand(frame_wall_plan *plan, const frame_wall_upright *upright);
/* A full-depth upright from plate to plate. */
frame_wall_upright frame_wall_full(const frame_wall_plan *plan, frame_piece_kind kind, double from, int hole);

#endif
