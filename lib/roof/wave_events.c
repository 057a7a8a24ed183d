/* The queue of what will happen, edges that shrink to nothing, and edges that change their slope. */
#include <math.h>

#include "roof/wave.h"

/* Earlier first; at one height shrinking first, so that edges of no length are out of the way. */
static int sooner(const wave_event *a, const wave_event *b) {
    return a->z != b->z ? a->z < b->z : a->kind < b->kind;
}

void wave_push(wave *w, const wave_event *event) {
    if (!frame_array_push(&w->events, event)) {
        w->failed = FRAME_NO_MEMORY;
        return;
    }
    wave_event *heap = w->events.items;
    size_t at = w->events.count - 1;
    while (at && sooner(event, &heap[(at - 1) / 2])) {
        heap[at] = heap[(at - 1) / 2];
        at = (at - 1) / 2;
    }
    heap[at] = *event;
}

static void sink(wave_event *heap, size_t count, const wave_event *event) {
    size_t at = 0;
    for (;;) {
        size_t below = 2 * at + 1;
        if (below >= count) break;
        if (below + 1 < count && sooner(&heap[below + 1], &heap[below])) below++;
        if (!sooner(&heap[below], event)) break;
        heap[at] = heap[below];
        at = below;
    }
    heap[at] = *event;
}

int wave_pop(wave *w, wave_event *event) {
    wave_event *heap = w->events.items;
    if (!w->events.count) return 0;
    *event = heap[0];
    w->events.count--;
    if (w->events.count) sink(heap, w->events.count, &heap[w->events.count]);
    return 1;
}

/* Whether a chain of vertices at one point has turned through more than there is round a point: what it still bounds is
 * a loop that has closed there. */
static int is_overturned(const wave *w, int32_t vertex) {
    const wave_chain chain = wave_find_chain(w, vertex);
    return -(chain.before + chain.at + chain.after) > acos(-1.0) - 1e-6;
}

/* An edge of no length that does not grow is gone at once; so is one that only the order of events has left. */
void wave_expect_shrink(wave *w, int32_t from, int32_t to) {
    const wave_vertex *u = WAVE_VERTEX(w, from), *v = WAVE_VERTEX(w, to);
    const wave_edge *e = WAVE_EDGE(w, u->right);
    const double length = e->dx * (wave_x(v, w->z) - wave_x(u, w->z)) + e->dy * (wave_y(v, w->z) - wave_y(u, w->z));
    const double rate = e->dx * (v->vx - u->vx) + e->dy * (v->vy - u->vy);
    const int is_wall = u->right >= (int32_t)w->edges.count - w->inner_faces; /* it has just been put there, to grow */
    const int at_once = length <= w->touch && (rate <= 1e-12 || (!is_wall && is_overturned(w, from)));
    if (!at_once && rate > -1e-14) return;
    const wave_event event = {at_once ? w->z : w->z - fmax(length, 0) / rate, WAVE_SHRINK, from, to, 0};
    wave_push(w, &event);
}

void wave_shrink(wave *w, const wave_event *event) {
    const wave_vertex *u = WAVE_VERTEX(w, event->a), *v = WAVE_VERTEX(w, event->b);
    if (u->end >= 0 || v->end >= 0 || u->next != event->b) return;
    /* The slower of both knows better where it is. */
    const wave_vertex *at = hypot(u->vx, u->vy) <= hypot(v->vx, v->vy) ? u : v;
    const int32_t node = wave_add_node(w, wave_x(at, w->z), wave_y(at, w->z), w->z);
    const int32_t prev = u->prev, next = v->next, left = u->left, right = v->right;
    if (prev != event->b) {
        const int32_t made = wave_add_vertex(w, node, left, right);
        if (made < 0) return;
        wave_link(w, prev, made);
        wave_link(w, made, next);
    }
    wave_end_vertex(w, event->a, node, 0);
    wave_end_vertex(w, event->b, node, 0);
    wave_settle(w);
}

/* A new vertex where an old one is, for an edge has changed. */
static int32_t renew(wave *w, int32_t vertex) {
    const wave_vertex v = *WAVE_VERTEX(w, vertex);
    const int32_t node = wave_add_node(w, wave_x(&v, w->z), wave_y(&v, w->z), w->z);
    const int32_t made = wave_add_vertex(w, node, v.left, v.right);
    if (made < 0) return -1;
    wave_link(w, v.prev, made);
    wave_link(w, made, v.next);
    wave_end_vertex(w, vertex, node, 0);
    return made;
}

/* Sets the changed edges to their new slope and marks them; gives the end of those that change at one height. */
static int32_t change_edges(wave *w, int32_t first) {
    int32_t last = first;
    for (; last < (int32_t)w->changes.count; last++) {
        const wave_change *change = &FRAME_ITEM(wave_change, w->changes, last);
        wave_edge *edge = WAVE_EDGE(w, change->edge);
        if (change->z > w->z + w->touch) break;
        edge->at = wave_edge_at(edge, w->z);
        edge->from = w->z;
        edge->speed = change->speed;
        edge->face = change->face;
        edge->changing = 1;
    }
    return last;
}

static int touches_changed(const wave *w, const wave_vertex *v) {
    return WAVE_EDGE(w, v->left)->changing || WAVE_EDGE(w, v->right)->changing;
}

/* The line along an edge at which its face changes. */
static void draw_break(wave *w, int32_t renewed, int32_t below) {
    const wave_vertex *v = WAVE_VERTEX(w, renewed), *next = WAVE_VERTEX(w, v->next);
    const wave_arc arc = {next->start, v->start, below, v->right_face, 0, 1};
    if (below != v->right_face && !frame_array_push(&w->arcs, &arc)) w->failed = FRAME_NO_MEMORY;
}

static void renew_all(wave *w, const int32_t *olds, size_t count) {
    const size_t first = w->pending.count;
    for (size_t i = 0; i < count && !w->failed; i++) renew(w, olds[i]);
    for (size_t i = 0; i < count && !w->failed; i++) {
        const int32_t renewed = WAVE_INDEX(w->pending, first + i);
        if (WAVE_EDGE(w, WAVE_VERTEX(w, renewed)->right)->changing)
            draw_break(w, renewed, WAVE_VERTEX(w, olds[i])->right_face);
    }
}

void wave_apply_change(wave *w, const wave_event *event) {
    if (event->a < w->changed) return; /* done with an earlier one at the same height */
    const int32_t first = w->changed;
    w->changed = change_edges(w, first);
    int32_t *olds = frame_take(w->living.count * sizeof *olds);
    size_t count = 0;
    if (!olds) {
        w->failed = FRAME_NO_MEMORY;
        return;
    }
    for (size_t i = 0; i < w->living.count; i++) {
        const int32_t vertex = WAVE_INDEX(w->living, i);
        if (touches_changed(w, WAVE_VERTEX(w, vertex))) olds[count++] = vertex;
    }
    renew_all(w, olds, count);
    frame_give(olds);
    for (int32_t i = first; i < w->changed; i++)
        WAVE_EDGE(w, FRAME_ITEM(wave_change, w->changes, i).edge)->changing = 0;
    if (!w->failed) wave_settle(w);
}
