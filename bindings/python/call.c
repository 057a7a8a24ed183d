/* A call of a calculation: the values Python hands over fill the in-struct inside the result object. */
#include "bind.h"

static int take_working(bind_call *call, PyObject *object, const bound_calculation *of) {
    if (object == Py_None) return 1;
    const bound_handle *kind = bound_handle_find("working");
    call->working = kind ? bind_handle(object, "working", kind) : NULL;
    if (!call->working) return 0;
    if (!of->calculation->solve) return 1;
    call->locked = (py_handle *)Py_NewRef(object);
    call->locked->busy = 1;
    return 1;
}

static int take_values(bind_call *call, PyObject *values, const bound_calculation *of) {
    const bound_struct *in = of->in;
    if (!PyTuple_Check(values) || PyTuple_GET_SIZE(values) != in->given_count + 1) {
        PyErr_Format(PyExc_TypeError, "%s: %d values and a working are wanted", of->calculation->name, in->given_count);
        return 0;
    }
    bound_host host = bind_host;
    host.state = call;
    for (int i = 0; i < in->given_count; i++) {
        PyObject *object = PyTuple_GET_ITEM(values, i);
        if (object == Py_None || Py_TYPE(object) == bind_default_type) continue;
        const bound_value value = bind_value(object);
        if (PyErr_Occurred()) return 0;
        if (bound_take_field(&host, in, (size_t)in->given[i], &value, call->result->in, &call->result->arena)) {
            bind_raise();
            return 0;
        }
    }
    return take_working(call, PyTuple_GET_ITEM(values, in->given_count), of);
}

int bind_begin(bind_call *call, PyObject *values, const bound_calculation *of) {
    py_result *object = bind_new_result(of->out, of, 1, !of->calculation->solve);
    if (!object) return 0;
    call->native = (PyObject *)object;
    call->result = &object->result;
    bound_blank(of->in, call->result->in);
    return take_values(call, values, of);
}

int bind_begin_result(bind_call *call, const bound_struct *of) {
    py_result *object = bind_new_result(of, NULL, 0, 1);
    if (!object) return 0;
    call->native = (PyObject *)object;
    call->result = &object->result;
    return 1;
}

int bind_begin_handle(bind_call *call, const bound_handle *kind) {
    call->handle = bind_new_handle(kind);
    call->native = (PyObject *)call->handle;
    return call->handle != NULL;
}

void bind_give(bind_call *call, PyObject **result) {
    if (call->error[0]) {
        PyErr_Restore(call->error[0], call->error[1], call->error[2]);
        call->error[0] = NULL;
        Py_CLEAR(*result);
        return;
    }
    bind_set(result, call->native);
    call->native = NULL;
}

void bind_end(bind_call *call) {
    frame_watch_free(call->watch);
    if (call->error[0]) { /* the call failed besides: its own failure is raised */
        Py_XDECREF(call->error[0]);
        Py_XDECREF(call->error[1]);
        Py_XDECREF(call->error[2]);
    }
    if (call->locked) {
        call->locked->busy = 0;
        Py_DECREF(call->locked);
    }
    Py_XDECREF(call->native);
}
