/* Lua: what the shared interface leaves to the language. */
#define BIND_LONG(FUNCTION)

%header %{
/* SWIG's opening function becomes one of ours' steps: see module.c. */
#undef SWIG_init
#define SWIG_init bind_swig_open
#undef SWIGEXPORT
#define SWIGEXPORT
/* Arguments left out at the end read as nil; too many are refused in the words of the language. */
#undef SWIG_check_num_args
#define SWIG_check_num_args(function, least, most) \
    if (lua_gettop(L) > (most)) { bind_too_many(L, function, most); goto fail; } \
    lua_settop(L, most);
%}
