/* Reading a plan: rings of corners, what is said for each edge, and what cannot be a plan. */
#include "roof/roof_plan.h"

#include <math.h>
#include <stdio.h>

#include "base/error.h"
#include "roof_facts.h"

void roof_plan_give(roof_plan *plan) {
    frame_array_give(&plan->edges);
    frame_array_give(&plan->rings);
}

void roof_plan_corner_name(const roof_plan *plan, int32_t corner, char *name, size_t size) {
    if ((size_t)corner < plan->outline)
        snprintf(name, size, "corners[%d]", (int)corner);
    else
        snprintf(name, size, "holes[%d]", (int)((size_t)corner - plan->outline));
}

/* -- corners and rings -- */

static int add_corner(roof_plan *plan, double x, double y, int32_t hole) {
    roof_edge edge = {.x = x, .y = y};
    roof_ring *last = plan->rings.count ? ROOF_RING(plan, plan->rings.count - 1) : NULL;
    if (!last || last->hole != hole) {
        const roof_ring ring = {.first = (int32_t)plan->edges.count, .hole = hole};
        if (!frame_array_push(&plan->rings, &ring)) return 0;
        last = ROOF_RING(plan, plan->rings.count - 1);
    }
    edge.ring = (int32_t)plan->rings.count - 1;
    last->count++;
    return frame_array_push(&plan->edges, &edge) != NULL;
}

static frame_status read_corners(const frame_roof_solve_in *in, roof_plan *plan) {
    frame_roof_corner corner;
    frame_roof_hole_corner of_hole;
    for (size_t i = 0; i < in->corner_count; i++) {
        frame_roof_corner_item(in->corners, i, &corner);
        if (!add_corner(plan, corner.x_in, corner.y_in, 0)) return FRAME_NO_MEMORY;
    }
    plan->outline = in->corner_count;
    for (size_t i = 0; i < in->hole_count; i++) {
        frame_roof_hole_corner_item(in->holes, i, &of_hole);
        if (!add_corner(plan, of_hole.x_in, of_hole.y_in, of_hole.hole)) return FRAME_NO_MEMORY;
    }
    return FRAME_OK;
}

static frame_status link_ring(roof_plan *plan, const roof_ring *ring) {
    char name[40];
    if (ring->count < 3 && !ring->hole)
        return frame_fail_number(FRAME_IMPOSSIBLE, "corners", ring->count, "at least 3 corners");
    if (ring->count < 3) {
        roof_plan_corner_name(plan, ring->first, name, sizeof name);
        return frame_fail(FRAME_IMPOSSIBLE, name, "", "at least 3 corners that stand together",
                          "%s: courtyard %d has only %d corners here; each needs 3, and they stand together", name,
                          (int)ring->hole, (int)ring->count);
    }
    for (int32_t i = 0; i < ring->count; i++) {
        roof_edge *edge = ROOF_EDGE(plan, ring->first + i);
        edge->next = ring->first + (i + 1) % ring->count;
        edge->prev = ring->first + (i + ring->count - 1) % ring->count;
    }
    return FRAME_OK;
}

/* Brings the plan to the size of 1 around 0. */
static void scale(roof_plan *plan) {
    double low[2] = {HUGE_VAL, HUGE_VAL}, high[2] = {-HUGE_VAL, -HUGE_VAL};
    for (size_t i = 0; i < plan->edges.count; i++) {
        const roof_edge *edge = ROOF_EDGE(plan, i);
        low[0] = fmin(low[0], edge->x), high[0] = fmax(high[0], edge->x);
        low[1] = fmin(low[1], edge->y), high[1] = fmax(high[1], edge->y);
    }
    plan->x = (low[0] + high[0]) / 2, plan->y = (low[1] + high[1]) / 2;
    plan->size = fmax(high[0] - low[0], high[1] - low[1]) / 2;
    for (size_t i = 0; i < plan->edges.count && plan->size > 0; i++) {
        roof_edge *edge = ROOF_EDGE(plan, i);
        edge->x = (edge->x - plan->x) / plan->size;
        edge->y = (edge->y - plan->y) / plan->size;
    }
}

static void find_area(roof_plan *plan, roof_ring *ring) {
    const roof_edge *first = ROOF_EDGE(plan, ring->first);
    for (int32_t i = 0; i < ring->count; i++) {
        const roof_edge *a = ROOF_EDGE(plan, ring->first + i), *b = ROOF_EDGE(plan, a->next);
        ring->area += ((a->x - first->x) * (b->y - first->y) - (a->y - first->y) * (b->x - first->x)) / 2;
    }
    ring->turned = ring->hole ? ring->area > 0 : ring->area < 0;
    plan->area += ring->hole ? -fabs(ring->area) : fabs(ring->area);
}

static frame_status refuse_corner(const roof_plan *plan, int32_t corner, const char *wrong) {
    char name[40];
    roof_plan_corner_name(plan, corner, name, sizeof name);
    return frame_fail(FRAME_IMPOSSIBLE, name, "", "corners apart, edges that do not fold back", "%s: %s", name, wrong);
}

static frame_status check_corner(const roof_plan *plan, int32_t corner) {
    const roof_edge *at = ROOF_EDGE(plan, corner), *next = ROOF_EDGE(plan, at->next), *prev = ROOF_EDGE(plan, at->prev);
    const double ax = at->x - prev->x, ay = at->y - prev->y, bx = next->x - at->x, by = next->y - at->y;
    const double a = hypot(ax, ay), b = hypot(bx, by);
    if (b < 1e-9) return refuse_corner(plan, at->next, "this corner is the same point as the one before it");
    if (a < 1e-9) return refuse_corner(plan, corner, "this corner is the same point as the one before it");
    if (fabs(ax * by - ay * bx) < 1e-9 * a * b && ax * bx + ay * by < 0)
        return refuse_corner(plan, corner, "the edges fold back on each other at this corner");
    return FRAME_OK;
}

