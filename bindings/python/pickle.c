/* Results into pickles and back. What is kept are the plain values in the order of the fields, which only ever grows at
 * its end: an older pickle leaves newer figures not given, and a newer one's further figures are passed over. */
#include <string.h>

#include "bind.h"

/* -- a struct as plain values -- */

static PyObject *plain_struct(const bound_struct *of, const void *object);

static PyObject *plain_list(const bound_struct *of, size_t field, const void *object) {
    const frame_field *facts = &of->facts->fields[field];
    const void *items = *(const void *const *)(const void *)((const char *)object + facts->offset);
    const size_t count = *(const size_t *)(const void *)((const char *)object + facts->count_offset);
    PyObject *list = PyTuple_New((Py_ssize_t)count);
    for (size_t i = 0; list && i < count; i++) {
        PyObject *item = facts->kind == FRAME_FIELD_NUMBERS
                             ? PyFloat_FromDouble(((const double *)items)[i])
                         : facts->kind == FRAME_FIELD_WORDS
                             ? PyLong_FromLong(((const int32_t *)items)[i])
                             : plain_struct(of->fields[field].element,
                                            (const char *)items + i * of->fields[field].element->facts->size);
        if (item)
            PyTuple_SET_ITEM(list, (Py_ssize_t)i, item);
        else
            Py_CLEAR(list);
    }
    return list;
}

static PyObject *plain_field(const bound_struct *of, size_t field, const void *object) {
    const frame_field *facts = &of->facts->fields[field];
    const void *place = (const char *)object + facts->offset;
    const bound_given given = bound_read(of, field, object);
    switch (facts->kind) {
        case FRAME_FIELD_NUMBER:
            return given.worth == BOUND_WORTH_NUMBER ? PyFloat_FromDouble(given.number) : Py_NewRef(Py_None);
        case FRAME_FIELD_HANDLE: /* forgotten when the call was done */
            return Py_NewRef(Py_None);
        case FRAME_FIELD_TEXT:
            return bind_text(given.text);
        case FRAME_FIELD_BITS:
            return PyLong_FromUnsignedLongLong(given.bits);
        case FRAME_FIELD_RANGE:
            return Py_BuildValue("(II)", *(const uint32_t *)place,
                                 *(const uint32_t *)(const void *)((const char *)object + facts->count_offset));
        case FRAME_FIELD_LIST:
        case FRAME_FIELD_NUMBERS:
        case FRAME_FIELD_WORDS:
            return plain_list(of, field, object);
        default:
            return given.integer == FRAME_NOT_GIVEN_INT ? Py_NewRef(Py_None) : PyLong_FromLong(given.integer);
    }
}

static PyObject *plain_struct(const bound_struct *of, const void *object) {
    PyObject *values = PyTuple_New((Py_ssize_t)of->facts->field_count);
    for (size_t i = 0; values && i < of->facts->field_count; i++) {
        PyObject *value = plain_field(of, i, object);
        if (value)
            PyTuple_SET_ITEM(values, (Py_ssize_t)i, value);
        else
            Py_CLEAR(values);
    }
    return values;
}

static PyObject *plain_answer(py_result *object) {
    const bound_calculation *of = object->result.calculation;
    const size_t lists = object->result.answer ? of->calculation->list_count : 0;
    PyObject *all = PyTuple_New((Py_ssize_t)lists);
    for (size_t i = 0; all && i < lists; i++) {
        const frame_array *array = &object->result.answer->lists[i];
        PyObject *items = PyTuple_New((Py_ssize_t)array->count);
        for (size_t k = 0; items && k < array->count; k++) {
            PyObject *item = of->lists[i]
                                 ? plain_struct(of->lists[i], (const char *)array->items + k * array->item_size)
                                 : PyFloat_FromDouble(((const double *)array->items)[k]);
            if (item)
                PyTuple_SET_ITEM(items, (Py_ssize_t)k, item);
            else
                Py_CLEAR(items);
        }
        if (items)
            PyTuple_SET_ITEM(all, (Py_ssize_t)i, items);
        else
            Py_CLEAR(all);
    }
    return all;
}

