/** @file fields.h
 * The facts about every struct of the library at run time: what fields it has, what they mean, in which unit and
 * range, and what stands in for one that is not given. Enough to build a form for any calculation, or a binding.
 */
#ifndef FRAME_FIELDS_H
#define FRAME_FIELDS_H

#include <frame/base.h>

FRAME_BEGIN

/** What a field holds. */
typedef int32_t frame_field_kind;
enum frame_field_kind_values {
    FRAME_FIELD_NUMBER = 1,  /**< "number". A double. */
    FRAME_FIELD_INTEGER = 2, /**< "integer". An int32_t. */
    FRAME_FIELD_WORD = 3,    /**< "word". An int32_t that stands for a word of a list: see frame_word_find. */
    FRAME_FIELD_BOOL = 4,    /**< "bool". An int32_t, 0 or 1. */
    FRAME_FIELD_TEXT = 5,    /**< "text". A const char *, UTF-8. */
    FRAME_FIELD_LIST = 6,    /**< "list". A pointer to element structs; a size_t count stands at count_offset. */
    FRAME_FIELD_NUMBERS = 7, /**< "numbers". A pointer to doubles; a size_t count stands at count_offset. */
    FRAME_FIELD_BITS = 8,    /**< "bits". A uint64_t set; words names the list its bits stand in. */
    FRAME_FIELD_RANGE = 9,   /**< "range". A uint32_t first index; a uint32_t count follows; words names the answer's list. */
    FRAME_FIELD_HANDLE = 10, /**< "handle". A pointer to something the library made for you; words names what. Optional. */
    FRAME_FIELD_WORDS = 11   /**< "words". A pointer to int32_t, each for a word of a list; a size_t count stands at count_offset. */
};

/** Whether a field must be given. */
typedef int32_t frame_field_need;
enum frame_field_need_values {
    FRAME_FIELD_REQUIRED = 1, /**< "required". Without it there is no answer. */
    FRAME_FIELD_OPTIONAL = 2, /**< "optional". May be left out. */
    FRAME_FIELD_DEFAULT = 3,  /**< "default". Something stands in for it, and the result's assumed says so. */
    FRAME_FIELD_RESULT = 4    /**< "result". Set by the library. */
};

/** A struct of the library. Opaque; lives as long as the program. */
typedef struct frame_struct frame_struct;

/** One field. Read it through the pointer handed out; later versions add members at the end. */
typedef struct frame_field {
    const char *name;          /**< "spacing_in". */
    const char *unit;          /**< "in", "psi", ..., "" without one. */
    const char *meaning;       /**< One sentence or more. */
    const char *valid;         /**< What may be given, as text: ">0..48". */
    const char *fallback_text; /**< What stands in when it is not given, as text; "" if nothing does. */
    const char *words;         /**< The list its word or bits come from, or what handle it is; "" for others. */
    const frame_struct *element; /**< What a list is made of; NULL for others. */
    double low;                /**< Lower bound of a number. */
    double high;               /**< Upper bound of a number. */
    double fallback;           /**< The default of a number, integer or word; FRAME_NOT_GIVEN without one. */
    int32_t kind;              /**< A frame_field_kind. */
    int32_t need;              /**< A frame_field_need. */
    int32_t low_open;          /**< 1 when low itself is refused. */
    int32_t high_open;         /**< 1 when high itself is refused. */
    uint32_t offset;           /**< Where it stands in the struct. */
    uint32_t count_offset;     /**< Where a list's count stands. */
    int32_t assumed_bit;       /**< Its bit in the result's assumed; -1 for a field without a default. */
    int32_t spare;             /**< Zero. */
} frame_field;

