/* Plane polygons: area, crossing edges, and the convex pieces any simple polygon is made of. */
#ifndef FRAME_LIB_TAKEOFF_SHEET_POLYGON_H
#define FRAME_LIB_TAKEOFF_SHEET_POLYGON_H

#include <stddef.h>

#include "base/memory.h"

typedef struct frame_sheet_point {
    double x, y;
} frame_sheet_point;

typedef struct frame_sheet_box {
    double x0, y0, x1, y1;
} frame_sheet_box;

/* Convex polygons, counterclockwise: piece i has the points start[i] .. start[i + 1] - 1. */
typedef struct frame_sheet_pieces {
    frame_sheet_point *points;
    char *real; /* whether the edge from a point to the next is an edge of the polygon; else it only parts two pieces */
    int *start;
    int count;
} frame_sheet_pieces;

static inline double frame_sheet_cross(frame_sheet_point a, frame_sheet_point b, frame_sheet_point c) {
    return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

double frame_sheet_area(const frame_sheet_point *points, int count); /* positive when counterclockwise */
frame_sheet_box frame_sheet_box_of(const frame_sheet_point *points, int count);
/* Finds two edges that cross or touch without being neighbours, or neighbours that fold back; 0 when there are none. */
int frame_sheet_crossing(const frame_sheet_point *points, int count, int *one, int *other);
/* Drops corners that coincide with the one before or lie on a straight edge. Gives the count left. */
int frame_sheet_clean(frame_sheet_point *points, int count, double tolerance);
/* Cuts a simple counterclockwise polygon into convex pieces. The memory is the arena's. */
frame_status frame_sheet_pieces_of(const frame_sheet_point *points, int count, frame_arena *arena,
                                   frame_sheet_pieces *pieces);
/* Whether a point lies in a polygon, its edges not counted for sure either way. */
int frame_sheet_inside(const frame_sheet_point *points, int count, frame_sheet_point p);

#endif
