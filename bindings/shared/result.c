/* What a result holds, read field by field. */
#include <stdio.h>
#include <string.h>

#include "bound.h"

void bound_result_release(bound_result *result) {
    frame_answer_free(result->answer);
    frame_arena_give(&result->arena);
    frame_give(result->texts);
    result->answer = NULL;
    result->texts = NULL;
}

void bound_result_answer(bound_result *result, frame_answer *answer) {
    result->answer = answer;
    result->out = answer->out;
}

static const void *place_of(const bound_struct *of, size_t field, const void *object) {
    return (const char *)object + of->facts->fields[field].offset;
}

static bound_given read_integer(const frame_field *field, int32_t value) {
    bound_given given = {.worth = BOUND_WORTH_NOTHING, .integer = value};
    if (value == FRAME_NOT_GIVEN_INT) return given;
    if (field->kind == FRAME_FIELD_BOOL) given.worth = BOUND_WORTH_BOOL;
    if (field->kind == FRAME_FIELD_INTEGER) given.worth = BOUND_WORTH_INTEGER;
    if (field->kind == FRAME_FIELD_WORD) {
        given.text = frame_word_text(field->words, value);
        given.worth = given.text ? BOUND_WORTH_TEXT : value ? BOUND_WORTH_INTEGER : BOUND_WORTH_NOTHING;
    }
    return given;
}

bound_given bound_read(const bound_struct *of, size_t field, const void *object) {
    const frame_field *facts = &of->facts->fields[field];
    const void *place = place_of(of, field, object);
    bound_given given = {.worth = BOUND_WORTH_NOTHING};
    switch (facts->kind) {
        case FRAME_FIELD_NUMBER:
            given.number = *(const double *)place;
            if (given.number != FRAME_NOT_GIVEN) given.worth = BOUND_WORTH_NUMBER;
            return given;
        case FRAME_FIELD_INTEGER:
        case FRAME_FIELD_WORD:
        case FRAME_FIELD_BOOL:
            return read_integer(facts, *(const int32_t *)place);
        case FRAME_FIELD_TEXT:
            given.text = *(const char *const *)place;
            if (given.text) given.worth = BOUND_WORTH_TEXT;
            return given;
        case FRAME_FIELD_BITS:
            given.bits = *(const uint64_t *)place;
            given.worth = BOUND_WORTH_BITS;
            return given;
        case FRAME_FIELD_RANGE:
            given.worth = BOUND_WORTH_RANGE;
            return given;
        default:
            given.worth = BOUND_WORTH_LIST;
            return given;
    }
}

/* -- bits -- */

static void say_assumed(const frame_field *field, char *sentence, size_t size) {
    frame_text *text;
    snprintf(sentence, size, "%s", field->name);
    if (frame_text_new(&text)) return; /* without memory the name alone */
    if (!frame_assumed_text(field, text)) snprintf(sentence, size, "%s", frame_text_chars(text));
    frame_text_free(text);
}

static int assumed_bit(const bound_result *result, int bit, const char **name, char *sentence, size_t size) {
    const frame_struct *in = result->calculation ? result->calculation->in->facts : NULL;
    for (size_t i = 0; in && i < in->field_count; i++)
        if (in->fields[i].assumed_bit == bit) {
            *name = in->fields[i].name;
            say_assumed(&in->fields[i], sentence, size);
            return 1;
        }
    return 0;
}

int bound_bit(const bound_result *result, size_t field, int *bit, const char **name, char *sentence, size_t size) {
    const frame_field *facts = &result->of->facts->fields[field];
    const uint64_t bits = *(const uint64_t *)place_of(result->of, field, result->out);
    for (; *bit < 64; ++*bit) {
        const int at = *bit;
        if (!(bits >> at & 1)) continue;
        ++*bit;
        if (!strcmp(facts->words, "assumed")) {
            if (assumed_bit(result, at, name, sentence, size)) return 1;
        } else if ((*name = frame_word_text(facts->words, at)) != NULL) {
            snprintf(sentence, size, "%s", frame_word_meaning(facts->words, at));
            return 1;
        }
        *name = "unknown";
        snprintf(sentence, size, "%s: bit %d, which this version has no words for", facts->name, at);
        return 1;
    }
    return 0;
}

int bound_names_field(const bound_struct *of, const char *names) {
    const size_t length = strlen(names);
    if (length < 7 || strcmp(names + length - 6, "_names")) return -1;
    for (size_t i = 0; i < of->facts->field_count; i++) {
        const frame_field *field = &of->facts->fields[i];
        size_t stem = strlen(field->name);
        if (field->kind != FRAME_FIELD_BITS) continue;
        if (field->name[stem - 1] == 's') stem--;
        if (stem == length - 6 && !memcmp(field->name, names, stem)) return (int)i;
    }
    return -1;
}

/* -- ranges and texts -- */

