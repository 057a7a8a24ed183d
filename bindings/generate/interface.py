#!/usr/bin/env python3
"""Writes what SWIG and the shared C of the bindings are told: interface.py API.json OUTPUT_DIR

made.i        the functions to wrap, each as the headers declare it, and which typemaps its types take
bound_made.c  the facts of fields as the bindings need them: notations, word lists, elements, the lists of handles
bound_made.h  which method of which handle a wrapped function is
"""
import os
import sys

from api import Api, leaves_out, may_be_left_out, method_name, plural

NOTE = "/* Made from api.json by bindings/generate/interface.py. Edit the headers. */\n"


def save(path, text):
    """Writes only what changed, so that the build does not start over."""
    try:
        with open(path, encoding="utf-8") as file:
            if file.read() == text:
                return
    except OSError:
        pass
    with open(path, "w", encoding="utf-8") as file:
        file.write(text)


# -- made.i --
def declaration(function):
    """As the headers have it, between the typemaps that its arguments take by their place rather than by their type."""
    maps, written = [], []
    given = {a["name"]: a for a in function["given"]}
    arguments = function["arguments"]
    for place, argument in enumerate(arguments):
        c_type, name = argument["type"], argument["name"]
        written.append(typed(c_type, name))
        known = given.get(name)
        pair = place + 1 < len(arguments) and arguments[place + 1]["type"] == "size_t"
        if known and known["form"] in ("structs", "numbers"):
            maps.append(
                (
                    "(%sLIST, size_t COUNT)" % typed(c_type, ""),
                    "(%s, size_t %s)" % (written[-1], arguments[place + 1]["name"]),
                )
            )
        elif pair and not known and c_type != "size_t" and function["result"]["form"] in ("struct", "chars"):
            first = "CHARS" if c_type == "char *" else "OUT"
            maps.append(
                (
                    "(%s, size_t SIZE)" % typed(c_type, first),
                    "(%s, size_t %s)" % (written[-1], arguments[place + 1]["name"]),
                )
            )
        elif known and leaves_out(function, known) and may_be_left_out(function, known):
            maps.append((typed(c_type, "OPTIONAL"), written[-1]))
    lines = ["%%apply %s {%s};" % pair for pair in maps]
    lines += [
        "%%rename(%s) frame_%s;" % (function["name"], function["c_name"]),
        "%sframe_%s(%s);" % (typed(function["returns"], ""), function["c_name"], ", ".join(written) or "void"),
    ]
    return lines + ["%%clear %s;" % place for _, place in maps]


def typed(c_type, name):
    return c_type + ("" if c_type.endswith("*") else " ") + name


def interface(api):
    lines = [NOTE]
    lines += ["FRAME_BIND_WORD(%s)" % name for name in api.words if name != "status"]
    lines += ["FRAME_BIND_HANDLE(%s)" % name for name in api.handles]
    lines += ["FRAME_BIND_ANSWER(%s)" % name for name, c in api.calculations.items() if c["answer"]]
    lines += [
        "FRAME_BIND_STRUCT(%s)" % name for name, s in api.structs.items() if s["kind"] != "out" and api.inputs(name)
    ]
    lines += ["FRAME_BIND_RESULT(%s)" % name for name, s in api.structs.items() if s["kind"] != "in"]
    for name, calculation in api.calculations.items():
        lines.append("FRAME_BIND_%s(%s)" % ("SOLVE" if calculation["answer"] else "CALCULATION", name))
    for function in api.all_functions():
        lines += declaration(function)
    return "\n".join(lines) + "\n"


# -- bound_made.c --
def notation(field):
    if field["name"] in ("slope", "slopes") or field["name"].startswith("slope_") or field["name"].endswith(("_slope", "_slopes")):
        return "BOUND_SLOPE"
    return {"in": "BOUND_LENGTH", "deg": "BOUND_ANGLE"}.get(field["unit"], "BOUND_PLAIN")


def bound_struct(api, struct, index, words):
    name, lines = struct["name"], []
    lines.append("static const bound_field %s_fields[] = {" % name)
    for field in struct["fields"]:
        element = "&%s_bound" % field["element"] if field.get("element") else "NULL"
        lines.append(
            "    {%s, %d, %s},"
            % (notation(field), words.get(field["words"], -1) if field["kind"] in ("word", "words") else -1, element)
        )
    given = [i for i, f in enumerate(struct["fields"]) if f["need"] != "result"]
    handle = next((i for i, f in enumerate(struct["fields"]) if f["kind"] == "handle"), -1)
    lines += [
        "};",
        "static const short %s_given[] = {%s};" % (name, ", ".join(map(str, given)) or "0"),
        "const bound_struct %s_bound = {&frame_%s_facts, %s_fields, %s_given, %d, %d, %d};"
        % (name, name, name, name, len(given), index, handle),
        "",
    ]
    return lines


def bound_calculation(calculation, index):
    name, lists = calculation["name"], "NULL"
    lines = []
    if calculation["lists"]:
        lists = "%s_lists" % name
        lines.append(
            "static const bound_struct *const %s[] = {%s};"
            % (lists, ", ".join("&%s_bound" % l["struct"] if l["struct"] else "NULL" for l in calculation["lists"]))
        )
    return lines + [
        "const bound_calculation %s_calculation_bound = {&frame_%s_calculation, &%s_in_bound, &%s_out_bound, %s, %d};"
        % (name, name, name, name, lists, index)
    ]


