/** @file base.h
 * What every other header stands on: export marks, status codes, the error detail, the version,
 * the allocator, and the macros that declare a calculation.
 */
#ifndef FRAME_BASE_H
#define FRAME_BASE_H

#include <stddef.h>
#include <stdint.h>

#include <frame/version.h>

#if defined(__GNUC__) && !defined(_WIN32)
#define FRAME_API __attribute__((visibility("default")))
#else
#define FRAME_API
#endif

#ifdef __cplusplus
#define FRAME_BEGIN extern "C" {
#define FRAME_END }
#else
#define FRAME_BEGIN
#define FRAME_END
#endif

FRAME_BEGIN

/** Marks a number that was not given. It is finite on purpose: a NaN is always a mistake. */
#define FRAME_NOT_GIVEN (-1e300)
/** Marks a whole number, word or yes/no that was not given. */
#define FRAME_NOT_GIVEN_INT INT32_MIN

/** Tells whether a bit, named by its number in an enum of cautions, stands in a set. */
#define FRAME_HAS(set, bit_number) ((((uint64_t)(set)) >> (unsigned)(bit_number)) & 1u)

/**
 * What a call came to. 0 is success. The hundreds are classes; numbers never change once released.
 * A number you do not know means "failed": read frame_error_text().
 */
typedef int32_t frame_status;
enum frame_status_values {
    FRAME_OK = 0,               /**< "ok". The call did what it was asked. */

    FRAME_NOT_INITIALISED = 100, /**< "not initialised". The struct was not set up by its init function. */
    FRAME_NEWER_HEADER = 101,   /**< "newer header". The struct was made with a header newer than this library. */
    FRAME_REQUIRED = 102,       /**< "required". A required field was not given. */
    FRAME_OUT_OF_RANGE = 103,   /**< "out of range". A value lies outside its field's range. */
    FRAME_NOT_A_NUMBER = 104,   /**< "not a number". A NaN or an infinity was given. */
    FRAME_UNKNOWN_NAME = 105,   /**< "unknown name". A word is not one of those the field knows. */
    FRAME_UNKNOWN_FIELD = 106,  /**< "unknown field". There is no field of that name. */
    FRAME_UNREADABLE = 107,     /**< "unreadable". A text is not in the notation expected. */
    FRAME_AMBIGUOUS = 108,      /**< "ambiguous". A text can be read in two ways. */
    FRAME_CONFLICT = 109,       /**< "conflict". Two fields contradict each other. */
    FRAME_WRONG_TYPE = 110,     /**< "wrong type". A value is of a type the field does not take. */

    FRAME_IMPOSSIBLE = 200,     /**< "impossible". The inputs describe something that cannot exist. */
    FRAME_UNSTABLE = 201,       /**< "unstable". The structure is a mechanism. */

    FRAME_OUTSIDE_SCOPE = 300,  /**< "outside scope". The rule or table asked for does not cover this case. */
    FRAME_NO_VALUE = 301,       /**< "no value". The table has no value for this combination. */
    FRAME_REFUSED = 302,        /**< "refused". An answer would be unsafe without more than was given. */

    FRAME_NO_MEMORY = 400,      /**< "no memory". The allocator gave nothing. */
    FRAME_TOO_LARGE = 401,      /**< "too large". The request exceeds a stated limit. */
    FRAME_BUFFER_TOO_SMALL = 402, /**< "buffer too small". The caller's buffer cannot hold the answer. */
    FRAME_NOT_WRITTEN = 403,    /**< "not written". A file could not be written; the old one, if any, is whole. */
    FRAME_ALREADY_USED = 404,   /**< "already used". The allocator can be set only before the first use. */

    FRAME_INTERNAL = 900        /**< "internal". A mistake of the library's own; please report it. */
};

/** Gives the short name of a status ("out of range"); "unknown status" for a number it does not know. Never NULL. */
FRAME_API const char *frame_status_name(frame_status status);
/** Gives one sentence on what a status means. Never NULL. */
FRAME_API const char *frame_status_text(frame_status status);
/** Walks the known statuses: the status at a place in the list, or FRAME_INTERNAL past its end. */
FRAME_API frame_status frame_status_at(size_t index);
/** Counts the known statuses. */
FRAME_API size_t frame_status_count(void);

