/* Words for what validation refused: the field, the value, and what would have been valid. */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "base/facts.h"
#include "base/number.h"

static frame_status missing(const frame_field *field) {
    return frame_fail(FRAME_REQUIRED, field->name, "", field->valid, "%s: not given; it is required%s%s", field->name,
                      *field->valid ? ": " : "", field->valid);
}

static frame_status explain_number(const frame_field *field, double value) {
    char written[32];
    if (!isfinite(value)) {
        frame_number_print(value, 15, written, sizeof written);
        return frame_fail(FRAME_NOT_A_NUMBER, field->name, written, field->valid, "%s: %s is not a number; valid is %s",
                          field->name, written, field->valid);
    }
    const int low = field->low_open ? value > field->low : value >= field->low;
    const int high = field->high_open ? value < field->high : value <= field->high;
    return low && high ? FRAME_OK : frame_fail_number(FRAME_OUT_OF_RANGE, field->name, value, field->valid);
}

static frame_status explain_word(const frame_field *field, int32_t value) {
    if (frame_word_text(field->words, value)) return FRAME_OK;
    char written[16];
    snprintf(written, sizeof written, "%d", (int)value);
    return frame_fail(FRAME_UNKNOWN_NAME, field->name, written, field->valid, "%s: %s stands for no %s; valid is %s",
                      field->name, written, field->words, field->valid);
}

static frame_status explain_field(const frame_field *field, const char *place) {
    if (field->kind == FRAME_FIELD_TEXT)
        return field->need == FRAME_FIELD_REQUIRED && !*(const char *const *)(const void *)place ? missing(field)
                                                                                                 : FRAME_OK;
    if (field->kind == FRAME_FIELD_NUMBER) {
        const double value = *(const double *)(const void *)place;
        if (value == FRAME_NOT_GIVEN) return field->need == FRAME_FIELD_REQUIRED ? missing(field) : FRAME_OK;
        return explain_number(field, value);
    }
    if (field->kind != FRAME_FIELD_INTEGER && field->kind != FRAME_FIELD_WORD && field->kind != FRAME_FIELD_BOOL)
        return FRAME_OK;
    const int32_t value = *(const int32_t *)(const void *)place;
    if (value == FRAME_NOT_GIVEN_INT) return field->need == FRAME_FIELD_REQUIRED ? missing(field) : FRAME_OK;
    if (field->kind == FRAME_FIELD_WORD) return explain_word(field, value);
    if (field->kind == FRAME_FIELD_BOOL)
        return value == 0 || value == 1 ? FRAME_OK
                                        : frame_fail_number(FRAME_OUT_OF_RANGE, field->name, value, field->valid);
    return explain_number(field, value);
}

frame_status frame_struct_explain(const frame_struct *facts, const void *in) {
    for (size_t i = 0; i < facts->field_count; i++) {
        const frame_field *field = &facts->fields[i];
        if (field->need == FRAME_FIELD_RESULT) continue;
        const frame_status status = explain_field(field, (const char *)in + field->offset);
        if (status) return status;
    }
    return frame_fail(FRAME_INTERNAL, facts->name, "", "", "%s: refused, but no field is at fault", facts->name);
}

/* Quick for the many that are right. */
static int is_within(const frame_field *field, double value) {
    const int above = field->low_open ? value > field->low : value >= field->low;
    const int below = field->high_open ? value < field->high : value <= field->high;
    return above && below;
}

static frame_status explain_numbers(const frame_field *field, const double *numbers, size_t count) {
    for (size_t i = 0; i < count; i++) {
        if (is_within(field, numbers[i])) continue;
        char name[160];
        frame_field one = *field;
        snprintf(name, sizeof name, "%s[%zu]", field->name, i);
        one.name = name;
        if (numbers[i] == FRAME_NOT_GIVEN) return missing(&one);
        if (explain_number(&one, numbers[i])) return frame_error_status();
    }
    return FRAME_OK;
}

static frame_status explain_words(const frame_field *field, const int32_t *words, size_t count) {
    for (size_t i = 0; i < count; i++) {
        char name[160];
        frame_field one = *field;
        snprintf(name, sizeof name, "%s[%zu]", field->name, i);
        one.name = name;
        if (words[i] == FRAME_NOT_GIVEN_INT) return missing(&one);
        if (explain_word(&one, words[i])) return frame_error_status();
    }
    return FRAME_OK;
}

frame_status frame_struct_list(const frame_struct *facts, const char *name, const void *in, double least, double most) {
    const frame_field *field = frame_field_find(facts, name);
    const void *items = *(const void *const *)(const void *)((const char *)in + field->offset);
    const size_t count = *(const size_t *)(const void *)((const char *)in + field->count_offset);
    if (!count && field->need == FRAME_FIELD_REQUIRED) return missing(field);
    if (count && !items)
        return frame_fail(FRAME_REQUIRED, name, "NULL", field->valid, "%s: NULL with a count of %zu", name, count);
    if ((double)count < least || (double)count > most) {
        char written[24], valid[64];
        snprintf(written, sizeof written, "%zu", count);
        snprintf(valid, sizeof valid, "%d to %d items", (int)least, (int)most);
        return frame_fail(FRAME_OUT_OF_RANGE, name, written, valid, "%s: %s items are not in %s", name, written, valid);
    }
    /* An element ends on eight bytes: items of another size were never set up, and would stand askew in memory. */
    if (field->element && count && *(const uint32_t *)items % 8)
        return frame_fail(FRAME_NOT_INITIALISED, name, "", "items set up by their init function",
                          "%s[0]: not set up; call frame_%s_init first", name, field->element->name);
    if (field->kind == FRAME_FIELD_NUMBERS) return explain_numbers(field, items, count);
    return field->kind == FRAME_FIELD_WORDS ? explain_words(field, items, count) : FRAME_OK;
}
