/* Points and directions in space. */
#ifndef FRAME_LIB_TIMBER_VECTOR_H
#define FRAME_LIB_TIMBER_VECTOR_H

#include <math.h>

typedef struct vec3 {
    double x, y, z;
} vec3;

/* A plane: the points p with normal . p = at. The normal has length 1. */
typedef struct frame_plane {
    vec3 normal;
    double at;
} frame_plane;

static inline vec3 vec_add(vec3 a, vec3 b) {
    return (vec3){a.x + b.x, a.y + b.y, a.z + b.z};
}
static inline vec3 vec_less(vec3 a, vec3 b) {
    return (vec3){a.x - b.x, a.y - b.y, a.z - b.z};
}
static inline vec3 vec_times(vec3 a, double factor) {
    return (vec3){a.x * factor, a.y * factor, a.z * factor};
}
static inline double vec_dot(vec3 a, vec3 b) {
    return a.x * b.x + a.y * b.y + a.z * b.z;
}
static inline vec3 vec_cross(vec3 a, vec3 b) {
    return (vec3){a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}
static inline double vec_length(vec3 a) {
    return sqrt(vec_dot(a, a));
}
/* The point at a fraction of the way from a to b. */
static inline vec3 vec_between(vec3 a, vec3 b, double fraction) {
    return vec_add(a, vec_times(vec_less(b, a), fraction));
}
/* How far a point lies beyond a plane, in the direction of its normal. */
static inline double vec_beyond(const frame_plane *plane, vec3 point) {
    return vec_dot(plane->normal, point) - plane->at;
}

#endif
