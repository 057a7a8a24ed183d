/* An independent look at a cutting plan: everything anew from what was asked and the plan's lists. */
#ifndef FRAME_TESTS_TAKEOFF_PLAN_CHECK_H
#define FRAME_TESTS_TAKEOFF_PLAN_CHECK_H

#include <check.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include <frame/frame.h>

enum { MOST = 64 };

typedef struct job {
    frame_stock_piece pieces[MOST];
    frame_stock_length stock[MOST];
    frame_stock_plan_in in;
} job;

static inline void begin(job *made) {
    memset(made, 0, sizeof *made);
    frame_stock_plan_in_init(&made->in);
    made->in.pieces = made->pieces;
    made->in.stock = made->stock;
}

static inline frame_stock_piece *want(job *made, double length, int32_t count) {
    frame_stock_piece *piece = &made->pieces[made->in.piece_count++];
    frame_stock_piece_init(piece);
    piece->length_in = length;
    piece->count = count;
    return piece;
}

static inline frame_stock_length *have(job *made, double length, double price, int32_t available) {
    frame_stock_length *stock = &made->stock[made->in.stock_count++];
    frame_stock_length_init(stock);
    stock->length_in = length;
    stock->price = price;
    stock->available = available;
    return stock;
}

static inline double given(double value, double otherwise) {
    return value == FRAME_NOT_GIVEN ? otherwise : value;
}

static inline double price_of(const frame_stock_length *stock) {
    switch (stock->price_by) {
        case FRAME_PRICE_BY_FOOT:
            return stock->price * stock->length_in / 12;
        case FRAME_PRICE_BY_METRE:
            return stock->price * stock->length_in * 25.4 / 1000;
        case FRAME_PRICE_BY_BOARD_FOOT:
            return stock->price * (stock->size / 65536 / 16.0) * (stock->size % 65536 / 16.0) * stock->length_in / 144;
        default:
            return stock->price;
    }
}

/* Where the near edge (y 0) or the far edge (y 1) of an end lies on the board. */
static inline double edge_from(const frame_stock_plan_piece *piece, int y) {
    const double run = piece->left_cut_in;
    return piece->from_in + (run > 0 ? run * y : -run * (1 - y));
}
static inline double edge_to(const frame_stock_plan_piece *piece, int y) {
    const double run = piece->right_cut_in;
    return piece->to_in - (run > 0 ? run * (1 - y) : -run * y);
}

/* Two pieces at a shared cut: along both edges the wood of one ends before the other's begins, by so much that the
 * kerf, measured square to the cut, is no less than the saw's. */
static inline void verify_shared(const job *made, const frame_stock_plan_piece *piece,
                                 const frame_stock_plan_piece *before, double kerf) {
    const double across = made->pieces[piece->piece].cut_across_in, run = piece->left_cut_in;
    ck_assert_double_eq(across, made->pieces[before->piece].cut_across_in);
    ck_assert_double_eq_tol(run, before->right_cut_in, 1e-9);
    for (int y = 0; y < 2; y++) {
        const double along = edge_from(piece, y) - edge_to(before, y);
        ck_assert_double_ge(along * across / sqrt(across * across + run * run), kerf - 1e-9);
        ck_assert_double_gt(edge_to(piece, y), edge_from(piece, y));
    }
}

/* A piece lies as it was asked for, or turned without mirroring it; a handed one with its face up, a crowned one as it
 * was asked for. The right hand is the mirror image of what was given. */
static inline void verify_turn(const frame_stock_piece *kind, const frame_stock_plan_piece *piece) {
    const double mirror = kind->splice_count ? 0 : kind->hand == FRAME_STOCK_HAND_RIGHT ? -1 : 1;
    const double left = mirror * given(kind->left_cut_in, 0), right = mirror * given(kind->right_cut_in, 0);
    const int handed = kind->hand == FRAME_STOCK_HAND_LEFT || kind->hand == FRAME_STOCK_HAND_RIGHT;
    const int as_is = piece->left_cut_in == left && piece->right_cut_in == right;
    const int rolled = piece->left_cut_in == -left && piece->right_cut_in == -right;
    const int ended = piece->left_cut_in == right && piece->right_cut_in == left;
    const int both = piece->left_cut_in == -right && piece->right_cut_in == -left;
    ck_assert(as_is || (kind->crowned != 1 && (ended || (!handed && (rolled || both)))));
}

