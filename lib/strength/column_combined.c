/* Columns under load on both faces and load off the axis (NDS 15.4), and the plate under them (3.10). */
#include "base/error.h"
#include "base/number.h"
#include "strength/bending.h"
#include "strength/column.h"
#include "strength/plate.h"
#include "strength_facts.h"

#include "working/plain_math.h"

/* F_b' about the weak axis: load on the wide face, C_fu, C_L 1. */
static double weak_allowed(const frame_column_check_in *in, const frame_member *m, double C_r_given,
                           frame_column_check_out *out, frame_working *record) {
    const int lrfd = in->method == FRAME_METHOD_LRFD;
    const int timber = !m->user && m->lumber.size_class != FRAME_CLASS_DIMENSION;
    FRAME_TABLE(record, F_b, m->lumber.fb_psi, "psi", "bending design value", m->lumber.source);
    FRAME_TABLE(record, C_M, m->wet->fb, "", "wet service factor", m->wet->source);
    FRAME_TABLE(record, C_t, m->temperature_stress, "", "temperature factor", "NDS 2018 table 2.3.3");
    FRAME_TABLE(record, C_F, timber ? 1 : m->size_factor, "", "size factor", m->lumber.size_source);
    FRAME_TABLE(record, C_fu, m->user ? 1 : frame_flat_use_factor(&m->lumber), "", "flat use factor",
                m->user ? "part of the values given" : "NDS Supplement 2018, flat use");
    FRAME_TABLE(record, C_i, m->incised->fb, "", "incising factor", m->incised->source);
    FRAME_TABLE(record, C_r, C_r_given, "", "repetitive member factor", "NDS 2018 4.3.9");
    if (lrfd) {
        FRAME_TABLE(record, K_F_b, FRAME_FORMAT_KF(FRAME_FORMAT_FB), "", "format conversion factor on F_b",
                    FRAME_FORMAT_SOURCE);
        FRAME_TABLE(record, phi_b, FRAME_FORMAT_PHI(FRAME_FORMAT_FB), "", "resistance factor on F_b",
                    FRAME_FORMAT_SOURCE);
        FRAME_GIVEN(record, lambda, in->time_effect_factor, "", "time effect factor of this combination");
        FRAME_STEP(record, F_b2_prime, F_b * C_M * C_t * C_F * C_fu * C_i * C_r * K_F_b * phi_b * lambda, "psi",
                   "adjusted bending design value, load on the wide face", "NDS 2018 table 4.3.1");
        return F_b2_prime;
    }
    FRAME_TABLE(record, C_D, out->load_duration_factor, "", "load duration factor", FRAME_DURATION_SOURCE);
    FRAME_STEP(record, F_b2_prime, F_b * C_D * C_M * C_t * C_F * C_fu * C_i * C_r, "psi",
               "adjusted bending design value, load on the wide face", "NDS 2018 table 4.3.1");
    return F_b2_prime;
}

static double weak_stress(const frame_column_check_in *in, const frame_member *m, frame_working *record) {
    const double b = m->breadth, d = m->depth;
    FRAME_HEADING(record, "Bending by load on the wide face");
    FRAME_GIVEN(record, w_2, in->weak_lateral_plf, "plf", "load on a foot of the wide face");
    FRAME_GIVEN(record, L, in->length_in, "in", "height");
    FRAME_STEP(record, M_2, w_2 / 12 * pow(L, 2) / 8, "lb-in", "bending moment at mid-height",
               "simple span, uniform load");
    FRAME_STEP(record, S_2, d * pow(b, 2) / 6, "in3", "section modulus about the weak axis", "rectangles");
    FRAME_STEP(record, f_b2, M_2 / S_2, "psi", "bending stress", "NDS 2018 3.3.2");
    return f_b2;
}

/* One over a buckling value; 0 where it cannot buckle so. */
static double over(double value) {
    return value > 0 ? 1 / value : 0;
}

