/* The display list: what it takes, what it refuses, and that a refusal changes nothing. */
#include <check.h>
#include <math.h>
#include <stdlib.h>

#include "drawing/list.h"

static frame_drawing *drawing;

static void begin(void) {
    ck_assert_int_eq(frame_drawing_new(&drawing), FRAME_OK);
}
static void end(void) {
    frame_drawing_free(drawing);
}

START_TEST(items_stand_in_order) {
    ck_assert_int_eq(frame_drawing_line(drawing, 0, 0, 10, 0, FRAME_PEN_CUT), FRAME_OK);
    for (int i = 0; i < 5; i++) ck_assert_int_eq(frame_drawing_point(drawing, i, i * i), FRAME_OK);
    ck_assert_int_eq(frame_drawing_polygon(drawing, FRAME_PEN_OUTLINE, FRAME_HATCH_NONE), FRAME_OK);
    ck_assert_int_eq(frame_drawing_label(drawing, 1, 2, "seat"), FRAME_OK);
    ck_assert_uint_eq(drawing->items.count, 3);
    const drawing_item *area = &FRAME_ITEM(drawing_item, drawing->items, 1);
    ck_assert_uint_eq(area->count, 5);
    ck_assert_double_eq(FRAME_ITEM(drawing_point, drawing->points, area->first + 4).y, 16);
}
END_TEST

START_TEST(refuses_and_keeps_still) {
    ck_assert_int_eq(frame_drawing_line(drawing, NAN, 0, 1, 1, FRAME_PEN_CUT), FRAME_NOT_A_NUMBER);
    ck_assert_str_eq(frame_error_field(), "x1_in");
    ck_assert_int_eq(frame_drawing_line(drawing, 0, 0, 1, 2e6, FRAME_PEN_CUT), FRAME_OUT_OF_RANGE);
    ck_assert_str_eq(frame_error_field(), "y2_in");
    ck_assert_int_eq(frame_drawing_line(drawing, 0, 0, 1, 1, 7), FRAME_UNKNOWN_NAME);
    ck_assert_int_eq(frame_drawing_circle(drawing, 0, 0, 0, FRAME_PEN_CUT, FRAME_HATCH_NONE), FRAME_OUT_OF_RANGE);
    ck_assert_int_eq(frame_drawing_rectangle(drawing, 0, 0, 1, 1, FRAME_PEN_CUT, 0), FRAME_UNKNOWN_NAME);
    ck_assert_int_eq(frame_drawing_text(drawing, 0, 0, "", FRAME_ANCHOR_START, 0, 1), FRAME_REQUIRED);
    ck_assert_int_eq(frame_drawing_text(drawing, 0, 0, "a", 9, 0, 1), FRAME_UNKNOWN_NAME);
    ck_assert_int_eq(frame_drawing_label(drawing, 0, 0, NULL), FRAME_REQUIRED);
    ck_assert_int_eq(frame_drawing_paper(drawing, 1, 5), FRAME_OUT_OF_RANGE);
    ck_assert_int_eq(frame_drawing_letter_size(drawing, 8.9), FRAME_OUT_OF_RANGE);
    ck_assert_int_eq(frame_drawing_denominator(drawing, 12), FRAME_OUT_OF_RANGE);
    ck_assert_int_eq(frame_drawing_angle(drawing, 0, 0, 0, INFINITY, NULL), FRAME_NOT_A_NUMBER);
    ck_assert_int_eq(frame_drawing_dimension(drawing, 1, 1, 1, 1, FRAME_DIMENSION_ALONG, "0"), FRAME_IMPOSSIBLE);
    ck_assert_uint_eq(drawing->items.count, 0);
    ck_assert_uint_eq(drawing->points.count, 0);
    ck_assert_double_eq(drawing->letter_pt, 9);
}
END_TEST

