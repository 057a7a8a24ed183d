/* Asking a look-up in words: ask(&out, "code_joist_span", "use=floor; size=2x10; spacing_in=16; ..."). */
#ifndef FRAME_TESTS_CODE_ASK_H
#define FRAME_TESTS_CODE_ASK_H

#include <check.h>
#include <stdio.h>
#include <string.h>

#include <frame/code.h>
#include <frame/fields.h>
#include <frame/tape.h>
#include <frame/text.h>
#include <frame/working.h>

#include "base/answer.h"
#include "base/facts.h"

/* Sets one field from its text as a binding does: lengths in the tape's notation, words in any spelling. */
static void ask_set(const frame_struct *facts, char *in, const char *name, const char *text) {
    const frame_field *field = frame_field_find(facts, name);
    ck_assert_msg(field != NULL, "%s has no field %s", facts->name, name);
    double number;
    int32_t whole;
    if (field->kind == FRAME_FIELD_WORD) {
        ck_assert_msg(!frame_word_find(field->words, text, &whole), "%s", frame_error_text());
        memcpy(in + field->offset, &whole, sizeof whole);
    } else if (field->kind == FRAME_FIELD_TEXT) {
        memcpy(in + field->offset, &text, sizeof text);
    } else if (field->kind == FRAME_FIELD_BOOL) {
        whole = !strcmp(text, "yes");
        memcpy(in + field->offset, &whole, sizeof whole);
    } else {
        const char *end;
        if (frame_number_read(text, &end, &number) || *end)
            ck_assert_msg(!frame_tape_parse(text, &number), "%s", frame_error_text());
        whole = (int32_t)number;
        if (field->kind == FRAME_FIELD_INTEGER)
            memcpy(in + field->offset, &whole, sizeof whole);
        else
            memcpy(in + field->offset, &number, sizeof number);
    }
}

/* The whole question: pairs name=value parted by semicolons; a later pair replaces an earlier one. The texts in the
 * struct live until the next question. */
static const void *ask_fill(const frame_calculation *asked, const char *question) {
    static double in[64];
    static char copy[2000];
    ck_assert(asked && asked->in->size <= sizeof in);
    ck_assert(!frame_struct_init(asked->in, in, asked->in->size));
    snprintf(copy, sizeof copy, "%s", question);
    for (char *pair = copy; pair && *pair;) {
        char *end = strchr(pair, ';'), *equals = strchr(pair, '=');
        if (end) *end++ = 0;
        if (!pair[strspn(pair, " ")]) break;
        ck_assert_msg(equals != NULL, "no = in \"%s\"", pair);
        *equals = 0;
        ask_set(asked->in, (char *)in, pair + strspn(pair, " "), equals + 1);
        pair = end;
    }
    return in;
}

static frame_status ask_with(void *out, const char *calculation, frame_working *working, const char *question) {
    const frame_calculation *asked = frame_calculation_find(calculation);
    ck_assert_msg(asked != NULL, "%s", calculation);
    const void *in = ask_fill(asked, question);
    if (asked->run) return asked->run(in, out, asked->out->size, working);
    frame_answer *answer;
    const frame_status status = asked->solve(in, &answer, working);
    if (status) return status;
    memcpy(out, answer->out, asked->out->size);
    frame_answer_free(answer);
    return FRAME_OK;
}

/* The whole answer of one whose length varies; the caller frees it. */
static inline frame_answer *ask_all(const char *calculation, const char *question) {
    const frame_calculation *asked = frame_calculation_find(calculation);
    frame_answer *answer = NULL;
    ck_assert_msg(asked && asked->solve, "%s", calculation);
    ck_assert_msg(!asked->solve(ask_fill(asked, question), &answer, NULL), "%s: %s", question, frame_error_text());
    return answer;
}

static inline frame_status ask(void *out, const char *calculation, const char *question) {
    return ask_with(out, calculation, NULL, question);
}

/* Asks and must get an answer. */
#define ASKED(out, calculation, question) \
    ck_assert_msg(!ask(out, calculation, question), "%s: %s", question, frame_error_text())

/* Asks and must be refused: with this status, for this field, with what is valid, and the result left alone. */
static inline void refused_at(int line, const char *calculation, const char *question, const char *field,
                              frame_status status) {
    static char out[1000], before[1000];
    memset(out, 0x5a, sizeof out);
    memset(before, 0x5a, sizeof before);
    const frame_status got = ask(out, calculation, question);
    ck_assert_msg(got == status, "line %d: %s: came to %s: %s", line, question, frame_status_name(got),
                  got ? frame_error_text() : "");
    ck_assert_msg(!strcmp(frame_error_field(), field), "line %d: %s: field %s: %s", line, question, frame_error_field(),
                  frame_error_text());
    ck_assert_msg(*frame_error_valid() && !strchr(frame_error_text(), '\n'), "line %d: %s", line, frame_error_text());
    ck_assert(!memcmp(out, before, sizeof out));
}
#define REFUSED(calculation, question, field, status) refused_at(__LINE__, calculation, question, field, status)

/* The working works itself out anew, and it and the result can be read; the working holds a text. */
static inline void says(void *out, const char *calculation, const char *question, const char *text) {
    frame_working *working;
    frame_text *rendered;
    ck_assert(!frame_working_new(&working) && !frame_text_new(&rendered));
    ck_assert_msg(!ask_with(out, calculation, working, question), "%s: %s", question, frame_error_text());
    ck_assert_msg(!frame_working_check(working, rendered), "%s", frame_text_chars(rendered));
    ck_assert(!frame_result_text(out, rendered) && !frame_working_render(working, FRAME_RENDER_TEXT, rendered));
    ck_assert_msg(strstr(frame_text_chars(rendered), text), "no \"%s\" in\n%s", text, frame_text_chars(rendered));
    frame_working_free(working);
    frame_text_free(rendered);
}

#define CAUTION(out, bit) FRAME_HAS((out).cautions, FRAME_CODE_CAUTION_##bit)

/* Runs the tests of one program. */
static inline int run_tests(TCase *tests, const char *name) {
    tcase_set_timeout(tests, 120);
    Suite *suite = suite_create(name);
    suite_add_tcase(suite, tests);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed != 0;
}

#endif
