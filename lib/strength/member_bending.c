/* Bending of a beam of any spans, stretch by stretch: NDS 3.3, and the volume factor of 5.3.6 and 8.3.6. */
#include "base/error.h"
#include "base/number.h"
#include "strength/format.h"
#include "strength/member_beam.h"

#include "working/plain_math.h"

/* C_V of glulam, NDS 5.3.6. */
static double glulam_volume(const frame_checked *c, double length, frame_working *record) {
    const double b = c->m.breadth, d = c->m.depth;
    FRAME_GIVEN(record, L_0, length / 12, "ft", "length between places of no moment, at most");
    FRAME_TABLE(record, x_V, c->exponent, "", "exponent of the volume factor", "NDS 2018 5.3.6");
    FRAME_STEP(record, C_V, fmin(1, pow(21 / L_0, x_V) * pow(12 / d, x_V) * pow(5.125 / b, x_V)), "", "volume factor",
               "NDS 2018 5.3.6, equation 5.3-1");
    return C_V;
}

/* C_V of structural composite lumber, NDS 8.3.6: by depth alone. */
static double composite_volume(const frame_checked *c, frame_working *record) {
    const double d = c->m.depth;
    FRAME_GIVEN(record, d_V, c->in->volume_depth_in, "in", "depth at which the maker's volume factor is 1");
    FRAME_GIVEN(record, x_V, c->exponent, "", "exponent of the volume factor, the maker's");
    FRAME_STEP(record, C_V, pow(d_V / d, x_V), "", "volume factor", "NDS 2018 8.3.6 (from memory)");
    return C_V;
}

/* F_b* of glulam and composite lumber: all factors but C_L and C_V. */
static double engineered_star(const frame_checked *c, double F_b_table, int by_case, frame_working *record) {
    const frame_member *m = &c->m;
    FRAME_TABLE(record, F_b, F_b_table, "psi", "bending design value", m->lumber.source);
    FRAME_TABLE(record, C_M, m->wet->fb, "", "wet service factor", m->wet->source);
    FRAME_TABLE(record, C_t, m->temperature_stress, "", "temperature factor", "NDS 2018 table 2.3.3");
    FRAME_TABLE(record, C_r, c->repetitive, "", "repetitive member factor", "NDS 2018 8.3.7 (from memory)");
    if (c->lrfd) {
        FRAME_TABLE(record, K_F_b, FRAME_FORMAT_KF(FRAME_FORMAT_FB), "", "format conversion factor",
                    FRAME_FORMAT_SOURCE);
        FRAME_TABLE(record, phi_b, FRAME_FORMAT_PHI(FRAME_FORMAT_FB), "", "resistance factor", FRAME_FORMAT_SOURCE);
        FRAME_TABLE(record, lambda, frame_checked_time(c, by_case), "", "time effect factor", FRAME_LAMBDA_SOURCE);
        FRAME_STEP(record, F_b_star, F_b * C_M * C_t * C_r * K_F_b * phi_b * lambda, "psi",
                   "bending design value, all factors but C_L and C_V", "NDS 2018 tables 5.3.1 and 8.3.1");
        return F_b_star;
    }
    FRAME_TABLE(record, C_D, frame_checked_duration(c, by_case), "", "load duration factor of this combination",
                FRAME_DURATION_SOURCE);
    FRAME_STEP(record, F_b_star, F_b * C_D * C_M * C_t * C_r, "psi",
               "bending design value, all factors but C_L and C_V", "NDS 2018 tables 5.3.1 and 8.3.1");
    return F_b_star;
}

