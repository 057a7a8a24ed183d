/* How far a fastener reaches into the members of its joint. */
#ifndef FRAME_LIB_JOINT_REACH_H
#define FRAME_LIB_JOINT_REACH_H

#include "joint/fastener.h"

/* All lengths in inches; what is not known FRAME_NOT_GIVEN. The driven end is in the last member: the main member in
 * single shear, the second side member in double shear. */
typedef struct frame_reach {
    double l_m, l_s;    /* bearing lengths */
    double penetration; /* depth in the last member: nails and wood screws with the tip, lag screws without */
    double least;       /* the least of it that counts */
    double factor;      /* p/10D or p/8D of the table route, else 1 */
    double point_out;   /* beyond the last member */
    frame_dowel_hold hold;
} frame_reach;

/* A driven fastener's point. */
typedef struct frame_point {
    double tip;         /* length of the tapered tip, as far as it lies in the member that holds it */
    double penetration; /* nails and wood screws with the tip, lag screws without */
    double out;         /* beyond that member */
} frame_point;

/* Where the point ends up; t_s is the side member's thickness, recorded already. */
frame_status frame_find_point(const frame_dowel_lateral_in *in, const frame_fastener *fastener, double t_s,
                              frame_point *found, frame_working *w);
/* The thickness of the member that holds the point, and the fastener's length; FRAME_NOT_GIVEN when not known. */
double frame_last_thickness(const frame_dowel_lateral_in *in);
double frame_driven_length(const frame_dowel_lateral_in *in, const frame_fastener *fastener);
/* Says that a length is missing, and why it is needed. */
frame_status frame_length_needed(const char *field, const char *why);

/* Works out the bearing lengths; in is validated, fastener found. Fails where the fastener does not reach deep enough.
 */
frame_status frame_joint_reach(const frame_dowel_lateral_in *in, const frame_fastener *fastener, frame_reach *reach,
                               frame_working *w);

#endif
