/* A working as a whole, in each of the four formats: columns, wrapping, escaping, nothing said twice. */
#include <check.h>
#include <math.h>
#include <pthread.h>
#include <stdio.h>
#include <string.h>

#include <frame/frame.h>

#include "working/columns.h"
#include "working/record.h"
#include "working/render.h"

static frame_working *w;
static frame_text *text;

static void begin(void) {
    ck_assert(!frame_working_new(&w) && !frame_text_new(&text));
}
static void end(void) {
    frame_working_free(w);
    frame_text_free(text);
}

static const char *rendered(frame_render_format format) {
    frame_text_clear(text);
    ck_assert_int_eq(frame_working_render(w, format, text), FRAME_OK);
    return frame_text_chars(text);
}

static void record_column(void) {
    FRAME_HEADING(w, "Buckling");
    FRAME_GIVEN(w, l_e, 92.625, "in", "effective length");
    FRAME_TABLE(w, d, 3.5, "in", "depth", "PS 20");
    FRAME_TABLE(w, E_min, 510000, "psi", "modulus for stability", "NDS Supplement Table 4A");
    FRAME_CASE(w, "l_e / d <= 50", "within the limit of slenderness", "NDS 3.7.1.4");
    FRAME_STEP(w, F_cE, 0.822 * E_min / pow(l_e / d, 2), "psi", "critical buckling value", "NDS 3.7.1");
    FRAME_STEP(w, F_c_prime, F_cE, "psi", "", "");
    FRAME_STEP(w, f, 1.5 * 2, "in2", "a plain number", "");
    (void)(F_c_prime + f);
}

START_TEST(plain_text_has_two_columns) {
    record_column();
    ck_assert_str_eq(
        rendered(FRAME_RENDER_TEXT),
        "Buckling\n"
        "--------\n"
        "  l_e   = 92.625 in                                           effective length\n"
        "  d     = 3.5 in                                              depth [PS 20]\n"
        "  E_min = 510000 psi                                          modulus for stability\n"
        "                                                              [NDS Supplement Table 4A]\n"
        "  since l_e/d ≤ 50: 92.625/3.5 ≤ 50                           within the limit of slenderness\n"
        "                                                              [NDS 3.7.1.4]\n"
        "  F_cE  = 0.822·E_min/(l_e/d)²                                critical buckling value [NDS 3.7.1]\n"
        "        = 0.822·510000/(92.625/3.5)² = 598.58 psi\n"
        "  F_c'  = F_cE\n"
        "        = 598.58 psi\n"
        "  f     = 1.5·2                                               a plain number\n"
        "        = 3 in²\n");
}
END_TEST

static void check_width(const char *chars, size_t most) {
    for (const char *line = chars; *line;) {
        const size_t length = strcspn(line, "\n");
        ck_assert_msg(frame_columns_width(line, length) <= most, "%.*s", (int)length, line);
        line += length + (line[length] == '\n');
    }
}

START_TEST(long_formulas_wrap_within_100_columns) {
    FRAME_GIVEN(w, F_cE, 598.578125, "psi",
                "a meaning of so many words that it does not fit into the column on the right");
    FRAME_GIVEN(w, F_c_star, 1551.25, "psi", "");
    FRAME_GIVEN(w, an_unusually_long_symbol_of_a_name, 0.8, "", "");
    frame_record(w, FRAME_STEP_COMPUTED, "C_P",
                 "(1 + F_cE / F_c_star) / (2 * an_unusually_long_symbol_of_a_name) - sqrt(pow((1 + F_cE / F_c_star) / "
                 "(2 * an_unusually_long_symbol_of_a_name), 2) - F_cE / F_c_star / an_unusually_long_symbol_of_a_name)",
                 0.5, "psi", "column stability factor",
                 "a source that is a whole paragraph, and a half of a second one");
    frame_record(w, FRAME_STEP_COMPUTED, "x", "fmin(F_cE, F_c_star) + fmin(F_cE, F_c_star) + fmin(F_cE, F_c_star)", 1,
                 "", "", "");
    frame_record_case(w, "F_cE < 1 && F_cE < 2 && F_cE < 3 && F_cE < 4 && F_cE < 5 && F_cE < 6", "taken", "");
    check_width(rendered(FRAME_RENDER_TEXT), 100);
    ck_assert_ptr_nonnull(strstr(rendered(FRAME_RENDER_TEXT), "\n        and F_cE < 5 and F_cE < 6: 598.58 < 1"));
    ck_assert_ptr_nonnull(strstr(rendered(FRAME_RENDER_TEXT),
                                 "= min(598.58, 1551.25) + min(598.58, 1551.25)\n"
                                 "         + min(598.58, 1551.25) = 1\n"));
    (void)(F_cE + F_c_star + an_unusually_long_symbol_of_a_name);
}
END_TEST

