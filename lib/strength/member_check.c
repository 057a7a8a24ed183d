/* Any beam under any loads against the NDS: reading, analysis, and what is said of the whole. */
#include <stdio.h>
#include <string.h>

#include "base/error.h"
#include "base/number.h"
#include "strength/beam_loads.h"
#include "strength/beam_results.h"
#include "strength/member_beam.h"
#include "strength_facts.h"
#include "working/calculation.h"

#include "working/plain_math.h"

/* Inches per second squared, standard gravity. */
#define GRAVITY 386.09

double frame_checked_length(const frame_member_check_in *in) {
    double length = in->left_overhang_in;
    for (size_t i = 0; i < in->span_count; i++) length += in->spans_in[i];
    return length + in->right_overhang_in;
}

double frame_checked_bearing_at(const frame_member_check_in *in, size_t support) {
    if (!in->bearing_count) return 0;
    return in->bearings_in[in->bearing_count == 1 ? 0 : support];
}

frame_status frame_checked_place(const frame_checked *c, const char *list, size_t i, double at) {
    char path[64], given[32], most[32], valid[48];
    const double length = frame_checked_length(c->in);
    if (at <= length * (1 + 1e-12)) return FRAME_OK;
    snprintf(path, sizeof path, list, i);
    frame_number_print(at, 9, given, sizeof given);
    frame_number_print(length, 9, most, sizeof most);
    snprintf(valid, sizeof valid, "0..%s in", most);
    return frame_fail(FRAME_OUT_OF_RANGE, path, given, valid, "%s: %s; valid is %s", path, given, valid);
}

static frame_status check_bearings(const frame_member_check_in *in) {
    double sum = 0;
    char count[24], valid[64];
    if (!in->bearing_count) return FRAME_OK;
    if (in->bearing_count != 1 && in->bearing_count != in->span_count + 1) {
        snprintf(count, sizeof count, "%zu", in->bearing_count);
        snprintf(valid, sizeof valid, "1 for all, or %zu, one for each support", in->span_count + 1);
        return frame_fail(FRAME_CONFLICT, "bearings_in", count, valid, "bearings_in: %s items; valid is %s", count,
                          valid);
    }
    for (size_t i = 0; i <= in->span_count; i++) sum += frame_checked_bearing_at(in, i);
    if (sum <= frame_checked_length(in)) return FRAME_OK;
    return frame_fail_number(FRAME_IMPOSSIBLE, "bearings_in", sum,
                             "bearings that are shorter, all together, than the beam");
}

static frame_status check_edges(const frame_checked *c) {
    const frame_member_check_in *in = c->in;
    if (in->upper_edge == FRAME_EDGE_HELD && in->upper_brace_count)
        return frame_contradicts("upper_braces_in", "upper_edge held");
    if (in->lower_edge == FRAME_EDGE_HELD && in->lower_brace_count)
        return frame_contradicts("lower_braces_in", "lower_edge held");
    frame_status status = FRAME_OK;
    for (size_t i = 0; i < in->upper_brace_count && !status; i++)
        status = frame_checked_place(c, "upper_braces_in[%zu]", i, in->upper_braces_in[i]);
    for (size_t i = 0; i < in->lower_brace_count && !status; i++)
        status = frame_checked_place(c, "lower_braces_in[%zu]", i, in->lower_braces_in[i]);
    for (size_t i = 0; i < in->cut_count && !status; i++) {
        frame_member_cut cut;
        frame_member_cut_item(in->cuts, i, &cut);
        status = frame_checked_place(c, "cuts[%zu].at_in", i, cut.at_in);
    }
    return status;
}

/* A place where the beam is to be cut for looking at it: a load of nothing. */
static int mark(frame_array *loads, double at, double length) {
    frame_beam_load load;
    frame_beam_load_init(&load);
    if (!(at > 0 && at < length)) return 1;
    load.kind = FRAME_LOAD_DEAD;
    load.at_in = at;
    load.force_lb = 0;
    return frame_array_push(loads, &load) != NULL;
}

static int mark_supports(const frame_member_check_in *in, double depth, double length, frame_array *loads) {
    double at = in->left_overhang_in;
    int kept = 1;
    for (size_t i = 0; i <= in->span_count && in->shear_at_depth; i++) {
        const double reach = depth + frame_checked_bearing_at(in, i) / 2;
        kept &= mark(loads, at - reach, length) && mark(loads, at + reach, length);
        if (i < in->span_count) at += in->spans_in[i];
    }
    return kept;
}

