/* Listing the patterns that a plan below a cost can use. */
#include "takeoff/listing.h"

#include <string.h>

void frame_listing_begin(frame_listing *listing, const frame_cut_job *job) {
    memset(listing, 0, sizeof *listing);
    listing->job = job;
    listing->patterns.item_size = sizeof(frame_cut_pattern);
    listing->parts.item_size = sizeof(frame_cut_part);
}

void frame_listing_give(frame_listing *listing) {
    frame_array_give(&listing->patterns);
    frame_array_give(&listing->parts);
    frame_give(listing->chosen);
    frame_give(listing->trials);
    listing->chosen = NULL;
    listing->trials = NULL;
}

static int list_room(frame_listing *listing, uint32_t room, double worth);

/* Whether no further item fits: a pattern to which one could be added is not needed, since cutting more than wanted is
 * allowed here. */
static int is_full(const frame_listing *listing, const frame_filling *filling, const uint32_t *counts, int64_t room) {
    const frame_cut_job *job = listing->job;
    if (filling->way & FRAME_CUT_KEPT) return 1; /* there what is left is worth something */
    for (size_t i = 0; i < filling->count; i++) room -= counts[i] * job->items[filling->first + i].size;
    for (size_t i = filling->count; i-- > 0;) {
        const frame_cut_item *item = &job->items[filling->first + i];
        if (item->size > room) return 1; /* they are listed the largest first */
        if ((filling->way & FRAME_CUT_RIPPED) && !item->may_rip) continue;
        if ((int32_t)counts[i] < listing->relaxed->allowed[filling->first + i]) return 0;
    }
    return 1;
}

typedef struct room_visit {
    frame_listing *listing;
    frame_filling *filling;
    uint32_t room;
    double before; /* worth of the rooms before */
} room_visit;

static int visit(void *user, const uint32_t *counts, double worth) {
    const room_visit *of = user;
    frame_listing *listing = of->listing;
    const frame_cut_kind *kind = &listing->job->kinds[listing->kind];
    if (!is_full(listing, of->filling, counts, listing->job->rooms[kind->room_first + of->room].size)) return 1;
    const size_t before = listing->chosen_count;
    for (size_t i = 0; i < of->filling->count; i++)
        if (counts[i])
            listing->chosen[listing->chosen_count++] =
                (frame_cut_part){(uint32_t)(of->filling->first + i), of->room, counts[i]};
    const int go_on = list_room(listing, of->room + 1, of->before + worth);
    listing->chosen_count = before;
    return go_on;
}

static int keep(frame_listing *listing) {
    const frame_cut_pattern pattern = {listing->kind, 0, (uint32_t)listing->parts.count,
                                       (uint32_t)listing->chosen_count};
    if (!listing->chosen_count) return 1;
    if (listing->patterns.count >= listing->most) return 0;
    if (frame_array_reserve(&listing->parts, listing->parts.count + listing->chosen_count) ||
        !frame_array_push(&listing->patterns, &pattern)) {
        listing->status = FRAME_NO_MEMORY;
        return 0;
    }
    for (size_t p = 0; p < listing->chosen_count; p++) (void)frame_array_push(&listing->parts, &listing->chosen[p]);
    return 1;
}

/* Lists the fillings of a kind's rooms from one on; worth: of the rooms before. Gives 0 when it had to stop. */
static int list_room(frame_listing *listing, uint32_t room, double worth) {
    const frame_cut_kind *kind = &listing->job->kinds[listing->kind];
    if (room == kind->room_count) return keep(listing);
    double rest = 0; /* the most the rooms after this one are worth */
    for (uint32_t r = room + 1; r < kind->room_count; r++) {
        const frame_cut_room *of = &listing->job->rooms[kind->room_first + r];
        rest += frame_filling_bound(frame_relaxed_filling(listing->relaxed, of), of->size);
    }
    const frame_cut_room *of = &listing->job->rooms[kind->room_first + room];
    frame_filling *filling = frame_relaxed_filling(listing->relaxed, of);
    room_visit visiting = {listing, filling, room, worth};
    return frame_filling_walk(filling, of->size, listing->beyond - worth - rest,
                              listing->trials + room * listing->job->item_count, visit, &visiting);
}

frame_status frame_listing_make(frame_listing *listing, frame_relaxed *relaxed, int64_t below, size_t most) {
    const frame_cut_job *job = listing->job;
    listing->patterns.count = listing->parts.count = 0;
    listing->most = most;
    listing->complete = 1;
    listing->relaxed = relaxed;
    listing->status = FRAME_OK;
    if (!listing->chosen) listing->chosen = frame_take(job->item_count * job->most_rooms * sizeof *listing->chosen);
    if (!listing->trials) listing->trials = frame_take(job->item_count * job->most_rooms * sizeof *listing->trials);
    double *charges = frame_take(job->kind_count * sizeof *charges);
    if (!listing->chosen || !listing->trials || !charges) {
        frame_give(charges);
        return FRAME_NO_MEMORY;
    }
    double proven;
    listing->status = frame_relaxed_prove(relaxed, below, charges, &proven);
    if (listing->status) {
        frame_give(charges);
        return listing->status;
    }
    const double beyond = (double)frame_cut_highest(job, below) * relaxed->scale - proven;
    listing->bound = proven / relaxed->scale;
    for (size_t k = 0; listing->complete && k < job->kind_count; k++) {
        if (relaxed->limits[k] <= 0) continue;
        listing->kind = (int32_t)k;
        listing->beyond = charges[k] - beyond;
        listing->chosen_count = 0;
        listing->complete = list_room(listing, 0, 0);
    }
    frame_give(charges);
    return listing->status;
}
