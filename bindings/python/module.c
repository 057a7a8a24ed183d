/* The module's own functions: what __init__.py is built on. */
#include <string.h>

#include "bind.h"
#include "text/writer.h"

PyObject **bind_classes, **bind_methods;
PyTypeObject *bind_default_type;

/* -- what stands in a signature for a field that is not given: its repr is the documented default -- */

typedef struct py_default {
    PyObject_HEAD PyObject *text;
} py_default;

static void default_dealloc(PyObject *self) {
    PyTypeObject *type = Py_TYPE(self);
    Py_XDECREF(((py_default *)self)->text);
    type->tp_free(self);
    Py_DECREF(type);
}
static PyObject *default_repr(PyObject *self) {
    return Py_NewRef(((py_default *)self)->text);
}
static int default_bool(PyObject *self) {
    (void)self;
    return 0;
}
static PyType_Slot default_slots[] = {
    {Py_tp_dealloc, default_dealloc},
    {Py_tp_repr, default_repr},
    {Py_nb_bool, default_bool},
    {Py_tp_doc, "Not given: the documented default counts, and the result's assumed says so."},
    {0, NULL}};
static PyType_Spec default_spec = {"frame.Default", sizeof(py_default), 0, Py_TPFLAGS_DEFAULT, default_slots};

PyObject *bind_default(PyObject *self, PyObject *text) {
    (void)self;
    if (!PyUnicode_Check(text)) return PyErr_Format(PyExc_TypeError, "a text is wanted");
    py_default *object = (py_default *)bind_default_type->tp_alloc(bind_default_type, 0);
    if (object) object->text = Py_NewRef(text);
    return (PyObject *)object;
}

/* -- refusing unknown fields, registering classes -- */

/* _refuse(struct, {name: value}): raises for the first name a struct does not have. */
PyObject *bind_refuse(PyObject *self, PyObject *args) {
    const char *name;
    PyObject *unknown, *key, *value;
    Py_ssize_t at = 0;
    (void)self;
    if (!PyArg_ParseTuple(args, "sO!", &name, &PyDict_Type, &unknown)) return NULL;
    const bound_struct *of = bound_struct_of(frame_struct_find(name));
    if (of && PyDict_Next(unknown, &at, &key, &value)) {
        const char *chars = PyUnicode_AsUTF8(key);
        if (!chars) return NULL;
        bound_unknown_field(of, chars);
        bind_raise();
        return NULL;
    }
    Py_RETURN_NONE;
}

static PyObject *known_classes(PyObject **places, int place, PyObject *object) {
    Py_XSETREF(places[place], Py_NewRef(object));
    Py_RETURN_NONE;
}

/* _register("error", class, n), ("handle", class, name), ("methods", dict, calculation). */
PyObject *bind_register(PyObject *self, PyObject *args) {
    const char *what;
    PyObject *object, *where;
    (void)self;
    if (!PyArg_ParseTuple(args, "sOO", &what, &object, &where)) return NULL;
    if (!strcmp(what, "error")) {
        const long group = PyLong_AsLong(where);
        if (group >= 0 && group < 10) return known_classes(bind_errors, (int)group, object);
    } else if (PyUnicode_Check(where)) {
        const char *name = PyUnicode_AsUTF8(where);
        const bound_handle *handle = !strcmp(what, "handle") ? bound_handle_find(name) : NULL;
        const bound_calculation *of = !strcmp(what, "methods") ? bound_calculation_find(name) : NULL;
        if (handle) return known_classes(bind_classes, handle->index, object);
        if (of && PyDict_Check(object)) return known_classes(bind_methods, of->index, object);
    }
    return PyErr_Occurred() ? NULL : PyErr_Format(PyExc_ValueError, "nothing to register as %s", what);
}

PyObject *bind_method_of(py_result *object, PyObject *name) {
    const bound_calculation *of = object->result.calculation;
    PyObject *methods = of && object->result.list < 0 ? bind_methods[of->index] : NULL;
    PyObject *function = methods ? PyDict_GetItem(methods, name) : NULL;
    return function ? PyMethod_New(function, (PyObject *)object) : NULL;
}

