/* The wavefront as such: its vertices, and what cannot wait when they are new. */
#include "roof/wave.h"

#include <math.h>

#include "base/error.h"

void wave_begin(wave *w, double touch) {
    *w = (wave){.edges.item_size = sizeof(wave_edge),
                .vertices.item_size = sizeof(wave_vertex),
                .nodes.item_size = sizeof(wave_node),
                .arcs.item_size = sizeof(wave_arc),
                .events.item_size = sizeof(wave_event),
                .changes.item_size = sizeof(wave_change),
                .living.item_size = sizeof(int32_t),
                .reflex.item_size = sizeof(int32_t),
                .pending.item_size = sizeof(int32_t),
                .horizon = HUGE_VAL,
                .touch = touch};
}

void wave_give(wave *w) {
    frame_array *const arrays[] = {&w->edges,   &w->vertices, &w->nodes,  &w->arcs,   &w->events,
                                   &w->changes, &w->living,   &w->reflex, &w->pending};
    for (size_t i = 0; i < sizeof arrays / sizeof *arrays; i++) frame_array_give(arrays[i]);
    wave_grid_give(w->grid);
    w->grid = NULL;
}

/* Pushes, and remembers when that failed. */
static void *push(wave *w, frame_array *array, const void *item) {
    void *place = frame_array_push(array, item);
    if (!place) w->failed = FRAME_NO_MEMORY;
    return place;
}

int32_t wave_add_node(wave *w, double x, double y, double z) {
    const wave_node node = {x, y, z};
    return push(w, &w->nodes, &node) ? (int32_t)w->nodes.count - 1 : -1;
}

int32_t wave_add_vertex(wave *w, int32_t node, int32_t left, int32_t right) {
    const int32_t index = (int32_t)w->vertices.count;
    if (node < 0) return -1;
    const wave_node *at = WAVE_NODE(w, node);
    const wave_vertex v = {.x = at->x,
                           .y = at->y,
                           .z = at->z,
                           .left = left,
                           .right = right,
                           .prev = index,
                           .next = index,
                           .start = node,
                           .end = -1,
                           .left_face = WAVE_EDGE(w, left)->face,
                           .right_face = WAVE_EDGE(w, right)->face,
                           .living = (int32_t)w->living.count,
                           .reflex = -1};
    if (!push(w, &w->vertices, &v) || !push(w, &w->living, &index) || !push(w, &w->pending, &index)) return -1;
    return index;
}

void wave_link(wave *w, int32_t before, int32_t after) {
    WAVE_VERTEX(w, before)->next = after;
    WAVE_VERTEX(w, after)->prev = before;
}

/* Takes a vertex out of a list; the last one gets its place. */
static void leave(wave *w, frame_array *list, int32_t place, int reflex) {
    const int32_t moved = WAVE_INDEX(*list, list->count - 1);
    WAVE_INDEX(*list, place) = moved;
    if (reflex)
        WAVE_VERTEX(w, moved)->reflex = place;
    else
        WAVE_VERTEX(w, moved)->living = place;
    list->count--;
}

void wave_end_vertex(wave *w, int32_t vertex, int32_t node, int level) {
    wave_vertex *v = WAVE_VERTEX(w, vertex);
    if (node < 0) return;
    const wave_edge *a = WAVE_EDGE(w, v->left), *b = WAVE_EDGE(w, v->right);
    const wave_arc arc = {v->start, node, v->left_face, v->right_face, !level && a->dx * b->dy - a->dy * b->dx < 0,
                          level};
    v->end = node;
    leave(w, &w->living, v->living, 0);
    if (v->reflex >= 0) leave(w, &w->reflex, v->reflex, 1);
    if (arc.start != arc.end) push(w, &w->arcs, &arc);
}

double wave_apart(const wave *w, int32_t a, int32_t b) {
    const wave_vertex *p = WAVE_VERTEX(w, a), *q = WAVE_VERTEX(w, b);
    return hypot(wave_x(p, w->z) - wave_x(q, w->z), wave_y(p, w->z) - wave_y(q, w->z));
}

static int32_t node_at(wave *w, int32_t vertex) {
    const wave_vertex *v = WAVE_VERTEX(w, vertex);
    return wave_add_node(w, wave_x(v, w->z), wave_y(v, w->z), w->z);
}

