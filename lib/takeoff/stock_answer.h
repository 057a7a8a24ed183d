/* A plan in the caller's terms: boards, pieces, the shopping list, what is left over. */
#ifndef FRAME_LIB_TAKEOFF_STOCK_ANSWER_H
#define FRAME_LIB_TAKEOFF_STOCK_ANSWER_H

#include "base/answer.h"
#include "takeoff/order.h"
#include "takeoff/plan.h"

enum {
    FRAME_STOCK_BOARDS = 0,
    FRAME_STOCK_PIECES = 1,
    FRAME_STOCK_PURCHASES = 2,
    FRAME_STOCK_OFFCUTS = 3,
    FRAME_STOCK_STRIPS = 4
};

/* *fits is 0 when a board does not hold its pieces, which happens only where sizes counted on cuts that are shared. */
frame_status frame_stock_answer(const frame_order *order, const frame_cut_plan *plan, frame_answer *answer, int *fits);
frame_status frame_stock_answer_purchases(const frame_order *order, frame_answer *answer);
void frame_stock_answer_figures(const frame_order *order, const frame_cut_plan *plan, const frame_answer *answer,
                                frame_stock_plan_out *out);

#endif
