/* End, edge and row distances: NDS 2018 12.5.1 from 1/4 in diameter up, the commentary's advice below. */
#ifndef FRAME_LIB_JOINT_GEOMETRY_H
#define FRAME_LIB_JOINT_GEOMETRY_H

#include "joint/fastening.h"

/* What the rules go by. */
typedef struct frame_geometry_ask {
    double diameter_in, main_in, side_in;
    int tension;                            /* toward the near end */
    int hardwood, prebored, across, pulled; /* pulled: lag screws in withdrawal only */
    double row_spacing_in;                  /* for the edge distance of stout rows along the grain; 0 for one row */
} frame_geometry_ask;

typedef struct frame_geometry {
    double end_least, end_full; /* near end */
    double far_end_least, far_end_full;
    double loaded_edge, unloaded_edge;  /* alike along the grain */
    double spacing_least, spacing_full; /* in a row, along the load */
    double row;                         /* between rows, across the load */
    int advice;                         /* under 1/4 in: recommended only */
} frame_geometry;

/* FRAME_REQUIRED where a length along the fastener is needed and not given. */
frame_status frame_geometry_find(const frame_geometry_ask *ask, frame_geometry *rules, frame_working *w);

/* A fastener's place, and the member it is in; far_in FRAME_NOT_GIVEN where the far end is far away. */
typedef struct frame_spot {
    double x, y;
} frame_spot;
typedef struct frame_face {
    double width_in, far_in, diameter_in;
} frame_face;

/* Draws the face of the member, the fasteners on it and their distances. */
frame_status frame_face_draw(frame_drawing *drawing, const frame_face *face, const frame_spot *spots, size_t count,
                             const char *title);

#endif
