/* Convex polygons in plan, cut by lines. */
#include "timber/plane2.h"

void polygon2_keep(polygon2 *polygon, line2 line) {
    polygon2 kept;
    kept.count = 0;
    for (int i = 0; i < polygon->count && kept.count + 2 <= POLYGON2_CORNERS; i++) {
        const v2 a = polygon->corners[i], b = polygon->corners[i + 1 < polygon->count ? i + 1 : 0];
        const double from = line2_within(line, a), to = line2_within(line, b);
        if (from >= 0) kept.corners[kept.count++] = a;
        if ((from < 0) != (to < 0)) kept.corners[kept.count++] = v2_add(a, v2_times(v2_less(b, a), from / (from - to)));
    }
    *polygon = kept;
}

double polygon2_area(const polygon2 *polygon) {
    double twice = 0;
    for (int i = 2; i < polygon->count; i++)
        twice += v2_cross(v2_less(polygon->corners[i - 1], polygon->corners[0]),
                          v2_less(polygon->corners[i], polygon->corners[0]));
    return fabs(twice) / 2;
}

void polygon2_range(const polygon2 *polygon, v2 n, double *low, double *high) {
    *low = HUGE_VAL, *high = -HUGE_VAL;
    for (int i = 0; i < polygon->count; i++) {
        *low = fmin(*low, v2_dot(n, polygon->corners[i]));
        *high = fmax(*high, v2_dot(n, polygon->corners[i]));
    }
}
