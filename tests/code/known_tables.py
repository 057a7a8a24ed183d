#!/usr/bin/env python3
"""What the code book holds and how it is known: known_tables.py SOURCE [--write]

Counts the rows of lib/code/*.csv by edition and by how they are known, and lists every figure that is printed oddly, with what
is done about it. docs/code-book.md holds the lists between its marks: without --write the two must agree. Python's standard
library only.
"""
import collections
import csv
import os
import re
import sys

TITLES = {
    "code_joist_spans": "floor joists, ceiling joists, rafters", "code_headers": "girders and headers: exterior, interior, porch, single ply",
    "code_deck_joists": "deck joists", "code_deck_cantilevers": "deck joists' cantilevers", "code_deck_beams": "deck beams",
    "code_deck_factors": "joist span factors of deck beams", "code_deck_posts": "deck posts", "code_deck_footings": "deck footings",
    "code_deck_guide_posts": "deck guide: posts and footings", "code_ledgers": "ledger fasteners", "code_ledger_edges": "their edges, ends and rows",
    "code_heel_nails": "heel joints", "code_heel_factors": "heel joints, ties above the plate", "code_uplift": "rafter uplift",
    "code_floor_cantilevers": "floor cantilevers", "code_studs": "studs", "code_tall_studs": "tall studs", "code_king_studs": "full-height studs",
    "code_panels": "panel spans", "code_wall_sheathing": "wall sheathing in the wind", "code_fastenings": "fastening schedule",
    "code_sheathing": "sheathing nailing", "code_bracing_wind": "bracing by wind", "code_bracing_seismic": "bracing by earthquakes",
    "code_bracing_factors": "bracing factors", "code_braced_panels": "least braced panels", "code_cuts": "holes and notches",
    "code_stair_limits": "stairs, handrails, guards", "code_rules_read": "rules, edition by edition", "code_rules": "other rules"}
EDITIONS = ("2015", "2018", "2021", "2024")
KNOWN = ("read", "computed", "secondary", "memory")
# The columns of odd and refused, bit by bit.
COLUMNS = {"code_joist_spans": ["s12", "s16", "s19", "s24"], "code_deck_beams": ["b%d" % n for n in range(1, 11)],
           "code_deck_joists": ["c12", "c16", "c24"]}


def table(source, name):
    with open(os.path.join(source, "lib", "code", name + ".csv"), encoding="utf-8", newline="") as file:
        return list(csv.DictReader(line for line in file if not line.startswith("#")))


def editions_of(row, sets):
    return (row["editions"] if "editions" in row else sets[row["set"]]["editions"]).split("/")


def holdings(source):
    sets = {row["id"]: row for row in table(source, "code_joist_sets")}
    lines = ["| table of lib/code | what | rows | read | computed | secondary | memory | 2015 | 2018 | 2021 | 2024 | other books |",
             "|---|---|---:|---:|---:|---:|---:|---:|---:|---:|---:|---:|"]
    total = collections.Counter()
    for name, title in TITLES.items():
        rows = table(source, name)
        known = collections.Counter(row["known"] for row in rows)
        years = collections.Counter(year for row in rows for year in editions_of(row, sets))
        others = sum(1 for row in rows if not set(editions_of(row, sets)) & set(EDITIONS))
        total.update(known)
        lines.append("| %s | %s | %d | %s | %s | %d |" % (name, title, len(rows), " | ".join(str(known[word]) for word in KNOWN),
                                                          " | ".join(str(years[year]) for year in EDITIONS), others))
    lines.append("| all | | %d | %s | | | | | |" % (sum(total.values()), " | ".join(str(total[word]) for word in KNOWN)))
    return lines


def places(name, row, column):
    """The cells that a sum of bits names."""
    names = COLUMNS.get(name)
    if not names:
        return []
    return [cell for number, cell in enumerate(names) if int(row.get(column) or 0) >> number & 1]


def odd(source):
    """Each figure printed oddly, and whether it is served with the note or refused unless asked for."""
    notes = {row["id"]: row["source"] for row in table(source, "code_notes")}
    sets = {row["id"]: row for row in table(source, "code_joist_sets")}
    lines = ["| table | row | what is said | what is done |", "|---|---|---|---|"]
    for name in TITLES:
        for row in table(source, name):
            note = notes.get(row.get("note", ""))
            if not note:
                continue
            of = sets[row["set"]] if "set" in row else row
            refused = places(name, row, "refused") or (int(row.get("refused") or 0) > 0 and name not in COLUMNS)
            what = " ".join(row[key] for key in ("species", "grade", "woods", "plies", "size", "load", "area", "fastener") if row.get(key))
            if "set" in row:
                what += ", dead load %s psf" % of["dead"]
            lines.append("| %s (%s) | %s | %s | %s |" % (of["table"], of["editions"].replace("/", ", "), what, note,
                                                         "refused unless asked for" if refused else "served with the note"))
    return lines


def main(source, *options):
    path = os.path.join(source, "docs", "code-book.md")
    with open(path, encoding="utf-8") as file:
        text = file.read()
    made = text
    for mark, lines in (("holdings", holdings(source)), ("odd", odd(source))):
        made = re.sub("(<!-- %s -->\n).*?(<!-- end -->)" % mark, lambda m: m.group(1) + "\n".join(lines) + "\n" + m.group(2), made, count=1, flags=re.S)
    if "--write" in options:
        with open(path, "w", encoding="utf-8") as file:
            file.write(made)
    elif made != text:
        print("docs/code-book.md is not what lib/code holds: python3 tests/code/known_tables.py . --write")
        return 1
    missing = {name[:-4] for name in os.listdir(os.path.join(source, "lib", "code")) if name.endswith(".csv")} - set(TITLES) - {
        "code_joist_sets", "code_joints", "code_sources", "code_notes"}
    if missing:
        print("tables that docs/code-book.md leaves out: %s" % ", ".join(sorted(missing)))
    return 1 if missing else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
