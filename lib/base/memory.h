/* Memory: every byte the library takes goes through here, so that an embedder can own it. */
#ifndef FRAME_LIB_BASE_MEMORY_H
#define FRAME_LIB_BASE_MEMORY_H

#include <frame/base.h>

/* NULL on failure, with FRAME_NO_MEMORY set as the thread's error. */
void *frame_take(size_t size);
void *frame_take_zeroed(size_t count, size_t size);
void *frame_retake(void *block, size_t size);
void frame_give(void *block);

/* A growable array of items of one size. Zero it to begin; frame_array_give to end. */
typedef struct frame_array {
    void *items;
    size_t count, capacity, item_size;
} frame_array;

/* Appends one item, copied from item (zeroed when NULL). Gives its place, NULL without memory. */
void *frame_array_push(frame_array *array, const void *item);
frame_status frame_array_reserve(frame_array *array, size_t capacity);
void frame_array_give(frame_array *array);
/* The i-th item as T. */
#define FRAME_ITEM(T, array, i) (((T *)(array).items)[i])

/* Memory given back all at once: an answer keeps its texts here. Zero it to begin. */
typedef struct frame_arena {
    struct frame_arena_block *first;
} frame_arena;
void *frame_arena_take(frame_arena *arena, size_t size);
/* A copy of a text; NULL copies as NULL. On failure gives NULL and sets *failed to 1. */
const char *frame_arena_text(frame_arena *arena, const char *chars, int *failed);
void frame_arena_give(frame_arena *arena);

#endif
