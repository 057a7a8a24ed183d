/* A plan held by distances: corners placed one by one, then settled together by least squares. Corner 1 stays at 0,
 * corner 2 on the x axis. */
#ifndef FRAME_LIB_MARKS_NETWORK_H
#define FRAME_LIB_MARKS_NETWORK_H

#include <frame/marks.h>

#include <math.h>

#include "base/memory.h"

enum { FRAME_NETWORK_CORNERS = 60 };

typedef struct frame_network_line {
    int from, to; /* from 0 */
    double length, error;
    double residual, share; /* measured less found; 0..1, see survey_residual */
} frame_network_line;

typedef struct frame_network {
    int corners, lines, unknowns;
    double x[FRAME_NETWORK_CORNERS], y[FRAME_NETWORK_CORNERS], error[FRAME_NETWORK_CORNERS];
    int near[FRAME_NETWORK_CORNERS]; /* whether the caller said about where it lies */
    int either_side;                 /* a corner was placed by two distances and the way round alone */
    frame_network_line *line;
    double *normal; /* unknowns by unknowns: the normal equations, then their inverse */
    double *right;  /* unknowns */
} frame_network;

/* Places each corner by distances to those placed before. FRAME_IMPOSSIBLE names one that is not held. */
frame_status frame_network_place(frame_network *network);
/* Settles all corners, and finds residuals, shares and errors. */
frame_status frame_network_settle(frame_network *network);

static inline double frame_network_found(const frame_network *network, const frame_network_line *line) {
    const double dx = network->x[line->to] - network->x[line->from], dy = network->y[line->to] - network->y[line->from];
    return sqrt(dx * dx + dy * dy);
}

#endif
