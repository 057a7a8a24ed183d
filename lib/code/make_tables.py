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


# Notes of the tables on single cells.
PRINTED_NOTES = {("R502.3.1(2)", "HF", "SS", "2x12", "24", "20"): "the table's note on this span: bearing of 2 in at the ends"}


def note_joist(span, cell):
    """Marks a cell that its own table contradicts."""
    key = (cell["table"], cell["species"], cell["grade"], cell["size"], cell["spacing_in"], cell["dead_psf"])
    by_rule = BESIDE_THE_RULES.pop(key, None)
    printed_note = PRINTED_NOTES.pop(key, None)
    if printed_note:
        span["odd"] |= 1 << list(SPACINGS).index(cell["spacing_in"])
        span["notes"].append(printed_note)
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
    if BESIDE_THE_RULES or PRINTED_NOTES:
        sys.exit("no such cells: %s %s" % (BESIDE_THE_RULES, PRINTED_NOTES))
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


# -- decks ---------------------------------------------------------------------------------------------------------------
WOODS = {"southern pine": "SP", "DF-L/HF/SPF": "DFL HF SPF", "redwood/western cedars/ponderosa pine/red pine": "RW WC PP RP", "any": "any"}
WOODS_WORDS = "SP|DFL HF SPF|RW WC PP RP|any"
DECK_SIZES = "2x4|2x6|2x8|2x10|2x12|3x6|3x8|3x10|3x12|4x6|4x8|4x10|4x12"
POST_SIZES = "4x4|4x6|6x6|8x8"


def deck_key(row, *keys):
    return (WOODS[row["species"]], row.get("size"), editions(row["edition"]), row.get("live_or_ground_snow_psf", row.get("live_psf", "40"))) + keys


def order(rows, *keys):
    """Sorts rows by columns: by their place in a list of words where one is given, else by number, else as text."""
    def value(row, key):
        if isinstance(key, tuple):
            return (0, place(key[1], row[key[0]]), "")
        return (0, int(row[key]), "") if row[key].isdigit() else (1, 0, row[key]) if row[key] else (0, -1, "")
    rows.sort(key=lambda row: [value(row, key) for key in keys])
    return rows


def deck_joists(figures):
    """Spans of deck joists and what the same tables say of their cantilevers."""
    rows, second = {}, {"span_with_cantilever": "span", "max_cantilever": "cantilever", "": ""}
    for cell in figures.rows("code", "deck_joist.csv"):
        row = rows.setdefault(deck_key(cell), {"table": cell["table"], "source": SOURCES.id(plain(cell["source"])), "known": cell["known"],
                                               "second": second[cell["second_value_kind"]]})
        row["s" + cell["spacing_in"]], row["c" + cell["spacing_in"]] = cell["max_span_ft_in"], cell["second_value_ft_in"]
    for name, with_, without in (("deck_joist_dca6", "max_overhang_ft_in", "max_span_ft_in"),
                                 ("deck_joist_dca6_2009_addendum", "span_with_overhang_LJ4_ft_in", "span_no_overhang_ft_in")):
        for cell in figures.rows("prescriptive", name + ".csv"):
            row = rows.setdefault(deck_key(cell), {"table": cell["table"], "known": cell["known"], "source": SOURCES.id(dca6(cell)),
                                                   "second": "span" if "with" in with_ else "cantilever"})
            row["s" + cell["spacing_in"]], row["c" + cell["spacing_in"]] = cell[without], cell[with_]
            if "doubtful" in cell["flag"] or "damaged" in cell["flag"]:
                row["odd"] = row.get("odd", 0) | 1 << ("12", "16", "24").index(cell["spacing_in"])
                row["note"] = NOTES.id("the overhang could not be read for sure in the scan")
    made = [dict({"odd": "0", "note": ""}, **row, woods=key[0], size=key[1], editions=key[2], load=key[3]) for key, row in rows.items()]
    write("code_deck_joists", """
Spans of deck joists at 12, 16 and 24 in on centres (s), feet-inches, and the second figure of the same tables (c), which is the span
of joists with a cantilever or the longest cantilever, as the column second says. load: live load or ground snow, psf. odd: the sum
of 1, 2, 4 for the columns whose second figure the note is about.
#word woods """ + WOODS_WORDS + """
#word size """ + SIZE_WORDS + """
#word second span|cantilever
#set editions """ + EDITION_WORDS + """
#feet s12 s16 s24 c12 c16 c24
#whole load odd note source
#index woods size""",
          ["woods", "size", "editions", "load"],
          ["woods", "size", "editions", "load", "second", "s12", "s16", "s24", "c12", "c16", "c24", "odd", "note", "table", "source", "known"],
          order(made, ("woods", WOODS_WORDS), ("size", SIZE_WORDS), "editions", "load"))


def dca6(cell):
    return "Prescriptive Residential Wood Deck Construction Guide (%s), %s" % (cell["edition"], cell["table"])


def deck_cantilevers(figures):
    rows = {}
    for cell in figures.rows("code", "deck_joist_cantilever.csv"):
        row = rows.setdefault(deck_key(cell), {"table": cell["table"], "source": SOURCES.id(plain(cell["source"])), "known": cell["known"]})
        row["b" + cell["back_span_ft"]] = cell["max_cantilever_ft_in"]
    made = [dict(row, woods=key[0], size=key[1], editions=key[2], load=key[3]) for key, row in rows.items()]
    backs = ["b%d" % feet for feet in range(4, 20, 2)]
    write("code_deck_cantilevers", """
Longest cantilevers of deck joists for back spans of 4 to 18 ft, feet-inches; NP: none is permitted. load: live load or ground snow.
#word woods """ + WOODS_WORDS + """
#word size """ + SIZE_WORDS + """
#set editions """ + EDITION_WORDS + """
#feet """ + " ".join(backs) + """
#mark NP=-1
#whole load source
#index woods size""",
          ["woods", "size", "editions", "load"], ["woods", "size", "editions", "load"] + backs + ["table", "source", "known"],
          order(made, ("woods", WOODS_WORDS), ("size", SIZE_WORDS), "editions", "load"))


