/* A stock room as CSV: the first line names the columns, each further line is a row. */
#include <string.h>

#include "base/error.h"
#include "takeoff/stock_room.h"
#include "takeoff/stock_write.h"
#include "takeoff_facts.h"

typedef struct reading {
    frame_stock_room *room;
    frame_text *cell;
    const char *at;
    int line, column;           /* of the character at hand, from 1 */
    int cell_line, cell_column; /* where the cell began */
    int columns[FRAME_ROOM_COLUMNS], count;
} reading;

static frame_status fail(const reading *of, const char *what) {
    return frame_fail(FRAME_UNREADABLE, "csv", "", "a stock room as stock_room.csv writes it", "line %d, column %d: %s",
                      of->cell_line, of->cell_column, what);
}

static void step(reading *of) {
    if (*of->at == '\n')
        of->line++, of->column = 1;
    else
        of->column++;
    of->at++;
}

static int at_row_end(const reading *of) {
    return !*of->at || *of->at == '\n' || *of->at == '\r';
}

static frame_status read_quoted(reading *of) {
    for (step(of); *of->at && (*of->at != '"' || of->at[1] == '"'); step(of)) {
        if (*of->at == '"') step(of);
        frame_text_add_bytes(of->cell, of->at, 1);
    }
    if (!*of->at) return fail(of, "a quote is not closed");
    step(of);
    return *of->at == ',' || at_row_end(of) ? FRAME_OK : fail(of, "something stands behind a closing quote");
}

/* One cell into of->cell; moves past the comma behind it. */
static frame_status read_cell(reading *of) {
    frame_text_clear(of->cell);
    of->cell_line = of->line;
    of->cell_column = of->column;
    frame_status status = FRAME_OK;
    if (*of->at == '"') {
        status = read_quoted(of);
    } else {
        for (; *of->at != ',' && !at_row_end(of); step(of)) {
            if (*of->at == '"') return fail(of, "a quote stands inside a cell that does not begin with one");
            frame_text_add_bytes(of->cell, of->at, 1);
        }
    }
    return status ? status : frame_text_state(of->cell);
}

static void skip_row_end(reading *of) {
    while (*of->at == '\r' || *of->at == '\n') step(of);
}

static frame_status read_names(reading *of) {
    do {
        if (of->count) step(of);
        frame_status status = read_cell(of);
        if (status) return status;
        const int column = frame_room_column_find(frame_text_chars(of->cell));
        if (column < 0 || of->count == FRAME_ROOM_COLUMNS) return fail(of, "this is no column of a stock room");
        for (int c = 0; c < of->count; c++)
            if (of->columns[c] == column) return fail(of, "a column is named twice");
        of->columns[of->count++] = column;
    } while (*of->at == ',');
    skip_row_end(of);
    return FRAME_OK;
}

static frame_status read_row(reading *of) {
    frame_room_row row;
    const int line = of->line;
    int count = 0;
    frame_room_row_init(&row);
    do {
        if (count) step(of);
        frame_status status = read_cell(of);
        if (!status && count == of->count) status = fail(of, "more cells than columns");
        if (status) return status;
        status = frame_room_set(of->room, &row, of->columns[count++], frame_text_chars(of->cell));
        if (status) return frame_room_fail_at(status, of->cell_line, of->cell_column);
    } while (*of->at == ',');
    if (count < of->count) return fail(of, "fewer cells than columns");
    skip_row_end(of);
    frame_status status = frame_room_check(&row);
    if (!status) status = frame_room_add(of->room, &row);
    return status ? frame_room_fail_at(status, line, 1) : FRAME_OK;
}

static frame_status read_all(reading *of) {
    frame_status status = read_names(of);
    while (!status && *of->at) status = read_row(of);
    return status;
}

frame_status frame_stock_room_from_csv(const char *csv, frame_stock_room **room) {
    reading of = {.at = csv, .line = 1, .column = 1};
    if (!csv || !room) return frame_fail(FRAME_REQUIRED, "csv", "NULL", "a text", "csv: NULL is no text");
    frame_status status = frame_stock_room_new(&of.room);
    if (!status) status = frame_text_new(&of.cell);
    if (!status) status = read_all(&of);
    frame_text_free(of.cell);
    if (status)
        frame_stock_room_free(of.room);
    else
        *room = of.room;
    return status;
}

static void add_number(frame_text *into, double value) {
    if (value != FRAME_NOT_GIVEN) frame_text_add_number(into, value, 17);
}

static void add_text(frame_text *into, const char *text) {
    frame_text_add_csv(into, text ? text : "");
}

static void add_numbers(frame_text *into, const double *numbers, size_t count) {
    for (size_t n = 0; n < count; n++) {
        frame_text_add(into, n ? " " : "");
        frame_text_add_number(into, numbers[n], 17);
    }
}

static void add_outlines(frame_text *into, const frame_room_row *row) {
    add_number(into, row->width_in);
    frame_text_add(into, ",");
    add_numbers(into, row->corners.numbers, row->corners.count);
    frame_text_add(into, ",");
    for (size_t h = 0; h < row->hole_count; h++) {
        frame_text_add(into, h ? "; " : "");
        add_numbers(into, row->holes[h].numbers, row->holes[h].count);
    }
}

static void add_row(const frame_room_row *of, frame_text *into) {
    const frame_stock_length *row = &of->of;
    const int has_size = row->size != FRAME_NOT_GIVEN_INT, has_species = row->species != FRAME_NOT_GIVEN_INT,
              has_grade = row->grade != FRAME_NOT_GIVEN_INT;
    add_text(into, row->name);
    frame_text_add(into, ",");
    add_number(into, row->length_in);
    frame_text_add(into, ",");
    add_number(into, row->price);
    frame_text_add(into, ",");
    add_text(into, frame_word_text("price_by", row->price_by));
    frame_text_add(into, ",");
    if (row->available != FRAME_NOT_GIVEN_INT) frame_text_addf(into, "%d", (int)row->available);
    frame_text_add(into, ",");
    add_text(into, has_size ? frame_size_name(row->size) : "");
    frame_text_add(into, ",");
    add_text(into, has_species ? frame_species_name(row->species) : "");
    frame_text_add(into, ",");
    add_text(into, has_grade ? frame_grade_name(row->grade) : "");
    frame_text_add(into, ",");
    add_number(into, row->weight_plf);
    frame_text_add(into, ",");
    add_numbers(into, row->defects_from_to_in, row->defect_count);
    frame_text_add(into, ",");
    add_outlines(into, of);
    frame_text_add(into, "\r\n");
}

frame_status frame_stock_room_csv(const frame_stock_room *room, frame_text *into) {
    if (!room || !into) return frame_fail(FRAME_REQUIRED, "into", "NULL", "a text", "into: NULL is no text");
    for (int c = 0; c < FRAME_ROOM_COLUMNS; c++)
        frame_text_addf(into, "%s%s", c ? "," : "", frame_room_columns[c].name);
    frame_text_add(into, "\r\n");
    for (size_t r = 0; r < room->rows.count; r++) add_row(&FRAME_ITEM(frame_room_row, room->rows, r), into);
    return frame_text_state(into);
}
