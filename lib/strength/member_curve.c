/* Curved glulam: the curvature factor of NDS 5.3.8 and the stress along the radius of 5.4.1. */
#include <stdio.h>

#include "base/error.h"
#include "base/number.h"
#include "strength/beam_results.h"
#include "strength/format.h"
#include "strength/member_beam.h"

#include "working/plain_math.h"

/* NDS 5.2.8 (from memory): F_rt of all species but Southern Pine, for loads other than wind and earthquake. */
#define RADIAL_TENSION_PSI 15
/* Southern Pine is known by the exponent of its volume factor (NDS 5.3.6). */
#define SOUTHERN_PINE_EXPONENT 0.05

static int is_southern_pine(const frame_checked *c) {
    return c->exponent == SOUTHERN_PINE_EXPONENT;
}

/* NDS 5.3.8: laminations bent too sharply. */
static frame_status too_sharp(const frame_checked *c) {
    char given[32], least[32], valid[96];
    const double most = is_southern_pine(c) ? 100 : 125;
    frame_number_print(c->in->curve_radius_in, 6, given, sizeof given);
    frame_number_print(most * c->in->lamination_in, 6, least, sizeof least);
    snprintf(valid, sizeof valid, "at least %s, %s times the thickness of a lamination (NDS 5.3.8)", least,
             is_southern_pine(c) ? "100" : "125");
    return frame_fail(FRAME_OUTSIDE_SCOPE, "curve_radius_in", given, valid,
                      "curve_radius_in: %s bends the laminations too sharply; valid is %s", given, valid);
}

frame_status frame_checked_curve_given(const frame_checked *c) {
    const frame_member_check_in *in = c->in;
    if (!frame_given(in->curve_radius_in)) {
        if (frame_given(in->lamination_in)) return frame_lacks("curve_radius_in", "the radius, with lamination_in");
        return frame_given(in->radial_tension_psi)
                   ? frame_lacks("curve_radius_in", "the radius, with radial_tension_psi")
                   : FRAME_OK;
    }
    if (c->product != FRAME_PRODUCT_GLULAM) return frame_lacks("product", "\"glulam\", with curve_radius_in");
    if (!frame_given(in->lamination_in))
        return frame_lacks("lamination_in", "the thickness of a lamination, with curve_radius_in");
    if (in->cut_count) return frame_contradicts("cuts", "curve_radius_in");
    return in->lamination_in * (is_southern_pine(c) ? 100 : 125) > in->curve_radius_in * (1 + 1e-9) ? too_sharp(c)
                                                                                                    : FRAME_OK;
}

double frame_checked_curved(const frame_checked *c, double straight, frame_working *record) {
    if (!frame_given(c->in->curve_radius_in)) return straight;
    FRAME_TABLE(record, F_b_o, straight, "psi", "the same of straight laminations", "above");
    FRAME_GIVEN(record, t_l, c->in->lamination_in, "in", "thickness of a lamination");
    FRAME_GIVEN(record, R_i, c->in->curve_radius_in, "in", "radius of the inner face");
    FRAME_STEP(record, C_c, 1 - 2000 * pow(t_l / R_i, 2), "", "curvature factor", "NDS 2018 5.3.8 (from memory)");
    FRAME_STEP(record, F_b_star, F_b_o * C_c, "psi", "bending design value, all factors but C_L and C_V",
               "NDS 2018 table 5.3.1");
    c->out->curvature_factor = C_c;
    return F_b_star;
}

/* A moment and what it does along the radius. */
typedef struct radial {
    double moment, ratio;
    int by_case, pulls;
} radial;

