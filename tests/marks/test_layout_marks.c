/* Members on centres: published first marks, sheet edges, datums, the far end. */
#include <check.h>
#include <math.h>

#include <frame/frame.h>

static frame_layout_marks_in in;
static frame_layout_marks_out out;
static frame_layout_marks *marks;
static const double *at;
static size_t count;

static void begin(double length, double spacing) {
    marks = NULL;
    frame_layout_marks_in_init(&in);
    in.length_in = length;
    in.spacing_in = spacing;
}

static void finish(void) {
    frame_layout_marks_free(marks);
    marks = NULL;
}

static void solve(void) {
    finish();
    ck_assert_msg(frame_layout_marks_solve(&in, &marks, NULL) == FRAME_OK, "%s", frame_error_text());
    ck_assert_int_eq(frame_layout_marks_result(marks, &out), FRAME_OK);
    at = frame_layout_marks_marks_in(marks, &count);
    ck_assert_uint_eq(count, (size_t)out.count);
    ck_assert_uint_eq(count, frame_layout_marks_member_count(marks));
}

/* US Navy NAVEDTRA 14044 p. 1-23: 16 in on centre, 1-1/2 in stud: first mark at 15-1/4 in (read). */
START_TEST(first_mark_so_that_sheets_break_on_centres) {
    begin(120, 16);
    solve();
    ck_assert_double_eq(at[0], 0);
    ck_assert_double_eq(at[1], 15.25);
    ck_assert_double_eq(out.first_mark_in, 15.25);
    /* Every sheet edge, 48 in and 96 in from the end, lies on the middle of a member. */
    ck_assert_uint_eq(frame_layout_marks_edge_count(marks), 2);
    for (size_t i = 0; i < 2; i++) {
        frame_layout_marks_edge edge;
        frame_layout_marks_edge_at(marks, i, &edge);
        ck_assert_double_eq(edge.at_in, 48.0 * (double)(i + 1));
        ck_assert_double_eq_tol(edge.before_in, 0.75, 1e-12);
        ck_assert_double_eq_tol(edge.after_in, 0.75, 1e-12);
        ck_assert_double_eq_tol(at[edge.member - 1] + 0.75, edge.at_in, 1e-12);
    }
    ck_assert_int_eq(out.edges_off, 0);
    ck_assert_double_eq(at[count - 1], 118.5);
    ck_assert_double_eq_tol(out.last_space_in, 118.5 - 111.25 - 1.5, 1e-12);
    finish();
}
END_TEST

/* Public rule of thumb (Hicks, Builders' Guide): a wall of 32 ft at 16 in on centres takes 3/4 x 32 + 1 = 25 joists
 * (read). */
START_TEST(as_many_as_the_handbook_counts) {
    begin(384, 16);
    solve();
    ck_assert_int_eq(out.count, 25);
    finish();
}
END_TEST

/* 19.2 in divides a sheet of 96 in, 400 mm one of 1200 mm. */
START_TEST(sheets_that_the_spacing_divides) {
    const struct {
        double spacing, sheet;
    } cases[] = {{12, 48},
                 {16, 48},
                 {24, 48},
                 {19.2, 96},
                 {32, 96},
                 {400 / 25.4, 1200 / 25.4},
                 {600 / 25.4, 1200 / 25.4},
                 {800 / 25.4, 2400 / 25.4},
                 {13, 48}};
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
        begin(288, cases[i].spacing);
        solve();
        ck_assert_double_eq_tol(out.sheet_in, cases[i].sheet, 1e-12);
        ck_assert_int_eq(out.edges_off > 0, cases[i].spacing == 13);
        ck_assert_int_eq(FRAME_HAS(out.cautions, FRAME_MARKS_CAUTION_EDGES) != 0, cases[i].spacing == 13);
        finish();
    }
}
END_TEST

