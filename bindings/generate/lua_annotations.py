#!/usr/bin/env python3
"""Writes the Lua module's annotations (LuaCATS) from api.json, for editors: lua_annotations.py API.json OUTPUT.lua"""
import sys

from api import Api, leaves_out, may_be_left_out, method_name, plain, plural
from interface import save

HEAD = """---@meta
-- libframe @VERSION@: what an editor needs to know of require "frame". Made from api.json by bindings/generate/lua_annotations.py.

---A length, a slope or an angle: a number in the field's unit, or the trade's notation.
---@alias frame.measure number|string

---What a call could not take. tostring() gives the whole message.
---@class frame.error
---@field status string
---@field field string
---@field value string
---@field valid string
---@field text string

---What a calculation gave. A figure it does not have is an error that names the nearest.
---@class frame.result
local result = {}
---@return table
function result:to_table() end
---@param name string
---@return boolean
function result:has_caution(name) end

---Columns of results, one of each figure; status, a word for each row.
---@class frame.columns
---@field rows integer
---@field status string[]
---@field [string] any[]

---@class frame
---@field version string
local frame = {}

---Runs a calculation over columns: each field a list, or one value for every row. outer = true takes every combination.
---@param calculation string
---@param columns table
---@return frame.columns
function frame.batch(calculation, columns) end

---What a calculation, a struct or a list of words is for, as text.
---@param name string
---@return string
function frame.help(name) end

---The facts of a calculation's fields.
---@param name string
---@return table[]
function frame.fields(name) end

---The words of a list, for a menu.
---@param list string
---@return string[]
function frame.words(list) end

---The names of all calculations.
---@return string[]
function frame.calculations() end

---@return integer
function frame._live_blocks() end
"""


def comment(text):
    return ["---" + line for line in plain(text).split("\n")]


def one_line(text):
    return " ".join(plain(text).split())


def given_type(field):
    kind = field["kind"]
    if kind == "number":
        name = field["name"]
        notation = (
            field["unit"] in ("in", "deg") or name == "slope" or name.startswith("slope_") or name.endswith("_slope")
        )
        return "frame.measure" if notation else "number"
    if kind == "list":
        return "(frame.%s|any[])[]" % field["element"]
    if kind == "handle" and field["words"] == "watch":
        return "fun(best: number?, bound: number?): boolean?"
    if kind == "handle":
        return "frame.%s" % field["words"]
    if kind == "words":
        return "string[]"
    return {"integer": "integer", "word": "string", "bool": "boolean", "text": "string", "numbers": "frame.measure[]"}[
        kind
    ]


def figure_type(field, calculation):
    if field["kind"] == "range":
        for item in (calculation or {"lists": []})["lists"]:
            if item["plural"] == field["words"]:
                return "frame.%s[]" % item["struct"] if item["struct"] else "number[]"
        return "any[]"
    return {
        "number": "number",
        "integer": "integer",
        "word": "string",
        "bool": "boolean",
        "text": "string",
        "bits": "string[]",
    }.get(field["kind"], "any")


def input_class(api, struct, working=False):
    lines = [""] + comment(api.structs[struct]["doc"].split("\n\n")[0]) + ["---@class frame.%s" % struct]
    for field in api.inputs(struct):
        note = {"required": "Required."}.get(
            field["need"], "Else %s." % field["fallback_text"] if field.get("fallback_text") else ""
        )
        lines.append(
            "---@field %s%s %s %s"
            % (
                field["name"],
                "" if field["need"] == "required" else "?",
                given_type(field),
                " ".join((note + " " + one_line(field["meaning"])).split()),
            )
        )
    return lines + (["---@field working? frame.working"] if working else [])


def output_class(api, struct, calculation=None, main=False):
    lines = ["", "---@class frame.%s : frame.result" % struct]
    for field in api.structs[struct]["fields"]:
        name = field["words"] if field["kind"] == "range" else field["name"]
        lines.append("---@field %s %s %s" % (name, figure_type(field, calculation), one_line(field["meaning"])))
        if field["kind"] == "bits":
            lines.append("---@field %s_names string[]" % (name[:-1] if name.endswith("s") else name))
    if main:
        for item in calculation["lists"]:
            lines.append(
                "---@field %s %s %s"
                % (
                    item["plural"],
                    "frame.%s[]" % item["struct"] if item["struct"] else "number[]",
                    one_line(item["doc"]).split(". ")[0],
                )
            )
        lines += ["---@field %s fun(self): frame.%s" % (view["view"], view["view"]) for view in calculation["views"]]
        lines += [
            "---@field %s fun(self, ...): %s" % (method_name(f), answer_type(f["result"]))
            for f in api.answer_methods
            if f["owner"] == calculation["name"]
        ]
    return lines