# Figures of deck beams that their own tables contradict, by edition, load, wood, size and column: what is said, and whether the
# figure is refused. The columns of 2024 repeat those of 2021 but for the first, third and sixth.
ODD_BEAMS = {
    ("2018", "40", "SP", "1-2x8", 5): ("for joists of 14 ft the table prints 2-10, less than the 3-7 for joists of 16 ft; likely 3-10", 0),
    ("2018", "40", "SP", "1-2x6", 1): ("for joists of 6 ft the table prints 4-11; the table of 2021 prints 4-7", 0),
    ("2021", "40", "DFL HF SPF", "1-2x12", 6): ("for joists of 16 and 18 ft the table repeats the spans of a 2x10", 0),
    ("2021", "40", "DFL HF SPF", "1-2x12", 7): ("", 0),
    ("2021", "60", "RW WC PP RP", "3-2x8", 3): ("the text prints 6-22 and 5-20 for joists of 10 and 14 ft; 6-11 and 5-10 are those of 2024", 0),
    ("2021", "60", "RW WC PP RP", "3-2x8", 5): ("", 0),
    ("2021", "50", "RW WC PP RP", "3-2x8", 5): ("the text prints 604 for joists of 14 ft; 6-4 is that of 2024", 0),
    ("2024", "40", "DFL HF SPF", "1-2x12", 9): ("the last two columns repeat the spans of a 2x10", 0),
    ("2024", "40", "DFL HF SPF", "1-2x12", 10): ("", 0),
    ("2024", "40", "RW WC PP RP", "2-2x10", 1): ("for joists of 6 ft the table prints 12-2, out of line with the 9-7 beside it; likely 10-2", 1),
    ("2024", "50", "SP", "3-2x10", 6): ("the sixth column prints 8-4, less than the 8-11 of the heavier seventh; likely 9-4", 0),
    ("2024", "50", "SP", "3-2x10", 7): ("", 0),
    ("2024", "60", "DFL HF SPF", "3-2x12", 1): ("the first and third columns print 13-6 and 11-9, out of line with those beside them; likely 14-1 and 12-3", 0),
    ("2024", "60", "DFL HF SPF", "3-2x12", 3): ("", 0),
    ("2024", "60", "RW WC PP RP", "3-2x12", 6): ("the sixth column prints 8-4, less than the 8-11 of the heavier seventh; likely 9-4", 0),
    ("2024", "60", "RW WC PP RP", "3-2x12", 7): ("", 0)}


