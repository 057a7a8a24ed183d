/* Plans: patterns of boards, how they are put together, and ways to finish one by simple rules. */
#ifndef FRAME_LIB_TAKEOFF_PLAN_H
#define FRAME_LIB_TAKEOFF_PLAN_H

#include "takeoff/cutting.h"

void frame_cut_plan_begin(frame_cut_plan *plan);
void frame_cut_plan_give(frame_cut_plan *plan);
void frame_cut_plan_clear(frame_cut_plan *plan);
/* Adds boards cut alike. */
frame_status frame_cut_plan_add(frame_cut_plan *plan, const frame_cut_job *job, int32_t kind, int32_t times,
                                const frame_cut_part *parts, size_t count);
/* Makes one pattern of those that are cut alike, each pattern's parts room by room, the largest first; patterns stand
 * by kind. */
frame_status frame_cut_plan_merge(frame_cut_plan *plan, const frame_cut_job *job);
frame_status frame_cut_plan_copy(frame_cut_plan *to, const frame_cut_plan *from);

/* What is still to be cut, and the boards left to cut it from. */
typedef struct frame_cut_rest {
    int32_t *wanted;   /* of each item */
    int32_t *sets;     /* of each set of choices */
    int64_t *limits;   /* boards of each kind */
    int64_t *supplies; /* boards of each supply */
} frame_cut_rest;

/* Cuts what is wanted board by board, the longest items first; found is 0 when the boards do not suffice. only: the one
 * kind to cut from, -1 for all: then that kind is taken for each board which costs least for what it holds. exchange:
 * each board is then exchanged for the cheapest kind that holds its items. rest is used up. */
frame_status frame_cut_plan_finish(frame_cut_plan *plan, const frame_cut_job *job, const frame_cut_rest *rest,
                                   int32_t only, int exchange);
frame_status frame_cut_rest_begin(frame_cut_rest *rest, const frame_cut_job *job);
void frame_cut_rest_give(frame_cut_rest *rest);
void frame_cut_rest_copy(const frame_cut_job *job, const frame_cut_rest *to, const frame_cut_rest *from);
/* Takes a choice so many times: its items are wanted from then on. */
frame_status frame_cut_plan_choose(frame_cut_plan *plan, const frame_cut_job *job, const frame_cut_rest *rest,
                                   size_t choice, int32_t times);
/* Takes for each spliced piece the choice of fewest parts that all fit a room. */
frame_status frame_cut_plan_choose_all(frame_cut_plan *plan, const frame_cut_job *job, const frame_cut_rest *rest);
/* All that is wanted, and all boards there are. */
void frame_cut_rest_of(const frame_cut_job *job, const frame_cut_rest *rest);

#endif
