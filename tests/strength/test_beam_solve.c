/* beam_solve: patterns against every subset of loaded spans, combinations, properties (equilibrium, energy,
 * reciprocity), what is refused, and that work grows with the number of spans only. */
#define _POSIX_C_SOURCE 200809L
#include <time.h>

#include "beam_random.h"
#include "beams.h"

/* ---- patterns ---- */

/* Extremes of everything, joined over solutions. */
typedef struct joined {
    double reaction[8][2], moment[8][2], shear[8][2], drop[8][2], support[8][2], point[5][2];
    size_t supports, spans;
} joined;

static void take(double pair[2], double most, double least) {
    pair[0] = fmax(pair[0], most);
    pair[1] = fmin(pair[1], least);
}

static void join(joined *j, const beam *b, const double *points) {
    j->supports = frame_beam_solve_support_count(b->answer);
    j->spans = frame_beam_solve_span_count(b->answer);
    for (size_t i = 0; i < j->supports; i++) {
        const frame_beam_solve_support s = beam_support(b, i);
        take(j->reaction[i], s.max_reaction_lb, s.min_reaction_lb);
        take(j->support[i], s.max_moment_lb_in, s.min_moment_lb_in);
    }
    for (size_t i = 0; i < j->spans; i++) {
        const frame_beam_solve_span s = beam_span(b, i);
        take(j->moment[i], s.max_moment_lb_in, s.min_moment_lb_in);
        take(j->shear[i], s.max_shear_lb, s.min_shear_lb);
        take(j->drop[i], s.max_deflection_in, s.min_deflection_in);
    }
    for (int i = 0; i < 5; i++) {
        const frame_beam_solve_point p = beam_at(b, points[i]);
        take(j->point[i], p.max_moment_lb_in, p.min_moment_lb_in);
    }
}

static void none_of(double pairs[][2], size_t count) {
    for (size_t i = 0; i < count; i++) pairs[i][0] = -HUGE_VAL, pairs[i][1] = HUGE_VAL;
}

static void nothing_yet(joined *j) {
    none_of(j->reaction, 8);
    none_of(j->moment, 8);
    none_of(j->shear, 8);
    none_of(j->drop, 8);
    none_of(j->support, 8);
    none_of(j->point, 5);
}

static void same(double pairs[][2], double wanted[][2], size_t count, const char *what, int round) {
    double scale = 1e-9;
    for (size_t i = 0; i < count; i++) scale = fmax(scale, fmax(fabs(wanted[i][0]), fabs(wanted[i][1])));
    for (size_t i = 0; i < count; i++)
        for (int k = 0; k < 2; k++)
            ck_assert_msg(fabs(pairs[i][k] - wanted[i][k]) <= 1e-9 * scale,
                          "beam %d, %s %zu: %s is %.15g, by subsets %.15g", round, what, i + 1, k ? "least" : "most",
                          pairs[i][k], wanted[i][k]);
}

/* The loads of a beam by span and kind; a subset is made of those whose bit is set. */
typedef struct choice {
    frame_beam_load loads[24];
    int bits[24]; /* which bit keeps the load; -1: always there */
    size_t count;
} choice;

static void add_choice(choice *c, frame_load_kind kind, int32_t span, double length, uint64_t *seed, int bit) {
    frame_beam_load *l = &c->loads[c->count];
    frame_beam_load_init(l);
    l->kind = kind;
    l->span = span;
    if (one_in(seed, 4))
        l->at_in = between(seed, 0, length), l->force_lb = between(seed, 100, 900);
    else
        l->plf = between(seed, 20, 200);
    c->bits[c->count++] = bit;
}

