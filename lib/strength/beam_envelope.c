/* Extremes along a span: every segment carries one polynomial, whose extremes are at its ends and at the roots of its
 * slope. Where patterns vary, beam_patterned.c goes on. */
#include "strength/beam_envelope.h"

void frame_beam_envelope_none(frame_beam_envelope *e) {
    frame_beam_extreme_none(&e->shear);
    frame_beam_extreme_none(&e->moment);
    frame_beam_extreme_none(&e->drop);
    frame_beam_extreme_none(&e->transient);
    frame_beam_extreme_none(&e->left);
    frame_beam_extreme_none(&e->right);
}

frame_beam_factors frame_beam_factors_of(const frame_beam *beam, const frame_load_case *load_case) {
    frame_beam_factors f = {.all_transient = 1, .none_transient = 1};
    for (int k = 0; k < beam->kind_count; k++) {
        const int kind = beam->kind_of[k], stays = kind == FRAME_BEAM_OFFSETS || kind == FRAME_LOAD_DEAD;
        f.force[k] = load_case->factor[kind];
        f.drop[k] = kind == FRAME_LOAD_DEAD ? beam->creep * f.force[k] : f.force[k];
        f.transient[k] = stays ? 0 : f.force[k];
        f.creeps |= f.drop[k] != f.force[k];
        f.all_transient &= f.transient[k] == f.drop[k];
        f.none_transient &= f.transient[k] == 0;
        f.varies |= f.force[k] != 0 && frame_beam_is_patterned(beam, k);
    }
    return f;
}

frame_beam_line frame_beam_combined(const frame_beam *beam, size_t segment, const double factor[FRAME_BEAM_KINDS]) {
    frame_beam_line sum = {0};
    for (int k = 0; k < beam->kind_count; k++) {
        const frame_beam_line *line = frame_beam_line_at(beam, segment, k);
        sum.w += factor[k] * line->w;
        sum.slope += factor[k] * line->slope;
        sum.state.shear += factor[k] * line->state.shear;
        sum.state.moment += factor[k] * line->state.moment;
        sum.state.turn += factor[k] * line->state.turn;
        sum.state.drop += factor[k] * line->state.drop;
    }
    return sum;
}

frame_polynomial frame_beam_shear(const frame_beam_line *line) {
    return (frame_polynomial){{line->state.shear, 0 - line->w, 0 - line->slope / 2}};
}

frame_polynomial frame_beam_moment(const frame_beam_line *line) {
    return (frame_polynomial){{line->state.moment, line->state.shear, 0 - line->w / 2, 0 - line->slope / 6}};
}

frame_polynomial frame_beam_drop(const frame_beam *beam, const frame_beam_span *span, const frame_beam_line *line) {
    const double g = beam->shear_flexibility, e = 1 / span->stiffness, w = line->w, s = line->slope;
    const frame_beam_state *at = &line->state;
    return (frame_polynomial){{at->drop, at->turn + g * at->shear, 0 - e * at->moment / 2 - g * w / 2,
                               0 - e * at->shear / 6 - g * s / 6, e * w / 24, e * s / 120}};
}

/* A place that the extremes may be at, if it lies on the segment. */
static void try_place(const frame_beam_place *p, double t, double value, frame_beam_extreme *extreme) {
    frame_beam_extreme_take(extreme, value, p->at + t);
}

static double shear_at(const frame_beam_line *l, double t) {
    return l->state.shear - t * (l->w + t * l->slope / 2);
}

static double moment_at(const frame_beam_line *l, double t) {
    return l->state.moment + t * (l->state.shear - t * (l->w / 2 + t * l->slope / 6));
}

static void shear_extremes(const frame_beam_place *p, const frame_beam_line *l, frame_beam_extreme *extreme) {
    try_place(p, 0, l->state.shear, extreme);
    if (l->slope != 0) {
        const double t = -l->w / l->slope;
        if (t > 0 && t < p->length) try_place(p, t, shear_at(l, t), extreme);
    }
    try_place(p, p->length, shear_at(l, p->length), extreme);
}

