/* Results as Lua values: every figure a field, converted when it is asked for. */
#include <string.h>

#include "bind.h"

/* The two metatables of results, in the registry under these addresses: the owning one is collected with a call. Both
 * carry plain_mark. */
static char plain_mark, owning_mark;

static size_t round_up(size_t size) {
    return (size + 15) & ~(size_t)15;
}

lua_result *bind_new_result(lua_State *L, const bound_struct *of, const bound_calculation *calculation, int with_in,
                            int with_out) {
    const size_t head = round_up(sizeof(lua_result));
    const size_t in_size = with_in ? round_up(calculation->in->facts->size) : 0;
    const size_t out_size = with_out ? round_up(of->facts->size) : 0;
    lua_result *object = lua_newuserdatauv(L, head + in_size + out_size, 1);
    memset(object, 0, head);
    object->result.of = of;
    object->result.calculation = calculation;
    object->result.list = -1;
    object->result.in = with_in ? (char *)object + head : NULL;
    object->result.out = with_out ? (char *)object + head + in_size : NULL;
    lua_rawgetp(L, LUA_REGISTRYINDEX, &plain_mark);
    lua_setmetatable(L, -2);
    return object;
}

void bind_own_memory(lua_State *L, int place) {
    lua_rawgetp(L, LUA_REGISTRYINDEX, &owning_mark);
    lua_setmetatable(L, place < 0 ? place - 1 : place);
}

lua_result *bind_test_result(lua_State *L, int place) {
    lua_result *object = lua_touserdata(L, place);
    if (!object || !lua_getmetatable(L, place)) return NULL;
    const int ours = lua_rawgetp(L, -1, &plain_mark) != LUA_TNIL;
    lua_pop(L, 2);
    return ours ? object : NULL;
}

lua_result *bind_check_result(lua_State *L, int place) {
    lua_result *object = bind_test_result(L, place);
    if (!object) luaL_typeerror(L, place, BIND_RESULT_TYPE);
    return object;
}

frame_answer *bind_answer_of(const lua_result *object) {
    return object->owner ? object->owner->result.answer : object->result.answer;
}

static lua_result *check(lua_State *L, int place) {
    return bind_check_result(L, place);
}

static int collect(lua_State *L) {
    bound_result_release(&check(L, 1)->result);
    return 0;
}

const char *bind_shown_name(const frame_field *field) {
    return field->kind == FRAME_FIELD_RANGE ? field->words : field->name;
}

/* -- values -- */

static void push_sentences(lua_State *L, const lua_result *object, size_t field, int want_names) {
    char sentence[1024];
    const char *name;
    int bit = 0;
    lua_newtable(L);
    for (lua_Integer i = 1; bound_bit(&object->result, field, &bit, &name, sentence, sizeof sentence); i++) {
        lua_pushstring(L, want_names ? name : sentence);
        lua_rawseti(L, -2, i);
    }
}

/* The list a range names; the owner is the object itself or its user value. */
static void push_range(lua_State *L, int place, const lua_result *object, size_t field) {
    const bound_span span = bound_range(&object->result, bind_answer_of(object), field);
    if (span.list < 0) {
        lua_newtable(L);
        return;
    }
    if (object->owner)
        lua_getiuservalue(L, place, 1);
    else
        lua_pushvalue(L, place);
    bind_push_list(L, lua_gettop(L), span.list, span.first, span.count);
    lua_remove(L, -2);
}

void bind_push_field(lua_State *L, int place, size_t field) {
    const lua_result *object = lua_touserdata(L, place);
    const bound_given given = bound_read(object->result.of, field, object->result.out);
    switch (given.worth) {
        case BOUND_WORTH_NUMBER:
            lua_pushnumber(L, given.number);
            break;
        case BOUND_WORTH_INTEGER:
            lua_pushinteger(L, given.integer);
            break;
        case BOUND_WORTH_BOOL:
            lua_pushboolean(L, given.integer);
            break;
        case BOUND_WORTH_TEXT:
            lua_pushstring(L, given.text);
            break;
        case BOUND_WORTH_BITS:
            push_sentences(L, object, field, 0);
            break;
        case BOUND_WORTH_RANGE:
            push_range(L, place, object, field);
            break;
        default:
            lua_pushnil(L);
    }
}

