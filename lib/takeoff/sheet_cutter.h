/* What choosing patterns and mixing them share. */
#ifndef FRAME_LIB_TAKEOFF_SHEET_CUTTER_H
#define FRAME_LIB_TAKEOFF_SHEET_CUTTER_H

#include "takeoff/sheet_pattern.h"

enum { MOST_STEPS = 6000, COARSE_STEPS = 3000, MOST_SHELVES = 400 };

/* Parts of one kind in a column. */
typedef struct frame_sheet_column {
    int kind, shape, copies;
    int width, height; /* in steps */
    int spare;
    double price;
} frame_sheet_column;

typedef struct frame_sheet_shelf {
    int height, first, count; /* its columns in chosen */
} frame_sheet_shelf;

typedef struct frame_sheet_pattern {
    frame_sheet_shelf shelves[MOST_SHELVES];
    int shelf_count, sideways;
    frame_array chosen; /* int: columns */
    double price, area;
} frame_sheet_pattern;

typedef struct frame_sheet_cutter {
    frame_sheet_search *search;
    const frame_sheet_job *job;
    int stock, spare;
    double step;
    int *demand;
    frame_array columns; /* of the way that is tried */
    double *best;        /* the most a shelf so wide is worth */
    double *sheet_best;
    /* the most a sheet so high is worth */
    double *worth; /* of a whole shelf as high as a column */
} frame_sheet_cutter;

/* The better of the two ways round for these prices, with no more of a kind than its demand. left: room for each kind.
 */
frame_status frame_sheet_pattern_make(frame_sheet_cutter *cutter, const double *prices, int *left,
                                      frame_sheet_pattern *pattern);
/* Lists the columns one way round; the numbers in a pattern hold as long as the demand is what it was then. */
frame_status frame_sheet_columns_list(frame_sheet_cutter *cutter, const double *prices, int sideways);
/* Counts the parts of each kind in a pattern; the columns are listed. Gives how often the demand lets it be used. */
int frame_sheet_pattern_times(const frame_sheet_cutter *cutter, const frame_sheet_pattern *pattern, int *need);
/* Adds one sheet cut by a pattern. */
frame_status frame_sheet_pattern_add(const frame_sheet_cutter *cutter, const frame_sheet_pattern *pattern,
                                     frame_sheet_layout *layout);
/* The cheapest mix of patterns by linear programming, rounded down into sheets (one at least); takes them off the
 * demand. prices: what a part of each kind is worth at the optimum, as shares of a sheet. */
frame_status frame_sheet_mix(frame_sheet_cutter *cutter, double *prices, frame_sheet_layout *layout);

#endif
