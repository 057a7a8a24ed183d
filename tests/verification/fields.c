/* Text into fields. */
#include "fields.h"

#include <stdlib.h>
#include <string.h>

#include <frame/tape.h>
#include <frame/text.h>

#include "base/error.h"
#include "sheet.h"

static int ends_with(const char *name, const char *end) {
    const size_t length = strlen(name), tail = strlen(end);
    return length >= tail && !strcmp(name + length - tail, end);
}

static frame_status number_of(const char *name, const char *text, double *value) {
    if (ends_with(name, "_in")) return frame_tape_parse(text, value);
    if (ends_with(name, "slope") || ends_with(name, "slopes") || !strncmp(name, "slope_", 6))
        return frame_slope_parse(text, value);
    return frame_number_read(text, NULL, value);
}

static frame_status numbers_of(const frame_field *field, void *in, const char *text) {
    double *values = must(malloc((strlen(text) + 1) * sizeof *values));
    char *copy = must(strdup(text));
    size_t count = 0;
    frame_status status = FRAME_OK;
    for (char *each = strtok(copy, ";"); each && !status; each = strtok(NULL, ";"))
        status = number_of(field->name, each + strspn(each, " "), &values[count++]);
    free(copy);
    memcpy((char *)in + field->offset, &values, sizeof values);
    memcpy((char *)in + field->count_offset, &count, sizeof count);
    return status;
}

static frame_status words_of(const frame_field *field, void *in, const char *text) {
    int32_t *values = must(malloc((strlen(text) + 1) * sizeof *values));
    char *copy = must(strdup(text));
    size_t count = 0;
    frame_status status = FRAME_OK;
    for (char *each = strtok(copy, ";"); each && !status; each = strtok(NULL, ";"))
        status = frame_word_find(field->words, each + strspn(each, " "), &values[count++]);
    free(copy);
    memcpy((char *)in + field->offset, &values, sizeof values);
    memcpy((char *)in + field->count_offset, &count, sizeof count);
    return status;
}

static frame_status whole_of(const frame_field *field, const char *text, int32_t *value) {
    double number;
    if (field->kind == FRAME_FIELD_WORD) return frame_word_find(field->words, text, value);
    if (field->kind == FRAME_FIELD_BOOL && (!strcmp(text, "yes") || !strcmp(text, "no"))) {
        *value = !strcmp(text, "yes");
        return FRAME_OK;
    }
    const frame_status status = frame_number_read(text, NULL, &number);
    if (!status) *value = (int32_t)number;
    return status;
}

static frame_status set(const frame_field *field, void *in, const char *text);

/* Items parted by ";", the fields of each by spaces, in the order of the struct. */
static frame_status items_of(const frame_field *field, void *in, const char *text) {
    const frame_struct *facts = field->element;
    size_t count = 1;
    for (const char *at = text; *at; at++) count += *at == ';';
    char *items = must(calloc(count, frame_struct_size(facts))), *copy = must(strdup(text)), *rest = copy;
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < count && !status; i++) {
        char *item = items + i * frame_struct_size(facts), *each = rest, *end = strchr(rest, ';');
        if (end) *end = 0, rest = end + 1;
        status = frame_struct_init(facts, item, frame_struct_size(facts));
        for (size_t k = 0; k < frame_field_count(facts) && !status && *(each += strspn(each, " ")); k++) {
            const size_t length = strcspn(each, " ");
            const int more = each[length] != 0;
            each[length] = 0;
            status = set(frame_field_at(facts, k), item, each);
            each += length + (size_t)more;
        }
    }
    free(copy);
    memcpy((char *)in + field->offset, &items, sizeof items);
    memcpy((char *)in + field->count_offset, &count, sizeof count);
    return status;
}

static frame_status set(const frame_field *field, void *in, const char *text) {
    char *place = (char *)in + field->offset;
    double number;
    int32_t whole;
    frame_status status;
    switch (field->kind) {
        case FRAME_FIELD_NUMBER:
            if (!(status = number_of(field->name, text, &number))) memcpy(place, &number, sizeof number);
            return status;
        case FRAME_FIELD_INTEGER:
        case FRAME_FIELD_WORD:
        case FRAME_FIELD_BOOL:
            if (!(status = whole_of(field, text, &whole))) memcpy(place, &whole, sizeof whole);
            return status;
        case FRAME_FIELD_TEXT:
            memcpy(place, &text, sizeof text);
            return FRAME_OK;
        case FRAME_FIELD_NUMBERS:
            return numbers_of(field, in, text);
        case FRAME_FIELD_WORDS:
            return words_of(field, in, text);
        case FRAME_FIELD_LIST:
            return items_of(field, in, text);
        default:
            return frame_fail(FRAME_WRONG_TYPE, field->name, text, "a simple field", "%s: not for a table",
                              field->name);
    }
}

frame_status field_set(const frame_struct *facts, void *in, const char *name, const char *text) {
    const frame_field *field = frame_field_find(facts, name);
    if (!field)
        return frame_fail(FRAME_UNKNOWN_FIELD, name, text, frame_struct_name(facts), "%s has no field \"%s\"",
                          frame_struct_name(facts), name);
    return *text ? set(field, in, text) : FRAME_OK;
}

void fields_free(const frame_struct *facts, void *in) {
    for (size_t i = 0; i < frame_field_count(facts); i++) {
        const frame_field *field = frame_field_at(facts, i);
        void *values;
        if (field->kind != FRAME_FIELD_NUMBERS && field->kind != FRAME_FIELD_WORDS && field->kind != FRAME_FIELD_LIST)
            continue;
        memcpy(&values, (char *)in + field->offset, sizeof values);
        free(values);
    }
}
