/* The clock of a search, and its count of steps. */
#include "takeoff/effort.h"

#include <time.h>

/* Steps between two looks at the clock: about a millisecond. */
static const double BETWEEN_LOOKS = 1e6;
/* Seconds between two looks of whoever watches. */
static const double BETWEEN_SHOWS_S = 0.05;

static double now_s(void) {
    struct timespec time;
    clock_gettime(CLOCK_MONOTONIC, &time);
    return (double)time.tv_sec + 1e-9 * (double)time.tv_nsec;
}

void frame_effort_begin(frame_effort *effort, double limit_s, double most_steps) {
    const int by_clock = limit_s != FRAME_NOT_GIVEN;
    *effort = (frame_effort){.most = most_steps,
                             .most_of_all = most_steps,
                             .limit_s = limit_s,
                             .limit_of_all_s = limit_s,
                             .best = FRAME_NOT_GIVEN,
                             .bound = FRAME_NOT_GIVEN,
                             .begun_s = by_clock ? now_s() : 0};
}

double frame_effort_left(const frame_effort *effort) {
    if (effort->limit_of_all_s == FRAME_NOT_GIVEN) return FRAME_NOT_GIVEN;
    return effort->limit_of_all_s - (now_s() - effort->begun_s);
}

void frame_effort_share(frame_effort *effort, int32_t searches) {
    const double left_s = frame_effort_left(effort);
    effort->most = effort->spent + (effort->most_of_all - effort->spent) / searches;
    if (left_s != FRAME_NOT_GIVEN) effort->limit_s = effort->limit_of_all_s - left_s + left_s / searches;
    effort->over = effort->cancelled;
}

/* Whoever watches is told; watching changes nothing of the search unless it is stopped. */
static void show(frame_effort *effort) {
    const double now = now_s();
    if (effort->cancelled || now - effort->shown_s < BETWEEN_SHOWS_S) return;
    effort->shown_s = now;
    if (frame_watch_look(effort->watch, effort->best, effort->bound)) return;
    effort->cancelled = effort->over = 1;
}

int frame_effort_spend(frame_effort *effort, double steps) {
    effort->spent += steps;
    if (effort->over) return 1;
    if (effort->limit_s == FRAME_NOT_GIVEN) effort->over = effort->spent > effort->most;
    if (effort->spent - effort->asked_at < BETWEEN_LOOKS) return effort->over;
    effort->asked_at = effort->spent;
    if (effort->limit_s != FRAME_NOT_GIVEN) effort->over = now_s() - effort->begun_s > effort->limit_s;
    if (effort->watch) show(effort);
    return effort->over;
}
