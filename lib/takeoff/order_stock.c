/* The stock of an order: kinds of boards and the rooms on them. */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "takeoff/order.h"
#include "takeoff_facts.h"

enum { MOST_DEFECTS = 100 };
/* Lengths may come out of a calculation: so much too long still fits. */
static const double ROUNDING_IN = 1e-6;

frame_status frame_order_add_room(frame_order *order, int64_t size, int32_t group, int32_t way,
                                  const frame_order_room *place) {
    const frame_cut_room room = {size, group, way};
    return frame_array_push(&order->rooms, &room) && frame_array_push(&order->places, place) ? FRAME_OK
                                                                                             : FRAME_NO_MEMORY;
}

frame_status frame_order_add_kind(frame_order *order, size_t stock, double price, size_t first_room) {
    const frame_cut_kind kind = {(int64_t)llround(price * order->money), (uint32_t)first_room,
                                 (uint32_t)(order->rooms.count - first_room), (int32_t)stock, 0};
    return frame_array_push(&order->kinds, &kind) ? FRAME_OK : FRAME_NO_MEMORY;
}

static int64_t room_size(const frame_order *order, double from, double to) {
    return frame_order_length(to - from + order->in->kerf_in + ROUNDING_IN);
}

/* A defect, from and to. */
typedef struct zone {
    double from, to;
} zone;

static frame_status refuse_defect(size_t stock, size_t defect, double value) {
    char field[64];
    snprintf(field, sizeof field, "stock[%zu].defects_from_to_in[%zu]", stock, defect);
    return frame_fail_number(FRAME_OUT_OF_RANGE, field, value, "pairs from, to within the board, from less than to");
}

/* The defects by where they begin. */
static frame_status read_defects(size_t stock, const frame_stock_length *of, zone *zones, size_t *count) {
    *count = 0;
    if (of->defect_count % 2)
        return refuse_defect(stock, of->defect_count - 1, of->defects_from_to_in[of->defect_count - 1]);
    for (size_t d = 0; d + 1 < of->defect_count; d += 2) {
        const zone made = {of->defects_from_to_in[d], of->defects_from_to_in[d + 1]};
        if (made.to <= made.from) return refuse_defect(stock, d + 1, made.to);
        if (made.to > of->length_in) return refuse_defect(stock, d + 1, made.to);
        size_t at = (*count)++;
        for (; at && zones[at - 1].from > made.from; at--) zones[at] = zones[at - 1];
        zones[at] = made;
    }
    return FRAME_OK;
}

/* A room for each stretch between defects. */
static frame_status add_clear_rooms(frame_order *order, const frame_stock_length *of, int32_t group, const zone *zones,
                                    size_t count) {
    double from = order->in->end_trim_in;
    frame_status status = FRAME_OK;
    for (size_t z = 0; !status && z <= count; z++) {
        const double to = z < count ? fmin(zones[z].from, of->length_in) : of->length_in;
        const frame_order_room place = {from, to, FRAME_NOT_GIVEN, FRAME_NOT_GIVEN, FRAME_NOT_GIVEN_INT, -1};
        if (to > from) status = frame_order_add_room(order, room_size(order, from, to), group, 0, &place);
        if (z < count) from = fmax(from, zones[z].to);
    }
    return status;
}

/* The same board cut so that what is left is long enough to keep: cheaper by what the whole of it is worth. */
static frame_status add_kept(frame_order *order, size_t stock, const frame_stock_length *of, int32_t group,
                             double price) {
    const double rate = order->in->kept_foot_price / 12, from = order->in->end_trim_in;
    const double whole = of->length_in - from, rest = whole - order->in->kept_offcut_in;
    const frame_order_room place = {from, of->length_in, FRAME_NOT_GIVEN, FRAME_NOT_GIVEN, FRAME_NOT_GIVEN_INT, -1};
    const size_t first = order->rooms.count;
    if (rate <= 0 || order->in->kept_offcut_in == FRAME_NOT_GIVEN || price <= 0 || rest <= 0) return FRAME_OK;
    if (rate * of->length_in > price * (1 + 1e-9)) {
        char field[48];
        snprintf(field, sizeof field, "kept_foot_price");
        return frame_fail_number(FRAME_CONFLICT, field, order->in->kept_foot_price,
                                 "at most what the cheapest stock costs by the foot");
    }
    const frame_status status =
        frame_order_add_room(order, frame_order_length(rest + ROUNDING_IN), group, FRAME_CUT_KEPT, &place);
    return status ? status : frame_order_add_kind(order, stock, price - rate * whole, first);
}

static frame_status need_size(size_t stock, const frame_stock_length *of) {
    char field[48];
    if (of->price_by != FRAME_PRICE_BY_BOARD_FOOT || of->size != FRAME_NOT_GIVEN_INT) return FRAME_OK;
    snprintf(field, sizeof field, "stock[%zu].size", stock);
    return frame_fail(FRAME_REQUIRED, field, "", "a size", "%s: not given; a price by the board foot needs it", field);
}

static frame_status add_stock(frame_order *order, size_t stock, const frame_stock_length *of) {
    zone zones[MOST_DEFECTS];
    size_t count;
    const int32_t group = frame_order_group_find(order, of->size, of->species, of->grade);
    const size_t first = order->rooms.count;
    const double price = frame_order_price(of);
    frame_status status = read_defects(stock, of, zones, &count);
    if (!status && group >= 0) status = add_clear_rooms(order, of, group, zones, count);
    if (!status && order->rooms.count > first) status = frame_order_add_kind(order, stock, price, first);
    if (!status && group >= 0 && !count) status = add_kept(order, stock, of, group, price);
    if (!status && !count) status = frame_order_rips(order, stock, of);
    return status;
}

frame_status frame_order_stock(frame_order *order) {
    for (size_t s = 0; s < order->in->stock_count; s++) {
        frame_stock_length stock;
        frame_stock_length_item(order->in->stock, s, &stock);
        const int64_t most = order->most_boards;
        const int64_t available =
            stock.available == FRAME_NOT_GIVEN_INT || stock.available > most ? most : stock.available;
        frame_status status = need_size(s, &stock);
        if (!status && !frame_array_push(&order->supplies, &available)) status = FRAME_NO_MEMORY;
        if (!status) status = add_stock(order, s, &stock);
        if (status) return status;
    }
    return FRAME_OK;
}