static void moment_extremes(const frame_beam_place *p, const frame_beam_line *l, frame_beam_extreme *extreme) {
    try_place(p, 0, l->state.moment, extreme);
    if (l->slope != 0) {
        double roots[FRAME_POLYNOMIAL_DEGREE];
        const frame_polynomial shear = frame_beam_shear(l);
        const int count = frame_polynomial_roots(&shear, p->length, roots);
        for (int i = 0; i < count; i++) try_place(p, roots[i], moment_at(l, roots[i]), extreme);
    } else if (l->w != 0) {
        const double t = l->state.shear / l->w;
        if (t > 0 && t < p->length) try_place(p, t, moment_at(l, t), extreme);
    }
    try_place(p, p->length, moment_at(l, p->length), extreme);
}

static void drop_extremes(const frame_beam_place *p, const frame_beam_line *l, frame_beam_extreme *extreme) {
    const frame_polynomial drop = frame_beam_drop(p->beam, p->span, l), slope = frame_polynomial_slope(&drop);
    double roots[FRAME_POLYNOMIAL_DEGREE];
    const int count = frame_polynomial_roots(&slope, p->length, roots);
    try_place(p, 0, l->state.drop, extreme);
    for (int i = 0; i < count; i++) try_place(p, roots[i], frame_polynomial_at(&drop, roots[i]), extreme);
    try_place(p, p->length, frame_polynomial_at(&drop, p->length), extreme);
}

static void ends(const frame_beam_place *p, double begins, double at_end, frame_beam_envelope *e) {
    if (p->segment == p->span->first) frame_beam_extreme_take(&e->left, begins, p->at);
    if (p->segment + 1 == p->span->first + p->span->count)
        frame_beam_extreme_take(&e->right, at_end, p->at + p->length);
}

static void plain(const frame_beam_place *p, const frame_beam_factors *f, frame_beam_envelope *e) {
    const frame_beam_line line = frame_beam_combined(p->beam, p->segment, f->force);
    shear_extremes(p, &line, &e->shear);
    moment_extremes(p, &line, &e->moment);
    ends(p, line.state.moment, moment_at(&line, p->length), e);
    if (!p->beam->elastic) return;
    const frame_beam_line drop = f->creeps ? frame_beam_combined(p->beam, p->segment, f->drop) : line;
    drop_extremes(p, &drop, &e->drop);
    if (f->all_transient || f->none_transient) return;
    const frame_beam_line transient = frame_beam_combined(p->beam, p->segment, f->transient);
    drop_extremes(p, &transient, &e->transient);
}

/* Adds one segment to the envelopes of its span. */
static void add_segment(const frame_beam *beam, size_t span, size_t segment, int varies, const frame_beam_factors *f,
                        frame_beam_scratch *s, frame_beam_envelope *e) {
    const frame_beam_span *of = &beam->spans[span];
    const frame_beam_segment *part = &beam->segments[segment];
    const frame_beam_place p = {beam, of, of->at + part->at, part->length, segment, span};
    for (int c = 0; c < beam->case_count; c++)
        if (!f[c].varies) plain(&p, &f[c], &e[c]);
    if (varies) frame_beam_patterned(&p, f, s, e);
}

static int begin(const frame_beam *beam, const frame_beam_factors *f, frame_beam_envelope *e) {
    int varies = 0;
    for (int c = 0; c < beam->case_count; c++) {
        frame_beam_envelope_none(&e[c]);
        varies |= f[c].varies;
    }
    return varies;
}

void frame_beam_segment_envelopes(const frame_beam *beam, size_t span, size_t segment, const frame_beam_factors *f,
                                  frame_beam_scratch *s, frame_beam_envelope *e) {
    const int varies = begin(beam, f, e);
    add_segment(beam, span, segment, varies, f, s, e);
}

void frame_beam_span_envelopes(const frame_beam *beam, size_t span, const frame_beam_factors *f, frame_beam_scratch *s,
                               frame_beam_envelope *e) {
    const frame_beam_span *of = &beam->spans[span];
    const int varies = begin(beam, f, e);
    for (size_t i = of->first; i < of->first + of->count; i++) add_segment(beam, span, i, varies, f, s, e);
    for (int c = 0; c < beam->case_count; c++) {
        if (f[c].all_transient) e[c].transient = e[c].drop;
        if (f[c].none_transient) e[c].transient = (frame_beam_extreme){0, of->at, 0, of->at};
    }
}
