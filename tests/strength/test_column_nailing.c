/* Nails through plies: limits, rows, nails too short, too thick, too thin. */
#include "lumber_names.h"

static frame_column_nailing_out run(frame_size size, int32_t plies, double diameter, double length) {
    frame_column_nailing_in in;
    frame_column_nailing_out out;
    frame_working *working;
    frame_column_nailing_in_init(&in);
    in.size = size, in.plies = plies, in.length_in = 96, in.nail_diameter_in = diameter, in.nail_length_in = length;
    ck_assert(!frame_working_new(&working));
    ck_assert_msg(!frame_column_nailing(&in, &out, working), "%s", frame_error_text());
    working_is_sound(working);
    frame_working_free(working);
    return out;
}

/* Three 2x6 with 30d common nails, 0.207 x 4-1/2: two rows, as 5-1/2 is over 3 x 1-1/2. */
START_TEST(three_plies) {
    const frame_column_nailing_out out = run(FRAME_SIZE(2, 6), 3, 0.207, 4.5);
    ck_assert_int_eq(out.passes, 1);
    ck_assert_int_eq(out.nail_rows, 2);
    ck_assert_double_eq_tol(out.nail_needed_in, 4.125, 1e-12);
    ck_assert_double_eq_tol(out.most_spacing_in, 9, 1e-12);
    ck_assert_int_eq(out.per_row, 11); /* (96 - 2 x 3.726)/9 = 9.8 spaces */
    ck_assert_int_eq(out.nails, 22);
    ck_assert_double_le(out.spacing_in, 9);
    ck_assert_double_eq_tol(2 * out.edge_in + out.row_spacing_in, 5.5, 1e-12);
    ck_assert_double_ge(out.edge_in, out.least_edge_in - 1e-12);
    ck_assert_double_le(out.row_spacing_in, out.most_row_spacing_in + 1e-12);
}
END_TEST

START_TEST(too_short) {
    ck_assert_int_eq(run(FRAME_SIZE(2, 6), 3, 0.162, 3.5).passes, 0); /* 16d */
    ck_assert_int_eq(run(FRAME_SIZE(2, 4), 2, 0.148, 3).passes, 1);   /* 10d through two */
    ck_assert_int_eq(run(FRAME_SIZE(2, 4), 2, 0.148, 3).nail_rows, 1);
}
END_TEST

START_TEST(too_thick) {
    const frame_column_nailing_out out = run(FRAME_SIZE(2, 4), 2, 0.5, 3); /* 20 D is over 6 t */
    ck_assert_double_gt(out.least_spacing_in, out.most_spacing_in);
    ck_assert_int_eq(out.passes, 0);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("column_nailing");
    TCase *all = tcase_create("all");
    tcase_add_test(all, three_plies);
    tcase_add_test(all, too_short);
    tcase_add_test(all, too_thick);
    suite_add_tcase(suite, all);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_ENV);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
