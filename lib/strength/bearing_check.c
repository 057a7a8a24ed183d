/* Bearing at any angle to the grain: NDS 2018 3.10. */
#include "strength/bending.h"
#include "strength_facts.h"
#include "working/calculation.h"

#include "working/plain_math.h"

static frame_status check_given(const frame_bearing_check_in *in) {
    const frame_status method = frame_time_effect_given(in->method, in->time_effect_factor);
    if (method) return method;
    if (in->incised && in->load_duration == FRAME_DURATION_IMPACT) return frame_impact_refused("load_duration");
    if (frame_given(in->fc_psi) != frame_given(in->fc_perp_psi))
        return frame_given(in->fc_psi) ? frame_lacks("fc_perp_psi", "F_c-perp, with fc_psi")
                                       : frame_lacks("fc_psi", "F_c, with fc_perp_psi");
    return FRAME_OK;
}

/* Values that bearing does not look at stand at 1 where the caller gives his own. */
static frame_status find_member(const frame_bearing_check_in *in, frame_member *m) {
    const int user = frame_given(in->fc_psi);
    const double unused = user ? 1 : FRAME_NOT_GIVEN;
    const frame_member_ask ask = {FRAME_MEMBER_ON_EDGE(in),       .fb_psi = unused, .fv_psi = unused,
                                  .fc_perp_psi = in->fc_perp_psi, .e_psi = unused,  .e_min_psi = FRAME_NOT_GIVEN};
    frame_status status = check_given(in);
    if (!status) status = frame_member_find(&ask, m);
    if (!status && user) m->lumber.fc_psi = in->fc_psi, m->lumber.size_factor_fc = 1;
    return status;
}

/* F_c*: all factors but C_P. */
static double along_grain(const frame_bearing_check_in *in, const frame_member *m, frame_working *record) {
    FRAME_HEADING(record, "Along the grain");
    frame_record_edition(m->edition, record);
    FRAME_TABLE(record, F_c, m->lumber.fc_psi, "psi", "compression design value", m->lumber.source);
    FRAME_TABLE(record, C_M_c, m->wet->fc, "", "wet service factor on F_c", m->wet->source);
    FRAME_TABLE(record, C_t_c, m->temperature_stress, "", "temperature factor on F_c", "NDS 2018 table 2.3.3");
    FRAME_TABLE(record, C_F_c, m->lumber.size_factor_fc, "", "size factor on F_c", m->lumber.size_source);
    FRAME_TABLE(record, C_i_c, m->incised->fc, "", "incising factor on F_c", m->incised->source);
    if (in->method == FRAME_METHOD_LRFD) {
        FRAME_TABLE(record, K_F_c, FRAME_FORMAT_KF(FRAME_FORMAT_FC), "", "format conversion factor on F_c",
                    FRAME_FORMAT_SOURCE);
        FRAME_TABLE(record, phi_c, FRAME_FORMAT_PHI(FRAME_FORMAT_FC), "", "resistance factor on F_c",
                    FRAME_FORMAT_SOURCE);
        FRAME_GIVEN(record, lambda, in->time_effect_factor, "", "time effect factor of this combination");
        FRAME_STEP(record, F_c_star, F_c * C_M_c * C_t_c * C_F_c * C_i_c * K_F_c * phi_c * lambda, "psi",
                   "compression design value, all factors but C_P", "NDS 2018 table 4.3.1");
        return F_c_star;
    }
    FRAME_TABLE(record, C_D, frame_duration_factor(in->load_duration), "", "load duration factor",
                FRAME_DURATION_SOURCE);
    FRAME_STEP(record, F_c_star, F_c * C_D * C_M_c * C_t_c * C_F_c * C_i_c, "psi",
               "compression design value, all factors but C_P", "NDS 2018 table 4.3.1");
    return F_c_star;
}

/* F_c-perp', with C_b away from the ends. */
static double across_grain(const frame_bearing_check_in *in, const frame_member *m, frame_bearing_check_out *out,
                           frame_working *record) {
    FRAME_HEADING(record, "Across the grain");
    const double plain = frame_bending_crushing_by(m, in->method == FRAME_METHOD_LRFD, record);
    if (in->at_end || in->length_in >= 6) {
        out->bearing_area_factor = 1;
        return plain;
    }
    FRAME_TABLE(record, F_p, plain, "psi", "adjusted design value across the grain, C_b 1", "above");
    FRAME_GIVEN(record, l_b, in->length_in, "in", "length of bearing");
    FRAME_STEP(record, C_b, (l_b + 0.375) / l_b, "", "bearing area factor, 3 in and more from the end",
               "NDS 2018 3.10.4 (from memory)");
    FRAME_STEP(record, F_c_perp_prime, F_p * C_b, "psi", "adjusted design value across the grain",
               "NDS 2018 table 4.3.1");
    out->bearing_area_factor = C_b;
    return F_c_perp_prime;
}

