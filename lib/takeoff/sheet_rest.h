/* What is left of a sheet when the parts and the saw's dust are taken from it. */
#ifndef FRAME_LIB_TAKEOFF_SHEET_REST_H
#define FRAME_LIB_TAKEOFF_SHEET_REST_H

#include "takeoff/sheet_fit.h"

/* Convex polygons that do not overlap: each a run of points. */
typedef struct frame_sheet_rest {
    frame_array points; /* frame_sheet_point */
    frame_array starts; /* int; where each polygon begins, and one more for the end */
} frame_sheet_rest;

/* Outlines: wood to the left of each; clockwise ones are holes. */
typedef struct frame_sheet_loop {
    int first, count;
    int hole_of; /* the outline a hole lies in; -1 for others */
    int spare;
    double area; /* negative for a hole */
    double wide; /* side of the widest square found in it */
} frame_sheet_loop;
typedef struct frame_sheet_outlines {
    frame_array points; /* frame_sheet_point */
    frame_array loops;  /* frame_sheet_loop */
} frame_sheet_outlines;

void frame_sheet_rest_begin(frame_sheet_rest *rest);
void frame_sheet_rest_give(frame_sheet_rest *rest);
/* The rest begins as one rectangle; then polygons are taken from it. */
frame_status frame_sheet_rest_rectangle(frame_sheet_rest *rest, double width, double height);
frame_status frame_sheet_rest_take(frame_sheet_rest *rest, const frame_sheet_pieces *pieces, frame_sheet_point offset);
/* Joins the polygons of a rest into outlines. */
frame_status frame_sheet_outlines_of(const frame_sheet_rest *rest, frame_sheet_outlines *outlines);
void frame_sheet_outlines_give(frame_sheet_outlines *outlines);
/* The side of the largest square, its sides along the axes, in a convex polygon. */
double frame_sheet_widest_square(const frame_sheet_point *points, int count);

#endif
