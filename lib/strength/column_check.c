/* A column, post or stud: NDS 2018, allowable stress design. */
#include "strength/bending.h"
#include "strength/column.h"
#include "strength_facts.h"
#include "working/calculation.h"

#include "working/plain_math.h"

typedef frame_column_state column;

static int is_bent(const frame_column_check_in *in) {
    return in->lateral_plf > 0 || in->weak_lateral_plf > 0 || in->strong_eccentricity_in > 0 ||
           in->weak_eccentricity_in > 0 || in->bracket_lb > 0;
}

/* Bent about its strong axis alone by load on its narrow face: the usual stud. */
static int is_stud(const frame_column_check_in *in) {
    return !(in->weak_lateral_plf > 0) && !(in->strong_eccentricity_in > 0) && !(in->weak_eccentricity_in > 0);
}

/* NDS 4.4.2. */
static frame_status check_chord(const frame_column_check_in *in, const frame_member *m) {
    const char *valid = "no; or yes for one dry ply of 2x4 or smaller sawn lumber (NDS 4.4.2)";
    if (!in->truss_chord) return FRAME_OK;
    if (in->plies == 1 && m->breadth <= 1.5 && m->depth <= 3.5 && in->service == FRAME_SERVICE_DRY && !m->user)
        return FRAME_OK;
    return frame_fail(FRAME_OUTSIDE_SCOPE, "truss_chord", "yes", valid,
                      "truss_chord: yes is refused for this member; valid is %s", valid);
}

static frame_status check_given(const frame_column_check_in *in) {
    const frame_status method = frame_time_effect_given(in->method, in->time_effect_factor);
    if (method) return method;
    if (in->plies > 1 && in->fastening == FRAME_NOT_GIVEN_INT)
        return frame_lacks("fastening", "\"nailed\" or \"bolted\", for two and more plies (NDS 15.3)");
    if (in->weak_axis_held && frame_given(in->weak_braces_in))
        return frame_contradicts("weak_braces_in", "weak_axis_held");
    if (in->incised && in->load_duration == FRAME_DURATION_IMPACT) return frame_impact_refused("load_duration");
    const frame_status bracket = frame_column_bracket_given(in);
    if (bracket) return bracket;
    if (!frame_given(in->fc_psi)) {
        if (frame_given(in->e_min_psi)) return frame_lacks("fc_psi", "F_c, with e_min_psi");
        return frame_given(in->fb_psi) ? frame_lacks("fc_psi", "F_c, with fb_psi") : FRAME_OK;
    }
    if (!frame_given(in->e_min_psi)) return frame_lacks("e_min_psi", "E_min, with fc_psi");
    if (is_bent(in) && !frame_given(in->fb_psi))
        return frame_lacks("fb_psi", "F_b, with fc_psi, for sideways load or load off the axis");
    return FRAME_OK;
}

/* Values that no check of a column looks at stand at 1 where the caller gives his own. */
static frame_status find_member(const frame_column_check_in *in, frame_member *m) {
    const int user = frame_given(in->fc_psi);
    const double unused = user ? 1 : FRAME_NOT_GIVEN;
    const frame_member_ask ask = {
        FRAME_MEMBER_ON_EDGE(in), .fb_psi = user ? frame_or(in->fb_psi, unused) : FRAME_NOT_GIVEN,
        .fv_psi = unused,         .fc_perp_psi = unused,
        .e_psi = unused,          .e_min_psi = in->e_min_psi};
    frame_status status = check_given(in);
    if (!status) status = frame_member_find(&ask, m);
    if (!status && user) m->lumber.fc_psi = in->fc_psi;
    return status;
}

static void record_section(const frame_member *m, column *of, frame_working *record) {
    FRAME_HEADING(record, "Section");
    frame_record_edition(m->edition, record);
    FRAME_GIVEN(record, n, m->plies, "", "number of plies");
    FRAME_TABLE(record, b, m->breadth, "in", "thickness of one ply", m->section_source);
    FRAME_TABLE(record, d, m->depth, "in", "width of one ply", m->section_source);
    FRAME_STEP(record, A, n * b * d, "in2", "area", "rectangles");
    of->area = A;
}

