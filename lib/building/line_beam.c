/* A beam of the building: point loads and spread loads of every kind, on two supports or more. The analysis is
 * beam_solve's; the design values are those of the strength room, combination by combination. */
#include <math.h>

#include "base/error.h"
#include "building/framing.h"
#include "strength/bending.h"

/* Where a load stands, to a millionth of an inch: places found twice over must not lie a rounding apart, with a span of
 * nothing between them. */
static double place_of(const frame_line_beam *beam, double s) {
    for (size_t i = 0; i < beam->support_count; i++)
        if (fabs(s - beam->supports[i].s) < 1e-6) return beam->supports[i].s;
    return fabs(s - beam->length) < 1e-6 ? beam->length : round(s * 1e6) / 1e6;
}

/* Loads for beam_solve: what stands on the beam, and its own weight. */
static frame_status make_loads(const frame_line_beam *beam, double self_plf, int only_kind, frame_beam_load **made,
                               size_t *count) {
    frame_beam_load *loads = frame_take(sizeof *loads * ((beam->point_count + 1) * FRAME_LOAD_KINDS));
    if (!loads) return FRAME_NO_MEMORY;
    *count = 0;
    for (size_t i = 0; i <= beam->point_count; i++)
        for (int kind = 1; kind < FRAME_LOAD_KINDS; kind++) {
            const int spread = i == beam->point_count;
            const double own = kind == FRAME_LOAD_DEAD ? self_plf : 0;
            const double value = spread ? beam->uniform_plf.k[kind] + own : beam->points[i].load.k[kind];
            if (value == 0 || (only_kind && kind != only_kind)) continue;
            frame_beam_load *load = &loads[(*count)++];
            frame_beam_load_init(load);
            load->kind = only_kind ? FRAME_LOAD_DEAD : kind;
            if (spread)
                load->plf = value;
            else
                load->force_lb = value, load->at_in = place_of(beam, beam->points[i].s);
        }
    *made = loads;
    return FRAME_OK;
}

/* An overhang of less than a millionth of an inch is a rounding. */
static double overhang(double length) {
    return length > 1e-6 ? length : 0;
}

static frame_status analyse(const frame_line_beam *beam, double self_plf, double E, double I, double creep,
                            int only_kind, frame_beam_solve **answer) {
    frame_beam_solve_in in;
    frame_beam_load *loads = NULL;
    double *spans = frame_take(sizeof *spans * (beam->support_count + 1));
    frame_status status = spans ? make_loads(beam, self_plf, only_kind, &loads, &in.load_count) : FRAME_NO_MEMORY;
    if (!status) {
        const size_t load_count = in.load_count;
        frame_beam_solve_in_init(&in);
        for (size_t i = 0; i + 1 < beam->support_count; i++) spans[i] = beam->supports[i + 1].s - beam->supports[i].s;
        in.spans_in = spans, in.span_count = beam->support_count - 1;
        in.left_overhang_in = overhang(beam->supports[0].s);
        in.right_overhang_in = overhang(beam->length - beam->supports[beam->support_count - 1].s);
        in.loads = loads, in.load_count = load_count;
        if (E > 0) in.e_psi = E, in.inertia_in4 = I, in.creep_factor = creep;
        status = frame_beam_solve_solve(&in, answer, NULL);
    }
    frame_give(loads);
    frame_give(spans);
    return status;
}

/* Two supports: the lever, kind by kind. */
static void lever(const frame_line_beam *beam, double self_plf, frame_by_kind *reactions) {
    const double a = beam->supports[0].s, span = beam->supports[1].s - a;
    reactions[0] = reactions[1] = (frame_by_kind){{0}};
    for (size_t i = 0; i < beam->point_count; i++) {
        const double share = (beam->points[i].s - a) / span;
        frame_by_kind_add(&reactions[0], &beam->points[i].load, 1 - share);
        frame_by_kind_add(&reactions[1], &beam->points[i].load, share);
    }
    frame_by_kind spread = beam->uniform_plf;
    spread.k[FRAME_LOAD_DEAD] += self_plf;
    const double share = (beam->length / 2 - a) / span;
    frame_by_kind_add(&reactions[0], &spread, (1 - share) * beam->length / 12);
    frame_by_kind_add(&reactions[1], &spread, share * beam->length / 12);
}

