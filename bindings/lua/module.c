/* Opening the module: SWIG's functions, sorted into plain ones and methods, and the few the module has of its own. */
#include <string.h>

#include "bind.h"
#include "bound_made.h"
#include "text/writer.h"

/* -- functions of the module -- */

static int push_words(lua_State *L, const char *name) {
    const size_t count = frame_word_count(name);
    if (!count) {
        frame_fail(FRAME_UNKNOWN_NAME, "name", name, "a list of words", "name: no list of words \"%s\"", name);
        return bind_error(L);
    }
    lua_createtable(L, (int)count, 0);
    for (size_t i = 0; i < count; i++) {
        bind_push_chars(L, frame_word_text(name, frame_word_at(name, i)));
        lua_rawseti(L, -2, (lua_Integer)i + 1);
    }
    return 1;
}

static int words(lua_State *L) {
    return push_words(L, luaL_checkstring(L, 1));
}
static int menu(lua_State *L) {
    return push_words(L, lua_tostring(L, lua_upvalueindex(1)));
}

static int help(lua_State *L) {
    const char *name = luaL_checkstring(L, 1);
    lua_scratch *scratch = bind_scratch_text(L);
    if (!scratch || bound_help(name, scratch->text)) return bind_error(L);
    lua_pushstring(L, frame_text_chars(scratch->text));
    bind_scratch_end(scratch);
    return 1;
}

static void set_number(lua_State *L, const char *name, double value) {
    if (value == FRAME_NOT_GIVEN) return;
    lua_pushnumber(L, value);
    lua_setfield(L, -2, name);
}

static void push_fields(lua_State *L, const frame_struct *facts) {
    luaL_checkstack(L, 8, "structs too deep");
    lua_createtable(L, (int)facts->field_count, 0);
    for (size_t i = 0; i < facts->field_count; i++) {
        const frame_field *field = &facts->fields[i];
        const char *texts[][2] = {{"name", field->name},
                                  {"kind", frame_word_text("field_kind", field->kind)},
                                  {"need", frame_word_text("field_need", field->need)},
                                  {"unit", field->unit},
                                  {"meaning", field->meaning},
                                  {"valid", field->valid},
                                  {"default", field->fallback_text},
                                  {"words", field->words}};
        lua_createtable(L, 0, 12);
        for (size_t t = 0; t < sizeof texts / sizeof *texts; t++) {
            bind_push_chars(L, texts[t][1]);
            lua_setfield(L, -2, texts[t][0]);
        }
        set_number(L, "low", field->low);
        set_number(L, "high", field->high);
        lua_pushboolean(L, field->low_open);
        lua_setfield(L, -2, "low_open");
        lua_pushboolean(L, field->high_open);
        lua_setfield(L, -2, "high_open");
        if (field->element) {
            push_fields(L, field->element);
            lua_setfield(L, -2, "element");
        }
        lua_rawseti(L, -2, (lua_Integer)i + 1);
    }
}

static int fields(lua_State *L) {
    const char *name = luaL_checkstring(L, 1);
    const frame_calculation *calculation = frame_calculation_find(name);
    const frame_struct *facts = calculation ? frame_calculation_in(calculation) : frame_struct_find(name);
    if (!facts) {
        frame_fail(FRAME_UNKNOWN_NAME, "name", name, "a calculation or a struct", "name: nothing is called \"%s\"",
                   name);
        return bind_error(L);
    }
    push_fields(L, facts);
    return 1;
}

static int calculations(lua_State *L) {
    lua_createtable(L, bound_calculation_count, 0);
    for (int i = 0; i < bound_calculation_count; i++) {
        lua_pushstring(L, bound_calculations[i]->calculation->name);
        lua_rawseti(L, -2, i + 1);
    }
    return 1;
}

static int live_blocks(lua_State *L) {
    lua_pushinteger(L, bound_live_blocks());
    return 1;
}

/* -- methods that are made of others -- */

/* handle:write_svg(path, ...): what the method of the upvalue gives, whole or not at all in a file. */
static int write_file(lua_State *L) {
    const char *path = luaL_checkstring(L, 2);
    lua_pushvalue(L, lua_upvalueindex(1));
    lua_insert(L, 1);
    lua_pushvalue(L, 3);
    lua_insert(L, 1);
    lua_remove(L, 4);
    lua_call(L, lua_gettop(L) - 2, 1);
    size_t length;
    const char *chars = luaL_checklstring(L, 2, &length);
    path = lua_tostring(L, 1);
    lua_scratch *scratch = bind_scratch_text(L);
    if (!scratch) return bind_error(L);
    frame_text_add_bytes(scratch->text, chars, length);
    if (frame_text_save(scratch->text, path)) return bind_error(L);
    bind_scratch_end(scratch);
    return 0;
}

