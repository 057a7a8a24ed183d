/* Handles as Python objects: the classes of drawings, workings and sticks stand in __init__.py, made from api.json;
 * what they share is here. */
#include <string.h>

#include "bind.h"

PyTypeObject *bind_handle_type;

py_handle *bind_new_handle(const bound_handle *kind) {
    PyObject *class = bind_classes[kind->index];
    PyTypeObject *type = class ? (PyTypeObject *)class : bind_handle_type;
    py_handle *object = (py_handle *)type->tp_alloc(type, 0);
    if (object) object->kind = kind;
    return object;
}

static void dealloc(PyObject *self) {
    py_handle *object = (py_handle *)self;
    PyTypeObject *type = Py_TYPE(self);
    if (object->pointer) object->kind->release(object->pointer);
    type->tp_free(self);
    Py_DECREF(type);
}

static void *refuse(const char *name, PyObject *object, const char *wanted) {
    frame_fail(FRAME_WRONG_TYPE, name, Py_TYPE(object)->tp_name, wanted, "%s: %s is not a %s", name,
               Py_TYPE(object)->tp_name, wanted);
    bind_raise();
    return NULL;
}

void *bind_handle(PyObject *object, const char *name, const bound_handle *kind) {
    if (!PyObject_TypeCheck(object, bind_handle_type)) return refuse(name, object, kind->name);
    py_handle *handle = (py_handle *)object;
    if (handle->kind != kind || !handle->pointer) return refuse(name, object, kind->name);
    if (handle->busy) {
        frame_fail(FRAME_CONFLICT, name, "", "one of its own for each thread",
                   "%s: a call of another thread is writing to it", name);
        bind_raise();
        return NULL;
    }
    return handle->pointer;
}

frame_answer *bind_answer(PyObject *object, const char *name, const bound_calculation *of) {
    if (Py_TYPE(object) != bind_result_type) return refuse(name, object, of->calculation->name);
    const py_result *result = (py_result *)object;
    if (result->result.calculation != of || !result->result.answer) return refuse(name, object, of->calculation->name);
    return result->result.answer;
}

/* -- lists of a handle: stick.marks -- */

static PyObject *item_at(const bound_list *list, const void *pointer, size_t place) {
    py_result *item = bind_new_result(list->item, NULL, 0, 1);
    if (!item) return NULL;
    if (list->at(pointer, place, item->result.out, list->item->facts->size) || bound_result_own_texts(&item->result)) {
        bind_raise();
        Py_DECREF(item);
        return NULL;
    }
    return (PyObject *)item;
}

static PyObject *items_of(const py_handle *handle, const bound_list *list) {
    const size_t count = list->count(handle->pointer);
    PyObject *items = PyTuple_New((Py_ssize_t)count);
    for (size_t i = 0; items && i < count; i++) {
        PyObject *item = item_at(list, handle->pointer, i);
        if (item)
            PyTuple_SET_ITEM(items, (Py_ssize_t)i, item);
        else
            Py_CLEAR(items);
    }
    return items;
}

/* _items(handle, plural): a list of it, copied. */
PyObject *bind_items_of(PyObject *self, PyObject *args) {
    PyObject *object;
    const char *plural;
    (void)self;
    if (!PyArg_ParseTuple(args, "O!s", bind_handle_type, &object, &plural)) return NULL;
    const py_handle *handle = (py_handle *)object;
    if (!handle->kind || !bind_handle(object, "self", handle->kind)) return NULL;
    for (int i = 0; i < handle->kind->list_count; i++)
        if (!strcmp(handle->kind->lists[i].plural, plural)) return items_of(handle, &handle->kind->lists[i]);
    return PyErr_Format(PyExc_AttributeError, "%s", plural);
}

static PyType_Slot slots[] = {
    {Py_tp_dealloc, dealloc}, {Py_tp_doc, "Something the library keeps: a drawing, a working, a stick."}, {0, NULL}};
static PyType_Spec spec = {"frame.Handle", sizeof(py_handle), 0, Py_TPFLAGS_DEFAULT | Py_TPFLAGS_BASETYPE, slots};

int bind_handle_init(void) {
    bind_handle_type = (PyTypeObject *)PyType_FromSpec(&spec);
    if (!bind_handle_type) return -1;
    bind_handle_type->tp_new = NULL;
    return 0;
}
