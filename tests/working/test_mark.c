/* Marking a student's answers: the first that differs, which slip explains it, what follows from it rightly. */
#include <check.h>
#include <math.h>
#include <string.h>

#include <frame/frame.h>

#include "working/record.h"

static frame_working *w;
static frame_text *text;
static frame_marking *marking;

/* A header's bending check. */
static void begin(void) {
    ck_assert(!frame_working_new(&w) && !frame_text_new(&text));
    marking = NULL;
    FRAME_HEADING(w, "Stress");
    FRAME_GIVEN(w, L, 90, "in", "span");
    FRAME_GIVEN(w, w_T, 430.0 / 12, "lb/in", "load");
    FRAME_TABLE(w, b, 4.5, "in", "width", "PS 20");
    FRAME_TABLE(w, d, 9.25, "in", "depth", "PS 20");
    FRAME_STEP(w, S, b * pow(d, 2) / 6, "in3", "section modulus", "");
    FRAME_STEP(w, M, w_T * pow(L, 2) / 8, "lb-in", "moment", "");
    FRAME_STEP(w, f_b, M / S, "psi", "bending stress", "NDS 3.3-1");
    FRAME_HEADING(w, "Strength");
    FRAME_TABLE(w, F_b, 875, "psi", "reference value", "NDS Supplement 4A");
    FRAME_TABLE(w, C_D, 1.15, "", "load duration", "NDS 2.3.2");
    FRAME_TABLE(w, C_F, 1.1, "", "size", "NDS Supplement 4A");
    FRAME_TABLE(w, C_i, 0.8, "", "incising", "NDS 4.3.8");
    FRAME_TABLE(w, C_L, 0.9713, "", "stability", "NDS 3.3.3");
    FRAME_STEP(w, F_b_star, F_b * C_D * C_F, "psi", "but for C_L", "NDS 3.3.3.8");
    FRAME_STEP(w, F_b_prime, F_b_star * C_L, "psi", "adjusted", "NDS 4.3.1");
    FRAME_STEP(w, r, f_b / F_b_prime, "", "share used", "");
    FRAME_STEP(w, reserve, F_b_prime - f_b, "psi", "what is left", "");
    (void)(r + reserve + C_i);
}

static void end(void) {
    frame_marking_free(marking);
    frame_working_free(w);
    frame_text_free(text);
}

typedef struct answer {
    const char *symbol;
    double value;
} answer;

static frame_status mark(const answer *given, size_t count, double tolerance) {
    frame_working_answer answers[16];
    for (size_t i = 0; i < count; i++) {
        ck_assert_int_eq(frame_working_answer_init(&answers[i]), FRAME_OK);
        answers[i].symbol = given[i].symbol;
        answers[i].value = given[i].value;
    }
    frame_marking_free(marking);
    marking = NULL;
    return frame_working_mark(w, answers, count, tolerance, &marking);
}
#define MARK(...)                                                                                               \
    ck_assert_int_eq(                                                                                           \
        mark((const answer[]){__VA_ARGS__}, sizeof((answer[]){__VA_ARGS__}) / sizeof(answer), FRAME_NOT_GIVEN), \
        FRAME_OK)

static frame_marking_line line_at(size_t index) {
    frame_marking_line line;
    ck_assert_int_eq(frame_marking_line_at(marking, index, &line), FRAME_OK);
    return line;
}

static const char *rendered(frame_render_format format) {
    frame_text_clear(text);
    ck_assert_int_eq(frame_marking_render(marking, format, text), FRAME_OK);
    return frame_text_chars(text);
}

START_TEST(right_answers_agree) {
    MARK({"F_b'", 1075}, {"S", 64.2}, {"f_b", 565.4}, {"L", 90});
    ck_assert_uint_eq(frame_marking_line_count(marking), 4);
    ck_assert_uint_eq(frame_marking_first(marking), 4);
    static const char *const in_order[] = {"L", "S", "f_b", "F_b'"};
    for (size_t i = 0; i < 4; i++) {
        ck_assert_str_eq(line_at(i).symbol, in_order[i]);
        ck_assert_int_eq(line_at(i).verdict, FRAME_MARKING_AGREES);
        ck_assert_int_eq(line_at(i).cause, FRAME_MARKING_NONE);
    }
    ck_assert_str_eq(rendered(FRAME_RENDER_TEXT),
                     "No answer differs.\n"
                     "  L     90     agrees with 90 in\n"
                     "  S     64.2   agrees with 64.172 in³\n"
                     "  f_b   565.4  agrees with 565.38 psi\n"
                     "  F_b'  1075   agrees with 1075.1 psi\n");
}
END_TEST

