/* Linear programs with few rows and many sparse columns, by the simplex method with an inverse kept in full:
 *
 *     least cost * x  with  each row  sum of entries * x  at least (or at most) its limit,  x >= 0.
 *
 * Columns can be added at any time, limits changed; solving goes on from the basis there is. No step depends on
 * anything but the numbers, so the same program takes the same path everywhere. */
#ifndef FRAME_LIB_TAKEOFF_LINEAR_H
#define FRAME_LIB_TAKEOFF_LINEAR_H

#include "base/memory.h"

typedef struct frame_linear_entry {
    uint32_t row;
    int32_t spare;
    double value;
} frame_linear_entry;

typedef struct frame_linear_column {
    double cost;
    double extra;          /* charged on top while ties are being broken */
    uint32_t first, count; /* its entries */
    int32_t place;         /* its row in the basis, or -1 */
    int32_t barred;        /* not 0: may not enter the basis */
} frame_linear_column;

typedef struct frame_linear {
    size_t rows;
    frame_array columns; /* frame_linear_column */
    frame_array entries; /* frame_linear_entry */
    double *limits;      /* of each row */
    double *slack_sign;  /* -1: at least the limit; +1: at most */
    int32_t *basis;      /* of each row: a column, or -1 - row for that row's slack */
    double *inverse;     /* of the basis, row by row */
    double *levels;      /* of the basis */
    double *duals;       /* of the rows: at least 0 where the row says "at least", at most 0 elsewhere */
    double *slack_extra; /* of each slack, as a column's */
    double *work;        /* a column seen through the inverse */
    int32_t *slack_place;
    uint32_t *filled;  /* places of a row of the inverse that are not 0 */
    double tolerance;  /* how far below 0 a reduced cost counts as 0 */
    size_t pivots;     /* since the inverse was last made anew */
    size_t steps;      /* pivots in all: the effort */
    size_t most_steps; /* 0: no limit; else FRAME_LINEAR_STOPPED beyond */
} frame_linear;

typedef enum frame_linear_state {
    FRAME_LINEAR_SOLVED,
    FRAME_LINEAR_UNBOUNDED,
    FRAME_LINEAR_IMPOSSIBLE,
    FRAME_LINEAR_STOPPED /* numbers too ill to go on, or too many steps */
} frame_linear_state;

/* Rows with their limits; the slacks are the first basis. slack_sign: see above. */
frame_status frame_linear_begin(frame_linear *linear, size_t rows, const double *limits, const double *slack_sign);
void frame_linear_give(frame_linear *linear);
/* Adds a column; its place in the list, or -1 without memory. */
int32_t frame_linear_add(frame_linear *linear, double cost, const frame_linear_entry *entries, size_t count);
/* Drops the columns that are neither in the basis nor kept (by place in the list, 1: keep); the others close up. */
void frame_linear_drop(frame_linear *linear, const unsigned char *kept);
/* Back to the basis of slacks. */
void frame_linear_restart(frame_linear *linear);
/* After limits were changed: the levels that follow from the basis. */
void frame_linear_relevel(frame_linear *linear);
/* Goes on from levels that are not negative to the least cost. */
frame_linear_state frame_linear_primal(frame_linear *linear);
/* Goes on from reduced costs that are not negative (as after frame_linear_primal, or from the slacks with costs that
 * are not negative) to levels that are not negative. */
frame_linear_state frame_linear_dual(frame_linear *linear);

double frame_linear_cost(const frame_linear *linear);
double frame_linear_level(const frame_linear *linear, int32_t column);
/* cost of a column less what its entries are worth by the duals. */
double frame_linear_reduced(const frame_linear *linear, const frame_linear_column *column);
/* The same for the slack of a row. */
double frame_linear_slack_reduced(const frame_linear *linear, size_t row);

/* For the two methods: work = inverse * column (or slack -1 - row); exchange of the basis at a row. */
void frame_linear_through(frame_linear *linear, int32_t entering);
frame_linear_state frame_linear_exchange(frame_linear *linear, size_t row, int32_t entering);
frame_linear_state frame_linear_renew(frame_linear *linear);
void frame_linear_reprice(frame_linear *linear);
/* Charges every column outside the basis a little more, each by another amount, so that no two tie; or no more. */
void frame_linear_part_ties(frame_linear *linear);
void frame_linear_no_extra(frame_linear *linear);

#endif
