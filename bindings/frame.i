/* The one interface of libframe for every language: how each shape of C argument is given, how each answer comes back.
 *
 * Which functions there are, and which shapes they have, is in made.i, made from api.json. What a value, a result
 * object and an error are in a language is behind the BIND_ macros of that language's bind.h. Nothing here names a
 * function.
 */
%module frame

%{
#include "bound.h"
#include "bound_made.h"
#include "bind.h"

/* What a call that was given a handle does before its result goes out. */
#define FRAME_BIND_SETTLE(call)                        \
    if (bound_result_has_handle((call).result)) {      \
        BIND_OWN(call);                                \
        if (bound_result_settle((call).result)) {      \
            BIND_RAISE;                                \
            SWIG_fail;                                 \
        }                                              \
    }
%}

%include <stdint.i>
typedef int32_t frame_status;
typedef int32_t frame_bool;

/* -- the answer's status -- */
%typemap(out) frame_status {
    if ($1) {
        BIND_RAISE;
        SWIG_fail;
    }
    BIND_GIVE_NOTHING;
}
%typemap(out) void { BIND_GIVE_NOTHING; }
%typemap(out) double { BIND_GIVE_NUMBER($1); }
%typemap(out) size_t { BIND_GIVE_INTEGER((int64_t)$1); }
%typemap(out) int32_t { BIND_GIVE_INTEGER($1); }
%typemap(out) frame_bool { BIND_GIVE_BOOL($1); }
%typemap(out) const char * { BIND_GIVE_CHARS($1); }

/* -- plain values in -- */
%define FRAME_BIND_SCALAR(TYPE, TAKE, NOTHING)
%typemap(freearg) TYPE, TYPE OPTIONAL "" /* nothing of SWIG's own is taken */
%typemap(in) TYPE {
    const bound_value value = BIND_VALUE($input);
    if (TAKE) {
        BIND_RAISE;
        SWIG_fail;
    }
}
%typemap(in) TYPE OPTIONAL {
    const bound_value value = BIND_VALUE($input);
    if (value.kind == BOUND_NOTHING)
        $1 = NOTHING;
    else if (TAKE) {
        BIND_RAISE;
        SWIG_fail;
    }
}
%enddef
FRAME_BIND_SCALAR(double, bound_take_number("$1_name", bound_notation_of("$1_name"), "", &value, &$1), FRAME_NOT_GIVEN)
FRAME_BIND_SCALAR(int32_t, bound_take_integer("$1_name", "", &value, &$1), FRAME_NOT_GIVEN_INT)
FRAME_BIND_SCALAR(frame_bool, bound_take_bool("$1_name", &value, &$1), FRAME_NOT_GIVEN_INT)
FRAME_BIND_SCALAR(size_t, bound_take_size("$1_name", &value, &$1), 0)
FRAME_BIND_SCALAR(const char *, bound_check_text("$1_name", &value, (const char **)&$1), NULL)

%typemap(in) (const double *LIST, size_t COUNT) (BIND_ARENA arena = BIND_NO_ARENA) {
    const bound_value value = BIND_VALUE($input);
    BIND_OPEN(arena);
    if (bound_take_numbers(BIND_HOST, "$1_name", bound_notation_of("$1_name"), "", &value, (const double **)&$1, &$2,
                           BIND_ARENA_OF(arena))) {
        BIND_RAISE;
        SWIG_fail;
    }
}
%typemap(freearg) (const double *LIST, size_t COUNT) { BIND_CLOSE(arena$argnum); }

/* What comes back is made ready in "check", which runs when all that is given has been read: in Lua both use one stack. */

/* -- plain values out -- */
%typemap(in, numinputs=0) double * (double number) { $1 = &number; }
%typemap(argout) double * { BIND_GIVE_NUMBER(*$1); }
%typemap(in, numinputs=0) int32_t * (int32_t number) { $1 = &number; }
%typemap(argout) int32_t * { BIND_GIVE_INTEGER(*$1); }
%typemap(in, numinputs=0) frame_bool * (frame_bool number) { $1 = &number; }
%typemap(argout) frame_bool * { BIND_GIVE_BOOL(*$1); }

%typemap(in, numinputs=0) (char *CHARS, size_t SIZE) (char chars[512]) {
    $1 = chars;
    $2 = sizeof chars;
}
%typemap(argout) (char *CHARS, size_t SIZE) { BIND_GIVE_CHARS($1); }

%typemap(in, numinputs=0) frame_text * (BIND_TEXT text = BIND_NO_TEXT) ""
%typemap(check) frame_text * {
    if (!BIND_NEW_TEXT(text$argnum)) {
        BIND_RAISE;
        SWIG_fail;
    }
    $1 = BIND_TEXT_OF(text$argnum);
}
%typemap(argout) frame_text * { BIND_GIVE_CHARS(frame_text_chars($1)); }
%typemap(freearg) frame_text * { BIND_FREE_TEXT(text$argnum); }

