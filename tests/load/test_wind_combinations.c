/* Combinations with wind: their totals and C_D, uplift, the working. */
#include <check.h>
#include <math.h>

#include <frame/load.h>
#include <frame/text.h>
#include <frame/working.h>

static frame_load_combinations_out solve(double dead, double live, double roof_live, double snow, double wind,
                                         frame_load_combinations_row *rows, size_t *count) {
    frame_load_combinations_in in;
    frame_load_combinations *answer;
    frame_load_combinations_out out;
    frame_load_combinations_in_init(&in);
    in.dead_plf = dead, in.live_plf = live, in.roof_live_plf = roof_live, in.snow_plf = snow, in.wind_plf = wind;
    ck_assert_msg(!frame_load_combinations_solve(&in, &answer, NULL), "%s", frame_error_text());
    ck_assert(!frame_load_combinations_result(answer, &out));
    *count = frame_load_combinations_row_count(answer);
    for (size_t i = 0; i < *count; i++) ck_assert(!frame_load_combinations_row_at(answer, i, &rows[i]));
    frame_load_combinations_free(answer);
    return out;
}

/* ASCE 7-16 2.4.1 (5) to (7), every load there. Stored values of a structural library's tests: C_D of any combination
 * with wind is 1.6 (NDS 2.3.2, secondary). */
START_TEST(all_ten) {
    frame_load_combinations_row rows[12];
    size_t count;
    const frame_load_combinations_out out = solve(10, 40, 20, 30, 50, rows, &count);
    const double totals[] = {40, 10 + 30 + 22.5 + 15, 10 + 30 + 22.5 + 22.5, 6 + 30};
    ck_assert_uint_eq(count, 10);
    for (size_t i = 0; i < 10; i++) ck_assert_int_eq(rows[i].combination, (int)i + 1);
    for (int i = 0; i < 4; i++) {
        ck_assert_double_eq_tol(rows[6 + i].total_plf, totals[i], 1e-12);
        ck_assert_double_eq(rows[6 + i].load_duration_factor, 1.6);
        ck_assert_double_eq_tol(rows[6 + i].equivalent_plf, totals[i] / 1.6, 1e-12);
    }
    ck_assert_double_eq_tol(out.greatest_plf, 85, 1e-12);
    ck_assert_int_eq(out.governs, FRAME_COMBINATION_D_L_S); /* 62.5/1.15 is more than 85/1.6 */
    ck_assert_double_eq_tol(out.governing_plf, 62.5, 1e-12);
    ck_assert_double_eq_tol(out.least_plf, 10, 1e-12);
}
END_TEST

START_TEST(wind_governs) {
    frame_load_combinations_row rows[12];
    size_t count;
    const frame_load_combinations_out out = solve(10, 0, 0, 0, 500, rows, &count);
    ck_assert_uint_eq(count, 3); /* D, D + 0.6W, 0.6D + 0.6W */
    ck_assert_int_eq(out.governs, FRAME_COMBINATION_D_W);
    ck_assert_double_eq_tol(out.governing_plf, 310, 1e-12);
    ck_assert_double_eq(out.load_duration_factor, 1.6);
}
END_TEST

START_TEST(uplift) {
    frame_load_combinations_row rows[12];
    size_t count;
    frame_load_combinations_out out = solve(10, 0, 0, 30, -50, rows, &count);
    ck_assert_double_eq_tol(out.least_plf, 6 - 30, 1e-12);
    ck_assert(FRAME_HAS(out.cautions, FRAME_COMBINATIONS_CAUTION_UPLIFT));
    ck_assert_int_eq(out.governs, FRAME_COMBINATION_D_S);
    out = solve(100, 0, 0, 30, -50, rows, &count);
    ck_assert_double_eq_tol(out.least_plf, 30, 1e-12);
    ck_assert(!FRAME_HAS(out.cautions, FRAME_COMBINATIONS_CAUTION_UPLIFT));
}
END_TEST

START_TEST(working_is_sound) {
    frame_load_combinations_in in;
    frame_load_combinations *answer;
    frame_working *w;
    frame_text *text;
    frame_load_combinations_in_init(&in);
    in.dead_plf = 10, in.live_plf = 40, in.roof_live_plf = 20, in.snow_plf = 30, in.wind_plf = -50;
    ck_assert(!frame_working_new(&w) && !frame_text_new(&text));
    ck_assert(!frame_load_combinations_solve(&in, &answer, w));
    ck_assert_msg(!frame_working_check(w, text), "%s", frame_text_chars(text));
    frame_load_combinations_free(answer);
    frame_text_free(text);
    frame_working_free(w);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("combinations with wind");
    TCase *tests = tcase_create("load_combinations");
    tcase_add_test(tests, all_ten);
    tcase_add_test(tests, wind_governs);
    tcase_add_test(tests, uplift);
    tcase_add_test(tests, working_is_sound);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_ENV);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
