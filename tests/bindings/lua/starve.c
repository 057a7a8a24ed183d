/* Lua running out of memory at every single allocation: its errors jump over C, and nothing of the library's may be
 * lost. starve FRAME_SO_PATTERN      ("build/lua/?.so") */
#include <lauxlib.h>
#include <lua.h>
#include <lualib.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

typedef struct budget {
    long left; /* allocations until one fails; negative: no limit */
    int failed;
} budget;

static void *allocate(void *user, void *block, size_t before, size_t size) {
    budget *b = user;
    if (!size) {
        free(block);
        return NULL;
    }
    if (b->left > 0 && (!block || size > before) && !--b->left) {
        b->failed = 1;
        b->left = 1; /* and all after it */
        return NULL;
    }
    return realloc(block, size);
}

static const char script[] =
    "return function(frame)\n"
    "  local w = frame.working()\n"
    "  local r = frame.rafter{ run_in = '6 ft', slope = '7 in 12', depth_in = 5.5, seat_in = 3.5, name = 'rafter', "
    "working = w }\n"
    "  local s = tostring(r) .. tostring(w)\n"
    "  r:drawing():svg()\n"
    "  local n = 0\n"
    "  for mark in r:stick().marks() do n = n + #mark.label end\n"
    "  local plan = frame.stock_plan{ pieces = { { 100, 3, 'rafter' }, { 20, 9 } }, stock = { { '12 ft', 10 } } }\n"
    "  for board in plan.boards() do n = n + #board.pieces end\n"
    "  plan:to_table()\n"
    "  w:mark{ A = 3 }\n"
    "  frame.batch('section', { size = { '2x4', '2x6' }, plies = { 1, 2 }, outer = true })\n"
    "  local bad = { pcall(frame.stock_plan, { pieces = { { 100, 3, 'rafter' }, { 'x' } }, stock = {} }) }\n"
    "  if type(bad[2]) == 'string' then error(bad[2], 0) end\n"
    "  pcall(frame.stick, { name = 'x', planes = { { role = 'nothing' } } })\n"
    "  frame.help 'rafter'\n"
    "end\n";

static lua_State *open_state(budget *b, const char *pattern) {
    lua_State *L = lua_newstate(allocate, b);
    if (!L) return NULL;
    luaL_openlibs(L);
    lua_getglobal(L, "package");
    lua_pushstring(L, pattern);
    lua_setfield(L, -2, "cpath");
    lua_settop(L, 0);
    return L;
}

static int require(lua_State *L) {
    lua_getglobal(L, "require");
    lua_pushliteral(L, "frame");
    lua_call(L, 1, 1);
    return 1;
}

/* A state that stays open, so that the module and its count stay loaded. */
static budget unlimited = {-1, 0};
static lua_State *witness;

static long live(void) {
    require(witness);
    lua_getfield(witness, -1, "_live_blocks");
    lua_call(witness, 0, 1);
    const long blocks = (long)lua_tointeger(witness, -1);
    lua_settop(witness, 0);
    return blocks;
}

/* The n-th allocation after the module is there fails; gives 0 when the script came to its end. */
static int starved_call(const char *pattern, long n) {
    budget b = {-1, 0};
    lua_State *L = open_state(&b, pattern);
    require(L);
    if (luaL_loadstring(L, script) || lua_pcall(L, 0, 1, 0)) {
        fprintf(stderr, "%s\n", lua_tostring(L, -1));
        exit(1);
    }
    lua_pushvalue(L, 1);
    b.left = n;
    const int status = lua_pcall(L, 1, 0, 0);
    b.left = -1;
    if (status && !b.failed) {
        luaL_tolstring(L, -1, NULL);
        fprintf(stderr, "%s\n", lua_tostring(L, -1));
        exit(1);
    }
    lua_close(L);
    return b.failed;
}

static int starved_opening(const char *pattern, long n) {
    budget b = {-1, 0};
    lua_State *L = open_state(&b, pattern);
    lua_pushcfunction(L, require);
    lua_getglobal(L, "_G");
    const void *globals = lua_topointer(L, -1);
    lua_pop(L, 1);
    b.left = n;
    lua_pcall(L, 0, 0, 0);
    b.left = -1;
    lua_rawgeti(L, LUA_REGISTRYINDEX, LUA_RIDX_GLOBALS);
    if (lua_topointer(L, -1) != globals) {
        fprintf(stderr, "the table of globals was not put back\n");
        exit(1);
    }
    lua_close(L);
    return b.failed;
}

int main(int count, char **arguments) {
    if (count != 2) return 2;
    const char *pattern = arguments[1];
    witness = open_state(&unlimited, pattern);
    const long blocks = live();
    long n = 1;
    while (starved_call(pattern, n)) {
        if (live() != blocks) {
            fprintf(stderr, "allocation %ld of the calls failed, and %ld blocks of the library were lost\n", n,
                    live() - blocks);
            return 1;
        }
        n += 1 + n / 200;
    }
    const long calls = n;
    for (n = 1; starved_opening(pattern, n); n += 1 + n / 50) continue;
    printf("the %ld allocations of the calls, and of opening %ld, can fail\n", calls, n);
    const int lost = live() != blocks;
    lua_close(witness);
    return lost;
}
