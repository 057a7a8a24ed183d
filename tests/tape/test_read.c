/* What is read and what is refused: every row of tests/verification/tape_read.csv, and what a table cannot say. */
#include <check.h>
#include <math.h>
#include <stdlib.h>

#include <frame/tape.h>

#include "csv.h"

static const double untouched = 12345.678;

static frame_status read_as(const char *kind, const char *text, double *value) {
    if (!strcmp(kind, "length")) return frame_tape_parse(text, value);
    if (!strcmp(kind, "slope")) return frame_slope_parse(text, value);
    if (!strcmp(kind, "angle")) return frame_angle_parse(text, value);
    ck_abort_msg("%s: not something that is read", kind);
    return FRAME_INTERNAL;
}

static void check_value(const csv_row *row, double value) {
    char *end;
    const double expected = strtod(row->cells[2], &end);
    ck_assert_msg(end != row->cells[2] && !*end, "line %d: %s is not a value", row->number, row->cells[2]);
    /* lengths are read as the nearest double; a tangent may be out by its last bits */
    const double allowed = strcmp(row->cells[0], "length") ? 4e-16 * fabs(expected) : 0;
    ck_assert_msg(fabs(value - expected) <= allowed, "line %d: %s read as %.17g, not %.17g", row->number, row->cells[1],
                  value, expected);
    ck_assert_msg(!signbit(value) || value < 0, "line %d: a negative zero", row->number);
}

static void check_refusal(const csv_row *row, double value) {
    char place[40];
    ck_assert_msg(value == untouched, "line %d: %s refused, but the answer was written", row->number, row->cells[1]);
    ck_assert_str_eq(frame_error_field(), "text");
    ck_assert_msg(!strcmp(frame_error_value(), row->cells[1]), "line %d: value is \"%s\"", row->number,
                  frame_error_value());
    snprintf(place, sizeof place, " at character %s: ", row->cells[4]);
    ck_assert_msg(strstr(frame_error_text(), place) != NULL, "line %d:%sis not in: %s", row->number, place,
                  frame_error_text());
    ck_assert_msg(strstr(frame_error_text(), "; write ") != NULL, "line %d: no advice in: %s", row->number,
                  frame_error_text());
    ck_assert_msg(*frame_error_valid() != 0, "line %d: nothing valid is named", row->number);
    ck_assert_msg(!strchr(frame_error_text(), '\n'), "line %d: more than one line", row->number);
}

START_TEST(every_row_of_the_table) {
    csv_row row = {.number = 0};
    int counts[2] = {0, 0}, found;
    FILE *file = fopen(FRAME_TESTS_DIR "/verification/tape_read.csv", "r");
    ck_assert_ptr_nonnull(file);
    ck_assert_int_eq(csv_next(file, &row), 1);
    ck_assert_str_eq(row.cells[0], "reads");
    while ((found = csv_next(file, &row)) != 0) {
        ck_assert_msg(found == 1, "line %d does not have %d cells", row.number, CSV_CELLS);
        double value = untouched;
        frame_error_clear();
        const frame_status status = read_as(row.cells[0], row.cells[1], &value);
        ck_assert_msg(!strcmp(frame_status_name(status), row.cells[3]), "line %d: %s is %s, not %s (%s)", row.number,
                      row.cells[1], frame_status_name(status), row.cells[3], frame_error_text());
        if (status)
            check_refusal(&row, value);
        else
            check_value(&row, value);
        counts[status != FRAME_OK]++;
    }
    fclose(file);
    ck_assert_int_ge(counts[0], 80);
    ck_assert_int_ge(counts[1], 80);
}
END_TEST

START_TEST(says_what_to_write_instead) {
    double value = untouched;
    ck_assert_int_eq(frame_tape_parse("7-10", &value), FRAME_AMBIGUOUS);
    ck_assert_int_eq(frame_error_status(), FRAME_AMBIGUOUS);
    ck_assert_str_eq(frame_error_value(), "7-10");
    ck_assert_str_eq(
        frame_error_text(),
        "text: 7-10 is ambiguous at character 2: two whole numbers side by side; write 7' 10\" for feet and "
        "inches, 7-10/16 for sixteenths");
    ck_assert_int_eq(frame_slope_parse("5 - 12", &value), FRAME_AMBIGUOUS);
    ck_assert_str_eq(frame_error_valid(), "5 in 12 for a rise and its run");
    ck_assert_int_eq(frame_tape_parse("99999999999999999999-10", &value), FRAME_AMBIGUOUS);
    ck_assert_int_eq(frame_tape_parse("", &value), FRAME_UNREADABLE);
    ck_assert_ptr_nonnull(strstr(frame_error_text(), "an empty text cannot be read at character 1"));
    ck_assert_double_eq(value, untouched);
}
END_TEST

