/* What no plan can go below. */
#ifndef FRAME_LIB_TAKEOFF_SHEET_BOUND_H
#define FRAME_LIB_TAKEOFF_SHEET_BOUND_H

#include "takeoff/sheet_search.h"

typedef struct frame_sheet_bounds {
    int by_area;     /* sheets to buy: the parts with their share of kerf over the area of the largest sheet */
    int by_halves;   /* by parts too large to share a sheet, as far as area tells */
    int by_conflict; /* by parts that cannot lie on one sheet together, wherever they lie */
    int by_dual;     /* of rectangles: by dual feasible functions of width and height */
    int sheets;      /* the best of these */
    int spare;
    double cost;
} frame_sheet_bounds;

frame_status frame_sheet_bounds_of(frame_sheet_search *search, frame_sheet_bounds *bounds);

/* Functions under which sizes that add up to no more than one still do. */
typedef enum frame_sheet_dual_kind {
    FRAME_SHEET_DUAL_ROUND,
    FRAME_SHEET_DUAL_DROP,
    FRAME_SHEET_DUAL_COUNT
} frame_sheet_dual_kind;
double frame_sheet_dual(double x, frame_sheet_dual_kind kind, double of);
/* The bound for a job of rectangles on sheets of at most that size; 0 for others. */
frame_status frame_sheet_bound_rectangles(const frame_sheet_job *job, double width, double height, int *sheets);

#endif
