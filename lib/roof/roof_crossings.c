/* Edges of a plan that cross or touch. They are looked through from left to right; each is compared with those that
 * begin before it ends. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>

#include "base/error.h"
#include "roof/roof_plan.h"

/* What is nearer touches. */
static const double touch = 1e-9;

typedef struct stretch {
    double low, high, bottom, top; /* of the box around it */
    int32_t edge;
} stretch;

static int by_low(const void *a, const void *b) {
    const stretch *p = a, *q = b;
    return p->low < q->low ? -1 : p->low > q->low ? 1 : p->edge - q->edge;
}

/* How far a point lies to the left of a line through two others. */
static double beside(const roof_edge *a, const roof_edge *b, const roof_edge *p) {
    const double x = b->x - a->x, y = b->y - a->y;
    return (x * (p->y - a->y) - y * (p->x - a->x)) / hypot(x, y);
}

static int touches(const roof_edge *a, const roof_edge *b, const roof_edge *p) {
    const double x = b->x - a->x, y = b->y - a->y, square = x * x + y * y;
    const double share = fmin(fmax(((p->x - a->x) * x + (p->y - a->y) * y) / square, 0), 1);
    return hypot(p->x - a->x - share * x, p->y - a->y - share * y) < touch;
}

static int meet(const roof_plan *plan, int32_t one, int32_t other) {
    const roof_edge *a = ROOF_EDGE(plan, one), *b = ROOF_EDGE(plan, a->next);
    const roof_edge *c = ROOF_EDGE(plan, other), *d = ROOF_EDGE(plan, c->next);
    if (a->next == other || c->next == one) return 0; /* neighbours have been looked at corner by corner */
    const double of_c = beside(a, b, c), of_d = beside(a, b, d);
    if (of_c * of_d > 0 && fmin(fabs(of_c), fabs(of_d)) > touch) return 0;
    if (of_c * of_d < 0 && beside(c, d, a) * beside(c, d, b) < 0) return 1;
    return touches(a, b, c) || touches(a, b, d) || touches(c, d, a) || touches(c, d, b);
}

static frame_status refuse(int32_t one, int32_t other) {
    const int first = one < other ? one : other, second = one < other ? other : one;
    char edges[48];
    snprintf(edges, sizeof edges, "edges %d and %d", first, second);
    return frame_fail(FRAME_IMPOSSIBLE, "corners", edges, "edges that neither cross nor touch",
                      "corners: %s cross or touch each other (edge i runs from corner i to the next)", edges);
}

static frame_status compare(const roof_plan *plan, const stretch *all, size_t count) {
    for (size_t i = 0; i < count; i++)
        for (size_t k = i + 1; k < count && all[k].low <= all[i].high + touch; k++)
            if (all[k].bottom <= all[i].top + touch && all[i].bottom <= all[k].top + touch &&
                meet(plan, all[i].edge, all[k].edge))
                return refuse(all[i].edge, all[k].edge);
    return FRAME_OK;
}

frame_status roof_plan_refuse_crossings(const roof_plan *plan) {
    const size_t count = plan->edges.count;
    stretch *all = frame_take(count * sizeof *all);
    if (!all) return FRAME_NO_MEMORY;
    for (size_t i = 0; i < count; i++) {
        const roof_edge *a = ROOF_EDGE(plan, i), *b = ROOF_EDGE(plan, a->next);
        all[i] = (stretch){fmin(a->x, b->x), fmax(a->x, b->x), fmin(a->y, b->y), fmax(a->y, b->y), (int32_t)i};
    }
    qsort(all, count, sizeof *all, by_low);
    const frame_status status = compare(plan, all, count);
    frame_give(all);
    return status;
}
