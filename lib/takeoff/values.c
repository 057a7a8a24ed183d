/* Plans by changing values. */
#include "takeoff/values.h"

#include <math.h>
#include <string.h>

frame_status frame_values_begin(frame_values *values, frame_relaxed *relaxed) {
    const frame_cut_job *job = relaxed->job;
    memset(values, 0, sizeof *values);
    values->relaxed = relaxed;
    values->luck = 88172645463325252u;
    frame_cut_plan_begin(&values->plan);
    values->value = frame_take_zeroed(job->item_count, sizeof *values->value);
    values->worth = frame_take_zeroed(job->item_count, sizeof *values->worth);
    values->power = frame_take_zeroed(job->item_count, sizeof *values->power);
    values->best = frame_take_zeroed(job->item_count * job->most_rooms, sizeof *values->best);
    if (!values->value || !values->worth || !values->power || !values->best) return FRAME_NO_MEMORY;
    for (size_t i = 0; i < job->item_count; i++)
        values->value[i] = relaxed->dearest * (double)job->items[i].size / (double)relaxed->longest;
    return frame_cut_rest_begin(&values->rest, job);
}

void frame_values_give(frame_values *values) {
    frame_give(values->value);
    frame_give(values->worth);
    frame_give(values->power);
    frame_give(values->best);
    frame_cut_rest_give(&values->rest);
    frame_cut_plan_give(&values->plan);
    memset(values, 0, sizeof *values);
}

/* A number in [0, 1) that is the same on every machine. */
static double chance(frame_values *values) {
    values->luck ^= values->luck << 13;
    values->luck ^= values->luck >> 7;
    values->luck ^= values->luck << 17;
    return (double)(values->luck >> 11) / 9007199254740992.0;
}

static void price(frame_values *values) {
    const frame_relaxed *relaxed = values->relaxed;
    for (size_t i = 0; i < relaxed->job->item_count; i++)
        values->worth[i] = floor(fmax(values->value[i] * relaxed->scale, 1));
    for (int32_t f = 0; f < relaxed->job->group_count * FRAME_CUT_WAYS; f++)
        if (relaxed->fillings[f].job)
            frame_filling_price(&relaxed->fillings[f], values->worth, values->rest.wanted, relaxed->scale, 0);
}

/* What the filling of a room adds to the pattern in found, as far as the rooms before have left something. */
static size_t add_room(const frame_values *values, const frame_filling *filling, uint32_t room, size_t count) {
    frame_cut_part *found = values->relaxed->found;
    size_t end = count;
    for (size_t i = 0; i < filling->count; i++) {
        const uint32_t item = (uint32_t)(filling->first + i);
        int64_t left = values->rest.wanted[item];
        for (size_t p = 0; p < count; p++)
            if (found[p].item == item) left -= found[p].count;
        const int64_t n = filling->counts[i] < left ? filling->counts[i] : left;
        if (n > 0) found[end++] = (frame_cut_part){item, room, (uint32_t)n};
    }
    return end;
}

static double fill(const frame_values *values, size_t kind, size_t *count) {
    const frame_cut_job *job = values->relaxed->job;
    const frame_cut_kind *of = &job->kinds[kind];
    double worth = 0;
    *count = 0;
    for (uint32_t r = 0; r < of->room_count; r++) {
        const frame_cut_room *room = &job->rooms[of->room_first + r];
        frame_filling *filling = frame_relaxed_filling(values->relaxed, room);
        if (frame_filling_best(filling, room->size, 0) <= 0) continue;
        *count = add_room(values, filling, r, *count);
    }
    for (size_t p = 0; p < *count; p++)
        worth += values->value[values->relaxed->found[p].item] * values->relaxed->found[p].count;
    return worth;
}

static int64_t left_of(const frame_values *values, size_t kind) {
    const int64_t supply = values->rest.supplies[values->relaxed->job->kinds[kind].supply];
    return values->rest.limits[kind] < supply ? values->rest.limits[kind] : supply;
}

