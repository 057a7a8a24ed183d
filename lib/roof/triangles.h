/* A face of a solved roof as triangles in plan, each with its plane. */
#ifndef FRAME_LIB_ROOF_TRIANGLES_H
#define FRAME_LIB_ROOF_TRIANGLES_H

#include <frame/roof.h>

#include "base/answer.h"
#include "timber/plane2.h"

typedef struct roof_triangle {
    v2 corners[3]; /* counterclockwise */
    int32_t face;
} roof_triangle;

/* The plane of a sloping face: z = base + rise . p. */
typedef struct roof_slope {
    v2 rise;
    double base, secant;
} roof_slope;

static inline double roof_slope_at(const roof_slope *slope, v2 p) {
    return slope->base + v2_dot(slope->rise, p);
}
static inline int roof_face_is_sloping(const frame_roof_solve_face *face) {
    return face->kind == FRAME_FACE_ROOF || face->kind == FRAME_FACE_UPPER_ROOF;
}

/* The plane of a face, raised by a height. */
roof_slope roof_slope_of(const frame_answer *roof, size_t face, double height);
/* Appends the triangles (roof_triangle) of all sloping faces. */
frame_status roof_triangles(const frame_answer *roof, frame_array *triangles);

#endif
