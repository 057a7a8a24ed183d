/* Single values of a language into numbers, words and texts of the library. What does not fit is refused with the
 * field, the value, and what would be valid; nothing is guessed. */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "base/number.h"
#include "bound.h"

bound_notation bound_notation_of(const char *name) {
    const size_t length = strlen(name);
    if (!strcmp(name, "slope") || !strcmp(name, "slopes") || !strncmp(name, "slope_", 6) ||
        (length > 6 && !strcmp(name + length - 6, "_slope")) || (length > 7 && !strcmp(name + length - 7, "_slopes")))
        return BOUND_SLOPE;
    if (!strcmp(name, "inches") || (length > 3 && !strcmp(name + length - 3, "_in"))) return BOUND_LENGTH;
    if (length > 4 && !strcmp(name + length - 4, "_deg")) return BOUND_ANGLE;
    return BOUND_PLAIN;
}

/* A value as a message shows it. */
static const char *shown(const bound_value *value, char *into, size_t size) {
    if (value->kind == BOUND_TEXT)
        snprintf(into, size, "\"%.*s\"", value->length < 64 ? (int)value->length : 64, value->text);
    else if (value->kind == BOUND_NUMBER || value->kind == BOUND_INTEGER)
        frame_number_print(value->number, 15, into, size);
    else
        snprintf(into, size, "%s", value->type);
    return into;
}

static frame_status wrong(const char *name, const bound_value *value, const char *wanted, const char *valid) {
    char text[96];
    shown(value, text, sizeof text);
    return frame_fail(FRAME_WRONG_TYPE, name, text, *valid ? valid : wanted, "%s: %s is not %s%s%s", name, text, wanted,
                      *valid ? "; valid is " : "", valid);
}

/* Characters that end by a zero, in a buffer, for the library's readers. NULL for what no notation can be. */
static const char *ended(const bound_value *value, char *into, size_t size) {
    if (value->length >= size || memchr(value->text, 0, value->length)) return NULL;
    memcpy(into, value->text, value->length);
    into[value->length] = 0;
    return into;
}

static frame_status read_notation(bound_notation notation, const char *text, double *into) {
    switch (notation) {
        case BOUND_LENGTH:
            return frame_tape_parse(text, into);
        case BOUND_SLOPE:
            return frame_slope_parse(text, into);
        default:
            return frame_angle_parse(text, into);
    }
}

static frame_status number_of_text(const char *name, bound_notation notation, const char *valid,
                                   const bound_value *value, double *into) {
    char text[128], message[640], field_value[128];
    if (notation == BOUND_PLAIN) return wrong(name, value, "a number", valid);
    if (!ended(value, text, sizeof text)) {
        shown(value, field_value, sizeof field_value);
        return frame_fail(FRAME_UNREADABLE, name, field_value, valid, "%s: %s cannot be read; valid is %s", name,
                          field_value, *valid ? valid : "a number");
    }
    const frame_status status = read_notation(notation, text, into);
    if (!status) return FRAME_OK;
    char ours[160];
    snprintf(message, sizeof message, "%s", frame_error_text());
    snprintf(ours, sizeof ours, "%s", frame_error_field());
    /* The reader names its own argument; here the field is known. */
    const size_t length = strlen(ours);
    const char *rest =
        length && !strncmp(message, ours, length) && message[length] == ':' ? message + length + 2 : message;
    return frame_fail(status, name, text, valid, "%s: %s%s%s", name, rest, *valid ? "; valid is " : "", valid);
}

frame_status bound_take_number(const char *name, bound_notation notation, const char *valid, const bound_value *value,
                               double *into) {
    if (value->kind == BOUND_TEXT) return number_of_text(name, notation, valid, value, into);
    if (value->kind != BOUND_NUMBER && value->kind != BOUND_INTEGER) return wrong(name, value, "a number", valid);
    /* The mark for "not given" is for C alone: written out by a caller it is a number out of range. */
    if (value->number == FRAME_NOT_GIVEN) return frame_fail_number(FRAME_OUT_OF_RANGE, name, value->number, valid);
    *into = value->number;
    return FRAME_OK;
}

frame_status bound_take_integer(const char *name, const char *valid, const bound_value *value, int32_t *into) {
    if (value->kind != BOUND_NUMBER && value->kind != BOUND_INTEGER) return wrong(name, value, "a whole number", valid);
    if (!isfinite(value->number)) {
        char text[32];
        frame_number_print(value->number, 15, text, sizeof text);
        return frame_fail(FRAME_NOT_A_NUMBER, name, text, valid, "%s: %s is not a number; valid is %s", name, text,
                          valid);
    }
    if (value->number != floor(value->number)) return wrong(name, value, "a whole number", valid);
    if (!(value->number > (double)INT32_MIN && value->number <= (double)INT32_MAX))
        return frame_fail_number(FRAME_OUT_OF_RANGE, name, value->number, valid);
    *into = (int32_t)value->number;
    return FRAME_OK;
}

