/* What is left of a stick: convex cells that share no space, side by side. */
#ifndef FRAME_LIB_TIMBER_SOLID_H
#define FRAME_LIB_TIMBER_SOLID_H

#include <frame/base.h>

#include "timber/cell.h"
#include "timber/pool.h"

typedef struct frame_solid_cell {
    uint32_t vertex, face, corner; /* where its own begin in the pools */
    uint16_t vertex_count, face_count, corner_count;
    uint16_t gone;  /* a notch has replaced it */
    uint16_t reach; /* used while finding out whether all hangs together */
    uint16_t spare;
} frame_solid_cell;

typedef struct frame_solid {
    frame_pool planes, vertices, faces, corners, cells;
    frame_plane plane_room[20];
    vec3 vertex_room[48];
    frame_cell_face face_room[32];
    frame_cell_corner corner_room[144];
    frame_solid_cell cell_room[6];
} frame_solid;

enum { SOLID_PLANES = 250 };

void frame_solid_begin(frame_solid *solid);
void frame_solid_give(frame_solid *solid);

/* The number of a plane: of one it coincides with, the same or turned round, or of a new one. *side: 1 when the
 * numbered plane has the same normal, -1 when it is turned round. Negative without memory or room. */
int frame_solid_plane(frame_solid *solid, const frame_plane *plane, int *side);

/* Says why a split gave nothing. */
frame_status frame_solid_split_failed(frame_cell_parts found);
/* Starts anew from one cell. */
frame_status frame_solid_start(frame_solid *solid, const frame_cell *cell);
/* Takes away what lies over all of some planes, each the numbered plane seen from a side. */
typedef struct frame_solid_bound {
    int plane, side;
} frame_solid_bound;
frame_status frame_solid_notch(frame_solid *solid, const frame_solid_bound *bounds, size_t count);

/* Whether all cells hang together by faces: whether it is one piece. */
int frame_solid_whole(frame_solid *solid);
static inline uint16_t *frame_solid_reach(frame_solid *solid, size_t place) {
    return &FRAME_POOL_ITEM(frame_solid_cell, solid->cells, place).reach;
}

size_t frame_solid_cell_count(const frame_solid *solid);
/* A cell by its place; 0 when it is gone. */
int frame_solid_look(const frame_solid *solid, size_t place, frame_cell_view *view);
static inline const frame_plane *frame_solid_plane_at(const frame_solid *solid, int number) {
    return &FRAME_POOL_ITEM(const frame_plane, solid->planes, number);
}
void frame_solid_measure(const frame_solid *solid, frame_moments *sum);
/* The least and greatest x of all vertices. */
void frame_solid_extent(const frame_solid *solid, double *low, double *high);

#endif
