/* Short ways to set up beams in the tests of beam_solve. */
#ifndef FRAME_TESTS_STRENGTH_BEAMS_H
#define FRAME_TESTS_STRENGTH_BEAMS_H

#include <check.h>
#include <math.h>
#include <string.h>

#include <frame/strength.h>
#include <frame/text.h>
#include <frame/working.h>

enum { BEAM_SPANS = 1000, BEAM_LOADS = 16 };

/* A beam whose load is 1 lb/in for each 12 plf. */
typedef struct beam {
    frame_beam_solve_in in;
    double spans[BEAM_SPANS];
    frame_beam_support supports[BEAM_SPANS + 1];
    frame_beam_load loads[BEAM_LOADS];
    frame_beam_solve *answer;
    frame_beam_solve_out out;
} beam;

static inline void beam_begin(beam *b, size_t spans, double length) {
    memset(b, 0, sizeof *b);
    frame_beam_solve_in_init(&b->in);
    for (size_t i = 0; i < spans; i++) b->spans[i] = length;
    for (size_t i = 0; i <= spans; i++) {
        frame_beam_support_init(&b->supports[i]);
        b->supports[i].kind = FRAME_SUPPORT_PINNED;
    }
    b->in.spans_in = b->spans;
    b->in.span_count = spans;
    b->in.supports = b->supports;
    b->in.support_count = spans + 1;
    b->in.loads = b->loads;
    b->in.pattern = 0;
}

/* E I. */
static inline void beam_stiff(beam *b, double stiffness) {
    b->in.e_psi = stiffness / 100;
    b->in.inertia_in4 = 100;
}

static inline frame_beam_load *beam_load(beam *b, frame_load_kind kind, int32_t span) {
    frame_beam_load *load = &b->loads[b->in.load_count++];
    frame_beam_load_init(load);
    load->kind = kind;
    load->span = span;
    return load;
}

static inline void beam_spread(beam *b, frame_load_kind kind, int32_t span, double w) {
    beam_load(b, kind, span)->plf = 12 * w;
}

static inline void beam_point(beam *b, int32_t span, double at, double force) {
    frame_beam_load *load = beam_load(b, FRAME_LOAD_DEAD, span);
    load->at_in = at;
    load->force_lb = force;
}

static inline void beam_couple(beam *b, int32_t span, double at, double couple) {
    frame_beam_load *load = beam_load(b, FRAME_LOAD_DEAD, span);
    load->at_in = at;
    load->moment_lb_in = couple;
}

static inline void beam_end(beam *b) {
    frame_beam_solve_free(b->answer);
    b->answer = NULL;
}

static inline void beam_run(beam *b) {
    beam_end(b);
    ck_assert_msg(!frame_beam_solve_solve(&b->in, &b->answer, NULL), "%s", frame_error_text());
    ck_assert(!frame_beam_solve_result(b->answer, &b->out));
}

static inline double beam_reaction(const beam *b, size_t support) {
    size_t count;
    const double *reactions = frame_beam_solve_reactions_lb(b->answer, &count);
    ck_assert_uint_lt(support, count);
    return reactions[support];
}

static inline frame_beam_solve_span beam_span(const beam *b, size_t i) {
    frame_beam_solve_span span;
    ck_assert(!frame_beam_solve_span_at(b->answer, i, &span));
    return span;
}

static inline frame_beam_solve_support beam_support(const beam *b, size_t i) {
    frame_beam_solve_support support;
    ck_assert(!frame_beam_solve_support_at(b->answer, i, &support));
    return support;
}

static inline frame_beam_solve_piece beam_piece(const beam *b, size_t i) {
    frame_beam_solve_piece piece;
    ck_assert(!frame_beam_solve_piece_at(b->answer, i, &piece));
    return piece;
}

static inline frame_beam_solve_point beam_at(const beam *b, double x) {
    frame_beam_solve_point point;
    ck_assert_msg(!frame_beam_solve_at_point(b->answer, x, &point), "%s", frame_error_text());
    return point;
}

static inline double beam_inflection(const beam *b, size_t i) {
    size_t count;
    const double *places = frame_beam_solve_inflections_in(b->answer, &count);
    ck_assert_uint_lt(i, count);
    return places[i];
}

/* Equal to rounding. */
#define CLOSE(value, wanted) ck_assert_double_eq_tol(value, wanted, 1e-11 * (fabs((double)(wanted)) + 1e-3))

#endif
