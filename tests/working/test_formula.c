/* Formulas as they are shown: signs, parentheses, powers, Greek letters, numbers for symbols; text and MathML. */
#include <check.h>
#include <math.h>
#include <stdio.h>
#include <string.h>

#include <frame/frame.h>

#include "text/writer.h"
#include "working/entries.h"
#include "working/figure.h"
#include "working/lines.h"
#include "working/record.h"
#include "working/symbol.h"

static frame_working *w;
static frame_text *text;

static void begin(void) {
    ck_assert(!frame_working_new(&w) && !frame_text_new(&text));
    FRAME_GIVEN(w, a, 2, "", "");
    FRAME_GIVEN(w, b, 0.25, "", "");
    FRAME_GIVEN(w, c, -3, "", "");
    FRAME_GIVEN(w, theta, 33.690067525979785, "deg", "");
    FRAME_GIVEN(w, F_b_prime, 1034.0714, "psi", "");
    FRAME_GIVEN(w, E_min, 510000, "psi", "");
    FRAME_GIVEN(w, tiny, 3e-9, "", "");
    (void)(a + b + c + theta + F_b_prime + E_min + tiny);
}

static void end(void) {
    frame_working_free(w);
    frame_text_free(text);
}

/* How a formula is shown at the end of the record. */
static const char *shown(const char *expression, int numbers) {
    frame_text_clear(text);
    frame_record(w, FRAME_STEP_COMPUTED, "x", expression, 1, "", "", "");
    frame_entry_line(w, frame_working_mark_position(w) - 1, numbers, text);
    return frame_text_chars(text);
}

