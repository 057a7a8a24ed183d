/* Taking a job apart and putting the plans together. */
#include "takeoff/component.h"

#include <string.h>

static int32_t root(int32_t *of, int32_t group) {
    while (of[group] != group) group = of[group] = of[of[group]];
    return group;
}

static int32_t group_of_kind(const frame_cut_job *job, size_t kind) {
    return job->rooms[job->kinds[kind].room_first].group;
}

int32_t frame_component_count(const frame_cut_job *job, int32_t *of) {
    for (int32_t g = 0; g < job->group_count; g++) of[g] = g;
    for (size_t k = 0; k < job->kind_count; k++) {
        const frame_cut_kind *kind = &job->kinds[k];
        for (uint32_t r = 1; r < kind->room_count; r++)
            of[root(of, job->rooms[kind->room_first + r].group)] = root(of, group_of_kind(job, k));
        for (size_t other = 0; other < k; other++)
            if (job->kinds[other].supply == kind->supply)
                of[root(of, group_of_kind(job, other))] = root(of, group_of_kind(job, k));
    }
    int32_t count = 0;
    for (int32_t g = 0; g < job->group_count; g++) of[g] = root(of, g);
    for (int32_t g = 0; g < job->group_count; g++) { /* roots are numbered, below 0 until all are */
        if (of[g] != g) continue;
        count++;
        for (int32_t h = 0; h < job->group_count; h++)
            if (h != g && of[h] == g) of[h] = -count;
        of[g] = -count;
    }
    for (int32_t g = 0; g < job->group_count; g++) of[g] = -1 - of[g];
    return count;
}

static void begin(frame_component *component) {
    memset(component, 0, sizeof *component);
    component->items.item_size = sizeof(frame_cut_item);
    component->kinds.item_size = sizeof(frame_cut_kind);
    component->rooms.item_size = sizeof(frame_cut_room);
    component->supplies.item_size = sizeof(int64_t);
    component->choices.item_size = sizeof(frame_cut_choice);
    component->choice_parts.item_size = sizeof(frame_cut_part);
    component->set_wanted.item_size = sizeof(int32_t);
    component->item_of.item_size = component->kind_of.item_size = component->choice_of.item_size = sizeof(uint32_t);
}

void frame_component_give(frame_component *component) {
    frame_array *lists[] = {&component->items,   &component->kinds,        &component->rooms,      &component->supplies,
                            &component->choices, &component->choice_parts, &component->set_wanted, &component->item_of,
                            &component->kind_of, &component->choice_of};
    for (size_t i = 0; i < sizeof lists / sizeof *lists; i++) frame_array_give(lists[i]);
}

static frame_status take_kinds(frame_component *component, const frame_cut_job *job, const int32_t *of, int32_t which) {
    for (uint32_t k = 0; k < job->kind_count; k++) {
        frame_cut_kind kind = job->kinds[k];
        if (of[group_of_kind(job, k)] != which) continue;
        /* Kinds of one supply stand together. */
        const frame_cut_kind *last = component->kinds.items;
        const int same =
            component->kinds.count &&
            job->kinds[FRAME_ITEM(uint32_t, component->kind_of, component->kinds.count - 1)].supply == kind.supply;
        const int32_t last_supply = same ? last[component->kinds.count - 1].supply : 0;
        if (!same && !frame_array_push(&component->supplies, &job->supplies[kind.supply])) return FRAME_NO_MEMORY;
        const uint32_t first = kind.room_first;
        kind.supply = same ? last_supply : (int32_t)component->supplies.count - 1;
        kind.room_first = (uint32_t)component->rooms.count;
        for (uint32_t r = 0; r < kind.room_count; r++)
            if (!frame_array_push(&component->rooms, &job->rooms[first + r])) return FRAME_NO_MEMORY;
        if (!frame_array_push(&component->kinds, &kind) || !frame_array_push(&component->kind_of, &k))
            return FRAME_NO_MEMORY;
    }
    return FRAME_OK;
}

