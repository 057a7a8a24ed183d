/* The shopping list and the figures of a plan. */
#include <math.h>

#include "takeoff/stock_answer.h"
#include "takeoff_facts.h"

static int32_t count_boards(const frame_answer *answer, size_t stock) {
    int32_t count = 0;
    for (size_t b = 0; b < answer->lists[FRAME_STOCK_BOARDS].count; b++)
        count += FRAME_ANSWER_ITEM(frame_stock_plan_board, answer, FRAME_STOCK_BOARDS, b).stock == (int32_t)stock;
    return count;
}

frame_status frame_stock_answer_purchases(const frame_order *order, frame_answer *answer) {
    for (size_t s = 0; s < order->in->stock_count; s++) {
        frame_stock_length stock;
        const int32_t count = count_boards(answer, s);
        if (!count) continue;
        frame_stock_length_item(order->in->stock, s, &stock);
        frame_stock_plan_purchase *line = frame_answer_add(answer, FRAME_STOCK_PURCHASES);
        if (!line) return FRAME_NO_MEMORY;
        line->name = frame_answer_text(answer, stock.name);
        line->length_in = stock.length_in;
        line->price = frame_order_price(&stock);
        line->total = line->price * count;
        if (stock.size != FRAME_NOT_GIVEN_INT)
            line->board_feet = frame_order_board_feet(stock.size, stock.length_in) * count;
        if (stock.weight_plf != FRAME_NOT_GIVEN) line->weight_lb = stock.weight_plf * stock.length_in / 12 * count;
        line->size = stock.size;
        line->species = stock.species;
        line->grade = stock.grade;
        line->count = count;
        line->stock = (int32_t)s;
    }
    return FRAME_OK;
}

static void add_given(double *sum, double value) {
    if (value != FRAME_NOT_GIVEN) *sum += value;
}

static void sum_purchases(const frame_answer *answer, frame_stock_plan_out *out) {
    out->cost = out->board_feet = out->weight_lb = 0;
    for (size_t l = 0; l < answer->lists[FRAME_STOCK_PURCHASES].count; l++) {
        const frame_stock_plan_purchase *line =
            &FRAME_ANSWER_ITEM(frame_stock_plan_purchase, answer, FRAME_STOCK_PURCHASES, l);
        out->cost += line->total;
        add_given(&out->board_feet, line->board_feet);
        add_given(&out->weight_lb, line->weight_lb);
    }
}

static void sum_boards(const frame_answer *answer, frame_stock_plan_out *out) {
    out->piece_length_in = out->stock_length_in = out->offcut_length_in = out->offcut_price = 0;
    out->patterns = 0;
    for (size_t b = 0; b < answer->lists[FRAME_STOCK_BOARDS].count; b++) {
        const frame_stock_plan_board *board = &FRAME_ANSWER_ITEM(frame_stock_plan_board, answer, FRAME_STOCK_BOARDS, b);
        out->stock_length_in += board->length_in;
        if (board->ripped) out->cautions |= FRAME_BIT(FRAME_STOCK_CAUTION_RIPPED);
        if (board->alike >= out->patterns) out->patterns = board->alike + 1;
    }
    for (size_t o = 0; o < answer->lists[FRAME_STOCK_OFFCUTS].count; o++) {
        const frame_stock_plan_offcut *offcut =
            &FRAME_ANSWER_ITEM(frame_stock_plan_offcut, answer, FRAME_STOCK_OFFCUTS, o);
        out->offcut_length_in += offcut->length_in;
        out->offcut_price += offcut->price;
    }
    for (size_t p = 0; p < answer->lists[FRAME_STOCK_PIECES].count; p++)
        out->piece_length_in += FRAME_ANSWER_ITEM(frame_stock_plan_piece, answer, FRAME_STOCK_PIECES, p).length_in;
}

