/* An offcut on hand: what of its bounding box is not wood, in level slices from corner to corner, each cut into
 * trapezoids where edges of the offcut or of its holes cross it. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/error.h"
#include "takeoff/sheet_job.h"
#include "takeoff_facts.h"
#include "working/record.h"

typedef struct edge {
    frame_sheet_point low, high;
} edge;

typedef struct slicing {
    edge *edges;
    double *levels, *crossings; /* crossings: two for each edge, at the bottom and at the top of a slice */
    int edge_count, level_count;
    double width;
    frame_array points, starts; /* of the trapezoids */
} slicing;

static int by_size(const void *a, const void *b) {
    const double x = *(const double *)a, y = *(const double *)b;
    return (x > y) - (x < y);
}

/* Pairs of crossings in the order of their middles. */
static int by_middle(const void *a, const void *b) {
    const double *one = a, *two = b, x = one[0] + one[1], y = two[0] + two[1];
    return (x > y) - (x < y);
}

static void add_edges(slicing *s, const frame_sheet_point *points, int count, frame_sheet_point origin) {
    for (int i = 0; i < count; i++) {
        frame_sheet_point a = points[i], b = points[(i + 1) % count];
        a.x -= origin.x, b.x -= origin.x, a.y -= origin.y, b.y -= origin.y;
        s->levels[s->level_count++] = a.y;
        if (a.y != b.y) s->edges[s->edge_count++] = a.y < b.y ? (edge){a, b} : (edge){b, a};
    }
}

static double x_at(const edge *e, double y) {
    return e->low.x + (e->high.x - e->low.x) * ((y - e->low.y) / (e->high.y - e->low.y));
}

static frame_status add_trapezoid(slicing *s, double bottom, double top, const double *left, const double *right) {
    frame_sheet_point p[4] = {{left[0], bottom}, {right[0], bottom}, {right[1], top}, {left[1], top}};
    const int n = frame_sheet_clean(p, 4, 1e-9), start = (int)s->points.count;
    if (frame_sheet_area(p, n) < 1e-9) return FRAME_OK;
    if (!frame_array_push(&s->starts, &start)) return FRAME_NO_MEMORY;
    for (int i = 0; i < n; i++)
        if (!frame_array_push(&s->points, &p[i])) return FRAME_NO_MEMORY;
    return FRAME_OK;
}

static frame_status slice(slicing *s, double bottom, double top) {
    int count = 0;
    for (int i = 0; i < s->edge_count; i++) {
        const edge *e = &s->edges[i];
        if (e->low.y > bottom || e->high.y < top) continue;
        s->crossings[2 * count] = x_at(e, bottom);
        s->crossings[2 * count++ + 1] = x_at(e, top);
    }
    qsort(s->crossings, (size_t)count, 2 * sizeof *s->crossings, by_middle);
    const double first[2] = {0, 0}, last[2] = {s->width, s->width};
    frame_status status = FRAME_OK;
    for (int i = 0; !status && i <= count; i += 2)
        status = add_trapezoid(s, bottom, top, i ? s->crossings + 2 * i - 2 : first,
                               i < count ? s->crossings + 2 * i : last);
    return status;
}

static frame_status keep_pieces(slicing *s, frame_arena *arena, frame_sheet_pieces *pieces) {
    const size_t corners = s->points.count, count = s->starts.count;
    pieces->points = frame_arena_take(arena, (corners + 1) * sizeof *pieces->points);
    pieces->real = frame_arena_take(arena, corners + 1);
    pieces->start = frame_arena_take(arena, (count + 1) * sizeof *pieces->start);
    if (!pieces->points || !pieces->real || !pieces->start) return FRAME_NO_MEMORY;
    if (corners) memcpy(pieces->points, s->points.items, corners * sizeof *pieces->points);
    memset(pieces->real, 1, corners + 1);
    if (count) memcpy(pieces->start, s->starts.items, count * sizeof *pieces->start);
    pieces->start[count] = (int)corners;
    pieces->count = (int)count;
    return FRAME_OK;
}

static frame_status slice_all(slicing *s, frame_arena *arena, frame_sheet_pieces *pieces) {
    frame_status status = FRAME_OK;
    qsort(s->levels, (size_t)s->level_count, sizeof *s->levels, by_size);
    for (int i = 0; !status && i + 1 < s->level_count; i++)
        if (s->levels[i + 1] > s->levels[i] + 1e-12) status = slice(s, s->levels[i], s->levels[i + 1]);
    return status ? status : keep_pieces(s, arena, pieces);
}