/* The caller's loads, and the places that are looked at. */
static frame_status gather_loads(const frame_checked *c, frame_array *loads) {
    const frame_member_check_in *in = c->in;
    const double length = frame_checked_length(in);
    int kept = mark_supports(in, c->m.depth, length, loads);
    for (size_t i = 0; i < in->load_count && kept; i++) {
        frame_beam_load load;
        frame_beam_load_item(in->loads, i, &load);
        kept = frame_array_push(loads, &load) != NULL;
    }
    for (size_t i = 0; i < in->upper_brace_count && kept; i++) kept = mark(loads, in->upper_braces_in[i], length);
    for (size_t i = 0; i < in->lower_brace_count && kept; i++) kept = mark(loads, in->lower_braces_in[i], length);
    for (size_t i = 0; i < in->cut_count && kept; i++) {
        frame_member_cut cut;
        frame_member_cut_item(in->cuts, i, &cut);
        const double half = frame_given(cut.hole_in) ? cut.hole_in / 2 : cut.length_in / 2;
        kept = mark(loads, cut.at_in - half, length) && mark(loads, cut.at_in + half, length);
    }
    return kept ? FRAME_OK : FRAME_NO_MEMORY;
}

static frame_beam_solve_in beam_of(const frame_checked *c, const frame_array *loads) {
    const frame_member_check_in *in = c->in;
    frame_beam_solve_in b;
    frame_beam_solve_in_init(&b);
    b.spans_in = in->spans_in, b.span_count = in->span_count;
    b.supports = in->supports, b.support_count = in->support_count;
    b.loads = loads->items, b.load_count = loads->count;
    b.pattern = in->pattern;
    b.live_duration = in->live_duration;
    b.left_overhang_in = in->left_overhang_in, b.right_overhang_in = in->right_overhang_in;
    b.dead_plf = c->dead_plf, b.live_plf = in->live_plf, b.roof_live_plf = in->roof_live_plf;
    b.snow_plf = in->snow_plf, b.wind_plf = in->wind_plf;
    b.e_psi = c->found.e_adjusted, b.inertia_in4 = c->found.inertia;
    b.creep_factor = c->creep;
    b.method = FRAME_METHOD_ASD; /* deflections are under service loads; strength comes after */
    b.load_edition = in->load_edition;
    return b;
}

static void release(void *analysis) {
    frame_beam_solve_free(analysis);
}

/* An error at a load of ours is one of the caller's: those come first in his list but after our marks. */
static frame_status solve_beam(frame_checked *c, const frame_beam_solve_in *b) {
    FRAME_HEADING(c->record, "Analysis under service loads");
    if (c->record) FRAME_ENTER(c->record);
    const frame_status status = frame_beam_solve_solve(b, &c->analysis, c->record);
    if (c->record) FRAME_LEAVE(c->record);
    if (status) return status;
    return frame_answer_own(c->answer, c->analysis, release) ? FRAME_OK : FRAME_NO_MEMORY;
}

frame_status frame_checked_analyse(frame_checked *c) {
    frame_array loads = {.item_size = sizeof(frame_beam_load)};
    frame_status status = gather_loads(c, &loads);
    const frame_beam_solve_in b = beam_of(c, &loads);
    if (!status) status = solve_beam(c, &b);
    frame_array_give(&loads);
    if (status) return status;
    c->beam = frame_beam_of(c->analysis);
    c->beam->rules.method = c->in->method;
    frame_beam_find_cases(c->beam);
    for (int k = 0; k < c->beam->case_count; k++) c->factors[k] = frame_beam_factors_of(c->beam, &c->beam->cases[k]);
    return frame_beam_scratch_make(c->beam, &c->scratch);
}

static double size_of(double a, double b) {
    return fabs(a) > fabs(b) ? a : b;
}