/* The kind that costs least for what it holds; -1 when none holds anything. */
static int32_t choose_kind(frame_values *values) {
    const frame_cut_job *job = values->relaxed->job;
    int32_t best = -1;
    double most = 0;
    for (size_t k = 0; k < job->kind_count; k++) {
        size_t count;
        if (left_of(values, k) <= 0) continue;
        const double worth = fill(values, k, &count);
        if (!count) continue;
        const int64_t cost = frame_cut_cost(job, (int32_t)k, values->relaxed->found, count);
        const double share = worth / fmax((double)cost, 1e-6 * values->relaxed->dearest);
        if (best >= 0 && share <= most) continue;
        best = (int32_t)k, most = share, values->best_count = count;
        memcpy(values->best, values->relaxed->found, count * sizeof *values->best);
    }
    return best;
}

static int32_t repeats(const frame_values *values, size_t kind) {
    int64_t times = left_of(values, kind);
    for (size_t p = 0; p < values->best_count; p++) {
        int64_t used = 0;
        for (size_t q = 0; q < values->best_count; q++)
            if (values->best[q].item == values->best[p].item) used += values->best[q].count;
        if (values->rest.wanted[values->best[p].item] / used < times)
            times = values->rest.wanted[values->best[p].item] / used;
    }
    return (int32_t)times;
}

/* What went into a board is worth what the board cost, each item by its size; the new value counts for more, the more
 * of the item went. */
static void correct(frame_values *values, int64_t cost, int32_t times) {
    const frame_cut_job *job = values->relaxed->job;
    double sum = 0;
    for (size_t p = 0; p < values->best_count; p++) sum += values->power[values->best[p].item] * values->best[p].count;
    for (size_t p = 0; p < values->best_count; p++) {
        const uint32_t item = values->best[p].item;
        const double cut = (double)values->best[p].count * times, all = (double)job->items[item].most;
        const double left = (double)values->rest.wanted[item];
        const double share = cut / (cut + (1 + 0.5 * chance(values)) * (all + left));
        const double value = (double)cost * values->power[item] / sum;
        values->value[item] = (1 - share) * values->value[item] + share * value;
    }
}

static frame_status cut(frame_values *values, int32_t kind) {
    const int32_t times = repeats(values, (size_t)kind);
    const frame_cut_job *job = values->relaxed->job;
    values->rest.limits[kind] -= times;
    values->rest.supplies[job->kinds[kind].supply] -= times;
    for (size_t p = 0; p < values->best_count; p++)
        values->rest.wanted[values->best[p].item] -= times * (int32_t)values->best[p].count;
    correct(values, frame_cut_cost(job, kind, values->best, values->best_count), times);
    return frame_cut_plan_add(&values->plan, job, kind, times, values->best, values->best_count);
}

static int spend(frame_values *values) {
    frame_relaxed *relaxed = values->relaxed;
    double spent = 0;
    for (int32_t f = 0; f < relaxed->job->group_count * FRAME_CUT_WAYS; f++) {
        spent += relaxed->fillings[f].steps;
        relaxed->fillings[f].steps = 0;
    }
    return frame_effort_spend(relaxed->effort, spent);
}

static int nothing_wanted(const frame_values *values) {
    for (size_t i = 0; i < values->relaxed->job->item_count; i++)
        if (values->rest.wanted[i] > 0) return 0;
    return 1;
}

frame_status frame_values_try(frame_values *values, int64_t below) {
    const frame_cut_job *job = values->relaxed->job;
    const double power = 1 + 0.1 * chance(values);
    frame_cut_plan_clear(&values->plan);
    frame_cut_rest_of(job, &values->rest);
    for (size_t i = 0; i < job->item_count; i++)
        values->power[i] = pow((double)job->items[i].size / (double)values->relaxed->longest, power);
    frame_status status = frame_cut_plan_choose_all(&values->plan, job, &values->rest);
    while (!status && !nothing_wanted(values) && values->plan.cost < below && !spend(values)) {
        price(values);
        const int32_t kind = choose_kind(values);
        if (kind < 0) return FRAME_OK;
        status = cut(values, kind);
    }
    values->plan.found = nothing_wanted(values) && values->plan.cost < below;
    return status;
}
