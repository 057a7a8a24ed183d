/* What the joints of several fasteners share. */
#ifndef FRAME_LIB_JOINT_FASTENING_H
#define FRAME_LIB_JOINT_FASTENING_H

#include <frame/joint.h>
#include <frame/working.h>

#include "joint/fastener.h"

/* A row along the load, for C_g. Stiffness: modulus times area. */
typedef struct frame_group_row {
    int32_t count;
    int metal;
    double diameter_in, spacing_in, main_stiffness_lb, side_stiffness_lb;
} frame_group_row;

/* C_g by NDS equation 11.3-1, whatever the diameter; out (may be NULL) gets what it rests on. */
double frame_group_factor(const frame_group_row *row, frame_group_action_out *out, frame_working *w);

/* The diameter of a fastener's round head; FRAME_REQUIRED where no table has it. */
frame_status frame_head_diameter(frame_dowel_kind kind, const char *size, double given_in, double *head_in,
                                 frame_known *known, frame_working *w);

#endif