START_TEST(no_space_is_wider_than_the_spacing_and_none_overlap) {
    for (int i = 0; i < 2000; i++) {
        begin(10 + i * 0.77, i % 3 == 0 ? 19.2 : i % 3 == 1 ? 16 : 400 / 25.4);
        in.first = i % 2 ? FRAME_FIRST_MARK_SET_BACK : FRAME_FIRST_MARK_FULL;
        in.datum_in = i % 5 * 3.1 - 6;
        solve();
        for (size_t m = 1; m < count; m++) {
            ck_assert_double_ge(at[m] - at[m - 1], 1.5 - 1e-9);
            ck_assert_double_le(at[m] - at[m - 1], in.spacing_in + 1.5 + 1e-9);
        }
        ck_assert_double_eq_tol(at[count - 1], in.length_in - 1.5, 1e-12);
        /* An edge the spacing divides is off its member only where that would have met an end's. */
        for (size_t e = 0; e < frame_layout_marks_edge_count(marks) && in.first == FRAME_FIRST_MARK_SET_BACK; e++) {
            frame_layout_marks_edge edge;
            frame_layout_marks_edge_at(marks, e, &edge);
            const double from_end = fmin(edge.at_in, in.length_in - edge.at_in);
            if (fmin(edge.before_in, edge.after_in) < 0.75 - 1e-9) ck_assert_double_lt(from_end, 2.25);
        }
        finish();
    }
}
END_TEST

/* A length cut in two anywhere, each part with its own datum, has the members of the whole. */
START_TEST(a_layout_goes_on_across_a_joint) {
    for (int i = 0; i < 500; i++) {
        double whole[400];
        const double length = 200 + i * 0.31, cut = 60 + i * 0.17;
        begin(length, i % 2 ? 16 : 19.2);
        in.datum_in = -(i % 7) * 1.3;
        in.start_member = in.end_member = 0;
        solve();
        const size_t total = count;
        for (size_t m = 0; m < count; m++) whole[m] = at[m];
        in.length_in = cut;
        solve();
        const size_t first = count;
        for (size_t m = 0; m < first; m++) ck_assert_double_eq_tol(at[m], whole[m], 1e-9);
        in.length_in = length - cut;
        in.datum_in = out.next_datum_in;
        ck_assert_double_le(in.datum_in, 0);
        ck_assert_double_gt(in.datum_in, -in.spacing_in);
        solve();
        ck_assert_uint_le(total - first - count, 1); /* at most one straddles the cut */
        for (size_t m = 0; m < count; m++) ck_assert_double_eq_tol(at[m] + cut, whole[m + total - count], 1e-9);
        finish();
    }
}
END_TEST

/* A datum in the middle, as when layouts are begun from a beam: both ways. */
START_TEST(a_datum_within_the_length) {
    begin(120, 16);
    in.datum_in = 60;
    solve();
    int found = 0;
    for (size_t m = 0; m < count; m++) {
        frame_layout_marks_member member;
        frame_layout_marks_member_at(marks, m, &member);
        found |= fabs(member.centre_in - 60) < 1e-12;
        if (member.kind == FRAME_MARK_ON_CENTRES)
            ck_assert_double_eq_tol(remainder(member.centre_in - 60, 16), 0, 1e-9);
    }
    ck_assert_int_eq(found, 1);
    finish();
}
END_TEST

START_TEST(the_side_of_the_mark) {
    double far[20];
    begin(120, 16);
    solve();
    for (size_t m = 0; m < count; m++) far[m] = at[m];
    in.side = FRAME_MARK_NEAR;
    solve();
    for (size_t m = 0; m < count; m++) ck_assert_double_eq_tol(at[m], far[m] + 1.5, 1e-12);
    in.side = FRAME_MARK_CENTRE;
    solve();
    for (size_t m = 0; m < count; m++) {
        frame_layout_marks_member member;
        frame_layout_marks_member_at(marks, m, &member);
        ck_assert_double_eq_tol(at[m], far[m] + 0.75, 1e-12);
        ck_assert_double_eq_tol(member.from_in, far[m], 1e-12);
        ck_assert_double_eq_tol(member.to_in, far[m] + 1.5, 1e-12);
    }
    finish();
}
END_TEST

