/* How unevenly a row of fasteners shares its load: the group action factor. */
#include "joint/fastening.h"
#include "joint_facts.h"
#include "working/calculation.h"

#define RULE "NDS 2018 equation 11.3-1"

static double slip_modulus(double D, int metal, frame_working *w) {
    if (metal) {
        FRAME_STEP(w, gamma_slip, 270000 * pow(D, 1.5), "lb/in", "load-slip modulus, wood to metal",
                   "NDS 2018 11.3.6.1");
        return gamma_slip;
    }
    FRAME_STEP(w, gamma_slip, 180000 * pow(D, 1.5), "lb/in", "load-slip modulus, wood to wood", "NDS 2018 11.3.6.1");
    return gamma_slip;
}

double frame_group_factor(const frame_group_row *row, frame_group_action_out *out, frame_working *w) {
    FRAME_GIVEN(w, n, row->count, "", "fasteners in a row");
    FRAME_GIVEN(w, D, row->diameter_in, "in", "diameter");
    FRAME_GIVEN(w, s, row->spacing_in, "in", "centres in a row");
    FRAME_GIVEN(w, EA_m, row->main_stiffness_lb, "lb", "modulus times area of the main member");
    FRAME_GIVEN(w, EA_s, row->side_stiffness_lb, "lb", "modulus times area of the side members");
    const double gamma_slip = slip_modulus(D, row->metal, w);
    FRAME_STEP(w, R_EA, fmin(EA_s / EA_m, EA_m / EA_s), "", "softer member over the stiffer", RULE);
    FRAME_STEP(w, u, 1 + gamma_slip * s / 2 * (1 / EA_m + 1 / EA_s), "", "u", RULE);
    FRAME_STEP(w, m, u - sqrt(pow(u, 2) - 1), "", "m", RULE);
    FRAME_STEP(
        w, C_g,
        m * (1 - pow(m, 2 * n)) / (n * ((1 + R_EA * pow(m, n)) * (1 + m) - 1 + pow(m, 2 * n))) * (1 + R_EA) / (1 - m),
        "", "group action factor", RULE);
    if (out) {
        out->load_slip_lb_per_in = gamma_slip;
        out->stiffness_ratio = R_EA;
        out->u = u;
        out->m = m;
    }
    return C_g;
}

static frame_status side_modulus(const frame_group_action_in *in, double *modulus) {
    *modulus = in->side_modulus_psi != FRAME_NOT_GIVEN ? in->side_modulus_psi : in->main_modulus_psi;
    if (!in->metal_side || in->side_modulus_psi != FRAME_NOT_GIVEN) return FRAME_OK;
    return frame_fail(FRAME_REQUIRED, "side_modulus_psi", "", ">0..40000000 psi",
                      "side_modulus_psi: not given; metal side plates need their modulus (steel 30000000 psi)");
}

static frame_status compute(const frame_group_action_in *in, frame_group_action_out *out, frame_working *w) {
    double modulus;
    const frame_status status = side_modulus(in, &modulus);
    if (status) return status;
    const frame_group_row row = {in->per_row,
                                 in->metal_side,
                                 in->diameter_in,
                                 in->spacing_in,
                                 in->main_modulus_psi * in->main_area_in2,
                                 modulus * in->side_area_in2};
    double factor = frame_group_factor(&row, out, w);
    if (in->diameter_in < 0.25) {
        FRAME_CASE(w, "D < 0.25", "small fasteners share the load: the factor is 1", "NDS 2018 11.3.6.1");
        factor = 1;
    }
    out->group_factor = factor;
    out->effective_count = factor * in->per_row;
    out->known = frame_known_worse(FRAME_KNOWN_SECONDARY, FRAME_KNOWN_USER);
    out->cautions = FRAME_BIT(FRAME_FASTENING_CAUTION_STAGGERED);
    out->not_checked = FRAME_BIT(FRAME_FASTENING_UNCHECKED_STRENGTH) | FRAME_BIT(FRAME_FASTENING_UNCHECKED_SPACING);
    if (in->side_modulus_psi != FRAME_NOT_GIVEN || in->metal_side)
        out->assumed &= ~FRAME_BIT(FRAME_ASSUMED_GROUP_ACTION_IN_SIDE_MODULUS_PSI);
    return FRAME_OK;
}

FRAME_IMPLEMENT(group_action, compute);