/* result:drawing(): the view of the upvalues, made from the in-struct the result keeps. */
static int view(lua_State *L) {
    const lua_result *object = bind_check_result(L, 1);
    const frame_view *wanted = lua_touserdata(L, lua_upvalueindex(1));
    const bound_handle *kind = bound_handle_find(wanted->name);
    const bound_calculation *of = object->result.calculation;
    int its_own = 0;
    for (size_t i = 0; of && i < of->calculation->view_count; i++) its_own |= &of->calculation->views[i] == wanted;
    if (!its_own || !kind || !object->result.in) return luaL_error(L, "this result has no %s", wanted->name);
    lua_handle *handle = bind_new_handle(L, kind);
    if (wanted->make(object->result.in, &handle->pointer)) return bind_error(L);
    bind_tell_collector(L);
    return 1;
}

/* -- opening -- */

/* Pushes the table of an owner's methods. */
static void methods_of(lua_State *L, const char *owner) {
    luaL_getsubtable(L, LUA_REGISTRYINDEX, "frame.methods");
    luaL_getsubtable(L, -1, owner);
    lua_remove(L, -2);
}

/* Moves the methods out of the module's table, which is on top. */
static void sort_methods(lua_State *L) {
    const int module = lua_gettop(L);
    for (const bound_method *method = bound_methods; method->owner; method++) {
        if (!*method->method) {
            lua_getfield(L, module, method->function);
            lua_setfield(L, module, method->owner);
        } else {
            methods_of(L, method->owner);
            lua_getfield(L, module, method->function);
            if (*method->writes) {
                lua_pushvalue(L, -1);
                lua_pushcclosure(L, write_file, 1);
                lua_setfield(L, -3, method->writes);
            }
            lua_setfield(L, -2, method->method);
            lua_pop(L, 1);
        }
        lua_pushnil(L);
        lua_setfield(L, module, method->function);
    }
}

static void open_views(lua_State *L) {
    for (int i = 0; i < bound_calculation_count; i++) {
        const frame_calculation *of = bound_calculations[i]->calculation;
        for (size_t v = 0; v < of->view_count; v++) {
            methods_of(L, of->name);
            lua_pushlightuserdata(L, (void *)(intptr_t)&of->views[v]);
            lua_pushcclosure(L, view, 1);
            lua_setfield(L, -2, of->views[v].name);
            lua_pop(L, 1);
        }
    }
}

static void open_menus(lua_State *L) {
    for (const bound_menu *all = bound_menus; all->name; all++) {
        lua_pushstring(L, all->words);
        lua_pushcclosure(L, menu, 1);
        lua_setfield(L, -2, all->name);
    }
}

static int scratch_collect(lua_State *L) {
    bind_scratch_end(luaL_checkudata(L, 1, BIND_SCRATCH_TYPE));
    return 0;
}

static int open_all(lua_State *L) {
    static const luaL_Reg functions[] = {{"words", words},      {"help", help},
                                         {"fields", fields},    {"calculations", calculations},
                                         {"batch", bind_batch}, {"_live_blocks", live_blocks},
                                         {NULL, NULL}};
    bind_values_open(L);
    bind_errors_open(L);
    bind_result_open(L);
    bind_list_open(L);
    bind_handle_open(L);
    bind_batch_open(L);
    luaL_newmetatable(L, BIND_SCRATCH_TYPE);
    lua_pushcfunction(L, scratch_collect);
    lua_setfield(L, -2, "__gc");
    lua_pop(L, 1);
    lua_pushcfunction(L, bind_swig_open);
    lua_call(L, 0, 1);
    luaL_setfuncs(L, functions, 0);
    sort_methods(L);
    open_views(L);
    open_menus(L);
    lua_pushstring(L, frame_version());
    lua_setfield(L, -2, "version");
    /* SWIG hangs bookkeeping of its own on the module: nothing of it is for people. */
    lua_pushnil(L);
    lua_setmetatable(L, -2);
    return 1;
}

/* SWIG sets names in the table of globals while it opens; it is given another one meanwhile, so that none stay. */
int luaopen_frame(lua_State *L) {
    bound_count_memory();
    lua_rawgeti(L, LUA_REGISTRYINDEX, LUA_RIDX_GLOBALS);
    const int globals = lua_gettop(L);
    lua_newtable(L);
    lua_rawseti(L, LUA_REGISTRYINDEX, LUA_RIDX_GLOBALS);
    lua_pushcfunction(L, open_all);
    const int failed = lua_pcall(L, 0, 1, 0);
    lua_pushvalue(L, globals);
    lua_rawseti(L, LUA_REGISTRYINDEX, LUA_RIDX_GLOBALS);
    return failed ? lua_error(L) : 1;
}
