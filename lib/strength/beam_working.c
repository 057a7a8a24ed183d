/* The working of a beam of a few spans, under the combination with the largest load and with every load on: the
 * slope-deflection equations span by span. Turns and drops of the supports are the solution of the equations that say
 * that the moments at every support balance; all that follows from them is a formula. */
#include <math.h>
#include <stdio.h>

#include "base/number.h"
#include "strength/beam_results.h"
#include "working/record.h"

enum { SPANS_MOST = 12 };
#define THEORY "elastic theory of beams"

/* One span under the combination. */
typedef struct recorded {
    double L, E_I, phi, M_FA, M_FB, V_S, W, theta_A, theta_B, v_A, v_B;
    int even; /* w is all there is */
    int spare;
} recorded;

static void record_loads(const frame_beam *beam, const frame_beam_solve_in *in, frame_working *record) {
    const frame_load_case *c = &beam->cases[beam->full];
    FRAME_HEADING(record, "Loads on the whole beam");
    FRAME_GIVEN(record, w_D, in->dead_plf, "plf", "dead load");
    FRAME_GIVEN(record, w_L, in->live_plf, "plf", "live load");
    FRAME_GIVEN(record, w_Lr, in->roof_live_plf, "plf", "roof live load");
    FRAME_GIVEN(record, w_S, in->snow_plf, "plf", "snow");
    FRAME_GIVEN(record, w_W, in->wind_plf, "plf", "wind");
    FRAME_HEADING(record, "The combination with the largest load");
    FRAME_TABLE(record, k_D, c->factor[FRAME_LOAD_DEAD], "", "factor of dead load", c->source);
    FRAME_TABLE(record, k_L, c->factor[FRAME_LOAD_LIVE], "", "factor of live load", c->source);
    FRAME_TABLE(record, k_Lr, c->factor[FRAME_LOAD_ROOF_LIVE], "", "factor of roof live load", c->source);
    FRAME_TABLE(record, k_S, c->factor[FRAME_LOAD_SNOW], "", "factor of snow", c->source);
    FRAME_TABLE(record, k_W, c->factor[FRAME_LOAD_WIND], "", "factor of wind", c->source);
    FRAME_STEP(record, w, (k_D * w_D + k_L * w_L + k_Lr * w_Lr + k_S * w_S + k_W * w_W) / 12, "lb/in",
               "load on the whole beam", c->source);
    (void)w;
}

/* What the loads of a span do alone: at clamped ends, and on a simple span. */
static void find_fixed(const frame_beam *beam, size_t i, const double *factor, recorded *r) {
    r->M_FA = r->M_FB = r->V_S = r->W = 0;
    for (int k = 0; k < beam->kind_count; k++) {
        double f[4];
        if (beam->kind_of[k] == FRAME_BEAM_OFFSETS) continue;
        frame_beam_fixed_ends(beam, i, k, f);
        r->M_FA += factor[k] * f[1];
        r->M_FB -= factor[k] * f[3];
        r->W -= factor[k] * (f[0] + f[2]);
        r->V_S -= factor[k] * (f[0] + (-f[3] - f[1]) / r->L);
    }
}

static int stands(const frame_beam_node *node) {
    return node->held && node->offset == 0;
}

static recorded look(const frame_beam *beam, size_t i) {
    const frame_beam_span *span = &beam->spans[i];
    const frame_beam_factors f = frame_beam_factors_of(beam, &beam->cases[beam->full]);
    const size_t last = span->first + span->count - 1;
    const frame_beam_line begin = frame_beam_combined(beam, span->first, f.force);
    const frame_beam_line end = frame_beam_combined(beam, last, f.force);
    const frame_beam_state at_end = frame_beam_march(beam, span, &end, beam->segments[last].length);
    recorded r = {.L = span->length, .E_I = span->stiffness, .phi = span->shear_ratio};
    r.theta_A = begin.state.turn, r.v_A = stands(&beam->nodes[i]) ? 0 : begin.state.drop;
    r.theta_B = at_end.turn, r.v_B = stands(&beam->nodes[i + 1]) ? 0 : at_end.drop;
    find_fixed(beam, i, f.force, &r);
    r.even = 1;
    for (int k = 0; k < beam->kind_count; k++) {
        const frame_beam_line *line = frame_beam_line_at(beam, span->first, k);
        r.even &= span->count == 1 && line->slope == 0 && line->force == 0 && line->couple == 0 &&
                  (beam->kind_of[k] == FRAME_BEAM_OFFSETS || line->w == beam->whole[k]);
    }
    return r;
}