START_TEST(ends_without_members) {
    begin(96, 16);
    in.start_member = 0;
    solve();
    ck_assert_double_eq(at[0], 15.25);
    in.end_member = 0;
    solve();
    ck_assert_double_eq(at[count - 1], 79.25);
    in.length_in = 10;
    solve();
    ck_assert_uint_eq(count, 0);
    ck_assert_double_eq(out.first_mark_in, FRAME_NOT_GIVEN);
    ck_assert_double_eq(out.last_space_in, FRAME_NOT_GIVEN);
    finish();
    begin(97, 16); /* the one at 95.25 meets the end's */
    solve();
    ck_assert(FRAME_HAS(out.cautions, FRAME_MARKS_CAUTION_CLOSE));
    ck_assert_int_eq(out.edges_off,
                     0); /* 48 in is on its middle; 96 in on the end's, with an inch before and half after */
    in.length_in = 96.25;
    solve();
    ck_assert_int_eq(out.edges_off, 1);
    finish();
}
END_TEST

START_TEST(refusals_leave_nothing) {
    begin(100, 16);
    in.length_in = FRAME_NOT_GIVEN;
    ck_assert_int_eq(frame_layout_marks_solve(&in, &marks, NULL), FRAME_REQUIRED);
    ck_assert_str_eq(frame_error_field(), "length_in");
    in.length_in = 100;
    in.spacing_in = 1.5;
    ck_assert_int_eq(frame_layout_marks_solve(&in, &marks, NULL), FRAME_IMPOSSIBLE);
    ck_assert_str_eq(frame_error_field(), "spacing_in");
    in.spacing_in = 16;
    in.length_in = 2;
    ck_assert_int_eq(frame_layout_marks_solve(&in, &marks, NULL), FRAME_IMPOSSIBLE);
    in.length_in = 12000;
    in.spacing_in = 1;
    in.thickness_in = 0.5;
    ck_assert_int_eq(frame_layout_marks_solve(&in, &marks, NULL), FRAME_TOO_LARGE);
    in.length_in = 1e-300; /* counts that no integer holds are refused before they are counted */
    in.spacing_in = 1e-301;
    in.thickness_in = 1e-302;
    in.datum_in = 5;
    ck_assert_int_eq(frame_layout_marks_solve(&in, &marks, NULL), FRAME_TOO_LARGE);
    ck_assert_str_eq(frame_error_field(), "datum_in");
    in = (frame_layout_marks_in){0};
    begin(100, 16);
    in.sheet_in = 1e-300;
    ck_assert_int_eq(frame_layout_marks_solve(&in, &marks, NULL), FRAME_TOO_LARGE);
    ck_assert_ptr_null(marks);
    frame_layout_marks_free(NULL);
}
END_TEST

START_TEST(working_says_what_was_done) {
    frame_working *w = NULL;
    frame_text *text = NULL;
    begin(120, 16);
    in.datum_in = -4;
    ck_assert(!frame_working_new(&w) && !frame_text_new(&text));
    ck_assert_int_eq(frame_layout_marks_solve(&in, &marks, w), FRAME_OK);
    ck_assert_msg(!frame_working_check(w, text), "%s", frame_text_chars(text));
    frame_working_free(w);
    frame_text_free(text);
    finish();
}
END_TEST

int main(void) {
    Suite *suite = suite_create("layout_marks");
    TCase *tests = tcase_create("all");
    tcase_add_test(tests, first_mark_so_that_sheets_break_on_centres);
    tcase_add_test(tests, as_many_as_the_handbook_counts);
    tcase_add_test(tests, sheets_that_the_spacing_divides);
    tcase_add_test(tests, no_space_is_wider_than_the_spacing_and_none_overlap);
    tcase_add_test(tests, a_layout_goes_on_across_a_joint);
    tcase_add_test(tests, a_datum_within_the_length);
    tcase_add_test(tests, the_side_of_the_mark);
    tcase_add_test(tests, ends_without_members);
    tcase_add_test(tests, refusals_leave_nothing);
    tcase_add_test(tests, working_says_what_was_done);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
