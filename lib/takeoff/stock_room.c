/* The stock room: what is there, and what is put in. */
#include "takeoff/stock_room.h"

#include <string.h>

#include "base/error.h"
#include "takeoff_facts.h"

frame_status frame_room_need(const void *what, const char *field) {
    return what ? FRAME_OK : frame_fail(FRAME_REQUIRED, field, "NULL", "something", "%s: NULL is nothing", field);
}

frame_status frame_stock_room_new(frame_stock_room **room) {
    const frame_status status = frame_room_need(room, "room");
    if (status) return status;
    frame_stock_room *made = frame_take_zeroed(1, sizeof *made);
    if (!made) return FRAME_NO_MEMORY;
    made->rows.item_size = sizeof(frame_room_row);
    *room = made;
    return FRAME_OK;
}

void frame_stock_room_free(frame_stock_room *room) {
    if (!room) return;
    frame_arena_give(&room->arena);
    frame_array_give(&room->rows);
    frame_give(room);
}

size_t frame_stock_room_rows(const frame_stock_room *room) {
    return room ? room->rows.count : 0;
}

void frame_room_row_init(frame_room_row *row) {
    memset(row, 0, sizeof *row);
    frame_stock_length_init(&row->of);
    row->width_in = FRAME_NOT_GIVEN;
}

int frame_room_same_text(const char *one, const char *other) {
    return one && other ? !strcmp(one, other) : one == other;
}

static int same_numbers(const double *one, size_t count, const double *other, size_t other_count) {
    return count == other_count && (!count || !memcmp(one, other, count * sizeof *one));
}

static int same_outlines(const frame_room_row *one, const frame_room_row *other) {
    if (!same_numbers(one->corners.numbers, one->corners.count, other->corners.numbers, other->corners.count) ||
        one->hole_count != other->hole_count)
        return 0;
    for (size_t h = 0; h < one->hole_count; h++)
        if (!same_numbers(one->holes[h].numbers, one->holes[h].count, other->holes[h].numbers, other->holes[h].count))
            return 0;
    return 1;
}

static int same_row(const frame_room_row *one, const frame_room_row *other) {
    const frame_stock_length *a = &one->of, *b = &other->of;
    return a->length_in == b->length_in && a->size == b->size && a->species == b->species && a->grade == b->grade &&
           a->price == b->price && a->price_by == b->price_by && a->weight_plf == b->weight_plf &&
           one->width_in == other->width_in && frame_room_same_text(a->name, b->name) &&
           same_numbers(a->defects_from_to_in, a->defect_count, b->defects_from_to_in, b->defect_count) &&
           same_outlines(one, other);
}

/* More of a row that is there already. */
static frame_status count_up(frame_stock_length *there, int32_t available) {
    const int64_t sum = (int64_t)there->available + available;
    const int endless = there->available == FRAME_NOT_GIVEN_INT || available == FRAME_NOT_GIVEN_INT;
    if (!endless && sum > 1000000)
        return frame_fail_number(FRAME_TOO_LARGE, "available", (double)sum, "0..1e6 of a kind in all");
    there->available = endless ? FRAME_NOT_GIVEN_INT : (int32_t)sum;
    return FRAME_OK;
}

static const double *keep_numbers(frame_stock_room *room, const double *numbers, size_t count, int *failed) {
    double *copy = count ? frame_arena_take(&room->arena, count * sizeof *copy) : NULL;
    if (count && !copy) *failed = 1;
    return copy ? memcpy(copy, numbers, count * sizeof *copy) : NULL;
}

static void keep_holes(frame_stock_room *room, frame_room_row *made, int *failed) {
    const frame_room_outline *from = made->holes;
    made->holes = made->hole_count ? frame_arena_take(&room->arena, made->hole_count * sizeof *made->holes) : NULL;
    if (made->hole_count && !made->holes) *failed = 1;
    for (size_t h = 0; !*failed && h < made->hole_count; h++) {
        made->holes[h].count = from[h].count;
        made->holes[h].numbers = keep_numbers(room, from[h].numbers, from[h].count, failed);
    }
}

frame_status frame_room_add(frame_stock_room *room, const frame_room_row *row) {
    frame_room_row made = *row;
    int failed = 0;
    if (made.of.price_by == FRAME_NOT_GIVEN_INT) made.of.price_by = FRAME_PRICE_BY_BOARD;
    for (size_t r = 0; r < room->rows.count; r++) {
        frame_room_row *there = &FRAME_ITEM(frame_room_row, room->rows, r);
        if (same_row(there, &made)) return count_up(&there->of, made.of.available);
    }
    made.of.name = frame_arena_text(&room->arena, row->of.name, &failed);
    made.of.defects_from_to_in = keep_numbers(room, row->of.defects_from_to_in, row->of.defect_count, &failed);
    made.corners.numbers = keep_numbers(room, row->corners.numbers, row->corners.count, &failed);
    keep_holes(room, &made, &failed);
    return !failed && frame_array_push(&room->rows, &made) ? FRAME_OK : FRAME_NO_MEMORY;
}

frame_status frame_stock_room_put(frame_stock_room *room, const frame_stock_length *stock, size_t stock_count) {
    frame_status status = frame_room_need(room, "room");
    frame_room_row row;
    frame_room_row_init(&row);
    for (int adding = 0; !status && adding < 2; adding++) /* all are looked at before any goes in */
        for (size_t s = 0; !status && s < stock_count; s++) {
            frame_stock_length_item(stock, s, &row.of);
            status = adding ? frame_room_add(room, &row) : frame_room_check(&row);
            if (status && !adding) return frame_fail_within("stock[%zu].", s);
        }
    return status;
}

frame_status frame_room_copy(const frame_stock_room *from, frame_stock_room **to) {
    frame_status status = frame_stock_room_new(to);
    for (size_t r = 0; !status && r < from->rows.count; r++)
        status = frame_room_add(*to, &FRAME_ITEM(frame_room_row, from->rows, r));
    return status;
}

void frame_room_close_up(frame_stock_room *room) {
    frame_room_row *rows = room->rows.items;
    size_t left = 0;
    for (size_t r = 0; r < room->rows.count; r++)
        if (rows[r].of.available) rows[left++] = rows[r];
    room->rows.count = left;
}
