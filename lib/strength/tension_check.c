/* A tie, chord or hanger: NDS 2018 3.8 and 3.9.1, allowable stress design. */
#include "base/number.h"
#include "strength/bending.h"
#include "strength_facts.h"
#include "working/calculation.h"

#include "working/plain_math.h"

static frame_status check_given(const frame_tension_check_in *in) {
    const int lateral = in->lateral_plf > 0;
    const frame_status method = frame_time_effect_given(in->method, in->time_effect_factor);
    if (method) return method;
    if (lateral && !frame_given(in->length_in)) return frame_lacks("length_in", "the span, with sideways load");
    if (in->compression_edge == FRAME_EDGE_HELD && frame_given(in->unbraced_length_in))
        return frame_edge_conflict(in->unbraced_length_in);
    if (in->incised && in->load_duration == FRAME_DURATION_IMPACT) return frame_impact_refused("load_duration");
    if (!frame_given(in->ft_psi)) {
        if (frame_given(in->fb_psi)) return frame_lacks("ft_psi", "F_t, with fb_psi");
        return frame_given(in->e_min_psi) ? frame_lacks("ft_psi", "F_t, with e_min_psi") : FRAME_OK;
    }
    if (lateral && !frame_given(in->fb_psi)) return frame_lacks("fb_psi", "F_b, with ft_psi, for sideways load");
    if (lateral && in->compression_edge == FRAME_EDGE_FREE && !frame_given(in->e_min_psi))
        return frame_lacks("e_min_psi", "E_min, with ft_psi, for sideways load on a free edge");
    return FRAME_OK;
}

/* Values that no check of a tie looks at stand at 1 where the caller gives his own. */
static frame_status find_member(const frame_tension_check_in *in, frame_member *m) {
    const int user = frame_given(in->ft_psi);
    const double unused = user ? 1 : FRAME_NOT_GIVEN;
    const frame_member_ask ask = {
        FRAME_MEMBER_ON_EDGE(in), .fb_psi = user ? frame_or(in->fb_psi, unused) : FRAME_NOT_GIVEN,
        .fv_psi = unused,         .fc_perp_psi = unused,
        .e_psi = unused,          .e_min_psi = user ? frame_or(in->e_min_psi, unused) : FRAME_NOT_GIVEN};
    frame_status status = check_given(in);
    if (!status) status = frame_member_find(&ask, m);
    if (!status && user) m->lumber.ft_psi = in->ft_psi, m->lumber.size_factor_ft = 1;
    return status;
}

static frame_status nothing_left(double hole, double width) {
    char given[32], most[32];
    frame_number_print(hole, 6, given, sizeof given);
    frame_number_print(width, 6, most, sizeof most);
    return frame_fail(
        FRAME_IMPOSSIBLE, "hole_diameter_in", given, "holes that leave some of the width",
        "hole_diameter_in: %s in takes all of a width of %s in; valid is holes that leave some of the width", given,
        most);
}

/* The section, less its holes (NDS 3.1.2). */
static frame_status find_section(const frame_tension_check_in *in, const frame_member *m, frame_tension_check_out *out,
                                 frame_working *record) {
    FRAME_HEADING(record, "Section");
    frame_record_edition(m->edition, record);
    FRAME_GIVEN(record, n, m->plies, "", "number of plies");
    FRAME_TABLE(record, b, m->breadth, "in", "thickness of one ply", m->section_source);
    FRAME_TABLE(record, d, m->depth, "in", "width of one ply", m->section_source);
    FRAME_STEP(record, A, n * b * d, "in2", "area", "rectangles");
    if (!frame_given(in->hole_diameter_in)) {
        out->net_area_in2 = A;
        FRAME_STEP(record, A_n, A, "in2", "net area: no holes", "NDS 2018 3.1.2");
        (void)A_n;
        return FRAME_OK;
    }
    if (in->holes_across * in->hole_diameter_in >= m->depth) return nothing_left(in->hole_diameter_in, m->depth);
    FRAME_GIVEN(record, n_h, in->holes_across, "", "holes in one cross-section");
    FRAME_GIVEN(record, D_h, in->hole_diameter_in, "in", "their diameter");
    FRAME_STEP(record, A_n, A - n_h * D_h * n * b, "in2", "net area", "NDS 2018 3.1.2");
    out->net_area_in2 = A_n;
    return FRAME_OK;
}

static void give_tension(double f_t, double F_t_prime, double A_n, frame_tension_check_out *out,
                         frame_working *record) {
    FRAME_STEP(record, T_max, F_t_prime * A_n, "lb", "tension that it would just carry", "NDS 2018 3.8.1");
    FRAME_STEP(record, tension_ratio, f_t / F_t_prime, "", "share of the tension strength used", "NDS 2018 3.8.1");
    out->ft_actual_psi = f_t;
    out->ft_adjusted_psi = F_t_prime;
    out->capacity_lb = T_max;
    out->tension_ratio = tension_ratio;
}

