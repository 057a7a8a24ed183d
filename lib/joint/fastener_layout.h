/* A layout of fasteners as read: where each stands. */
#ifndef FRAME_LIB_JOINT_FASTENER_LAYOUT_H
#define FRAME_LIB_JOINT_FASTENER_LAYOUT_H

#include "joint/geometry.h"

enum { FRAME_MOST_SPOTS = 500 }; /* as the header has it */

typedef struct frame_spots {
    frame_spot at[FRAME_MOST_SPOTS];
    size_t count;
    double diameter_in;
    frame_known known;
} frame_spots;

/* The places given, or those of the pattern; within the member. */
frame_status frame_spots_read(const frame_fastener_layout_in *in, frame_spots *spots);

#endif
