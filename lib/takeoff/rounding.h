/* From the relaxed job to whole boards: patterns are fixed one after the other, those the relaxed plan uses most first,
 * and the rest is relaxed again, with patterns made for it. */
#ifndef FRAME_LIB_TAKEOFF_ROUNDING_H
#define FRAME_LIB_TAKEOFF_ROUNDING_H

#include "takeoff/plan.h"
#include "takeoff/relaxed.h"

typedef struct frame_rounding {
    frame_relaxed *relaxed;
    frame_cut_rest rest, trial;
    frame_cut_plan plan, finished;
    frame_cut_part *trimmed;
    uint64_t luck; /* the state of the noise */
} frame_rounding;

frame_status frame_rounding_begin(frame_rounding *rounding, frame_relaxed *relaxed);
void frame_rounding_give(frame_rounding *rounding);
/* Looks for a plan that costs less than below, with at most limits boards of each kind (NULL: what is available).
 * noise: by how large a share the preferences are shaken, 0 for the plain order. The plan found is in rounding->plan.
 */
frame_status frame_rounding_try(frame_rounding *rounding, const int64_t *limits, int64_t below, double noise);

#endif
