/* A plan as CSV and JSON: which piece comes from which board, and what is left of it. */
#include "takeoff/stock_write.h"

static void add_cell(frame_text *into, const char *text) {
    frame_text_add_csv(into, text ? text : "");
    frame_text_add(into, ",");
}

static void add_number_cell(frame_text *into, double value, const char *after) {
    if (value != FRAME_NOT_GIVEN) frame_text_add_number(into, value, 17);
    frame_text_add(into, after);
}

static void add_tape_cell(frame_text *into, double inches) {
    frame_text *one;
    if (frame_text_new(&one)) {
        frame_text_fail(into);
        return;
    }
    frame_tape_add(one, inches, 16);
    add_cell(into, frame_text_chars(one));
    frame_text_free(one);
}

static void begin_row(frame_text *into, size_t board, const frame_stock_plan_board *of, const char *what) {
    frame_text_addf(into, "%zu,", board + 1);
    add_cell(into, of->name);
    add_cell(into, frame_stock_size_text(of->size));
    add_number_cell(into, of->length_in, ",");
    frame_text_addf(into, "%s,", what);
}

static void add_piece_row(frame_text *into, size_t board, const frame_stock_plan_board *of,
                          const frame_stock_plan_piece *piece) {
    begin_row(into, board, of, "piece");
    add_cell(into, piece->name);
    frame_text_addf(into, "%d,%d,%d,", (int)piece->piece, (int)piece->copy, (int)piece->strip);
    add_number_cell(into, piece->length_in, ",");
    add_number_cell(into, piece->from_in, ",");
    add_number_cell(into, piece->to_in, ",");
    add_tape_cell(into, piece->to_in);
    frame_text_add(into, piece->non_structural ? "non-structural\r\n" : "\r\n");
}

static void add_offcut_row(frame_text *into, const frame_stock_plan_board *of, const frame_stock_plan_offcut *offcut) {
    begin_row(into, (size_t)offcut->board, of, "offcut");
    frame_text_addf(into, ",,,%d,", (int)offcut->strip);
    add_number_cell(into, offcut->length_in, ",");
    add_number_cell(into, offcut->from_in, ",");
    add_number_cell(into, offcut->from_in + offcut->length_in, ",");
    add_tape_cell(into, offcut->from_in + offcut->length_in);
    frame_text_add(into, offcut->kept ? "keep\r\n" : "\r\n");
}

frame_status frame_stock_plan_csv(const frame_stock_plan *answer, frame_text *into) {
    const frame_status status = frame_stock_need_text(answer, into);
    size_t o = 0;
    if (status) return status;
    frame_text_add(into,
                   "board,stock,size,board_length_in,what,name,piece,copy,strip,length_in,from_in,to_in,mark,note\r\n");
    for (size_t b = 0; b < frame_stock_plan_board_count(answer); b++) {
        frame_stock_plan_board board;
        frame_stock_plan_piece piece;
        frame_stock_plan_offcut offcut;
        frame_stock_plan_board_at(answer, b, &board);
        for (uint32_t p = 0; p < board.piece_count; p++)
            if (!frame_stock_plan_piece_at(answer, board.piece_first + p, &piece))
                add_piece_row(into, b, &board, &piece);
        for (; o < frame_stock_plan_offcut_count(answer) && !frame_stock_plan_offcut_at(answer, o, &offcut) &&
               offcut.board == (int32_t)b;
             o++)
            add_offcut_row(into, &board, &offcut);
    }
    return frame_text_state(into);
}

/* -- JSON -- */

static void key(frame_text *into, const char *before, const char *name) {
    frame_text_addf(into, "%s\"%s\":", before, name);
}

static void number(frame_text *into, const char *before, const char *name, double value) {
    key(into, before, name);
    frame_text_add_json_number(into, value);
}

static void text(frame_text *into, const char *before, const char *name, const char *value) {
    key(into, before, name);
    if (value && *value)
        frame_text_add_json(into, value);
    else
        frame_text_add(into, "null");
}

static void add_pieces(const frame_stock_plan *answer, const frame_stock_plan_board *board, frame_text *into) {
    key(into, ",", "pieces");
    frame_text_add(into, "[");
    for (uint32_t p = 0; p < board->piece_count; p++) {
        frame_stock_plan_piece piece;
        frame_stock_plan_piece_at(answer, board->piece_first + p, &piece);
        text(into, p ? ",{" : "{", "name", piece.name);
        number(into, ",", "piece", piece.piece);
        number(into, ",", "copy", piece.copy);
        number(into, ",", "length_in", piece.length_in);
        number(into, ",", "from_in", piece.from_in);
        number(into, ",", "to_in", piece.to_in);
        if (piece.strip >= 0) number(into, ",", "strip", piece.strip);
        frame_text_add(into, piece.non_structural ? ",\"non_structural\":true}" : "}");
    }
    frame_text_add(into, "]");
}

static size_t add_offcuts(const frame_stock_plan *answer, size_t board, size_t from, frame_text *into) {
    size_t o = from;
    key(into, ",", "offcuts");
    frame_text_add(into, "[");
    for (; o < frame_stock_plan_offcut_count(answer); o++) {
        frame_stock_plan_offcut offcut;
        frame_stock_plan_offcut_at(answer, o, &offcut);
        if (offcut.board != (int32_t)board) break;
        number(into, o > from ? ",{" : "{", "length_in", offcut.length_in);
        number(into, ",", "from_in", offcut.from_in);
        if (offcut.strip >= 0) number(into, ",", "strip", offcut.strip);
        frame_text_add(into, offcut.kept ? ",\"kept\":true}" : ",\"kept\":false}");
    }
    frame_text_add(into, "]}");
    return o;
}

static void add_figures(const frame_stock_plan_out *out, frame_text *into) {
    number(into, "{", "cost", out->cost);
    number(into, ",", "net_cost", out->net_cost);
    number(into, ",", "bound", out->bound);
    frame_text_add(into, out->optimal ? ",\"optimal\":true" : ",\"optimal\":false");
    number(into, ",", "boards_used", out->boards_used);
    number(into, ",", "board_feet", out->board_feet);
    number(into, ",", "weight_lb", out->weight_lb);
    number(into, ",", "waste_share", out->waste_share);
    number(into, ",", "first_fit_cost", out->first_fit_cost);
    number(into, ",", "one_length_cost", out->one_length_cost);
    number(into, ",", "by_value_cost", out->by_value_cost);
}

frame_status frame_stock_plan_json(const frame_stock_plan *answer, frame_text *into) {
    frame_stock_plan_out out;
    frame_status status = frame_stock_need_text(answer, into);
    if (!status) status = frame_stock_plan_result(answer, &out);
    if (status) return status;
    size_t o = 0;
    add_figures(&out, into);
    frame_text_add(into, ",\"boards\":[");
    for (size_t b = 0; b < frame_stock_plan_board_count(answer); b++) {
        frame_stock_plan_board board;
        frame_stock_plan_board_at(answer, b, &board);
        text(into, b ? ",\n{" : "\n{", "name", board.name);
        text(into, ",", "size", frame_stock_size_text(board.size));
        number(into, ",", "stock", board.stock);
        number(into, ",", "length_in", board.length_in);
        number(into, ",", "price", board.price);
        add_pieces(answer, &board, into);
        o = add_offcuts(answer, b, o, into);
    }
    frame_text_add(into, "]}\n");
    return frame_text_state(into);
}
