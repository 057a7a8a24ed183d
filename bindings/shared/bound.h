/* What Python and Lua share: how values of a language fill a struct of the library, and what a result object holds.
 * A language says what a value is (bound_value) and walks its own lists; everything else is here. */
#ifndef FRAME_BINDINGS_BOUND_H
#define FRAME_BINDINGS_BOUND_H

#include <frame/frame.h>

#include "base/answer.h"
#include "base/error.h"
#include "base/facts.h"
#include "base/memory.h"

/* How a text is read where a number is wanted. */
typedef enum bound_notation { BOUND_PLAIN, BOUND_LENGTH, BOUND_SLOPE, BOUND_ANGLE } bound_notation;

/* What a binding adds to the facts of a field. */
typedef struct bound_field {
    bound_notation notation;
    int words;                          /* place of its list in bound_words; -1 without one */
    const struct bound_struct *element; /* of a list */
} bound_field;

typedef struct bound_struct {
    const frame_struct *facts;
    const bound_field *fields;
    const short *given; /* the fields that are given, by their place */
    int given_count;
    int index;  /* its place in bound_structs */
    int handle; /* the first field that holds a handle; -1 without one */
} bound_struct;

typedef struct bound_calculation {
    const frame_calculation *calculation;
    const bound_struct *in, *out;
    const bound_struct *const *lists; /* the items of an answer's lists; NULL for plain numbers */
    int index;
} bound_calculation;

/* A list that belongs to a handle: stick.marks. */
typedef struct bound_list {
    const char *plural;
    const bound_struct *item;
    size_t (*count)(const void *handle);
    frame_status (*at)(const void *handle, size_t index, void *item, size_t size);
} bound_list;

typedef struct bound_handle {
    const char *name, *meaning;
    void (*release)(void *handle);
    const bound_list *lists;
    int list_count, index;
} bound_handle;

/* Made from api.json. */
extern const bound_struct *const bound_structs[];
extern const int bound_struct_count;
extern const bound_calculation *const bound_calculations[];
extern const int bound_calculation_count;
extern const bound_handle *const bound_handles[];
extern const int bound_handle_count;
extern const frame_words *const bound_words[];
extern const int bound_words_count;

const bound_struct *bound_struct_of(const frame_struct *facts);
const bound_calculation *bound_calculation_find(const char *name);
const bound_handle *bound_handle_find(const char *name);

/* -- values in -- */

typedef enum bound_kind {
    BOUND_NOTHING, /* not given */
    BOUND_NUMBER,
    BOUND_INTEGER,
    BOUND_BOOL,
    BOUND_TEXT,
    BOUND_MANY, /* a list, or a table of names and values */
    BOUND_OTHER
} bound_kind;

typedef struct bound_value {
    bound_kind kind;
    double number; /* of an integer too */
    int64_t integer;
    const char *text; /* UTF-8, not ended by zero where length says less */
    size_t length;
    const void *native; /* the language's own handle on it */
    const char *type;   /* its type in the language's words, for messages */
} bound_value;

/* A place in a list (from 0), or the name of an entry of a table. */
typedef struct bound_key {
    size_t place;
    const char *name;
} bound_key;

typedef frame_status (*bound_visit)(void *to, const bound_key *key, const bound_value *value);

typedef struct bound_host {
    void *state;
    /* Calls visit for each entry until it fails. */
    frame_status (*walk)(const struct bound_host *host, const bound_value *value, bound_visit visit, void *to);
    /* Counts the places of a list; named entries are not counted but *named is set when there are any. */
    size_t (*count)(const struct bound_host *host, const bound_value *value, int *named);
    /* The number of a word, from what the language remembers of earlier look-ups; 0 when it remembers none. */
    int (*recall)(const struct bound_host *host, int words, const bound_value *value, int32_t *number);
    void (*remember)(const struct bound_host *host, int words, const bound_value *value, int32_t number);
    /* The pointer of a handle of this kind; NULL when the value is none. */
    const void *(*handle)(const struct bound_host *host, const bound_value *value, const bound_handle *kind);
} bound_host;

/* Puts a value into a field of an object that init has set up. What must outlive the call is copied into the arena. */
frame_status bound_take_field(const bound_host *host, const bound_struct *of, size_t field, const bound_value *value,
                              void *object, frame_arena *arena);
/* Fills a struct from a list (its fields in order) or a table (by name). */
frame_status bound_take_struct(const bound_host *host, const bound_struct *of, const bound_value *value, void *object,
                               frame_arena *arena);
/* Puts one entry of such a table; an unknown name fails with the nearest. */
frame_status bound_take_entry(const bound_host *host, const bound_struct *of, const bound_key *key,
                              const bound_value *value, void *object, frame_arena *arena);
