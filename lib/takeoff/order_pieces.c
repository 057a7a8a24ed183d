/* The pieces of an order: grouped, spliced ones taken apart, equal lengths made one item. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/error.h"
#include "takeoff/order.h"
#include "takeoff/sharing.h"
#include "takeoff_facts.h"

enum { MOST_PIECES = 1000000, MOST_SPLICES = 8 };

static frame_status find_group(frame_order *order, const frame_stock_piece *piece, int32_t *group) {
    *group = frame_order_group_find(order, piece->size, piece->species, piece->grade);
    if (*group >= 0) return FRAME_OK;
    const frame_order_group made = {piece->size, piece->species, piece->grade, 0};
    *group = (int32_t)order->groups.count;
    return frame_array_push(&order->groups, &made) ? FRAME_OK : FRAME_NO_MEMORY;
}

static frame_status refuse_cut(int32_t piece, const frame_stock_piece *of) {
    char field[64];
    if (of->cut_across_in == FRAME_NOT_GIVEN) {
        snprintf(field, sizeof field, "pieces[%d].cut_across_in", (int)piece);
        return frame_fail(
            FRAME_REQUIRED, field, "", "the width of the board for mitres, its thickness for bevels",
            "%s: not given; sharing a cut needs the width of the board for mitres, its thickness for bevels", field);
    }
    snprintf(field, sizeof field, "pieces[%d].%s", (int)piece, of->left_cut_in != 0 ? "left_cut_in" : "right_cut_in");
    return frame_fail_number(FRAME_IMPOSSIBLE, field, of->left_cut_in != 0 ? of->left_cut_in : of->right_cut_in,
                             "cuts that leave some of each edge of the piece");
}

/* The length of the near edge (side 0) or the far edge, the long points being length_in apart. */
static double edge_length(const frame_stock_piece *of, int side) {
    const double left = side ? of->left_cut_in : -of->left_cut_in, right = side ? -of->right_cut_in : of->right_cut_in;
    return of->length_in - fmax(0, left) - fmax(0, right);
}

/* A piece whose cuts may be shared. Each end is less by its part of half of what sharing its cut would save: both ends
 * at a shared cut save the same, so with the whole of the halves no board holds more than is counted. */
static frame_status share(const frame_order *order, const frame_stock_piece *of, frame_order_claim *made) {
    if (!order->in->share_cuts || of->splice_count || (of->left_cut_in == 0 && of->right_cut_in == 0)) return FRAME_OK;
    if (of->cut_across_in == FRAME_NOT_GIVEN || edge_length(of, 0) <= 0 || edge_length(of, 1) <= 0)
        return refuse_cut(made->piece, of);
    const double kerf = order->in->kerf_in, saved = frame_share_saving(of->left_cut_in, of->cut_across_in, kerf) +
                                                    frame_share_saving(of->right_cut_in, of->cut_across_in, kerf);
    const double mirror = of->hand == FRAME_STOCK_HAND_RIGHT ? -1 : 1;
    made->left_cut_in = mirror * of->left_cut_in;
    made->right_cut_in = mirror * of->right_cut_in;
    made->handed = of->hand == FRAME_STOCK_HAND_LEFT || of->hand == FRAME_STOCK_HAND_RIGHT;
    made->across_in = of->cut_across_in;
    made->crowned = of->crowned;
    if (order->share <= 0) return FRAME_OK;
    made->own = made->piece + 1;
    made->size = frame_order_length(of->length_in + kerf - saved * order->share / 2) - 1;
    return FRAME_OK;
}

static frame_status claim(frame_order *order, const frame_stock_piece *of, int32_t piece, int32_t group, double from,
                          double to, int32_t wanted) {
    frame_order_claim made = {.size = frame_order_length(to - from + order->in->kerf_in),
                              .length_in = to - from,
                              .part_from_in = from,
                              .group = group,
                              .may_rip = of->may_rip,
                              .piece = piece,
                              .wanted = wanted};
    const frame_status status = share(order, of, &made);
    if (status) return status;
    return frame_array_push(&order->claims, &made) ? FRAME_OK : FRAME_NO_MEMORY;
}

static frame_status refuse_splice(int32_t piece, size_t splice, double value) {
    char field[64];
    snprintf(field, sizeof field, "pieces[%d].splices_in[%zu]", (int)piece, splice);
    return frame_fail_number(FRAME_OUT_OF_RANGE, field, value, "increasing order, within the piece");
}

/* One way to splice: bit i of chosen says whether splice i is made. Parts are claims of their own, shared by the ways.
 */
static frame_status add_choice(frame_order *order, size_t splices, uint32_t chosen, const int32_t *claims) {
    frame_cut_choice choice = {.set = (int32_t)order->set_wanted.count,
                               .part_first = (uint32_t)order->choice_parts.count};
    size_t from = 0;
    for (size_t to = 1; to <= splices + 1; to++) {
        if (to <= splices && !(chosen >> (to - 1) & 1u)) continue;
        const frame_cut_part part = {(uint32_t)claims[from * (splices + 2) + to], 0, 1};
        if (!frame_array_push(&order->choice_parts, &part)) return FRAME_NO_MEMORY;
        choice.part_count++;
        from = to;
    }
    choice.cost = (int64_t)llround(order->in->splice_price * order->money * (choice.part_count - 1));
    return frame_array_push(&order->choices, &choice) ? FRAME_OK : FRAME_NO_MEMORY;
}