/* Each slip, and what it must be taken for. */
#define S_RIGHT (4.5 * 9.25 * 9.25 / 6)
#define STAR (875 * 1.15 * 1.1)
#define FB (36281.25 / S_RIGHT)
static const struct {
    const char *symbol;
    double value;
    frame_marking_cause cause;
    const char *of, *explanation;
    double factor;
} slips[] = {
    {"F_b*", 875 * 1.1, FRAME_MARKING_LEFT_OUT, "C_D", "as if C_D (1.15) had been left out", 1.15},
    {"F_b*", STAR * 1.15, FRAME_MARKING_TWICE, "C_D", "as if C_D (1.15) had been used twice", 1.15},
    {"F_b*", 875 * 1.15 / 1.1, FRAME_MARKING_INVERTED, "C_F", "as if C_F (1.1) had been turned over", 1.1},
    {"F_b*", 875, FRAME_MARKING_LEFT_OUT, "C_D and C_F", "as if C_D and C_F (together 1.265) had been left out", 1.265},
    {"F_b*", STAR * 0.8, FRAME_MARKING_FACTOR, "C_i", "as if multiplied once more by C_i (0.8)", 0.8},
    {"F_b'", 1044.10, FRAME_MARKING_TWICE, "C_L", "as if C_L (0.9713) had been used twice", 0.9713},
    {"F_b'", 875 * 1.1 * 0.9713, FRAME_MARKING_LEFT_OUT, "C_D", "as if C_D (1.15) had been left out", 1.15},
    {"f_b", FB * 12, FRAME_MARKING_UNIT, "12", "as if multiplied by 12, a factor between units", 12},
    {"f_b", FB / 144, FRAME_MARKING_UNIT, "144", "as if divided by 144, a factor between units", 144},
    {"f_b", -FB, FRAME_MARKING_SIGN, "", "only the sign is wrong", -1},
    {"f_b", S_RIGHT / 36281.25, FRAME_MARKING_NONE, "", "", FRAME_NOT_GIVEN},
    {"S", S_RIGHT * 6, FRAME_MARKING_LEFT_OUT, "6", "as if 6 had been left out", 6},
    {"S", S_RIGHT / 9.25, FRAME_MARKING_DIVISOR, "d", "as if divided once more by d (9.25)", 9.25},
    {"S", S_RIGHT * 1000, FRAME_MARKING_UNIT, "1000", "as if multiplied by 1000, a factor between units", 1000},
    {"M", 36281.25 * 8, FRAME_MARKING_LEFT_OUT, "8", "as if 8 had been left out", 8},
    {"reserve", 875 * 1.15 * 1.1 * 0.9713 - FB * 12, FRAME_MARKING_UNIT, "f_b",
     "as if f_b had been taken in another unit, times 12", 12},
    {"reserve", 875 * 1.15 * 0.9713 - FB, FRAME_MARKING_LEFT_OUT, "C_F", "as if C_F (1.1) had been left out", 1.1},
    {"F_b'", 565.38, FRAME_MARKING_MIXED_UP, "f_b", "it is the value of f_b (565.38)", FB},
    {"L", 7.5, FRAME_MARKING_UNIT, "12", "as if divided by 12, a factor between units", 12},
    {"b", 9.25, FRAME_MARKING_MIXED_UP, "d", "it is the value of d (9.25)", 9.25},
    {"r", 0.777, FRAME_MARKING_NONE, "", "", FRAME_NOT_GIVEN},
};