static frame_status take_choices(frame_component *component, const frame_cut_job *job, const uint32_t *place_of,
                                 const int32_t *of, int32_t which) {
    int32_t last_set = -1;
    for (uint32_t c = 0; c < job->choice_count; c++) {
        frame_cut_choice choice = job->choices[c];
        const uint32_t first = choice.part_first;
        if (of[job->items[job->choice_parts[first].item].group] != which) continue;
        if (choice.set != last_set) {
            last_set = choice.set;
            if (!frame_array_push(&component->set_wanted, &job->set_wanted[choice.set])) return FRAME_NO_MEMORY;
        }
        choice.set = (int32_t)component->set_wanted.count - 1;
        choice.part_first = (uint32_t)component->choice_parts.count;
        for (uint32_t p = 0; p < choice.part_count; p++) {
            frame_cut_part part = job->choice_parts[first + p];
            part.item = place_of[part.item];
            if (!frame_array_push(&component->choice_parts, &part)) return FRAME_NO_MEMORY;
        }
        if (!frame_array_push(&component->choices, &choice) || !frame_array_push(&component->choice_of, &c))
            return FRAME_NO_MEMORY;
    }
    return FRAME_OK;
}

static frame_status take_items(frame_component *component, const frame_cut_job *job, uint32_t *place_of,
                               const int32_t *of, int32_t which) {
    for (uint32_t i = 0; i < job->item_count; i++) {
        if (of[job->items[i].group] != which) continue;
        place_of[i] = (uint32_t)component->items.count;
        if (!frame_array_push(&component->items, &job->items[i]) || !frame_array_push(&component->item_of, &i))
            return FRAME_NO_MEMORY;
    }
    return FRAME_OK;
}

frame_status frame_component_take(frame_component *component, const frame_cut_job *job, const int32_t *of,
                                  int32_t which) {
    begin(component);
    uint32_t *place_of = frame_take_zeroed(job->item_count, sizeof *place_of);
    frame_status status = place_of ? FRAME_OK : FRAME_NO_MEMORY;
    if (!status) status = take_items(component, job, place_of, of, which);
    if (!status) status = take_kinds(component, job, of, which);
    if (!status) status = take_choices(component, job, place_of, of, which);
    frame_give(place_of);
    component->job = *job;
    component->job.items = component->items.items;
    component->job.item_count = component->items.count;
    component->job.kinds = component->kinds.items;
    component->job.kind_count = component->kinds.count;
    component->job.rooms = component->rooms.items;
    component->job.room_count = component->rooms.count;
    component->job.supplies = component->supplies.items;
    component->job.supply_count = component->supplies.count;
    component->job.choices = component->choices.items;
    component->job.choice_count = component->choices.count;
    component->job.choice_parts = component->choice_parts.items;
    component->job.set_wanted = component->set_wanted.items;
    component->job.set_count = component->set_wanted.count;
    return status;
}

frame_status frame_component_add(const frame_component *component, const frame_cut_job *job, const frame_cut_plan *part,
                                 frame_cut_plan *whole) {
    frame_status status = FRAME_OK;
    const uint32_t *items = component->item_of.items, *kinds = component->kind_of.items;
    for (size_t p = 0; !status && p < part->patterns.count; p++) {
        const frame_cut_pattern *pattern = &FRAME_ITEM(frame_cut_pattern, part->patterns, p);
        frame_cut_part *parts = frame_take((pattern->part_count + 1) * sizeof *parts);
        if (!parts) return FRAME_NO_MEMORY;
        for (uint32_t q = 0; q < pattern->part_count; q++) {
            parts[q] = FRAME_ITEM(frame_cut_part, part->parts, pattern->part_first + q);
            parts[q].item = items[parts[q].item];
        }
        status =
            frame_cut_plan_add(whole, job, (int32_t)kinds[pattern->kind], pattern->times, parts, pattern->part_count);
        frame_give(parts);
    }
    if (!status && job->choice_count && frame_array_reserve(&whole->chosen, job->choice_count)) return FRAME_NO_MEMORY;
    for (; !status && whole->chosen.count < job->choice_count; whole->chosen.count++)
        FRAME_ITEM(int32_t, whole->chosen, whole->chosen.count) = 0;
    for (size_t c = 0; !status && c < part->chosen.count; c++) {
        const int32_t times = FRAME_ITEM(int32_t, part->chosen, c);
        const uint32_t choice = FRAME_ITEM(uint32_t, component->choice_of, c);
        FRAME_ITEM(int32_t, whole->chosen, choice) += times;
        whole->cost += job->choices[choice].cost * times;
    }
    return status;
}
