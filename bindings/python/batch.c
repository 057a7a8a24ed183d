/* A calculation over columns. A column of doubles is read where it lies, whatever its stride; anything else is
 * converted once. The interpreter's lock is let go while the rows are worked through. */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "bind.h"

enum { MOST_COLUMNS = 64 };

static int is_wide(const frame_field *field) {
    return field->kind == FRAME_FIELD_NUMBER || field->kind == FRAME_FIELD_BITS;
}

static int fail_raised(void) {
    bind_raise();
    return 0;
}

/* -- converting -- */

static frame_status convert(const bound_struct *of, size_t field, const char *name, const bound_value *value,
                            char *into) {
    const frame_field *facts = &of->facts->fields[field];
    double *number = (double *)(void *)into;
    int32_t *integer = (int32_t *)(void *)into;
    if (facts->kind == FRAME_FIELD_NUMBER)
        *number = FRAME_NOT_GIVEN;
    else
        *integer = FRAME_NOT_GIVEN_INT;
    if (value->kind == BOUND_NOTHING) return FRAME_OK;
    if (facts->kind == FRAME_FIELD_NUMBER)
        return bound_take_number(name, of->fields[field].notation, facts->valid, value, number);
    if (facts->kind == FRAME_FIELD_INTEGER) return bound_take_integer(name, facts->valid, value, integer);
    if (facts->kind == FRAME_FIELD_BOOL) return bound_take_bool(name, value, integer);
    return bound_take_word(&bind_host, name, of->fields[field].words, value, integer);
}

static int convert_one(const bound_struct *of, size_t field, PyObject *object, size_t place, char *into) {
    const bound_value value = bind_value(object);
    const char *name = of->facts->fields[field].name;
    char with_place[160];
    if (PyErr_Occurred()) return 0;
    if (!convert(of, field, name, &value, into)) return 1;
    snprintf(with_place, sizeof with_place, "%s[%zu]", name, place); /* only a refusal needs it */
    convert(of, field, with_place, &value, into);
    return fail_raised();
}

static const bound_struct *in_of(const char *name) {
    const bound_calculation *of = bound_calculation_find(name);
    if (of) return of->in;
    frame_fail(FRAME_UNKNOWN_NAME, "calculation", name, "a calculation", "calculation: none is called \"%s\"", name);
    bind_raise();
    return NULL;
}

static int column_field(const bound_struct *of, const char *name, size_t *field) {
    const frame_field *facts = frame_field_find(of->facts, name);
    if (!facts) {
        bound_unknown_field(of, name);
        return fail_raised();
    }
    if (!is_wide(facts) && facts->kind != FRAME_FIELD_INTEGER && facts->kind != FRAME_FIELD_WORD &&
        facts->kind != FRAME_FIELD_BOOL) {
        frame_fail(FRAME_WRONG_TYPE, name, "", "a number, integer, word or yes/no", "%s: cannot be a column", name);
        return fail_raised();
    }
    *field = (size_t)(facts - of->facts->fields);
    return 1;
}

/* _column(calculation, field, values): the values as the library takes them, one after the other. */
PyObject *bind_column(PyObject *self, PyObject *args) {
    const char *name, *field_name;
    PyObject *values;
    size_t field;
    (void)self;
    if (!PyArg_ParseTuple(args, "ssO", &name, &field_name, &values)) return NULL;
    const bound_struct *of = in_of(name);
    if (!of || !column_field(of, field_name, &field)) return NULL;
    PyObject *items = PySequence_Tuple(values);
    if (!items) return NULL;
    const size_t size = is_wide(&of->facts->fields[field]) ? 8 : 4;
    const Py_ssize_t count = PyTuple_GET_SIZE(items);
    PyObject *bytes = PyByteArray_FromStringAndSize(NULL, count * (Py_ssize_t)size);
    for (Py_ssize_t i = 0; bytes && i < count; i++)
        if (!convert_one(of, field, PyTuple_GET_ITEM(items, i), (size_t)i,
                         PyByteArray_AS_STRING(bytes) + i * (Py_ssize_t)size))
            Py_CLEAR(bytes);
    Py_DECREF(items);
    return bytes;
}

