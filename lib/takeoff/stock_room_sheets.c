/* The stock room's sheets: what is put in, and what a plan may cut. */
#include "takeoff/stock_room_sheets.h"

#include "base/error.h"
#include "takeoff_facts.h"

enum { MOST_HOLES = 100, MOST_SHEETS = 100, MOST_OFFCUTS = 1000 };

/* -- putting in -- */

static void sheet_row(const frame_sheet_size *sheet, frame_room_row *row) {
    frame_room_row_init(row);
    row->of.name = sheet->name;
    row->of.length_in = sheet->length_in;
    row->of.price = sheet->price;
    row->of.available = sheet->available;
    row->width_in = sheet->width_in;
}

frame_status frame_stock_room_put_sheets(frame_stock_room *room, const frame_sheet_size *sheets, size_t sheet_count) {
    frame_status status = frame_room_need(room, "room");
    for (int adding = 0; !status && adding < 2; adding++) /* all are looked at before any goes in */
        for (size_t s = 0; !status && s < sheet_count; s++) {
            frame_sheet_size sheet;
            frame_room_row row;
            frame_sheet_size_item(sheets, s, &sheet);
            sheet_row(&sheet, &row);
            status = adding ? frame_room_add(room, &row) : frame_room_check(&row);
            if (status && !adding) return frame_fail_within("sheets[%zu].", s);
        }
    return status;
}

static frame_status read_outline(frame_arena *arena, const frame_sheet_corner *corners, size_t count,
                                 frame_room_outline *made) {
    double *numbers = frame_arena_take(arena, (2 * count + 1) * sizeof *numbers);
    if (!numbers) return FRAME_NO_MEMORY;
    for (size_t c = 0; c < count; c++) {
        frame_sheet_corner corner;
        frame_sheet_corner_item(corners, c, &corner);
        numbers[2 * c] = corner.x_in, numbers[2 * c + 1] = corner.y_in;
    }
    *made = (frame_room_outline){numbers, 2 * count};
    return FRAME_OK;
}

typedef struct putting {
    frame_arena arena;
    const frame_sheet_hole *holes;
    size_t hole_count;
} putting;

static frame_status read_holes(putting *of, size_t offcut, frame_room_row *row) {
    frame_status status = FRAME_OK;
    row->holes = frame_arena_take(&of->arena, MOST_HOLES * sizeof *row->holes);
    if (!row->holes) return FRAME_NO_MEMORY;
    for (size_t h = 0; !status && h < of->hole_count; h++) {
        frame_sheet_hole hole;
        frame_sheet_hole_item(of->holes, h, &hole);
        if (hole.offcut != (int32_t)offcut) continue;
        if (row->hole_count == MOST_HOLES)
            return frame_fail_number(FRAME_TOO_LARGE, "holes", MOST_HOLES + 1, "at most 100 holes in an offcut");
        status = read_outline(&of->arena, hole.corners, hole.corner_count, &row->holes[row->hole_count++]);
    }
    return status;
}

static frame_status read_offcut(putting *of, const frame_sheet_offcut *offcuts, size_t number, frame_room_row *row) {
    frame_sheet_offcut offcut;
    frame_sheet_offcut_item(offcuts, number, &offcut);
    frame_room_row_init(row);
    row->of.name = offcut.name;
    row->of.price = offcut.price == FRAME_NOT_GIVEN ? 0 : offcut.price;
    row->of.available = offcut.count == FRAME_NOT_GIVEN_INT ? 1 : offcut.count;
    if (offcut.corner_count < 3)
        return frame_fail_number(FRAME_OUT_OF_RANGE, "corners", (double)offcut.corner_count, "3..500 corners");
    frame_status status = read_outline(&of->arena, offcut.corners, offcut.corner_count, &row->corners);
    return status ? status : read_holes(of, number, row);
}

static frame_status check_holes(const putting *of, size_t offcut_count) {
    for (size_t h = 0; h < of->hole_count; h++) {
        frame_sheet_hole hole;
        frame_sheet_hole_item(of->holes, h, &hole);
        if (hole.offcut >= 0 && (size_t)hole.offcut < offcut_count) continue;
        frame_fail_number(FRAME_OUT_OF_RANGE, "offcut", hole.offcut, "the place of an offcut given");
        return frame_fail_within("holes[%zu].", h);
    }
    return FRAME_OK;
}

frame_status frame_stock_room_put_offcuts(frame_stock_room *room, const frame_sheet_offcut *offcuts,
                                          size_t offcut_count, const frame_sheet_hole *holes, size_t hole_count) {
    putting of = {.holes = holes, .hole_count = hole_count};
    frame_status status = frame_room_need(room, "room");
    if (!status) status = check_holes(&of, offcut_count);
    for (int adding = 0; !status && adding < 2; adding++)
        for (size_t o = 0; !status && o < offcut_count; o++) {
            frame_room_row row;
            status = read_offcut(&of, offcuts, o, &row);
            if (!status) status = adding ? frame_room_add(room, &row) : frame_room_check(&row);
            if (status && status != FRAME_NO_MEMORY && !adding) status = frame_fail_within("offcuts[%zu].", o);
        }
    frame_arena_give(&of.arena);
    return status;
}

