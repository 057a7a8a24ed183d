/* Plans in order: boards that are cut alike together. */
#include <stdlib.h>
#include <string.h>

#include "takeoff/plan.h"

static int order_of_parts(const void *a, const void *b) {
    const frame_cut_part *one = a, *two = b;
    if (one->room != two->room) return one->room < two->room ? -1 : 1;
    return (one->item > two->item) - (one->item < two->item); /* items stand the largest first */
}

/* A pattern beside its parts, so that patterns can be sorted. */
typedef struct entry {
    frame_cut_pattern pattern;
    const frame_cut_part *parts;
} entry;

static int order_of_entries(const void *a, const void *b) {
    const entry *one = a, *two = b;
    if (one->pattern.kind != two->pattern.kind) return one->pattern.kind < two->pattern.kind ? -1 : 1;
    for (uint32_t p = 0; p < one->pattern.part_count && p < two->pattern.part_count; p++) {
        const frame_cut_part *of_one = &one->parts[p], *of_two = &two->parts[p];
        if (order_of_parts(of_one, of_two)) return order_of_parts(of_one, of_two);
        if (of_one->count != of_two->count) return of_one->count > of_two->count ? -1 : 1;
    }
    return (one->pattern.part_count > two->pattern.part_count) - (one->pattern.part_count < two->pattern.part_count);
}

/* Parts of one item in one room are one part. */
static uint32_t join_parts(frame_cut_part *parts, uint32_t count) {
    uint32_t left = 0;
    qsort(parts, count, sizeof *parts, order_of_parts);
    for (uint32_t p = 0; p < count; p++) {
        if (left && parts[left - 1].room == parts[p].room && parts[left - 1].item == parts[p].item)
            parts[left - 1].count += parts[p].count;
        else
            parts[left++] = parts[p];
    }
    return left;
}

frame_status frame_cut_plan_merge(frame_cut_plan *plan, const frame_cut_job *job) {
    const size_t count = plan->patterns.count;
    entry *entries = frame_take(count * sizeof *entries);
    frame_cut_plan merged;
    frame_status status = entries ? FRAME_OK : FRAME_NO_MEMORY;
    frame_cut_plan_begin(&merged);
    for (size_t p = 0; !status && p < count; p++) {
        entries[p].pattern = FRAME_ITEM(frame_cut_pattern, plan->patterns, p);
        frame_cut_part *parts = &FRAME_ITEM(frame_cut_part, plan->parts, entries[p].pattern.part_first);
        entries[p].pattern.part_count = join_parts(parts, entries[p].pattern.part_count);
        entries[p].parts = parts;
    }
    if (!status) qsort(entries, count, sizeof *entries, order_of_entries);
    for (size_t p = 0; !status && p < count;) {
        int32_t times = 0;
        size_t next = p;
        for (; next < count && !order_of_entries(&entries[p], &entries[next]); next++)
            times += entries[next].pattern.times;
        status = frame_cut_plan_add(&merged, job, entries[p].pattern.kind, times, entries[p].parts,
                                    entries[p].pattern.part_count);
        p = next;
    }
    frame_give(entries);
    if (!status) {
        const frame_array patterns = plan->patterns, parts = plan->parts;
        plan->patterns = merged.patterns;
        plan->parts = merged.parts;
        merged.patterns = patterns;
        merged.parts = parts;
    }
    frame_cut_plan_give(&merged);
    return status;
}
