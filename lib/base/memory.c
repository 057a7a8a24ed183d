/* The allocator, the growable array and the arena. */
#include "base/memory.h"

#include <stdatomic.h>
#include <stdlib.h>
#include <string.h>

#include "base/error.h"

static void *standard_allocate(void *user, size_t size) {
    (void)user;
    return malloc(size);
}

static void *standard_reallocate(void *user, void *block, size_t size) {
    (void)user;
    return realloc(block, size);
}

static void standard_release(void *user, void *block) {
    (void)user;
    free(block);
}

static frame_allocator allocator = {standard_allocate, standard_reallocate, standard_release, NULL};
/* 0: never used; 1: used, from then on the allocator is fixed. */
static atomic_int allocator_used;

frame_status frame_allocator_set(const frame_allocator *given) {
    if (!given || !given->allocate || !given->reallocate || !given->release)
        return frame_fail(FRAME_REQUIRED, "allocator", "", "all three functions", "allocator: a function is missing");
    if (atomic_exchange(&allocator_used, 1))
        return frame_fail(FRAME_ALREADY_USED, "allocator", "", "",
                          "allocator: the library has taken memory already; set the allocator first");
    allocator = *given;
    return FRAME_OK;
}

static void mark_used(void) {
    if (!atomic_load_explicit(&allocator_used, memory_order_relaxed)) atomic_store(&allocator_used, 1);
}

void *frame_take(size_t size) {
    mark_used();
    void *block = allocator.allocate(allocator.user, size ? size : 1);
    if (!block) frame_fail(FRAME_NO_MEMORY, "", "", "", "no memory");
    return block;
}

void *frame_take_zeroed(size_t count, size_t size) {
    if (size && count > SIZE_MAX / size) {
        frame_fail(FRAME_NO_MEMORY, "", "", "", "no memory");
        return NULL;
    }
    void *block = frame_take(count * size);
    if (block) memset(block, 0, count * size);
    return block;
}

void *frame_retake(void *block, size_t size) {
    mark_used();
    void *moved = allocator.reallocate(allocator.user, block, size ? size : 1);
    if (!moved) frame_fail(FRAME_NO_MEMORY, "", "", "", "no memory");
    return moved;
}

void frame_give(void *block) {
    if (block) allocator.release(allocator.user, block);
}

frame_status frame_array_reserve(frame_array *array, size_t capacity) {
    if (capacity <= array->capacity) return FRAME_OK;
    size_t wanted = array->capacity ? array->capacity * 2 : 8;
    if (wanted < capacity) wanted = capacity;
    if (wanted > SIZE_MAX / 2 / array->item_size) return frame_fail(FRAME_NO_MEMORY, "", "", "", "no memory");
    void *items = frame_retake(array->items, wanted * array->item_size);
    if (!items) return FRAME_NO_MEMORY;
    array->items = items;
    array->capacity = wanted;
    return FRAME_OK;
}

void *frame_array_push(frame_array *array, const void *item) {
    if (frame_array_reserve(array, array->count + 1)) return NULL;
    void *place = (char *)array->items + array->count * array->item_size;
    if (item)
        memcpy(place, item, array->item_size);
    else
        memset(place, 0, array->item_size);
    array->count++;
    return place;
}

void frame_array_give(frame_array *array) {
    frame_give(array->items);
    array->items = NULL;
    array->count = array->capacity = 0;
}

struct frame_arena_block {
    struct frame_arena_block *next;
    size_t used, size;
    /* The bytes follow. */
};

void *frame_arena_take(frame_arena *arena, size_t size) {
    size = (size + 15) & ~(size_t)15;
    struct frame_arena_block *block = arena->first;
    if (!block || block->size - block->used < size) {
        size_t room = size > 4000 ? size : 4000;
        block = frame_take(sizeof *block + 16 + room);
        if (!block) return NULL;
        block->next = arena->first;
        block->used = 0;
        block->size = room;
        arena->first = block;
    }
    char *bytes = (char *)block + ((sizeof *block + 15) & ~(size_t)15);
    void *place = bytes + block->used;
    block->used += size;
    return place;
}

const char *frame_arena_text(frame_arena *arena, const char *chars, int *failed) {
    if (!chars) return NULL;
    size_t length = strlen(chars);
    char *copy = frame_arena_take(arena, length + 1);
    if (!copy) {
        *failed = 1;
        return NULL;
    }
    memcpy(copy, chars, length + 1);
    return copy;
}

void frame_arena_give(frame_arena *arena) {
    struct frame_arena_block *block = arena->first;
    while (block) {
        struct frame_arena_block *next = block->next;
        frame_give(block);
        block = next;
    }
    arena->first = NULL;
}
