/* From the list to the sheet: the scale, the views, and where lettering finds room. */
#ifndef FRAME_LIB_DRAWING_LAYOUT_H
#define FRAME_LIB_DRAWING_LAYOUT_H

#include "drawing/sheet.h"

/* Where a break cuts the areas of a view: a wave from y_low to y_high, in points. */
typedef struct layout_cut {
    size_t view, index;
    int after; /* 0: the edge at the break's from, 1: at its to */
    double y_low, y_high;
} layout_cut;

typedef struct drawing_layout {
    const frame_drawing *drawing;
    drawing_sheet *sheet;
    double scale, em;         /* points per inch; the letter size in points */
    double left, right;       /* where lettering may stand, once the dimensions at the sides are known */
    int with_labels;          /* 0 while only the width is looked for */
    size_t view;              /* the one being laid out */
    plane_extent thing;       /* the view's ink of the thing itself, without what measures and names */
    frame_array cuts;         /* layout_cut */
    frame_array way, visible; /* plane_vec, in use by whoever draws at the moment */
    metrics_block block;      /* likewise */
} drawing_layout;

/* axis.c: the x axis with its breaks. */
#define LAYOUT_GAP 9.0 /* points between the two edges of a break */
plane_vec layout_map(const drawing_layout *layout, double x, double y);
const drawing_point *layout_points(const drawing_layout *layout, const drawing_item *item);
/* Draws a path of model points, leaving out what lies in breaks. */
void layout_path(drawing_layout *layout, const drawing_point *points, size_t count, int closed, sheet_shape shape);
/* The k-th part of an area between breaks (0..breaks), on the paper, into layout->visible. */
void layout_part(drawing_layout *layout, const drawing_point *points, size_t count, size_t k);
/* breaklines.c: finds where breaks cut the view's areas, and draws the waves. */
void layout_find_cuts(drawing_layout *layout);
void layout_break_lines(drawing_layout *layout);
/* How far the wave at an edge stands off the edge at a height. */
double layout_wave(const drawing_layout *layout, size_t index, int after, double y);

/* geometry.c, hatch.c: lines and areas of the view. */
void layout_geometry(drawing_layout *layout);
void layout_hatch(drawing_layout *layout, frame_hatch hatch, plane_vec fibre);

/* dimension.c: the dimensions of the view that stand at the sides told of by bits 1 << side. */
void layout_dimensions(drawing_layout *layout, unsigned sides);

/* place.c, label.c: lettering. */
void layout_texts(drawing_layout *layout);
void layout_angles(drawing_layout *layout);
void layout_labels(drawing_layout *layout);
/* Places layout->block near a point, where it covers nothing, with a leader. */
void layout_callout(drawing_layout *layout, plane_vec target);
double layout_points_of(const drawing_layout *layout, frame_lettering lettering);

/* spread.c: moves places apart by as little as possible (least squares) so that place i + 1 is at least gaps[i] beyond
 * place i, all within low..high as far as they fit. places in order. */
frame_status layout_spread(double *places, const double *gaps, size_t count, double low, double high);

#endif
