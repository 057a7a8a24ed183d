/* What no plan can go below. */
#ifndef FRAME_LIB_TAKEOFF_SHEET_BOUND_H
#define FRAME_LIB_TAKEOFF_SHEET_BOUND_H

#include "takeoff/sheet_search.h"

typedef struct frame_sheet_bounds {
    int by_area;     /* sheets to buy: the parts with their share of kerf over the area of the largest sheet */
    int by_halves;   /* by parts too large to share a sheet, as far as area tells */
    int by_conflict; /* by parts that cannot lie on one sheet together, wherever they lie */
    int sheets;      /* the best of these */
    double cost;
} frame_sheet_bounds;

frame_status frame_sheet_bounds_of(frame_sheet_search *search, frame_sheet_bounds *bounds);

#endif