/* -- index: figures, lists, short names, methods, in this order; anything else is refused with the nearest -- */

static int unknown(lua_State *L, const lua_result *object, const char *name) {
    const frame_struct *facts = object->result.of->facts;
    const frame_calculation *of = object->result.calculation ? object->result.calculation->calculation : NULL;
    frame_nearest nearest = {name, NULL, 0};
    for (size_t i = 0; i < facts->field_count; i++) frame_nearest_try(&nearest, bind_shown_name(&facts->fields[i]));
    for (size_t i = 0; object->result.answer && i < of->list_count; i++)
        frame_nearest_try(&nearest, of->lists[i].plural);
    frame_fail(FRAME_UNKNOWN_FIELD, name, "", nearest.best ? nearest.best : "", "%s: %s gives no such figure%s%s", name,
               of && object->result.list < 0 ? of->name : facts->name, nearest.best ? "; the nearest is " : "",
               nearest.best ? nearest.best : "");
    return bind_error(L);
}

static int index_of(lua_State *L) {
    const lua_result *object = check(L, 1);
    const bound_calculation *of = object->result.calculation;
    if (lua_type(L, 2) != LUA_TSTRING) return unknown(L, object, luaL_typename(L, 2));
    lua_rawgetp(L, LUA_REGISTRYINDEX, object->result.of->facts);
    lua_pushvalue(L, 2);
    if (lua_rawget(L, -2) == LUA_TNUMBER) {
        bind_push_field(L, 1, (size_t)lua_tointeger(L, -1));
        return 1;
    }
    const char *name = lua_tostring(L, 2);
    const int list = object->result.answer ? bound_list_find(of, name) : -1;
    if (list >= 0) {
        bind_push_list(L, 1, list, 0, object->result.answer->lists[list].count);
        return 1;
    }
    const int bits = bound_names_field(object->result.of, name);
    if (bits >= 0) {
        push_sentences(L, object, (size_t)bits, 1);
        return 1;
    }
    if (of && object->result.list < 0 && bind_push_method(L, of->calculation->name, 2)) return 1;
    if (bind_push_method(L, BIND_RESULT_TYPE, 2)) return 1;
    return unknown(L, object, name);
}

/* -- as text, as a table, walked, compared -- */

static int text_of(lua_State *L) {
    const lua_result *object = check(L, 1);
    lua_scratch *scratch = bind_scratch_text(L);
    if (!scratch || bound_result_text(&object->result, scratch->text)) return bind_error(L);
    lua_pushstring(L, frame_text_chars(scratch->text));
    bind_scratch_end(scratch);
    return 1;
}

/* Turns a list on top of the stack into a plain table of tables. */
static void flatten(lua_State *L) {
    const lua_list *list = luaL_testudata(L, -1, BIND_LIST_TYPE);
    if (!list) return;
    const int place = lua_gettop(L);
    luaL_checkstack(L, 16, "lists too deep");
    lua_createtable(L, (int)list->count, 0);
    lua_getiuservalue(L, place, 1);
    for (size_t i = 0; i < list->count; i++) {
        bind_push_item(L, place + 2, list->list, list->first + i);
        if (bind_test_result(L, -1)) {
            bind_to_table(L, lua_gettop(L));
            lua_remove(L, -2);
        }
        lua_rawseti(L, place + 1, (lua_Integer)i + 1);
    }
    lua_pop(L, 1);
    lua_replace(L, place);
}

void bind_to_table(lua_State *L, int place) {
    const lua_result *object = lua_touserdata(L, place);
    const frame_struct *facts = object->result.of->facts;
    luaL_checkstack(L, 16, "lists too deep");
    lua_newtable(L);
    for (size_t i = 0; i < facts->field_count; i++) {
        bind_push_field(L, place, i);
        flatten(L);
        lua_setfield(L, -2, bind_shown_name(&facts->fields[i]));
    }
    for (size_t i = 0; object->result.answer && i < object->result.calculation->calculation->list_count; i++) {
        bind_push_list(L, place, (int)i, 0, object->result.answer->lists[i].count);
        flatten(L);
        lua_setfield(L, -2, object->result.calculation->calculation->lists[i].plural);
    }
}

