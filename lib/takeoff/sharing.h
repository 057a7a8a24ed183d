/* Neighbours on a board that share an angled cut: what it saves, and how pieces are laid for it. */
#ifndef FRAME_LIB_TAKEOFF_SHARING_H
#define FRAME_LIB_TAKEOFF_SHARING_H

#include <stddef.h>
#include <stdint.h>

/* A piece as it lies: how far the cut of each end runs along the board, signed by its slant. */
typedef struct frame_share_piece {
    double left_in, right_in;
    double across_in; /* across what the cuts run */
    int32_t crowned;  /* lies one way only */
    int32_t handed;   /* is not rolled over */
    int32_t claim, copy;
    int32_t used, spare;
} frame_share_piece;

/* What a shared cut saves against two ends side by side with the kerf between their long points. Across a slanted cut
 * the kerf takes more of the board's length; 0 where that eats up what is saved, and of square ends. */
double frame_share_saving(double run_in, double across_in, double kerf_in);
/* What is saved between two neighbours as they lie. */
double frame_share_between(const frame_share_piece *before, const frame_share_piece *after, double kerf_in);
/* Lays pieces so that cuts are shared, turning those that may be turned; work has room for twice as many. */
void frame_share_lay(frame_share_piece *pieces, size_t count, double kerf_in, frame_share_piece *work);

#endif
