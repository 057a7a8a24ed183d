/* The longest span of a joist, each criterion solved for the span. */
#include "strength/joist.h"
#include "strength_facts.h"
#include "working/calculation.h"

#include "working/plain_math.h"

FRAME_ALWAYS_INLINE frame_status check_given(const frame_joist_span_in *given) {
    if (given->live_psf == FRAME_NOT_GIVEN && given->snow_psf == FRAME_NOT_GIVEN)
        return frame_lacks("live_psf", "a live load or snow, 0 if there is none");
    if (given->slope != FRAME_NOT_GIVEN && given->use != FRAME_USE_RAFTER) return frame_slope_refused(given->slope);
    return FRAME_OK;
}

FRAME_ALWAYS_INLINE void solve_bending(const frame_member *m, const frame_bending_ask *ask, double repetitive,
                                       const frame_combinations *c, frame_bending *r, frame_joist_span_out *out,
                                       frame_working *record) {
    const double S = r->section_modulus;
    out->combination = FRAME_COMBINATION_WORD(ask, c->governs);
    FRAME_HEADING(record, "Bending");
    FRAME_TABLE(record, w, c->governing_total, "plf", "load of the combination that governs",
                FRAME_COMBINATION_NAME(out->combination));
    const double F_b_prime = frame_bending_allowed_by(m, repetitive, ask->lrfd, c->governing_factor, 0, r, record);
    FRAME_STEP(record, M_max, F_b_prime * S, "lb-in", "bending moment allowed", "NDS 2018 3.3.1");
    FRAME_STEP(record, L_b, sqrt(8 * M_max / (w / 12)), "in", "longest span by bending", "M = w L^2 / 8 solved for L");
    out->load_duration_factor = ask->lrfd ? 1 : c->governing_factor;
    out->time_effect_factor = ask->lrfd ? c->governing_factor : 1;
    out->fb_adjusted_psi = F_b_prime;
    out->bending_span_in = L_b;
}

FRAME_ALWAYS_INLINE void solve_shear(const frame_member *m, const frame_bending_ask *ask, const frame_combinations *c,
                                     const frame_bending *r, frame_joist_span_out *out, frame_working *record) {
    const double A = r->area;
    FRAME_HEADING(record, "Shear");
    FRAME_TABLE(record, w_v, c->governing_total, "plf", "load of the combination that governs",
                FRAME_COMBINATION_NAME(out->combination));
    const double F_v_prime = frame_bending_shear_allowed_by(m, ask->lrfd, c->governing_factor, record);
    FRAME_STEP(record, V_max, 2.0 / 3 * F_v_prime * A, "lb", "shear allowed", "NDS 2018 3.4.2");
    FRAME_STEP(record, L_v, 2 * V_max / (w_v / 12), "in", "longest span by shear", "V = w L / 2 solved for L");
    out->fv_adjusted_psi = F_v_prime;
    out->shear_span_in = L_v;
}

/* As in the checks: a sloped rafter is longer than its plan and sags square to itself. */
FRAME_ALWAYS_INLINE double solve_sag(double w_t, double q, double E_prime, double I, double c, frame_working *record) {
    if (c < 1) {
        FRAME_STEP(record, L_t, cbrt(384 * E_prime * I * c / (5 * (w_t / 12) * q)), "in",
                   "longest span on plan by deflection", "5 w L^4 / (384 E I c^2) = L / (c q) solved for L");
        return L_t;
    }
    FRAME_STEP(record, L_t, cbrt(384 * E_prime * I / (5 * (w_t / 12) * q)), "in", "longest span by deflection",
               "5 w L^4 / (384 E I) = L / q solved for L");
    return L_t;
}

FRAME_ALWAYS_INLINE void solve_deflection(const frame_joist_defaults *by_use, const frame_combinations *c,
                                          const frame_bending *r, double cosine, frame_joist_span_out *out,
                                          frame_working *record) {
    out->deflection_span_in = FRAME_NOT_GIVEN;
    if (!(c->transient > 0)) return;
    FRAME_HEADING(record, "Deflection under live load or snow");
    FRAME_TABLE(record, w_t, c->transient, "plf", "largest load of the combinations without the dead load",
                "ASCE 7-16 2.4.1");
    FRAME_GIVEN(record, q, by_use->live_limit, "", "span over allowed deflection");
    out->deflection_span_in = solve_sag(w_t, q, r->e_adjusted, r->inertia, cosine, record);
}

