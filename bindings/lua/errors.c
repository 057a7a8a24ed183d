/* A failure as a table that prints well: status, field, value, valid, text. */
#include <ctype.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "bind.h"

/* Writes a path with each [place] counted from 1. Gives the length read of the path. */
static void from_one(const char *path, size_t length, char *into, size_t size) {
    size_t used = 0;
    for (size_t i = 0; i < length && used + 24 < size;) {
        into[used++] = path[i];
        if (path[i++] != '[' || i >= length || !isdigit((unsigned char)path[i])) continue;
        char *end;
        const unsigned long place = strtoul(path + i, &end, 10);
        used += (size_t)snprintf(into + used, size - used, "%lu", place + 1);
        i = (size_t)(end - path);
    }
    into[used] = 0;
}

void bind_push_chars(lua_State *L, const char *chars) {
    if (chars)
        lua_pushstring(L, chars);
    else
        lua_pushnil(L);
}

static void set_chars(lua_State *L, const char *name, const char *chars) {
    bind_push_chars(L, chars);
    lua_setfield(L, -2, name);
}

void bind_push_error(lua_State *L) {
    char field[256], text[1024];
    const char *path = frame_error_field(), *message = frame_error_text();
    const size_t length = strlen(path);
    from_one(path, length, field, sizeof field);
    if (length && !strncmp(message, path, length))
        snprintf(text, sizeof text, "%s%s", field, message + length);
    else
        snprintf(text, sizeof text, "%s", message);
    lua_createtable(L, 0, 5);
    set_chars(L, "status", frame_status_name(frame_error_status()));
    set_chars(L, "field", field);
    set_chars(L, "value", frame_error_value());
    set_chars(L, "valid", frame_error_valid());
    set_chars(L, "text", text);
    luaL_setmetatable(L, BIND_ERROR_TYPE);
}

int bind_error(lua_State *L) {
    bind_push_error(L);
    return lua_error(L);
}

void bind_too_many(lua_State *L, const char *function, int most) {
    char name[96], given[16], valid[32];
    snprintf(name, sizeof name, "%s", !strncmp(function, "frame_", 6) ? function + 6 : function);
    for (const char *const *end = (const char *const[]){"_sized", "_solve", NULL}; *end; end++) {
        const size_t length = strlen(name), cut = strlen(*end);
        if (length > cut && !strcmp(name + length - cut, *end)) name[length - cut] = 0;
    }
    snprintf(given, sizeof given, "%d", lua_gettop(L));
    snprintf(valid, sizeof valid, "at most %d", most);
    frame_fail(FRAME_TOO_LARGE, "arguments", given, valid, "arguments: %s takes at most %d, not %s", name, most, given);
    bind_push_error(L);
}

static int error_text(lua_State *L) {
    lua_getfield(L, 1, "text");
    return 1;
}

void bind_errors_open(lua_State *L) {
    luaL_newmetatable(L, BIND_ERROR_TYPE);
    lua_pushcfunction(L, error_text);
    lua_setfield(L, -2, "__tostring");
    lua_pop(L, 1);
}
