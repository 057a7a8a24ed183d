/* Lists of an answer: plan.boards[1], #plan.boards, for board in plan.boards() do, ipairs(plan.boards). */
#include "bind.h"

void bind_push_item(lua_State *L, int owner, int list, size_t place) {
    const lua_result *answer = lua_touserdata(L, owner);
    const frame_array *array = &answer->result.answer->lists[list];
    const bound_struct *of = answer->result.calculation->lists[list];
    if (!of) {
        lua_pushnumber(L, ((const double *)array->items)[place]);
        return;
    }
    lua_result *item = bind_new_result(L, of, answer->result.calculation, 0, 0);
    item->result.out = (char *)array->items + place * of->facts->size;
    item->result.list = list;
    item->result.place = (int)place;
    item->owner = answer;
    lua_pushvalue(L, owner);
    lua_setiuservalue(L, -2, 1);
}

void bind_push_list(lua_State *L, int owner, int list, size_t first, size_t count) {
    lua_list *object = lua_newuserdatauv(L, sizeof *object, 1);
    *object = (lua_list){lua_touserdata(L, owner), list, first, count};
    lua_pushvalue(L, owner);
    lua_setiuservalue(L, -2, 1);
    luaL_setmetatable(L, BIND_LIST_TYPE);
}

static int index_of(lua_State *L) {
    const lua_list *list = luaL_checkudata(L, 1, BIND_LIST_TYPE);
    const lua_Integer place = lua_isinteger(L, 2) ? lua_tointeger(L, 2) : 0;
    if (place < 1 || (size_t)place > list->count) return 0; /* nil, as past the end of a table */
    lua_getiuservalue(L, 1, 1);
    bind_push_item(L, lua_gettop(L), list->list, list->first + (size_t)place - 1);
    return 1;
}

static int length_of(lua_State *L) {
    const lua_list *list = luaL_checkudata(L, 1, BIND_LIST_TYPE);
    lua_pushinteger(L, (lua_Integer)list->count);
    return 1;
}

static int next_item(lua_State *L) {
    const lua_list *list = luaL_checkudata(L, lua_upvalueindex(1), BIND_LIST_TYPE);
    const lua_Integer done = lua_tointeger(L, lua_upvalueindex(2));
    if ((size_t)done >= list->count) return 0;
    lua_pushinteger(L, done + 1);
    lua_replace(L, lua_upvalueindex(2));
    lua_getiuservalue(L, lua_upvalueindex(1), 1);
    bind_push_item(L, lua_gettop(L), list->list, list->first + (size_t)done);
    return 1;
}

static int call(lua_State *L) {
    luaL_checkudata(L, 1, BIND_LIST_TYPE);
    lua_pushvalue(L, 1);
    lua_pushinteger(L, 0);
    lua_pushcclosure(L, next_item, 2);
    return 1;
}

static int next_pair(lua_State *L) {
    const lua_list *list = luaL_checkudata(L, 1, BIND_LIST_TYPE);
    const lua_Integer place = luaL_optinteger(L, 2, 0);
    if (place < 0 || (size_t)place >= list->count) return 0;
    lua_pushinteger(L, place + 1);
    lua_getiuservalue(L, 1, 1);
    bind_push_item(L, lua_gettop(L), list->list, list->first + (size_t)place);
    lua_remove(L, -2);
    return 2;
}

static int pairs_of(lua_State *L) {
    lua_pushcfunction(L, next_pair);
    lua_pushvalue(L, 1);
    lua_pushnil(L);
    return 3;
}

static int equal(lua_State *L) {
    const lua_list *a = luaL_testudata(L, 1, BIND_LIST_TYPE), *b = luaL_testudata(L, 2, BIND_LIST_TYPE);
    int same = a && b && a->count == b->count;
    if (same) {
        lua_getiuservalue(L, 1, 1);
        lua_getiuservalue(L, 2, 1);
    }
    for (size_t i = 0; same && i < a->count; i++) {
        bind_push_item(L, 3, a->list, a->first + i);
        bind_push_item(L, 4, b->list, b->first + i);
        same = lua_compare(L, -1, -2, LUA_OPEQ);
        lua_settop(L, 4);
    }
    lua_pushboolean(L, same);
    return 1;
}

static int text_of(lua_State *L) {
    const lua_list *list = luaL_checkudata(L, 1, BIND_LIST_TYPE);
    lua_pushfstring(L, "%s (%I)", list->owner->result.calculation->calculation->lists[list->list].plural,
                    (LUAI_UACINT)list->count);
    return 1;
}

void bind_list_open(lua_State *L) {
    static const luaL_Reg meta[] = {{"__index", index_of}, {"__len", length_of}, {"__call", call},
                                    {"__pairs", pairs_of}, {"__eq", equal},      {"__tostring", text_of},
                                    {NULL, NULL}};
    luaL_newmetatable(L, BIND_LIST_TYPE);
    luaL_setfuncs(L, meta, 0);
    lua_pop(L, 1);
}
