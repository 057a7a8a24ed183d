/* The laid-out picture: everything in typographic points on the paper, y up, nothing left to decide. A writer of any
 * format needs only this. */
#ifndef FRAME_LIB_DRAWING_SHEET_H
#define FRAME_LIB_DRAWING_SHEET_H

#include "drawing/list.h"
#include "drawing/metrics.h"
#include "drawing/plane.h"

typedef enum sheet_kind {
    SHEET_LINE = 1, /* open, stroked */
    SHEET_LOOP,     /* closed, stroked */
    SHEET_BLACK,    /* closed, filled black */
    SHEET_BLANK,    /* closed, filled with paper */
    SHEET_DOT,      /* one point and radius, filled black */
    SHEET_RING      /* one point and radius, stroked */
} sheet_kind;

/* What a shape is to the layout. Heavy ink is never written over; light ink gives way to texts. */
typedef enum sheet_role {
    SHEET_HEAVY = 1, /* cut and outline lines, fillings */
    SHEET_LIGHT,     /* thin, hidden and centre lines, break lines */
    SHEET_HATCH,
    SHEET_MEASURE, /* of dimensions and angles */
    SHEET_TICK,    /* their ends, which stay whole */
    SHEET_LEADER,
    SHEET_ROLES
} sheet_role;

typedef struct sheet_shape {
    sheet_kind kind;
    sheet_role role;
    frame_pen pen;
    size_t view;
    size_t first, count; /* its points */
    double radius;
    plane_extent extent; /* of its points and radius; kept by the functions below */
} sheet_shape;

/* One line of lettering. */
typedef struct sheet_text {
    plane_vec at; /* on the base line, at the anchor: start, middle or end */
    plane_vec along;
    double angle_deg, points;
    frame_anchor anchor;
    const char *chars; /* in the drawing */
    size_t length;
    size_t view, block; /* block: the box of all lines written together */
} sheet_text;

typedef struct drawing_sheet {
    frame_array shapes, points, texts; /* sheet_shape, plane_vec, sheet_text */
    frame_array blocks;                /* sheet_block: what lettering covers */
    plane_extent ink;                  /* of everything, set when the layout is done */
    double scale;                      /* points per inch of the thing */
    frame_status status;               /* FRAME_NO_MEMORY sticks */
} drawing_sheet;

typedef struct sheet_block {
    plane_box box;
    size_t view;
} sheet_block;

/* Paper around the ink, in points. */
#define SHEET_MARGIN 3.0

void sheet_begin(drawing_sheet *sheet);
/* Lays a drawing out on a sheet just begun. */
frame_status drawing_lay_out(const frame_drawing *drawing, drawing_sheet *sheet);
void sheet_clear(drawing_sheet *sheet);
void sheet_end(drawing_sheet *sheet);

void sheet_shape_add(drawing_sheet *sheet, sheet_shape shape, const plane_vec *points, size_t count);
void sheet_line(drawing_sheet *sheet, size_t view, sheet_role role, frame_pen pen, plane_vec a, plane_vec b);
/* Writes a block of lines into a box made for it (the box's along is the direction of the lines). */
void sheet_write(drawing_sheet *sheet, size_t view, const metrics_block *block, const plane_box *box,
                 frame_anchor anchor);
/* The box of a block with its centre at a point. */
plane_box sheet_box(const metrics_block *block, plane_vec centre, plane_vec along);
/* The box of one line of lettering. */
plane_box sheet_text_box(const sheet_text *text);

/* The pen that hatches are drawn with, lighter than those of the public list. */
#define SHEET_PEN_HATCH 7
/* The width of a pen in points. */
double sheet_pen_width(frame_pen pen);

/* The extent of a view's ink; lines count with half their width. shapes: which roles count, as bits 1 << role. */
plane_extent sheet_extent(const drawing_sheet *sheet, size_t view, unsigned roles, int with_texts);
#define SHEET_ALL_ROLES (~0u)
void sheet_move(drawing_sheet *sheet, size_t view, plane_vec by);
/* Nonzero when a box comes nearer than gap to lettering of the view. */
int sheet_covers_text(const drawing_sheet *sheet, size_t view, const plane_box *box, double gap);
/* Counts the strokes of the view, of the roles given, that touch a box; of each role in hits (SHEET_ROLES numbers, or
 * NULL), and gives the sum. */
size_t sheet_strokes_hit(const drawing_sheet *sheet, size_t view, unsigned roles, const plane_box *box, size_t *hits);
/* Takes from the view's light lines and hatches what lies under lettering or hard beside it. */
void sheet_trim(drawing_sheet *sheet, size_t view);

#endif