/*
 * The error detail. It belongs to the calling thread, is set by a call that fails and is left alone by one that
 * succeeds. The texts live until the next failing call of the same thread.
 */
/** Gives the status of the last failure on this thread, FRAME_OK when there was none. */
FRAME_API frame_status frame_error_status(void);
/** Gives the path of the field at fault ("pieces[3].length_in"), or "". */
FRAME_API const char *frame_error_field(void);
/** Gives the value that was refused, as text, or "". */
FRAME_API const char *frame_error_value(void);
/** Says what would have been valid, or "". */
FRAME_API const char *frame_error_valid(void);
/** Gives the whole message in one line: "spacing_in: 0 is not in >0..48". Never NULL. */
FRAME_API const char *frame_error_text(void);
/** Forgets the last failure of this thread. */
FRAME_API void frame_error_clear(void);

/** Gives the library's version as text ("0.1.0"). */
FRAME_API const char *frame_version(void);
/** Gives the library's version as one number: major * 1000000 + minor * 1000 + patch. */
FRAME_API int32_t frame_version_number(void);

/** The functions the library takes its memory from. All four places are copied. */
typedef struct frame_allocator {
    void *(*allocate)(void *user, size_t size);               /**< Gives size bytes or NULL. */
    void *(*reallocate)(void *user, void *block, size_t size); /**< Resizes; NULL leaves the block as it was. */
    void (*release)(void *user, void *block);                 /**< Takes a block back; NULL does nothing. */
    void *user;                                               /**< Handed to each of the three. */
} frame_allocator;

/** Sets the allocator. Only before the library first takes memory; later FRAME_ALREADY_USED. */
FRAME_API frame_status frame_allocator_set(const frame_allocator *allocator);

/** A true or false in a struct: 0 or 1. */
typedef int32_t frame_bool;

/** Where a table's figure is known from; a result carries the worst of those it rests on. */
typedef int32_t frame_known;
enum frame_known_values {
    FRAME_KNOWN_READ = 1,      /**< "read". Seen in the named publication or an official reprint of it. */
    FRAME_KNOWN_COMPUTED = 2,  /**< "computed". By the publication's stated rules, agreeing with the cells known. */
    FRAME_KNOWN_USER = 3,      /**< "user". Given by the caller. */
    FRAME_KNOWN_SECONDARY = 4, /**< "secondary". Seen in a second-hand copy of the named publication. */
    FRAME_KNOWN_MEMORY = 5     /**< "memory". Recalled; no text seen: check it before relying on it. */
};

/** The record of a calculation; see working.h. */
typedef struct frame_working frame_working;
/** A display list; see drawing.h. */
typedef struct frame_drawing frame_drawing;
/** A text that grows; see text.h. */
typedef struct frame_text frame_text;

/**
 * Declares a calculation X: the structs frame_X_in and frame_X_out stand before it.
 *
 *   frame_status frame_X_in_init(frame_X_in *in);
 *   frame_status frame_X(const frame_X_in *in, frame_X_out *out, frame_working *working);
 *
 * init marks every field "not given". The call checks every field, applies the documented defaults (and lists them in
 * out->assumed), and on failure leaves *out untouched. working may be NULL. Both are inline over sized forms, so that a
 * program built with older, smaller structs goes on working with a newer library.
 */
#define FRAME_CALCULATION(X)                                                                                          \
    FRAME_API frame_status frame_##X##_in_init_sized(frame_##X##_in *in, size_t in_size);                             \
    FRAME_API frame_status frame_##X##_sized(const frame_##X##_in *in, frame_##X##_out *out, size_t out_size,         \
                                             frame_working *working);                                                 \
    static inline frame_status frame_##X##_in_init(frame_##X##_in *in) {                                              \
        return frame_##X##_in_init_sized(in, sizeof *in);                                                             \
    }                                                                                                                 \
    static inline frame_status frame_##X(const frame_##X##_in *in, frame_##X##_out *out, frame_working *working) {    \
        return frame_##X##_sized(in, out, sizeof *out, working);                                                      \
    }                                                                                                                 \
    typedef struct frame_##X##_in frame_##X##_in