static int to_table(lua_State *L) {
    check(L, 1);
    bind_to_table(L, 1);
    return 1;
}

/* pairs(result): the figures that are given, in the order of the header. */
static int next_field(lua_State *L) {
    const lua_result *object = check(L, 1);
    const frame_struct *facts = object->result.of->facts;
    size_t i = 0;
    if (!lua_isnil(L, 2)) {
        while (i < facts->field_count && strcmp(bind_shown_name(&facts->fields[i]), luaL_checkstring(L, 2))) i++;
        i++;
    }
    for (; i < facts->field_count; i++) {
        lua_settop(L, 2);
        lua_pushstring(L, bind_shown_name(&facts->fields[i]));
        bind_push_field(L, 1, i);
        if (!lua_isnil(L, -1)) return 2;
    }
    return 0;
}

static int pairs_of(lua_State *L) {
    check(L, 1);
    lua_pushcfunction(L, next_field);
    lua_pushvalue(L, 1);
    lua_pushnil(L);
    return 3;
}

static int equal(lua_State *L) {
    const lua_result *a = bind_test_result(L, 1), *b = bind_test_result(L, 2);
    lua_pushboolean(L, a && b && bound_same(&a->result, bind_answer_of(a), &b->result, bind_answer_of(b)));
    return 1;
}

static int has_caution(lua_State *L) {
    const lua_result *object = check(L, 1);
    const char *wanted = luaL_checkstring(L, 2), *name;
    const int field = bound_names_field(object->result.of, "caution_names");
    char sentence[1024];
    int bit = 0, found = 0;
    while (field >= 0 && !found && bound_bit(&object->result, (size_t)field, &bit, &name, sentence, sizeof sentence))
        found = !strcmp(name, wanted);
    lua_pushboolean(L, found);
    return 1;
}

static int refuse_write(lua_State *L) {
    frame_fail(FRAME_CONFLICT, lua_type(L, 2) == LUA_TSTRING ? lua_tostring(L, 2) : "", "",
               "to_table() for a table of your own",
               "a result is not written to: its to_table() gives a table of your own");
    return bind_error(L);
}

static void open_places(lua_State *L, const bound_struct *of) {
    lua_newtable(L);
    for (size_t i = 0; i < of->facts->field_count; i++) {
        lua_pushinteger(L, (lua_Integer)i);
        lua_setfield(L, -2, bind_shown_name(&of->facts->fields[i]));
    }
    lua_rawsetp(L, LUA_REGISTRYINDEX, of->facts);
}

static void open_metatable(lua_State *L, const char *mark, int owning) {
    static const luaL_Reg meta[] = {{"__index", index_of},   {"__newindex", refuse_write},
                                    {"__tostring", text_of}, {"__pairs", pairs_of},
                                    {"__eq", equal},         {NULL, NULL}};
    lua_newtable(L);
    luaL_setfuncs(L, meta, 0);
    if (owning) {
        lua_pushcfunction(L, collect);
        lua_setfield(L, -2, "__gc");
    }
    lua_pushliteral(L, BIND_RESULT_TYPE);
    lua_setfield(L, -2, "__name");
    lua_pushliteral(L, BIND_RESULT_TYPE);
    lua_setfield(L, -2, "__metatable"); /* its __gc is not for calling */
    lua_pushboolean(L, 1);
    lua_rawsetp(L, -2, &plain_mark);
    lua_rawsetp(L, LUA_REGISTRYINDEX, mark);
}

void bind_result_open(lua_State *L) {
    static const luaL_Reg methods[] = {{"to_table", to_table}, {"has_caution", has_caution}, {NULL, NULL}};
    open_metatable(L, &plain_mark, 0);
    open_metatable(L, &owning_mark, 1);
    luaL_getsubtable(L, LUA_REGISTRYINDEX, "frame.methods");
    lua_newtable(L);
    luaL_setfuncs(L, methods, 0);
    lua_setfield(L, -2, BIND_RESULT_TYPE);
    lua_pop(L, 1);
    for (int i = 0; i < bound_struct_count; i++) open_places(L, bound_structs[i]);
}