static const struct {
    const char *expression, *symbols, *numbers;
} lines[] = {
    {"a + b * c", "a + b·c", "2 + 0.25·(-3)"},
    {"(a + b) * c", "(a + b)·c", "(2 + 0.25)·(-3)"},
    {"a - (b - c)", "a - (b - c)", "2 - (0.25 - (-3))"},
    {"a - b - c", "a - b - c", "2 - 0.25 - (-3)"},
    {"a + (b - c)", "a + b - c", "2 + 0.25 - (-3)"},
    {"c + a", "c + a", "-3 + 2"},
    {"a + (c + b)", "a + c + b", "2 + (-3 + 0.25)"},
    {"a * (c * b)", "a·c·b", "2·(-3·0.25)"},
    {"a / b / c", "(a/b)/c", "(2/0.25)/(-3)"},
    {"a / b * c", "(a/b)·c", "(2/0.25)·(-3)"},
    {"a * b / c", "a·b/c", "2·0.25/(-3)"},
    {"a / (b * c)", "a/(b·c)", "2/(0.25·(-3))"},
    {"a * (b / c)", "a·(b/c)", "2·(0.25/(-3))"},
    {"a * (b * c)", "a·b·c", "2·0.25·(-3)"},
    {"-a * b", "-a·b", "-2·0.25"},
    {"-(a + b)", "-(a + b)", "-(2 + 0.25)"},
    {"-(-a)", "-(-a)", "-(-2)"},
    {"-c", "-c", "-(-3)"},
    {"a - -b", "a - (-b)", "2 - (-0.25)"},
    {"a * -2", "a·(-2)", "2·(-2)"},
    {"pow(a, 2)", "a²", "2²"},
    {"pow(c, 3)", "c³", "(-3)³"},
    {"pow(a, -2)", "a⁻²", "2⁻²"},
    {"pow(a, 10)", "a¹⁰", "2¹⁰"},
    {"pow(a + b, 2)", "(a + b)²", "(2 + 0.25)²"},
    {"pow(a / b, 2)", "(a/b)²", "(2/0.25)²"},
    {"pow(pow(a, 2), 3)", "(a²)³", "(2²)³"},
    {"pow(a, b)", "a^b", "2^0.25"},
    {"pow(b, a)", "b^a", "0.25²"},
    {"pow(12 / a, 1.0 / 9)", "(12/a)^(1/9)", "(12/2)^(1/9)"},
    {"pow(a, 0.3)", "a^0.3", "2^0.3"},
    {"pow(F_b_prime, 2)", "(F_b')²", "1034.1²"},
    {"pow(tiny, 2)", "tiny²", "(3·10⁻⁹)²"},
    {"1 / tiny", "1/tiny", "1/(3·10⁻⁹)"},
    {"sqrt(a)", "√a", "√2"},
    {"sqrt(c)", "√c", "√(-3)"},
    {"sqrt(a * b)", "√(a·b)", "√(2·0.25)"},
    {"sqrt(sqrt(a))", "√(√a)", "√(√2)"},
    {"2 * sqrt(a) * b", "2·√a·b", "2·√2·0.25"},
    {"cbrt(a)", "∛a", "∛2"},
    {"hypot(a, a + b)", "√(a² + (a + b)²)", "√(2² + (2 + 0.25)²)"},
    {"fabs(c)", "abs(c)", "abs(-3)"},
    {"fmin(a, b)", "min(a, b)", "min(2, 0.25)"},
    {"fmin(fmin(a, b), fmin(c, 1))", "min(a, b, c, 1)", "min(2, 0.25, -3, 1)"},
    {"fmax(a, fmin(b, c))", "max(a, min(b, c))", "max(2, min(0.25, -3))"},
    {"log(a) + log10(a)", "ln(a) + log10(a)", "ln(2) + log10(2)"},
    {"floor(a / b)", "floor(a/b)", "floor(2/0.25)"},
    {"atan2(a, b)", "atan2(a, b)", "atan2(2, 0.25)"},
    {"sin(theta * FRAME_DEG)", "sin(θ)", "sin(33.69°)"},
    {"cos(FRAME_DEG * (90 - theta))", "cos((90 - θ)°)", "cos((90 - 33.69)°)"},
    {"tan(a)", "tan(a)", "tan(2)"},
    {"sin(30 * FRAME_DEG)", "sin(30°)", "sin(30°)"},
    {"theta * FRAME_DEG", "θ·π/180", "33.69·π/180"},
    {"(a + b) * FRAME_DEG", "(a + b)·π/180", "(2 + 0.25)·π/180"},
    {"atan(a / b) / FRAME_DEG", "atan(a/b)·180/π", "atan(2/0.25)·180/π"},
    {"FRAME_PI * pow(a, 2) / 4", "π·a²/4", "π·2²/4"},
    {"a < 3 ? b : c", "b if a < 3, else c", "0.25"},
    {"a > 3 ? b : a > 2 ? c : 2 * a", "b if a > 3, else c if a > 2, else 2·a", "2·2"},
    {"1 + (a > 3 ? b : c)", "1 + (b if a > 3, else c)", "1 + (-3)"},
    {"2 * (a > 3 ? b : a + 1)", "2·(b if a > 3, else a + 1)", "2·(2 + 1)"},
    {"a <= b && !(a == b) || a >= 1", "a ≤ b and not (a = b) or a ≥ 1", "2 ≤ 0.25 and not (2 = 0.25) or 2 ≥ 1"},
    {"a != b && (a > 1 || b > 1)", "a ≠ b and (a > 1 or b > 1)", "2 ≠ 0.25 and (2 > 1 or 0.25 > 1)"},
    {"0.822 * E_min / pow(a / b, 2)", "0.822·E_min/(a/b)²", "0.822·510000/(2/0.25)²"},
    {"1.60e6 * 1.0", "1600000·1", "1600000·1"},
    {"unknown * a", "unknown·a", "unknown·2"},
    {"in->span_in", "in->span_in", ""},
};

START_TEST(a_formula_as_text) {
    const char *expression = lines[_i].expression;
    ck_assert_str_eq(shown(expression, 0), lines[_i].symbols);
    ck_assert_str_eq(shown(expression, 1), lines[_i].numbers);
}
END_TEST

