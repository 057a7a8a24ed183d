/* Reading the field facts: look-ups, init, and what straight-line validation leaves to the table. */
#include "base/facts.h"

#include <math.h>
#include <string.h>

#include "base/error.h"

const frame_struct *frame_struct_find(const char *name) {
    for (size_t i = 0; name && i < frame_all.struct_count; i++)
        if (!strcmp(frame_all.structs[i]->name, name)) return frame_all.structs[i];
    return NULL;
}

const frame_struct *frame_struct_by_id(uint32_t id) {
    for (size_t i = 0; i < frame_all.struct_count; i++)
        if (frame_all.structs[i]->id == id) return frame_all.structs[i];
    return NULL;
}

size_t frame_struct_count(void) {
    return frame_all.struct_count;
}
const frame_struct *frame_struct_at(size_t index) {
    return index < frame_all.struct_count ? frame_all.structs[index] : NULL;
}
const char *frame_struct_name(const frame_struct *facts) {
    return facts->name;
}
const char *frame_struct_meaning(const frame_struct *facts) {
    return facts->meaning;
}
size_t frame_struct_size(const frame_struct *facts) {
    return facts->size;
}
uint32_t frame_struct_id(const frame_struct *facts) {
    return facts->id;
}
size_t frame_field_count(const frame_struct *facts) {
    return facts->field_count;
}
const frame_field *frame_field_at(const frame_struct *facts, size_t index) {
    return index < facts->field_count ? &facts->fields[index] : NULL;
}

const frame_field *frame_field_find(const frame_struct *facts, const char *name) {
    for (size_t i = 0; i < facts->field_count; i++)
        if (!strcmp(facts->fields[i].name, name)) return &facts->fields[i];
    return NULL;
}

const char *frame_field_nearest(const frame_struct *facts, const char *name) {
    frame_nearest nearest = {name, NULL, 0};
    for (size_t i = 0; i < facts->field_count; i++) frame_nearest_try(&nearest, facts->fields[i].name);
    return nearest.best;
}

frame_status frame_struct_init(const frame_struct *facts, void *object, size_t size) {
    if (!object)
        return frame_fail(FRAME_REQUIRED, facts->name, "NULL", "a struct", "%s: NULL is not a struct", facts->name);
    if (!facts->blank)
        return frame_fail(FRAME_WRONG_TYPE, facts->name, "", "an in-struct or an element", "%s: is only ever a result",
                          facts->name);
    if (size > facts->size)
        return frame_fail(FRAME_NEWER_HEADER, facts->name, "", "a header no newer than the library",
                          "frame_%s: the header is newer than this library (%zu bytes, known are %u)", facts->name,
                          size, (unsigned)facts->size);
    if (size < 2 * sizeof(uint32_t))
        return frame_fail(FRAME_NOT_INITIALISED, facts->name, "", "its sizeof", "frame_%s: size %zu is not its sizeof",
                          facts->name, size);
    memcpy(object, facts->blank, size);
    ((uint32_t *)object)[0] = (uint32_t)size;
    return FRAME_OK;
}

/* No struct that was set up ends in the middle of a number or, worse, a pointer. */
static int ends_in_a_field(const frame_struct *facts, uint32_t end) {
    for (size_t i = 0; i < facts->field_count; i++) {
        const frame_field *field = &facts->fields[i];
        const int narrow =
            field->kind == FRAME_FIELD_INTEGER || field->kind == FRAME_FIELD_WORD || field->kind == FRAME_FIELD_BOOL;
        if (!narrow && field->offset < end && end < field->offset + sizeof(double)) return 1;
    }
    return 0;
}

frame_status frame_struct_widen(const frame_struct *facts, const void *in, void *today) {
    const uint32_t *mark = in;
    if (!in || mark[1] != facts->id || mark[0] < 2 * sizeof(uint32_t) || ends_in_a_field(facts, mark[0]))
        return frame_fail(FRAME_NOT_INITIALISED, facts->name, in ? "" : "NULL", "a struct set up by its init function",
                          "frame_%s: not set up; call frame_%s_init first", facts->name, facts->name);
    if (mark[0] > facts->size)
        return frame_fail(FRAME_NEWER_HEADER, facts->name, "", "a header no newer than the library",
                          "frame_%s: the struct is newer than this library (%u bytes, known are %u)", facts->name,
                          (unsigned)mark[0], (unsigned)facts->size);
    memcpy(today, facts->blank, facts->size);
    memcpy(today, in, mark[0]);
    ((uint32_t *)today)[0] = facts->size;
    return FRAME_OK;
}

void frame_struct_give(const frame_struct *facts, const void *result, void *out, size_t out_size) {
    const size_t given = out_size < facts->size ? out_size : facts->size;
    memcpy(out, result, given);
    ((uint32_t *)out)[0] = (uint32_t)given;
    ((uint32_t *)out)[1] = facts->id;
}

frame_status frame_struct_finite(const frame_struct *facts, const void *result) {
    for (size_t i = 0; i < facts->field_count; i++) {
        double figure;
        if (facts->fields[i].kind != FRAME_FIELD_NUMBER) continue;
        memcpy(&figure, (const char *)result + facts->fields[i].offset, sizeof figure);
        if (!isfinite(figure))
            return frame_fail(FRAME_IMPOSSIBLE, facts->fields[i].name, "no finite number", "measures less extreme",
                              "%s: comes to no finite number; valid are measures less extreme", facts->fields[i].name);
    }
    return FRAME_OK;
}

void frame_struct_blank(const frame_struct *facts, void *out) {
    memset(out, 0, facts->size);
    ((uint32_t *)out)[0] = facts->size;
    ((uint32_t *)out)[1] = facts->id;
    for (size_t i = 0; i < facts->field_count; i++) {
        const frame_field *field = &facts->fields[i];
        char *place = (char *)out + field->offset;
        if (field->kind == FRAME_FIELD_NUMBER)
            *(double *)(void *)place = FRAME_NOT_GIVEN;
        else if (field->kind == FRAME_FIELD_INTEGER || field->kind == FRAME_FIELD_WORD ||
                 field->kind == FRAME_FIELD_BOOL)
            *(int32_t *)(void *)place = FRAME_NOT_GIVEN_INT;
    }
}
