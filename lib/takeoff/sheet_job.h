/* What is to be cut from what: parts in every way they may lie, and sheets and offcuts. */
#ifndef FRAME_LIB_TAKEOFF_SHEET_JOB_H
#define FRAME_LIB_TAKEOFF_SHEET_JOB_H

#include <frame/takeoff.h>

#include "takeoff/sheet_polygon.h"

/* A part as it may lie: turned, perhaps mirrored, its bounding box at 0, 0. */
typedef struct frame_sheet_shape {
    int kind, mirrored;
    double turn_deg;
    frame_sheet_point origin; /* where the 0, 0 of its drawing lies */
    double width, height;
    frame_sheet_pieces plain, fat;           /* fat: grown by half a kerf */
    frame_sheet_pieces anti_plain, anti_fat; /* the same, each point turned about 0, 0 by a half turn */
    frame_sheet_pieces lean, anti_lean;      /* grown too, but never by more than half a kerf: for bounds */
    frame_sheet_box fat_box;
    frame_sheet_point *hull; /* of the fat pieces */
    int hull_count, spare;
} frame_sheet_shape;

typedef struct frame_sheet_kind {
    const char *name;
    frame_sheet_point *outline; /* as given */
    int outline_count;
    int copies;
    frame_sheet_point *corners; /* cleaned, counterclockwise */
    int corner_count;
    int rectangle; /* sides along the axes */
    double area;
    double fat_area; /* no less than this is taken from a sheet grown by half a kerf all round */
    int first_shape, shape_count;
} frame_sheet_kind;

typedef struct frame_sheet_stock {
    const char *name;
    double width, height, area, fat_area;
    double price;
    int64_t available;
    int sheet, offcut;          /* its place in the lists given; -1 in the other one */
    frame_sheet_point origin;   /* of an offcut: where its bounding box begins */
    frame_sheet_pieces outside; /* what of the bounding box is not wood */
} frame_sheet_stock;

typedef struct frame_sheet_job {
    frame_sheet_kind *kinds;
    int kind_count;
    frame_sheet_shape *shapes;
    int shape_count;
    frame_sheet_stock *stocks; /* offcuts first */
    int stock_count;
    int *items; /* the kind of every single part, the largest first */
    int item_count;
    double kerf, tolerance;
    int straight, all_rectangles;
    int along_length; /* x runs along the sheets' length */
    frame_arena arena;
} frame_sheet_job;

frame_status frame_sheet_job_read(const frame_sheet_plan_in *in, frame_sheet_job *job);
void frame_sheet_job_give(frame_sheet_job *job);

/* Makes every shape a kind may have. */
frame_status frame_sheet_shapes_make(const frame_sheet_plan_in *in, frame_sheet_job *job);
/* Reads an offcut on hand with its holes. */
frame_status frame_sheet_on_hand(const frame_sheet_plan_in *in, size_t place, frame_sheet_job *job,
                                 frame_sheet_stock *stock);
/* Reads corners into the arena; refuses crossing edges. field: the path of the list's owner. */
frame_status frame_sheet_corners_read(const frame_sheet_corner *corners, size_t count, const char *field,
                                      frame_arena *arena, frame_sheet_point **points);
/* Grows convex pieces by a distance over their real edges; corners are cut square where they would reach too far. lean:
 * never beyond the distance, so at corners by less. */
frame_status frame_sheet_grow(const frame_sheet_pieces *from, double distance, int lean, frame_arena *arena,
                              frame_sheet_pieces *grown);
/* A point mirrored (x to the left) and turned counterclockwise; right angles are exact. */
frame_sheet_point frame_sheet_turned(frame_sheet_point p, double degrees, int mirrored);

#endif