/* Shears and the moment between the ends, from the moments at the ends. */
static void record_within(double M_A, double M_B, double V_S, double W, double w, double L, int even,
                          frame_working *record) {
    FRAME_STEP(record, V_A, V_S + (M_B - M_A) / L, "lb", "shear at the left end", "statics");
    FRAME_STEP(record, V_B, V_A - W, "lb", "shear at the right end", "statics");
    (void)V_B;
    if (!even || !(w != 0) || !(V_A / w > 0 && V_A / w < L)) return;
    FRAME_STEP(record, x_0, V_A / w, "in", "where the shear is zero, from the left end", "statics");
    FRAME_STEP(record, M_0, M_A + V_A * x_0 - w * pow(x_0, 2) / 2, "lb-in", "moment there", "statics");
    (void)M_0;
}

static void record_ends(const recorded *r, double w, double M_FA, double M_FB, double V_S, double W, double L,
                        frame_working *record) {
    FRAME_TABLE(record, theta_A, r->theta_A, "", "turn of the left end, clockwise",
                "solution of the equations of the supports");
    FRAME_TABLE(record, theta_B, r->theta_B, "", "turn of the right end", "solution of the equations of the supports");
    FRAME_GIVEN(record, E_I, r->E_I, "lb-in2", "stiffness; where it is 1 it drops out of the moments");
    if (r->phi > 0 || r->v_A != 0 || r->v_B != 0) {
        FRAME_TABLE(record, v_A, r->v_A, "in", "drop of the left end", "solution of the equations of the supports");
        FRAME_TABLE(record, v_B, r->v_B, "in", "drop of the right end", "solution of the equations of the supports");
        FRAME_TABLE(record, phi, r->phi, "", "12 E I / (G A' L^2), 0 where shear does not deflect", THEORY);
        FRAME_STEP(record, S, 2 * E_I / (L * (1 + phi)), "lb-in", "stiffness of the span against turning", THEORY);
        FRAME_STEP(record, psi, 3 * (v_B - v_A) / L, "", "three times the slope between the ends", THEORY);
        FRAME_STEP(record, M_A, M_FA + S * ((2 + phi / 2) * theta_A + (1 - phi / 2) * theta_B - psi), "lb-in",
                   "moment at the left end", THEORY);
        FRAME_STEP(record, M_B, M_FB - S * ((1 - phi / 2) * theta_A + (2 + phi / 2) * theta_B - psi), "lb-in",
                   "moment at the right end", THEORY);
        record_within(M_A, M_B, V_S, W, w, L, r->even, record);
    } else {
        FRAME_STEP(record, M_A, M_FA + 2 * E_I / L * (2 * theta_A + theta_B), "lb-in", "moment at the left end",
                   THEORY);
        FRAME_STEP(record, M_B, M_FB - 2 * E_I / L * (theta_A + 2 * theta_B), "lb-in", "moment at the right end",
                   THEORY);
        record_within(M_A, M_B, V_S, W, w, L, r->even, record);
    }
}

static void record_span(const recorded *r, double load, frame_working *record) {
    const double w = load;
    FRAME_GIVEN(record, L, r->L, "in", "length");
    if (r->even) {
        FRAME_STEP(record, M_FA, -w * pow(L, 2) / 12, "lb-in", "moment at the left end, were both ends fixed", THEORY);
        FRAME_STEP(record, M_FB, -w * pow(L, 2) / 12, "lb-in", "moment at the right end, were both ends fixed", THEORY);
        FRAME_STEP(record, W, w * L, "lb", "load on the span", "");
        FRAME_STEP(record, V_S, W / 2, "lb", "shear at the left end of a simple span", "statics");
        record_ends(r, w, M_FA, M_FB, V_S, W, L, record);
    } else {
        FRAME_TABLE(record, M_FA, r->M_FA, "lb-in", "moment of the span's loads at the left end, were both ends fixed",
                    THEORY);
        FRAME_TABLE(record, M_FB, r->M_FB, "lb-in", "moment at the right end, were both ends fixed", THEORY);
        FRAME_TABLE(record, W, r->W, "lb", "load on the span", "");
        FRAME_TABLE(record, V_S, r->V_S, "lb", "shear of the span's loads at the left end of a simple span", "statics");
        record_ends(r, w, M_FA, M_FB, V_S, W, L, record);
    }
}

