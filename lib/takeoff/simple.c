/* The usual ways of buying. */
#include "takeoff/simple.h"

/* A kind that a person would think of as a board: in one piece, bought and cut as it is. */
static int is_plain(const frame_cut_job *job, size_t kind, int32_t group) {
    const frame_cut_room *room = &job->rooms[job->kinds[kind].room_first];
    return job->kinds[kind].room_count == 1 && room->way == 0 && room->group == group;
}

static int64_t size_of(const frame_cut_job *job, size_t kind) {
    return job->rooms[job->kinds[kind].room_first].size;
}

static void want_group(const frame_cut_job *job, const frame_cut_rest *rest, int32_t group) {
    frame_cut_rest_of(job, rest);
    for (size_t i = 0; i < job->item_count; i++)
        if (job->items[i].group != group) rest->wanted[i] = 0;
    for (size_t c = 0; c < job->choice_count; c++)
        if (job->items[job->choice_parts[job->choices[c].part_first].item].group != group)
            rest->sets[job->choices[c].set] = 0;
}

static int has_items(const frame_cut_job *job, int32_t group) {
    for (size_t i = 0; i < job->item_count; i++)
        if (job->items[i].group == group) return 1;
    return 0;
}

static frame_status append(frame_cut_plan *to, const frame_cut_job *job, const frame_cut_plan *from) {
    frame_status status = FRAME_OK;
    for (size_t p = 0; !status && p < from->patterns.count; p++) {
        const frame_cut_pattern *pattern = &FRAME_ITEM(frame_cut_pattern, from->patterns, p);
        status = frame_cut_plan_add(to, job, pattern->kind, pattern->times,
                                    &FRAME_ITEM(frame_cut_part, from->parts, pattern->part_first), pattern->part_count);
    }
    if (!status && frame_array_reserve(&to->chosen, job->choice_count)) return FRAME_NO_MEMORY;
    for (; !status && to->chosen.count < job->choice_count; to->chosen.count++)
        FRAME_ITEM(int32_t, to->chosen, to->chosen.count) = 0;
    for (size_t c = 0; !status && c < from->chosen.count; c++) {
        FRAME_ITEM(int32_t, to->chosen, c) += FRAME_ITEM(int32_t, from->chosen, c);
        to->cost += job->choices[c].cost * FRAME_ITEM(int32_t, from->chosen, c);
    }
    return status;
}

/* One group from one kind: the longest, or that for which it is cheapest. */
static frame_status plan_group(const frame_cut_job *job, int32_t group, int longest, const frame_cut_rest *rest,
                               frame_cut_plan *trial, frame_cut_plan *best) {
    size_t only = job->kind_count;
    frame_status status = FRAME_OK;
    frame_cut_plan_clear(best);
    for (size_t k = 0; longest && k < job->kind_count; k++)
        if (is_plain(job, k, group) && (only == job->kind_count || size_of(job, k) > size_of(job, only))) only = k;
    for (size_t k = 0; !status && k < job->kind_count; k++) {
        if (!is_plain(job, k, group) || (longest && k != only)) continue;
        want_group(job, rest, group);
        frame_cut_plan_clear(trial);
        status = frame_cut_plan_finish(trial, job, rest, (int32_t)k, 0);
        if (status || !trial->found || (best->found && trial->cost >= best->cost)) continue;
        status = frame_cut_plan_copy(best, trial);
    }
    return status;
}

static frame_status plan_groups(const frame_cut_job *job, int longest, const frame_cut_rest *rest,
                                frame_cut_plan *plan) {
    frame_cut_plan trial, best;
    frame_cut_plan_begin(&trial);
    frame_cut_plan_begin(&best);
    frame_status status = FRAME_OK;
    plan->found = 1;
    for (int32_t g = 0; !status && g < job->group_count && plan->found; g++) {
        if (!has_items(job, g)) continue;
        status = plan_group(job, g, longest, rest, &trial, &best);
        plan->found = best.found;
        if (!status && best.found) status = append(plan, job, &best);
    }
    frame_cut_plan_give(&trial);
    frame_cut_plan_give(&best);
    return status;
}

frame_status frame_cut_simple(const frame_cut_job *job, frame_stock_method method, frame_cut_plan *plan) {
    frame_cut_rest rest;
    frame_status status = frame_cut_rest_begin(&rest, job);
    frame_cut_plan_clear(plan);
    if (!status && method == FRAME_STOCK_METHOD_BY_VALUE) {
        frame_cut_rest_of(job, &rest);
        status = frame_cut_plan_finish(plan, job, &rest, -1, 1);
    } else if (!status) {
        status = plan_groups(job, method == FRAME_STOCK_METHOD_LONGEST, &rest, plan);
    }
    frame_cut_rest_give(&rest);
    return status;
}

frame_status frame_cut_simplest(const frame_cut_job *job, frame_cut_plan *plan) {
    static const frame_stock_method methods[] = {FRAME_STOCK_METHOD_BY_VALUE, FRAME_STOCK_METHOD_ONE_LENGTH,
                                                 FRAME_STOCK_METHOD_LONGEST};
    frame_cut_plan trial;
    frame_cut_plan_begin(&trial);
    frame_status status = FRAME_OK;
    for (size_t m = 0; !status && m < sizeof methods / sizeof *methods; m++) {
        status = frame_cut_simple(job, methods[m], &trial);
        if (status || !trial.found || (plan->found && trial.cost >= plan->cost)) continue;
        status = frame_cut_plan_copy(plan, &trial);
    }
    frame_cut_plan_give(&trial);
    return status;
}
