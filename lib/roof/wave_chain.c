/* Vertices at one point, with edges of no length between them. */
#include <math.h>

#include "roof/wave.h"

/* How far going along two edges turns to the left. Edges that lie on each other face each other. */
double wave_turn(const wave_edge *a, const wave_edge *b) {
    const double cross = a->dx * b->dy - a->dy * b->dx, dot = a->dx * b->dx + a->dy * b->dy;
    return fabs(cross) < WAVE_PARALLEL && dot < 0 ? acos(-1.0) : atan2(cross, dot);
}

static double turn_at(const wave *w, int32_t vertex) {
    const wave_vertex *v = WAVE_VERTEX(w, vertex);
    return wave_turn(WAVE_EDGE(w, v->left), WAVE_EDGE(w, v->right));
}

wave_chain wave_find_chain(const wave *w, int32_t vertex) {
    wave_chain of = {0, turn_at(w, vertex), 0};
    int32_t first = vertex, last = vertex;
    for (;;) {
        const int32_t prev = WAVE_VERTEX(w, first)->prev;
        if (prev == last || wave_apart(w, prev, vertex) > w->touch) break;
        of.before += turn_at(w, first = prev);
    }
    for (;;) {
        const int32_t next = WAVE_VERTEX(w, last)->next;
        if (next == first || wave_apart(w, next, vertex) > w->touch) break;
        of.after += turn_at(w, last = next);
    }
    return of;
}
