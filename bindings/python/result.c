/* Results as Python objects: every figure an attribute, converted when it is asked for. */
#include <string.h>

#include "bind.h"
#include "text/writer.h"

PyTypeObject *bind_result_type;
static PyObject **names; /* for each struct a dict of its fields' places */

static size_t round_up(size_t size) {
    return (size + 7) & ~(size_t)7;
}

py_result *bind_new_result(const bound_struct *of, const bound_calculation *calculation, int with_in, int with_out) {
    const size_t in_size = with_in ? round_up(calculation->in->facts->size) : 0;
    const size_t out_size = with_out ? round_up(of->facts->size) : 0;
    py_result *object =
        (py_result *)bind_result_type->tp_alloc(bind_result_type, (Py_ssize_t)((in_size + out_size) / 8));
    if (!object) return NULL;
    char *room = (char *)object + sizeof *object;
    object->result.of = of;
    object->result.calculation = calculation;
    object->result.list = -1;
    object->result.in = with_in ? room : NULL;
    object->result.out = with_out ? room + in_size : NULL;
    return object;
}

static void dealloc(PyObject *self) {
    py_result *object = (py_result *)self;
    PyTypeObject *type = Py_TYPE(self);
    bound_result_release(&object->result);
    Py_XDECREF(object->owner);
    type->tp_free(self);
    Py_DECREF(type);
}

frame_answer *bind_answer_of(const py_result *object) {
    return object->owner ? ((py_result *)object->owner)->result.answer : object->result.answer;
}

/* -- values of fields -- */

PyObject *bind_item(py_result *owner, int list, size_t place) {
    const frame_array *array = &owner->result.answer->lists[list];
    const bound_struct *of = owner->result.calculation->lists[list];
    if (!of) return PyFloat_FromDouble(((const double *)array->items)[place]);
    py_result *item = bind_new_result(of, owner->result.calculation, 0, 0);
    if (!item) return NULL;
    item->result.out = (char *)array->items + place * of->facts->size;
    item->result.list = list;
    item->result.place = (int)place;
    item->owner = Py_NewRef((PyObject *)owner);
    return (PyObject *)item;
}

PyObject *bind_items(py_result *owner, int list, size_t first, size_t count) {
    PyObject *items = PyTuple_New((Py_ssize_t)count);
    for (size_t i = 0; items && i < count; i++) {
        PyObject *item = bind_item(owner, list, first + i);
        if (!item) {
            Py_CLEAR(items);
            break;
        }
        PyTuple_SET_ITEM(items, (Py_ssize_t)i, item);
    }
    return items;
}

/* The sentences (or the short names) of the bits that are set. */
PyObject *bind_sentences(py_result *object, size_t field, int want_names) {
    PyObject *list = PyList_New(0);
    char sentence[1024];
    const char *name;
    int bit = 0;
    while (list && bound_bit(&object->result, field, &bit, &name, sentence, sizeof sentence)) {
        PyObject *text = bind_text(want_names ? name : sentence);
        if (!text || PyList_Append(list, text)) Py_CLEAR(list);
        Py_XDECREF(text);
    }
    return list;
}

static PyObject *range_of(py_result *object, size_t field) {
    py_result *owner = object->owner ? (py_result *)object->owner : object;
    const bound_span span = bound_range(&object->result, bind_answer_of(object), field);
    return span.list < 0 ? PyTuple_New(0) : bind_items(owner, span.list, span.first, span.count);
}

PyObject *bind_field(py_result *object, size_t field) {
    const bound_given given = bound_read(object->result.of, field, object->result.out);
    switch (given.worth) {
        case BOUND_WORTH_NUMBER:
            return PyFloat_FromDouble(given.number);
        case BOUND_WORTH_INTEGER:
            return PyLong_FromLong(given.integer);
        case BOUND_WORTH_BOOL:
            return PyBool_FromLong(given.integer);
        case BOUND_WORTH_TEXT:
            return bind_text(given.text);
        case BOUND_WORTH_BITS:
            return bind_sentences(object, field, 0);
        case BOUND_WORTH_RANGE:
            return range_of(object, field);
        default:
            return Py_NewRef(Py_None);
    }
}

/* A range is called by its list: piece_first shows as pieces. */
static const char *shown_name(const frame_field *field) {
    return field->kind == FRAME_FIELD_RANGE ? field->words : field->name;
}