PyObject *bind_reduce(PyObject *self, PyObject *none) {
    py_result *object = (py_result *)self;
    (void)none;
    PyObject *module = PyImport_ImportModule("frame._frame");
    PyObject *restore = module ? PyObject_GetAttrString(module, "_restore") : NULL, *made = NULL;
    Py_XDECREF(module);
    if (!restore) return NULL;
    if (object->owner)
        made = Py_BuildValue("(N(Oii))", restore, object->owner, object->result.list, object->result.place);
    else {
        const bound_calculation *of = object->result.calculation;
        PyObject *in = object->result.in ? plain_struct(of->in, object->result.in) : Py_NewRef(Py_None);
        PyObject *out = plain_struct(object->result.of, object->result.out), *lists = plain_answer(object);
        if (in && out && lists)
            return Py_BuildValue("(N(sNNN))", restore, of ? of->calculation->name : object->result.of->facts->name, in,
                                 out, lists);
        Py_XDECREF(in);
        Py_XDECREF(out);
        Py_XDECREF(lists);
        Py_DECREF(restore);
    }
    return made;
}

/* -- and back -- */

static int damaged(void) {
    if (!PyErr_Occurred()) PyErr_SetString(PyExc_ValueError, "the pickle of a result is damaged");
    return 0;
}

static int fill_struct(const bound_struct *of, PyObject *values, void *object, frame_arena *arena);

static int fill_text(PyObject *value, const char **into, frame_arena *arena) {
    int failed = 0;
    if (value == Py_None) return 1;
    const char *chars = PyUnicode_Check(value) ? PyUnicode_AsUTF8(value) : NULL;
    if (!chars) return damaged();
    *into = frame_arena_text(arena, chars, &failed);
    return failed ? (bind_raise(), 0) : 1;
}

static int fill_list(const bound_struct *of, size_t field, PyObject *values, void *object, frame_arena *arena) {
    const frame_field *facts = &of->facts->fields[field];
    const bound_struct *element = of->fields[field].element;
    if (!PyTuple_Check(values)) return damaged();
    const int words = facts->kind == FRAME_FIELD_WORDS;
    const size_t size = element ? element->facts->size : words ? sizeof(int32_t) : sizeof(double);
    const size_t count = (size_t)PyTuple_GET_SIZE(values);
    char *items = count ? frame_arena_take(arena, count * size) : NULL;
    if (count && !items) return bind_raise(), 0;
    for (size_t i = 0; i < count; i++) {
        PyObject *value = PyTuple_GET_ITEM(values, (Py_ssize_t)i);
        if (element) {
            bound_blank(element, items + i * size);
            if (!fill_struct(element, value, items + i * size, arena)) return 0;
        } else if (words ? !PyLong_Check(value) : !PyFloat_Check(value))
            return damaged();
        else if (words)
            ((int32_t *)(void *)items)[i] = (int32_t)PyLong_AsLong(value);
        else
            ((double *)(void *)items)[i] = PyFloat_AS_DOUBLE(value);
    }
    *(void **)(void *)((char *)object + facts->offset) = items;
    *(size_t *)(void *)((char *)object + facts->count_offset) = count;
    return 1;
}

static int fill_range(const frame_field *facts, PyObject *value, void *object) {
    unsigned first, count;
    if (!PyTuple_Check(value) || !PyArg_ParseTuple(value, "II", &first, &count)) return damaged();
    *(uint32_t *)(void *)((char *)object + facts->offset) = first;
    *(uint32_t *)(void *)((char *)object + facts->count_offset) = count;
    return 1;
}

static int fill_field(const bound_struct *of, size_t field, PyObject *value, void *object, frame_arena *arena) {
    const frame_field *facts = &of->facts->fields[field];
    void *place = (char *)object + facts->offset;
    switch (facts->kind) {
        case FRAME_FIELD_TEXT:
            return fill_text(value, place, arena);
        case FRAME_FIELD_LIST:
        case FRAME_FIELD_NUMBERS:
        case FRAME_FIELD_WORDS:
            return fill_list(of, field, value, object, arena);
        case FRAME_FIELD_RANGE:
            return fill_range(facts, value, object);
        case FRAME_FIELD_BITS:
            *(uint64_t *)place = PyLong_Check(value) ? PyLong_AsUnsignedLongLong(value) : 0;
            break;
        case FRAME_FIELD_NUMBER:
            if (value != Py_None) *(double *)place = PyFloat_AsDouble(value);
            break;
        case FRAME_FIELD_HANDLE:
            return value == Py_None || damaged();
        default:
            if (value != Py_None) *(int32_t *)place = (int32_t)PyLong_AsLong(value);
    }
    return PyErr_Occurred() ? 0 : 1;
}

