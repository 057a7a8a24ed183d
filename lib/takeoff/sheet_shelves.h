/* The usual way to lay parts on sheets, for comparison. */
#ifndef FRAME_LIB_TAKEOFF_SHEET_SHELVES_H
#define FRAME_LIB_TAKEOFF_SHEET_SHELVES_H

#include "takeoff/sheet_search.h"

/* Lays all parts as they are drawn, by their bounding boxes, on shelves of one size of sheet. *done: 0 when no one size
 * takes all of them. */
frame_status frame_sheet_on_shelves(frame_sheet_search *search, frame_sheet_layout *layout, int *done);

#endif