START_TEST(a_line_breaks_at_the_loosest_sign) {
    frame_columns_formula(text, "(a + b)·(c + d)·(e + f)", 4, 16);
    ck_assert_str_eq(frame_text_chars(text), "(a + b)·(c + d)\n    ·(e + f)");
    frame_text_clear(text);
    frame_columns_formula(text, "abcdefghijklmnopqrstuvwxyz", 2, 12);
    ck_assert_str_eq(frame_text_chars(text), "abcdefghijkl\n  mnopqrstuv\n  wxyz");
    frame_text_clear(text);
    frame_columns_formula(text, "αβγδεζηθικλμ", 0, 10);
    ck_assert_str_eq(frame_text_chars(text), "αβγδεζηθικ\nλμ");
    frame_text_clear(text);
    frame_columns_words(text, "one two  three\nfour", 9);
    ck_assert_str_eq(frame_text_chars(text), "one two\nthree\nfour");
}
END_TEST

START_TEST(levels_are_indented_and_outer_names_come_back) {
    FRAME_GIVEN(w, d, 9.25, "in", "");
    FRAME_ENTER(w);
    FRAME_HEADING(w, "Within");
    frame_record(w, FRAME_STEP_GIVEN, "d", NULL, 3.5, "in", "", "");
    FRAME_LEAVE(w);
    FRAME_STEP(w, V, d * 2, "in", "", "");
    ck_assert_str_eq(rendered(FRAME_RENDER_TEXT),
                     "  d = 9.25 in\n"
                     "\n"
                     "  Within\n"
                     "  ------\n"
                     "    d = 3.5 in\n"
                     "  V = d·2\n"
                     "    = 9.25·2 = 18.5 in\n");
    frame_working_step step;
    ck_assert_int_eq(frame_working_step_at(w, 2, &step), FRAME_OK);
    ck_assert_int_eq(step.level, 1);
    ck_assert(V == 18.5);
}
END_TEST

START_TEST(markdown_is_a_table) {
    record_column();
    ck_assert_str_eq(
        rendered(FRAME_RENDER_MARKDOWN),
        "### Buckling\n"
        "\n"
        "| symbol | formula | value | meaning | source |\n"
        "|---|---|--:|---|---|\n"
        "| `l_e` |  | 92.625 in | effective length |  |\n"
        "| `d` |  | 3.5 in | depth | PS 20 |\n"
        "| `E_min` |  | 510000 psi | modulus for stability | NDS Supplement Table 4A |\n"
        "|  | since `l_e/d ≤ 50`: `92.625/3.5 ≤ 50` |  | within the limit of slenderness | NDS 3.7.1.4 |\n"
        "| `F_cE` | `0.822·E_min/(l_e/d)²` = `0.822·510000/(92.625/3.5)²` | 598.58 psi | critical buckling "
        "value | NDS 3.7.1 |\n"
        "| `F_c'` | `F_cE` = `598.58` | 598.58 psi |  |  |\n"
        "| `f` | `1.5·2` | 3 in² | a plain number |  |\n");
}
END_TEST

