/* What is written: the four notations, rounding, "strong" and "light", slopes, and every way of giving a style. */
#include <check.h>
#include <math.h>
#include <stdlib.h>

#include <frame/fields.h>
#include <frame/tape.h>

#include "tape/tape.h"
#include "text/writer.h"

static const char *written(double inches, frame_tape_style style) {
    static char text[32];
    const frame_status status = frame_tape_format(inches, &style, text, sizeof text);
    ck_assert_msg(status == FRAME_OK, "%.17g: %s", inches, frame_error_text());
    return text;
}

#define STYLE(...) ((frame_tape_style){__VA_ARGS__})
#define WRITES(inches, text, ...) ck_assert_str_eq(written(inches, STYLE(__VA_ARGS__)), text)

START_TEST(feet_and_inches) {
    WRITES(94.75, "7' 10-3/4\"", 0);
    WRITES(96, "8' 0\"", 0);
    WRITES(84.75, "7' 0-3/4\"", 0);
    WRITES(85, "7' 1\"", 0);
    WRITES(12, "1' 0\"", 0);
    WRITES(10.75, "10-3/4\"", 0);
    WRITES(0.375, "3/8\"", 0);
    WRITES(11, "11\"", 0);
    WRITES(0, "0\"", 0);
    WRITES(-0.0, "0\"", 0);
    WRITES(-94.75, "-7' 10-3/4\"", 0);
    WRITES(-0.375, "-3/8\"", 0);
    WRITES(-0.001, "0\"", 0);
    WRITES(1e6, "83333' 4\"", 0);
    WRITES(94 + 63.0 / 64, "7' 10-63/64\"", .denominator = 64);
    WRITES(94.75, "7' 11\"", .denominator = 1);
}
END_TEST

START_TEST(twelve_inches_are_a_foot) {
    WRITES(11.99, "1' 0\"", 0);
    WRITES(95.97, "8' 0\"", 0);
    WRITES(95.96, "7' 11-15/16\"", 0);
    WRITES(95.5, "8' 0\"", .denominator = 1);
    WRITES(-11.99, "-1' 0\"", 0);
    WRITES(95.001, "8' 0\"", .denominator = 1, .rounding = FRAME_ROUND_UP);
}
END_TEST

START_TEST(other_notations) {
    WRITES(94.75, "94-3/4\"", .style = FRAME_TAPE_INCHES);
    WRITES(96, "96\"", .style = FRAME_TAPE_INCHES);
    WRITES(-0.5, "-1/2\"", .style = FRAME_TAPE_INCHES);
    WRITES(94.75, "94.75 in", .style = FRAME_TAPE_DECIMAL);
    WRITES(94.6875, "94.6875 in", .style = FRAME_TAPE_DECIMAL);
    WRITES(94, "94 in", .style = FRAME_TAPE_DECIMAL);
    WRITES(100, "100 in", .style = FRAME_TAPE_DECIMAL);
    WRITES(1.0 / 64, "0.015625 in", .style = FRAME_TAPE_DECIMAL, .denominator = 64);
    WRITES(2.0 / 3, "0.6667 in", .style = FRAME_TAPE_DECIMAL);
    WRITES(2.0 / 3, "0.67 in", .style = FRAME_TAPE_DECIMAL, .decimals = 2);
    WRITES(94.5, "94.50 in", .style = FRAME_TAPE_DECIMAL, .decimals = 2);
    WRITES(-0.004, "0.00 in", .style = FRAME_TAPE_DECIMAL, .decimals = 2);
    WRITES(2407 / 25.4, "2407 mm", .style = FRAME_TAPE_METRIC);
    WRITES(94.75, "2407 mm", .style = FRAME_TAPE_METRIC);
    WRITES(94.75, "2406.7 mm", .style = FRAME_TAPE_METRIC, .denominator = 32);
    WRITES(94.75, "2406.65 mm", .style = FRAME_TAPE_METRIC, .decimals = 2);
    WRITES(-1, "-25 mm", .style = FRAME_TAPE_METRIC);
    WRITES(1e6, "25400000.000000 mm", .style = FRAME_TAPE_METRIC, .decimals = 6);
}
END_TEST

