/* Where members on centres stand along a length: the one rule, for walls, floors, roofs and decks. Nothing allocates.
 */
#ifndef FRAME_LIB_MARKS_POSITIONS_H
#define FRAME_LIB_MARKS_POSITIONS_H

#include <frame/marks.h>

typedef struct frame_positions {
    /* What is asked. */
    double length, spacing, thickness, datum;
    frame_first_mark first;
    int start, end; /* members at the ends */
    /* What was found. */
    double base;     /* near side of the member that would stand at the datum */
    double from;     /* the first place a near side may lie at, clear of the member at the start */
    int64_t nearest; /* how many spacings the first one on centres stands from the base */
    int on_centres, count;
    int left_out; /* a place on centres lies within the length but meets a member at an end */
} frame_positions;

/* Refuses what cannot be, with the fields' names of layout_marks. */
frame_status frame_positions_find(frame_positions *positions);
/* The near side of the i-th member. */
double frame_position(const frame_positions *positions, int i);
frame_mark_kind frame_position_kind(const frame_positions *positions, int i);

/* From one sheet edge to the next, where it was not given: the sheet that the spacing divides. */
double frame_sheet_for(double spacing);

#endif
