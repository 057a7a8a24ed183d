/* The reduction terms R_d, from the yield value to the allowable one: NDS table 12.3.1B. */
#include "joint/small.h"
#include "joint/yield.h"

#define TABLE_B "NDS 2018 table 12.3.1B"

static void keep(frame_yield *joint, double one, double two, double three) {
    joint->R_d_I = one;
    joint->R_d_II = two;
    joint->R_d_III = three;
}

static void small(frame_yield *joint, frame_working *w) {
    const double K_D = frame_small_reduction(joint->D, w);
    FRAME_STEP(w, R_d_I, K_D, "", "reduction term of mode I", TABLE_B);
    FRAME_STEP(w, R_d_II, K_D, "", "reduction term of mode II", TABLE_B);
    FRAME_STEP(w, R_d_III, K_D, "", "reduction term of modes III and IV", TABLE_B);
    keep(joint, R_d_I, R_d_II, R_d_III);
}

/* Threaded, 1/4 in or more by name and less at the root. */
static void slender(frame_yield *joint, double theta, frame_working *w) {
    FRAME_CASE(w, "D_nom >= 0.25 && D < 0.25",
               "threaded, 1/4 in or more with a root under 1/4 in: both reductions together", TABLE_B " footnote 1");
    const double K_D = frame_small_reduction(joint->D, w);
    FRAME_STEP(w, K_theta, 1 + 0.25 * theta / 90, "", "reduction by angle", TABLE_B);
    FRAME_STEP(w, R_d_I, K_D * K_theta, "", "reduction term of mode I", TABLE_B " footnote 1");
    FRAME_STEP(w, R_d_II, K_D * K_theta, "", "reduction term of mode II", TABLE_B " footnote 1");
    FRAME_STEP(w, R_d_III, K_D * K_theta, "", "reduction term of modes III and IV", TABLE_B " footnote 1");
    keep(joint, R_d_I, R_d_II, R_d_III);
}

static void large(frame_yield *joint, double theta, frame_working *w) {
    FRAME_STEP(w, K_theta, 1 + 0.25 * theta / 90, "", "reduction by angle", TABLE_B);
    FRAME_STEP(w, R_d_I, 4 * K_theta, "", "reduction term of mode I", TABLE_B);
    FRAME_STEP(w, R_d_II, 3.6 * K_theta, "", "reduction term of mode II", TABLE_B);
    FRAME_STEP(w, R_d_III, 3.2 * K_theta, "", "reduction term of modes III and IV", TABLE_B);
    keep(joint, R_d_I, R_d_II, R_d_III);
}

void frame_yield_reduction(frame_yield *joint, double nominal_in, double theta_deg, frame_working *w) {
    FRAME_HEADING(w, "Reduction term");
    if (nominal_in < 0.25)
        small(joint, w);
    else if (joint->D < 0.25)
        slender(joint, theta_deg, w);
    else
        large(joint, theta_deg, w);
}
