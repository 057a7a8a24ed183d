/* The field facts inside the library: what the generated tables are made of, and what reads them. */
#ifndef FRAME_LIB_BASE_FACTS_H
#define FRAME_LIB_BASE_FACTS_H

#include <string.h>

#include <frame/fields.h>

struct frame_struct {
    const char *name, *meaning;
    const frame_field *fields;
    size_t field_count;
    uint32_t size, id;
    const void *blank; /* what init writes; NULL for structs that only come out */
};

typedef struct frame_word {
    int32_t value;
    const char *word, *others, *meaning; /* others: further spellings, one a line */
} frame_word;

/* A list of words: either a table, or the functions of a room that keeps one (species, grades, sizes). */
typedef struct frame_words {
    const char *name;
    const frame_word *table;
    size_t table_count;
    frame_status (*find)(const char *text, int32_t *value);
    const char *(*text)(int32_t value);
    size_t (*count)(void);
    int32_t (*at)(size_t index);
} frame_words;

typedef struct frame_answer frame_answer;
typedef struct frame_answer_list {
    const char *item, *plural;
    const frame_struct *facts; /* NULL: a list of plain numbers */
} frame_answer_list;
typedef struct frame_view {
    const char *name;
    frame_status (*make)(const void *in, void **view);
} frame_view;

/* What checked gives where each row has to be a call of its own. */
#define FRAME_RUN_ALONE ((frame_status)-1)

struct frame_columns;
struct frame_calculation {
    const char *name, *meaning;
    const frame_struct *in, *out;
    frame_status (*run)(const void *in, void *out, size_t out_size, frame_working *working); /* a fixed answer */
    frame_status (*solve)(const void *in, frame_answer **answer, frame_working *working);    /* or one that varies */
    const frame_answer_list *lists;
    size_t list_count;
    const frame_view *views;
    size_t view_count;
    /* Of a fixed answer, for rows of columns: reads an in-struct, checking it and applying its defaults; and computes from one that was
     * read, without a working. out has today's size, and may be written to even where it fails. */
    frame_status (*read)(const void *in, void *read, uint64_t *assumed);
    frame_status (*checked)(const void *read, uint64_t assumed, void *out);
    /* A way over many rows at once (base/columns.h), NULL where there is none: works through the rows from a given one on
     * as far as all in sight is plainly in order, and gives how many that were; 0 where not even one. */
    size_t (*columns)(const struct frame_columns *all, size_t from);
};

/* All there is, from every room; made by the generator and joined at link time, so that base need not know the rooms.
 */
typedef struct frame_registry {
    const frame_struct *const *structs;
    size_t struct_count;
    const frame_words *const *words;
    size_t words_count;
    const frame_calculation *const *calculations;
    size_t calculation_count;
} frame_registry;
extern const frame_registry frame_all;

const frame_struct *frame_struct_by_id(uint32_t id);
const frame_words *frame_words_find(const char *name);

/* Copies a caller's struct of another size into one of today's: fields it lacks read as not given. Fails for a struct
 * that was never initialised, and for one from a newer header. */
frame_status frame_struct_widen(const frame_struct *facts, const void *in, void *today);
/* Says which field of a struct is at fault, after the straight-line validation found that one is. */
frame_status frame_struct_explain(const frame_struct *facts, const void *in);
/* Checks a list's pointer, count, and, for flat numbers, each of them. */
frame_status frame_struct_list(const frame_struct *facts, const char *field, const void *in, double least, double most);
/* Copies a result out, as far as the caller's struct reaches, and marks it with size and id. */
void frame_struct_give(const frame_struct *facts, const void *result, void *out, size_t out_size);
/* FRAME_IMPOSSIBLE, naming the figure, when one of a result is infinite or no number: what was given, each in its range, was
 * together too extreme to work with. */
frame_status frame_struct_finite(const frame_struct *facts, const void *result);
/* Sets every figure of an out-struct or item to "not given". */
void frame_struct_blank(const frame_struct *facts, void *out);
/* The nearest of some words to a misspelt one, NULL when none is near. */
typedef struct frame_nearest {
    const char *wanted, *best;
    int distance;
} frame_nearest;
void frame_nearest_try(frame_nearest *nearest, const char *candidate);

/* Whether the number at a place was given. Its bits are compared: quicker than numbers, and the same, for no other bits mean
 * this one. */
static inline int frame_given_at(const double *place) {
    const double none = FRAME_NOT_GIVEN;
    uint64_t bits, none_bits;
    memcpy(&bits, place, sizeof bits);
    memcpy(&none_bits, &none, sizeof none_bits);
    return bits != none_bits;
}

static inline int frame_given(double value) {
    return frame_given_at(&value);
}

#define FRAME_BIT(number) (UINT64_C(1) << (number))

#endif
