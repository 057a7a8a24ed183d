/* What the writers of a plan share. */
#ifndef FRAME_LIB_TAKEOFF_STOCK_WRITE_H
#define FRAME_LIB_TAKEOFF_STOCK_WRITE_H

#include <frame/takeoff.h>

#include "tape/tape.h"
#include "text/writer.h"

/* The name of a size; "" without one. */
const char *frame_stock_size_text(frame_size size);
/* FRAME_OK, or what is missing. */
frame_status frame_stock_need_text(const frame_stock_plan *answer, const frame_text *into);
/* The board at from, and the first board after those cut like it. */
size_t frame_stock_alike(const frame_stock_plan *answer, size_t from, frame_stock_plan_board *board);

#endif
