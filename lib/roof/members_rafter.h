/* One rafter of a face as it lies in plan: a strip, and what cuts it. */
#ifndef FRAME_LIB_ROOF_MEMBERS_RAFTER_H
#define FRAME_LIB_ROOF_MEMBERS_RAFTER_H

#include "roof/members.h"

typedef struct members_rafter {
    members *m;
    const members_face *face;
    double place, half;
    polygon2 strip; /* what is left of it in plan */
    struct members_rafter_cut {
        line2 line;
        int32_t side;   /* -1: the end of a ridge, or another member */
        int32_t beside; /* a member that reaches into it */
        double part;    /* of the cut that has something to bear on */
    } cuts[8];
    struct members_rafter_notch {
        line2 lines[3];
        int32_t side, count;
    } notches[4];
    int cut_count, notch_count;
} members_rafter;

/* members_strip.c: cuts the strip by the sides it ends at and those beside them, and by members that reach into it; 0
 * when nothing is left. */
int members_cut_strip(members_rafter *r, int32_t lower, int32_t upper);
/* The line along which a side cuts what ends at it. */
static inline line2 members_line_of(const members *m, int32_t side) {
    return line2_moved(MEMBERS_SIDE(m, side)->line, MEMBERS_SIDE(m, side)->off);
}

#endif
