"""The stubs of the Python package, from api.json: every field with its type, every result with its figures."""
from api import all_line, leaves_out, may_be_left_out, method_name, plural

HEAD = """# Made from api.json by bindings/generate/python_stubs.py. Edit the headers.
from os import PathLike
from typing import Any, Callable, Mapping, NoReturn, Sequence, Tuple, Union, type_check_only

from ._more import Batch as Batch, Error as Error, ImpossibleError as ImpossibleError, InputError as InputError
from ._more import InternalError as InternalError, LimitError as LimitError, RefusedError as RefusedError
from ._more import batch as batch

# A length, a slope or an angle: a number in the field's unit, or the trade's notation.
_Measure = Union[float, str]
_Path = Union[str, bytes, PathLike[str], PathLike[bytes]]

__version__: str

class Result:
    def to_dict(self) -> dict[str, Any]: ...
    def has_caution(self, name: str, /) -> bool: ...
    def __copy__(self) -> Result: ...
    def __deepcopy__(self, memo: Any, /) -> Result: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...

class Handle: ...

def fields(name: str) -> list[dict[str, Any]]: ...
def words(name: str) -> list[str]: ...
def calculations() -> list[str]: ...
def explain(name: str) -> str: ...
def _live_blocks() -> int: ...
"""


def given_type(field):
    kind = field["kind"]
    if kind == "number":
        name = field["name"]
        notation = (
            field["unit"] in ("in", "deg") or name == "slope" or name.startswith("slope_") or name.endswith("_slope")
        )
        return "_Measure" if notation else "float"
    if kind == "words":
        return "Sequence[str]"
    if kind in ("list", "numbers"):
        return "Sequence[Any]" if kind == "list" else "Sequence[_Measure]"
    if kind == "handle" and field["words"] == "watch":
        return "Callable[[Union[float, None], Union[float, None]], object]"
    if kind == "handle":
        return field["words"]
    return {"integer": "int", "word": "str", "bool": "bool", "text": "str"}[kind]


def argument_type(argument):
    if argument.get("answer"):
        return class_name(argument["handle"] + "_out")
    return {
        "number": "_Measure",
        "integer": "int",
        "size": "int",
        "bool": "bool",
        "word": "str",
        "text": "str",
        "numbers": "Sequence[_Measure]",
        "structs": "Union[Sequence[Any], Mapping[str, Any]]",
        "struct": "Union[Sequence[Any], Mapping[str, Any]]",
    }.get(argument["form"]) or argument["handle"]


def method_result_type(result):
    """As result_type; in a class that has a method drawing(), the type drawing goes by another name."""
    return "_the_" + result["handle"] if result["form"] == "handle" else result_type(result)


def result_type(result):
    form = result["form"]
    if form == "struct":
        return class_name(result["struct"])
    return {
        "number": "float",
        "integer": "int",
        "size": "int",
        "bool": "bool",
        "word": "str",
        "text": "str",
        "chars": "str",
        "nothing": "None",
    }.get(form) or result["handle"]


def class_name(struct):
    return "_" + "".join(part.capitalize() for part in struct.split("_"))


def figure_type(api, calculation, field):
    kind = field["kind"]
    if kind == "bits":
        return "list[str]"
    if kind == "range":
        item = [l for l in (calculation or {"lists": []})["lists"] if l["plural"] == field["words"]]
        return "Tuple[%s, ...]" % (class_name(item[0]["struct"]) if item and item[0]["struct"] else "Any")
    plain = {"number": "float", "integer": "int", "word": "str", "bool": "bool", "text": "str"}.get(kind, "Any")
    return "Any" if plain == "Any" else plain


