/* Lua's side of the shared interface: its userdata, its values, its errors, and the BIND_ macros of frame.i.
 *
 * Lua's errors jump. So whatever C takes during a call belongs to a userdata on the stack before anything can jump, and
 * a failure is first put into a table, then cleaned up after, and raised last. */
#ifndef FRAME_BINDINGS_LUA_BIND_H
#define FRAME_BINDINGS_LUA_BIND_H

#include <lauxlib.h>
#include <lua.h>

#include "bound.h"

/* A result, an answer, or an item of one (user value 1: the answer it belongs to). in and out stand behind it. */
typedef struct lua_result {
    bound_result result;
    const struct lua_result *owner;
} lua_result;

/* Part of a list of an answer (user value 1: the answer), or all of a list of a handle. */
typedef struct lua_list {
    const lua_result *owner;
    int list;
    size_t first, count;
} lua_list;

typedef struct lua_handle {
    void *pointer;
    const bound_handle *kind;
} lua_handle;

/* What a call takes and gives back at its end. */
typedef struct lua_scratch {
    frame_arena arena;
    frame_text *text;
} lua_scratch;

/* One call in progress; place: where its userdata stands on the stack. */
typedef struct bind_call {
    int place;
    bound_result *result;
    lua_handle *handle;
    frame_working *working;
} bind_call;

#define BIND_RESULT_TYPE "frame.result"
#define BIND_LIST_TYPE "frame.list"
#define BIND_HANDLE_TYPE "frame.handle"
#define BIND_SCRATCH_TYPE "frame.scratch"
#define BIND_ERROR_TYPE "frame.error"
#define BIND_BATCH_TYPE "frame.batch"

/* -- values.c -- */
bound_value bind_value(lua_State *L, int place);
frame_status bind_walk(const bound_host *host, const bound_value *value, bound_visit visit, void *to);
size_t bind_count(const bound_host *host, const bound_value *value, int *named);
int bind_recall(const bound_host *host, int words, const bound_value *value, int32_t *number);
void bind_remember(const bound_host *host, int words, const bound_value *value, int32_t number);
const void *bind_take_handle(const bound_host *host, const bound_value *value, const bound_handle *kind);
/* Takes one entry of a call's table: the names of its fields are looked up in a table of their places. */
frame_status bind_take_table(lua_State *L, int place, const bound_struct *of, void *object, frame_arena *arena,
                             int *working);
void bind_values_open(lua_State *L);

/* -- errors.c -- */
/* Pushes the thread's failure as an error table. Places in lists count from 1 in it, as Lua does. */
void bind_push_error(lua_State *L);
void bind_too_many(lua_State *L, const char *function, int most);
int bind_error(lua_State *L);
void bind_errors_open(lua_State *L);

/* -- call.c -- */
int bind_begin(lua_State *L, bind_call *call, int place, const bound_calculation *of);
int bind_begin_result(lua_State *L, bind_call *call, const bound_struct *of);
int bind_begin_handle(lua_State *L, bind_call *call, const bound_handle *kind);
lua_scratch *bind_scratch(lua_State *L);
lua_scratch *bind_scratch_text(lua_State *L);
void bind_scratch_end(lua_scratch *scratch);
/* Tells the collector of the library's memory that came to hang on its objects since it was last told. */
void bind_tell_collector(lua_State *L);
void *bind_handle(lua_State *L, int place, const char *name, const bound_handle *kind);
frame_answer *bind_answer(lua_State *L, int place, const char *name, const bound_calculation *of);
/* The watch of a function that was given for a call; NULL without memory. And the error it raised, raised again. */
const void *bind_watch(lua_State *L, int place);
void bind_raise_watch(lua_State *L);
void bind_push_chars(lua_State *L, const char *chars);

/* -- result.c, list.c, handle.c -- */
lua_result *bind_new_result(lua_State *L, const bound_struct *of, const bound_calculation *calculation, int with_in,
                            int with_out);
lua_handle *bind_new_handle(lua_State *L, const bound_handle *kind);
lua_result *bind_test_result(lua_State *L, int place);
lua_result *bind_check_result(lua_State *L, int place);
/* Lets the collector give back what the result at a place has taken. Costs a little: only results that took memory have
 * it. */
void bind_own_memory(lua_State *L, int place);
frame_answer *bind_answer_of(const lua_result *object);
void bind_push_item(lua_State *L, int owner, int list, size_t place);
void bind_push_list(lua_State *L, int owner, int list, size_t first, size_t count);
/* Pushes what a field is worth; owner: the stack place of the object. */
void bind_push_field(lua_State *L, int object, size_t field);
void bind_to_table(lua_State *L, int object);
const char *bind_shown_name(const frame_field *field);
void bind_result_open(lua_State *L);
void bind_list_open(lua_State *L);
void bind_handle_open(lua_State *L);
/* Pushes the function of a method of a calculation's result or a handle, or nothing: returns whether it did. */
int bind_push_method(lua_State *L, const char *owner, int name);

/* -- module.c, batch.c -- */
int bind_batch(lua_State *L);
void bind_batch_open(lua_State *L);
int bind_swig_open(lua_State *L);
FRAME_API int luaopen_frame(lua_State *L); /* the one name that shows */

/* -- what frame.i asks for -- */
#define BIND_VALUE(place) bind_value(L, place)
#define BIND_HOST (&(const bound_host){L, bind_walk, bind_count, bind_recall, bind_remember, bind_take_handle})
#define BIND_RAISE bind_push_error(L)
#define BIND_GIVE_NOTHING (void)0
#define BIND_GIVE_NUMBER(value) (lua_pushnumber(L, value), SWIG_arg++)
#define BIND_GIVE_INTEGER(value) (lua_pushinteger(L, value), SWIG_arg++)
#define BIND_GIVE_BOOL(value) (lua_pushboolean(L, value), SWIG_arg++)
#define BIND_GIVE_CHARS(chars) (bind_push_chars(L, chars), SWIG_arg++)

#define BIND_ARENA lua_scratch *
#define BIND_NO_ARENA NULL
#define BIND_OPEN(scratch) ((scratch) = bind_scratch(L))
#define BIND_ARENA_OF(scratch) (&(scratch)->arena)
#define BIND_CLOSE(scratch) bind_scratch_end(scratch)

#define BIND_TEXT lua_scratch *
#define BIND_NO_TEXT NULL
#define BIND_NEW_TEXT(scratch) (((scratch) = bind_scratch_text(L)) != NULL)
#define BIND_TEXT_OF(scratch) ((scratch)->text)
#define BIND_FREE_TEXT(scratch) bind_scratch_end(scratch)

#define BIND_NO_CALL \
    { 0, NULL, NULL, NULL }
#define BIND_BEGIN(call, place, calculation) bind_begin(L, &(call), place, calculation)
#define BIND_NEW_RESULT(call, of) bind_begin_result(L, &(call), of)
#define BIND_NEW_HANDLE(call, kind) bind_begin_handle(L, &(call), kind)
#define BIND_GIVE(call) (lua_pushvalue(L, (call).place), SWIG_arg++)
#define BIND_OWN(call) bind_own_memory(L, (call).place)
#define BIND_END(call) (void)(call)
#define BIND_SETTLE (bind_tell_collector(L), bind_raise_watch(L))
#define BIND_HANDLE(place, name, kind) bind_handle(L, place, name, kind)
#define BIND_ANSWER(place, name, of) bind_answer(L, place, name, of)

#endif
