/* Numbers in and out: exact, short, and deaf to the locale. */
#include <check.h>
#include <locale.h>
#include <math.h>
#include <stdlib.h>

#include <frame/text.h>

#include "text/writer.h"

START_TEST(reads_like_c) {
    static const char *const texts[] = {"0",       "-0",    "1",   "12.5",   ".5",   "1e3", "-1.25e-7", "123456789012345678901234567890",
                                        "0.1",     "1e-320", "9007199254740993", "3.", "00012.250", "1.7976931348623157e308"};
    for (size_t i = 0; i < sizeof texts / sizeof *texts; i++) {
        double value;
        const char *end;
        ck_assert_int_eq(frame_number_read(texts[i], &end, &value), FRAME_OK);
        ck_assert_msg(value == strtod(texts[i], NULL), "%s read as %.17g", texts[i], value);
        ck_assert_int_eq(*end, 0);
    }
}
END_TEST

START_TEST(refuses_what_is_no_number) {
    double value = 7;
    ck_assert_int_eq(frame_number_read("abc", NULL, &value), FRAME_UNREADABLE);
    ck_assert_int_eq(frame_number_read("", NULL, &value), FRAME_UNREADABLE);
    ck_assert_int_eq(frame_number_read("-", NULL, &value), FRAME_UNREADABLE);
    ck_assert_int_eq(frame_number_read("1e999", NULL, &value), FRAME_OUT_OF_RANGE);
    ck_assert_int_eq(frame_number_read(NULL, NULL, &value), FRAME_UNREADABLE);
    ck_assert_double_eq(value, 7);
}
END_TEST

START_TEST(round_trip) {
    unsigned seed = 12345;
    for (int i = 0; i < 20000; i++) {
        seed = seed * 1664525u + 1013904223u;
        const double mantissa = (double)seed / 4294967296.0 - 0.5;
        seed = seed * 1664525u + 1013904223u;
        const double value = ldexp(mantissa, (int)(seed % 200) - 100);
        char chars[64];
        double back;
        ck_assert_int_eq(frame_number_write(value, 17, chars, sizeof chars), FRAME_OK);
        ck_assert_int_eq(frame_number_read(chars, NULL, &back), FRAME_OK);
        ck_assert_msg(back == value, "%s", chars);
    }
}
END_TEST

START_TEST(a_comma_locale_changes_nothing) {
    char chars[64];
    double value;
    static const char *const commas[] = {"de_DE.UTF-8", "de_DE.utf8", "fr_FR.UTF-8", "nl_NL.UTF-8"};
    for (size_t i = 0; i < sizeof commas / sizeof *commas; i++)
        if (setlocale(LC_ALL, commas[i])) break;
    ck_assert_int_eq(frame_number_write(1.5, 6, chars, sizeof chars), FRAME_OK);
    ck_assert_str_eq(chars, "1.5");
    ck_assert_int_eq(frame_number_read("0.12345678901234567890123", NULL, &value), FRAME_OK);
    ck_assert_double_eq_tol(value, 0.123456789012345678, 1e-17);
    setlocale(LC_ALL, "C");
}
END_TEST

START_TEST(a_text_escapes) {
    frame_text *text;
    ck_assert_int_eq(frame_text_new(&text), FRAME_OK);
    frame_text_add_xml(text, "<a & \"b\">");
    frame_text_add_json(text, "q\"\n");
    frame_text_add_csv(text, "1,\"2\"");
    ck_assert_str_eq(frame_text_chars(text), "&lt;a &amp; &quot;b&quot;&gt;\"q\\\"\\n\"\"1,\"\"2\"\"\"");
    frame_text_clear(text);
    ck_assert_uint_eq(frame_text_length(text), 0);
    frame_text_free(text);
    frame_text_free(NULL);
}
END_TEST

START_TEST(a_file_is_whole_or_not_there) {
    frame_text *text;
    ck_assert_int_eq(frame_text_new(&text), FRAME_OK);
    frame_text_add(text, "one line\n");
    ck_assert_int_eq(frame_text_save(text, "no/such/folder/file.txt"), FRAME_NOT_WRITTEN);
    ck_assert_ptr_nonnull(strstr(frame_error_text(), "no/such/folder/file.txt"));
    frame_text_free(text);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("number");
    TCase *tests = tcase_create("all");
    tcase_add_test(tests, reads_like_c);
    tcase_add_test(tests, refuses_what_is_no_number);
    tcase_add_test(tests, round_trip);
    tcase_add_test(tests, a_comma_locale_changes_nothing);
    tcase_add_test(tests, a_text_escapes);
    tcase_add_test(tests, a_file_is_whole_or_not_there);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
