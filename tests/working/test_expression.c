/* Formulas read back: precedence, functions, what is refused and where; working a whole record out anew. */
#include <check.h>
#include <math.h>
#include <string.h>

#include <frame/frame.h>

#include "working/expression.h"
#include "working/record.h"

/* a = 2, b = 3, c = 5, d = -4 */
static int value_of(void *context, const frame_node *name, double *value) {
    static const double values[] = {2, 3, 5, -4};
    (void)context;
    if (name->length != 1 || *name->name < 'a' || *name->name > 'd') return 0;
    *value = values[*name->name - 'a'];
    return 1;
}

#define A 2.0
#define B 3.0
#define C 5.0
#define D -4.0

typedef struct formula {
    const char *text;
    double value;
} formula;

/* The same expressions, read by the compiler. */
static const formula formulas[] = {
    {"a + b * c", A + B *C},
    {"(a + b) * c", (A + B) * C},
    {"a - b - c", A - B - C},
    {"a - (b - c)", A - (B - C)},
    {"a / b / c", A / B / C},
    {"a / (b / c)", A / (B / C)},
    {"a / b * c", A / B *C},
    {"-a * b", -A *B},
    {"a - -b", A + B},
    {"+a", A},
    {"- - a", A},
    {"-(a + b)", -(A + B)},
    {"2 * d + 1.5e1 - .5", 2 * -4.0 + 15 - .5},
    {"1.0 / 3", 1.0 / 3},
    {"a < b ? c : d", C},
    {"a > b ? c : d", D},
    {"a > b ? 1 : a >= b ? 2 : 3", 3},
    {"(a < b) + (b < a)", 1},
    {"a + 1 == b && c != d", 1},
    {"a == b || c <= 5", 1},
    {"a == b || a == c && b == b", 0},
    {"!(a == b)", 1},
    {"!a + 1", 1},
    {"a != 0 || nothing > 1", 1},
    {"a == 0 && nothing > 1", 0},
    {"a == 2 ? b : nothing", B},
};

START_TEST(precedence_is_that_of_c) {
    const formula *f = &formulas[_i];
    frame_expression expression;
    double value;
    ck_assert_msg(frame_expression_read(f->text, &expression) == FRAME_OK, "%s: %s", f->text, expression.trouble);
    ck_assert_msg(!frame_node_value(expression.root, value_of, NULL, &value, NULL) && value == f->value, "%s", f->text);
    frame_expression_give(&expression);
}
END_TEST

/* Each function the record's header promises, against <math.h>. Each value has been through a variable, so that the
 * compiler calls the function, too. */
START_TEST(functions_are_those_of_math_h) {
    volatile double x = 0.3, y = 1.7;
    const formula calls[] = {
        {"pow(0.3, 1.7)", pow(x, y)},
        {"sqrt(1.7)", sqrt(y)},
        {"cbrt(1.7)", cbrt(y)},
        {"hypot(0.3, 1.7)", hypot(x, y)},
        {"fabs(-1.7)", y},
        {"fmin(0.3, 1.7)", x},
        {"fmax(0.3, 1.7)", y},
        {"sin(0.3)", sin(x)},
        {"cos(0.3)", cos(x)},
        {"tan(0.3)", tan(x)},
        {"asin(0.3)", asin(x)},
        {"acos(0.3)", acos(x)},
        {"atan(0.3)", atan(x)},
        {"exp(1.7)", exp(y)},
        {"atan2(0.3, 1.7)", atan2(x, y)},
        {"log(1.7)", log(y)},
        {"log10(1.7)", log10(y)},
        {"floor(-1.7)", floor(-y)},
        {"ceil(-1.7)", ceil(-y)},
        {"round(1.7)", round(y)},
        {"sin(30 * FRAME_DEG)", sin(30 * FRAME_DEG)},
        {"FRAME_PI * 2", FRAME_PI * 2},
    };
    for (size_t i = 0; i < sizeof calls / sizeof *calls; i++) {
        frame_expression expression;
        double value;
        ck_assert_msg(frame_expression_read(calls[i].text, &expression) == FRAME_OK, "%s", calls[i].text);
        ck_assert(!frame_node_value(expression.root, value_of, NULL, &value, NULL));
        ck_assert_msg(fabs(value - calls[i].value) <= 1e-15 * fabs(value), "%s: %.17g", calls[i].text, value);
        frame_expression_give(&expression);
    }
}
END_TEST

static const struct {
    const char *text;
    size_t at;
} refused[] = {
    {"", 0},      {"a +", 3},     {"a + * b", 4},  {"(a + b", 6},   {"a b", 2},      {"in->span", 3},
    {"a[1]", 1},  {"sinh(a)", 0}, {"pow(a)", 5},   {"pow(a, b", 8}, {"pow(a b)", 6}, {"1.5f", 3},
    {"0x10", 1},  {"a = b", 2},   {"a & b", 2},    {"a ? b", 5},    {"a ? b : ", 8}, {"(double)a", 8},
    {"1.2.3", 3}, {"a % b", 2},   {"\"text\"", 0}, {"a, b", 1},     {"sqrt()", 5},   {"a)", 1},
};