def result_class(api, struct, calculation=None, main=False):
    lines = ["", "@type_check_only", "class %s(Result):" % class_name(struct)]
    for field in api.structs[struct]["fields"]:
        name = field["words"] if field["kind"] == "range" else field["name"]
        lines += ["    @property", "    def %s(self) -> %s: ..." % (name, figure_type(api, calculation, field))]
        if field["kind"] == "bits":
            lines += [
                "    @property",
                "    def %s_names(self) -> list[str]: ..." % (name[:-1] if name.endswith("s") else name),
            ]
    if main:
        for item in calculation["lists"]:
            of = class_name(item["struct"]) if item["struct"] else "float"
            lines += ["    @property", "    def %s(self) -> Tuple[%s, ...]: ..." % (item["plural"], of)]
        for function in types_last(api, [f for f in api.answer_methods if f["owner"] == calculation["name"]]):
            lines += method_lines(api, function)
        for view in calculation["views"]:
            lines.append("    def %s(self) -> %s: ..." % (view["view"], view["view"]))
    return lines if len(lines) > 3 else lines + ["    ..."]


def types_last(api, functions):
    """In a class the name of a method hides the type of that name from what comes after it: such methods come last."""
    return sorted(functions, key=lambda function: method_name(function) in api.handles)


def parameters(api, function):
    shown = []
    for place, argument in enumerate(function["given"]):
        if argument["form"] == "struct" and place == len(function["given"]) - 1:
            shown += field_parameters(api, argument["struct"]) + ["**unknown: NoReturn"]
        else:
            left_out = leaves_out(function, argument) and may_be_left_out(function, argument)
            kind = argument_type(argument)
            if left_out and argument["form"] != "word":
                kind = "Union[%s, None]" % kind
            shown.append("%s: %s%s" % (argument["shown"], kind, " = ..." if left_out else ""))
    return shown


def field_parameters(api, struct):
    return [
        "%s: %s = ..." % (f["name"], given_type(f) if f["need"] == "required" else "Union[%s, None]" % given_type(f))
        for f in api.inputs(struct)
    ]


def method_lines(api, function):
    name = method_name(function)
    lines = [
        "    def %s(%s) -> %s: ..."
        % (name, ", ".join(["self"] + parameters(api, function)), method_result_type(function["result"]))
    ]
    if function["writes"]:
        lines.append(
            "    def %s(%s) -> None: ..."
            % (function["writes"], ", ".join(["self", "path: _Path"] + parameters(api, function)))
        )
    return lines


def handle_class(api, handle):
    lines = ["", "class %s(Handle):" % handle["name"]]
    for function in handle["makers"]:
        lines.append(
            "    def __new__(%s) -> %s: ..." % (", ".join(["cls"] + parameters(api, function)), handle["name"])
        )
    for function in types_last(api, handle["methods"]):
        lines += method_lines(api, function)
    for item in handle["lists"]:
        lines += [
            "    @property",
            "    def %s(self) -> Tuple[%s, ...]: ..." % (item["plural"], class_name(item["struct"])),
        ]
    return lines if len(lines) > 2 else lines + ["    ..."]


def stubs(api):
    lines, done = [], set()
    for calculation in api.calculations.values():
        name = calculation["name"]
        for item in calculation["lists"]:
            if item["struct"]:
                lines += result_class(api, item["struct"], calculation)
                done.add(item["struct"])
        lines += result_class(api, name + "_out", calculation, True)
        done.add(name + "_out")
        shown = field_parameters(api, name + "_in") + ["working: Union[working, None] = ...", "**unknown: NoReturn"]
        lines += ["", "def %s(%s) -> %s: ..." % (name, ", ".join(shown), class_name(name + "_out"))]
    wanted = {l["struct"] for h in api.handles.values() for l in h["lists"]}
    wanted |= {f["result"]["struct"] for f in api.all_functions() if f["result"]["form"] == "struct"}
    for struct in sorted(wanted - done):
        lines += result_class(api, struct)
    for handle in api.handles.values():
        lines += handle_class(api, handle) + ["", "_the_%s = %s" % (handle["name"], handle["name"])]
    for function in api.functions:
        lines += [
            "",
            "def %s(%s) -> %s: ..."
            % (function["name"], ", ".join(parameters(api, function)), result_type(function["result"])),
        ]
    for menu in api.menus:
        lines += ["", "def %s() -> list[str]: ..." % plural(menu["name"])]
    return HEAD + "\n".join(all_line(api) + lines) + "\n"