def argument_type(argument):
    form = argument["form"]
    if form in ("struct", "structs"):
        return "frame.%s%s" % (argument["struct"], "[]" if form == "structs" else "")
    if argument.get("answer"):
        return "frame.%s_out" % argument["handle"]
    return {
        "number": "frame.measure",
        "integer": "integer",
        "size": "integer",
        "bool": "boolean",
        "word": "string",
        "text": "string",
        "numbers": "frame.measure[]",
    }.get(form) or "frame." + argument["handle"]


def answer_type(result):
    form = result["form"]
    if form == "struct":
        return "frame." + result["struct"]
    return {
        "number": "number",
        "integer": "integer",
        "size": "integer",
        "bool": "boolean",
        "word": "string",
        "text": "string",
        "chars": "string",
        "nothing": "nil",
    }.get(form) or "frame." + result["handle"]


def function_lines(api, function, name):
    lines = [""] + comment(function["doc"])
    for place, argument in enumerate(function["given"]):
        left_out = (leaves_out(function, argument) and may_be_left_out(function, argument)) or (
            argument["form"] == "struct" and place == len(function["given"]) - 1
        )
        lines.append("---@param %s%s %s" % (argument["shown"], "?" if left_out else "", argument_type(argument)))
    lines.append("---@return " + answer_type(function["result"]))
    return lines + ["function %s(%s) end" % (name, ", ".join(a["shown"] for a in function["given"]))]


def handle_lines(api, handle):
    name = handle["name"]
    lines = ["", "---@class frame.%s" % name]
    lines += ["---@field %s frame.%s[]" % (item["plural"], item["struct"]) for item in handle["lists"]]
    lines.append("local %s = {}" % name)
    for function in handle["methods"]:
        lines += function_lines(api, function, "%s:%s" % (name, method_name(function)))
        if function["writes"]:
            lines += [
                "",
                "---Writes what %s gives to a file, whole or not at all." % method_name(function),
                "---@param path string",
                "function %s:%s(path, ...) end" % (name, function["writes"]),
            ]
    for function in handle["makers"]:
        lines += function_lines(api, function, "frame." + name)
    return lines


def annotations(api):
    lines, inputs, outputs = [], set(), set()

    def add_input(struct):
        for field in api.inputs(struct):
            if field["kind"] == "list" and field["element"] not in inputs:
                inputs.add(field["element"])
                add_input(field["element"])
                lines.extend(input_class(api, field["element"]))

    for calculation in api.calculations.values():
        name = calculation["name"]
        add_input(name + "_in")
        for item in calculation["lists"]:
            if item["struct"]:
                outputs.add(item["struct"])
                lines += output_class(api, item["struct"], calculation)
        lines += input_class(api, name + "_in", True) + output_class(api, name + "_out", calculation, True)
        lines += (
            [""]
            + comment(calculation["doc"])
            + [
                "---@param fields frame.%s_in" % name,
                "---@return frame.%s_out" % name,
                "function frame.%s(fields) end" % name,
            ]
        )
    for function in api.all_functions():
        for argument in function["given"]:
            if argument["form"] in ("struct", "structs") and argument["struct"] not in inputs:
                inputs.add(argument["struct"])
                add_input(argument["struct"])
                lines += input_class(api, argument["struct"])
    wanted = {l["struct"] for h in api.handles.values() for l in h["lists"]}
    wanted |= {f["result"]["struct"] for f in api.all_functions() if f["result"]["form"] == "struct"}
    for struct in sorted(wanted - outputs - inputs):
        lines += output_class(api, struct)
    for handle in api.handles.values():
        lines += handle_lines(api, handle)
    for function in api.functions:
        lines += function_lines(api, function, "frame." + function["name"])
    for menu in api.menus:
        name = plural(menu["name"])
        lines += [
            "",
            "---The names of all %s, for a menu." % name,
            "---@return string[]",
            "function frame.%s() end" % name,
        ]
    return HEAD.replace("@VERSION@", api.version) + "\n".join(lines) + "\n\nreturn frame\n"


if __name__ == "__main__":
    save(sys.argv[2], annotations(Api(sys.argv[1])))
