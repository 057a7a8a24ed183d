/* Taking convex polygons from convex polygons: each edge of what is taken cuts off a piece that stays; the largest such
 * piece is cut off first, so that what is left is left in few and large pieces. */
#include "takeoff/sheet_rest.h"

#include <math.h>
#include <string.h>

enum { MOST_CORNERS = 512 };

#define LEAST_AREA 1e-7

typedef struct convex {
    frame_sheet_point points[MOST_CORNERS];
    int count, spare;
} convex;

void frame_sheet_rest_begin(frame_sheet_rest *rest) {
    memset(rest, 0, sizeof *rest);
    rest->points.item_size = sizeof(frame_sheet_point);
    rest->starts.item_size = sizeof(int);
}

void frame_sheet_rest_give(frame_sheet_rest *rest) {
    frame_array_give(&rest->points);
    frame_array_give(&rest->starts);
}

static frame_status add_polygon(frame_sheet_rest *rest, const frame_sheet_point *points, int count) {
    const int end = 0;
    if (!rest->starts.count && !frame_array_push(&rest->starts, &end)) return FRAME_NO_MEMORY;
    for (int i = 0; i < count; i++)
        if (!frame_array_push(&rest->points, &points[i])) return FRAME_NO_MEMORY;
    const int next = (int)rest->points.count;
    return frame_array_push(&rest->starts, &next) ? FRAME_OK : FRAME_NO_MEMORY;
}

frame_status frame_sheet_rest_rectangle(frame_sheet_rest *rest, double width, double height) {
    const frame_sheet_point corners[4] = {{0, 0}, {width, 0}, {width, height}, {0, height}};
    rest->points.count = rest->starts.count = 0;
    return add_polygon(rest, corners, 4);
}

/* What of a convex polygon lies to the left (side 1) or right (side -1) of the line through a and b. */
static void cut(const convex *from, frame_sheet_point a, frame_sheet_point b, double side, convex *kept) {
    const double length = hypot(b.x - a.x, b.y - a.y);
    kept->count = 0;
    for (int i = 0; i < from->count; i++) {
        const frame_sheet_point p = from->points[i], q = from->points[i + 1 == from->count ? 0 : i + 1];
        const double here = side * frame_sheet_cross(a, b, p) / length,
                     there = side * frame_sheet_cross(a, b, q) / length;
        if (here >= -1e-9 && kept->count < MOST_CORNERS) kept->points[kept->count++] = p;
        if (((here > 1e-9 && there < -1e-9) || (here < -1e-9 && there > 1e-9)) && kept->count < MOST_CORNERS) {
            const double part = here / (here - there);
            kept->points[kept->count++] = (frame_sheet_point){p.x + part * (q.x - p.x), p.y + part * (q.y - p.y)};
        }
    }
    if (kept->count < 3 || frame_sheet_area(kept->points, kept->count) < LEAST_AREA) kept->count = 0;
}

/* The edge of the taken polygon that cuts off most; -1 when none does. */
static int best_edge(const convex *left, const convex *taken, const char *done, convex *outer) {
    int best = -1;
    double most = 0;
    for (int i = 0; i < taken->count; i++) {
        if (done[i]) continue;
        cut(left, taken->points[i], taken->points[(i + 1) % taken->count], -1, outer);
        const double area = outer->count ? frame_sheet_area(outer->points, outer->count) : 0;
        if (area > most) most = area, best = i;
    }
    return best;
}

static frame_status take_one(frame_sheet_rest *into, const convex *from, const convex *taken) {
    convex left = *from, inner, outer;
    char done[MOST_CORNERS] = {0};
    for (int i = 0; i < taken->count && left.count; i++) {
        cut(&left, taken->points[i], taken->points[(i + 1) % taken->count], 1, &inner);
        left = inner;
    }
    if (!left.count) return add_polygon(into, from->points, from->count); /* they do not overlap */
    left = *from;
    for (;;) {
        const int edge = best_edge(&left, taken, done, &outer);
        if (edge < 0) return FRAME_OK;
        const frame_sheet_point a = taken->points[edge], b = taken->points[(edge + 1) % taken->count];
        cut(&left, a, b, -1, &outer);
        if (add_polygon(into, outer.points, outer.count)) return FRAME_NO_MEMORY;
        cut(&left, a, b, 1, &inner);
        left = inner;
        done[edge] = 1;
    }
}

