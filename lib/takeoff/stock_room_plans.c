/* The stock room and plans of sticks: what a plan takes out of it and leaves. */
#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "takeoff/stock_room.h"
#include "takeoff/stock_write.h"
#include "takeoff_facts.h"

/* Whether a row is of the boards of a line. */
static int is_of(const frame_room_row *row, const frame_stock_plan_purchase *line) {
    const frame_stock_length *of = &row->of;
    return frame_room_what_of(row) == FRAME_ROOM_STICK && of->length_in == line->length_in && of->size == line->size &&
           of->species == line->species && of->grade == line->grade && frame_room_same_text(of->name, line->name);
}

/* How many boards of a line the room cannot give. */
static int64_t missing(const frame_stock_room *room, const frame_stock_plan_purchase *line) {
    int64_t left = line->count;
    for (size_t r = 0; r < room->rows.count; r++) {
        const frame_room_row *row = &FRAME_ITEM(frame_room_row, room->rows, r);
        if (!is_of(row, line)) continue;
        if (row->of.available == FRAME_NOT_GIVEN_INT) return 0;
        left -= row->of.available;
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
    frame_status status = frame_room_need(room, "room");
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
    frame_room_row *rows = room->rows.items;
    int32_t left = line->count;
    for (size_t r = 0; r < room->rows.count && left > 0; r++) {
        if (!is_of(&rows[r], line)) continue;
        if (rows[r].of.available == FRAME_NOT_GIVEN_INT) return;
        const int32_t taken = left < rows[r].of.available ? left : rows[r].of.available;
        rows[r].of.available -= taken;
        left -= taken;
    }
}

static frame_status keep_offcut(frame_stock_room *room, const frame_stock_plan *plan,
                                const frame_stock_plan_offcut *offcut) {
    frame_stock_plan_board board;
    frame_room_row row;
    frame_stock_plan_board_at(plan, (size_t)offcut->board, &board);
    frame_room_row_init(&row);
    row.of.length_in = offcut->length_in;
    row.of.price = 0;
    row.of.available = 1;
    row.of.price_by = FRAME_PRICE_BY_BOARD;
    row.of.size = offcut->size;
    row.of.name = "offcut";
    for (size_t l = 0; l < frame_stock_plan_purchase_count(plan); l++) {
        frame_stock_plan_purchase line;
        frame_stock_plan_purchase_at(plan, l, &line);
        if (line.stock != board.stock) continue;
        row.of.species = line.species;
        row.of.grade = board.ripped ? FRAME_NOT_GIVEN_INT : line.grade; /* the rip voids the stamp */
    }
    return frame_room_add(room, &row);
}

frame_status frame_room_refuse_short(frame_text *short_of, const char *lists_all) {
    char shown[160];
    snprintf(shown, sizeof shown, "%s", frame_text_chars(short_of));
    shown[strcspn(shown, "\n")] = 0;
    if (!*shown) return FRAME_OK;
    return frame_fail(FRAME_IMPOSSIBLE, "plan", "", "a plan for which the room has enough",
                      "plan: the room is short of %s; %s lists all", shown, lists_all);
}

static frame_status refuse_short(const frame_stock_room *room, const frame_stock_plan *plan) {
    frame_text *text;
    if (frame_text_new(&text)) return FRAME_NO_MEMORY;
    frame_status status = frame_stock_room_short(room, plan, text);
    if (!status) status = frame_room_refuse_short(text, "stock_room.short");
    frame_text_free(text);
    return status;
}

frame_status frame_stock_room_take(frame_stock_room *room, const frame_stock_plan *plan) {
    frame_stock_room *next = NULL;
    frame_status status = frame_room_need(room, "room");
    if (!status) status = frame_room_need(plan, "plan");
    if (!status) status = refuse_short(room, plan);
    if (!status) status = frame_room_copy(room, &next);
    for (size_t l = 0; !status && l < frame_stock_plan_purchase_count(plan); l++) {
        frame_stock_plan_purchase line;
        frame_stock_plan_purchase_at(plan, l, &line);
        remove_line(next, &line);
    }
    if (!status) frame_room_close_up(next);
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
