/* Every field of every in-struct, fed what it must refuse: the facts of the fields say what that is. Each refusal names
 * the field's path, the value and what is valid, and leaves the answer untouched. Nothing here names a calculation. */
#include <check.h>
#include <float.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <frame/frame.h>

#include "base/answer.h"

enum { MOST_BYTES = 4096, MOST_DEPTH = 4 };

/* One in-struct in range in every field that must be given, and what hangs on it. */
typedef struct subject {
    const frame_calculation *calculation;
    union {
        double align;
        unsigned char bytes[MOST_BYTES];
    } in;
    void *blocks[64];
    size_t block_count;
} subject;

static double *number_at(void *object, const frame_field *field) {
    return (double *)(void *)((char *)object + field->offset);
}
static int32_t *integer_at(void *object, const frame_field *field) {
    return (int32_t *)(void *)((char *)object + field->offset);
}
static const void **pointer_at(void *object, const frame_field *field) {
    return (const void **)(void *)((char *)object + field->offset);
}
static size_t *count_at(void *object, const frame_field *field) {
    return (size_t *)(void *)((char *)object + field->count_offset);
}

static double within(const frame_field *field) {
    const double middle = field->low + (field->high - field->low) / 4;
    return field->kind == FRAME_FIELD_INTEGER ? ceil(middle) : middle;
}

static void *keep(subject *s, size_t size) {
    ck_assert_uint_lt(s->block_count, 64);
    return s->blocks[s->block_count++] = calloc(1, size);
}

static void fill(subject *s, const frame_struct *facts, void *object, int depth);

static int is_list(const frame_field *field) {
    return field->kind == FRAME_FIELD_LIST || field->kind == FRAME_FIELD_NUMBERS || field->kind == FRAME_FIELD_WORDS;
}

static void fill_list(subject *s, const frame_field *field, void *object, int depth) {
    const size_t size = field->element ? frame_struct_size(field->element) : sizeof(double);
    void *items = keep(s, 2 * size);
    for (int i = 0; i < 2; i++)
        if (field->element)
            fill(s, field->element, (char *)items + (size_t)i * size, depth + 1);
        else if (field->kind == FRAME_FIELD_WORDS)
            ((int32_t *)items)[i] = frame_word_at(field->words, 0);
        else
            ((double *)items)[i] = within(field);
    *pointer_at(object, field) = items;
    *count_at(object, field) = 2;
}

static void fill(subject *s, const frame_struct *facts, void *object, int depth) {
    ck_assert_int_lt(depth, MOST_DEPTH);
    ck_assert_int_eq(frame_struct_init(facts, object, frame_struct_size(facts)), FRAME_OK);
    for (size_t i = 0; i < frame_field_count(facts); i++) {
        const frame_field *field = frame_field_at(facts, i);
        const int list = is_list(field);
        if (field->need == FRAME_FIELD_RESULT || (field->need != FRAME_FIELD_REQUIRED && !list)) continue;
        if (field->kind == FRAME_FIELD_NUMBER) *number_at(object, field) = within(field);
        if (field->kind == FRAME_FIELD_INTEGER) *integer_at(object, field) = (int32_t)within(field);
        if (field->kind == FRAME_FIELD_WORD) *integer_at(object, field) = frame_word_at(field->words, 0);
        if (field->kind == FRAME_FIELD_BOOL) *integer_at(object, field) = 1;
        if (field->kind == FRAME_FIELD_TEXT) *pointer_at(object, field) = "text";
        if (list) fill_list(s, field, object, depth);
    }
}

static void drop(subject *s) {
    while (s->block_count) free(s->blocks[--s->block_count]);
}

/* Runs the subject and asks for a refusal of the field, the answer untouched. */
static void refused(subject *s, const char *path, const char *what) {
    static unsigned char out[MOST_BYTES], before[MOST_BYTES];
    void *const untouched = out;
    frame_answer *answer = untouched;
    frame_status status;
    memset(out, 0xA5, sizeof out);
    memcpy(before, out, sizeof out);
    frame_error_clear();
    if (s->calculation->solve)
        status = s->calculation->solve(s->in.bytes, &answer, NULL);
    else
        status = s->calculation->run(s->in.bytes, out, frame_struct_size(s->calculation->out), NULL);
    ck_assert_msg(status != FRAME_OK, "%s.%s: %s was taken", s->calculation->name, path, what);
    ck_assert_msg(!strcmp(frame_error_field(), path), "%s.%s: %s: the error names %s: %s", s->calculation->name, path,
                  what, frame_error_field(), frame_error_text());
    ck_assert_msg(strstr(frame_error_text(), path) && *frame_error_valid(), "%s.%s: %s: %s (valid: %s)",
                  s->calculation->name, path, what, frame_error_text(), frame_error_valid());
    ck_assert_msg(frame_error_status() == status && !strchr(frame_error_text(), '\n'), "%s", frame_error_text());
    ck_assert_msg(!memcmp(out, before, sizeof out) && (void *)answer == untouched, "%s.%s: %s: the answer was touched",
                  s->calculation->name, path, what);
}