static double allowed_at(const frame_bearing_check_in *in, double F_c_star, double F_c_perp_prime,
                         frame_working *record) {
    FRAME_HEADING(record, "At the angle to the grain");
    FRAME_GIVEN(record, theta, in->angle_deg, "deg", "angle between load and grain");
    FRAME_STEP(record, F_theta_prime,
               F_c_star * F_c_perp_prime /
                   (F_c_star * pow(sin(theta * FRAME_DEG), 2) + F_c_perp_prime * pow(cos(theta * FRAME_DEG), 2)),
               "psi", "allowed at this angle (Hankinson)", "NDS 2018 3.10.3 (from memory)");
    return F_theta_prime;
}

static void compare(const frame_bearing_check_in *in, const frame_member *m, double F_theta_prime,
                    frame_bearing_check_out *out, frame_working *record) {
    FRAME_HEADING(record, "Bearing");
    FRAME_GIVEN(record, n, m->plies, "", "number of plies");
    FRAME_TABLE(record, b, m->breadth, "in", "breadth of one ply", m->section_source);
    FRAME_GIVEN(record, l, in->length_in, "in", "length of bearing");
    FRAME_GIVEN(record, R, in->load_lb, "lb", "load");
    FRAME_STEP(record, A_b, n * b * l, "in2", "area that bears", "");
    FRAME_STEP(record, f, R / A_b, "psi", "bearing stress", "NDS 2018 3.10.2");
    FRAME_STEP(record, ratio, f / F_theta_prime, "", "share of the bearing strength used", "NDS 2018 3.10");
    FRAME_STEP(record, l_needed, ratio * l, "in", "length of bearing that would do", "");
    FRAME_STEP(record, R_max, F_theta_prime * A_b, "lb", "load that it would just bear", "");
    const int holds = frame_holds(ratio);
    FRAME_CASE(record, holds ? "ratio <= 1" : "ratio > 1", holds ? "it holds" : "it does not hold", "");
    out->ratio = ratio, out->stress_psi = f, out->length_needed_in = l_needed, out->capacity_lb = R_max;
}

static void remark(const frame_bearing_check_in *in, const frame_member *m, frame_bearing_check_out *out) {
    out->passes = frame_holds(out->ratio);
    out->known = m->known > frame_duration_known() ? m->known : frame_duration_known();
    if (in->method == FRAME_METHOD_LRFD && out->known < FRAME_KNOWN_SECONDARY) out->known = FRAME_KNOWN_SECONDARY;
    out->cautions = FRAME_BIT(FRAME_BEARING_CAUTION_BOTH) |
                    FRAME_BIT(m->user ? FRAME_BEARING_CAUTION_USER_VALUES : FRAME_BEARING_CAUTION_STAMP);
    if (out->known == FRAME_KNOWN_MEMORY) out->cautions |= FRAME_BIT(FRAME_BEARING_CAUTION_MEMORY);
    if (in->angle_deg < 45 && out->stress_psi > 0.75 * out->fc_star_psi)
        out->cautions |= FRAME_BIT(FRAME_BEARING_CAUTION_END_PLATE);
    out->not_checked = FRAME_BIT(FRAME_BEARING_UNCHECKED_OTHER_SIDE) | FRAME_BIT(FRAME_BEARING_UNCHECKED_COMBINATIONS);
    if (in->angle_deg < 90) out->not_checked |= FRAME_BIT(FRAME_BEARING_UNCHECKED_SLIDING);
}

static frame_status compute(const frame_bearing_check_in *in, frame_bearing_check_out *out, frame_working *record) {
    frame_member member;
    const frame_status status = find_member(in, &member);
    if (status) return status;
    const double F_c_star = along_grain(in, &member, record);
    const double F_c_perp_prime = across_grain(in, &member, out, record);
    const double F_theta_prime = allowed_at(in, F_c_star, F_c_perp_prime, record);
    out->fc_star_psi = F_c_star, out->fc_perp_adjusted_psi = F_c_perp_prime, out->allowed_psi = F_theta_prime;
    compare(in, &member, F_theta_prime, out, record);
    remark(in, &member, out);
    return FRAME_OK;
}
FRAME_IMPLEMENT(bearing_check, compute);
