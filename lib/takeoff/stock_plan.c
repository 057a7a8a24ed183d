/* The cutting plan: the best of several quick packings, written out board by board. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/number.h"
#include "takeoff/packing.h"
#include "takeoff_facts.h"
#include "working/calculation.h"

enum { BOARDS = 0, PIECES = 1, MOST_PIECES = 20000 };

/* One single piece, and the kind it is of. */
typedef struct single {
    double length;
    int32_t kind;
    int32_t spare;
} single;

typedef struct plan {
    single *singles;
    double *lengths;
    frame_packing_stock *stock;
    frame_packing_job job;
    frame_packing best, other;
} plan;

static int longer_first(const void *a, const void *b) {
    const single *one = a, *two = b;
    if (one->length != two->length) return one->length > two->length ? -1 : 1;
    return (one->kind > two->kind) - (one->kind < two->kind);
}

static frame_status count_pieces(const frame_stock_plan_in *in, size_t *total) {
    *total = 0;
    for (size_t i = 0; i < in->piece_count; i++) {
        frame_stock_piece piece;
        frame_stock_piece_item(in->pieces, i, &piece);
        *total += (size_t)piece.count;
    }
    return *total <= MOST_PIECES
               ? FRAME_OK
               : frame_fail_number(FRAME_TOO_LARGE, "pieces", (double)*total, "at most 20,000 pieces in all");
}

static frame_status read_stock(const frame_stock_plan_in *in, plan *made) {
    for (size_t s = 0; s < in->stock_count; s++) {
        frame_stock_length stock;
        frame_stock_length_item(in->stock, s, &stock);
        made->stock[s].length = stock.length_in - in->end_trim_in;
        made->stock[s].price = stock.price;
        made->stock[s].available = stock.available == FRAME_NOT_GIVEN_INT ? INT64_MAX : stock.available;
    }
    return FRAME_OK;
}

static frame_status refuse_long(const plan *made, const frame_stock_plan_in *in) {
    double longest = 0;
    for (size_t s = 0; s < in->stock_count; s++)
        if (made->stock[s].available > 0 && made->stock[s].length > longest) longest = made->stock[s].length;
    if (made->singles[0].length <= longest + 1e-6) return FRAME_OK;
    frame_stock_piece piece;
    char field[48], value[32], valid[96], most[32];
    frame_stock_piece_item(in->pieces, (size_t)made->singles[0].kind, &piece);
    snprintf(field, sizeof field, "pieces[%d].length_in", (int)made->singles[0].kind);
    frame_number_print(piece.length_in, 10, value, sizeof value);
    frame_number_print(longest, 10, most, sizeof most);
    snprintf(valid, sizeof valid, "at most %s in, the longest stock less the end trim", most);
    return frame_fail(FRAME_IMPOSSIBLE, field, value, valid, "%s: %s in (%s) is longer than every stock; valid is %s",
                      field, value, piece.name ? piece.name : "a piece", valid);
}

static frame_status read_job(const frame_stock_plan_in *in, plan *made) {
    size_t total;
    frame_status status = count_pieces(in, &total);
    if (status) return status;
    made->singles = frame_take_zeroed(total, sizeof *made->singles);
    made->lengths = frame_take_zeroed(total, sizeof *made->lengths);
    made->stock = frame_take_zeroed(in->stock_count, sizeof *made->stock);
    if (!made->singles || !made->lengths || !made->stock) return FRAME_NO_MEMORY;
    size_t at = 0;
    for (size_t i = 0; i < in->piece_count; i++) {
        frame_stock_piece piece;
        frame_stock_piece_item(in->pieces, i, &piece);
        for (int32_t n = 0; n < piece.count; n++) made->singles[at++] = (single){piece.length_in, (int32_t)i, 0};
    }
    qsort(made->singles, total, sizeof *made->singles, longer_first);
    for (size_t i = 0; i < total; i++) made->lengths[i] = made->singles[i].length;
    read_stock(in, made);
    made->job = (frame_packing_job){made->lengths, total, made->stock, in->stock_count, in->kerf_in};
    if (in->kerf_in > made->singles[0].length)
        return frame_fail_number(FRAME_IMPOSSIBLE, "kerf_in", in->kerf_in, "less than the longest piece");
    if ((status = refuse_long(made, in))) return status;
    if ((status = frame_packing_new(&made->best, &made->job))) return status;
    return frame_packing_new(&made->other, &made->job);
}

static void keep_cheaper(plan *made) {
    if (!made->other.found) return;
    const int cheaper =
        !made->best.found || made->other.cost < made->best.cost - 1e-9 ||
        (made->other.cost <= made->best.cost + 1e-9 && made->other.boards.count < made->best.boards.count);
    if (!cheaper) return;
    const frame_packing kept = made->best;
    made->best = made->other;
    made->other = kept;
}

static frame_status search(plan *made, frame_stock_plan_out *out) {
    size_t longest = 0;
    for (size_t s = 1; s < made->job.stock_count; s++)
        if (made->stock[s].length > made->stock[longest].length) longest = s;
    frame_status status = frame_pack_first_fit(&made->job, longest, 1, &made->other);
    if (!status && made->other.found) out->first_fit_cost = made->other.cost;
    if (!status) keep_cheaper(made);
    for (size_t s = 0; s < made->job.stock_count && !status; s++) {
        status = frame_pack_first_fit(&made->job, s, 0, &made->other);
        if (!status) keep_cheaper(made);
    }
    if (!status) status = frame_pack_by_value(&made->job, &made->other);
    if (!status) keep_cheaper(made);
    if (!status && !made->best.found)
        status = frame_fail(FRAME_IMPOSSIBLE, "stock", "", "more boards available",
                            "stock: the boards available do not suffice for all pieces");
    return status;
}