def deck_beams(figures):
    """Spans of deck beams by the span of the joists on them, and from 2024 on by their cantilever too."""
    rows = {}
    for cell in figures.rows("code", "deck_beam.csv") + figures.rows("code", "deck_beam_irc2024.csv"):
        for size in cell["size"].split(" or "):
            plies, ply = re.fullmatch(r"(?:(\d)-)?(\dx\d+)", size).groups()
            key = (WOODS[cell["species"]], plies or "1", ply, editions(cell["edition"]), cell["live_or_ground_snow_psf"])
            row = rows.setdefault(key, {"table": cell["table"], "source": SOURCES.id(plain(cell["source"])), "known": cell["known"], "cells": {}})
            row["cells"][int(cell["joist_span_ft"]) // 2 - 2 if "joist_span_ft" in cell else len(row["cells"]) + 1] = cell["max_beam_span_ft_in"]
    rows[("RW WC PP RP", "3", "2x8", "2021", "50")]["cells"][5] = "6-4"
    made = []
    for (woods, plies, size, edition, load), row in rows.items():
        made.append({"woods": woods, "plies": plies, "size": size, "editions": edition, "load": load, "table": row["table"],
                     "source": row["source"], "known": row["known"], "odd": 0, "refused": 0, "note": ""})
        for column in range(1, 11):
            made[-1]["b%d" % column] = row["cells"].get(column, "")
            said = ODD_BEAMS.pop((edition, load, woods, "%s-%s" % (plies, size), column), None)
            if said:
                made[-1]["odd"] |= 1 << column - 1
                made[-1]["refused"] |= said[1] << column - 1
                made[-1]["note"] = NOTES.id(said[0]) if said[0] else made[-1]["note"]
    if ODD_BEAMS:
        sys.exit("no such cells: %s" % ODD_BEAMS)
    beams = ["b%d" % column for column in range(1, 11)]
    write("code_deck_beams", """
Spans of deck beams, feet-inches. Until 2021 the columns b1 to b7 are for joists of 6, 8, 10, 12, 14, 16 and 18 ft (2021: effective
span); those of 2024 are for joist span and cantilever, see lib/code/deck_beams.c. load: live load or ground snow, psf. odd, refused:
bits of the columns that the note is about, and of those not given unless asked for.
#word woods """ + WOODS_WORDS + """
#word size """ + DECK_SIZES + """
#set editions """ + EDITION_WORDS + """
#feet """ + " ".join(beams) + """
#whole plies load odd refused note source
#index woods plies size""",
          ["woods", "plies", "size", "editions", "load"],
          ["woods", "plies", "size", "editions", "load"] + beams + ["odd", "refused", "note", "table", "source", "known"],
          order(made, ("woods", WOODS_WORDS), "plies", ("size", DECK_SIZES), "editions", "load"))


def deck_posts(figures):
    """Heights of deck posts by the area they carry; the older tables know no area."""
    rows, areas = {}, ["a%d" % area for area in range(20, 180, 20)]
    for cell in figures.rows("code", "deck_post_height.csv"):
        key = (WOODS[cell["species"]], cell["size"], editions(cell["edition"]), cell["live_or_snow_psf"])
        row = rows.setdefault(key, {"table": cell["table"], "source": SOURCES.id(plain(cell["source"])), "known": cell["known"], "few_plies": ""})
        for area in areas:
            if cell["tributary_ft2"] in ("any", area[1:]):
                row[area] = cell["max_height_ft_in"]
        if "three-ply" in cell["flag"]:
            row["few_plies"] = "8-0"
    made = [dict(row, woods=key[0], size=key[1], editions=key[2], load=key[3], any_area=str(int(key[0] == "any"))) for key, row in rows.items()]
    write("code_deck_posts", """
Greatest heights of deck posts, from the footing to the underside of the beam, for 20 to 160 square feet of deck, feet-inches; NP: not
permitted. any_area: 1 where the table does not ask for the area. few_plies: the height under beams of one or two plies. load: live
load or ground snow, psf.
#word woods """ + WOODS_WORDS + """
#word size """ + POST_SIZES + """
#set editions """ + EDITION_WORDS + """
#feet few_plies """ + " ".join(areas) + """
#mark NP=-1
#whole any_area load source
#index size""",
          ["woods", "size", "editions", "load"], ["size", "woods", "editions", "load", "any_area", "few_plies"] + areas + ["table", "source", "known"],
          order(made, ("size", POST_SIZES), ("woods", WOODS_WORDS), "editions", "load"))


def deck_footings(figures):
    """Footings: side of a square, diameter of a round one, thickness, for up to four bearing values of the soil."""
    rows, columns = {}, ["%s%d" % (letter, soil) for soil in (1500, 2000, 2500, 3000) for letter in "srt"]
    for cell in figures.rows("code", "deck_footing.csv"):
        key = (editions(cell["edition"]), cell["live_or_ground_snow_psf"], cell["tributary_ft2"])
        row = rows.setdefault(key, {"table": cell["table"], "source": SOURCES.id(plain(cell["source"])), "known": cell["known"],
                                    "refused": "0", "note": ""})
        row.update(zip(("s" + cell["soil_psf"], "r" + cell["soil_psf"], "t" + cell["soil_psf"]),
                       (cell["square_side_in"], cell["round_dia_in"], cell["thickness_in"])))
    both = "2021/2024"
    rows[(both, "60", "40")]["note"] = NOTES.id("on soil of 2,000 psf the table prints 8 in of thickness between 6 above and 6 below; likely 6")
    rows[(both, "40", "20")].update(refused="2000", note=NOTES.id(
        "on soil of 2,000 psf the table prints a round footing of 9 in beside a square one of 9 in, which has a quarter more area; likely 10"))
    made = [dict(row, editions=key[0], load=key[1], area=key[2]) for key, row in rows.items()]
    write("code_deck_footings", """
Least footings of decks for the area carried, square feet, and the soil's bearing value: side of a square one (s), diameter of a round
one (r), thickness (t), in. load: live load or ground snow, psf. refused: the bearing value whose figure is not given unless asked for.
#set editions """ + EDITION_WORDS + """
#whole load area refused note source """ + " ".join(columns),
          ["editions", "load", "area"], ["editions", "load", "area"] + columns + ["refused", "note", "table", "source", "known"],
          order(made, "editions", "load", "area"))


LEDGER_FASTENERS = "lag|bolt|bolt 1"


def ledgers(figures):
    rows, spans = {}, ["j%d" % feet for feet in range(6, 20, 2)]
    names = {"1/2 in lag screw, max 1/2 in sheathing": "lag", "1/2 in bolt, max 1/2 in sheathing": "bolt", "1/2 in bolt, max 1 in sheathing": "bolt 1"}
    for cell in figures.rows("code", "ledger_fastener_spacing.csv"):
        key = (names[cell["fastener"]], editions(cell["edition"]), cell["live_or_ground_snow_psf"])
        row = rows.setdefault(key, {"table": cell["table"], "source": SOURCES.id(plain(cell["source"])), "known": cell["known"]})
        row["j" + cell["joist_span_ft"]] = cell["max_spacing_in"]
    made = [dict(row, fastener=key[0], editions=key[1], load=key[2]) for key, row in rows.items()]
    write("code_ledgers", """
Greatest spacing of the fasteners of a deck's ledger, in, for joists of 6 to 18 ft: half-inch lag screws or bolts through sheathing of
half an inch at most, or bolts through 1 in at most. load: live load or ground snow, psf.
#word fastener """ + LEDGER_FASTENERS + """
#set editions """ + EDITION_WORDS + """
#whole load source """ + " ".join(spans) + """
#index fastener""",
          ["fastener", "editions", "load"], ["fastener", "editions", "load"] + spans + ["table", "source", "known"],
          order(made, ("fastener", LEDGER_FASTENERS), "editions", "load"))


def deck_guide_posts(figures):
    made = []
    for cell in figures.rows("prescriptive", "deck_post_footing_dca6.csv"):
        row = {"editions": "DCA 6", "beam": cell["beam_span_ft"], "joist": cell["joist_span_max_ft"], "round": cell["footing_round_dia_in"],
               "square": cell["footing_square_in"], "thickness": cell["footing_thickness_in"], "table": cell["table"],
               "source": SOURCES.id(dca6(cell)), "known": "memory"}
        row.update({"h%d" % n: cell["post_height_col%d_ft" % n] for n in range(1, 6)})
        made.append(row)
    write("code_deck_guide_posts", """
Greatest heights of 6x6 posts, ft, by the spans of beam and joists, ft, and their footings, in: DCA 6 table 4. The figures were read, the
species of the five columns are recalled: h1 southern pine, h2 Douglas fir-larch, h3 hem-fir and western cedars, h4 redwood, h5 ponderosa
pine, red pine and spruce-pine-fir. So every row is known from memory.
#set editions """ + EDITION_WORDS + """
#whole beam joist h1 h2 h3 h4 h5 round square thickness source
#mark NP=-1""",
          ["editions", "beam", "joist"],
          ["editions", "beam", "joist", "h1", "h2", "h3", "h4", "h5", "round", "square", "thickness", "table", "source", "known"],
          order(made, "beam", "joist"))


def deck_factors(figures):
    ratios = {"0": "0", "1/12": "0.0833333333333333", "1/10": "0.1", "1/8": "0.125", "1/6": "0.166666666666667", "1/4": "0.25"}
    made = [{"editions": editions(cell["edition"]), "ratio": ratios[cell["ratio_value"].split(" ")[0]], "factor": cell["factor_on_joist_span"],
             "table": cell["table"], "source": plain(cell["source"]), "known": cell["known"]}
            for cell in figures.rows("code", "deck_joist_span_factor.csv")]
    write("code_deck_factors", """
Factors on the joists' span for the effective span of table R507.5 of 2021, by cantilever over span; the text prints 1/12 as 0.87.
#set editions """ + EDITION_WORDS,
          ["editions", "ratio"], ["editions", "ratio", "factor", "table", "source", "known"], made)


def ledger_edges(figures):
    made = {}
    for cell in figures.rows("code", "ledger_edge_distance.csv"):
        row = made.setdefault(cell["member"], {"member": cell["member"], "editions": "2015/" + editions(cell["edition"]), "table": cell["table"],
                                               "source": plain(cell["source"]), "known": cell["known"], "row_most": "5"})
        row[cell["item"].replace(" min", "").replace(" ", "_")] = cell["value_in"]
    write("code_ledger_edges", """
Where the lag screws and bolts of a ledger stand: least distances to the edges and ends, least and greatest distance between the two
rows, in (table R507.2.1 in 2015).
#set editions """ + EDITION_WORDS,
          ["member"], ["member", "editions", "top_edge", "bottom_edge", "end", "row_spacing", "row_most", "table", "source", "known"],
          list(made.values()))


# -- roofs, walls, floors ------------------------------------------------------------------------------------------------
def joined(rows):
    """One row for all editions whose rows are the same, which its source says. The sources are texts here, and become ids."""
    made, first = {}, {}
    for row in rows:
        same = tuple(sorted((k, v) for k, v in row.items() if k not in ("editions", "source", "table")))
        if same in made:
            made[same]["editions"] = "/".join(sorted(set(made[same]["editions"].split("/")) | set(row["editions"].split("/"))))
        else:
            made[same], first[same] = row, row["editions"].split("/")
    for same, row in made.items():
        others = [year for year in row["editions"].split("/") if year not in first[same]]
        said = row["source"].split("; same cells in ")
        if others and len(said) == 1:
            row["source"] += "; same cells in " + ", ".join(others)
        elif others:
            row["source"] = said[0] + "; same cells in " + ", ".join(sorted(set(said[1].split(", ")) | set(others)))
    return list(made.values())


def numbered(rows):
    """The sources of rows as ids."""
    for row in rows:
        row["source"] = SOURCES.id(row["source"])
    return rows


NAIL_NAMES = re.compile(r"(\d+d (?:box|common))$")


def in_full(fastener, length, diameter):
    """16d box -> 16d box (3-1/2 x 0.135 in); 3x0.131 nail -> 3 x 0.131 in nail."""
    if fastener == "3x0.131 nail":
        return "3 x 0.131 in nail"
    return "%s (%s x %s in)" % (fastener, length.replace(".5", "-1/2"), diameter) if NAIL_NAMES.match(fastener) else fastener


def heel_nails(figures):
    rows, spans = {}, ["n12", "n20", "n24", "n28", "n36"]
    for cell in figures.rows("code", "heel_joint_nails.csv"):
        key = (editions(cell["edition"]), cell["slope_rise_in_12"], cell["spacing_in"], cell["load_psf"])
        row = rows.setdefault(key, dict({span: "" for span in spans}, table=cell["table"], source=SOURCES.id(plain(cell["source"])), known=cell["known"]))
        row["n" + cell["roof_span_ft"]] = cell["nails_16d_common"]
    made = [dict(row, editions=key[0], slope=key[1], spacing=key[2], load=key[3]) for key, row in rows.items()]
    write("code_heel_nails", """
Nails (16d common) in a heel joint, for roofs of 12 to 36 ft of span. slope: rise in 12; spacing of the rafters, in; load: 20 for roof
live load up to 20 psf, else ground snow, psf.
#word spacing 12|16|19.2|24
#set editions """ + EDITION_WORDS + """
#whole slope load source """ + " ".join(spans) + """
#index slope spacing""",
          ["editions", "slope", "spacing", "load"], ["slope", "spacing", "editions", "load"] + spans + ["table", "source", "known"],
          order(made, "slope", ("spacing", "12|16|19.2|24"), "editions", "load"))


def heel_factors(figures):
    ratios = {"1/10 or less": "0.1", "1/6": "0.166666666666667", "1/5": "0.2", "1/4": "0.25", "1/3": "0.333333333333333"}
    made = [{"editions": editions(cell["edition"]), "ratio": ratios[cell["condition"]], "factor": cell["value"], "table": cell["table"],
             "source": plain(cell["source"]), "known": cell["known"]}
            for cell in figures.rows("code", "heel_joint_rules.csv") if cell["condition"] in ratios]
    made = joined(made)
    write("code_heel_factors", """
Factors on the nails of a heel joint where the ties stand above the plate: ratio of the ties' height to the ridge's.
#set editions """ + EDITION_WORDS,
          ["editions", "ratio"], ["editions", "ratio", "factor", "table", "source", "known"], order(made, "ratio"))


def uplift(figures):
    rows, winds = {}, ["v110", "v115", "v120", "v130", "v140"]
    for cell in figures.rows("code", "rafter_uplift.csv"):
        key = (editions(cell["edition"]), cell["exposure"], "low" if cell["pitch"].startswith("<") else "steep", cell["spacing_in"], cell["roof_span_ft"])
        row = rows.setdefault(key, {"table": cell["table"], "source": plain(cell["source"]), "known": cell["known"]})
        row["v" + cell["wind_ult_mph"]] = cell["uplift_lb_asd"].replace(",", "")
    made = numbered(joined([dict(row, editions=key[0], exposure=key[1], pitch=key[2], spacing=key[3], span=key[4]) for key, row in rows.items()]))
    write("code_uplift", """
Uplift of a rafter or truss on its connection, lb (allowable stress design), for ultimate wind speeds of 110 to 140 mph. pitch: low under
5 in 12, steep from 5 in 12 up; spacing, in; span of the roof, ft.
#word exposure B|C
#word pitch low|steep
#set editions """ + EDITION_WORDS + """
#whole spacing span source """ + " ".join(winds) + """
#index exposure pitch""",
          ["editions", "exposure", "pitch", "spacing", "span"],
          ["exposure", "pitch", "spacing", "span", "editions"] + winds + ["table", "source", "known"],
          order(made, ("exposure", "B|C"), ("pitch", "low|steep"), "spacing", "span"))


def floor_cantilevers(figures):
    rows = {}
    for cell in figures.rows("code", "floor_cantilever.csv"):
        key = ("balcony" if "balcony" in cell["table"] else "wall and roof", cell["size"], cell["spacing_in"], cell["ground_snow_psf"])
        row = rows.setdefault(key, dict({name: "" for name in ("c24", "c32", "c40", "u24", "u32", "u40")}, editions=editions(cell["edition"]),
                                        table=cell["table"].split(" ")[0], source=SOURCES.id(plain(cell["source"])), known=cell["known"]))
        width = cell["roof_width_ft"] or "24"
        row["c" + width], row["u" + width] = cell["max_cantilever_in"], cell["uplift_at_backspan_lb"]
    made = [dict(row, carries=key[0], size=key[1], spacing=key[2], snow=key[3]) for key, row in rows.items()]
    write("code_floor_cantilevers", """
Longest cantilevers of floor joists (c), in, and the uplift at the support behind (u), lb, under a bearing wall and roof of 24, 32 and 40
ft of width, or carrying a balcony (all in the first columns). snow: ground snow up to so much, psf. An empty cell is none.
#word carries wall and roof|balcony
#word size 2x4|2x6|2x8|2x10|2x12
#set editions """ + EDITION_WORDS + """
#whole spacing snow c24 c32 c40 u24 u32 u40 source
#index carries size""",
          ["carries", "size", "spacing", "snow"],
          ["carries", "size", "spacing", "snow", "editions", "c24", "c32", "c40", "u24", "u32", "u40", "table", "source", "known"],
          order(made, ("carries", "wall and roof|balcony"), ("size", SIZE_WORDS), "spacing", "snow"))


STUDS = "2x3|2x4|3x4|2x5|2x6"
ON_STUDS = {"": "nothing", "roof and ceiling or habitable attic only": "roof", "one floor, roof and ceiling": "floor and roof",
            "two floors, roof and ceiling": "two floors and roof", "one floor only": "floor"}
ON_STUDS_WORDS = "nothing|roof|floor and roof|two floors and roof|floor"


def studs(figures):
    made = []
    for cell in figures.rows("code", "stud_size_spacing.csv"):
        made.append({"stud": cell["stud"], "carries": ON_STUDS[cell["supports"]], "editions": editions(cell["edition"]),
                     "height": cell["max_height_ft"], "spacing": cell["max_spacing_in"], "table": cell["table"],
                     "source": SOURCES.id(plain(cell["source"])), "known": cell["known"]})
    write("code_studs", """
Studs by size and what they carry: greatest height without lateral support, ft, and greatest spacing, in.
#word stud """ + STUDS + """
#word carries """ + ON_STUDS_WORDS + """
#set editions """ + EDITION_WORDS + """
#whole height spacing source
#index stud carries""",
          ["stud", "carries"], ["stud", "carries", "editions", "height", "spacing", "table", "source", "known"],
          order(made, ("stud", STUDS), ("carries", ON_STUDS_WORDS)))


def tall_studs(figures):
    rows, columns = {}, ["%s_%s" % (letter, wind) for wind in ("115", "130", "140") for letter in ("s12", "s24")]
    for cell in figures.rows("code", "stud_tall_R602.3_6.csv"):
        key = (cell["stud_height_ft"], "roof" if cell["supports"] == "roof only" else "floor and roof", cell["spacing_in"])
        row = rows.setdefault(key, {"editions": editions(cell["edition"]), "table": cell["table"], "source": SOURCES.id(plain(cell["source"])),
                                    "known": cell["known"]})
        row["s%s_%s" % (cell["max_roof_floor_span_ft"], cell["ultimate_wind_mph"])] = cell["stud"].replace("2x", "")
    made = [dict(row, height=key[0], carries=key[1], spacing=key[2]) for key, row in rows.items()]
    write("code_tall_studs", """
Studs of bearing walls up to 11 and 12 ft high, 4 for 2x4, 6 for 2x6, DR: design required; by the span of roof or floor (12 or 24 ft) and
the ultimate wind speed. spacing, in.
#word carries """ + ON_STUDS_WORDS + """
#set editions """ + EDITION_WORDS + """
#mark DR=-3
#whole height spacing source """ + " ".join(columns),
          ["height", "carries", "spacing"], ["height", "carries", "spacing", "editions"] + columns + ["table", "source", "known"],
          order(made, "height", ("carries", ON_STUDS_WORDS), "spacing"))


def king_studs(figures):
    conditions = {"studs at 16 in": "first", "studs at 24 in": "second", "ultimate wind below 115 mph, Exposure B": "second",
                  "ultimate wind below 140 mph B, or 130 mph or less C": "first"}
    rows = {}
    for cell in figures.rows("code", "king_studs.csv"):
        row = rows.setdefault((editions(cell["edition"]), cell["header_span_ft"]),
                              {"table": cell["table"], "source": SOURCES.id(plain(cell["source"])), "known": cell["known"]})
        row[conditions[cell["condition"]]] = cell["full_height_studs_each_end"]
    made = [dict(row, editions=key[0], span=key[1]) for key, row in rows.items()]
    write("code_king_studs", """
Full-height studs at each end of a header of so many ft. In 2015 first is for studs at 16 in and second for 24 in on centres; from 2018 on
first is for ultimate wind under 140 mph in Exposure B or under 130 mph in C, second for 115 mph and less in B.
#set editions """ + EDITION_WORDS + """
#whole span first second source""",
          ["editions", "span"], ["editions", "span", "first", "second", "table", "source", "known"], order(made, "editions", "span"))


def panels(figures):
    made = []
    for cell in figures.rows("code", "panel_spans.csv"):
        made.append({"rating": cell["span_rating"], "editions": editions(cell["edition"]), "thickness": cell["thickness_in"],
                     "roof_held": cell["max_roof_span_edge_supported_in"], "roof_free": cell["max_roof_span_no_edge_support_in"],
                     "total": cell["total_load_at_max_span_psf"], "live": cell["live_load_at_max_span_psf"], "live16": cell["live_load_16in_psf"],
                     "live24": cell["live_load_24in_psf"], "floor": cell["max_subfloor_span_in"], "table": cell["table"],
                     "source": SOURCES.id(plain(cell["source"])), "known": cell["known"]})
    write("code_panels", """
Wood structural panels by span rating: thickness; greatest spans on a roof with edges held and free, in; total and live load at that span,
live load at 16 and 24 in, psf; greatest span as a subfloor, in (0: none).
#word rating 16/0|20/0|24/0|24/16|32/16|40/20|48/24|60/32|16 oc|20 oc|24 oc|32 oc|48 oc
#set editions """ + EDITION_WORDS + """
#whole roof_held roof_free total live live16 live24 floor source
#index rating""",
          ["rating"], ["rating", "editions", "thickness", "roof_held", "roof_free", "total", "live", "live16", "live24", "floor", "table", "source",
                       "known"], made)


def wall_sheathing(figures):
    made = []
    for cell in figures.rows("code", "wall_sheathing_wind.csv"):
        row = {"nail": cell["nail"].split(" ")[0], "rating": cell["panel_rating"], "thickness": cell["thickness_in"], "spacing": cell["stud_spacing_in"],
               "edge": cell["edge_spacing_in"], "field": cell["field_spacing_in"], "penetration": cell["penetration_in"]}
        same = next((m for m in made if all(m[k] == v for k, v in row.items())), None)
        if not same:
            same = dict(row, editions=editions(cell["edition"]), table=cell["table"], source=SOURCES.id(plain(cell["source"])), known=cell["known"])
            made.append(same)
        same["v" + cell["exposure"]] = cell["max_wind_mph"]
    write("code_wall_sheathing", """
Wood structural panels on exterior walls against wind: nail and its penetration, in; span rating and thickness of the panel; greatest
spacing of the studs and of the nails at edges and in the field, in; ultimate wind speeds in exposures B, C and D, mph.
#word nail 6d|8d
#set editions """ + EDITION_WORDS + """
#whole spacing edge field vB vC vD source""",
          ["nail", "spacing"], ["nail", "penetration", "rating", "thickness", "spacing", "edge", "field", "vB", "vC", "vD", "editions", "table", "source",
                                "known"], made)


# -- fastening -----------------------------------------------------------------------------------------------------------
# What the schedule joins: the figures' words -> the two things, in the words people may use for them. The order is that of the ids.
PANEL, NOT_PANEL = ", at braced wall panels", ", not at braced wall panels"
BOTTOM = "bottom plate to joist, rim or band joist, or blocking"
JOINTS = {
    "blocking between ceiling joists, rafters or trusses to top plate or framing below": ("blocking", "top plate|plate|wall plate|framing below"),
    "blocking between rafters or trusses away from the wall plate, to rafter or truss": ("blocking", "rafter|truss"),
    "flat blocking to truss and web filler": ("flat blocking", "truss|web filler"),
    "ceiling joists to top plate": ("ceiling joist", "top plate|plate|wall plate"),
    "ceiling joist not attached to parallel rafter, lapped over partitions": ("ceiling joist", "ceiling joist|ceiling joist lap|lapped ceiling joist"),
    "ceiling joist attached to parallel rafter (heel joint)": ("ceiling joist", "rafter|parallel rafter"),
    "collar tie to rafter": ("collar tie", "rafter"),
    "rafter or roof truss to plate": ("rafter|truss|roof truss", "top plate|plate|wall plate"),
    "roof rafters to ridge, valley or hip rafters": ("rafter|roof rafter|jack rafter|jack", "ridge|ridge board|ridge beam|valley|valley rafter|hip|hip rafter"),
    "stud to stud (not at braced wall panels)": ("stud", "stud"),
    "stud to stud and abutting studs at wall corners (at braced wall panels)": ("stud", "stud|abutting stud|corner stud"),
    "built-up header, 2 in to 2 in, 1/2 in spacer": ("header|built-up header|header ply", "header|header ply|built-up header|spacer"),
    "continuous header to stud": ("continuous header|header", "stud"),
    "full-height stud beside a header, to the header end": ("full-height stud|king stud|stud", "header|header end"),
    "top plate to top plate": ("top plate|double top plate", "top plate|double top plate|upper top plate"),
    "double top plate splice": ("top plate|double top plate|top plate splice", "top plate splice|splice|end joint"),
    "double top plate splice (SDC D0-D2, braced line spacing 25 ft or more)": ("top plate|double top plate|top plate splice", "top plate splice|splice|end joint"),
    BOTTOM + NOT_PANEL: ("bottom plate|sole plate", "joist|rim joist|band joist|blocking|floor"),
    BOTTOM + PANEL: ("bottom plate|sole plate", "joist|rim joist|band joist|blocking|floor"),
    "top or bottom plate to stud": ("stud", "top plate|bottom plate|sole plate|plate"),
    "top plates, laps at corners and intersections": ("top plate", "top plate lap|corner|intersection|intersecting top plate"),
    "1 in brace to each stud and plate": ("brace|let-in brace|1x4 brace", "stud|plate|top plate|bottom plate"),
    "1x6 sheathing to each bearing": ("1x6 sheathing|board sheathing", "bearing|stud|rafter"),
    "1x8 and wider sheathing to each bearing": ("1x8 sheathing|board sheathing", "bearing|stud|rafter"),
    "sheathing wider than 1x8 to each bearing": ("1x10 sheathing|1x12 sheathing|board sheathing", "bearing|stud|rafter"),
    "joist to sill, top plate or girder": ("joist|floor joist", "sill|sill plate|top plate|plate|girder|beam"),
    "rim joist, band joist or blocking to sill or top plate": ("rim joist|band joist|blocking", "sill|sill plate|top plate|plate"),
    "1x6 subfloor or less to each joist": ("1x6 subfloor|board subfloor", "joist|floor joist"),
    "2 in subfloor to joist or girder": ("2 in subfloor|2x subfloor", "joist|floor joist|girder|beam"),
    "2 in planks (plank and beam, floor and roof)": ("plank|2 in plank", "beam|bearing|girder"),
    "band or rim joist to joist": ("band joist|rim joist", "joist|floor joist"),
    "built-up girders and beams, 2 in lumber layers": ("built-up girder|built-up beam|girder ply|beam ply", "built-up girder|built-up beam|girder ply|beam ply|ply"),
    "ledger strip supporting joists or rafters": ("ledger strip|ledger", "joist|rafter|girder|beam"),
    "bridging or blocking to joist": ("bridging|blocking", "joist|floor joist")}


def fastenings(figures):
    """code_joints: what is joined to what. code_fastenings: the ways the schedule allows."""
    made, places = [], {name: str(number) for number, name in enumerate(JOINTS, 1)}
    for cell in figures.rows("code", "fastening_schedule.csv"):
        joint, edition = cell["connection"], editions(cell["edition"])
        if joint == BOTTOM:
            joint += PANEL if cell["item"] == ("15" if edition in ("2015", "2018") else "16") else NOT_PANEL
        row = {"joint": places[joint], "alternative": cell["alternative"], "fastener": cell["fastener"].replace('long', ' long').replace("  ", " ").replace('" crown', '" crown'),
               "count": cell["count"], "spacing": cell["spacing_in"], "length": cell["nail_length_in"], "diameter": cell["nail_dia_in"],
               "location": cell["location"], "item": cell["item"], "editions": edition, "note": "", "table": cell["table"],
               "source": plain(cell["source"]), "known": cell["known"]}
        row["fastener"] = re.sub(r'7/16 "', '7/16"', row["fastener"])
        if row["fastener"] == "1d":  # 12-3 x 0.131 read as 1d
            row.update(fastener="3x0.131 nail", count="12", length="3", note=NOTES.id("the text prints 12-3 x 0.131, which was read as a nail of 1d"))
        if row["fastener"] == "10d common" and row["length"] == "3.5":
            row.update(note=NOTES.id("the text prints 3-1/2 in for a 10d common nail, which is 3 in long"))
        row["fastener"] = in_full(row["fastener"], row["length"], row["diameter"])
        if row["fastener"].startswith("Table"):
            row["fastener"] = "as the heel joint asks for: code_heel_nails (%s)" % row["fastener"]
        made.append(row)
    joints = [{"id": number, "joint": name, "first": JOINTS[name][0], "second": JOINTS[name][1], "source": "IRC Table R602.3(1)", "known": "read"}
              for name, number in places.items()]
    put("code_joints", """
The joints of the fastening schedule: what is joined (first) to what (second), in the words that are understood for them.
""", ["id", "joint", "first", "second", "source", "known"], joints)
    made = numbered(joined(made))
    write("code_fastenings", """
The ways each joint may be fastened. joint: code_joints; count of nails, or spacing, in; length and diameter of the nail, in; item of the
schedule.
#set editions """ + EDITION_WORDS + """
#whole joint alternative count spacing item note source
#index joint""",
          ["joint", "editions", "item", "alternative", "location", "fastener", "spacing"],
          ["joint", "editions", "item", "alternative", "fastener", "count", "spacing", "length", "diameter", "location", "note", "table", "source",
           "known"],
          order(made, "joint", "editions", "location", "alternative"))


SHEETS = {"wood structural panel to framing": "panel", "structural cellulosic fiberboard sheathing": "fiberboard", "gypsum sheathing": "gypsum",
          "combination subfloor underlayment to framing": "combination"}
SHEETS_WORDS = "panel|fiberboard|gypsum|combination"
SHEET_USES = {"": "roof/wall/subfloor", "subfloor, wall": "wall/subfloor", "wall or subfloor": "wall/subfloor", "roof": "roof"}


def sheathing(figures):
    made = []
    for cell in figures.rows("code", "sheathing_nailing.csv"):
        other = cell["group"] == "other wall sheathing"
        sheet = SHEETS[cell["use"] if other else cell["group"]]
        fastener = cell["fastener"].replace('1_/4"', '1-1/4"').replace(' )', ')')
        made.append({"sheet": sheet, "uses": "wall" if other else "subfloor" if sheet == "combination" else SHEET_USES[cell["use"]],
                     "least": cell["panel_thickness_min_in"] or "0", "most": cell["panel_thickness_max_in"], "alternative": cell["alternative"],
                     "fastener": fastener, "length": cell["length_in"], "diameter": cell["dia_in"], "edge": cell["edge_spacing_in"],
                     "field": cell["field_spacing_in"], "item": cell["item"], "editions": editions(cell["edition"]), "table": cell["table"],
                     "source": plain(cell["source"]), "known": cell["known"]})
    made = numbered(joined(made))
    write("code_sheathing", """
How sheathing and subfloors are fastened: sheet, what it is used for, its thickness from least to most, in; fastener, its length and
diameter, in; spacing at the edges and at the supports between, in; item of the schedule.
#word sheet """ + SHEETS_WORDS + """
#set uses roof|wall|subfloor
#set editions """ + EDITION_WORDS + """
#whole alternative edge field item source
#index sheet""",
          ["sheet", "editions", "item", "uses", "least", "alternative", "fastener"],
          ["sheet", "uses", "least", "most", "editions", "item", "alternative", "fastener", "length", "diameter", "edge", "field", "table", "source",
           "known"],
          order(made, ("sheet", SHEETS_WORDS), "editions", "item", "alternative"))


# -- wall bracing --------------------------------------------------------------------------------------------------------
BRACING = {"LIB": "LIB", "GB": "GB", "DWB": "panels", "CS-": "continuous"}
BRACED_STORIES = {"top or only story": "top", "second story below the top of three, or first of two": "second", "first of three stories": "first"}


def bracing_wind(figures):
    rows = {}
    for cell in figures.rows("code", "wall_bracing_length.csv"):
        key = (editions(cell["edition"]), BRACED_STORIES[cell["block"]], BRACING[cell["method"][:3].rstrip(",")], cell["wind_ult_mph"])
        row = rows.setdefault(key, {"table": cell["table"], "source": SOURCES.id(plain(cell["source"])), "known": cell["known"]})
        row["s" + cell["line_spacing_ft"]] = "NP" if "not permitted" in cell["flag"] else "%g" % (10 * float(cell["length_ft"]))
    made = [dict(row, editions=key[0], story=key[1], methods=key[2], wind=key[3]) for key, row in rows.items()]
    write("code_bracing_wind", """
Length of bracing by wind, tenths of ft, for braced wall lines 10 to 60 ft apart: exposure B, roof at 30 ft, wall of 10 ft, two lines. story: the
top one, the one below it, the first of three. The text shows the blocks of stories by pictures: their order was taken from their values.
wind: ultimate, mph: 95 for under 95, 140 for under 140, the others up to so much. NP: not permitted.
#word story top|second|first
#word methods LIB|GB|panels|continuous
#set editions """ + EDITION_WORDS + """
#mark NP=-1
#whole wind s10 s20 s30 s40 s50 s60 source
#index story methods""",
          ["editions", "story", "methods", "wind"],
          ["story", "methods", "editions", "wind", "s10", "s20", "s30", "s40", "s50", "s60", "table", "source", "known"],
          order(made, ("story", "top|second|first"), ("methods", "LIB|GB|panels|continuous"), "editions", "wind"))


PANEL_GROUPS = "panels|GB|LIB|ABW|CS-G|CS-WSP|PFH|PFG|CS-PF"
# What the folder leaves out of the table: openings more than 96 in high, read in the adoption texts of 2018 (Alaska), 2021 (Texas) and 2024.
TALL_OPENINGS = """100: - 44 40 38 38; 104: - 49 43 40 39; 108: - 54 46 43 41; 112: - - 50 45 43; 116: - - 55 48 45; 120: - - 60 52 48;
124: - - - 56 51; 128: - - - 61 54; 132: - - - 66 58; 136: - - - - 62; 140: - - - - 66; 144: - - - - 72"""


def braced_panels(figures):
    rows, heights = {}, ["h8", "h9", "h10", "h11", "h12"]
    cases = {"": "0", "SDC A, B": "1", "SDC D_0": "2", "Supporting roof": "1", "Supporting one": "2"}
    for cell in figures.rows("code", "braced_panel_min_length.csv"):
        opening = re.search(r"(\d+) in$", cell["condition"])
        case = opening.group(1) if opening else next(n for text, n in cases.items() if text and cell["condition"].startswith(text) or text == cell["condition"])
        key = (editions(cell["edition"]), "panels" if cell["method"].startswith("DWB") else cell["method"].split(",")[0], case)
        row = rows.setdefault(key, {"table": cell["table"], "source": plain(cell["source"]), "known": cell["known"]})
        row["h" + cell["wall_height_ft"]] = "NP" if "not permitted" in cell["flag"] else "" if "Note" in cell["min_length_in"] else cell["min_length_in"]
    for line in TALL_OPENINGS.replace("\n", " ").split(";"):
        opening, cells = line.strip().split(": ")
        for (years, group, case), row in list(rows.items()):
            if group == "CS-WSP" and case == "96":
                rows[years, group, opening] = dict(row, **dict(zip(heights, cells.replace("-", "NP").split())))
    made = numbered(joined([dict(row, editions=key[0], group=key[1], which=key[2]) for key, row in rows.items()]))
    write("code_braced_panels", """
Least length of braced wall panels, in, for walls of 8 to 12 ft (portal frames: for headers so high; empty: by a pony wall above). which: for
continuous sheathing the clear height of the opening beside it, in; for ABW and CS-PF 1 seismic categories A to C, 2 D0 to D2; for PFH 1 under a
roof, 2 under a story and a roof. NP: not permitted.
#word group """ + PANEL_GROUPS + """
#set editions """ + EDITION_WORDS + """
#mark NP=-1
#whole which h8 h9 h10 h11 h12 source
#index group""",
          ["editions", "group", "which"], ["group", "which", "editions"] + heights + ["table", "source", "known"],
          order(made, ("group", PANEL_GROUPS), "which"))


# -- rules ---------------------------------------------------------------------------------------------------------------
# Which files, and what their rules are asked for by besides their own words.
RULES = (("prescriptive/framing_rules", ""), ("prescriptive/wall_rules", "wall"), ("prescriptive/stair_guard_rules", "stairs"),
         ("prescriptive/deck_rules", "deck"), ("prescriptive/deck_rules_2", "deck"), ("prescriptive/deck_post_rules", "deck post"),
         ("prescriptive/fastening_notes", "fastening nails"), ("prescriptive/notch_bore", "notch hole bore drill"),
         ("prescriptive/rafter_uplift_rules", "rafter uplift"), ("prescriptive/heel_joint_rules", "heel joint rafter ceiling joist tie"),
         ("code/heel_joint_rules", "heel joint rafter ceiling joist tie"), ("prescriptive/lumber_subfloor", "subfloor board sheathing"),
         ("prescriptive/wall_bracing", "bracing"), ("code/loads_rules_irc", "load"), ("prescriptive/loads_rules", "load"))
YEARS = ("2015", "2018", "2021", "2024")


def rule_editions(text):
    """IRC 2012-2021 -> 2015/2018/2021; IRC all or IRC -> all four; books of other places and years -> none."""
    if text in ("IRC", "IRC all"):
        return "/".join(YEARS)
    if text in ("IBC 2018", "DCA 6"):
        return text
    found = re.fullmatch(r"IRC ([\d/]+)(?:-(\d+))?(?: \(WA\))?", text)
    if not found:
        return ""
    first, last = found.group(1).split("/"), found.group(2)
    return "/".join(year for year in YEARS if (first[0] <= year <= last if last else year in first))


def rule_of(cell):
    """Item, condition, value, unit, clause of a row of any of the files."""
    if "lay" in cell:
        return ("%s floor sheathing, %s to the joists: net thickness" % (cell["panel_rating"].replace("T&G", "tongue and groove"), cell["lay"]),
                "joists at %s in" % cell["joist_spacing_in"], cell["min_thickness_in"], "in min", cell["table"])
    item = cell.get("item") or cell.get("rule") or cell["note"]
    return ("%s: %s" % (cell["member"], item) if "member" in cell else item, cell.get("condition", ""), cell["value"], cell["unit"],
            cell.get("clause") or cell.get("table", ""))


def known_of(cell):
    """As the cell says; a copy on somebody's page is second hand."""
    copied = cell["flag"] == "secondary" or plain(cell["source"]).startswith(COPY)
    return "secondary" if copied and cell["known"] == "read" else cell["known"]


def root(clause):
    return (re.match(r"R\d+(?:\.\d+)*", clause) or [clause])[0]


def rules(figures):
    read, stairs = standing("code_rules_read")[1], standing("code_stair_limits")[1]
    known = {}
    for row in read:
        if row["known"] == "read":
            known.setdefault((root(row["clause"]), row["value"] or row["text"]), []).extend(row["editions"].split("/"))
    known.update(((".".join(row["clause"].split(".")[:2]), row["value"]), YEARS) for row in stairs)
    made = []
    for name, words in RULES:
        for cell in figures.rows(*(name + ".csv").split("/")):
            if cell["edition"].startswith("ASCE"):
                continue
            item, condition, value, unit, clause = rule_of(cell)
            seen = [known.get((at, value), ()) for at in (root(clause), ".".join(root(clause).split(".")[:2]))]
            years = rule_editions(cell["edition"])
            left = "/".join(year for year in years.split("/") if year and not any(year in each for each in seen))
            if years and not left:
                continue
            number = re.fullmatch(r"-?\d+(\.\d+)?", value)
            made.append({"clause": clause, "item": item, "condition": condition, "value": value if number else "", "text": "" if number else value,
                         "unit": unit, "words": words, "book": cell["edition"], "editions": left, 
                         "note": "" if re.search("memory file|see NOTES|^secondary$", cell["flag"]) else cell["flag"],
                         "source": SOURCES.id(plain(cell["source"]).replace(", rule 1", ""), known_of(cell)), "known": known_of(cell)})
    write("code_rules", """
Rules as read, second hand or recalled, each from one book; no editions: of another place or year. value: a number; text: what stands there instead
of one. words: what the rule is asked for by besides its own words. What code_rules_read.csv and code_stair_limits.csv have is not here.
#set editions """ + EDITION_WORDS + """
#whole source""",
          ["clause", "item", "condition", "book", "value", "text", "unit", "words"],
          ["clause", "item", "condition", "value", "text", "unit", "words", "book", "editions", "note", "source", "known"], made)


# Sites that show a code or record as it was published; every other page is somebody's copy, and second hand.
PUBLISHERS = ("docs.legis", "apps.leg", "app.leg", "online.flipbuilder", "up.codes", "codelibrary", "casetext")
COPY = "a public page: "
PAGES = (("page quoting ", "deck bearing by IRC 2015 (wood and metal)"), ("same page", "deck bearing by IRC 2015 (concrete and masonry)"),
         ("pages quoting IRC 2015", "IRC 2015 (deck joists, deck beams)"),
         ("summary page of 2025", "summary of the 2025 Residential Code of New York R602.3.1"))


def plain(source):
    """A source without its address on the network and without the names of private sites, whose pages are called copies."""
    text = re.sub(r",? ?https?://\S+", "", source).strip().rstrip(";")
    # Whoever wrote a text out again made a copy of it: one word for that, here as in results.
    text = re.sub(r"\bsecondary trans\w+", "second-hand copy", re.sub(r"\btrans\w+bing\b", "copying", text))
    text = re.sub(r"^(City of [\w ]+ records), \S+", r"\1", text)
    for start, words in PAGES:
        if text.startswith(start):
            return COPY + words
    site = re.match(r"(?:[\w-]+\.)+[a-z]{2,}(?:/\S*)?(?: forum)?,? ?(.*)$", text)
    if not site or text.startswith(PUBLISHERS):
        return text
    clause = re.search(r"irc18_(\d+\.\d+)", text)
    said = site.group(1) or "description of 2018 IRC R%s" % clause.group(1)
    return COPY + (said[1:-1] if said[0] == "(" else said)


TABLES = {"joists": joists, "headers": headers, "deck_joists": deck_joists, "deck_cantilevers": deck_cantilevers, "deck_beams": deck_beams,
          "deck_posts": deck_posts, "deck_footings": deck_footings, "ledgers": ledgers, "deck_guide_posts": deck_guide_posts,
          "deck_factors": deck_factors,
          "ledger_edges": ledger_edges, "heel_nails": heel_nails, "heel_factors": heel_factors, "uplift": uplift,
          "floor_cantilevers": floor_cantilevers, "studs": studs, "tall_studs": tall_studs, "king_studs": king_studs, "panels": panels,
          "wall_sheathing": wall_sheathing, "fastenings": fastenings, "sheathing": sheathing,
          "bracing_wind": bracing_wind, "braced_panels": braced_panels, "rules": rules}


def main(folder, *wanted):
    for name in wanted or TABLES:
        TABLES[name](Figures(folder))
    SOURCES.write()
    NOTES.write()


if __name__ == "__main__":
    if len(sys.argv) < 2:
        sys.exit(__doc__)
    main(*sys.argv[1:])