START_TEST(a_short_path_is_dropped) {
    frame_drawing_point(drawing, 0, 0);
    frame_drawing_point(drawing, 1, 0);
    ck_assert_int_eq(frame_drawing_polygon(drawing, FRAME_PEN_CUT, FRAME_HATCH_NONE), FRAME_IMPOSSIBLE);
    ck_assert_int_eq(frame_drawing_polyline(drawing, FRAME_PEN_CUT), FRAME_IMPOSSIBLE);
    ck_assert_uint_eq(drawing->items.count, 0);
}
END_TEST

START_TEST(a_tape_is_hooked_at_an_end) {
    frame_drawing_mark(drawing, 5, 0, "0");
    frame_drawing_mark(drawing, 9, 0, "4");
    frame_drawing_mark(drawing, 1, 0, "4");
    ck_assert_int_eq(frame_drawing_dimension_running(drawing, FRAME_DIMENSION_BELOW), FRAME_IMPOSSIBLE);
    frame_drawing_mark(drawing, 9, 0, "0");
    ck_assert_int_eq(frame_drawing_dimension_running(drawing, FRAME_DIMENSION_BELOW), FRAME_IMPOSSIBLE);
    frame_drawing_mark(drawing, 9, 0, "0");
    frame_drawing_mark(drawing, 2, 0, "7");
    frame_drawing_mark(drawing, 5, 0, "4");
    ck_assert_int_eq(frame_drawing_dimension_running(drawing, FRAME_DIMENSION_BELOW), FRAME_OK);
    ck_assert_uint_eq(FRAME_ITEM(drawing_item, drawing->items, 0).count, 3);
}
END_TEST

START_TEST(only_texts_a_picture_may_hold) {
    static const char *const bad[] = {"\x80",  "a\xC3", "\xC0\x80",     "\xED\xA0\x80", "\xF5\x80\x80\x80",
                                      "tab\t", "\x01",  "\xEF\xBF\xBF", "\xE0\x80\x80", "\xF4\x90\x80\x80"};
    for (size_t i = 0; i < sizeof bad / sizeof *bad; i++)
        ck_assert_msg(frame_drawing_label(drawing, 0, 0, bad[i]) == FRAME_UNREADABLE, "text %zu", i);
    static const char *const good[] = {"7\xC2\xBD", "two\nlines", "\xE2\x80\xB3", "\xF0\x9F\xAA\x9A", "<&>"};
    for (size_t i = 0; i < sizeof good / sizeof *good; i++)
        ck_assert_int_eq(frame_drawing_label(drawing, 0, 0, good[i]), FRAME_OK);
}
END_TEST

START_TEST(angles_turn_counterclockwise) {
    ck_assert_int_eq(frame_drawing_angle(drawing, 0, 0, 350, 20, NULL), FRAME_OK);
    const drawing_item *angle = &FRAME_ITEM(drawing_item, drawing->items, 0);
    ck_assert_str_eq(angle->text, "30\xC2\xB0");
    ck_assert_double_eq_tol(angle->to_deg, 380, 1e-9);
    ck_assert_int_eq(frame_drawing_angle(drawing, 0, 0, 0, -90, NULL), FRAME_OK);
    ck_assert_str_eq(FRAME_ITEM(drawing_item, drawing->items, 1).text, "270\xC2\xB0");
}
END_TEST