START_TEST(a_slip_is_explained) {
    MARK({slips[_i].symbol, slips[_i].value});
    const frame_marking_line line = line_at(0);
    ck_assert_int_eq(line.verdict, FRAME_MARKING_DIFFERS);
    ck_assert_uint_eq(frame_marking_first(marking), 0);
    ck_assert_msg(line.cause == slips[_i].cause, "%s", line.explanation);
    ck_assert_str_eq(line.cause_symbol, slips[_i].of);
    ck_assert_msg(strstr(line.explanation, slips[_i].explanation) != NULL, "%s", line.explanation);
    ck_assert_double_eq_tol(line.factor, slips[_i].factor, 1e-9 * fabs(slips[_i].factor));
    ck_assert_double_eq_tol(line.ratio, line.given / line.expected, 1e-12);
    if (slips[_i].cause == FRAME_MARKING_NONE) ck_assert_ptr_null(strstr(line.explanation, "as if"));
}
END_TEST

START_TEST(what_follows_from_a_slip_is_no_second_one) {
    const double star = 875 * 1.1, prime = star * 0.9713;
    MARK({"F_b*", star}, {"F_b'", prime}, {"r", FB / prime}, {"f_b", FB});
    ck_assert_uint_eq(frame_marking_first(marking), 1);
    ck_assert_int_eq(line_at(0).verdict, FRAME_MARKING_AGREES);
    ck_assert_int_eq(line_at(1).verdict, FRAME_MARKING_DIFFERS);
    ck_assert_int_eq(line_at(2).verdict, FRAME_MARKING_FOLLOWS);
    ck_assert_int_eq(line_at(3).verdict, FRAME_MARKING_FOLLOWS);
    ck_assert_double_eq_tol(line_at(3).follows, FB / prime, 1e-9);
    ck_assert_str_eq(line_at(3).explanation, "differs from 0.52588, but follows rightly from your F_b*");
}
END_TEST

/* The steps between are worked out from the student's numbers, though they were not answered. */
START_TEST(a_slip_is_followed_through_steps_not_answered) {
    MARK({"S", S_RIGHT * 6}, {"r", FB / 6 / (STAR * 0.9713)});
    ck_assert_int_eq(line_at(0).verdict, FRAME_MARKING_DIFFERS);
    ck_assert_int_eq(line_at(1).verdict, FRAME_MARKING_FOLLOWS);
    ck_assert_ptr_nonnull(strstr(line_at(1).explanation, "from your S"));
}
END_TEST

START_TEST(a_second_slip_is_told_from_the_first) {
    const double star = 875 * 1.1;
    MARK({"F_b*", star}, {"F_b'", star * 0.9713 * 0.9713});
    ck_assert_int_eq(line_at(1).verdict, FRAME_MARKING_DIFFERS);
    ck_assert_int_eq(line_at(1).cause, FRAME_MARKING_TWICE);
    ck_assert_str_eq(line_at(1).explanation,
                     "differs from 1075.1 psi, 0.8446 of it; with your F_b* it would be 934.88: as if C_L (0.9713) had "
                     "been used twice");
    ck_assert_uint_eq(frame_marking_first(marking), 0);
}
END_TEST

/* From a wrong value to the right one: the later line agrees, and so does what comes after it. */
START_TEST(a_right_answer_ends_what_follows) {
    MARK({"F_b*", 875 * 1.1}, {"F_b'", 1075.1}, {"r", 0.5259});
    ck_assert_int_eq(line_at(0).verdict, FRAME_MARKING_DIFFERS);
    ck_assert_int_eq(line_at(1).verdict, FRAME_MARKING_AGREES);
    ck_assert_int_eq(line_at(2).verdict, FRAME_MARKING_AGREES);
}
END_TEST

START_TEST(coarse_rounding_is_not_a_mistake) {
    MARK({"r", 0.53});
    ck_assert_int_eq(line_at(0).verdict, FRAME_MARKING_ROUNDED);
    ck_assert_str_eq(line_at(0).explanation, "is 0.52588 rounded; carry more digits");
    ck_assert_uint_eq(frame_marking_first(marking), 1);
    MARK({"r", 0.54});
    ck_assert_int_eq(line_at(0).verdict, FRAME_MARKING_DIFFERS);
    MARK({"C_D", 1}); /* a whole number is no rounding of 1.15 */
    ck_assert_int_eq(line_at(0).verdict, FRAME_MARKING_DIFFERS);
}
END_TEST