/* What is shown with numbers, read as a formula once more, comes to the value of the record's. */
static int no_names(void *context, const frame_node *name, double *value) {
    (void)context, (void)name, (void)value;
    return 0;
}

static int recorded(void *context, const frame_node *name, double *value) {
    (void)context;
    const size_t end = frame_working_mark_position(w), at = frame_entry_find_name(w, end, name->name, name->length);
    if (at == end) return 0;
    *value = frame_entry_at(w, at)->value;
    return 1;
}

START_TEST(parentheses_keep_the_value) {
    static const char *const parts[] = {"a", "b", "c", "(a + b)", "(a - c)", "(b * c)", "(c / b)", "(-a)", "(-c)"};
    static const char signs[] = "+-*/";
    enum { PARTS = sizeof parts / sizeof *parts };
    for (int i = 0; i < PARTS * PARTS * PARTS * 16; i++) {
        char expression[64];
        frame_text *again;
        snprintf(expression, sizeof expression, "%s %c %s %c %s", parts[i % PARTS], signs[i / 729 % 4],
                 parts[i / PARTS % PARTS], signs[i / 2916], parts[i / PARTS / PARTS % PARTS]);
        ck_assert(!frame_text_new(&again));
        for (const char *c = shown(expression, 1); *c; c++)
            if (strncmp(c, "·", 2) == 0)
                frame_text_add(again, "*"), c++;
            else
                frame_text_add_bytes(again, c, 1);
        frame_expression was, is;
        double of_was, of_is;
        ck_assert(!frame_expression_read(expression, &was));
        ck_assert_msg(!frame_expression_read(frame_text_chars(again), &is), "%s", frame_text_chars(again));
        ck_assert(!frame_node_value(was.root, recorded, NULL, &of_was, NULL));
        ck_assert(!frame_node_value(is.root, no_names, NULL, &of_is, NULL));
        ck_assert_msg(fabs(of_was - of_is) <= 1e-12 * fabs(of_was), "%s: %s", expression, frame_text_chars(again));
        frame_expression_give(&was);
        frame_expression_give(&is);
        frame_text_free(again);
        frame_working_roll_back(w, 7);
    }
}
END_TEST

#define MATH "<math displaystyle=\"true\">"
#define OPEN "<mo stretchy=\"false\">(</mo>"
#define CLOSE "<mo stretchy=\"false\">)</mo>"
#define SLASH "<mo lspace=\"0\" rspace=\"0\">/</mo>"
#define SIGN(s) "<mo form=\"infix\">" s "</mo>"
#define SUB(base, sub) "<msub><mi>" base "</mi><mi mathvariant=\"normal\">" sub "</mi></msub>"

static const struct {
    const char *expression, *symbols;
} elements[] = {
    {"a * b", MATH "<mi>a</mi></math><wbr>" MATH SIGN("·") "<mi>b</mi></math>"},
    {"a / (b + c)", MATH "<mfrac><mrow><mi>a</mi></mrow><mrow><mi>b</mi>" SIGN("+") "<mi>c</mi></mrow></mfrac></math>"},
    {"pow(a / b, 2)",
     MATH "<msup><mrow>" OPEN "<mi>a</mi>" SLASH "<mi>b</mi>" CLOSE "</mrow><mrow><mn>2</mn></mrow></msup></math>"},
    {"sqrt(a)", MATH "<msqrt><mi>a</mi></msqrt></math>"},
    {"fabs(c)", MATH "<mrow><mo stretchy=\"false\">|</mo><mi>c</mi><mo stretchy=\"false\">|</mo></mrow></math>"},
    {"-E_min", MATH "<mo form=\"prefix\">−</mo>" SUB("E", "min") "</math>"},
    {"F_b_prime",
     MATH "<msubsup><mi>F</mi><mi mathvariant=\"normal\">b</mi><mo class=\"frame-prime\">′</mo></msubsup></math>"},
    {"theta", MATH "<mi>θ</mi></math>"},
    {"a < b", MATH "<mi>a</mi>" SIGN("&lt;") "<mi>b</mi></math>"},
    {"a < b && b < c", MATH
     "<mi>a</mi>" SIGN("&lt;") "<mi>b</mi><mtext>\u00a0and\u00a0</mtext><mi>b</mi>" SIGN("&lt;") "<mi>c</mi></math>"},
};