frame_status bound_take_bool(const char *name, const bound_value *value, int32_t *into) {
    if (value->kind != BOUND_BOOL) return wrong(name, value, "a yes or no", "true or false");
    *into = value->integer != 0;
    return FRAME_OK;
}

/* Whether bytes are UTF-8 without a zero: what is written into pages and drawings must be. */
static int is_text(const char *chars, size_t length) {
    const unsigned char *c = (const unsigned char *)chars, *end = c + length;
    while (c < end) {
        const unsigned char first = *c++;
        if (!first) return 0;
        if (first < 0x80) continue;
        const int more = first >= 0xC2 && first < 0xE0   ? 1
                         : first >= 0xE0 && first < 0xF0 ? 2
                         : first >= 0xF0 && first < 0xF5 ? 3
                                                         : 0;
        if (!more || end - c < more) return 0;
        if ((first == 0xE0 && c[0] < 0xA0) || (first == 0xED && c[0] > 0x9F) || (first == 0xF0 && c[0] < 0x90) ||
            (first == 0xF4 && c[0] > 0x8F))
            return 0;
        for (int i = 0; i < more; i++, c++)
            if ((*c & 0xC0) != 0x80) return 0;
    }
    return 1;
}

static frame_status not_text(const char *name) {
    return frame_fail(FRAME_UNREADABLE, name, "", "text in UTF-8", "%s: not a text: it holds a zero or is not UTF-8",
                      name);
}

frame_status bound_take_text(const char *name, const bound_value *value, const char **into, frame_arena *arena) {
    if (value->kind != BOUND_TEXT) return wrong(name, value, "a text", "");
    if (!is_text(value->text, value->length)) return not_text(name);
    char *copy = frame_arena_take(arena, value->length + 1);
    if (!copy) return FRAME_NO_MEMORY;
    memcpy(copy, value->text, value->length);
    copy[value->length] = 0;
    *into = copy;
    return FRAME_OK;
}

frame_status bound_check_text(const char *name, const bound_value *value, const char **into) {
    if (value->kind != BOUND_TEXT) return wrong(name, value, "a text", "");
    if (!is_text(value->text, value->length)) return not_text(name);
    *into = value->text;
    return FRAME_OK;
}

frame_status bound_take_size(const char *name, const bound_value *value, size_t *into) {
    int32_t number = 0;
    const frame_status status = bound_take_integer(name, "0..2147483647", value, &number);
    if (status) return status;
    if (number < 0) return frame_fail_number(FRAME_OUT_OF_RANGE, name, number, "0..2147483647");
    *into = (size_t)number;
    return FRAME_OK;
}

int32_t bound_first_word(const char *name) {
    return frame_word_at(name, 0);
}

/* The list's own message, told of the field. */
static frame_status refuse_word(const char *name, const char *list, const char *text, frame_status status) {
    char message[640], valid[320];
    snprintf(message, sizeof message, "%s", frame_error_text());
    snprintf(valid, sizeof valid, "%s", frame_error_valid());
    const size_t length = strlen(list);
    const char *rest = !strncmp(message, list, length) && message[length] == ':' ? message + length + 2 : message;
    return frame_fail(status, name, text, valid, "%s: %s", name, rest);
}

/* A year is a word as it is written: edition = 2021. */
static int is_year(const bound_value *value) {
    return value->kind == BOUND_INTEGER && value->integer >= 1000 && value->integer <= 9999;
}

frame_status bound_take_word(const bound_host *host, const char *name, int words, const bound_value *value,
                             int32_t *into) {
    const char *list = bound_words[words]->name;
    char text[128], valid[64];
    if (is_year(value)) {
        snprintf(text, sizeof text, "%d", (int)value->integer);
        const frame_status status = frame_word_find(list, text, into);
        return status ? refuse_word(name, list, text, status) : FRAME_OK;
    }
    if (value->kind != BOUND_TEXT) {
        /* Numbers of words are the library's own: grade = 2 must not become the grade that happens to have that number.
         */
        snprintf(valid, sizeof valid, "a word of the list %s", list);
        return wrong(name, value, "a word", valid);
    }
    if (host->recall && host->recall(host, words, value, into)) return FRAME_OK;
    if (!ended(value, text, sizeof text) || !is_text(value->text, value->length)) {
        snprintf(valid, sizeof valid, "a word of the list %s", list);
        return frame_fail(FRAME_UNKNOWN_NAME, name, "", valid, "%s: not a word of the list %s", name, list);
    }
    const frame_status status = frame_word_find(list, text, into);
    if (status) return refuse_word(name, list, text, status);
    if (host->remember) host->remember(host, words, value, *into);
    return FRAME_OK;
}