START_TEST(distances_are_true_and_from_the_hook) {
    frame_drawing_denominator(drawing, 8);
    frame_drawing_mark(drawing, 200, 3, NULL);
    frame_drawing_mark(drawing, 199.9, 0, "end");
    frame_drawing_mark(drawing, 105.25, 7, "");
    ck_assert_int_eq(frame_drawing_dimension_running(drawing, FRAME_DIMENSION_BELOW), FRAME_OK);
    ck_assert_int_eq(frame_array_reserve(&drawing->points, 100), FRAME_OK);
    const drawing_point *marks = drawing->points.items;
    ck_assert_str_eq(marks[0].text, "0\"");
    ck_assert_str_eq(marks[1].text, "end");
    ck_assert_str_eq(marks[2].text, "7' 10-3/4\"");
    frame_drawing_dimension(drawing, 0, 0, 3, 4, FRAME_DIMENSION_ALONG, NULL);
    ck_assert_str_eq(marks[4].text, "5\"");
    frame_drawing_dimension(drawing, 0, 0, 3, 4.26, FRAME_DIMENSION_LEFT, NULL);
    ck_assert_str_eq(FRAME_ITEM(drawing_point, drawing->points, 6).text, "4-1/4\"");
}
END_TEST

START_TEST(breaks_join_and_stay_in_order) {
    ck_assert_int_eq(frame_drawing_break(drawing, 50, 60), FRAME_OK);
    ck_assert_int_eq(frame_drawing_break(drawing, 10, 20), FRAME_OK);
    ck_assert_int_eq(frame_drawing_break(drawing, 80, 90), FRAME_OK);
    ck_assert_int_eq(frame_drawing_break(drawing, 55, 85), FRAME_OK);
    ck_assert_int_eq(frame_drawing_break(drawing, 5, 5), FRAME_CONFLICT);
    ck_assert_uint_eq(drawing->breaks.count, 2);
    ck_assert_double_eq(FRAME_ITEM(drawing_break, drawing->breaks, 0).from, 10);
    ck_assert_double_eq(FRAME_ITEM(drawing_break, drawing->breaks, 1).from, 50);
    ck_assert_double_eq(FRAME_ITEM(drawing_break, drawing->breaks, 1).to, 90);
}
END_TEST

START_TEST(shortens_the_empty_stretch_only) {
    frame_drawing_rectangle(drawing, 0, 0, 192, 5.5, FRAME_PEN_OUTLINE, FRAME_HATCH_SIDE_GRAIN);
    frame_drawing_line(drawing, 20, 0, 20, 5.5, FRAME_PEN_THIN);
    ck_assert_int_eq(frame_drawing_shorten(drawing, 6), FRAME_OK);
    ck_assert_uint_eq(drawing->breaks.count, 1);
    ck_assert_double_eq(FRAME_ITEM(drawing_break, drawing->breaks, 0).from, 26);
    ck_assert_double_eq(FRAME_ITEM(drawing_break, drawing->breaks, 0).to, 186);
}
END_TEST

START_TEST(a_first_view_is_captioned_not_added) {
    ck_assert_int_eq(frame_drawing_view(drawing, "wide face"), FRAME_OK);
    ck_assert_uint_eq(drawing->views.count, 1);
    frame_drawing_line(drawing, 0, 0, 1, 0, FRAME_PEN_THIN);
    ck_assert_int_eq(frame_drawing_view(drawing, NULL), FRAME_OK);
    ck_assert_uint_eq(drawing->views.count, 2);
    frame_drawing_line(drawing, 0, 0, 1, 0, FRAME_PEN_THIN);
    ck_assert_uint_eq(FRAME_ITEM(drawing_item, drawing->items, 1).view, 1);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("list");
    TCase *tests = tcase_create("all");
    tcase_add_checked_fixture(tests, begin, end);
    tcase_add_test(tests, items_stand_in_order);
    tcase_add_test(tests, refuses_and_keeps_still);
    tcase_add_test(tests, a_short_path_is_dropped);
    tcase_add_test(tests, a_tape_is_hooked_at_an_end);
    tcase_add_test(tests, only_texts_a_picture_may_hold);
    tcase_add_test(tests, angles_turn_counterclockwise);
    tcase_add_test(tests, distances_are_true_and_from_the_hook);
    tcase_add_test(tests, breaks_join_and_stay_in_order);
    tcase_add_test(tests, shortens_the_empty_stretch_only);
    tcase_add_test(tests, a_first_view_is_captioned_not_added);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
