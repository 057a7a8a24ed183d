"""Plans of sheets against published sets:  sheet_sets.py DIRECTORY [SECONDS [EVERY]]

DIRECTORY holds sheathing_jobs.json and rival_sheathing.csv (roofs' sheathing and a simple rival's sheets), guillotine2d.csv and
rival2d.csv (rectangles, best known sheets) and polygons.json (irregular strip packing, best known lengths). The sets are other
people's and are not copied here; without them this says "not run". SECONDS: for each of the polygon sets (20); EVERY: each how
many of the rectangle sets are run (1). What is asked: sheathing at or below the rival's count; rectangles by straight cuts at or
below 1.01 of the best known in sum; polygons on a strip no longer than 1.08 of the best known. Exit 1 when something falls short.
"""
import csv
import json
import os
import sys
import time

import frame


def rows(folder, name):
    with open(os.path.join(folder, name), encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def load(folder, name):
    with open(os.path.join(folder, name), encoding="utf-8") as file:
        return json.load(file)


def outlines(pieces):
    return [([tuple(v) for v in piece["vertices"]], piece["count"]) for piece in pieces]


def sheathing(folder):
    rival = {row["job"]: int(row["rival_kerf"]) for row in rows(folder, "rival_sheathing.csv")}
    short = 0
    for job in load(folder, "sheathing_jobs.json"):
        begun = time.perf_counter()
        plan = frame.sheet_plan(parts=outlines(job["parts"]), sheets=[(job["sheet"][0], job["sheet"][1], 1, None)],
                                turns="half", kerf_in=job["kerf"])
        theirs = rival[str(job["job"])]
        short += plan.sheets_used > theirs
        print("sheathing %-3s %-8s %3d sheets, rival %3d, bound %3d, %.2f s" % (
            job["job"], job["kind"], plan.sheets_used, theirs, plan.bound, time.perf_counter() - begun), flush=True)
    return short


def best_known(row, other, turned):
    kind = "rotated" if turned else "oriented"
    known = [other.get("best_guillotine_" + kind), row.get("best_g3_" + kind)] + ([] if turned else [row.get("best_h3_oriented")])
    known = [float(k) for k in known if k]
    return int(min(known)) if known else None


def rectangles_of(row):
    sizes = [[float(n) for n in piece.split(":")] for piece in row["pieces"].split()]
    return [([(0, 0), (w, 0), (w, h), (0, h)], int(count)) for w, h, count in sizes]


def rectangles(folder, every):
    others = {(row["set"], row["name"]): row for row in rows(folder, "rival2d.csv")}
    sums, number = {}, 0
    for row in rows(folder, "guillotine2d.csv"):
        number += 1
        if row["problem"] != "bin" or number % every:
            continue
        for turned in (False, True):
            best = best_known(row, others.get((row["set"], row["name"]), {}), turned)
            if best is None:
                continue
            plan = frame.sheet_plan(parts=rectangles_of(row), sheets=[(float(row["sheet_w"]), float(row["sheet_h"]), 1, None)],
                                    kerf_in=0, turns="quarter" if turned else "none", cuts="straight")
            entry = sums.setdefault((row["set"], "turned" if turned else "as drawn"), [0, 0, 0, 0])
            for place, figure in enumerate((1, plan.sheets_used, best, plan.optimal)):
                entry[place] += figure
    ours = sum(entry[1] for entry in sums.values())
    theirs = sum(entry[2] for entry in sums.values())
    for (name, way), (count, used, best, proven) in sums.items():
        print("rectangles %-26s %-8s %4d jobs: %6d sheets, best known %6d, ratio %.4f, proven %d" % (
            name, way, count, used, best, used / best, proven), flush=True)
    print("rectangles in sum: %d sheets, best known %d, ratio %.4f" % (ours, theirs, ours / theirs))
    return int(ours > 1.01 * theirs)


TURNS = {"[0]": "none", "[0, 180]": "half", "[0, 90, 180, 270]": "quarter", "[]": "any"}


def fits(instance, length, seconds):
    try:
        frame.sheet_plan(parts=outlines(instance["pieces"]), sheets=[(length, instance["strip_width"], 1, 1)], kerf_in=0,
                         turns=TURNS[str(instance["pieces"][0]["rotations"])], x_along="width", time_limit_s=seconds)
    except frame.Error as error:
        if error.status != "impossible":
            raise
        return False
    return True


def polygons(folder, seconds):
    short = 0
    for instance in load(folder, "polygons.json")["instances"]:
        best = instance.get("best_length")
        if not best:
            continue
        begun = time.perf_counter()
        good = fits(instance, 1.08 * best, seconds)
        short += not good
        print("polygons %-9s %4d parts: 1.08 of the best known length %s, %.1f s" % (
            instance["name"], instance["copies"], "holds them" if good else "DOES NOT hold them", time.perf_counter() - begun),
            flush=True)
    return short


def main(arguments):
    if not arguments or not os.path.isdir(arguments[0]):
        print("not run: no directory with the sets")
        return 77
    seconds = float(arguments[1]) if len(arguments) > 1 else 20.0
    every = int(arguments[2]) if len(arguments) > 2 else 1
    short = [sheathing(arguments[0]), rectangles(arguments[0], every), polygons(arguments[0], seconds)]
    print("short: sheathing %d, rectangles %d, polygons %d" % tuple(short))
    return 1 if any(short) else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
