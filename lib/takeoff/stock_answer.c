/* Writing a plan out board by board. */
#include "takeoff/stock_answer.h"

#include <math.h>
#include <string.h>

#include "takeoff/sharing.h"
#include "takeoff_facts.h"

/* Offcuts shorter than this are slivers. */
static const double SLIVER_IN = 0.0625;
/* What a board may be too short by. */
static const double ROUNDING_IN = 1e-6;

typedef struct writing {
    const frame_order *order;
    const frame_cut_plan *plan;
    frame_answer *answer;
    int32_t *left;     /* of each claim: pieces not yet written */
    int32_t *used;     /* of each claim: pieces written */
    frame_array lying; /* frame_share_piece: of one room, then space to lay them in */
    int fits, spare;
} writing;

/* -- whose piece it is -- */

static const frame_order_claim *claim_at(const writing *of, size_t claim) {
    return &FRAME_ITEM(frame_order_claim, of->order->claims, claim);
}

static int32_t times_chosen(const writing *of, size_t choice) {
    return choice < of->plan->chosen.count ? FRAME_ITEM(int32_t, of->plan->chosen, choice) : 0;
}

static int choice_has(const frame_cut_job *job, size_t choice, size_t claim) {
    for (uint32_t p = 0; p < job->choices[choice].part_count; p++)
        if (job->choice_parts[job->choices[choice].part_first + p].room == claim) return 1;
    return 0;
}

static void count_claims(writing *of) {
    const frame_cut_job *job = &of->order->job;
    for (size_t c = 0; c < of->order->claims.count; c++) of->left[c] = claim_at(of, c)->wanted;
    for (size_t c = 0; c < job->choice_count; c++)
        for (uint32_t p = 0; p < job->choices[c].part_count; p++)
            of->left[job->choice_parts[job->choices[c].part_first + p].room] += times_chosen(of, c);
}

/* The number of a spliced piece to which the next part of a claim belongs: pieces are numbered choice by choice. */
static int32_t spliced_copy(const writing *of, size_t claim) {
    const frame_cut_job *job = &of->order->job;
    int32_t nth = of->used[claim], base = 0, set = -1;
    for (size_t c = 0; c < job->choice_count; c++) {
        if (job->choices[c].set != set) base = 0, set = job->choices[c].set;
        if (choice_has(job, c, claim)) {
            if (nth < times_chosen(of, c)) return base + nth;
            nth -= times_chosen(of, c);
        }
        base += times_chosen(of, c);
    }
    return 0;
}

/* The next claim on an item that has pieces left. */
static size_t next_claim(const writing *of, uint32_t item) {
    for (size_t c = 0; c < of->order->claims.count; c++)
        if (claim_at(of, c)->item == (int32_t)item && of->left[c] > 0) return c;
    return 0;
}

/* -- one board -- */

/* Whose pieces lie in a room. */
static frame_status take_pieces(writing *of, const frame_cut_part *part) {
    for (uint32_t n = 0; n < part->count; n++) {
        const size_t claim = next_claim(of, part->item);
        const frame_order_claim *from = claim_at(of, claim);
        frame_stock_piece kind;
        frame_stock_piece_item(of->order->in->pieces, (size_t)from->piece, &kind);
        const int32_t copy = kind.splice_count ? spliced_copy(of, claim) : of->used[claim];
        const frame_share_piece taken = {from->left_cut_in,
                                         from->right_cut_in,
                                         from->across_in,
                                         from->crowned,
                                         from->handed,
                                         (int32_t)claim,
                                         copy,
                                         0,
                                         0};
        of->left[claim]--;
        of->used[claim]++;
        if (!frame_array_push(&of->lying, &taken)) return FRAME_NO_MEMORY;
    }
    return FRAME_OK;
}

