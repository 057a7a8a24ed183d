/* What the jacks' answers share. */
#ifndef FRAME_LIB_ROOF_JACKS_H
#define FRAME_LIB_ROOF_JACKS_H

#include <frame/roof.h>

typedef struct frame_jacks_shape {
    double other_slope, first, thickness, depth; /* resolved; depth may be not given */
    double alpha_deg;                            /* angle in plan between hip or valley and the eave */
    double low_deduction, high_deduction;        /* level, along the jack */
    frame_known known;
} frame_jacks_shape;

/* Fills the shape from inputs that have been read. */
frame_status frame_jacks_resolve(const frame_jacks_in *in, frame_jacks_shape *shape);
/* The run, between centre lines, of a jack by its number from 1; and how many there are. */
double frame_jacks_run(const frame_jacks_in *in, const frame_jacks_shape *shape, int32_t number);
frame_status frame_jacks_count(const frame_jacks_in *in, const frame_jacks_shape *shape, int32_t *count);

#endif
