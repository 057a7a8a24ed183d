/* A growable array that begins in room its owner sets aside, so that a usual stick takes memory only once. */
#ifndef FRAME_LIB_TIMBER_POOL_H
#define FRAME_LIB_TIMBER_POOL_H

#include <stddef.h>

typedef struct frame_pool {
    void *items, *room; /* room: the owner's */
    size_t count, capacity, item_size;
} frame_pool;

void frame_pool_begin(frame_pool *pool, void *room, size_t room_size, size_t item_size);
/* Makes room for so many more items; 0 without memory. */
int frame_pool_grow(frame_pool *pool, size_t count);
/* Places for so many more items at the end, counted in; NULL without memory. */
static inline void *frame_pool_add(frame_pool *pool, size_t count) {
    if (pool->count + count > pool->capacity && !frame_pool_grow(pool, count)) return NULL;
    void *place = (char *)pool->items + pool->count * pool->item_size;
    pool->count += count;
    return place;
}
void frame_pool_give(frame_pool *pool);
#define FRAME_POOL_ITEM(T, pool, i) (((T *)(pool).items)[i])

#endif