/* -- what is said for each edge -- */

static frame_status check_count(size_t count, size_t edges, const char *field) {
    char given[24], valid[40];
    if (count <= 1 || count == edges) return FRAME_OK;
    snprintf(given, sizeof given, "%zu", count);
    snprintf(valid, sizeof valid, "1 or %zu items", edges);
    return frame_fail(FRAME_CONFLICT, field, given, valid,
                      "%s: %s items are not one for each of the %zu edges, nor one for all", field, given, edges);
}

static frame_status refuse_slope(size_t index, double slope) {
    char name[40];
    snprintf(name, sizeof name, "slopes[%zu]", index);
    return frame_fail_number(FRAME_OUT_OF_RANGE, name, slope, ">0..2 where a roof rises");
}

static frame_status read_edge(const frame_roof_solve_in *in, size_t i, roof_edge *edge) {
    const size_t slope_at = in->slope_count == 1 ? 0 : i;
    edge->kind = !in->kind_count ? FRAME_ROOF_HIP : in->kinds[in->kind_count == 1 ? 0 : i];
    edge->slope = in->slopes[slope_at];
    edge->plate = !in->plate_count ? 0 : in->plates_in[in->plate_count == 1 ? 0 : i];
    edge->upper = !in->upper_slope_count ? 0 : in->upper_slopes[in->upper_slope_count == 1 ? 0 : i];
    if ((edge->kind == FRAME_ROOF_HIP || edge->kind == FRAME_ROOF_HALF_HIP) && edge->slope <= 0)
        return refuse_slope(slope_at, edge->slope);
    if (edge->kind == FRAME_ROOF_HALF_HIP && in->half_hip_in == FRAME_NOT_GIVEN)
        return frame_fail(FRAME_REQUIRED, "half_hip_in", "", ">0..2400 in",
                          "half_hip_in: not given; a half hip needs the height up to which it is a gable");
    return FRAME_OK;
}

static frame_status read_edges(const frame_roof_solve_in *in, roof_plan *plan) {
    const size_t edges = plan->edges.count;
    frame_status status = check_count(in->slope_count, edges, "slopes");
    if (!status) status = check_count(in->kind_count, edges, "kinds");
    if (!status) status = check_count(in->plate_count, edges, "plates_in");
    if (!status) status = check_count(in->upper_slope_count, edges, "upper_slopes");
    if (!status && in->upper_slope_count && in->break_in == FRAME_NOT_GIVEN)
        status = frame_fail(FRAME_REQUIRED, "break_in", "", ">0..2400 in",
                            "break_in: not given; upper slopes need the height at which they begin");
    if (!status && !in->upper_slope_count && in->break_in != FRAME_NOT_GIVEN)
        status = frame_fail(FRAME_REQUIRED, "upper_slopes", "", ">0..2 for each edge, or one for all",
                            "upper_slopes: not given; break_in alone does not say how the roof goes on above it");
    plan->base = HUGE_VAL;
    for (size_t i = 0; i < edges && !status; i++) {
        roof_edge *edge = ROOF_EDGE(plan, i);
        status = read_edge(in, i, edge);
        edge->plate /= plan->size;
        plan->base = fmin(plan->base, edge->plate);
    }
    plan->break_at = in->upper_slope_count ? in->break_in / plan->size : 0;
    plan->half_hip = in->half_hip_in == FRAME_NOT_GIVEN ? 0 : in->half_hip_in / plan->size;
    return status;
}

/* -- courtyards -- */

static int lies_inside(const roof_plan *plan, const roof_ring *ring, double x, double y) {
    int inside = 0;
    for (int32_t i = 0; i < ring->count; i++) {
        const roof_edge *a = ROOF_EDGE(plan, ring->first + i), *b = ROOF_EDGE(plan, a->next);
        if ((a->y > y) != (b->y > y) && x < a->x + (y - a->y) / (b->y - a->y) * (b->x - a->x)) inside = !inside;
    }
    return inside;
}

/* Edges are known not to cross, so one corner speaks for its courtyard. */
static frame_status check_holes(const roof_plan *plan) {
    for (size_t i = 1; i < plan->rings.count; i++) {
        const roof_ring *hole = ROOF_RING(plan, i);
        const roof_edge *corner = ROOF_EDGE(plan, hole->first);
        if (!lies_inside(plan, ROOF_RING(plan, 0), corner->x, corner->y))
            return refuse_corner(plan, hole->first, "this courtyard lies outside the plan");
        for (size_t k = 1; k < plan->rings.count; k++)
            if (k != i && lies_inside(plan, ROOF_RING(plan, k), corner->x, corner->y))
                return refuse_corner(plan, hole->first, "this courtyard lies within another");
    }
    return FRAME_OK;
}

frame_status roof_plan_read(const frame_roof_solve_in *in, roof_plan *plan) {
    *plan = (roof_plan){.edges.item_size = sizeof(roof_edge), .rings.item_size = sizeof(roof_ring)};
    frame_status status = read_corners(in, plan);
    for (size_t i = 0; i < plan->rings.count && !status; i++) status = link_ring(plan, ROOF_RING(plan, i));
    if (!status) scale(plan);
    for (size_t i = 0; i < plan->edges.count && !status; i++) status = check_corner(plan, (int32_t)i);
    if (!status) status = read_edges(in, plan);
    if (!status) status = roof_plan_refuse_crossings(plan);
    for (size_t i = 0; i < plan->rings.count && !status; i++) find_area(plan, ROOF_RING(plan, i));
    if (!status) status = check_holes(plan);
    return status;
}