START_TEST(the_tolerance_decides) {
    const answer near[] = {{"f_b", 560}};
    ck_assert_int_eq(mark(near, 1, 0.02), FRAME_OK);
    ck_assert_int_eq(line_at(0).verdict, FRAME_MARKING_AGREES);
    ck_assert_int_eq(mark(near, 1, 0.001), FRAME_OK);
    ck_assert_int_eq(line_at(0).verdict, FRAME_MARKING_DIFFERS);
    ck_assert_int_eq(mark(near, 1, 0), FRAME_OUT_OF_RANGE);
    ck_assert_int_eq(mark(near, 1, NAN), FRAME_OUT_OF_RANGE);
    ck_assert_str_eq(frame_error_field(), "tolerance");
    ck_assert_ptr_null(marking);
}
END_TEST

START_TEST(an_unknown_symbol_names_the_nearest) {
    MARK({"F_v'", 1}, {"S", 64.2}, {"s", 1}, {"Q", 1});
    ck_assert_uint_eq(frame_marking_line_count(marking), 4);
    ck_assert_int_eq(line_at(1).verdict, FRAME_MARKING_UNKNOWN);
    ck_assert_int_eq(line_at(1).step, -1);
    ck_assert(line_at(1).expected == FRAME_NOT_GIVEN);
    ck_assert_str_eq(line_at(1).explanation, "is no symbol of this working; the nearest is F_b'");
    ck_assert_str_eq(line_at(2).explanation, "is no symbol of this working; the nearest is S");
    ck_assert_str_eq(line_at(3).explanation, "is no symbol of this working");
    ck_assert_ptr_nonnull(strstr(rendered(FRAME_RENDER_TEXT), "not every symbol is known"));
}
END_TEST

/* The same symbol in two sections: the answer goes to the one it fits, else to the latest. */
START_TEST(a_symbol_may_recur) {
    FRAME_HEADING(w, "Another");
    frame_record(w, FRAME_STEP_GIVEN, "d", NULL, 11.25, "in", "", "");
    MARK({"d", 9.25});
    ck_assert_int_eq(line_at(0).verdict, FRAME_MARKING_AGREES);
    ck_assert_int_eq(line_at(0).step, 4);
    MARK({"d", 7.25});
    ck_assert_double_eq(line_at(0).expected, 11.25);
    MARK({"d", 11.25}, {"d", 9.25});
    ck_assert_uint_eq(frame_marking_line_count(marking), 2);
    ck_assert_int_eq(line_at(0).verdict, FRAME_MARKING_AGREES);
    ck_assert_int_eq(line_at(1).verdict, FRAME_MARKING_AGREES);
}
END_TEST

/* A calculation hands its result on to the next, where it is recorded without a formula. */
START_TEST(a_slip_is_followed_from_calculation_to_calculation) {
    frame_record_enter(w);
    frame_record(w, FRAME_STEP_TABLE, "f", NULL, FB, "psi", "from above", "");
    frame_record(w, FRAME_STEP_COMPUTED, "twice", "2 * f", 2 * FB, "psi", "", "");
    frame_record_leave(w);
    MARK({"S", S_RIGHT * 6}, {"twice", 2 * FB / 6});
    ck_assert_int_eq(line_at(1).verdict, FRAME_MARKING_FOLLOWS);
}
END_TEST

