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
/* The beam behind an answer. */
frame_beam *frame_beam_of(const frame_beam_solve *answer);
/* Finds the combinations that apply by the beam's rules, and the one with the largest load. */
void frame_beam_find_cases(frame_beam *beam);
/* The most and the least of the reaction of a node under one combination. */
void frame_beam_reaction_reach(const frame_beam *beam, const frame_beam_factors *factors, size_t node, double *most,
                               double *least);
/* Records the working of a beam of a few spans. */
void frame_beam_record(const frame_beam *beam, const frame_beam_solve_in *in, const frame_beam_solve_out *out,
                       frame_working *record);

#endif
