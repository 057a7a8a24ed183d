/* The search: several orders to begin with, then a few sheets at a time are emptied and packed anew, and the new
 * packing is kept when it is no worse. The numbers that decide are the same on every machine. */
#include "takeoff/sheet_search.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include "takeoff/sheet_pattern.h"
#include "takeoff/sheet_shelves.h"
#include "takeoff/sheet_squeeze.h"
#include "takeoff/watch.h"

enum { MOST_PAIRED_KINDS = 1000, MOST_EMPTIED = 5, WAYS = 8 };

static const frame_sheet_pull pulls[WAYS] = {{1e-3, 1},  {1, 1e-3},  {1, 1},     {-1e-3, 1},
                                             {1, -1e-3}, {-1, 1e-3}, {1e-3, -1}, {1, 0.3}};

double frame_sheet_clock(void) {
    struct timespec now;
    clock_gettime(CLOCK_MONOTONIC, &now);
    return (double)now.tv_sec + 1e-9 * (double)now.tv_nsec;
}

/* Marsaglia's xorshift64*, the well-known multiplier (from memory). */
uint64_t frame_sheet_random(frame_sheet_search *s, uint64_t below) {
    s->random ^= s->random >> 12;
    s->random ^= s->random << 25;
    s->random ^= s->random >> 27;
    return (s->random * UINT64_C(2685821657736338717) >> 33) % below;
}

static void layout_begin(frame_sheet_layout *layout) {
    memset(layout, 0, sizeof *layout);
    layout->bins.item_size = sizeof(frame_sheet_bin);
    layout->left.item_size = sizeof(int);
}

frame_status frame_sheet_search_begin(frame_sheet_search *s, const frame_sheet_job *job) {
    const size_t kinds = (size_t)job->kind_count;
    memset(s, 0, sizeof *s);
    s->job = job;
    s->random = UINT64_C(88172645463325252);
    frame_sheet_fitter_begin(&s->fitter, job);
    layout_begin(&s->layout);
    for (int i = 0; i < job->stock_count; i++)
        if (job->stocks[i].area > job->stocks[s->widest].area) s->widest = i;
    s->used = frame_take_zeroed((size_t)job->stock_count, sizeof *s->used);
    if (kinds <= MOST_PAIRED_KINDS && job->shape_count <= 8 * job->kind_count) {
        s->pairs = frame_take_zeroed(kinds * kinds, 1);
        if (!s->pairs) return FRAME_NO_MEMORY;
    }
    return s->used ? FRAME_OK : FRAME_NO_MEMORY;
}

void frame_sheet_search_give(frame_sheet_search *s) {
    frame_sheet_layout_give(&s->layout);
    frame_sheet_fitter_give(&s->fitter);
    frame_give(s->pairs);
    frame_give(s->used);
}

int frame_sheet_is_stopped(frame_sheet_search *s, double best) {
    if (s->ended == FRAME_STOCK_END_CANCELLED || (s->limits.until <= 0 && !s->watch)) return s->ended > 0;
    const double now = frame_sheet_clock();
    if (s->watch && now >= s->next_look) {
        s->next_look = now + 0.05;
        if (!frame_watch_look(s->watch, best, s->limits.cost_bound)) s->ended = FRAME_STOCK_END_CANCELLED;
    }
    if (!s->ended && s->limits.until > 0 && now >= s->limits.until) s->ended = FRAME_STOCK_END_TIME;
    return s->ended > 0;
}

static int is_over(frame_sheet_search *s, const frame_sheet_worth *worth) {
    if (worth->left == 0 && worth->cost <= s->limits.cost_bound + 1e-9 && worth->sheets <= s->limits.sheet_bound)
        s->ended = FRAME_STOCK_END_PROVEN;
    else if (!frame_sheet_is_stopped(s, worth->left > 0 ? FRAME_NOT_GIVEN : worth->cost) && s->limits.until <= 0 &&
             s->fitter.work >= s->limits.work)
        s->ended = FRAME_STOCK_END_EFFORT;
    return s->ended > 0;
}

typedef struct keyed {
    double key;
    int kind, spare;
} keyed;

static int larger_key(const void *a, const void *b) {
    const keyed *one = a, *two = b;
    if (one->key != two->key) return one->key > two->key ? -1 : 1;
    return (one->kind > two->kind) - (one->kind < two->kind);
}