static void random_pattern_beam(beam *b, choice *c, int kinds, uint64_t *seed) {
    const size_t spans = 2 + (size_t)(chance(seed) * 3);
    beam_begin(b, spans, 1);
    for (size_t i = 0; i < spans; i++) b->spans[i] = between(seed, 40, 200);
    if (one_in(seed, 3)) b->in.left_overhang_in = between(seed, 10, 60);
    for (size_t i = 0; i <= spans; i++) {
        if (one_in(seed, 6)) b->supports[i].kind = FRAME_SUPPORT_SPRING, b->supports[i].spring_lb_per_in = 4000;
        if (i > 0 && i < spans && one_in(seed, 8)) b->supports[i].hinge = 1;
        if (one_in(seed, 9) && b->supports[i].kind == FRAME_SUPPORT_PINNED) b->supports[i].offset_in = 0.1;
    }
    if (one_in(seed, 3)) b->supports[0].kind = FRAME_SUPPORT_FIXED, b->supports[0].spring_lb_per_in = FRAME_NOT_GIVEN;
    if (one_in(seed, 5)) b->in.shear_stiffness_lb = 1e5;
    beam_stiff(b, 1.4e6 * between(seed, 50, 200));
    b->in.dead_plf = between(seed, 5, 80);
    b->in.snow_plf = one_in(seed, 2) ? 0 : between(seed, 5, 80);
    c->count = 0;
    int bit = 0;
    for (int32_t i = b->in.left_overhang_in > 0 ? 0 : 1; i <= (int32_t)spans; i++)
        for (int kind = 0; kind < kinds; kind++) {
            const double length = i ? b->spans[i - 1] : b->in.left_overhang_in;
            add_choice(c, kind ? FRAME_LOAD_ROOF_LIVE : FRAME_LOAD_LIVE, i, length, seed, bit);
            if (one_in(seed, 3)) add_choice(c, kind ? FRAME_LOAD_ROOF_LIVE : FRAME_LOAD_LIVE, i, length, seed, bit);
            bit++;
        }
}

static int solve_choice(beam *b, const choice *c, unsigned subset) {
    b->in.loads = c->loads;
    frame_beam_load kept[24];
    size_t count = 0;
    for (size_t i = 0; i < c->count; i++)
        if ((subset >> c->bits[i]) & 1u) kept[count++] = c->loads[i];
    b->in.loads = kept;
    b->in.load_count = count;
    beam_end(b);
    const frame_status status = frame_beam_solve_solve(&b->in, &b->answer, NULL);
    if (status) ck_assert_msg(status == FRAME_UNSTABLE, "%s", frame_error_text());
    return !status && !frame_beam_solve_result(b->answer, &b->out);
}

static void compare_subsets(beam *b, const choice *c, int bits, int round, uint64_t *seed) {
    joined pattern, subsets;
    double points[5];
    nothing_yet(&pattern);
    nothing_yet(&subsets);
    b->in.pattern = 1;
    if (!solve_choice(b, c, ~0u)) return;
    for (int i = 0; i < 5; i++) points[i] = between(seed, 0, b->out.length_in);
    join(&pattern, b, points);
    b->in.pattern = 0;
    for (unsigned subset = 0; subset < 1u << bits; subset++) {
        ck_assert(solve_choice(b, c, subset));
        join(&subsets, b, points);
    }
    same(pattern.reaction, subsets.reaction, pattern.supports, "reaction", round);
    same(pattern.support, subsets.support, pattern.supports, "moment over support", round);
    same(pattern.moment, subsets.moment, pattern.spans, "moment in span", round);
    same(pattern.shear, subsets.shear, pattern.spans, "shear in span", round);
    same(pattern.drop, subsets.drop, pattern.spans, "deflection of span", round);
    same(pattern.point, subsets.point, 5, "moment at point", round);
}

/* One live load kind: every subset of spans. Two: every pair of subsets. */
START_TEST(patterns_are_the_worst_subsets) {
    static beam b;
    static choice c;
    uint64_t seed = 3141592653589793u;
    for (int round = 0; round < 120; round++) {
        const int kinds = 1 + (round % 6 == 0);
        random_pattern_beam(&b, &c, kinds, &seed);
        const int spans = (int)b.in.span_count + (b.in.left_overhang_in > 0);
        compare_subsets(&b, &c, spans * kinds, round, &seed);
        beam_end(&b);
    }
}
END_TEST

