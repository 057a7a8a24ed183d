#!/usr/bin/env python3
"""Turns a table (CSV, first row the column names) into a constant C array: tables.py TABLE.csv OUTPUT_DIR

Every table has an id that is never used twice, a source, and a known column. A column whose cells are all numbers becomes a
double (an empty cell FRAME_NOT_GIVEN), the id an int32_t, known a frame_known, any other a text. Lines that start with #
are remarks, but for one: "#index A B" (or "#index A", or "A*4" to keep quarters) asks for an array frame_TABLE_at[a][b] that
gives 1 + the place of the first row with these two numbers, 0 where there is none; such rows stand together.
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


def index_keys(path, lines):
    """The columns and scales of the #index line, [] without one."""
    words = next((line.split()[1:] for line in lines if line.startswith("#index")), [])
    if len(words) > 2:
        sys.exit("%s: an index has one or two columns" % path)
    return [(word.split("*")[0], float((word + "*1").split("*")[1])) for word in words]


def index_table(path, keys, columns, rows):
    """Gives the sizes of the index and its cells: (a, b) -> 1 + first row."""
    cells, last = {}, None
    for place, (line, row) in enumerate(rows):
        cell = dict(zip(columns, row))
        key = tuple(int(float(cell[column]) * scale) for column, scale in keys)
        if any(k < 0 or k > 999 for k in key) or (key in cells and key != last):
            sys.exit("%s:%d: rows of one index stand together and count from 0 to 999" % (path, line))
        cells.setdefault(key, place + 1)
        last = key
    return [max(k[i] for k in cells) + 1 for i in range(len(keys))], cells


def index_c(name, sizes, cells):
    brackets = "".join("[%d]" % size for size in sizes)
    body = ", ".join("".join("[%d]" % k for k in key) + " = %d" % place for key, place in cells.items())
    ranges = "".join("#define frame_%s_at_%s %d\n" % (name, axis, size) for axis, size in zip(("first", "second"), sizes))
    return (ranges + "extern const uint16_t frame_%s_at%s;\n" % (name, brackets),
            "\nconst uint16_t frame_%s_at%s = {%s};\n" % (name, brackets, body))


def main(path, output):
    name = os.path.basename(path)[:-4]
    with open(path, encoding="utf-8", newline="") as file:
        text = file.readlines()
        reader = csv.reader(line for line in text if not line.startswith("#"))
        lines = [(reader.line_num, row) for row in reader if row]
    columns, rows = lines[0][1], lines[1:]
    check(path, columns, rows)
    keys = index_keys(path, text)
    declared, defined = index_c(name, *index_table(path, keys, columns, rows)) if keys else ("", "")
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
%s
#endif
""" % (name, guard, guard, name, fields, name, name, len(rows), name, name, declared)
    body = "\n".join("    {%s}," % ", ".join(c_value(k, c) for k, c in zip(kinds, row)) for _, row in rows)
    source = '/* Made from the table %s.csv by lib/generate/tables.py. Edit that. */\n#include "table_%s.h"\n\nconst frame_%s_row frame_%s_table[] = {\n%s\n};\n%s' % (
        name, name, name, name, body, defined)
    for ending, text in ((".h", header), (".c", source)):
        with open(os.path.join(output, "table_%s%s" % (name, ending)), "w", encoding="utf-8") as file:
            file.write(text)


if __name__ == "__main__":
    main(*sys.argv[1:3])
