/* Plans by changing values: boards are filled one after the other with what is worth most by the values of the day;
 * what went into a wasteful board is worth more from then on, so the next plan places it sooner. A published way of
 * rounding for cutting (sequential value correction), cheap where the relaxed job is slow to solve. */
#ifndef FRAME_LIB_TAKEOFF_VALUES_H
#define FRAME_LIB_TAKEOFF_VALUES_H

#include "takeoff/plan.h"
#include "takeoff/relaxed.h"

typedef struct frame_values {
    frame_relaxed *relaxed; /* its tables are used */
    double *value;          /* of each item, in money */
    double *worth;          /* the same in whole numbers */
    double *power;          /* of each item: its size to a power a little above 1 */
    frame_cut_part *best;
    size_t best_count;
    frame_cut_rest rest;
    frame_cut_plan plan; /* the last one */
    uint64_t luck;
} frame_values;

frame_status frame_values_begin(frame_values *values, frame_relaxed *relaxed);
void frame_values_give(frame_values *values);
/* Makes the next plan; plan.found tells whether it is whole and costs less than below. */
frame_status frame_values_try(frame_values *values, int64_t below);

#endif
