/* Combinations of loads: their totals, their load duration factors, which governs. */
#include <check.h>
#include <math.h>

#include <frame/load.h>
#include <frame/text.h>
#include <frame/working.h>

static frame_load_combinations_in loads(double dead, double live, double roof_live, double snow) {
    frame_load_combinations_in in;
    frame_load_combinations_in_init(&in);
    in.dead_plf = dead;
    in.live_plf = live;
    in.roof_live_plf = roof_live;
    in.snow_plf = snow;
    return in;
}

static frame_load_combinations *solve(const frame_load_combinations_in *in) {
    frame_load_combinations *answer = NULL;
    ck_assert_msg(!frame_load_combinations_solve(in, &answer, NULL), "%s", frame_error_text());
    return answer;
}

/* The factor of a combination is that of its shortest load. Stored values of a structural library's tests, NDS
 * table 2.3.2. */
START_TEST(duration_factors) {
    static const double expected[6] = {0.9, 1.0, 1.25, 1.15, 1.25, 1.15};
    static const double totals[6] = {10, 50, 30, 40, 10 + 0.75 * 60, 10 + 0.75 * 70};
    const frame_load_combinations_in in = loads(10, 40, 20, 30);
    frame_load_combinations *answer = solve(&in);
    frame_load_combinations_row row;
    ck_assert_uint_eq(frame_load_combinations_row_count(answer), 6);
    for (size_t i = 0; i < 6; i++) {
        ck_assert_int_eq(frame_load_combinations_row_at(answer, i, &row), FRAME_OK);
        ck_assert_int_eq(row.combination, (int)i + 1);
        ck_assert_double_eq(row.load_duration_factor, expected[i]);
        ck_assert_double_eq_tol(row.total_plf, totals[i], 1e-12);
        ck_assert_double_eq_tol(row.equivalent_plf, totals[i] / expected[i], 1e-12);
    }
    frame_load_combinations_free(answer);
}
END_TEST

START_TEST(loads_of_zero_form_no_combination) {
    const frame_load_combinations_in in = loads(10, 0, 0, 30);
    frame_load_combinations *answer = solve(&in);
    frame_load_combinations_out out;
    ck_assert_uint_eq(frame_load_combinations_row_count(answer), 2);
    ck_assert_int_eq(frame_load_combinations_result(answer, &out), FRAME_OK);
    ck_assert_int_eq(out.governs, FRAME_COMBINATION_D_S);
    ck_assert_double_eq(out.greatest_plf, 40);
    ck_assert_double_eq(out.transient_plf, 30);
    frame_load_combinations_free(answer);
}
END_TEST

START_TEST(dead_load_may_govern) {
    frame_load_combinations_in in = loads(100, 5, 0, 0);
    frame_load_combinations *answer = solve(&in);
    frame_load_combinations_out out;
    frame_load_combinations_result(answer, &out);
    ck_assert_int_eq(out.governs, FRAME_COMBINATION_D);
    ck_assert_double_eq(out.load_duration_factor, 0.9);
    ck_assert_double_eq(out.greatest_plf, 105);
    frame_load_combinations_free(answer);
}
END_TEST

/* Goods stored for good take the live load down to the duration of the dead load. */
START_TEST(stored_goods) {
    frame_load_combinations_in in = loads(10, 100, 0, 0);
    in.live_duration = FRAME_DURATION_PERMANENT;
    frame_load_combinations *answer = solve(&in);
    frame_load_combinations_out out;
    frame_load_combinations_result(answer, &out);
    ck_assert_int_eq(out.governs, FRAME_COMBINATION_D_L);
    ck_assert_double_eq(out.load_duration_factor, 0.9);
    frame_load_combinations_free(answer);
}
END_TEST

START_TEST(working_is_sound) {
    const frame_load_combinations_in in = loads(10, 40, 20, 30);
    frame_load_combinations *answer = NULL;
    frame_working *working;
    frame_text *text;
    ck_assert(!frame_working_new(&working) && !frame_text_new(&text));
    ck_assert_int_eq(frame_load_combinations_solve(&in, &answer, working), FRAME_OK);
    ck_assert_msg(!frame_working_check(working, text), "%s", frame_text_chars(text));
    frame_load_combinations_free(answer);
    frame_working_free(working);
    frame_text_free(text);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("load_combinations");
    TCase *tests = tcase_create("load_combinations");
    tcase_add_test(tests, duration_factors);
    tcase_add_test(tests, loads_of_zero_form_no_combination);
    tcase_add_test(tests, dead_load_may_govern);
    tcase_add_test(tests, stored_goods);
    tcase_add_test(tests, working_is_sound);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