static void record_nasty(void) {
    frame_record_heading(w, "a <b> & \"c\" | *d*");
    frame_record(w, FRAME_STEP_GIVEN, "x", NULL, 1, "<u>", "</span><script>`|\n_", "\"q\" 'r' \\ | <");
    frame_record_case(w, "it <is> | so & \"so\" `", "<taken>", "<s>");
    frame_record(w, FRAME_STEP_COMPUTED, "y", "x <> x || `", 1, "", "", "");
}

START_TEST(markdown_is_escaped) {
    record_nasty();
    ck_assert_str_eq(rendered(FRAME_RENDER_MARKDOWN),
                     "### a \\<b\\> \\& \"c\" \\| \\*d\\*\n"
                     "\n"
                     "| symbol | formula | value | meaning | source |\n"
                     "|---|---|--:|---|---|\n"
                     "| `x` |  | 1 \\<u\\> | \\</span\\>\\<script\\>\\`\\| \\_ | \"q\" 'r' \\\\ \\| \\< |\n"
                     "|  | since it \\<is\\> \\| so \\& \"so\" \\` |  | \\<taken\\> | \\<s\\> |\n"
                     "| `y` | `x <> x \\|\\| '` | 1 |  |  |\n");
}
END_TEST

START_TEST(html_is_escaped) {
    record_nasty();
    const char *html = rendered(FRAME_RENDER_HTML);
    static const char *const forbidden[] = {"<b>", "<u>", "<script>", "<is>", "<taken>", "<s>", "x <>", " & "};
    for (size_t i = 0; i < sizeof forbidden / sizeof *forbidden; i++)
        ck_assert_msg(!strstr(html, forbidden[i]), "%s", forbidden[i]);
    ck_assert_ptr_nonnull(strstr(html, "a &lt;b&gt; &amp; &quot;c&quot;"));
    ck_assert_ptr_nonnull(strstr(html, "x &lt;&gt; x"));
}
END_TEST

static size_t count(const char *chars, const char *what) {
    size_t found = 0;
    for (; (chars = strstr(chars, what)); chars++) found++;
    return found;
}

START_TEST(html_shows_every_entry_once) {
    record_column();
    const char *html = rendered(FRAME_RENDER_HTML);
    ck_assert_uint_eq(count(html, "class=\"frame-step "), 7);
    ck_assert_uint_eq(count(html, "<h3 class=\"frame-heading\">Buckling</h3>"), 1);
    ck_assert_uint_eq(count(html, "<section"), count(html, "</section>"));
    ck_assert_uint_eq(count(html, "<div"), count(html, "</div>"));
    ck_assert_uint_eq(count(html, "<math"), count(html, "</math>"));
    ck_assert_uint_eq(count(html, "<data class=\"frame-value\" value=\"92.625\">"), 1);
    ck_assert_uint_eq(count(html, "<span class=\"frame-source\">NDS 3.7.1</span>"), 1);
    ck_assert_uint_eq(count(html, "in²"), 1);
    ck_assert_uint_gt(count(frame_working_stylesheet(), ".frame-step{"), 0);
}
END_TEST

