/* Filling a room with what is worth most: the heart of the search. Each item of a group has a worth (a whole number
 * kept in a double, so sums are exact); no item is used more often than it is wanted.
 *
 * A table holds, for every item on and every room, the most that this item and those after it can be worth. It is exact
 * when the sizes are multiples of a unit that makes the table small enough; otherwise sizes are rounded down for the
 * table, which then is a bound, and the search through it decides by the true sizes. */
#ifndef FRAME_LIB_TAKEOFF_FILLING_H
#define FRAME_LIB_TAKEOFF_FILLING_H

#include "takeoff/cutting.h"

typedef struct frame_filling_stage {
    int64_t size;
    double worth;
    uint32_t item; /* in the job's list */
    int32_t most;
    int64_t cells; /* the size in units of the table, rounded down */
} frame_filling_stage;

typedef struct frame_filling {
    const frame_cut_job *job;
    size_t first, count; /* the group's items */
    int64_t largest;     /* of the group's rooms of this way */
    int64_t unit;
    size_t cells;
    int32_t way;
    int exact;
    int complete; /* not 0: the last best filling is the best there is, not only the best found in the branches allowed
                   */
    int unused;
    size_t stages; /* items that are worth something */
    frame_filling_stage *stage;
    double *table;    /* stages + 1 rows of cells + 1 */
    double *spare;    /* one row more, for making them */
    uint32_t *counts; /* by item of the group: the filling that was found */
    uint32_t *trial;
    double steps;         /* cells worked out and branches taken: the effort */
    double most_branches; /* of one search through an inexact table */
} frame_filling;

frame_status frame_filling_begin(frame_filling *filling, const frame_cut_job *job, int32_t group, int32_t way);
void frame_filling_give(frame_filling *filling);
/* Makes the table. worth and most: by item of the job; scale: worth of a unit of money. Items not wanted are left out,
 * and, unless all, those worth nothing. */
void frame_filling_price(frame_filling *filling, const double *worth, const int32_t *most, double scale, int all);
/* No filling of a room is worth more. */
double frame_filling_bound(const frame_filling *filling, int64_t room);
/* The most a filling is worth, found in counts; never less than more_than, which is given when none is worth more. */
double frame_filling_best(frame_filling *filling, int64_t room, double more_than);

/* The most a filling is worth whose first item is that of a stage, found in counts; more_than as above. */
double frame_filling_from(frame_filling *filling, int64_t room, size_t stage, double more_than);

/* Calls visit for every filling worth at least least, counts by item of the group; visit gives 0 to stop. Gives 0 when
 * it was stopped. trial: room for the counts, of this walk alone, since a visit may begin another. */
typedef int (*frame_filling_visit)(void *user, const uint32_t *counts, double worth);
int frame_filling_walk(frame_filling *filling, int64_t room, double least, uint32_t *trial, frame_filling_visit visit,
                       void *user);

#endif