/* The spans of the answer: their deflections from the analysis, their moments under the combinations of the method. */
static frame_status give_spans(frame_checked *c) {
    for (size_t i = 0; i < c->beam->span_count; i++) {
        frame_member_check_span *span = frame_answer_add(c->answer, FRAME_CHECKED_SPANS);
        frame_beam_solve_span found;
        frame_beam_envelope e[FRAME_LOAD_CASES];
        if (!span || frame_beam_solve_span_at(c->analysis, i, &found)) return FRAME_NO_MEMORY;
        span->number = found.number, span->from_in = found.from_in, span->length_in = found.length_in;
        span->deflection_live_in = found.transient_deflection_in;
        span->deflection_total_in = size_of(found.max_deflection_in, found.min_deflection_in);
        span->max_moment_lb_in = span->min_moment_lb_in = span->max_shear_lb = 0;
        frame_beam_span_envelopes(c->beam, i, c->factors, &c->scratch, e);
        for (int k = 0; k < c->beam->case_count; k++) {
            span->max_moment_lb_in = fmax(span->max_moment_lb_in, e[k].moment.most);
            span->min_moment_lb_in = fmin(span->min_moment_lb_in, e[k].moment.least);
            span->max_shear_lb = fmax(span->max_shear_lb, fmax(e[k].shear.most, -e[k].shear.least));
        }
        c->longest = fmax(c->longest, fmax(span->max_moment_lb_in, -span->min_moment_lb_in));
    }
    return FRAME_OK;
}

/* A span hangs at one side: twice its length counts. */
static int hangs(const frame_checked *c, size_t i) {
    const frame_beam_node *left = &c->beam->nodes[i], *right = &c->beam->nodes[i + 1];
    return !(left->numbered && left->kind != FRAME_SUPPORT_NONE) ||
           !(right->numbered && right->kind != FRAME_SUPPORT_NONE);
}

static void record_deflection(const frame_checked *c, const frame_member_check_span *s, int doubled) {
    frame_working *record = c->record;
    FRAME_GIVEN(record, l, s->length_in, "in", "length of the span where deflection governs");
    FRAME_TABLE(record, k_l, doubled ? 2 : 1, "", "2 for an overhang",
                "common practice, and IBC table 1604.3 (from memory)");
    FRAME_TABLE(record, Delta_t, fabs(s->deflection_live_in), "in", "deflection without the dead load",
                "analysis of the beam");
    FRAME_GIVEN(record, limit_t, c->in->deflection_limit, "", "span over allowed deflection without the dead load");
    FRAME_STEP(record, live_ratio, Delta_t * limit_t / (k_l * l), "", "share of the allowed deflection used", "");
    FRAME_TABLE(record, Delta_T, fabs(s->deflection_total_in), "in", "deflection in all, with creep",
                "analysis of the beam");
    FRAME_GIVEN(record, limit_T, c->in->total_deflection_limit, "", "span over allowed deflection in all");
    FRAME_STEP(record, total_ratio, Delta_T * limit_T / (k_l * l), "", "share of the allowed deflection in all used",
               "");
    (void)live_ratio, (void)total_ratio;
}

frame_status frame_checked_deflection(frame_checked *c) {
    frame_member_check_out *out = c->out;
    size_t worst = 0;
    frame_member_check_span *all = c->answer->lists[FRAME_CHECKED_SPANS].items;
    out->deflection_ratio = out->deflection_live_ratio = out->deflection_total_ratio = -1;
    for (size_t i = 0; i < c->beam->span_count; i++) {
        frame_member_check_span *s = &all[i];
        const double length = s->length_in * (hangs(c, i) ? 2 : 1);
        s->deflection_live_limit_in = length / c->in->deflection_limit;
        s->deflection_total_limit_in = length / c->in->total_deflection_limit;
        s->deflection_live_ratio = fabs(s->deflection_live_in) / s->deflection_live_limit_in;
        s->deflection_total_ratio = fabs(s->deflection_total_in) / s->deflection_total_limit_in;
        out->deflection_live_ratio = fmax(out->deflection_live_ratio, s->deflection_live_ratio);
        out->deflection_total_ratio = fmax(out->deflection_total_ratio, s->deflection_total_ratio);
        const double ratio = fmax(s->deflection_live_ratio, s->deflection_total_ratio);
        if (ratio > out->deflection_ratio) out->deflection_ratio = ratio, worst = i;
    }
    FRAME_HEADING(c->record, "Deflection");
    record_deflection(c, &all[worst], hangs(c, worst));
    return FRAME_OK;
}

