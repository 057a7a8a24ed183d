/* A convex piece of wood: a polyhedron whose faces know the plane each lies on, and whose edges know the plane beyond.
 *
 * Faces are loops of corners, anticlockwise seen from outside. A cell is split by a plane on the signs of its vertices
 * alone, so that what comes out is closed whatever the rounding; a vertex nearer to the plane than FRAME_TOUCH is on
 * it.
 */
#ifndef FRAME_LIB_TIMBER_CELL_H
#define FRAME_LIB_TIMBER_CELL_H

#include <stdint.h>

#include "timber/vector.h"

/* Inches that count as nothing: far above the rounding of coordinates of 100 ft, far below the 1e-7 in promised. */
#define FRAME_TOUCH 1e-9

/* By Euler's formula F faces have at most 2F - 4 vertices and 6F - 12 corners. */
enum { CELL_FACES = 64, CELL_VERTICES = 2 * CELL_FACES - 4, CELL_CORNERS = 6 * CELL_FACES - 12 };

typedef struct frame_cell_face {
    uint8_t plane; /* the number of its plane */
    int8_t side;   /* 1: the plane's normal points out of the cell; -1: into it */
    uint16_t first, count;
} frame_cell_face;

typedef struct frame_cell_corner {
    uint8_t vertex;
    uint8_t beyond; /* the plane of the face across the edge to the next corner */
} frame_cell_corner;

/* A cell to look at, wherever it is kept. */
typedef struct frame_cell_view {
    const vec3 *vertices;
    const frame_cell_face *faces;
    const frame_cell_corner *corners;
    int vertex_count, face_count, corner_count;
} frame_cell_view;

/* A cell to write. */
typedef struct frame_cell {
    vec3 vertices[CELL_VERTICES];
    frame_cell_face faces[CELL_FACES];
    frame_cell_corner corners[CELL_CORNERS];
    int vertex_count, face_count, corner_count;
} frame_cell;

typedef enum frame_cell_parts {
    CELL_TOO_LARGE = -2, /* more faces than a cell may have */
    CELL_BROKEN = -1,    /* no closed piece came out: a mistake of ours */
    CELL_UNDER = 1,      /* all of it lies on the side the normal points away from; nothing was written */
    CELL_OVER = 2,       /* all of it lies on the other side; nothing was written */
    CELL_BOTH = 3        /* it was split */
} frame_cell_parts;

/* Splits a cell by a plane, whose number none of its faces has yet unless they lie on it. under, over: where the pieces
 * go, NULL for one not wanted; neither may be where the cell itself is kept. */
frame_cell_parts frame_cell_split(const frame_cell_view *cell, const frame_plane *plane, uint8_t number,
                                  frame_cell *under, frame_cell *over);

/* The prism x0..x1, y0..y1, z0..z1. Its planes are numbered left (+y), right, top (+z), bottom, start (-x), end. */
enum { PLANE_LEFT, PLANE_RIGHT, PLANE_TOP, PLANE_BOTTOM, PLANE_START, PLANE_END, PLANE_FIRST_CUT };
void frame_cell_prism(frame_cell *cell, const double x[2], const double y[2], const double z[2]);

static inline frame_cell_view frame_cell_look(const frame_cell *cell) {
    return (frame_cell_view){cell->vertices,     cell->faces,      cell->corners,
                             cell->vertex_count, cell->face_count, cell->corner_count};
}

/* Volume, and volume times centre, of cells. Add them up. */
typedef struct frame_moments {
    double volume;
    vec3 first;
} frame_moments;
void frame_cell_measure(const frame_cell_view *cell, frame_moments *sum);

#endif
