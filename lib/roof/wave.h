/* The wavefront: a level cut through the roof that rises from the eaves. Seen from above it is a set of loops with the
 * roofed side on the left. Each of its edges lies in one face and moves over the plan at that face's run for each unit
 * of height; each of its vertices runs along the line in which two faces meet. Three things change it: an edge shrinks
 * to nothing, a vertex runs into an edge, and an edge changes its slope at a stated height. What the vertices leave
 * behind are the lines of the roof.
 *
 * Everything is in units of the plan's size, so that distances under WAVE_TOUCH are the rounding of coordinates.
 * Several changes at one point are made one after the other: they leave edges of no length, which shrink at once or
 * grow. */
#ifndef FRAME_LIB_ROOF_WAVE_H
#define FRAME_LIB_ROOF_WAVE_H

#include <frame/base.h>
#include <stdint.h>

#include "base/memory.h"

/* Directions that differ by less, in radians, are parallel. */
#define WAVE_PARALLEL 1e-9

/* An edge: the points p with normal . p = at + speed (z - from). Its direction is its normal turned to the right. */
typedef struct wave_edge {
    double nx, ny, dx, dy;
    double at, speed, from;
    int32_t face;          /* the face it sweeps */
    int32_t changing;      /* 1 while a change is made */
    int32_t first, second; /* of a wall between edges in line those edges */
} wave_edge;

static inline double wave_edge_at(const wave_edge *edge, double z) {
    return edge->at + edge->speed * (z - edge->from);
}

typedef struct wave_node {
    double x, y, z;
} wave_node;

/* A vertex between the edge that comes to it (left) and the one that leaves it (right). */
typedef struct wave_vertex {
    double x, y, z; /* where it began */
    double vx, vy;  /* its way for each unit of height */
    int32_t left, right;
    int32_t prev, next;
    int32_t start, end; /* nodes; end is negative as long as it lives */
    int32_t left_face, right_face;
    int32_t living; /* its place in the list of those that live */
    int32_t reflex; /* its place in the list of those that may run into edges; negative when it may not */
} wave_vertex;

/* A line of the roof: going from its start to its end, left_face lies on the left hand. */
typedef struct wave_arc {
    int32_t start, end;
    int32_t left_face, right_face; /* -1: outside */
    int32_t valley;                /* the faces rise on both sides of it */
    int32_t level;                 /* drawn at once between edges that met along their length: a ridge */
} wave_arc;

typedef enum wave_event_kind { WAVE_SHRINK, WAVE_HIT, WAVE_CHANGE, WAVE_LOOK } wave_event_kind;
typedef struct wave_event {
    double z;
    int32_t kind;
    int32_t a, b, c; /* shrink: the edge's vertices; hit: the vertex, then the edge's; change: its place in the list */
} wave_event;

/* From a height on an edge has another slope and sweeps another face. */
typedef struct wave_change {
    double z, speed;
    int32_t edge, face;
} wave_change;

typedef struct wave_grid wave_grid;

typedef struct wave {
    frame_array edges, vertices, nodes, arcs, events, changes;
    frame_array living, reflex, pending; /* int32_t: vertices */
    wave_grid *grid;                     /* NULL: everything is compared with everything */
    double z, touch;
    double stretch;             /* of height, that the last grid was good for */
    int32_t halvings, unused;   /* how fine its cells had to be */
    double horizon;             /* hits later than this are not looked for yet */
    int32_t ready, spare;       /* 1: the loops are whole, so that looking around makes sense */
    int32_t changed;            /* how many changes are made */
    int32_t faces, inner_faces; /* faces so far; those beyond the caller's own are walls between edges in line */
    frame_status failed;
} wave;

#define WAVE_EDGE(w, i) (&FRAME_ITEM(wave_edge, (w)->edges, i))
#define WAVE_VERTEX(w, i) (&FRAME_ITEM(wave_vertex, (w)->vertices, i))
#define WAVE_NODE(w, i) (&FRAME_ITEM(wave_node, (w)->nodes, i))
#define WAVE_INDEX(array, i) FRAME_ITEM(int32_t, array, i)

static inline double wave_x(const wave_vertex *v, double z) {
    return v->x + v->vx * (z - v->z);
}
static inline double wave_y(const wave_vertex *v, double z) {
    return v->y + v->vy * (z - v->z);
}

/* Sets up an empty wavefront; touch: what counts as the same point. */
void wave_begin(wave *w, double touch);
void wave_give(wave *w);
/* Lets the wavefront rise until it has closed. The caller has added edges, changes (in order of their height) and loops
 * of vertices. FRAME_IMPOSSIBLE when it never closes. */
frame_status wave_run(wave *w);

/* Adds a vertex between two edges, not yet linked: it waits to be settled. Negative without memory. */
int32_t wave_add_vertex(wave *w, int32_t node, int32_t left, int32_t right);
int32_t wave_add_node(wave *w, double x, double y, double z);
void wave_link(wave *w, int32_t before, int32_t after);
/* Ends a vertex at a node and keeps its line. */
void wave_end_vertex(wave *w, int32_t vertex, int32_t node, int level);
/* Resolves what cannot wait, then gives all new vertices their ways and looks for what will happen to them. */
void wave_settle(wave *w);
/* How far two vertices are apart now. */
double wave_apart(const wave *w, int32_t a, int32_t b);

/* wave_events.c */
void wave_push(wave *w, const wave_event *event);
int wave_pop(wave *w, wave_event *event);
void wave_expect_shrink(wave *w, int32_t from, int32_t to);
void wave_shrink(wave *w, const wave_event *event);
void wave_apply_change(wave *w, const wave_event *event);

/* wave_chain.c */
/* How far going along two edges turns to the left; half a turn where they lie on each other. */
double wave_turn(const wave_edge *a, const wave_edge *b);
/* The turns of the chain of vertices at one point, edges of no length between them: those before a vertex, its own, and
 * those after it. The roofed space at the point has the angle of half a turn less all of them. */
typedef struct wave_chain {
    double before, at, after;
} wave_chain;
wave_chain wave_find_chain(const wave *w, int32_t vertex);

/* wave_hits.c */
void wave_expect_hit(wave *w, int32_t vertex, int32_t from);
void wave_hit(wave *w, const wave_event *event);

/* wave_grid.c */
void wave_look_around(wave *w, int32_t vertex);
void wave_look_again(wave *w);
void wave_grid_give(wave_grid *grid);

#endif
