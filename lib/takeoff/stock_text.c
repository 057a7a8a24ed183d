/* A plan for the saw and for the yard, as text. */
#include <stdio.h>

#include "base/error.h"
#include "takeoff/stock_write.h"

const char *frame_stock_size_text(frame_size size) {
    return size == FRAME_NOT_GIVEN_INT ? "" : frame_size_name(size);
}

frame_status frame_stock_need_text(const frame_stock_plan *answer, const frame_text *into) {
    if (!answer) return frame_fail(FRAME_REQUIRED, "answer", "NULL", "a plan", "answer: NULL is no plan");
    if (!into) return frame_fail(FRAME_REQUIRED, "into", "NULL", "a text", "into: NULL is no text");
    return FRAME_OK;
}

size_t frame_stock_alike(const frame_stock_plan *answer, size_t from, frame_stock_plan_board *board) {
    frame_stock_plan_board next;
    size_t to = from + 1;
    frame_stock_plan_board_at(answer, from, board);
    while (to < frame_stock_plan_board_count(answer) && !frame_stock_plan_board_at(answer, to, &next) &&
           next.alike == board->alike)
        to++;
    return to;
}

/* -- for the saw -- */

/* Ripped boards: each strip begins with its width. */
static void add_strip(const frame_stock_plan *answer, size_t board, int32_t strip, frame_text *into) {
    for (size_t s = 0; s < frame_stock_plan_strip_count(answer); s++) {
        frame_stock_plan_strip of;
        frame_stock_plan_strip_at(answer, s, &of);
        if (of.board != (int32_t)board || of.strip != strip) continue;
        frame_text_addf(into, "%s[strip %d, ", strip ? "; " : "", (int)strip + 1);
        frame_tape_add(into, of.width_in, 16);
        frame_text_add(into, " wide] ");
    }
}

static void add_pieces(const frame_stock_plan *answer, size_t number, const frame_stock_plan_board *board,
                       frame_text *into) {
    int32_t strip = -1;
    for (uint32_t p = 0; p < board->piece_count; p++) {
        frame_stock_plan_piece piece;
        frame_stock_plan_piece_at(answer, board->piece_first + p, &piece);
        if (piece.strip != strip)
            add_strip(answer, number, strip = piece.strip, into);
        else if (p)
            frame_text_add(into, " | ");
        frame_tape_add(into, piece.to_in, 16);
        frame_text_addf(into, " %s", piece.name && *piece.name ? piece.name : "piece");
        frame_text_add(into, " (");
        frame_tape_add(into, piece.length_in, 16);
        frame_text_add(into, piece.non_structural ? ", non-structural)" : ")");
    }
}

static void add_left(const frame_stock_plan *answer, size_t board, frame_text *into) {
    int any = 0;
    for (size_t o = 0; o < frame_stock_plan_offcut_count(answer); o++) {
        frame_stock_plan_offcut offcut;
        frame_stock_plan_offcut_at(answer, o, &offcut);
        if (offcut.board != (int32_t)board) continue;
        frame_text_add(into, any++ ? ", " : "; left ");
        frame_tape_add(into, offcut.length_in, 16);
        if (offcut.kept) frame_text_add(into, " keep");
    }
}

frame_status frame_stock_plan_cuts(const frame_stock_plan *answer, frame_text *into) {
    frame_status status = frame_stock_need_text(answer, into);
    if (status) return status;
    frame_text_add(into, "Hook the tape at one end; strike each mark and cut on its far side.\n");
    for (size_t b = 0; b < frame_stock_plan_board_count(answer);) {
        frame_stock_plan_board board;
        const size_t next = frame_stock_alike(answer, b, &board);
        if (next == b + 1)
            frame_text_addf(into, "board %zu  ", b + 1);
        else
            frame_text_addf(into, "boards %zu to %zu  ", b + 1, next);
        frame_text_pad(into, 18);
        frame_tape_add(into, board.length_in, 16);
        frame_text_addf(into, " %s%s", frame_stock_size_text(board.size), board.ripped ? " ripped" : "");
        frame_text_add(into, ": ");
        add_pieces(answer, b, &board, into);
        add_left(answer, b, into);
        frame_text_add(into, "\n");
        b = next;
    }
    return frame_text_state(into);
}

