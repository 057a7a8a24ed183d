/* What notches and holes leave of a beam: NDS 3.1.2, 3.4.3.2, 4.4.3, 5.4.5, and holes by their net section. */
#include <stdio.h>

#include "base/error.h"
#include "base/number.h"
#include "strength/member_beam.h"

#include "working/plain_math.h"

static frame_status refused(frame_status status, size_t i, const char *field, double value, const char *valid) {
    char path[48], given[32] = "";
    snprintf(path, sizeof path, "cuts[%zu].%s", i, field);
    if (frame_given(value)) frame_number_print(value, 6, given, sizeof given);
    return frame_fail(status, path, given, valid, "%s: %s; valid is %s", path, given[0] ? given : "not given", valid);
}

/* A cut as it lies on the beam. */
typedef struct placed_cut {
    frame_member_cut cut;
    double from, to; /* clipped to the beam */
    int at_support, at_end;
    double inner_face;                      /* of the support it is cut over */
    double net_depth, modulus, shear_depth; /* shear_depth: f_v = 3 V / (2 n b shear_depth) */
} placed_cut;

/* The support that a cut reaches over, if any. */
static void find_support(const frame_checked *c, placed_cut *p) {
    const frame_beam *beam = c->beam;
    const double length = frame_checked_length(c->in);
    for (size_t i = 0; i < beam->node_count; i++) {
        const frame_beam_node *n = &beam->nodes[i];
        if (!n->numbered || n->kind == FRAME_SUPPORT_NONE) continue;
        const double half = frame_checked_bearing_at(c->in, i - beam->left) / 2;
        if (p->from > n->at + half + 1e-9 * length || p->to < n->at - half - 1e-9 * length) continue;
        p->at_support = 1;
        p->at_end = n->at <= 1e-9 * length || n->at >= (1 - 1e-9) * length;
        p->inner_face = n->at <= length / 2 ? n->at + half : n->at - half;
    }
}

/* Where in its span a cut is: 0 at its ends to a half in its middle. */
static double share_of_span(const frame_checked *c, double at) {
    for (size_t i = 0; i < c->beam->span_count; i++) {
        const frame_beam_span *s = &c->beam->spans[i];
        if (at <= s->at + s->length) return fmin(at - s->at, s->at + s->length - at) / s->length;
    }
    return 0;
}

/* NDS 4.4.3 and 5.4.5 (from memory), R502.8.1 and R802.7.1 for the length. */
static frame_status check_notch(const frame_checked *c, size_t i, const placed_cut *p) {
    const double d = c->m.depth, h = p->cut.depth_in;
    const int lower = p->cut.edge == FRAME_MEMBER_LOWER;
    if (c->product == FRAME_PRODUCT_GLULAM) {
        if (!p->at_end)
            return refused(FRAME_OUTSIDE_SCOPE, i, "at_in", p->cut.at_in, "an end, over the support (NDS 5.4.5)");
        if (lower && h > fmin(d / 10, 3))
            return refused(FRAME_OUTSIDE_SCOPE, i, "depth_in", h, "at most a tenth of the depth and 3 in (NDS 5.4.5)");
        return !lower && h > 0.4 * d
                   ? refused(FRAME_OUTSIDE_SCOPE, i, "depth_in", h, "at most two fifths of the depth (NDS 5.4.5)")
                   : FRAME_OK;
    }
    if (p->at_support)
        return h > d / 4 ? refused(FRAME_OUTSIDE_SCOPE, i, "depth_in", h, "at most a quarter of the depth (NDS 4.4.3)")
                         : FRAME_OK;
    if (h > d / 6) return refused(FRAME_OUTSIDE_SCOPE, i, "depth_in", h, "at most a sixth of the depth (NDS 4.4.3)");
    if (share_of_span(c, p->cut.at_in) > 1.0 / 3)
        return refused(FRAME_OUTSIDE_SCOPE, i, "at_in", p->cut.at_in, "a place outside the middle third (NDS 4.4.3)");
    if (p->cut.length_in > d / 3)
        return refused(FRAME_OUTSIDE_SCOPE, i, "length_in", p->cut.length_in,
                       "at most a third of the depth (R502.8.1)");
    return FRAME_OK;
}