/* The lesser of C_L and C_V counts; a C_V above 1, of shallow composite lumber, goes with C_L. */
static double engineered_allowed(frame_checked *c, const frame_stretch *s, int by_case, double *C_L_out,
                                 double *C_V_out, frame_working *record) {
    const double F_b_table = s->edge == FRAME_MEMBER_UPPER ? c->m.lumber.fb_psi : c->fb_negative;
    const double F_b_star = frame_checked_curved(c, engineered_star(c, F_b_table, by_case, record), record);
    const double C_L =
        s->buckling > 0 ? frame_beam_stability(s->buckling, F_b_star, record) : frame_bending_no_buckling(record);
    const double C_V =
        c->product == FRAME_PRODUCT_GLULAM ? glulam_volume(c, s->volume_length, record) : composite_volume(c, record);
    *C_L_out = C_L;
    *C_V_out = C_V;
    if (C_V > 1) {
        FRAME_STEP(record, F_b_prime, F_b_star * C_L * C_V, "psi", "adjusted bending design value",
                   "NDS 2018 8.3.6 (from memory)");
        return F_b_prime;
    }
    FRAME_STEP(record, F_b_prime, F_b_star * fmin(C_L, C_V), "psi", "adjusted bending design value",
               "NDS 2018 5.3.6 and 8.3.6: the lesser of C_L and C_V");
    return F_b_prime;
}

double frame_checked_allowed(frame_checked *c, const frame_stretch *s, int by_case, double *C_L, double *C_V,
                             frame_working *record) {
    if (c->product != FRAME_PRODUCT_SAWN) return engineered_allowed(c, s, by_case, C_L, C_V, record);
    const double factor = c->lrfd ? frame_checked_time(c, by_case) : frame_checked_duration(c, by_case);
    const double allowed =
        frame_bending_allowed_by(&c->m, c->repetitive, c->lrfd, factor, s->buckling, &c->found, record);
    *C_L = c->found.stability;
    *C_V = 1;
    return allowed;
}

/* Takes the moments of one segment into the stretches that it lies in. */
static void take_moment(frame_checked *c, frame_member_edge edge, double x, int by_case, double moment, double at,
                        double *worst) {
    frame_stretch *s = frame_checked_stretch_at(c, edge, x);
    double C_L, C_V;
    const double size = edge == FRAME_MEMBER_UPPER ? moment : -moment;
    if (!(size > frame_checked_nothing(c, c->longest))) return;
    s->used = 1;
    const double allowed = frame_checked_allowed(c, s, by_case, &C_L, &C_V, NULL);
    const double ratio = size / c->found.section_modulus / allowed;
    if (ratio > s->ratio) s->ratio = ratio, s->moment = moment, s->at = at, s->by_case = by_case;
    *worst = fmax(*worst, ratio);
}

static void look_at_segment(frame_checked *c, size_t span, size_t segment, double *worst) {
    frame_beam_envelope e[FRAME_LOAD_CASES];
    const frame_beam_segment *part = &c->beam->segments[segment];
    const double middle = c->beam->spans[span].at + part->at + part->length / 2;
    frame_beam_segment_envelopes(c->beam, span, segment, c->factors, &c->scratch, e);
    for (int i = 0; i < c->beam->case_count; i++) {
        take_moment(c, FRAME_MEMBER_UPPER, middle, i, e[i].moment.most, e[i].moment.most_at, worst);
        take_moment(c, FRAME_MEMBER_LOWER, middle, i, e[i].moment.least, e[i].moment.least_at, worst);
    }
}

static frame_status too_slender(const frame_stretch *s) {
    char length[32], ratio[32];
    const char *field = s->edge == FRAME_MEMBER_UPPER ? "upper_braces_in" : "lower_braces_in";
    const char *valid = "braces closer together, or a broader or shallower member: R_B at most 50 (NDS 3.3.3.7)";
    frame_number_print(s->to - s->from, 6, length, sizeof length);
    frame_number_print(s->slenderness, 4, ratio, sizeof ratio);
    return frame_fail(FRAME_OUTSIDE_SCOPE, field, length, valid,
                      "%s: a free length of %s in makes the slenderness R_B %s; valid is %s", field, length, ratio,
                      valid);
}

static frame_status give_stretch(frame_checked *c, const frame_stretch *s) {
    frame_member_check_stretch *given = frame_answer_add(c->answer, FRAME_CHECKED_STRETCHES);
    double C_L, C_V;
    if (!given) return FRAME_NO_MEMORY;
    given->edge = s->edge;
    given->combination = c->beam->cases[s->by_case].which;
    given->from_in = s->from, given->to_in = s->to;
    given->at_in = s->at, given->moment_lb_in = s->moment;
    given->effective_length_in = s->effective;
    given->slenderness_ratio = s->slenderness;
    given->fb_adjusted_psi = frame_checked_allowed(c, s, s->by_case, &C_L, &C_V, NULL);
    given->beam_stability_factor = C_L;
    given->bending_ratio = s->ratio;
    return FRAME_OK;
}

