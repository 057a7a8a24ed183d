/* The answer of a beam: what is worst on each span, at each support, under each combination, and anywhere. */
#include "strength/beam_results.h"

#include <math.h>

/* What is gathered on the way along the beam. */
typedef struct gathering {
    frame_beam *beam;
    frame_answer *answer;
    frame_beam_solve_out *out;
    frame_beam_factors factors[FRAME_LOAD_CASES];
    frame_beam_extreme moments[FRAME_LOAD_CASES], shears[FRAME_LOAD_CASES], reactions[FRAME_LOAD_CASES];
    frame_beam_envelope *spans;
    frame_beam_extreme *at_nodes; /* the moment in the beam at each node */
    frame_beam_extreme moment, shear, drop, transient;
    frame_beam_scratch scratch;
} gathering;

/* Beside the largest of its kind on the whole beam, this share of it is rounding. */
#define ROUNDING 1e-13

static void clean_one(double *value, double largest) {
    if (fabs(*value) <= ROUNDING * largest) *value = 0;
}

static double size_of(const frame_beam_extreme *e) {
    return fmax(fabs(e->most), fabs(e->least));
}

static void clean(frame_beam_extreme *e, const frame_beam_extreme *whole) {
    const double largest = size_of(whole);
    clean_one(&e->most, largest);
    clean_one(&e->least, largest);
}

static double larger(const frame_beam_extreme *e) {
    return e->most >= -e->least ? e->most : e->least;
}

static double larger_at(const frame_beam_extreme *e) {
    return e->most >= -e->least ? e->most_at : e->least_at;
}

static void give_span(const gathering *g, size_t i, const frame_beam_envelope *e, frame_beam_solve_span *span) {
    span->from_in = g->beam->spans[i].at;
    span->length_in = g->beam->spans[i].length;
    span->number = (int32_t)(i + 1 - g->beam->left);
    span->max_moment_lb_in = e->moment.most, span->max_moment_at_in = e->moment.most_at;
    span->min_moment_lb_in = e->moment.least, span->min_moment_at_in = e->moment.least_at;
    span->max_shear_lb = e->shear.most, span->max_shear_at_in = e->shear.most_at;
    span->min_shear_lb = e->shear.least, span->min_shear_at_in = e->shear.least_at;
    if (!g->beam->gives_drops) return;
    span->max_deflection_in = e->drop.most, span->max_deflection_at_in = e->drop.most_at;
    span->min_deflection_in = e->drop.least, span->min_deflection_at_in = e->drop.least_at;
    span->transient_deflection_in = larger(&e->transient), span->transient_deflection_at_in = larger_at(&e->transient);
}

/* Joins what a span comes to under one combination to the rest. */
static void join(gathering *g, size_t i, int c, const frame_beam_envelope *e, frame_beam_envelope *span) {
    frame_beam_solve_out *out = g->out;
    const frame_load_combination which = g->beam->cases[c].which;
    if (e->moment.most > g->moment.most) out->max_moment_combination = which;
    if (e->moment.least < g->moment.least) out->min_moment_combination = which;
    if (fmax(e->shear.most, -e->shear.least) > fmax(g->shear.most, -g->shear.least)) out->shear_combination = which;
    frame_beam_extreme_join(&g->moments[c], &e->moment);
    frame_beam_extreme_join(&g->shears[c], &e->shear);
    frame_beam_extreme_join(&g->moment, &e->moment);
    frame_beam_extreme_join(&g->shear, &e->shear);
    frame_beam_extreme_join(&g->drop, &e->drop);
    frame_beam_extreme_join(&g->transient, &e->transient);
    frame_beam_extreme_join(&g->at_nodes[i], &e->left);
    frame_beam_extreme_join(&g->at_nodes[i + 1], &e->right);
    frame_beam_extreme_join(&span->moment, &e->moment);
    frame_beam_extreme_join(&span->shear, &e->shear);
    frame_beam_extreme_join(&span->drop, &e->drop);
    frame_beam_extreme_join(&span->transient, &e->transient);
}

static void gather_spans(gathering *g) {
    for (size_t i = 0; i < g->beam->span_count; i++) {
        frame_beam_envelope cases[FRAME_LOAD_CASES];
        frame_beam_envelope_none(&g->spans[i]);
        frame_beam_span_envelopes(g->beam, i, g->factors, &g->scratch, cases);
        for (int c = 0; c < g->beam->case_count; c++) join(g, i, c, &cases[c], &g->spans[i]);
    }
}