/* Equal spans under live load: the coefficients of the usual pattern, from the solution of two spans by hand. */
START_TEST(two_spans_by_hand) {
    static beam b;
    beam_begin(&b, 2, 120);
    b.in.live_plf = 120;
    b.in.pattern = 1;
    beam_run(&b);
    CLOSE(b.out.max_moment_lb_in, 49.0 / 512 * 10 * 120 * 120);
    CLOSE(b.out.max_moment_at_in, 7.0 / 16 * 120);
    CLOSE(b.out.min_moment_lb_in, -10 * 120 * 120 / 8.0);
    CLOSE(b.out.max_reaction_lb, 10.0 / 8 * 1200);
    CLOSE(b.out.min_reaction_lb, -1200 / 16.0);
    ck_assert_double_eq(b.out.max_deflection_in, FRAME_NOT_GIVEN);
    ck_assert(FRAME_HAS(b.out.not_checked, FRAME_BEAM_UNCHECKED_DEFLECTION));
    ck_assert(!FRAME_HAS(b.out.not_checked, FRAME_BEAM_UNCHECKED_PATTERN));
    b.in.pattern = 0;
    beam_run(&b);
    CLOSE(beam_reaction(&b, 0), 3.0 / 8 * 1200);
    ck_assert(FRAME_HAS(b.out.not_checked, FRAME_BEAM_UNCHECKED_PATTERN));
    beam_end(&b);
}
END_TEST

/* ---- combinations ---- */

START_TEST(combinations_of_the_standard) {
    static beam b;
    beam_begin(&b, 1, 100);
    b.in.dead_plf = 12, b.in.live_plf = 120, b.in.roof_live_plf = 240, b.in.snow_plf = 360, b.in.wind_plf = -600;
    beam_run(&b);
    const double w = 1.0 / 8 * 100 * 100;
    const double loads[] = {1,
                            1 + 10,
                            1 + 20,
                            1 + 30,
                            1 + 7.5 + 15,
                            1 + 7.5 + 22.5,
                            1 - 30,
                            1 + 7.5 + 15 - 22.5,
                            1 + 7.5 + 22.5 - 22.5,
                            0.6 - 30};
    const double durations[] = {0.9, 1, 1.25, 1.15, 1.25, 1.15, 1.6, 1.6, 1.6, 1.6};
    ck_assert_uint_eq(frame_beam_solve_combination_count(b.answer), 10);
    for (size_t i = 0; i < 10; i++) {
        frame_beam_solve_combination c;
        ck_assert(!frame_beam_solve_combination_at(b.answer, i, &c));
        ck_assert_int_eq(c.combination, (int)i + 1);
        CLOSE(c.load_lb, loads[i] * 100);
        CLOSE(loads[i] > 0 ? c.max_moment_lb_in : c.min_moment_lb_in, loads[i] * w);
        ck_assert_double_eq(c.load_duration_factor, durations[i]);
    }
    ck_assert_int_eq(b.out.max_moment_combination, FRAME_COMBINATION_D_S);
    ck_assert_int_eq(b.out.min_moment_combination, FRAME_COMBINATION_D_W_UPLIFT);
    CLOSE(b.out.min_reaction_lb, (0.6 - 30) * 50);
    ck_assert(FRAME_HAS(b.out.cautions, FRAME_BEAM_CAUTION_UPLIFT));
    b.in.live_duration = FRAME_DURATION_PERMANENT;
    beam_run(&b);
    frame_beam_solve_combination c;
    ck_assert(!frame_beam_solve_combination_at(b.answer, 1, &c));
    ck_assert_double_eq(c.load_duration_factor, 0.9);
    beam_end(&b);
}
END_TEST

START_TEST(creep_and_what_passes) {
    static beam b;
    beam_begin(&b, 1, 100);
    beam_stiff(&b, 1e8);
    b.in.dead_plf = 12, b.in.snow_plf = 36, b.in.creep_factor = 1.5;
    beam_run(&b);
    const double unit = 5.0 / 384 * 1e8 / 1e8;
    CLOSE(b.out.max_deflection_in, (1.5 + 3) * unit);
    CLOSE(b.out.transient_deflection_in, 3 * unit);
    CLOSE(b.out.max_deflection_at_in, 50);
    beam_end(&b);
}
END_TEST

/* ---- properties ---- */

static double area(const double *c, int degree, double length) {
    double sum = 0;
    for (int i = degree; i >= 0; i--) sum = sum * length + c[i] / (i + 1);
    return sum * length;
}

/* The integral of the product of two polynomials. */
static double overlap(const double *p, int m, const double *q, int n, double length) {
    double product[16] = {0};
    for (int i = 0; i <= m; i++)
        for (int k = 0; k <= n; k++) product[i + k] += p[i] * q[k];
    return area(product, m + n, length);
}

