/* Lays a drawing out: at the largest scale at which everything fits the paper. */
#include "drawing/layout.h"

#include <math.h>
#include <string.h>

#define SIDES (1u << FRAME_DIMENSION_LEFT | 1u << FRAME_DIMENSION_RIGHT)
#define LEVELS (1u << FRAME_DIMENSION_ABOVE | 1u << FRAME_DIMENSION_BELOW | 1u << FRAME_DIMENSION_ALONG)
#define THING (1u << SHEET_HEAVY | 1u << SHEET_LIGHT | 1u << SHEET_HATCH)
#define VIEW_AIR 16.0
#define CAPTION_AIR 7.0
#define FULL_SIZE 72.0 /* points an inch */

/* What does not depend on how wide the rest may be: the thing, the texts in it, the dimensions at its sides. */
static void begin_view(drawing_layout *layout) {
    layout_find_cuts(layout);
    layout_geometry(layout);
    layout_break_lines(layout);
    layout->thing = sheet_extent(layout->sheet, layout->view, THING, 0);
    layout_texts(layout);
    layout_dimensions(layout, SIDES);
}

static void caption(drawing_layout *layout, plane_extent ink) {
    const drawing_view *view = &FRAME_ITEM(drawing_view, layout->drawing->views, layout->view);
    if (!view->caption) return;
    metrics_set(&layout->block, view->caption, layout_points_of(layout, FRAME_LETTERING_NAME),
                layout->right - layout->left);
    const metrics_block *block = &layout->block;
    const double half = block->width / 2, low = layout->left + half, high = layout->right - half;
    const int empty = plane_is_empty(&layout->thing);
    const double wanted = empty ? 0 : (layout->thing.low.x + layout->thing.high.x) / 2;
    const double x = low > high ? (low + high) / 2 : fmin(fmax(wanted, low), high);
    const double top = plane_is_empty(&ink) ? 0 : ink.low.y - CAPTION_AIR;
    const plane_box box = sheet_box(block, plane_at(x, top - block->height / 2), plane_at(1, 0));
    sheet_write(layout->sheet, layout->view, block, &box, FRAME_ANCHOR_MIDDLE);
}

static void end_view(drawing_layout *layout) {
    drawing_sheet *sheet = layout->sheet;
    layout->thing = sheet_extent(sheet, layout->view, THING, 0);
    layout_dimensions(layout, LEVELS);
    layout_angles(layout);
    if (layout->with_labels) layout_labels(layout);
    caption(layout, sheet_extent(sheet, layout->view, SHEET_ALL_ROLES, 1));
    sheet_trim(sheet, layout->view);
}

static plane_extent all_ink(const drawing_layout *layout) {
    plane_extent all = plane_nothing();
    for (size_t view = 0; view < layout->drawing->views.count; view++) {
        const plane_extent ink = sheet_extent(layout->sheet, view, SHEET_ALL_ROLES, 1);
        if (plane_is_empty(&ink)) continue;
        plane_include(&all, ink.low);
        plane_include(&all, ink.high);
    }
    return all;
}

/* The paper's width, centred on what stands so far; wider where that already is. */
static void find_sides(drawing_layout *layout, double width) {
    const plane_extent ink = all_ink(layout);
    const double middle = plane_is_empty(&ink) ? 0 : (ink.low.x + ink.high.x) / 2;
    const double half = plane_is_empty(&ink) ? width / 2 : fmax(width, ink.high.x - ink.low.x) / 2;
    layout->left = middle - half;
    layout->right = middle + half;
}

/* Sets the views one under another. */
static void stack(drawing_layout *layout) {
    double top = 0;
    for (size_t view = 0; view < layout->drawing->views.count; view++) {
        const plane_extent ink = sheet_extent(layout->sheet, view, SHEET_ALL_ROLES, 1);
        if (plane_is_empty(&ink)) continue;
        sheet_move(layout->sheet, view, plane_at(0, top - ink.high.y));
        top -= ink.high.y - ink.low.y + VIEW_AIR;
    }
    layout->sheet->ink = all_ink(layout);
}

static void lay_out_at(drawing_layout *layout, double scale, double width) {
    sheet_clear(layout->sheet);
    layout->cuts.count = 0;
    layout->scale = layout->sheet->scale = scale;
    layout->left = -HUGE_VAL;
    layout->right = HUGE_VAL;
    for (layout->view = 0; layout->view < layout->drawing->views.count; layout->view++) begin_view(layout);
    find_sides(layout, width);
    for (layout->view = 0; layout->view < layout->drawing->views.count; layout->view++) end_view(layout);
    if (!layout->sheet->status) stack(layout);
}