/* Now that the largest is known, what is rounding beside it becomes zero. */
static void clean_all(gathering *g) {
    for (size_t i = 0; i < g->beam->span_count; i++) {
        frame_beam_envelope *e = &g->spans[i];
        clean(&e->moment, &g->moment);
        clean(&e->shear, &g->shear);
        clean(&e->drop, &g->drop);
        clean(&e->transient, &g->drop);
    }
    for (size_t i = 0; i < g->beam->node_count; i++) clean(&g->at_nodes[i], &g->moment);
    for (int c = 0; c < g->beam->case_count; c++) {
        clean(&g->moments[c], &g->moment);
        clean(&g->shears[c], &g->shear);
    }
    clean(&g->transient, &g->drop);
    clean(&g->moment, &g->moment);
    clean(&g->shear, &g->shear);
    clean(&g->drop, &g->drop);
}

static frame_status give_spans(gathering *g) {
    for (size_t i = 0; i < g->beam->span_count; i++) {
        frame_beam_solve_span *span = frame_answer_add(g->answer, FRAME_BEAM_SPANS);
        if (!span) return FRAME_NO_MEMORY;
        give_span(g, i, &g->spans[i], span);
    }
    return FRAME_OK;
}

/* The most and the least of a reaction (part 0) or couple (part 1) of a node under one combination. */
static void reach_of(const frame_beam *beam, const frame_beam_factors *factors, size_t node, int part, double *most,
                     double *least) {
    *most = *least = 0;
    for (int k = 0; k < beam->kind_count; k++) {
        const double f = factors->force[k];
        const size_t place = frame_beam_place_of(beam, node, k);
        const int varies = frame_beam_is_patterned(beam, k);
        const double *sums = varies ? (part ? beam->couples[place] : beam->swing[place]) : NULL;
        *most += f * (varies ? sums[0] : beam->reactions[place][part]);
        *least += f * (varies ? sums[1] : beam->reactions[place][part]);
    }
}

void frame_beam_reaction_reach(const frame_beam *beam, const frame_beam_factors *factors, size_t node, double *most,
                               double *least) {
    reach_of(beam, factors, node, 0, most, least);
}

static void gather_node(gathering *g, size_t node, frame_beam_extreme *force, frame_beam_extreme *couple) {
    const frame_beam_node *n = &g->beam->nodes[node];
    const int bears = n->held || n->spring > 0, turns = n->clamped || n->turning > 0;
    frame_beam_extreme_none(force);
    frame_beam_extreme_none(couple);
    for (int c = 0; c < g->beam->case_count; c++) {
        double most = 0, least = 0;
        if (bears) reach_of(g->beam, &g->factors[c], node, 0, &most, &least);
        frame_beam_extreme_take(force, most, n->at);
        frame_beam_extreme_take(force, least, n->at);
        if (bears) {
            frame_beam_extreme_take(&g->reactions[c], most, n->at);
            frame_beam_extreme_take(&g->reactions[c], least, n->at);
        }
        most = least = 0;
        if (turns) reach_of(g->beam, &g->factors[c], node, 1, &most, &least);
        frame_beam_extreme_take(couple, most, n->at);
        frame_beam_extreme_take(couple, least, n->at);
    }
}

static frame_status give_support(gathering *g, size_t node, int32_t number) {
    frame_beam_extreme force, couple;
    gather_node(g, node, &force, &couple);
    clean(&force, &g->shear);
    clean(&couple, &g->moment);
    frame_beam_solve_support *support = frame_answer_add(g->answer, FRAME_BEAM_SUPPORTS);
    if (!support || !frame_answer_add_number(g->answer, FRAME_BEAM_REACTIONS, larger(&force)) ||
        !frame_answer_add_number(g->answer, FRAME_BEAM_MAX_REACTIONS, force.most) ||
        !frame_answer_add_number(g->answer, FRAME_BEAM_MIN_REACTIONS, force.least))
        return FRAME_NO_MEMORY;
    support->at_in = g->beam->nodes[node].at;
    support->kind = g->beam->nodes[node].kind;
    support->reaction_lb = larger(&force);
    support->max_reaction_lb = force.most, support->min_reaction_lb = force.least;
    support->max_couple_lb_in = couple.most, support->min_couple_lb_in = couple.least;
    support->max_moment_lb_in = g->at_nodes[node].most, support->min_moment_lb_in = g->at_nodes[node].least;
    frame_beam_solve_out *out = g->out;
    if (support->kind == FRAME_SUPPORT_NONE) return FRAME_OK;
    if (out->max_reaction_lb == FRAME_NOT_GIVEN || force.most > out->max_reaction_lb)
        out->max_reaction_lb = force.most, out->max_reaction_support = number;
    if (out->min_reaction_lb == FRAME_NOT_GIVEN || force.least < out->min_reaction_lb)
        out->min_reaction_lb = force.least, out->min_reaction_support = number;
    return FRAME_OK;
}

