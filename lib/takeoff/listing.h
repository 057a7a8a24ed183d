/* All patterns a plan below a cost can use. A plan costs what the duals say plus what each of its patterns costs beyond
 * the worth of its items; so a pattern that alone costs too much beyond it is in no such plan. */
#ifndef FRAME_LIB_TAKEOFF_LISTING_H
#define FRAME_LIB_TAKEOFF_LISTING_H

#include "takeoff/relaxed.h"

typedef struct frame_listing {
    const frame_cut_job *job;
    frame_array patterns; /* frame_cut_pattern */
    frame_array parts;    /* frame_cut_part */
    double bound;         /* no plan costs less: what the duals prove, in money */
    size_t most;          /* patterns wanted at most */
    int complete;         /* 0: there are more */
    int spare;
    /* while it is made */
    const frame_relaxed *relaxed;
    frame_cut_part *chosen;
    uint32_t *trials; /* of each room of a kind: counts of the walk through its fillings */
    size_t chosen_count;
    int32_t kind;
    uint32_t room;
    double beyond; /* how much more than its worth a pattern may cost */
    frame_status status;
    int32_t spare2;
} frame_listing;

void frame_listing_begin(frame_listing *listing, const frame_cut_job *job);
void frame_listing_give(frame_listing *listing);
/* Lists from the duals of the relaxed job as it was last solved. below: plans of this cost and more are of no interest;
 * step: costs are multiples of it. */
frame_status frame_listing_make(frame_listing *listing, frame_relaxed *relaxed, int64_t below, size_t most);

#endif