static double perimeter(const frame_sheet_point *points, int count) {
    double length = 0;
    for (int i = 0; i < count; i++)
        length += hypot(points[(i + 1) % count].x - points[i].x, points[(i + 1) % count].y - points[i].y);
    return length;
}

static frame_status add_pieces(slicing *s, const frame_sheet_pieces *pieces, frame_sheet_point origin) {
    for (int i = 0; i < pieces->count; i++) {
        const int start = (int)s->points.count;
        if (!frame_array_push(&s->starts, &start)) return FRAME_NO_MEMORY;
        for (int k = pieces->start[i]; k < pieces->start[i + 1]; k++) {
            const frame_sheet_point p = {pieces->points[k].x - origin.x, pieces->points[k].y - origin.y};
            if (!frame_array_push(&s->points, &p)) return FRAME_NO_MEMORY;
        }
    }
    return FRAME_OK;
}

static void reverse(frame_sheet_point *points, int count) {
    for (int i = 0; i < count / 2; i++) {
        const frame_sheet_point kept = points[i];
        points[i] = points[count - 1 - i];
        points[count - 1 - i] = kept;
    }
}

/* A hole is in the way, in convex pieces, wherever it lies. */
static frame_status read_hole(const frame_sheet_plan_in *in, size_t h, frame_sheet_job *job, frame_sheet_stock *stock,
                              slicing *s) {
    frame_sheet_hole hole;
    frame_sheet_point *points;
    frame_sheet_pieces pieces;
    char field[40];
    frame_sheet_hole_item(in->holes, h, &hole);
    if (hole.offcut != stock->offcut) return FRAME_OK;
    snprintf(field, sizeof field, "holes[%zu]", h);
    frame_status status = frame_sheet_corners_read(hole.corners, hole.corner_count, field, &job->arena, &points);
    if (status) return status;
    int n = (int)hole.corner_count;
    if (frame_sheet_area(points, n) < 0) reverse(points, n);
    n = frame_sheet_clean(points, n, 1e-9);
    stock->area = fmax(stock->area - frame_sheet_area(points, n), 0);
    status = frame_sheet_pieces_of(points, n, &job->arena, &pieces);
    return status ? status : add_pieces(s, &pieces, stock->origin);
}

static frame_status fill_stock(const frame_sheet_offcut *offcut, const frame_sheet_point *points,
                               const frame_sheet_job *job, size_t place, frame_sheet_stock *stock) {
    const int n = (int)offcut->corner_count;
    const double half = job->kerf / 2;
    const frame_sheet_box box = frame_sheet_box_of(points, n);
    *stock = (frame_sheet_stock){.name = offcut->name, .price = offcut->price, .available = offcut->count, .sheet = -1};
    stock->offcut = (int)place;
    stock->origin = (frame_sheet_point){box.x0, box.y0};
    stock->width = box.x1 - box.x0;
    stock->height = box.y1 - box.y0;
    stock->area = fabs(frame_sheet_area(points, n));
    stock->fat_area = stock->area + half * perimeter(points, n) + FRAME_PI * half * half;
    return FRAME_OK;
}

frame_status frame_sheet_on_hand(const frame_sheet_plan_in *in, size_t place, frame_sheet_job *job,
                                 frame_sheet_stock *stock) {
    frame_sheet_offcut offcut;
    frame_sheet_point *points;
    char field[40];
    frame_sheet_offcut_item(in->offcuts, place, &offcut);
    snprintf(field, sizeof field, "offcuts[%zu]", place);
    frame_status status = frame_sheet_corners_read(offcut.corners, offcut.corner_count, field, &job->arena, &points);
    if (status) return status;
    fill_stock(&offcut, points, job, place, stock);
    const size_t corners = offcut.corner_count;
    slicing s = {.width = stock->width, .points.item_size = sizeof *points, .starts.item_size = sizeof(int)};
    s.edges = frame_arena_take(&job->arena, corners * sizeof *s.edges);
    s.levels = frame_arena_take(&job->arena, corners * sizeof *s.levels);
    s.crossings = frame_arena_take(&job->arena, corners * 2 * sizeof *s.crossings);
    if (!s.edges || !s.levels || !s.crossings) return FRAME_NO_MEMORY;
    add_edges(&s, points, (int)offcut.corner_count, stock->origin);
    for (size_t h = 0; !status && h < in->hole_count; h++) status = read_hole(in, h, job, stock, &s);
    if (!status) status = slice_all(&s, &job->arena, &stock->outside);
    frame_array_give(&s.points);
    frame_array_give(&s.starts);
    return status;
}
