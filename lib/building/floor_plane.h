/* Floors in axes of their own: u across the joists, v along them; joists whole, or in pieces where openings cut them.
 */
#ifndef FRAME_LIB_BUILDING_FLOOR_PLANE_H
#define FRAME_LIB_BUILDING_FLOOR_PLANE_H

#include "building/framing.h"

typedef struct frame_floor_plane {
    double u0, u1, v0, v1;
    int along_x;
} frame_floor_plane;

frame_floor_plane frame_floor_plane_of(const frame_part_floor *floor);
void frame_floor_to_plan(const frame_floor_plane *p, double u, double v, double *x, double *y);

/* A piece of a joist: from header joist, rim or ledger to the next. */
typedef struct frame_joist_piece {
    double u, v0, v1;
    size_t headers[2]; /* bearers at its ends; FRAME_NOBODY where there is none */
} frame_joist_piece;

/* The piece of the joist at u that begins at v or after it; 0 when there is none. */
int frame_joist_piece_from(const frame_framing_job *job, size_t floor, const frame_floor_plane *p, double u, double v,
                           frame_joist_piece *piece);
/* It as a line in plan, and what holds it; the array is made here, give it back. */
frame_bearer frame_joist_line(const frame_framing_job *job, size_t floor, const frame_floor_plane *p,
                              const frame_joist_piece *piece);
frame_status frame_joist_supports(const frame_framing_job *job, const frame_bearer *line,
                                  const frame_joist_piece *piece, frame_array *supports);
frame_by_kind frame_floor_psf(const frame_part_floor *floor);

#endif