/* F_rt', or F_rc' as F_c-perp'. */
static double radial_allowed(const frame_checked *c, int by_case, int pulls, frame_working *record) {
    const double F_v = c->m.lumber.fv_psi;
    if (!pulls) {
        FRAME_TABLE(record, F_r_prime, c->fc_perp_prime, "psi", "allowed along the radius: F_c-perp'",
                    "NDS 2018 5.4.1 (from memory)");
        return F_r_prime;
    }
    FRAME_TABLE(record, F_rt, frame_or(c->in->radial_tension_psi, is_southern_pine(c) ? F_v / 3 : RADIAL_TENSION_PSI),
                "psi", "design value in tension along the radius",
                frame_given(c->in->radial_tension_psi) ? "given" : "NDS 2018 5.2.8 (from memory)");
    FRAME_TABLE(record, C_M_r, c->m.wet->fv, "", "wet service factor, that of F_v", c->m.wet->source);
    FRAME_TABLE(record, C_t_r, c->m.temperature_stress, "", "temperature factor", "NDS 2018 table 2.3.3");
    FRAME_TABLE(
        record, k_r,
        c->lrfd ? FRAME_FORMAT_KF(FRAME_FORMAT_FV) * FRAME_FORMAT_PHI(FRAME_FORMAT_FV) * frame_checked_time(c, by_case)
                : frame_checked_duration(c, by_case),
        "", c->lrfd ? "K_F phi lambda, those of F_v" : "load duration factor of this combination",
        c->lrfd ? FRAME_FORMAT_SOURCE : FRAME_DURATION_SOURCE);
    FRAME_STEP(record, F_r_prime, F_rt * C_M_r * C_t_r * k_r, "psi", "allowed in tension along the radius",
               "NDS 2018 table 5.3.1");
    return F_r_prime;
}

static double radial_stress(const frame_checked *c, double moment, frame_working *record) {
    const double n = c->m.plies, b = c->m.breadth, d = c->m.depth;
    FRAME_GIVEN(record, R_i, c->in->curve_radius_in, "in", "radius of the inner face");
    FRAME_TABLE(record, M_r, fabs(moment), "lb-in", "moment", "analysis of the beam");
    FRAME_STEP(record, R_m, R_i + d / 2, "in", "radius at half of the depth", "");
    FRAME_STEP(record, f_r, 3 * M_r / (2 * R_m * n * b * d), "psi", "stress along the radius",
               "NDS 2018 5.4.1 (from memory)");
    return f_r;
}

static void look_at(const frame_checked *c, double moment, int by_case, radial *worst) {
    const int pulls = (moment > 0) == (c->in->bowed_up != 0); /* it flattens the curve */
    const double ratio = radial_stress(c, moment, NULL) / radial_allowed(c, by_case, pulls, NULL);
    if (ratio > worst->ratio) *worst = (radial){moment, ratio, by_case, pulls};
}

frame_status frame_checked_radial(frame_checked *c) {
    frame_working *record = c->record;
    radial worst = {0, -1, 0, 0};
    if (!frame_given(c->in->curve_radius_in)) return FRAME_OK;
    for (size_t i = 0; i < c->beam->span_count; i++) {
        frame_beam_envelope e[FRAME_LOAD_CASES];
        frame_beam_span_envelopes(c->beam, i, c->factors, &c->scratch, e);
        for (int k = 0; k < c->beam->case_count; k++)
            look_at(c, e[k].moment.most, k, &worst), look_at(c, e[k].moment.least, k, &worst);
    }
    FRAME_HEADING(record, "Stress along the radius");
    FRAME_CASE(record, worst.pulls ? "the moment flattens the curve" : "the moment bends it further",
               worst.pulls ? "it pulls the laminations apart" : "it presses them together", "NDS 2018 5.4.1");
    const double f_r = radial_stress(c, worst.moment, record),
                 F_r_prime = radial_allowed(c, worst.by_case, worst.pulls, record);
    FRAME_STEP(record, radial_ratio, f_r / F_r_prime, "", "share of the strength along the radius used",
               "NDS 2018 5.4.1");
    c->out->radial_ratio = radial_ratio, c->out->radial_actual_psi = f_r, c->out->radial_allowed_psi = F_r_prime;
    c->m.known = FRAME_KNOWN_MEMORY; /* its rules were not read */
    return FRAME_OK;
}
