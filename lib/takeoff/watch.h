/* Whoever watches a search. */
#ifndef FRAME_LIB_TAKEOFF_WATCH_H
#define FRAME_LIB_TAKEOFF_WATCH_H

#include <frame/takeoff.h>

struct frame_watch {
    frame_watcher watcher;
};

/* Shows the best cost so far and the bound (FRAME_NOT_GIVEN while there is none); 0 when the search is to stop. */
int frame_watch_look(const frame_watch *watch, double best, double bound);

#endif
