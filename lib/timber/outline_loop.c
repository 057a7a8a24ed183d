/* The loops that the lines of an outline make. */
#include "timber/outline.h"

static double turn(const frame_outline_line *from, const frame_outline_line *to) {
    const double dx = from->x[1] - from->x[0], da = from->across[1] - from->across[0];
    const double ex = to->x[1] - to->x[0], ea = to->across[1] - to->across[0];
    return atan2(dx * ea - da * ex, dx * ex + da * ea);
}

/* The line that goes on from a point, NULL when that is the one the loop began with. Of several it is the one that
 * turns most to the left, so that two parts of a face that touch in a point stay two loops. */
static frame_outline_line *next_line(frame_outline *outline, const frame_outline_line *from,
                                     const frame_outline_line *first) {
    frame_outline_line *lines = outline->lines.items, *found = NULL;
    for (size_t i = 0; i < outline->lines.count; i++) {
        if (fabs(lines[i].x[0] - from->x[1]) > 1e-7 || fabs(lines[i].across[0] - from->across[1]) > 1e-7) continue;
        if (lines[i].used && &lines[i] != first) continue;
        if (!found || turn(from, &lines[i]) > turn(from, found)) found = &lines[i];
    }
    return found == first ? NULL : found;
}

/* Whether a corner lies on the straight line between its neighbours. */
static int straight(const frame_stick_point *a, const frame_stick_point *b, const frame_stick_point *c) {
    const double dx = c->x - a->x, da = c->across - a->across, length = sqrt(dx * dx + da * da);
    return length < FRAME_TOUCH || fabs((b->x - a->x) * da - (b->across - a->across) * dx) < 1e-8 * length;
}

/* Leaves out the corners of the loop from first on that are none. */
static void leave_out_straight(frame_pool *corners, size_t first) {
    frame_stick_point *loop = &FRAME_POOL_ITEM(frame_stick_point, *corners, first);
    size_t count = corners->count - first;
    for (size_t i = 0; i < count && count > 2;) {
        if (!straight(&loop[(i + count - 1) % count], &loop[i], &loop[(i + 1) % count])) {
            i++;
            continue;
        }
        for (size_t k = i; k + 1 < count; k++) loop[k] = loop[k + 1];
        count--;
        i = i ? i - 1 : 0;
    }
    corners->count = first + (count > 2 ? count : 0);
}

frame_status frame_outline_loop(frame_outline *outline, frame_outline_line *line, frame_pool *points,
                                frame_stick_face face, int32_t loop) {
    const size_t first = points->count;
    const frame_outline_line *first_line = line;
    for (; line; line = next_line(outline, line, first_line)) {
        frame_stick_point *point = frame_pool_add(points, 1);
        if (!point) return FRAME_NO_MEMORY;
        *point = (frame_stick_point){line->x[0], line->across[0], face, loop, 0, 0};
        line->used = 1;
    }
    leave_out_straight(points, first);
    return FRAME_OK;
}
