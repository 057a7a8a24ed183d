/* The display list: what was drawn, in order, in model inches. Nothing here knows of paper. */
#ifndef FRAME_LIB_DRAWING_LIST_H
#define FRAME_LIB_DRAWING_LIST_H

#include <frame/drawing.h>

#include "base/memory.h"

typedef enum drawing_kind {
    DRAWING_PATH = 1,  /* points, open */
    DRAWING_AREA,      /* points, closed, hatched */
    DRAWING_CIRCLE,    /* one point, radius, hatched */
    DRAWING_ARC,       /* one point, radius, from_deg, to_deg */
    DRAWING_TEXT,      /* one point, text, anchor, from_deg, lettering */
    DRAWING_LABEL,     /* one point, text */
    DRAWING_RUNNING,   /* points with texts, side */
    DRAWING_DIMENSION, /* two points, text at the second, side */
    DRAWING_ANGLE      /* one point, text, from_deg, to_deg */
} drawing_kind;

typedef struct drawing_point {
    double x, y;
    const char *text; /* of a mark; NULL elsewhere */
} drawing_point;

typedef struct drawing_item {
    drawing_kind kind;
    frame_pen pen;
    frame_hatch hatch;
    frame_anchor anchor;
    frame_lettering lettering;
    frame_dimension_side side;
    size_t view;
    size_t first, count; /* its points */
    double radius, from_deg, to_deg;
    const char *text;
} drawing_item;

typedef struct drawing_view {
    const char *caption; /* NULL for none */
} drawing_view;

typedef struct drawing_break {
    double from, to;
} drawing_break;

struct frame_drawing {
    frame_arena texts;
    frame_array items, points, views, breaks; /* drawing_item, _point, _view, _break; breaks in order, apart */
    frame_array path, marks;                  /* drawing_point: what is being drawn */
    const char *title, *description;
    double width_in, height_in, letter_pt;
    int32_t denominator;
};

/* Coordinates lie within this many inches of the origin: 15 miles, far from where a double runs out of sixteenths. */
#define DRAWING_REACH_IN 1e6

/* FRAME_OK for a number within bounds, else the failure naming the field. */
frame_status drawing_check(const char *field, double value, double low, double high, const char *valid);
frame_status drawing_check_point(const char *x_field, double x, const char *y_field, double y);
frame_status drawing_check_directions(double from_deg, double to_deg);
/* The way counterclockwise from one direction to another, above 0 and at most a full turn. */
double drawing_sweep(double from_deg, double to_deg);
/* Copies a text that is given into *kept (NULL or "" give NULL); refuses bytes that are no UTF-8 and control
 * characters. */
frame_status drawing_keep_text(frame_drawing *drawing, const char *field, const char *text, const char **kept);
/* Adds an item with its points (count may be 0) to the current view; the drawing is as before when that fails. */
frame_status drawing_add(frame_drawing *drawing, drawing_item item, const drawing_point *points, size_t count);

#endif