START_TEST(bad_calls_are_refused) {
    frame_working_answer answers[2];
    ck_assert_int_eq(frame_working_answer_init(&answers[0]), FRAME_OK);
    ck_assert_int_eq(frame_working_answer_init(&answers[1]), FRAME_OK);
    answers[0].symbol = "S";
    answers[0].value = 64.2;
    ck_assert_int_eq(frame_working_mark(w, answers, 2, FRAME_NOT_GIVEN, &marking), FRAME_REQUIRED);
    ck_assert_str_eq(frame_error_field(), "answers[1].symbol");
    answers[1].symbol = "M";
    answers[1].value = NAN;
    ck_assert_int_eq(frame_working_mark(w, answers, 2, FRAME_NOT_GIVEN, &marking), FRAME_NOT_A_NUMBER);
    ck_assert_str_eq(frame_error_field(), "answers[1].value");
    memset(&answers[0], 0, sizeof answers[0]);
    ck_assert_int_eq(frame_working_mark(w, answers, 1, FRAME_NOT_GIVEN, &marking), FRAME_NOT_INITIALISED);
    ck_assert_int_eq(frame_working_mark(w, NULL, 1, FRAME_NOT_GIVEN, &marking), FRAME_REQUIRED);
    ck_assert_int_eq(frame_working_mark(NULL, NULL, 0, FRAME_NOT_GIVEN, &marking), FRAME_REQUIRED);
    ck_assert_int_eq(frame_working_mark(w, NULL, 0, FRAME_NOT_GIVEN, NULL), FRAME_REQUIRED);
    ck_assert_ptr_null(marking);
    ck_assert_int_eq(frame_working_mark(w, NULL, 0, FRAME_NOT_GIVEN, &marking), FRAME_OK);
    ck_assert_str_eq(rendered(FRAME_RENDER_TEXT), "No answers were given.\n");
    frame_marking_line line;
    ck_assert_int_eq(frame_marking_line_at(marking, 0, &line), FRAME_OUT_OF_RANGE);
    ck_assert_int_eq(frame_marking_line_at(NULL, 0, &line), FRAME_REQUIRED);
    ck_assert_uint_eq(frame_marking_line_count(NULL), 0);
    ck_assert_uint_eq(frame_marking_first(NULL), 0);
    frame_marking_free(NULL);
}
END_TEST

START_TEST(each_format_says_it) {
    MARK({"F_b*", 875 * 1.1}, {"<x>|", 1});
    ck_assert_str_eq(rendered(FRAME_RENDER_TEXT),
                     "First that differs: F_b*.\n"
                     "  F_b*  962.5  differs from 1106.875 psi, 0.8696 of it: as if C_D (1.15) had been left out\n"
                     "  <x>|  1      is no symbol of this working\n");
    ck_assert_str_eq(
        rendered(FRAME_RENDER_MARKDOWN),
        "First that differs: `F_b*`\n"
        "\n"
        "| symbol | answer | mark |\n"
        "|---|--:|---|\n"
        "| `F_b*` | 962.5 | differs from 1106.875 psi, 0.8696 of it: as if C\\_D (1.15) had been left out |\n"
        "| `<x>\\|` | 1 | is no symbol of this working |\n");
    ck_assert_ptr_nonnull(
        strstr(rendered(FRAME_RENDER_HTML), "<tr class=\"frame-differs frame-first\"><td>F_b*</td><td>962.5</td>"));
    ck_assert_ptr_nonnull(strstr(frame_text_chars(text), "&lt;x&gt;|"));
    ck_assert_ptr_nonnull(strstr(rendered(FRAME_RENDER_JSON), "{\"first\": 0, \"lines\": ["));
    ck_assert_ptr_nonnull(
        strstr(frame_text_chars(text), "\"cause\": \"left out\", \"cause_symbol\": \"C_D\", \"factor\": 1.15"));
    ck_assert_ptr_nonnull(strstr(frame_text_chars(text), "\"expected\": null"));
    ck_assert_int_eq(frame_marking_render(NULL, 1, text), FRAME_REQUIRED);
    ck_assert_int_eq(frame_marking_render(marking, 9, text), FRAME_OUT_OF_RANGE);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("mark");
    TCase *tests = tcase_create("all");
    tcase_add_checked_fixture(tests, begin, end);
    tcase_add_test(tests, right_answers_agree);
    tcase_add_loop_test(tests, a_slip_is_explained, 0, sizeof slips / sizeof *slips);
    tcase_add_test(tests, what_follows_from_a_slip_is_no_second_one);
    tcase_add_test(tests, a_slip_is_followed_through_steps_not_answered);
    tcase_add_test(tests, a_second_slip_is_told_from_the_first);
    tcase_add_test(tests, a_right_answer_ends_what_follows);
    tcase_add_test(tests, coarse_rounding_is_not_a_mistake);
    tcase_add_test(tests, the_tolerance_decides);
    tcase_add_test(tests, an_unknown_symbol_names_the_nearest);
    tcase_add_test(tests, a_symbol_may_recur);
    tcase_add_test(tests, a_slip_is_followed_from_calculation_to_calculation);
    tcase_add_test(tests, bad_calls_are_refused);
    tcase_add_test(tests, each_format_says_it);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
