/* A board of a plan, drawn: its pieces with their names, and the marks to strike on one tape. */
#include <stdio.h>

#include "base/error.h"
#include "takeoff/stock_write.h"

/* How high a board is drawn whose size is not known. */
static const double UNKNOWN_WIDTH_IN = 5.5;

static double width_of(const frame_stock_plan_board *board) {
    return board->size == FRAME_NOT_GIVEN_INT ? UNKNOWN_WIDTH_IN : board->size % 65536 / 16.0;
}

/* Where a strip lies across the board, from below: strips are counted from the upper edge. */
static void across(const frame_stock_plan *answer, int32_t board, int32_t strip, double width, double *low,
                   double *high) {
    *low = 0, *high = width;
    for (size_t s = 0; strip >= 0 && s < frame_stock_plan_strip_count(answer); s++) {
        frame_stock_plan_strip of;
        frame_stock_plan_strip_at(answer, s, &of);
        if (of.board == board && of.strip == strip) *high = width - of.from_in, *low = *high - of.width_in;
    }
}

static frame_status draw_piece(const frame_stock_plan *answer, const frame_stock_plan_piece *piece, double width,
                               frame_drawing *drawing) {
    double low, high;
    across(answer, piece->board, piece->strip, width, &low, &high);
    frame_status status =
        frame_drawing_rectangle(drawing, piece->from_in, low, piece->to_in, high, FRAME_PEN_CUT, FRAME_HATCH_NONE);
    if (status || !piece->name || !*piece->name) return status;
    return frame_drawing_label(drawing, (piece->from_in + piece->to_in) / 2, (low + high) / 2, piece->name);
}

static frame_status draw_board(const frame_stock_plan *answer, const frame_stock_plan_board *board,
                               frame_drawing *drawing) {
    const double width = width_of(board);
    frame_status status =
        frame_drawing_rectangle(drawing, 0, 0, board->length_in, width, FRAME_PEN_OUTLINE, FRAME_HATCH_NONE);
    if (!status) status = frame_drawing_mark(drawing, 0, 0, NULL);
    for (uint32_t p = 0; !status && p < board->piece_count; p++) {
        frame_stock_plan_piece piece;
        frame_stock_plan_piece_at(answer, board->piece_first + p, &piece);
        status = draw_piece(answer, &piece, width, drawing);
        if (!status && piece.strip <= 0) status = frame_drawing_mark(drawing, piece.to_in, 0, NULL);
    }
    if (!status) status = frame_drawing_dimension_running(drawing, FRAME_DIMENSION_BELOW);
    return status;
}

frame_status frame_stock_plan_drawing(const frame_stock_plan *answer, int32_t board, frame_drawing **drawing) {
    frame_stock_plan_board of;
    char title[48], value[16], valid[48];
    const int32_t count = (int32_t)frame_stock_plan_board_count(answer);
    if (!drawing)
        return frame_fail(FRAME_REQUIRED, "drawing", "NULL", "a place for the drawing", "drawing: NULL is no place");
    if (board < 0 || board >= count) {
        snprintf(value, sizeof value, "%d", (int)board);
        snprintf(valid, sizeof valid, "0..%d", (int)count - 1);
        return frame_fail(FRAME_OUT_OF_RANGE, "board", value, valid, "board: %s is not in %s", value, valid);
    }
    frame_drawing *made = NULL;
    frame_status status = frame_drawing_new(&made);
    if (status) return status;
    frame_stock_plan_board_at(answer, (size_t)board, &of);
    snprintf(title, sizeof title, "Board %d", (int)board + 1);
    status = frame_drawing_title(made, title);
    if (!status) status = draw_board(answer, &of, made);
    if (status)
        frame_drawing_free(made);
    else
        *drawing = made;
    return status;
}