static void sum_shared(const frame_order *order, const frame_answer *answer, frame_stock_plan_out *out) {
    out->shared_cuts = 0;
    out->shared_cut_in = 0;
    for (size_t p = 1; p < answer->lists[FRAME_STOCK_PIECES].count; p++) {
        const frame_stock_plan_piece *piece = &FRAME_ANSWER_ITEM(frame_stock_plan_piece, answer, FRAME_STOCK_PIECES, p);
        if (!piece->shares_cut) continue;
        out->shared_cuts++;
        out->shared_cut_in += piece[-1].to_in + order->in->kerf_in - piece->from_in;
    }
}

/* The length of an item's pieces: of one that counts on shared cuts its size says less. */
static double item_length(const frame_order *order, uint32_t item) {
    for (size_t c = 0; order->share > 0 && c < order->claims.count; c++) {
        const frame_order_claim *claim = &FRAME_ITEM(frame_order_claim, order->claims, c);
        if (claim->item == (int32_t)item) return claim->length_in;
    }
    return (double)order->job.items[item].size / (double)frame_order_length(1) - order->in->kerf_in;
}

/* The share of what is bought that is in no piece: by length, each length by the width of its board or strip where it
 * was ripped. */
static double waste_share(const frame_order *order, const frame_cut_plan *plan) {
    double bought = 0, used = 0;
    for (size_t p = 0; p < plan->patterns.count; p++) {
        const frame_cut_pattern *pattern = &FRAME_ITEM(frame_cut_pattern, plan->patterns, p);
        const frame_cut_kind *kind = &order->job.kinds[pattern->kind];
        const frame_order_room *last =
            &FRAME_ITEM(frame_order_room, order->places, kind->room_first + kind->room_count - 1);
        const double across = last->strip >= 0 ? last->edge_in + last->width_in : 1;
        frame_stock_length stock;
        frame_stock_length_item(order->in->stock, (size_t)kind->supply, &stock);
        bought += stock.length_in * pattern->times;
        for (uint32_t q = 0; q < pattern->part_count; q++) {
            const frame_cut_part *part = &FRAME_ITEM(frame_cut_part, plan->parts, pattern->part_first + q);
            const frame_order_room *place = &FRAME_ITEM(frame_order_room, order->places, kind->room_first + part->room);
            const double width = place->strip >= 0 ? place->width_in : 1;
            used += item_length(order, part->item) * part->count * width / across * pattern->times;
        }
    }
    return bought > 0 ? 1 - used / bought : 0;
}

static int32_t count_splices(const frame_order *order, const frame_cut_plan *plan) {
    int32_t splices = 0;
    for (size_t c = 0; c < plan->chosen.count; c++)
        splices += FRAME_ITEM(int32_t, plan->chosen, c) * ((int32_t)order->job.choices[c].part_count - 1);
    return splices;
}

void frame_stock_answer_figures(const frame_order *order, const frame_cut_plan *plan, const frame_answer *answer,
                                frame_stock_plan_out *out) {
    sum_purchases(answer, out);
    sum_boards(answer, out);
    out->waste_share = waste_share(order, plan);
    out->splices = count_splices(order, plan);
    out->splice_price = out->splices * order->in->splice_price;
    out->cost = round(out->cost * 1e6) / 1e6; /* sums of cents */
    out->net_cost = out->cost + out->splice_price - out->offcut_price;
    out->boards_used = (int32_t)answer->lists[FRAME_STOCK_BOARDS].count;
    int32_t whole = 0;
    for (size_t i = 0; i < order->in->piece_count; i++) {
        frame_stock_piece piece;
        frame_stock_piece_item(order->in->pieces, i, &piece);
        whole += piece.count;
    }
    out->pieces_cut = whole;
    if (out->splices) out->cautions |= FRAME_BIT(FRAME_STOCK_CAUTION_SPLICED);
    out->cautions |= FRAME_BIT(FRAME_STOCK_CAUTION_TRUE_STOCK);
    sum_shared(order, answer, out);
    out->not_checked = order->in->share_cuts ? 0 : FRAME_BIT(FRAME_STOCK_UNCHECKED_ENDS);
    out->known = FRAME_KNOWN_USER;
}