/* A strict reader of JSON; gives the end of the value, or NULL. */
static const char *json_value(const char *c);
static const char *json_space(const char *c) {
    return c + strspn(c, " \n\t");
}
static const char *json_string(const char *c) {
    if (*c++ != '"') return NULL;
    for (; *c != '"'; c++) {
        if ((unsigned char)*c < 0x20) return NULL;
        if (*c == '\\' && !strchr("\"\\/bfnrtu", *++c)) return NULL;
    }
    return c + 1;
}
static const char *json_items(const char *c, char close) {
    c = json_space(c + 1);
    if (*c == close) return c + 1;
    for (;;) {
        if (close == '}') {
            if (!(c = json_string(c))) return NULL;
            c = json_space(c);
            if (*c++ != ':') return NULL;
        }
        if (!(c = json_value(json_space(c)))) return NULL;
        c = json_space(c);
        if (*c == close) return c + 1;
        if (*c != ',') return NULL;
        c = json_space(c + 1);
    }
}
static const char *json_value(const char *c) {
    if (*c == '{') return json_items(c, '}');
    if (*c == '[') return json_items(c, ']');
    if (*c == '"') return json_string(c);
    static const char *const words[] = {"true", "false", "null"};
    for (int i = 0; i < 3; i++)
        if (strncmp(c, words[i], strlen(words[i])) == 0) return c + strlen(words[i]);
    const size_t length = strspn(c, "-+.eE0123456789");
    return length ? c + length : NULL;
}

START_TEST(json_is_json) {
    record_column();
    record_nasty();
    frame_record(w, FRAME_STEP_GIVEN, "z", NULL, NAN, "", "", "");
    frame_record(w, FRAME_STEP_GIVEN, "third", NULL, 1.0 / 3, "", "", "");
    const char *json = rendered(FRAME_RENDER_JSON), *json_end = json_value(json);
    ck_assert_ptr_nonnull(json_end);
    ck_assert_str_eq(json_end, "\n");
    ck_assert_uint_eq(count(json, "\"kind\": "), frame_working_step_count(w));
    ck_assert_ptr_nonnull(strstr(json, "\"symbol\": \"F_c'\""));
    ck_assert_ptr_nonnull(strstr(json, "\"value\": 0.3333333333333333,"));
    ck_assert_ptr_nonnull(strstr(json, "\"value\": null"));
    ck_assert_ptr_nonnull(strstr(json, "\"numbers\": \"0.822·510000/(92.625/3.5)²\""));
}
END_TEST

START_TEST(steps_are_read_one_by_one) {
    frame_working_step step;
    record_column();
    ck_assert_uint_eq(frame_working_step_count(w), 8);
    ck_assert_int_eq(frame_working_step_at(w, 0, &step), FRAME_OK);
    ck_assert_int_eq(step.kind, FRAME_STEP_HEADING);
    ck_assert_str_eq(step.meaning, "Buckling");
    ck_assert(step.value == FRAME_NOT_GIVEN);
    ck_assert_int_eq(frame_working_step_at(w, 5, &step), FRAME_OK);
    ck_assert_uint_eq(step.struct_size, sizeof step);
    ck_assert_str_eq(step.symbol, "F_cE");
    ck_assert_str_eq(step.formula, "0.822·E_min/(l_e/d)²");
    ck_assert_str_eq(step.numbers, "0.822·510000/(92.625/3.5)²");
    ck_assert_str_eq(step.unit, "psi");
    ck_assert_str_eq(step.source, "NDS 3.7.1");
    ck_assert_int_eq(frame_working_step_at(w, 4, &step), FRAME_OK);
    ck_assert_str_eq(step.formula, "l_e/d ≤ 50");
    ck_assert_int_eq(frame_working_step_at(w, 8, &step), FRAME_OUT_OF_RANGE);
    ck_assert_str_eq(step.formula, "l_e/d ≤ 50");
    ck_assert_int_eq(frame_working_step_at(NULL, 0, &step), FRAME_REQUIRED);
    ck_assert_int_eq(frame_working_step_at(w, 0, NULL), FRAME_REQUIRED);
}
END_TEST

/* A program built with a shorter struct gets as much as it knows of. */
START_TEST(a_shorter_item_is_filled_as_far_as_it_goes) {
    frame_working_step step;
    record_column();
    memset(&step, 'x', sizeof step);
    const size_t size = offsetof(frame_working_step, unit);
    ck_assert_int_eq(frame_working_step_at_sized(w, 5, &step, size), FRAME_OK);
    ck_assert_uint_eq(step.struct_size, size);
    ck_assert_str_eq(step.symbol, "F_cE");
    ck_assert_int_eq(((const char *)&step)[size], 'x');
}
END_TEST

