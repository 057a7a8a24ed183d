/* Plans: lists of patterns. */
#include "takeoff/plan.h"

#include <math.h>
#include <string.h>

void frame_cut_plan_begin(frame_cut_plan *plan) {
    memset(plan, 0, sizeof *plan);
    plan->patterns.item_size = sizeof(frame_cut_pattern);
    plan->parts.item_size = sizeof(frame_cut_part);
    plan->chosen.item_size = sizeof(int32_t);
}

int64_t frame_cut_cost(const frame_cut_job *job, int32_t kind, const frame_cut_part *parts, size_t count) {
    const frame_cut_kind *of = &job->kinds[kind];
    double kept = 0; /* size cut from rooms whose rest is kept */
    for (size_t p = 0; p < count; p++)
        if (job->rooms[of->room_first + parts[p].room].way & FRAME_CUT_KEPT)
            kept += (double)job->items[parts[p].item].size * parts[p].count;
    return of->cost + (kept > 0 ? (int64_t)ceil(kept * job->credit - 1e-6) : 0);
}

void frame_cut_plan_give(frame_cut_plan *plan) {
    frame_array_give(&plan->patterns);
    frame_array_give(&plan->parts);
    frame_array_give(&plan->chosen);
}

void frame_cut_plan_clear(frame_cut_plan *plan) {
    plan->patterns.count = plan->parts.count = plan->chosen.count = 0;
    plan->cost = plan->boards = 0;
    plan->found = 0;
}

frame_status frame_cut_plan_add(frame_cut_plan *plan, const frame_cut_job *job, int32_t kind, int32_t times,
                                const frame_cut_part *parts, size_t count) {
    const frame_cut_pattern pattern = {kind, times, (uint32_t)plan->parts.count, (uint32_t)count};
    if (frame_array_reserve(&plan->parts, plan->parts.count + count)) return FRAME_NO_MEMORY;
    if (!frame_array_push(&plan->patterns, &pattern)) return FRAME_NO_MEMORY;
    for (size_t p = 0; p < count; p++) (void)frame_array_push(&plan->parts, &parts[p]);
    plan->cost += frame_cut_cost(job, kind, parts, count) * times;
    plan->boards += times;
    return FRAME_OK;
}

frame_status frame_cut_plan_copy(frame_cut_plan *to, const frame_cut_plan *from) {
    if (frame_array_reserve(&to->patterns, from->patterns.count) ||
        frame_array_reserve(&to->parts, from->parts.count) || frame_array_reserve(&to->chosen, from->chosen.count))
        return FRAME_NO_MEMORY;
    if (from->patterns.count)
        memcpy(to->patterns.items, from->patterns.items, from->patterns.count * sizeof(frame_cut_pattern));
    if (from->parts.count) memcpy(to->parts.items, from->parts.items, from->parts.count * sizeof(frame_cut_part));
    if (from->chosen.count) memcpy(to->chosen.items, from->chosen.items, from->chosen.count * sizeof(int32_t));
    to->chosen.count = from->chosen.count;
    to->patterns.count = from->patterns.count;
    to->parts.count = from->parts.count;
    to->cost = from->cost;
    to->boards = from->boards;
    to->found = from->found;
    return FRAME_OK;
}

int64_t frame_cut_common_divisor(int64_t a, int64_t b) {
    while (b) {
        const int64_t rest = a % b;
        a = b;
        b = rest;
    }
    return a;
}

int64_t frame_cut_round_up(const frame_cut_job *job, double cost) {
    /* Less the boards, what is left is money; it is rounded up to a multiple of its step. */
    const double step = (double)job->money_step * (double)job->money_unit;
    const int64_t money = (int64_t)ceil((cost - (double)job->most_boards) / step - 1e-6) * (int64_t)step;
    const int64_t plain = (int64_t)ceil(cost - 1e-9 * fabs(cost) - 1e-6);
    return money > plain ? money : plain;
}

int64_t frame_cut_highest(const frame_cut_job *job, int64_t below) {
    if (below % job->money_unit || job->money_unit == 1) return below - 1;
    return below - job->money_step * job->money_unit + job->most_boards;
}

frame_status frame_cut_plan_choose(frame_cut_plan *plan, const frame_cut_job *job, const frame_cut_rest *rest,
                                   size_t choice, int32_t times) {
    const frame_cut_choice *of = &job->choices[choice];
    if (frame_array_reserve(&plan->chosen, job->choice_count)) return FRAME_NO_MEMORY;
    for (; plan->chosen.count < job->choice_count; plan->chosen.count++)
        FRAME_ITEM(int32_t, plan->chosen, plan->chosen.count) = 0;
    FRAME_ITEM(int32_t, plan->chosen, choice) += times;
    plan->cost += of->cost * times;
    rest->sets[of->set] -= times;
    for (uint32_t p = 0; p < of->part_count; p++) {
        const frame_cut_part *part = &job->choice_parts[of->part_first + p];
        rest->wanted[part->item] += times * (int32_t)part->count;
    }
    return FRAME_OK;
}

frame_status frame_cut_rest_begin(frame_cut_rest *rest, const frame_cut_job *job) {
    rest->wanted = frame_take_zeroed(job->item_count, sizeof *rest->wanted);
    rest->sets = frame_take_zeroed(job->set_count, sizeof *rest->sets);
    rest->limits = frame_take_zeroed(job->kind_count, sizeof *rest->limits);
    rest->supplies = frame_take_zeroed(job->supply_count, sizeof *rest->supplies);
    return rest->wanted && rest->sets && rest->limits && rest->supplies ? FRAME_OK : FRAME_NO_MEMORY;
}

void frame_cut_rest_give(frame_cut_rest *rest) {
    frame_give(rest->wanted);
    frame_give(rest->sets);
    frame_give(rest->limits);
    frame_give(rest->supplies);
    memset(rest, 0, sizeof *rest);
}

void frame_cut_rest_copy(const frame_cut_job *job, const frame_cut_rest *to, const frame_cut_rest *from) {
    memcpy(to->wanted, from->wanted, job->item_count * sizeof *to->wanted);
    memcpy(to->sets, from->sets, job->set_count * sizeof *to->sets);
    memcpy(to->limits, from->limits, job->kind_count * sizeof *to->limits);
    memcpy(to->supplies, from->supplies, job->supply_count * sizeof *to->supplies);
}

void frame_cut_rest_of(const frame_cut_job *job, const frame_cut_rest *rest) {
    for (size_t i = 0; i < job->item_count; i++) rest->wanted[i] = job->items[i].wanted;
    for (size_t s = 0; s < job->supply_count; s++) rest->supplies[s] = job->supplies[s];
    for (size_t s = 0; s < job->set_count; s++) rest->sets[s] = job->set_wanted[s];
    for (size_t k = 0; k < job->kind_count; k++) rest->limits[k] = job->supplies[job->kinds[k].supply];
}
