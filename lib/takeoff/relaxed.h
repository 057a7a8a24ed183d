/* The relaxed job: boards may be cut in fractions. Its least cost is found over patterns that are made as they are
 * needed: the duals say what each item is worth, the filling worth most says which pattern is missing.
 *
 * Rows: each item at least so often as wanted; each kind at most and at least so many boards; each supply that kinds
 * share at most; each set of choices as often as wanted. A choice asks for its items, as a pattern gives them. A
 * shortfall column for each item keeps the program possible, at a price no plan pays. */
#ifndef FRAME_LIB_TAKEOFF_RELAXED_H
#define FRAME_LIB_TAKEOFF_RELAXED_H

#include "takeoff/effort.h"
#include "takeoff/filling.h"
#include "takeoff/linear.h"

typedef struct frame_relaxed {
    const frame_cut_job *job;
    frame_effort *effort;
    frame_linear linear;
    frame_filling *fillings; /* by group and way; those of no room stay empty */
    frame_array patterns;    /* frame_cut_pattern, in step with the columns after the shortfalls and choices */
    frame_array parts;       /* frame_cut_part */
    int32_t *wanted;         /* of each item, now */
    int32_t *allowed;        /* of each item at most: wanted, and what choices may ask for */
    int32_t *sets;           /* of each set of choices wanted, now */
    int64_t *limits;         /* boards of each kind at most, now */
    int64_t *least;          /* and at least */
    double *worth;           /* of each item */
    uint32_t *shared;        /* the row of each supply that kinds share, 0 without */
    double scale;            /* worth of one unit of money */
    int64_t longest;         /* room */
    double dearest;          /* the cost of the dearest kind */
    int costless;            /* not 0: boards cost nothing now, only shortfalls count */
    int spare;
    frame_linear_entry *entries;
    frame_cut_part *found;
    double enough;   /* a solve may end at a cost of no more than this; -INFINITY for the least */
    int most_rounds; /* of making patterns in one solve; 0 for as many as it takes */
    int spare2;
} frame_relaxed;

frame_status frame_relaxed_begin(frame_relaxed *relaxed, const frame_cut_job *job, frame_effort *effort);
void frame_relaxed_give(frame_relaxed *relaxed);
/* What is wanted (of items, and of sets of choices), and how many boards of each kind there may be and must be, for the
 * next solve. NULL: as the job says. */
void frame_relaxed_ask(frame_relaxed *relaxed, const int32_t *wanted, const int32_t *sets, const int64_t *limits,
                       const int64_t *least);
/* And what is left of the supplies that kinds share, after frame_relaxed_ask. */
void frame_relaxed_ask_supplies(frame_relaxed *relaxed, const int64_t *supplies);
frame_filling *frame_relaxed_filling(const frame_relaxed *relaxed, const frame_cut_room *room);
/* Adds a pattern found elsewhere. */
frame_status frame_relaxed_add(frame_relaxed *relaxed, int32_t kind, const frame_cut_part *parts, size_t count);
/* Finds the least cost (or less than it, see enough and most_rounds: then only the cost of a plan, no bound); costless:
 * the least shortfall, whatever boards cost. FRAME_OK also when the effort ran out (then relaxed->effort->over). */
frame_status frame_relaxed_solve(frame_relaxed *relaxed, int costless);

/* Boards cost what they cost, or nothing. */
void frame_relaxed_charge(frame_relaxed *relaxed, int costless);
/* The cost, and how much of the items is not cut (in board lengths). */
double frame_relaxed_cost(const frame_relaxed *relaxed);
double frame_relaxed_shortfall(const frame_relaxed *relaxed);
/* Patterns and how often each is used. */
size_t frame_relaxed_count(const frame_relaxed *relaxed);
double frame_relaxed_times(const frame_relaxed *relaxed, size_t pattern);
/* How often each choice is taken. */
double frame_relaxed_choice(const frame_relaxed *relaxed, size_t choice);
/* The most a pattern of a kind is worth by the tables as they are; a little more where that is not exactly known. */
double frame_relaxed_most(frame_relaxed *relaxed, size_t kind);
/* What the duals prove: no plan that costs less than below costs less than this; in worth, an exact sum. charges (by
 * kind, may be NULL): what a board of each kind costs in that proof. The tables are made anew with all items. */
frame_status frame_relaxed_prove(frame_relaxed *relaxed, int64_t below, double *charges, double *proven);
/* Forgets patterns that are of no use, when there are many. */
frame_status frame_relaxed_tidy(frame_relaxed *relaxed);

#endif
