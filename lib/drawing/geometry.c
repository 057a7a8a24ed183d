/* Lines and areas of a view, onto the sheet. */
#include <math.h>

#include "drawing/layout.h"

static sheet_shape stroke_of(const drawing_item *item) {
    const int heavy = item->pen == FRAME_PEN_CUT || item->pen == FRAME_PEN_OUTLINE;
    return (sheet_shape){.role = heavy ? SHEET_HEAVY : SHEET_LIGHT, .pen = item->pen, .view = item->view};
}

/* The direction of the longest edge, pointing right or up: the way the fibres run. */
static plane_vec longest_edge(const drawing_point *points, size_t count) {
    plane_vec longest = {0, 0};
    for (size_t k = 0; k < count; k++) {
        const drawing_point a = points[k], b = points[(k + 1) % count];
        const plane_vec edge = {b.x - a.x, b.y - a.y};
        if (plane_dot(edge, edge) > plane_dot(longest, longest) * (1 + 1e-9)) longest = edge;
    }
    const double length = sqrt(plane_dot(longest, longest));
    if (length == 0) return plane_at(1, 0);
    const int turned = longest.x < 0 || (longest.x == 0 && longest.y < 0);
    return plane_times(longest, (turned ? -1 : 1) / length);
}

static void fill(drawing_layout *layout, const drawing_item *item, const drawing_point *points, size_t count) {
    if (item->hatch == FRAME_HATCH_NONE) return;
    const plane_vec fibre = longest_edge(points, count);
    for (size_t k = 0; k <= layout->drawing->breaks.count && !layout->sheet->status; k++) {
        sheet_shape shape = {.kind = SHEET_BLANK, .role = SHEET_HATCH, .view = item->view};
        layout_part(layout, points, count, k);
        if (layout->visible.count < 3) continue;
        if (item->hatch == FRAME_HATCH_SOLID) {
            shape.kind = SHEET_BLACK;
            shape.role = SHEET_HEAVY;
        }
        if (item->hatch == FRAME_HATCH_SOLID || item->hatch == FRAME_HATCH_BLANK)
            sheet_shape_add(layout->sheet, shape, layout->visible.items, layout->visible.count);
        else
            layout_hatch(layout, item->hatch, fibre);
    }
}

static void area(drawing_layout *layout, const drawing_item *item, const drawing_point *points, size_t count) {
    fill(layout, item, points, count);
    layout_path(layout, points, count, 1, stroke_of(item));
}

/* Round things are drawn in chords that leave the curve by no more than a fiftieth of a point. */
#define CHORD_ERROR 0.02
#define CHORDS_MOST 720

static void round_thing(drawing_layout *layout, const drawing_item *item) {
    const drawing_point centre = layout_points(layout, item)[0];
    const int whole = item->kind == DRAWING_CIRCLE;
    const double turn = whole ? 360 : item->to_deg - item->from_deg, radius = item->radius * layout->scale;
    const double chord_deg = radius > CHORD_ERROR ? acos(1 - CHORD_ERROR / radius) * 360 / 3.14159265358979323846 : 90;
    const int chords = (int)fmin(CHORDS_MOST, fmax(whole ? 12 : 2, ceil(turn / chord_deg)));
    drawing_point points[CHORDS_MOST + 1];
    for (int i = 0; i <= chords; i++) {
        const plane_vec out = plane_direction(item->from_deg + turn * i / chords);
        points[i] = (drawing_point){centre.x + out.x * item->radius, centre.y + out.y * item->radius, NULL};
    }
    if (whole)
        area(layout, item, points, (size_t)chords);
    else
        layout_path(layout, points, (size_t)chords + 1, 0, stroke_of(item));
}

void layout_geometry(drawing_layout *layout) {
    const frame_drawing *drawing = layout->drawing;
    for (size_t i = 0; i < drawing->items.count && !layout->sheet->status; i++) {
        const drawing_item *item = &FRAME_ITEM(drawing_item, drawing->items, i);
        if (item->view != layout->view) continue;
        if (item->kind == DRAWING_PATH)
            layout_path(layout, layout_points(layout, item), item->count, 0, stroke_of(item));
        else if (item->kind == DRAWING_AREA)
            area(layout, item, layout_points(layout, item), item->count);
        else if (item->kind == DRAWING_CIRCLE || item->kind == DRAWING_ARC)
            round_thing(layout, item);
    }
}
