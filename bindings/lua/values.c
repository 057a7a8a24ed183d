/* What a Lua value is to the library. Everything is read raw: no metamethod runs, nothing is converted in place. */
#include <math.h>
#include <string.h>

#include "bind.h"

/* For each list of words a table of the texts looked up so far, and for each struct one of its fields' places, both in
 * the registry under the address of what they belong to. */
enum { MOST_REMEMBERED = 512 };

bound_value bind_value(lua_State *L, int place) {
    bound_value value = {.kind = BOUND_OTHER, .native = (const void *)(intptr_t)place};
    const int type = lua_type(L, place);
    int is_integer = 0;
    switch (type) {
        case LUA_TNUMBER:
            value.type = "a number";
            value.integer = lua_isinteger(L, place) ? lua_tointegerx(L, place, &is_integer) : 0;
            value.kind = is_integer ? BOUND_INTEGER : BOUND_NUMBER;
            value.number = is_integer ? (double)value.integer : lua_tonumber(L, place);
            break;
        case LUA_TSTRING:
            value.kind = BOUND_TEXT;
            value.type = "a text";
            value.text = lua_tolstring(L, place, &value.length);
            break;
        case LUA_TTABLE:
            value.kind = BOUND_MANY;
            value.type = "a table";
            break;
        case LUA_TBOOLEAN:
            value.kind = BOUND_BOOL;
            value.integer = lua_toboolean(L, place);
            value.type = value.integer ? "true" : "false";
            break;
        case LUA_TNONE:
        case LUA_TNIL:
            value.kind = BOUND_NOTHING;
            value.type = "nil";
            break;
        default:
            value.type = lua_typename(L, type);
    }
    return value;
}

/* A key of a table as a place or a name; 0 for a key that is neither. */
static int key_of(lua_State *L, int place, bound_key *key) {
    if (lua_type(L, place) == LUA_TSTRING) {
        key->name = lua_tolstring(L, place, NULL);
        return 1;
    }
    if (!lua_isinteger(L, place) || lua_tointeger(L, place) < 1) return 0;
    key->name = NULL;
    key->place = (size_t)lua_tointeger(L, place) - 1;
    return 1;
}

static frame_status bad_key(lua_State *L, int place) {
    return frame_fail(FRAME_WRONG_TYPE, "", lua_typename(L, lua_type(L, place)), "names and places from 1",
                      "a table's keys must be names or places from 1");
}

frame_status bind_walk(const bound_host *host, const bound_value *many, bound_visit visit, void *to) {
    lua_State *L = host->state;
    const int table = (int)(intptr_t)many->native, top = lua_gettop(L);
    frame_status status = FRAME_OK;
    if (!lua_checkstack(L, 8)) return frame_fail(FRAME_NO_MEMORY, "", "", "", "no memory");
    lua_pushnil(L);
    while (!status && lua_next(L, table)) {
        bound_key key = {0};
        const bound_value value = bind_value(L, top + 2);
        status = key_of(L, top + 1, &key) ? visit(to, &key, &value) : bad_key(L, top + 1);
        lua_settop(L, top + 1);
    }
    lua_settop(L, top);
    return status;
}

size_t bind_count(const bound_host *host, const bound_value *many, int *named) {
    lua_State *L = host->state;
    const int table = (int)(intptr_t)many->native, top = lua_gettop(L);
    size_t most = 0;
    if (!lua_checkstack(L, 8)) return 0;
    lua_pushnil(L);
    while (lua_next(L, table)) {
        bound_key key = {0};
        if (!key_of(L, top + 1, &key) || key.name)
            *named = 1;
        else if (key.place + 1 > most)
            most = key.place + 1;
        lua_settop(L, top + 1);
    }
    lua_settop(L, top);
    /* A lone far place would ask for a list of so many items: beyond the table's own length is a hole, and refused as
     * one. */
    const size_t length = (size_t)lua_rawlen(L, table);
    return most > length + 1024 ? length + 1024 : most;
}

int bind_recall(const bound_host *host, int words, const bound_value *value, int32_t *number) {
    lua_State *L = host->state;
    if (!value->native || !lua_checkstack(L, 4)) return 0;
    lua_rawgetp(L, LUA_REGISTRYINDEX, bound_words[words]);
    lua_pushvalue(L, (int)(intptr_t)value->native);
    const int found = lua_rawget(L, -2) == LUA_TNUMBER;
    if (found) *number = (int32_t)lua_tointeger(L, -1);
    lua_pop(L, 2);
    return found;
}

