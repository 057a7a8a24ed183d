/* The stock room: what is there, what is put in, what a plan takes out and leaves. */
#include "takeoff/stock_room.h"

#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "takeoff/stock_write.h"
#include "takeoff_facts.h"

static frame_status need(const void *what, const char *field) {
    return what ? FRAME_OK : frame_fail(FRAME_REQUIRED, field, "NULL", "something", "%s: NULL is nothing", field);
}

frame_status frame_stock_room_new(frame_stock_room **room) {
    const frame_status status = need(room, "room");
    if (status) return status;
    frame_stock_room *made = frame_take_zeroed(1, sizeof *made);
    if (!made) return FRAME_NO_MEMORY;
    made->rows.item_size = sizeof(frame_stock_length);
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

static int same_text(const char *one, const char *other) {
    return one && other ? !strcmp(one, other) : one == other;
}

static int same_kind(const frame_stock_length *one, const frame_stock_length *other) {
    return one->length_in == other->length_in && one->size == other->size && one->species == other->species &&
           one->grade == other->grade && same_text(one->name, other->name);
}

static int same_row(const frame_stock_length *one, const frame_stock_length *other) {
    if (!same_kind(one, other) || one->price != other->price || one->price_by != other->price_by ||
        one->weight_plf != other->weight_plf || one->defect_count != other->defect_count)
        return 0;
    return !one->defect_count || !memcmp(one->defects_from_to_in, other->defects_from_to_in,
                                         one->defect_count * sizeof *one->defects_from_to_in);
}

frame_status frame_room_add(frame_stock_room *room, const frame_stock_length *row) {
    frame_stock_length made = *row;
    int failed = 0;
    if (made.price_by == FRAME_NOT_GIVEN_INT) made.price_by = FRAME_PRICE_BY_BOARD;
    for (size_t r = 0; r < room->rows.count; r++) {
        frame_stock_length *there = &FRAME_ITEM(frame_stock_length, room->rows, r);
        if (!same_row(there, &made)) continue;
        const int64_t sum = (int64_t)there->available + row->available;
        const int endless = there->available == FRAME_NOT_GIVEN_INT || row->available == FRAME_NOT_GIVEN_INT;
        if (!endless && sum > 1000000)
            return frame_fail_number(FRAME_TOO_LARGE, "available", (double)sum, "0..1e6 of a kind in all");
        there->available = endless ? FRAME_NOT_GIVEN_INT : (int32_t)sum;
        return FRAME_OK;
    }
    made.name = row->name ? frame_arena_text(&room->arena, row->name, &failed) : NULL;
    if (row->defect_count) {
        double *copy = frame_arena_take(&room->arena, row->defect_count * sizeof *copy);
        if (!copy) return FRAME_NO_MEMORY;
        memcpy(copy, row->defects_from_to_in, row->defect_count * sizeof *copy);
        made.defects_from_to_in = copy;
    }
    return !failed && frame_array_push(&room->rows, &made) ? FRAME_OK : FRAME_NO_MEMORY;
}

frame_status frame_stock_room_put(frame_stock_room *room, const frame_stock_length *stock, size_t stock_count) {
    frame_status status = need(room, "room");
    frame_stock_length row;
    for (size_t s = 0; !status && s < stock_count; s++) { /* all are looked at before any goes in */
        frame_stock_length_item(stock, s, &row);
        status = frame_room_check(&row);
        if (status) return frame_fail_within("stock[%zu].", s);
    }
    for (size_t s = 0; !status && s < stock_count; s++) {
        frame_stock_length_item(stock, s, &row);
        status = frame_room_add(room, &row);
    }
    return status;
}

/* -- plans -- */

static void kind_of(const frame_stock_plan_purchase *line, frame_stock_length *kind) {
    frame_stock_length_init(kind);
    kind->length_in = line->length_in;
    kind->size = line->size;
    kind->species = line->species;
    kind->grade = line->grade;
    kind->name = line->name;
}

/* How many boards of a line the room cannot give. */
static int64_t missing(const frame_stock_room *room, const frame_stock_plan_purchase *line) {
    frame_stock_length kind;
    int64_t left = line->count;
    kind_of(line, &kind);
    for (size_t r = 0; r < room->rows.count; r++) {
        const frame_stock_length *row = &FRAME_ITEM(frame_stock_length, room->rows, r);
        if (!same_kind(row, &kind)) continue;
        if (row->available == FRAME_NOT_GIVEN_INT) return 0;
        left -= row->available;
    }
    return left > 0 ? left : 0;
}

static void add_missing(const frame_stock_plan_purchase *line, int64_t count, frame_text *into) {
    frame_text_addf(into, "%lld x ", (long long)count);
    frame_tape_add(into, line->length_in, 16);
    if (line->size != FRAME_NOT_GIVEN_INT) frame_text_addf(into, " %s", frame_size_name(line->size));
    if (line->species != FRAME_NOT_GIVEN_INT) frame_text_addf(into, " %s", frame_species_name(line->species));
    if (line->grade != FRAME_NOT_GIVEN_INT) frame_text_addf(into, " %s", frame_grade_name(line->grade));
    if (line->name && *line->name) frame_text_addf(into, " %s", line->name);
}

frame_status frame_stock_room_short(const frame_stock_room *room, const frame_stock_plan *plan, frame_text *into) {
    frame_status status = need(room, "room");
    if (!status) status = frame_stock_need_text(plan, into);
    for (size_t l = 0; !status && l < frame_stock_plan_purchase_count(plan); l++) {
        frame_stock_plan_purchase line;
        frame_stock_plan_purchase_at(plan, l, &line);
        const int64_t count = missing(room, &line);
        if (!count) continue;
        add_missing(&line, count, into);
        frame_text_add(into, "\n");
    }
    return status ? status : frame_text_state(into);
}

static void remove_line(frame_stock_room *room, const frame_stock_plan_purchase *line) {
    frame_stock_length kind, *rows = room->rows.items;
    int32_t left = line->count;
    kind_of(line, &kind);
    for (size_t r = 0; r < room->rows.count && left > 0; r++) {
        if (!same_kind(&rows[r], &kind)) continue;
        if (rows[r].available == FRAME_NOT_GIVEN_INT) return;
        const int32_t taken = left < rows[r].available ? left : rows[r].available;
        rows[r].available -= taken;
        left -= taken;
    }
}

/* Rows of nothing go. */
static void close_up(frame_stock_room *room) {
    frame_stock_length *rows = room->rows.items;
    size_t left = 0;
    for (size_t r = 0; r < room->rows.count; r++)
        if (rows[r].available) rows[left++] = rows[r];
    room->rows.count = left;
}

static frame_status keep_offcut(frame_stock_room *room, const frame_stock_plan *plan,
                                const frame_stock_plan_offcut *offcut) {
    frame_stock_plan_board board;
    frame_stock_length row;
    frame_stock_plan_board_at(plan, (size_t)offcut->board, &board);
    frame_stock_length_init(&row);
    row.length_in = offcut->length_in;
    row.price = 0;
    row.available = 1;
    row.price_by = FRAME_PRICE_BY_BOARD;
    row.size = offcut->size;
    row.name = "offcut";
    for (size_t l = 0; l < frame_stock_plan_purchase_count(plan); l++) {
        frame_stock_plan_purchase line;
        frame_stock_plan_purchase_at(plan, l, &line);
        if (line.stock != board.stock) continue;
        row.species = line.species;
        row.grade = board.ripped ? FRAME_NOT_GIVEN_INT : line.grade; /* the rip voids the stamp */
    }
    return frame_room_add(room, &row);
}

static frame_status copy_room(const frame_stock_room *from, frame_stock_room **to) {
    frame_status status = frame_stock_room_new(to);
    for (size_t r = 0; !status && r < from->rows.count; r++)
        status = frame_room_add(*to, &FRAME_ITEM(frame_stock_length, from->rows, r));
    return status;
}

static frame_status refuse_short(const frame_stock_room *room, const frame_stock_plan *plan) {
    frame_text *text;
    char shown[160];
    if (frame_text_new(&text)) return FRAME_NO_MEMORY;
    frame_status status = frame_stock_room_short(room, plan, text);
    snprintf(shown, sizeof shown, "%s", frame_text_chars(text));
    shown[strcspn(shown, "\n")] = 0;
    frame_text_free(text);
    if (status || !*shown) return status;
    return frame_fail(FRAME_IMPOSSIBLE, "plan", "", "a plan for which the room has enough",
                      "plan: the room is short of %s%s", shown, "; stock_room.short lists all");
}

frame_status frame_stock_room_take(frame_stock_room *room, const frame_stock_plan *plan) {
    frame_stock_room *next = NULL;
    frame_status status = need(room, "room");
    if (!status) status = need(plan, "plan");
    if (!status) status = refuse_short(room, plan);
    if (!status) status = copy_room(room, &next);
    for (size_t l = 0; !status && l < frame_stock_plan_purchase_count(plan); l++) {
        frame_stock_plan_purchase line;
        frame_stock_plan_purchase_at(plan, l, &line);
        remove_line(next, &line);
    }
    if (!status) close_up(next);
    for (size_t o = 0; !status && o < frame_stock_plan_offcut_count(plan); o++) {
        frame_stock_plan_offcut offcut;
        frame_stock_plan_offcut_at(plan, o, &offcut);
        if (offcut.kept) status = keep_offcut(next, plan, &offcut);
    }
    if (!status) { /* all or nothing: the copy takes the room's place */
        const frame_stock_room before = *room;
        *room = *next;
        *next = before;
    }
    frame_stock_room_free(next);
    return status;
}