static frame_status add_spliced(frame_order *order, const frame_stock_piece *of, int32_t piece, int32_t group) {
    double points[MOST_SPLICES + 2] = {0};
    int32_t claims[(MOST_SPLICES + 2) * (MOST_SPLICES + 2)];
    const size_t splices = of->splice_count;
    frame_status status = FRAME_OK;
    for (size_t s = 0; s < splices; s++) {
        points[s + 1] = of->splices_in[s];
        if (points[s + 1] <= points[s] || points[s + 1] >= of->length_in) return refuse_splice(piece, s, points[s + 1]);
    }
    points[splices + 1] = of->length_in;
    for (size_t from = 0; !status && from <= splices; from++)
        for (size_t to = from + 1; !status && to <= splices + 1; to++) {
            claims[from * (splices + 2) + to] = (int32_t)order->claims.count;
            status = claim(order, of, piece, group, points[from], points[to], 0);
        }
    for (uint32_t chosen = 0; !status && chosen < 1u << splices; chosen++)
        status = add_choice(order, splices, chosen, claims);
    if (!status && (!frame_array_push(&order->set_wanted, &of->count) || !frame_array_push(&order->set_pieces, &piece)))
        status = FRAME_NO_MEMORY;
    return status;
}

frame_status frame_order_pieces(frame_order *order) {
    double total = 0, longest = 0;
    for (size_t i = 0; i < order->in->piece_count; i++) {
        frame_stock_piece piece;
        int32_t group;
        frame_stock_piece_item(order->in->pieces, i, &piece);
        longest = fmax(longest, piece.length_in);
        total += (double)piece.count * (double)(piece.splice_count + 1);
        frame_status status = find_group(order, &piece, &group);
        if (!status && piece.splice_count) status = add_spliced(order, &piece, (int32_t)i, group);
        if (!status && !piece.splice_count)
            status = claim(order, &piece, (int32_t)i, group, 0, piece.length_in, piece.count);
        if (status) return status;
    }
    if (total > MOST_PIECES)
        return frame_fail_number(FRAME_TOO_LARGE, "pieces", total, "at most 1,000,000 pieces in all");
    if (order->in->kerf_in > longest)
        return frame_fail_number(FRAME_IMPOSSIBLE, "kerf_in", order->in->kerf_in, "less than the longest piece");
    order->most_boards = (int64_t)total;
    return FRAME_OK;
}

/* -- items -- */

static int order_of_claims(const void *a, const void *b) {
    const frame_order_claim *one = a, *two = b;
    if (one->group != two->group) return one->group < two->group ? -1 : 1;
    if (one->size != two->size) return one->size > two->size ? -1 : 1;
    if (one->may_rip != two->may_rip) return one->may_rip < two->may_rip ? -1 : 1;
    if (one->own != two->own) return one->own < two->own ? -1 : 1;
    if (one->piece != two->piece) return one->piece < two->piece ? -1 : 1;
    return (one->part_from_in > two->part_from_in) - (one->part_from_in < two->part_from_in);
}

/* The place of each claim after sorting, found by its own mark. */
static void renumber(frame_order *order, int32_t *place_of) {
    frame_order_claim *claims = order->claims.items;
    for (size_t c = 0; c < order->claims.count; c++) claims[c].item = (int32_t)c;
    qsort(claims, order->claims.count, sizeof *claims, order_of_claims);
    for (size_t c = 0; c < order->claims.count; c++) place_of[claims[c].item] = (int32_t)c;
}

/* Parts of choices named claims until now; they name items from here on. Most of an item: what is wanted and what
 * choices may ask for at most. */
static void settle_choices(frame_order *order, const int32_t *place_of) {
    frame_cut_item *items = order->items.items;
    const frame_order_claim *claims = order->claims.items;
    frame_cut_part *parts = order->choice_parts.items;
    for (size_t p = 0; p < order->choice_parts.count; p++) {
        parts[p].room = (uint32_t)place_of[parts[p].item];
        parts[p].item = (uint32_t)claims[parts[p].room].item;
    }
    for (size_t c = 0; c < order->choices.count; c++) {
        const frame_cut_choice *choice = &FRAME_ITEM(frame_cut_choice, order->choices, c);
        for (uint32_t p = 0; p < choice->part_count; p++) {
            frame_cut_item *item = &items[parts[choice->part_first + p].item];
            const int64_t most = item->most + (int64_t)FRAME_ITEM(int32_t, order->set_wanted, choice->set);
            item->most = most > MOST_PIECES ? MOST_PIECES : (int32_t)most;
        }
    }
}

frame_status frame_order_items(frame_order *order) {
    int32_t *place_of = frame_take(order->claims.count * sizeof *place_of);
    if (!place_of) return FRAME_NO_MEMORY;
    renumber(order, place_of);
    frame_order_claim *claims = order->claims.items;
    frame_status status = FRAME_OK;
    for (size_t c = 0; !status && c < order->claims.count; c++) {
        const int same = c && claims[c].group == claims[c - 1].group && claims[c].size == claims[c - 1].size &&
                         claims[c].may_rip == claims[c - 1].may_rip && claims[c].own == claims[c - 1].own;
        const frame_cut_item made = {claims[c].size, 0, claims[c].group, claims[c].may_rip, 0};
        if (!same && !frame_array_push(&order->items, &made)) status = FRAME_NO_MEMORY;
        if (status) break;
        claims[c].item = (int32_t)order->items.count - 1;
        frame_cut_item *item = &FRAME_ITEM(frame_cut_item, order->items, claims[c].item);
        item->wanted += claims[c].wanted;
        item->most += claims[c].wanted;
    }
    if (!status) settle_choices(order, place_of);
    frame_give(place_of);
    return status;
}