/* A loop of two vertices is closed: both edges lie on each other between them. */
static void close_pair(wave *w, int32_t one, int32_t other) {
    const int32_t start = WAVE_VERTEX(w, one)->start;
    const int32_t node = wave_apart(w, one, other) <= w->touch ? start : node_at(w, other);
    wave_end_vertex(w, one, node, 1);
    wave_end_vertex(w, other, node, 0);
}

static int32_t join(wave *w, int32_t before, int32_t after, int32_t node) {
    const int32_t prev = WAVE_VERTEX(w, before)->prev, next = WAVE_VERTEX(w, after)->next;
    const int32_t made = wave_add_vertex(w, node, WAVE_VERTEX(w, before)->left, WAVE_VERTEX(w, after)->right);
    if (made < 0) return -1;
    wave_link(w, prev, made);
    wave_link(w, made, next);
    return made;
}

/* The two edges of a vertex lie on each other: they are gone as far as the shorter one reaches. */
static void zip(wave *w, int32_t vertex) {
    const wave_vertex v = *WAVE_VERTEX(w, vertex);
    const double back = wave_apart(w, v.prev, vertex), ahead = wave_apart(w, vertex, v.next);
    const int takes_left = back <= ahead + w->touch, takes_right = ahead <= back + w->touch;
    const int32_t node = node_at(w, takes_left ? v.prev : v.next);
    const int closed = takes_left && takes_right && WAVE_VERTEX(w, v.next)->next == v.prev;
    if (node < 0) return;
    if (!closed) join(w, takes_left ? v.prev : vertex, takes_right ? v.next : vertex, node);
    wave_end_vertex(w, vertex, node, 1);
    if (takes_left) wave_end_vertex(w, v.prev, node, 0);
    if (takes_right) wave_end_vertex(w, v.next, node, 0);
}

/* Edges in line whose slopes differ: from here on a wall stands between their faces, square to them. */
static void part(wave *w, int32_t vertex) {
    const wave_vertex v = *WAVE_VERTEX(w, vertex);
    const wave_edge *a = WAVE_EDGE(w, v.left), *b = WAVE_EDGE(w, v.right);
    const double hand = a->speed > b->speed ? 1 : -1;
    wave_edge wall = {.nx = hand * a->dx, .ny = hand * a->dy, .dx = hand * a->dy, .dy = -hand * a->dx};
    wall.at = wall.nx * v.x + wall.ny * v.y;
    wall.face = w->faces++;
    /* Of a wall that meets a wall, the edges that wall stands between. */
    const int32_t outer = (int32_t)w->edges.count - w->inner_faces + 1;
    wall.first = v.left < outer ? v.left : a->first, wall.second = v.right < outer ? v.right : b->second;
    w->inner_faces++;
    if (!push(w, &w->edges, &wall)) return;
    const int32_t between = (int32_t)w->edges.count - 1;
    const int32_t first = wave_add_vertex(w, v.start, v.left, between),
                  second = wave_add_vertex(w, v.start, between, v.right);
    if (first < 0 || second < 0) return;
    wave_link(w, v.prev, first);
    wave_link(w, first, second);
    wave_link(w, second, v.next);
    wave_end_vertex(w, vertex, v.start, 0);
}

typedef enum meeting { MEET_APART, MEET_FACING, MEET_IN_LINE, MEET_PARTING } meeting;

/* How the edges of a vertex meet; when they do so at an angle, the vertex gets its way. */
static meeting meet(wave *w, wave_vertex *v) {
    const wave_edge *a = WAVE_EDGE(w, v->left), *b = WAVE_EDGE(w, v->right);
    const double mx = a->nx + b->nx, my = a->ny + b->ny, kx = a->nx - b->nx, ky = a->ny - b->ny;
    const double mm = mx * mx + my * my, kk = kx * kx + ky * ky, nothing = WAVE_PARALLEL * WAVE_PARALLEL;
    if (mm < nothing) return MEET_FACING;
    const double along = (a->speed + b->speed) / mm;
    v->vx = along * mx, v->vy = along * my;
    if (kk < nothing) return fabs(a->speed - b->speed) <= 1e-12 * (a->speed + b->speed) ? MEET_IN_LINE : MEET_PARTING;
    const double across = (a->speed - b->speed) / kk;
    v->vx += across * kx, v->vy += across * ky;
    return MEET_APART;
}

