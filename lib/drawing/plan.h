/* How one dimension will be written, before it has a lane. a counts along what is measured, v away from the view. */
#ifndef FRAME_LIB_DRAWING_PLAN_H
#define FRAME_LIB_DRAWING_PLAN_H

#include "drawing/layout.h"

typedef enum plan_mode {
    PLAN_WITHIN = 1, /* in a gap of the dimension line */
    PLAN_BESIDE,     /* on the line, outside one of its ends */
    PLAN_OVER,       /* past the line, along it */
    PLAN_ACROSS      /* past the line, square to it */
} plan_mode;

typedef struct plan_mark {
    double a, foot;       /* where it lies, and the v of the point measured */
    double text_a;        /* where its text stands */
    double width, height; /* of the text */
    int row;
    const char *text; /* NULL for none */
} plan_mark;

typedef struct dimension_plan {
    drawing_layout *layout;
    const drawing_item *item;
    plane_vec u, v;
    frame_array marks; /* plan_mark, in order of a */
    double hook;       /* the hook's a, of a running dimension */
    plan_mode mode;
    double bend, row_step; /* height of the slanting part of the extension lines; from row to row of texts */
    double lane;           /* the v of the dimension line, once found */
} dimension_plan;

#define PLAN_STUB 4.0 /* extension lines pass the dimension line by so much */
#define PLAN_AIR 2.0  /* between a line and what it belongs to */

/* Reads a dimension's points and finds how its texts are to be written. */
void plan_dimension(dimension_plan *plan, drawing_layout *layout, const drawing_item *item);
/* The box of a mark's text with the dimension line at plan->lane. */
plane_box plan_text_box(const dimension_plan *plan, const plan_mark *mark);
/* A direction, or its opposite where lettering along it would stand on its head. */
plane_vec plan_readable(plane_vec way);
/* What the dimension covers: along a, and below and above its line. */
typedef struct plan_footprint {
    double a_low, a_high, below, above;
} plan_footprint;
plan_footprint plan_covers(const dimension_plan *plan);

#endif