static int far_apart(const convex *a, const convex *b) {
    const frame_sheet_box p = frame_sheet_box_of(a->points, a->count), q = frame_sheet_box_of(b->points, b->count);
    return p.x1 <= q.x0 || q.x1 <= p.x0 || p.y1 <= q.y0 || q.y1 <= p.y0;
}

static frame_status take_convex(frame_sheet_rest *rest, const convex *taken) {
    frame_sheet_rest made;
    frame_sheet_rest_begin(&made);
    frame_status status = FRAME_OK;
    for (size_t i = 0; !status && i + 1 < rest->starts.count; i++) {
        convex from;
        const int first = FRAME_ITEM(int, rest->starts, i);
        from.count = FRAME_ITEM(int, rest->starts, i + 1) - first;
        memcpy(from.points, &FRAME_ITEM(frame_sheet_point, rest->points, first),
               (size_t)from.count * sizeof *from.points);
        status = far_apart(&from, taken) ? add_polygon(&made, from.points, from.count) : take_one(&made, &from, taken);
    }
    const frame_sheet_rest old = *rest;
    *rest = made;
    made = old;
    frame_sheet_rest_give(&made);
    return status;
}

frame_status frame_sheet_rest_take(frame_sheet_rest *rest, const frame_sheet_pieces *pieces, frame_sheet_point offset) {
    frame_status status = FRAME_OK;
    for (int i = 0; !status && i < pieces->count; i++) {
        convex taken;
        taken.count = pieces->start[i + 1] - pieces->start[i];
        if (taken.count > MOST_CORNERS) taken.count = MOST_CORNERS;
        for (int k = 0; k < taken.count; k++) {
            const frame_sheet_point p = pieces->points[pieces->start[i] + k];
            taken.points[k] = (frame_sheet_point){p.x + offset.x, p.y + offset.y};
        }
        taken.count = frame_sheet_clean(taken.points, taken.count, 1e-9);
        if (frame_sheet_area(taken.points, taken.count) > LEAST_AREA) status = take_convex(rest, &taken);
    }
    return status;
}

/* -- the widest square -- */

/* An edge as n . centre + (|nx| + |ny|) * half <= d. */
typedef struct side {
    double nx, ny, reach, d;
} side;

static double determinant(const double m[9]) {
    return m[0] * (m[4] * m[8] - m[5] * m[7]) - m[1] * (m[3] * m[8] - m[5] * m[6]) + m[2] * (m[3] * m[7] - m[4] * m[6]);
}

/* The half side at which three edges all touch the square; -1 when that is none, or other edges are in the way. */
static double half_between(const side *s, int count, int i, int j, int k) {
    const side *a = &s[i], *b = &s[j], *c = &s[k];
    const double m[9] = {a->nx, a->ny, a->reach, b->nx, b->ny, b->reach, c->nx, c->ny, c->reach};
    const double det = determinant(m);
    if (fabs(det) < 1e-12) return -1;
    const double mx[9] = {a->d, a->ny, a->reach, b->d, b->ny, b->reach, c->d, c->ny, c->reach};
    const double my[9] = {a->nx, a->d, a->reach, b->nx, b->d, b->reach, c->nx, c->d, c->reach};
    const double mh[9] = {a->nx, a->ny, a->d, b->nx, b->ny, b->d, c->nx, c->ny, c->d};
    const double x = determinant(mx) / det, y = determinant(my) / det, half = determinant(mh) / det;
    for (int e = 0; e < count; e++)
        if (s[e].nx * x + s[e].ny * y + s[e].reach * half > s[e].d + 1e-7) return -1;
    return half;
}

double frame_sheet_widest_square(const frame_sheet_point *p, int count) {
    side s[24];
    double best = 0;
    if (count > 24) return 0;
    for (int i = 0; i < count; i++) {
        const frame_sheet_point a = p[i], b = p[(i + 1) % count];
        const double length = hypot(b.x - a.x, b.y - a.y);
        if (!(length > 0)) return 0;
        s[i].nx = (b.y - a.y) / length, s[i].ny = (a.x - b.x) / length;
        s[i].reach = fabs(s[i].nx) + fabs(s[i].ny);
        s[i].d = s[i].nx * a.x + s[i].ny * a.y;
    }
    for (int i = 0; i < count; i++)
        for (int j = i + 1; j < count; j++)
            for (int k = j + 1; k < count; k++) best = fmax(best, half_between(s, count, i, j, k));
    return 2 * best;
}