def bound_handle(api, handle, index):
    name, lines, lists = handle["name"], [], "NULL"
    lines.append("static void release_%s(void *handle) { frame_%s_free(handle); }" % (name, name))
    for item in handle["lists"]:
        full = item["function"]
        base = full[:-3] if full.endswith("_at") else full
        lines += [
            "static size_t count_%s(const void *handle) { return frame_%s_count(handle); }" % (base, base),
            "static frame_status at_%s(const void *handle, size_t index, void *item, size_t size) {" % base,
            "    return frame_%s_at_sized(handle, index, item, size);" % base,
            "}",
        ]
    if handle["lists"]:
        lists = "%s_handle_lists" % name
        lines.append(
            "static const bound_list %s[] = {%s};"
            % (
                lists,
                ", ".join(
                    '{"%s", &%s_bound, count_%s, at_%s}' % (l["plural"], l["struct"], l["function"], l["function"])
                    for l in handle["lists"]
                ),
            )
        )
    return lines + [
        'const bound_handle %s_handle_bound = {"%s", "", release_%s, %s, %d, %d};'
        % (name, name, name, lists, len(handle["lists"]), index)
    ]


def array(c_type, name, entries, count):
    return [
        "const %s *const %s[] = {%s};" % (c_type, name, ", ".join("&" + e for e in entries) or "NULL"),
        "const int %s = %d;" % (count, len(entries)),
    ]


def source(api):
    words = {name: i for i, name in enumerate(api.words)}
    rooms = sorted({s["room"] for s in api.structs.values()} | {w["room"] for w in api.words.values()})
    lines = [NOTE, '#include "bound_made.h"', ""] + ['#include "%s_facts.h"' % room for room in rooms] + [""]
    for index, struct in enumerate(api.structs.values()):
        lines += bound_struct(api, struct, index, words)
    for index, calculation in enumerate(api.calculations.values()):
        lines += bound_calculation(calculation, index)
    for index, handle in enumerate(api.handles.values()):
        lines += bound_handle(api, handle, index)
    lines += array("bound_struct", "bound_structs", [n + "_bound" for n in api.structs], "bound_struct_count")
    lines += array(
        "bound_calculation",
        "bound_calculations",
        [n + "_calculation_bound" for n in api.calculations],
        "bound_calculation_count",
    )
    lines += array("bound_handle", "bound_handles", [n + "_handle_bound" for n in api.handles], "bound_handle_count")
    lines += array("frame_words", "bound_words", ["frame_%s_words" % n for n in api.words], "bound_words_count")
    return "\n".join(lines) + "\n"


# -- bound_made.h --
def header(api):
    lines = [
        NOTE,
        "#ifndef FRAME_BINDINGS_BOUND_MADE_H",
        "#define FRAME_BINDINGS_BOUND_MADE_H",
        "",
        '#include "bound.h"',
        "",
        "enum {",
    ]
    lines += ["    %s_words_bound = %d," % (name, i) for i, name in enumerate(api.words)]
    lines += ["};", ""]
    lines += ["extern const bound_struct %s_bound;" % name for name in api.structs]
    lines += ["extern const bound_calculation %s_calculation_bound;" % name for name in api.calculations]
    lines += ["extern const bound_handle %s_handle_bound;" % name for name in api.handles]
    lines += [
        "",
        '/* A wrapped function that is a method: of a handle, or of a calculation\'s answer; "" makes one. */',
        "typedef struct bound_method {",
        "    const char *owner, *method, *function;",
        '    const char *writes; /* the method that writes its text to a file; "" for none */',
        "} bound_method;",
        "static const bound_method bound_methods[] = {",
    ]
    for handle in api.handles.values():
        for function in handle["makers"]:
            lines.append('    {"%s", "", "%s", ""},' % (handle["name"], function["name"]))
        for function in handle["methods"]:
            lines.append(method(function))
    lines += [method(function) for function in api.answer_methods]
    lines += [
        "    {NULL, NULL, NULL, NULL}",
        "};",
        "",
        "/* A list of words that a function of the module gives: species(). */",
        "typedef struct bound_menu {",
        "    const char *name, *words;",
        "} bound_menu;",
        "static const bound_menu bound_menus[] = {",
    ]
    lines += ['    {"%s", "%s"},' % (plural(menu["name"]), menu["name"]) for menu in api.menus]
    lines += ["    {NULL, NULL}", "};", "", "#endif", ""]
    return "\n".join(lines)


def method(function):
    return '    {"%s", "%s", "%s", "%s"},' % (
        function["owner"],
        method_name(function),
        function["name"],
        function["writes"],
    )


def main(path, output):
    api = Api(path)
    os.makedirs(output, exist_ok=True)
    save(os.path.join(output, "made.i"), interface(api))
    save(os.path.join(output, "bound_made.c"), source(api))
    save(os.path.join(output, "bound_made.h"), header(api))
    save(os.path.join(output, "not_bound.txt"), "".join("%s: %s\n" % pair for pair in api.not_bound))


if __name__ == "__main__":
    main(*sys.argv[1:3])
