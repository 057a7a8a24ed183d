/* The library's memory, counted: a block too many after a call is a leak a test can see. */
#include <stdatomic.h>
#include <stdlib.h>

#include "bound.h"

static atomic_long live;

static void *allocate(void *user, size_t size) {
    (void)user;
    void *block = malloc(size);
    if (block) atomic_fetch_add_explicit(&live, 1, memory_order_relaxed);
    return block;
}

static void *reallocate(void *user, void *block, size_t size) {
    (void)user;
    void *moved = realloc(block, size);
    if (moved && !block) atomic_fetch_add_explicit(&live, 1, memory_order_relaxed);
    return moved;
}

static void release(void *user, void *block) {
    (void)user;
    if (block) atomic_fetch_sub_explicit(&live, 1, memory_order_relaxed);
    free(block);
}

void bound_count_memory(void) {
    static const frame_allocator counting = {allocate, reallocate, release, NULL};
    /* A second load in the same process finds it set already; the count goes on. */
    if (frame_allocator_set(&counting)) frame_error_clear();
}

long bound_live_blocks(void) { return atomic_load(&live); }
