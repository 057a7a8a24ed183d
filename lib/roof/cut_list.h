/* The planes that cut a stick, gathered before it is made. All are in the world's axes. */
#ifndef FRAME_LIB_ROOF_CUT_LIST_H
#define FRAME_LIB_ROOF_CUT_LIST_H

#include <frame/timber.h>

enum { FRAME_CUT_LIST_PLANES = 16 };

typedef struct frame_cut_list {
    frame_stick_plane planes[FRAME_CUT_LIST_PLANES];
    size_t count;
} frame_cut_list;

/* Adds a plane through a point; waste: the direction in which it takes wood away. */
frame_stick_plane *frame_cut_list_add(frame_cut_list *list, frame_stick_role role, const double point[3],
                                      const double waste[3], const char *label);
/* Makes the last planes, so many of them, one notch. */
void frame_cut_list_notch(frame_cut_list *list, size_t planes, int32_t number, frame_stick_notch_kind kind);

#endif