/* l_e / d about both axes, at most 50 (NDS 3.7.1.4). */
static frame_status find_slenderness(const frame_column_check_in *in, const frame_member *m, column *of,
                                     frame_working *record) {
    const double n = m->plies, b = m->breadth, d = m->depth;
    FRAME_HEADING(record, "Slenderness");
    FRAME_GIVEN(record, K_e, in->effective_length_factor, "", "effective length factor (NDS appendix G)");
    FRAME_GIVEN(record, l_1, frame_or(in->strong_braces_in, in->length_in), "in",
                "length between braces across the width");
    FRAME_STEP(record, s_1, K_e * l_1 / d, "", "slenderness across the width", "NDS 2018 3.7.1.3");
    of->slender_strong = s_1;
    of->slender_weak = 0;
    if (s_1 > 50)
        return frame_column_too_slender(frame_given(in->strong_braces_in) ? "strong_braces_in" : "length_in", l_1, s_1);
    if (in->weak_axis_held) {
        FRAME_CASE(record, "held along its length by sheathing", "it cannot buckle across the thickness",
                   "NDS 2018 3.7.1.1");
        return FRAME_OK;
    }
    FRAME_GIVEN(record, l_2, frame_or(in->weak_braces_in, in->length_in), "in",
                "length between braces across the thickness");
    FRAME_STEP(record, s_2, K_e * l_2 / (n * b), "", "slenderness across the thickness", "NDS 2018 3.7.1.3");
    of->slender_weak = s_2;
    if (s_2 > 50)
        return frame_column_too_slender(frame_given(in->weak_braces_in) ? "weak_braces_in" : "length_in", l_2, s_2);
    return FRAME_OK;
}

/* F_c* and E_min' of LRFD. */
static void find_strengths(const frame_member *m, double lambda_c, column *of, frame_working *record) {
    const double F_c = m->lumber.fc_psi, C_M_c = m->wet->fc, C_t_c = m->temperature_stress,
                 C_F_c = m->lumber.size_factor_fc, C_i_c = m->incised->fc, E_min = m->lumber.e_min_psi,
                 C_M_E = m->wet->e_min, C_t_E = m->temperature_e, C_i_E = m->incised->e_min;
    FRAME_TABLE(record, K_F_c, FRAME_FORMAT_KF(FRAME_FORMAT_FC), "", "format conversion factor on F_c",
                FRAME_FORMAT_SOURCE);
    FRAME_TABLE(record, phi_c, FRAME_FORMAT_PHI(FRAME_FORMAT_FC), "", "resistance factor on F_c", FRAME_FORMAT_SOURCE);
    FRAME_GIVEN(record, lambda, lambda_c, "", "time effect factor of this combination");
    FRAME_STEP(record, F_c_star, F_c * C_M_c * C_t_c * C_F_c * C_i_c * K_F_c * phi_c * lambda, "psi",
               "compression design value, all factors but C_P", "NDS 2018 table 4.3.1");
    FRAME_TABLE(record, K_F_E, FRAME_FORMAT_KF(FRAME_FORMAT_E_MIN), "", "format conversion factor on E_min",
                FRAME_FORMAT_SOURCE);
    FRAME_TABLE(record, phi_E, FRAME_FORMAT_PHI(FRAME_FORMAT_E_MIN), "", "resistance factor on E_min",
                FRAME_FORMAT_SOURCE);
    FRAME_STEP(record, E_min_prime, E_min * C_M_E * C_t_E * C_i_E * K_F_E * phi_E, "psi",
               "adjusted modulus for stability", "NDS 2018 table 4.3.1");
    of->F_c_star = F_c_star;
    of->E_min_prime = E_min_prime;
}

static void find_values(const frame_member *m, const frame_column_check_in *in, double load_duration, column *of,
                        frame_working *record) {
    FRAME_HEADING(record, "Design values");
    FRAME_TABLE(record, F_c, m->lumber.fc_psi, "psi", "compression design value", m->lumber.source);
    FRAME_TABLE(record, C_M_c, m->wet->fc, "", "wet service factor on F_c", m->wet->source);
    FRAME_TABLE(record, C_t_c, m->temperature_stress, "", "temperature factor on F_c", "NDS 2018 table 2.3.3");
    FRAME_TABLE(record, C_F_c, m->lumber.size_factor_fc, "", "size factor on F_c", m->lumber.size_source);
    FRAME_TABLE(record, C_i_c, m->incised->fc, "", "incising factor on F_c", m->incised->source);
    FRAME_TABLE(record, E_min, m->lumber.e_min_psi, "psi", "modulus for stability", m->lumber.source);
    FRAME_TABLE(record, C_M_E, m->wet->e_min, "", "wet service factor on E_min", m->wet->source);
    FRAME_TABLE(record, C_t_E, m->temperature_e, "", "temperature factor on E_min", "NDS 2018 table 2.3.3");
    FRAME_TABLE(record, C_i_E, m->incised->e_min, "", "incising factor on E_min", m->incised->source);
    if (in->method == FRAME_METHOD_LRFD) {
        find_strengths(m, in->time_effect_factor, of, record);
        return;
    }
    FRAME_TABLE(record, C_D, load_duration, "", "load duration factor", FRAME_DURATION_SOURCE);
    FRAME_STEP(record, F_c_star, F_c * C_D * C_M_c * C_t_c * C_F_c * C_i_c, "psi",
               "compression design value, all factors but C_P", "NDS 2018 table 4.3.1");
    FRAME_STEP(record, E_min_prime, E_min * C_M_E * C_t_E * C_i_E, "psi", "adjusted modulus for stability",
               "NDS 2018 table 4.3.1");
    of->F_c_star = F_c_star;
    of->E_min_prime = E_min_prime;
}