/* _view(result, name): the drawing or stick of a result. */
PyObject *bind_view(PyObject *self, PyObject *args) {
    py_result *object;
    const char *name;
    (void)self;
    if (!PyArg_ParseTuple(args, "O!s", bind_result_type, &object, &name)) return NULL;
    const bound_calculation *of = object->result.calculation;
    const bound_handle *kind = bound_handle_find(name);
    for (size_t i = 0; of && object->result.in && kind && i < of->calculation->view_count; i++) {
        if (strcmp(of->calculation->views[i].name, name)) continue;
        py_handle *made = bind_new_handle(kind);
        if (made && of->calculation->views[i].make(object->result.in, &made->pointer)) {
            bind_raise();
            Py_CLEAR(made);
        }
        return (PyObject *)made;
    }
    return PyErr_Format(PyExc_AttributeError, "this result has no %s", name);
}

/* -- the facts -- */

static PyObject *number_or_none(double value) {
    return value == FRAME_NOT_GIVEN ? Py_NewRef(Py_None) : PyFloat_FromDouble(value);
}

static PyObject *fields_of(const frame_struct *facts);

static PyObject *field_dict(const frame_field *field) {
    PyObject *element = field->element ? fields_of(field->element) : Py_NewRef(Py_None);
    if (!element) return NULL;
    return Py_BuildValue("{s:s,s:s,s:s,s:s,s:s,s:s,s:s,s:s,s:N,s:N,s:O,s:O,s:N}", "name", field->name, "kind",
                         frame_word_text("field_kind", field->kind), "need", frame_word_text("field_need", field->need),
                         "unit", field->unit, "meaning", field->meaning, "valid", field->valid, "default",
                         field->fallback_text, "words", field->words, "low", number_or_none(field->low), "high",
                         number_or_none(field->high), "low_open", field->low_open ? Py_True : Py_False, "high_open",
                         field->high_open ? Py_True : Py_False, "element", element);
}

static PyObject *fields_of(const frame_struct *facts) {
    PyObject *list = PyList_New(0);
    for (size_t i = 0; list && i < facts->field_count; i++) {
        PyObject *field = field_dict(&facts->fields[i]);
        if (!field || PyList_Append(list, field)) Py_CLEAR(list);
        Py_XDECREF(field);
    }
    return list;
}

PyObject *bind_fields(PyObject *self, PyObject *name) {
    (void)self;
    const char *chars = PyUnicode_Check(name) ? PyUnicode_AsUTF8(name) : NULL;
    if (!chars) return PyErr_Occurred() ? NULL : PyErr_Format(PyExc_TypeError, "a name is wanted");
    const frame_calculation *calculation = frame_calculation_find(chars);
    const frame_struct *facts = calculation ? frame_calculation_in(calculation) : frame_struct_find(chars);
    if (facts) return fields_of(facts);
    frame_fail(FRAME_UNKNOWN_NAME, "name", chars, "a calculation or a struct", "name: nothing is called \"%s\"", chars);
    bind_raise();
    return NULL;
}

PyObject *bind_words(PyObject *self, PyObject *name) {
    (void)self;
    const char *chars = PyUnicode_Check(name) ? PyUnicode_AsUTF8(name) : NULL;
    if (!chars) return PyErr_Occurred() ? NULL : PyErr_Format(PyExc_TypeError, "a name is wanted");
    const size_t count = frame_word_count(chars);
    if (!count) {
        frame_fail(FRAME_UNKNOWN_NAME, "name", chars, "a list of words", "name: no list of words \"%s\"", chars);
        bind_raise();
        return NULL;
    }
    PyObject *list = PyList_New(0);
    for (size_t i = 0; list && i < count; i++) {
        PyObject *text = bind_text(frame_word_text(chars, frame_word_at(chars, i)));
        if (!text || PyList_Append(list, text)) Py_CLEAR(list);
        Py_XDECREF(text);
    }
    return list;
}