static frame_status write_piece(writing *of, const frame_share_piece *lying, const frame_share_piece *before,
                                const frame_order_room *place, int32_t board, double *at) {
    const frame_order_claim *from = claim_at(of, (size_t)lying->claim);
    const double saved = before ? frame_share_between(before, lying, of->order->in->kerf_in) : 0;
    frame_stock_piece kind;
    *at -= saved;
    frame_stock_piece_item(of->order->in->pieces, (size_t)from->piece, &kind);
    frame_stock_plan_piece *piece = frame_answer_add(of->answer, FRAME_STOCK_PIECES);
    if (!piece) return FRAME_NO_MEMORY;
    piece->length_in = from->length_in;
    piece->from_in = *at;
    piece->to_in = *at + from->length_in;
    piece->piece = from->piece;
    piece->board = board;
    piece->name = frame_answer_text(of->answer, kind.name);
    piece->part_from_in = from->part_from_in;
    piece->copy = lying->copy;
    piece->strip = place->strip;
    piece->non_structural = place->strip >= 0;
    piece->shares_cut = saved > 0;
    piece->left_cut_in = lying->left_in;
    piece->right_cut_in = lying->right_in;
    *at = piece->to_in + of->order->in->kerf_in;
    return FRAME_OK;
}

static frame_status write_offcut(writing *of, const frame_order_room *place, int32_t board, double from,
                                 double worth_per_in, frame_size size) {
    const double length = place->to_in - from, kept = of->order->in->kept_offcut_in;
    if (length < SLIVER_IN) return FRAME_OK;
    frame_stock_plan_offcut *offcut = frame_answer_add(of->answer, FRAME_STOCK_OFFCUTS);
    if (!offcut) return FRAME_NO_MEMORY;
    offcut->length_in = length;
    offcut->from_in = from;
    offcut->width_in = place->width_in;
    offcut->size = place->strip >= 0 ? place->strip_size : size;
    offcut->board = board;
    offcut->strip = place->strip;
    offcut->kept = kept != FRAME_NOT_GIVEN && length >= kept - 1e-6;
    offcut->price = offcut->kept ? length * worth_per_in : 0;
    return FRAME_OK;
}

static frame_status write_strip(writing *of, const frame_order_room *place, int32_t board) {
    frame_stock_plan_strip *strip = frame_answer_add(of->answer, FRAME_STOCK_STRIPS);
    if (!strip) return FRAME_NO_MEMORY;
    strip->width_in = place->width_in;
    strip->from_in = place->edge_in;
    strip->board = board;
    strip->strip = place->strip;
    return FRAME_OK;
}

/* The pieces of a room, laid so that they share cuts. */
static frame_status write_pieces(writing *of, const frame_order_room *place, int32_t board, double *at) {
    const size_t count = of->lying.count;
    const frame_share_piece blank = {0};
    frame_status status = FRAME_OK;
    if (of->order->in->share_cuts) {
        for (size_t n = 0; n < 2 * count; n++)
            if (!frame_array_push(&of->lying, &blank)) return FRAME_NO_MEMORY;
        frame_share_piece *pieces = of->lying.items;
        frame_share_lay(pieces, count, of->order->in->kerf_in, pieces + count);
    }
    const frame_share_piece *pieces = of->lying.items;
    for (size_t n = 0; !status && n < count; n++)
        status = write_piece(of, &pieces[n], n ? &pieces[n - 1] : NULL, place, board, at);
    if (count && *at - of->order->in->kerf_in > place->to_in + 2 * ROUNDING_IN) of->fits = 0;
    of->lying.count = 0;
    return status;
}

/* What is left of a bought board is worth something, when it is one whole stick; a strip is not what was bought by the
 * foot, and the search counts on nothing for it. */
static double worth_per_in(const writing *of, const frame_order_room *place, const frame_stock_length *stock) {
    return place->strip < 0 && stock->price > 0 && stock->defect_count == 0 ? of->order->in->kept_foot_price / 12 : 0;
}

/* The pieces of a board, room by room, and what is left of each; *longest: of what is left. */
static frame_status write_rooms(writing *of, const frame_cut_pattern *pattern, int32_t board,
                                const frame_stock_length *stock, double *longest) {
    const frame_cut_kind *kind = &of->order->job.kinds[pattern->kind];
    const frame_cut_part *parts = &FRAME_ITEM(frame_cut_part, of->plan->parts, pattern->part_first);
    frame_status status = FRAME_OK;
    uint32_t p = 0;
    *longest = 0;
    for (uint32_t r = 0; !status && r < kind->room_count; r++) {
        const frame_order_room *place = &FRAME_ITEM(frame_order_room, of->order->places, kind->room_first + r);
        double at = place->from_in;
        if (place->strip >= 0) status = write_strip(of, place, board);
        for (; !status && p < pattern->part_count && parts[p].room == r; p++) status = take_pieces(of, &parts[p]);
        if (!status) status = write_pieces(of, place, board, &at);
        if (!status) status = write_offcut(of, place, board, at, worth_per_in(of, place, stock), stock->size);
        *longest = fmax(*longest, place->to_in - at);
    }
    return status;
}