/* NDS 15.4.1. With the load on the axis it is equation 3.9-3. */
static void combine(const frame_column_check_in *in, const frame_member *m, const frame_column_state *of,
                    frame_column_check_out *out, frame_working *record) {
    FRAME_HEADING(record, "Compression, bending about both axes, and load off the axis");
    FRAME_TABLE(record, f_c, out->fc_actual_psi, "psi", "compression stress", "above");
    FRAME_TABLE(record, F_c_prime, of->F_c_prime, "psi", "adjusted compression design value", "above");
    FRAME_TABLE(record, f_b1, out->fb_actual_psi, "psi", "bending stress of load on the narrow face", "above");
    FRAME_TABLE(record, F_b1_prime, out->fb_adjusted_psi, "psi", "its adjusted design value", "above");
    FRAME_TABLE(record, f_b2, out->weak_fb_actual_psi, "psi", "bending stress of load on the wide face", "above");
    FRAME_TABLE(record, F_b2_prime, out->weak_fb_adjusted_psi, "psi", "its adjusted design value", "above");
    FRAME_TABLE(record, i_1, over(of->F_cE_1), "1/psi", "1/F_cE1", "above");
    FRAME_TABLE(record, i_2, over(of->F_cE_2), "1/psi", "1/F_cE2; 0 where the weak axis is held", "above");
    FRAME_TABLE(record, i_b, over(of->F_bE), "1/psi", "1/F_bE; 0 where C_L is 1 by rule", "above");
    FRAME_GIVEN(record, e_1, in->strong_eccentricity_in, "in", "load off the axis along the width");
    FRAME_GIVEN(record, e_2, in->weak_eccentricity_in, "in", "load off the axis along the thickness");
    const double b = m->breadth, d = m->depth;
    FRAME_STEP(record, f_e1, f_c * 6 * e_1 / d, "psi", "bending stress of the load off the axis, along the width",
               "NDS 2018 15.4.1 (from memory)");
    FRAME_STEP(record, f_e2, f_c * 6 * e_2 / b, "psi", "bending stress of the load off the axis, along the thickness",
               "NDS 2018 15.4.1 (from memory)");
    FRAME_STEP(record, g_1, (f_b1 + f_e1) * i_b, "", "bending about the strong axis over its buckling value",
               "NDS 2018 15.4.1 (from memory)");
    FRAME_STEP(record, stability, f_c * i_2 + pow(g_1, 2), "", "must be under 1",
               "NDS 2018 15.4.1, equation 15.4-2 (from memory)");
    if (!(stability < 1) || !(f_c * i_1 < 1)) {
        FRAME_CASE(record, stability < 1 ? "f_c * i_1 >= 1" : "stability >= 1",
                   "it buckles under the load along the axis, or sideways", "NDS 2018 3.9.2 and 15.4.1");
        out->combined_ratio = stability < 1 ? f_c * i_1 : stability;
        return;
    }
    FRAME_STEP(record, t_1, (f_b1 + f_e1 * (1 + 0.234 * f_c * i_1)) / (F_b1_prime * (1 - f_c * i_1)), "",
               "share used by bending about the strong axis", "NDS 2018 15.4.1 (from memory)");
    FRAME_STEP(
        record, t_2,
        (f_b2 + f_e2 * (1 + 0.234 * f_c * i_2 + 0.234 * pow(g_1, 2))) / (F_b2_prime * (1 - f_c * i_2 - pow(g_1, 2))),
        "", "share used by bending about the weak axis", "NDS 2018 15.4.1 (from memory)");
    FRAME_STEP(record, combined_ratio, pow(f_c / F_c_prime, 2) + t_1 + t_2, "", "share used by all together",
               "NDS 2018 15.4.1, equation 15.4-1 (from memory)");
    out->combined_ratio = combined_ratio;
}