/* The work of the loads, half of each times its drop, is what bending and shear store; reactions carry all loads. */
START_TEST(equilibrium_and_energy) {
    static beam b;
    uint64_t seed = 20261125u;
    for (int round = 0; round < 300; round++) {
        const size_t spans = 1 + (size_t)(chance(&seed) * 6);
        beam_begin(&b, spans, 1);
        for (size_t i = 0; i < spans; i++) b.spans[i] = between(&seed, 30, 250);
        b.in.right_overhang_in = one_in(&seed, 2) ? between(&seed, 5, 60) : 0;
        if (one_in(&seed, 2)) b.supports[0].kind = FRAME_SUPPORT_FIXED;
        if (spans > 2 && one_in(&seed, 2)) b.supports[1].hinge = 1;
        const double EI = 1.4e6 * between(&seed, 20, 300), GA = one_in(&seed, 2) ? 1e5 : FRAME_NOT_GIVEN;
        beam_stiff(&b, EI);
        b.in.shear_stiffness_lb = GA;
        b.in.dead_plf = between(&seed, 0, 200);
        const double at = between(&seed, 0, b.spans[0]), force = between(&seed, 0, 3000);
        beam_point(&b, 1, at, force);
        beam_run(&b);
        double stored = 0, work = force * beam_at(&b, at).max_deflection_in / 2, carried = 0;
        for (size_t i = 0; i < frame_beam_solve_piece_count(b.answer); i++) {
            const frame_beam_solve_piece p = beam_piece(&b, i);
            const double L = p.to_in - p.from_in;
            stored += overlap(&p.moment_0, 3, &p.moment_0, 3, L) / (2 * EI);
            if (GA > 0) stored += overlap(&p.shear_0, 2, &p.shear_0, 2, L) / (2 * GA);
            work += b.in.dead_plf / 12 * area(&p.deflection_0, 5, L) / 2;
        }
        for (size_t i = 0; i <= spans; i++) carried += beam_reaction(&b, i);
        ck_assert_double_eq_tol(work, stored, 1e-9 * stored + 1e-12);
        ck_assert_double_eq_tol(carried, b.in.dead_plf / 12 * b.out.length_in + force, 1e-8);
        beam_end(&b);
    }
}
END_TEST

/* A force at one place moves another as much as the same force there moves the first. */
START_TEST(reciprocity) {
    static beam b;
    double drops[2];
    for (int i = 0; i < 2; i++) {
        beam_begin(&b, 3, 100);
        b.supports[1].kind = FRAME_SUPPORT_SPRING;
        b.supports[1].spring_lb_per_in = 900;
        beam_stiff(&b, 1e8);
        beam_point(&b, i ? 3 : 1, i ? 62 : 37, 500);
        beam_run(&b);
        drops[i] = beam_at(&b, i ? 37 : 262).max_deflection_in;
        beam_end(&b);
    }
    CLOSE(drops[0], drops[1]);
}
END_TEST

/* A point load of two halves, a load over three spans given at once or span by span: the same. */
START_TEST(loads_in_parts) {
    static beam b;
    double reactions[2][4];
    for (int i = 0; i < 2; i++) {
        beam_begin(&b, 3, 100);
        if (i) {
            frame_beam_load *l = beam_load(&b, FRAME_LOAD_DEAD, FRAME_NOT_GIVEN_INT);
            l->at_in = 20, l->to_in = 270, l->plf = 120, l->to_plf = 360;
            beam_point(&b, FRAME_NOT_GIVEN_INT, 100, 80);
        } else {
            const double from[] = {20, 0, 0}, to[] = {100, 100, 70}, begins[] = {120, 196.8, 292.8},
                         ends[] = {196.8, 292.8, 360};
            for (int32_t k = 0; k < 3; k++) {
                frame_beam_load *l = beam_load(&b, FRAME_LOAD_DEAD, k + 1);
                l->at_in = from[k], l->to_in = to[k], l->plf = begins[k], l->to_plf = ends[k];
            }
            beam_point(&b, 1, 100, 30);
            beam_point(&b, 2, 0, 50);
        }
        beam_run(&b);
        for (size_t k = 0; k < 4; k++) reactions[i][k] = beam_reaction(&b, k);
        beam_end(&b);
    }
    for (int k = 0; k < 4; k++) CLOSE(reactions[0][k], reactions[1][k]);
}
END_TEST