static frame_status write_board(writing *of, const frame_cut_pattern *pattern, int32_t alike) {
    const size_t number = of->answer->lists[FRAME_STOCK_BOARDS].count;
    const frame_cut_kind *kind = &of->order->job.kinds[pattern->kind];
    frame_stock_length stock;
    double longest;
    frame_stock_length_item(of->order->in->stock, (size_t)kind->supply, &stock);
    frame_stock_plan_board *board = frame_answer_add(of->answer, FRAME_STOCK_BOARDS);
    if (!board) return FRAME_NO_MEMORY;
    board->length_in = stock.length_in;
    board->price = frame_order_price(&stock);
    board->stock = kind->supply;
    board->piece_first = (uint32_t)of->answer->lists[FRAME_STOCK_PIECES].count;
    board->name = frame_answer_text(of->answer, stock.name);
    board->size = stock.size;
    board->alike = alike;
    board->ripped = FRAME_ITEM(frame_order_room, of->order->places, kind->room_first).strip >= 0;
    const frame_status status = write_rooms(of, pattern, (int32_t)number, &stock, &longest);
    board->piece_count = (uint32_t)of->answer->lists[FRAME_STOCK_PIECES].count - board->piece_first;
    board->offcut_in = longest; /* the last kerf parts it */
    return status;
}

/* Whether the last two boards are cut alike: pieces of one length may have ends of several kinds. */
static int like_the_last(const writing *of) {
    const frame_stock_plan_board *two = &FRAME_ANSWER_ITEM(frame_stock_plan_board, of->answer, FRAME_STOCK_BOARDS,
                                                           of->answer->lists[FRAME_STOCK_BOARDS].count - 2);
    if (two[0].piece_count != two[1].piece_count) return 0;
    for (uint32_t p = 0; p < two[0].piece_count; p++) {
        const frame_stock_plan_piece *one =
            &FRAME_ANSWER_ITEM(frame_stock_plan_piece, of->answer, FRAME_STOCK_PIECES, two[0].piece_first + p);
        const frame_stock_plan_piece *other = one + two[0].piece_count;
        if (one->from_in != other->from_in || one->to_in != other->to_in || one->left_cut_in != other->left_cut_in ||
            one->right_cut_in != other->right_cut_in)
            return 0;
    }
    return 1;
}

static frame_status write_boards(writing *of, const frame_cut_pattern *pattern, int32_t *alike) {
    frame_status status = FRAME_OK;
    for (int32_t n = 0; !status && n < pattern->times; n++) {
        status = write_board(of, pattern, *alike);
        if (status || !n || !of->order->in->share_cuts || like_the_last(of)) continue;
        const size_t last = of->answer->lists[FRAME_STOCK_BOARDS].count - 1;
        FRAME_ANSWER_ITEM(frame_stock_plan_board, of->answer, FRAME_STOCK_BOARDS, last).alike = ++*alike;
    }
    ++*alike;
    return status;
}

frame_status frame_stock_answer(const frame_order *order, const frame_cut_plan *plan, frame_answer *answer, int *fits) {
    writing of = {.order = order, .plan = plan, .answer = answer, .fits = 1};
    of.lying.item_size = sizeof(frame_share_piece);
    of.left = frame_take_zeroed(order->claims.count, sizeof *of.left);
    of.used = frame_take_zeroed(order->claims.count, sizeof *of.used);
    frame_status status = of.left && of.used ? FRAME_OK : FRAME_NO_MEMORY;
    int32_t alike = 0;
    if (!status) count_claims(&of);
    for (size_t p = 0; !status && p < plan->patterns.count; p++) {
        const frame_cut_pattern *pattern = &FRAME_ITEM(frame_cut_pattern, plan->patterns, p);
        status = write_boards(&of, pattern, &alike);
    }
    frame_give(of.left);
    frame_give(of.used);
    frame_array_give(&of.lying);
    *fits = of.fits;
    return status ? status : frame_stock_answer_purchases(order, answer);
}
