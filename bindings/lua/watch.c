/* A Lua function that watches a long search: called on the searching thread, in the state of the call. */
#include "bind.h"

/* The watch of a function; it lives as long as the function does. */
typedef struct lua_watch {
    lua_State *L; /* of the call at hand */
    frame_watch *watch;
} lua_watch;

/* Where in the registry the watches stand, by their functions, and what a function failed with. */
static const char watches, failure;

static void push_number(lua_State *L, double value) {
    if (value == FRAME_NOT_GIVEN)
        lua_pushnil(L);
    else
        lua_pushnumber(L, value);
}

/* Goes on unless the function says false or fails. It stands in the table of the call, the call's first argument. */
static int32_t look(void *user, double best, double bound) {
    lua_State *L = ((lua_watch *)user)->L;
    int go_on = 1;
    if (!lua_checkstack(L, 8)) return 0;
    const int top = lua_gettop(L);
    if (lua_istable(L, 1)) {
        lua_pushliteral(L, "watch");
        lua_rawget(L, 1);
    }
    if (lua_gettop(L) > top && lua_isfunction(L, -1)) {
        push_number(L, best);
        push_number(L, bound);
        if (lua_pcall(L, 2, 1, 0)) {
            lua_rawsetp(L, LUA_REGISTRYINDEX, &failure);
            go_on = 0;
        } else if (lua_isboolean(L, -1)) {
            go_on = lua_toboolean(L, -1);
        }
    }
    lua_settop(L, top);
    return go_on;
}

static int collect(lua_State *L) {
    lua_watch *of = lua_touserdata(L, 1);
    frame_watch_free(of->watch);
    of->watch = NULL;
    return 0;
}

static void push_watches(lua_State *L) {
    if (lua_rawgetp(L, LUA_REGISTRYINDEX, &watches) == LUA_TTABLE) return;
    lua_pop(L, 1);
    lua_newtable(L);
    lua_createtable(L, 0, 1);
    lua_pushliteral(L, "k"); /* gone with their functions */
    lua_setfield(L, -2, "__mode");
    lua_setmetatable(L, -2);
    lua_pushvalue(L, -1);
    lua_rawsetp(L, LUA_REGISTRYINDEX, &watches);
}

static lua_watch *push_watch(lua_State *L) {
    lua_watch *of = lua_newuserdatauv(L, sizeof *of, 0);
    const frame_watcher watcher = {look, of};
    of->watch = NULL;
    lua_createtable(L, 0, 1);
    lua_pushcfunction(L, collect);
    lua_setfield(L, -2, "__gc");
    lua_setmetatable(L, -2);
    if (frame_watch_new(&watcher, &of->watch)) luaL_error(L, "no memory");
    return of;
}

/* The watch of the function at 1, made when it has none. */
static int find(lua_State *L) {
    push_watches(L);
    lua_pushvalue(L, 1);
    if (lua_rawget(L, 2) == LUA_TUSERDATA) return 1;
    lua_settop(L, 2);
    push_watch(L);
    lua_pushvalue(L, 1);
    lua_pushvalue(L, 3);
    lua_rawset(L, 2);
    return 1;
}

const void *bind_watch(lua_State *L, int place) {
    lua_pushcfunction(L, find);
    lua_pushvalue(L, place);
    const int failed = lua_pcall(L, 1, 1, 0); /* without memory there is none */
    lua_watch *of = failed ? NULL : lua_touserdata(L, -1);
    lua_pop(L, 1);
    if (!of) return NULL;
    of->L = L;
    return of->watch;
}

void bind_raise_watch(lua_State *L) {
    if (lua_rawgetp(L, LUA_REGISTRYINDEX, &failure) == LUA_TNIL) {
        lua_pop(L, 1);
        return;
    }
    lua_pushnil(L);
    lua_rawsetp(L, LUA_REGISTRYINDEX, &failure);
    lua_error(L);
}
