/* A call in progress: the userdata its memory belongs to, and the values that fill it. */
#include <stdatomic.h>
#include <string.h>

#include "bind.h"

static int refuse(lua_State *L, const char *name, int place, const char *wanted) {
    const char *type = luaL_typename(L, place);
    frame_fail(FRAME_WRONG_TYPE, name, type, wanted, "%s: a %s is not a %s", name, type, wanted);
    bind_push_error(L);
    return 0;
}

static int take_working(lua_State *L, bind_call *call, int place) {
    if (lua_isnil(L, place)) return 1;
    const bound_handle *kind = bound_handle_find("working");
    call->working = kind ? bind_handle(L, place, "working", kind) : NULL;
    return call->working != NULL;
}

int bind_begin(lua_State *L, bind_call *call, int place, const bound_calculation *of) {
    luaL_checkstack(L, 16, NULL);
    lua_pushnil(L); /* the working, when the table brings one */
    int working = lua_gettop(L);
    lua_result *object = bind_new_result(L, of->out, of, 1, !of->calculation->solve);
    call->place = lua_gettop(L);
    call->result = &object->result;
    bound_blank(of->in, object->result.in);
    if (!lua_isnil(L, place) && !lua_istable(L, place))
        return refuse(L, of->calculation->name, place, "table of its fields");
    const frame_status status =
        lua_isnil(L, place) ? FRAME_OK
                            : bind_take_table(L, place, of->in, object->result.in, &object->result.arena, &working);
    if (status) {
        bound_result_release(&object->result); /* nothing has jumped so far; pushing an error may */
        bind_push_error(L);
        return 0;
    }
    if (object->result.arena.first || of->calculation->solve) bind_own_memory(L, call->place);
    return take_working(L, call, working);
}

int bind_begin_result(lua_State *L, bind_call *call, const bound_struct *of) {
    luaL_checkstack(L, 16, NULL);
    call->result = &bind_new_result(L, of, NULL, 0, 1)->result;
    call->place = lua_gettop(L);
    bind_own_memory(L, call->place);
    return 1;
}

int bind_begin_handle(lua_State *L, bind_call *call, const bound_handle *kind) {
    luaL_checkstack(L, 16, NULL);
    call->handle = bind_new_handle(L, kind);
    call->place = lua_gettop(L);
    return 1;
}

void *bind_handle(lua_State *L, int place, const char *name, const bound_handle *kind) {
    const lua_handle *handle = luaL_testudata(L, place, BIND_HANDLE_TYPE);
    if (!handle || handle->kind != kind || !handle->pointer) {
        refuse(L, name, place, kind->name);
        return NULL;
    }
    return handle->pointer;
}

frame_answer *bind_answer(lua_State *L, int place, const char *name, const bound_calculation *of) {
    const lua_result *object = bind_test_result(L, place);
    if (!object || object->result.calculation != of || !object->result.answer) {
        refuse(L, name, place, of->calculation->name);
        return NULL;
    }
    return object->result.answer;
}

/* The collector sees a few hundred bytes where an answer or a drawing holds a hundred thousand. Without being told it
 * would let a loop pile them up. */
void bind_tell_collector(lua_State *L) {
    static atomic_long told;
    enum { WORTH_TELLING = 1 << 16 };
    const long live = bound_live_bytes(), before = atomic_load_explicit(&told, memory_order_relaxed);
    if (live < before) atomic_store_explicit(&told, live, memory_order_relaxed);
    if (live - before < WORTH_TELLING) return;
    lua_gc(L, LUA_GCSTEP, (int)((live - before) >> 10 > 1 << 20 ? 1 << 20 : (live - before) >> 10));
    atomic_store_explicit(&told, bound_live_bytes(), memory_order_relaxed);
}

/* -- scratch -- */

lua_scratch *bind_scratch(lua_State *L) {
    luaL_checkstack(L, 16, NULL);
    lua_scratch *scratch = lua_newuserdatauv(L, sizeof *scratch, 0);
    memset(scratch, 0, sizeof *scratch);
    luaL_setmetatable(L, BIND_SCRATCH_TYPE);
    return scratch;
}

lua_scratch *bind_scratch_text(lua_State *L) {
    lua_scratch *scratch = bind_scratch(L);
    return frame_text_new(&scratch->text) ? NULL : scratch;
}

void bind_scratch_end(lua_scratch *scratch) {
    if (!scratch) return;
    frame_arena_give(&scratch->arena);
    frame_text_free(scratch->text);
    scratch->text = NULL;
}
