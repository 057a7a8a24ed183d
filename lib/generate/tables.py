#!/usr/bin/env python3
"""Turns a table (CSV, first row the column names) into a constant C array: tables.py TABLE.csv OUTPUT_DIR

Every table has an id that is never used twice, a source, and a known column. A column whose cells are all numbers becomes a
double (an empty cell FRAME_NOT_GIVEN), the id an int32_t, known a frame_known, any other a text. Lines that start with #
are remarks.
"""
import csv
import os
import re
import sys

KNOWN = {"read": "FRAME_KNOWN_READ", "computed": "FRAME_KNOWN_COMPUTED", "secondary": "FRAME_KNOWN_SECONDARY",
         "memory": "FRAME_KNOWN_MEMORY"}


def number(cell):
    try:
        float(cell)
        return True
    except ValueError:
        return False


def c_type(column, cells):
    if column == "id":
        return "int32_t"
    if column == "known":
        return "frame_known"
    if all(number(c) or not c for c in cells) and any(cells):
        return "double"
    return "const char *"


def c_value(kind, cell):
    if kind == "int32_t":
        return str(int(cell))
    if kind == "frame_known":
        return KNOWN[cell]
    if kind == "double":
        return repr(float(cell)) if cell else "FRAME_NOT_GIVEN"
    return '"%s"' % cell.replace("\\", "\\\\").replace('"', '\\"')


def check(path, columns, rows):
    for wanted in ("id", "source", "known"):
        if wanted not in columns:
            sys.exit("%s: no column %s" % (path, wanted))
    seen = set()
    for line, row in rows:
        if len(row) != len(columns):
            sys.exit("%s:%d: %d cells, %d columns" % (path, line, len(row), len(columns)))
        cell = dict(zip(columns, row))
        if not re.fullmatch(r"\d+", cell["id"]) or cell["id"] in seen:
            sys.exit("%s:%d: id \"%s\" is used twice or no number" % (path, line, cell["id"]))
        seen.add(cell["id"])
        if cell["known"] not in KNOWN or not cell["source"]:
            sys.exit("%s:%d: every row says its source and how it is known (%s)" % (path, line, ", ".join(KNOWN)))


def main(path, output):
    name = os.path.basename(path)[:-4]
    with open(path, encoding="utf-8", newline="") as file:
        reader = csv.reader(line for line in file if not line.startswith("#"))
        lines = [(reader.line_num, row) for row in reader if row]
    columns, rows = lines[0][1], lines[1:]
    check(path, columns, rows)
    kinds = [c_type(c, [r[i] for _, r in rows]) for i, c in enumerate(columns)]
    guard = "FRAME_MADE_TABLE_%s_H" % name.upper()
    fields = "\n".join("    %s%s%s;" % (k, "" if k.endswith("*") else " ", c) for k, c in zip(kinds, columns))
    header = """/* Made from the table %s.csv by lib/generate/tables.py. Edit that. */
#ifndef %s
#define %s

#include <frame/base.h>

typedef struct frame_%s_row {
%s
} frame_%s_row;
enum { frame_%s_rows = %d };
extern const frame_%s_row frame_%s_table[];

#endif
""" % (name, guard, guard, name, fields, name, name, len(rows), name, name)
    body = "\n".join("    {%s}," % ", ".join(c_value(k, c) for k, c in zip(kinds, row)) for _, row in rows)
    source = '/* Made from the table %s.csv by lib/generate/tables.py. Edit that. */\n#include "table_%s.h"\n\nconst frame_%s_row frame_%s_table[] = {\n%s\n};\n' % (
        name, name, name, name, body)
    for ending, text in ((".h", header), (".c", source)):
        with open(os.path.join(output, "table_%s%s" % (name, ending)), "w", encoding="utf-8") as file:
            file.write(text)


if __name__ == "__main__":
    main(*sys.argv[1:3])