START_TEST(a_formula_as_mathml) {
    frame_record(w, FRAME_STEP_COMPUTED, "x", elements[_i].expression, 1, "", "", "");
    frame_entry_mathml(w, frame_working_mark_position(w) - 1, 0, text);
    ck_assert_str_eq(frame_text_chars(text), elements[_i].symbols);
}
END_TEST

/* Every element that is opened is closed, in order. */
static void check_nesting(const char *chars) {
    const char *open[64];
    size_t lengths[64], depth = 0;
    for (const char *c = strchr(chars, '<'); c; c = strchr(c + 1, '<')) {
        const size_t length = strcspn(c + 1, " >");
        if (c[1] == '/') {
            ck_assert_uint_gt(depth, 0);
            depth--;
            ck_assert_msg(length - 1 == lengths[depth] && strncmp(c + 2, open[depth], length - 1) == 0, "at %s", c);
        } else if (strncmp(c, "<wbr>", 5) != 0) {
            ck_assert_uint_lt(depth, 64);
            open[depth] = c + 1;
            lengths[depth++] = length;
        }
    }
    ck_assert_uint_eq(depth, 0);
}

START_TEST(mathml_is_well_formed) {
    for (int numbers = 0; numbers < 2; numbers++) {
        frame_text_clear(text);
        frame_record(w, FRAME_STEP_COMPUTED, "x", lines[_i].expression, 1, "", "", "");
        frame_entry_mathml(w, frame_working_mark_position(w) - 1, numbers, text);
        check_nesting(frame_text_chars(text));
    }
}
END_TEST

START_TEST(a_wide_root_is_taken_apart) {
    frame_record(w, FRAME_STEP_COMPUTED, "x", "(sqrt(a + b * c + a * b * c) - a * (1 + b)) / (1 + a)", 1, "", "", "");
    frame_entry_mathml(w, frame_working_mark_position(w) - 1, 0, text);
    check_nesting(frame_text_chars(text));
    ck_assert_ptr_null(strstr(frame_text_chars(text), "<mfrac>"));
    ck_assert_ptr_nonnull(strstr(frame_text_chars(text), CLOSE SLASH "<mrow>" OPEN "<mn>1</mn>"));
    ck_assert_ptr_nonnull(strstr(frame_text_chars(text), "<wbr>"));
}
END_TEST

static const struct {
    const char *name, *ascii, *display;
} symbols[] = {
    {"S", "S", "S"},
    {"F_b", "F_b", "F_b"},
    {"F_b_prime", "F_b'", "F_b'"},
    {"F_b_star", "F_b*", "F_b*"},
    {"F_c_perp", "F_c_perp", "F_c⊥"},
    {"F_c_perp_prime", "F_c_perp'", "F_c⊥'"},
    {"F_e_par", "F_e_par", "F_e∥"},
    {"Delta_LL", "Delta_LL", "Δ_LL"},
    {"theta", "theta", "θ"},
    {"F_e_theta", "F_e_theta", "F_e,θ"},
    {"M_max_x", "M_max_x", "M_max,x"},
    {"reach", "reach", "reach"},
    {"_x", "_x", "_x"},
    {"prime", "prime", "prime"},
};

