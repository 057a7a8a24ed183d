/* Readings along a line, straight from one to the next. */
#ifndef FRAME_LIB_MARKS_BETWEEN_H
#define FRAME_LIB_MARKS_BETWEEN_H

#include <frame/marks.h>

/* Refuses stations that are not in order. field: the list's name. */
frame_status frame_stations_check(const frame_station *stations, size_t count, const char *field);

/* The reading at a place. slope: how it changes there; beyond: whether the place lies outside the readings, where it
 * goes on straight from the last two. */
typedef struct frame_between {
    double reading, slope;
    int beyond;
} frame_between;
frame_between frame_stations_read(const frame_station *stations, size_t count, double at);

#endif
