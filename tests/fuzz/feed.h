/* Bytes made into arguments: what a fuzzer, the allocation sweep and the comparison of compilers all feed the library
 * with. Structs are built from the field facts, mostly in range; handles come from a pool of those made before. */
#ifndef FRAME_TESTS_FEED_H
#define FRAME_TESTS_FEED_H

#include <frame/frame.h>

#include "base/facts.h"

enum { FEED_HANDLES = 4, FEED_OUT = 8192 };

typedef struct feed_kind {
    const char *name;
    void (*release)(void *handle);
} feed_kind;

typedef struct feed {
    const unsigned char *bytes;
    size_t size, at;
    void **blocks; /* what structs hang on; let go by feed_end */
    size_t block_count, block_room;
    void *pool[128][FEED_HANDLES];
    uint64_t hash; /* of every status and figure that came back */
    size_t succeeded, refused, no_memory, swallowed;
    _Alignas(16) unsigned char out[FEED_OUT];
} feed;

typedef struct feed_call {
    const char *name;
    void (*run)(feed *f);
} feed_call;

/* Made from api.json by generate.py. */
extern const feed_call feed_calls[];
extern const size_t feed_call_count;
extern const feed_kind feed_kinds[];
extern const size_t feed_kind_count;

void feed_begin(feed *f, const unsigned char *bytes, size_t size);
void feed_end(feed *f);

unsigned feed_byte(feed *f);
size_t feed_below(feed *f, size_t limit);
double feed_number(feed *f);
const char *feed_text(feed *f);
const char *feed_path(feed *f);
int32_t feed_word(feed *f, const char *words);
/* An in-struct or element; an array of them. */
const void *feed_struct(feed *f, const char *name);
const void *feed_array(feed *f, const char *name, size_t *count);
const frame_struct *feed_facts(feed *f);
const frame_field *feed_field(feed *f);
const frame_calculation *feed_calculation(feed *f);

/* A handle of a kind; NULL when there is none yet. feed_take also takes it out of the pool. */
void *feed_handle(feed *f, int kind);
void *feed_take(feed *f, int kind);
/* After a call that makes a handle: keeps it, or sees to it that a refusal left the place alone. */
extern char feed_untouched;
#define FEED_UNTOUCHED ((void *)&feed_untouched)
void feed_made(feed *f, frame_status status, void *handle, int kind);

/* A place for an out-struct, filled with a pattern; and what came of it: a refusal must have left it alone, figures
 * must be finite, words known. */
void *feed_out(feed *f, size_t size);
void feed_judge(feed *f, frame_status status, const char *name, size_t size);
void feed_status(feed *f, frame_status status);
void feed_figure(feed *f, double value);
void feed_chars(feed *f, const char *chars);

/* Set by an allocator that has just failed; a call that then says ok swallowed it. */
extern _Thread_local int feed_starved;
extern _Thread_local size_t feed_input; /* which input runs, for the message */
/* Stops the program: a promise of the library is broken. */
void feed_broken(const char *format, ...) __attribute__((noreturn, format(printf, 1, 2)));

/* Runs one input: a few calls, each chosen and fed by the bytes. only: one function's name, or NULL for any. */
void feed_run(feed *f, const unsigned char *bytes, size_t size, const char *only);

#endif