static void find_tension(const frame_tension_check_in *in, const frame_member *m, frame_tension_check_out *out,
                         frame_working *record) {
    const double A_n = out->net_area_in2;
    FRAME_HEADING(record, "Tension");
    FRAME_GIVEN(record, T, in->tension_lb, "lb", "tension");
    FRAME_STEP(record, f_t, T / A_n, "psi", "tension stress", "NDS 2018 3.8.1");
    FRAME_TABLE(record, F_t, m->lumber.ft_psi, "psi", "tension design value", m->lumber.source);
    FRAME_TABLE(record, C_M_t, m->wet->ft, "", "wet service factor on F_t", m->wet->source);
    FRAME_TABLE(record, C_t_t, m->temperature_e, "", "temperature factor on F_t, that of E", "NDS 2018 table 2.3.3");
    FRAME_TABLE(record, C_F_t, m->lumber.size_factor_ft, "", "size factor on F_t", m->lumber.size_source);
    FRAME_TABLE(record, C_i_t, m->incised->ft, "", "incising factor on F_t", m->incised->source);
    out->size_factor = C_F_t;
    if (in->method == FRAME_METHOD_LRFD) {
        FRAME_TABLE(record, K_F_t, FRAME_FORMAT_KF(FRAME_FORMAT_FT), "", "format conversion factor on F_t",
                    FRAME_FORMAT_SOURCE);
        FRAME_TABLE(record, phi_t, FRAME_FORMAT_PHI(FRAME_FORMAT_FT), "", "resistance factor on F_t",
                    FRAME_FORMAT_SOURCE);
        FRAME_GIVEN(record, lambda_t, in->time_effect_factor, "", "time effect factor of this combination");
        FRAME_STEP(record, F_t_prime, F_t * C_M_t * C_t_t * C_F_t * C_i_t * K_F_t * phi_t * lambda_t, "psi",
                   "adjusted tension design value", "NDS 2018 table 4.3.1");
        give_tension(f_t, F_t_prime, A_n, out, record);
        return;
    }
    FRAME_TABLE(record, C_D, out->load_duration_factor, "", "load duration factor", FRAME_DURATION_SOURCE);
    FRAME_STEP(record, F_t_prime, F_t * C_D * C_M_t * C_t_t * C_F_t * C_i_t, "psi", "adjusted tension design value",
               "NDS 2018 table 4.3.1");
    give_tension(f_t, F_t_prime, A_n, out, record);
}

static double stress_of_lateral(const frame_tension_check_in *in, const frame_member *m, frame_working *record) {
    const double n = m->plies, b = m->breadth, d = m->depth;
    FRAME_HEADING(record, "Bending under sideways load");
    FRAME_GIVEN(record, w, in->lateral_plf, "plf", "load on a foot");
    FRAME_GIVEN(record, L, in->length_in, "in", "span");
    FRAME_STEP(record, M, w / 12 * pow(L, 2) / 8, "lb-in", "bending moment at mid-span", "simple span, uniform load");
    FRAME_STEP(record, S, n * b * pow(d, 2) / 6, "in3", "section modulus", "rectangles");
    FRAME_STEP(record, f_b, M / S, "psi", "bending stress", "NDS 2018 3.3.2");
    return f_b;
}

/* F_b* and F_b**, with C_L of the edge that the load compresses. */
static frame_status find_bending(const frame_tension_check_in *in, const frame_member *m, frame_tension_check_out *out,
                                 frame_working *record) {
    const int is_free = in->compression_edge == FRAME_EDGE_FREE, lrfd = in->method == FRAME_METHOD_LRFD;
    const frame_bending_ask ask = {.unbraced = is_free ? frame_or(in->unbraced_length_in, in->length_in) : 0};
    frame_bending bending;
    double C_r, F_bE;
    frame_status status = frame_member_load_sharing(m, in->repetitive, in->spacing_in, &C_r);
    if (status) return status;
    out->fb_actual_psi = stress_of_lateral(in, m, record);
    const double E_min_prime = is_free ? frame_bending_stiffness_by(m, 1, lrfd, &bending, record) : 0;
    status = frame_bending_buckling(m, &ask, E_min_prime, &F_bE, &bending, record);
    if (status) return status;
    const double F_b_two = frame_bending_allowed_by(
        m, C_r, lrfd, lrfd ? in->time_effect_factor : out->load_duration_factor, F_bE, &bending, record);
    out->fb_adjusted_psi = F_b_two;
    out->beam_stability_factor = bending.stability;
    out->fb_star_psi = F_b_two / bending.stability;
    return FRAME_OK;
}

