/* Putting the loads of a beam onto its spans. */
#ifndef FRAME_LIB_STRENGTH_BEAM_PLACE_H
#define FRAME_LIB_STRENGTH_BEAM_PLACE_H

#include "strength/beam_model.h"

/* Finds which kinds of load there are, what lies on the whole beam, and the events of all other loads. */
frame_status frame_beam_place_loads(const frame_beam_solve_in *in, frame_beam *beam);

#endif