/* -- words: frame_pen and its like, as texts -- */
%define FRAME_BIND_WORD(NAME)
typedef int32_t frame_##NAME;
FRAME_BIND_SCALAR(frame_##NAME,
    bound_take_word(BIND_HOST, "$1_name", NAME##_words_bound, &value, &$1), bound_first_word("NAME"))
%typemap(out) frame_##NAME { BIND_GIVE_CHARS(frame_word_text("NAME", $1)); }
%typemap(in, numinputs=0) frame_##NAME * (frame_##NAME number) { $1 = &number; }
%typemap(argout) frame_##NAME * { BIND_GIVE_CHARS(frame_word_text("NAME", *$1)); }
%enddef

/* -- structs: by name or in order -- */
%define FRAME_BIND_STRUCT(NAME)
%typemap(in) const frame_##NAME * (frame_##NAME object, BIND_ARENA arena = BIND_NO_ARENA) {
    const bound_value value = BIND_VALUE($input);
    BIND_OPEN(arena);
    if (bound_take_argument(BIND_HOST, "$1_name", &NAME##_bound, &value, &object, BIND_ARENA_OF(arena))) {
        BIND_RAISE;
        SWIG_fail;
    }
    $1 = &object;
}
%typemap(freearg) const frame_##NAME * { BIND_CLOSE(arena$argnum); }
%typemap(in) (const frame_##NAME *LIST, size_t COUNT) (void *items, BIND_ARENA arena = BIND_NO_ARENA) {
    const bound_value value = BIND_VALUE($input);
    BIND_OPEN(arena);
    if (bound_take_structs(BIND_HOST, "$1_name", &NAME##_bound, &value, &items, &$2, BIND_ARENA_OF(arena))) {
        BIND_RAISE;
        SWIG_fail;
    }
    $1 = items;
}
%typemap(freearg) (const frame_##NAME *LIST, size_t COUNT) { BIND_CLOSE(arena$argnum); }
%enddef

%define FRAME_BIND_RESULT(NAME)
%typemap(in, numinputs=0) (frame_##NAME *OUT, size_t SIZE) (bind_call call = BIND_NO_CALL) ""
%typemap(check) (frame_##NAME *OUT, size_t SIZE) {
    if (!BIND_NEW_RESULT(call$argnum, &NAME##_bound)) SWIG_fail;
    $1 = call$argnum.result->out;
    $2 = sizeof(frame_##NAME);
}
%typemap(argout) (frame_##NAME *OUT, size_t SIZE) {
    if (bound_result_own_texts(call$argnum.result)) {
        BIND_RAISE;
        SWIG_fail;
    }
    BIND_GIVE(call$argnum);
}
%typemap(freearg) (frame_##NAME *OUT, size_t SIZE) { BIND_END(call$argnum); }
%enddef

/* -- handles -- */
%define FRAME_BIND_HANDLE(NAME)
%typemap(in) frame_##NAME *, const frame_##NAME * {
    $1 = BIND_HANDLE($input, "$1_name", &NAME##_handle_bound);
    if (!$1) SWIG_fail;
}
%typemap(in, numinputs=0) frame_##NAME ** (frame_##NAME *made = NULL, bind_call call = BIND_NO_CALL) ""
%typemap(check) frame_##NAME ** {
    if (!BIND_NEW_HANDLE(call$argnum, &NAME##_handle_bound)) SWIG_fail;
    $1 = &made$argnum;
}
%typemap(argout) frame_##NAME ** {
    call$argnum.handle->pointer = *$1;
    BIND_SETTLE;
    BIND_GIVE(call$argnum);
}
%typemap(freearg) frame_##NAME ** { BIND_END(call$argnum); }
%enddef

%define FRAME_BIND_ANSWER(NAME)
%typemap(in) frame_##NAME *, const frame_##NAME * {
    $1 = (void *)BIND_ANSWER($input, "$1_name", &NAME##_calculation_bound);
    if (!$1) SWIG_fail;
}
%enddef

/* -- calculations: the values of the in-struct go in, a result object comes back -- */
%define FRAME_BIND_CALCULATION(NAME)
%typemap(in) (const frame_##NAME##_in *in, frame_##NAME##_out *out, size_t out_size, frame_working *working)
    (bind_call call = BIND_NO_CALL) {
    if (!BIND_BEGIN(call, $input, &NAME##_calculation_bound)) SWIG_fail;
    $1 = call.result->in;
    $2 = call.result->out;
    $3 = sizeof(frame_##NAME##_out);
    $4 = call.working;
}
%typemap(argout) (const frame_##NAME##_in *in, frame_##NAME##_out *out, size_t out_size, frame_working *working) {
    FRAME_BIND_SETTLE(call$argnum)
    BIND_GIVE(call$argnum);
}
%typemap(freearg) (const frame_##NAME##_in *in, frame_##NAME##_out *out, size_t out_size, frame_working *working) {
    BIND_END(call$argnum);
}
%rename(NAME) frame_##NAME##_sized;
frame_status frame_##NAME##_sized(const frame_##NAME##_in *in, frame_##NAME##_out *out, size_t out_size,
                                  frame_working *working);
%enddef

%define FRAME_BIND_SOLVE(NAME)
%typemap(in) (const frame_##NAME##_in *in, frame_##NAME **answer, frame_working *working)
    (frame_##NAME *made = NULL, bind_call call = BIND_NO_CALL) {
    if (!BIND_BEGIN(call, $input, &NAME##_calculation_bound)) SWIG_fail;
    $1 = call.result->in;
    $2 = &made;
    $3 = call.working;
}
%typemap(argout) (const frame_##NAME##_in *in, frame_##NAME **answer, frame_working *working) {
    bound_result_answer(call$argnum.result, (frame_answer *)*$2);
    FRAME_BIND_SETTLE(call$argnum)
    BIND_SETTLE;
    BIND_GIVE(call$argnum);
}
%typemap(freearg) (const frame_##NAME##_in *in, frame_##NAME **answer, frame_working *working) {
    BIND_END(call$argnum);
}
%rename(NAME) frame_##NAME##_solve;
BIND_LONG(frame_##NAME##_solve)
frame_status frame_##NAME##_solve(const frame_##NAME##_in *in, frame_##NAME **answer, frame_working *working);
%enddef

%include "bind.i"
%include "made.i"
