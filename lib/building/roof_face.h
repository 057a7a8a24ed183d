/* A face of a roof in axes of its own, for what is found strip by strip. */
#ifndef FRAME_LIB_BUILDING_ROOF_FACE_H
#define FRAME_LIB_BUILDING_ROOF_FACE_H

#include "building/framing.h"

enum { FRAME_ROOF_FACE_CORNERS = 64 };

typedef struct frame_roof_at {
    double u, v; /* along the eave, and up the slope, both level */
} frame_roof_at;

/* A face in axes of its own. */
typedef struct frame_roof_face {
    frame_framing_job *job;
    const frame_roof_shape *shape;
    size_t roof, index;
    frame_roof_solve_face facts;
    double ux, uy, vx, vy;
    frame_roof_at corners[FRAME_ROOF_FACE_CORNERS];
    int32_t points[FRAME_ROOF_FACE_CORNERS];
    size_t count;
    frame_by_kind psf; /* on plan */
    double snow, unbalanced, secant, overhang;
    double longest, drift; /* the worst strip's snow beside a step, as if it lay evenly */
} frame_roof_face;

/* Where a line up the slope enters and leaves the face around a point; the edges it does so at. */
typedef struct frame_roof_crossing {
    double low, high;
    size_t low_edge, high_edge;
    int found;
} frame_roof_crossing;
frame_roof_crossing frame_roof_face_cross(const frame_roof_face *f, frame_roof_at at);
/* Makes the face's axes and corners; 0 where it has too many corners. */
int frame_roof_face_read(frame_roof_face *f);
/* Hands a strip's reaction to what holds its end at a point of an edge. */
frame_status frame_roof_face_hand(const frame_roof_face *f, const char *name, size_t edge, frame_roof_at at,
                                  const frame_by_kind *load);

/* The part of a polygon where nu u + nv v is at or over a value; out has room for twice a face's corners. */
size_t frame_roof_clip(const frame_roof_at *in, size_t count, double nu, double nv, double at, frame_roof_at *out);
/* Snow beside steps on a strip, in pounds, and where its middle lies up the slope. */
double frame_roof_surcharge(const frame_roof_face *f, const frame_roof_at *strip, size_t count, double *v_middle);
/* The even load that bends a rafter at u as much as what lies there, and weighs as much on its ends. */
double frame_roof_even_surcharge(const frame_roof_face *f, double u, double low, double high);

#endif
