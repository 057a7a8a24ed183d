#!/usr/bin/env python3
"""Writes the Python package's __init__.py and its stubs from api.json: python_module.py API.json OUTPUT_DIR

Every calculation becomes a function whose parameters are its fields, in order, with the documented defaults to be seen in its
signature; every handle a class. They pass what they are given to the extension as it is: checking is the library's.
"""
import os
import sys
import textwrap

from api import Api, all_line, leaves_out, may_be_left_out, method_name, plain, plural
from interface import save

HEAD = '''"""libframe: wood framing. Does it fit, does it hold, what do I buy and cut.

Every calculation is a function: its fields are keyword arguments, its answer an object whose figures are attributes. Lengths
are inches or tape notation ("7' 6-1/2\\\\""), slopes rise over run or "8 in 12", angles degrees or "30 deg". help(NAME) says
more about each. What a call cannot take is refused by an Error that names the field.
"""
# Made from api.json by bindings/generate/python_module.py. Edit the headers.
try:
    from . import _frame
except ImportError:
    import _imp
    import os as _os
    import sys as _sys
    _there = sorted(name for name in _os.listdir(_os.path.dirname(__file__)) if name.startswith("_frame."))
    _there = [name for name in _there if name != "_frame.pyi"]
    if any("_frame" + suffix in _there for suffix in _imp.extension_suffixes()):
        raise
    raise ImportError("frame: this is Python %d.%d, and %s has %s; build the library with this Python" % (
        _sys.version_info[0], _sys.version_info[1], _os.path.dirname(__file__),
        "only " + ", ".join(_there) if _there else "no extension")) from None
from ._frame import Handle, Result, _live_blocks
from ._more import (Batch, Error, ImpossibleError, InputError, InternalError, LimitError, RefusedError, batch)

__version__ = "@VERSION@"
_refuse, _view, _items, _save, _register = _frame._refuse, _frame._view, _frame._items, _frame._save, _frame._register


def fields(name):
    """The facts of a calculation's fields (or of a struct's, by its name), as dicts: enough to build a form from."""
    return _frame._fields(name)


def words(name):
    """The words of a list ("joist_use", "species", ...), for a menu."""
    return _frame._words(name)


def calculations():
    """The names of all calculations."""
    return _frame._calculations()


def explain(name):
    """What a calculation or a list of words is for, its fields, and what it gives, as text."""
    return _frame._help(name)

'''


# -- signatures --
class Defaults:
    """One object for each default text, shared by all signatures."""

    def __init__(self):
        self.names = {}

    def name(self, text):
        return self.names.setdefault(text, "_d%d" % len(self.names))

    def of_field(self, field):
        if field["need"] == "optional":
            return "None"
        if field["need"] == "required":
            return self.name("<required>")
        text = field["fallback_text"]
        if field["kind"] == "bool" and text in ("yes", "no"):
            return self.name(str(text == "yes"))
        if field["kind"] == "word" and "fallback" in field:
            return self.name(repr(text))
        return self.name(text if "fallback" in field else "<%s>" % text)

    def lines(self):
        return ["%s = _frame._default(%r)" % (name, text) for text, name in self.names.items()]


def parameters(api, function, defaults):
    """(signature, call): a struct given last is spread into its fields."""
    shown, passed = [], []
    for place, argument in enumerate(function["given"]):
        if argument["form"] == "struct" and place == len(function["given"]) - 1:
            inputs = api.inputs(argument["struct"])
            shown += ["%s=%s" % (f["name"], defaults.of_field(f)) for f in inputs] + ["**unknown"]
            passed.append("(%s,)" % ", ".join(f["name"] for f in inputs))
        else:
            left_out = leaves_out(function, argument) and may_be_left_out(function, argument)
            default = '"text"' if argument["form"] == "word" else "None"
            shown.append(argument["shown"] + ("=" + default if left_out else ""))
            passed.append(argument["shown"])
    return shown, passed


def refusal(api, function):
    last = function["given"][-1] if function["given"] else {"form": ""}
    if last["form"] != "struct":
        return []
    return ["if unknown:", '    _refuse("%s", unknown)' % last["struct"]]


