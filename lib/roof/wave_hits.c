/* Vertices that run into edges. */
#include <math.h>

#include "roof/wave.h"

static double place_along(const wave *w, const wave_edge *e, int32_t vertex, double z) {
    const wave_vertex *v = WAVE_VERTEX(w, vertex);
    return e->dx * wave_x(v, z) + e->dy * wave_y(v, z);
}

/* Looks whether a vertex will run into the edge that another vertex begins, and when. The edges next to its own ends
 * are left out: it meets them when its own edge between has shrunk. */
void wave_expect_hit(wave *w, int32_t vertex, int32_t from) {
    const wave_vertex *v = WAVE_VERTEX(w, vertex), *u = WAVE_VERTEX(w, from);
    const int32_t to = u->next;
    if (u->right == v->left || u->right == v->right || from == v->next || to == v->prev) return;
    const wave_edge *e = WAVE_EDGE(w, u->right);
    const double ahead = e->nx * wave_x(v, w->z) + e->ny * wave_y(v, w->z) - wave_edge_at(e, w->z);
    const double closing = e->speed - (e->nx * v->vx + e->ny * v->vy);
    if (ahead < -w->touch || closing <= 1e-13 || ahead > closing * (w->horizon - w->z)) return;
    const double z = w->z + fmax(ahead, 0) / closing;
    const double place = e->dx * wave_x(v, z) + e->dy * wave_y(v, z);
    if (place < place_along(w, e, from, z) - w->touch || place > place_along(w, e, to, z) + w->touch) return;
    const wave_event event = {z, WAVE_HIT, vertex, from, to};
    wave_push(w, &event);
}

/* Whether a hit that was expected is one now that it has come. At the point, the roofed space of the vertex and that of
 * the edge, or of the vertex at the edge's end, are the same, with the rest of the full turn in between; parted by the
 * hit, the two spaces that come of it must have the angle that is left, and neither less than none. When each vertex
 * bounds a space of its own already, or the edge is parted at the wrong end, that is not so. */
static int is_hit(const wave *w, const wave_event *event) {
    const double half = acos(-1.0), little = 1e-6;
    const int at_start = wave_apart(w, event->a, event->b) <= 2 * w->touch;
    const int at_end = wave_apart(w, event->a, event->c) <= 2 * w->touch;
    if (at_start && at_end) return 0; /* an edge of no length: it shrinks, or grows and its neighbours are hit */
    const wave_chain v = wave_find_chain(w, event->a), none = {0, 0, 0};
    const wave_chain q = at_start ? wave_find_chain(w, event->b) : at_end ? wave_find_chain(w, event->c) : none;
    const wave_vertex *vertex = WAVE_VERTEX(w, event->a);
    const wave_edge *edge = WAVE_EDGE(w, WAVE_VERTEX(w, event->b)->right);
    const double into = wave_turn(WAVE_EDGE(w, vertex->left), edge), out = wave_turn(edge, WAVE_EDGE(w, vertex->right));
    const double first = half - v.before - into - (at_end ? q.at + q.after : 0);
    const double second = half - out - v.after - (at_start ? q.before + q.at : 0);
    const double left = (half - v.before - v.at - v.after) + (half - q.before - q.at - q.after) - 2 * half;
    return fabs(first + second - left) < little && first > -little && second > -little;
}

/* The vertex parts the edge: a loop becomes two, or two loops one. */
void wave_hit(wave *w, const wave_event *event) {
    const wave_vertex v = *WAVE_VERTEX(w, event->a);
    if (v.end >= 0 || WAVE_VERTEX(w, event->b)->end >= 0 || WAVE_VERTEX(w, event->c)->end >= 0) return;
    if (WAVE_VERTEX(w, event->b)->next != event->c || !is_hit(w, event)) return;
    const int32_t edge = WAVE_VERTEX(w, event->b)->right;
    const int32_t node = wave_add_node(w, wave_x(&v, w->z), wave_y(&v, w->z), w->z);
    const int32_t first = wave_add_vertex(w, node, v.left, edge), second = wave_add_vertex(w, node, edge, v.right);
    if (first < 0 || second < 0) return;
    wave_link(w, v.prev, first);
    wave_link(w, first, event->c);
    wave_link(w, event->b, second);
    wave_link(w, second, v.next);
    wave_end_vertex(w, event->a, node, 0);
    wave_settle(w);
}
