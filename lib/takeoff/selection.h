/* Choosing whole boards from a list of patterns at the least cost: branch and bound on the linear program, first on how
 * many boards there are of a kind, then on how many are cut to a pattern. */
#ifndef FRAME_LIB_TAKEOFF_SELECTION_H
#define FRAME_LIB_TAKEOFF_SELECTION_H

#include "takeoff/effort.h"
#include "takeoff/linear.h"
#include "takeoff/plan.h"

typedef struct frame_selection {
    const frame_cut_job *job;
    const frame_cut_pattern *patterns;
    const frame_cut_part *parts;
    size_t pattern_count;
    frame_effort *effort;
    frame_linear
        linear;       /* rows: items at least; kinds at most; kinds at least; sets at least; shared supplies at most */
    uint32_t *shared; /* the row of each supply, 0 without */
    int64_t *fixed;   /* boards of each pattern, then how often each choice is taken */
    int64_t fixed_cost;
    int64_t below; /* plans of this cost and more are of no interest */
    double steps_left;
    int complete; /* 0: given up before all was tried */
    int spare;
    frame_cut_plan plan; /* the best found */
    frame_status status;
    int32_t spare2;
} frame_selection;

/* least, limits: boards of each kind at least and at most. */
frame_status frame_selection_begin(frame_selection *selection, const frame_cut_job *job, frame_effort *effort,
                                   const frame_cut_pattern *patterns, size_t pattern_count, const frame_cut_part *parts,
                                   const int64_t *least, const int64_t *limits);
void frame_selection_give(frame_selection *selection);
/* Looks for the cheapest plan that costs less than below; most_steps: effort it may take. plan.found tells. */
frame_status frame_selection_search(frame_selection *selection, int64_t below, double most_steps);

#endif
