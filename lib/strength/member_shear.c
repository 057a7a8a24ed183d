/* Shear and bearing of a beam of any spans: NDS 3.4 and 3.10. */
#include <math.h>

#include "base/error.h"
#include "base/number.h"
#include "strength/beam_results.h"
#include "strength/format.h"
#include "strength/member_beam.h"

#include "working/plain_math.h"

/* NDS 5.3.10: glulam under impact, notched or bored. */
#define GLULAM_SHEAR_REDUCTION 0.72

double frame_checked_shear_allowed(const frame_checked *c, int by_case, int cut, frame_working *record) {
    const double factor = c->lrfd ? frame_checked_time(c, by_case) : frame_checked_duration(c, by_case),
                 plain = frame_bending_shear_allowed_by(&c->m, c->lrfd, factor, record);
    const int impact =
        c->in->live_duration == FRAME_DURATION_IMPACT && c->beam->cases[by_case].factor[FRAME_LOAD_LIVE] != 0;
    if (c->product != FRAME_PRODUCT_GLULAM || !(cut || impact)) return plain;
    FRAME_TABLE(record, F_v_o, plain, "psi", "adjusted shear design value of an even beam at rest", "above");
    FRAME_TABLE(record, C_vr, GLULAM_SHEAR_REDUCTION, "",
                cut ? "shear reduction factor, at a notch or hole" : "shear reduction factor, under impact",
                "NDS 2018 5.3.10");
    FRAME_STEP(record, F_v_prime, F_v_o * C_vr, "psi", "adjusted shear design value", "NDS 2018 table 5.3.1");
    return F_v_prime;
}

/* Whether the load near a support may be left out: no point load stands there, and there is no cut in it. */
static int may_reduce(const frame_checked *c, double from, double to) {
    const frame_member_check_in *in = c->in;
    for (size_t i = 0; i < in->load_count; i++) {
        frame_beam_load load;
        frame_beam_load_item(in->loads, i, &load);
        if (frame_given(load.plf)) continue;
        const double at = load.at_in; /* placed on a span: reduced nowhere, as said to the caller */
        if (load.span != FRAME_NOT_GIVEN_INT || (at >= from && at <= to)) return 0;
    }
    for (size_t i = 0; i < in->cut_count; i++) {
        frame_member_cut cut;
        frame_member_cut_item(in->cuts, i, &cut);
        if (cut.at_in + cut.length_in / 2 >= from && cut.at_in - cut.length_in / 2 <= to) return 0;
    }
    return 1;
}

/* From the centre of a support to d beyond its face, where that may be left out; else 0. side: 1 to its right. */
static double reach_of(const frame_checked *c, size_t node, int side) {
    const frame_beam_node *n = &c->beam->nodes[node];
    if (!c->in->shear_at_depth || !n->numbered || n->kind == FRAME_SUPPORT_NONE) return 0;
    const size_t support = node - c->beam->left;
    const double reach = c->m.depth + frame_checked_bearing_at(c->in, support) / 2;
    const double from = side > 0 ? n->at : n->at - reach, to = side > 0 ? n->at + reach : n->at;
    return may_reduce(c, from, to) ? reach : 0;
}

typedef struct shear_place {
    double force, at, ratio;
    int by_case;
} shear_place;

static double force_at_most(const frame_beam_extreme *e) {
    return fmax(e->most, -e->least);
}

static void look_at_span(frame_checked *c, size_t i, shear_place *worst, double *ratio) {
    const frame_beam_span *span = &c->beam->spans[i];
    double left = reach_of(c, i, 1), right = reach_of(c, i + 1, -1);
    if (left + right >= span->length) left = right = 0;
    for (size_t s = span->first; s < span->first + span->count; s++) {
        frame_beam_envelope e[FRAME_LOAD_CASES];
        const double from = c->beam->segments[s].at, to = from + c->beam->segments[s].length,
                     slip = 1e-9 * span->length;
        if (to <= left + slip || from >= span->length - right - slip) continue;
        frame_beam_segment_envelopes(c->beam, i, s, c->factors, &c->scratch, e);
        for (int k = 0; k < c->beam->case_count; k++) {
            const double V = force_at_most(&e[k].shear);
            const double r = 1.5 * V / c->found.area / frame_checked_shear_allowed(c, k, 0, NULL);
            *ratio = fmax(*ratio, r);
            if (r <= worst->ratio) continue;
            const double at = e[k].shear.most >= -e[k].shear.least ? e[k].shear.most_at : e[k].shear.least_at;
            *worst = (shear_place){V, at, r, k};
        }
    }
}

frame_status frame_checked_shear(frame_checked *c) {
    frame_working *record = c->record;
    shear_place worst = {0, 0, 0, 0};
    const double A = c->found.area;
    for (size_t i = 0; i < c->beam->span_count; i++) {
        double ratio = 0;
        look_at_span(c, i, &worst, &ratio);
        FRAME_ANSWER_ITEM(frame_member_check_span, c->answer, FRAME_CHECKED_SPANS, i).shear_ratio = ratio;
    }
    FRAME_HEADING(record, "Shear");
    FRAME_GIVEN(record, x_v, worst.at, "in", "where shear governs, from the left end");
    FRAME_TABLE(record, V, worst.force, "lb", "shear there",
                frame_word_text("load_combination", c->beam->cases[worst.by_case].which));
    FRAME_STEP(record, f_v, 3 * V / (2 * A), "psi", "shear stress", "NDS 2018 3.4.2");
    const double F_v_prime = frame_checked_shear_allowed(c, worst.by_case, 0, record);
    FRAME_STEP(record, shear_ratio, f_v / F_v_prime, "", "share of the shear strength used", "NDS 2018 3.4.1");
    (void)x_v;
    c->out->shear_at_in = worst.at, c->out->shear_lb = worst.force;
    c->out->fv_actual_psi = f_v, c->out->fv_adjusted_psi = F_v_prime;
    c->out->shear_ratio = shear_ratio;
    c->out->shear_combination = c->beam->cases[worst.by_case].which;
    c->out->shear_load_duration_factor = frame_checked_duration(c, worst.by_case);
    return FRAME_OK;
}