START_TEST(roundings) {
    WRITES(94.77, "7' 10-3/4\"", 0);
    WRITES(94.77, "7' 10-3/4\"", .rounding = FRAME_ROUND_DOWN);
    WRITES(94.77, "7' 10-13/16\"", .rounding = FRAME_ROUND_UP);
    WRITES(-94.77, "-7' 10-13/16\"", .rounding = FRAME_ROUND_DOWN);
    WRITES(-94.77, "-7' 10-3/4\"", .rounding = FRAME_ROUND_UP);
    WRITES(1.0 / 32, "1/16\"", 0); /* halfway, away from zero */
    WRITES(-1.0 / 32, "-1/16\"", 0);
    WRITES(94.75 - 1e-12, "7' 10-3/4\"", .rounding = FRAME_ROUND_DOWN); /* the last bits cost no sixteenth */
    WRITES(94.75 + 1e-12, "7' 10-3/4\"", .rounding = FRAME_ROUND_UP);
    WRITES(94.75 - 1e-6, "7' 10-11/16\"", .rounding = FRAME_ROUND_DOWN);
    WRITES(94.75 + 1e-6, "7' 10-13/16\"", .rounding = FRAME_ROUND_UP);
    WRITES(2407 / 25.4, "2407 mm", .style = FRAME_TAPE_METRIC, .rounding = FRAME_ROUND_DOWN);
    WRITES(2407 / 25.4, "2407 mm", .style = FRAME_TAPE_METRIC, .rounding = FRAME_ROUND_UP);
    WRITES(0.129, "0.12 in", .style = FRAME_TAPE_DECIMAL, .decimals = 2, .rounding = FRAME_ROUND_DOWN);
    WRITES(0.121, "0.13 in", .style = FRAME_TAPE_DECIMAL, .decimals = 2, .rounding = FRAME_ROUND_UP);
}
END_TEST

START_TEST(strong_and_light) {
    WRITES(94.77, "7' 10-3/4\" strong", .strength = 1);
    WRITES(94.73, "7' 10-3/4\" light", .strength = 1);
    WRITES(94.755, "7' 10-3/4\"", .strength = 1); /* under 1/128 */
    WRITES(-94.77, "-7' 10-3/4\" strong", .strength = 1);
    WRITES(94.77, "94-3/4\" strong", .strength = 1, .style = FRAME_TAPE_INCHES);
    WRITES(94.74, "7' 10-11/16\" strong", .strength = 1, .rounding = FRAME_ROUND_DOWN);
    WRITES(94.3, "7' 10\"", .strength = 1, .denominator = 1); /* more than a hair */
    WRITES(95.97, "8' 0\" light", .strength = 1);
    WRITES(94.77, "94.77 in", .strength = 1, .style = FRAME_TAPE_DECIMAL);
}
END_TEST

START_TEST(styles_given_in_each_way) {
    char text[32] = "as it was";
    frame_tape_style style;
    ck_assert_int_eq(frame_tape_format(94.77, NULL, text, sizeof text), FRAME_OK);
    ck_assert_str_eq(text, "7' 10-3/4\"");
    ck_assert_int_eq(frame_tape_style_init(&style), FRAME_OK);
    ck_assert_int_eq(frame_tape_format(94.77, &style, text, sizeof text), FRAME_OK);
    ck_assert_str_eq(text, "7' 10-3/4\"");
    style.style = FRAME_TAPE_DECIMAL;
    style.decimals = 0; /* in a style set up by init, 0 is 0 */
    ck_assert_int_eq(frame_tape_format(94.77, &style, text, sizeof text), FRAME_OK);
    ck_assert_str_eq(text, "95 in");
    style = STYLE(.denominator = FRAME_NOT_GIVEN_INT, .style = FRAME_NOT_GIVEN_INT, .rounding = FRAME_NOT_GIVEN_INT,
                  .strength = FRAME_NOT_GIVEN_INT, .decimals = FRAME_NOT_GIVEN_INT);
    ck_assert_int_eq(frame_tape_format(94.77, &style, text, sizeof text), FRAME_OK);
    ck_assert_str_eq(text, "7' 10-3/4\"");
    /* a program built with a shorter struct: what it does not know is not given */
    ck_assert_int_eq(frame_tape_style_init_sized(&style, 12), FRAME_OK);
    style.denominator = 2;
    style.style = 77;
    ck_assert_int_eq(frame_tape_format(94.77, &style, text, sizeof text), FRAME_OK);
    ck_assert_str_eq(text, "7' 11\"");
}
END_TEST

