/* Printed cells. */
#include "printed.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <frame/tape.h>
#include <frame/text.h>

int rounding_of(const char *word, rounding *way) {
    static const char *const words[] = {"nearest", "down", "up"};
    *way = ROUND_NEAREST;
    for (int i = 0; i < 3; i++)
        if (!strcmp(word, words[i])) *way = (rounding)i;
    return *word && strcmp(word, words[*way]);
}

/* The place of the last digit: 1 for whole numbers, a tenth for each decimal, the fraction's denominator. */
static double last_place(const char *text) {
    double below;
    const char *slash = strchr(text, '/'), *point = strchr(text, '.');
    if (slash && !frame_number_read(slash + 1, NULL, &below) && below > 0) return 1 / below;
    return point ? pow(10, -(double)strspn(point + 1, "0123456789")) : 1;
}

static int read_unit(const char *text, double *unit) {
    double below;
    const char *end;
    if (frame_number_read(text, &end, unit)) return 1;
    if (*end == '/') {
        if (frame_number_read(end + 1, &end, &below) || below <= 0) return 1;
        *unit /= below;
    }
    return *end || *unit <= 0;
}

/* Feet and inches as span tables print them: "12-6". A tape would refuse that. */
static int read_span(const char *text, double *inches) {
    const size_t feet = strspn(text, "0123456789"), rest = feet + 1;
    if (!feet || text[feet] != '-') return 0;
    const size_t more = strspn(text + rest, "0123456789");
    if (!more || text[rest + more]) return 0;
    *inches = atof(text) * 12 + atof(text + rest);
    return 1;
}

static int read_value(const char *text, double *value) {
    const char *end;
    if (read_span(text, value)) return 1;
    if (!frame_number_read(text, &end, value) && !*end) return 1;
    return !frame_tape_parse(text, value);
}

int printed_read(printed *cell, const char *text, const char *unit_text) {
    *cell = (printed){.text = text, .unit = last_place(text)};
    if (*unit_text && read_unit(unit_text, &cell->unit)) return 1;
    if (*text == '>' || *text == '<') cell->bound = *text++;
    cell->is_number = read_value(text, &cell->value);
    return cell->bound && !cell->is_number;
}

int printed_agrees(const printed *cell, rounding way, double ours) {
    const double slack = 1e-9 * (fabs(ours) + cell->unit), half = cell->unit / 2 + slack;
    if (cell->bound == '>') return ours > cell->value - slack;
    if (cell->bound == '<') return ours < cell->value + slack;
    const double more = ours - cell->value;
    if (way == ROUND_DOWN) return more > -slack && more < cell->unit;
    if (way == ROUND_UP) return more < slack && more > -cell->unit;
    return fabs(more) <= half;
}

int figure_of(const frame_field *field, const void *out, double *value) {
    const char *place = (const char *)out + field->offset;
    int32_t whole;
    switch (field->kind) {
        case FRAME_FIELD_NUMBER:
            memcpy(value, place, sizeof *value);
            return *value != FRAME_NOT_GIVEN;
        case FRAME_FIELD_INTEGER:
        case FRAME_FIELD_BOOL:
            memcpy(&whole, place, sizeof whole);
            *value = whole;
            return whole != FRAME_NOT_GIVEN_INT;
        default:
            return 0;
    }
}

const char *word_of(const frame_field *field, const void *out) {
    const char *place = (const char *)out + field->offset, *text = NULL;
    int32_t whole;
    if (field->kind == FRAME_FIELD_WORD) {
        memcpy(&whole, place, sizeof whole);
        text = frame_word_text(field->words, whole);
    } else if (field->kind == FRAME_FIELD_TEXT) {
        memcpy(&text, place, sizeof text);
    }
    return text ? text : "none";
}

void figure_text(const printed *cell, double ours, char *text, size_t size) {
    const int decimals = (int)fmax(0, fmin(9, 2 - floor(log10(cell->unit) + 1e-9)));
    snprintf(text, size, "%.*f", decimals, ours);
}
