#!/usr/bin/env python3
"""Writes the tables of this room from a folder of figures as read: make_tables.py FIGURES [TABLE ...]

The figures are CSV files with a cell a line, as they were read in the publications (columns edition, table, ..., source,
known, flag). Here they become the room's compact tables: a row for what the code prints as a row, the spacings or widths
beside one another, one row for all editions that print the same. Building never runs this: the tables it writes are kept.
A row that stands already keeps its id. Python's standard library only.
"""
import csv
import os
import re
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
EDITIONS = {"2015": "2015", "2018": "2018", "2021": "2021", "2024": "2024"}
EDITION_WORDS = "2015|2018|2021|2024|2012 proposal|IBC 2018|DCA 6|DCA 6-09"
SPECIES_WORDS = "DFL|HF|SPF|SP"        # as their ids in lib/material/species.csv
GRADE_WORDS = "SS||No1|No2|No3"        # as their ids in lib/material/grades.csv
SIZE_WORDS = "2x4|2x6|2x8|2x10|2x12"


class Figures:
    """The folder of figures."""

    def __init__(self, folder):
        self.folder = folder

    def rows(self, *path):
        with open(os.path.join(self.folder, *path), encoding="utf-8", newline="") as file:
            return list(csv.DictReader(file))


def editions(text):
    """IRC 2018/2021/2024 -> 2018/2021/2024; other books by their own names."""
    found = re.fullmatch(r"IRC ([\d/]+)", text)
    if found:
        return "/".join(EDITIONS[year] for year in found.group(1).split("/"))
    for start, word in (("IRC 2012 (proposal", "2012 proposal"), ("IBC 2018", "IBC 2018"), ("DCA 6-09", "DCA 6-09"), ("DCA 6 ", "DCA 6")):
        if text.startswith(start):
            return word
    sys.exit("no edition known by \"%s\"" % text)


def feet(inches):
    return "" if inches == "" else "%d-%d" % divmod(int(inches), 12)


class Sources:
    """The texts that rows point to by number: where they are from, and notes on what is printed."""

    def __init__(self, name, remarks):
        self.name, self.remarks = name, remarks
        self.ids = {row["source"]: int(row["id"]) for row in standing(name)[1]}
        self.known = {row["source"]: row["known"] for row in standing(name)[1]}

    def id(self, text, known="read"):
        if text not in self.ids:
            self.ids[text] = max(self.ids.values(), default=0) + 1
        self.known[text] = known
        return str(self.ids[text])

    def write(self):
        rows = [{"id": str(i), "source": text, "known": self.known[text]} for text, i in sorted(self.ids.items(), key=lambda s: s[1])]
        put(self.name, self.remarks, ["id", "source", "known"], rows)


def standing(name):
    """The table as it stands: its columns and rows."""
    path = os.path.join(HERE, name + ".csv")
    if not os.path.exists(path):
        return [], []
    with open(path, encoding="utf-8", newline="") as file:
        reader = csv.DictReader(line for line in file if not line.startswith("#"))
        return reader.fieldnames, list(reader)


def put(name, remarks, columns, rows):
    with open(os.path.join(HERE, name + ".csv"), "w", encoding="utf-8", newline="") as file:
        for line in remarks.strip().split("\n"):
            file.write("%s%s\n" % ("" if line.startswith("#") else "# ", line))
        writer = csv.DictWriter(file, columns, lineterminator="\n")
        writer.writeheader()
        writer.writerows(rows)
    print("%-28s %5d rows" % (name, len(rows)))


def write(name, remarks, keys, columns, rows):
    """Writes a table; a row whose keys stand already keeps its id."""
    ids = {tuple(row[key] for key in keys): int(row["id"]) for row in standing(name)[1]}
    last = max(ids.values(), default=0)
    seen = set()
    for row in rows:
        key = tuple(row[key] for key in keys)
        if key in seen:
            sys.exit("%s: two rows for %s" % (name, key))
        seen.add(key)
        if key not in ids:
            last += 1
            ids[key] = last
        row["id"] = str(ids[key])
    put(name, remarks, ["id"] + columns, rows)


def place(words, word):
    return words.split("|").index(word)


SOURCES = Sources("code_sources", """
Where the figures of the code tables are from. The rows of those tables point here by id.
""")
NOTES = Sources("code_notes", """
What is odd about single printed figures. The rows of the code tables point here by id; source is the note.
""")


