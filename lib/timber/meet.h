/* What two placed sticks have to do with each other: the space they share, and the area in which they touch. */
#ifndef FRAME_LIB_TIMBER_MEET_H
#define FRAME_LIB_TIMBER_MEET_H

#include "timber/polygon.h"
#include "timber/stick.h"

/* A part of the area in which two sticks touch: a convex polygon in the first stick's axes. */
typedef struct frame_touching {
    const frame_polygon *polygon;
    vec3 normal; /* out of the first stick */
    double area;
    int32_t plane[2], side[2]; /* the plane it lies on, among those of each stick's solid */
} frame_touching;

typedef struct frame_meeting {
    double overlap, contact;
    /* Told of each part of the contact, unless NULL. */
    void (*tell)(void *whom, const frame_touching *part);
    void *whom;
} frame_meeting;

/* Adds to overlap and contact. */
frame_status frame_stick_meet(const frame_stick *first, const frame_stick *second, frame_meeting *meeting);
/* Adds the space two convex cells share; the second one's planes and vertices as the first stick's axes see them. */
frame_status frame_cells_shared(const frame_stick *first, const frame_cell_view *cell, const frame_stick *second,
                                const frame_cell_view *by, frame_moments *sum);
/* A plane of the second stick, turned by side, in the first one's axes. */
frame_plane frame_plane_brought(const frame_stick *to, const frame_stick *from, const frame_plane *plane, int side);
/* Whether the balls round two sticks come nearer than this. */
int frame_sticks_near(const frame_stick *first, const frame_stick *second, double least);
/* The least distance between two sticks that share no space. */
double frame_stick_gap(const frame_stick *first, const frame_stick *second);

#endif
