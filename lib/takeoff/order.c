/* An order as a whole: its lists, its money, and what makes it impossible. */
#include "takeoff/order.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "base/number.h"
#include "takeoff_facts.h"

/* Money is weighed against boards for so many pieces at most; with more, money alone counts. */
enum { MOST_UNIT = 1 << 20 };
/* 127 * 64 * 10,000: millimetres and sixty-fourths are whole. */
static const double UNITS_PER_INCH = 81280000;

int64_t frame_order_length(double length_in) {
    return (int64_t)llround(length_in * UNITS_PER_INCH);
}

double frame_order_money(const frame_order *order, const frame_cut_plan *plan) {
    const double boards = order->job.money_unit > 1 ? (double)plan->boards : 0;
    const double money = ((double)plan->cost - boards) / (double)order->job.money_unit / order->money;
    return round(money * 1e6) / 1e6;
}

double frame_order_board_feet(frame_size size, double length_in) {
    const double thickness = size / 65536 / 16.0, width = size % 65536 / 16.0; /* nominal */
    return thickness * width * length_in / 144;
}

double frame_order_price(const frame_stock_length *stock) {
    switch (stock->price_by) {
        case FRAME_PRICE_BY_FOOT:
            return stock->price * stock->length_in / 12;
        case FRAME_PRICE_BY_BOARD_FOOT:
            return stock->price * frame_order_board_feet(stock->size, stock->length_in);
        case FRAME_PRICE_BY_METRE:
            return stock->price * stock->length_in * 0.0254; /* an inch is 25.4 mm by definition */
        default:
            return stock->price;
    }
}

int32_t frame_order_group_find(const frame_order *order, frame_size size, frame_species species, frame_grade grade) {
    for (size_t g = 0; g < order->groups.count; g++) {
        const frame_order_group *group = &FRAME_ITEM(frame_order_group, order->groups, g);
        if (group->size == size && group->species == species && group->grade == grade) return (int32_t)g;
    }
    return -1;
}

/* The finest unit of money any price needs, among the usual ones; for kept offcuts finer still, since their worth is
 * not priced but measured. */
static void choose_money(frame_order *order) {
    static const double units[] = {1, 100, 1000, 10000, 1e6};
    double dearest = 1;
    size_t u = 0;
    for (size_t s = 0; s < order->in->stock_count; s++) {
        frame_stock_length stock;
        frame_stock_length_item(order->in->stock, s, &stock);
        const double price = frame_order_price(&stock);
        dearest = fmax(dearest, price);
        while (u < 4 && fabs(price * units[u] - round(price * units[u])) > 1e-7) u++;
    }
    while (u < 4 && fabs(order->in->splice_price * units[u] - round(order->in->splice_price * units[u])) > 1e-7) u++;
    if (order->in->kept_foot_price > 0 && u < 3) u = 3;
    while (u && dearest * units[u] > 1e11) u--;
    order->money = units[u];
}

static void begin_lists(frame_order *order) {
    order->groups.item_size = sizeof(frame_order_group);
    order->claims.item_size = sizeof(frame_order_claim);
    order->items.item_size = sizeof(frame_cut_item);
    order->kinds.item_size = sizeof(frame_cut_kind);
    order->rooms.item_size = sizeof(frame_cut_room);
    order->places.item_size = sizeof(frame_order_room);
    order->supplies.item_size = sizeof(int64_t);
    order->choices.item_size = sizeof(frame_cut_choice);
    order->choice_parts.item_size = sizeof(frame_cut_part);
    order->set_wanted.item_size = sizeof(int32_t);
    order->set_pieces.item_size = sizeof(int32_t);
}

void frame_order_give(frame_order *order) {
    frame_array *lists[] = {&order->groups,       &order->claims,     &order->items,     &order->kinds,
                            &order->rooms,        &order->places,     &order->supplies,  &order->choices,
                            &order->choice_parts, &order->set_wanted, &order->set_pieces};
    for (size_t i = 0; i < sizeof lists / sizeof *lists; i++) frame_array_give(lists[i]);
}

/* Makes money count first and boards second; and the step in which money comes. */
static void weigh(frame_order *order) {
    frame_cut_kind *kinds = order->kinds.items;
    frame_cut_choice *choices = order->choices.items;
    int64_t unit = 1, step = 0;
    while (unit < MOST_UNIT && unit <= 32 * order->most_boards) unit *= 2;
    if (unit <= 32 * order->most_boards) unit = 1;
    for (size_t k = 0; k < order->kinds.count; k++) {
        step = frame_cut_common_divisor(kinds[k].cost, step);
        kinds[k].cost = kinds[k].cost * unit + (unit > 1);
    }
    for (size_t c = 0; c < order->choices.count; c++) {
        step = frame_cut_common_divisor(choices[c].cost, step);
        choices[c].cost *= unit;
    }
    order->job.money_unit = unit;
    order->job.most_boards = unit > 1 ? order->most_boards : 0;
    order->job.money_step = step > 0 && order->job.credit <= 0 ? step : 1;
    order->job.credit *= (double)unit;
}