FRAME_ALWAYS_INLINE double solve_sag_all(double w_T, double q_T, double E_prime, double I, double c,
                                         frame_working *record) {
    if (c < 1) {
        FRAME_STEP(record, L_T, cbrt(384 * E_prime * I * c / (5 * (w_T / 12) * q_T)), "in",
                   "longest span on plan by deflection in all", "5 w L^4 / (384 E I c^2) = L / (c q) solved for L");
        return L_T;
    }
    FRAME_STEP(record, L_T, cbrt(384 * E_prime * I / (5 * (w_T / 12) * q_T)), "in", "longest span by deflection in all",
               "5 w L^4 / (384 E I) = L / q solved for L");
    return L_T;
}

FRAME_ALWAYS_INLINE void solve_total(const frame_joist_defaults *by_use, const frame_loads *loads,
                                     const frame_combinations *c, const frame_bending *r, double cosine,
                                     frame_joist_span_out *out, frame_working *record) {
    const double w_D = loads->dead;
    out->total_deflection_span_in = FRAME_NOT_GIVEN;
    if (!(by_use->total_limit > 0)) return;
    FRAME_HEADING(record, "Deflection in all");
    FRAME_TABLE(record, w_t, c->transient, "plf", "largest load of the combinations without the dead load",
                "ASCE 7-16 2.4.1");
    FRAME_TABLE(record, K_cr, by_use->creep, "", "creep factor", "NDS 2018 3.5.2 (from memory)");
    FRAME_STEP(record, w_T, K_cr * w_D + w_t, "plf", "load that would sag at once as much as in all", "NDS 2018 3.5.2");
    FRAME_GIVEN(record, q_T, by_use->total_limit, "", "span over allowed deflection in all");
    out->total_deflection_span_in = solve_sag_all(w_T, q_T, r->e_adjusted, r->inertia, cosine, record);
}

FRAME_ALWAYS_INLINE void choose(frame_joist_span_out *out, frame_working *record) {
    out->span_in = out->bending_span_in;
    out->governs = FRAME_GOVERNS_BENDING;
    if (out->shear_span_in < out->span_in) out->span_in = out->shear_span_in, out->governs = FRAME_GOVERNS_SHEAR;
    const double sag = out->deflection_span_in, sag_all = out->total_deflection_span_in;
    if (sag != FRAME_NOT_GIVEN && sag < out->span_in) out->span_in = sag, out->governs = FRAME_GOVERNS_DEFLECTION;
    if (sag_all != FRAME_NOT_GIVEN && sag_all < out->span_in)
        out->span_in = sag_all, out->governs = FRAME_GOVERNS_DEFLECTION;
    FRAME_HEADING(record, "Longest span");
    FRAME_TABLE(record, L, out->span_in, "in", "the shortest of these spans",
                frame_word_text("governing", out->governs));
    (void)L;
}

FRAME_ALWAYS_INLINE void solve_bearing(const frame_joist_span_in *in, const frame_member *m,
                                       const frame_bending_ask *ask, const frame_combinations *c,
                                       frame_joist_span_out *out, frame_working *record) {
    const double L = out->span_in;
    FRAME_HEADING(record, "Bearing");
    FRAME_TABLE(record, w_max, c->greatest, "plf", "largest load of the combinations",
                ask->lrfd ? "ASCE 7 2.3.1" : "ASCE 7 2.4.1");
    FRAME_TABLE(record, b_b, m->plies * m->breadth, "in", "breadth that bears", m->section_source);
    const double F_c_perp_prime = frame_bending_crushing_by(m, ask->lrfd, record);
    FRAME_STEP(record, l_needed, w_max / 12 * L / 2 / (b_b * F_c_perp_prime), "in",
               "length of bearing needed at this span", "NDS 2018 3.10.2");
    FRAME_GIVEN(record, l_b, in->bearing_in, "in", "length of bearing");
    FRAME_STEP(record, L_p, 2 * b_b * l_b * F_c_perp_prime / (w_max / 12), "in", "longest span by bearing",
               "R = w L / 2 solved for L");
    out->fc_perp_adjusted_psi = F_c_perp_prime;
    out->bearing_needed_in = l_needed;
    out->bearing_span_in = L_p;
}

