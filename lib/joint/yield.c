/* The yield-limit equations of NDS 12.3.1 for members in contact. */
#include "joint/yield_single.h"

void frame_yield_single(const frame_yield *joint, frame_yield_values *values, frame_working *w) {
    frame_yield_in_single_shear(joint, values, w);
}

void frame_yield_double(const frame_yield *joint, frame_yield_values *values, frame_working *w) {
    const double D = joint->D, l_m = joint->l_m, l_s = joint->l_s, F_em = joint->F_em, F_es = joint->F_es,
                 F_yb = joint->F_yb, R_d_I = joint->R_d_I, R_d_III = joint->R_d_III;
    FRAME_HEADING(w, "Yield modes in double shear");
    FRAME_STEP(w, R_e, F_em / F_es, "", "ratio of bearing strengths, main to side", FRAME_TABLE_OF_MODES);
    FRAME_STEP(w, k_3, -1 + sqrt(2 * (1 + R_e) / R_e + 2 * F_yb * (2 + R_e) * pow(D, 2) / (3 * F_em * pow(l_s, 2))), "",
               "coefficient of mode IIIs", FRAME_TABLE_OF_MODES);
    FRAME_STEP(w, Z_Im, D * l_m * F_em / R_d_I, "lb", "the main member crushes", "NDS 2018 equation 12.3-7");
    FRAME_STEP(w, Z_Is, 2 * D * l_s * F_es / R_d_I, "lb", "both side members crush", "NDS 2018 equation 12.3-8");
    FRAME_STEP(w, Z_IIIs, 2 * k_3 * D * l_s * F_em / ((2 + R_e) * R_d_III), "lb",
               "the fastener bends once at each plane and turns in the side members", "NDS 2018 equation 12.3-9");
    FRAME_STEP(w, Z_IV, 2 * pow(D, 2) / R_d_III * sqrt(2 * F_em * F_yb / (3 * (1 + R_e))), "lb",
               "the fastener bends twice at each plane", "NDS 2018 equation 12.3-10");
    *values = (frame_yield_values){
        .im = Z_Im, .is = Z_Is, .ii = FRAME_NOT_GIVEN, .iiim = FRAME_NOT_GIVEN, .iiis = Z_IIIs, .iv = Z_IV};
    frame_yield_govern(values);
}

void frame_yield_govern(frame_yield_values *values) {
    frame_yield_least(values);
}
