#!/usr/bin/env python3
"""Compares every look-up with a folder of figures as read: compare_with.py VERIFY FIGURES [FILE ...]

VERIFY is the program verify that the build makes of tests/verification. FIGURES is a folder of CSV files with a cell a line, as
they were read in the publications; it is not part of the project, and without it nothing is compared. Every cell is asked for
through its look-up, once for each edition its row names; figures marked doubtful are asked for as printed. Prints, for each
file, how many cells were asked for, how many agree, and each that does not. Python's standard library only.
"""
import collections
import csv
import glob
import os
import re
import subprocess
import sys
import tempfile

GRADES = {"SS": "Select Structural", "No1": "No.1", "No2": "No.2", "No3": "No.3"}
ASKS = {}  # file name pattern -> function(row) -> (calculation, inputs, printed figures), or None for a cell no look-up is for


def asks(*patterns):
    def keep(function):
        for pattern in patterns:
            ASKS[pattern] = function
        return function
    return keep


def editions_of(text):
    found = re.match(r"(?:IRC )([\d/]+)$", text)
    if found:
        return found.group(1).split("/")
    for start, word in (("IRC 2012 (proposal", "2012 proposal"), ("IBC 2018", "IBC 2018"), ("DCA 6-09", "DCA 6-09"), ("DCA 6 ", "DCA 6")):
        if text.startswith(start):
            return [word]
    return []


@asks("code/spans_*.csv", "spans/ibc2018*.csv", "spans/irc2018_R502*.csv", "spans/irc2018_R80*.csv", "spans/irc2021_R502*.csv",
      "spans/irc2021_R80*.csv")
def joist(row):
    use = "floor" if row["table"].startswith("R502") else "ceiling" if row["table"].startswith("R802.5") else "rafter"
    printed = "312" if row["over_26ft"] else str(12 * int(row["span_ft"]) + int(row["span_in"]))
    return "code_joist_span", {
        "use": use, "size": row["size"], "species": row["species"], "grade": GRADES[row["grade"]], "spacing_in": row["spacing_in"],
        "live_psf": row["live_psf"], "dead_psf": row["dead_psf"], "snow_psf": row["snow_psf"],
        "deflection_limit": row["defl_limit"], "doubtful": "yes"}, {"span_in": printed}


@asks("code/header_*.csv", "spans/irc2018_R602*.csv", "spans/irc2021_R602*.csv", "spans/irc2012*.csv")
def header(row):
    plies, size = row["size"].split("-")
    porch = "porch_depth_ft" in row
    inputs = {"supports": row["supports"], "size": size, "plies": plies,
              "porch_depth_in" if porch else "building_width_in": row.get("porch_depth_ft" if porch else "building_width_ft") + "'",
              "ground_snow_psf": row["snow_psf"]}
    if porch:
        inputs["location"] = "porch"
    if row["edition"].startswith("IRC 2012"):
        inputs["species"] = row["species"].split(" ")[0]
    printed = {"span_in": str(12 * int(row["span_ft"]) + int(row["span_in"]))}
    if not porch:
        printed["jack_studs"] = row["jack_studs"]
    return "code_header_span", inputs, printed


def compare(verify, path, ask):
    """Gives how many cells were asked for, what no look-up is for, and each cell that differs as verify says it."""
    sheets, cells, left = collections.OrderedDict(), 0, collections.Counter()
    with open(path, encoding="utf-8", newline="") as file:
        for row in csv.DictReader(file):
            asked = ask(row)
            if asked is None:
                left[row.get("table") or row.get("clause")] += 1
                continue
            calculation, inputs, printed = asked
            for edition in editions_of(row["edition"]) or [""]:
                known = dict(inputs, **({"edition": edition} if edition and "edition" not in inputs else {}))
                columns = tuple(known) + tuple("printed.%s" % name for name in printed)
                sheets.setdefault((calculation, columns), []).append(list(known.values()) + list(printed.values()))
                cells += len(printed)
    with tempfile.TemporaryDirectory() as folder:
        lines = ["table,calculation,output,unit,rounding,times,title"]
        for number, ((calculation, columns), rows) in enumerate(sheets.items()):
            lines.append("t%d,%s,,,,,%s" % (number, calculation, os.path.basename(path)))
            with open(os.path.join(folder, "t%d.csv" % number), "w", encoding="utf-8", newline="") as file:
                file.write("# source: figures as read\n# known: read\n")
                csv.writer(file, lineterminator="\n").writerows([columns] + rows)
        with open(os.path.join(folder, "list.csv"), "w", encoding="utf-8") as file:
            file.write("\n".join(lines) + "\n")
        ran = subprocess.run([verify, os.path.join(folder, "list.csv")], capture_output=True, text=True, check=False)
    said = [line.split(": differs: ", 1)[1] for line in ran.stdout.splitlines() if ": differs: " in line]
    if ran.returncode and not said:
        sys.exit("%s: %s%s" % (path, ran.stdout, ran.stderr))
    return cells, left, said


def main(verify, figures, *wanted):
    total = differing = 0
    for pattern, ask in ASKS.items():
        for path in sorted(glob.glob(os.path.join(figures, pattern))):
            if wanted and os.path.basename(path) not in wanted:
                continue
            cells, left, said = compare(verify, path, ask)
            total, differing = total + cells, differing + len(said)
            print("%-38s %6d asked for %6d equal %4d differ%s" % (
                os.path.relpath(path, figures), cells, cells - len(said), len(said),
                "; left out: %s" % ", ".join("%s (%d)" % item for item in left.items()) if left else ""))
            for line in said:
                print("    " + line)
    print("%-38s %6d asked for %6d equal %4d differ" % ("all", total, total - differing, differing))
    return 1 if differing else 0


if __name__ == "__main__":
    if len(sys.argv) < 3:
        print("not run: needs the program verify and a folder of figures")
        sys.exit(77)
    sys.exit(main(*sys.argv[1:]))