/* Points the job at the lists, now that they no longer grow. */
static void finish_job(frame_order *order) {
    uint32_t rooms = 1;
    for (size_t k = 0; k < order->kinds.count; k++)
        if (FRAME_ITEM(frame_cut_kind, order->kinds, k).room_count > rooms)
            rooms = FRAME_ITEM(frame_cut_kind, order->kinds, k).room_count;
    order->job = (frame_cut_job){.items = order->items.items,
                                 .item_count = order->items.count,
                                 .kinds = order->kinds.items,
                                 .kind_count = order->kinds.count,
                                 .rooms = order->rooms.items,
                                 .room_count = order->rooms.count,
                                 .supplies = order->supplies.items,
                                 .supply_count = order->supplies.count,
                                 .choices = order->choices.items,
                                 .choice_count = order->choices.count,
                                 .choice_parts = order->choice_parts.items,
                                 .set_wanted = order->set_wanted.items,
                                 .set_count = order->set_wanted.count,
                                 .group_count = (int32_t)order->groups.count,
                                 .most_rooms = rooms,
                                 .credit = order->in->kept_foot_price / 12 / UNITS_PER_INCH * order->money};
}

static double longest_room(const frame_order *order, int32_t group) {
    double longest = -1;
    for (size_t r = 0; r < order->rooms.count; r++) {
        const frame_cut_room *room = &FRAME_ITEM(frame_cut_room, order->rooms, r);
        const frame_order_room *place = &FRAME_ITEM(frame_order_room, order->places, r);
        if (room->group == group && !(room->way & FRAME_CUT_KEPT))
            longest = fmax(longest, place->to_in - place->from_in);
    }
    return longest;
}

static int fits(const frame_order *order, const frame_order_claim *claim) {
    for (size_t r = 0; r < order->rooms.count; r++) {
        const frame_cut_room *room = &FRAME_ITEM(frame_cut_room, order->rooms, r);
        if (room->group != claim->group || room->size < claim->size) continue;
        if (!(room->way & FRAME_CUT_RIPPED) || claim->may_rip) return 1;
    }
    return 0;
}

static frame_status refuse_long(const frame_order *order, const frame_order_claim *claim) {
    const double longest = longest_room(order, claim->group);
    frame_stock_piece piece;
    char field[48], value[32], valid[128], most[32];
    frame_stock_piece_item(order->in->pieces, (size_t)claim->piece, &piece);
    snprintf(field, sizeof field, "pieces[%d].length_in", (int)claim->piece);
    frame_number_print(piece.length_in, 10, value, sizeof value);
    frame_number_print(longest, 10, most, sizeof most);
    if (longest < 0)
        return frame_fail(FRAME_IMPOSSIBLE, field, value, "stock of its size, species and grade",
                          "%s: no stock of its size, species and grade to cut %s from", field,
                          piece.name ? piece.name : "it");
    snprintf(valid, sizeof valid, "at most %s in, the longest stock less the end trim", most);
    return frame_fail(FRAME_IMPOSSIBLE, field, value, valid, "%s: %s in (%s) is longer than every stock; valid is %s",
                      field, value, piece.name ? piece.name : "a piece", valid);
}

static frame_status refuse_splices(const frame_order *order, int32_t piece) {
    char field[48], most[32], valid[96];
    int32_t group = 0;
    for (size_t c = 0; c < order->claims.count; c++)
        if (FRAME_ITEM(frame_order_claim, order->claims, c).piece == piece)
            group = FRAME_ITEM(frame_order_claim, order->claims, c).group;
    frame_number_print(fmax(longest_room(order, group), 0), 10, most, sizeof most);
    snprintf(field, sizeof field, "pieces[%d].splices_in", (int)piece);
    snprintf(valid, sizeof valid, "splices at most %s in apart, the longest stock less the end trim", most);
    return frame_fail(FRAME_IMPOSSIBLE, field, "", valid,
                      "%s: however it is spliced, a part fits no stock; valid is %s", field, valid);
}

/* Drops the choices with a part that fits nothing; every set must keep one. */
static frame_status check_choices(frame_order *order) {
    frame_cut_choice *choices = order->choices.items;
    const frame_cut_part *parts = order->choice_parts.items;
    size_t left = 0;
    for (size_t c = 0; c < order->choices.count; c++) {
        int all = 1;
        for (uint32_t p = 0; p < choices[c].part_count && all; p++)
            all = fits(order, &FRAME_ITEM(frame_order_claim, order->claims, parts[choices[c].part_first + p].item));
        if (all) choices[left++] = choices[c];
    }
    order->choices.count = left;
    for (size_t s = 0; s < order->set_wanted.count; s++) {
        size_t count = 0;
        for (size_t c = 0; c < left; c++) count += choices[c].set == (int32_t)s;
        if (!count) return refuse_splices(order, FRAME_ITEM(int32_t, order->set_pieces, s));
    }
    return FRAME_OK;
}

frame_status frame_order_make(frame_order *order, const frame_stock_plan_in *in, double share) {
    memset(order, 0, sizeof *order);
    order->in = in;
    order->share = share;
    order->rip_kerf_in = in->rip_kerf_in == FRAME_NOT_GIVEN ? in->kerf_in : in->rip_kerf_in;
    begin_lists(order);
    choose_money(order);
    frame_status status = frame_order_pieces(order);
    if (!status) status = frame_order_stock(order);
    for (size_t c = 0; !status && c < order->claims.count; c++) {
        const frame_order_claim *claim = &FRAME_ITEM(frame_order_claim, order->claims, c);
        if (claim->wanted && !fits(order, claim)) status = refuse_long(order, claim);
    }
    if (!status) status = check_choices(order);
    if (!status) status = frame_order_items(order);
    if (status) return status;
    finish_job(order);
    weigh(order);
    return FRAME_OK;
}