frame_status frame_column_combine(const frame_column_check_in *in, const frame_member *m, const frame_column_state *of,
                                  frame_column_check_out *out, frame_working *record) {
    const char *valid = "one ply; the plies of a built-up column share such bending by their fasteners alone";
    double C_r;
    if (in->plies > 1 && (in->weak_lateral_plf > 0 || in->weak_eccentricity_in > 0))
        return frame_fail(FRAME_REFUSED, in->weak_lateral_plf > 0 ? "weak_lateral_plf" : "weak_eccentricity_in", "",
                          valid, "%s: refused for plies; valid is %s",
                          in->weak_lateral_plf > 0 ? "weak_lateral_plf" : "weak_eccentricity_in", valid);
    const frame_status status = frame_member_load_sharing(m, frame_or_int(in->repetitive, 0), in->spacing_in, &C_r);
    if (status) return status;
    out->weak_fb_actual_psi = weak_stress(in, m, record);
    out->weak_fb_adjusted_psi = weak_allowed(in, m, C_r, out, record);
    combine(in, m, of, out, record);
    return FRAME_OK;
}

frame_status frame_column_bracket_given(const frame_column_check_in *in) {
    const char *valid = "a height in the upper quarter of the length (NDS 15.4.2)";
    char height[32];
    if (!(in->bracket_lb > 0)) {
        if (frame_given(in->bracket_offset_in)) return frame_lacks("bracket_lb", "its load, with bracket_offset_in");
        return frame_given(in->bracket_height_in) ? frame_lacks("bracket_lb", "its load, with bracket_height_in")
                                                  : FRAME_OK;
    }
    if (!frame_given(in->bracket_offset_in))
        return frame_lacks("bracket_offset_in", "how far the bracket's load stands off the axis");
    if (!frame_given(in->bracket_height_in)) return frame_lacks("bracket_height_in", valid);
    if (in->strong_eccentricity_in > 0) return frame_contradicts("bracket_lb", "strong_eccentricity_in");
    if (in->bracket_height_in >= 0.75 * in->length_in && in->bracket_height_in <= in->length_in) return FRAME_OK;
    frame_number_print(in->bracket_height_in, 6, height, sizeof height);
    return frame_fail(FRAME_OUTSIDE_SCOPE, "bracket_height_in", height, valid,
                      "bracket_height_in: %s is outside what NDS 15.4.2 speaks of; valid is %s", height, valid);
}

double frame_column_bracket_moment(const frame_column_check_in *in, frame_column_check_out *out,
                                   frame_working *record) {
    FRAME_GIVEN(record, P_b, in->bracket_lb, "lb", "load on the bracket");
    FRAME_GIVEN(record, a_b, in->bracket_offset_in, "in", "level distance from the axis to it");
    FRAME_GIVEN(record, l_p, in->bracket_height_in, "in", "height of that load above the lower end");
    FRAME_GIVEN(record, L, in->length_in, "in", "height");
    FRAME_STEP(record, P_s, 3 * P_b * a_b * l_p / pow(L, 2), "lb", "side load at mid-height that stands for it",
               "NDS 2018 15.4.2 (from memory)");
    FRAME_STEP(record, M_b, P_s * L / 4, "lb-in", "its bending moment at mid-height",
               "simple span, load in the middle");
    out->bracket_side_lb = P_s;
    return M_b;
}

frame_status frame_column_plate(const frame_column_check_in *in, const frame_member *m, frame_column_state *of,
                                frame_column_check_out *out, frame_working *record) {
    const double n = m->plies, b = m->breadth, f_c = out->fc_actual_psi;
    frame_plate plate;
    const frame_status status =
        frame_plate_find(in->plate_species, in->plate_fc_perp_psi, "plate_species", "plate_fc_perp_psi", &plate);
    if (status || !frame_given(plate.F_c_perp)) return status;
    const frame_plate_lie lie = {.length = n * b,
                                 .temperature_factor = m->temperature_stress,
                                 .away = !in->plate_end,
                                 .wet = in->service == FRAME_SERVICE_WET,
                                 .lrfd = in->method == FRAME_METHOD_LRFD};
    FRAME_HEADING(record, "Crushing of the plate");
    const double F_c_perp_prime = frame_plate_allowed(&plate, &lie, record);
    FRAME_STEP(record, bearing_ratio, f_c / F_c_perp_prime, "", "share of the plate's bearing strength used",
               "NDS 2018 3.10.2");
    of->plate_known = plate.known;
    out->plate_fc_perp_adjusted_psi = F_c_perp_prime;
    out->bearing_ratio = bearing_ratio;
    return FRAME_OK;
}
