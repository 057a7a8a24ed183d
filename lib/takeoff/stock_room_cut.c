/* The stock room after a plan of sheets: what is taken out of it, what is left over and put in. */
#include <math.h>

#include "base/error.h"
#include "takeoff/stock_room.h"
#include "takeoff/stock_write.h"
#include "takeoff_facts.h"

static frame_sheet_plan_corner corner_at(const frame_sheet_plan *plan, size_t place) {
    frame_sheet_plan_corner corner = {0};
    (void)frame_sheet_plan_corner_at(plan, place, &corner);
    return corner;
}

static int same_outline(const frame_sheet_plan *plan, const frame_sheet_plan_sheet *sheet, const frame_room_row *row) {
    if (row->corners.count != 2 * (size_t)sheet->outline_count || row->hole_count != (size_t)sheet->holes) return 0;
    for (uint32_t c = 0; c < sheet->outline_count; c++) {
        const frame_sheet_plan_corner corner = corner_at(plan, sheet->outline_first + c);
        if (corner.x_in != row->corners.numbers[2 * c] || corner.y_in != row->corners.numbers[2 * c + 1]) return 0;
    }
    return 1;
}

/* Whether a row is of a sheet or an offcut of a plan; a sheet's sides may be named either way round. */
static int is_of(const frame_room_row *row, const frame_sheet_plan *plan, const frame_sheet_plan_sheet *sheet) {
    if (!frame_room_same_text(row->of.name, sheet->name)) return 0;
    if (frame_room_what_of(row) == FRAME_ROOM_OFFCUT) return sheet->offcut >= 0 && same_outline(plan, sheet, row);
    return frame_room_what_of(row) == FRAME_ROOM_SHEET && sheet->sheet >= 0 &&
           fmin(sheet->x_in, sheet->y_in) == fmin(row->width_in, row->of.length_in) &&
           fmax(sheet->x_in, sheet->y_in) == fmax(row->width_in, row->of.length_in);
}

/* Takes one out; 0 when there is none. */
static int take_one(frame_stock_room *room, const frame_sheet_plan *plan, const frame_sheet_plan_sheet *sheet) {
    for (size_t r = 0; r < room->rows.count; r++) {
        frame_room_row *row = &FRAME_ITEM(frame_room_row, room->rows, r);
        if (!row->of.available || !is_of(row, plan, sheet)) continue;
        if (row->of.available != FRAME_NOT_GIVEN_INT) row->of.available--;
        return 1;
    }
    return 0;
}

static void add_missing(const frame_sheet_plan_sheet *sheet, size_t count, frame_text *into) {
    frame_text_addf(into, "%zu x %s", count, sheet->offcut >= 0 ? "offcut of " : "");
    frame_tape_add(into, sheet->x_in, 16);
    frame_text_add(into, " by ");
    frame_tape_add(into, sheet->y_in, 16);
    if (sheet->name && *sheet->name) frame_text_addf(into, " %s", sheet->name);
    frame_text_add(into, "\n");
}

/* Takes a plan's sheets out one by one; those that are not there are listed. Sheets of one kind stand together. */
static void take_all(frame_stock_room *room, const frame_sheet_plan *plan, frame_text *missing) {
    const size_t count = frame_sheet_plan_sheet_count(plan);
    size_t short_of = 0;
    for (size_t s = 0; s < count; s++) {
        frame_sheet_plan_sheet sheet, next = {0};
        frame_sheet_plan_sheet_at(plan, s, &sheet);
        short_of += !take_one(room, plan, &sheet);
        if (s + 1 < count) frame_sheet_plan_sheet_at(plan, s + 1, &next);
        if (s + 1 < count && next.sheet == sheet.sheet && next.offcut == sheet.offcut) continue;
        if (short_of) add_missing(&sheet, short_of, missing);
        short_of = 0;
    }
}

static frame_status begin(const frame_stock_room *room, const frame_sheet_plan *plan, frame_stock_room **copy) {
    frame_status status = frame_room_need(room, "room");
    if (!status) status = frame_room_need(plan, "plan");
    return status ? status : frame_room_copy(room, copy);
}

frame_status frame_stock_room_short_sheets(const frame_stock_room *room, const frame_sheet_plan *plan,
                                           frame_text *into) {
    frame_stock_room *copy = NULL;
    frame_status status = begin(room, plan, &copy);
    if (!status) status = frame_room_need(into, "into");
    if (!status) take_all(copy, plan, into);
    frame_stock_room_free(copy);
    return status ? status : frame_text_state(into);
}

/* -- what is left over -- */

static frame_status read_outline(const frame_sheet_plan *plan, const frame_sheet_plan_offcut *of, frame_arena *arena,
                                 frame_room_outline *made) {
    double *numbers = frame_arena_take(arena, (2 * (size_t)of->corner_count + 1) * sizeof *numbers);
    if (!numbers) return FRAME_NO_MEMORY;
    for (uint32_t c = 0; c < of->corner_count; c++) {
        const frame_sheet_plan_corner corner = corner_at(plan, of->corner_first + c);
        numbers[2 * c] = corner.x_in, numbers[2 * c + 1] = corner.y_in;
    }
    *made = (frame_room_outline){numbers, 2 * (size_t)of->corner_count};
    return FRAME_OK;
}

/* An offcut and the holes that stand behind it in the list; *next: what comes after them. */
static frame_status keep_offcut(frame_stock_room *room, const frame_sheet_plan *plan, size_t place, size_t *next) {
    frame_arena arena = {0};
    frame_room_row row;
    frame_sheet_plan_offcut offcut;
    frame_sheet_plan_sheet sheet;
    const size_t count = frame_sheet_plan_offcut_count(plan);
    frame_room_row_init(&row);
    frame_sheet_plan_offcut_at(plan, place, &offcut);
    frame_sheet_plan_sheet_at(plan, (size_t)offcut.sheet, &sheet);
    row.of.name = sheet.name;
    row.of.price = 0;
    row.of.available = 1;
    frame_status status = read_outline(plan, &offcut, &arena, &row.corners);
    row.holes = frame_arena_take(&arena, (count - place) * sizeof *row.holes);
    if (!row.holes) status = FRAME_NO_MEMORY;
    for (*next = place + 1; !status && *next < count; ++*next) {
        frame_sheet_plan_offcut_at(plan, *next, &offcut);
        if (offcut.hole_of != (int32_t)place) break;
        status = read_outline(plan, &offcut, &arena, &row.holes[row.hole_count++]);
    }
    if (!status) status = frame_room_add(room, &row);
    frame_arena_give(&arena);
    return status;
}

frame_status frame_stock_room_take_sheets(frame_stock_room *room, const frame_sheet_plan *plan) {
    frame_stock_room *next = NULL;
    frame_text *missing = NULL;
    frame_status status = begin(room, plan, &next);
    if (!status) status = frame_text_new(&missing);
    if (!status) take_all(next, plan, missing);
    if (!status) status = frame_text_state(missing);
    if (!status) status = frame_room_refuse_short(missing, "stock_room.short_sheets");
    if (!status) frame_room_close_up(next);
    for (size_t o = 0; !status && o < frame_sheet_plan_offcut_count(plan);) status = keep_offcut(next, plan, o, &o);
    if (!status) { /* all or nothing: the copy takes the room's place */
        const frame_stock_room before = *room;
        *room = *next;
        *next = before;
    }
    frame_text_free(missing);
    frame_stock_room_free(next);
    return status;
}
