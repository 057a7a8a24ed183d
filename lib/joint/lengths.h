/* The lengths that a fastener can be had in. */
#ifndef FRAME_LIB_JOINT_LENGTHS_H
#define FRAME_LIB_JOINT_LENGTHS_H

#include "joint/fastener.h"

enum { FRAME_MOST_LENGTHS = 200 };

/* size is NULL where the length is not part of it. */
typedef struct frame_usual_length {
    const char *size;
    double nominal_in, length_in;
} frame_usual_length;

/* Fills lengths, the shortest first, and gives their number. Nails come in their sizes, of the fastener's diameter
 * where only that was given or where the size's name has both; the others in the lengths of their diameter. */
size_t frame_usual_lengths(const frame_dowel_reach_in *in, const frame_fastener *fastener,
                           frame_usual_length lengths[FRAME_MOST_LENGTHS]);

#endif
