/* The heel of a pair of rafters: thrust, the force in the tie, and its nails. */
#include "base/number.h"
#include "joint/nailing.h"
#include "joint_facts.h"
#include "working/calculation.h"

static frame_status sensible(const frame_heel_joint_in *in) {
    const int given = in->each_lb != FRAME_NOT_GIVEN, kind = in->kind != FRAME_NOT_GIVEN_INT;
    char text[32];
    frame_number_print(12 * in->slope, 4, text, sizeof text);
    if (in->slope < 0.25 - 1e-12)
        return frame_fail(FRAME_REFUSED, "slope", text, "3 in 12 or more",
                          "slope: %s in 12; under 3 in 12 a tie does not do: the ridge is a beam (IRC R802.4.4)", text);
    if (given == kind)
        return frame_fail(given ? FRAME_CONFLICT : FRAME_REQUIRED, "each_lb", "", "each_lb, or kind and size",
                          given ? "each_lb: kind is given too; give one" : "each_lb: not given, nor is a kind of nail");
    const double rise = in->slope * in->span_in / 2;
    if (in->tie_height_in > rise * 2 / 3 + 1e-9)
        return frame_fail_number(FRAME_REFUSED, "tie_height_in", in->tie_height_in,
                                 "the lower two thirds of the rise: a collar tie above them does not hold the rafters");
    return FRAME_OK;
}

static double tie_force(const frame_heel_joint_in *in, double H_plf, frame_heel_joint_out *out, frame_working *w) {
    FRAME_GIVEN(w, H, H_plf, "plf", "thrust with the tie at the plate");
    FRAME_GIVEN(w, spacing, in->spacing_in, "in", "centres of the rafters");
    FRAME_GIVEN(w, H_R, in->slope * in->span_in / 2, "in", "height of the ridge above the plate");
    FRAME_GIVEN(w, H_C, in->tie_height_in, "in", "height of the tie above the plate");
    FRAME_STEP(w, r_H, 1 / (1 - H_C / H_R), "", "what the height multiplies it by", "statics; IRC table R802.5.2(2)");
    FRAME_STEP(w, T, H * r_H * spacing / 12, "lb", "force in the tie at each pair", "statics");
    out->raise_factor = r_H;
    return T;
}

/* Below a raised tie the rafter stands on the wall alone. */
static double bending(const frame_heel_joint_in *in, frame_working *w) {
    if (in->tie_height_in <= 0) return 0;
    FRAME_GIVEN(w, w_load, in->load_psf, "psf", "load on plan");
    FRAME_GIVEN(w, s_rafters, in->spacing_in, "in", "centres of the rafters");
    FRAME_GIVEN(w, L, in->span_in, "in", "span");
    FRAME_GIVEN(w, x_tie, in->tie_height_in / in->slope, "in", "level from the plate to the tie");
    FRAME_STEP(w, w_in, w_load * s_rafters / 144, "lb/in", "load on a rafter, on plan", "statics");
    FRAME_STEP(w, M_tie, w_in * L / 2 * x_tie - w_in * pow(x_tie, 2) / 2, "lb-in", "moment in the rafter at the tie",
               "statics");
    return M_tie;
}

static frame_status one_nail(const frame_heel_joint_in *in, frame_heel_joint_out *out, frame_working *w) {
    frame_nailing nailing = FRAME_NAILING_OF(in);
    frame_dowel_lateral_out value;
    out->cautions = FRAME_BIT(FRAME_FASTENING_CAUTION_LAPS) | FRAME_BIT(FRAME_FASTENING_CAUTION_HIP_END) |
                    FRAME_BIT(FRAME_FASTENING_CAUTION_CODE_TABLE);
    out->known = FRAME_KNOWN_USER;
    out->value_lb = in->each_lb;
    FRAME_NAILING_FORGET(HEEL_JOINT, &nailing, in->each_lb == FRAME_NOT_GIVEN, 0, out->assumed);
    if (in->each_lb != FRAME_NOT_GIVEN) {
        out->assumed &= ~FRAME_BIT(FRAME_ASSUMED_HEEL_JOINT_IN_SIDE_THICKNESS_IN);
        out->cautions |= FRAME_BIT(FRAME_FASTENING_CAUTION_ADJUSTED);
        return FRAME_OK;
    }
    nailing.side_angle_deg = atan(in->slope) / FRAME_DEG;
    nailing.main_angle_deg = 0;
    const frame_status status = frame_nailing_lateral(&nailing, &value, w);
    if (status) return status;
    out->value_lb = value.adjusted_lb;
    out->known = value.known;
    out->cautions |= frame_nailing_cautions(&nailing, &value);
    return FRAME_OK;
}

static void nails(const frame_heel_joint_in *in, double tie_lb, frame_heel_joint_out *out, frame_working *w) {
    const int counted = in->count != FRAME_NOT_GIVEN_INT;
    FRAME_TABLE(w, Z_prime, out->value_lb, "lb", "adjusted value of one", "above, or given");
    FRAME_TABLE(w, T_tie, tie_lb, "lb", "force in the tie", "above");
    FRAME_GIVEN(w, n_least, in->least_count, "", "the fewest to use");
    FRAME_STEP(w, n_needed, fmax(n_least, ceil(T_tie / Z_prime - 1e-9)), "", "nails at each heel and each lap",
               "NDS 2018 11.2.2; IRC table R802.5.2(1)");
    out->needed_count = frame_count_for(n_needed);
    if (n_needed * Z_prime - T_tie >= Z_prime) out->cautions |= FRAME_BIT(FRAME_FASTENING_CAUTION_LEAST);
    FRAME_GIVEN(w, n, counted ? in->count : out->needed_count, "", "nails");
    FRAME_STEP(w, ratio, T_tie / (n * Z_prime), "", "tie force over capacity", "at most 1");
    out->ratio = ratio;
    if (!counted) return;
    out->capacity_lb = n * Z_prime;
    out->passes = frame_within(ratio) && in->count >= in->least_count;
}

static frame_status compute(const frame_heel_joint_in *in, frame_heel_joint_out *out, frame_working *w) {
    frame_status status = sensible(in);
    if (!status) status = one_nail(in, out, w);
    if (status) return status;
    FRAME_HEADING(w, "Thrust");
    FRAME_GIVEN(w, w_plan, in->load_psf, "psf", "dead load and snow or roof live load, on plan");
    FRAME_GIVEN(w, L_ft, in->span_in / 12, "ft", "span of the roof");
    FRAME_GIVEN(w, rise_12, 12 * in->slope, "in", "rise in 12");
    FRAME_STEP(w, H_plate, 3 * w_plan * L_ft / rise_12, "plf", "thrust along the wall, tie at the plate",
               "statics of the three-hinged arch, w L^2/(8 rise)");
    out->thrust_plf = H_plate;
    out->tie_lb = tie_force(in, H_plate, out, w);
    out->rafter_moment_lb_in = bending(in, w);
    nails(in, out->tie_lb, out, w);
    if (in->tie_height_in > 0) out->cautions |= FRAME_BIT(FRAME_FASTENING_CAUTION_TIE_RAISED);
    out->not_checked = frame_nailing_unchecked() | FRAME_BIT(FRAME_FASTENING_UNCHECKED_RAFTER);
    return FRAME_OK;
}

FRAME_IMPLEMENT(heel_joint, compute);
