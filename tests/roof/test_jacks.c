/* Jacks: the square's difference, each piece's length against the kernel's stick, and jacks that fit their hip. */
#include <check.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include <frame/frame.h>

static const double degree = 0.017453292519943295;

static double random_in(double low, double high) {
    return low + (high - low) * (rand() / (double)RAND_MAX);
}

static frame_jacks_in jacks(double slope, double spacing) {
    frame_jacks_in in;
    frame_jacks_in_init(&in);
    in.slope = slope;
    in.spacing_in = spacing;
    return in;
}

static frame_jacks *solve(const frame_jacks_in *in, frame_jacks_out *out) {
    frame_jacks *answer;
    ck_assert_msg(frame_jacks_solve(in, &answer, NULL) == FRAME_OK, "%s", frame_error_text());
    ck_assert_int_eq(frame_jacks_result(answer, out), FRAME_OK);
    return answer;
}

/* Square corner, equal slopes: the difference is a common rafter over a run of the spacing. */
START_TEST(the_squares_difference) {
    for (int rise = 1; rise <= 24; rise++)
        for (int spacing = 12; spacing <= 24; spacing += 4) {
            const frame_jacks_in in = jacks(rise / 12.0, spacing);
            frame_jacks_out out;
            frame_jacks_free(solve(&in, &out));
            ck_assert_double_eq_tol(out.difference_in, spacing * sqrt(144 + rise * rise) / 12, 1e-10);
            ck_assert_double_eq_tol(out.cheek_deg, 45, 1e-10);
            ck_assert_double_eq_tol(tan(out.top_edge_deg * degree), cos(atan(rise / 12.0)), 1e-12);
            ck_assert_int_eq(out.count, 0);
        }
}
END_TEST

static frame_jacks_in random_jacks(void) {
    for (;;) {
        frame_jacks_in in = jacks(random_in(0.1, 1.9), random_in(12, 30));
        in.other_slope = random_in(0.1, 1.9);
        in.corner_deg = random_in(60, 130);
        in.thickness_in = random_in(1, 3);
        in.depth_in = random_in(5, 12);
        in.hip_thickness_in = random_in(0, 4);
        in.valley_thickness_in = random_in(0, 4);
        in.ridge_thickness_in = random_in(0, 2);
        in.overhang_in = random_in(0, 20);
        in.run_in = random_in(60, 200);
        in.between_in = random_in(40, 90);
        in.kind = 1 + rand() % 3;
        in.hand = 1 + rand() % 2;
        const double corner = in.corner_deg * degree;
        const double alpha = atan2(in.other_slope * sin(corner), in.slope + in.other_slope * cos(corner)) / degree;
        if (alpha > 15 && alpha < 75) return in;
    }
}

/* Each piece of the list is what the kernel cuts: its length, its long point, its cheek. */
START_TEST(the_kernel_agrees) {
    int seen = 0;
    for (int i = 0; i < 200; i++) {
        frame_jacks_in in = random_jacks();
        frame_jacks_out out;
        frame_jacks *answer = solve(&in, &out);
        for (size_t k = 0; k < frame_jacks_piece_count(answer); k += 2) {
            frame_jacks_piece piece;
            frame_jacks_piece_at(answer, k, &piece);
            in.piece = atoi(strrchr(piece.name, ' '));
            frame_stick *stick;
            frame_stick_lengths_out lengths;
            ck_assert_msg(frame_jacks_stick(&in, &stick) == FRAME_OK, "%s", frame_error_text());
            frame_stick_lengths(stick, &lengths);
            ck_assert_double_eq_tol(lengths.top_edge_in, piece.length_in, 1e-7);
            for (size_t s = 0; s < frame_stick_saw_count(stick); s++) {
                frame_stick_saw saw;
                frame_stick_saw_at(stick, s, &saw);
                if (saw.role != FRAME_STICK_CHEEK_CUT) continue;
                ck_assert_double_eq_tol(saw.bevel_deg, out.cheek_deg, 1e-7);
                ck_assert_double_eq_tol(saw.top_edge_deg, out.top_edge_deg, 1e-7);
            }
            const int two = in.kind == FRAME_JACK_CRIPPLE;
            /* Both cheeks of a cripple are parallel: along each edge it is as long as on the centre line. */
            const double edge = fmax(lengths.top_left_in, lengths.top_right_in);
            if (two) ck_assert_double_eq_tol(edge, piece.length_in, 1e-7);
            if (!two) ck_assert_double_eq_tol(edge, piece.long_point_in, 1e-7);
            if (two) ck_assert_double_eq_tol(piece.long_point_in - piece.length_in, 2 * out.long_point_more_in, 1e-12);
            frame_stick_free(stick);
            seen++;
        }
        frame_jacks_free(answer);
    }
    ck_assert_int_gt(seen, 200);
}
END_TEST

