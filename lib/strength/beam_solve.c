/* Any beam under any loads: the calculation and its values at a point. */
#include <math.h>
#include <stdio.h>

#include "base/error.h"
#include "base/number.h"
#include "strength/beam_results.h"
#include "strength_facts.h"
#include "working/calculation.h"

/* Which combinations apply, and which of them has the largest load. */
void frame_beam_find_cases(frame_beam *beam) {
    unsigned kinds = 0;
    double most = -1;
    for (int k = 0; k < beam->kind_count; k++) {
        const int kind = beam->kind_of[k];
        kinds |= 1u << (kind == FRAME_BEAM_OFFSETS ? FRAME_LOAD_DEAD : kind);
    }
    beam->case_count = frame_load_cases_by(kinds, &beam->rules, beam->cases);
    for (int c = 0; c < beam->case_count; c++) {
        double load = 0;
        for (int k = 0; k < beam->kind_count; k++) load += beam->cases[c].factor[beam->kind_of[k]] * beam->total[k];
        if (fabs(load) > most) most = fabs(load), beam->full = c;
    }
}

static int has_kind(const frame_beam *beam, int kind) {
    return beam->place_of[kind] >= 0;
}

static void remark(const frame_beam *beam, const frame_beam_solve_in *in, frame_beam_solve_out *out) {
    const int live = has_kind(beam, FRAME_LOAD_LIVE) || has_kind(beam, FRAME_LOAD_ROOF_LIVE);
    double load = 0;
    for (int k = 0; k < beam->kind_count; k++) load += fabs(beam->total[k]);
    out->known = frame_load_cases_known_by(&beam->rules);
    out->cautions = FRAME_BIT(FRAME_BEAM_CAUTION_LOADS);
    if (out->min_reaction_lb < -1e-9 * load) out->cautions |= FRAME_BIT(FRAME_BEAM_CAUTION_UPLIFT);
    if (in->span_count > 1) out->cautions |= FRAME_BIT(FRAME_BEAM_CAUTION_SPLICES);
    if (has_kind(beam, FRAME_LOAD_SNOW) && in->load_edition == FRAME_LOADS_ASCE_7_16)
        out->cautions |= FRAME_BIT(FRAME_BEAM_CAUTION_SNOW_BASIS);
    if (out->min_moment_lb_in < -1e-9 * load) out->cautions |= FRAME_BIT(FRAME_BEAM_CAUTION_LOWER_EDGE);
    out->not_checked = FRAME_BIT(FRAME_BEAM_UNCHECKED_STRENGTH) | FRAME_BIT(FRAME_BEAM_UNCHECKED_EARTHQUAKE) |
                       FRAME_BIT(FRAME_BEAM_UNCHECKED_SUPPORTS) | FRAME_BIT(FRAME_BEAM_UNCHECKED_SELF_WEIGHT);
    if (live) out->not_checked |= FRAME_BIT(FRAME_BEAM_UNCHECKED_MOVING);
    if (live && !beam->pattern) out->not_checked |= FRAME_BIT(FRAME_BEAM_UNCHECKED_PATTERN);
    if (has_kind(beam, FRAME_LOAD_SNOW)) out->not_checked |= FRAME_BIT(FRAME_BEAM_UNCHECKED_SNOW);
    if (!beam->elastic) out->not_checked |= FRAME_BIT(FRAME_BEAM_UNCHECKED_DEFLECTION);
    if (beam->elastic && !beam->gives_drops) out->not_checked |= FRAME_BIT(FRAME_BEAM_UNCHECKED_SERVICE);
    if (!(beam->shear_flexibility > 0)) out->not_checked |= FRAME_BIT(FRAME_BEAM_UNCHECKED_SHEAR_DEFLECTION);
}

static frame_status analyse(const frame_beam_solve_in *in, frame_beam *beam) {
    frame_status status = frame_beam_read(in, beam);
    if (!status) status = frame_beam_cut(beam);
    if (!status) status = frame_beam_balance(beam);
    if (status) return status;
    frame_beam_find_cases(beam);
    return beam->pattern ? frame_beam_pattern(beam) : FRAME_OK;
}

