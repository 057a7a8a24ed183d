/* Random plans for the tests of roofs: outlines of clusters of cells, with courtyards where the cluster has any, on a
 * grid so that a great deal happens at one point; stars, whose corners are anywhere; and combs. */
#ifndef FRAME_TESTS_PLANS_H
#define FRAME_TESTS_PLANS_H

#include <check.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include <frame/frame.h>

enum { PLAN_CORNERS = 400, PLAN_GRID = 24 };

typedef struct plan {
    frame_roof_corner corners[PLAN_CORNERS];
    frame_roof_hole_corner holes[PLAN_CORNERS];
    double slopes[2 * PLAN_CORNERS], plates[2 * PLAN_CORNERS];
    frame_roof_kind kinds[2 * PLAN_CORNERS];
    size_t corner_count, hole_count;
    frame_roof_solve_in in;
} plan;

static inline double random_in(double low, double high) {
    return low + (high - low) * (rand() / (double)RAND_MAX);
}

static inline void plan_add(plan *p, double x, double y) {
    ck_assert_uint_lt(p->corner_count, PLAN_CORNERS);
    frame_roof_corner *corner = &p->corners[p->corner_count++];
    frame_roof_corner_init(corner);
    corner->x_in = x, corner->y_in = y;
}

static inline void plan_add_hole(plan *p, int32_t hole, double x, double y) {
    ck_assert_uint_lt(p->hole_count, PLAN_CORNERS);
    frame_roof_hole_corner *corner = &p->holes[p->hole_count++];
    frame_roof_hole_corner_init(corner);
    corner->hole = hole;
    corner->x_in = x, corner->y_in = y;
}

static inline size_t plan_edges(const plan *p) {
    return p->corner_count + p->hole_count;
}

/* Puts what was gathered into the in-struct; every edge a hip of one slope. */
static inline frame_roof_solve_in *plan_finish(plan *p, double slope) {
    frame_roof_solve_in_init(&p->in);
    for (size_t i = 0; i < plan_edges(p); i++) p->slopes[i] = slope, p->plates[i] = 0, p->kinds[i] = FRAME_ROOF_HIP;
    p->in.corners = p->corners, p->in.corner_count = p->corner_count;
    p->in.holes = p->hole_count ? p->holes : NULL, p->in.hole_count = p->hole_count;
    p->in.slopes = p->slopes, p->in.slope_count = plan_edges(p);
    p->in.kinds = p->kinds, p->in.kind_count = plan_edges(p);
    return &p->in;
}

/* A corner for each ray from the middle. */
static inline void plan_star(plan *p, int corners, double inner, double outer) {
    const double round = 2 * acos(-1.0);
    p->corner_count = p->hole_count = 0;
    for (int i = 0; i < corners; i++) {
        const double angle = round * (i + random_in(-0.3, 0.3)) / corners, radius = random_in(inner, outer);
        plan_add(p, radius * cos(angle), radius * sin(angle));
    }
}

typedef struct cells {
    char full[PLAN_GRID][PLAN_GRID], seen[PLAN_GRID][PLAN_GRID]; /* seen: the lower edge of the cell is in a loop */
} cells;

static inline int is_full(const cells *c, int x, int y) {
    return x >= 0 && y >= 0 && x < PLAN_GRID && y < PLAN_GRID && c->full[y][x];
}

/* Whether two cells touch at a corner only, so that the outline would touch itself there. */
static inline int is_pinched(const cells *c) {
    for (int y = 0; y <= PLAN_GRID; y++)
        for (int x = 0; x <= PLAN_GRID; x++) {
            const int a = is_full(c, x - 1, y - 1), b = is_full(c, x, y - 1), d = is_full(c, x - 1, y),
                      e = is_full(c, x, y);
            if ((a && e && !b && !d) || (b && d && !a && !e)) return 1;
        }
    return 0;
}

/* Follows a loop with full cells on the left, from the lower edge of a cell; in line, corners are kept or not. */
static inline void trace_cells(plan *p, cells *c, int x, int y, int32_t hole, double size, int keep) {
    static const int step[4][2] = {{1, 0}, {0, 1}, {-1, 0}, {0, -1}};
    /* The cells to the left and right ahead of a grid point, by direction. */
    static const int left[4][2] = {{0, 0}, {-1, 0}, {-1, -1}, {0, -1}},
                     right[4][2] = {{0, -1}, {0, 0}, {-1, 0}, {-1, -1}};
    int at_x = x, at_y = y, way = 0, before = -1;
    do {
        if (keep || way != before) {
            const double px = at_x * size, py = at_y * size;
            if (hole)
                plan_add_hole(p, hole, px, py);
            else
                plan_add(p, px, py);
        }
        before = way;
        if (way == 0) c->seen[at_y][at_x] = 1;
        at_x += step[way][0], at_y += step[way][1];
        const int l = is_full(c, at_x + left[way][0], at_y + left[way][1]);
        const int r = is_full(c, at_x + right[way][0], at_y + right[way][1]);
        way = r ? (way + 3) % 4 : l ? way : (way + 1) % 4;
    } while (at_x != x || at_y != y || way != 0);
}

/* A cluster of so many cells. */
static inline void plan_cells(plan *p, int count, double size, int keep) {
    cells c;
    do {
        memset(&c, 0, sizeof c);
        c.full[PLAN_GRID / 2][PLAN_GRID / 2] = 1;
        for (int n = 1; n < count;) {
            const int x = 1 + rand() % (PLAN_GRID - 2), y = 1 + rand() % (PLAN_GRID - 2);
            if (c.full[y][x]) continue;
            if (!is_full(&c, x - 1, y) && !is_full(&c, x + 1, y) && !is_full(&c, x, y - 1) && !is_full(&c, x, y + 1))
                continue;
            c.full[y][x] = 1, n++;
        }
    } while (is_pinched(&c));
    p->corner_count = p->hole_count = 0;
    int32_t loop = 0;
    for (int y = 0; y < PLAN_GRID; y++) /* the lowest cell of all is on the outline */
        for (int x = 0; x < PLAN_GRID; x++)
            if (c.full[y][x] && !is_full(&c, x, y - 1) && !c.seen[y][x] && !is_full(&c, x - 1, y))
                trace_cells(p, &c, x, y, loop++, size, keep);
}

static inline double plan_area(const plan *p) {
    double twice = 0, holes = 0;
    for (size_t i = 0; i < p->corner_count; i++) {
        const frame_roof_corner *a = &p->corners[i], *b = &p->corners[(i + 1) % p->corner_count];
        twice += a->x_in * b->y_in - a->y_in * b->x_in;
    }
    for (size_t i = 0, first = 0; i < p->hole_count; i++) {
        const int last = i + 1 == p->hole_count || p->holes[i + 1].hole != p->holes[i].hole;
        const frame_roof_hole_corner *a = &p->holes[i], *b = &p->holes[last ? first : i + 1];
        holes += a->x_in * b->y_in - a->y_in * b->x_in;
        if (last) first = i + 1;
    }
    return (fabs(twice) - fabs(holes)) / 2; /* all courtyards of a cluster turn the same way */
}

#endif
