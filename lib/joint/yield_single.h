/* The six yield modes in single shear, of members in contact: NDS 12.3.1. Inline, so that the short way of
 * dowel_lateral, which records nothing, is rid of the recording. */
#ifndef FRAME_LIB_JOINT_YIELD_SINGLE_H
#define FRAME_LIB_JOINT_YIELD_SINGLE_H

#include "joint/yield.h"
#include "working/record.h"

#include "working/plain_math.h"

#define FRAME_TABLE_OF_MODES "NDS 2018 table 12.3.1A"

FRAME_ALWAYS_INLINE void frame_yield_consider(frame_yield_values *values, double value, frame_yield_mode mode) {
    if (value == FRAME_NOT_GIVEN || value >= values->z) return;
    values->z = value;
    values->mode = mode;
}

FRAME_ALWAYS_INLINE void frame_yield_least(frame_yield_values *values) {
    values->z = values->im;
    values->mode = FRAME_MODE_IM;
    frame_yield_consider(values, values->is, FRAME_MODE_IS);
    frame_yield_consider(values, values->ii, FRAME_MODE_II);
    frame_yield_consider(values, values->iiim, FRAME_MODE_IIIM);
    frame_yield_consider(values, values->iiis, FRAME_MODE_IIIS);
    frame_yield_consider(values, values->iv, FRAME_MODE_IV);
}

FRAME_ALWAYS_INLINE void frame_yield_in_single_shear(const frame_yield *joint, frame_yield_values *values,
                                                     frame_working *w) {
    const double D = joint->D, l_m = joint->l_m, l_s = joint->l_s, F_em = joint->F_em, F_es = joint->F_es,
                 F_yb = joint->F_yb, R_d_I = joint->R_d_I, R_d_II = joint->R_d_II, R_d_III = joint->R_d_III;
    FRAME_HEADING(w, "Yield modes in single shear");
    FRAME_STEP(w, R_e, F_em / F_es, "", "ratio of bearing strengths, main to side", FRAME_TABLE_OF_MODES);
    FRAME_STEP(w, R_t, l_m / l_s, "", "ratio of bearing lengths, main to side", FRAME_TABLE_OF_MODES);
    FRAME_STEP(
        w, k_1,
        (sqrt(R_e + 2 * pow(R_e, 2) * (1 + R_t + pow(R_t, 2)) + pow(R_t, 2) * pow(R_e, 2) * R_e) - R_e * (1 + R_t)) /
            (1 + R_e),
        "", "coefficient of mode II", FRAME_TABLE_OF_MODES);
    FRAME_STEP(w, k_2, -1 + sqrt(2 * (1 + R_e) + 2 * F_yb * (1 + 2 * R_e) * pow(D, 2) / (3 * F_em * pow(l_m, 2))), "",
               "coefficient of mode IIIm", FRAME_TABLE_OF_MODES);
    FRAME_STEP(w, k_3, -1 + sqrt(2 * (1 + R_e) / R_e + 2 * F_yb * (2 + R_e) * pow(D, 2) / (3 * F_em * pow(l_s, 2))), "",
               "coefficient of mode IIIs", FRAME_TABLE_OF_MODES);
    FRAME_STEP(w, Z_Im, D * l_m * F_em / R_d_I, "lb", "the main member crushes", "NDS 2018 equation 12.3-1");
    FRAME_STEP(w, Z_Is, D * l_s * F_es / R_d_I, "lb", "the side member crushes", "NDS 2018 equation 12.3-2");
    FRAME_STEP(w, Z_II, k_1 * D * l_s * F_es / R_d_II, "lb", "the fastener turns, straight, in both members",
               "NDS 2018 equation 12.3-3");
    FRAME_STEP(w, Z_IIIm, k_2 * D * l_m * F_em / ((1 + 2 * R_e) * R_d_III), "lb",
               "the fastener bends once and turns in the main member", "NDS 2018 equation 12.3-4");
    FRAME_STEP(w, Z_IIIs, k_3 * D * l_s * F_em / ((2 + R_e) * R_d_III), "lb",
               "the fastener bends once and turns in the side member", "NDS 2018 equation 12.3-5");
    FRAME_STEP(w, Z_IV, pow(D, 2) / R_d_III * sqrt(2 * F_em * F_yb / (3 * (1 + R_e))), "lb", "the fastener bends twice",
               "NDS 2018 equation 12.3-6");
    *values = (frame_yield_values){.im = Z_Im, .is = Z_Is, .ii = Z_II, .iiim = Z_IIIm, .iiis = Z_IIIs, .iv = Z_IV};
    frame_yield_least(values);
}

#endif
