/* Measured plans: what is known is found, what is wrong is named, what is not held is refused. */
#include <check.h>
#include <math.h>
#include <string.h>

#include <frame/frame.h>

static frame_survey_in in;
static frame_survey_out out;
static frame_survey *survey;
static frame_survey_distance distances[100];
static frame_survey_corner corners[20];

static void begin(void) {
    survey = NULL;
    frame_survey_in_init(&in);
    in.distances = distances;
    in.corners = corners;
}

static void measure(int a, int b, double length) {
    frame_survey_distance *distance = &distances[in.distance_count++];
    frame_survey_distance_init(distance);
    distance->corner_a = a;
    distance->corner_b = b;
    distance->length_in = length;
}

static void finish(void) {
    frame_survey_free(survey);
    survey = NULL;
}

static void solve(void) {
    finish();
    ck_assert_msg(frame_survey_solve(&in, &survey, NULL) == FRAME_OK, "%s", frame_error_text());
    frame_survey_result(survey, &out);
}

static frame_survey_point point_at(size_t index) {
    frame_survey_point point;
    ck_assert_int_eq(frame_survey_point_at(survey, index, &point), FRAME_OK);
    return point;
}

static void measure_all(const double (*at)[2], int count) {
    for (int i = 0; i < count; i++)
        for (int k = i + 1; k < count; k++) measure(i + 1, k + 1, hypot(at[k][0] - at[i][0], at[k][1] - at[i][1]));
}

START_TEST(a_triangle_by_its_sides) {
    begin();
    measure(1, 2, 36);
    measure(2, 3, 48);
    measure(3, 1, 60);
    solve();
    ck_assert_double_eq_tol(point_at(2).x_in, 36, 1e-9);
    ck_assert_double_eq_tol(point_at(2).y_in, 48, 1e-9); /* to the left: counterclockwise */
    ck_assert_double_eq_tol(point_at(1).angle_deg, 90, 1e-9);
    ck_assert_double_eq_tol(out.area_in2, 36 * 48 / 2.0, 1e-9);
    ck_assert_int_eq(out.to_spare, 0);
    ck_assert_double_eq(out.spread, FRAME_NOT_GIVEN);
    ck_assert(FRAME_HAS(out.cautions, FRAME_SURVEY_CAUTION_NONE_TO_SPARE));
    frame_survey_residual residual;
    frame_survey_residual_at(survey, 0, &residual);
    ck_assert_double_eq(residual.standardized, FRAME_NOT_GIVEN);
    ck_assert_double_eq(residual.would_be_in, FRAME_NOT_GIVEN);
    finish();
}
END_TEST

/* Sides that cannot close: none is to spare to check them, and still they do not agree. */
START_TEST(sides_that_cannot_close) {
    begin();
    measure(1, 2, 100);
    measure(2, 3, 40);
    measure(3, 1, 40);
    solve();
    ck_assert_int_eq(out.consistent, 0);
    ck_assert_int_eq(out.suspect, 0);
    ck_assert(FRAME_HAS(out.cautions, FRAME_SURVEY_CAUTION_CANNOT_TELL));
    distances[1].length_in = 60.01;
    solve();
    ck_assert_int_eq(out.consistent, 1);
    finish();
}
END_TEST

/* A rectangle whose diagonals differ: with one measurement to spare each could be the wrong one. */
START_TEST(diagonals_that_do_not_agree) {
    begin();
    measure(1, 2, 240);
    measure(2, 3, 144);
    measure(3, 4, 240);
    measure(4, 1, 144);
    measure(1, 3, hypot(240, 144));
    measure(2, 4, hypot(240, 144) + 2);
    solve();
    ck_assert_int_eq(out.consistent, 0);
    ck_assert_int_eq(out.to_spare, 1);
    ck_assert_int_eq(out.suspect, 0);
    ck_assert(FRAME_HAS(out.cautions, FRAME_SURVEY_CAUTION_CANNOT_TELL));
    frame_survey_residual residual;
    frame_survey_residual_at(survey, 5, &residual);
    ck_assert_double_eq_tol(residual.would_be_in, hypot(240, 144), 0.05); /* by all the others */
    distances[5].length_in -= 2;
    solve();
    ck_assert_int_eq(out.consistent, 1);
    ck_assert_double_lt(out.off_square_deg, 1e-6);
    finish();
}
END_TEST

