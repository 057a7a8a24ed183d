/* Texts at places the caller chose, and angles. What does not fit its place gets a leader to it. */
#include <math.h>

#include "drawing/layout.h"

double layout_points_of(const drawing_layout *layout, frame_lettering lettering) {
    return layout->em * (lettering == FRAME_LETTERING_HEADING ? 1.5 : lettering == FRAME_LETTERING_NAME ? 1.2 : 1);
}

static plane_box box_at(const drawing_layout *layout, const drawing_item *item, plane_vec at) {
    const metrics_block *block = &layout->block;
    const plane_vec along = plane_direction(item->from_deg), up = plane_left(along);
    double x = 0, y = 0;
    if (item->anchor == FRAME_ANCHOR_START) x = block->width / 2;
    if (item->anchor == FRAME_ANCHOR_END) x = -block->width / 2;
    if (item->anchor == FRAME_ANCHOR_ABOVE) y = block->height / 2 + 1;
    if (item->anchor == FRAME_ANCHOR_BELOW) y = -block->height / 2 - 1;
    return sheet_box(block, plane_add(at, plane_mix(along, x, up, y)), along);
}

#define SHIFTS 1 /* lines up or down that a text may move; further off, its place could not be told */

/* Where the caller wants it, or a line up or down, if it covers no text and no outline there. */
static int find_shift(const drawing_layout *layout, plane_box *box) {
    const plane_box wanted = *box;
    for (int i = 0; i <= 2 * SHIFTS; i++) {
        const double lines = (i % 2 ? -1 : 1) * ((i + 1) / 2);
        *box = wanted;
        box->centre = plane_add(box->centre, plane_times(plane_left(box->along), lines * (2 * box->half_height + 0.5)));
        if (sheet_covers_text(layout->sheet, layout->view, box, 0.2)) continue;
        if (!sheet_strokes_hit(layout->sheet, layout->view, 1u << SHEET_HEAVY, box, NULL)) return 1;
    }
    return 0;
}

static void text(drawing_layout *layout, const drawing_item *item) {
    const drawing_point *point = layout_points(layout, item);
    const plane_vec at = layout_map(layout, point->x, point->y);
    metrics_set(&layout->block, item->text, layout_points_of(layout, item->lettering), HUGE_VAL);
    plane_box box = box_at(layout, item, at);
    const frame_anchor anchor = item->anchor > FRAME_ANCHOR_END ? FRAME_ANCHOR_MIDDLE : item->anchor;
    if (find_shift(layout, &box))
        sheet_write(layout->sheet, layout->view, &layout->block, &box, anchor);
    else
        layout_callout(layout, at);
}

void layout_texts(drawing_layout *layout) {
    const frame_drawing *drawing = layout->drawing;
    for (size_t i = 0; i < drawing->items.count && !layout->sheet->status; i++) {
        const drawing_item *item = &FRAME_ITEM(drawing_item, drawing->items, i);
        if (item->view == layout->view && item->kind == DRAWING_TEXT) text(layout, item);
    }
}

static void arc(drawing_layout *layout, const drawing_item *item, plane_vec vertex, double radius) {
    const double turn = item->to_deg - item->from_deg;
    const int chords = (int)fmax(2, ceil(turn / 4));
    plane_vec points[91];
    for (int i = 0; i <= chords; i++)
        points[i] = plane_add(vertex, plane_times(plane_direction(item->from_deg + turn * i / chords), radius));
    sheet_shape_add(
        layout->sheet,
        (sheet_shape){.kind = SHEET_LINE, .role = SHEET_MEASURE, .pen = FRAME_PEN_DIMENSION, .view = layout->view},
        points, (size_t)chords + 1);
    for (int leg = 0; leg < 2; leg++) {
        const plane_vec out = plane_direction(leg ? item->to_deg : item->from_deg);
        const plane_vec end = plane_add(vertex, plane_times(out, radius + 4));
        sheet_line(layout->sheet, layout->view, SHEET_MEASURE, FRAME_PEN_DIMENSION, vertex, end);
    }
}

#define LINES (1u << SHEET_HEAVY | 1u << SHEET_LIGHT | 1u << SHEET_MEASURE | 1u << SHEET_TICK)

/* Nonzero when a text past the arc, a share of the way round, is on the paper and covers nothing. */
static int angle_fits(const drawing_layout *layout, const drawing_item *item, plane_vec vertex, double radius,
                      double share, plane_box *box) {
    const plane_vec out = plane_direction(item->from_deg + (item->to_deg - item->from_deg) * share);
    *box = sheet_box(&layout->block, vertex, plane_at(1, 0));
    box->centre = plane_add(vertex, plane_times(out, radius + 3 + plane_reach(box, out)));
    if (box->centre.x - box->half_length < layout->left || box->centre.x + box->half_length > layout->right) return 0;
    if (sheet_covers_text(layout->sheet, layout->view, box, 1)) return 0;
    const plane_box around = plane_grown(*box, 2);
    return !sheet_strokes_hit(layout->sheet, layout->view, LINES, &around, NULL);
}

/* The text stands past the arc, in the middle of the angle if it can; the arc grows until it is free there. Failing
 * that, a short arc gets a leader. */
static void angle(drawing_layout *layout, const drawing_item *item) {
    static const double shares[] = {0.5, 0.36, 0.64, 0.22, 0.78};
    const drawing_point *point = layout_points(layout, item);
    const plane_vec vertex = layout_map(layout, point->x, point->y);
    const double turn = item->to_deg - item->from_deg;
    plane_box box;
    metrics_set(&layout->block, item->text, layout->em, HUGE_VAL);
    for (double radius = 16; radius <= 60; radius += 3)
        for (int i = 0; i < 5; i++) {
            if (!angle_fits(layout, item, vertex, radius, shares[i], &box)) continue;
            sheet_write(layout->sheet, layout->view, &layout->block, &box, FRAME_ANCHOR_MIDDLE);
            arc(layout, item, vertex, radius);
            return;
        }
    const double radius = fmin(60, fmax(22, 10 * 57.3 / turn));
    arc(layout, item, vertex, radius);
    layout_callout(layout, plane_add(vertex, plane_times(plane_direction(item->from_deg + turn / 2), radius)));
}

void layout_angles(drawing_layout *layout) {
    const frame_drawing *drawing = layout->drawing;
    for (size_t i = 0; i < drawing->items.count && !layout->sheet->status; i++) {
        const drawing_item *item = &FRAME_ITEM(drawing_item, drawing->items, i);
        if (item->view == layout->view && item->kind == DRAWING_ANGLE) angle(layout, item);
    }
}
