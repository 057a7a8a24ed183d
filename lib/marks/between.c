/* Readings along a line, straight from one to the next. */
#include "marks/between.h"

#include "base/error.h"
#include "marks_facts.h"

frame_status frame_stations_check(const frame_station *stations, size_t count, const char *field) {
    frame_station before, here;
    frame_station_item(stations, 0, &before);
    for (size_t i = 1; i < count; i++, before = here) {
        frame_station_item(stations, i, &here);
        if (here.at_in > before.at_in) continue;
        frame_fail_number(FRAME_IMPOSSIBLE, "at_in", here.at_in,
                          "farther along than the one before: readings go in order");
        return frame_fail_within("%s[%zu].", field, i);
    }
    return FRAME_OK;
}

/* The first station of the stretch a place lies in, or nearest to. */
static size_t stretch_of(const frame_station *stations, size_t count, double at) {
    size_t low = 0, high = count - 1;
    frame_station middle;
    while (high - low > 1) {
        const size_t half = (low + high) / 2;
        frame_station_item(stations, half, &middle);
        if (middle.at_in <= at)
            low = half;
        else
            high = half;
    }
    return low;
}

frame_between frame_stations_read(const frame_station *stations, size_t count, double at) {
    frame_station first, second;
    if (count == 1) {
        frame_station_item(stations, 0, &first);
        return (frame_between){first.reading_in, 0, at != first.at_in};
    }
    const size_t place = stretch_of(stations, count, at);
    frame_station_item(stations, place, &first);
    frame_station_item(stations, place + 1, &second);
    const double slope = (second.reading_in - first.reading_in) / (second.at_in - first.at_in);
    const int beyond = at < first.at_in - 1e-9 || at > second.at_in + 1e-9;
    return (frame_between){first.reading_in + (at - first.at_in) * slope, slope, beyond};
}
