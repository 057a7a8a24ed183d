/* header_sizes: each option is the beam_check it says it is, the order, the reasons, what is refused. */
#include "lumber_names.h"

#define SAME_AS(value, wanted) ck_assert_double_eq_tol(value, wanted, 1e-12 * (fabs((double)(wanted)) + 1e-3))

static frame_header_sizes_in opening(void) {
    frame_header_sizes_in in;
    frame_header_sizes_in_init(&in);
    in.span_in = 75;
    in.species = species("SPF");
    in.grade = grade("No.2");
    in.dead_plf = 120;
    in.snow_plf = 310;
    in.bearing_in = 3;
    return in;
}

static frame_header_sizes *run(const frame_header_sizes_in *in, frame_header_sizes_out *out) {
    frame_header_sizes *answer;
    ck_assert_msg(!frame_header_sizes_solve(in, &answer, NULL), "%s", frame_error_text());
    ck_assert(!frame_header_sizes_result(answer, out));
    ck_assert_int_eq((int)frame_header_sizes_option_count(answer), out->tried_count);
    return answer;
}

static frame_header_sizes_option option_of(const frame_header_sizes *answer, size_t i) {
    frame_header_sizes_option option;
    ck_assert(!frame_header_sizes_option_at(answer, i, &option));
    return option;
}

START_TEST(each_option_is_a_beam_check) {
    frame_header_sizes_out out;
    const frame_header_sizes_in in = opening();
    frame_header_sizes *answer = run(&in, &out);
    ck_assert_int_eq(out.tried_count, 15);
    int passing = 0;
    for (size_t i = 0; i < 15; i++) {
        const frame_header_sizes_option o = option_of(answer, i);
        frame_beam_check_in check;
        frame_beam_check_out found;
        frame_beam_check_in_init(&check);
        check.size = o.size, check.plies = o.plies, check.species = in.species, check.grade = in.grade;
        check.span_in = 75, check.dead_plf = 120, check.snow_plf = 310, check.bearing_in = 3, check.self_weight = 1;
        ck_assert(!frame_beam_check(&check, &found, NULL));
        SAME_AS(o.ratio, found.ratio);
        SAME_AS(o.bending_ratio, found.bending_ratio);
        SAME_AS(o.bearing_needed_in, found.bearing_needed_in);
        ck_assert_int_eq(o.passes, found.passes);
        ck_assert_int_eq(o.governs, found.governs);
        passing += o.passes;
    }
    ck_assert_int_eq(out.passing_count, passing);
    ck_assert_int_eq(out.size, FRAME_SIZE(2, 8));
    ck_assert_int_eq(out.plies, 2);
    SAME_AS(out.board_feet, 2 * 8 / 12.0 * 78 / 12 * 2);
    ck_assert(FRAME_HAS(out.cautions, FRAME_HEADER_CAUTION_BOARD_FEET));
    ck_assert_double_eq(out.cost, FRAME_NOT_GIVEN);
    frame_header_sizes_free(answer);
}
END_TEST

/* Those that hold come first and in the order of what they take; the others by how near they are. */
START_TEST(strength_design) {
    frame_header_sizes_out out;
    frame_header_sizes_in in = opening();
    in.method = FRAME_METHOD_LRFD;
    frame_header_sizes *answer = run(&in, &out);
    const frame_header_sizes_option o = option_of(answer, 0);
    frame_beam_check_in check;
    frame_beam_check_out found;
    frame_beam_check_in_init(&check);
    check.size = o.size, check.plies = o.plies, check.species = in.species, check.grade = in.grade;
    check.span_in = 75, check.dead_plf = 120, check.snow_plf = 310, check.bearing_in = 3, check.self_weight = 1;
    check.method = FRAME_METHOD_LRFD;
    ck_assert(!frame_beam_check(&check, &found, NULL));
    SAME_AS(o.ratio, found.ratio);
    ck_assert_int_eq(o.combination, found.combination);
    frame_header_sizes_free(answer);
}
END_TEST

