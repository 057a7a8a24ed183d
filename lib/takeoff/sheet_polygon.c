/* Area, crossing edges, and what a polygon's corners are worth. */
#include "takeoff/sheet_polygon.h"

#include <math.h>

double frame_sheet_area(const frame_sheet_point *points, int count) {
    double twice = 0;
    for (int i = 1; i + 1 < count; i++) twice += frame_sheet_cross(points[0], points[i], points[i + 1]);
    return twice / 2;
}

frame_sheet_box frame_sheet_box_of(const frame_sheet_point *points, int count) {
    frame_sheet_box box = {points[0].x, points[0].y, points[0].x, points[0].y};
    for (int i = 1; i < count; i++) {
        box.x0 = fmin(box.x0, points[i].x);
        box.y0 = fmin(box.y0, points[i].y);
        box.x1 = fmax(box.x1, points[i].x);
        box.y1 = fmax(box.y1, points[i].y);
    }
    return box;
}

static int on_segment(frame_sheet_point a, frame_sheet_point b, frame_sheet_point p) {
    return p.x >= fmin(a.x, b.x) && p.x <= fmax(a.x, b.x) && p.y >= fmin(a.y, b.y) && p.y <= fmax(a.y, b.y);
}

/* Whether two segments have a point in common. */
static int meet(frame_sheet_point a, frame_sheet_point b, frame_sheet_point c, frame_sheet_point d) {
    const double abc = frame_sheet_cross(a, b, c), abd = frame_sheet_cross(a, b, d);
    const double cda = frame_sheet_cross(c, d, a), cdb = frame_sheet_cross(c, d, b);
    if (((abc > 0 && abd < 0) || (abc < 0 && abd > 0)) && ((cda > 0 && cdb < 0) || (cda < 0 && cdb > 0))) return 1;
    return (abc == 0 && on_segment(a, b, c)) || (abd == 0 && on_segment(a, b, d)) ||
           (cda == 0 && on_segment(c, d, a)) || (cdb == 0 && on_segment(c, d, b));
}

/* Whether the edges before and after corner b run back over each other. */
static int folds(frame_sheet_point a, frame_sheet_point b, frame_sheet_point c) {
    const double ahead = (b.x - a.x) * (c.x - b.x) + (b.y - a.y) * (c.y - b.y);
    return frame_sheet_cross(a, b, c) == 0 && ahead < 0;
}

int frame_sheet_crossing(const frame_sheet_point *points, int count, int *one, int *other) {
    for (int i = 0; i < count; i++) {
        const frame_sheet_point a = points[i], b = points[(i + 1) % count];
        *one = i, *other = (i + 1) % count;
        if (folds(a, b, points[(i + 2) % count])) return 1;
        for (int j = i + 2; j < count; j++) {
            if ((j + 1) % count == i) continue;
            *other = j;
            if (meet(a, b, points[j], points[(j + 1) % count])) return 1;
        }
    }
    return 0;
}

int frame_sheet_clean(frame_sheet_point *points, int count, double tolerance) {
    for (int i = 0; i < count && count > 3;) {
        const frame_sheet_point a = points[(i + count - 1) % count], b = points[i], c = points[(i + 1) % count];
        const double length = hypot(c.x - a.x, c.y - a.y);
        const int same = hypot(b.x - a.x, b.y - a.y) <= tolerance;
        if (!same && fabs(frame_sheet_cross(a, b, c)) > tolerance * length) {
            i++;
            continue;
        }
        for (int k = i; k + 1 < count; k++) points[k] = points[k + 1];
        count--;
        if (i > 0) i--;
    }
    return count;
}

int frame_sheet_inside(const frame_sheet_point *points, int count, frame_sheet_point p) {
    int inside = 0;
    for (int i = 0, j = count - 1; i < count; j = i++) {
        if ((points[i].y > p.y) == (points[j].y > p.y)) continue;
        const double part = (p.y - points[i].y) / (points[j].y - points[i].y);
        inside ^= p.x < points[i].x + part * (points[j].x - points[i].x);
    }
    return inside;
}