frame_status frame_line_reactions(const frame_line_beam *beam, double self_plf, frame_by_kind *reactions) {
    if (beam->support_count == 2) {
        lever(beam, self_plf, reactions);
        return FRAME_OK;
    }
    for (size_t i = 0; i < beam->support_count; i++) reactions[i] = (frame_by_kind){{0}};
    for (int kind = 1; kind < FRAME_LOAD_KINDS; kind++) {
        frame_beam_solve *answer;
        size_t count;
        int there = beam->uniform_plf.k[kind] != 0 || (kind == FRAME_LOAD_DEAD && self_plf > 0);
        for (size_t i = 0; i < beam->point_count && !there; i++) there = beam->points[i].load.k[kind] != 0;
        if (!there) continue;
        const frame_status status = analyse(beam, self_plf, 0, 0, 1, kind, &answer);
        if (status) return status;
        const double *found = frame_beam_solve_reactions_lb(answer, &count);
        for (size_t i = 0; i < count && i < beam->support_count; i++) reactions[i].k[kind] = found[i];
        frame_beam_solve_free(answer);
    }
    return FRAME_OK;
}

/* An edge of the beam that may be in compression. */
typedef struct edge {
    frame_bending_ask ask;
    double F_bE;
} edge;

typedef struct trial {
    const frame_line_beam *beam;
    frame_member member;
    frame_bending bending;
    edge edges[2]; /* upper and lower */
    double E_min_prime, repetitive;
    frame_beam_solve *answer;
    frame_beam_solve_out worst;
    frame_working *w;
} trial;

/* The edge in compression: the upper one is held as it is described; the lower one, over supports between the ends, in
 * overhangs and under uplift, only where the beam stands on something (NDS 3.3.3: unbraced unless it is held). */
static frame_status find_edges(trial *t) {
    const frame_line_beam *beam = t->beam;
    double apart = fmax(beam->supports[0].s, beam->length - beam->supports[beam->support_count - 1].s);
    int hogs = 0;
    for (size_t i = 0; i + 1 < beam->support_count; i++)
        apart = fmax(apart, beam->supports[i + 1].s - beam->supports[i].s);
    for (size_t i = 0; i < frame_beam_solve_combination_count(t->answer); i++) {
        frame_beam_solve_combination c;
        frame_beam_solve_combination_at(t->answer, i, &c);
        hogs |= c.min_moment_lb_in < -1e-6 * fabs(c.max_moment_lb_in) - 1e-9;
    }
    t->edges[0] = (edge){.ask = {.unbraced = beam->unbraced_in, .slope_cosine = 1}};
    t->edges[1] = (edge){.ask = {.unbraced = hogs ? apart : 0, .slope_cosine = 1}};
    t->E_min_prime = frame_bending_stiffness(&t->member, beam->unbraced_in > 0 || hogs, &t->bending, NULL);
    frame_status status = FRAME_OK;
    for (int e = 0; e < 2 && !status; e++)
        status =
            frame_bending_buckling(&t->member, &t->edges[e].ask, t->E_min_prime, &t->edges[e].F_bE, &t->bending, NULL);
    return status;
}

/* Each combination against the design value for its own duration; sagging by the upper edge, hogging by the lower. */
static frame_beam_solve_combination bending_governs(trial *t, int *edge_of) {
    frame_beam_solve_combination governs = {0};
    double most = -1;
    for (size_t i = 0; i < frame_beam_solve_combination_count(t->answer); i++) {
        frame_beam_solve_combination c;
        frame_beam_solve_combination_at(t->answer, i, &c);
        const double moments[2] = {c.max_moment_lb_in, -c.min_moment_lb_in};
        for (int e = 0; e < 2; e++) {
            const double ratio = moments[e] / t->bending.section_modulus /
                                 frame_bending_allowed(&t->member, t->repetitive, c.load_duration_factor,
                                                       t->edges[e].F_bE, &t->bending, NULL);
            if (ratio > most) most = ratio, governs = c, *edge_of = e;
        }
    }
    return governs;
}