/* A piece lies on sound wood, behind the piece before it on its strip, and is of the board's kind. */
static inline void verify_piece(const job *made, const frame_stock_plan_board *board,
                                const frame_stock_plan_piece *piece, const frame_stock_plan_piece *before) {
    const frame_stock_length *stock = &made->stock[board->stock];
    const frame_stock_piece *kind = &made->pieces[piece->piece];
    const double kerf = given(made->in.kerf_in, 0.125), trim = given(made->in.end_trim_in, 0);
    const int same_strip = before && before->strip == piece->strip;
    if (same_strip && piece->shares_cut)
        verify_shared(made, piece, before, kerf);
    else
        ck_assert_double_ge(piece->from_in, (same_strip ? before->to_in + kerf : trim) - 1e-6);
    if (made->in.share_cuts == 1) verify_turn(kind, piece);
    ck_assert_double_eq_tol(piece->to_in - piece->from_in, piece->length_in, 1e-9);
    ck_assert_double_le(piece->to_in, board->length_in + 2e-6);
    for (size_t d = 0; d + 1 < stock->defect_count; d += 2)
        ck_assert(piece->to_in <= stock->defects_from_to_in[d] + 2e-6 ||
                  piece->from_in >= stock->defects_from_to_in[d + 1] - 2e-6);
    if (piece->strip < 0) {
        ck_assert_int_eq(kind->size, stock->size);
        ck_assert_int_eq(kind->species, stock->species);
        ck_assert_int_eq(kind->grade, stock->grade);
    } else {
        ck_assert_int_eq(kind->may_rip, 1);
        ck_assert_int_eq(piece->non_structural, 1);
    }
}

/* Whole pieces of the length asked for; spliced ones part by part, joined where that was allowed. */
static inline void verify_counts(const job *made, const frame_stock_plan *plan) {
    double total[MOST] = {0};
    int32_t whole[MOST] = {0};
    for (size_t p = 0; p < frame_stock_plan_piece_count(plan); p++) {
        frame_stock_plan_piece piece;
        ck_assert_int_eq(frame_stock_plan_piece_at(plan, p, &piece), FRAME_OK);
        const frame_stock_piece *kind = &made->pieces[piece.piece];
        total[piece.piece] += piece.length_in;
        whole[piece.piece]++;
        if (!kind->splice_count) {
            ck_assert_double_eq_tol(piece.length_in, kind->length_in, 1e-9);
            continue;
        }
        int starts = piece.part_from_in == 0,
            ends = fabs(piece.part_from_in + piece.length_in - kind->length_in) < 1e-9;
        for (size_t s = 0; s < kind->splice_count; s++) {
            starts |= fabs(piece.part_from_in - kind->splices_in[s]) < 1e-9;
            ends |= fabs(piece.part_from_in + piece.length_in - kind->splices_in[s]) < 1e-9;
        }
        ck_assert(starts && ends);
    }
    for (size_t i = 0; i < made->in.piece_count; i++) {
        const int32_t count = made->pieces[i].count == FRAME_NOT_GIVEN_INT ? 1 : made->pieces[i].count;
        ck_assert_double_eq_tol(total[i], made->pieces[i].length_in * count, 1e-6);
        if (!made->pieces[i].splice_count) ck_assert_int_eq(whole[i], count);
    }
}

static inline void verify_strips(const job *made, const frame_stock_plan *plan) {
    const double kerf = given(made->in.rip_kerf_in, given(made->in.kerf_in, 0.125));
    double end = 0;
    int32_t board = -1;
    for (size_t s = 0; s < frame_stock_plan_strip_count(plan); s++) {
        frame_stock_plan_strip strip;
        frame_stock_plan_board on;
        double thickness, width;
        ck_assert_int_eq(frame_stock_plan_strip_at(plan, s, &strip), FRAME_OK);
        if (strip.board != board) end = -kerf;
        board = strip.board;
        ck_assert_double_ge(strip.from_in, end + kerf - 1e-9);
        end = strip.from_in + strip.width_in;
        ck_assert_int_eq(frame_stock_plan_board_at(plan, (size_t)board, &on), FRAME_OK);
        frame_section_in in;
        frame_section_out out;
        frame_section_in_init(&in);
        in.size = on.size;
        ck_assert_int_eq(frame_section(&in, &out, NULL), FRAME_OK);
        thickness = out.width_in, width = out.depth_in;
        ck_assert_double_lt(thickness, width);
        ck_assert_double_le(end, width + 1e-6);
    }
}