static void *read_all(void *shared) {
    const frame_working *read = shared;
    frame_working_step step;
    for (size_t i = 0; i < frame_working_step_count(read); i++)
        if (frame_working_step_at(read, i, &step) || (i == 5 && strcmp(step.formula, "0.822·E_min/(l_e/d)²") != 0))
            return shared;
    return NULL;
}

/* The display texts are made by whoever asks first. */
START_TEST(threads_may_read_one_working_at_once) {
    for (int round = 0; round < 200; round++) {
        pthread_t threads[3];
        frame_working_clear(w);
        record_column();
        for (int i = 0; i < 3; i++) ck_assert_int_eq(pthread_create(&threads[i], NULL, read_all, w), 0);
        for (int i = 0; i < 3; i++) {
            void *trouble;
            ck_assert_int_eq(pthread_join(threads[i], &trouble), 0);
            ck_assert_ptr_null(trouble);
        }
    }
}
END_TEST

START_TEST(an_empty_working_says_so) {
    ck_assert_str_eq(rendered(FRAME_RENDER_TEXT), "Nothing is recorded.\n");
    ck_assert_str_eq(rendered(FRAME_RENDER_MARKDOWN), "Nothing is recorded.\n");
    ck_assert_ptr_nonnull(strstr(rendered(FRAME_RENDER_HTML), "Nothing is recorded."));
    ck_assert_str_eq(rendered(FRAME_RENDER_JSON), "{\"whole\": true, \"steps\": [\n]}\n");
}
END_TEST

START_TEST(a_rendering_is_appended_and_bad_calls_change_nothing) {
    FRAME_GIVEN(w, a, 1, "", "");
    ck_assert_int_eq(frame_working_render(w, FRAME_RENDER_TEXT, text), FRAME_OK);
    ck_assert_int_eq(frame_working_render(w, FRAME_RENDER_TEXT, text), FRAME_OK);
    ck_assert_str_eq(frame_text_chars(text), "  a = 1\n  a = 1\n");
    ck_assert_int_eq(frame_working_render(NULL, FRAME_RENDER_TEXT, text), FRAME_REQUIRED);
    ck_assert_int_eq(frame_working_render(w, FRAME_RENDER_TEXT, NULL), FRAME_REQUIRED);
    ck_assert_int_eq(frame_working_render(w, 0, text), FRAME_OUT_OF_RANGE);
    ck_assert_int_eq(frame_working_render(w, 5, text), FRAME_OUT_OF_RANGE);
    ck_assert_str_eq(frame_error_field(), "format");
    ck_assert_str_eq(frame_text_chars(text), "  a = 1\n  a = 1\n");
    ck_assert(a == 1);
}
END_TEST

int main(void) {
    Suite *suite = suite_create("render");
    TCase *tests = tcase_create("all");
    tcase_add_checked_fixture(tests, begin, end);
    tcase_add_test(tests, plain_text_has_two_columns);
    tcase_add_test(tests, long_formulas_wrap_within_100_columns);
    tcase_add_test(tests, a_line_breaks_at_the_loosest_sign);
    tcase_add_test(tests, levels_are_indented_and_outer_names_come_back);
    tcase_add_test(tests, markdown_is_a_table);
    tcase_add_test(tests, markdown_is_escaped);
    tcase_add_test(tests, html_is_escaped);
    tcase_add_test(tests, html_shows_every_entry_once);
    tcase_add_test(tests, json_is_json);
    tcase_add_test(tests, steps_are_read_one_by_one);
    tcase_add_test(tests, a_shorter_item_is_filled_as_far_as_it_goes);
    tcase_add_test(tests, threads_may_read_one_working_at_once);
    tcase_add_test(tests, an_empty_working_says_so);
    tcase_add_test(tests, a_rendering_is_appended_and_bad_calls_change_nothing);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}