/* Sets a struct up as its init function does. */
void bound_blank(const bound_struct *of, void *object);

/* Single values, named in messages as stated. */
frame_status bound_take_number(const char *name, bound_notation notation, const char *valid, const bound_value *value,
                               double *into);
frame_status bound_take_integer(const char *name, const char *valid, const bound_value *value, int32_t *into);
frame_status bound_take_bool(const char *name, const bound_value *value, int32_t *into);
frame_status bound_take_text(const char *name, const bound_value *value, const char **into, frame_arena *arena);
/* The same without a copy: for a text that ends by a zero and outlives the call. */
frame_status bound_check_text(const char *name, const bound_value *value, const char **into);
frame_status bound_take_size(const char *name, const bound_value *value, size_t *into);
frame_status bound_take_word(const bound_host *host, const char *name, int words, const bound_value *value,
                             int32_t *into);
/* The first word of a list. */
int32_t bound_first_word(const char *name);
/* A struct as an argument: a list or a table of its fields; nothing leaves every field not given. */
frame_status bound_take_argument(const bound_host *host, const char *name, const bound_struct *of,
                                 const bound_value *value, void *object, frame_arena *arena);
frame_status bound_take_structs(const bound_host *host, const char *name, const bound_struct *of,
                                const bound_value *value, void **items, size_t *count, frame_arena *arena);
frame_status bound_take_numbers(const bound_host *host, const char *name, bound_notation notation, const char *valid,
                                const bound_value *value, const double **numbers, size_t *count, frame_arena *arena);
/* How a plain argument of that name is read. */
bound_notation bound_notation_of(const char *name);
frame_status bound_unknown_field(const bound_struct *of, const char *name);

/* -- results out -- */

/* What a result object holds. */
typedef struct bound_result {
    const bound_struct *of;               /* what out is */
    const bound_calculation *calculation; /* what it came from; NULL for an item of a handle */
    frame_answer *answer;                 /* owned, of a result whose length varies */
    frame_arena arena;                    /* the lists and texts of in; texts of out where it was made from values */
    void *in;                             /* NULL without one */
    void *out;
    char *texts;     /* texts of out copied from a handle */
    int list, place; /* which item of its answer it is; list -1 for no item */
} bound_result;

void bound_result_release(bound_result *result);
/* Hands an answer over to its result. */
void bound_result_answer(bound_result *result, frame_answer *answer);
/* Copies the texts of out, whose owner may change them. */
frame_status bound_result_own_texts(bound_result *result);
/* Whether a handle was given to the call. Then the result is settled after it: it forgets the handle, which may be
 * freed before the result is, and keeps its own copies of the texts. */
int bound_result_has_handle(const bound_result *result);
frame_status bound_result_settle(bound_result *result);
/* Finds a list of the answer by its plural; -1 without one. */
int bound_list_find(const bound_calculation *calculation, const char *plural);
/* The part of an answer's list a range field of an item names, never beyond the list. */
typedef struct bound_span {
    int list;
    size_t first, count;
} bound_span;
bound_span bound_range(const bound_result *result, const frame_answer *answer, size_t field);

typedef enum bound_worth {
    BOUND_WORTH_NOTHING,
    BOUND_WORTH_NUMBER,
    BOUND_WORTH_INTEGER,
    BOUND_WORTH_BOOL,
    BOUND_WORTH_TEXT,
    BOUND_WORTH_BITS,
    BOUND_WORTH_RANGE,
    BOUND_WORTH_LIST
} bound_worth;
/* What a field of a result is worth: its kind, with the value where it is plain. A word is its text. */
typedef struct bound_given {
    bound_worth worth;
    double number;
    int32_t integer;
    const char *text;
    uint64_t bits;
} bound_given;
bound_given bound_read(const bound_struct *of, size_t field, const void *object);

/* Walks the bits of a field: the short name and the sentence of each, in order. Gives 0 past the last; *bit begins at
 * 0. */
int bound_bit(const bound_result *result, size_t field, int *bit, const char **name, char *sentence, size_t size);
/* The fields whose bits are called NAMES ("caution_names" is of "cautions"); -1 when there is none. */
int bound_names_field(const bound_struct *of, const char *names);

/* Whether two results say the same. */
int bound_same(const bound_result *a, const frame_answer *a_answer, const bound_result *b,
               const frame_answer *b_answer);
/* Writes a result to read; an answer with its lists. */
frame_status bound_result_text(const bound_result *result, frame_text *into);
/* Writes what a calculation, word list or struct is for, and its fields. */
frame_status bound_help(const char *name, frame_text *into);

/* -- memory -- */

/* Installs the allocator that counts. Once, before anything else. */
void bound_count_memory(void);
/* Blocks the library has taken and not given back. */
long bound_live_blocks(void);
long bound_live_bytes(void);

#endif