/* A hinge over a support makes two simple spans of two. */
START_TEST(splice_over_a_support) {
    static beam b;
    beam_begin(&b, 2, 96);
    b.supports[1].hinge = 1;
    b.in.dead_plf = 120;
    beam_run(&b);
    CLOSE(beam_reaction(&b, 1), 960);
    CLOSE(b.out.max_moment_lb_in, 10 * 96 * 96 / 8.0);
    ck_assert_double_eq(b.out.min_moment_lb_in, 0);
    beam_end(&b);
}
END_TEST

/* ---- refusals ---- */

static void refused(beam *b, frame_status status, const char *field) {
    frame_beam_solve *answer = NULL;
    ck_assert_int_eq(frame_beam_solve_solve(&b->in, &answer, NULL), status);
    ck_assert_ptr_null(answer);
    ck_assert_str_eq(frame_error_field(), field);
    ck_assert_str_ne(frame_error_valid(), "");
}

START_TEST(mechanisms) {
    static beam b;
    beam_begin(&b, 1, 100);
    b.supports[1].kind = FRAME_SUPPORT_NONE;
    refused(&b, FRAME_UNSTABLE, "supports");
    ck_assert_str_eq(frame_error_value(), "100");
    beam_begin(&b, 3, 100);
    b.supports[1].kind = b.supports[2].kind = FRAME_SUPPORT_NONE;
    b.supports[1].hinge = 1;
    refused(&b, FRAME_UNSTABLE, "supports");
    ck_assert_str_eq(frame_error_value(), "100");
    beam_begin(&b, 5, 100);
    b.supports[4].kind = FRAME_SUPPORT_NONE;
    b.supports[4].hinge = b.supports[3].hinge = 1;
    refused(&b, FRAME_UNSTABLE, "supports");
    ck_assert_str_eq(frame_error_value(), "400");
    b.supports[3].hinge = 0;
    beam_run(&b);
    beam_end(&b);
}
END_TEST

START_TEST(nonsense) {
    static beam b;
    beam_begin(&b, 2, 100);
    b.in.support_count = 2;
    refused(&b, FRAME_CONFLICT, "supports");
    beam_begin(&b, 2, 100);
    b.supports[1].kind = FRAME_SUPPORT_SPRING;
    refused(&b, FRAME_REQUIRED, "supports[1].spring_lb_per_in");
    b.supports[1].spring_lb_per_in = 100;
    refused(&b, FRAME_REQUIRED, "supports[1].e_psi");
    beam_stiff(&b, 1e8);
    b.supports[0].kind = FRAME_SUPPORT_NONE;
    b.supports[0].offset_in = 1;
    refused(&b, FRAME_CONFLICT, "supports[0].offset_in");
    beam_begin(&b, 2, 100);
    b.supports[1].kind = FRAME_SUPPORT_FIXED;
    b.supports[1].hinge = 1;
    refused(&b, FRAME_CONFLICT, "supports[1].hinge");
    beam_begin(&b, 2, 100);
    b.in.shear_stiffness_lb = 1e5;
    refused(&b, FRAME_REQUIRED, "e_psi");
    beam_begin(&b, 2, 100);
    beam_load(&b, FRAME_LOAD_LIVE, 1);
    refused(&b, FRAME_REQUIRED, "loads[0].plf");
    b.loads[0].force_lb = 5;
    refused(&b, FRAME_REQUIRED, "loads[0].at_in");
    b.loads[0].at_in = 101;
    refused(&b, FRAME_OUT_OF_RANGE, "loads[0].at_in");
    b.loads[0].at_in = 10;
    b.loads[0].plf = 5;
    refused(&b, FRAME_CONFLICT, "loads[0].plf");
    b.loads[0].force_lb = FRAME_NOT_GIVEN;
    b.loads[0].to_in = 5;
    refused(&b, FRAME_IMPOSSIBLE, "loads[0].to_in");
    b.loads[0].to_in = 50;
    b.loads[0].span = 0;
    refused(&b, FRAME_OUT_OF_RANGE, "loads[0].span");
    b.loads[0].span = 2;
    beam_run(&b);
    frame_beam_solve_point p;
    ck_assert_int_eq(frame_beam_solve_at_point(b.answer, 201, &p), FRAME_OUT_OF_RANGE);
    ck_assert_int_eq(frame_beam_solve_at_point(b.answer, NAN, &p), FRAME_NOT_A_NUMBER);
    beam_end(&b);
}
END_TEST