#define REFUSES(status, inches, ...)                                                                 \
    do {                                                                                             \
        char text[32] = "as it was";                                                                 \
        ck_assert_int_eq(frame_tape_format(inches, &STYLE(__VA_ARGS__), text, sizeof text), status); \
        ck_assert_str_eq(text, "as it was");                                                         \
        ck_assert_int_eq(frame_error_status(), status);                                              \
    } while (0)

START_TEST(styles_refused) {
    frame_tape_style style;
    ck_assert_int_eq(frame_tape_style_init(&style), FRAME_OK);
    const uint32_t id = style.struct_id, size = style.struct_size;
    REFUSES(FRAME_OUT_OF_RANGE, 1, .denominator = 3);
    ck_assert_str_eq(frame_error_field(), "denominator");
    ck_assert_str_eq(frame_error_value(), "3");
    REFUSES(FRAME_OUT_OF_RANGE, 1, .denominator = -16);
    REFUSES(FRAME_OUT_OF_RANGE, 1, .denominator = 128);
    REFUSES(FRAME_OUT_OF_RANGE, 1, .denominator = 0, .struct_size = size, .struct_id = id, .style = 1, .rounding = 1);
    REFUSES(FRAME_UNKNOWN_NAME, 1, .style = 5);
    ck_assert_str_eq(frame_error_field(), "style");
    REFUSES(FRAME_UNKNOWN_NAME, 1, .rounding = -1);
    REFUSES(FRAME_OUT_OF_RANGE, 1, .strength = 2);
    REFUSES(FRAME_OUT_OF_RANGE, 1, .decimals = 7);
    REFUSES(FRAME_NOT_INITIALISED, 1, .struct_size = size);
    REFUSES(FRAME_NOT_INITIALISED, 1, .struct_size = size, .struct_id = id + 1);
    REFUSES(FRAME_NEWER_HEADER, 1, .struct_size = size + 8, .struct_id = id);
}
END_TEST

START_TEST(lengths_refused) {
    REFUSES(FRAME_NOT_A_NUMBER, NAN, 0);
    ck_assert_str_eq(frame_error_field(), "inches");
    REFUSES(FRAME_NOT_A_NUMBER, INFINITY, 0);
    REFUSES(FRAME_NOT_A_NUMBER, -INFINITY, 0);
    REFUSES(FRAME_OUT_OF_RANGE, 1000000.1, 0);
    REFUSES(FRAME_OUT_OF_RANGE, -1e300, 0);
    char small[11] = "as it was";
    ck_assert_int_eq(frame_tape_format(94.75, NULL, small, 10), FRAME_BUFFER_TOO_SMALL);
    ck_assert_str_eq(frame_error_valid(), "at least 11");
    ck_assert_int_eq(frame_tape_format(94.75, NULL, small, 0), FRAME_BUFFER_TOO_SMALL);
    ck_assert_str_eq(small, "as it was");
    ck_assert_int_eq(frame_tape_format(94.75, NULL, small, 11), FRAME_OK);
    ck_assert_str_eq(small, "7' 10-3/4\"");
    ck_assert_int_eq(frame_tape_format(94.75, NULL, NULL, 32), FRAME_REQUIRED);
}
END_TEST