/* -- cutting from it -- */

typedef struct joining {
    frame_sheet_plan_in *in;
    frame_sheet_size *sheets;
    frame_sheet_offcut *offcuts;
    frame_sheet_hole *holes;
    frame_arena *arena;
} joining;

static int is_meant(const frame_sheet_plan_in *in, const frame_room_row *row, frame_room_what what) {
    return frame_room_what_of(row) == what && (!in->room_name || frame_room_same_text(in->room_name, row->of.name));
}

static frame_sheet_corner *corners_of(const joining *of, const frame_room_outline *outline) {
    const size_t count = outline->count / 2;
    frame_sheet_corner *corners = frame_arena_take(of->arena, count * sizeof *corners);
    for (size_t c = 0; corners && c < count; c++) {
        frame_sheet_corner_init(&corners[c]);
        corners[c].x_in = outline->numbers[2 * c], corners[c].y_in = outline->numbers[2 * c + 1];
    }
    return corners;
}

static void join_sheet(const joining *of, const frame_room_row *row) {
    frame_sheet_size *sheet = &of->sheets[of->in->sheet_count++];
    frame_sheet_size_init(sheet);
    sheet->name = row->of.name;
    sheet->width_in = row->width_in, sheet->length_in = row->of.length_in;
    sheet->price = row->of.price, sheet->available = row->of.available;
}

static frame_status join_offcut(const joining *of, const frame_room_row *row) {
    frame_sheet_offcut *offcut = &of->offcuts[of->in->offcut_count];
    frame_sheet_offcut_init(offcut);
    offcut->name = row->of.name, offcut->price = row->of.price;
    offcut->count = row->of.available == FRAME_NOT_GIVEN_INT ? 1000000 : row->of.available;
    offcut->corners = corners_of(of, &row->corners);
    offcut->corner_count = row->corners.count / 2;
    for (size_t h = 0; h < row->hole_count; h++) {
        frame_sheet_hole *hole = &of->holes[of->in->hole_count++];
        frame_sheet_hole_init(hole);
        hole->offcut = (int32_t)of->in->offcut_count;
        hole->corners = corners_of(of, &row->holes[h]);
        hole->corner_count = row->holes[h].count / 2;
        if (!hole->corners) return FRAME_NO_MEMORY;
    }
    of->in->offcut_count++;
    return offcut->corners ? FRAME_OK : FRAME_NO_MEMORY;
}

static frame_status take_lists(joining *of, size_t sheets, size_t offcuts, size_t holes) {
    if (sheets > MOST_SHEETS)
        return frame_fail_number(FRAME_TOO_LARGE, "sheets", (double)sheets, "1..100 kinds of sheets with the room's");
    if (offcuts > MOST_OFFCUTS || holes > MOST_OFFCUTS)
        return frame_fail_number(FRAME_TOO_LARGE, offcuts > MOST_OFFCUTS ? "offcuts" : "holes",
                                 (double)(offcuts > MOST_OFFCUTS ? offcuts : holes), "0..1000 with the room's");
    of->sheets = frame_arena_take(of->arena, (sheets + 1) * sizeof *of->sheets);
    of->offcuts = frame_arena_take(of->arena, (offcuts + 1) * sizeof *of->offcuts);
    of->holes = frame_arena_take(of->arena, (holes + 1) * sizeof *of->holes);
    if (!of->sheets || !of->offcuts || !of->holes) return FRAME_NO_MEMORY;
    for (size_t s = 0; s < of->in->sheet_count; s++) frame_sheet_size_item(of->in->sheets, s, &of->sheets[s]);
    for (size_t o = 0; o < of->in->offcut_count; o++) frame_sheet_offcut_item(of->in->offcuts, o, &of->offcuts[o]);
    for (size_t h = 0; h < of->in->hole_count; h++) frame_sheet_hole_item(of->in->holes, h, &of->holes[h]);
    of->in->sheets = of->sheets, of->in->offcuts = of->offcuts, of->in->holes = of->holes;
    return FRAME_OK;
}

frame_status frame_room_join_sheets(frame_sheet_plan_in *in, frame_arena *arena) {
    joining of = {.in = in, .arena = arena};
    if (!in->room) return FRAME_OK;
    const frame_room_row *rows = in->room->rows.items;
    size_t sheets = in->sheet_count, offcuts = in->offcut_count, holes = in->hole_count;
    for (size_t r = 0; r < in->room->rows.count; r++) {
        sheets += is_meant(in, &rows[r], FRAME_ROOM_SHEET);
        offcuts += is_meant(in, &rows[r], FRAME_ROOM_OFFCUT);
        holes += is_meant(in, &rows[r], FRAME_ROOM_OFFCUT) ? rows[r].hole_count : 0;
    }
    frame_status status = take_lists(&of, sheets, offcuts, holes);
    for (size_t r = 0; !status && r < in->room->rows.count; r++) {
        if (is_meant(in, &rows[r], FRAME_ROOM_SHEET)) join_sheet(&of, &rows[r]);
        if (is_meant(in, &rows[r], FRAME_ROOM_OFFCUT)) status = join_offcut(&of, &rows[r]);
    }
    return status;
}