static void find_frequency(frame_checked *c) {
    frame_working *record = c->record;
    const frame_beam *beam = c->beam;
    const double E_prime = c->found.e_adjusted, I = c->found.inertia;
    if (beam->span_count != 1 || beam->nodes[0].kind != FRAME_SUPPORT_PINNED ||
        beam->nodes[1].kind != FRAME_SUPPORT_PINNED || c->in->load_count || !(c->dead_plf > 0))
        return;
    FRAME_HEADING(record, "First natural frequency, without a verdict");
    FRAME_GIVEN(record, w_D, c->dead_plf, "plf", "dead load that swings with the beam");
    FRAME_GIVEN(record, L, beam->spans[0].length, "in", "span");
    FRAME_TABLE(record, g, GRAVITY, "in/s2", "gravity", "standard gravity");
    FRAME_STEP(record, f_1, 3.14159265358979323846 / 2 * sqrt(E_prime * I * g / (w_D / 12 * pow(L, 4))), "Hz",
               "first natural frequency", "elastic theory of a simple beam, first mode");
    c->out->frequency_hz = f_1;
}

static void lead(frame_member_check_out *out, double ratio, frame_governing which) {
    if (ratio == FRAME_NOT_GIVEN || ratio <= out->ratio) return;
    out->ratio = ratio;
    out->governs = which;
}

static void sum_up(frame_checked *c) {
    frame_member_check_out *out = c->out;
    frame_working *record = c->record;
    out->ratio = out->bending_ratio;
    out->governs = FRAME_GOVERNS_BENDING;
    lead(out, out->shear_ratio, FRAME_GOVERNS_SHEAR);
    lead(out, out->bearing_ratio, FRAME_GOVERNS_BEARING);
    lead(out, out->deflection_ratio, FRAME_GOVERNS_DEFLECTION);
    lead(out, out->cut_ratio, FRAME_GOVERNS_CUT);
    lead(out, out->radial_ratio, FRAME_GOVERNS_RADIAL);
    out->passes = frame_holds(out->ratio);
    frame_record_result(out->ratio, out->governs, record);
}

static int has_kind(const frame_checked *c, int kind) {
    return c->beam->place_of[kind] >= 0;
}

static uint64_t cautions_of(const frame_checked *c) {
    const frame_member_check_in *in = c->in;
    const frame_member *m = &c->m;
    uint64_t bits = FRAME_BIT(FRAME_MEMBER_CAUTION_AS_ASSUMED) | FRAME_BIT(FRAME_MEMBER_CAUTION_LOADS) |
                    FRAME_BIT(FRAME_MEMBER_CAUTION_ROLLING) |
                    FRAME_BIT(m->user ? FRAME_MEMBER_CAUTION_USER_VALUES : FRAME_MEMBER_CAUTION_STAMP);
    if (c->out->known == FRAME_KNOWN_MEMORY) bits |= FRAME_BIT(FRAME_MEMBER_CAUTION_MEMORY);
    if (m->lumber.doubtful) bits |= FRAME_BIT(FRAME_MEMBER_CAUTION_DOUBTFUL);
    if (m->lumber.superseded) bits |= FRAME_BIT(FRAME_MEMBER_CAUTION_SUPERSEDED);
    if (m->plies > 1) bits |= FRAME_BIT(m->flat ? FRAME_MEMBER_CAUTION_FLAT : FRAME_MEMBER_CAUTION_PLIES);
    if (c->out->min_reaction_lb < -1e-9 * fabs(c->out->max_reaction_lb)) bits |= FRAME_BIT(FRAME_MEMBER_CAUTION_UPLIFT);
    if (in->cut_count) bits |= FRAME_BIT(FRAME_MEMBER_CAUTION_CUTS);
    if (frame_given(in->curve_radius_in)) bits |= FRAME_BIT(FRAME_MEMBER_CAUTION_CURVED);
    if (in->upper_edge == FRAME_EDGE_HELD || in->lower_edge == FRAME_EDGE_HELD)
        bits |= FRAME_BIT(FRAME_MEMBER_CAUTION_EDGE_HELD);
    if (c->product == FRAME_PRODUCT_GLULAM && c->fb_negative < m->lumber.fb_psi)
        bits |= FRAME_BIT(FRAME_MEMBER_CAUTION_TURNED_OVER);
    if (has_kind(c, FRAME_LOAD_SNOW) && in->load_edition == FRAME_LOADS_ASCE_7_16)
        bits |= FRAME_BIT(FRAME_MEMBER_CAUTION_SNOW_BASIS);
    return bits;
}

