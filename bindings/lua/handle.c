/* Handles as Lua values: methods by name, lists as tables, printed by their own rendering. */
#include <string.h>

#include "bind.h"

#define ITEMS_TYPE "frame.items"

lua_handle *bind_new_handle(lua_State *L, const bound_handle *kind) {
    lua_handle *handle = lua_newuserdatauv(L, sizeof *handle, 0);
    handle->pointer = NULL;
    handle->kind = kind;
    luaL_setmetatable(L, BIND_HANDLE_TYPE);
    return handle;
}

static int collect(lua_State *L) {
    lua_handle *handle = luaL_checkudata(L, 1, BIND_HANDLE_TYPE);
    if (handle->pointer) handle->kind->release(handle->pointer);
    handle->pointer = NULL;
    return 0;
}

/* -- lists -- */

static int push_items(lua_State *L, const lua_handle *handle, const bound_list *list) {
    const size_t count = list->count(handle->pointer);
    lua_createtable(L, (int)count, 0);
    for (size_t i = 0; i < count; i++) {
        lua_result *item = bind_new_result(L, list->item, NULL, 0, 1);
        bind_own_memory(L, -1);
        if (list->at(handle->pointer, i, item->result.out, list->item->facts->size) ||
            bound_result_own_texts(&item->result))
            return bind_error(L);
        lua_rawseti(L, -2, (lua_Integer)i + 1);
    }
    luaL_setmetatable(L, ITEMS_TYPE);
    return 1;
}

static int next_of_items(lua_State *L) {
    const lua_Integer next = lua_tointeger(L, lua_upvalueindex(2)) + 1;
    lua_pushinteger(L, next);
    lua_replace(L, lua_upvalueindex(2));
    lua_rawgeti(L, lua_upvalueindex(1), next);
    return 1;
}

static int call_items(lua_State *L) {
    lua_pushvalue(L, 1);
    lua_pushinteger(L, 0);
    lua_pushcclosure(L, next_of_items, 2);
    return 1;
}

/* -- methods -- */

int bind_push_method(lua_State *L, const char *owner, int name) {
    const int top = lua_gettop(L);
    lua_getfield(L, LUA_REGISTRYINDEX, "frame.methods");
    if (lua_getfield(L, -1, owner) == LUA_TTABLE) {
        lua_pushvalue(L, name);
        if (lua_rawget(L, -2) == LUA_TFUNCTION) {
            lua_replace(L, top + 1);
            lua_settop(L, top + 1);
            return 1;
        }
    }
    lua_settop(L, top);
    return 0;
}

static int unknown(lua_State *L, const lua_handle *handle, const char *name) {
    frame_nearest nearest = {name, NULL, 0};
    for (int i = 0; i < handle->kind->list_count; i++) frame_nearest_try(&nearest, handle->kind->lists[i].plural);
    lua_getfield(L, LUA_REGISTRYINDEX, "frame.methods");
    if (lua_getfield(L, -1, handle->kind->name) == LUA_TTABLE) {
        lua_pushnil(L);
        for (; lua_next(L, -2); lua_pop(L, 1)) frame_nearest_try(&nearest, lua_tostring(L, -2));
    }
    frame_fail(FRAME_UNKNOWN_FIELD, name, "", nearest.best ? nearest.best : "", "%s: a %s has none%s%s", name,
               handle->kind->name, nearest.best ? "; the nearest is " : "", nearest.best ? nearest.best : "");
    return bind_error(L);
}

static int index_of(lua_State *L) {
    const lua_handle *handle = luaL_checkudata(L, 1, BIND_HANDLE_TYPE);
    if (lua_type(L, 2) != LUA_TSTRING) return unknown(L, handle, luaL_typename(L, 2));
    const char *name = lua_tostring(L, 2);
    for (int i = 0; handle->pointer && i < handle->kind->list_count; i++)
        if (!strcmp(handle->kind->lists[i].plural, name)) return push_items(L, handle, &handle->kind->lists[i]);
    if (bind_push_method(L, handle->kind->name, 2)) return 1;
    return unknown(L, handle, name);
}

static int text_of(lua_State *L) {
    const lua_handle *handle = luaL_checkudata(L, 1, BIND_HANDLE_TYPE);
    lua_settop(L, 1);
    lua_pushliteral(L, "render");
    if (handle->pointer && bind_push_method(L, handle->kind->name, 2)) {
        lua_pushvalue(L, 1);
        lua_call(L, 1, 1);
    } else
        lua_pushfstring(L, "a %s", handle->kind->name);
    return 1;
}

void bind_handle_open(lua_State *L) {
    static const luaL_Reg meta[] = {{"__gc", collect}, {"__index", index_of}, {"__tostring", text_of}, {NULL, NULL}};
    luaL_newmetatable(L, BIND_HANDLE_TYPE);
    luaL_setfuncs(L, meta, 0);
    lua_pushliteral(L, BIND_HANDLE_TYPE);
    lua_setfield(L, -2, "__metatable");
    luaL_newmetatable(L, ITEMS_TYPE);
    lua_pushcfunction(L, call_items);
    lua_setfield(L, -2, "__call");
    lua_pop(L, 2);
}