static PyObject *names_of(const bound_struct *of) {
    if (names[of->index]) return names[of->index];
    PyObject *dict = PyDict_New();
    for (size_t i = 0; dict && i < of->facts->field_count; i++) {
        PyObject *place = PyLong_FromSize_t(i);
        PyObject *name = PyUnicode_InternFromString(shown_name(&of->facts->fields[i]));
        if (!place || !name || PyDict_SetItem(dict, name, place)) Py_CLEAR(dict);
        Py_XDECREF(place);
        Py_XDECREF(name);
    }
    return names[of->index] = dict;
}

/* -- attributes -- */

static PyObject *unknown(py_result *object, PyObject *name) {
    const char *chars = PyUnicode_AsUTF8(name);
    const frame_struct *facts = object->result.of->facts;
    if (!chars) return NULL;
    frame_nearest nearest = {chars, NULL, 0};
    for (size_t i = 0; i < facts->field_count; i++) frame_nearest_try(&nearest, shown_name(&facts->fields[i]));
    for (size_t i = 0; object->result.answer && i < object->result.calculation->calculation->list_count; i++)
        frame_nearest_try(&nearest, object->result.calculation->calculation->lists[i].plural);
    const char *what = object->result.calculation && object->result.list < 0
                           ? object->result.calculation->calculation->name
                           : facts->name;
    PyErr_Format(PyExc_AttributeError, nearest.best ? "%s gives no %R; the nearest is '%s'" : "%s gives no %R", what,
                 name, nearest.best);
    return NULL;
}

static PyObject *list_attribute(py_result *object, const char *chars) {
    const int list = object->result.answer ? bound_list_find(object->result.calculation, chars) : -1;
    if (list >= 0) return bind_items(object, list, 0, object->result.answer->lists[list].count);
    const int bits = bound_names_field(object->result.of, chars);
    return bits >= 0 ? bind_sentences(object, (size_t)bits, 1) : NULL;
}

static PyObject *getattro(PyObject *self, PyObject *name) {
    py_result *object = (py_result *)self;
    PyObject *fields = names_of(object->result.of), *place = fields ? PyDict_GetItem(fields, name) : NULL;
    if (place) return bind_field(object, PyLong_AsSize_t(place));
    const char *chars = PyUnicode_AsUTF8(name);
    if (!chars) return NULL;
    if (chars[0] != '_') {
        PyObject *found = list_attribute(object, chars);
        if (found || PyErr_Occurred()) return found;
        if ((found = bind_method_of(object, name)) || PyErr_Occurred()) return found;
    }
    PyObject *found = PyObject_GenericGetAttr(self, name);
    if (found || !PyErr_ExceptionMatches(PyExc_AttributeError) || chars[0] == '_') return found;
    PyErr_Clear();
    return unknown(object, name);
}

static int add_name(PyObject *list, const char *chars) {
    PyObject *name = PyUnicode_FromString(chars);
    const int failed = !name || PyList_Append(list, name);
    Py_XDECREF(name);
    return failed;
}

static PyObject *dir(PyObject *self, PyObject *none) {
    py_result *object = (py_result *)self;
    const bound_calculation *of = object->result.calculation;
    PyObject *list = PyObject_Dir((PyObject *)Py_TYPE(self));
    (void)none;
    for (size_t i = 0; list && i < object->result.of->facts->field_count; i++)
        if (add_name(list, shown_name(&object->result.of->facts->fields[i]))) Py_CLEAR(list);
    for (size_t i = 0; list && object->result.answer && i < of->calculation->list_count; i++)
        if (add_name(list, of->calculation->lists[i].plural)) Py_CLEAR(list);
    PyObject *methods = of && object->result.list < 0 ? bind_methods[of->index] : NULL, *name, *function;
    for (Py_ssize_t at = 0; list && methods && PyDict_Next(methods, &at, &name, &function);)
        if (PyList_Append(list, name)) Py_CLEAR(list);
    return list;
}

/* -- as text, as a dict, compared -- */

static PyObject *text_of(py_result *object, int html) {
    frame_text *text, *page = NULL;
    PyObject *shown = NULL;
    if (frame_text_new(&text)) {
        bind_raise();
        return NULL;
    }
    if (bound_result_text(&object->result, text) || (html && frame_text_new(&page)))
        bind_raise();
    else if (!html)
        shown = bind_text(frame_text_chars(text));
    else {
        frame_text_add(page, "<pre>");
        frame_text_add_xml(page, frame_text_chars(text));
        frame_text_add(page, "</pre>");
        shown = bind_text(frame_text_chars(page));
    }
    frame_text_free(text);
    frame_text_free(page);
    return shown;
}

static PyObject *repr(PyObject *self) {
    return text_of((py_result *)self, 0);
}
static PyObject *repr_html(PyObject *self, PyObject *none) {
    (void)none;
    return text_of((py_result *)self, 1);
}

