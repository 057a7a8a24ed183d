/* Braces, regular polygons and the place of a ridge: right triangles, and the kernel's stick where there is one. */
#include <check.h>
#include <math.h>

#include <frame/frame.h>

START_TEST(a_brace) {
    for (int i = 0; i < 100; i++) {
        frame_brace_in in;
        frame_brace_out out;
        frame_stick *stick;
        frame_stick_lengths_out lengths;
        frame_brace_in_init(&in);
        in.run_in = 24 + i % 7 * 5;
        in.rise_in = 20 + i % 11 * 4;
        in.depth_in = 3.5;
        ck_assert_int_eq(frame_brace(&in, &out, NULL), FRAME_OK);
        ck_assert_double_eq_tol(out.length_in, hypot(in.run_in, in.rise_in), 1e-10);
        ck_assert_int_eq(frame_brace_stick(&in, &stick), FRAME_OK);
        frame_stick_lengths(stick, &lengths);
        ck_assert_double_eq_tol(lengths.bottom_edge_in, out.length_in, 1e-7);
        ck_assert_double_eq_tol(lengths.top_edge_in, out.inner_length_in, 1e-7);
        for (size_t k = 0; k < 2; k++) {
            frame_stick_saw saw;
            frame_stick_saw_at(stick, k, &saw);
            const double mitre = saw.role == FRAME_STICK_PLUMB_CUT ? out.post_cut_deg : out.beam_cut_deg;
            ck_assert_double_eq_tol(saw.mitre_deg, mitre, 1e-8);
        }
        frame_stick_free(stick);
    }
    frame_brace_in in;
    frame_brace_out out;
    frame_brace_in_init(&in);
    in.run_in = in.rise_in = 3;
    in.depth_in = 3.5;
    ck_assert_int_eq(frame_brace(&in, &out, NULL), FRAME_IMPOSSIBLE);
}
END_TEST

START_TEST(a_polygon_from_any_of_its_sizes) {
    for (int sides = 3; sides <= 100; sides++) {
        frame_polygon_plan_in in;
        frame_polygon_plan_out by_run, by_side, by_corner, by_width;
        frame_polygon_plan_in_init(&in);
        in.sides = sides;
        in.run_in = 100;
        ck_assert_int_eq(frame_polygon_plan(&in, &by_run, NULL), FRAME_OK);
        in.run_in = FRAME_NOT_GIVEN, in.side_in = by_run.side_in;
        ck_assert_int_eq(frame_polygon_plan(&in, &by_side, NULL), FRAME_OK);
        in.side_in = FRAME_NOT_GIVEN, in.corner_run_in = by_run.corner_run_in;
        ck_assert_int_eq(frame_polygon_plan(&in, &by_corner, NULL), FRAME_OK);
        in.corner_run_in = FRAME_NOT_GIVEN, in.width_in = 200;
        ck_assert_int_eq(frame_polygon_plan(&in, &by_width, NULL), FRAME_OK);
        ck_assert_double_eq_tol(by_side.area_in2, by_run.area_in2, 1e-6);
        ck_assert_double_eq_tol(by_corner.area_in2, by_run.area_in2, 1e-6);
        ck_assert_double_eq_tol(by_width.area_in2, by_run.area_in2, 1e-6);
        /* Closed forms: n r^2 tan(pi/n), and the corner by Pythagoras. */
        ck_assert_double_eq_tol(by_run.area_in2, sides * 1e4 * tan(acos(-1) / sides), 1e-6);
        ck_assert_double_eq_tol(hypot(100, by_run.side_in / 2), by_run.corner_run_in, 1e-9);
        in.run_in = 3;
        ck_assert_int_eq(frame_polygon_plan(&in, &by_run, NULL), FRAME_CONFLICT);
        in.run_in = in.width_in = FRAME_NOT_GIVEN;
        ck_assert_int_eq(frame_polygon_plan(&in, &by_run, NULL), FRAME_REQUIRED);
    }
}
END_TEST

START_TEST(the_place_of_a_ridge) {
    for (int i = 0; i < 200; i++) {
        frame_ridge_place_in in;
        frame_ridge_place_out out;
        frame_ridge_place_in_init(&in);
        in.span_in = 240 + i;
        in.slope_a = 0.2 + i % 7 * 0.2;
        in.slope_b = 0.3 + i % 5 * 0.3;
        in.plate_b_in = i % 9 * 4 - 16;
        ck_assert_int_eq(frame_ridge_place(&in, &out, NULL), FRAME_OK);
        ck_assert_double_eq_tol(out.run_a_in + out.run_b_in, in.span_in, 1e-9);
        ck_assert_double_eq_tol(out.rise_a_in, in.plate_b_in + out.rise_b_in, 1e-9);
    }
    frame_ridge_place_in in;
    frame_ridge_place_out out;
    frame_ridge_place_in_init(&in);
    in.span_in = 100;
    in.slope_a = 0.5;
    in.plate_b_in = 60;
    ck_assert_int_eq(frame_ridge_place(&in, &out, NULL), FRAME_IMPOSSIBLE);
    ck_assert_str_eq(frame_error_field(), "plate_b_in");
}
END_TEST

START_TEST(the_workings_re_evaluate) {
    frame_working *working;
    frame_text *problems;
    frame_brace_in brace;
    frame_brace_out brace_out;
    frame_polygon_plan_in polygon;
    frame_polygon_plan_out polygon_out;
    frame_ridge_place_in ridge;
    frame_ridge_place_out ridge_out;
    ck_assert_int_eq(frame_working_new(&working), FRAME_OK);
    ck_assert_int_eq(frame_text_new(&problems), FRAME_OK);
    frame_brace_in_init(&brace), frame_polygon_plan_in_init(&polygon), frame_ridge_place_in_init(&ridge);
    brace.run_in = 30, brace.rise_in = 40, brace.depth_in = 3.5;
    polygon.sides = 7, polygon.side_in = 40;
    ridge.span_in = 300, ridge.slope_a = 0.5, ridge.slope_b = 0.7, ridge.plate_b_in = 9;
    ck_assert_int_eq(frame_brace(&brace, &brace_out, working), FRAME_OK);
    ck_assert_int_eq(frame_polygon_plan(&polygon, &polygon_out, working), FRAME_OK);
    ck_assert_int_eq(frame_ridge_place(&ridge, &ridge_out, working), FRAME_OK);
    ck_assert_msg(frame_working_check(working, problems) == FRAME_OK, "%s", frame_text_chars(problems));
    ck_assert_uint_gt(frame_working_step_count(working), 20);
    frame_text_free(problems);
    frame_working_free(working);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("roof_measures");
    TCase *tests = tcase_create("all");
    tcase_add_test(tests, a_brace);
    tcase_add_test(tests, a_polygon_from_any_of_its_sizes);
    tcase_add_test(tests, the_place_of_a_ridge);
    tcase_add_test(tests, the_workings_re_evaluate);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
