/* What a Python value is to the library, and how a failure of the library becomes an exception. */
#include <math.h>
#include <string.h>

#include "bind.h"

PyObject *bind_errors[10];
static PyObject **remembered; /* for each list of words a dict of the texts looked up so far */
enum { MOST_REMEMBERED = 512 };

static bound_value integer_value(PyObject *object, bound_value value) {
    int overflow = 0;
    const long long integer = PyLong_AsLongLongAndOverflow(object, &overflow);
    value.kind = BOUND_INTEGER;
    value.integer = integer;
    value.number = overflow ? overflow * HUGE_VAL : (double)integer;
    if (overflow) {
        value.number = PyLong_AsDouble(object);
        if (PyErr_Occurred()) {
            PyErr_Clear();
            value.number = overflow * 1e308;
        }
    }
    return value;
}

static bound_value text_value(PyObject *object, bound_value value) {
    Py_ssize_t length = 0;
    value.kind = BOUND_TEXT;
    value.text = PyUnicode_AsUTF8AndSize(object, &length);
    value.length = (size_t)length;
    if (!value.text) {
        PyErr_Clear(); /* half a surrogate pair: no text in UTF-8, and refused as such */
        value.text = "\xff";
        value.length = 1;
    }
    return value;
}

/* Numbers of other kinds: of numpy, fractions, decimals. */
static bound_value other_value(PyObject *object, bound_value value) {
    const char *type = Py_TYPE(object)->tp_name;
    if (!strncmp(type, "numpy.bool", 10)) {
        value.kind = BOUND_BOOL;
        value.integer = PyObject_IsTrue(object);
        return value;
    }
    if (PySequence_Check(object)) {
        if (!PyBytes_Check(object) && !PyByteArray_Check(object)) value.kind = BOUND_MANY;
        return value;
    }
    if (PyIndex_Check(object)) {
        PyObject *whole = PyNumber_Index(object);
        if (whole) value = integer_value(whole, value);
        Py_XDECREF(whole);
        return value;
    }
    if (Py_TYPE(object)->tp_as_number && Py_TYPE(object)->tp_as_number->nb_float) {
        value.number = PyFloat_AsDouble(object);
        if (!PyErr_Occurred())
            value.kind = BOUND_NUMBER;
        else if (PyErr_ExceptionMatches(PyExc_TypeError))
            PyErr_Clear(); /* a complex number: it is no number here */
    }
    return value;
}

bound_value bind_value(PyObject *object) {
    bound_value value = {.kind = BOUND_OTHER, .native = object, .type = Py_TYPE(object)->tp_name};
    if (object == Py_None || Py_TYPE(object) == bind_default_type) {
        value.kind = BOUND_NOTHING;
        value.type = "None";
    } else if (PyFloat_Check(object)) {
        value.kind = BOUND_NUMBER;
        value.number = PyFloat_AS_DOUBLE(object);
    } else if (PyUnicode_Check(object)) {
        value = text_value(object, value);
    } else if (PyBool_Check(object)) {
        value.kind = BOUND_BOOL;
        value.integer = object == Py_True;
        value.type = object == Py_True ? "True" : "False";
    } else if (PyLong_Check(object)) {
        value = integer_value(object, value);
    } else if (PyTuple_Check(object) || PyList_Check(object)) {
        value.kind = BOUND_MANY;
        value.type = PyTuple_Check(object) ? "a tuple" : "a list";
    } else if (PyDict_Check(object)) {
        value.kind = BOUND_MANY;
        value.type = "a dict";
    } else {
        value = other_value(object, value);
    }
    return value;
}

/* -- walking -- */

static frame_status raised(void) {
    return frame_fail(FRAME_WRONG_TYPE, "", "", "", "an exception was raised");
}

static frame_status walk_dict(PyObject *dict, bound_visit visit, void *to) {
    PyObject *copy = PyDict_Copy(dict), *name, *entry; /* a value's own conversion may change the dict */
    if (!copy) return raised();
    frame_status status = FRAME_OK;
    for (Py_ssize_t at = 0; !status && PyDict_Next(copy, &at, &name, &entry);) {
        const bound_value key_value = bind_value(name), value = bind_value(entry);
        if (PyErr_Occurred())
            status = raised();
        else if (key_value.kind != BOUND_TEXT)
            status = frame_fail(FRAME_WRONG_TYPE, "", key_value.type, "names of fields",
                                "a dict's names must be texts, not %s", key_value.type);
        else {
            const bound_key key = {0, key_value.text};
            status = visit(to, &key, &value);
        }
    }
    Py_DECREF(copy);
    return status;
}