static size_t tried; /* counts what was fed, so that a test that fed nothing fails */

static void try_number(subject *s, const frame_field *field, double *place, double value, const char *path) {
    const double kept = *place;
    char what[48];
    snprintf(what, sizeof what, "%.17g", value);
    *place = value;
    refused(s, path, what);
    ck_assert_msg(*frame_error_value(), "%s: the error has no value", path);
    if (isfinite(value))
        ck_assert_msg(strstr(frame_error_text(), field->valid) != NULL, "%s: no range in: %s", path,
                      frame_error_text());
    *place = kept;
    tried++;
}

static void bad_number(subject *s, const frame_field *field, double *place, const char *path) {
    const double below = field->low_open ? field->low : nextafter(field->low, -INFINITY);
    const double above = field->high_open ? field->high : nextafter(field->high, INFINITY);
    const double bad[] = {NAN, -NAN, INFINITY, -INFINITY, below, above, DBL_MAX, -DBL_MAX, -1e299};
    for (size_t i = 0; i < sizeof bad / sizeof *bad; i++) try_number(s, field, place, bad[i], path);
    if (field->low > 0 || (field->low == 0 && field->low_open)) try_number(s, field, place, 0, path);
    if (field->low >= 0) try_number(s, field, place, -1, path), try_number(s, field, place, -DBL_MIN, path);
}

static void try_integer(subject *s, int32_t *place, int32_t value, const char *path) {
    const int32_t kept = *place;
    char what[24];
    snprintf(what, sizeof what, "%d", (int)value);
    *place = value;
    refused(s, path, what);
    *place = kept;
    tried++;
}

static void bad_integer(subject *s, const frame_field *field, int32_t *place, const char *path) {
    try_integer(s, place, (int32_t)field->low - 1, path);
    if (field->high < INT32_MAX)
        try_integer(s, place, (int32_t)field->high + 1, path), try_integer(s, place, INT32_MAX, path);
    try_integer(s, place, INT32_MIN + 1, path);
    if (field->low > 0) try_integer(s, place, 0, path);
    if (field->low >= 0) try_integer(s, place, -1, path);
}

static void bad_word(subject *s, const frame_field *field, int32_t *place, const char *path) {
    const int32_t bad[] = {-1, 0, 999999, INT32_MAX, INT32_MIN + 1};
    for (size_t i = 0; i < sizeof bad / sizeof *bad; i++)
        if (field->kind == FRAME_FIELD_BOOL ? bad[i] != 0 : !frame_word_text(field->words, bad[i]))
            try_integer(s, place, bad[i], path);
}

static void missing(subject *s, const frame_field *field, void *object, const char *path) {
    const size_t size = field->kind == FRAME_FIELD_NUMBER ? sizeof(double) : sizeof(int32_t);
    char kept[sizeof(double)];
    if (field->need != FRAME_FIELD_REQUIRED) return;
    if (field->kind == FRAME_FIELD_TEXT) {
        const void *text = *pointer_at(object, field);
        *pointer_at(object, field) = NULL;
        refused(s, path, "NULL");
        *pointer_at(object, field) = text;
        return;
    }
    memcpy(kept, (char *)object + field->offset, size);
    if (field->kind == FRAME_FIELD_NUMBER)
        *number_at(object, field) = FRAME_NOT_GIVEN;
    else
        *integer_at(object, field) = FRAME_NOT_GIVEN_INT;
    refused(s, path, "nothing");
    ck_assert_int_eq(frame_error_status(), FRAME_REQUIRED);
    memcpy((char *)object + field->offset, kept, size);
}

static void walk(subject *s, const frame_struct *facts, void *object, const char *before);