/* Snow is of a basis, which the edition says. */
START_TEST(snow_basis) {
    frame_header_sizes_in in = opening();
    for (int i = 0; i < 3; i++) {
        frame_header_sizes_out out;
        if (i == 1) in.load_edition = FRAME_LOADS_ASCE_7_22;
        if (i == 2) in.load_edition = FRAME_LOADS_ASCE_7_16, in.snow_plf = 0;
        frame_header_sizes_free(run(&in, &out));
        ck_assert_int_eq((int)FRAME_HAS(out.cautions, FRAME_HEADER_CAUTION_SNOW_BASIS), i == 0);
    }
}
END_TEST

START_TEST(order_and_reasons) {
    frame_header_sizes_out out;
    const frame_header_sizes_in in = opening();
    frame_header_sizes *answer = run(&in, &out);
    for (size_t i = 1; i < 15; i++) {
        const frame_header_sizes_option before = option_of(answer, i - 1), o = option_of(answer, i);
        ck_assert(before.passes >= o.passes);
        if (o.passes) ck_assert_double_ge(o.board_feet, before.board_feet);
        if (!before.passes) ck_assert_double_ge(o.ratio, before.ratio);
        ck_assert(strstr(o.reason, o.passes ? "holds" : "fails in"));
    }
    ck_assert_str_eq(option_of(answer, 0).reason, "the fewest board feet of those that hold");
    frame_header_sizes_free(answer);
}
END_TEST

static frame_header_choice choices[3];

static frame_header_sizes_in priced(void) {
    frame_header_sizes_in in = opening();
    for (int i = 0; i < 3; i++) frame_header_choice_init(&choices[i]);
    choices[0].size = FRAME_SIZE(2, 8), choices[0].price_per_ft = 2, choices[0].plies = 2;
    choices[1].size = FRAME_SIZE(2, 10), choices[1].price_per_ft = 1.5, choices[1].plies = 2;
    choices[2].width_in = 1.75, choices[2].depth_in = 7.25, choices[2].plies = 1, choices[2].price_per_ft = 9;
    choices[2].fb_psi = 2600, choices[2].fv_psi = 285, choices[2].fc_perp_psi = 750, choices[2].e_psi = 1.9e6;
    choices[2].e_min_psi = 966000, choices[2].name = "laminated veneer lumber";
    in.choices = choices;
    in.choice_count = 3;
    return in;
}

START_TEST(prices_decide) {
    frame_header_sizes_out out;
    frame_header_sizes_in in = priced();
    frame_header_sizes *answer = run(&in, &out);
    ck_assert_int_eq(out.size, FRAME_SIZE(2, 10)); /* more wood, less money */
    SAME_AS(out.cost, 1.5 * 6.5 * 2);
    ck_assert(!FRAME_HAS(out.cautions, FRAME_HEADER_CAUTION_BOARD_FEET));
    ck_assert_int_eq(option_of(answer, 0).choice, 1);
    const frame_header_sizes_option engineered = option_of(answer, 2);
    ck_assert_str_eq(engineered.name, "laminated veneer lumber");
    ck_assert_double_eq(engineered.width_in, 1.75);
    frame_header_sizes_free(answer);
    choices[1].price_per_ft = FRAME_NOT_GIVEN; /* one price is missing: by board feet */
    answer = run(&in, &out);
    ck_assert(FRAME_HAS(out.cautions, FRAME_HEADER_CAUTION_BOARD_FEET));
    frame_header_sizes_free(answer);
}
END_TEST

START_TEST(limits_of_the_wall) {
    frame_header_sizes_out out;
    frame_header_sizes_in in = opening();
    in.most_width_in = 3.5;
    in.most_depth_in = 7.25;
    frame_header_sizes *answer = run(&in, &out);
    ck_assert_int_eq(out.tried_count, 6);
    for (size_t i = 0; i < 6; i++) {
        ck_assert_double_le(option_of(answer, i).width_in, 3.5);
        ck_assert_double_le(option_of(answer, i).depth_in, 7.25);
    }
    frame_header_sizes_free(answer);
    in.most_depth_in = 3;
    ck_assert_int_eq(frame_header_sizes_solve(&in, &answer, NULL), FRAME_NO_VALUE);
    ck_assert_str_eq(frame_error_field(), "choices");
}
END_TEST