/* An overhang is statics: all its load hangs on its support. */
static void record_overhang(const recorded *r, double load, int on_left, frame_working *record) {
    const double w = load;
    FRAME_GIVEN(record, L, r->L, "in", "length");
    const double arm = on_left ? r->V_S : r->W - r->V_S; /* what a simple span would put on the free end */
    if (r->even) {
        FRAME_STEP(record, M, -w * pow(L, 2) / 2, "lb-in", "moment over the support", "statics");
        FRAME_STEP(record, V, w * L, "lb", "shear beside the support, in size", "statics");
        (void)M, (void)V;
    } else {
        FRAME_TABLE(record, W, r->W, "lb", "load on the overhang", "");
        FRAME_GIVEN(record, a, W != 0 ? L * arm / W : 0, "in", "distance of the load's middle from the support");
        FRAME_STEP(record, M, -W * a, "lb-in", "moment over the support", "statics");
        FRAME_STEP(record, V, W, "lb", "shear beside the support, in size", "statics");
        (void)M, (void)V;
    }
}

static void record_spans(const frame_beam *beam, frame_working *record) {
    const frame_load_case *c = &beam->cases[beam->full];
    double load = 0;
    for (int k = 0; k < beam->kind_count; k++) load += c->factor[beam->kind_of[k]] * beam->whole[k];
    for (size_t i = 0; i < beam->span_count; i++) {
        char from[32], to[32], title[100];
        frame_number_print(beam->nodes[i].at, 6, from, sizeof from);
        frame_number_print(beam->nodes[i + 1].at, 6, to, sizeof to);
        const size_t number = i + 1 - beam->left;
        const int within = beam->nodes[i].numbered && beam->nodes[i + 1].numbered;
        if (within)
            snprintf(title, sizeof title, "Span %zu, from %s to %s in", number, from, to);
        else
            snprintf(title, sizeof title, "%s overhang, from %s to %s in", i ? "Right" : "Left", from, to);
        FRAME_HEADING(record, title);
        const recorded r = look(beam, i);
        FRAME_ENTER(record);
        if (within)
            record_span(&r, load, record);
        else
            record_overhang(&r, load, i == 0, record);
        FRAME_LEAVE(record);
    }
}

/* The shear on both sides of a node, as the spans there have it. */
static double shear_beside(const frame_beam *beam, size_t span, int right_end) {
    const recorded r = look(beam, span);
    const double s = 2 * r.E_I / (r.L * (1 + r.phi)), psi = 3 * (r.v_B - r.v_A) / r.L, p = r.phi / 2;
    const double M_A = r.M_FA + s * ((2 + p) * r.theta_A + (1 - p) * r.theta_B - psi);
    const double M_B = r.M_FB - s * ((1 - p) * r.theta_A + (2 + p) * r.theta_B - psi);
    return r.V_S + (M_B - M_A) / r.L - (right_end ? r.W : 0);
}

static void record_supports(const frame_beam *beam, frame_working *record) {
    int number = 0;
    for (size_t i = 0; i < beam->node_count; i++) {
        const frame_beam_node *node = &beam->nodes[i];
        char title[64];
        if (!node->numbered) continue;
        snprintf(title, sizeof title, "Support %d", ++number);
        if (node->kind == FRAME_SUPPORT_NONE) continue;
        FRAME_HEADING(record, title);
        FRAME_ENTER(record);
        FRAME_TABLE(record, V_left, i > 0 ? shear_beside(beam, i - 1, 1) : 0, "lb", "shear on its left",
                    "the span there");
        FRAME_TABLE(record, V_right, i < beam->span_count ? shear_beside(beam, i, 0) : 0, "lb", "shear on its right",
                    "the span there");
        FRAME_STEP(record, R, V_right - V_left, "lb", "reaction, upward", "statics");
        (void)R;
        FRAME_LEAVE(record);
    }
}

static void record_worst(const frame_beam_solve_out *out, frame_working *record) {
    const char *how = "the largest of all cases";
    FRAME_HEADING(record, "Over all combinations and patterns");
    FRAME_TABLE(record, M_max, out->max_moment_lb_in, "lb-in", "largest moment", how);
    FRAME_TABLE(record, M_min, out->min_moment_lb_in, "lb-in", "least moment", how);
    FRAME_TABLE(record, V_max, out->max_shear_lb, "lb", "largest shear", how);
    FRAME_TABLE(record, R_max, out->max_reaction_lb, "lb", "largest reaction", how);
    FRAME_TABLE(record, R_min, out->min_reaction_lb, "lb", "least reaction", how);
    (void)M_max, (void)M_min, (void)V_max, (void)R_max, (void)R_min;
}

void frame_beam_record(const frame_beam *beam, const frame_beam_solve_in *in, const frame_beam_solve_out *out,
                       frame_working *record) {
    if (in->span_count > SPANS_MOST) {
        FRAME_CASE(record, "more than 12 spans", "the answer is given without the steps of each span", "");
        return;
    }
    record_loads(beam, in, record);
    record_spans(beam, record);
    record_supports(beam, record);
    record_worst(out, record);
}
