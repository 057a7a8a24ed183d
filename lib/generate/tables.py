#!/usr/bin/env python3
"""Turns a table (CSV, first row the column names) into a constant C array: tables.py TABLE.csv OUTPUT_DIR

Every table has an id that is never used twice, a source, and a known column. A column whose cells are all numbers becomes a
double (an empty cell FRAME_NOT_GIVEN), the id an int32_t, known a frame_known, any other a text. Lines that start with #
are remarks, but for these, which make large tables small and quick:

#whole A B          the columns are int16_t, an empty cell FRAME_NO_CELL
#feet A B           the same in inches, from feet and inches: 12-6 is 150
#mark NP=-1 >26=-2  words that may stand in such cells, and what they become
#word A x|y|z       the column is an int16_t: the place of its word in this list, from 1; 0 for an empty cell
#set A x|y|z        the column is a uint16_t: a bit for each of its words, which are parted by "/"
#aside A B          the columns are for those who read the table, and not in the library
#index A B          asks for an array frame_TABLE_at[a][b] (of one to three columns; "A*4" keeps quarters) that gives 1 + the
                    place of the first row with these numbers, 0 where there is none; such rows stand together
#inline A B         asks for a function frame_TABLE_A(place) in the header, so that compilers know the numbers of the column
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


SMALL = {"whole": "int16_t", "feet": "int16_t", "word": "int16_t", "set": "uint16_t"}


class Columns:
    """What the remarks say about the columns."""

    def __init__(self, path, lines):
        self.path, self.ways, self.marks, self.keys, self.aside, self.inline = path, {}, {}, [], [], []
        for number, line in enumerate(lines, 1):
            words = line.rstrip("\n").split(None, 1 if line.startswith("#mark") else 2)
            if words and words[0][:1] == "#" and words[0][1:] in ("whole", "feet"):
                self.ways.update((column, (words[0][1:], [])) for column in line.split()[1:])
            elif len(words) == 3 and words[0] in ("#word", "#set"):
                self.ways[words[1]] = (words[0][1:], [word.strip() for word in words[2].split("|")])
            elif words and words[0] == "#aside":
                self.aside = line.split()[1:]
            elif words and words[0] == "#inline":
                self.inline += line.split()[1:]
            elif words and words[0] == "#mark":
                self.marks.update((m.rsplit("=", 1)[0], int(m.rsplit("=", 1)[1])) for m in words[1].split())
            elif words and words[0] == "#index":
                self.keys = [(w.split("*")[0], float((w + "*1").split("*")[1])) for w in line.split()[1:]]
                if len(self.keys) > 3:
                    sys.exit("%s:%d: an index has one to three columns" % (path, number))

    def whole(self, column, cell):
        """The small number of a cell."""
        way, words = self.ways[column]
        try:
            if way in ("word", "set"):
                places = [words.index(part) for part in cell.split("/") if part] if way == "set" else [words.index(cell)] if cell else []
                return sum(1 << place for place in places) if way == "set" else places[0] + 1 if places else 0
            if not cell or cell in self.marks:
                return self.marks.get(cell, -32768)
            feet, inches = re.fullmatch(r"(\d+)-(\d+)", cell).groups() if way == "feet" else (0, cell)
            value = 12 * int(feet) + int(inches)
        except (ValueError, AttributeError):
            sys.exit("%s: \"%s\" is no cell for column %s (%s)" % (self.path, cell, column, way))
        if abs(value) > 32767:
            sys.exit("%s: %s is too large for column %s" % (self.path, cell, column))
        return value

    def number(self, column, cell):
        return self.whole(column, cell) if column in self.ways else float(cell)


def c_type(column, cells, columns):
    if column in columns.ways:
        return SMALL[columns.ways[column][0]]
    if column == "id":
        return "int32_t"
    if column == "known":
        return "frame_known"
    if all(number(c) or not c for c in cells) and any(cells):
        return "double"
    return "const char *"


def c_value(kind, column, cell, columns):
    if column in columns.ways:
        return str(columns.whole(column, cell))
    if kind == "int32_t":
        return str(int(cell))
    if kind == "frame_known":
        return KNOWN[cell]
    if kind == "double":
        return repr(float(cell)) if cell else "FRAME_NOT_GIVEN"
    return '"%s"' % cell.replace("\\", "\\\\").replace('"', '\\"')


WIDTHS = {"double": 8, "const char *": 8, "int32_t": 4, "frame_known": 4}


def stored(names, kinds, columns):
    """The places of the columns that the library holds, the widest first so that no row has gaps."""
    return sorted((i for i, name in enumerate(names) if name not in columns.aside), key=lambda i: -WIDTHS.get(kinds[i], 2))


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


def index_table(path, columns, names, rows):
    """Gives the sizes of the index and its cells: (a, b) -> 1 + first row."""
    cells, last, keys = {}, None, columns.keys
    for place, (line, row) in enumerate(rows):
        cell = dict(zip(names, row))
        key = tuple(int(columns.number(column, cell[column]) * scale) for column, scale in keys)
        if any(k < 0 or k > 999 for k in key) or (key in cells and key != last):
            sys.exit("%s:%d: rows of one index stand together and count from 0 to 999" % (path, line))
        cells.setdefault(key, place + 1)
        last = key
    return [max(k[i] for k in cells) + 1 for i in range(len(keys))], cells


def index_c(name, sizes, cells):
    brackets = "".join("[%d]" % size for size in sizes)
    body = ", ".join("".join("[%d]" % k for k in key) + " = %d" % place for key, place in cells.items())
    ranges = "".join("#define frame_%s_at_%s %d\n" % (name, axis, size) for axis, size in zip(("first", "second", "third"), sizes))
    return (ranges + "extern const uint16_t frame_%s_at%s;\n" % (name, brackets),
            "\nconst uint16_t frame_%s_at%s = {%s};\n" % (name, brackets, body))


def inline_c(name, column, cells):
    return """
