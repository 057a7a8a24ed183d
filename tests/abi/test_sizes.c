/* A program built with older, smaller structs, one built with a newer header, and one that forgot to initialise: for
 * every struct of the library, by the run-time facts. */
#include <check.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <frame/frame.h>

#include "base/facts.h"

enum { CANARY = 0x5a };

/* Init of every size up to today's writes today's beginning and not one byte more. */
START_TEST(init_knows_the_callers_size) {
    for (size_t i = 0; i < frame_struct_count(); i++) {
        const frame_struct *facts = frame_struct_at(i);
        const size_t size = frame_struct_size(facts);
        unsigned char *whole = malloc(size), *part = malloc(size + 16);
        if (!facts->blank) {
            ck_assert_int_eq(frame_struct_init(facts, whole, size), FRAME_WRONG_TYPE);
        } else {
            ck_assert_int_eq(frame_struct_init(facts, whole, size), FRAME_OK);
            for (size_t past = 8; past <= size; past += 4) {
                memset(part, CANARY, size + 16);
                ck_assert_int_eq(frame_struct_init(facts, part, past), FRAME_OK);
                ck_assert_uint_eq(*(uint32_t *)(void *)part, past);
                ck_assert_mem_eq(part + 4, whole + 4, past - 4);
                for (size_t b = past; b < size + 16; b++)
                    ck_assert_msg(part[b] == CANARY, "%s wrote byte %zu of %zu", facts->name, b, past);
            }
            ck_assert_int_eq(frame_struct_init(facts, part, size + 8), FRAME_NEWER_HEADER);
        }
        free(whole);
        free(part);
    }
}
END_TEST

/* A call that is given a larger struct than the library knows, or one never initialised, says so and touches nothing.
 */
START_TEST(newer_and_uninitialised_are_refused) {
    for (size_t i = 0; i < frame_calculation_count(); i++) {
        const frame_calculation *calculation = frame_calculation_at(i);
        const frame_struct *in = frame_calculation_in(calculation), *out = frame_calculation_out(calculation);
        unsigned char *given = calloc(1, in->size + 64), *result = malloc(out->size);
        if (calculation->run) {
            memset(result, CANARY, out->size);
            ck_assert_int_eq(calculation->run(given, result, out->size, NULL), FRAME_NOT_INITIALISED);
            ck_assert_ptr_nonnull(strstr(frame_error_text(), "init"));
            ck_assert_int_eq(calculation->run(NULL, result, out->size, NULL), FRAME_NOT_INITIALISED);
            frame_struct_init(in, given, in->size);
            *(uint32_t *)(void *)given = in->size + 8;
            ck_assert_int_eq(calculation->run(given, result, out->size, NULL), FRAME_NEWER_HEADER);
            for (size_t b = 0; b < out->size; b++) ck_assert_uint_eq(result[b], CANARY);
        } else {
            frame_answer *answer = NULL;
            ck_assert_int_eq(calculation->solve(given, &answer, NULL), FRAME_NOT_INITIALISED);
            ck_assert_ptr_null(answer);
        }
        free(given);
        free(result);
    }
}
END_TEST

/* The section of version 0.1 as an old program knows it, when the struct has grown: the result is cut to what it knows.
 */
START_TEST(a_smaller_result_is_cut) {
    frame_section_in in;
    frame_section_out whole;
    unsigned char part[sizeof whole + 16];
    frame_section_in_init(&in);
    in.size = FRAME_SIZE(2, 10);
    ck_assert_int_eq(frame_section(&in, &whole, NULL), FRAME_OK);
    for (size_t size = 8; size < sizeof whole; size += 8) {
        memset(part, CANARY, sizeof part);
        ck_assert_int_eq(frame_section_sized(&in, (void *)part, size, NULL), FRAME_OK);
        ck_assert_uint_eq(*(uint32_t *)(void *)part, size);
        ck_assert_mem_eq(part + 4, (unsigned char *)&whole + 4, size - 4);
        for (size_t b = size; b < sizeof part; b++) ck_assert_uint_eq(part[b], CANARY);
    }
}
END_TEST

/* A program that knows only the first fields gets the defaults of the others. */
START_TEST(a_smaller_struct_reads_as_not_given) {
    frame_section_in in;
    frame_section_out today, old;
    frame_section_in_init(&in);
    in.size = FRAME_SIZE(2, 10);
    ck_assert_int_eq(frame_section(&in, &today, NULL), FRAME_OK);
    unsigned char part[16];
    ck_assert_int_eq(frame_section_in_init_sized((void *)part, sizeof part), FRAME_OK);
    memcpy(part + 8, &in.size, sizeof in.size);
    ck_assert_int_eq(frame_section((const void *)part, &old, NULL), FRAME_OK);
    ck_assert_mem_eq(&today, &old, sizeof today);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("sizes");
    TCase *tests = tcase_create("all");
    tcase_add_test(tests, init_knows_the_callers_size);
    tcase_add_test(tests, newer_and_uninitialised_are_refused);
    tcase_add_test(tests, a_smaller_result_is_cut);
    tcase_add_test(tests, a_smaller_struct_reads_as_not_given);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