/* _expand(values, size, inner, outer): each value so many times, and the whole so many times: a column of a grid. */
PyObject *bind_expand(PyObject *self, PyObject *args) {
    Py_buffer view;
    Py_ssize_t size, inner, outer;
    (void)self;
    if (!PyArg_ParseTuple(args, "y*nnn", &view, &size, &inner, &outer)) return NULL;
    PyObject *bytes = NULL;
    if (size > 0 && inner >= 0 && outer >= 0 && (!view.len || inner <= PY_SSIZE_T_MAX / view.len) &&
        (view.len * inner == 0 || outer <= PY_SSIZE_T_MAX / (view.len * inner)))
        bytes = PyByteArray_FromStringAndSize(NULL, view.len * inner * outer);
    else
        PyErr_NoMemory();
    char *to = bytes ? PyByteArray_AS_STRING(bytes) : NULL;
    for (Py_ssize_t o = 0; to && o < outer; o++)
        for (Py_ssize_t i = 0; i < view.len / size; i++)
            for (Py_ssize_t k = 0; k < inner; k++, to += size)
                memcpy(to, (const char *)view.buf + i * size, (size_t)size);
    PyBuffer_Release(&view);
    return bytes;
}

/* -- running -- */

typedef struct columns {
    frame_batch_column column[MOST_COLUMNS];
    Py_buffer view[MOST_COLUMNS];
    size_t count;
} columns;

static void let_go(columns *all) {
    for (size_t i = 0; i < all->count; i++) PyBuffer_Release(&all->view[i]);
    all->count = 0;
}

/* One (field, buffer): its rows must be as many and its values as wide as the field's. Bare bytes hold them one after
 * the other. */
static int add_column(columns *all, const bound_struct *of, PyObject *pair, Py_ssize_t rows, int writable) {
    const char *name;
    PyObject *object;
    size_t field;
    if (!PyTuple_Check(pair) || !PyArg_ParseTuple(pair, "sO", &name, &object)) {
        if (!PyErr_Occurred()) PyErr_SetString(PyExc_TypeError, "a column is a pair of field and buffer");
        return 0;
    }
    if (!column_field(of, name, &field)) return 0;
    if (all->count == MOST_COLUMNS) {
        frame_fail_number(FRAME_TOO_LARGE, "columns", (double)MOST_COLUMNS + 1, "0..64");
        return fail_raised();
    }
    Py_buffer *view = &all->view[all->count];
    if (PyObject_GetBuffer(object, view, writable ? PyBUF_STRIDED : PyBUF_STRIDED_RO)) return 0;
    const Py_ssize_t size = is_wide(&of->facts->fields[field]) ? 8 : 4;
    const int bare = view->itemsize == 1;
    const Py_ssize_t stride = bare ? size : view->strides ? view->strides[0] : view->itemsize;
    const Py_ssize_t found = view->ndim == 1 ? (bare ? view->len / size : view->shape[0]) : -1;
    all->count++;
    if ((!bare && view->itemsize != size) || found != rows || stride < 0) {
        PyErr_Format(PyExc_ValueError, "%s: %zd rows of %zd bytes are wanted", name, rows, size);
        return 0;
    }
    all->column[all->count - 1] = (frame_batch_column){of->facts->fields[field].name, view->buf, (size_t)stride};
    return 1;
}

static int add_columns(columns *all, const bound_struct *of, PyObject *list, Py_ssize_t rows, int writable) {
    for (Py_ssize_t i = 0; i < PyList_GET_SIZE(list); i++)
        if (!add_column(all, of, PyList_GET_ITEM(list, i), rows, writable)) return 0;
    return 1;
}

/* What a row that failed leaves reads as not a number outside. */
static void blank_to_nan(const columns *outs, const bound_struct *of, Py_ssize_t rows) {
    for (size_t c = 0; c < outs->count; c++) {
        const frame_field *field = frame_field_find(of->facts, outs->column[c].field);
        if (field->kind != FRAME_FIELD_NUMBER) continue;
        for (Py_ssize_t i = 0; i < rows; i++) {
            double *value = (double *)(void *)((char *)outs->column[c].data + (size_t)i * outs->column[c].stride);
            if (*value == FRAME_NOT_GIVEN) *value = NAN;
        }
    }
}

static int run(const bound_calculation *of, py_result *base, columns *ins, columns *outs, Py_ssize_t rows,
               void *statuses) {
    frame_status status;
    Py_BEGIN_ALLOW_THREADS;
    status = frame_batch(of->calculation, base->result.in, ins->column, ins->count, outs->column, outs->count,
                         (size_t)rows, statuses);
    if (!status) blank_to_nan(outs, of->out, rows);
    Py_END_ALLOW_THREADS;
    return status ? fail_raised() : 1;
}

