/* The polygons inside which two shapes overlap, kept for every pair that is asked for. */
#include "takeoff/sheet_depth.h"

#include <math.h>
#include <string.h>

enum { MOST_PAIRED_SHAPES = 1200 };
#define MOST_BYTES ((size_t)200 << 20)

frame_status frame_sheet_depths_begin(frame_sheet_depths *d, const frame_sheet_job *job) {
    const size_t shapes = (size_t)job->shape_count, stocks = (size_t)job->stock_count;
    memset(d, 0, sizeof *d);
    d->job = job;
    if (shapes > MOST_PAIRED_SHAPES) {
        d->failed = 1;
        return FRAME_OK;
    }
    d->pairs = frame_take_zeroed(shapes * shapes, sizeof(void *));
    d->outside = frame_take_zeroed(stocks * shapes, sizeof(void *));
    return d->pairs && d->outside ? FRAME_OK : FRAME_NO_MEMORY;
}

void frame_sheet_depths_give(frame_sheet_depths *d) {
    frame_give(d->pairs);
    frame_give(d->outside);
    frame_arena_give(&d->arena);
}

static void *take(frame_sheet_depths *d, size_t bytes) {
    void *room = d->bytes + bytes <= MOST_BYTES ? frame_arena_take(&d->arena, bytes) : NULL;
    if (!room) d->failed = 1;
    d->bytes += bytes;
    return room;
}

static void widen(frame_sheet_box *box, const frame_sheet_box *by) {
    box->x0 = fmin(box->x0, by->x0), box->y0 = fmin(box->y0, by->y0);
    box->x1 = fmax(box->x1, by->x1), box->y1 = fmax(box->y1, by->y1);
}

/* Moved in by a hair, so that parts that touch do not overlap. */
static void fill_sides(const frame_sheet_point *p, int count, double hair, frame_sheet_side_line *sides) {
    for (int i = 0; i < count; i++) {
        const frame_sheet_point a = p[i], b = p[i + 1 == count ? 0 : i + 1];
        const double length = hypot(b.x - a.x, b.y - a.y);
        sides[i].nx = length > 0 ? (b.y - a.y) / length : 0;
        sides[i].ny = length > 0 ? (a.x - b.x) / length : 0;
        sides[i].d = length > 0 ? sides[i].nx * a.x + sides[i].ny * a.y - hair : 1e300;
    }
}

static frame_sheet_clashes *make(frame_sheet_depths *d, const frame_sheet_pieces *fixed,
                                 const frame_sheet_pieces *anti) {
    size_t corners = 0;
    for (int i = 0; i < fixed->count; i++)
        for (int k = 0; k < anti->count; k++)
            corners += (size_t)(fixed->start[i + 1] - fixed->start[i] + anti->start[k + 1] - anti->start[k]);
    const size_t polygons = (size_t)fixed->count * (size_t)anti->count;
    frame_sheet_clashes *made = take(d, sizeof *made);
    frame_sheet_clash *clashes = take(d, (polygons + 1) * sizeof *clashes);
    frame_sheet_side_line *sides = take(d, (corners + 1) * sizeof *sides);
    frame_sheet_point *points = take(d, (corners + 1) * sizeof *points);
    if (d->failed) return NULL;
    *made = (frame_sheet_clashes){.box = {1e300, 1e300, -1e300, -1e300}, .clashes = clashes, .corners = points};
    for (int i = 0; i < fixed->count; i++)
        for (int k = 0; k < anti->count; k++) {
            frame_sheet_point *p = points + made->corner_count;
            frame_sheet_clash *m = &clashes[made->count++];
            m->count = frame_sheet_sum(fixed->points + fixed->start[i], fixed->start[i + 1] - fixed->start[i],
                                       (frame_sheet_point){0, 0}, anti->points + anti->start[k],
                                       anti->start[k + 1] - anti->start[k], p);
            fill_sides(p, m->count, 10 * d->job->tolerance, sides + made->corner_count);
            m->sides = sides + made->corner_count;
            m->box = frame_sheet_box_of(p, m->count);
            widen(&made->box, &m->box);
            made->corner_count += m->count;
        }
    return made;
}

const frame_sheet_clashes *frame_sheet_clashes_of(frame_sheet_depths *d, int one, int other) {
    frame_sheet_clashes **place = &d->pairs[(size_t)one * (size_t)d->job->shape_count + (size_t)other];
    if (!*place) *place = make(d, &d->job->shapes[one].fat, &d->job->shapes[other].anti_fat);
    return *place;
}

const frame_sheet_clashes *frame_sheet_clashes_outside(frame_sheet_depths *d, int stock, int shape) {
    frame_sheet_clashes **place = &d->outside[(size_t)stock * (size_t)d->job->shape_count + (size_t)shape];
    if (!*place) *place = make(d, &d->job->stocks[stock].outside, &d->job->shapes[shape].anti_plain);
    return *place;
}