/* A dict of it: lists of items as lists of dicts, all the way down. */
static PyObject *plain(PyObject *value) {
    if (Py_TYPE(value) == bind_result_type) return bind_to_dict(value, NULL);
    if (!PyTuple_Check(value)) return Py_NewRef(value);
    PyObject *list = PyList_New(0);
    for (Py_ssize_t i = 0; list && i < PyTuple_GET_SIZE(value); i++) {
        PyObject *item = plain(PyTuple_GET_ITEM(value, i));
        if (!item || PyList_Append(list, item)) Py_CLEAR(list);
        Py_XDECREF(item);
    }
    return list;
}

static int add_plain(PyObject *dict, const char *name, PyObject *value) {
    PyObject *kept = value ? plain(value) : NULL;
    const int failed = !kept || PyDict_SetItemString(dict, name, kept);
    Py_XDECREF(kept);
    Py_XDECREF(value);
    return failed;
}

PyObject *bind_to_dict(PyObject *self, PyObject *none) {
    py_result *object = (py_result *)self;
    const frame_struct *facts = object->result.of->facts;
    PyObject *dict = PyDict_New();
    (void)none;
    for (size_t i = 0; dict && i < facts->field_count; i++)
        if (add_plain(dict, shown_name(&facts->fields[i]), bind_field(object, i))) Py_CLEAR(dict);
    for (size_t i = 0; dict && object->result.answer && i < object->result.calculation->calculation->list_count; i++)
        if (add_plain(dict, object->result.calculation->calculation->lists[i].plural,
                      bind_items(object, (int)i, 0, object->result.answer->lists[i].count)))
            Py_CLEAR(dict);
    return dict;
}

static PyObject *richcompare(PyObject *self, PyObject *other, int how) {
    if (Py_TYPE(other) != bind_result_type || (how != Py_EQ && how != Py_NE)) Py_RETURN_NOTIMPLEMENTED;
    py_result *a = (py_result *)self, *b = (py_result *)other;
    const int same = self == other || bound_same(&a->result, bind_answer_of(a), &b->result, bind_answer_of(b));
    return PyBool_FromLong(same == (how == Py_EQ));
}

static PyObject *has_caution(PyObject *self, PyObject *wanted) {
    py_result *object = (py_result *)self;
    const int field = bound_names_field(object->result.of, "caution_names");
    PyObject *all = field < 0 ? PyList_New(0) : bind_sentences(object, (size_t)field, 1);
    const int found = all ? PySequence_Contains(all, wanted) : -1;
    Py_XDECREF(all);
    return found < 0 ? NULL : PyBool_FromLong(found);
}

static PyObject *itself(PyObject *self, PyObject *none) {
    (void)none;
    return Py_NewRef(self); /* it never changes: a copy is the same */
}

static PyMethodDef methods[] = {
    {"to_dict", bind_to_dict, METH_NOARGS,
     "to_dict($self, /)\n--\n\nEverything it says as a dict; lists of items as lists of dicts."},
    {"has_caution", has_caution, METH_O,
     "has_caution($self, name, /)\n--\n\nWhether a caution of that short name goes with it."},
    {"_repr_html_", repr_html, METH_NOARGS, NULL},
    {"__reduce__", bind_reduce, METH_NOARGS, NULL},
    {"__copy__", itself, METH_NOARGS, NULL},
    {"__deepcopy__", itself, METH_O, NULL},
    {"__dir__", dir, METH_NOARGS, NULL},
    {NULL, NULL, 0, NULL}};

static PyType_Slot slots[] = {
    {Py_tp_dealloc, dealloc},
    {Py_tp_getattro, getattro},
    {Py_tp_repr, repr},
    {Py_tp_richcompare, richcompare},
    {Py_tp_hash, PyObject_HashNotImplemented},
    {Py_tp_methods, methods},
    {Py_tp_doc, "What a calculation gave. Every figure is an attribute; printed, it is a block to read."},
    {0, NULL}};
static PyType_Spec spec = {"frame.Result", sizeof(py_result), 8, Py_TPFLAGS_DEFAULT | Py_TPFLAGS_BASETYPE, slots};

int bind_result_init(void) {
    names = PyMem_Calloc((size_t)bound_struct_count + 1, sizeof *names);
    if (!names) {
        PyErr_NoMemory();
        return -1;
    }
    bind_result_type = (PyTypeObject *)PyType_FromSpec(&spec);
    if (!bind_result_type) return -1;
    bind_result_type->tp_new = NULL; /* made by calculations alone */
    return 0;
}
