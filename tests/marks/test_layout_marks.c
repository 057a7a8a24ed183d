/* Members on centres: published first marks, sheet edges, the far end. */
#include <check.h>
#include <math.h>

#include <frame/frame.h>

static frame_layout_marks *solve(double length, double spacing, frame_first_mark first) {
    frame_layout_marks_in in;
    frame_layout_marks *marks = NULL;
    frame_layout_marks_in_init(&in);
    in.length_in = length;
    in.spacing_in = spacing;
    in.first = first;
    ck_assert_msg(frame_layout_marks_solve(&in, &marks, NULL) == FRAME_OK, "%s", frame_error_text());
    return marks;
}

/* US Navy NAVEDTRA 14044 p. 1-23: 16 in on centre, 1-1/2 in stud: first mark at 15-1/4 in (read). */
START_TEST(first_mark_so_that_sheets_break_on_centres) {
    size_t count;
    frame_layout_marks *marks = solve(120, 16, FRAME_FIRST_MARK_SET_BACK);
    const double *at = frame_layout_marks_marks_in(marks, &count);
    ck_assert_double_eq(at[0], 0);
    ck_assert_double_eq(at[1], 15.25);
    /* Every sheet edge, 48 in and 96 in from the end, lies on the middle of a member. */
    for (int edge = 48; edge <= 96; edge += 48) {
        int found = 0;
        for (size_t i = 0; i < count; i++) found |= fabs(at[i] + 0.75 - edge) < 1e-12;
        ck_assert_int_eq(found, 1);
    }
    ck_assert_double_eq(at[count - 1], 118.5);
    frame_layout_marks_free(marks);
}
END_TEST

/* Public rule of thumb (Hicks, Builders' Guide): a wall of 32 ft at 16 in on centres takes 3/4 x 32 + 1 = 25 joists
 * (read). */
START_TEST(as_many_as_the_handbook_counts) {
    frame_layout_marks *marks = solve(384, 16, FRAME_FIRST_MARK_SET_BACK);
    frame_layout_marks_out out;
    ck_assert_int_eq(frame_layout_marks_result(marks, &out), FRAME_OK);
    ck_assert_int_eq(out.count, 25);
    frame_layout_marks_free(marks);
}
END_TEST

START_TEST(no_space_is_wider_than_the_spacing_and_none_overlap) {
    for (int i = 0; i < 2000; i++) {
        const double length = 10 + i * 0.77, spacing = i % 3 == 0 ? 19.2 : i % 3 == 1 ? 16 : 400 / 25.4;
        frame_layout_marks *marks = solve(length, spacing, i % 2 ? FRAME_FIRST_MARK_SET_BACK : FRAME_FIRST_MARK_FULL);
        size_t count;
        const double *at = frame_layout_marks_marks_in(marks, &count);
        for (size_t m = 1; m < count; m++) {
            ck_assert_double_ge(at[m] - at[m - 1], 1.5 - 1e-9);
            ck_assert_double_le(at[m] - at[m - 1], spacing + 1.5 + 1e-9);
        }
        ck_assert_double_eq_tol(at[count - 1], length - 1.5, 1e-12);
        frame_layout_marks_free(marks);
    }
}
END_TEST

START_TEST(refusals_leave_nothing) {
    frame_layout_marks_in in;
    frame_layout_marks *marks = NULL;
    frame_layout_marks_in_init(&in);
    ck_assert_int_eq(frame_layout_marks_solve(&in, &marks, NULL), FRAME_REQUIRED);
    ck_assert_str_eq(frame_error_field(), "length_in");
    in.length_in = 100;
    in.spacing_in = 1.5;
    ck_assert_int_eq(frame_layout_marks_solve(&in, &marks, NULL), FRAME_IMPOSSIBLE);
    ck_assert_str_eq(frame_error_field(), "spacing_in");
    in.spacing_in = 16;
    in.length_in = 2;
    ck_assert_int_eq(frame_layout_marks_solve(&in, &marks, NULL), FRAME_IMPOSSIBLE);
    ck_assert_ptr_null(marks);
    frame_layout_marks_free(NULL);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("layout_marks");
    TCase *tests = tcase_create("all");
    tcase_add_test(tests, first_mark_so_that_sheets_break_on_centres);
    tcase_add_test(tests, as_many_as_the_handbook_counts);
    tcase_add_test(tests, no_space_is_wider_than_the_spacing_and_none_overlap);
    tcase_add_test(tests, refusals_leave_nothing);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
