/* The record: what the macros keep, that they keep nothing without a working, and how it is rolled back. */
#include <check.h>
#include <math.h>
#include <stdio.h>
#include <string.h>

#include <frame/frame.h>

#include "working/entries.h"
#include "working/record.h"

static double buckling(frame_working *w, double length, double depth) {
    FRAME_HEADING(w, "Buckling");
    FRAME_GIVEN(w, l_e, length, "in", "effective length");
    FRAME_GIVEN(w, d, depth, "in", "depth");
    FRAME_TABLE(w, E_min, 510000, "psi", "modulus for stability", "NDS Supplement 4A");
    FRAME_CASE(w, "l_e / d <= 50", "within the limit of slenderness", "NDS 3.7.1.4");
    FRAME_STEP(w, F_cE, 0.822 * E_min / pow(l_e / d, 2), "psi", "critical buckling value", "NDS 3.7.1");
    return F_cE;
}

START_TEST(without_a_working_the_value_is_the_same) {
    frame_working *w;
    ck_assert_int_eq(frame_working_new(&w), FRAME_OK);
    ck_assert(buckling(NULL, 92.625, 3.5) == buckling(w, 92.625, 3.5));
    ck_assert(buckling(NULL, 92.625, 3.5) == 0.822 * 510000 / pow(92.625 / 3.5, 2));
    ck_assert_uint_eq(frame_working_step_count(w), 6);
    frame_working_free(w);
}
END_TEST

START_TEST(null_handles_are_harmless) {
    frame_working_free(NULL);
    frame_working_clear(NULL);
    ck_assert_uint_eq(frame_working_step_count(NULL), 0);
    ck_assert_int_eq(frame_working_state(NULL), FRAME_OK);
    ck_assert_uint_eq(frame_working_mark_position(NULL), 0);
    frame_working_roll_back(NULL, 0);
    ck_assert_int_eq(frame_working_new(NULL), FRAME_REQUIRED);
    frame_record(NULL, FRAME_STEP_GIVEN, "a", NULL, 1, "", "", "");
    frame_record_case(NULL, "", "", "");
    frame_record_heading(NULL, "");
    frame_record_enter(NULL);
    frame_record_leave(NULL);
}
END_TEST

START_TEST(texts_made_at_run_time_are_copied) {
    frame_working *w;
    char meaning[16] = "span", condition[16] = "L > 1";
    ck_assert_int_eq(frame_working_new(&w), FRAME_OK);
    FRAME_GIVEN(w, L, 90, "in", meaning);
    FRAME_CASE(w, condition, "taken", meaning);
    memset(meaning, 'x', sizeof meaning - 1);
    memset(condition, 'x', sizeof condition - 1);
    ck_assert_str_eq(frame_entry_at(w, 0)->meaning, "span");
    ck_assert_str_eq(frame_entry_at(w, 1)->source, "span");
    ck_assert_str_eq(frame_entry_at(w, 1)->expression, "L > 1");
    frame_working_free(w);
}
END_TEST

START_TEST(a_failing_calculation_leaves_no_trace) {
    frame_working *w;
    ck_assert_int_eq(frame_working_new(&w), FRAME_OK);
    buckling(w, 90, 3.5);
    const size_t position = frame_working_mark_position(w);
    FRAME_ENTER(w);
    buckling(w, 45, 3.5);
    frame_working_roll_back(w, position);
    ck_assert_uint_eq(frame_working_step_count(w), 6);
    frame_working_roll_back(w, position + 100);
    ck_assert_uint_eq(frame_working_step_count(w), 6);
    FRAME_GIVEN(w, a, 1, "", "after it");
    ck_assert_int_eq(frame_entry_at(w, position)->level, 0);
    frame_working_clear(w);
    ck_assert_uint_eq(frame_working_step_count(w), 0);
    ck_assert(a == 1);
    frame_working_free(w);
}
END_TEST

/* What a name means at the end of the record. */
static double value_of(const frame_working *w, const char *name) {
    const size_t end = frame_working_mark_position(w), at = frame_entry_find_name(w, end, name, strlen(name));
    return at == end ? FRAME_NOT_GIVEN : frame_entry_at(w, at)->value;
}

START_TEST(names_are_looked_up_latest_first_and_by_level) {
    frame_working *w;
    ck_assert_int_eq(frame_working_new(&w), FRAME_OK);
    frame_record(w, FRAME_STEP_GIVEN, "a", NULL, 1, "", "", "");
    frame_record(w, FRAME_STEP_GIVEN, "a", NULL, 2, "", "", "");
    ck_assert(value_of(w, "a") == 2);
    frame_record_enter(w);
    ck_assert(value_of(w, "a") == 2);
    frame_record(w, FRAME_STEP_GIVEN, "a", NULL, 3, "", "", "");
    frame_record(w, FRAME_STEP_GIVEN, "b", NULL, 4, "", "", "");
    ck_assert(value_of(w, "a") == 3);
    frame_record_leave(w);
    frame_record_enter(w);
    ck_assert(value_of(w, "a") == 2);
    frame_record_leave(w);
    ck_assert(value_of(w, "a") == 2);
    ck_assert(value_of(w, "b") == 4);
    ck_assert(value_of(w, "c") == FRAME_NOT_GIVEN);
    ck_assert_uint_eq(frame_working_step_count(w), 4);
    for (size_t i = 0; i < 4; i++) ck_assert(frame_entry_at(w, frame_entry_find_seen(w, i))->value == (double)(i + 1));
    ck_assert_uint_eq(frame_entry_find_seen(w, 4), frame_working_mark_position(w));
    frame_working_free(w);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("record");
    TCase *tests = tcase_create("all");
    tcase_add_test(tests, without_a_working_the_value_is_the_same);
    tcase_add_test(tests, null_handles_are_harmless);
    tcase_add_test(tests, texts_made_at_run_time_are_copied);
    tcase_add_test(tests, a_failing_calculation_leaves_no_trace);
    tcase_add_test(tests, names_are_looked_up_latest_first_and_by_level);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
