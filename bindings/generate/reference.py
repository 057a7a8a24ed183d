#!/usr/bin/env python3
"""Writes the reference of every calculation and function, C, Python and Lua together: reference.py API.json OUTPUT.md"""
import sys

from api import Api, method_name, plain, plural
from interface import save

HEAD = """# Reference

libframe @VERSION@. Made from the headers; every name, range and default below is the one the library checks.

Each calculation takes the fields listed, by name, and gives the figures listed. In C the fields are members of
`frame_NAME_in`, set up by `frame_NAME_in_init`; in Python they are keyword arguments, in Lua entries of one table. A field left out has
the default stated, and the result's `assumed` says so; a required field left out, or a value out of range, is refused by a status (C) or
an error that names the field. Lengths take inches, in Python and Lua also tape notation (`"7' 6-1/2\\""`), slopes rise over run or
`"8 in 12"`, angles degrees or `"30 deg"`. Every calculation takes a `working` to record its steps in.
"""


def cell(text):
    return " ".join(plain(text).split()).replace("|", "\\|")


def need(field):
    if field["need"] == "default":
        return "else " + field["fallback_text"]
    return field["need"]


def valid(api, field):
    if field["kind"] in ("word", "words"):
        entries = api.words[field["words"]]["entries"]
        return ", ".join(e["words"][0] for e in entries) if entries else "a name of the list `%s`" % field["words"]
    if field["kind"] == "list":
        return "%s, each [%s](#%s)" % (field["valid"], field["element"], field["element"])
    return field.get("valid", "")


def inputs(api, struct):
    lines = ["| field | need | valid | meaning |", "|---|---|---|---|"]
    for field in api.inputs(struct):
        lines.append(
            "| `%s` | %s | %s | %s |"
            % (field["name"], cell(need(field)), cell(valid(api, field)), cell(field["meaning"]))
        )
    return lines


def outputs(api, struct):
    lines = ["| figure | unit | meaning |", "|---|---|---|"]
    for field in api.structs[struct]["fields"]:
        name = field["words"] if field["kind"] == "range" else field["name"]
        lines.append("| `%s` | %s | %s |" % (name, field["unit"], cell(field["meaning"])))
    return lines


def texts(api, struct):
    """The cautions, and what is not checked, with their words."""
    lines = []
    for field in api.structs[struct]["fields"]:
        if field["kind"] == "bits" and field["words"] in api.words:
            lines += ["", "%s:" % field["name"].replace("_", " ").capitalize(), ""]
            lines += ["- `%s`: %s" % (e["words"][0], cell(e["meaning"])) for e in api.words[field["words"]]["entries"]]
    return lines


def how(calculation):
    name = calculation["name"]
    if calculation["answer"]:
        c = "frame_%s_solve(&in, &answer, working)`, `frame_%s_result(answer, &out)`, `frame_%s_free(answer)" % (
            name,
            name,
            name,
        )
    else:
        c = "frame_%s(&in, &out, working)" % name
    return ["C `%s` · Python `frame.%s(...)` · Lua `frame.%s{...}`" % (c, name, name)]


def calculation_lines(api, calculation):
    name = calculation["name"]
    lines = (
        ["", "### %s" % name, "", plain(calculation["doc"]), ""] + how(calculation) + [""] + inputs(api, name + "_in")
    )
    lines += [""] + outputs(api, name + "_out") + texts(api, name + "_out")
    for item in calculation["lists"]:
        lines += ["", "`%s`: %s" % (item["plural"], cell(item["doc"]))]
        if item["struct"]:
            lines += [""] + outputs(api, item["struct"])
    for view in calculation["views"]:
        lines += ["", "`%s()`: %s (C `frame_%s_%s`)" % (view["view"], cell(view["doc"]), name, view["view"])]
    return lines


def signature(function):
    return ", ".join(a["shown"] for a in function["given"])


