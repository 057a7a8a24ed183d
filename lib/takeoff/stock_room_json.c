/* A stock room as JSON: an array of objects, a row each, with the names of the CSV's columns. */
#include <string.h>

#include "base/error.h"
#include "takeoff/stock_room.h"
#include "takeoff/stock_write.h"
#include "takeoff_facts.h"

typedef struct reading {
    frame_stock_room *room;
    frame_text *key, *value;
    const char *at;
    int line, column;
    int value_line, value_column; /* where the value at hand began */
} reading;

static frame_status fail(const reading *of, const char *what) {
    return frame_fail(FRAME_UNREADABLE, "json", "", "a stock room as stock_room.json writes it",
                      "line %d, column %d: %s", of->line, of->column, what);
}

static void step(reading *of) {
    if (*of->at == '\n')
        of->line++, of->column = 1;
    else
        of->column++;
    of->at++;
}

static void skip(reading *of) {
    while (*of->at == ' ' || *of->at == '\t' || *of->at == '\r' || *of->at == '\n') step(of);
}

static int take(reading *of, char c) {
    skip(of);
    if (*of->at != c) return 0;
    step(of);
    return 1;
}

static int hex(const char *at) {
    int value = 0;
    for (int i = 0; i < 4; i++) {
        const char *digit = at[i] ? strchr("0123456789abcdef", at[i] | 32) : NULL;
        if (!digit) return -1;
        value = value * 16 + (int)(digit - "0123456789abcdef");
    }
    return value;
}

static void add_character(frame_text *into, long code) {
    char bytes[4];
    const int count = code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
    for (int i = count - 1; i > 0; i--, code >>= 6) bytes[i] = (char)(0x80 | (code & 0x3f));
    bytes[0] = (char)(count == 1 ? code : (0xf00 >> count & 0xff) | code);
    frame_text_add_bytes(into, bytes, (size_t)count);
}

/* What follows a backslash and a u; two of them for a character beyond the first plane. */
static frame_status read_code(reading *of, frame_text *into) {
    long code = hex(of->at + 1);
    if (code < 0) return fail(of, "four hexadecimal digits are missing");
    for (int i = 0; i < 5; i++) step(of);
    if (code >= 0xd800 && code < 0xdc00) {
        const long low = of->at[0] == '\\' && of->at[1] == 'u' ? hex(of->at + 2) : -1;
        if (low < 0xdc00 || low > 0xdfff) return fail(of, "half a character");
        for (int i = 0; i < 6; i++) step(of);
        code = 0x10000 + ((code - 0xd800) << 10) + (low - 0xdc00);
    } else if (code == 0 || (code >= 0xdc00 && code <= 0xdfff)) {
        return fail(of, "no character has this number");
    }
    add_character(into, code);
    return FRAME_OK;
}

static frame_status read_escape(reading *of, frame_text *into) {
    static const char letters[] = "\"\\/bfnrt", meant[] = "\"\\/\b\f\n\r\t";
    step(of);
    if (*of->at == 'u') return read_code(of, into);
    const char *letter = *of->at ? strchr(letters, *of->at) : NULL;
    if (!letter) return fail(of, "no such escape");
    frame_text_add_bytes(into, &meant[letter - letters], 1);
    step(of);
    return FRAME_OK;
}

static frame_status read_string(reading *of, frame_text *into) {
    frame_status status = FRAME_OK;
    frame_text_clear(into);
    if (!take(of, '"')) return fail(of, "a text in quotes is missing");
    while (!status && *of->at != '"') {
        if ((unsigned char)*of->at < 0x20) return fail(of, "a text is not closed");
        if (*of->at == '\\') {
            status = read_escape(of, into);
            continue;
        }
        frame_text_add_bytes(into, of->at, 1);
        step(of);
    }
    if (!status) step(of);
    return status ? status : frame_text_state(into);
}

static frame_status read_number(reading *of, frame_text *into) {
    const size_t length = strspn(of->at, "+-0123456789.eE");
    if (!length) return fail(of, "a value is missing");
    frame_text_add_bytes(into, of->at, length);
    for (size_t i = 0; i < length; i++) step(of);
    return frame_text_state(into);
}

/* Numbers in brackets, parted as the CSV parts them. */
static frame_status read_numbers(reading *of) {
    frame_status status = FRAME_OK;
    step(of);
    if (take(of, ']')) return FRAME_OK;
    for (int n = 0; !status && (!n || take(of, ',')); n++) {
        skip(of);
        if (n) frame_text_add(of->value, " ");
        status = read_number(of, of->value);
    }
    if (!status && !take(of, ']')) status = fail(of, "a ] is missing");
    return status;
}

/* The like, or an array of them, parted by semicolons. */
static frame_status read_array(reading *of) {
    const char *after = of->at + 1 + strspn(of->at + 1, " \t\r\n");
    frame_status status = FRAME_OK;
    if (*after != '[') return read_numbers(of);
    step(of);
    for (int n = 0; !status && (!n || take(of, ',')); n++) {
        skip(of);
        if (n) frame_text_add(of->value, "; ");
        status = *of->at == '[' ? read_numbers(of) : fail(of, "a [ is missing");
    }
    if (!status && !take(of, ']')) status = fail(of, "a ] is missing");
    return status;
}

/* A value as the text a CSV would have; null is "". */
static frame_status read_value(reading *of) {
    frame_text_clear(of->value);
    skip(of);
    of->value_line = of->line;
    of->value_column = of->column;
    if (*of->at == '"') return read_string(of, of->value);
    if (*of->at == '[') return read_array(of);
    if (!strncmp(of->at, "null", 4)) {
        for (int i = 0; i < 4; i++) step(of);
        return FRAME_OK;
    }
    return read_number(of, of->value);
}

