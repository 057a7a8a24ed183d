/* Packing sticks into stock lengths by quick methods. */
#ifndef FRAME_LIB_TAKEOFF_PACKING_H
#define FRAME_LIB_TAKEOFF_PACKING_H

#include <frame/takeoff.h>

#include "base/memory.h"

typedef struct frame_packing_stock {
    double length, price; /* length without the end trim */
    int64_t available;
} frame_packing_stock;

typedef struct frame_packing_job {
    const double *lengths; /* of every single piece, longest first */
    size_t piece_count;
    const frame_packing_stock *stock;
    size_t stock_count;
    double kerf;
} frame_packing_job;

/* A plan: the board of each piece, and the stock of each board. */
typedef struct frame_packing {
    int32_t *board_of;  /* a place for every piece */
    frame_array boards; /* frame_packing_board */
    double cost;
    int found; /* 0: this way did not place every piece */
} frame_packing;

typedef struct frame_packing_board {
    int32_t stock;
    int32_t spare;
    double used; /* pieces and kerfs, a kerf after each piece */
} frame_packing_board;

frame_status frame_packing_new(frame_packing *packing, const frame_packing_job *job);
void frame_packing_give(frame_packing *packing);
/* First-fit: each piece into the first board that takes it; a new board is of the given kind, or, when that is used up
 * or too short, of the cheapest that holds the piece. strict: only the given kind. */
frame_status frame_pack_first_fit(const frame_packing_job *job, size_t kind, int strict, frame_packing *packing);
/* Board by board: every kind is filled longest first from what is left, and the one that costs least for each inch of
 * pieces is taken. */
frame_status frame_pack_by_value(const frame_packing_job *job, frame_packing *packing);
/* No plan costs less. */
double frame_packing_bound(const frame_packing_job *job);

#endif
