/* Sheathing: a face as a polygon in its own plane, x along the eave and y up the slope, cut into courses and parts. */
#ifndef FRAME_LIB_ROOF_SHEATHING_H
#define FRAME_LIB_ROOF_SHEATHING_H

#include "roof/members.h"

typedef struct sheathing {
    members *m;
    const frame_roof_sheathing_in *in;
    frame_answer *answer;
    frame_roof_sheathing_out *out;
    double step; /* of the joints: whole spacings, a sheet at most */
} sheathing;

/* One loop of a face. */
typedef struct sheathing_loop {
    const members_face *face;
    polygon2 outline;
    double secant, low; /* low: y of the lowest corner, from where courses are counted */
} sheathing_loop;

enum { SHEATHING_PARTS, SHEATHING_CORNERS, SHEATHING_COURSES, SHEATHING_NAILERS };

/* Lays out one loop, course by course. */
frame_status sheathing_lay(const sheathing *s, const sheathing_loop *loop);
/* Gives a part of a course: what a rectangle leaves of the loop. */
frame_status sheathing_give_part(const sheathing *s, const sheathing_loop *loop, int32_t course, const double x[2],
                                 const double y[2]);

#endif