# -- documentation --
def field_lines(api, fields):
    lines = []
    for field in fields:
        need = {"required": "required", "optional": "optional"}.get(field["need"]) or "else %s" % field.get(
            "fallback_text", ""
        )
        valid = (
            " [%s]" % field["valid"]
            if field.get("valid") and field["kind"] != "text" and len(field["valid"]) < 200
            else ""
        )
        lines += textwrap.wrap(
            "%s: %s. %s%s" % (field["name"], need, plain(field["meaning"]), valid),
            110,
            initial_indent="    ",
            subsequent_indent="        ",
        )
        if field["kind"] == "list":
            element = api.inputs(field["element"])
            lines += textwrap.wrap(
                "each: %s" % ", ".join(f["name"] for f in element),
                110,
                initial_indent="        ",
                subsequent_indent="        ",
            )
    return lines


def out_lines(api, fields):
    lines = []
    for field in fields:
        unit = " [%s]" % field["unit"] if field["unit"] else ""
        name = field["words"] if field["kind"] == "range" else field["name"]
        lines += textwrap.wrap(
            "%s: %s%s" % (name, plain(field["meaning"]), unit), 110, initial_indent="    ", subsequent_indent="        "
        )
    return lines


def calculation_doc(api, calculation):
    name = calculation["name"]
    lines = [plain(calculation["doc"]), "", "Fields:"] + field_lines(api, api.inputs(name + "_in"))
    lines += ["    working: a working() to record the calculation in.", "", "Gives:"] + out_lines(
        api, api.structs[name + "_out"]["fields"]
    )
    for item in calculation["lists"]:
        lines += textwrap.wrap(
            "%s: %s" % (item["plural"], plain(item["doc"]).split("\n")[0]),
            110,
            initial_indent="    ",
            subsequent_indent="        ",
        )
        if item["struct"]:
            lines += ["    " + line for line in out_lines(api, api.structs[item["struct"]]["fields"])]
    for view in calculation["views"]:
        lines += textwrap.wrap(
            "%s(): %s" % (view["view"], plain(view["doc"])), 110, initial_indent="    ", subsequent_indent="        "
        )
    return "\n".join(lines)


def function_doc(api, function):
    lines = [plain(function["doc"])]
    for argument in function["given"]:
        if argument["form"] in ("struct", "structs"):
            lines += ["", "%s:" % argument["shown"].capitalize()] + field_lines(api, api.inputs(argument["struct"]))
    return "\n".join(lines)


def quoted(text, indent):
    text = text.replace("\\", "\\\\").replace('"""', '\\"\\"\\"')
    if text.endswith('"'):
        text += " "
    body = ("\n" + indent).join(text.split("\n"))
    return '%s"""%s%s"""' % (indent, body, "\n" + indent if "\n" in text else "")


# -- __init__.py --
def definition(name, shown, doc, body, indent=""):
    signature = textwrap.wrap(
        "%sdef %s(%s):" % (indent, name, ", ".join(shown)),
        120,
        subsequent_indent=indent + " " * (5 + len(name)),
        break_long_words=False,
    )
    return (
        ["", ""][: 2 if not indent else 1]
        + signature
        + [quoted(doc, indent + "    ")]
        + [indent + "    " + line for line in body]
    )


def calculation_lines(api, calculation, defaults):
    name = calculation["name"]
    inputs = api.inputs(name + "_in")
    shown = ["%s=%s" % (f["name"], defaults.of_field(f)) for f in inputs] + ["working=None", "**unknown"]
    values = ", ".join([f["name"] for f in inputs] + ["working"])
    call = textwrap.wrap("return _frame.%s((%s))" % (name, values), 112, subsequent_indent=" " * (len(name) + 16))
    lines = definition(
        name, shown, calculation_doc(api, calculation), ["if unknown:", '    _refuse("%s_in", unknown)' % name] + call
    )
    methods = []
    for view in calculation["views"]:
        lines += definition(
            "_%s_%s" % (name, view["view"]), ["self"], plain(view["doc"]), ['return _view(self, "%s")' % view["view"]]
        )
        methods.append((view["view"], "_%s_%s" % (name, view["view"])))
    for function in [f for f in api.answer_methods if f["owner"] == name]:
        lines += function_lines(api, function, defaults, "_" + function["name"], True)
        methods.append((method_name(function), "_" + function["name"]))
        if function["writes"]:
            lines += writer_lines(
                function, "_%s_%s" % (name, function["writes"]), "_" + function["name"] + "(self%s)", ""
            )
            methods.append((function["writes"], "_%s_%s" % (name, function["writes"])))
    if methods:
        lines += ["", ""] + ['%s.__name__ = "%s"' % (function, method) for method, function in methods]
        lines += ['_register("methods", {%s}, "%s")' % (", ".join('"%s": %s' % m for m in methods), name)]
    return lines