static frame_status read_pair(reading *of, frame_room_row *row, uint32_t *seen) {
    skip(of);
    const int line = of->line, column = of->column;
    frame_status status = read_string(of, of->key);
    if (status) return status;
    const int which = frame_room_column_find(frame_text_chars(of->key));
    if (which < 0 || (*seen >> which & 1u)) {
        of->line = line, of->column = column;
        return fail(of, which < 0 ? "this is no field of a row" : "a field is given twice");
    }
    *seen |= 1u << which;
    if (!take(of, ':')) return fail(of, "a : is missing");
    status = read_value(of);
    if (status) return status;
    status = frame_room_set(of->room, row, which, frame_text_chars(of->value));
    return status ? frame_room_fail_at(status, of->value_line, of->value_column) : FRAME_OK;
}

static frame_status read_row(reading *of) {
    frame_room_row row;
    uint32_t seen = 0;
    frame_status status = FRAME_OK;
    frame_room_row_init(&row);
    skip(of);
    const int line = of->line, column = of->column;
    if (!take(of, '{')) return fail(of, "a { is missing");
    if (!take(of, '}')) {
        do status = read_pair(of, &row, &seen);
        while (!status && take(of, ','));
        if (!status && !take(of, '}')) status = fail(of, "a } is missing");
    }
    if (status) return status;
    status = frame_room_check(&row);
    if (!status) status = frame_room_add(of->room, &row);
    return status ? frame_room_fail_at(status, line, column) : FRAME_OK;
}

static frame_status read_all(reading *of) {
    frame_status status = FRAME_OK;
    if (!take(of, '[')) return fail(of, "a [ is missing");
    if (!take(of, ']')) {
        do status = read_row(of);
        while (!status && take(of, ','));
        if (!status && !take(of, ']')) status = fail(of, "a ] is missing");
    }
    skip(of);
    return !status && *of->at ? fail(of, "something stands behind the end") : status;
}

frame_status frame_stock_room_from_json(const char *json, frame_stock_room **room) {
    reading of = {.at = json, .line = 1, .column = 1};
    if (!json || !room) return frame_fail(FRAME_REQUIRED, "json", "NULL", "a text", "json: NULL is no text");
    frame_status status = frame_stock_room_new(&of.room);
    if (!status) status = frame_text_new(&of.key);
    if (!status) status = frame_text_new(&of.value);
    if (!status) status = read_all(&of);
    frame_text_free(of.key);
    frame_text_free(of.value);
    if (status)
        frame_stock_room_free(of.room);
    else
        *room = of.room;
    return status;
}

/* -- writing -- */

static void add_text(frame_text *into, const char *name, const char *value) {
    if (!value) return;
    frame_text_addf(into, ", \"%s\": ", name);
    frame_text_add_json(into, value);
}

static void add_number(frame_text *into, const char *name, double value) {
    if (value == FRAME_NOT_GIVEN) return;
    frame_text_addf(into, ", \"%s\": ", name);
    frame_text_add_number(into, value, 17);
}

static void add_numbers(frame_text *into, const double *numbers, size_t count) {
    for (size_t n = 0; n < count; n++) {
        frame_text_add(into, n ? ", " : "[");
        frame_text_add_number(into, numbers[n], 17);
    }
    frame_text_add(into, count ? "]" : "[]");
}

static void add_outlines(const frame_room_row *row, frame_text *into) {
    add_number(into, "width_in", row->width_in);
    if (row->corners.count) frame_text_add(into, ", \"corners_in\": ");
    if (row->corners.count) add_numbers(into, row->corners.numbers, row->corners.count);
    for (size_t h = 0; h < row->hole_count; h++) {
        frame_text_add(into, h ? ", " : ", \"holes_in\": [");
        add_numbers(into, row->holes[h].numbers, row->holes[h].count);
    }
    frame_text_add(into, row->hole_count ? "]" : "");
}

static void add_row(const frame_room_row *of, frame_text *into) {
    const frame_stock_length *row = &of->of;
    frame_text_add(into, "{\"price\": ");
    frame_text_add_number(into, row->price, 17);
    add_number(into, "length_in", row->length_in);
    add_text(into, "name", row->name);
    add_text(into, "price_by", frame_word_text("price_by", row->price_by));
    if (row->available != FRAME_NOT_GIVEN_INT) add_number(into, "available", row->available);
    if (row->size != FRAME_NOT_GIVEN_INT) add_text(into, "size", frame_size_name(row->size));
    if (row->species != FRAME_NOT_GIVEN_INT) add_text(into, "species", frame_species_name(row->species));
    if (row->grade != FRAME_NOT_GIVEN_INT) add_text(into, "grade", frame_grade_name(row->grade));
    add_number(into, "weight_plf", row->weight_plf);
    if (row->defect_count) frame_text_add(into, ", \"defects_from_to_in\": ");
    if (row->defect_count) add_numbers(into, row->defects_from_to_in, row->defect_count);
    add_outlines(of, into);
    frame_text_add(into, "}");
}

frame_status frame_stock_room_json(const frame_stock_room *room, frame_text *into) {
    if (!room || !into) return frame_fail(FRAME_REQUIRED, "into", "NULL", "a text", "into: NULL is no text");
    frame_text_add(into, "[");
    for (size_t r = 0; r < room->rows.count; r++) {
        frame_text_add(into, r ? ",\n" : "\n");
        add_row(&FRAME_ITEM(frame_room_row, room->rows, r), into);
    }
    frame_text_add(into, "\n]\n");
    return frame_text_state(into);
}