static frame_status check_bending(trial *t, frame_line_result *r) {
    frame_working *w = t->w;
    int e = 0;
    double F_bE;
    frame_status status = find_edges(t);
    if (status) return status;
    const frame_beam_solve_combination governs = bending_governs(t, &e);
    frame_bending_stiffness(&t->member, t->edges[e].ask.unbraced > 0, &t->bending, w);
    FRAME_HEADING(w, "Bending");
    if (e)
        FRAME_CASE(w, "the lower edge is in compression",
                   "over a support, in an overhang or under uplift: unbraced from support to support",
                   "NDS 2018 3.3.3");
    status = frame_bending_buckling(&t->member, &t->edges[e].ask, t->E_min_prime, &F_bE, &t->bending, w);
    if (status) return status;
    FRAME_TABLE(w, M, fmax(e ? -governs.min_moment_lb_in : governs.max_moment_lb_in, 0), "lb-in",
                "bending moment that governs, of the combination that governs",
                FRAME_COMBINATION_NAME(governs.combination));
    FRAME_TABLE(w, S, t->bending.section_modulus, "in3", "section modulus", "above");
    FRAME_STEP(w, f_b, M / S, "psi", "bending stress", "NDS 2018 3.3.2");
    const double F_b_prime =
        frame_bending_allowed(&t->member, t->repetitive, governs.load_duration_factor, F_bE, &t->bending, w);
    FRAME_STEP(w, bending_ratio, f_b / F_b_prime, "", "share of the bending strength used", "NDS 2018 3.3.1");
    r->bending = bending_ratio;
    r->moment = M;
    return FRAME_OK;
}

/* Shear at the support, nothing left out. */
static void check_shear(trial *t, frame_line_result *r) {
    frame_working *w = t->w;
    double most = -1;
    frame_beam_solve_combination governs = {0};
    for (size_t i = 0; i < frame_beam_solve_combination_count(t->answer); i++) {
        frame_beam_solve_combination c;
        frame_beam_solve_combination_at(t->answer, i, &c);
        const double ratio = fabs(c.max_shear_lb) / c.load_duration_factor;
        if (ratio > most) most = ratio, governs = c;
    }
    FRAME_HEADING(w, "Shear");
    FRAME_TABLE(w, V, fabs(governs.max_shear_lb), "lb", "largest shear of the combination that governs",
                FRAME_COMBINATION_NAME(governs.combination));
    FRAME_TABLE(w, A, t->bending.area, "in2", "area", "above");
    FRAME_STEP(w, f_v, 3 * V / (2 * A), "psi", "shear stress", "NDS 2018 3.4.2");
    const double F_v_prime = frame_bending_shear_allowed(&t->member, governs.load_duration_factor, w);
    FRAME_STEP(w, shear_ratio, f_v / F_v_prime, "", "share of the shear strength used", "NDS 2018 3.4.1");
    r->shear = shear_ratio;
}

static void check_bearing(trial *t, frame_line_result *r) {
    frame_working *w = t->w;
    FRAME_HEADING(w, "Bearing");
    FRAME_TABLE(w, R, fmax(t->worst.max_reaction_lb, -t->worst.min_reaction_lb), "lb", "largest reaction",
                "all combinations");
    FRAME_GIVEN(w, l_b, t->beam->bearing_in, "in", "length of bearing");
    FRAME_TABLE(w, b_b, t->member.plies * t->member.breadth, "in", "breadth that bears", "");
    const double F_c_perp_prime = frame_bending_crushing(&t->member, w);
    FRAME_STEP(w, bearing_ratio, R / (b_b * l_b) / F_c_perp_prime, "", "share of the bearing strength used",
               "NDS 2018 3.10.2");
    r->bearing = bearing_ratio;
    r->reaction = R;
}