static void bad_list(subject *s, const frame_field *field, void *object, const char *path) {
    const void *items = *pointer_at(object, field);
    char within_path[256];
    *pointer_at(object, field) = NULL;
    refused(s, path, "NULL with a count");
    *pointer_at(object, field) = items;
    *count_at(object, field) = SIZE_MAX / 2;
    refused(s, path, "a huge count");
    *count_at(object, field) = 0;
    if (field->need == FRAME_FIELD_REQUIRED) refused(s, path, "no items");
    *count_at(object, field) = 2;
    for (int i = 0; i < 2; i++) {
        if (field->element) {
            uint32_t *mark =
                (uint32_t *)(void *)((char *)(uintptr_t)items + (size_t)i * frame_struct_size(field->element));
            snprintf(within_path, sizeof within_path, "%s[%d].", path, i);
            walk(s, field->element, mark, within_path);
        } else {
            snprintf(within_path, sizeof within_path, "%s[%d]", path, i);
            if (field->kind == FRAME_FIELD_WORDS)
                bad_word(s, field, (int32_t *)(uintptr_t)items + i, within_path);
            else
                bad_number(s, field, (double *)(uintptr_t)items + i, within_path);
        }
    }
}

static void walk(subject *s, const frame_struct *facts, void *object, const char *before) {
    for (size_t i = 0; i < frame_field_count(facts); i++) {
        const frame_field *field = frame_field_at(facts, i);
        char path[256];
        if (field->need == FRAME_FIELD_RESULT) continue;
        snprintf(path, sizeof path, "%s%s", before, field->name);
        if (field->kind == FRAME_FIELD_NUMBER) bad_number(s, field, number_at(object, field), path);
        if (field->kind == FRAME_FIELD_INTEGER) bad_integer(s, field, integer_at(object, field), path);
        if (field->kind == FRAME_FIELD_WORD || field->kind == FRAME_FIELD_BOOL)
            bad_word(s, field, integer_at(object, field), path);
        if (is_list(field))
            bad_list(s, field, object, path);
        else
            missing(s, field, object, path);
    }
}

/* -- the struct itself -- */

static void bad_mark(subject *s, uint32_t size, uint32_t id, frame_status wanted) {
    uint32_t *mark = (uint32_t *)(void *)s->in.bytes;
    const uint32_t kept_size = mark[0], kept_id = mark[1];
    mark[0] = size;
    mark[1] = id;
    const frame_struct *facts = s->calculation->in;
    refused(s, frame_struct_name(facts), "a struct not set up");
    ck_assert_int_eq(frame_error_status(), wanted);
    mark[0] = kept_size;
    mark[1] = kept_id;
}

START_TEST(every_field) {
    subject s = {.calculation = frame_calculation_at((size_t)_i)};
    const frame_struct *facts = s.calculation->in;
    ck_assert_uint_le(frame_struct_size(facts), MOST_BYTES);
    fill(&s, facts, s.in.bytes, 0);
    tried = 0;
    walk(&s, facts, s.in.bytes, "");
    ck_assert_uint_gt(tried, 0);
    const uint32_t size = (uint32_t)frame_struct_size(facts), id = frame_struct_id(facts);
    bad_mark(&s, 0, 0, FRAME_NOT_INITIALISED);
    bad_mark(&s, size, id ^ 1, FRAME_NOT_INITIALISED);
    bad_mark(&s, 4, id, FRAME_NOT_INITIALISED);
    for (size_t i = 0; i < frame_field_count(facts); i++) { /* none ends in the middle of a number or pointer */
        const frame_field *field = frame_field_at(facts, i);
        if (field->kind == FRAME_FIELD_NUMBER || field->kind == FRAME_FIELD_TEXT)
            bad_mark(&s, field->offset + 4, id, FRAME_NOT_INITIALISED);
    }
    bad_mark(&s, size + 8, id, FRAME_NEWER_HEADER);
    drop(&s);
}
END_TEST

/* Elements that were never set up: a list of zeroed memory. */
START_TEST(items_not_set_up) {
    subject s = {.calculation = frame_calculation_at((size_t)_i)};
    fill(&s, s.calculation->in, s.in.bytes, 0);
    for (size_t i = 0; i < frame_field_count(s.calculation->in); i++) {
        const frame_field *field = frame_field_at(s.calculation->in, i);
        if (field->kind != FRAME_FIELD_LIST) continue;
        uint32_t *mark = (uint32_t *)(uintptr_t)*pointer_at(s.in.bytes, field);
        mark[0] = mark[1] = 0;
        frame_error_clear();
        unsigned char out[MOST_BYTES];
        frame_answer *answer = NULL;
        const frame_status status =
            s.calculation->solve ? s.calculation->solve(s.in.bytes, &answer, NULL)
                                 : s.calculation->run(s.in.bytes, out, frame_struct_size(s.calculation->out), NULL);
        ck_assert_int_eq(status, FRAME_NOT_INITIALISED);
        ck_assert_msg(strstr(frame_error_text(), field->name) != NULL, "%s", frame_error_text());
        break;
    }
    drop(&s);
}
END_TEST

