/* Formulas of fasteners under 1/4 in. Inline, so that the short way of dowel_lateral, which records nothing, shares
 * them. */
#ifndef FRAME_LIB_JOINT_SMALL_H
#define FRAME_LIB_JOINT_SMALL_H

#include "joint/reach.h"
#include "working/record.h"

#include "working/plain_math.h"

/* Depths are compared with this play, so that exactly 6 D counts. */
#define FRAME_DEPTH_PLAY 1e-9

FRAME_ALWAYS_INLINE double frame_small_bearing(double G, frame_working *w) {
    FRAME_STEP(w, F_e_small, 16600 * pow(G, 1.84), "psi", "dowel bearing strength, any direction",
               "NDS 2018 table 12.3.3, D < 1/4 in");
    return F_e_small;
}

FRAME_ALWAYS_INLINE double frame_small_reduction(double D, frame_working *w) {
    FRAME_STEP(w, K_D, D <= 0.17 ? 2.2 : 10 * D + 0.5, "", "reduction by diameter", "NDS 2018 table 12.3.1B");
    return K_D;
}

/* What bears of a nail or wood screw that is p deep, E of it tip: half of the tip is left out below 10 D. */
FRAME_ALWAYS_INLINE double frame_bearing_of_point(double p, double E, double D_nom, frame_dowel_hold *hold,
                                                  frame_working *w) {
    if (p >= 10 * D_nom - FRAME_DEPTH_PLAY || E == 0) {
        FRAME_STEP(w, l_p, p, "in", "bearing length", "NDS 2018 12.3.5");
        *hold = p >= 10 * D_nom - FRAME_DEPTH_PLAY ? FRAME_HOLD_FULL : FRAME_HOLD_THROUGH;
        return l_p;
    }
    FRAME_CASE(w, "p < 10 * D_nom", "short: half of the tip is left out", "NDS 2018 12.3.5.3, from memory");
    FRAME_STEP(w, l_p, p - E / 2, "in", "bearing length", "NDS 2018 12.3.5.3, from memory");
    *hold = FRAME_HOLD_BY_EQUATIONS;
    return l_p;
}

#endif
