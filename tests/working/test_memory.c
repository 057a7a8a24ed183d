/* Without memory: whatever allocation fails, nothing crashes, nothing is lost, and the working says that it is not
 * whole. */
#include <check.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include <frame/frame.h>

#include "working/record.h"

/* An allocator that fails from the n-th call on, or only at it, and counts what is out. */
static long calls, fail_at, out;
static int only_once;

static int fails(void) {
    calls++;
    return fail_at > 0 && (only_once ? calls == fail_at : calls >= fail_at);
}

static void *allocate(void *user, size_t size) {
    (void)user;
    if (fails()) return NULL;
    out++;
    return malloc(size);
}

static void *reallocate(void *user, void *block, size_t size) {
    (void)user;
    if (fails()) return NULL;
    if (!block) out++;
    return realloc(block, size);
}

static void release(void *user, void *block) {
    (void)user;
    if (block) out--;
    free(block);
}

static double calculate(frame_working *w) {
    FRAME_HEADING(w, "Buckling");
    FRAME_GIVEN(w, l_e, 92.625, "in", "effective length");
    FRAME_TABLE(w, d, 3.5, "in", "depth", "PS 20");
    FRAME_TABLE(w, C_D, 1.15, "", "load duration", "");
    FRAME_CASE(w, "l_e / d <= 50", "within the limit", "NDS 3.7.1.4");
    FRAME_STEP(w, F_cE, 0.822 * 510000 / pow(l_e / d, 2), "psi", "critical buckling value", "NDS 3.7.1");
    FRAME_STEP(w, F_c, F_cE * C_D, "psi", "with the load's duration", "");
    return F_c;
}

/* Everything there is, over one working. Gives the first status that was not FRAME_OK. */
static frame_status use(frame_working *w, frame_text *text) {
    frame_working_answer answers[2];
    frame_working_step step;
    frame_marking *marking = NULL;
    frame_status status = frame_working_state(w);
    for (int i = 0; i < 2; i++) frame_working_answer_init(&answers[i]);
    answers[0].symbol = "F_c";
    answers[0].value = 598.58;
    answers[1].symbol = "none";
    answers[1].value = 1;
    if (!status) status = frame_working_step_at(w, 1, &step);
    if (!status) status = frame_working_check(w, text);
    for (frame_render_format f = FRAME_RENDER_TEXT; f <= FRAME_RENDER_JSON && !status; f++)
        status = frame_working_render(w, f, text);
    if (!status) status = frame_working_mark(w, answers, 2, FRAME_NOT_GIVEN, &marking);
    for (frame_render_format f = FRAME_RENDER_TEXT; f <= FRAME_RENDER_JSON && !status; f++)
        status = frame_marking_render(marking, f, text);
    frame_marking_free(marking);
    return status;
}

static frame_status all(size_t *length) {
    frame_working *w = NULL;
    frame_text *text = NULL;
    frame_status status = frame_working_new(&w);
    if (!status) status = frame_text_new(&text);
    if (!status) {
        ck_assert(calculate(w) == calculate(NULL));
        status = use(w, text);
        *length = frame_text_length(text);
    }
    frame_working_free(w);
    frame_text_free(text);
    return status;
}

START_TEST(every_allocation_may_fail) {
    size_t length, whole;
    calls = fail_at = out = 0;
    only_once = _i;
    ck_assert_int_eq(all(&whole), FRAME_OK);
    ck_assert_int_eq(out, 0);
    const long needed = calls;
    ck_assert_int_gt(needed, 20);
    for (long n = 1; n <= needed; n++) {
        calls = 0;
        fail_at = n;
        frame_error_clear();
        const frame_status status = all(&length);
        ck_assert_msg(status == FRAME_NO_MEMORY, "allocation %ld of %ld: %d", n, needed, (int)status);
        ck_assert_int_eq(frame_error_status(), FRAME_NO_MEMORY);
        ck_assert_int_eq(out, 0);
    }
    fail_at = 0;
    ck_assert_int_eq(all(&length), FRAME_OK);
    ck_assert_uint_eq(length, whole);
}
END_TEST

START_TEST(a_record_with_a_hole_says_so_until_it_is_cleared) {
    frame_working *w;
    frame_text *text;
    fail_at = 0;
    ck_assert(!frame_working_new(&w) && !frame_text_new(&text));
    FRAME_GIVEN(w, a, 1, "", "");
    const size_t position = frame_working_mark_position(w);
    calls = 0;
    fail_at = 1;
    only_once = 1;
    FRAME_GIVEN(w, b, 2, "", "a meaning that needs memory");
    FRAME_GIVEN(w, c, 3, "", "another");
    ck_assert_int_eq(frame_working_state(w), FRAME_NO_MEMORY);
    ck_assert_uint_eq(frame_working_step_count(w), 1);
    ck_assert_int_eq(frame_working_check(w, text), FRAME_NO_MEMORY);
    ck_assert_int_eq(frame_working_render(w, FRAME_RENDER_TEXT, text), FRAME_OK);
    ck_assert_str_eq(frame_text_chars(text), "  a = 1\nThe record is not whole: there was no memory for the rest.\n");
    frame_working_roll_back(w, position);
    ck_assert_int_eq(frame_working_state(w), FRAME_NO_MEMORY);
    frame_working_clear(w);
    ck_assert_int_eq(frame_working_state(w), FRAME_OK);
    FRAME_GIVEN(w, e, 2, "", "a meaning that needs memory");
    ck_assert_int_eq(frame_working_state(w), FRAME_OK);
    ck_assert(a + b + c + e == 8);
    frame_working_free(w);
    frame_text_free(text);
}
END_TEST

int main(void) {
    const frame_allocator allocator = {allocate, reallocate, release, NULL};
    if (frame_allocator_set(&allocator) != FRAME_OK) return 1;
    Suite *suite = suite_create("memory");
    TCase *tests = tcase_create("all");
    tcase_add_loop_test(tests, every_allocation_may_fail, 0, 2);
    tcase_add_test(tests, a_record_with_a_hole_says_so_until_it_is_cleared);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