def function_lines(api, function, defaults, name, method, indent=""):
    shown, passed = parameters(api, function, defaults)
    first = ["self"] if method else []
    call = "_frame.%s(%s)" % (function["name"], ", ".join(first + passed))
    return definition(
        name, first + shown, function_doc(api, function), refusal(api, function) + ["return " + call], indent
    )


def writer_lines(function, name, call, indent):
    rest = [a["name"] for a in function["given"]]
    shown = ["self", "path"] + [
        r + ('="text"' if leaves_out(function, a) and a["form"] == "word" else "")
        for r, a in zip(rest, function["given"])
    ]
    if "%s" in call:
        call = call % "".join(", " + r for r in rest)
    return definition(
        name,
        shown,
        "Writes what %s() gives to a file, whole or not at all." % method_name(function),
        ["_save(%s, path)" % call],
        indent,
    )


def maker_lines(api, handle, defaults):
    lines = []
    for function in handle["makers"]:
        shown, passed = parameters(api, function, defaults)
        call = "return _frame.%s(%s)" % (function["name"], ", ".join(passed))
        lines += definition(
            "__new__", ["cls"] + shown, function_doc(api, function), refusal(api, function) + [call], "    "
        )
    return lines


def special_lines(api, handle):
    """How a handle shows itself, in print and in a notebook: by its own renderings."""
    lines, names = [], {method_name(f): f for f in handle["methods"] if f["result"]["form"] == "text"}
    render = names.get("render")
    if render and len(render["given"]) == 1 and render["given"][0]["form"] == "word":
        formats = {w for e in api.words[render["given"][0]["words"]]["entries"] for w in e["words"]}
        lines += ["", "    def __str__(self):", '        return _frame.%s(self, "text")' % render["name"]]
        for form in ("html", "markdown"):
            if form in formats:
                lines += [
                    "",
                    "    def _repr_%s_(self):" % form,
                    '        return _frame.%s(self, "%s")' % (render["name"], form),
                ]
    for form in ("svg", "html"):
        function = names.get(form)
        if function and not function["given"]:
            lines += ["", "    def _repr_%s_(self):" % form, "        return _frame.%s(self)" % function["name"]]
    return lines


def handle_lines(api, handle, defaults):
    doc = handle["makers"][0]["doc"] if handle["makers"] else "A %s; the library makes it." % handle["name"]
    lines = ["", "", "class %s(Handle):" % handle["name"], quoted(plain(doc), "    "), "    __slots__ = ()"]
    lines += maker_lines(api, handle, defaults)
    for function in handle["methods"]:
        name = method_name(function)
        lines += function_lines(api, function, defaults, name, True, "    ")
        if function["writes"]:
            lines += writer_lines(
                function,
                function["writes"],
                "self.%s(%%s)" % name
                if not function["given"]
                else "self.%s(%s)" % (name, ", ".join(a["name"] for a in function["given"])),
                "    ",
            )
    for item in handle["lists"]:
        lines += [
            "",
            "    @property",
            "    def %s(self):" % item["plural"],
            quoted(plain(item["doc"]), "        "),
            '        return _items(self, "%s")' % item["plural"],
        ]
    lines += special_lines(api, handle)
    return lines + ["", "", '_register("handle", %s, "%s")' % (handle["name"], handle["name"])]


def menu_lines(menu):
    return [
        "",
        "",
        "def %s():" % plural(menu["name"]),
        '    """The names of all %s, for a menu."""' % plural(menu["name"]).replace("_", " "),
        '    return _frame._words("%s")' % menu["name"],
    ]


def module(api):
    defaults, lines = Defaults(), []
    for handle in api.handles.values():
        lines += handle_lines(api, handle, defaults)
    for calculation in api.calculations.values():
        lines += calculation_lines(api, calculation, defaults)
    for function in api.functions:
        lines += function_lines(api, function, defaults, function["name"], False)
    for menu in api.menus:
        lines += menu_lines(menu)
    return HEAD.replace("@VERSION@", api.version) + "\n".join(all_line(api) + [""] + defaults.lines() + lines) + "\n"


def main(path, output):
    api = Api(path)
    os.makedirs(output, exist_ok=True)
    save(os.path.join(output, "__init__.py"), module(api))
    from python_stubs import stubs

    save(os.path.join(output, "__init__.pyi"), stubs(api))
    save(os.path.join(output, "py.typed"), "")


if __name__ == "__main__":
    main(*sys.argv[1:3])