/* A blunder in each distance in turn, among all distances of six corners: it is the one that is named. */
START_TEST(the_measurement_that_does_not_fit_is_named) {
    const double plan[6][2] = {{0, 0}, {240, 0}, {300, 90}, {240, 190}, {90, 210}, {-30, 120}};
    begin();
    measure_all(plan, 6);
    for (size_t i = 0; i < in.distance_count; i++) {
        distances[i].length_in += i % 2 ? 1.5 : -1.5;
        solve();
        ck_assert_int_eq(out.suspect, (int)i + 1);
        ck_assert(FRAME_HAS(out.cautions, FRAME_SURVEY_CAUTION_SUSPECT));
        frame_survey_residual residual;
        frame_survey_residual_at(survey, i, &residual);
        ck_assert_double_eq_tol(residual.would_be_in, distances[i].length_in + (i % 2 ? -1.5 : 1.5), 0.1);
        distances[i].length_in -= i % 2 ? 1.5 : -1.5;
    }
    solve();
    ck_assert_int_eq(out.consistent, 1);
    ck_assert(!FRAME_HAS(out.cautions, FRAME_SURVEY_CAUTION_SIDE));
    for (size_t i = 0; i < 6; i++) {
        ck_assert_double_eq_tol(point_at(i).x_in, plan[i][0], 1e-7);
        ck_assert_double_eq_tol(point_at(i).y_in, plan[i][1], 1e-7);
    }
    finish();
}
END_TEST

/* An L: its reentrant corner held by two sides alone needs a plan to say its side. */
START_TEST(a_reentrant_corner_needs_the_plan) {
    const double plan[6][2] = {{0, 0}, {200, 0}, {200, 100}, {120, 100}, {120, 180}, {0, 180}};
    const int pairs[9][2] = {{1, 2}, {2, 3}, {3, 4}, {4, 5}, {5, 6}, {6, 1}, {1, 3}, {3, 5}, {1, 5}};
    begin();
    for (int i = 0; i < 9; i++) {
        const double *a = plan[pairs[i][0] - 1], *b = plan[pairs[i][1] - 1];
        measure(pairs[i][0], pairs[i][1], hypot(b[0] - a[0], b[1] - a[1]));
    }
    solve();
    ck_assert(FRAME_HAS(out.cautions, FRAME_SURVEY_CAUTION_SIDE));
    ck_assert_double_gt(out.area_in2, 200 * 100 + 120 * 80); /* the corner lies outward */
    for (size_t i = 0; i < 6; i++) {
        frame_survey_corner_init(&corners[i]);
        corners[i].x_in = plan[i][0] + 500 + (double)i; /* about, and anywhere */
        corners[i].y_in = plan[i][1] - 300;
        corners[i].name = i == 3 ? "inner corner" : NULL;
    }
    in.corner_count = 6;
    solve();
    ck_assert(!FRAME_HAS(out.cautions, FRAME_SURVEY_CAUTION_SIDE));
    ck_assert_double_eq_tol(out.area_in2, 200 * 100 + 120 * 80, 1e-6);
    ck_assert_double_eq_tol(point_at(3).angle_deg, 270, 1e-9);
    ck_assert_str_eq(point_at(3).name, "inner corner");
    ck_assert_double_lt(out.off_square_deg, 1e-6);
    finish();
}
END_TEST