# -- joists and rafters --------------------------------------------------------------------------------------------------
JOISTS = ("spans_floor_joists", "spans_ceiling_joists", "spans_rafters")
SPACINGS = {"12": "s12", "16": "s16", "19.2": "s19", "24": "s24"}
# Cells that the tables' own rules (simple span; L/360, L/240 or L/180 under live load or snow alone; C_r; C_D 1.15 or 1.25; the
# NDS values of the grade) do not give: what they give. A longer span than that is refused, a shorter one served with a note.
BESIDE_THE_RULES = {
    ("R502.3.1(1)", "SP", "No3", "2x10", "16", "10"): "12-1", ("R502.3.1(1)", "HF", "No2", "2x12", "19.2", "10"): "17-11",
    ("R802.5.1(1)", "SP", "No1", "2x8", "16", "5"): "23-4", ("R802.4.1(1)", "DFL", "No3", "2x8", "16", "20"): "12-2",
    ("R802.4.1(1)", "DFL", "No3", "2x10", "19.2", "20"): "13-7", ("R802.4.1(3)", "SP", "SS", "2x10", "16", "20"): "21-11",
    ("R802.4.1(4)", "DFL", "No2", "2x6", "19.2", "20"): "9-10", ("R802.4.1(4)", "HF", "No1", "2x6", "19.2", "20"): "10-3",
    ("R802.4.1(5)", "SPF", "SS", "2x10", "16", "20"): "16-8", ("R802.4.1(5)", "DFL", "No2", "2x8", "19.2", "20"): "10-7",
    ("R802.4.1(5)", "HF", "No1", "2x4", "19.2", "20"): "5-11", ("R802.4.1(5)", "HF", "No1", "2x4", "24", "20"): "5-4",
    ("R802.4.1(7)", "DFL", "No3", "2x12", "24", "20"): "9-0"}


def note_joist(span, cell):
    """Marks a cell that its own table contradicts."""
    key = (cell["table"], cell["species"], cell["grade"], cell["size"], cell["spacing_in"], cell["dead_psf"])
    by_rule = BESIDE_THE_RULES.pop(key, None)
    if by_rule is None:
        if "doubtful" in cell["flag"]:
            sys.exit("a flagged cell without its figure by the rules: %s" % (key,))
        return
    bit = 1 << list(SPACINGS).index(cell["spacing_in"])
    printed = "%s-%s" % (cell["span_ft"], cell["span_in"])
    span["odd"] |= bit
    if 12 * int(cell["span_ft"]) + int(cell["span_in"]) > 12 * int(by_rule.split("-")[0]) + int(by_rule.split("-")[1]):
        span["refused"] |= bit
    span["notes"].append("at %s in on centres the table prints %s where its own rules give %s" % (cell["spacing_in"], printed, by_rule))


def joists(figures):
    """code_joist_sets: what a table or half a table is for. code_joist_spans: its rows, four spacings each."""
    cells = [row for name in JOISTS for row in figures.rows("code", name + ".csv")]
    cells += figures.rows("spans", "ibc2018_2308.7.2_2.csv")
    sets, spans = {}, {}
    for cell in cells:
        use = {"R502": "floor", "R802.5": "ceiling"}.get(cell["table"][:4], {"R802.5": "ceiling"}.get(cell["table"][:6], "rafter"))
        key = (use, cell["live_psf"], cell["snow_psf"], cell["dead_psf"], cell["defl_limit"], editions(cell["edition"]))
        if key not in sets:
            sets[key] = {"use": use, "live": key[1], "snow": key[2], "dead": key[3], "limit": key[4], "editions": key[5],
                         "table": cell["table"], "source": plain(cell["source"]), "known": cell["known"]}
        span = spans.setdefault((key, cell["species"], cell["grade"], cell["size"]),
                                {"odd": 0, "refused": 0, "notes": [], "known": cell["known"], "source": SOURCES.id(plain(cell["source"]))})
        span[SPACINGS[cell["spacing_in"]]] = ">26" if cell["over_26ft"] else "%s-%s" % (cell["span_ft"], cell["span_in"])
        note_joist(span, cell)
    if BESIDE_THE_RULES:
        sys.exit("no such cells: %s" % BESIDE_THE_RULES)
    write("code_joist_sets", """
What the span tables for joists and rafters are for: one row a table, or the half of a table with one dead load.
Loads in psf; limit is the deflection limit, span over this.
#word use floor|ceiling|rafter
#whole live snow dead limit
#set editions """ + EDITION_WORDS + """
#index use""",
          ["use", "live", "snow", "dead", "limit", "editions"],
          ["use", "live", "snow", "dead", "limit", "editions", "table", "source", "known"], list(sets.values()))
    rows = []
    for (key, species, grade, size), span in spans.items():
        span["note"] = NOTES.id("; ".join(span["notes"])) if span["notes"] else ""
        del span["notes"]
        rows.append(dict({"s12": "", "s16": "", "s19": "", "s24": ""}, **span, set=sets[key]["id"], species=species, grade=grade, size=size))
    rows.sort(key=lambda r: (int(r["set"]), place(SPECIES_WORDS, r["species"]), place(GRADE_WORDS, r["grade"]), place(SIZE_WORDS, r["size"])))
    write("code_joist_spans", """
Spans of joists and rafters at 12, 16, 19.2 and 24 in on centres, feet-inches; >26: longer than 26 ft. set: code_joist_sets;
odd, refused: the sum of 1, 2, 4, 8 for the columns that the note is about, and for those not given unless asked for;
note: code_notes; source: code_sources.
#word species """ + SPECIES_WORDS + """
#word grade """ + GRADE_WORDS + """
#word size """ + SIZE_WORDS + """
#feet s12 s16 s19 s24
#mark >26=-2
#whole set odd refused note source
#index set species grade""",
          ["set", "species", "grade", "size"],
          ["set", "species", "grade", "size", "s12", "s16", "s19", "s24", "odd", "refused", "note", "source", "known"], rows)


