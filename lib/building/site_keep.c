/* Keeping what a struct points to: its texts, its lists, and what those point to, by the facts of its fields. */
#include <string.h>

#include "base/error.h"
#include "building/site.h"

static size_t count_of(const frame_field *field, const void *object) {
    return *(const size_t *)(const void *)((const char *)object + field->count_offset);
}

static frame_status keep_text(const char **text, frame_arena *arena) {
    int failed = 0;
    *text = frame_arena_text(arena, *text, &failed);
    return failed ? FRAME_NO_MEMORY : FRAME_OK;
}

static frame_status keep_flat(const void **list, size_t count, size_t size, frame_arena *arena) {
    void *copy = count && *list ? frame_arena_take(arena, count * size) : NULL;
    if (count && *list && !copy) return FRAME_NO_MEMORY;
    if (copy) memcpy(copy, *list, count * size);
    *list = copy;
    return FRAME_OK;
}

/* Elements carry their own size: they are widened to today's. */
static frame_status keep_structs(const frame_struct *of, const void **list, size_t count, frame_arena *arena) {
    if (!count || !*list) return FRAME_OK;
    char *copy = frame_arena_take(arena, count * of->size);
    if (!copy) return FRAME_NO_MEMORY;
    const size_t stride = *(const uint32_t *)*list;
    for (size_t i = 0; i < count; i++) {
        frame_status status = frame_struct_widen(of, (const char *)*list + i * stride, copy + i * of->size);
        if (!status) status = frame_struct_keep(of, copy + i * of->size, arena);
        if (status) return status;
    }
    *list = copy;
    return FRAME_OK;
}

frame_status frame_struct_keep(const frame_struct *facts, void *object, frame_arena *arena) {
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < facts->field_count && !status; i++) {
        const frame_field *field = &facts->fields[i];
        void *place = (char *)object + field->offset;
        if (field->kind == FRAME_FIELD_TEXT)
            status = keep_text(place, arena);
        else if (field->kind == FRAME_FIELD_NUMBERS)
            status = keep_flat(place, count_of(field, object), sizeof(double), arena);
        else if (field->kind == FRAME_FIELD_WORDS)
            status = keep_flat(place, count_of(field, object), sizeof(int32_t), arena);
        else if (field->kind == FRAME_FIELD_LIST)
            status = keep_structs(field->element, place, count_of(field, object), arena);
    }
    return status;
}