/* R502.8.1: what the net section is trusted for. */
static frame_status check_hole(const frame_checked *c, size_t i, const placed_cut *p) {
    const double d = c->m.depth, D = p->cut.hole_in, y = frame_or(p->cut.height_in, d / 2);
    if (D > d / 3) return refused(FRAME_OUTSIDE_SCOPE, i, "hole_in", D, "at most a third of the depth (R502.8.1)");
    if (y - D / 2 < 2 || d - y - D / 2 < 2)
        return refused(FRAME_OUTSIDE_SCOPE, i, "height_in", y, "2 in of wood above and below the hole (R502.8.1)");
    return FRAME_OK;
}

static frame_status check_cut(const frame_checked *c, size_t i, const placed_cut *p) {
    const int notch = frame_given(p->cut.depth_in), hole = frame_given(p->cut.hole_in);
    if (notch == hole)
        return notch ? refused(FRAME_CONFLICT, i, "hole_in", p->cut.hole_in, "one of depth_in and hole_in")
                     : refused(FRAME_REQUIRED, i, "depth_in", FRAME_NOT_GIVEN, "the depth of a notch, or hole_in");
    if (!hole && frame_given(p->cut.height_in))
        return refused(FRAME_CONFLICT, i, "height_in", p->cut.height_in, "hole_in, with height_in");
    if (c->product == FRAME_PRODUCT_COMPOSITE)
        return refused(FRAME_REFUSED, i, notch ? "depth_in" : "hole_in", notch ? p->cut.depth_in : p->cut.hole_in,
                       "no cut in structural composite lumber without its maker's word");
    if (c->m.flat)
        return refused(FRAME_REFUSED, i, notch ? "depth_in" : "hole_in", notch ? p->cut.depth_in : p->cut.hole_in,
                       "no cut in a member that lies flat");
    return notch ? check_notch(c, i, p) : check_hole(c, i, p);
}

static void place(const frame_checked *c, placed_cut *p) {
    const double half = frame_given(p->cut.hole_in) ? p->cut.hole_in / 2 : p->cut.length_in / 2;
    p->from = fmax(p->cut.at_in - half, 0);
    p->to = fmin(p->cut.at_in + half, frame_checked_length(c->in));
    p->at_support = p->at_end = 0;
    p->inner_face = 0;
    find_support(c, p);
}

/* What is left: for bending, and for shear. tension: the notch is cut in the edge in tension. */
static void find_net(const frame_checked *c, placed_cut *p, int tension, frame_working *record) {
    const double n = c->m.plies, b = c->m.breadth, d = c->m.depth;
    if (frame_given(p->cut.hole_in)) {
        FRAME_GIVEN(record, D_h, p->cut.hole_in, "in", "diameter of the hole");
        FRAME_GIVEN(record, y_h, frame_or(p->cut.height_in, d / 2), "in", "height of its centre");
        FRAME_STEP(record, I_n, n * b * (pow(d, 3) / 12 - pow(D_h, 3) / 12 - D_h * pow(y_h - d / 2, 2)), "in4",
                   "moment of inertia of what is left", "net section, NDS 2018 3.1.2");
        FRAME_STEP(record, S_n, I_n / (d / 2), "in3", "section modulus of what is left", "net section");
        FRAME_STEP(record, d_v, d - D_h, "in", "depth left for shear", "net section");
        p->modulus = S_n, p->net_depth = p->shear_depth = d_v;
        return;
    }
    FRAME_GIVEN(record, h, p->cut.depth_in, "in", "depth of the notch");
    FRAME_STEP(record, d_n, d - h, "in", "depth left at the notch", "");
    FRAME_STEP(record, S_n, n * b * pow(d_n, 2) / 6, "in3", "section modulus of what is left", "NDS 2018 3.1.2");
    p->modulus = S_n, p->net_depth = d_n;
    if (tension) {
        FRAME_STEP(record, d_v, d_n * pow(d_n / d, 2), "in", "depth that counts for shear, notch in the tension edge",
                   "NDS 2018 3.4.3.2(a) (from memory)");
        p->shear_depth = d_v;
        return;
    }
    const double past = p->at_support ? fmax(fmax(p->to - p->inner_face, p->inner_face - p->from), 0) : d_n;
    FRAME_GIVEN(record, e_n, fmin(past, d_n), "in", "how far the notch reaches past the face of the support");
    FRAME_STEP(record, d_v, d - (d - d_n) / d_n * e_n, "in",
               "depth that counts for shear, notch in the compression edge", "NDS 2018 3.4.3.2(e) (from memory)");
    p->shear_depth = d_v;
}