static frame_status solve(const frame_beam_solve_in *in, frame_answer *answer, frame_beam_solve_out *out,
                          frame_working *record) {
    frame_beam *beam = frame_take_zeroed(1, sizeof *beam);
    if (!beam || !frame_answer_own(answer, beam, frame_beam_end)) return FRAME_NO_MEMORY;
    frame_status status = analyse(in, beam);
    if (!status) status = frame_beam_give_envelopes(beam, answer, out);
    if (!status) status = frame_beam_give_pieces(beam, answer);
    if (status) return status;
    remark(beam, in, out);
    if (record) frame_beam_record(beam, in, out, record);
    return FRAME_OK;
}
FRAME_IMPLEMENT_ANSWER(beam_solve, solve);

frame_beam *frame_beam_of(const frame_beam_solve *answer) {
    return ((const frame_owned *)((const frame_answer *)answer)->owned.items)[0].object;
}

static frame_status place_refused(double x_in, double length) {
    char most[32], valid[48];
    frame_number_print(length, 9, most, sizeof most);
    snprintf(valid, sizeof valid, "0..%s in", most);
    return frame_fail_number(x_in - x_in == 0 ? FRAME_OUT_OF_RANGE : FRAME_NOT_A_NUMBER, "x_in", x_in, valid);
}

/* Places nearer than this share of the beam's length are one. */
#define SAME_PLACE 1e-12

/* The last span that begins before a place, but the first for its left end. */
static size_t span_before(const frame_beam *beam, double x) {
    size_t low = 0, high = beam->span_count - 1;
    while (low < high) {
        const size_t middle = low + (high - low + 1) / 2;
        if (beam->spans[middle].at < x)
            low = middle;
        else
            high = middle - 1;
    }
    return low;
}

/* The envelope from all segments of a span that touch a place: at a load both sides of it. */
static void look_at(const frame_beam *beam, size_t i, double x, double same, const frame_beam_factors *f,
                    frame_beam_envelope *e) {
    const frame_beam_span *span = &beam->spans[i];
    for (size_t s = span->first; s < span->first + span->count; s++) {
        const double t = x - span->at - beam->segments[s].at, length = beam->segments[s].length;
        if (t < -same) break;
        if (t <= length + same) frame_beam_point_envelope(beam, i, s, fmin(fmax(t, 0), length), f, e);
    }
}

static void look_around(const frame_beam *beam, double x, frame_beam_envelope *e) {
    const double same = SAME_PLACE * beam->nodes[beam->node_count - 1].at;
    for (int c = 0; c < beam->case_count; c++) {
        const frame_beam_factors f = frame_beam_factors_of(beam, &beam->cases[c]);
        for (size_t i = span_before(beam, x - same); i < beam->span_count && beam->spans[i].at <= x + same; i++)
            look_at(beam, i, x, same, &f, e);
    }
}

frame_status frame_beam_solve_at_point_sized(const frame_beam_solve *answer, double x_in, frame_beam_solve_point *point,
                                             size_t point_size) {
    if (!answer || !point)
        return frame_fail(FRAME_REQUIRED, answer ? "point" : "answer", "NULL", "an answer and a struct for the point",
                          "%s: NULL; valid is an answer and a struct for the point", answer ? "point" : "answer");
    const frame_beam *beam = frame_beam_of(answer);
    const double length = beam->nodes[beam->node_count - 1].at;
    if (!(x_in >= 0 && x_in <= length)) return place_refused(x_in, length);
    frame_beam_envelope e;
    frame_beam_envelope_none(&e);
    look_around(beam, x_in, &e);
    frame_beam_solve_point found;
    frame_struct_blank(&frame_beam_solve_point_facts, &found);
    found.max_shear_lb = e.shear.most, found.min_shear_lb = e.shear.least;
    found.max_moment_lb_in = e.moment.most, found.min_moment_lb_in = e.moment.least;
    if (beam->gives_drops) found.max_deflection_in = e.drop.most, found.min_deflection_in = e.drop.least;
    frame_struct_give(&frame_beam_solve_point_facts, &found, point, point_size);
    return FRAME_OK;
}
