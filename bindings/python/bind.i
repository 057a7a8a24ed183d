/* Python: what the shared interface leaves to the language. The interpreter's lock is let go only around what can last. */
%nothread;
%define BIND_LONG(FUNCTION)
%thread FUNCTION;
%enddef

%init %{
    if (bind_init(m)) return NULL;
%}