START_TEST(what_is_no_formula_is_refused_with_its_place) {
    frame_expression expression;
    ck_assert_msg(frame_expression_read(refused[_i].text, &expression) == FRAME_UNREADABLE, "%s", refused[_i].text);
    ck_assert_ptr_nonnull(expression.trouble);
    ck_assert_msg(expression.trouble_at == refused[_i].at, "%s: %zu", refused[_i].text, expression.trouble_at);
}
END_TEST

START_TEST(deep_nesting_ends_in_a_refusal) {
    char deep[4001];
    frame_expression expression;
    memset(deep, '(', 4000);
    deep[4000] = 0;
    ck_assert_int_eq(frame_expression_read(deep, &expression), FRAME_UNREADABLE);
    memset(deep, '-', 4000);
    ck_assert_int_eq(frame_expression_read(deep, &expression), FRAME_UNREADABLE);
    for (int i = 0; i < 4000; i++) deep[i] = "1+"[i % 2];
    deep[3999] = 0;
    ck_assert_int_eq(frame_expression_read(deep, &expression), FRAME_OK);
    frame_expression_give(&expression);
}
END_TEST

/* The lines a check of the record writes; its status into *status. */
static const char *checked(frame_working *w, frame_text *text, frame_status *status) {
    frame_text_clear(text);
    *status = frame_working_check(w, text);
    return frame_text_chars(text);
}

START_TEST(a_right_record_checks) {
    frame_working *w;
    frame_text *text;
    frame_status status;
    ck_assert(!frame_working_new(&w) && !frame_text_new(&text));
    FRAME_GIVEN(w, L, 123.456, "in", "span");
    FRAME_STEP(w, q, sqrt(L) / 3 + pow(L, 1.0 / 9), "", "", "");
    FRAME_STEP(w, r, q > 3 ? fmin(q, L) : L * sin(L * FRAME_DEG), "", "", "");
    FRAME_CASE(w, "r < L && q > 3", "", "");
    FRAME_CASE(w, "any sentence will do", "", "");
    ck_assert_str_eq(checked(w, text, &status), "");
    ck_assert_int_eq(status, FRAME_OK);
    ck_assert(r == q);
    frame_working_free(w);
    frame_text_free(text);
}
END_TEST

START_TEST(a_wrong_record_is_named_line_by_line) {
    frame_working *w;
    frame_text *text;
    frame_status status;
    ck_assert(!frame_working_new(&w) && !frame_text_new(&text));
    frame_record_heading(w, "Heading");
    frame_record(w, FRAME_STEP_GIVEN, "L", NULL, 90, "in", "", "");
    frame_record(w, FRAME_STEP_COMPUTED, "S_b", "L * 2", 181, "", "", "");
    frame_record(w, FRAME_STEP_COMPUTED, "T", "L * later", 1, "", "", "");
    frame_record(w, FRAME_STEP_COMPUTED, "U", "in->span_in", 1, "", "", "");
    frame_record_case(w, "L < 80", "", "");
    frame_record(w, FRAME_STEP_COMPUTED, "V", "L + 1e-9", 90, "", "", "");
    frame_record(w, FRAME_STEP_COMPUTED, "X", "L / (L - L)", INFINITY, "", "", "");
    frame_record(w, FRAME_STEP_COMPUTED, "Y", "L + 1e-11", 90, "", "", "");
    frame_record(w, FRAME_STEP_COMPUTED, "later", "1 / 2", 0, "", "", "");
    ck_assert_str_eq(checked(w, text, &status),
                     "step 3, S_b: 180 is not the recorded 181 in \"L * 2\"\n"
                     "step 4, T: later is not recorded before in \"L * later\"\n"
                     "step 5, U: at character 4 a value is expected here in \"in->span_in\"\n"
                     "step 6: the condition is not true in \"L < 80\"\n"
                     "step 7, V: 90.000000001 is not the recorded 90 in \"L + 1e-9\"\n"
                     "step 8, X: the value is not a finite number in \"L / (L - L)\"\n"
                     "step 10, later: 0.5 is not the recorded 0 in \"1 / 2\"\n");
    ck_assert_int_eq(status, FRAME_INTERNAL);
    frame_working_free(w);
    frame_text_free(text);
}
END_TEST

START_TEST(a_check_needs_both_handles) {
    frame_working *w;
    frame_text *text;
    ck_assert(!frame_working_new(&w) && !frame_text_new(&text));
    ck_assert_int_eq(frame_working_check(NULL, text), FRAME_REQUIRED);
    ck_assert_int_eq(frame_working_check(w, NULL), FRAME_REQUIRED);
    ck_assert_int_eq(frame_working_check(w, text), FRAME_OK);
    frame_working_free(w);
    frame_text_free(text);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("expression");
    TCase *tests = tcase_create("all");
    tcase_add_loop_test(tests, precedence_is_that_of_c, 0, sizeof formulas / sizeof *formulas);
    tcase_add_test(tests, functions_are_those_of_math_h);
    tcase_add_loop_test(tests, what_is_no_formula_is_refused_with_its_place, 0, sizeof refused / sizeof *refused);
    tcase_add_test(tests, deep_nesting_ends_in_a_refusal);
    tcase_add_test(tests, a_right_record_checks);
    tcase_add_test(tests, a_wrong_record_is_named_line_by_line);
    tcase_add_test(tests, a_check_needs_both_handles);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