static int fill_struct(const bound_struct *of, PyObject *values, void *object, frame_arena *arena) {
    if (!PyTuple_Check(values)) return damaged();
    for (size_t i = 0; i < of->facts->field_count && (Py_ssize_t)i < PyTuple_GET_SIZE(values); i++)
        if (!fill_field(of, i, PyTuple_GET_ITEM(values, (Py_ssize_t)i), object, arena)) return 0;
    return 1;
}

static int fill_items(const bound_calculation *of, size_t list, PyObject *items, frame_answer *answer) {
    if (!PyTuple_Check(items)) return damaged();
    for (Py_ssize_t i = 0; i < PyTuple_GET_SIZE(items); i++) {
        PyObject *value = PyTuple_GET_ITEM(items, i);
        if (!of->lists[list]) {
            if (!PyFloat_Check(value)) return damaged();
            if (!frame_answer_add_number(answer, list, PyFloat_AS_DOUBLE(value))) return bind_raise(), 0;
            continue;
        }
        void *item = frame_answer_add(answer, list);
        if (!item) return bind_raise(), 0;
        if (!fill_struct(of->lists[list], value, item, &answer->arena)) return 0;
    }
    return 1;
}

static int restore_answer(py_result *object, const bound_calculation *of, PyObject *lists) {
    frame_answer *answer = frame_answer_new(of->calculation);
    if (!answer) return bind_raise(), 0;
    bound_result_answer(&object->result, answer);
    if (!PyTuple_Check(lists)) return damaged();
    for (size_t i = 0; i < of->calculation->list_count && (Py_ssize_t)i < PyTuple_GET_SIZE(lists); i++)
        if (!fill_items(of, i, PyTuple_GET_ITEM(lists, (Py_ssize_t)i), answer)) return 0;
    return 1;
}

static PyObject *restore_main(const char *name, PyObject *in, PyObject *out, PyObject *lists) {
    const bound_calculation *of = bound_calculation_find(name);
    const frame_struct *facts = of ? NULL : frame_struct_find(name);
    if (!of && !facts) return PyErr_Format(PyExc_ValueError, "this version of frame has no %s", name);
    const int varies = of && of->calculation->solve, with_in = of && in != Py_None;
    py_result *object = bind_new_result(of ? of->out : bound_struct_of(facts), of, with_in, !varies);
    if (!object) return NULL;
    frame_arena *arena = &object->result.arena;
    int good = varies ? restore_answer(object, of, lists)
                      : (frame_struct_blank(object->result.of->facts, object->result.out), 1);
    good = good && fill_struct(object->result.of, out, object->result.out, arena);
    if (with_in) bound_blank(of->in, object->result.in);
    good = good && (!with_in || fill_struct(of->in, in, object->result.in, arena));
    if (!good) Py_CLEAR(object);
    return (PyObject *)object;
}

PyObject *bind_restore(PyObject *self, PyObject *args) {
    (void)self;
    if (PyTuple_GET_SIZE(args) == 3) {
        py_result *owner;
        int list, place;
        if (!PyArg_ParseTuple(args, "O!ii", bind_result_type, &owner, &list, &place)) return NULL;
        if (!owner->result.answer || list < 0 || (size_t)list >= owner->result.calculation->calculation->list_count ||
            place < 0 || (size_t)place >= owner->result.answer->lists[list].count)
            return damaged(), NULL;
        return bind_item(owner, list, (size_t)place);
    }
    const char *name;
    PyObject *in, *out, *lists;
    if (!PyArg_ParseTuple(args, "sOOO", &name, &in, &out, &lists)) return NULL;
    return restore_main(name, in, out, lists);
}
