/* A calculation over columns: frame.batch("joist_span", {size = {...}, spacing_in = {12, 16}, species = "HF", outer =
 * true}). */
#include <stdio.h>
#include <string.h>

#include "bind.h"

enum { MOST_COLUMNS = 64 };

/* The columns of a batch, each in memory of its own that belongs to this userdata's table (user value 1). */
typedef struct lua_batch {
    const bound_calculation *of;
    size_t rows;
    const int32_t *statuses;
    const char *out[MOST_COLUMNS]; /* by the out-struct's fields; NULL for what is no column */
} lua_batch;

typedef struct given_column {
    size_t field, count, inner; /* a row's value is the (row / inner) % count-th */
    char *data;
} given_column;

typedef struct batch_plan {
    const bound_calculation *of;
    given_column columns[MOST_COLUMNS];
    int column_count, outer;
    size_t rows;
    lua_result *base;
    int memory; /* stack place of the table that keeps what is taken */
} batch_plan;

static size_t width_of(const frame_field *field) {
    return field->kind == FRAME_FIELD_NUMBER || field->kind == FRAME_FIELD_BITS ? 8 : 4;
}

static int is_scalar(const frame_field *field) {
    return field->kind == FRAME_FIELD_NUMBER || field->kind == FRAME_FIELD_INTEGER || field->kind == FRAME_FIELD_WORD ||
           field->kind == FRAME_FIELD_BOOL;
}

/* Memory that lives as long as the table of it. */
static void *take(lua_State *L, int memory, size_t count, size_t size) {
    if (size && count > ((size_t)1 << 40) / size) luaL_error(L, "no memory");
    void *block = lua_newuserdatauv(L, count * size + 1, 0);
    lua_rawseti(L, memory, (lua_Integer)lua_rawlen(L, memory) + 1);
    return block;
}

/* -- the columns given -- */

static frame_status convert(lua_State *L, const bound_struct *in, size_t field, const char *name, char *into) {
    const frame_field *facts = &in->facts->fields[field];
    const bound_value value = bind_value(L, lua_gettop(L));
    const bound_host host = {L, bind_walk, bind_count, bind_recall, bind_remember, bind_take_handle};
    double *number = (double *)(void *)into;
    int32_t *integer = (int32_t *)(void *)into;
    if (facts->kind == FRAME_FIELD_NUMBER)
        *number = FRAME_NOT_GIVEN;
    else
        *integer = FRAME_NOT_GIVEN_INT;
    if (value.kind == BOUND_NOTHING) return FRAME_OK;
    if (facts->kind == FRAME_FIELD_NUMBER)
        return bound_take_number(name, in->fields[field].notation, facts->valid, &value, number);
    if (facts->kind == FRAME_FIELD_INTEGER) return bound_take_integer(name, facts->valid, &value, integer);
    if (facts->kind == FRAME_FIELD_BOOL) return bound_take_bool(name, &value, integer);
    return bound_take_word(&host, name, in->fields[field].words, &value, integer);
}

static void convert_one(lua_State *L, const bound_struct *in, size_t field, size_t place, char *into) {
    char with_place[160];
    if (!convert(L, in, field, in->facts->fields[field].name, into)) return;
    snprintf(with_place, sizeof with_place, "%s[%zu]", in->facts->fields[field].name,
             place); /* only a refusal needs it */
    convert(L, in, field, with_place, into);
    bind_error(L);
}

static void add_column(lua_State *L, batch_plan *plan, size_t field, int table) {
    const bound_struct *in = plan->of->in;
    if (plan->column_count == MOST_COLUMNS) luaL_error(L, "at most %d columns", MOST_COLUMNS);
    const size_t count = (size_t)lua_rawlen(L, table), size = width_of(&in->facts->fields[field]);
    given_column *column = &plan->columns[plan->column_count++];
    *column = (given_column){field, count, 1, take(L, plan->memory, count, size)};
    for (size_t i = 0; i < count; i++) {
        lua_rawgeti(L, table, (lua_Integer)i + 1);
        convert_one(L, in, field, i, column->data + i * size);
        lua_pop(L, 1);
    }
}

