/* The equations of a beam, node by node: blocks of two (drop and turn), tied to the next by what the span between them
 * does. */
#ifndef FRAME_LIB_STRENGTH_BEAM_BLOCKS_H
#define FRAME_LIB_STRENGTH_BEAM_BLOCKS_H

#include "strength/beam_model.h"

/* A pivot that loses all but this share of what it was before elimination is nothing but rounding: a mechanism. */
#define FRAME_NOTHING_LEFT 1e-11

/* Solves the equations of all kinds of load for drop and turn of every node. FRAME_UNSTABLE names where nothing holds.
 */
frame_status frame_beam_equations(frame_beam *beam);
/* Fills beam->blocks and beam->links: the stiffness of every node (its springs and the spans on its sides) and how
 * every span ties its ends. What is held neither gives nor takes: its row and column are those of the unit matrix. */
void frame_beam_fill_blocks(frame_beam *beam);
/* Takes B' I B from a block; the other takes B I B'. */
void frame_beam_eliminate(frame_beam_block *block, double B[2][2], const frame_beam_block *I);
void frame_beam_eliminate_right(frame_beam_block *block, double B[2][2], const frame_beam_block *I);
/* The inverse of what elimination has left of a block; 0 where nothing is left. */
int frame_beam_invert(const frame_beam_block *left, const frame_beam_block *whole, frame_beam_block *inverse);
/* product may be v. */
void frame_beam_times(const frame_beam_block *I, const double v[2], double product[2]);

#endif