static const char *slope_written(double slope) {
    static char text[32];
    ck_assert_int_eq(frame_slope_format(slope, text, sizeof text), FRAME_OK);
    return text;
}

START_TEST(slopes) {
    ck_assert_str_eq(slope_written(8.0 / 12), "8 in 12");
    ck_assert_str_eq(slope_written(8.5 / 12), "8-1/2 in 12");
    ck_assert_str_eq(slope_written(tan(33.69 * M_PI / 180)), "8 in 12");
    ck_assert_str_eq(slope_written(8.0625 / 12), "8-1/16 in 12");
    ck_assert_str_eq(slope_written(0.6725), "8.07 in 12");
    ck_assert_str_eq(slope_written(-2.0 / 12), "-2 in 12");
    ck_assert_str_eq(slope_written(0), "0 in 12");
    ck_assert_str_eq(slope_written(-1e-9), "0 in 12");
    ck_assert_str_eq(slope_written(1), "12 in 12");
    ck_assert_str_eq(slope_written(-100), "-1200 in 12");
    char text[32] = "as it was";
    ck_assert_int_eq(frame_slope_format(NAN, text, sizeof text), FRAME_NOT_A_NUMBER);
    ck_assert_int_eq(frame_slope_format(100.1, text, sizeof text), FRAME_OUT_OF_RANGE);
    ck_assert_int_eq(frame_slope_format(1, text, 8), FRAME_BUFFER_TOO_SMALL);
    ck_assert_int_eq(frame_slope_format(1, NULL, 32), FRAME_REQUIRED);
    ck_assert_str_eq(text, "as it was");
}
END_TEST

START_TEST(into_a_text) {
    frame_text *text;
    ck_assert_int_eq(frame_text_new(&text), FRAME_OK);
    frame_tape_add(text, 94.77, 16);
    frame_text_add(text, ", ");
    frame_inches_add(text, 94.77, 4);
    frame_text_add(text, ", ");
    frame_slope_add(text, 0.5);
    frame_text_add(text, ", ");
    frame_angle_add(text, 26.565051, 2);
    frame_text_add(text, ", ");
    frame_angle_add(text, -30, 1);
    ck_assert_str_eq(frame_text_chars(text), "7' 10-3/4\", 94-3/4\", 6 in 12, 26.57\xC2\xB0, -30\xC2\xB0");
    frame_text_clear(text);
    frame_tape_add(text, 1e9, 16); /* beyond any tape: still a number, still with its unit */
    frame_text_add(text, ", ");
    frame_slope_add(text, 1e5);
    frame_text_add(text, ", ");
    frame_tape_add(text, NAN, 16);
    ck_assert_str_eq(frame_text_chars(text), "1000000000 in, 100000, nan in");
    frame_text_free(text);
}
END_TEST

START_TEST(words_and_facts) {
    int32_t value;
    ck_assert_int_eq(frame_word_find("tape_units", "Metric", &value), FRAME_OK);
    ck_assert_int_eq(value, FRAME_TAPE_METRIC);
    ck_assert_int_eq(frame_word_find("rounding", "down", &value), FRAME_OK);
    ck_assert_int_eq(value, FRAME_ROUND_DOWN);
    const frame_field *field = frame_field_find(frame_struct_find("tape_style"), "denominator");
    ck_assert_ptr_nonnull(field);
    ck_assert_double_eq(field->fallback, 16);
    ck_assert_double_eq(field->high, 64);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("tape write");
    TCase *tests = tcase_create("all");
    tcase_add_test(tests, feet_and_inches);
    tcase_add_test(tests, twelve_inches_are_a_foot);
    tcase_add_test(tests, other_notations);
    tcase_add_test(tests, roundings);
    tcase_add_test(tests, strong_and_light);
    tcase_add_test(tests, styles_given_in_each_way);
    tcase_add_test(tests, styles_refused);
    tcase_add_test(tests, lengths_refused);
    tcase_add_test(tests, slopes);
    tcase_add_test(tests, into_a_text);
    tcase_add_test(tests, words_and_facts);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
