/* Fixing patterns one after the other. */
#include "takeoff/rounding.h"

#include <math.h>
#include <string.h>

/* Rounds of making patterns after each fixing: what is missing then is rarely worth more. */
enum { MOST_ROUNDS = 20 };

frame_status frame_rounding_begin(frame_rounding *rounding, frame_relaxed *relaxed) {
    memset(rounding, 0, sizeof *rounding);
    rounding->relaxed = relaxed;
    rounding->luck = 88172645463325252u;
    frame_cut_plan_begin(&rounding->plan);
    frame_cut_plan_begin(&rounding->finished);
    rounding->trimmed =
        frame_take_zeroed(relaxed->job->item_count * relaxed->job->most_rooms, sizeof *rounding->trimmed);
    if (!rounding->trimmed || frame_cut_rest_begin(&rounding->rest, relaxed->job)) return FRAME_NO_MEMORY;
    return frame_cut_rest_begin(&rounding->trial, relaxed->job);
}

void frame_rounding_give(frame_rounding *rounding) {
    frame_cut_plan_give(&rounding->plan);
    frame_cut_plan_give(&rounding->finished);
    frame_give(rounding->trimmed);
    frame_cut_rest_give(&rounding->rest);
    frame_cut_rest_give(&rounding->trial);
    memset(rounding, 0, sizeof *rounding);
}

/* A number in [0, 1) that is the same on every machine. */
static double chance(frame_rounding *rounding) {
    rounding->luck ^= rounding->luck << 13;
    rounding->luck ^= rounding->luck >> 7;
    rounding->luck ^= rounding->luck << 17;
    return (double)(rounding->luck >> 11) / 9007199254740992.0;
}

/* The parts of a pattern that are still wanted, in trimmed. */
static size_t trim(frame_rounding *rounding, const frame_cut_pattern *pattern) {
    const frame_cut_part *parts = &FRAME_ITEM(frame_cut_part, rounding->relaxed->parts, pattern->part_first);
    size_t count = 0;
    for (uint32_t p = 0; p < pattern->part_count; p++) {
        int32_t left = rounding->rest.wanted[parts[p].item];
        for (size_t q = 0; q < count; q++)
            if (rounding->trimmed[q].item == parts[p].item) left -= (int32_t)rounding->trimmed[q].count;
        if (left <= 0) continue;
        rounding->trimmed[count] = parts[p];
        if (left < (int32_t)parts[p].count) rounding->trimmed[count].count = (uint32_t)left;
        count++;
    }
    return count;
}

/* Cuts so many boards to a pattern, fewer when its items run out. */
static frame_status fix(frame_rounding *rounding, size_t pattern, int64_t times) {
    const frame_cut_pattern *of = &FRAME_ITEM(frame_cut_pattern, rounding->relaxed->patterns, pattern);
    const frame_cut_job *job = rounding->relaxed->job;
    while (times > 0) {
        const size_t count = trim(rounding, of);
        const int64_t supply = rounding->rest.supplies[job->kinds[of->kind].supply];
        int64_t alike = times < supply ? times : supply;
        if (alike > rounding->rest.limits[of->kind]) alike = rounding->rest.limits[of->kind];
        if (!count || alike <= 0) return FRAME_OK;
        for (size_t p = 0; p < count; p++) {
            int64_t used = 0;
            for (size_t q = 0; q < count; q++)
                if (rounding->trimmed[q].item == rounding->trimmed[p].item) used += rounding->trimmed[q].count;
            const int64_t last = rounding->rest.wanted[rounding->trimmed[p].item] / used;
            if (last < alike) alike = last;
        }
        for (size_t p = 0; p < count; p++)
            rounding->rest.wanted[rounding->trimmed[p].item] -= (int32_t)(alike * rounding->trimmed[p].count);
        rounding->rest.limits[of->kind] -= alike;
        rounding->rest.supplies[job->kinds[of->kind].supply] -= alike;
        const frame_status status =
            frame_cut_plan_add(&rounding->plan, job, of->kind, (int32_t)alike, rounding->trimmed, count);
        if (status) return status;
        times -= alike;
    }
    return FRAME_OK;
}

/* Fixes the whole boards of the relaxed plan, or, when there are none, a board of the pattern nearest to one. */
static frame_status fix_some(frame_rounding *rounding, double noise, size_t *fixed) {
    const frame_relaxed *relaxed = rounding->relaxed;
    size_t best = SIZE_MAX;
    double most = 0;
    *fixed = 0;
    for (size_t p = 0; p < frame_relaxed_count(relaxed); p++) {
        const double times = frame_relaxed_times(relaxed, p);
        if (times < 1e-6) continue;
        const double whole = floor(times + 0.15);
        if (whole >= 1) {
            const frame_status status = fix(rounding, p, (int64_t)whole);
            if (status) return status;
            ++*fixed;
        }
        const double score = (times - whole) * (1 + noise * (chance(rounding) - 0.5));
        if (score > most) most = score, best = p;
    }
    if (*fixed || best == SIZE_MAX) return FRAME_OK;
    *fixed = 1;
    return fix(rounding, best, 1);
}

