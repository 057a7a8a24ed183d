/* Under a locale that writes decimals with a comma, the tape reads and writes as ever. */
#include <check.h>
#include <locale.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include <frame/tape.h>

#include "../scratch.h"

static char made[300];
static int made_one;

/* True when the process now writes 1.5 as 1,5. */
static int comma_now(const char *name) {
    char text[8];
    if (!setlocale(LC_ALL, name)) return 0;
    snprintf(text, sizeof text, "%.1f", 1.5);
    return !strcmp(text, "1,5");
}

/* A system without such a locale may still have what one is compiled from. */
static int compile_one(void) {
    char command[800];
    if (!scratch_folder(made, sizeof made, "locale")) return 0;
    made_one = 1;
    snprintf(command, sizeof command, "localedef -i de_DE -f UTF-8 %s/de_DE.UTF-8 >%s/log 2>&1", made, made);
    if (system(command) != 0) return 0;
    setenv("LOCPATH", made, 1);
    return comma_now("de_DE.UTF-8");
}

static void remove_it(void) {
    char command[400];
    setlocale(LC_ALL, "C");
    if (!made_one) return;
    snprintf(command, sizeof command, "rm -rf '%s'", made);
    if (system(command) != 0) fprintf(stderr, "%s was left behind\n", made);
}

static int find_one(void) {
    static const char *const names[] = {"de_DE.UTF-8", "de_DE.utf8",  "fr_FR.UTF-8",
                                        "nl_NL.UTF-8", "pt_BR.UTF-8", "it_IT.UTF-8"};
    for (size_t i = 0; i < sizeof names / sizeof *names; i++)
        if (comma_now(names[i])) return 1;
    return compile_one();
}

START_TEST(a_comma_locale_changes_nothing) {
    static const char *const texts[] = {"94.75 in", "7 ft 10.75 in", "94.66666666666666666666", "2406.65 mm", "0.667"};
    static const double values[] = {94.75, 94.75, 94.66666666666666666666, 94.75, 0.667};
    double value;
    char text[32];
    for (size_t i = 0; i < sizeof texts / sizeof *texts; i++) {
        ck_assert_int_eq(frame_tape_parse(texts[i], &value), FRAME_OK);
        ck_assert_msg(value == values[i], "%s read as %.17g", texts[i], value);
    }
    ck_assert_int_eq(frame_tape_parse("94,75", &value), FRAME_AMBIGUOUS);
    ck_assert_int_eq(frame_slope_parse("33.69 deg", &value), FRAME_OK);
    ck_assert_double_eq_tol(value, 2.0 / 3, 1e-5);
    ck_assert_int_eq(frame_tape_format(94.75, &(frame_tape_style){.style = FRAME_TAPE_DECIMAL}, text, sizeof text),
                     FRAME_OK);
    ck_assert_str_eq(text, "94.75 in");
    ck_assert_int_eq(frame_slope_format(0.6725, text, sizeof text), FRAME_OK);
    ck_assert_str_eq(text, "8.07 in 12");
    ck_assert_int_eq(frame_tape_format(1e9, NULL, text, sizeof text), FRAME_OUT_OF_RANGE);
    ck_assert_ptr_null(strchr(frame_error_value(), ','));
}
END_TEST

int main(void) {
    if (!find_one()) {
        remove_it();
        puts("no locale with a decimal comma, and none could be compiled: not tested");
        return 77; /* ctest shows it as skipped */
    }
    Suite *suite = suite_create("tape locale");
    TCase *tests = tcase_create("all");
    tcase_add_test(tests, a_comma_locale_changes_nothing);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    remove_it();
    return failed != 0;
}