/* NDS 3.9.1: the edge in tension takes both; the other what bending leaves of it. */
static void combine(frame_tension_check_out *out, frame_working *record) {
    FRAME_HEADING(record, "Bending and tension");
    FRAME_TABLE(record, f_t, out->ft_actual_psi, "psi", "tension stress", "above");
    FRAME_TABLE(record, F_t_prime, out->ft_adjusted_psi, "psi", "adjusted tension design value", "above");
    FRAME_TABLE(record, f_b, out->fb_actual_psi, "psi", "bending stress", "above");
    FRAME_TABLE(record, F_b_two, out->fb_adjusted_psi, "psi", "F_b**: all factors but C_V", "above");
    FRAME_TABLE(record, C_L, out->beam_stability_factor, "", "beam stability factor", "above");
    FRAME_STEP(record, F_b_one, F_b_two / C_L, "psi", "F_b*: all factors but C_L", "NDS 2018 3.9.1");
    FRAME_STEP(record, combined_ratio, f_t / F_t_prime + f_b / F_b_one, "", "the edge in tension",
               "NDS 2018 3.9.1, equation 3.9-1 (from memory)");
    FRAME_STEP(record, compressed_ratio, fmax(0, (f_b - f_t) / F_b_two), "", "the other edge",
               "NDS 2018 3.9.1, equation 3.9-2 (from memory)");
    out->combined_ratio = combined_ratio;
    out->compressed_ratio = compressed_ratio;
}

static void sum_up(frame_tension_check_out *out, frame_working *record) {
    out->ratio = out->tension_ratio;
    out->governs = FRAME_GOVERNS_TENSION;
    if (out->combined_ratio > out->ratio)
        out->ratio = out->combined_ratio, out->governs = FRAME_GOVERNS_BENDING_TENSION;
    if (out->compressed_ratio > out->ratio) out->ratio = out->compressed_ratio, out->governs = FRAME_GOVERNS_BENDING;
    out->passes = frame_holds(out->ratio);
    frame_record_result(out->ratio, out->governs, record);
}

static void remark(const frame_tension_check_in *in, const frame_member *m, frame_tension_check_out *out) {
    const int holes = frame_given(in->hole_diameter_in), lateral = in->lateral_plf > 0;
    out->known = m->known > frame_duration_known() ? m->known : frame_duration_known();
    if (in->method == FRAME_METHOD_LRFD && m->known < FRAME_KNOWN_SECONDARY) out->known = FRAME_KNOWN_SECONDARY;
    out->cautions = FRAME_BIT(FRAME_TENSION_CAUTION_JOINTS) |
                    FRAME_BIT(m->user ? FRAME_TENSION_CAUTION_USER_VALUES : FRAME_TENSION_CAUTION_STAMP);
    if (m->known == FRAME_KNOWN_MEMORY) out->cautions |= FRAME_BIT(FRAME_TENSION_CAUTION_MEMORY);
    if (m->lumber.doubtful) out->cautions |= FRAME_BIT(FRAME_TENSION_CAUTION_DOUBTFUL);
    if (m->lumber.superseded) out->cautions |= FRAME_BIT(FRAME_TENSION_CAUTION_SUPERSEDED);
    if (!holes) out->cautions |= FRAME_BIT(FRAME_TENSION_CAUTION_HOLES);
    out->not_checked = FRAME_BIT(FRAME_TENSION_UNCHECKED_JOINTS) | FRAME_BIT(FRAME_TENSION_UNCHECKED_TEAR) |
                       FRAME_BIT(FRAME_TENSION_UNCHECKED_COMBINATIONS) | FRAME_BIT(FRAME_TENSION_UNCHECKED_CROSS) |
                       FRAME_BIT(lateral ? FRAME_TENSION_UNCHECKED_DEFLECTION : FRAME_TENSION_UNCHECKED_LATERAL);
    if (holes && lateral) out->not_checked |= FRAME_BIT(FRAME_TENSION_UNCHECKED_HOLES_BENDING);
}

static frame_status compute(const frame_tension_check_in *in, frame_tension_check_out *out, frame_working *record) {
    frame_member member;
    frame_status status = find_member(in, &member);
    if (status) return status;
    out->load_duration_factor = in->method == FRAME_METHOD_LRFD ? 1 : frame_duration_factor(in->load_duration);
    if ((status = find_section(in, &member, out, record))) return status;
    find_tension(in, &member, out, record);
    if (in->lateral_plf > 0) {
        if ((status = find_bending(in, &member, out, record))) return status;
        combine(out, record);
    }
    sum_up(out, record);
    remark(in, &member, out);
    return FRAME_OK;
}
FRAME_IMPLEMENT(tension_check, compute);