/* Spliced pieces first: so often as the relaxed plan takes each choice, at least one choice of a set at a time. */
static frame_status fix_choices(frame_rounding *rounding, size_t *fixed) {
    const frame_relaxed *relaxed = rounding->relaxed;
    const frame_cut_job *job = relaxed->job;
    frame_status status = FRAME_OK;
    *fixed = 0;
    for (size_t s = 0; !status && s < job->set_count; s++) {
        size_t best = job->choice_count;
        double most = -1;
        const size_t before = *fixed;
        for (size_t c = 0; !status && c < job->choice_count; c++) {
            if (job->choices[c].set != (int32_t)s || rounding->rest.sets[s] <= 0) continue;
            const double times = frame_relaxed_choice(relaxed, c);
            int32_t whole = (int32_t)floor(times + 1e-6);
            if (whole > rounding->rest.sets[s]) whole = rounding->rest.sets[s];
            if (times - whole > most) most = times - whole, best = c;
            if (whole <= 0) continue;
            status = frame_cut_plan_choose(&rounding->plan, job, &rounding->rest, c, whole);
            *fixed += (size_t)whole;
        }
        if (status || *fixed > before || best == job->choice_count || rounding->rest.sets[s] <= 0) continue;
        status = frame_cut_plan_choose(&rounding->plan, job, &rounding->rest, best, 1);
        ++*fixed;
    }
    return status;
}

static int nothing_wanted(const frame_rounding *rounding) {
    for (size_t i = 0; i < rounding->relaxed->job->item_count; i++)
        if (rounding->rest.wanted[i] > 0) return 0;
    return 1;
}

/* Tries to finish by the simple rule from here. */
static frame_status try_to_finish(frame_rounding *rounding, int64_t below) {
    const frame_cut_job *job = rounding->relaxed->job;
    frame_status status = frame_cut_plan_copy(&rounding->finished, &rounding->plan);
    if (status) return status;
    frame_cut_rest_copy(job, &rounding->trial, &rounding->rest);
    status = frame_cut_plan_finish(&rounding->finished, job, &rounding->trial, -1, 1);
    if (status || !rounding->finished.found || rounding->finished.cost >= below) return status;
    const frame_cut_plan kept = rounding->plan;
    rounding->plan = rounding->finished;
    rounding->finished = kept;
    return FRAME_OK;
}

frame_status frame_rounding_try(frame_rounding *rounding, const int64_t *limits, int64_t below, double noise) {
    frame_relaxed *relaxed = rounding->relaxed;
    const frame_cut_job *job = relaxed->job;
    frame_cut_plan_clear(&rounding->plan);
    frame_cut_rest_of(job, &rounding->rest);
    if (limits) memcpy(rounding->rest.limits, limits, job->kind_count * sizeof *limits);
    frame_status status = FRAME_OK;
    while (!status && !relaxed->effort->over) {
        frame_relaxed_ask(relaxed, rounding->rest.wanted, rounding->rest.sets, rounding->rest.limits, NULL);
        frame_relaxed_ask_supplies(relaxed, rounding->rest.supplies);
        if (limits && job->kind_count > 1)
            relaxed->enough = (double)(frame_cut_highest(job, below) - rounding->plan.cost) + 1e-6;
        relaxed->most_rounds = MOST_ROUNDS;
        status = frame_relaxed_solve(relaxed, 0);
        relaxed->enough = -INFINITY;
        relaxed->most_rounds = 0;
        if (status || relaxed->effort->over) return status;
        if (frame_relaxed_shortfall(relaxed) > 1e-6) return FRAME_OK;
        const double cost = (double)rounding->plan.cost + frame_relaxed_cost(relaxed);
        if (frame_cut_round_up(job, cost) >= below) return FRAME_OK;
        size_t fixed;
        if ((status = fix_choices(rounding, &fixed))) return status;
        if (fixed) continue;
        if ((status = fix_some(rounding, noise, &fixed)) || !fixed) return status;
        if (nothing_wanted(rounding)) {
            rounding->plan.found = rounding->plan.cost < below;
            return FRAME_OK;
        }
        if ((status = try_to_finish(rounding, below)) || rounding->plan.found) return status;
    }
    return status;
}