static inline double frame_%s_%s(int place) {
    static const double values[] = {%s};
    return values[place];
}
""" % (name, column, ", ".join(repr(float(cell)) for cell in cells))


def main(path, output):
    name = os.path.basename(path)[:-4]
    with open(path, encoding="utf-8", newline="") as file:
        text = file.readlines()
        reader = csv.reader(line for line in text if not line.startswith("#"))
        lines = [(reader.line_num, row) for row in reader if row]
    names, rows = lines[0][1], lines[1:]
    columns = Columns(path, text)
    check(path, names, rows)
    for column in set(columns.ways) | {column for column, _ in columns.keys} | set(columns.aside + columns.inline):
        if column not in names:
            sys.exit("%s: the remarks name a column %s that there is not" % (path, column))
    declared, defined = index_c(name, *index_table(path, columns, names, rows)) if columns.keys else ("", "")
    if columns.ways:
        declared += "\n#ifndef FRAME_NO_CELL\n#define FRAME_NO_CELL (-32768)\n#endif\n"
    for column in columns.inline:
        declared += inline_c(name, column, [row[names.index(column)] for _, row in rows])
    kinds = [c_type(c, [r[i] for _, r in rows], columns) for i, c in enumerate(names)]
    guard = "FRAME_MADE_TABLE_%s_H" % name.upper()
    places = stored(names, kinds, columns)
    fields = "\n".join("    %s%s%s;" % (kinds[i], "" if kinds[i].endswith("*") else " ", names[i]) for i in places)
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
    body = "\n".join("    {%s}," % ", ".join(c_value(kinds[i], names[i], row[i], columns) for i in places) for _, row in rows)
    source = '/* Made from the table %s.csv by lib/generate/tables.py. Edit that. */\n#include "table_%s.h"\n\nconst frame_%s_row frame_%s_table[] = {\n%s\n};\n%s' % (
        name, name, name, name, body, defined)
    for ending, text in ((".h", header), (".c", source)):
        with open(os.path.join(output, "table_%s%s" % (name, ending)), "w", encoding="utf-8") as file:
            file.write(text)


if __name__ == "__main__":
    main(*sys.argv[1:3])
