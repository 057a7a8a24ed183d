/* A cutting job in whole numbers: what the search works on, whatever it came from.
 *
 * Items are wanted; a kind of board has one or more rooms, each of which takes items of one group when their sizes sum
 * to no more than it (sizes carry a kerf each, and so do rooms). A board that is ripped has a room for each strip, one
 * with a defect has a room on either side of it. Kinds that come from the same supply share what is available of it.
 *
 * A cost counts money first and boards second: a board costs its price, in the smallest unit of money, times
 * money_unit, and one more. money_unit is many times the boards of any plan, so the least cost is the least
 * money and, of that, the fewest boards. Where what is left of a room is kept, its kind's cost is already less by the
 * value of the whole room, and each item cut from it adds the value of its size back. */
#ifndef FRAME_LIB_TAKEOFF_CUTTING_H
#define FRAME_LIB_TAKEOFF_CUTTING_H

#include "base/memory.h"

typedef struct frame_cut_item {
    int64_t size; /* with the kerf */
    int32_t wanted;
    int32_t group;
    int32_t may_rip; /* may come from a strip of a ripped board */
    int32_t most;    /* more than wanted where splices may ask for more; never less */
} frame_cut_item;

/* What a room is besides long. */
enum { FRAME_CUT_RIPPED = 1, FRAME_CUT_KEPT = 2, FRAME_CUT_WAYS = 4 };

typedef struct frame_cut_room {
    int64_t size; /* with a kerf */
    int32_t group;
    int32_t way; /* FRAME_CUT_RIPPED: a strip; FRAME_CUT_KEPT: what is left is kept and worth something */
} frame_cut_room;

typedef struct frame_cut_kind {
    int64_t cost;
    uint32_t room_first, room_count;
    int32_t supply;
    int32_t spare;
} frame_cut_kind;

/* A piece that may be spliced is cut in one of several ways: a choice, so many of some items. */
typedef struct frame_cut_choice {
    int32_t set; /* whose ways it is one of */
    int32_t spare;
    uint32_t part_first, part_count;
    int64_t cost; /* of the splices */
} frame_cut_choice;

/* What is cut from one board: so many of an item from a room (counted within the kind). Of a choice: room is 0. */
typedef struct frame_cut_part {
    uint32_t item, room, count;
} frame_cut_part;

typedef struct frame_cut_job {
    const frame_cut_item *items; /* by group, the largest first */
    size_t item_count;
    const frame_cut_kind *kinds;
    size_t kind_count;
    const frame_cut_room *rooms;
    size_t room_count;
    const int64_t *supplies; /* how many boards each has */
    size_t supply_count;
    const frame_cut_choice *choices;
    size_t choice_count;
    const frame_cut_part *choice_parts;
    const int32_t *set_wanted; /* of each set of choices: how many pieces */
    size_t set_count;
    int64_t money_unit;
    int64_t money_step;  /* money is a multiple of it */
    int64_t most_boards; /* a plan has no more; 0 where they do not count */
    int32_t group_count;
    uint32_t most_rooms; /* of a kind */
    double credit;       /* what a unit of kept size is worth */
} frame_cut_job;

/* Boards of one kind cut alike. */
typedef struct frame_cut_pattern {
    int32_t kind;
    int32_t times;
    uint32_t part_first, part_count;
} frame_cut_pattern;

/* A plan: patterns and their parts. */
typedef struct frame_cut_plan {
    frame_array patterns; /* frame_cut_pattern */
    frame_array parts;    /* frame_cut_part */
    frame_array chosen;   /* int32_t: how often each choice was taken */
    int64_t cost, boards;
    int found;
    int spare;
} frame_cut_plan;

/* The largest whole number that divides both; the other when one is 0. */
int64_t frame_cut_common_divisor(int64_t a, int64_t b);
/* The least cost a plan can have that costs at least so much. */
int64_t frame_cut_round_up(const frame_cut_job *job, double cost);
/* The most a plan costs that costs less than below, where below is a cost or, for less money, a multiple of money_unit.
 */
int64_t frame_cut_highest(const frame_cut_job *job, int64_t below);
/* What a board of a kind costs when it is cut so. */
int64_t frame_cut_cost(const frame_cut_job *job, int32_t kind, const frame_cut_part *parts, size_t count);

#endif