FRAME_ALWAYS_INLINE void remark(const frame_joist_span_in *in, const frame_member *m, double repetitive,
                                frame_joist_span_out *out) {
    out->known = m->known > frame_duration_known() ? m->known : frame_duration_known();
    out->cautions =
        frame_joist_cautions(m, in->use, in->snow_psf, in->load_edition) | FRAME_BIT(FRAME_BENDING_CAUTION_SPAN_TABLES);
    if (in->method == FRAME_METHOD_LRFD || in->load_edition == FRAME_LOADS_ASCE_7_22) {
        out->known = FRAME_KNOWN_MEMORY;
        out->cautions |= FRAME_BIT(FRAME_BENDING_CAUTION_MEMORY);
    }
    if (out->bearing_span_in < out->span_in) out->cautions |= FRAME_BIT(FRAME_BENDING_CAUTION_SHORT_BEARING);
    out->not_checked = frame_joist_not_checked(in->use, in->snow_psf, in->slope);
    if (in->total_deflection_limit == FRAME_NOT_GIVEN) out->not_checked |= FRAME_BIT(FRAME_BENDING_UNCHECKED_TOTAL);
    out->wet_service_factor = m->wet->fb;
    out->size_factor = m->size_factor;
    out->incising_factor = m->incised->fb;
    out->repetitive_member_factor = repetitive;
    out->spare = 0;
}

/* The body for both: with record NULL, known when it is compiled, nothing of the recording is left. */
FRAME_ALWAYS_INLINE frame_status span(const frame_joist_span_in *in, frame_joist_span_out *out, frame_working *record) {
    frame_member member;
    frame_bending result;
    frame_loads loads = {.anyway = 0};
    frame_combinations service, strength;
    frame_joist_defaults by_use;
    double C_r;
    frame_status status = check_given(in);
    if (status) return status;
    FRAME_JOIST_DEFAULTS(in, frame_or(in->total_deflection_limit, 0), &by_use);
    if ((status = FRAME_JOIST_MEMBER(in, by_use, FRAME_NOT_GIVEN, &member))) return status;
    if ((status = frame_member_load_sharing(&member, in->repetitive, in->spacing_in, &C_r))) return status;
    frame_bending_section(&member, &result, record);
    FRAME_HEADING(record, "Loads");
    const double cosine = frame_joist_cosine(in->slope, record);
    frame_joist_loads(in->use, in->spacing_in, by_use.dead_psf, frame_or(in->live_psf, 0), frame_or(in->snow_psf, 0),
                      cosine, in->load_edition, &loads, record);
    const frame_bending_ask ask = {.lrfd = in->method == FRAME_METHOD_LRFD, .edition = in->load_edition};
    frame_combine(&loads, &service, record);
    if (!(service.greatest > 0)) return frame_no_weight();
    if (ask.lrfd) frame_combine_strength(&loads, ask.edition, &strength, record);
    const frame_combinations *c = ask.lrfd ? &strength : &service;
    frame_bending_stiffness_by(&member, 0, 0, &result, record);
    out->e_adjusted_psi = result.e_adjusted;
    solve_bending(&member, &ask, C_r, c, &result, out, record);
    solve_shear(&member, &ask, c, &result, out, record);
    solve_deflection(&by_use, &service, &result, cosine, out, record);
    solve_total(&by_use, &loads, &service, &result, cosine, out, record);
    choose(out, record);
    solve_bearing(in, &member, &ask, c, out, record);
    remark(in, &member, C_r, out);
    return FRAME_OK;
}

static FRAME_RECORDED frame_status recorded(const frame_joist_span_in *in, frame_joist_span_out *out,
                                            frame_working *record) {
    return span(in, out, record);
}

static frame_status compute(const frame_joist_span_in *in, frame_joist_span_out *out, frame_working *record) {
    return FRAME_RECORDING(record) ? recorded(in, out, record) : span(in, out, NULL);
}
FRAME_IMPLEMENT_QUICK(joist_span, compute);
