/* The columns of a stock room's file, and a field from its text. */
#include <stddef.h>
#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "takeoff/stock_room.h"
#include "takeoff_facts.h"

#define COLUMN(NAME, FIELD, KIND) \
    { NAME, KIND, (uint32_t)offsetof(frame_stock_length, FIELD) }
const frame_room_column frame_room_columns[FRAME_ROOM_COLUMNS] = {
    COLUMN("name", name, FRAME_ROOM_TEXT),
    COLUMN("length_in", length_in, FRAME_ROOM_NUMBER),
    COLUMN("price", price, FRAME_ROOM_NUMBER),
    COLUMN("price_by", price_by, FRAME_ROOM_PRICE_BY),
    COLUMN("available", available, FRAME_ROOM_WHOLE),
    COLUMN("size", size, FRAME_ROOM_SIZE),
    COLUMN("species", species, FRAME_ROOM_SPECIES),
    COLUMN("grade", grade, FRAME_ROOM_GRADE),
    COLUMN("weight_plf", weight_plf, FRAME_ROOM_NUMBER),
    COLUMN("defects_from_to_in", defects_from_to_in, FRAME_ROOM_DEFECTS),
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

static frame_status read_defects(frame_stock_room *room, frame_stock_length *row, const char *text) {
    enum { MOST = 200 };
    double *found = frame_arena_take(&room->arena, MOST * sizeof *found);
    const char *at = text + strspn(text, " ,;");
    if (!found) return FRAME_NO_MEMORY;
    for (row->defect_count = 0; *at; at += strspn(at, " ,;"))
        if (row->defect_count == MOST || frame_number_read(at, &at, &found[row->defect_count++]))
            return refuse("defects_from_to_in", text, "at most 200 numbers, from and to in pairs");
    row->defects_from_to_in = found;
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

frame_status frame_room_set(frame_stock_room *room, frame_stock_length *row, int column, const char *text) {
    const frame_room_column *of = &frame_room_columns[column];
    char *place = (char *)row + of->place;
    int failed = 0;
    if (!*text) return FRAME_OK;
    switch (of->kind) {
        case FRAME_ROOM_TEXT:
            row->name = frame_arena_text(&room->arena, text, &failed);
            return failed ? FRAME_NO_MEMORY : FRAME_OK;
        case FRAME_ROOM_NUMBER:
            return read_number(of->name, text, (double *)(void *)place);
        case FRAME_ROOM_WHOLE:
            return read_whole(of->name, text, (int32_t *)(void *)place);
        case FRAME_ROOM_SIZE:
            return frame_size_find(text, &row->size);
        case FRAME_ROOM_SPECIES:
            return frame_species_find(text, &row->species);
        case FRAME_ROOM_GRADE:
            return frame_grade_find(text, &row->grade);
        case FRAME_ROOM_PRICE_BY:
            return frame_word_find("price_by", text, &row->price_by);
        default:
            return read_defects(room, row, text);
    }
}

frame_status frame_room_check(const frame_stock_length *row) {
    if (!(row->length_in > 0 && row->length_in <= 1200))
        return frame_fail_number(row->length_in == FRAME_NOT_GIVEN ? FRAME_REQUIRED : FRAME_OUT_OF_RANGE, "length_in",
                                 row->length_in, ">0..1200 in");
    if (!(row->price >= 0 && row->price <= 1e6))
        return frame_fail_number(row->price == FRAME_NOT_GIVEN ? FRAME_REQUIRED : FRAME_OUT_OF_RANGE, "price",
                                 row->price, "0..1e6");
    if (row->available != FRAME_NOT_GIVEN_INT && (row->available < 0 || row->available > 1000000))
        return frame_fail_number(FRAME_OUT_OF_RANGE, "available", row->available, "0..1e6");
    if (row->weight_plf != FRAME_NOT_GIVEN && !(row->weight_plf > 0 && row->weight_plf <= 1000))
        return frame_fail_number(FRAME_OUT_OF_RANGE, "weight_plf", row->weight_plf, ">0..1000");
    for (size_t d = 0; d < row->defect_count; d++)
        if (row->defect_count % 2 || !(row->defects_from_to_in[d] >= 0 && row->defects_from_to_in[d] <= row->length_in))
            return frame_fail_number(FRAME_OUT_OF_RANGE, "defects_from_to_in", row->defects_from_to_in[d],
                                     "pairs from, to within the board");
    return FRAME_OK;
}

frame_status frame_room_fail_at(frame_status status, int line, int column) {
    char message[400], field[64], value[80];
    if (status == FRAME_NO_MEMORY) return status;
    snprintf(message, sizeof message, "%s", frame_error_text());
    snprintf(field, sizeof field, "%s", frame_error_field());
    snprintf(value, sizeof value, "%s", frame_error_value());
    return frame_fail(status, field, value, "a row of a stock room", "line %d, column %d: %s", line, column, message);
}
