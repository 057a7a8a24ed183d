/* Of plans that cost the same, the one that is easier on whoever cuts: fewer ways of cutting a board, then longer
 * leftovers. */
#ifndef FRAME_LIB_TAKEOFF_TIDY_H
#define FRAME_LIB_TAKEOFF_TIDY_H

#include "takeoff/plan.h"

/* What a plan is preferred by. */
typedef struct frame_tidiness {
    size_t patterns; /* distinct ways of cutting */
    double left;     /* the squares of what is left of boards, and of those on hand that are spared: few long ones make
                        more than many short ones; in longest rooms */
} frame_tidiness;

/* Improves a plan by exchanging what is cut from two kinds of boards cut alike, as long as its cost and its boards stay
 * the same or it reaches the end of a number of steps; patterns of it are merged. */
frame_status frame_tidy(const frame_cut_job *job, frame_cut_plan *plan, frame_tidiness *is);
int frame_tidier(const frame_tidiness *one, const frame_tidiness *other);

#endif
