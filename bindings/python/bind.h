/* Python's side of the shared interface: its objects, its values, its errors, and the BIND_ macros of frame.i. */
#ifndef FRAME_BINDINGS_PYTHON_BIND_H
#define FRAME_BINDINGS_PYTHON_BIND_H

#define PY_SSIZE_T_CLEAN
#include <Python.h>

#include "bound.h"

/* A result, an answer, or an item of one. The in-struct and the out-struct stand behind it in the same block. */
typedef struct py_result {
    PyObject_VAR_HEAD bound_result result;
    PyObject *owner; /* of an item: the answer it belongs to */
} py_result;

/* A drawing, a working, a stick, ... */
typedef struct py_handle {
    PyObject_HEAD void *pointer;
    const bound_handle *kind;
    int busy; /* a long call of another thread is writing to it */
} py_handle;

/* One call in progress. What is still here at its end is let go. */
typedef struct bind_call {
    PyObject *native;
    bound_result *result;
    py_handle *handle, *locked;
    frame_working *working;
    frame_watch *watch; /* made of a function that was given */
    PyObject *watcher;  /* the function; borrowed */
    PyObject *error[3]; /* what it raised */
} bind_call;

extern PyTypeObject *bind_result_type, *bind_handle_type, *bind_default_type;
extern const bound_host bind_host;

/* -- values and errors (values.c) -- */
bound_value bind_value(PyObject *object);
/* Turns the thread's failure into an exception, unless one is set already. */
void bind_raise(void);
PyObject *bind_text(const char *chars);
void bind_set(PyObject **result, PyObject *object);
int bind_values_init(void);

/* -- objects (result.c, handle.c, pickle.c) -- */
py_result *bind_new_result(const bound_struct *of, const bound_calculation *calculation, int with_in, int with_out);
frame_answer *bind_answer_of(const py_result *object);
PyObject *bind_item(py_result *owner, int list, size_t place);
PyObject *bind_items(py_result *owner, int list, size_t first, size_t count);
PyObject *bind_field(py_result *object, size_t field);
PyObject *bind_to_dict(PyObject *object, PyObject *none);
PyObject *bind_reduce(PyObject *object, PyObject *none);
PyObject *bind_method_of(py_result *object, PyObject *name);
int bind_result_init(void);
py_handle *bind_new_handle(const bound_handle *kind);
void *bind_handle(PyObject *object, const char *name, const bound_handle *kind);
frame_answer *bind_answer(PyObject *object, const char *name, const bound_calculation *of);
int bind_handle_init(void);

/* -- calls (call.c) -- */
int bind_begin(bind_call *call, PyObject *values, const bound_calculation *of);
int bind_begin_result(bind_call *call, const bound_struct *of);
int bind_begin_handle(bind_call *call, const bound_handle *kind);
/* Hands the native object out; nothing when a watching function raised, which is raised then. */
void bind_give(bind_call *call, PyObject **result);
void bind_end(bind_call *call);
/* The watch of a function that was given for a call; NULL when it is none. */
const void *bind_watch(bind_call *call, PyObject *function);

/* -- functions of the module itself -- */
PyObject *bind_batch(PyObject *self, PyObject *args);
PyObject *bind_column(PyObject *self, PyObject *args);
PyObject *bind_expand(PyObject *self, PyObject *args);
PyObject *bind_refuse(PyObject *self, PyObject *args);
PyObject *bind_default(PyObject *self, PyObject *text);
PyObject *bind_restore(PyObject *self, PyObject *args);
PyObject *bind_register(PyObject *self, PyObject *args);
PyObject *bind_view(PyObject *self, PyObject *args);
PyObject *bind_items_of(PyObject *self, PyObject *args);
PyObject *bind_column_texts(PyObject *self, PyObject *args);
PyObject *bind_status(PyObject *self, PyObject *code);
PyObject *bind_sentences(py_result *object, size_t field, int want_names);
PyObject *bind_fields(PyObject *self, PyObject *name);
PyObject *bind_words(PyObject *self, PyObject *name);
PyObject *bind_help(PyObject *self, PyObject *name);
PyObject *bind_save(PyObject *self, PyObject *args);
PyObject *bind_live_blocks(PyObject *self, PyObject *args);
int bind_init(PyObject *module);
/* What Python registered: the classes of errors by hundreds of the status, the classes of handles, the methods of
 * results. */
extern PyObject *bind_errors[10], **bind_classes, **bind_methods;

/* -- what frame.i asks for -- */
#define BIND_VALUE(object) bind_value(object)
#define BIND_HOST (&bind_host)
#define BIND_RAISE bind_raise()
#define BIND_GIVE_NOTHING bind_set(&resultobj, Py_NewRef(Py_None))
#define BIND_GIVE_NUMBER(value) bind_set(&resultobj, PyFloat_FromDouble(value))
#define BIND_GIVE_INTEGER(value) bind_set(&resultobj, PyLong_FromLongLong(value))
#define BIND_GIVE_BOOL(value) bind_set(&resultobj, PyBool_FromLong(value))
#define BIND_GIVE_CHARS(chars) bind_set(&resultobj, bind_text(chars))

#define BIND_ARENA frame_arena
#define BIND_NO_ARENA \
    { NULL }
#define BIND_OPEN(arena) (void)(arena)
#define BIND_ARENA_OF(arena) (&(arena))
#define BIND_CLOSE(arena) frame_arena_give(&(arena))

#define BIND_TEXT frame_text *
#define BIND_NO_TEXT NULL
#define BIND_NEW_TEXT(text) (!frame_text_new(&(text)))
#define BIND_TEXT_OF(text) (text)
#define BIND_FREE_TEXT(text) frame_text_free(text)

#define BIND_NO_CALL                                \
    {                                               \
        NULL, NULL, NULL, NULL, NULL, NULL, NULL, { \
            NULL, NULL, NULL                        \
        }                                           \
    }
#define BIND_BEGIN(call, object, calculation) bind_begin(&(call), object, calculation)
#define BIND_NEW_RESULT(call, of) bind_begin_result(&(call), of)
#define BIND_NEW_HANDLE(call, kind) bind_begin_handle(&(call), kind)
#define BIND_GIVE(call) bind_give(&(call), &resultobj)
#define BIND_OWN(call) (void)0
#define BIND_END(call) bind_end(&(call))
#define BIND_SETTLE (void)0
#define BIND_HANDLE(object, name, kind) bind_handle(object, name, kind)
#define BIND_ANSWER(object, name, of) bind_answer(object, name, of)

#if PY_VERSION_HEX < 0x030A0000
static inline PyObject *Py_NewRef(PyObject *object) {
    Py_INCREF(object);
    return object;
}
#endif

#endif