/* _batch(calculation, {field: value of every row}, [(field, buffer)], rows, [(field, buffer written)], statuses) */
PyObject *bind_batch(PyObject *self, PyObject *args) {
    const char *name;
    PyObject *given, *in_list, *out_list;
    Py_ssize_t rows;
    Py_buffer statuses;
    (void)self;
    if (!PyArg_ParseTuple(args, "sO!O!nO!w*", &name, &PyDict_Type, &given, &PyList_Type, &in_list, &rows, &PyList_Type,
                          &out_list, &statuses))
        return NULL;
    const bound_calculation *of = in_of(name) ? bound_calculation_find(name) : NULL;
    py_result *base = of ? bind_new_result(of->out, of, 1, 0) : NULL;
    columns *ins = PyMem_Calloc(2, sizeof *ins), *outs = ins ? ins + 1 : NULL;
    int good = base && ins && rows >= 0 && statuses.len >= rows * 4;
    const bound_value value = {.kind = BOUND_MANY, .native = given, .type = "a dict"};
    if (good && bound_take_struct(&bind_host, of->in, &value, base->result.in, &base->result.arena))
        good = fail_raised();
    good = good && add_columns(ins, of->in, in_list, rows, 0) && add_columns(outs, of->out, out_list, rows, 1) &&
           run(of, base, ins, outs, rows, statuses.buf);
    if (ins) {
        let_go(ins);
        let_go(outs);
    }
    PyMem_Free(ins);
    PyBuffer_Release(&statuses);
    Py_XDECREF((PyObject *)base);
    if (good) Py_RETURN_NONE;
    if (!PyErr_Occurred()) PyErr_SetString(PyExc_ValueError, "the columns do not fit");
    return NULL;
}

/* -- columns of words, whole numbers, yes/no and cautions, as Python shows them -- */

static PyObject *cell(const bound_calculation *of, size_t field, const char *data, py_result *scratch) {
    const frame_field *facts = &of->out->facts->fields[field];
    memcpy((char *)scratch->result.out + facts->offset, data, is_wide(facts) ? 8 : 4);
    return bind_field(scratch, field);
}

/* Each different value is converted once. */
static int add_cell(PyObject *list, PyObject *seen, const bound_calculation *of, size_t field, const char *data,
                    py_result *scratch) {
    const int wide = is_wide(&of->out->facts->fields[field]);
    uint64_t bits = 0;
    memcpy(&bits, data, wide ? 8 : 4);
    PyObject *key = PyLong_FromUnsignedLongLong(bits), *shown = key ? PyDict_GetItem(seen, key) : NULL;
    int good = key != NULL;
    if (good && !shown) {
        shown = cell(of, field, data, scratch);
        good = shown && !PyDict_SetItem(seen, key, shown);
        Py_XDECREF(shown);
    }
    PyObject *own =
        good && PyList_Check(shown) ? PySequence_List(shown) : NULL; /* a list may be changed: one for each row */
    good = good && (own || !PyList_Check(shown)) && !PyList_Append(list, own ? own : shown);
    Py_XDECREF(own);
    Py_XDECREF(key);
    return good;
}

/* _column_texts(calculation, field, buffer) */
PyObject *bind_column_texts(PyObject *self, PyObject *args) {
    const char *name, *field_name;
    Py_buffer view;
    size_t field = 0;
    (void)self;
    if (!PyArg_ParseTuple(args, "ssy*", &name, &field_name, &view)) return NULL;
    const bound_calculation *of = in_of(name) ? bound_calculation_find(name) : NULL;
    int good = of && column_field(of->out, field_name, &field);
    py_result *scratch = good ? bind_new_result(of->out, of, 0, 1) : NULL;
    PyObject *list = PyList_New(0), *seen = PyDict_New();
    const Py_ssize_t size = good && is_wide(&of->out->facts->fields[field]) ? 8 : 4;
    good = good && scratch && list && seen;
    for (Py_ssize_t at = 0; good && at + size <= view.len; at += size)
        good = add_cell(list, seen, of, field, (const char *)view.buf + at, scratch);
    Py_XDECREF((PyObject *)scratch);
    Py_XDECREF(seen);
    PyBuffer_Release(&view);
    if (!good) Py_CLEAR(list);
    return list;
}

PyObject *bind_status(PyObject *self, PyObject *code) {
    (void)self;
    const long status = PyLong_AsLong(code);
    return PyErr_Occurred() ? NULL : bind_text(frame_status_name((frame_status)status));
}