/* Writes one board and its pieces: longest first from the hooked end. */
static frame_status write_board(const frame_stock_plan_in *in, const plan *made, int32_t number, frame_answer *answer) {
    const frame_packing_board *packed = &FRAME_ITEM(frame_packing_board, made->best.boards, number);
    frame_stock_length stock;
    frame_stock_length_item(in->stock, (size_t)packed->stock, &stock);
    frame_stock_plan_board *board = frame_answer_add(answer, BOARDS);
    if (!board) return FRAME_NO_MEMORY;
    board->length_in = stock.length_in;
    board->price = stock.price;
    board->stock = packed->stock;
    board->piece_first = (uint32_t)answer->lists[PIECES].count;
    double at = in->end_trim_in;
    for (size_t i = 0; i < made->job.piece_count; i++) {
        if (made->best.board_of[i] != number) continue;
        frame_stock_piece kind;
        frame_stock_piece_item(in->pieces, (size_t)made->singles[i].kind, &kind);
        frame_stock_plan_piece *piece = frame_answer_add(answer, PIECES);
        if (!piece) return FRAME_NO_MEMORY;
        piece->length_in = kind.length_in;
        piece->from_in = at;
        piece->to_in = at + kind.length_in;
        piece->piece = made->singles[i].kind;
        piece->board = number;
        piece->name = frame_answer_text(answer, kind.name);
        at = piece->to_in + in->kerf_in;
    }
    board->piece_count = (uint32_t)answer->lists[PIECES].count - board->piece_first;
    board->offcut_in = fmax(stock.length_in - at, 0); /* the last kerf parts the offcut */
    return FRAME_OK;
}

static void sum_up(const plan *made, frame_answer *answer, frame_stock_plan_out *out) {
    out->piece_length_in = out->stock_length_in = out->offcut_length_in = 0;
    for (size_t i = 0; i < made->job.piece_count; i++) out->piece_length_in += made->lengths[i];
    for (size_t b = 0; b < answer->lists[BOARDS].count; b++) {
        const frame_stock_plan_board *board = &FRAME_ANSWER_ITEM(frame_stock_plan_board, answer, BOARDS, b);
        out->stock_length_in += board->length_in;
        out->offcut_length_in += board->offcut_in;
    }
    out->waste_share = 1 - out->piece_length_in / out->stock_length_in;
    out->boards_used = (int32_t)answer->lists[BOARDS].count;
    out->pieces_cut = (int32_t)made->job.piece_count;
    out->cost = made->best.cost;
    out->bound = fmin(frame_packing_bound(&made->job), out->cost);
    out->optimal = out->cost <= out->bound + 1e-9;
    out->known = FRAME_KNOWN_USER;
    out->cautions = FRAME_BIT(FRAME_STOCK_CAUTION_TRUE_STOCK);
    if (!out->optimal) out->cautions |= FRAME_BIT(FRAME_STOCK_CAUTION_NOT_PROVEN);
    out->not_checked = FRAME_BIT(FRAME_STOCK_UNCHECKED_ENDS);
}

static void record(const frame_stock_plan_in *in, const plan *made, const frame_stock_plan_out *out, frame_working *w) {
    FRAME_HEADING(w, "Cutting plan");
    FRAME_GIVEN(w, n, (double)made->job.piece_count, "", "pieces");
    FRAME_GIVEN(w, kerf, in->kerf_in, "in", "kerf");
    FRAME_GIVEN(w, L_pieces, out->piece_length_in, "in", "length of all pieces");
    FRAME_GIVEN(w, L_stock, out->stock_length_in, "in", "length of all boards");
    FRAME_STEP(w, waste, 1 - L_pieces / L_stock, "", "share of the stock not in a piece", "arithmetic");
    FRAME_GIVEN(w, bound, out->bound, "", "no plan costs less: each piece's share of the cheapest stock by length");
    FRAME_GIVEN(w, cost, out->cost, "", "price of the boards of this plan");
    FRAME_STEP(w, gap, cost - bound, "", "what a better plan could save at most", "arithmetic");
    (void)n, (void)kerf, (void)waste, (void)gap;
}

static frame_status solve_with(const frame_stock_plan_in *in, plan *made, frame_answer *answer,
                               frame_stock_plan_out *out, frame_working *w) {
    frame_status status = read_job(in, made);
    if (!status) status = search(made, out);
    for (size_t b = 0; !status && b < made->best.boards.count; b++) status = write_board(in, made, (int32_t)b, answer);
    if (status) return status;
    sum_up(made, answer, out);
    if (w) record(in, made, out, w);
    return FRAME_OK;
}

static frame_status solve(const frame_stock_plan_in *in, frame_answer *answer, frame_stock_plan_out *out,
                          frame_working *w) {
    plan made;
    memset(&made, 0, sizeof made);
    const frame_status status = solve_with(in, &made, answer, out, w);
    frame_packing_give(&made.best);
    frame_packing_give(&made.other);
    frame_give(made.stock);
    frame_give(made.lengths);
    frame_give(made.singles);
    return status;
}

FRAME_IMPLEMENT_ANSWER(stock_plan, solve);