static frame_status give_supports(gathering *g) {
    int32_t number = 0;
    for (size_t i = 0; i < g->beam->node_count; i++)
        if (g->beam->nodes[i].numbered && give_support(g, i, ++number)) return FRAME_NO_MEMORY;
    return FRAME_OK;
}

static frame_status give_combinations(gathering *g) {
    for (int c = 0; c < g->beam->case_count; c++) {
        frame_beam_solve_combination *row = frame_answer_add(g->answer, FRAME_BEAM_COMBINATIONS);
        if (!row) return FRAME_NO_MEMORY;
        row->combination = g->beam->cases[c].which;
        row->load_duration_factor = g->beam->cases[c].duration_factor;
        row->time_effect_factor = g->beam->cases[c].time_effect;
        row->load_lb = 0;
        for (int k = 0; k < g->beam->kind_count; k++) row->load_lb += g->factors[c].force[k] * g->beam->total[k];
        row->max_moment_lb_in = g->moments[c].most, row->max_moment_at_in = g->moments[c].most_at;
        row->min_moment_lb_in = g->moments[c].least, row->min_moment_at_in = g->moments[c].least_at;
        row->max_shear_lb = fabs(larger(&g->shears[c])), row->max_shear_at_in = larger_at(&g->shears[c]);
        row->max_reaction_lb = g->reactions[c].most, row->min_reaction_lb = g->reactions[c].least;
    }
    return FRAME_OK;
}

static void give_worst(const gathering *g) {
    frame_beam_solve_out *out = g->out;
    out->length_in = g->beam->nodes[g->beam->node_count - 1].at;
    out->full_combination = g->beam->cases[g->beam->full].which;
    out->max_moment_lb_in = g->moment.most, out->max_moment_at_in = g->moment.most_at;
    out->min_moment_lb_in = g->moment.least, out->min_moment_at_in = g->moment.least_at;
    out->max_shear_lb = fabs(larger(&g->shear)), out->max_shear_at_in = larger_at(&g->shear);
    if (!g->beam->gives_drops) return;
    out->max_deflection_in = g->drop.most, out->max_deflection_at_in = g->drop.most_at;
    out->min_deflection_in = g->drop.least, out->min_deflection_at_in = g->drop.least_at;
    out->transient_deflection_in = larger(&g->transient), out->transient_deflection_at_in = larger_at(&g->transient);
}

static frame_status begin(gathering *g) {
    frame_beam *beam = g->beam;
    frame_status status = frame_beam_scratch_make(beam, &g->scratch);
    if (status) return status;
    g->at_nodes = frame_arena_take(&beam->arena, beam->node_count * sizeof *g->at_nodes);
    g->spans = frame_arena_take(&beam->arena, beam->span_count * sizeof *g->spans);
    if (!g->at_nodes || !g->spans) return FRAME_NO_MEMORY;
    for (size_t i = 0; i < beam->node_count; i++) frame_beam_extreme_none(&g->at_nodes[i]);
    for (int c = 0; c < beam->case_count; c++) {
        g->factors[c] = frame_beam_factors_of(beam, &beam->cases[c]);
        frame_beam_extreme_none(&g->moments[c]);
        frame_beam_extreme_none(&g->shears[c]);
        frame_beam_extreme_none(&g->reactions[c]);
    }
    frame_beam_extreme_none(&g->moment);
    frame_beam_extreme_none(&g->shear);
    frame_beam_extreme_none(&g->drop);
    frame_beam_extreme_none(&g->transient);
    return FRAME_OK;
}

frame_status frame_beam_give_envelopes(frame_beam *beam, frame_answer *answer, frame_beam_solve_out *out) {
    gathering g = {.beam = beam, .answer = answer, .out = out};
    frame_status status = begin(&g);
    if (status) return status;
    gather_spans(&g);
    clean_all(&g);
    status = give_spans(&g);
    if (!status) status = give_supports(&g);
    if (!status) status = give_combinations(&g);
    if (!status) give_worst(&g);
    return status;
}
