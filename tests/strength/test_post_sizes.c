/* Posts ranked: by board feet and by cost, the plate that governs, refusals. */
#include "lumber_names.h"

static frame_post_sizes_in load_of(double axial_lb) {
    frame_post_sizes_in in;
    frame_post_sizes_in_init(&in);
    in.species = species("DFL"), in.grade = grade("No.2");
    in.length_in = 96, in.axial_lb = axial_lb;
    return in;
}

static frame_post_sizes *run(const frame_post_sizes_in *in, frame_post_sizes_out *out) {
    frame_post_sizes *answer;
    frame_working *working;
    ck_assert(!frame_working_new(&working));
    ck_assert_msg(!frame_post_sizes_solve(in, &answer, working), "%s", frame_error_text());
    working_is_sound(working);
    frame_working_free(working);
    ck_assert(!frame_post_sizes_result(answer, out));
    return answer;
}

START_TEST(by_board_feet) {
    frame_post_sizes_in in = load_of(9000);
    frame_post_sizes_out out;
    frame_post_sizes *answer = run(&in, &out);
    ck_assert_int_eq(out.tried_count, 9);
    double before = 0;
    for (size_t i = 0; i < 9; i++) {
        frame_post_sizes_option o;
        frame_column_check_in check;
        frame_column_check_out found;
        ck_assert(!frame_post_sizes_option_at(answer, i, &o));
        frame_column_check_in_init(&check);
        check.species = in.species, check.grade = in.grade, check.size = o.size, check.plies = o.plies;
        if (o.plies > 1) check.fastening = FRAME_COLUMN_NAILED;
        check.length_in = 96, check.axial_lb = 9000;
        ck_assert(!frame_column_check(&check, &found, NULL));
        ck_assert_double_eq(o.ratio, found.ratio);
        ck_assert_int_eq(o.passes, (int32_t)i < out.passing_count);
        if (!o.passes) continue;
        ck_assert_double_ge(o.board_feet, before);
        before = o.board_feet;
    }
    frame_post_sizes_free(answer);
    in.plate_species = species("SPF"), in.axial_lb = 8000; /* 425 psi on 12.25 in2 carries 5,206 lb */
    answer = run(&in, &out);
    ck_assert_int_ne(out.size, FRAME_SIZE(4, 4));
    frame_post_sizes_free(answer);
}
END_TEST

START_TEST(by_cost_and_refusals) {
    frame_post_choice choices[2];
    frame_post_sizes_in in = load_of(4000);
    frame_post_sizes_out out;
    frame_post_sizes *answer = NULL;
    for (int i = 0; i < 2; i++) frame_post_choice_init(&choices[i]);
    choices[0].size = FRAME_SIZE(4, 4), choices[0].price_per_ft = 2;
    choices[1].size = FRAME_SIZE(6, 6), choices[1].price_per_ft = 5;
    in.choices = choices, in.choice_count = 2;
    answer = run(&in, &out);
    ck_assert_double_eq_tol(out.cost, 16, 1e-12);
    ck_assert_int_eq(out.size, FRAME_SIZE(4, 4));
    frame_post_sizes_free(answer);
    in.most_depth_in = 2;
    ck_assert_int_eq(frame_post_sizes_solve(&in, &answer, NULL), FRAME_NO_VALUE);
    in = load_of(4000), in.length_in = 400; /* 4x4: l_e/d over 50: that choice's reason */
    in.choices = choices, in.choice_count = 1;
    answer = run(&in, &out);
    ck_assert_int_eq(out.passes, 0);
    frame_post_sizes_option o;
    ck_assert(!frame_post_sizes_option_at(answer, 0, &o));
    ck_assert_ptr_nonnull(strstr(o.reason, "not checked: "));
    frame_post_sizes_free(answer);
    in.species = FRAME_NOT_GIVEN_INT;
    ck_assert_int_eq(frame_post_sizes_solve(&in, &answer, NULL), FRAME_REQUIRED);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("post_sizes");
    TCase *all = tcase_create("all");
    tcase_add_test(all, by_board_feet);
    tcase_add_test(all, by_cost_and_refusals);
    suite_add_tcase(suite, all);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_ENV);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