static void add_given(lua_State *L, batch_plan *plan) {
    const bound_struct *in = plan->of->in;
    const bound_host host = {L, bind_walk, bind_count, bind_recall, bind_remember, bind_take_handle};
    if (lua_type(L, -2) != LUA_TSTRING) luaL_error(L, "columns are given by the names of fields");
    const char *name = lua_tostring(L, -2);
    if (!strcmp(name, "outer")) {
        plan->outer = lua_toboolean(L, -1);
        return;
    }
    const frame_field *facts = frame_field_find(in->facts, name);
    if (!facts) {
        bound_unknown_field(in, name);
        bind_error(L);
    }
    const size_t field = (size_t)(facts - in->facts->fields);
    if (is_scalar(facts) && lua_istable(L, -1)) {
        add_column(L, plan, field, lua_gettop(L));
        return;
    }
    const bound_value value = bind_value(L, lua_gettop(L));
    if (bound_take_field(&host, in, field, &value, plan->base->result.in, &plan->base->result.arena)) bind_error(L);
}

/* A table has no order of its own: the columns of a grid stand in the order of the header's fields, the last changing
 * fastest. */
static void order(batch_plan *plan) {
    for (int i = 1; i < plan->column_count; i++)
        for (int k = i; k && plan->columns[k].field < plan->columns[k - 1].field; k--) {
            const given_column swapped = plan->columns[k];
            plan->columns[k] = plan->columns[k - 1];
            plan->columns[k - 1] = swapped;
        }
}

static void count_rows(lua_State *L, batch_plan *plan) {
    plan->rows = plan->column_count && !plan->outer ? plan->columns[0].count : 1;
    for (int i = plan->column_count; i-- > 0;) {
        given_column *column = &plan->columns[i];
        if (plan->outer) {
            column->inner = plan->rows;
            if (column->count && plan->rows > ((size_t)1 << 32) / column->count) luaL_error(L, "too many rows");
            plan->rows *= column->count;
        } else if (column->count != plan->rows)
            luaL_error(L, "%s: %d rows, where another column has %d", plan->of->in->facts->fields[column->field].name,
                       (int)column->count, (int)plan->rows);
    }
}

static void *expanded(lua_State *L, const batch_plan *plan, const given_column *column, size_t size) {
    if (!plan->outer) return column->data;
    char *all = take(L, plan->memory, plan->rows, size);
    for (size_t row = 0; row < plan->rows; row++)
        memcpy(all + row * size, column->data + row / column->inner % column->count * size, size);
    return all;
}

static void run(lua_State *L, batch_plan *plan, lua_batch *batch) {
    frame_batch_column ins[MOST_COLUMNS], outs[MOST_COLUMNS];
    const frame_struct *in = plan->of->in->facts, *out = plan->of->out->facts;
    size_t out_count = 0;
    for (int i = 0; i < plan->column_count; i++) {
        const size_t size = width_of(&in->fields[plan->columns[i].field]);
        ins[i] = (frame_batch_column){in->fields[plan->columns[i].field].name,
                                      expanded(L, plan, &plan->columns[i], size), size};
    }
    for (size_t i = 0; i < out->field_count && i < MOST_COLUMNS; i++) {
        if (!is_scalar(&out->fields[i]) && out->fields[i].kind != FRAME_FIELD_BITS) continue;
        const size_t size = width_of(&out->fields[i]);
        outs[out_count] = (frame_batch_column){out->fields[i].name, take(L, plan->memory, plan->rows, size), size};
        batch->out[i] = outs[out_count++].data;
    }
    int32_t *statuses = take(L, plan->memory, plan->rows, sizeof *statuses);
    batch->statuses = statuses;
    batch->rows = plan->rows;
    if (frame_batch(plan->of->calculation, plan->base->result.in, ins, (size_t)plan->column_count, outs, out_count,
                    plan->rows, statuses))
        bind_error(L);
}

int bind_batch(lua_State *L) {
    const char *name = luaL_checkstring(L, 1);
    batch_plan plan = {.of = bound_calculation_find(name)};
    luaL_checktype(L, 2, LUA_TTABLE);
    lua_settop(L, 2);
    if (!plan.of || plan.of->calculation->solve) {
        frame_fail(FRAME_UNKNOWN_NAME, "calculation", name, "a calculation with a fixed answer",
                   "calculation: \"%s\" has no batch form", name);
        return bind_error(L);
    }
    lua_batch *batch = lua_newuserdatauv(L, sizeof *batch, 1);
    memset(batch, 0, sizeof *batch);
    batch->of = plan.of;
    lua_newtable(L);
    plan.memory = 4;
    plan.base = bind_new_result(L, plan.of->out, plan.of, 1, 0);
    bind_own_memory(L, -1);
    bound_blank(plan.of->in, plan.base->result.in);
    for (lua_pushnil(L); lua_next(L, 2); lua_pop(L, 1)) add_given(L, &plan);
    order(&plan);
    count_rows(L, &plan);
    run(L, &plan, batch);
    lua_pushvalue(L, 4);
    lua_setiuservalue(L, 3, 1);
    lua_settop(L, 3);
    luaL_setmetatable(L, BIND_BATCH_TYPE);
    return 1;
}

