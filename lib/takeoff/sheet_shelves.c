/* The usual way: bounding boxes side by side on shelves, the highest first, each shelf on the first sheet with room for
 * it. It is one of the layouts the search begins with, so that no plan is dearer. */
#include "takeoff/sheet_shelves.h"

#include <math.h>
#include <stdlib.h>

enum { OPEN_SHELVES = 200 };

typedef struct shelf {
    size_t bin;
    double x, y, height;
} shelf;

typedef struct shelving {
    frame_sheet_search *search;
    frame_sheet_layout *layout;
    frame_array shelves, tops; /* shelf; double: how far up each sheet is taken */
    const frame_sheet_stock *stock;
    int number; /* of the stock */
    int spare;
} shelving;

/* The cheapest sheet by area that takes every part as it is drawn and does not run out; -1 when there is none. */
static int choose_stock(const frame_sheet_job *job) {
    int best = -1;
    for (int i = 0; i < job->stock_count; i++) {
        const frame_sheet_stock *s = &job->stocks[i];
        int takes = s->sheet >= 0 && s->available >= job->item_count;
        for (int k = 0; k < job->kind_count && takes; k++) {
            const frame_sheet_shape *shape = &job->shapes[job->kinds[k].first_shape];
            takes = shape->width <= s->width + 1e-9 && shape->height <= s->height + 1e-9;
        }
        if (takes && (best < 0 || s->price / s->area < job->stocks[best].price / job->stocks[best].area)) best = i;
    }
    return best;
}

typedef struct keyed {
    double height, width;
    int kind, spare;
} keyed;

static int higher_first(const void *a, const void *b) {
    const keyed *one = a, *two = b;
    if (one->height != two->height) return one->height > two->height ? -1 : 1;
    if (one->width != two->width) return one->width > two->width ? -1 : 1;
    return (one->kind > two->kind) - (one->kind < two->kind);
}

/* How far a shape's grown outline reaches beyond half a kerf, where a corner points outward: before and behind it. */
static frame_sheet_box overhang(const frame_sheet_job *job, const frame_sheet_shape *s) {
    const double half = job->kerf / 2;
    return (frame_sheet_box){fmax(-s->fat_box.x0 - half, 0), fmax(-s->fat_box.y0 - half, 0),
                             fmax(s->fat_box.x1 - s->width - half, 0), fmax(s->fat_box.y1 - s->height - half, 0)};
}

static frame_status put(shelving *g, shelf *s, int kind) {
    const frame_sheet_job *job = g->search->job;
    const frame_sheet_shape *shape = &job->shapes[job->kinds[kind].first_shape];
    const frame_sheet_box over = overhang(job, shape);
    const frame_sheet_placed placed = {kind,
                                       job->kinds[kind].first_shape,
                                       {fmin(s->x + over.x0, fmax(g->stock->width - shape->width, 0)),
                                        fmin(s->y + over.y0, fmax(g->stock->height - shape->height, 0))}};
    s->x = placed.at.x + shape->width + over.x1 + job->kerf;
    return frame_sheet_bin_add(&FRAME_ITEM(frame_sheet_bin, g->layout->bins, s->bin), job, placed) ? FRAME_OK
                                                                                                   : FRAME_NO_MEMORY;
}

/* A new shelf on the first of the last sheets with room for it, or on a new sheet. */
static frame_status open_shelf(shelving *g, double height, shelf **opened) {
    size_t b = g->tops.count > OPEN_SHELVES ? g->tops.count - OPEN_SHELVES : 0;
    while (b < g->tops.count && FRAME_ITEM(double, g->tops, b) > 0 &&
           FRAME_ITEM(double, g->tops, b) + height > g->stock->height + 1e-9)
        b++;
    if (b == g->tops.count) {
        const frame_sheet_bin bin = {.stock = g->number};
        const double top = 0;
        if (!frame_array_push(&g->layout->bins, &bin) || !frame_array_push(&g->tops, &top)) return FRAME_NO_MEMORY;
        g->search->used[g->number]++;
    }
    const shelf made = {b, 0, FRAME_ITEM(double, g->tops, b), height};
    FRAME_ITEM(double, g->tops, b) += height + g->search->job->kerf;
    *opened = frame_array_push(&g->shelves, &made);
    return *opened ? FRAME_OK : FRAME_NO_MEMORY;
}

static frame_status put_all(shelving *g, const keyed *list, int count) {
    frame_status status = FRAME_OK;
    for (int i = 0; i < count && !status; i++) {
        size_t s = g->shelves.count > OPEN_SHELVES ? g->shelves.count - OPEN_SHELVES : 0;
        while (s < g->shelves.count && FRAME_ITEM(shelf, g->shelves, s).x + list[i].width > g->stock->width + 1e-9) s++;
        shelf *on = s < g->shelves.count ? &FRAME_ITEM(shelf, g->shelves, s) : NULL;
        if (!on) status = open_shelf(g, list[i].height, &on);
        if (!status) status = put(g, on, list[i].kind);
    }
    return status;
}

frame_status frame_sheet_on_shelves(frame_sheet_search *search, frame_sheet_layout *layout, int *done) {
    const frame_sheet_job *job = search->job;
    shelving g = {
        .search = search, .layout = layout, .shelves.item_size = sizeof(shelf), .tops.item_size = sizeof(double)};
    *done = 0;
    if ((g.number = choose_stock(job)) < 0) return FRAME_OK;
    g.stock = &job->stocks[g.number];
    keyed *list = frame_take_zeroed((size_t)job->item_count, sizeof *list);
    if (!list) return FRAME_NO_MEMORY;
    for (int i = 0; i < job->item_count; i++) {
        const frame_sheet_shape *shape = &job->shapes[job->kinds[job->items[i]].first_shape];
        const frame_sheet_box over = overhang(job, shape);
        list[i] = (keyed){shape->height + over.y0 + over.y1, shape->width + over.x0 + over.x1, job->items[i], 0};
    }
    qsort(list, (size_t)job->item_count, sizeof *list, higher_first);
    const frame_status status = put_all(&g, list, job->item_count);
    *done = !status;
    frame_give(list);
    frame_array_give(&g.shelves);
    frame_array_give(&g.tops);
    return status;
}
