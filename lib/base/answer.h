/* An answer whose length varies: the figures, the lists, and every text it hands out, in one handle. */
#ifndef FRAME_LIB_BASE_ANSWER_H
#define FRAME_LIB_BASE_ANSWER_H

#include "base/facts.h"
#include "base/memory.h"

enum { FRAME_ANSWER_LISTS = 12 };

struct frame_answer {
    const frame_calculation *calculation;
    void *out; /* the out-struct, of today's size */
    frame_array lists[FRAME_ANSWER_LISTS];
    frame_arena arena;
    frame_array owned; /* frame_owned: further objects that are freed with the answer */
    int failed;        /* a text could not be kept */
};

typedef struct frame_owned {
    void *object;
    void (*release)(void *object);
} frame_owned;

frame_answer *frame_answer_new(const frame_calculation *calculation);
void frame_answer_free(frame_answer *answer);
/* Appends an item to a list, blank but for size and id; NULL without memory. */
void *frame_answer_add(frame_answer *answer, size_t list);
/* Hands an object to the answer, which frees it with itself; released at once and NULL given without memory. */
void *frame_answer_own(frame_answer *answer, void *object, void (*release)(void *object));
/* Appends a number to a list of plain numbers; 0 without memory. */
int frame_answer_add_number(frame_answer *answer, size_t list, double number);
/* A copy of a text that lives as long as the answer. */
const char *frame_answer_text(frame_answer *answer, const char *chars);
#define FRAME_ANSWER_ITEM(T, answer, list, i) (((T *)(answer)->lists[list].items)[i])

frame_status frame_answer_result(const frame_answer *answer, void *out, size_t out_size);
const double *frame_answer_numbers(const frame_answer *answer, size_t list, size_t *count);
size_t frame_answer_count(const frame_answer *answer, size_t list);
frame_status frame_answer_at(const frame_answer *answer, size_t list, size_t index, void *item, size_t item_size);

#endif