/* -- the columns of results -- */

static void push_cell(lua_State *L, const lua_batch *batch, size_t field, size_t row, void *scratch) {
    const bound_struct *out = batch->of->out;
    const size_t size = width_of(&out->facts->fields[field]);
    memcpy((char *)scratch + out->facts->fields[field].offset, batch->out[field] + row * size, size);
    const bound_given given = bound_read(out, field, scratch);
    if (given.worth == BOUND_WORTH_NUMBER)
        lua_pushnumber(L, given.number);
    else if (given.worth == BOUND_WORTH_INTEGER)
        lua_pushinteger(L, given.integer);
    else if (given.worth == BOUND_WORTH_BOOL)
        lua_pushboolean(L, given.integer);
    else if (given.worth == BOUND_WORTH_TEXT)
        lua_pushstring(L, given.text);
    else if (given.worth == BOUND_WORTH_BITS) {
        const bound_result one = {.of = out, .calculation = batch->of, .out = scratch};
        char sentence[1024];
        const char *name;
        int bit = 0;
        lua_newtable(L);
        for (lua_Integer i = 1; bound_bit(&one, field, &bit, &name, sentence, sizeof sentence); i++) {
            lua_pushstring(L, sentence);
            lua_rawseti(L, -2, i);
        }
    } else
        lua_pushboolean(L, 0); /* a hole would end the list: a row without a figure reads false */
}

static int batch_index(lua_State *L) {
    const lua_batch *batch = luaL_checkudata(L, 1, BIND_BATCH_TYPE);
    const char *name = luaL_checkstring(L, 2);
    const frame_struct *out = batch->of->out->facts;
    const frame_field *facts = frame_field_find(out, name);
    if (!strcmp(name, "rows")) {
        lua_pushinteger(L, (lua_Integer)batch->rows);
        return 1;
    }
    const int status = !strcmp(name, "status");
    if (!status && (!facts || facts - out->fields >= MOST_COLUMNS || !batch->out[facts - out->fields])) {
        const char *near = frame_field_nearest(out, name);
        frame_fail(FRAME_UNKNOWN_FIELD, name, "", near ? near : "", "%s: %s gives no such column%s%s", name,
                   batch->of->calculation->name, near ? "; the nearest is " : "", near ? near : "");
        return bind_error(L);
    }
    void *scratch = lua_newuserdatauv(L, out->size, 0);
    memset(scratch, 0, out->size);
    lua_createtable(L, batch->rows < INT32_MAX ? (int)batch->rows : 0, 0);
    for (size_t row = 0; row < batch->rows; row++) {
        if (status)
            lua_pushstring(L, frame_status_name(batch->statuses[row]));
        else
            push_cell(L, batch, (size_t)(facts - out->fields), row, scratch);
        lua_rawseti(L, -2, (lua_Integer)row + 1);
    }
    return 1;
}

static int batch_length(lua_State *L) {
    const lua_batch *batch = luaL_checkudata(L, 1, BIND_BATCH_TYPE);
    lua_pushinteger(L, (lua_Integer)batch->rows);
    return 1;
}

static int batch_text(lua_State *L) {
    const lua_batch *batch = luaL_checkudata(L, 1, BIND_BATCH_TYPE);
    size_t failed = 0;
    for (size_t row = 0; row < batch->rows; row++) failed += batch->statuses[row] != FRAME_OK;
    lua_pushfstring(L, "%s of %I rows, %I failed", batch->of->calculation->name, (LUAI_UACINT)batch->rows,
                    (LUAI_UACINT)failed);
    return 1;
}

void bind_batch_open(lua_State *L) {
    static const luaL_Reg meta[] = {
        {"__index", batch_index}, {"__len", batch_length}, {"__tostring", batch_text}, {NULL, NULL}};
    luaL_newmetatable(L, BIND_BATCH_TYPE);
    luaL_setfuncs(L, meta, 0);
    lua_pop(L, 1);
}
