/* Joists ranked: by cost and by board feet, the losers' reasons, refusals. */
#include "lumber_names.h"

static frame_joist_sizes_in floor_of(double span_in) {
    frame_joist_sizes_in in;
    frame_joist_sizes_in_init(&in);
    in.use = FRAME_USE_FLOOR, in.species = species("SPF"), in.grade = grade("No.2");
    in.span_in = span_in, in.live_psf = 40, in.dead_psf = 10;
    return in;
}

static frame_joist_sizes *run(const frame_joist_sizes_in *in, frame_joist_sizes_out *out) {
    frame_joist_sizes *answer;
    frame_working *working;
    ck_assert(!frame_working_new(&working));
    ck_assert_msg(!frame_joist_sizes_solve(in, &answer, working), "%s", frame_error_text());
    working_is_sound(working);
    frame_working_free(working);
    ck_assert(!frame_joist_sizes_result(answer, out));
    return answer;
}

static frame_joist_sizes_option option_of(const frame_joist_sizes *answer, size_t i) {
    frame_joist_sizes_option option;
    ck_assert(!frame_joist_sizes_option_at(answer, i, &option));
    return option;
}

START_TEST(by_board_feet) {
    const frame_joist_sizes_in in = floor_of(162);
    frame_joist_sizes_out out;
    frame_joist_sizes *answer = run(&in, &out);
    ck_assert_int_eq(out.tried_count, 16);
    ck_assert_int_eq(out.passes, 1);
    double before = 0;
    for (size_t i = 0; i < 16; i++) {
        const frame_joist_sizes_option o = option_of(answer, i);
        frame_joist_check_in check;
        frame_joist_check_out found;
        frame_joist_check_in_init(&check);
        check.use = FRAME_USE_FLOOR, check.species = in.species, check.grade = in.grade, check.size = o.size;
        check.span_in = 162, check.live_psf = 40, check.dead_psf = 10, check.spacing_in = o.spacing_in;
        ck_assert(!frame_joist_check(&check, &found, NULL));
        ck_assert_double_eq(o.ratio, found.ratio);
        ck_assert_int_eq(o.passes, (int32_t)i < out.passing_count);
        if (!o.passes) {
            ck_assert_ptr_nonnull(strstr(o.reason, "fails in "));
            continue;
        }
        ck_assert_double_ge(o.board_feet_per_ft2, before);
        before = o.board_feet_per_ft2;
    }
    ck_assert_str_eq(option_of(answer, 0).reason, "the fewest board feet of those that hold");
    ck_assert_int_eq(out.size, option_of(answer, 0).size);
    frame_joist_sizes_free(answer);
}
END_TEST

START_TEST(snow_basis) {
    frame_joist_sizes_in in = floor_of(120);
    in.use = FRAME_USE_RAFTER, in.live_psf = 0, in.snow_psf = 30;
    for (int i = 0; i < 2; i++) {
        frame_joist_sizes_out out;
        if (i == 1) in.load_edition = FRAME_LOADS_ASCE_7_22;
        frame_joist_sizes_free(run(&in, &out));
        ck_assert_int_eq((int)FRAME_HAS(out.cautions, FRAME_JOIST_SIZES_CAUTION_SNOW_BASIS), i == 0);
    }
}
END_TEST

START_TEST(by_cost) {
    frame_joist_choice choices[2];
    frame_joist_sizes_in in = floor_of(150);
    frame_joist_sizes_out out;
    for (int i = 0; i < 2; i++) frame_joist_choice_init(&choices[i]);
    choices[0].size = FRAME_SIZE(2, 10), choices[0].spacing_in = 16, choices[0].price_per_ft = 1.2;
    choices[1].size = FRAME_SIZE(2, 12), choices[1].spacing_in = 24, choices[1].price_per_ft = 1.5;
    in.choices = choices, in.choice_count = 2;
    frame_joist_sizes *answer = run(&in, &out);
    ck_assert_double_eq_tol(out.cost_per_ft2, 1.5 / 2, 1e-12); /* one in 2 ft, beside 1.2 x 3/4 */
    ck_assert_double_eq_tol(option_of(answer, 1).cost_per_ft2, 0.9, 1e-12);
    ck_assert_str_eq(option_of(answer, 1).reason, "holds, and costs 0.15 more than the best on a square foot");
    frame_joist_sizes_free(answer);
    choices[1].price_per_ft = FRAME_NOT_GIVEN;
    answer = run(&in, &out);
    ck_assert(out.cautions >> FRAME_JOIST_SIZES_CAUTION_BOARD_FEET & 1);
    frame_joist_sizes_free(answer);
}
END_TEST

START_TEST(refusals) {
    frame_joist_sizes_in in = floor_of(150);
    frame_joist_sizes *answer = NULL;
    frame_joist_choice choice;
    frame_joist_sizes_out out;
    in.live_psf = FRAME_NOT_GIVEN;
    ck_assert_int_eq(frame_joist_sizes_solve(&in, &answer, NULL), FRAME_REQUIRED);
    in = floor_of(150), in.most_depth_in = 3;
    ck_assert_int_eq(frame_joist_sizes_solve(&in, &answer, NULL), FRAME_NO_VALUE);
    in = floor_of(150);
    frame_joist_choice_init(&choice);
    in.choices = &choice, in.choice_count = 1;
    ck_assert_int_eq(frame_joist_sizes_solve(&in, &answer, NULL), FRAME_REQUIRED);
    ck_assert_str_eq(frame_error_field(), "choices[0].size");
    choice.size = FRAME_SIZE(2, 6), in.span_in = 400; /* none holds */
    answer = run(&in, &out);
    ck_assert_int_eq(out.passes, 0);
    ck_assert(out.cautions >> FRAME_JOIST_SIZES_CAUTION_NONE & 1);
    ck_assert_double_eq(out.ratio, FRAME_NOT_GIVEN);
    frame_joist_sizes_free(answer);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("joist_sizes");
    TCase *all = tcase_create("all");
    tcase_add_test(all, by_board_feet);
    tcase_add_test(all, by_cost);
    tcase_add_test(all, snow_basis);
    tcase_add_test(all, refusals);
    suite_add_tcase(suite, all);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_ENV);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