static void give_worst(frame_checked *c, const frame_stretch *s, double F_b_prime, double C_L, double C_V) {
    frame_member_check_out *out = c->out;
    out->combination = c->beam->cases[s->by_case].which;
    out->compressed = s->edge;
    out->bending_ratio = s->ratio;
    out->bending_at_in = s->at;
    out->moment_lb_in = s->moment;
    out->fb_actual_psi = fabs(s->moment) / c->found.section_modulus;
    out->fb_adjusted_psi = F_b_prime;
    out->unbraced_length_in = s->buckling > 0 ? s->to - s->from : FRAME_NOT_GIVEN;
    out->effective_length_in = s->effective;
    out->slenderness_ratio = s->slenderness;
    out->beam_stability_factor = C_L;
    out->volume_factor = C_V;
    out->load_duration_factor = frame_checked_duration(c, s->by_case);
    out->time_effect_factor = frame_checked_time(c, s->by_case);
}

static void record_worst(frame_checked *c, const frame_stretch *s) {
    frame_working *record = c->record;
    const double S = c->found.section_modulus, n = c->m.plies, b = c->m.breadth, E_min_prime = c->E_min_prime;
    double C_L_found, C_V_found;
    FRAME_HEADING(record, "Bending");
    FRAME_GIVEN(record, x_b, s->at, "in", "where bending governs, from the left end");
    FRAME_TABLE(record, M, fabs(s->moment), "lb-in", "bending moment there",
                frame_word_text("load_combination", c->beam->cases[s->by_case].which));
    FRAME_CASE(record, s->edge == FRAME_MEMBER_UPPER ? "it sags" : "it hogs",
               s->edge == FRAME_MEMBER_UPPER ? "the upper edge is in compression" : "the lower edge is in compression",
               "");
    FRAME_STEP(record, f_b, M / S, "psi", "bending stress", "NDS 2018 3.3.2");
    double F_bE_found = 0;
    if (s->buckling > 0) {
        FRAME_STEP(record, b_n, n * b, "in", "breadth of all plies", "");
        const double R_B = frame_beam_slenderness(s->to - s->from, b_n, c->m.depth, s->row, record);
        F_bE_found = frame_beam_buckling(R_B, E_min_prime, record);
    } else {
        FRAME_CASE(record, "the compression edge is held, or the beam is not deeper than broad", "C_L is 1",
                   "NDS 2018 3.3.3");
    }
    (void)F_bE_found;
    const double F_b_prime = frame_checked_allowed(c, s, s->by_case, &C_L_found, &C_V_found, record);
    FRAME_STEP(record, bending_ratio, f_b / F_b_prime, "", "share of the bending strength used", "NDS 2018 3.3.1");
    (void)bending_ratio, (void)x_b;
    give_worst(c, s, F_b_prime, C_L_found, C_V_found);
}

frame_status frame_checked_bending(frame_checked *c) {
    const frame_beam *beam = c->beam;
    const frame_stretch *worst = &c->stretches[0];
    for (size_t i = 0; i < beam->span_count; i++) {
        frame_member_check_span *span = &FRAME_ANSWER_ITEM(frame_member_check_span, c->answer, FRAME_CHECKED_SPANS, i);
        double ratio = 0;
        for (size_t s = beam->spans[i].first; s < beam->spans[i].first + beam->spans[i].count; s++)
            look_at_segment(c, i, s, &ratio);
        span->bending_ratio = ratio;
    }
    for (size_t i = 0; i < c->stretch_count; i++) {
        const frame_stretch *s = &c->stretches[i];
        if (s->used && s->slenderness > 50) return too_slender(s);
        if (s->used && give_stretch(c, s)) return FRAME_NO_MEMORY;
        if (s->ratio > worst->ratio) worst = s;
    }
    record_worst(c, worst);
    return FRAME_OK;
}