START_TEST(each_is_longer_by_the_difference) {
    for (int i = 0; i < 100; i++) {
        frame_jacks_in in = random_jacks();
        frame_jacks_out out;
        frame_jacks_piece a, b;
        in.kind = 1 + i % 2;
        frame_jacks *answer = solve(&in, &out);
        const size_t count = frame_jacks_piece_count(answer);
        ck_assert_uint_eq(count, (size_t)out.count);
        for (size_t k = 0; k + 1 < count; k++) {
            frame_jacks_piece_at(answer, k, &a);
            frame_jacks_piece_at(answer, k + 1, &b);
            ck_assert_double_eq_tol(b.length_in - a.length_in, out.difference_in, 1e-9);
            ck_assert_double_lt(b.run_in, in.run_in + 1e-9);
        }
        /* One more would be the common rafter or longer. */
        if (count) ck_assert_double_ge(b.run_in + out.run_difference_in, in.run_in - 1e-9);
        frame_jacks_free(answer);
    }
}
END_TEST

/* Left and right are mirror images: the same marks, the cheek's waste on the named side. */
START_TEST(hands_are_opposite) {
    frame_jacks_in in = jacks(0.5, 16);
    in.depth_in = 5.5;
    in.run_in = 100;
    in.piece = 2;
    frame_stick_lengths_out left, right;
    frame_stick *stick;
    ck_assert_int_eq(frame_jacks_stick(&in, &stick), FRAME_OK);
    frame_stick_lengths(stick, &left);
    frame_stick_free(stick);
    in.hand = FRAME_HAND_RIGHT;
    ck_assert_int_eq(frame_jacks_stick(&in, &stick), FRAME_OK);
    frame_stick_lengths(stick, &right);
    frame_stick_free(stick);
    ck_assert_double_eq_tol(left.top_left_in, right.top_right_in, 1e-9);
    ck_assert_double_lt(left.top_left_in, left.top_right_in);
    ck_assert_double_eq_tol(left.long_point_in, right.long_point_in, 1e-9);
}
END_TEST

START_TEST(what_cannot_be_is_refused) {
    frame_jacks_in in = jacks(0.5, 16);
    frame_stick *stick;
    frame_jacks *answer;
    ck_assert_int_eq(frame_jacks_stick(&in, &stick), FRAME_REQUIRED);
    ck_assert_str_eq(frame_error_field(), "depth_in");
    in.depth_in = 5.5;
    in.piece = 9;
    in.run_in = 100;
    ck_assert_int_eq(frame_jacks_stick(&in, &stick), FRAME_OUT_OF_RANGE);
    ck_assert_str_eq(frame_error_field(), "piece");
    in.kind = FRAME_JACK_CRIPPLE;
    ck_assert_int_eq(frame_jacks_stick(&in, &stick), FRAME_REQUIRED);
    ck_assert_str_eq(frame_error_field(), "between_in");
    in.kind = FRAME_JACK_HIP;
    in.piece = 1;
    in.height_above_plate_in = 10;
    ck_assert_int_eq(frame_jacks_stick(&in, &stick), FRAME_IMPOSSIBLE);
    in.corner_deg = 170;
    in.slope = 0.2;
    in.other_slope = 2;
    ck_assert_int_eq(frame_jacks_solve(&in, &answer, NULL), FRAME_OUTSIDE_SCOPE);
    in.corner_deg = 90;
    in.spacing_in = 0.05;
    in.run_in = 1200;
    ck_assert_int_eq(frame_jacks_solve(&in, &answer, NULL), FRAME_TOO_LARGE);
}
END_TEST

START_TEST(the_working_re_evaluates) {
    frame_working *working;
    frame_text *problems;
    ck_assert_int_eq(frame_working_new(&working), FRAME_OK);
    ck_assert_int_eq(frame_text_new(&problems), FRAME_OK);
    for (int i = 0; i < 30; i++) {
        const frame_jacks_in in = random_jacks();
        frame_jacks *answer;
        frame_working_clear(working);
        ck_assert_int_eq(frame_jacks_solve(&in, &answer, working), FRAME_OK);
        ck_assert_msg(frame_working_check(working, problems) == FRAME_OK, "%s", frame_text_chars(problems));
        ck_assert_uint_gt(frame_working_step_count(working), 15);
        frame_jacks_free(answer);
    }
    frame_text_free(problems);
    frame_working_free(working);
}
END_TEST

int main(void) {
    srand(7);
    Suite *suite = suite_create("jacks");
    TCase *tests = tcase_create("all");
    tcase_add_test(tests, the_squares_difference);
    tcase_add_test(tests, the_kernel_agrees);
    tcase_add_test(tests, each_is_longer_by_the_difference);
    tcase_add_test(tests, hands_are_opposite);
    tcase_add_test(tests, what_cannot_be_is_refused);
    tcase_add_test(tests, the_working_re_evaluates);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
