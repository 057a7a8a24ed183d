/* The short way of dowel_lateral for what is asked most. */
#ifndef FRAME_LIB_JOINT_LATERAL_USUAL_H
#define FRAME_LIB_JOINT_LATERAL_USUAL_H

#include <frame/joint.h>

/* One smooth nail in single shear, wood to wood, by size or by diameter and length, everything else left to its default
 * but the load duration factor: fills all of out but its size and mark and gives 1. Gives 0 and leaves out alone for
 * anything else, what is out of range included. */
int frame_lateral_usual(const frame_dowel_lateral_in *in, frame_dowel_lateral_out *out);

/* What the short way goes by, with its defaults. */
typedef struct frame_lateral_numbers {
    double diameter, length, side_thickness, side_gravity, main_gravity, duration;
    frame_known nail_known, side_known, main_known;
} frame_lateral_numbers;

/* Whether it is for the short way, and what it goes by. Depth and the strength of the steel are left to look at. */
int frame_lateral_is_usual(const frame_dowel_lateral_in *in, frame_lateral_numbers *numbers);

#endif