/* The size of what is drawn, in inches: the width all views share, without breaks, and the sum of their heights. */
static plane_vec size_of(const frame_drawing *drawing) {
    plane_vec size = {0, 0};
    double low_x = HUGE_VAL, high_x = -HUGE_VAL;
    for (size_t view = 0; view < drawing->views.count; view++) {
        double low = HUGE_VAL, high = -HUGE_VAL;
        for (size_t i = 0; i < drawing->items.count; i++) {
            const drawing_item *item = &FRAME_ITEM(drawing_item, drawing->items, i);
            const drawing_point *points = (const drawing_point *)drawing->points.items + item->first;
            for (size_t k = 0; item->view == view && k < item->count; k++) {
                low_x = fmin(low_x, points[k].x - item->radius);
                high_x = fmax(high_x, points[k].x + item->radius);
                low = fmin(low, points[k].y - item->radius);
                high = fmax(high, points[k].y + item->radius);
            }
        }
        if (high > low) size.y += high - low;
    }
    for (size_t i = 0; i < drawing->breaks.count; i++) {
        const drawing_break *gone = &FRAME_ITEM(drawing_break, drawing->breaks, i);
        size.x -= fmax(0, fmin(high_x, gone->to) - fmax(low_x, gone->from));
    }
    size.x += high_x > low_x ? high_x - low_x : 0;
    return size;
}

/* The scale at which the thing alone would fill the paper; height leaves some for what is written. */
static double largest_scale(const frame_drawing *drawing, plane_vec size, plane_vec paper) {
    /* a letter's width is left at both sides: the texts of a chain's ends stand under its ends */
    const double width = paper.x - LAYOUT_GAP * (double)drawing->breaks.count - 2 * drawing->letter_pt;
    double scale = FULL_SIZE;
    if (size.x > 0) scale = fmin(scale, fmax(width, paper.x / 4) / size.x);
    if (size.y > 0) scale = fmin(scale, paper.y * 0.9 / size.y);
    return scale;
}

#define TRIES 10
#define LEAST_FOR_HEIGHT 0.6
#define LEAST 0.25 /* of the largest scale: below that, more writing than thing; the picture grows instead */

/* The next scale to try, smaller by what the ink is too large; the same one when it fits or may not shrink further. */
static double next_scale(const drawing_layout *layout, plane_vec size, plane_vec paper, double largest) {
    const plane_extent ink = layout->sheet->ink;
    const double wide = ink.high.x - ink.low.x - paper.x, high = ink.high.y - ink.low.y - paper.y;
    const double least_for_height = largest * LEAST_FOR_HEIGHT, scale = layout->scale;
    double next = scale;
    if (wide > 0.01 && size.x > 0) next = fmin(next, scale - (wide + 0.5) / size.x);
    if (high > 0.01 && size.y > 0 && scale > least_for_height)
        next = fmin(next, fmax(least_for_height, scale - (high + 0.5) / size.y));
    return fmin(scale, fmax(next, largest * LEAST));
}

/* Lettering does not shrink with the thing, so the scale that fits is found by trying. Labels keep to the width there
 * is, so a first round does without them: finding room for many takes the most time. */
static void find_scale(drawing_layout *layout, plane_vec paper) {
    const plane_vec size = size_of(layout->drawing);
    const double largest = largest_scale(layout->drawing, size, paper);
    double next = largest, scale;
    for (layout->with_labels = 0; layout->with_labels < 2; layout->with_labels++) {
        int tries = 0;
        do {
            scale = next;
            lay_out_at(layout, scale, paper.x);
            if (layout->sheet->status) return;
            next = next_scale(layout, size, paper, largest);
        } while (next < scale && ++tries < TRIES);
        next = fmin(next, scale);
    }
}

frame_status drawing_lay_out(const frame_drawing *drawing, drawing_sheet *sheet) {
    drawing_layout layout = {.drawing = drawing, .sheet = sheet, .em = drawing->letter_pt};
    layout.cuts.item_size = sizeof(layout_cut);
    layout.way.item_size = layout.visible.item_size = sizeof(plane_vec);
    find_scale(&layout,
               plane_at(drawing->width_in * 72 - 2 * SHEET_MARGIN, drawing->height_in * 72 - 2 * SHEET_MARGIN));
    frame_array_give(&layout.cuts);
    frame_array_give(&layout.way);
    frame_array_give(&layout.visible);
    frame_array_give(&layout.block.lines);
    return sheet->status;
}
