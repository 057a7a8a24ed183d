/* The wavefront at the foot of the roof: an edge for each edge of the plan, which begins to move when its roof begins
 * to rise, and changes its speed where its slope changes. */
#include <math.h>
#include <stdlib.h>

#include "roof/roof_plan.h"

typedef struct start {
    const roof_plan *plan;
    wave *wave;
    frame_array *faces;
    int failed;
} start;

static int32_t add_face(start *s, const roof_face *face) {
    if (!frame_array_push(s->faces, face)) s->failed = 1;
    return (int32_t)s->faces->count - 1;
}

/* The line of an edge of the plan, the roof on its left. */
static wave_edge line_of(const roof_plan *plan, int32_t index) {
    const roof_edge *a = ROOF_EDGE(plan, index), *b = ROOF_EDGE(plan, a->next);
    const double hand = ROOF_RING(plan, a->ring)->turned ? -1 : 1, length = hypot(b->x - a->x, b->y - a->y);
    wave_edge edge = {.dx = hand * (b->x - a->x) / length, .dy = hand * (b->y - a->y) / length};
    edge.nx = -edge.dy, edge.ny = edge.dx;
    /* The middle lies on the line as well as either end does. */
    edge.at = edge.nx * (a->x + b->x) / 2 + edge.ny * (a->y + b->y) / 2;
    return edge;
}

static frame_roof_face_kind first_kind(const roof_edge *edge, double base) {
    if (edge->kind == FRAME_ROOF_GABLE || edge->kind == FRAME_ROOF_HALF_HIP) return FRAME_FACE_GABLE;
    if (edge->kind == FRAME_ROOF_WALL) return FRAME_FACE_WALL;
    return edge->plate > base ? FRAME_FACE_PLATE_WALL : FRAME_FACE_ROOF;
}

static int rises(const roof_edge *edge) {
    return edge->kind == FRAME_ROOF_HIP || edge->kind == FRAME_ROOF_HALF_HIP;
}

/* The height at which an edge's roof begins. */
static double rises_from(const roof_plan *plan, const roof_edge *edge) {
    return edge->plate + (edge->kind == FRAME_ROOF_HALF_HIP ? plan->half_hip : 0);
}

/* The faces numbered by edge come first, the later ones of an edge after all of them. */
static void add_first_face(start *s, int32_t index, wave_edge *line) {
    const roof_edge *edge = ROOF_EDGE(s->plan, index);
    const double base = s->plan->base;
    roof_face face = {index, first_kind(edge, base), line->nx, line->ny, line->at, base, 0};
    line->from = base;
    if (face.kind == FRAME_FACE_ROOF) {
        face.slope = edge->slope;
        line->speed = 1 / edge->slope;
    }
    line->face = add_face(s, &face);
}

static void change(start *s, roof_face *face, double z, double slope) {
    face->at += face->slope > 0 ? (z - face->from) / face->slope : 0;
    face->from = z;
    face->slope = slope;
    const wave_change at = {z, 1 / slope, face->edge, add_face(s, face)};
    if (!frame_array_push(&s->wave->changes, &at)) s->failed = 1;
}

static void add_changes(start *s, int32_t index) {
    const roof_edge *edge = ROOF_EDGE(s->plan, index);
    roof_face face = FRAME_ITEM(roof_face, *s->faces, index);
    const double from = rises_from(s->plan, edge), breaks = edge->plate + s->plan->break_at;
    const int has_break = edge->upper > 0 && s->plan->break_at > 0;
    if (!rises(edge)) return;
    if (face.kind != FRAME_FACE_ROOF) {
        const int upper = has_break && breaks <= from;
        face.kind = upper ? FRAME_FACE_UPPER_ROOF : FRAME_FACE_ROOF;
        change(s, &face, from, upper ? edge->upper : edge->slope);
    }
    if (!has_break || breaks <= from) return;
    face.kind = FRAME_FACE_UPPER_ROOF;
    change(s, &face, breaks, edge->upper);
}

static int by_height(const void *a, const void *b) {
    const wave_change *p = a, *q = b;
    return p->z < q->z ? -1 : p->z > q->z ? 1 : p->edge - q->edge;
}

/* At each corner stands a vertex; going on, the roof is on the left. */
static void add_vertices(start *s) {
    const roof_plan *plan = s->plan;
    const int32_t count = (int32_t)plan->edges.count;
    for (int32_t i = 0; i < count; i++) {
        const roof_edge *edge = ROOF_EDGE(plan, i);
        if (wave_add_node(s->wave, edge->x, edge->y, plan->base) < 0) s->failed = 1;
    }
    for (int32_t i = 0; i < count && !s->failed; i++) {
        const roof_edge *edge = ROOF_EDGE(plan, i);
        const int turned = ROOF_RING(plan, edge->ring)->turned;
        if (wave_add_vertex(s->wave, i, turned ? i : edge->prev, turned ? edge->prev : i) < 0) s->failed = 1;
    }
    for (int32_t i = 0; i < count && !s->failed; i++) {
        const roof_edge *edge = ROOF_EDGE(plan, i);
        const int turned = ROOF_RING(plan, edge->ring)->turned;
        wave_link(s->wave, i, turned ? edge->prev : edge->next);
    }
}

frame_status roof_plan_start(const roof_plan *plan, wave *w, frame_array *faces) {
    start s = {plan, w, faces, 0};
    const int32_t count = (int32_t)plan->edges.count;
    w->z = plan->base;
    for (int32_t i = 0; i < count && !s.failed; i++) {
        wave_edge line = line_of(plan, i);
        add_first_face(&s, i, &line);
        if (!frame_array_push(&w->edges, &line)) s.failed = 1;
    }
    for (int32_t i = 0; i < count && !s.failed; i++) add_changes(&s, i);
    if (!s.failed && w->changes.count) qsort(w->changes.items, w->changes.count, sizeof(wave_change), by_height);
    w->faces = (int32_t)faces->count;
    if (!s.failed) add_vertices(&s);
    return s.failed ? FRAME_NO_MEMORY : FRAME_OK;
}
