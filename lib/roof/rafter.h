/* What the rafter's two answers share: the figures resolved from the inputs. */
#ifndef FRAME_LIB_ROOF_RAFTER_H
#define FRAME_LIB_ROOF_RAFTER_H

#include <frame/roof.h>

#include "material/lumber.h"

typedef struct frame_rafter_shape {
    double deduction, plumb_depth, seat, height_above_plate;
    frame_known known;
} frame_rafter_shape;

/* Fills in depth, thickness and the rest of what was left out, and refuses what cannot be. */
frame_status frame_rafter_resolve(frame_rafter_in *in, frame_rafter_shape *shape);

#endif