START_TEST(what_is_not_held_is_refused) {
    begin();
    measure(1, 2, 100);
    ck_assert_int_eq(frame_survey_solve(&in, &survey, NULL), FRAME_IMPOSSIBLE);
    measure(2, 3, 100);
    measure(3, 4, 100);
    measure(4, 1, 100); /* a rhombus folds */
    ck_assert_int_eq(frame_survey_solve(&in, &survey, NULL), FRAME_IMPOSSIBLE);
    ck_assert_str_eq(frame_error_field(), "distances");
    for (int i = 0; i < 4; i++) {
        frame_survey_corner_init(&corners[i]);
        corners[i].x_in = i == 1 || i == 2 ? 100 : 0;
        corners[i].y_in = i > 1 ? 100 : 0;
    }
    in.corner_count = 4; /* placed by the plan, but still not held */
    ck_assert_int_eq(frame_survey_solve(&in, &survey, NULL), FRAME_IMPOSSIBLE);
    measure(1, 3, 130);
    solve();
    ck_assert_int_eq(out.to_spare, 0);
    finish();
    distances[0].corner_b = 1;
    ck_assert_int_eq(frame_survey_solve(&in, &survey, NULL), FRAME_IMPOSSIBLE);
    ck_assert_str_eq(frame_error_field(), "distances[0].corner_b");
    ck_assert_ptr_null(survey);
}
END_TEST

START_TEST(distances_that_cannot_meet) {
    begin();
    measure(1, 2, 100);
    measure(2, 3, 20);
    measure(3, 1, 20); /* 60 in are missing: settled as near as can be, and said */
    measure(1, 4, 90);
    measure(2, 4, 90);
    measure(3, 4, 60);
    solve();
    ck_assert_int_eq(out.consistent, 0);
    for (size_t i = 0; i < 4; i++) ck_assert(isfinite(point_at(i).x_in) && isfinite(point_at(i).y_in));
    finish();
}
END_TEST

/* Twice the error given makes residuals count half. */
START_TEST(errors_weigh) {
    begin();
    measure(1, 2, 100);
    measure(1, 2, 101);
    measure(2, 3, 100);
    measure(3, 1, 100);
    solve();
    ck_assert_double_eq_tol(point_at(1).x_in, 100.5, 1e-9);
    distances[1].error_in = 0.25; /* a quarter of the weight of the first */
    solve();
    ck_assert_double_eq_tol(point_at(1).x_in, 100.2, 1e-9);
    ck_assert_double_eq_tol(point_at(1).error_in, sqrt(1 / (1 / 0.125 / 0.125 + 1 / 0.25 / 0.25)), 1e-9);
    finish();
}
END_TEST

START_TEST(working_says_what_was_done) {
    const double plan[4][2] = {{0, 0}, {240, 0}, {240, 144}, {0, 144}};
    frame_working *w = NULL;
    frame_text *text = NULL;
    begin();
    measure_all(plan, 4);
    ck_assert(!frame_working_new(&w) && !frame_text_new(&text));
    ck_assert_int_eq(frame_survey_solve(&in, &survey, w), FRAME_OK);
    ck_assert_msg(!frame_working_check(w, text), "%s", frame_text_chars(text));
    frame_working_free(w);
    frame_text_free(text);
    finish();
}
END_TEST

int main(void) {
    Suite *suite = suite_create("survey");
    TCase *tests = tcase_create("all");
    tcase_add_test(tests, a_triangle_by_its_sides);
    tcase_add_test(tests, sides_that_cannot_close);
    tcase_add_test(tests, diagonals_that_do_not_agree);
    tcase_add_test(tests, the_measurement_that_does_not_fit_is_named);
    tcase_add_test(tests, a_reentrant_corner_needs_the_plan);
    tcase_add_test(tests, what_is_not_held_is_refused);
    tcase_add_test(tests, distances_that_cannot_meet);
    tcase_add_test(tests, errors_weigh);
    tcase_add_test(tests, working_says_what_was_done);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
