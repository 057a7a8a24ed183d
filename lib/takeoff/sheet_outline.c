/* Convex polygons side by side joined into outlines: edges are split where another's corner lies on them, those that
 * two polygons share cancel, and what stays is followed round. */
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "takeoff/sheet_rest.h"

#define NEAR 1e-6

typedef struct link {
    int from, to;
    int gone, spare;
} link;

typedef struct joining {
    frame_array corners; /* frame_sheet_point, each once */
    frame_array links;   /* link */
    frame_array path;    /* int; the corners of the outline being followed */
    frame_sheet_outlines *into;
} joining;

static frame_sheet_point corner_at(const joining *j, int number) {
    return FRAME_ITEM(frame_sheet_point, j->corners, number);
}

/* The number of a corner; -1 without memory. */
static int number_of(joining *j, frame_sheet_point p) {
    for (size_t i = 0; i < j->corners.count; i++) {
        const frame_sheet_point q = corner_at(j, (int)i);
        if (fabs(q.x - p.x) < NEAR && fabs(q.y - p.y) < NEAR) return (int)i;
    }
    return frame_array_push(&j->corners, &p) ? (int)j->corners.count - 1 : -1;
}

static frame_status add_edges(joining *j, const frame_sheet_point *points, int count) {
    for (int i = 0; i < count; i++) {
        const link l = {number_of(j, points[i]), number_of(j, points[(i + 1) % count]), 0, 0};
        if (l.from < 0 || l.to < 0) return FRAME_NO_MEMORY;
        if (l.from != l.to && !frame_array_push(&j->links, &l)) return FRAME_NO_MEMORY;
    }
    return FRAME_OK;
}

/* Where on the way from a to b a corner lies, from 0 to 1; -1 when it does not lie on it. */
static double place_on(frame_sheet_point a, frame_sheet_point b, frame_sheet_point p) {
    const double dx = b.x - a.x, dy = b.y - a.y, length = hypot(dx, dy);
    if (fabs(frame_sheet_cross(a, b, p)) > NEAR * length) return -1;
    const double part = ((p.x - a.x) * dx + (p.y - a.y) * dy) / (length * length);
    return part > NEAR / length && part < 1 - NEAR / length ? part : -1;
}

/* Splits each edge at the first corner on it; what is left of it is looked at again in its turn. */
static frame_status split_edges(joining *j) {
    for (size_t i = 0; i < j->links.count; i++) {
        link *l = &FRAME_ITEM(link, j->links, i);
        double least = 2;
        int at = -1;
        for (size_t c = 0; c < j->corners.count; c++) {
            if ((int)c == l->from || (int)c == l->to) continue;
            const double part = place_on(corner_at(j, l->from), corner_at(j, l->to), corner_at(j, (int)c));
            if (part > 0 && part < least) least = part, at = (int)c;
        }
        if (at < 0) continue;
        const link rest = {at, l->to, 0, 0};
        l->to = at;
        if (!frame_array_push(&j->links, &rest)) return FRAME_NO_MEMORY;
    }
    return FRAME_OK;
}

static void cancel_shared(joining *j) {
    link *l = j->links.items;
    for (size_t i = 0; i < j->links.count; i++)
        for (size_t k = i + 1; k < j->links.count && !l[i].gone; k++)
            if (!l[k].gone && l[k].from == l[i].to && l[k].to == l[i].from) l[i].gone = l[k].gone = 1;
}

/* The next edge from a corner, the first one clockwise from where the outline came. */
static int next_link(const joining *j, int before, int here) {
    const frame_sheet_point p = corner_at(j, here), q = corner_at(j, before);
    const double back = atan2(q.y - p.y, q.x - p.x), full = 2 * acos(-1.0);
    int best = -1;
    double least = 1e300;
    for (size_t i = 0; i < j->links.count; i++) {
        const link *l = &FRAME_ITEM(link, j->links, i);
        if (l->gone || l->from != here) continue;
        const frame_sheet_point r = corner_at(j, l->to);
        double turn = back - atan2(r.y - p.y, r.x - p.x);
        while (turn <= 1e-9) turn += full;
        if (turn < least) least = turn, best = (int)i;
    }
    return best;
}

/* Writes the outline that the path's end from a place on makes, without corners on straight edges. */
static frame_status write_loop(joining *j, size_t from) {
    frame_array *points = &j->into->points;
    frame_sheet_loop loop = {.first = (int)points->count, .hole_of = -1};
    for (size_t i = from; i < j->path.count; i++)
        if (!frame_array_push(points, &FRAME_ITEM(frame_sheet_point, j->corners, FRAME_ITEM(int, j->path, i))))
            return FRAME_NO_MEMORY;
    frame_sheet_point *first = &FRAME_ITEM(frame_sheet_point, *points, loop.first);
    loop.count = frame_sheet_clean(first, (int)(j->path.count - from), 1e-7);
    loop.area = frame_sheet_area(first, loop.count);
    points->count = (size_t)(loop.first + loop.count);
    j->path.count = from;
    if (loop.count < 3 || fabs(loop.area) < 1e-6) {
        points->count = (size_t)loop.first;
        return FRAME_OK;
    }
    return frame_array_push(&j->into->loops, &loop) ? FRAME_OK : FRAME_NO_MEMORY;
}

