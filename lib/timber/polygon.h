/* Convex polygons in space: the faces of cells, and what planes leave of them. */
#ifndef FRAME_LIB_TIMBER_POLYGON_H
#define FRAME_LIB_TIMBER_POLYGON_H

#include "timber/cell.h"

enum { POLYGON_CORNERS = 256 };

typedef struct frame_polygon {
    vec3 corners[POLYGON_CORNERS];
    int count;
} frame_polygon;

/* A face of a cell, anticlockwise seen from outside. */
void frame_polygon_of_face(const frame_cell_view *cell, int face, frame_polygon *polygon);
/* Keeps what lies over a plane times side. */
void frame_polygon_cut(frame_polygon *polygon, const frame_plane *plane, int side);
/* The area seen against a direction; positive when the corners run anticlockwise then. */
double frame_polygon_area(const frame_polygon *polygon, vec3 direction);

#endif
