/* Turning a solved beam into its answer. */
#ifndef FRAME_LIB_STRENGTH_BEAM_RESULTS_H
#define FRAME_LIB_STRENGTH_BEAM_RESULTS_H

#include "base/answer.h"
#include "strength/beam_envelope.h"

/* The lists of the answer, in the order of the header. */
enum {
    FRAME_BEAM_REACTIONS,
    FRAME_BEAM_MAX_REACTIONS,
    FRAME_BEAM_MIN_REACTIONS,
    FRAME_BEAM_INFLECTIONS,
    FRAME_BEAM_SUPPORTS,
    FRAME_BEAM_SPANS,
    FRAME_BEAM_COMBINATIONS,
    FRAME_BEAM_PIECES
};

/* The envelopes of all spans and supports, and what is worst anywhere. */
frame_status frame_beam_give_envelopes(frame_beam *beam, frame_answer *answer, frame_beam_solve_out *out);
/* The functions under the combination with the largest load, and where the moment is zero. */
frame_status frame_beam_give_pieces(const frame_beam *beam, frame_answer *answer);
/* Records the working of a beam of a few spans. */
void frame_beam_record(const frame_beam *beam, const frame_beam_solve_in *in, const frame_beam_solve_out *out,
                       frame_working *record);

#endif
