/* Straight cuts from side to side that part all parts on a sheet. */
#ifndef FRAME_LIB_TAKEOFF_SHEET_CUTS_H
#define FRAME_LIB_TAKEOFF_SHEET_CUTS_H

#include "takeoff/sheet_fit.h"

/* A cut: its middle line, and what of it runs through the piece being cut. */
typedef struct frame_sheet_cut {
    frame_sheet_point from, to;
    int trims; /* the kind of the part the cut trims; -1 for one that parts two pieces */
    int spare;
} frame_sheet_cut;

/* Whether straight cuts part everything on the sheet and one more part (NULL: none). Gives 0 too without memory. */
int frame_sheet_can_cut(frame_sheet_fitter *fitter, const frame_sheet_bin *bin, const frame_sheet_placed *more);
/* The cuts in the order in which they are made: those that part pieces, each piece then trimmed to its part. */
frame_status frame_sheet_cuts_of(frame_sheet_fitter *fitter, const frame_sheet_bin *bin, frame_array *cuts);
/* The convex hull of points, counterclockwise; hull has room for twice as many and two. Gives its
 * count. */
int frame_sheet_hull(const frame_sheet_point *points, int count, frame_sheet_point *hull);

#endif