# -- headers and girders -------------------------------------------------------------------------------------------------
CARRIES = {"roof+ceiling": "RC", "roof+ceiling+1 center-bearing floor": "RC1", "roof+ceiling+1 clear-span floor": "RC1C",
           "roof+ceiling+2 center-bearing floors": "RC2", "roof+ceiling+2 clear-span floors": "RC2C",
           "one floor only (interior bearing wall)": "I1", "two floors (interior bearing wall)": "I2", "roof": "PR", "floor": "PF"}
CARRIES_WORDS = "RC|RC1|RC1C|RC2|RC2C|I1|I2|PR|PF"
LUMBER = {"any of DFL/HF/SPF No.2, SP No.1": "SP No.1", "any of DFL/HF/SP/SPF No.2": "No.2",
          "any of DFL/HF/SP/SPF No.2, wet, incised where needed": "No.2", "SPF": "SPF", "HF": "HF", "DFL or SP": "DFL or SP"}


def headers(figures):
    """code_headers: spans at up to three widths of building or depths of porch, and the jack studs beside them."""
    rows = {}
    cells = [("code", name) for name in ("header_R602.7_1", "header_R602.7_2_interior", "header_R602.7_3_porch")]
    for cell in [c for where in cells + [("spans", "irc2012_R602.7.1_single")] for c in figures.rows(where[0], where[1] + ".csv")]:
        plies, size = re.fullmatch(r"(\d)-(2x\d+)", cell["size"]).groups()
        key = (CARRIES[cell["supports"]], plies, size, editions(cell["edition"]), cell["snow_psf"], LUMBER[cell["species"]])
        row = rows.setdefault(key, {"cells": [], "table": cell["table"], "source": SOURCES.id(plain(cell["source"])), "known": cell["known"]})
        row["cells"].append((int(cell.get("building_width_ft") or cell["porch_depth_ft"]), "%s-%s" % (cell["span_ft"], cell["span_in"]),
                             cell.get("jack_studs", "")))
    made = []
    for key, row in rows.items():
        made.append(dict(zip(("carries", "plies", "size", "editions", "snow", "lumber"), key), source=row["source"], known=row["known"],
                         table=row["table"]))
        for number in range(3):
            width, span, jacks = sorted(row["cells"])[number] if number < len(row["cells"]) else ("", "", "")
            made[-1].update({"w%d" % (number + 1): str(width), "l%d" % (number + 1): span, "j%d" % (number + 1): jacks})
    made.sort(key=lambda r: (place(CARRIES_WORDS, r["carries"]), int(r["plies"]), place(SIZE_WORDS, r["size"]), r["editions"], r["lumber"],
                             int(r["snow"] or 0)))
    write("code_headers", """
Spans of headers and girders, feet-inches, and jack studs at each end. carries: RC roof and ceiling, RC1 with one center-bearing
floor, RC1C with one clear-span floor, RC2 and RC2C with two; I1, I2 one and two floors on an interior wall; PR roof of a porch, PF
floor of a porch. w1 to w3: widths of the building or depths of the porch, ft, with their spans l and jack studs j. snow: ground
snow, psf. lumber: the least grade or the species that the row is for.
#word carries """ + CARRIES_WORDS + """
#word size """ + SIZE_WORDS + """
#word lumber No.2|SP No.1|SPF|HF|DFL or SP
#set editions """ + EDITION_WORDS + """
#feet l1 l2 l3
#whole plies snow w1 w2 w3 j1 j2 j3 source
#index carries plies size""",
          ["carries", "plies", "size", "editions", "snow", "lumber"],
          ["carries", "plies", "size", "editions", "lumber", "snow", "w1", "w2", "w3", "l1", "l2", "l3", "j1", "j2", "j3", "table", "source",
           "known"], made)


def plain(source):
    """A source without its address on the network and without the names of private sites."""
    return re.sub(r",? ?https?://\S+", "", source).strip().rstrip(";")


TABLES = {"joists": joists, "headers": headers}


def main(folder, *wanted):
    for name in wanted or TABLES:
        TABLES[name](Figures(folder))
    SOURCES.write()
    NOTES.write()


if __name__ == "__main__":
    if len(sys.argv) < 2:
        sys.exit(__doc__)
    main(*sys.argv[1:])