static uint64_t unchecked_of(const frame_checked *c) {
    const frame_member_check_in *in = c->in;
    const int live = has_kind(c, FRAME_LOAD_LIVE) || has_kind(c, FRAME_LOAD_ROOF_LIVE);
    uint64_t bits = FRAME_BIT(FRAME_MEMBER_UNCHECKED_SUPPORTS) | FRAME_BIT(FRAME_MEMBER_UNCHECKED_CUTS) |
                    FRAME_BIT(FRAME_MEMBER_UNCHECKED_EARTHQUAKE) | FRAME_BIT(FRAME_MEMBER_UNCHECKED_AXIAL) |
                    FRAME_BIT(FRAME_MEMBER_UNCHECKED_SHEAR_DEFLECTION) | FRAME_BIT(FRAME_MEMBER_UNCHECKED_SIDE_HUNG);
    if (!in->bearing_count) bits |= FRAME_BIT(FRAME_MEMBER_UNCHECKED_BEARING);
    if (live) bits |= FRAME_BIT(FRAME_MEMBER_UNCHECKED_VIBRATION) | FRAME_BIT(FRAME_MEMBER_UNCHECKED_MOVING);
    if (live && !in->pattern) bits |= FRAME_BIT(FRAME_MEMBER_UNCHECKED_PATTERN);
    if (has_kind(c, FRAME_LOAD_SNOW)) bits |= FRAME_BIT(FRAME_MEMBER_UNCHECKED_SNOW_FORMS);
    if (!has_kind(c, FRAME_LOAD_WIND)) bits |= FRAME_BIT(FRAME_MEMBER_UNCHECKED_WIND);
    if (!in->self_weight) bits |= FRAME_BIT(FRAME_MEMBER_UNCHECKED_SELF_WEIGHT);
    return bits;
}

static void remark(frame_checked *c) {
    frame_member_check_out *out = c->out;
    const frame_known cases = frame_load_cases_known_by(&c->beam->rules);
    out->known = c->m.known > cases ? c->m.known : cases;
    for (size_t i = 0; i < c->stretch_count; i++) {
        const frame_stretch *s = &c->stretches[i];
        const frame_known row = frame_effective_lengths_table[s->row].known;
        if (s->used && s->buckling > 0 && row > out->known) out->known = row;
    }
    out->cautions = cautions_of(c);
    out->not_checked = unchecked_of(c);
    if (!frame_given(c->in->curve_radius_in)) out->assumed &= ~FRAME_BIT(FRAME_ASSUMED_MEMBER_CHECK_IN_BOWED_UP);
    out->e_adjusted_psi = c->found.e_adjusted;
    out->section_modulus_in3 = c->found.section_modulus;
    out->inertia_in4 = c->found.inertia;
    out->size_factor = c->m.size_factor;
    out->repetitive_member_factor = c->repetitive;
    out->dead_plf = c->dead_plf;
}

static void find_dead(frame_checked *c) {
    frame_working *record = c->record;
    FRAME_HEADING(record, "Dead load");
    if (c->in->self_weight) {
        FRAME_GIVEN(record, w_Dg, c->in->dead_plf, "plf", "dead load on the whole beam");
        c->dead_plf = frame_beam_own_weight(c->gravity, c->in->service, c->found.area, w_Dg, record);
        return;
    }
    FRAME_GIVEN(record, w_D, c->in->dead_plf, "plf", "dead load on the whole beam");
    c->dead_plf = w_D;
}

static frame_status check_all(frame_checked *c) {
    frame_status status = give_spans(c);
    if (!status) status = frame_checked_stretches(c);
    if (!status) status = frame_checked_bending(c);
    if (!status) status = frame_checked_shear(c);
    if (!status) status = frame_checked_bearing(c);
    if (!status) status = frame_checked_radial(c);
    if (!status) status = frame_checked_deflection(c);
    if (!status) status = frame_checked_cuts(c);
    if (status) return status;
    find_frequency(c);
    sum_up(c);
    remark(c);
    return FRAME_OK;
}

static frame_status solve(const frame_member_check_in *in, frame_answer *answer, frame_member_check_out *out,
                          frame_working *record) {
    frame_checked *c = frame_arena_take(&answer->arena, sizeof *c);
    if (!c) return FRAME_NO_MEMORY;
    memset(c, 0, sizeof *c);
    c->in = in, c->answer = answer, c->out = out, c->record = record;
    c->lrfd = in->method == FRAME_METHOD_LRFD;
    c->creep = frame_creep_factor(in->creep_factor, in->service);
    frame_status status = check_bearings(in);
    if (!status) status = check_edges(c);
    if (!status) status = frame_checked_material(c);
    if (status) return status;
    frame_checked_section(c);
    find_dead(c);
    status = frame_checked_analyse(c);
    return status ? status : check_all(c);
}
FRAME_IMPLEMENT_ANSWER(member_check, solve);