/* Follows an outline; where it comes by a corner of its own again, the loop between is one of its own. */
static frame_status follow(joining *j, int start) {
    j->path.count = 0;
    for (int at = start; at >= 0;) {
        link *l = &FRAME_ITEM(link, j->links, at);
        l->gone = 1;
        if (!frame_array_push(&j->path, &l->from)) return FRAME_NO_MEMORY;
        for (size_t i = 0; i < j->path.count; i++)
            if (FRAME_ITEM(int, j->path, i) == l->to) {
                if (write_loop(j, i)) return FRAME_NO_MEMORY;
                break;
            }
        at = next_link(j, l->from, l->to);
        if (!j->path.count) return FRAME_OK;
    }
    return FRAME_OK;
}

/* Gives each hole to the smallest outline round it. */
static void give_holes(frame_sheet_outlines *o) {
    frame_sheet_loop *loops = o->loops.items;
    for (size_t h = 0; h < o->loops.count; h++) {
        if (loops[h].area > 0) continue;
        const frame_sheet_point *p = &FRAME_ITEM(frame_sheet_point, o->points, loops[h].first);
        const frame_sheet_point middle = {(p[0].x + p[1].x) / 2, (p[0].y + p[1].y) / 2};
        double least = 1e300;
        for (size_t i = 0; i < o->loops.count; i++)
            if (loops[i].area > -loops[h].area && loops[i].area < least &&
                frame_sheet_inside(&FRAME_ITEM(frame_sheet_point, o->points, loops[i].first), loops[i].count, middle))
                loops[h].hole_of = (int)i, least = loops[i].area;
    }
}

/* The widest square of each outline: the widest in any of the polygons that make it up. */
static void measure(const frame_sheet_rest *rest, frame_sheet_outlines *o) {
    for (size_t i = 0; i + 1 < rest->starts.count; i++) {
        const int first = FRAME_ITEM(int, rest->starts, i), count = FRAME_ITEM(int, rest->starts, i + 1) - first;
        const frame_sheet_point *p = &FRAME_ITEM(frame_sheet_point, rest->points, first);
        frame_sheet_point middle = {0, 0};
        for (int k = 0; k < count; k++) middle.x += p[k].x / count, middle.y += p[k].y / count;
        frame_sheet_loop *in = NULL;
        for (size_t l = 0; l < o->loops.count; l++) {
            frame_sheet_loop *loop = &FRAME_ITEM(frame_sheet_loop, o->loops, l);
            if (loop->area > 0 && (!in || loop->area < in->area) &&
                frame_sheet_inside(&FRAME_ITEM(frame_sheet_point, o->points, loop->first), loop->count, middle))
                in = loop;
        }
        if (in) in->wide = fmax(in->wide, frame_sheet_widest_square(p, count));
    }
}

static frame_status join_all(joining *j, const frame_sheet_rest *rest) {
    frame_status status = FRAME_OK;
    for (size_t i = 0; !status && i + 1 < rest->starts.count; i++) {
        const int first = FRAME_ITEM(int, rest->starts, i);
        status = add_edges(j, &FRAME_ITEM(frame_sheet_point, rest->points, first),
                           FRAME_ITEM(int, rest->starts, i + 1) - first);
    }
    if (!status) status = split_edges(j);
    if (!status) cancel_shared(j);
    for (size_t i = 0; !status && i < j->links.count; i++)
        if (!FRAME_ITEM(link, j->links, i).gone) status = follow(j, (int)i);
    return status;
}

frame_status frame_sheet_outlines_of(const frame_sheet_rest *rest, frame_sheet_outlines *outlines) {
    joining j = {.into = outlines};
    j.corners.item_size = outlines->points.item_size = sizeof(frame_sheet_point);
    j.links.item_size = sizeof(link);
    j.path.item_size = sizeof(int);
    outlines->loops.item_size = sizeof(frame_sheet_loop);
    outlines->points.count = outlines->loops.count = 0;
    const frame_status status = join_all(&j, rest);
    if (!status) give_holes(outlines), measure(rest, outlines);
    frame_array_give(&j.corners);
    frame_array_give(&j.links);
    frame_array_give(&j.path);
    return status;
}

void frame_sheet_outlines_give(frame_sheet_outlines *outlines) {
    frame_array_give(&outlines->points);
    frame_array_give(&outlines->loops);
}