START_TEST(refuses_null_and_too_much) {
    double value = untouched;
    char text[400];
    ck_assert_int_eq(frame_tape_parse(NULL, &value), FRAME_REQUIRED);
    ck_assert_str_eq(frame_error_field(), "text");
    ck_assert_int_eq(frame_slope_parse(NULL, &value), FRAME_REQUIRED);
    ck_assert_int_eq(frame_angle_parse(NULL, &value), FRAME_REQUIRED);
    ck_assert_int_eq(frame_tape_parse("7", NULL), FRAME_REQUIRED);
    ck_assert_str_eq(frame_error_field(), "inches");
    ck_assert_int_eq(frame_slope_parse("7", NULL), FRAME_REQUIRED);
    ck_assert_int_eq(frame_angle_parse("7", NULL), FRAME_REQUIRED);
    memset(text, '7', sizeof text);
    text[sizeof text - 1] = 0;
    ck_assert_int_eq(frame_tape_parse(text, &value), FRAME_UNREADABLE);
    ck_assert_ptr_nonnull(strstr(frame_error_text(), "at character 101"));
    memset(text, ' ', sizeof text);
    text[98] = '7', text[99] = '"', text[100] = 0;
    ck_assert_double_eq(value, untouched);
    ck_assert_int_eq(frame_tape_parse(text, &value), FRAME_OK); /* 100 bytes are not too many */
    ck_assert_double_eq(value, 7);
    ck_assert_int_eq(frame_tape_parse("94 3/4\r\n", &value), FRAME_OK); /* as a line of a file may end */
    ck_assert_double_eq(value, 94.75);
}
END_TEST

/* Bytes that are not UTF-8, and signs that would break a message, are refused and do not reach the message. */
START_TEST(messages_stay_clean) {
    static const char *const bad[] = {"7\xFF",    "\xC2",     "\xE2\x80",     "7\xE2\x28\xA1", "\xF0\x9F\x98\x80",
                                      "7\n8\x01", "\xC0\xA7", "\xED\xA0\x80", "7'\xC2\x85"};
    for (size_t i = 0; i < sizeof bad / sizeof *bad; i++) {
        double value = untouched;
        ck_assert_int_ne(frame_tape_parse(bad[i], &value), FRAME_OK);
        ck_assert_double_eq(value, untouched);
        for (const char *c = frame_error_text(); *c; c++) ck_assert_msg((unsigned char)*c >= 0x20, "%zu", i);
        const int emoji = i == 4;
        for (const char *c = frame_error_value(); *c; c++) ck_assert_msg(emoji || (unsigned char)*c < 0x80, "%zu", i);
    }
}
END_TEST

/* Every text of up to four signs from the notation: no crash, and either a finite number or a refusal that says where.
 */
START_TEST(every_short_text) {
    static const char *const signs[] = {"7",  "12", ".",        " ",  "-", "/",   "'",
                                        "\"", "in", "\xC2\xBD", "mm", ":", "deg", ","};
    const size_t count = sizeof signs / sizeof *signs;
    size_t read = 0;
    for (size_t i = 0; i < count * count * count * count; i++) {
        char text[64];
        snprintf(text, sizeof text, "%s%s%s%s", signs[i % count], signs[i / count % count],
                 signs[i / count / count % count], signs[i / count / count / count]);
        frame_status (*const readers[])(const char *, double *) = {frame_tape_parse, frame_slope_parse,
                                                                   frame_angle_parse};
        for (size_t reader = 0; reader < 3; reader++) {
            double value = untouched;
            const frame_status status = readers[reader](text, &value);
            if (status)
                ck_assert_msg(value == untouched && strstr(frame_error_text(), " at character "), "%s", text);
            else
                ck_assert_msg(isfinite(value) && value != untouched, "%s", text);
            read += !status;
        }
    }
    ck_assert_uint_gt(read, 1000);
}
END_TEST

/* All the digits that another program may print are read as strtod reads them. */
START_TEST(digits_as_strtod) {
    unsigned seed = 99;
    for (int i = 0; i < 20000; i++) {
        char text[64];
        double value;
        seed = seed * 1664525u + 1013904223u;
        snprintf(text, sizeof text, "%.*f", (int)(seed % 20), (double)seed / 65536.0 / ((seed >> 8) % 7 + 1));
        ck_assert_int_eq(frame_tape_parse(text, &value), FRAME_OK);
        ck_assert_msg(value == strtod(text, NULL), "%s read as %.17g", text, value);
    }
}
END_TEST

int main(void) {
    Suite *suite = suite_create("tape read");
    TCase *tests = tcase_create("all");
    tcase_set_timeout(tests, 60);
    tcase_add_test(tests, every_row_of_the_table);
    tcase_add_test(tests, says_what_to_write_instead);
    tcase_add_test(tests, refuses_null_and_too_much);
    tcase_add_test(tests, messages_stay_clean);
    tcase_add_test(tests, every_short_text);
    tcase_add_test(tests, digits_as_strtod);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