/* Orders kinds by area, longest side, or width and height together, shaken by some share. */
static frame_status put_in_order(frame_sheet_search *s, int *kinds, int count, int by, double shake) {
    keyed *list = frame_take_zeroed((size_t)count + 1, sizeof *list);
    if (!list) return FRAME_NO_MEMORY;
    for (int i = 0; i < count; i++) {
        const frame_sheet_kind *kind = &s->job->kinds[kinds[i]];
        const frame_sheet_shape *shape = &s->job->shapes[kind->first_shape];
        const double sizes[4] = {kind->area, fmax(shape->width, shape->height), shape->width + shape->height,
                                 shape->width * shape->height};
        const double noise = shake > 0 ? (double)frame_sheet_random(s, 1000001) / 1000000 - 0.5 : 0;
        list[i] = (keyed){sizes[by] * (1 + shake * noise), kinds[i], 0};
    }
    qsort(list, (size_t)count, sizeof *list, larger_key);
    for (int i = 0; i < count; i++) kinds[i] = list[i].kind;
    frame_give(list);
    return FRAME_OK;
}

/* Keeps a layout when it is better than the best so far; what is not kept is given back. */
static void keep_better(frame_sheet_search *s, frame_sheet_layout *made, frame_sheet_worth *best) {
    const frame_sheet_worth worth = frame_sheet_worth_of(s->job, made);
    if (frame_sheet_better(&worth, best)) {
        const frame_sheet_layout kept = s->layout;
        s->layout = *made, *made = kept, *best = worth;
    }
    frame_sheet_layout_give(made);
}

static frame_status in_order(frame_sheet_search *s, int way, int *kinds, frame_sheet_layout *made) {
    const int stocks = s->job->stock_count;
    const frame_sheet_rule rule = {pulls[way % WAYS], way % 4 == 3, way / 2 % 2, way >= 6 ? way % stocks : 0, way * 7};
    memcpy(kinds, s->job->items, (size_t)s->job->item_count * sizeof *kinds);
    const frame_status status = put_in_order(s, kinds, s->job->item_count, way % 4, 0);
    return status ? status : frame_sheet_pack(s, kinds, s->job->item_count, &rule, made);
}

static frame_status by_patterns(frame_sheet_search *s, frame_sheet_worth *best) {
    frame_status status = FRAME_OK;
    double *prices = frame_take((size_t)s->job->kind_count * sizeof *prices);
    if (!prices) return FRAME_NO_MEMORY;
    const int64_t end = s->limits.until > 0 ? INT64_MAX : s->fitter.work + s->limits.work / 2;
    for (int round = 0; round < 100000 && !status && s->fitter.work < end && !is_over(s, best); round++) {
        frame_sheet_layout made;
        layout_begin(&made);
        memset(s->used, 0, (size_t)s->job->stock_count * sizeof *s->used);
        status = frame_sheet_pack_patterns(s, prices, round == 0, &made);
        if (!round)
            for (int i = 0; i < s->job->kind_count; i++) prices[i] = pow(s->job->kinds[i].area, 1.02);
        if (status)
            frame_sheet_layout_give(&made);
        else
            keep_better(s, &made, best);
    }
    frame_give(prices);
    return status;
}

static frame_status usual_way(frame_sheet_search *s, frame_sheet_worth *best) {
    frame_sheet_layout made;
    int done;
    layout_begin(&made);
    s->shelves.sheets = -1;
    memset(s->used, 0, (size_t)s->job->stock_count * sizeof *s->used);
    const frame_status status = frame_sheet_on_shelves(s, &made, &done);
    if (!done) {
        frame_sheet_layout_give(&made);
        return status;
    }
    s->shelves = frame_sheet_worth_of(s->job, &made);
    keep_better(s, &made, best);
    return status;
}