static frame_status walk(const bound_host *host, const bound_value *many, bound_visit visit, void *to) {
    PyObject *object = (PyObject *)many->native;
    (void)host;
    if (PyDict_Check(object)) return walk_dict(object, visit, to);
    PyObject *items = PySequence_Tuple(object); /* a tuple is itself; a list may be changed meanwhile */
    if (!items) return raised();
    frame_status status = FRAME_OK;
    for (Py_ssize_t i = 0; !status && i < PyTuple_GET_SIZE(items); i++) {
        const bound_key key = {(size_t)i, NULL};
        const bound_value value = bind_value(PyTuple_GET_ITEM(items, i));
        status = PyErr_Occurred() ? raised() : visit(to, &key, &value);
    }
    Py_DECREF(items);
    return status;
}

static size_t count(const bound_host *host, const bound_value *many, int *named) {
    PyObject *object = (PyObject *)many->native;
    (void)host;
    if (PyDict_Check(object)) {
        *named = PyDict_GET_SIZE(object) > 0;
        return 0;
    }
    const Py_ssize_t size = PySequence_Size(object);
    if (size < 0) PyErr_Clear();
    return size < 0 ? 0 : (size_t)size;
}

static int recall(const bound_host *host, int words, const bound_value *value, int32_t *number) {
    (void)host;
    if (!value->native || !remembered[words]) return 0;
    PyObject *found = PyDict_GetItem(remembered[words], (PyObject *)value->native);
    if (found) *number = (int32_t)PyLong_AsLong(found);
    return found != NULL;
}

static void remember(const bound_host *host, int words, const bound_value *value, int32_t number) {
    (void)host;
    if (!value->native) return;
    if (!remembered[words]) remembered[words] = PyDict_New();
    PyObject *kept = PyLong_FromLong(number);
    if (kept && remembered[words]) {
        if (PyDict_GET_SIZE(remembered[words]) >= MOST_REMEMBERED) PyDict_Clear(remembered[words]);
        PyDict_SetItem(remembered[words], (PyObject *)value->native, kept);
    }
    Py_XDECREF(kept);
    PyErr_Clear();
}

static const void *handle(const bound_host *host, const bound_value *value, const bound_handle *kind) {
    PyObject *object = (PyObject *)value->native;
    if (object && host->state && !strcmp(kind->name, "watch") && PyCallable_Check(object) && !PyType_Check(object))
        return bind_watch(host->state, object);
    if (!object || !PyObject_TypeCheck(object, bind_handle_type)) return NULL;
    const py_handle *found = (const py_handle *)object;
    return found->kind == kind ? found->pointer : NULL;
}

const bound_host bind_host = {NULL, walk, count, recall, remember, handle};

/* -- errors -- */

PyObject *bind_text(const char *chars) {
    if (!chars) return Py_NewRef(Py_None);
    return PyUnicode_DecodeUTF8(chars, (Py_ssize_t)strlen(chars), "replace");
}

void bind_set(PyObject **result, PyObject *object) {
    Py_XDECREF(*result);
    *result = object;
}

static void set_text(PyObject *error, const char *name, const char *chars) {
    PyObject *text = bind_text(chars);
    if (!text || PyObject_SetAttrString(error, name, text)) PyErr_Clear();
    Py_XDECREF(text);
}

void bind_raise(void) {
    if (PyErr_Occurred()) return;
    const frame_status status = frame_error_status();
    const int group = status > 0 && status < 1000 ? status / 100 : 9;
    PyObject *class = bind_errors[group] ? bind_errors[group] : PyExc_ValueError;
    PyObject *text = bind_text(frame_error_text());
    PyObject *error = text ? PyObject_CallFunctionObjArgs(class, text, NULL) : NULL;
    Py_XDECREF(text);
    if (!error) return;
    set_text(error, "status", frame_status_name(status));
    set_text(error, "field", frame_error_field());
    set_text(error, "value", frame_error_value());
    set_text(error, "valid", frame_error_valid());
    PyErr_SetObject(class, error);
    Py_DECREF(error);
}

int bind_values_init(void) {
    if (!remembered) remembered = PyMem_Calloc((size_t)bound_words_count + 1, sizeof *remembered);
    if (!remembered) PyErr_NoMemory();
    return remembered ? 0 : -1;
}
