/* The library's memory, counted: a block too many after a call is a leak a test can see, and the bytes tell a collector
 * of garbage how much hangs on the small objects it knows. Each block carries its size before it. */
#include <stdatomic.h>
#include <stdlib.h>

#include "bound.h"

enum { HEAD = 16 }; /* keeps the alignment of malloc */

static atomic_long live_blocks, live_bytes;

static void count(long blocks, long bytes) {
    if (blocks) atomic_fetch_add_explicit(&live_blocks, blocks, memory_order_relaxed);
    atomic_fetch_add_explicit(&live_bytes, bytes, memory_order_relaxed);
}

static void *with_head(char *block, size_t size) {
    *(size_t *)(void *)block = size;
    return block + HEAD;
}

static char *head_of(void *block) {
    return (char *)block - HEAD;
}
static size_t size_of(void *block) {
    return *(size_t *)(void *)head_of(block);
}

static void *allocate(void *user, size_t size) {
    (void)user;
    char *block = size <= SIZE_MAX - HEAD ? malloc(size + HEAD) : NULL;
    if (!block) return NULL;
    count(1, (long)size);
    return with_head(block, size);
}

static void *reallocate(void *user, void *block, size_t size) {
    if (!block) return allocate(user, size);
    const size_t before = size_of(block);
    char *moved = size <= SIZE_MAX - HEAD ? realloc(head_of(block), size + HEAD) : NULL;
    if (!moved) return NULL;
    count(0, (long)size - (long)before);
    return with_head(moved, size);
}

static void release(void *user, void *block) {
    (void)user;
    if (!block) return;
    count(-1, -(long)size_of(block));
    free(head_of(block));
}

void bound_count_memory(void) {
    static const frame_allocator counting = {allocate, reallocate, release, NULL};
    /* A second load in the same process finds it set already; the count goes on. */
    if (frame_allocator_set(&counting)) frame_error_clear();
}

long bound_live_blocks(void) {
    return atomic_load(&live_blocks);
}
long bound_live_bytes(void) {
    return atomic_load(&live_bytes);
}