/* Arguments: the table, the text, its number. */
static int keep_word(lua_State *L) {
    const lua_Integer count = lua_rawgeti(L, 1, 0) == LUA_TNUMBER ? lua_tointeger(L, -1) : 0;
    lua_pop(L, 1);
    if (count >= MOST_REMEMBERED) return 0;
    lua_rawset(L, 1);
    lua_pushinteger(L, count + 1);
    lua_rawseti(L, 1, 0);
    return 0;
}

void bind_remember(const bound_host *host, int words, const bound_value *value, int32_t number) {
    lua_State *L = host->state;
    if (!value->native || !lua_checkstack(L, 8)) return;
    lua_pushcfunction(L, keep_word);
    lua_rawgetp(L, LUA_REGISTRYINDEX, bound_words[words]);
    lua_pushvalue(L, (int)(intptr_t)value->native);
    lua_pushinteger(L, number);
    if (lua_pcall(L, 3, 0, 0)) lua_pop(L, 1); /* without memory it is looked up again next time */
}

const void *bind_take_handle(const bound_host *host, const bound_value *value, const bound_handle *kind) {
    lua_State *L = host->state;
    if (!value->native || !lua_checkstack(L, 4)) return NULL;
    if (lua_isfunction(L, (int)(intptr_t)value->native) && !strcmp(kind->name, "watch"))
        return bind_watch(L, (int)(intptr_t)value->native);
    const lua_handle *found = luaL_testudata(L, (int)(intptr_t)value->native, BIND_HANDLE_TYPE);
    return found && found->kind == kind ? found->pointer : NULL;
}

/* -- the table of a call -- */

static frame_status take_named(lua_State *L, int names, const bound_struct *of, void *object, frame_arena *arena,
                               int *working) {
    const int key = lua_gettop(L) - 1, value_place = key + 1;
    const bound_host host = {L, bind_walk, bind_count, bind_recall, bind_remember, bind_take_handle};
    const bound_value value = bind_value(L, value_place);
    lua_pushvalue(L, key);
    const int known = lua_rawget(L, names) == LUA_TNUMBER;
    const lua_Integer field = lua_tointeger(L, -1);
    lua_pop(L, 1);
    if (known) return bound_take_field(&host, of, (size_t)field, &value, object, arena);
    if (working && !strcmp(lua_tostring(L, key), "working")) {
        lua_pushvalue(L, value_place);
        lua_replace(L, *working);
        return FRAME_OK;
    }
    return bound_unknown_field(of, lua_tostring(L, key));
}

frame_status bind_take_table(lua_State *L, int place, const bound_struct *of, void *object, frame_arena *arena,
                             int *working) {
    const bound_host host = {L, bind_walk, bind_count, bind_recall, bind_remember, bind_take_handle};
    frame_status status = FRAME_OK;
    lua_rawgetp(L, LUA_REGISTRYINDEX, of);
    const int names = lua_gettop(L);
    lua_pushnil(L);
    while (!status && lua_next(L, place)) {
        bound_key key = {0};
        if (lua_type(L, names + 1) == LUA_TSTRING)
            status = take_named(L, names, of, object, arena, working);
        else if (key_of(L, names + 1, &key)) {
            const bound_value value = bind_value(L, names + 2);
            status = bound_take_entry(&host, of, &key, &value, object, arena);
        } else
            status = bad_key(L, names + 1);
        lua_settop(L, names + 1);
    }
    lua_settop(L, names - 1);
    return status;
}

static void open_names(lua_State *L, const bound_struct *of) {
    lua_createtable(L, 0, of->given_count);
    for (int i = 0; i < of->given_count; i++) {
        lua_pushinteger(L, of->given[i]);
        lua_setfield(L, -2, of->facts->fields[of->given[i]].name);
    }
    lua_rawsetp(L, LUA_REGISTRYINDEX, of);
}

void bind_values_open(lua_State *L) {
    for (int i = 0; i < bound_words_count; i++) {
        lua_newtable(L);
        lua_rawsetp(L, LUA_REGISTRYINDEX, bound_words[i]);
    }
    for (int i = 0; i < bound_struct_count; i++) open_names(L, bound_structs[i]);
}
