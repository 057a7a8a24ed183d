"""The part of the Python package that no header says: the classes of errors, and calculations over columns."""
import sys

from . import _frame


class Error(ValueError):
    """What the library refused: .status in words, .field at fault, .value given, .valid instead."""

    status = field = value = valid = ""


class InputError(Error):
    """A value, a word or a field that cannot be taken."""


class ImpossibleError(Error):
    """The inputs describe something that cannot exist or stand."""


class RefusedError(Error):
    """No rule or table covers the case, or an answer would be unsafe."""


class LimitError(Error):
    """Memory, a stated limit, or a file that could not be written."""


class InternalError(Error):
    """A mistake of the library's own; please report it."""


for _group, _error in ((1, InputError), (2, ImpossibleError), (3, RefusedError), (4, LimitError), (9, InternalError)):
    _frame._register("error", _error, _group)

_CODES = {"number": "d", "integer": "i", "word": "i", "bool": "i", "bits": "Q"}


class Batch:
    """Columns of results: an attribute for each figure, .status for each row.

    Figures are arrays of numpy where numpy is loaded, else arrays of the standard library; words, yes/no and cautions are
    lists. In a row that failed, numbers are not a number (nan) and the others None. Columns but the first few are filled
    when one of them is first asked for, from a copy of what was given.
    """

    def __init__(self, name, rows, shape):
        self._name, self._fields, self._columns, self._statuses, self._source = name, {}, {}, None, None
        self.rows, self.shape = rows, shape

    def __len__(self):
        return self.rows

    def __dir__(self):
        return sorted(set(object.__dir__(self)) | set(self._fields) | {"status"})

    def __repr__(self):
        bad = sum(1 for code in self._statuses if code)
        return "<%s of %d rows, %d failed: %s>" % (self._name, self.rows, bad, ", ".join(self._fields))

    def __getattr__(self, name):
        if name.startswith("_"):
            raise AttributeError(name)
        if name == "status":
            names = {}
            value = [
                names.get(code) or names.setdefault(code, _frame._status(code)) for code in self._statuses.tolist()
            ]
        elif name in self._fields:
            value = self._shown(self._fields[name], self.raw(name))
        else:
            raise AttributeError("%s gives no column %r" % (self._name, name))
        self.__dict__[name] = value
        return value

    def _shown(self, field, column):
        if field["kind"] == "number":
            return column
        return _frame._column_texts(self._name, field["name"], column)

    def raw(self, name):
        """The numbers of a column as the library wrote them: a word's number, the bits of cautions."""
        if name not in self._columns and name in self._fields:
            self._fill([field for field in self._fields if field not in self._columns])
        return self._columns[name]

    def _fill(self, names):
        empty, (constant, columns) = _arrays(), self._source
        filled = {name: empty(_CODES[self._fields[name]["kind"]], self.rows) for name in names}
        statuses = empty("i", self.rows)
        _frame._batch(self._name, constant, columns, self.rows, list(filled.items()), statuses)
        self._columns.update(filled)
        self._statuses = statuses

    def to_dict(self):
        """All columns as a dict."""
        return dict({name: getattr(self, name) for name in self._fields}, status=self.status)


def _arrays():
    """numpy where somebody has loaded it; the standard library's arrays else. numpy is never imported from here."""
    numpy = sys.modules.get("numpy")
    if numpy is not None and hasattr(numpy, "empty"):
        kinds = {"d": numpy.float64, "i": numpy.int32, "Q": numpy.uint64}
        return lambda code, count: numpy.empty(count, dtype=kinds[code])
    from array import array

    return lambda code, count: array(code, bytes(count * (4 if code == "i" else 8)))


def _is_column(value):
    if isinstance(value, (list, tuple, range)):
        return True
    shape = getattr(value, "shape", None)
    return shape != () if shape is not None else hasattr(value, "__len__") and not isinstance(value, (str, bytes, dict))


def _in_place(field, value):
    """A buffer the library can read as it is, or None."""
    try:
        view = memoryview(value)
    except TypeError:
        return None
    wanted = {"number": "d", "integer": "i"}.get(field["kind"])
    if view.ndim == 1 and wanted and view.format.lstrip("@=<") == wanted and view.strides[0] > 0:
        return view
    return None


def _converted(name, field, value):
    dtype = getattr(value, "dtype", None)
    if dtype is not None and getattr(value, "ndim", 1) == 1:
        if field["kind"] == "number" and dtype.kind in "iuf":
            return memoryview(value.astype("float64"))
        value = value.tolist()
    return _frame._column(name, field["name"], value)


def batch(calculation, *, outer=False, want=None, **given):
    """Runs a calculation over columns: each field a list, an array, or one value for every row.

    calculation: a function of this module, or its name. With outer=True the rows are every combination of the columns
    given, the last of them changing fastest, and .shape says how many of each. want: the figures wanted, else all.
    """
    name = calculation if isinstance(calculation, str) else calculation.__name__
    facts = {field["name"]: field for field in _frame._fields(name + "_in")}
    unknown = {key: value for key, value in given.items() if key not in facts}
    if unknown:
        _frame._refuse(name + "_in", unknown)
    constant = {
        key: value
        for key, value in given.items()
        if facts[key]["kind"] in ("list", "numbers", "words", "text", "handle") or not _is_column(value)
    }
    columns = [
        (key, _in_place(facts[key], value) or _converted(name, facts[key], value))
        for key, value in given.items()
        if key not in constant
    ]
    counts = [len(given[key]) for key, _ in columns]
    if outer:
        rows, columns = _grid(facts, columns, counts)
    else:
        rows = counts[0] if counts else 1
        for (key, _), count in zip(columns, counts):
            if count != rows:
                raise ValueError("%s: %d rows, where %s has %d" % (key, count, columns[0][0], rows))
    return _run(name, constant, columns, rows, tuple(counts) if outer else (rows,), want)


def _grid(facts, columns, counts):
    rows = 1
    for count in counts:
        rows *= count
    grid, inner = [], rows
    for (key, column), count in zip(columns, counts):
        inner //= count or 1
        size = 8 if facts[key]["kind"] == "number" else 4
        values = column.tobytes() if isinstance(column, memoryview) else column
        grid.append((key, _frame._expand(values, size, inner, rows // ((inner * count) or 1))))
    return rows, grid


def _run(name, constant, columns, rows, shape, want):
    result = Batch(name, rows, shape)
    for field in _frame._fields(name + "_out"):
        if field["kind"] in _CODES and (want is None or field["name"] in want):
            result._fields[field["name"]] = field
    for wanted in want or ():
        if wanted not in result._fields:
            raise AttributeError("%s gives no column %r" % (name, wanted))
    result._source = (constant, columns)
    first = [figure for figure in _FIRST if figure in result._fields]
    simple = not any(isinstance(value, (list, tuple, dict, set)) for value in constant.values())
    if want is None and first and simple:
        result._fill(first)
        result._source = (dict(constant), [(key, _private(column)) for key, column in columns])
    else:
        result._fill(list(result._fields))
        result._source = None
    return result


# What is looked at first.
_FIRST = ("passes", "ratio", "span_in", "z_lb", "adjusted_lb")


def _private(column):
    """A column that nobody else can change."""
    return column.tobytes() if isinstance(column, memoryview) else column