/* C_T on E_min for buckling across the width: panels nailed to the chord stiffen it (NDS 4.4.2). */
static double stiffened(const frame_column_check_in *in, double E, double E_min, frame_column_check_out *out,
                        frame_working *record) {
    out->buckling_stiffness_factor = 1;
    if (!in->truss_chord) return E_min;
    FRAME_GIVEN(record, E_min_o, E_min, "psi", "adjusted modulus for stability without panels");
    FRAME_GIVEN(record, E_o, E, "psi", "modulus of elasticity");
    FRAME_GIVEN(record, l_T, fmin(in->effective_length_factor * frame_or(in->strong_braces_in, in->length_in), 96),
                "in", "effective length, at most 96 in");
    FRAME_TABLE(record, K_M, 2300, "", "for lumber at most 19 % moist when the panels are nailed on",
                "NDS 2018 4.4.2 (from memory)");
    FRAME_TABLE(record, K_T, 0.59, "", "for visually graded lumber", "NDS 2018 4.4.2 (from memory)");
    FRAME_STEP(record, C_T, 1 + K_M * l_T / (K_T * E_o), "", "buckling stiffness factor",
               "NDS 2018 4.4.2, equation 4.4-1 (from memory)");
    FRAME_STEP(record, E_min_prime, E_min_o * C_T, "psi", "adjusted modulus for stability with panels",
               "NDS 2018 table 4.3.1");
    out->buckling_stiffness_factor = C_T;
    return E_min_prime;
}

/* Across the thickness the panels' factor does not count. */
static void record_plain_stiffness(const frame_column_check_in *in, double E_min, frame_working *record) {
    if (!in->truss_chord) return;
    FRAME_TABLE(record, E_min_prime, E_min, "psi", "adjusted modulus for stability, without panels", "above");
    (void)E_min_prime;
}

/* C_P: the smaller of the two axes'. */
static void find_stability(const frame_column_check_in *in, column *of, frame_column_check_out *out,
                           frame_working *record) {
    const double s_1 = of->slender_strong, s_2 = of->slender_weak, E_min_prime = of->E_min_prime,
                 F_c_star = of->F_c_star;
    const double A = of->area;
    out->ply_factor = in->plies == 1 ? 1 : in->fastening == FRAME_COLUMN_NAILED ? 0.6 : 0.75;
    FRAME_HEADING(record, "Column stability");
    FRAME_TABLE(record, c, FRAME_COLUMN_C, "", "coefficient for sawn lumber", "NDS 2018 3.7.1.5 (from memory)");
    (void)c;
    const double C_P_1 =
        frame_column_strong(s_1, stiffened(in, of->E, E_min_prime, out, record), F_c_star, &of->F_cE_1, record);
    of->F_cE_2 = 0;
    if (s_2 > 0) {
        record_plain_stiffness(in, E_min_prime, record);
        const double C_P_2 = frame_column_weak(s_2, E_min_prime, F_c_star, out->ply_factor, &of->F_cE_2, record);
        FRAME_STEP(record, C_P, fmin(C_P_1, C_P_2), "", "column stability factor", "NDS 2018 3.7.1");
        out->cp = C_P;
    } else {
        FRAME_STEP(record, C_P, C_P_1, "", "column stability factor", "NDS 2018 3.7.1");
        out->cp = C_P;
    }
    const double C_P = out->cp;
    FRAME_STEP(record, F_c_prime, F_c_star * C_P, "psi", "adjusted compression design value", "NDS 2018 table 4.3.1");
    FRAME_STEP(record, P_max, F_c_prime * A, "lb", "load along the axis that it would just carry", "NDS 2018 3.6.3");
    of->F_c_prime = F_c_prime;
    out->capacity_lb = P_max;
}

