/* The growable array with room of its owner's. */
#include "timber/pool.h"

#include <string.h>

#include "base/memory.h"

void frame_pool_begin(frame_pool *pool, void *room, size_t room_size, size_t item_size) {
    *pool = (frame_pool){room, room, 0, room_size / item_size, item_size};
}

static int grow(frame_pool *pool, size_t wanted) {
    const size_t doubled = pool->capacity * 2 > wanted ? pool->capacity * 2 : wanted;
    const int moved = pool->items != pool->room;
    void *items = moved ? frame_retake(pool->items, doubled * pool->item_size) : frame_take(doubled * pool->item_size);
    if (!items) return 0;
    if (!moved) memcpy(items, pool->room, pool->count * pool->item_size);
    pool->items = items;
    pool->capacity = doubled;
    return 1;
}

void *frame_pool_add(frame_pool *pool, size_t count) {
    if (pool->count + count > pool->capacity && !grow(pool, pool->count + count)) return NULL;
    void *place = (char *)pool->items + pool->count * pool->item_size;
    pool->count += count;
    return place;
}

void frame_pool_give(frame_pool *pool) {
    if (pool->items != pool->room) frame_give(pool->items);
    pool->items = pool->room;
    pool->count = 0;
}