/* The largest moments and shears over a cut under each combination. */
typedef struct over_cut {
    double most[FRAME_LOAD_CASES], least[FRAME_LOAD_CASES], shear[FRAME_LOAD_CASES];
} over_cut;

static void gather(frame_checked *c, const placed_cut *p, over_cut *o) {
    const double slip = 1e-9 * frame_checked_length(c->in);
    for (int k = 0; k < c->beam->case_count; k++) o->most[k] = -HUGE_VAL, o->least[k] = HUGE_VAL, o->shear[k] = 0;
    for (size_t i = 0; i < c->beam->span_count; i++)
        for (size_t s = c->beam->spans[i].first; s < c->beam->spans[i].first + c->beam->spans[i].count; s++) {
            const double from = c->beam->spans[i].at + c->beam->segments[s].at, to = from + c->beam->segments[s].length;
            if (to < p->from - slip || from > p->to + slip) continue;
            frame_beam_envelope e[FRAME_LOAD_CASES];
            const int within = from >= p->from - slip && to <= p->to + slip;
            for (int k = 0; k < c->beam->case_count; k++) frame_beam_envelope_none(&e[k]);
            if (within) frame_beam_segment_envelopes(c->beam, i, s, c->factors, &c->scratch, e);
            for (int k = 0; k < c->beam->case_count; k++) {
                if (!within) { /* it touches: its end alone */
                    const double t = to <= p->from + slip ? to - from : 0;
                    frame_beam_point_envelope(c->beam, i, s, t, &c->factors[k], &e[k]);
                }
                o->most[k] = fmax(o->most[k], e[k].moment.most);
                o->least[k] = fmin(o->least[k], e[k].moment.least);
                o->shear[k] = fmax(o->shear[k], fmax(e[k].shear.most, -e[k].shear.least));
            }
        }
}

/* Whether the notch is in the edge that some combination puts in tension; at the ends the lower edge counts as such. */
static int is_in_tension(const frame_checked *c, const placed_cut *p, const over_cut *o) {
    const double nothing = frame_checked_nothing(c, c->longest);
    for (int k = 0; k < c->beam->case_count; k++)
        if (p->cut.edge == FRAME_MEMBER_LOWER ? o->most[k] > nothing : o->least[k] < -nothing) return 1;
    return p->at_end && p->cut.edge == FRAME_MEMBER_LOWER;
}

typedef struct cut_worst {
    double bending, shear, moment, force;
    int bending_case, shear_case, sags;
} cut_worst;

static void take_bending(frame_checked *c, const placed_cut *p, int k, double moment, cut_worst *w) {
    const int sags = moment > 0;
    double C_L, C_V;
    const frame_stretch *s =
        frame_checked_stretch_at(c, sags ? FRAME_MEMBER_UPPER : FRAME_MEMBER_LOWER, (p->from + p->to) / 2);
    const double ratio = fabs(moment) / p->modulus / frame_checked_allowed(c, s, k, &C_L, &C_V, NULL);
    if (ratio <= w->bending) return;
    w->bending = ratio, w->moment = moment, w->bending_case = k, w->sags = sags;
}

static void find_worst(frame_checked *c, const placed_cut *p, const over_cut *o, cut_worst *w) {
    const double n = c->m.plies, b = c->m.breadth;
    *w = (cut_worst){0, 0, 0, 0, 0, 0, 1};
    for (int k = 0; k < c->beam->case_count; k++) {
        if (o->most[k] > 0) take_bending(c, p, k, o->most[k], w);
        if (o->least[k] < 0) take_bending(c, p, k, o->least[k], w);
        const double ratio = 1.5 * o->shear[k] / (n * b * p->shear_depth) / frame_checked_shear_allowed(c, k, 1, NULL);
        if (ratio > w->shear) w->shear = ratio, w->force = o->shear[k], w->shear_case = k;
    }
}