/** Finds a struct by name, without the prefix ("joist_span_in"). NULL when there is none. */
FRAME_API const frame_struct *frame_struct_find(const char *name);
/** Counts all structs with facts. */
FRAME_API size_t frame_struct_count(void);
/** Gives a struct by its place in the list; NULL past the end. */
FRAME_API const frame_struct *frame_struct_at(size_t index);
/** Gives a struct's name. */
FRAME_API const char *frame_struct_name(const frame_struct *facts);
/** Gives what a struct is for. */
FRAME_API const char *frame_struct_meaning(const frame_struct *facts);
/** Gives a struct's size in bytes as this library knows it. */
FRAME_API size_t frame_struct_size(const frame_struct *facts);
/** Gives the mark that stands in struct_id. */
FRAME_API uint32_t frame_struct_id(const frame_struct *facts);
/** Counts a struct's fields (without struct_size, struct_id and spares). */
FRAME_API size_t frame_field_count(const frame_struct *facts);
/** Gives a field by place; NULL past the end. */
FRAME_API const frame_field *frame_field_at(const frame_struct *facts, size_t index);
/** Finds a field by name; NULL when there is none. */
FRAME_API const frame_field *frame_field_find(const frame_struct *facts, const char *name);
/** Gives the name of the field nearest to a misspelt one, or NULL when none is near. */
FRAME_API const char *frame_field_nearest(const frame_struct *facts, const char *name);
/** Sets a struct up as its init function does. size is the caller's sizeof. FRAME_NEWER_HEADER when it is larger than known. */
FRAME_API frame_status frame_struct_init(const frame_struct *facts, void *object, size_t size);

/** Finds the number a word stands for in a list of words ("joist_use", "species", ...), in any spelling the list knows.
 * FRAME_UNKNOWN_NAME names the nearest. */
FRAME_API frame_status frame_word_find(const char *words, const char *text, int32_t *value);
/** Gives the usual word for a number, or NULL when the list has none. */
FRAME_API const char *frame_word_text(const char *words, int32_t value);
/** Gives the sentence that explains a word, or "". */
FRAME_API const char *frame_word_meaning(const char *words, int32_t value);
/** Counts a list of words; 0 for an unknown list. */
FRAME_API size_t frame_word_count(const char *words);
/** Gives the number of the word at a place in the list; FRAME_NOT_GIVEN_INT past the end. */
FRAME_API int32_t frame_word_at(const char *words, size_t index);

/** Writes a result as a block to read: each figure with its unit (lengths in tape notation too), what was assumed, the
 * cautions, what was not checked. out is any out-struct or item of the library; its struct_id tells which. */
FRAME_API frame_status frame_result_text(const void *out, frame_text *into);

/** Writes the sentence for a default that was used: "spacing_in = 16 in: Spacing on centres." */
FRAME_API frame_status frame_assumed_text(const frame_field *field, frame_text *into);

/** A calculation, by name, for engines that call any of them. Opaque; lives as long as the program. */
typedef struct frame_calculation frame_calculation;
/** Finds a calculation by name ("joist_span"); NULL when there is none. */
FRAME_API const frame_calculation *frame_calculation_find(const char *name);
/** Counts the calculations. */
FRAME_API size_t frame_calculation_count(void);
/** Gives a calculation by place; NULL past the end. */
FRAME_API const frame_calculation *frame_calculation_at(size_t index);
/** Gives a calculation's name. */
FRAME_API const char *frame_calculation_name(const frame_calculation *calculation);
/** Gives the facts of its in-struct. */
FRAME_API const frame_struct *frame_calculation_in(const frame_calculation *calculation);
/** Gives the facts of its out-struct. */
FRAME_API const frame_struct *frame_calculation_out(const frame_calculation *calculation);

/** A column of a batch: one field for every row. */
typedef struct frame_batch_column {
    const char *field; /**< The field's name. */
    void *data;        /**< Its first value: double for a number, int32_t for integers, words and yes/no, uint64_t for bits. */
    size_t stride;     /**< Bytes from one row's value to the next; 0 gives every row the same. */
} frame_batch_column;

/** Runs a calculation over many rows: row i takes a copy of the in-struct in, with the fields of in_columns replaced, and
 * its answer goes to out_columns and its status to statuses[i] (NULL: not wanted). A row that fails leaves its out values
 * as FRAME_NOT_GIVEN (words and integers: FRAME_NOT_GIVEN_INT). Takes no memory. Returns FRAME_OK when the rows were run,
 * whatever each came to; an unknown field or calculation is an error. */
FRAME_API frame_status frame_batch(const frame_calculation *calculation, const void *in,
                                   const frame_batch_column *in_columns, size_t in_count,
                                   const frame_batch_column *out_columns, size_t out_count,
                                   size_t rows, frame_status *statuses);

FRAME_END

#endif