/* One new vertex: it goes on, or is replaced at once. */
static void resolve(wave *w, int32_t vertex) {
    wave_vertex *v = WAVE_VERTEX(w, vertex);
    if (v->end >= 0) return;
    if (v->prev == v->next) {
        close_pair(w, vertex, v->next);
        return;
    }
    const meeting how = meet(w, v);
    if (how == MEET_FACING) zip(w, vertex);
    if (how == MEET_PARTING) part(w, vertex);
}

static void note_reflex(wave *w, int32_t vertex) {
    wave_vertex *v = WAVE_VERTEX(w, vertex);
    const wave_edge *a = WAVE_EDGE(w, v->left), *b = WAVE_EDGE(w, v->right);
    if (a->dx * b->dy - a->dy * b->dx >= WAVE_PARALLEL) return;
    v->reflex = (int32_t)w->reflex.count;
    push(w, &w->reflex, &vertex);
}

void wave_settle(wave *w) {
    for (size_t i = 0; i < w->pending.count && !w->failed; i++) resolve(w, WAVE_INDEX(w->pending, i));
    size_t kept = 0;
    for (size_t i = 0; i < w->pending.count; i++) {
        const int32_t vertex = WAVE_INDEX(w->pending, i);
        if (WAVE_VERTEX(w, vertex)->end >= 0) continue;
        WAVE_INDEX(w->pending, kept++) = vertex;
        note_reflex(w, vertex);
    }
    for (size_t i = 0; i < kept && !w->failed; i++) {
        const int32_t vertex = WAVE_INDEX(w->pending, i);
        wave_expect_shrink(w, WAVE_VERTEX(w, vertex)->prev, vertex);
        wave_expect_shrink(w, vertex, WAVE_VERTEX(w, vertex)->next);
    }
    for (size_t i = 0; i < kept && !w->failed; i++) wave_look_around(w, WAVE_INDEX(w->pending, i));
    w->pending.count = 0;
}

/* What is left has no edge that moves. Walls between edges in line are named, for those the caller cannot see. */
static frame_status not_closed(const wave *w) {
    const int32_t outer = (int32_t)w->edges.count - w->inner_faces;
    for (size_t i = 0; i < w->living.count; i++) {
        const int32_t right = WAVE_VERTEX(w, WAVE_INDEX(w->living, i))->right;
        const wave_edge *wall = WAVE_EDGE(w, right);
        if (right < outer) continue;
        return frame_fail(
            FRAME_IMPOSSIBLE, "slopes", "", "equal slopes on edges in line",
            "slopes: those of edges %d and %d cannot be kept: the edges come into line, and the walls between "
            "their roofs stand around a part of the plan that no roof covers",
            (int)wall->first, (int)wall->second);
    }
    return frame_fail(FRAME_IMPOSSIBLE, "kinds", "", "slopes that close over the whole plan",
                      "kinds: the roof does not close: a part of the plan has only gables and walls around it");
}

/* No roof has so many lines: events at one point go round in a circle. */
static frame_status runs_away(void) {
    return frame_fail(FRAME_INTERNAL, "roof_solve", "", "",
                      "roof_solve: no roof was found for this plan; please report it");
}

frame_status wave_run(wave *w) {
    wave_event event;
    for (size_t i = 0; i < w->changes.count; i++) {
        /* After all else that happens at that height. */
        const wave_event change = {FRAME_ITEM(wave_change, w->changes, i).z + w->touch / 2, WAVE_CHANGE, (int32_t)i, 0,
                                   0};
        wave_push(w, &change);
    }
    wave_settle(w);
    wave_look_again(w);
    const size_t most = 64 * w->vertices.count + 4096; /* a roof of n edges has 2 n lines */
    while (!w->failed && w->living.count && wave_pop(w, &event)) {
        if (w->vertices.count > most) return runs_away();
        if (event.kind == WAVE_CHANGE) event.z -= w->touch / 2;
        if (event.z > w->z) w->z = event.z;
        switch (event.kind) {
            case WAVE_SHRINK:
                wave_shrink(w, &event);
                break;
            case WAVE_HIT:
                wave_hit(w, &event);
                break;
            case WAVE_CHANGE:
                wave_apply_change(w, &event);
                break;
            default:
                wave_look_again(w);
        }
    }
    if (w->failed) return w->failed;
    return w->living.count ? not_closed(w) : FRAME_OK;
}