static void record_cut(frame_checked *c, size_t i, placed_cut *p, int tension, const cut_worst *w) {
    frame_working *record = c->record;
    char title[48];
    double C_L, C_V;
    const double n = c->m.plies, b = c->m.breadth;
    if (!FRAME_RECORDING(record)) return;
    snprintf(title, sizeof title, frame_given(p->cut.hole_in) ? "Hole %zu" : "Notch %zu", i + 1);
    FRAME_HEADING(record, title);
    find_net(c, p, tension, record);
    const double S_n = p->modulus, d_v = p->shear_depth;
    const frame_stretch *s =
        frame_checked_stretch_at(c, w->sags ? FRAME_MEMBER_UPPER : FRAME_MEMBER_LOWER, (p->from + p->to) / 2);
    FRAME_TABLE(record, M_n, fabs(w->moment), "lb-in", "largest bending moment there",
                frame_word_text("load_combination", c->beam->cases[w->bending_case].which));
    FRAME_STEP(record, f_b_n, M_n / S_n, "psi", "bending stress in what is left", "NDS 2018 3.3.2");
    if (s->buckling > 0) {
        FRAME_TABLE(record, F_bE, s->buckling, "psi", "critical buckling design value between the braces there",
                    "NDS 2018 3.3.3.8");
        (void)F_bE;
    }
    const double F_b_prime = frame_checked_allowed(c, s, w->bending_case, &C_L, &C_V, record);
    FRAME_STEP(record, cut_bending_ratio, f_b_n / F_b_prime, "", "share of the bending strength used there",
               "NDS 2018 3.3.1");
    FRAME_TABLE(record, V_n, w->force, "lb", "largest shear there",
                frame_word_text("load_combination", c->beam->cases[w->shear_case].which));
    FRAME_STEP(record, f_v_n, 3 * V_n / (2 * n * b * d_v), "psi", "shear stress in what is left", "NDS 2018 3.4.2");
    const double F_v_prime = frame_checked_shear_allowed(c, w->shear_case, 1, record);
    FRAME_STEP(record, cut_shear_ratio, f_v_n / F_v_prime, "", "share of the shear strength used there",
               "NDS 2018 3.4.1");
    (void)cut_bending_ratio, (void)cut_shear_ratio;
}

static frame_status give_cut(frame_checked *c, size_t i, placed_cut *p) {
    over_cut over;
    cut_worst w;
    gather(c, p, &over);
    const int tension = frame_given(p->cut.depth_in) && is_in_tension(c, p, &over);
    if (tension && !p->at_support && c->m.breadth >= 3.5)
        return refused(FRAME_OUTSIDE_SCOPE, i, "edge", FRAME_NOT_GIVEN,
                       "the compression edge, or an end, for members 3-1/2 in thick and more (NDS 4.4.3)");
    find_net(c, p, tension, NULL);
    find_worst(c, p, &over, &w);
    frame_member_check_cut *given = frame_answer_add(c->answer, FRAME_CHECKED_CUTS);
    if (!given) return FRAME_NO_MEMORY;
    given->number = (int32_t)i + 1, given->at_support = p->at_support, given->at_in = p->cut.at_in;
    given->moment_lb_in = w.moment, given->shear_lb = w.force;
    given->net_section_modulus_in3 = p->modulus, given->net_depth_in = p->net_depth;
    given->bending_ratio = w.bending, given->shear_ratio = w.shear;
    c->out->cut_ratio = fmax(c->out->cut_ratio, fmax(w.bending, w.shear));
    record_cut(c, i, p, tension, &w);
    return FRAME_OK;
}

frame_status frame_checked_cuts(frame_checked *c) {
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < c->in->cut_count && !status; i++) {
        placed_cut p;
        frame_member_cut_item(c->in->cuts, i, &p.cut);
        place(c, &p);
        status = check_cut(c, i, &p);
        if (!status) status = give_cut(c, i, &p);
    }
    return status;
}
