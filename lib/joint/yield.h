/* The yield-limit equations: what one fastener carries by each way in which it and the wood can give. */
#ifndef FRAME_LIB_JOINT_YIELD_H
#define FRAME_LIB_JOINT_YIELD_H

#include <frame/joint.h>
#include <frame/working.h>

/* What the equations need; the names are the standard's. All of it must be recorded under these names before. */
typedef struct frame_yield {
    double D, l_m, l_s, F_em, F_es, F_yb;
    double g;                      /* gap between the members, inches */
    double R_d_I, R_d_II, R_d_III; /* reduction terms of modes I, II, and III with IV */
} frame_yield;

typedef struct frame_yield_values {
    double im, is, ii, iiim, iiis, iv; /* pounds; ii and iiim not given in double shear */
    double z;
    frame_yield_mode mode;
} frame_yield_values;

/* NDS 12.3.1, members in contact. */
void frame_yield_single(const frame_yield *joint, frame_yield_values *values, frame_working *w);
void frame_yield_double(const frame_yield *joint, frame_yield_values *values, frame_working *w);
/* Technical Report 12, members apart; planes 1 or 2. */
void frame_yield_apart(const frame_yield *joint, int planes, frame_yield_values *values, frame_working *w);

/* Reduction terms by NDS table 12.3.1B. theta_deg is the largest angle of load to grain of any member. */
void frame_yield_reduction(frame_yield *joint, double nominal_in, double theta_deg, frame_working *w);

/* Picks the least of the values. */
void frame_yield_govern(frame_yield_values *values);

#endif
