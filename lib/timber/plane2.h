/* Points, lines and convex polygons in plan. */
#ifndef FRAME_LIB_TIMBER_PLANE2_H
#define FRAME_LIB_TIMBER_PLANE2_H

#include <math.h>

typedef struct v2 {
    double x, y;
} v2;

/* The half of the plane with n . p >= at; n has length 1. */
typedef struct line2 {
    v2 n;
    double at;
} line2;

static inline v2 v2_add(v2 a, v2 b) {
    return (v2){a.x + b.x, a.y + b.y};
}
static inline v2 v2_less(v2 a, v2 b) {
    return (v2){a.x - b.x, a.y - b.y};
}
static inline v2 v2_times(v2 a, double factor) {
    return (v2){a.x * factor, a.y * factor};
}
static inline double v2_dot(v2 a, v2 b) {
    return a.x * b.x + a.y * b.y;
}
static inline double v2_cross(v2 a, v2 b) {
    return a.x * b.y - a.y * b.x;
}
static inline v2 v2_left(v2 a) {
    return (v2){-a.y, a.x};
}
static inline double v2_length(v2 a) {
    return hypot(a.x, a.y);
}
static inline v2 v2_unit(v2 a) {
    return v2_times(a, 1 / v2_length(a));
}
/* How far a point lies within. */
static inline double line2_within(line2 line, v2 p) {
    return v2_dot(line.n, p) - line.at;
}
static inline line2 line2_through(v2 p, v2 n) {
    return (line2){n, v2_dot(n, p)};
}
static inline line2 line2_turned(line2 line) {
    return (line2){v2_times(line.n, -1), -line.at};
}
static inline line2 line2_moved(line2 line, double inward) {
    return (line2){line.n, line.at + inward};
}
/* Where two lines cross; 0 when they run alike. */
static inline int line2_meet(line2 a, line2 b, v2 *p) {
    const double turn = v2_cross(a.n, b.n);
    if (fabs(turn) < 1e-9) return 0;
    *p = (v2){(a.at * b.n.y - b.at * a.n.y) / turn, (b.at * a.n.x - a.at * b.n.x) / turn};
    return 1;
}

enum { POLYGON2_CORNERS = 32 };
typedef struct polygon2 {
    v2 corners[POLYGON2_CORNERS];
    int count;
} polygon2;

/* Keeps what lies within a line. */
void polygon2_keep(polygon2 *polygon, line2 line);
double polygon2_area(const polygon2 *polygon);
/* The least and greatest of n . p over it. */
void polygon2_range(const polygon2 *polygon, v2 n, double *low, double *high);

#endif