/* NDS 3.10.4: bearings under 6 in long whose edge is 3 in and more from the end of the member. */
static double area_factor(const frame_checked *c, double at, double bearing) {
    const double length = frame_checked_length(c->in), from_end = fmin(at, length - at) - bearing / 2;
    return bearing > 0 && bearing < 6 && from_end >= 3 ? (bearing + 0.375) / bearing : 1;
}

static void give_support(const frame_checked *c, size_t node, frame_member_check_support *s) {
    const double b_b = c->m.flat ? c->m.breadth : c->m.plies * c->m.breadth;
    const double bearing = frame_checked_bearing_at(c->in, node - c->beam->left);
    s->at_in = c->beam->nodes[node].at;
    s->max_reaction_lb = -HUGE_VAL, s->min_reaction_lb = HUGE_VAL;
    for (int k = 0; k < c->beam->case_count; k++) {
        double most, least;
        frame_beam_reaction_reach(c->beam, &c->factors[k], node, &most, &least);
        s->max_reaction_lb = fmax(s->max_reaction_lb, most);
        s->min_reaction_lb = fmin(s->min_reaction_lb, least);
    }
    s->bearing_area_factor = area_factor(c, s->at_in, bearing);
    s->fc_perp_adjusted_psi = c->fc_perp_prime * s->bearing_area_factor;
    s->bearing_needed_in = fmax(s->max_reaction_lb, 0) / (b_b * c->fc_perp_prime);
    if (!(bearing > 0)) return;
    s->bearing_in = bearing;
    s->fc_perp_actual_psi = fmax(s->max_reaction_lb, 0) / (b_b * bearing);
    s->bearing_ratio = s->fc_perp_actual_psi / s->fc_perp_adjusted_psi;
}

static void record_bearing(const frame_checked *c, const frame_member_check_support *s) {
    frame_working *record = c->record;
    const double F_c_perp_prime = c->fc_perp_prime;
    FRAME_GIVEN(record, x_R, s->at_in, "in", "the support that bearing governs at");
    FRAME_TABLE(record, R, fmax(s->max_reaction_lb, 0), "lb", "its largest reaction", "analysis of the beam");
    FRAME_TABLE(record, b_b, c->m.flat ? c->m.breadth : c->m.plies * c->m.breadth, "in", "breadth that bears", "");
    (void)x_R;
    if (!frame_given(s->bearing_in)) {
        FRAME_STEP(record, l_needed, R / (b_b * F_c_perp_prime), "in", "length of bearing that would do",
                   "NDS 2018 3.10.2");
        (void)l_needed;
        return;
    }
    FRAME_GIVEN(record, l_b, s->bearing_in, "in", "length of bearing");
    FRAME_STEP(record, f_c_perp, R / (b_b * l_b), "psi", "bearing stress", "NDS 2018 3.10.2");
    if (s->bearing_area_factor > 1) {
        FRAME_STEP(record, C_b_l, (l_b + 0.375) / l_b, "", "bearing area factor, 3 in and more from the end",
                   "NDS 2018 3.10.4 (from memory)");
        FRAME_STEP(record, bearing_ratio, f_c_perp / (F_c_perp_prime * C_b_l), "", "share of the bearing strength used",
                   "NDS 2018 3.10.2");
        (void)bearing_ratio;
        return;
    }
    FRAME_STEP(record, bearing_ratio, f_c_perp / F_c_perp_prime, "", "share of the bearing strength used",
               "NDS 2018 3.10.2");
    (void)bearing_ratio;
}

static double rank_of(const frame_member_check_support *s) {
    return frame_given(s->bearing_ratio) ? s->bearing_ratio : s->bearing_needed_in;
}

frame_status frame_checked_bearing(frame_checked *c) {
    frame_member_check_out *out = c->out;
    size_t worst = 0, count = 0;
    FRAME_HEADING(c->record, "Bearing");
    c->fc_perp_prime = frame_bending_crushing_by(&c->m, c->lrfd, c->record);
    out->fc_perp_adjusted_psi = c->fc_perp_prime;
    for (size_t i = 0; i < c->beam->node_count; i++) {
        if (!c->beam->nodes[i].numbered || c->beam->nodes[i].kind == FRAME_SUPPORT_NONE) continue;
        frame_member_check_support *s = frame_answer_add(c->answer, FRAME_CHECKED_SUPPORTS);
        if (!s) return FRAME_NO_MEMORY;
        give_support(c, i, s);
        const frame_member_check_support *all = c->answer->lists[FRAME_CHECKED_SUPPORTS].items;
        if (rank_of(&all[count]) > rank_of(&all[worst])) worst = count;
        count++;
        if (out->max_reaction_lb == FRAME_NOT_GIVEN || s->max_reaction_lb > out->max_reaction_lb)
            out->max_reaction_lb = s->max_reaction_lb;
        if (out->min_reaction_lb == FRAME_NOT_GIVEN || s->min_reaction_lb < out->min_reaction_lb)
            out->min_reaction_lb = s->min_reaction_lb;
    }
    const frame_member_check_support *all = c->answer->lists[FRAME_CHECKED_SUPPORTS].items;
    out->bearing_ratio = all[worst].bearing_ratio;
    record_bearing(c, &all[worst]);
    return FRAME_OK;
}