/* ---- the working ---- */

START_TEST(working_comes_to_the_answer) {
    static beam b;
    for (int i = 0; i < 5; i++) {
        frame_working *w;
        ck_assert(!frame_working_new(&w));
        beam_begin(&b, 3, 120);
        b.in.dead_plf = 60, b.in.live_plf = 240;
        b.in.left_overhang_in = i == 1 ? 30 : 0;
        b.in.right_overhang_in = i == 1 ? 20 : 0;
        if (i >= 2) beam_stiff(&b, 1e8);
        if (i == 2) b.supports[2].offset_in = 0.3;
        if (i == 3) b.in.shear_stiffness_lb = 1e5;
        if (i == 4) beam_point(&b, 2, 50, 700), b.supports[1].hinge = 1;
        ck_assert_msg(!frame_beam_solve_solve(&b.in, &b.answer, w), "%s", frame_error_text());
        frame_text *text;
        ck_assert(!frame_text_new(&text));
        ck_assert_msg(!frame_working_check(w, text), "%s", frame_text_chars(text));
        double R = 0;
        for (size_t k = 0; k < frame_working_step_count(w); k++) {
            frame_working_step step;
            ck_assert(!frame_working_step_at(w, k, &step));
            if (!strcmp(step.symbol, "R")) R += step.value;
        }
        ck_assert(!frame_beam_solve_result(b.answer, &b.out));
        ck_assert_double_eq_tol(R, 25 * b.out.length_in + (i == 4 ? 700 : 0), 1e-8);
        frame_text_free(text);
        frame_working_free(w);
        beam_end(&b);
    }
}
END_TEST

/* ---- size ---- */

/* A beam of a hundred thousand spans: its reactions carry its loads. How long it takes is measured in tests/bench. */
START_TEST(many_spans) {
    enum { SPANS = 100000 };
    frame_beam_solve_in in;
    frame_beam_solve *answer = NULL;
    double *lengths = malloc(SPANS * sizeof *lengths), length = 0, sum = 0;
    size_t count;
    ck_assert_ptr_nonnull(lengths);
    for (size_t i = 0; i < SPANS; i++) length += lengths[i] = 100 + (double)(i % 7);
    frame_beam_solve_in_init(&in);
    in.spans_in = lengths, in.span_count = SPANS;
    in.dead_plf = 20, in.live_plf = 100, in.pattern = 0;
    in.e_psi = 1.4e6, in.inertia_in4 = 100;
    ck_assert_msg(!frame_beam_solve_solve(&in, &answer, NULL), "%s", frame_error_text());
    const double *reactions = frame_beam_solve_reactions_lb(answer, &count);
    ck_assert_uint_eq(count, SPANS + 1);
    for (size_t i = 0; i < count; i++) sum += reactions[i];
    ck_assert_double_eq_tol(sum, 10 * length, 1e-9 * sum);
    frame_beam_solve_free(answer);
    in.pattern = 1;
    ck_assert_msg(!frame_beam_solve_solve(&in, &answer, NULL), "%s", frame_error_text());
    frame_beam_solve_free(answer);
    free(lengths);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("beams");
    TCase *tests = tcase_create("beam_solve");
    tcase_set_timeout(tests, 120);
    tcase_add_test(tests, patterns_are_the_worst_subsets);
    tcase_add_test(tests, two_spans_by_hand);
    tcase_add_test(tests, combinations_of_the_standard);
    tcase_add_test(tests, creep_and_what_passes);
    tcase_add_test(tests, equilibrium_and_energy);
    tcase_add_test(tests, reciprocity);
    tcase_add_test(tests, loads_in_parts);
    tcase_add_test(tests, splice_over_a_support);
    tcase_add_test(tests, mechanisms);
    tcase_add_test(tests, nonsense);
    tcase_add_test(tests, working_comes_to_the_answer);
    tcase_add_test(tests, many_spans);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_ENV);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