/* Span over deflection, on each stretch by itself; a cantilever counts with twice its length. */
static void check_deflection(trial *t, frame_line_result *r) {
    frame_working *w = t->w;
    double live = 0, total = 0;
    for (size_t i = 0; i < frame_beam_solve_span_count(t->answer); i++) {
        frame_beam_solve_span span;
        frame_beam_solve_span_at(t->answer, i, &span);
        const int overhang = span.number == 0 || (size_t)span.number >= t->beam->support_count;
        const double length = overhang ? 2 * span.length_in : span.length_in;
        if (!(length > 0)) continue;
        live = fmax(live, fabs(span.transient_deflection_in) / (length / t->beam->live_limit));
        total = fmax(total, fmax(span.max_deflection_in, -span.min_deflection_in) / (length / t->beam->total_limit));
    }
    FRAME_HEADING(w, "Deflection");
    FRAME_TABLE(w, live_ratio, live, "", "largest deflection without the dead load, over its limit", "beam_solve");
    FRAME_TABLE(w, total_ratio, total, "", "largest deflection in all, with creep, over its limit",
                "NDS 2018 3.5.2 (from memory)");
    FRAME_STEP(w, deflection_ratio, fmax(live_ratio, total_ratio), "", "the larger", "");
    r->deflection = deflection_ratio;
}

static void sum_up(frame_line_result *r, frame_working *w) {
    r->ratio = r->bending, r->governs = FRAME_GOVERNS_BENDING;
    if (r->shear > r->ratio) r->ratio = r->shear, r->governs = FRAME_GOVERNS_SHEAR;
    if (r->bearing > r->ratio) r->ratio = r->bearing, r->governs = FRAME_GOVERNS_BEARING;
    if (r->deflection > r->ratio) r->ratio = r->deflection, r->governs = FRAME_GOVERNS_DEFLECTION;
    FRAME_HEADING(w, "Result");
    FRAME_TABLE(w, ratio, r->ratio, "", "the largest of the ratios", frame_word_text("governing", r->governs));
    (void)ratio;
}

static frame_status prepare(trial *t, frame_size size, int32_t plies, frame_line_result *r) {
    const frame_line_beam *beam = t->beam;
    frame_status status =
        frame_member_of_lumber(size, beam->species, beam->grade, plies, FRAME_TURNED_ON_EDGE,
                               beam->wet ? FRAME_SERVICE_WET : FRAME_SERVICE_DRY,
                               beam->wet ? FRAME_INCISED_BY_SPECIES : 0, FRAME_TEMPERATURE_100F, &t->member);
    if (!status)
        status = frame_member_load_sharing(&t->member, FRAME_NOT_GIVEN_INT,
                                           beam->joist ? beam->spacing_in : FRAME_NOT_GIVEN, &t->repetitive);
    if (status) return status;
    frame_bending_section(&t->member, &t->bending, t->w);
    frame_bending_stiffness(&t->member, beam->unbraced_in > 0, &t->bending, NULL);
    r->self_plf = beam->joist ? 0 : frame_wood_weight(12 * t->bending.area, t->member.lumber.specific_gravity);
    r->depth = t->member.depth;
    r->known = t->member.known;
    r->size = size;
    r->plies = plies;
    return status;
}

frame_status frame_line_try(const frame_line_beam *beam, frame_size size, int32_t plies, frame_line_result *result,
                            frame_working *w) {
    trial t = {.beam = beam, .w = w};
    frame_status status = prepare(&t, size, plies, result);
    if (!status)
        status = analyse(beam, result->self_plf, t.bending.e_adjusted, t.bending.inertia, beam->wet ? 2.0 : 1.5, 0,
                         &t.answer);
    if (status) return status;
    frame_beam_solve_result(t.answer, &t.worst);
    if (t.worst.known > result->known) result->known = t.worst.known;
    status = check_bending(&t, result);
    if (status) {
        frame_beam_solve_free(t.answer);
        return status;
    }
    check_shear(&t, result);
    check_bearing(&t, result);
    check_deflection(&t, result);
    sum_up(result, w);
    frame_beam_solve_free(t.answer);
    return FRAME_OK;
}
