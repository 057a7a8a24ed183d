/* Combinations for strength design (LRFD), and those of ASCE 7-22. */
#include <check.h>
#include <math.h>

#include <frame/load.h>
#include <frame/text.h>
#include <frame/working.h>

typedef struct solved {
    frame_load_combinations_out out;
    frame_load_combinations_row rows[12];
    size_t count;
} solved;

static solved solve(frame_load_combinations_in *in) {
    frame_load_combinations *answer;
    frame_working *working;
    frame_text *wrong;
    solved s;
    ck_assert(!frame_working_new(&working));
    ck_assert_msg(!frame_load_combinations_solve(in, &answer, working), "%s", frame_error_text());
    ck_assert(!frame_text_new(&wrong));
    ck_assert_msg(!frame_working_check(working, wrong), "%s", frame_text_chars(wrong));
    frame_text_free(wrong);
    ck_assert(!frame_load_combinations_result(answer, &s.out));
    s.count = frame_load_combinations_row_count(answer);
    ck_assert_uint_le(s.count, 12);
    for (size_t i = 0; i < s.count; i++) ck_assert(!frame_load_combinations_row_at(answer, i, &s.rows[i]));
    frame_load_combinations_free(answer);
    frame_working_free(working);
    return s;
}

static frame_load_combinations_in loads(double dead, double live, double roof_live, double snow, double wind) {
    frame_load_combinations_in in;
    frame_load_combinations_in_init(&in);
    in.dead_plf = dead, in.live_plf = live, in.roof_live_plf = roof_live, in.snow_plf = snow, in.wind_plf = wind;
    in.method = FRAME_METHOD_LRFD;
    return in;
}

static void expect(const solved *s, frame_load_combination which, double total, double lambda) {
    for (size_t i = 0; i < s->count; i++)
        if (s->rows[i].combination == which) {
            ck_assert_double_eq_tol(s->rows[i].total_plf, total, 1e-9);
            ck_assert_double_eq_tol(s->rows[i].time_effect_factor, lambda, 1e-12);
            ck_assert_double_eq(s->rows[i].load_duration_factor, 1);
            return;
        }
    ck_abort_msg("combination %d is not there", which);
}

/* The gravity rows of a published problem of concrete design, exterior column, P: 622.4 D, 73.9 L, 8.6 Lr (printed
 * 871.4, 869.4 and, without the live load's half that later editions leave to the user, 1.2D + 1.6Lr). Its wind goes by
 * factors of 2005. */
START_TEST(published_gravity) {
    frame_load_combinations_in in = loads(622.4, 73.9, 8.6, 0, 0);
    const solved s = solve(&in);
    ck_assert_uint_eq(s.count, 3);
    expect(&s, FRAME_COMBINATION_LRFD_D, 871.36, 0.6);
    expect(&s, FRAME_COMBINATION_LRFD_L_LR, 869.42, 0.8);
    expect(&s, FRAME_COMBINATION_LRFD_LR, 1.2 * 622.4 + 1.6 * 8.6 + 73.9, 0.8);
    ck_assert_int_eq(s.out.governs, FRAME_COMBINATION_LRFD_D);
    ck_assert_double_eq_tol(s.out.time_effect_factor, 0.6, 1e-12);
}
END_TEST

/* 80 D and 24 L: printed 134. */
START_TEST(published_column) {
    frame_load_combinations_in in = loads(80, 24, 0, 0, 0);
    const solved s = solve(&in);
    expect(&s, FRAME_COMBINATION_LRFD_L, 134.4, 0.8);
    ck_assert_int_eq(s.out.governs, FRAME_COMBINATION_LRFD_D); /* 112/0.6 is more than 134.4/0.8 */
    ck_assert_double_eq_tol(s.out.greatest_plf, 134.4, 1e-9);
}
END_TEST

START_TEST(all_of_7_16) {
    frame_load_combinations_in in = loads(10, 40, 20, 30, -50);
    const solved s = solve(&in);
    ck_assert_uint_eq(s.count, 10);
    expect(&s, FRAME_COMBINATION_LRFD_L_S, 12 + 64 + 15, 0.8);
    expect(&s, FRAME_COMBINATION_LRFD_S, 12 + 48 + 40, 0.8);
    expect(&s, FRAME_COMBINATION_LRFD_LR_W, 12 + 32 - 25, 0.8);
    expect(&s, FRAME_COMBINATION_LRFD_S_W, 12 + 48 - 25, 0.8);
    expect(&s, FRAME_COMBINATION_LRFD_W_LR, 12 - 50 + 40 + 10, 1);
    expect(&s, FRAME_COMBINATION_LRFD_W_S, 12 - 50 + 40 + 15, 1);
    expect(&s, FRAME_COMBINATION_LRFD_W_UPLIFT, 9 - 50, 1);
    ck_assert_double_eq_tol(s.out.least_plf, -41, 1e-9);
    ck_assert(s.out.cautions & 1u << FRAME_COMBINATIONS_CAUTION_UPLIFT);
}
END_TEST

/* Snow at strength level: whole in strength design, 0.7 in allowable stress design. */
START_TEST(snow_of_7_22) {
    frame_load_combinations_in in = loads(10, 40, 0, 30, 0);
    in.load_edition = FRAME_LOADS_ASCE_7_22;
    const solved strength = solve(&in);
    expect(&strength, FRAME_COMBINATION_LRFD_L_3S, 12 + 64 + 9, 0.8);
    expect(&strength, FRAME_COMBINATION_LRFD_1S, 12 + 30 + 40, 0.8);
    in.method = FRAME_METHOD_ASD;
    const solved allowable = solve(&in);
    ck_assert_uint_eq(allowable.count, 4);
    ck_assert_int_eq(allowable.rows[2].combination, FRAME_COMBINATION_D_7S);
    ck_assert_double_eq_tol(allowable.rows[2].total_plf, 31, 1e-9);
    ck_assert_double_eq_tol(allowable.rows[3].total_plf, 10 + 30 + 0.525 * 30, 1e-9);
    ck_assert_double_eq_tol(allowable.rows[3].load_duration_factor, 1.15, 1e-12);
    ck_assert_double_eq_tol(allowable.out.transient_plf, 30 + 0.525 * 30, 1e-9);
}
END_TEST

/* NDS table N3: 0.7 for stored goods, 1.25 for impact, where the live load leads. */
START_TEST(time_effects) {
    frame_load_combinations_in in = loads(10, 40, 0, 0, 0);
    in.live_duration = FRAME_DURATION_PERMANENT;
    solved s = solve(&in);
    expect(&s, FRAME_COMBINATION_LRFD_L, 76, 0.7);
    in.live_duration = FRAME_DURATION_IMPACT;
    s = solve(&in);
    expect(&s, FRAME_COMBINATION_LRFD_L, 76, 1.25);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("combinations for strength design");
    TCase *all = tcase_create("all");
    tcase_add_test(all, published_gravity);
    tcase_add_test(all, published_column);
    tcase_add_test(all, all_of_7_16);
    tcase_add_test(all, snow_of_7_22);
    tcase_add_test(all, time_effects);
    suite_add_tcase(suite, all);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_ENV);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