START_TEST(names_become_symbols) {
    const char *name = symbols[_i].name;
    frame_symbol_ascii(name, strlen(name), text);
    ck_assert_str_eq(frame_text_chars(text), symbols[_i].ascii);
    ck_assert(frame_symbol_means(symbols[_i].ascii, name));
    ck_assert(frame_symbol_means(symbols[_i].display, name));
    ck_assert(frame_symbol_means(name, name));
    frame_text_clear(text);
    frame_symbol_display(name, strlen(name), text);
    ck_assert_str_eq(frame_text_chars(text), symbols[_i].display);
}
END_TEST

START_TEST(symbols_are_known_however_they_are_typed) {
    ck_assert(frame_symbol_means("Fb'", "F_b_prime"));
    ck_assert(frame_symbol_means("F_{b}′", "F_b_prime"));
    ck_assert(frame_symbol_means("F b’", "F_b_prime"));
    ck_assert(frame_symbol_means("ΔLL", "Delta_LL"));
    ck_assert(frame_symbol_means("x₁₂", "x_12"));
    ck_assert(!frame_symbol_means("f_b", "F_b"));
    ck_assert(!frame_symbol_means("F_b", "F_b_prime"));
    ck_assert(!frame_symbol_means("F_b'", "F_b"));
    ck_assert(!frame_symbol_means("", "F_b"));
    ck_assert(!frame_symbol_means("F_bb", "F_b"));
}
END_TEST

static const struct {
    double value;
    const char *shown;
} figures[] = {
    {0, "0"},
    {-0.0, "0"},
    {90, "90"},
    {-3, "-3"},
    {510000, "510000"},
    {1600000, "1600000"},
    {123456789, "123456789"},
    {92.625, "92.625"},
    {1551.25, "1551.25"},
    {64.171875, "64.172"},
    {0.34857142, "0.34857"},
    {1.0 / 3, "0.33333"},
    {2.0 / 3e4, "0.000066667"},
    {123456.789, "123457"},
    {987654321.25, "987654321"},
    {1234567890.5, "1.2346·10⁹"},
    {3.1e-9, "3.1·10⁻⁹"},
    {-8.14731e-8, "-8.1473·10⁻⁸"},
    {9.99999e-7, "1·10⁻⁶"},
    {99999.7, "99999.7"},
    {99999.7123, "100000"},
    {1e15, "1·10¹⁵"},
    {0.00001, "0.00001"},
    {0.1 + 0.2, "0.3"},
    {1e-300, "1·10⁻³⁰⁰"},
};

START_TEST(figures_are_never_zero_unless_they_are) {
    frame_figure_display(figures[_i].value, text);
    ck_assert_str_eq(frame_text_chars(text), figures[_i].shown);
}
END_TEST

START_TEST(units_have_their_powers) {
    frame_unit_display("in2 lb/in^3 m2", text);
    ck_assert_str_eq(frame_text_chars(text), "in² lb/in³ m²");
}
END_TEST

int main(void) {
    Suite *suite = suite_create("formula");
    TCase *tests = tcase_create("all");
    tcase_add_checked_fixture(tests, begin, end);
    tcase_add_loop_test(tests, a_formula_as_text, 0, sizeof lines / sizeof *lines);
    tcase_add_test(tests, parentheses_keep_the_value);
    tcase_add_loop_test(tests, a_formula_as_mathml, 0, sizeof elements / sizeof *elements);
    tcase_add_loop_test(tests, mathml_is_well_formed, 0, sizeof lines / sizeof *lines - 1);
    tcase_add_test(tests, a_wide_root_is_taken_apart);
    tcase_add_loop_test(tests, names_become_symbols, 0, sizeof symbols / sizeof *symbols);
    tcase_add_test(tests, symbols_are_known_however_they_are_typed);
    tcase_add_loop_test(tests, figures_are_never_zero_unless_they_are, 0, sizeof figures / sizeof *figures);
    tcase_add_test(tests, units_have_their_powers);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