/* Whether two boards of one stock have their marks at the same places. */
static inline int marked_alike(const frame_stock_plan *plan, const frame_stock_plan_board *one,
                               const frame_stock_plan_board *other) {
    if (one->stock != other->stock || one->piece_count != other->piece_count) return 0;
    for (uint32_t p = 0; p < one->piece_count; p++) {
        frame_stock_plan_piece of_one, of_other;
        ck_assert_int_eq(frame_stock_plan_piece_at(plan, one->piece_first + p, &of_one), FRAME_OK);
        ck_assert_int_eq(frame_stock_plan_piece_at(plan, other->piece_first + p, &of_other), FRAME_OK);
        if (fabs(of_one.from_in - of_other.from_in) > 1e-9 || fabs(of_one.to_in - of_other.to_in) > 1e-9) return 0;
    }
    return 1;
}

/* Boards of one number are cut alike, of others not, and the numbers are as many as the patterns. Pieces of one length
 * that may be ripped and may not, or whose ends differ, may part boards that are marked alike. */
static inline void verify_patterns(const job *made, const frame_stock_plan *plan, int32_t patterns) {
    int32_t most = -1;
    int may_part = made->in.share_cuts == 1;
    for (size_t i = 0; i < made->in.piece_count; i++) may_part |= made->pieces[i].may_rip == 1;
    for (size_t b = 0; b < frame_stock_plan_board_count(plan); b++) {
        frame_stock_plan_board one, other;
        ck_assert_int_eq(frame_stock_plan_board_at(plan, b, &one), FRAME_OK);
        if (one.alike > most) most = one.alike;
        for (size_t c = 0; c < b; c++) {
            ck_assert_int_eq(frame_stock_plan_board_at(plan, c, &other), FRAME_OK);
            const int alike = marked_alike(plan, &one, &other);
            if (one.alike == other.alike) ck_assert(alike);
            if (one.alike != other.alike && !may_part) ck_assert(!alike);
        }
    }
    ck_assert_int_eq(most + 1, patterns);
}

static inline void verify(const job *made, const frame_stock_plan *plan) {
    int32_t used[MOST] = {0};
    double cost = 0, kept = 0;
    frame_stock_plan_out out;
    ck_assert_int_eq(frame_stock_plan_result(plan, &out), FRAME_OK);
    uint32_t next = 0;
    for (size_t b = 0; b < frame_stock_plan_board_count(plan); b++) {
        frame_stock_plan_board board;
        frame_stock_plan_piece piece[2];
        ck_assert_int_eq(frame_stock_plan_board_at(plan, b, &board), FRAME_OK);
        ck_assert_double_eq(board.length_in, made->stock[board.stock].length_in);
        ck_assert_uint_eq(board.piece_first, next);
        ck_assert_uint_gt(board.piece_count, 0);
        next += board.piece_count;
        used[board.stock]++;
        cost += price_of(&made->stock[board.stock]);
        for (uint32_t p = 0; p < board.piece_count; p++) {
            ck_assert_int_eq(frame_stock_plan_piece_at(plan, board.piece_first + p, &piece[p % 2]), FRAME_OK);
            ck_assert_int_eq(piece[p % 2].board, (int)b);
            verify_piece(made, &board, &piece[p % 2], p ? &piece[(p + 1) % 2] : NULL);
        }
    }
    for (size_t o = 0; o < frame_stock_plan_offcut_count(plan); o++) {
        frame_stock_plan_offcut offcut;
        ck_assert_int_eq(frame_stock_plan_offcut_at(plan, o, &offcut), FRAME_OK);
        kept += offcut.price;
        if (offcut.price > 0) ck_assert_double_ge(offcut.length_in, made->in.kept_offcut_in - 1e-6);
    }
    verify_counts(made, plan);
    verify_strips(made, plan);
    verify_patterns(made, plan, out.patterns);
    if (out.fewest_boards == 1) ck_assert_int_eq(out.optimal, 1);
    for (size_t s = 0; s < made->in.stock_count; s++)
        if (made->stock[s].available != FRAME_NOT_GIVEN_INT) ck_assert_int_le(used[s], made->stock[s].available);
    ck_assert_double_eq_tol(out.cost, cost, 2e-6);
    ck_assert_double_eq_tol(out.net_cost, cost + out.splices * given(made->in.splice_price, 0) - kept, 1e-3);
    ck_assert_double_le(out.bound, out.net_cost + 1e-9);
    const double simple[] = {out.first_fit_cost, out.one_length_cost, out.by_value_cost};
    for (size_t i = 0; out.ended != FRAME_STOCK_END_SIMPLE && i < 3; i++)
        if (simple[i] != FRAME_NOT_GIVEN) ck_assert_double_le(out.net_cost, simple[i] + 1e-6);
    ck_assert_int_eq(out.optimal, out.ended == FRAME_STOCK_END_PROVEN);
    if (out.optimal) ck_assert_double_ge(out.bound, out.net_cost - 1e-9);
}

#endif
