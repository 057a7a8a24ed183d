/* How long a search may go on: by the clock when a time limit was given, else by a count of steps that is the same on
 * every machine. */
#ifndef FRAME_LIB_TAKEOFF_EFFORT_H
#define FRAME_LIB_TAKEOFF_EFFORT_H

#include "takeoff/watch.h"

typedef struct frame_effort {
    double spent, most;                 /* steps */
    double most_of_all, limit_of_all_s; /* of all searches together */
    double begun_s, limit_s;            /* limit_s: FRAME_NOT_GIVEN without one */
    double asked_at;                    /* steps when the clock was last read */
    const frame_watch *watch;           /* NULL: nobody watches */
    double shown_s;                     /* when whoever watches was last told */
    double best, bound;                 /* of all searches so far, for whoever watches */
    int over;                           /* not 0: stop, with what there is */
    int cancelled;
} frame_effort;

void frame_effort_begin(frame_effort *effort, double limit_s, double most_steps);
/* For one of so many searches that are left: its share of what is left of the whole. */
void frame_effort_share(frame_effort *effort, int32_t searches);
/* What is left of the time limit, in seconds; FRAME_NOT_GIVEN without one. */
double frame_effort_left(const frame_effort *effort);
/* Adds steps; not 0 when the search is to stop. */
int frame_effort_spend(frame_effort *effort, double steps);

#endif
