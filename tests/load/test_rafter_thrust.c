/* Thrust of rafters: the code's statics, raised ties, equilibrium. */
#include <check.h>
#include <math.h>
#include <string.h>

#include <frame/load.h>
#include <frame/text.h>
#include <frame/working.h>

static frame_rafter_thrust_in pair(void) {
    frame_rafter_thrust_in in;
    frame_rafter_thrust_in_init(&in);
    in.run_in = 168, in.slope = 0.5, in.spacing_in = 24, in.dead_psf = 10, in.snow_psf = 30;
    return in;
}

static frame_rafter_thrust_out run(const frame_rafter_thrust_in *in) {
    frame_rafter_thrust_out out;
    frame_working *working;
    frame_text *wrong;
    ck_assert(!frame_working_new(&working) && !frame_text_new(&wrong));
    ck_assert_msg(!frame_rafter_thrust(in, &out, working), "%s", frame_error_text());
    ck_assert_msg(!frame_working_check(working, wrong), "%s", frame_text_chars(wrong));
    frame_working_free(working);
    frame_text_free(wrong);
    return out;
}

static void same(double a, double b) {
    ck_assert_double_eq_tol(a, b, 1e-9 * fmax(1, fabs(b)));
}

/* The statics of the code's table of heel joints: H = 3 w L/s plf, w psf on plan, L the roof's span in ft, s the rise
 * in 12. */
START_TEST(as_the_code_has_it) {
    frame_rafter_thrust_in in = pair();
    const frame_rafter_thrust_out out = run(&in);
    const double w = 10 * hypot(1, 0.5) + 30;
    same(out.thrust_plf, 3 * w * 28 / 6);
    same(out.tie_lb, out.thrust_plf * 2);
    same(out.load_plf, 2 * w);
    same(out.load_duration_factor, 1.15);
    same(out.reaction_lb, 2 * w * 14);
    same(out.moment_lb_in, 2 * w / 12 * 168 * 168 / 8); /* a simple span on plan */
    same(out.moment_at_in, 84);
}
END_TEST

/* A tie at a third of the rise carries half as much again and bends the rafter. */
START_TEST(raised_tie) {
    frame_rafter_thrust_in in = pair();
    const double plate = run(&in).tie_lb;
    in.tie_height_in = 28;
    const frame_rafter_thrust_out out = run(&in);
    same(out.tie_lb, plate * 1.5);
    same(out.ridge_lb, out.tie_lb);
    const double w = out.load_plf / 12, x = 56;
    /* moments about the ridge of one rafter */
    same(w * 168 * 168 - w * 168 * 168 / 2 - out.tie_lb * (84 - 28), 0);
    ck_assert_double_ge(out.moment_lb_in, w * (168 * x - x * x / 2) - 1e-6);
    ck_assert_double_gt(out.moment_lb_in, w * 168 * 168 / 8);
    in.tie_spacing_in = 48;
    same(run(&in).tie_lb, plate * 3);
}
END_TEST

START_TEST(refusals) {
    frame_rafter_thrust_in in = pair();
    frame_rafter_thrust_out out;
    in.tie_height_in = 60; /* of 84: a collar tie */
    ck_assert_int_eq(frame_rafter_thrust(&in, &out, NULL), FRAME_REFUSED);
    ck_assert_str_eq(frame_error_field(), "tie_height_in");
    in.tie_height_in = 0, in.dead_psf = in.snow_psf = 0;
    ck_assert_int_eq(frame_rafter_thrust(&in, &out, NULL), FRAME_IMPOSSIBLE);
    in = pair(), in.slope = 0.2;
    ck_assert(run(&in).cautions >> FRAME_THRUST_CAUTION_LOW_SLOPE & 1);
}
END_TEST

/* A lower slope, a longer run and more load never lower the tension. */
START_TEST(monotone) {
    double before = 0;
    for (int i = 0; i < 10; i++) {
        frame_rafter_thrust_in in = pair();
        in.slope = 1 - 0.07 * i, in.run_in = 120 + 5 * i, in.snow_psf = 20 + i;
        const double tie = run(&in).tie_lb;
        ck_assert_double_gt(tie, before);
        before = tie;
    }
}
END_TEST

int main(void) {
    Suite *suite = suite_create("rafter_thrust");
    TCase *all = tcase_create("all");
    tcase_add_test(all, as_the_code_has_it);
    tcase_add_test(all, raised_tie);
    tcase_add_test(all, refusals);
    tcase_add_test(all, monotone);
    suite_add_tcase(suite, all);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_ENV);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