static frame_status first_layouts(frame_sheet_search *s) {
    frame_sheet_worth best = {.left = 1e300};
    int *kinds = frame_take((size_t)s->job->item_count * sizeof *kinds);
    frame_status status = kinds ? FRAME_OK : FRAME_NO_MEMORY;
    if (!status) status = usual_way(s, &best);
    const int ways = s->job->item_count > 2000 ? 1 : s->job->stock_count > 1 ? 12 : 6;
    for (int way = 0; !status && way < ways; way++) {
        frame_sheet_layout made;
        if ((way > 0 || best.left < 1e300) && is_over(s, &best)) break;
        layout_begin(&made);
        memset(s->used, 0, (size_t)s->job->stock_count * sizeof *s->used);
        status = in_order(s, way, kinds, &made);
        if (status)
            frame_sheet_layout_give(&made);
        else
            keep_better(s, &made, &best);
    }
    frame_give(kinds);
    if (!status && frame_sheet_patterns_apply(s)) status = by_patterns(s, &best);
    return status;
}

/* -- bettering -- */

typedef struct emptied {
    size_t bins[MOST_EMPTIED];
    int count, part_count;
    int *kinds;
} emptied;

static int is_chosen(const emptied *e, size_t bin) {
    for (int i = 0; i < e->count; i++)
        if (e->bins[i] == bin) return 1;
    return 0;
}

/* The emptiest of a few drawn by lot, so that nearly empty sheets come up often. */
static size_t draw_bin(frame_sheet_search *s, const emptied *e, int lots) {
    const size_t count = s->layout.bins.count;
    size_t best = count;
    double most = -1;
    for (int i = 0; i < lots; i++) {
        const size_t b = (size_t)frame_sheet_random(s, count);
        const frame_sheet_bin *bin = &FRAME_ITEM(frame_sheet_bin, s->layout.bins, b);
        const double empty = 1 - bin->fat_used / s->job->stocks[bin->stock].fat_area;
        if (!is_chosen(e, b) && empty > most && empty > 1e-6) most = empty, best = b;
    }
    return best;
}

static void choose_bins(frame_sheet_search *s, emptied *e) {
    const int wanted = 2 + (int)frame_sheet_random(s, MOST_EMPTIED - 1);
    e->count = e->part_count = 0;
    for (int tries = 0; e->count < wanted && tries < 3 * MOST_EMPTIED; tries++) {
        const size_t b = draw_bin(s, e, e->count ? 3 : 6);
        if (b < s->layout.bins.count) e->bins[e->count++] = b;
    }
    for (int i = 0; i < e->count; i++) {
        const frame_sheet_bin *bin = &FRAME_ITEM(frame_sheet_bin, s->layout.bins, e->bins[i]);
        for (int k = 0; k < bin->count; k++) e->kinds[e->part_count++] = bin->placed[k].kind;
    }
    for (size_t i = 0; i < s->layout.left.count; i++) e->kinds[e->part_count++] = FRAME_ITEM(int, s->layout.left, i);
}

/* The worth of what was emptied, as it lay. */
static frame_sheet_worth worth_before(const frame_sheet_search *s, const emptied *e, frame_sheet_layout *view) {
    frame_sheet_bin bins[MOST_EMPTIED];
    for (int i = 0; i < e->count; i++) bins[i] = FRAME_ITEM(frame_sheet_bin, s->layout.bins, e->bins[i]);
    *view = (frame_sheet_layout){.bins = {.items = bins, .count = (size_t)e->count, .item_size = sizeof *bins},
                                 .left = s->layout.left};
    const frame_sheet_worth worth = frame_sheet_worth_of(s->job, view);
    view->bins.items = NULL;
    return worth;
}

static void count_used(frame_sheet_search *s, const emptied *e, int sign) {
    for (int i = 0; i < e->count; i++) s->used[FRAME_ITEM(frame_sheet_bin, s->layout.bins, e->bins[i]).stock] += sign;
}

/* Puts the new sheets in the place of the emptied ones. */
static frame_status exchange(frame_sheet_search *s, const emptied *e, frame_sheet_layout *made) {
    frame_array *bins = &s->layout.bins;
    if (frame_array_reserve(bins, bins->count + made->bins.count)) return FRAME_NO_MEMORY;
    for (int i = 0; i < e->count; i++) frame_sheet_bin_give(&FRAME_ITEM(frame_sheet_bin, *bins, e->bins[i]));
    size_t kept = 0;
    for (size_t b = 0; b < bins->count; b++)
        if (!is_chosen(e, b)) FRAME_ITEM(frame_sheet_bin, *bins, kept++) = FRAME_ITEM(frame_sheet_bin, *bins, b);
    bins->count = kept;
    for (size_t b = 0; b < made->bins.count; b++)
        FRAME_ITEM(frame_sheet_bin, *bins, bins->count++) = FRAME_ITEM(frame_sheet_bin, made->bins, b);
    made->bins.count = 0;
    const frame_array left = s->layout.left;
    s->layout.left = made->left;
    made->left = left;
    return FRAME_OK;
}

