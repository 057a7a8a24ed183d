/* The columns of a stock room's file, and a field from its text. */
#include <stddef.h>
#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "takeoff/stock_room.h"
#include "takeoff_facts.h"

#define COLUMN(NAME, FIELD, KIND) \
    { NAME, KIND, (uint32_t)offsetof(frame_room_row, FIELD) }
const frame_room_column frame_room_columns[FRAME_ROOM_COLUMNS] = {
    COLUMN("name", of.name, FRAME_ROOM_TEXT),
    COLUMN("length_in", of.length_in, FRAME_ROOM_NUMBER),
    COLUMN("price", of.price, FRAME_ROOM_NUMBER),
    COLUMN("price_by", of.price_by, FRAME_ROOM_PRICE_BY),
    COLUMN("available", of.available, FRAME_ROOM_WHOLE),
    COLUMN("size", of.size, FRAME_ROOM_SIZE),
    COLUMN("species", of.species, FRAME_ROOM_SPECIES),
    COLUMN("grade", of.grade, FRAME_ROOM_GRADE),
    COLUMN("weight_plf", of.weight_plf, FRAME_ROOM_NUMBER),
    COLUMN("defects_from_to_in", of.defects_from_to_in, FRAME_ROOM_DEFECTS),
    COLUMN("width_in", width_in, FRAME_ROOM_NUMBER),
    COLUMN("corners_in", corners, FRAME_ROOM_CORNERS),
    COLUMN("holes_in", holes, FRAME_ROOM_HOLES),
};

int frame_room_column_find(const char *name) {
    for (int c = 0; c < FRAME_ROOM_COLUMNS; c++)
        if (!strcmp(frame_room_columns[c].name, name)) return c;
    return -1;
}

static frame_status refuse(const char *column, const char *text, const char *valid) {
    return frame_fail(FRAME_UNREADABLE, column, text, valid, "%s: %.60s is not %s", column, text, valid);
}

static frame_status read_number(const char *column, const char *text, double *value) {
    const char *end;
    if (frame_number_read(text, &end, value) || *end) return refuse(column, text, "a number");
    return FRAME_OK;
}

/* Numbers up to an end, parted as people part them. */
static frame_status read_numbers(frame_stock_room *room, const char *text, const char *end, size_t most,
                                 frame_room_outline *found) {
    double *numbers = frame_arena_take(&room->arena, most * sizeof *numbers);
    const char *at = text + strspn(text, " ,;");
    if (!numbers) return FRAME_NO_MEMORY;
    *found = (frame_room_outline){numbers, 0};
    for (; at < end; at += strspn(at, " ,;"))
        if (found->count == most || frame_number_read(at, &at, &numbers[found->count++])) return FRAME_UNREADABLE;
    return FRAME_OK;
}

enum { MOST_DEFECTS = 200, MOST_COORDINATES = 1000, MOST_HOLES = 100 };

static frame_status read_defects(frame_stock_room *room, frame_stock_length *row, const char *text) {
    frame_room_outline found;
    const frame_status status = read_numbers(room, text, text + strlen(text), MOST_DEFECTS, &found);
    if (status == FRAME_UNREADABLE)
        return refuse("defects_from_to_in", text, "at most 200 numbers, from and to in pairs");
    if (status) return status;
    row->defects_from_to_in = found.numbers;
    row->defect_count = found.count;
    return FRAME_OK;
}

static const char corners_valid[] = "x and y in turn of 3 to 500 corners";

static frame_status read_corners(frame_stock_room *room, frame_room_outline *into, const char *text) {
    const frame_status status = read_numbers(room, text, text + strlen(text), MOST_COORDINATES, into);
    return status == FRAME_UNREADABLE ? refuse("corners_in", text, corners_valid) : status;
}

static frame_status read_holes(frame_stock_room *room, frame_room_row *row, const char *text) {
    row->holes = frame_arena_take(&room->arena, MOST_HOLES * sizeof *row->holes);
    if (!row->holes) return FRAME_NO_MEMORY;
    for (const char *at = text; *at; at += strspn(at, " ;")) {
        const char *end = at + strcspn(at, ";");
        if (row->hole_count == MOST_HOLES) return refuse("holes_in", text, "at most 100 holes");
        const frame_status status = read_numbers(room, at, end, MOST_COORDINATES, &row->holes[row->hole_count++]);
        if (status) return status == FRAME_UNREADABLE ? refuse("holes_in", text, corners_valid) : status;
        at = end;
    }
    return FRAME_OK;
}

static frame_status read_whole(const char *column, const char *text, int32_t *value) {
    double number = 0;
    const frame_status status = read_number(column, text, &number);
    if (status) return status;
    if (number < 0 || number > 1e6 || number != (double)(int32_t)number) return refuse(column, text, "0..1e6, whole");
    *value = (int32_t)number;
    return FRAME_OK;
}

frame_status frame_room_set(frame_stock_room *room, frame_room_row *row, int column, const char *text) {
    const frame_room_column *of = &frame_room_columns[column];
    char *place = (char *)row + of->place;
    int failed = 0;
    if (!*text) return FRAME_OK;
    switch (of->kind) {
        case FRAME_ROOM_TEXT:
            row->of.name = frame_arena_text(&room->arena, text, &failed);
            return failed ? FRAME_NO_MEMORY : FRAME_OK;
        case FRAME_ROOM_NUMBER:
            return read_number(of->name, text, (double *)(void *)place);
        case FRAME_ROOM_WHOLE:
            return read_whole(of->name, text, (int32_t *)(void *)place);
        case FRAME_ROOM_SIZE:
            return frame_size_find(text, &row->of.size);
        case FRAME_ROOM_SPECIES:
            return frame_species_find(text, &row->of.species);
        case FRAME_ROOM_GRADE:
            return frame_grade_find(text, &row->of.grade);
        case FRAME_ROOM_PRICE_BY:
            return frame_word_find("price_by", text, &row->of.price_by);
        case FRAME_ROOM_CORNERS:
            return read_corners(room, &row->corners, text);
        case FRAME_ROOM_HOLES:
            return read_holes(room, row, text);
        default:
            return read_defects(room, &row->of, text);
    }
}

frame_status frame_room_fail_at(frame_status status, int line, int column) {
    char message[400], field[64], value[80];
    if (status == FRAME_NO_MEMORY) return status;
    snprintf(message, sizeof message, "%s", frame_error_text());
    snprintf(field, sizeof field, "%s", frame_error_field());
    snprintf(value, sizeof value, "%s", frame_error_value());
    return frame_fail(status, field, value, "a row of a stock room", "line %d, column %d: %s", line, column, message);
}
