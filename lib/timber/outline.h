/* The true outline of a plane face of a solid made of cells: edges that two cells share cancel, what is left are lines.
 */
#ifndef FRAME_LIB_TIMBER_OUTLINE_H
#define FRAME_LIB_TIMBER_OUTLINE_H

#include "timber/stick.h"

/* A line on a face from one point to another, the wood on its left as x and across grow. */
typedef struct frame_outline_line {
    double x[2], across[2];
    int beyond; /* the number of the plane on the other side of the line */
    int used;
} frame_outline_line;

typedef struct frame_outline_event {
    double at, x, across;
    int step;
} frame_outline_event;

/* Room to work in; begin it once for all faces. */
typedef struct frame_outline {
    frame_pool edges, events, lines;
    frame_outline_line edge_room[64], line_room[32];
    frame_outline_event event_room[64];
} frame_outline;

void frame_outline_begin(frame_outline *outline);
void frame_outline_give(frame_outline *outline);
/* Finds the lines round the faces that lie on a plane, by its number, as seen on one of the four side faces (which may
 * be the plane itself); across is counted from the bottom edge, or from the right one, which lie at y0, z0. */
frame_status frame_outline_lines(frame_outline *outline, const frame_solid *solid, int plane, int face, double y0,
                                 double z0);
/* Finds the lines that are left of the edges put into the outline: those with one number beyond lie on one line. */
frame_status frame_outline_cancel(frame_outline *outline);
/* Puts an edge among those that will be cancelled; 0 without memory. */
int frame_outline_add_edge(frame_outline *outline, const frame_outline_line *edge);
/* Adds the corners of the loop that a line not yet used begins, but for those on a straight line. */
frame_status frame_outline_loop(frame_outline *outline, frame_outline_line *line, frame_pool *points,
                                frame_stick_face face, int32_t loop);

#endif
