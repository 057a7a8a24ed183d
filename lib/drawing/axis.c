/* The x axis with its breaks, and paths across them. */
#include <math.h>

#include "drawing/layout.h"

static const drawing_break *breaks_of(const drawing_layout *layout, size_t *count) {
    *count = layout->drawing->breaks.count;
    return layout->drawing->breaks.items;
}

/* Monotone: what lies in a break shares the gap, so that no dimension is lost even there. */
plane_vec layout_map(const drawing_layout *layout, double x, double y) {
    size_t count;
    const drawing_break *breaks = breaks_of(layout, &count);
    double removed = 0, gaps = 0;
    for (size_t i = 0; i < count && breaks[i].from < x; i++) {
        const double length = breaks[i].to - breaks[i].from, part = fmin(x - breaks[i].from, length);
        removed += part;
        gaps += LAYOUT_GAP * part / length;
    }
    return plane_at((x - removed) * layout->scale + gaps, y * layout->scale);
}

const drawing_point *layout_points(const drawing_layout *layout, const drawing_item *item) {
    return (const drawing_point *)layout->drawing->points.items + item->first;
}

static void push(drawing_layout *layout, frame_array *run, plane_vec point) {
    if (!frame_array_push(run, &point)) layout->sheet->status = FRAME_NO_MEMORY;
}

static void end_run(drawing_layout *layout, sheet_shape shape) {
    if (layout->way.count > 1) sheet_shape_add(layout->sheet, shape, layout->way.items, layout->way.count);
    layout->way.count = 0;
}

/* The point of a segment at an edge of a break: on the wave drawn there. */
static plane_vec at_edge(const drawing_layout *layout, drawing_point a, drawing_point b, size_t index, int after) {
    const drawing_break *edge = &FRAME_ITEM(drawing_break, layout->drawing->breaks, index);
    const double x = after ? edge->to : edge->from;
    plane_vec at = layout_map(layout, x, a.y + (b.y - a.y) * (x - a.x) / (b.x - a.x));
    at.x += layout_wave(layout, index, after, at.y);
    return at;
}

/* Draws what is seen of one segment onto the run in hand. Nothing of a segment across the axis within a break. */
static void segment(drawing_layout *layout, drawing_point a, drawing_point b, sheet_shape shape) {
    size_t count;
    const drawing_break *breaks = breaks_of(layout, &count);
    const int forward = b.x >= a.x;
    int hidden = 0;
    for (size_t i = 0; i < count && !hidden; i++) hidden = a.x > breaks[i].from && a.x < breaks[i].to;
    if (!hidden && !layout->way.count) push(layout, &layout->way, layout_map(layout, a.x, a.y));
    for (size_t n = 0; n < count; n++) {
        const size_t i = forward ? n : count - 1 - n;
        const double enter = forward ? breaks[i].from : breaks[i].to, leave = forward ? breaks[i].to : breaks[i].from;
        const double way = forward ? 1 : -1;
        if (!hidden && way * (enter - a.x) >= 0 && way * (b.x - enter) > 0) {
            push(layout, &layout->way, at_edge(layout, a, b, i, !forward));
            end_run(layout, shape);
            hidden = 1;
        }
        if (hidden && way * (leave - a.x) > 0 && way * (b.x - leave) >= 0) {
            push(layout, &layout->way, at_edge(layout, a, b, i, forward));
            hidden = 0;
        }
    }
    if (!hidden) push(layout, &layout->way, layout_map(layout, b.x, b.y));
}

static int meets_break(const drawing_layout *layout, const drawing_point *points, size_t count) {
    size_t breaks_count;
    const drawing_break *breaks = breaks_of(layout, &breaks_count);
    double low = HUGE_VAL, high = -HUGE_VAL;
    for (size_t k = 0; k < count; k++) {
        low = fmin(low, points[k].x);
        high = fmax(high, points[k].x);
    }
    for (size_t i = 0; i < breaks_count; i++)
        if (high > breaks[i].from && low < breaks[i].to) return 1;
    return 0;
}

void layout_path(drawing_layout *layout, const drawing_point *points, size_t count, int closed, sheet_shape shape) {
    layout->way.count = 0;
    if (!meets_break(layout, points, count)) {
        for (size_t k = 0; k < count; k++) push(layout, &layout->way, layout_map(layout, points[k].x, points[k].y));
        shape.kind = closed ? SHEET_LOOP : SHEET_LINE;
        end_run(layout, shape);
        return;
    }
    shape.kind = SHEET_LINE;
    for (size_t k = 0; k + !closed < count; k++) segment(layout, points[k], points[(k + 1) % count], shape);
    end_run(layout, shape);
}

/* Keeps the side of a polygon where way * (x - edge) >= 0 (Sutherland and Hodgman's walk round the corners). */
static void clip(drawing_layout *layout, const frame_array *from, frame_array *to, double edge, double way) {
    to->count = 0;
    for (size_t k = 0; k < from->count; k++) {
        const plane_vec a = FRAME_ITEM(plane_vec, *from, k), b = FRAME_ITEM(plane_vec, *from, (k + 1) % from->count);
        const int a_in = way * (a.x - edge) >= 0, b_in = way * (b.x - edge) >= 0;
        if (a_in) push(layout, to, a);
        if (a_in != b_in) push(layout, to, plane_at(edge, a.y + (b.y - a.y) * (edge - a.x) / (b.x - a.x)));
    }
}

/* Puts a part on the paper; its edges at breaks follow the waves. */
static void onto_paper(drawing_layout *layout, const frame_array *part, size_t k) {
    size_t count;
    const drawing_break *breaks = breaks_of(layout, &count);
    layout->visible.count = 0;
    for (size_t i = 0; i < part->count; i++) {
        const plane_vec a = FRAME_ITEM(plane_vec, *part, i), b = FRAME_ITEM(plane_vec, *part, (i + 1) % part->count);
        const int left = k > 0 && a.x == breaks[k - 1].to && b.x == a.x;
        const int right = k < count && a.x == breaks[k].from && b.x == a.x;
        const int steps = left || right ? 16 : 1;
        for (int s = 0; s < steps; s++) {
            plane_vec at = layout_map(layout, a.x, a.y + (b.y - a.y) * s / steps);
            if (left || right) at.x += layout_wave(layout, left ? k - 1 : k, left, at.y);
            push(layout, &layout->visible, at);
        }
    }
}

void layout_part(drawing_layout *layout, const drawing_point *points, size_t count, size_t k) {
    size_t breaks_count;
    const drawing_break *breaks = breaks_of(layout, &breaks_count);
    frame_array one = {.item_size = sizeof(plane_vec)}, two = {.item_size = sizeof(plane_vec)};
    for (size_t i = 0; i < count; i++) push(layout, &one, plane_at(points[i].x, points[i].y));
    if (k > 0) {
        clip(layout, &one, &two, breaks[k - 1].to, 1);
        one.count = 0;
        for (size_t i = 0; i < two.count; i++) push(layout, &one, FRAME_ITEM(plane_vec, two, i));
    }
    if (k < breaks_count) {
        clip(layout, &one, &two, breaks[k].from, -1);
        one.count = 0;
        for (size_t i = 0; i < two.count; i++) push(layout, &one, FRAME_ITEM(plane_vec, two, i));
    }
    onto_paper(layout, &one, k);
    frame_array_give(&one);
    frame_array_give(&two);
}
