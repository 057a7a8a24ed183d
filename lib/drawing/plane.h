/* Geometry on the paper: points in typographic points, y up. */
#ifndef FRAME_LIB_DRAWING_PLANE_H
#define FRAME_LIB_DRAWING_PLANE_H

#include <stddef.h>

typedef struct plane_vec {
    double x, y;
} plane_vec;

static inline plane_vec plane_at(double x, double y) {
    return (plane_vec){x, y};
}
static inline plane_vec plane_add(plane_vec a, plane_vec b) {
    return (plane_vec){a.x + b.x, a.y + b.y};
}
static inline plane_vec plane_minus(plane_vec a, plane_vec b) {
    return (plane_vec){a.x - b.x, a.y - b.y};
}
static inline plane_vec plane_times(plane_vec a, double k) {
    return (plane_vec){a.x * k, a.y * k};
}
static inline double plane_dot(plane_vec a, plane_vec b) {
    return a.x * b.x + a.y * b.y;
}
static inline double plane_cross(plane_vec a, plane_vec b) {
    return a.x * b.y - a.y * b.x;
}
/* A quarter turn counterclockwise. */
static inline plane_vec plane_left(plane_vec a) {
    return (plane_vec){-a.y, a.x};
}
/* The point at a along u and b along v. */
static inline plane_vec plane_mix(plane_vec u, double a, plane_vec v, double b) {
    return (plane_vec){u.x * a + v.x * b, u.y * a + v.y * b};
}
static inline plane_vec plane_between(plane_vec a, plane_vec b, double t) {
    return (plane_vec){a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t};
}
plane_vec plane_direction(double degrees);

/* A rectangle turned any way: what a text covers. */
typedef struct plane_box {
    plane_vec centre, along; /* along: a unit vector, the direction of the text */
    double half_length, half_height;
} plane_box;

void plane_corners(const plane_box *box, plane_vec corners[4]);
plane_box plane_grown(plane_box box, double by);
/* Nonzero when two boxes come nearer than gap, as measured across their sides. */
int plane_boxes_meet(const plane_box *a, const plane_box *b, double gap);
/* Nonzero when a segment touches a box. */
int plane_box_hit(const plane_box *box, plane_vec a, plane_vec b);
int plane_segments_cross(plane_vec a, plane_vec b, plane_vec c, plane_vec d);
/* How far a box reaches from its centre in a direction. */
double plane_reach(const plane_box *box, plane_vec direction);

/* An axis-parallel extent; empty while low is above high. */
typedef struct plane_extent {
    plane_vec low, high;
} plane_extent;

plane_extent plane_nothing(void);
void plane_include(plane_extent *extent, plane_vec point);
void plane_include_box(plane_extent *extent, const plane_box *box);
int plane_is_empty(const plane_extent *extent);
int plane_extents_meet(const plane_extent *a, const plane_extent *b);

/* Cuts the segment a-b at a polygon's edges: writes the parameters of the crossings in order, at most `most`, and gives
 * their number. */
size_t plane_crossings(plane_vec a, plane_vec b, const plane_vec *polygon, size_t count, double *at, size_t most);
/* Even-odd rule. */
int plane_inside(plane_vec point, const plane_vec *polygon, size_t count);

#endif
