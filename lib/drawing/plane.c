/* Geometry on the paper. */
#include "drawing/plane.h"

#include <math.h>

#define RADIANS (3.14159265358979323846 / 180)

/* Quarter turns are exact, so that level and plumb stay level and plumb. */
plane_vec plane_direction(double degrees) {
    const double turn = fmod(degrees, 360), quarters = turn / 90;
    if (quarters == floor(quarters)) {
        static const plane_vec exact[] = {{1, 0}, {0, 1}, {-1, 0}, {0, -1}};
        return exact[((int)quarters + 4) % 4];
    }
    return plane_at(cos(turn * RADIANS), sin(turn * RADIANS));
}

void plane_corners(const plane_box *box, plane_vec corners[4]) {
    static const int signs[4][2] = {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}};
    const plane_vec up = plane_left(box->along);
    for (int i = 0; i < 4; i++)
        corners[i] = plane_add(
            box->centre, plane_mix(box->along, signs[i][0] * box->half_length, up, signs[i][1] * box->half_height));
}

plane_box plane_grown(plane_box box, double by) {
    box.half_length += by;
    box.half_height += by;
    return box;
}

double plane_reach(const plane_box *box, plane_vec direction) {
    return fabs(plane_dot(box->along, direction)) * box->half_length +
           fabs(plane_dot(plane_left(box->along), direction)) * box->half_height;
}

/* Two convex shapes are apart when one of their sides' normals tells them apart. */
int plane_boxes_meet(const plane_box *a, const plane_box *b, double gap) {
    const plane_vec axes[] = {a->along, plane_left(a->along), b->along, plane_left(b->along)};
    const plane_vec apart = plane_minus(b->centre, a->centre);
    for (int i = 0; i < 4; i++)
        if (fabs(plane_dot(apart, axes[i])) >= plane_reach(a, axes[i]) + plane_reach(b, axes[i]) + gap) return 0;
    return 1;
}

int plane_box_hit(const plane_box *box, plane_vec a, plane_vec b) {
    const plane_vec middle = plane_minus(plane_between(a, b, 0.5), box->centre),
                    half = plane_times(plane_minus(b, a), 0.5);
    const plane_vec up = plane_left(box->along), across = plane_left(half);
    if (fabs(plane_dot(middle, box->along)) > box->half_length + fabs(plane_dot(half, box->along))) return 0;
    if (fabs(plane_dot(middle, up)) > box->half_height + fabs(plane_dot(half, up))) return 0;
    return fabs(plane_dot(middle, across)) <= plane_reach(box, across);
}

int plane_segments_cross(plane_vec a, plane_vec b, plane_vec c, plane_vec d) {
    const plane_vec ab = plane_minus(b, a), cd = plane_minus(d, c);
    const double one = plane_cross(ab, plane_minus(c, a)), two = plane_cross(ab, plane_minus(d, a));
    const double three = plane_cross(cd, plane_minus(a, c)), four = plane_cross(cd, plane_minus(b, c));
    return ((one > 0) != (two > 0)) && ((three > 0) != (four > 0));
}

plane_extent plane_nothing(void) {
    return (plane_extent){{HUGE_VAL, HUGE_VAL}, {-HUGE_VAL, -HUGE_VAL}};
}

void plane_include(plane_extent *extent, plane_vec point) {
    extent->low = plane_at(fmin(extent->low.x, point.x), fmin(extent->low.y, point.y));
    extent->high = plane_at(fmax(extent->high.x, point.x), fmax(extent->high.y, point.y));
}

void plane_include_box(plane_extent *extent, const plane_box *box) {
    plane_vec corners[4];
    plane_corners(box, corners);
    for (int i = 0; i < 4; i++) plane_include(extent, corners[i]);
}

int plane_is_empty(const plane_extent *extent) {
    return extent->low.x > extent->high.x;
}

int plane_extents_meet(const plane_extent *a, const plane_extent *b) {
    return a->low.x <= b->high.x && b->low.x <= a->high.x && a->low.y <= b->high.y && b->low.y <= a->high.y;
}

size_t plane_crossings(plane_vec a, plane_vec b, const plane_vec *polygon, size_t count, double *at, size_t most) {
    const plane_vec ab = plane_minus(b, a);
    size_t found = 0;
    for (size_t i = 0; i < count && found < most; i++) {
        const plane_vec c = polygon[i], d = polygon[(i + 1) % count];
        const double side_c = plane_cross(ab, plane_minus(c, a)), side_d = plane_cross(ab, plane_minus(d, a));
        if ((side_c > 0) == (side_d > 0)) continue;
        const plane_vec point = plane_between(c, d, side_c / (side_c - side_d));
        const double t = plane_dot(plane_minus(point, a), ab) / plane_dot(ab, ab);
        if (!(t > 0 && t < 1)) continue;
        size_t place = found++;
        for (; place && at[place - 1] > t; place--) at[place] = at[place - 1];
        at[place] = t;
    }
    return found;
}

int plane_inside(plane_vec point, const plane_vec *polygon, size_t count) {
    int inside = 0;
    for (size_t i = 0; i < count; i++) {
        const plane_vec a = polygon[i], b = polygon[(i + 1) % count];
        if ((a.y > point.y) == (b.y > point.y)) continue;
        if (point.x < a.x + (b.x - a.x) * (point.y - a.y) / (b.y - a.y)) inside = !inside;
    }
    return inside;
}
