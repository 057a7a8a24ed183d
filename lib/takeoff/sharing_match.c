/* Like with like: cuts of one item meet more often than those of two. */
#include "takeoff/sharing_match.h"

#include <string.h>

typedef struct matching {
    const frame_cut_job *job;
    int64_t *left;         /* of each item: those not yet on a board */
    frame_cut_part *parts; /* of the board at hand */
    size_t count;
} matching;

static int alike(const frame_cut_item *one, const frame_cut_item *other) {
    return one->size == other->size && one->group == other->group && one->may_rip == other->may_rip;
}

/* Of the items as long as one, that which the board has already, else that of which most are left. */
static uint32_t choose(const matching *of, uint32_t item) {
    uint32_t best = item;
    for (size_t p = 0; p < of->count; p++)
        if (alike(&of->job->items[of->parts[p].item], &of->job->items[item]) && of->left[of->parts[p].item] > 0)
            return of->parts[p].item;
    for (uint32_t i = 0; i < of->job->item_count; i++)
        if (alike(&of->job->items[i], &of->job->items[item]) && of->left[i] > of->left[best]) best = i;
    return best;
}

static void put(matching *of, const frame_cut_part *part) {
    uint32_t wanted = part->count;
    while (wanted) {
        const uint32_t item = choose(of, part->item);
        const uint32_t taken = of->left[item] < wanted ? (uint32_t)of->left[item] : wanted;
        of->parts[of->count++] = (frame_cut_part){item, part->room, taken};
        of->left[item] -= taken;
        wanted -= taken;
    }
}

static frame_status match(matching *of, const frame_cut_plan *plan, frame_cut_plan *made) {
    frame_status status = FRAME_OK;
    for (size_t p = 0; p < plan->patterns.count; p++) {
        const frame_cut_pattern *pattern = &FRAME_ITEM(frame_cut_pattern, plan->patterns, p);
        for (uint32_t q = 0; q < pattern->part_count; q++) {
            const frame_cut_part *part = &FRAME_ITEM(frame_cut_part, plan->parts, pattern->part_first + q);
            of->left[part->item] += (int64_t)part->count * pattern->times;
        }
    }
    for (size_t p = 0; p < plan->patterns.count; p++) {
        const frame_cut_pattern *pattern = &FRAME_ITEM(frame_cut_pattern, plan->patterns, p);
        for (int32_t n = 0; !status && n < pattern->times; n++) {
            of->count = 0;
            for (uint32_t q = 0; q < pattern->part_count; q++)
                put(of, &FRAME_ITEM(frame_cut_part, plan->parts, pattern->part_first + q));
            status = frame_cut_plan_add(made, of->job, pattern->kind, 1, of->parts, of->count);
        }
    }
    return status;
}

frame_status frame_share_match(const frame_cut_job *job, frame_cut_plan *plan) {
    size_t most = 0; /* parts a board can have: each of its pieces another item */
    for (size_t p = 0; p < plan->parts.count; p++) most += FRAME_ITEM(frame_cut_part, plan->parts, p).count;
    matching of = {.job = job,
                   .left = frame_take_zeroed(job->item_count + 1, sizeof *of.left),
                   .parts = frame_take((most + 1) * sizeof *of.parts)};
    frame_cut_plan made;
    frame_cut_plan_begin(&made);
    frame_status status = of.left && of.parts ? match(&of, plan, &made) : FRAME_NO_MEMORY;
    if (!status) { /* cost, boards and choices are as they were */
        const frame_cut_plan before = *plan;
        plan->patterns = made.patterns, plan->parts = made.parts;
        made.patterns = before.patterns, made.parts = before.parts;
    }
    frame_cut_plan_give(&made);
    frame_give(of.left);
    frame_give(of.parts);
    return status ? status : frame_cut_plan_merge(plan, job);
}