def function_lines(function, title, python, lua):
    c = "frame_" + function["name"]
    calls = "C `%s` · Python `%s` · Lua `%s`" % (c, python, lua)
    return ["", "#### %s" % title, "", plain(function["doc"]), "", calls]


def handle_lines(api, handle):
    name = handle["name"]
    lines = [
        "",
        "### %s" % name,
        "",
        "In C a `frame_%s *`, freed with `frame_%s_free`; in Python and Lua it goes when nothing uses it."
        % (name, name),
    ]
    for function in handle["makers"]:
        lines += function_lines(
            function,
            "%s(%s)" % (name, signature(function)),
            "frame.%s(%s)" % (name, signature(function)),
            "frame.%s(%s)" % (name, signature(function)),
        )
    for function in handle["methods"]:
        method = "%s(%s)" % (method_name(function), signature(function))
        lines += function_lines(function, method, "%s.%s" % (name, method), "%s:%s" % (name, method))
        if function["writes"]:
            lines.append("`%s(path)` writes it to a file, whole or not at all." % function["writes"])
        if function["result"]["form"] == "struct":
            lines += [""] + outputs(api, function["result"]["struct"])
    for item in handle["lists"]:
        lines += ["", "#### %s" % item["plural"], "", cell(item["doc"]), ""] + outputs(api, item["struct"])
    return lines


def elements(api):
    lines, used = [], set()
    for struct in api.structs:
        used |= {f["element"] for f in api.inputs(struct) if f["kind"] == "list"}
    for function in api.all_functions():
        used |= {a["struct"] for a in function["given"] if a["form"] in ("struct", "structs")}
    for name in sorted(used):
        lines += ["", "### %s" % name, "", plain(api.structs[name]["doc"]), ""] + inputs(api, name)
    return ["", "## Items of lists"] + lines if lines else []


def words_lines(api):
    lines = ["", "## Words", "", "In C a word is a constant; in Python and Lua any spelling listed, in any capitals."]
    for words in api.words.values():
        used_as_bits = words["name"].endswith(("_caution", "_not_checked")) or words["name"] in (
            "status",
            "field_kind",
            "field_need",
        )
        if used_as_bits or not words["entries"]:
            continue
        lines += ["", "### %s" % words["name"], "", cell(words["doc"]), "", "| word | C | meaning |", "|---|---|---|"]
        for entry in words["entries"]:
            lines.append(
                "| %s | `%s` | %s |"
                % (", ".join('"%s"' % w for w in entry["words"]), entry["constant"], cell(entry["meaning"]))
            )
    return lines


def statuses(api):
    lines = ["", "## What a refusal is called", "", "| status | number | meaning |", "|---|---|---|"]
    for entry in api.words["status"]["entries"]:
        lines.append(
            "| %s | %d `%s` | %s |" % (entry["words"][0], entry["value"], entry["constant"], cell(entry["meaning"]))
        )
    return lines


def reference(api):
    lines = ["", "## Calculations"]
    for calculation in api.calculations.values():
        lines += calculation_lines(api, calculation)
    lines += ["", "## What the library keeps for you"]
    for handle in api.handles.values():
        lines += handle_lines(api, handle)
    lines += ["", "## Functions"]
    for function in api.functions:
        call = "frame.%s(%s)" % (function["name"], signature(function))
        lines += function_lines(function, function["name"], call, call)
    for menu in api.menus:
        lines += [
            "",
            "#### %s()" % plural(menu["name"]),
            "",
            "The names of all %s, for a menu (Python, Lua; C `frame_%s_count`, "
            "`frame_%s_at`, `frame_%s_name`)." % ((plural(menu["name"]),) + (menu["name"],) * 3),
        ]
    lines += elements(api) + words_lines(api) + statuses(api)
    return HEAD.replace("@VERSION@", api.version) + "\n".join(lines) + "\n"


if __name__ == "__main__":
    save(sys.argv[2], reference(Api(sys.argv[1])))
