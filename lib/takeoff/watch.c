/* Whoever watches a search. */
#include "takeoff/watch.h"

#include "base/error.h"
#include "base/memory.h"

frame_status frame_watch_new(const frame_watcher *watcher, frame_watch **watch) {
    if (!watcher || !watcher->look)
        return frame_fail(FRAME_REQUIRED, "watcher", "NULL", "a function that looks", "watcher: NULL looks at nothing");
    if (!watch) return frame_fail(FRAME_REQUIRED, "watch", "NULL", "a place for the watch", "watch: NULL is no place");
    frame_watch *made = frame_take_zeroed(1, sizeof *made);
    if (!made) return FRAME_NO_MEMORY;
    made->watcher = *watcher;
    *watch = made;
    return FRAME_OK;
}

void frame_watch_free(frame_watch *watch) {
    frame_give(watch);
}

int frame_watch_look(const frame_watch *watch, double best, double bound) {
    return watch->watcher.look(watch->watcher.user, best, bound);
}
