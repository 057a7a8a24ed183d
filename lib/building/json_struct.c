/* JSON's objects and lists into structs, field by field. */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include <frame/tape.h>

#include "base/error.h"
#include "building/json.h"
#include "building/site.h"

frame_notation frame_field_notation(const frame_field *field) {
    const char *name = field->name;
    const size_t length = strlen(name);
    if (!strcmp(name, "slope") || !strcmp(name, "slopes") || !strncmp(name, "slope_", 6) ||
        (length > 6 && !strcmp(name + length - 6, "_slope")) || (length > 7 && !strcmp(name + length - 7, "_slopes")))
        return FRAME_SLOPE;
    if (!strcmp(field->unit, "in")) return FRAME_LENGTH;
    return strcmp(field->unit, "deg") ? FRAME_PLAIN : FRAME_ANGLE;
}

/* Names the place of the failure just recorded: what failed knew none, or another name for it. */
static frame_status name_place(const char *path) {
    char value[120], valid[200], text[400];
    snprintf(value, sizeof value, "%s", frame_error_value());
    snprintf(valid, sizeof valid, "%s", frame_error_valid());
    snprintf(text, sizeof text, "%s", frame_error_text());
    return frame_fail(frame_error_status(), path, value, valid, "%s: %s", path, text);
}

frame_status frame_json_within(const char *path) {
    return *frame_error_field() ? frame_fail_within("%s.", path) : name_place(path);
}

static frame_status read_number(frame_json *json, const frame_field *field, double *number) {
    const frame_notation notation = frame_field_notation(field);
    if (frame_json_peek(json) != '"' || notation == FRAME_PLAIN) return frame_json_number(json, number);
    const char *text;
    const frame_status status = frame_json_text(json, &text);
    if (status) return status;
    if (notation == FRAME_LENGTH) return frame_tape_parse(text, number);
    return notation == FRAME_SLOPE ? frame_slope_parse(text, number) : frame_angle_parse(text, number);
}

static frame_status read_integer(frame_json *json, int32_t *integer) {
    double number;
    const frame_status status = frame_json_number(json, &number);
    if (status) return status;
    if (number != floor(number) || fabs(number) > 2e9)
        return frame_fail_number(FRAME_WRONG_TYPE, "", number, "a whole number");
    *integer = (int32_t)number;
    return FRAME_OK;
}

static frame_status read_word(frame_json *json, const char *words, int32_t *word) {
    const char *text;
    const frame_status status = frame_json_text(json, &text);
    return status ? status : frame_word_find(words, text, word);
}

static frame_status read_bool(frame_json *json, int32_t *value) {
    int found;
    const frame_status status = frame_json_name(json, &found);
    if (!status) *value = found;
    return status;
}

static frame_status read_item(frame_json *json, const frame_field *field, void *item) {
    if (field->kind == FRAME_FIELD_NUMBERS) return read_number(json, field, item);
    if (field->kind == FRAME_FIELD_WORDS) return read_word(json, field->words, item);
    return frame_json_struct(json, field->element, item);
}

static size_t item_size(const frame_field *field) {
    if (field->kind == FRAME_FIELD_NUMBERS) return sizeof(double);
    return field->kind == FRAME_FIELD_WORDS ? sizeof(int32_t) : field->element->size;
}

static void name_item(const frame_field *field, size_t place) {
    char path[160];
    snprintf(path, sizeof path, "%s[%zu]", field->name, place);
    if (field->kind == FRAME_FIELD_LIST)
        frame_json_within(path);
    else
        name_place(path);
}

static frame_status read_list(frame_json *json, const frame_field *field, void *object) {
    frame_array items = {.item_size = item_size(field)};
    frame_status status = frame_json_take(json, '[') ? FRAME_OK : frame_json_fail(json, "a list [");
    int more = 0;
    while (!status && (more = frame_json_more(json, ']', items.count)) > 0) {
        void *item = frame_array_push(&items, NULL);
        status = item ? read_item(json, field, item) : FRAME_NO_MEMORY;
        if (status && status != FRAME_NO_MEMORY) name_item(field, items.count - 1);
    }
    if (!status && more < 0) status = frame_json_fail(json, "a comma, or ] at the end of the list");
    void *kept = !status && items.count ? frame_arena_take(json->arena, items.count * items.item_size) : NULL;
    if (!status && items.count && !kept) status = FRAME_NO_MEMORY;
    if (kept) memcpy(kept, items.items, items.count * items.item_size);
    if (!status) {
        memcpy((char *)object + field->offset, &kept, sizeof kept);
        memcpy((char *)object + field->count_offset, &items.count, sizeof items.count);
    }
    frame_array_give(&items);
    return status;
}

static frame_status read_value(frame_json *json, const frame_field *field, void *object) {
    void *place = (char *)object + field->offset;
    switch (field->kind) {
        case FRAME_FIELD_NUMBER:
            return read_number(json, field, place);
        case FRAME_FIELD_INTEGER:
            return read_integer(json, place);
        case FRAME_FIELD_WORD:
            return read_word(json, field->words, place);
        case FRAME_FIELD_BOOL:
            return read_bool(json, place);
        case FRAME_FIELD_TEXT:
            return frame_json_text(json, place);
        default:
            return read_list(json, field, object);
    }
}

static int is_list(const frame_field *field) {
    return field->kind == FRAME_FIELD_LIST || field->kind == FRAME_FIELD_NUMBERS || field->kind == FRAME_FIELD_WORDS;
}

frame_status frame_json_field(frame_json *json, const frame_struct *facts, const frame_field *field, void *object) {
    int name;
    (void)facts;
    if (frame_json_peek(json) == 'n') return frame_json_name(json, &name);
    const frame_status status = read_value(json, field, object);
    if (status && status != FRAME_NO_MEMORY && (!is_list(field) || !*frame_error_field())) name_place(field->name);
    return status;
}

frame_status frame_json_key(const frame_struct *facts, const char *key, uint64_t *seen, const frame_field **field) {
    const frame_field *found = frame_field_find(facts, key);
    if (!found || found->need == FRAME_FIELD_RESULT || found->kind == FRAME_FIELD_HANDLE) {
        const char *nearest = frame_field_nearest(facts, key);
        return frame_fail(FRAME_UNKNOWN_FIELD, key, key, nearest ? nearest : "a field of this part",
                          "%s: there is no such field%s%s%s", key, nearest ? "; did you mean " : "",
                          nearest ? nearest : "", nearest ? "?" : "");
    }
    const size_t place = (size_t)(found - facts->fields);
    if (place < 64 && (*seen >> place & 1))
        return frame_fail(FRAME_CONFLICT, key, key, "given once", "%s: is given twice", key);
    if (place < 64) *seen |= FRAME_BIT(place);
    *field = found;
    return FRAME_OK;
}

frame_status frame_json_struct(frame_json *json, const frame_struct *facts, void *object) {
    uint64_t seen = 0;
    int more;
    memcpy(object, facts->blank, facts->size);
    if (!frame_json_take(json, '{')) return frame_json_fail(json, "an object {");
    for (size_t count = 0; (more = frame_json_more(json, '}', count)) > 0; count++) {
        const char *key;
        const frame_field *field;
        frame_status status = frame_json_text(json, &key);
        if (!status && !frame_json_take(json, ':')) status = frame_json_fail(json, "a colon after the field's name");
        if (!status) status = frame_json_key(facts, key, &seen, &field);
        if (!status) status = frame_json_field(json, facts, field, object);
        if (status) return status;
    }
    return more < 0 ? frame_json_fail(json, "a comma, or } at the end of the object") : FRAME_OK;
}
