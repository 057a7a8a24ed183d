/* Cutting board by board by simple rules: what a careful person does with a pencil. */
#include <string.h>

#include "takeoff/plan.h"

typedef struct finishing {
    frame_cut_plan *plan;
    const frame_cut_job *job;
    const frame_cut_rest *rest;
    frame_cut_part *parts, *best;
    size_t most;
} finishing;

static int64_t left_of(const finishing *of, size_t kind) {
    const int64_t supply = of->rest->supplies[of->job->kinds[kind].supply];
    return of->rest->limits[kind] < supply ? of->rest->limits[kind] : supply;
}

/* Fills the rooms of a kind, the longest items first; how much of them is filled. */
static int64_t fill(const finishing *of, size_t kind, size_t *count) {
    const frame_cut_kind *kinds = &of->job->kinds[kind];
    int64_t filled = 0;
    *count = 0;
    for (uint32_t r = 0; r < kinds->room_count; r++) {
        const frame_cut_room *room = &of->job->rooms[kinds->room_first + r];
        int64_t left = room->size;
        for (size_t i = 0; i < of->job->item_count && *count < of->most; i++) {
            const frame_cut_item *item = &of->job->items[i];
            if (item->group != room->group || item->size > left || of->rest->wanted[i] <= 0) continue;
            if ((room->way & FRAME_CUT_RIPPED) && !item->may_rip) continue;
            int64_t n = left / item->size;
            if (n > of->rest->wanted[i]) n = of->rest->wanted[i];
            of->rest->wanted[i] -= (int32_t)n;
            left -= n * item->size;
            of->parts[(*count)++] = (frame_cut_part){(uint32_t)i, r, (uint32_t)n};
        }
        filled += room->size - left;
    }
    for (size_t p = 0; p < *count; p++) of->rest->wanted[of->parts[p].item] += of->parts[p].count;
    return filled;
}

/* How many boards can be cut so before an item or the boards run out. */
static int32_t repeats(const finishing *of, size_t kind, size_t count) {
    int64_t times = left_of(of, kind);
    if (times > INT32_MAX) times = INT32_MAX;
    for (size_t p = 0; p < count; p++) {
        int64_t used = 0;
        for (size_t q = 0; q < count; q++)
            if (of->best[q].item == of->best[p].item) used += of->best[q].count;
        if (of->rest->wanted[of->best[p].item] / used < times) times = of->rest->wanted[of->best[p].item] / used;
    }
    return (int32_t)times;
}

/* The cheapest kind of one room that holds the same items; kind itself when there is none cheaper. */
static size_t cheapest_holder(const finishing *of, size_t kind, int64_t filled, int32_t times) {
    const frame_cut_job *job = of->job;
    if (job->kinds[kind].room_count != 1) return kind;
    const frame_cut_room *mine = &job->rooms[job->kinds[kind].room_first];
    size_t best = kind;
    for (size_t k = 0; k < job->kind_count; k++) {
        const frame_cut_room *room = &job->rooms[job->kinds[k].room_first];
        if (job->kinds[k].room_count != 1 || room->group != mine->group || room->way != mine->way ||
            room->size < filled || left_of(of, k) < times)
            continue;
        if (job->kinds[k].cost < job->kinds[best].cost) best = k;
    }
    return best;
}

static frame_status take(finishing *of, size_t kind, int64_t filled, size_t count, int exchange) {
    const int32_t times = repeats(of, kind, count);
    if (exchange) kind = cheapest_holder(of, kind, filled, times);
    of->rest->limits[kind] -= times;
    of->rest->supplies[of->job->kinds[kind].supply] -= times;
    for (size_t p = 0; p < count; p++) of->rest->wanted[of->best[p].item] -= times * (int32_t)of->best[p].count;
    return frame_cut_plan_add(of->plan, of->job, (int32_t)kind, times, of->best, count);
}

/* The kind that costs least for what it holds; -1 when none holds anything. */
static int32_t best_value(finishing *of, int32_t only, int64_t *filled, size_t *count) {
    int32_t best = -1;
    double least = 0;
    for (size_t k = 0; k < of->job->kind_count; k++) {
        size_t parts;
        if ((only >= 0 && (int32_t)k != only) || left_of(of, k) <= 0) continue;
        const int64_t holds = fill(of, k, &parts);
        if (!holds) continue;
        const double value = (double)frame_cut_cost(of->job, (int32_t)k, of->parts, parts) / (double)holds;
        if (best >= 0 && (value > least || (value == least && holds <= *filled))) continue;
        best = (int32_t)k, least = value, *filled = holds, *count = parts;
        memcpy(of->best, of->parts, parts * sizeof *of->best);
    }
    return best;
}

static int64_t count_wanted(const frame_cut_job *job, const frame_cut_rest *rest) {
    int64_t sum = 0;
    for (size_t i = 0; i < job->item_count; i++) sum += rest->wanted[i];
    for (size_t s = 0; s < job->set_count; s++) sum += rest->sets[s];
    return sum;
}

static int fits_somewhere(const frame_cut_job *job, const frame_cut_rest *rest, uint32_t item) {
    for (size_t k = 0; k < job->kind_count; k++)
        for (uint32_t r = 0;
             rest->limits[k] > 0 && rest->supplies[job->kinds[k].supply] > 0 && r < job->kinds[k].room_count; r++) {
            const frame_cut_room *room = &job->rooms[job->kinds[k].room_first + r];
            if (room->group == job->items[item].group && room->size >= job->items[item].size) return 1;
        }
    return 0;
}

frame_status frame_cut_plan_choose_all(frame_cut_plan *plan, const frame_cut_job *job, const frame_cut_rest *rest) {
    for (size_t s = 0; s < job->set_count; s++) {
        size_t best = job->choice_count;
        for (size_t c = 0; c < job->choice_count && rest->sets[s] > 0; c++) {
            const frame_cut_choice *choice = &job->choices[c];
            int fits = choice->set == (int32_t)s;
            for (uint32_t p = 0; fits && p < choice->part_count; p++)
                fits = fits_somewhere(job, rest, job->choice_parts[choice->part_first + p].item);
            if (fits && (best == job->choice_count || choice->part_count < job->choices[best].part_count)) best = c;
        }
        if (best == job->choice_count) continue;
        const frame_status status = frame_cut_plan_choose(plan, job, rest, best, rest->sets[s]);
        if (status) return status;
    }
    return FRAME_OK;
}

frame_status frame_cut_plan_finish(frame_cut_plan *plan, const frame_cut_job *job, const frame_cut_rest *rest,
                                   int32_t only, int exchange) {
    finishing of = {plan, job, rest, NULL, NULL, job->item_count * job->most_rooms};
    of.parts = frame_take(of.most * 2 * sizeof *of.parts);
    if (!of.parts) return FRAME_NO_MEMORY;
    of.best = of.parts + of.most;
    frame_status status = frame_cut_plan_choose_all(plan, job, rest);
    while (!status && count_wanted(job, rest) > 0) {
        size_t count = 0;
        int64_t filled = 0;
        const int32_t kind = best_value(&of, only, &filled, &count);
        if (kind < 0) break;
        status = take(&of, (size_t)kind, filled, count, exchange);
    }
    plan->found = count_wanted(job, rest) == 0;
    frame_give(of.parts);
    return status;
}
