/* Trying headers, and ranking what was tried. */
#ifndef FRAME_LIB_STRENGTH_HEADER_SIZES_H
#define FRAME_LIB_STRENGTH_HEADER_SIZES_H

#include <frame/strength.h>

#include "base/answer.h"

typedef struct frame_header_trial {
    frame_beam_check_in check;
    frame_beam_check_out found;
    frame_header_sizes_option option;
    char refusal[200]; /* why it could not be checked; empty when it was */
} frame_header_trial;

/* Puts the trials in their order, gives the options with their reasons, and what is to say of the best. */
frame_status frame_header_rank(const frame_header_sizes_in *in, frame_array *trials, frame_answer *answer,
                               frame_header_sizes_out *out);

#endif
