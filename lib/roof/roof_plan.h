/* A plan as roof_solve works on it: rings of corners, brought to the size of 1, each edge with what is said for it. */
#ifndef FRAME_LIB_ROOF_ROOF_PLAN_H
#define FRAME_LIB_ROOF_ROOF_PLAN_H

#include <frame/roof.h>

#include "base/memory.h"
#include "roof/wave.h"

/* Edge i runs from corner i to corner next. */
typedef struct roof_edge {
    double x, y;        /* corner i */
    int32_t next, prev; /* corners of the same ring, in the order given */
    int32_t ring;
    frame_roof_kind kind;
    double slope, upper; /* upper: 0 without a break */
    double plate;
} roof_edge;

typedef struct roof_ring {
    int32_t first, count, hole; /* hole: 0 for the outline, else the number it was given */
    int32_t turned;             /* the order given has the roof on the right */
    double area;                /* positive counterclockwise, of the order given */
} roof_ring;

typedef struct roof_plan {
    frame_array edges, rings;
    double size, x, y; /* what was given is x + size * ours */
    double base;       /* the lowest plate */
    double area;
    double break_at, half_hip; /* above the plate; 0 without */
    size_t outline;            /* corners of the outline */
} roof_plan;

#define ROOF_EDGE(plan, i) (&FRAME_ITEM(roof_edge, (plan)->edges, i))
#define ROOF_RING(plan, i) (&FRAME_ITEM(roof_ring, (plan)->rings, i))

/* Reads a plan and refuses what is none. */
frame_status roof_plan_read(const frame_roof_solve_in *in, roof_plan *plan);
void roof_plan_give(roof_plan *plan);
/* Refuses edges that cross or touch, and names them. */
frame_status roof_plan_refuse_crossings(const roof_plan *plan);
/* Writes the name of a corner as the caller knows it ("corners[3]"). */
void roof_plan_corner_name(const roof_plan *plan, int32_t corner, char *name, size_t size);

/* A face before its outline is known. A sloping one is the plane z = from + (normal . p - at) slope. */
typedef struct roof_face {
    int32_t edge;
    frame_roof_face_kind kind;
    double nx, ny, at, from, slope; /* slope: 0 when it is upright */
} roof_face;

static inline int roof_face_slopes(const roof_face *face) {
    return face->kind == FRAME_FACE_ROOF || face->kind == FRAME_FACE_UPPER_ROOF;
}

/* Sets up the wavefront of a plan and the faces it will sweep. */
frame_status roof_plan_start(const roof_plan *plan, wave *w, frame_array *faces);

/* The outlines of the faces: of face f the places first[f]..first[f + 1] of steps, each a node, and of each step the
 * loop it belongs to. Nodes at one place are one: same gives the node that stands for it. */
typedef struct roof_outlines {
    int32_t *first, *steps, *loops, *same;
    size_t faces;
} roof_outlines;

/* Finds the outlines of all faces. FRAME_INTERNAL when one is not closed. */
frame_status roof_outlines_find(const wave *w, size_t faces, roof_outlines *outlines);
void roof_outlines_give(roof_outlines *outlines);

/* Area in plan of a face, and the volume under it; of an upright one its own area. */
typedef struct roof_measure {
    double area, volume, low, high;
} roof_measure;
/* Whether each loop of a face that bounds more than some area goes round once. */
int roof_face_turns_once(const wave *w, const roof_outlines *outlines, size_t index, double little);
roof_measure roof_face_measure(const wave *w, const roof_face *face, const roof_outlines *outlines, size_t index);

#endif