START_TEST(none_holds) {
    frame_header_sizes_out out;
    frame_header_sizes_in in = opening();
    in.snow_plf = 9000;
    frame_header_sizes *answer = run(&in, &out);
    ck_assert_int_eq(out.passes, 0);
    ck_assert_int_eq(out.size, FRAME_NOT_GIVEN_INT);
    ck_assert(FRAME_HAS(out.cautions, FRAME_HEADER_CAUTION_NONE));
    frame_header_sizes_free(answer);
}
END_TEST

/* A choice the tables do not have, or that is too slender, says so in its line; what the call lacks is an error. */
START_TEST(what_cannot_be_checked) {
    frame_header_sizes_out out;
    frame_header_sizes_in in = priced();
    choices[0].size = FRAME_SIZE(1, 6);
    choices[1].plies = 1;
    in.span_in = 360;
    in.dead_plf = in.snow_plf = 1;
    choices[1].size = FRAME_SIZE(2, 14);
    frame_header_sizes *answer = run(&in, &out);
    const frame_header_sizes_option last = option_of(answer, 2);
    ck_assert_double_eq(last.ratio, FRAME_NOT_GIVEN);
    ck_assert_ptr_nonnull(strstr(last.reason, "not checked: "));
    frame_header_sizes_free(answer);
    in = opening();
    in.dead_plf = FRAME_NOT_GIVEN;
    ck_assert_int_eq(frame_header_sizes_solve(&in, &answer, NULL), FRAME_REQUIRED);
    ck_assert_str_eq(frame_error_field(), "dead_plf");
    in = priced();
    choices[1].size = FRAME_NOT_GIVEN_INT;
    ck_assert_int_eq(frame_header_sizes_solve(&in, &answer, NULL), FRAME_REQUIRED);
    ck_assert_str_eq(frame_error_field(), "choices[1].size");
    in = opening();
    in.species = FRAME_NOT_GIVEN_INT;
    ck_assert_int_eq(frame_header_sizes_solve(&in, &answer, NULL), FRAME_REQUIRED);
    ck_assert_str_eq(frame_error_field(), "species");
}
END_TEST

/* More load never makes a smaller header do. */
START_TEST(more_load_is_more_wood) {
    double before = 0;
    for (double snow = 0; snow < 2000; snow += 50) {
        frame_header_sizes_out out;
        frame_header_sizes_in in = opening();
        in.snow_plf = snow;
        frame_header_sizes_free(run(&in, &out));
        if (!out.passes) break;
        ck_assert_double_ge(out.board_feet, before);
        before = out.board_feet;
    }
    ck_assert_double_gt(before, 10);
}
END_TEST

START_TEST(working_is_the_best_choice) {
    frame_working *w;
    frame_header_sizes *answer;
    ck_assert(!frame_working_new(&w));
    const frame_header_sizes_in in = opening();
    ck_assert(!frame_header_sizes_solve(&in, &answer, w));
    working_is_sound(w);
    ck_assert_uint_gt(frame_working_step_count(w), 20);
    frame_header_sizes_free(answer);
    frame_working_free(w);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("header_sizes");
    TCase *tests = tcase_create("header_sizes");
    tcase_add_test(tests, each_option_is_a_beam_check);
    tcase_add_test(tests, order_and_reasons);
    tcase_add_test(tests, snow_basis);
    tcase_add_test(tests, strength_design);
    tcase_add_test(tests, prices_decide);
    tcase_add_test(tests, limits_of_the_wall);
    tcase_add_test(tests, none_holds);
    tcase_add_test(tests, what_cannot_be_checked);
    tcase_add_test(tests, more_load_is_more_wood);
    tcase_add_test(tests, working_is_the_best_choice);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_ENV);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
