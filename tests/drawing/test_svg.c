/* The SVG writer: well formed, escaped, the same bytes every time, whatever the drawing. */
#include <check.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include <frame/frame.h>

#include "../scratch.h"
#include "pictures.h"

static frame_drawing *drawing;
static frame_text *svg;

static void begin(void) {
    ck_assert_int_eq(frame_drawing_new(&drawing), FRAME_OK);
    ck_assert_int_eq(frame_text_new(&svg), FRAME_OK);
}
static void end(void) {
    frame_drawing_free(drawing);
    frame_text_free(svg);
}

static const char *written(void) {
    frame_text_clear(svg);
    ck_assert_int_eq(frame_drawing_svg(drawing, svg), FRAME_OK);
    return frame_text_chars(svg);
}

START_TEST(an_empty_drawing_is_a_picture) {
    ck_assert_ptr_nonnull(strstr(written(), "<title>Drawing</title>"));
    ck_assert_ptr_nonnull(strstr(written(), "viewBox=\"0 0 6 6\""));
    frame_drawing_view(drawing, "nothing yet");
    ck_assert_ptr_nonnull(strstr(written(), ">nothing yet</text>"));
}
END_TEST

START_TEST(only_texts_or_points_make_pictures) {
    frame_drawing_line(drawing, 5, 5, 5, 5, FRAME_PEN_THIN);
    frame_drawing_label(drawing, 5, 5, "a point");
    frame_drawing_dimension(drawing, 5, 5, 5, 5, FRAME_DIMENSION_ABOVE, "none");
    ck_assert_ptr_null(strstr(written(), "nan"));
    ck_assert_ptr_null(strstr(written(), "inf"));
    ck_assert_ptr_nonnull(strstr(written(), ">a point</text>"));
}
END_TEST

START_TEST(what_people_write_is_escaped) {
    frame_drawing_title(drawing, "joists <2x10> & \"blocking\"");
    frame_drawing_description(drawing, "a < b");
    frame_drawing_label(drawing, 0, 0, "7' 10-3/4\" & <more>");
    ck_assert_ptr_nonnull(strstr(written(), "<title>joists &lt;2x10&gt; &amp; &quot;blocking&quot;</title>"));
    ck_assert_ptr_nonnull(strstr(written(), "<desc>a &lt; b</desc>"));
    ck_assert_ptr_nonnull(strstr(written(), ">7&#39; 10-3/4&quot; &amp; &lt;more&gt;</text>"));
}
END_TEST

START_TEST(those_who_hear_it_get_the_distances) {
    frame_drawing_mark(drawing, 0, 0, NULL);
    frame_drawing_mark(drawing, 94.75, 0, NULL);
    frame_drawing_dimension_running(drawing, FRAME_DIMENSION_BELOW);
    frame_drawing_label(drawing, 0, 0, "seat");
    ck_assert_ptr_nonnull(strstr(written(), "Marks on one tape: 0&quot;; 7&#39; 10-3/4&quot;. Label: seat. "));
}
END_TEST

START_TEST(same_drawing_same_bytes) {
    pictures[_i](drawing);
    char *once = strdup(written());
    ck_assert_str_eq(written(), once);
    frame_drawing *again;
    ck_assert_int_eq(frame_drawing_new(&again), FRAME_OK);
    pictures[_i](again);
    frame_text_clear(svg);
    ck_assert_int_eq(frame_drawing_svg(again, svg), FRAME_OK);
    ck_assert_str_eq(frame_text_chars(svg), once);
    frame_drawing_free(again);
    free(once);
}
END_TEST

/* Every number has two decimals at most, none is written as minus zero or with an exponent. */
START_TEST(numbers_are_short) {
    pictures[_i](drawing);
    const char *chars = strchr(written(), '\n');
    chars = strstr(chars, "</desc>");
    for (const char *c = chars; *c; c++) {
        ck_assert_msg(strncmp(c, "-0 ", 3) && strncmp(c, "-0\"", 3), "%.20s", c);
        if (*c != '.') continue;
        size_t digits = strspn(c + 1, "0123456789");
        if (c[-1] >= '0' && c[-1] <= '9') ck_assert_msg(digits <= 2, "%.20s", c);
    }
}
END_TEST

START_TEST(no_letter_is_small) {
    pictures[_i](drawing);
    const char *chars = written();
    double points;
    size_t texts = 0;
    while ((chars = strstr(chars, "font-size=\""))) {
        chars += strlen("font-size=\"");
        ck_assert_int_eq(frame_number_read(chars, NULL, &points), FRAME_OK);
        ck_assert_double_ge(points, 9);
        texts++;
    }
    ck_assert_uint_gt(texts, 5);
}
END_TEST

/* Full size is the largest scale: a stick's end is not blown up to the width of the page. */
START_TEST(small_things_stay_small) {
    frame_drawing_rectangle(drawing, 0, 0, 1.5, 3.5, FRAME_PEN_CUT, FRAME_HATCH_END_GRAIN);
    double width = 0;
    ck_assert_int_eq(frame_number_read(strstr(written(), "viewBox=\"0 0 ") + strlen("viewBox=\"0 0 "), NULL, &width),
                     FRAME_OK);
    ck_assert_double_eq_tol(width, 1.5 * 72 + 1.7 + 6, 0.02);
}
END_TEST

START_TEST(is_well_formed) {
    if (system("command -v xmllint >/dev/null 2>&1")) return;
    char path[300], command[400];
    scratch_path(path, sizeof path, "drawing.svg");
    pictures[_i](drawing);
    frame_drawing_title(drawing, "<&>\"'");
    ck_assert_int_eq(frame_drawing_save_svg(drawing, path), FRAME_OK);
    snprintf(command, sizeof command, "xmllint --noout %s", path);
    const int status = system(command);
    remove(path);
    ck_assert_int_eq(status, 0);
}
END_TEST

START_TEST(a_place_that_cannot_be_written_is_named) {
    ck_assert_int_eq(frame_drawing_save_svg(drawing, "no/such/folder/a.svg"), FRAME_NOT_WRITTEN);
    ck_assert_ptr_nonnull(strstr(frame_error_text(), "no/such/folder/a.svg"));
}
END_TEST

int main(void) {
    Suite *suite = suite_create("svg");
    TCase *tests = tcase_create("all");
    tcase_set_timeout(tests, 60);
    tcase_add_checked_fixture(tests, begin, end);
    tcase_add_test(tests, an_empty_drawing_is_a_picture);
    tcase_add_test(tests, only_texts_or_points_make_pictures);
    tcase_add_test(tests, what_people_write_is_escaped);
    tcase_add_test(tests, those_who_hear_it_get_the_distances);
    tcase_add_loop_test(tests, same_drawing_same_bytes, 0, PICTURES);
    tcase_add_loop_test(tests, numbers_are_short, 0, PICTURES);
    tcase_add_loop_test(tests, no_letter_is_small, 0, PICTURES);
    tcase_add_test(tests, small_things_stay_small);
    tcase_add_loop_test(tests, is_well_formed, 0, PICTURES);
    tcase_add_test(tests, a_place_that_cannot_be_written_is_named);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