/** Declares the init function of an element struct, as FRAME_CALCULATION does for an in-struct. */
#define FRAME_ELEMENT(X)                                                                                              \
    FRAME_API frame_status frame_##X##_init_sized(frame_##X *element, size_t size);                                   \
    static inline frame_status frame_##X##_init(frame_##X *element) {                                                 \
        return frame_##X##_init_sized(element, sizeof *element);                                                      \
    }                                                                                                                 \
    typedef struct frame_##X frame_##X

/**
 * Declares a calculation X whose answer varies in length. frame_X is an opaque handle.
 *
 *   frame_status frame_X_solve(const frame_X_in *in, frame_X **answer, frame_working *working);
 *   frame_status frame_X_result(const frame_X *answer, frame_X_out *out);   the figures of fixed number
 *   void         frame_X_free(frame_X *answer);                             NULL is allowed
 *
 * The handle owns every text and list it hands out, until it is freed.
 */
#define FRAME_ANSWER(X)                                                                                               \
    typedef struct frame_##X frame_##X;                                                                               \
    FRAME_API frame_status frame_##X##_in_init_sized(frame_##X##_in *in, size_t in_size);                             \
    FRAME_API frame_status frame_##X##_solve(const frame_##X##_in *in, frame_##X **answer, frame_working *working);   \
    FRAME_API frame_status frame_##X##_result_sized(const frame_##X *answer, frame_##X##_out *out, size_t out_size);  \
    FRAME_API void frame_##X##_free(frame_##X *answer);                                                               \
    static inline frame_status frame_##X##_in_init(frame_##X##_in *in) {                                              \
        return frame_##X##_in_init_sized(in, sizeof *in);                                                             \
    }                                                                                                                 \
    static inline frame_status frame_##X##_result(const frame_##X *answer, frame_##X##_out *out) {                    \
        return frame_##X##_result_sized(answer, out, sizeof *out);                                                    \
    }                                                                                                                 \
    typedef struct frame_##X frame_##X

/**
 * Declares a list in the answer of X: count and get. Items are structs frame_X_ITEM; PLURAL is the list's name in Python
 * and Lua. The texts in an item live as long as the answer.
 */
#define FRAME_ANSWER_LIST(X, ITEM, PLURAL)                                                                            \
    FRAME_API size_t frame_##X##_##ITEM##_count(const frame_##X *answer);                                             \
    FRAME_API frame_status frame_##X##_##ITEM##_at_sized(const frame_##X *answer, size_t index,                       \
                                                         frame_##X##_##ITEM *item, size_t item_size);                 \
    static inline frame_status frame_##X##_##ITEM##_at(const frame_##X *answer, size_t index,                         \
                                                       frame_##X##_##ITEM *item) {                                    \
        return frame_##X##_##ITEM##_at_sized(answer, index, item, sizeof *item);                                      \
    }                                                                                                                 \
    typedef struct frame_##X frame_##X

/**
 * Declares a list of plain numbers in the answer of X: a pointer that lives as long as the answer, and their count.
 * NAME is the list's name in Python and Lua too.
 */
#define FRAME_ANSWER_NUMBERS(X, NAME)                                                                                 \
    FRAME_API const double *frame_##X##_##NAME(const frame_##X *answer, size_t *count);                               \
    typedef struct frame_##X frame_##X

/**
 * Declares another view of a calculation X: the same in-struct, answered by a handle of kind VIEW (a drawing, a stick).
 * In Python and Lua it is a method of X's result.
 *
 *   frame_status frame_X_VIEW(const frame_X_in *in, frame_VIEW **view);
 */
#define FRAME_VIEW(X, VIEW)                                                                                           \
    FRAME_API frame_status frame_##X##_##VIEW(const frame_##X##_in *in, frame_##VIEW **view);                         \
    typedef struct frame_##X##_in frame_##X##_in

FRAME_END

#endif