static void find_compression(const frame_column_check_in *in, const column *of, frame_column_check_out *out,
                             frame_working *record) {
    const double A = of->area, F_c_prime = of->F_c_prime;
    FRAME_HEADING(record, "Compression");
    FRAME_TABLE(record, P, in->axial_lb + in->bracket_lb, "lb", "load along the axis",
                in->bracket_lb > 0 ? "given, that of the bracket with it" : "given");
    FRAME_STEP(record, f_c, P / A, "psi", "compression stress", "NDS 2018 3.6.3");
    FRAME_STEP(record, compression_ratio, f_c / F_c_prime, "", "share of the compression strength used",
               "NDS 2018 3.6.3");
    out->fc_actual_psi = f_c;
    out->compression_ratio = compression_ratio;
}

static double moment_of(const frame_column_check_in *in, frame_column_check_out *out, frame_working *record) {
    FRAME_GIVEN(record, w, in->lateral_plf, "plf", "sideways load on a foot");
    FRAME_GIVEN(record, L, in->length_in, "in", "height");
    if (!(in->bracket_lb > 0)) {
        FRAME_STEP(record, M, w / 12 * pow(L, 2) / 8, "lb-in", "bending moment at mid-height",
                   "simple span, uniform load");
        return M;
    }
    const double M_b = frame_column_bracket_moment(in, out, record);
    FRAME_STEP(record, M, w / 12 * pow(L, 2) / 8 + M_b, "lb-in", "bending moment at mid-height, with the bracket's",
               "simple span, uniform load");
    return M;
}

/* F_b' of the sideways load, whose compression edge is held where the weak axis is. */
static frame_status find_bending(const frame_column_check_in *in, const frame_member *m, column *of,
                                 frame_column_check_out *out, frame_working *record) {
    const double n = m->plies, b = m->breadth, d = m->depth;
    const int lrfd = in->method == FRAME_METHOD_LRFD;
    const frame_bending_ask ask = {.unbraced = in->weak_axis_held ? 0 : frame_or(in->weak_braces_in, in->length_in)};
    frame_bending bending;
    double F_bE, C_r;
    frame_status status = frame_member_load_sharing(m, frame_or_int(in->repetitive, 0), in->spacing_in, &C_r);
    if (status) return status;
    FRAME_HEADING(record, "Bending under sideways load");
    const double M = moment_of(in, out, record);
    FRAME_STEP(record, S, n * b * pow(d, 2) / 6, "in3", "section modulus", "rectangles");
    FRAME_STEP(record, f_b, M / S, "psi", "bending stress", "NDS 2018 3.3.2");
    status = frame_bending_buckling(m, &ask, of->E_min_prime, &F_bE, &bending, record);
    if (status) return status;
    of->F_bE = F_bE;
    out->fb_adjusted_psi = frame_bending_allowed_by(
        m, C_r, lrfd, lrfd ? in->time_effect_factor : out->load_duration_factor, F_bE, &bending, record);
    out->fb_actual_psi = f_b;
    out->beam_stability_factor = bending.stability;
    return FRAME_OK;
}

/* NDS 3.9.2 for bending about the strong axis. */
static void combine(const column *of, frame_column_check_out *out, frame_working *record) {
    const double f_c = out->fc_actual_psi, F_c_prime = of->F_c_prime, F_cE_1 = of->F_cE_1;
    const double f_b = out->fb_actual_psi, F_b_prime = out->fb_adjusted_psi;
    FRAME_HEADING(record, "Bending and compression");
    if (!(f_c < F_cE_1)) {
        FRAME_CASE(record, "f_c >= F_cE_1", "it buckles under the load along the axis alone", "NDS 2018 3.9.2");
        return;
    }
    FRAME_STEP(record, combined_ratio, pow(f_c / F_c_prime, 2) + f_b / (F_b_prime * (1 - f_c / F_cE_1)), "",
               "share used by bending and compression together", "NDS 2018 3.9.2, equation 3.9-3 (from memory)");
    out->combined_ratio = combined_ratio;
}

static void sum_up(frame_column_check_out *out, frame_working *record) {
    out->ratio = out->compression_ratio;
    out->governs = FRAME_GOVERNS_COMPRESSION;
    if (out->combined_ratio > out->ratio) out->ratio = out->combined_ratio, out->governs = FRAME_GOVERNS_COMBINED;
    if (out->bearing_ratio > out->ratio) out->ratio = out->bearing_ratio, out->governs = FRAME_GOVERNS_BEARING;
    out->passes = frame_holds(out->ratio);
    frame_record_result(out->ratio, out->governs, record);
}

