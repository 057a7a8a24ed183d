/* Members apart: the general dowel equations of Technical Report 12 for solid sections. Each mode's resistance P is the
 * root of A P^2 + B P + C = 0. With no gap they come to the equations of NDS 12.3.1. */
#include "joint/yield.h"
#include "working/record.h"

#define REPORT "AWC Technical Report 12, table 1-1"

/* One plane's resistances before R_d. */
typedef struct plane {
    double q_m, q_s, M, g, ii, iiim, iiis, iv;
} plane;

static void turning(const frame_yield *joint, plane *p, frame_working *w) {
    const double l_m = joint->l_m, l_s = joint->l_s, g = p->g, q_m = p->q_m, q_s = p->q_s;
    FRAME_STEP(w, A_II, 1 / (4 * q_s) + 1 / (4 * q_m), "in/lb", "mode II: coefficient A", REPORT);
    FRAME_STEP(w, B_II, l_s / 2 + g + l_m / 2, "in", "mode II: coefficient B", REPORT);
    FRAME_STEP(w, C_II, -q_s * pow(l_s, 2) / 4 - q_m * pow(l_m, 2) / 4, "lb-in", "mode II: coefficient C", REPORT);
    FRAME_STEP(w, P_II, (-B_II + sqrt(pow(B_II, 2) - 4 * A_II * C_II)) / (2 * A_II), "lb", "mode II: yield", REPORT);
    p->ii = P_II;
}

static void bending_in_main(const frame_yield *joint, plane *p, frame_working *w) {
    const double l_m = joint->l_m, g = p->g, q_m = p->q_m, q_s = p->q_s, M = p->M;
    FRAME_STEP(w, A_IIIm, 1 / (2 * q_s) + 1 / (4 * q_m), "in/lb", "mode IIIm: coefficient A", REPORT);
    FRAME_STEP(w, B_IIIm, g + l_m / 2, "in", "mode IIIm: coefficient B", REPORT);
    FRAME_STEP(w, C_IIIm, -M - q_m * pow(l_m, 2) / 4, "lb-in", "mode IIIm: coefficient C", REPORT);
    FRAME_STEP(w, P_IIIm, (-B_IIIm + sqrt(pow(B_IIIm, 2) - 4 * A_IIIm * C_IIIm)) / (2 * A_IIIm), "lb",
               "mode IIIm: yield", REPORT);
    p->iiim = P_IIIm;
}

static void bending_in_side(const frame_yield *joint, plane *p, frame_working *w) {
    const double l_s = joint->l_s, g = p->g, q_m = p->q_m, q_s = p->q_s, M = p->M;
    FRAME_STEP(w, A_IIIs, 1 / (4 * q_s) + 1 / (2 * q_m), "in/lb", "mode IIIs: coefficient A", REPORT);
    FRAME_STEP(w, B_IIIs, l_s / 2 + g, "in", "mode IIIs: coefficient B", REPORT);
    FRAME_STEP(w, C_IIIs, -q_s * pow(l_s, 2) / 4 - M, "lb-in", "mode IIIs: coefficient C", REPORT);
    FRAME_STEP(w, P_IIIs, (-B_IIIs + sqrt(pow(B_IIIs, 2) - 4 * A_IIIs * C_IIIs)) / (2 * A_IIIs), "lb",
               "mode IIIs: yield", REPORT);
    p->iiis = P_IIIs;
}

static void bending_twice(plane *p, frame_working *w) {
    const double g = p->g, q_m = p->q_m, q_s = p->q_s, M = p->M;
    FRAME_STEP(w, A_IV, 1 / (2 * q_s) + 1 / (2 * q_m), "in/lb", "mode IV: coefficient A", REPORT);
    FRAME_STEP(w, C_IV, -2 * M, "lb-in", "mode IV: coefficient C", REPORT);
    FRAME_STEP(w, P_IV, (-g + sqrt(pow(g, 2) - 4 * A_IV * C_IV)) / (2 * A_IV), "lb", "mode IV: yield, with B = g",
               REPORT);
    p->iv = P_IV;
}

static void reduce(const frame_yield *joint, int planes, const plane *p, frame_yield_values *values, frame_working *w) {
    const double l_m = joint->l_m, l_s = joint->l_s, q_m = p->q_m, q_s = p->q_s, P_IIIs = p->iiis, P_IV = p->iv,
                 R_d_I = joint->R_d_I, R_d_II = joint->R_d_II, R_d_III = joint->R_d_III;
    FRAME_GIVEN(w, n_planes, planes, "", "shear planes");
    FRAME_STEP(w, Z_Im, q_m * l_m / R_d_I, "lb", "the main member crushes", REPORT);
    FRAME_STEP(w, Z_Is, n_planes * q_s * l_s / R_d_I, "lb", "the side member crushes", REPORT);
    FRAME_STEP(w, Z_IIIs, n_planes * P_IIIs / R_d_III, "lb", "the fastener bends once and turns in the side member",
               REPORT);
    FRAME_STEP(w, Z_IV, n_planes * P_IV / R_d_III, "lb", "the fastener bends twice", REPORT);
    *values = (frame_yield_values){
        .im = Z_Im, .is = Z_Is, .ii = FRAME_NOT_GIVEN, .iiim = FRAME_NOT_GIVEN, .iiis = Z_IIIs, .iv = Z_IV};
    if (planes == 1) {
        const double P_II = p->ii, P_IIIm = p->iiim;
        FRAME_STEP(w, Z_II, P_II / R_d_II, "lb", "the fastener turns, straight, in both members", REPORT);
        FRAME_STEP(w, Z_IIIm, P_IIIm / R_d_III, "lb", "the fastener bends once and turns in the main member", REPORT);
        values->ii = Z_II;
        values->iiim = Z_IIIm;
    }
}

void frame_yield_apart(const frame_yield *joint, int planes, frame_yield_values *values, frame_working *w) {
    const double D = joint->D, F_em = joint->F_em, F_es = joint->F_es, F_yb = joint->F_yb;
    FRAME_HEADING(w, "Yield modes with a gap");
    FRAME_GIVEN(w, g, joint->g, "in", "gap between the members");
    FRAME_STEP(w, q_m, F_em * D, "lb/in", "bearing resistance of the main member", REPORT);
    FRAME_STEP(w, q_s, F_es * D, "lb/in", "bearing resistance of the side member", REPORT);
    FRAME_STEP(w, M, F_yb * pow(D, 2) * D / 6, "lb-in", "moment at which the fastener yields", REPORT);
    plane p = {.q_m = q_m, .q_s = q_s, .M = M, .g = g};
    if (planes == 1) {
        turning(joint, &p, w);
        bending_in_main(joint, &p, w);
    }
    bending_in_side(joint, &p, w);
    bending_twice(&p, w);
    reduce(joint, planes, &p, values, w);
    frame_yield_govern(values);
}