/* -- for the yard -- */

static int same_section(const frame_stock_plan_purchase *one, const frame_stock_plan_purchase *other) {
    return one->size == other->size && one->species == other->species && one->grade == other->grade;
}

static void add_section(const frame_stock_plan_purchase *of, frame_text *into) {
    frame_text_add(into, of->size == FRAME_NOT_GIVEN_INT ? "Boards" : frame_size_name(of->size));
    if (of->species != FRAME_NOT_GIVEN_INT) frame_text_addf(into, " %s", frame_species_name(of->species));
    if (of->grade != FRAME_NOT_GIVEN_INT) frame_text_addf(into, " %s", frame_grade_name(of->grade));
    frame_text_add(into, "\n");
}

static void add_figures(double board_feet, double weight_lb, double total, frame_text *into) {
    if (board_feet != FRAME_NOT_GIVEN) {
        frame_text_add(into, "  ");
        frame_text_add_fixed(into, board_feet, 1);
        frame_text_add(into, " board feet");
    }
    if (weight_lb != FRAME_NOT_GIVEN) {
        frame_text_add(into, "  ");
        frame_text_add_fixed(into, weight_lb, 0);
        frame_text_add(into, " lb");
    }
    frame_text_add(into, "  ");
    frame_text_add_fixed(into, total, 2);
    frame_text_add(into, "\n");
}

static void add_purchase(const frame_stock_plan_purchase *of, frame_text *into) {
    frame_text_addf(into, "  %d x ", (int)of->count);
    frame_tape_add(into, of->length_in, 16);
    if (of->name && *of->name) frame_text_addf(into, " %s", of->name);
    frame_text_add(into, " at ");
    frame_text_add_fixed(into, of->price, 2);
    add_figures(of->board_feet, of->weight_lb, of->total, into);
}

/* Each section once, its lengths under it in the order of the stock. */
static void add_sections(const frame_stock_plan *answer, frame_text *into) {
    const size_t count = frame_stock_plan_purchase_count(answer);
    for (size_t l = 0; l < count; l++) {
        frame_stock_plan_purchase line, other;
        int seen = 0;
        frame_stock_plan_purchase_at(answer, l, &line);
        for (size_t m = 0; m < l && !seen; m++) {
            frame_stock_plan_purchase_at(answer, m, &other);
            seen = same_section(&line, &other);
        }
        if (seen) continue;
        add_section(&line, into);
        for (size_t m = l; m < count; m++) {
            frame_stock_plan_purchase_at(answer, m, &other);
            if (same_section(&line, &other)) add_purchase(&other, into);
        }
    }
}

static void add_other_way(const char *what, double cost, frame_text *into) {
    if (cost == FRAME_NOT_GIVEN) return;
    frame_text_addf(into, "  %s: ", what);
    frame_text_add_fixed(into, cost, 2);
    frame_text_add(into, "\n");
}

frame_status frame_stock_plan_shopping(const frame_stock_plan *answer, frame_text *into) {
    frame_stock_plan_out out;
    frame_status status = frame_stock_need_text(answer, into);
    if (!status) status = frame_stock_plan_result(answer, &out);
    if (status) return status;
    add_sections(answer, into);
    frame_text_addf(into, "In all: %d boards", (int)out.boards_used);
    add_figures(out.board_feet > 0 ? out.board_feet : FRAME_NOT_GIVEN,
                out.weight_lb > 0 ? out.weight_lb : FRAME_NOT_GIVEN, out.cost, into);
    frame_text_add(into, "Not in a piece: ");
    frame_text_add_fixed(into, 100 * out.waste_share, 1);
    frame_text_add(into, out.optimal ? " %. No plan costs less.\n" : " %. No plan costs less than ");
    if (!out.optimal) frame_text_add_fixed(into, out.bound, 2), frame_text_add(into, ".\n");
    frame_text_add(into, "What the usual ways would have cost:\n");
    add_other_way("longest stock, first fit", out.first_fit_cost, into);
    add_other_way("one stock length", out.one_length_cost, into);
    add_other_way("board by board", out.by_value_cost, into);
    return frame_text_state(into);
}