static uint64_t cautions_of(const frame_column_check_in *in, const frame_member *m) {
    uint64_t bits = FRAME_BIT(FRAME_COLUMN_CAUTION_AS_ASSUMED) | FRAME_BIT(FRAME_COLUMN_CAUTION_POST) |
                    FRAME_BIT(m->user ? FRAME_COLUMN_CAUTION_USER_VALUES : FRAME_COLUMN_CAUTION_STAMP);
    if (m->known == FRAME_KNOWN_MEMORY) bits |= FRAME_BIT(FRAME_COLUMN_CAUTION_MEMORY);
    if (m->lumber.doubtful) bits |= FRAME_BIT(FRAME_COLUMN_CAUTION_DOUBTFUL);
    if (m->lumber.superseded) bits |= FRAME_BIT(FRAME_COLUMN_CAUTION_SUPERSEDED);
    return in->plies > 1 ? bits | FRAME_BIT(FRAME_COLUMN_CAUTION_PLIES) : bits;
}

static void remark(const frame_column_check_in *in, const frame_member *m, const column *of,
                   frame_column_check_out *out) {
    out->known = m->known > frame_duration_known() ? m->known : frame_duration_known();
    if (frame_given(out->bearing_ratio) && of->plate_known > out->known) out->known = of->plate_known;
    out->cautions = cautions_of(in, m);
    out->not_checked = FRAME_BIT(FRAME_COLUMN_UNCHECKED_ENDS) | FRAME_BIT(FRAME_COLUMN_UNCHECKED_COMBINATIONS) |
                       FRAME_BIT(FRAME_COLUMN_UNCHECKED_UPLIFT) | FRAME_BIT(FRAME_COLUMN_UNCHECKED_DEFLECTION) |
                       FRAME_BIT(FRAME_COLUMN_UNCHECKED_CUTS);
    if (!(in->lateral_plf > 0) && !(in->weak_lateral_plf > 0))
        out->not_checked |= FRAME_BIT(FRAME_COLUMN_UNCHECKED_LATERAL);
    if (!(in->strong_eccentricity_in > 0) && !(in->weak_eccentricity_in > 0) && !(in->bracket_lb > 0))
        out->not_checked |= FRAME_BIT(FRAME_COLUMN_UNCHECKED_ECCENTRICITY);
    out->time_effect_factor = in->method == FRAME_METHOD_LRFD ? in->time_effect_factor : 1;
    if (in->method == FRAME_METHOD_LRFD && out->known < FRAME_KNOWN_SECONDARY) out->known = FRAME_KNOWN_SECONDARY;
    out->wet_service_factor = m->wet->fc;
    out->size_factor = m->lumber.size_factor_fc;
}

static void give(const column *of, frame_column_check_out *out) {
    out->fc_star_psi = of->F_c_star;
    out->fc_adjusted_psi = of->F_c_prime;
    out->slenderness_strong = of->slender_strong;
    out->slenderness_weak = of->slender_weak > 0 ? of->slender_weak : FRAME_NOT_GIVEN;
}

static frame_status compute(const frame_column_check_in *in, frame_column_check_out *out, frame_working *record) {
    frame_member member;
    column of;
    frame_status status = find_member(in, &member);
    if (status) return status;
    if ((status = check_chord(in, &member))) return status;
    of.E = member.lumber.e_psi;
    out->load_duration_factor = in->method == FRAME_METHOD_LRFD ? 1 : frame_duration_factor(in->load_duration);
    record_section(&member, &of, record);
    if ((status = find_slenderness(in, &member, &of, record))) return status;
    find_values(&member, in, out->load_duration_factor, &of, record);
    find_stability(in, &of, out, record);
    find_compression(in, &of, out, record);
    if (is_bent(in)) {
        if ((status = find_bending(in, &member, &of, out, record))) return status;
        if (is_stud(in))
            combine(&of, out, record);
        else if ((status = frame_column_combine(in, &member, &of, out, record)))
            return status;
    }
    if ((status = frame_column_plate(in, &member, &of, out, record))) return status;
    give(&of, out);
    sum_up(out, record);
    remark(in, &member, &of, out);
    return FRAME_OK;
}
FRAME_IMPLEMENT(column_check, compute);
