/* The one shape of all answers of varying length; the generated functions of each are thin names for these. */
#include "base/answer.h"

#include <stdio.h>

#include "base/error.h"

frame_answer *frame_answer_new(const frame_calculation *calculation) {
    frame_answer *answer = frame_take_zeroed(1, sizeof *answer);
    if (!answer) return NULL;
    answer->calculation = calculation;
    answer->owned.item_size = sizeof(frame_owned);
    answer->out = frame_take_zeroed(1, calculation->out->size);
    if (!answer->out) {
        frame_answer_free(answer);
        return NULL;
    }
    frame_struct_blank(calculation->out, answer->out);
    for (size_t i = 0; i < calculation->list_count; i++)
        answer->lists[i].item_size = calculation->lists[i].facts ? calculation->lists[i].facts->size : sizeof(double);
    return answer;
}

void frame_answer_free(frame_answer *answer) {
    if (!answer) return;
    for (size_t i = 0; i < FRAME_ANSWER_LISTS; i++) frame_array_give(&answer->lists[i]);
    for (size_t i = 0; i < answer->owned.count; i++) {
        const frame_owned *owned = &FRAME_ITEM(frame_owned, answer->owned, i);
        owned->release(owned->object);
    }
    frame_array_give(&answer->owned);
    frame_arena_give(&answer->arena);
    frame_give(answer->out);
    frame_give(answer);
}

void *frame_answer_add(frame_answer *answer, size_t list) {
    void *item = frame_array_push(&answer->lists[list], NULL);
    if (item)
        frame_struct_blank(answer->calculation->lists[list].facts, item);
    else
        answer->failed = 1; /* whatever the calculation makes of it, there is no answer */
    return item;
}

void *frame_answer_own(frame_answer *answer, void *object, void (*release)(void *object)) {
    const frame_owned owned = {object, release};
    if (frame_array_push(&answer->owned, &owned)) return object;
    release(object);
    return NULL;
}

int frame_answer_add_number(frame_answer *answer, size_t list, double number) {
    return frame_array_push(&answer->lists[list], &number) != NULL;
}

const double *frame_answer_numbers(const frame_answer *answer, size_t list, size_t *count) {
    if (count) *count = answer ? answer->lists[list].count : 0;
    return answer ? answer->lists[list].items : NULL;
}

const char *frame_answer_text(frame_answer *answer, const char *chars) {
    return frame_arena_text(&answer->arena, chars, &answer->failed);
}

static frame_status no_answer(void) {
    return frame_fail(FRAME_REQUIRED, "answer", "NULL", "an answer", "answer: NULL is not an answer");
}

frame_status frame_answer_result(const frame_answer *answer, void *out, size_t out_size) {
    if (!answer || !out) return no_answer();
    frame_struct_give(answer->calculation->out, answer->out, out, out_size);
    return FRAME_OK;
}

size_t frame_answer_count(const frame_answer *answer, size_t list) {
    return answer ? answer->lists[list].count : 0;
}

frame_status frame_answer_at(const frame_answer *answer, size_t list, size_t index, void *item, size_t item_size) {
    if (!answer || !item) return no_answer();
    if (index >= answer->lists[list].count) {
        char valid[48];
        snprintf(valid, sizeof valid, "0..%zu (count %zu)",
                 answer->lists[list].count ? answer->lists[list].count - 1 : 0, answer->lists[list].count);
        return frame_fail_number(FRAME_OUT_OF_RANGE, "index", (double)index, valid);
    }
    const frame_struct *facts = answer->calculation->lists[list].facts;
    frame_struct_give(facts, (const char *)answer->lists[list].items + index * facts->size, item, item_size);
    return FRAME_OK;
}