static frame_status repack(frame_sheet_search *s, emptied *e) {
    frame_sheet_layout made, view;
    const uint64_t way = frame_sheet_random(s, WAYS);
    const frame_sheet_rule rule = {pulls[way], frame_sheet_random(s, 2) == 0, frame_sheet_random(s, 2) == 0,
                                   s->job->stock_count > 1 ? (int)frame_sheet_random(s, 3) : 0,
                                   (int)frame_sheet_random(s, 36)};
    const double shakes[4] = {0, 0.2, 0.6, 2};
    choose_bins(s, e);
    const frame_sheet_worth before = worth_before(s, e, &view);
    layout_begin(&made);
    count_used(s, e, -1);
    frame_status status =
        put_in_order(s, e->kinds, e->part_count, (int)frame_sheet_random(s, 4), shakes[frame_sheet_random(s, 4)]);
    if (!status) status = frame_sheet_pack(s, e->kinds, e->part_count, &rule, &made);
    const frame_sheet_worth after = frame_sheet_worth_of(s->job, &made);
    if (!status && frame_sheet_better(&after, &before)) {
        status = exchange(s, e, &made);
    } else {
        count_used(s, e, 1);
        for (size_t b = 0; b < made.bins.count; b++) s->used[FRAME_ITEM(frame_sheet_bin, made.bins, b).stock]--;
    }
    frame_sheet_layout_give(&made);
    return status;
}

static frame_status better(frame_sheet_search *s) {
    emptied e = {.kinds = frame_take((size_t)s->job->item_count * sizeof *e.kinds)};
    frame_status status = e.kinds ? FRAME_OK : FRAME_NO_MEMORY;
    while (!status) {
        const frame_sheet_worth now = frame_sheet_worth_of(s->job, &s->layout);
        if (is_over(s, &now) || !s->layout.bins.count) break;
        s->fitter.work += 50 + (int64_t)s->layout.bins.count;
        status = repack(s, &e);
    }
    frame_give(e.kinds);
    return status;
}

static void count_all_used(frame_sheet_search *s) {
    memset(s->used, 0, (size_t)s->job->stock_count * sizeof *s->used);
    for (size_t b = 0; b < s->layout.bins.count; b++) s->used[FRAME_ITEM(frame_sheet_bin, s->layout.bins, b).stock]++;
}

/* Parts that lie nowhere while all sheets are in use: they are pressed in. */
static frame_status press_in(frame_sheet_search *s) {
    frame_sheet_layout made;
    int done = 0;
    if (!s->layout.left.count) return FRAME_OK;
    layout_begin(&made);
    const int64_t work = s->limits.until > 0 ? INT64_MAX / 2 : 2 * s->limits.work;
    const frame_status status = frame_sheet_squeeze(s, &s->layout, work, &made, &done);
    if (!status && done) {
        frame_sheet_layout_give(&s->layout);
        s->layout = made;
        layout_begin(&made);
        count_all_used(s);
    }
    frame_sheet_layout_give(&made);
    return status;
}

/* While parts lie nowhere, pressing in is given most of the time. */
static double share_of_time(const frame_sheet_search *s) {
    const double now = frame_sheet_clock();
    return s->layout.left.count && s->limits.until > 0 ? now + 0.2 * (s->limits.until - now) : s->limits.until;
}

frame_status frame_sheet_search_run(frame_sheet_search *s) {
    const double until = s->limits.until;
    frame_status status = first_layouts(s);
    count_all_used(s);
    s->limits.until = share_of_time(s);
    if (!status && !s->ended) status = better(s);
    s->limits.until = until;
    if (status || !s->layout.left.count || s->ended == FRAME_STOCK_END_CANCELLED) return status;
    s->ended = 0;
    return press_in(s);
}
