/* The growable array with room of its owner's. */
#include "timber/pool.h"

#include <string.h>

#include "base/memory.h"

void frame_pool_begin(frame_pool *pool, void *room, size_t room_size, size_t item_size) {
    *pool = (frame_pool){room, room, 0, room_size / item_size, item_size};
}

int frame_pool_grow(frame_pool *pool, size_t count) {
    const size_t least = pool->count + count, doubled = pool->capacity * 2 > least ? pool->capacity * 2 : least;
    const int moved = pool->items != pool->room;
    void *items = moved ? frame_retake(pool->items, doubled * pool->item_size) : frame_take(doubled * pool->item_size);
    if (!items) return 0;
    if (!moved && pool->count) memcpy(items, pool->room, pool->count * pool->item_size);
    pool->items = items;
    pool->capacity = doubled;
    return 1;
}

void frame_pool_give(frame_pool *pool) {
    if (pool->items != pool->room) frame_give(pool->items);
    pool->items = pool->room;
    pool->count = 0;
}
