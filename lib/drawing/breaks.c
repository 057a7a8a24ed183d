/* The stretches of the x axis that a picture leaves out. */
#include <math.h>
#include <stdlib.h>

#include "base/error.h"
#include "drawing/list.h"

/* Puts a break in its place and joins those that touch. */
static void insert(frame_array *breaks, drawing_break wanted) {
    drawing_break *kept = breaks->items;
    size_t count = 0, total = breaks->count;
    for (size_t i = 0; i < total; i++) {
        if (kept[i].to < wanted.from || kept[i].from > wanted.to) continue;
        wanted.from = fmin(wanted.from, kept[i].from);
        wanted.to = fmax(wanted.to, kept[i].to);
    }
    for (size_t i = 0; i < total; i++)
        if (kept[i].to < wanted.from || kept[i].from > wanted.to) kept[count++] = kept[i];
    size_t place = count;
    for (; place && kept[place - 1].from > wanted.from; place--) kept[place] = kept[place - 1];
    kept[place] = wanted;
    breaks->count = count + 1;
}

frame_status frame_drawing_break(frame_drawing *drawing, double from_x_in, double to_x_in) {
    frame_status status = drawing_check_point("from_x_in", from_x_in, "to_x_in", to_x_in);
    if (status) return status;
    if (from_x_in >= to_x_in)
        return frame_fail_number(FRAME_CONFLICT, "to_x_in", to_x_in, "what lies beyond from_x_in");
    if (frame_array_reserve(&drawing->breaks, drawing->breaks.count + 1)) return FRAME_NO_MEMORY;
    insert(&drawing->breaks, (drawing_break){from_x_in, to_x_in});
    return FRAME_OK;
}

static int by_value(const void *a, const void *b) {
    const double x = *(const double *)a, y = *(const double *)b;
    return (x > y) - (x < y);
}

/* Every x at which something is drawn or measured; a round thing counts with both its sides. */
static frame_status busy_places(const frame_drawing *drawing, frame_array *places) {
    for (size_t i = 0; i < drawing->items.count; i++) {
        const drawing_item *item = &FRAME_ITEM(drawing_item, drawing->items, i);
        for (size_t k = 0; k < item->count; k++) {
            const double x = FRAME_ITEM(drawing_point, drawing->points, item->first + k).x;
            const double sides[] = {x - item->radius, x + item->radius};
            if (!frame_array_push(places, &sides[0]) || !frame_array_push(places, &sides[1])) return FRAME_NO_MEMORY;
        }
    }
    if (places->count) qsort(places->items, places->count, sizeof(double), by_value);
    return FRAME_OK;
}

frame_status frame_drawing_shorten(frame_drawing *drawing, double keep_in) {
    frame_array places = {.item_size = sizeof(double)};
    frame_status status = drawing_check("keep_in", keep_in, 0, DRAWING_REACH_IN, "0..1000000");
    if (!status) status = busy_places(drawing, &places);
    for (size_t i = 1; i < places.count && !status; i++) {
        const double from = FRAME_ITEM(double, places, i - 1), to = FRAME_ITEM(double, places, i);
        if (to - from > 0 && to - from >= 6 * keep_in)
            status = frame_drawing_break(drawing, from + keep_in, to - keep_in);
    }
    frame_array_give(&places);
    return status;
}
