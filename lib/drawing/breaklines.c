/* Break lines: where a break cuts the areas of a view, a wave is drawn at both of its edges. */
#include <math.h>
#include <stdlib.h>

#include "drawing/layout.h"

#define WAVE 1.9 /* points to each side */

static int by_value(const void *a, const void *b) {
    const double x = *(const double *)a, y = *(const double *)b;
    return (x > y) - (x < y);
}

/* The heights, on the paper, at which an area's outline passes an edge of a break. */
static void passes(drawing_layout *layout, const drawing_item *item, double edge, frame_array *heights) {
    const drawing_point *points = layout_points(layout, item);
    heights->count = 0;
    for (size_t k = 0; k < item->count; k++) {
        const drawing_point a = points[k], b = points[(k + 1) % item->count];
        if ((a.x < edge) == (b.x < edge)) continue;
        const double y = (a.y + (b.y - a.y) * (edge - a.x) / (b.x - a.x)) * layout->scale;
        if (!frame_array_push(heights, &y)) layout->sheet->status = FRAME_NO_MEMORY;
    }
    if (heights->count) qsort(heights->items, heights->count, sizeof(double), by_value);
}

/* Areas that lie together, such as the plies of a beam, are cut by one wave. */
static void join(drawing_layout *layout, layout_cut cut) {
    layout_cut *cuts = layout->cuts.items;
    size_t count = 0;
    for (size_t i = 0; i < layout->cuts.count; i++) {
        const int same = cuts[i].view == cut.view && cuts[i].index == cut.index && cuts[i].after == cut.after;
        if (same && cuts[i].y_low <= cut.y_high + 1 && cuts[i].y_high >= cut.y_low - 1) {
            cut.y_low = fmin(cut.y_low, cuts[i].y_low);
            cut.y_high = fmax(cut.y_high, cuts[i].y_high);
        } else {
            cuts[count++] = cuts[i];
        }
    }
    layout->cuts.count = count;
    if (!frame_array_push(&layout->cuts, &cut)) layout->sheet->status = FRAME_NO_MEMORY;
}

static void find_at(drawing_layout *layout, size_t index, int after, frame_array *heights) {
    const drawing_break *edge = &FRAME_ITEM(drawing_break, layout->drawing->breaks, index);
    for (size_t i = 0; i < layout->drawing->items.count; i++) {
        const drawing_item *item = &FRAME_ITEM(drawing_item, layout->drawing->items, i);
        if (item->view != layout->view || item->kind != DRAWING_AREA) continue;
        passes(layout, item, after ? edge->to : edge->from, heights);
        for (size_t k = 0; k + 1 < heights->count; k += 2)
            join(layout, (layout_cut){layout->view, index, after, FRAME_ITEM(double, *heights, k),
                                      FRAME_ITEM(double, *heights, k + 1)});
    }
}

void layout_find_cuts(drawing_layout *layout) {
    frame_array heights = {.item_size = sizeof(double)};
    for (size_t i = 0; i < layout->drawing->breaks.count; i++) {
        find_at(layout, i, 0, &heights);
        find_at(layout, i, 1, &heights);
    }
    frame_array_give(&heights);
}

/* One full wave over the height cut, none at its ends: the outline meets it there. Low sticks get a low wave. */
double layout_wave(const drawing_layout *layout, size_t index, int after, double y) {
    for (size_t i = 0; i < layout->cuts.count; i++) {
        const layout_cut *cut = &FRAME_ITEM(layout_cut, layout->cuts, i);
        const double height = cut->y_high - cut->y_low, t = (y - cut->y_low) / height;
        if (cut->view != layout->view || cut->index != index || cut->after != after) continue;
        if (height > 0 && t > 0 && t < 1) return fmin(WAVE, height / 6) * sin(2 * 3.14159265358979323846 * t);
    }
    return 0;
}

void layout_break_lines(drawing_layout *layout) {
    for (size_t i = 0; i < layout->cuts.count; i++) {
        const layout_cut *cut = &FRAME_ITEM(layout_cut, layout->cuts, i);
        const drawing_break *edge = &FRAME_ITEM(drawing_break, layout->drawing->breaks, cut->index);
        const double x = layout_map(layout, cut->after ? edge->to : edge->from, 0).x;
        plane_vec wave[33];
        if (cut->view != layout->view) continue;
        for (int s = 0; s <= 32; s++) {
            const double y = cut->y_low + (cut->y_high - cut->y_low) * s / 32;
            wave[s] = plane_at(x + layout_wave(layout, cut->index, cut->after, y), y);
        }
        sheet_shape_add(
            layout->sheet,
            (sheet_shape){.kind = SHEET_LINE, .role = SHEET_LIGHT, .pen = FRAME_PEN_THIN, .view = layout->view}, wave,
            33);
    }
}