bound_span bound_range(const bound_result *result, const frame_answer *answer, size_t field) {
    const frame_field *facts = &result->of->facts->fields[field];
    bound_span span = {bound_list_find(result->calculation, facts->words), 0, 0};
    if (!answer || span.list < 0) return (bound_span){-1, 0, 0};
    const size_t all = answer->lists[span.list].count;
    span.first = *(const uint32_t *)place_of(result->of, field, result->out);
    span.count = *(const uint32_t *)(const void *)((const char *)result->out + facts->count_offset);
    if (span.first > all) span.first = all;
    if (span.count > all - span.first) span.count = all - span.first;
    return span;
}

frame_status bound_result_own_texts(bound_result *result) {
    const frame_struct *facts = result->of->facts;
    size_t needed = 0;
    for (size_t i = 0; i < facts->field_count; i++) {
        const bound_given given = bound_read(result->of, i, result->out);
        if (facts->fields[i].kind == FRAME_FIELD_TEXT && given.text) needed += strlen(given.text) + 1;
    }
    if (!needed) return FRAME_OK;
    char *at = result->texts = frame_take(needed);
    if (!at) return FRAME_NO_MEMORY;
    for (size_t i = 0; i < facts->field_count; i++) {
        const bound_given given = bound_read(result->of, i, result->out);
        if (facts->fields[i].kind != FRAME_FIELD_TEXT || !given.text) continue;
        const size_t length = strlen(given.text) + 1;
        memcpy(at, given.text, length);
        *(const char **)(void *)((char *)result->out + facts->fields[i].offset) = at;
        at += length;
    }
    return FRAME_OK;
}

/* The next field from one on that holds a handle, which is moved past it; NULL after the last. */
static const void **next_handle(const bound_result *result, size_t *field) {
    const bound_struct *in = result->calculation ? result->calculation->in : NULL;
    if (!in || in->handle < 0 || !result->in) return NULL;
    for (; *field < in->facts->field_count; ++*field) {
        if (in->facts->fields[*field].kind != FRAME_FIELD_HANDLE) continue;
        return (const void **)(void *)((char *)result->in + in->facts->fields[(*field)++].offset);
    }
    return NULL;
}

int bound_result_has_handle(const bound_result *result) {
    size_t field = 0;
    for (const void **handle; (handle = next_handle(result, &field));)
        if (*handle) return 1;
    return 0;
}

frame_status bound_result_settle(bound_result *result) {
    size_t field = 0;
    for (const void **handle; (handle = next_handle(result, &field));) *handle = NULL;
    return bound_result_own_texts(result);
}

/* -- comparing -- */

static int same_text(const char *a, const char *b) {
    return a == b || (a && b && !strcmp(a, b));
}

static int same_field(const bound_result *a, const frame_answer *a_answer, const bound_result *b,
                      const frame_answer *b_answer, size_t field);

static int same_item(const bound_calculation *calculation, const frame_answer *a, const frame_answer *b, int list,
                     size_t at_a, size_t at_b) {
    const bound_struct *of = calculation->lists[list];
    if (!of) return ((double *)a->lists[list].items)[at_a] == ((double *)b->lists[list].items)[at_b];
    const bound_result ra = {
        .of = of, .calculation = calculation, .out = (char *)a->lists[list].items + at_a * of->facts->size};
    const bound_result rb = {
        .of = of, .calculation = calculation, .out = (char *)b->lists[list].items + at_b * of->facts->size};
    for (size_t i = 0; i < of->facts->field_count; i++)
        if (!same_field(&ra, a, &rb, b, i)) return 0;
    return 1;
}

static int same_field(const bound_result *a, const frame_answer *a_answer, const bound_result *b,
                      const frame_answer *b_answer, size_t field) {
    const bound_given x = bound_read(a->of, field, a->out), y = bound_read(b->of, field, b->out);
    if (x.worth != y.worth) return 0;
    if (x.worth == BOUND_WORTH_NUMBER) return x.number == y.number;
    if (x.worth == BOUND_WORTH_TEXT) return same_text(x.text, y.text);
    if (x.worth == BOUND_WORTH_BITS) return x.bits == y.bits;
    if (x.worth != BOUND_WORTH_RANGE) return x.integer == y.integer;
    const bound_span s = bound_range(a, a_answer, field), t = bound_range(b, b_answer, field);
    if (s.list != t.list || s.count != t.count) return 0;
    for (size_t i = 0; s.list >= 0 && i < s.count; i++)
        if (!same_item(a->calculation, a_answer, b_answer, s.list, s.first + i, t.first + i)) return 0;
    return 1;
}

int bound_same(const bound_result *a, const frame_answer *a_answer, const bound_result *b,
               const frame_answer *b_answer) {
    if (a->of != b->of || a->calculation != b->calculation || !a->answer != !b->answer) return 0;
    for (size_t i = 0; i < a->of->facts->field_count; i++)
        if (!same_field(a, a_answer, b, b_answer, i)) return 0;
    if (!a->answer) return 1;
    for (size_t list = 0; list < a->calculation->calculation->list_count; list++) {
        const size_t count = a->answer->lists[list].count;
        if (count != b->answer->lists[list].count) return 0;
        for (size_t i = 0; i < count; i++)
            if (!same_item(a->calculation, a->answer, b->answer, (int)list, i, i)) return 0;
    }
    return 1;
}