PyObject *bind_help(PyObject *self, PyObject *name) {
    frame_text *text;
    PyObject *shown = NULL;
    (void)self;
    const char *chars = PyUnicode_Check(name) ? PyUnicode_AsUTF8(name) : NULL;
    if (!chars) return PyErr_Occurred() ? NULL : PyErr_Format(PyExc_TypeError, "a name is wanted");
    if (frame_text_new(&text)) {
        bind_raise();
        return NULL;
    }
    if (bound_help(chars, text))
        bind_raise();
    else
        shown = bind_text(frame_text_chars(text));
    frame_text_free(text);
    return shown;
}

/* _save(text, path): whole or not at all. */
PyObject *bind_save(PyObject *self, PyObject *args) {
    const char *chars;
    Py_ssize_t length;
    PyObject *path;
    frame_text *text;
    (void)self;
    if (!PyArg_ParseTuple(args, "s#O&", &chars, &length, PyUnicode_FSConverter, &path)) return NULL;
    int good = !frame_text_new(&text);
    if (good) {
        frame_text_add_bytes(text, chars, (size_t)length);
        good = !frame_text_save(text, PyBytes_AS_STRING(path));
        frame_text_free(text);
    }
    Py_DECREF(path);
    if (good) Py_RETURN_NONE;
    bind_raise();
    return NULL;
}

PyObject *bind_live_blocks(PyObject *self, PyObject *args) {
    (void)self;
    (void)args;
    return PyLong_FromLong(bound_live_blocks());
}

static PyObject *bind_calculations(PyObject *self, PyObject *none) {
    PyObject *list = PyList_New(0);
    (void)self;
    (void)none;
    for (int i = 0; list && i < bound_calculation_count; i++) {
        PyObject *name = PyUnicode_FromString(bound_calculations[i]->calculation->name);
        if (!name || PyList_Append(list, name)) Py_CLEAR(list);
        Py_XDECREF(name);
    }
    return list;
}

static PyMethodDef functions[] = {{"_default", bind_default, METH_O, NULL},
                                  {"_refuse", bind_refuse, METH_VARARGS, NULL},
                                  {"_register", bind_register, METH_VARARGS, NULL},
                                  {"_view", bind_view, METH_VARARGS, NULL},
                                  {"_restore", bind_restore, METH_VARARGS, NULL},
                                  {"_fields", bind_fields, METH_O, NULL},
                                  {"_words", bind_words, METH_O, NULL},
                                  {"_help", bind_help, METH_O, NULL},
                                  {"_items", bind_items_of, METH_VARARGS, NULL},
                                  {"_column_texts", bind_column_texts, METH_VARARGS, NULL},
                                  {"_status", bind_status, METH_O, NULL},
                                  {"_calculations", bind_calculations, METH_NOARGS, NULL},
                                  {"_save", bind_save, METH_VARARGS, NULL},
                                  {"_column", bind_column, METH_VARARGS, NULL},
                                  {"_expand", bind_expand, METH_VARARGS, NULL},
                                  {"_batch", bind_batch, METH_VARARGS, NULL},
                                  {"_live_blocks", bind_live_blocks, METH_NOARGS,
                                   "_live_blocks()\n--\n\nBlocks of memory the library holds at this moment."},
                                  {NULL, NULL, 0, NULL}};

int bind_init(PyObject *module) {
    bound_count_memory();
    bind_default_type = (PyTypeObject *)PyType_FromSpec(&default_spec);
    bind_classes = PyMem_Calloc((size_t)bound_handle_count + 1, sizeof *bind_classes);
    bind_methods = PyMem_Calloc((size_t)bound_calculation_count + 1, sizeof *bind_methods);
    if (!bind_default_type || !bind_classes || !bind_methods) return -1;
    bind_default_type->tp_new = NULL;
    if (PyModule_AddFunctions(module, functions)) return -1;
    if (bind_values_init() || bind_result_init() || bind_handle_init()) return -1;
    if (PyModule_AddObject(module, "Result", Py_NewRef((PyObject *)bind_result_type))) return -1;
    return PyModule_AddObject(module, "Handle", Py_NewRef((PyObject *)bind_handle_type));
}
