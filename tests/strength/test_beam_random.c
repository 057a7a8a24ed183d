/* beam_solve against another solver on random beams: 500, or as many as the command asks for. */
#include "beam_random.h"

#include <frame/text.h>

static long beams = 500;

/* A mechanism, or so nearly one that the drops swamp the digits of the other solver's reactions. */
enum { SOUND, SOFT, LOOSE };

static int other_is(random_beam *b) {
    real most = 0;
    reference_solve(&b->other);
    for (int i = 0; i < b->other.node_count; i++) most = fmaxl(most, fabsl(b->other.u[3 * i]));
    if (!(b->other.least_pivot > 1e-13L)) return LOOSE;
    return most < 50 ? SOUND : SOFT;
}

static void near(double value, real wanted, real scale, const char *what, long beam) {
    ck_assert_msg(fabsl(value - wanted) <= 1e-9L * scale,
                  "beam %ld: %s is %.17g, the other solver says %.17Lg (scale %Lg)", beam, what, value, wanted, scale);
}

static int other_node(const reference *o, double x) {
    for (int i = 0; i < o->node_count; i++)
        if (fabsl(o->nodes[i].x - x) < 1e-9L * (1 + x)) return i;

    ck_abort_msg("no node at %g", x);
    return 0;
}

static void compare_supports(const random_beam *b, const frame_beam_solve *answer, real force, real moment, long beam) {
    size_t count;
    const double *reactions = frame_beam_solve_reactions_lb(answer, &count);
    ck_assert_uint_eq(count, b->in.span_count + 1);
    for (size_t i = 0; i < count; i++) {
        frame_beam_solve_support s;
        ck_assert(!frame_beam_solve_support_at(answer, i, &s));
        const int node = other_node(&b->other, s.at_in);
        const int bears = s.kind != FRAME_SUPPORT_NONE;
        const int turns = b->other.nodes[node].clamped || b->other.nodes[node].turning > 0;
        near(reactions[i], bears ? b->other.reaction[node] : 0, force, "reaction", beam);
        near(s.max_couple_lb_in, turns ? b->other.couple[node] : 0, moment, "couple", beam);
    }
}

/* The other solver's largest of everything, as the scale of what counts as equal. */
static void scales(const reference *o, real *force, real *moment, real *drop) {
    *force = 10, *moment = 1000, *drop = 1e-6L; /* for beams that only offsets move, without stress */
    for (int i = 0; i < o->node_count; i++) {
        const reference_state s = reference_at_node(o, i);
        *force = fmaxl(fmaxl(*force, fabsl(s.shear)), fabsl(o->reaction[i]));
        *moment = fmaxl(fmaxl(*moment, fabsl(s.moment)), fabsl(o->couple[i]));
        *drop = fmaxl(*drop, fabsl(s.drop));
    }
}

/* The reported extremes are taken where they are said to be, and nothing anywhere is beyond them. */
static void extremes_hold(const random_beam *b, const frame_beam_solve *answer, const frame_beam_solve_out *out,
                          uint64_t *seed, long beam) {
    frame_beam_solve_point p;
    const real m = fmax(out->max_moment_lb_in, -out->min_moment_lb_in),
               v = fmax(out->max_deflection_in, -out->min_deflection_in);
    ck_assert(!frame_beam_solve_at_point(answer, out->max_moment_at_in, &p));
    near(p.max_moment_lb_in, out->max_moment_lb_in, m, "largest moment", beam);
    ck_assert(!frame_beam_solve_at_point(answer, out->min_moment_at_in, &p));
    near(p.min_moment_lb_in, out->min_moment_lb_in, m, "least moment", beam);
    ck_assert(!frame_beam_solve_at_point(answer, out->max_deflection_at_in, &p));
    near(p.max_deflection_in, out->max_deflection_in, v, "largest deflection", beam);
    ck_assert(!frame_beam_solve_at_point(answer, out->max_shear_at_in, &p));
    near(fmax(p.max_shear_lb, -p.min_shear_lb), out->max_shear_lb, out->max_shear_lb, "largest shear", beam);
    for (int i = 0; i < 60; i++) {
        ck_assert(!frame_beam_solve_at_point(answer, between(seed, 0, b->length), &p));
        ck_assert(p.max_moment_lb_in <= out->max_moment_lb_in + 1e-12 * (double)m);
        ck_assert(p.min_moment_lb_in >= out->min_moment_lb_in - 1e-12 * (double)m);
        ck_assert(p.max_deflection_in <= out->max_deflection_in + 1e-12 * (double)v);
        ck_assert(p.min_deflection_in >= out->min_deflection_in - 1e-12 * (double)v);
        ck_assert(fmax(p.max_shear_lb, -p.min_shear_lb) <= out->max_shear_lb * (1 + 1e-12));
    }
}

static void compare(const random_beam *b, const frame_beam_solve *answer, uint64_t *seed, long beam) {
    real force, moment, drop;
    frame_beam_solve_out out;
    ck_assert(!frame_beam_solve_result(answer, &out));
    scales(&b->other, &force, &moment, &drop);
    compare_supports(b, answer, force, moment, beam);
    for (int i = 0; i < RANDOM_SAMPLES; i++) {
        frame_beam_solve_point p;
        ck_assert(!frame_beam_solve_at_point(answer, b->samples[i], &p));
        const reference_state s = reference_at_node(&b->other, other_node(&b->other, b->samples[i]));
        near(p.max_shear_lb, s.shear, force, "shear", beam);
        near(p.min_moment_lb_in, s.moment, moment, "moment", beam);
        near(p.max_deflection_in, s.drop, drop, "deflection", beam);
    }
    extremes_hold(b, answer, &out, seed, beam);
}

START_TEST(agrees_with_another_solver) {
    static random_beam b;
    uint64_t seed = 88172645463325252u;
    long loose = 0, compared = 0;
    for (long i = 0; i < beams; i++) {
        frame_beam_solve *answer = NULL;
        random_beam_make(&b, &seed);
        other_beam(&b);
        const int is = other_is(&b);
        const frame_status status = frame_beam_solve_solve(&b.in, &answer, NULL);
        ck_assert_msg(!status || (status == FRAME_UNSTABLE && is != SOUND), "beam %ld: %s", i, frame_error_text());
        ck_assert_msg(status || is != LOOSE, "beam %ld: the other solver finds a mechanism", i);
        loose += is == LOOSE;
        if (is == SOUND) compare(&b, answer, &seed, i), compared++;
        frame_beam_solve_free(answer);
    }
    ck_assert_int_gt(compared * 10, beams * 7); /* most of them are beams */
    ck_assert_int_gt(loose, 0);
}
END_TEST

int main(int count, char **arguments) {
    if (count > 1) beams = atol(arguments[1]);
    Suite *suite = suite_create("random beams");
    TCase *tests = tcase_create("against another solver");
    tcase_set_timeout(tests, 0);
    tcase_add_test(tests, agrees_with_another_solver);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_ENV);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
