/* The search for the least cost: over how many boards there are of each kind. The relaxed job bounds what each choice
 * can cost; a choice of whole boards is tried by rounding; where that fails all patterns that could matter are listed
 * and the selection decides. */
#ifndef FRAME_LIB_TAKEOFF_BOARDS_H
#define FRAME_LIB_TAKEOFF_BOARDS_H

#include "takeoff/listing.h"
#include "takeoff/rounding.h"
#include "takeoff/selection.h"
#include "takeoff/values.h"

typedef struct frame_boards_node {
    int64_t bound;         /* no plan within costs less */
    int64_t key;           /* the least is looked at first */
    uint32_t depth, place; /* place: of its ranges */
    int32_t tried;         /* how often it could not be decided */
    int32_t spare;
} frame_boards_node;

typedef struct frame_boards {
    const frame_cut_job *job;
    frame_effort *effort;
    frame_relaxed relaxed;
    frame_rounding rounding;
    frame_values values;
    double by_values; /* effort spent on plans by values */
    frame_listing listing;
    frame_array nodes;       /* frame_boards_node: a heap, the least key first */
    frame_array aside;       /* the like, in no order: nothing cheaper within */
    frame_array ranges;      /* int64_t: kind_count least numbers of boards, then kind_count greatest, of each node */
    frame_array free_places; /* uint32_t */
    int64_t *least, *limits; /* of the node at hand */
    double *boards;          /* of each kind, in the relaxed plan */
    int64_t bound;           /* no plan costs less */
    int proven;              /* not 0: none costs less money */
    int polishing;           /* not 0: looking for as little money with fewer boards */
    int fewest;              /* not 0: and none that costs as little has fewer boards */
    frame_cut_plan best;
    double money;                     /* smallest units in the caller's money, for whoever watches; 0: nobody does */
    double cost_before, bound_before; /* of the searches before, in the caller's money */
    int64_t *whole;                   /* boards of each kind to round to */
    size_t looked_at;                 /* nodes */
} frame_boards;

frame_status frame_boards_begin(frame_boards *boards, const frame_cut_job *job, frame_effort *effort);
void frame_boards_give(frame_boards *boards);
/* Improves boards->best, which may hold a plan already (found), until it is proven or the effort is over. *impossible:
 * the boards there are do not suffice, and boards->relaxed tells what is short. */
frame_status frame_boards_search(frame_boards *boards, int *impossible);
/* Of plans as cheap as the best: the tidiest that a few tries more come to. */
frame_status frame_boards_tidy(frame_boards *boards);

#endif
