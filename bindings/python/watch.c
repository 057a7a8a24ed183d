/* A Python function that watches a long search: called on the searching thread, with the interpreter's lock taken anew.
 */
#include "bind.h"

static PyObject *number_or_none(double value) {
    if (value == FRAME_NOT_GIVEN) return Py_NewRef(Py_None);
    return PyFloat_FromDouble(value);
}

/* Goes on unless the function says False or raises. */
static int32_t look(void *user, double best, double bound) {
    bind_call *call = user;
    const PyGILState_STATE lock = PyGILState_Ensure();
    PyObject *first = number_or_none(best), *second = number_or_none(bound);
    PyObject *said = first && second ? PyObject_CallFunctionObjArgs(call->watcher, first, second, NULL) : NULL;
    const int go_on = said && said != Py_False;
    if (!said) PyErr_Fetch(&call->error[0], &call->error[1], &call->error[2]);
    Py_XDECREF(said);
    Py_XDECREF(first);
    Py_XDECREF(second);
    PyGILState_Release(lock);
    return go_on;
}

const void *bind_watch(bind_call *call, PyObject *function) {
    const frame_watcher watcher = {look, call};
    call->watcher = function;
    if (call->watch || !frame_watch_new(&watcher, &call->watch)) return call->watch;
    return NULL;
}