/* Texts of any length and any bytes: an answer or a refusal, never a crash, and the message stays one line. */
START_TEST(odd_texts) {
    static char huge[200001];
    memset(huge, 'x', sizeof huge - 1);
    const char *const texts[] = {"", " ", huge, "\xff\xfe\x80", "a\nb", "%s%n%d", "\xf0\x9f\xaa\xb5", "\xf0\x9f"};
    subject s = {.calculation = frame_calculation_at((size_t)_i)};
    fill(&s, s.calculation->in, s.in.bytes, 0);
    for (size_t i = 0; i < frame_field_count(s.calculation->in); i++) {
        const frame_field *field = frame_field_at(s.calculation->in, i);
        for (size_t t = 0; field->kind == FRAME_FIELD_TEXT && t < sizeof texts / sizeof *texts; t++) {
            unsigned char out[MOST_BYTES];
            frame_answer *answer = NULL;
            *pointer_at(s.in.bytes, field) = texts[t];
            frame_error_clear();
            if (s.calculation->solve)
                s.calculation->solve(s.in.bytes, &answer, NULL);
            else
                s.calculation->run(s.in.bytes, out, frame_struct_size(s.calculation->out), NULL);
            frame_answer_free(answer);
            ck_assert_uint_lt(strlen(frame_error_text()), 1000);
        }
    }
    drop(&s);
}
END_TEST

START_TEST(nothing_at_all) {
    const frame_calculation *calculation = frame_calculation_at((size_t)_i);
    unsigned char out[MOST_BYTES];
    frame_answer *answer = NULL;
    subject s = {.calculation = calculation};
    fill(&s, calculation->in, s.in.bytes, 0);
    if (calculation->solve) {
        ck_assert_int_ne(calculation->solve(NULL, &answer, NULL), FRAME_OK);
        ck_assert_int_ne(calculation->solve(s.in.bytes, NULL, NULL), FRAME_OK);
    } else {
        ck_assert_int_ne(calculation->run(NULL, out, sizeof out, NULL), FRAME_OK);
        ck_assert_int_ne(calculation->run(s.in.bytes, NULL, sizeof out, NULL), FRAME_OK);
    }
    drop(&s);
}
END_TEST

/* Words: what no list may take. */
START_TEST(words) {
    int32_t value = 7;
    static char huge[100001];
    memset(huge, 'x', sizeof huge - 1);
    const char *const texts[] = {"", " ", "no such word", huge, "\xff", "2x", "%s%n"};
    for (size_t i = 0; i < frame_all.words_count; i++) {
        const char *list = frame_all.words[i]->name;
        for (size_t t = 0; t < sizeof texts / sizeof *texts; t++) {
            ck_assert_msg(frame_word_find(list, texts[t], &value) != FRAME_OK, "%s takes \"%.20s\"", list, texts[t]);
            ck_assert_int_eq(value, 7);
            ck_assert_uint_lt(strlen(frame_error_text()), 1000);
        }
        ck_assert_int_ne(frame_word_find(list, NULL, &value), FRAME_OK);
        ck_assert_ptr_null(frame_word_text(list, -12345));
        for (size_t w = 0; w < frame_word_count(list); w++) {
            const int32_t word = frame_word_at(list, w);
            ck_assert_msg(frame_word_find(list, frame_word_text(list, word), &value) == FRAME_OK && value == word,
                          "%s: \"%s\" is not found under its own name", list, frame_word_text(list, word));
        }
        value = 7;
    }
}
END_TEST

int main(void) {
    const int count = (int)frame_calculation_count();
    Suite *suite = suite_create("bad input");
    TCase *all = tcase_create("facts");
    tcase_set_timeout(all, 120);
    tcase_add_loop_test(all, every_field, 0, count);
    tcase_add_loop_test(all, items_not_set_up, 0, count);
    tcase_add_loop_test(all, odd_texts, 0, count);
    tcase_add_loop_test(all, nothing_at_all, 0, count);
    tcase_add_test(all, words);
    suite_add_tcase(suite, all);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed ? 1 : 0;
}
