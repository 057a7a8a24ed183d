/* A group of fasteners under a load that need not pass through its centre. */
#ifndef FRAME_LIB_JOINT_ECCENTRIC_H
#define FRAME_LIB_JOINT_ECCENTRIC_H

#include <stddef.h>

#include <frame/joint.h>

enum { FRAME_MOST_ECCENTRIC = 1000 }; /* as the header has it */

/* Fasteners about their elastic centre; the load acts there, with its moment. */
typedef struct frame_eccentric {
    size_t count;
    double x[FRAME_MOST_ECCENTRIC], y[FRAME_MOST_ECCENTRIC], weight[FRAME_MOST_ECCENTRIC];
    double centre_x, centre_y, weights, polar;
    double force_x, force_y, moment;
} frame_eccentric;

/* How one of weight 1 gives: the share of its value at a slip, and the slip the farthest may reach. */
typedef struct frame_slip {
    int curved;
    double rate, power, most;
} frame_slip;

/* Where the group turns when all of it carries what it can. The field of slips is (a - turn y, b + turn x). */
typedef struct frame_instant {
    double a, b, turn;
    double factor; /* the load that the group carries over the load given, each of value 1 */
    int rounds;
    double over[FRAME_MOST_ECCENTRIC]; /* force over slip of each, of value and weight 1 */
} frame_instant;

void frame_instant_find(const frame_eccentric *group, const frame_slip *slip, frame_instant *found);
/* What fastener i carries then, of value 1. */
void frame_instant_share(const frame_eccentric *group, const frame_instant *found, size_t i, double *x, double *y);

#endif
