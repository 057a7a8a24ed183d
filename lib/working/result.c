/* Any result as a block to read, from the field facts alone. */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "base/facts.h"
#include "tape/tape.h"
#include "text/writer.h"

enum { VALUE_COLUMN = 30, WRAP_COLUMN = 100 };

static const void *place_of(const frame_field *field, const void *object) {
    return (const char *)object + field->offset;
}

static int int_of(const frame_field *field, const void *object, int32_t *value) {
    *value = *(const int32_t *)place_of(field, object);
    return *value != FRAME_NOT_GIVEN_INT;
}

static void write_slope(frame_text *into, double slope) {
    frame_text_add(into, "   ");
    frame_text_add_number(into, 12 * slope, 5);
    frame_text_add(into, " in 12");
}

static void write_number(const frame_field *field, double value, frame_text *into) {
    frame_text_add_number(into, value, fabs(value) < 1e6 ? 6 : 9);
    if (*field->unit) frame_text_addf(into, " %s", field->unit);
    if (!strcmp(field->unit, "in") && fabs(value) < 1e6) {
        frame_text_add(into, "   ");
        frame_tape_add(into, value, 16);
    }
    if (!strcmp(field->name, "slope") || !strncmp(field->name, "slope_", 6)) write_slope(into, value);
}

/* Writes a field's value; 0 when there is nothing to say. */
static int write_value(const frame_field *field, const void *object, frame_text *into) {
    int32_t whole;
    if (field->kind == FRAME_FIELD_NUMBER) {
        const double value = *(const double *)place_of(field, object);
        if (value == FRAME_NOT_GIVEN) return 0;
        write_number(field, value, into);
        return 1;
    }
    if (field->kind == FRAME_FIELD_TEXT) {
        const char *text = *(const char *const *)place_of(field, object);
        if (text) frame_text_add(into, text);
        return text != NULL;
    }
    if (field->kind != FRAME_FIELD_INTEGER && field->kind != FRAME_FIELD_WORD && field->kind != FRAME_FIELD_BOOL)
        return 0;
    if (!int_of(field, object, &whole)) return 0;
    if (field->kind == FRAME_FIELD_BOOL) {
        frame_text_add(into, whole ? "yes" : "no");
        return 1;
    }
    const char *word = field->kind == FRAME_FIELD_WORD ? frame_word_text(field->words, whole) : NULL;
    if (field->kind == FRAME_FIELD_WORD && !word) return 0;
    if (word)
        frame_text_add(into, word);
    else
        frame_text_addf(into, "%d", (int)whole);
    return 1;
}

static void write_line(const frame_field *field, const void *object, frame_text *into) {
    const size_t before = frame_text_length(into);
    frame_text_addf(into, "  %s", field->name);
    frame_text_pad(into, VALUE_COLUMN);
    if (write_value(field, object, into))
        frame_text_add(into, "\n");
    else
        frame_text_cut(into, before);
}

/* A sentence under a heading, wrapped between words, further lines set in. */
static void write_sentence(const char *sentence, frame_text *into) {
    size_t column = 4;
    frame_text_add(into, "  - ");
    while (*sentence) {
        const size_t length = strcspn(sentence, " ");
        if (column + length > WRAP_COLUMN && column > 4) {
            frame_text_add(into, "\n    ");
            column = 4;
        }
        frame_text_add_bytes(into, sentence, length);
        sentence += length;
        column += length + 1;
        if (*sentence == ' ') {
            sentence++;
            if (*sentence && column + strcspn(sentence, " ") <= WRAP_COLUMN)
                frame_text_add(into, " ");
            else if (*sentence)
                frame_text_add(into, "\n    "), column = 4;
        }
    }
    frame_text_add(into, "\n");
}

frame_status frame_assumed_text(const frame_field *field, frame_text *into) {
    if (field->kind == FRAME_FIELD_LIST) {
        frame_text_addf(into, "%s: defaults were used in its items", field->name);
        return frame_text_state(into);
    }
    const int has_unit = *field->unit && field->fallback != FRAME_NOT_GIVEN; /* a phrase has its unit in it */
    frame_text_addf(into, "%s = %s%s%s: %s", field->name, field->fallback_text, has_unit ? " " : "",
                    has_unit ? field->unit : "", field->meaning);
    return frame_text_state(into);
}

static const frame_struct *in_facts_of(const frame_struct *out) {
    char name[96];
    const size_t length = strlen(out->name);
    if (length < 5 || length >= sizeof name || strcmp(out->name + length - 4, "_out")) return NULL;
    memcpy(name, out->name, length - 4);
    memcpy(name + length - 4, "_in", 4);
    return frame_struct_find(name);
}

static void write_assumed(const frame_struct *out, uint64_t bits, frame_text *into) {
    const frame_struct *in = in_facts_of(out);
    frame_text *one;
    if (!in || !bits) return;
    if (frame_text_new(&one)) {
        frame_text_fail(into); /* a block without what was assumed would mislead */
        return;
    }
    frame_text_add(into, "assumed\n");
    for (size_t i = 0; i < in->field_count; i++) {
        if (in->fields[i].assumed_bit < 0 || !FRAME_HAS(bits, in->fields[i].assumed_bit)) continue;
        frame_text_clear(one);
        if (frame_assumed_text(&in->fields[i], one))
            frame_text_fail(into);
        else
            write_sentence(frame_text_chars(one), into);
    }
    frame_text_free(one);
}

static void write_bits(const frame_field *field, uint64_t bits, frame_text *into) {
    const size_t count = frame_word_count(field->words);
    if (!bits) return;
    for (const char *c = field->name; *c; c++) frame_text_add_bytes(into, *c == '_' ? " " : c, 1);
    frame_text_add(into, "\n");
    for (size_t i = 0; i < count; i++) {
        const int32_t bit = frame_word_at(field->words, i);
        if (FRAME_HAS(bits, bit)) write_sentence(frame_word_meaning(field->words, bit), into);
    }
}

static void write_title(const frame_struct *facts, frame_text *into) {
    const size_t length = strlen(facts->name);
    const size_t shown = length > 4 && !strcmp(facts->name + length - 4, "_out") ? length - 4 : length;
    for (size_t i = 0; i < shown; i++) frame_text_add_bytes(into, facts->name[i] == '_' ? " " : &facts->name[i], 1);
    frame_text_add(into, "\n");
}

frame_status frame_result_text(const void *out, frame_text *into) {
    if (!out || !into) return frame_fail(FRAME_REQUIRED, "out", "NULL", "a result", "out: NULL is not a result");
    const frame_struct *facts = frame_struct_by_id(((const uint32_t *)out)[1]);
    if (!facts)
        return frame_fail(FRAME_WRONG_TYPE, "out", "", "a result of this library", "out: not a result of this library");
    const uint32_t size = ((const uint32_t *)out)[0];
    write_title(facts, into);
    for (size_t i = 0; i < facts->field_count; i++)
        if (facts->fields[i].kind != FRAME_FIELD_BITS && facts->fields[i].offset < size)
            write_line(&facts->fields[i], out, into);
    for (size_t i = 0; i < facts->field_count; i++) {
        const frame_field *field = &facts->fields[i];
        if (field->kind != FRAME_FIELD_BITS || field->offset >= size) continue;
        const uint64_t bits = *(const uint64_t *)place_of(field, out);
        if (!strcmp(field->words, "assumed"))
            write_assumed(facts, bits, into);
        else
            write_bits(field, bits, into);
    }
    return frame_text_state(into);
}
