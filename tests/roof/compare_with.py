#!/usr/bin/env python3
"""Compares roof_solve with a folder of figures: compare_with.py FIGURES

(PYTHONPATH must have the module frame of the build.)

FIGURES holds polygons.csv (id, coords: x and y of each corner in turn), cgal_reference.csv (for a slope of 1: volume, surface,
greatest height, length of the inner edges in plan, and how many there are) and convex_unequal.csv (id, coords, slopes, inf
meaning a gable; volume, surface, ridge height). It is not part of the project: without it nothing is compared. A small part of
it stands in tests/verification. Prints what differs by more than 1e-9 of the figure. Python's standard library only.
"""
import csv
import math
import os
import sys

import frame

MOST = 1e-9


def rows(name):
    with open(os.path.join(sys.argv[1], name), encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def corners(text):
    numbers = [float(word) for word in text.split()]
    return list(zip(numbers[::2], numbers[1::2]))


def compare(name, pairs):
    """How far the figures are apart at most, relative; those too far apart are printed."""
    worst = 0
    for what, ours, theirs in pairs:
        apart = abs(ours / float(theirs) - 1)
        worst = max(worst, apart)
        if apart > MOST:
            print("%s: %s %r, ours %r" % (name, what, theirs, ours))
    return worst


def one_slope():
    plans = {row["id"]: corners(row["coords"]) for row in rows("polygons.csv")}
    for row in rows("cgal_reference.csv"):
        roof = frame.roof_solve(corners=plans[row["id"]], slopes=[1])
        inner = [line.run_in for line in roof.lines if line.kind != "eave"]
        yield row["id"], [("volume", roof.volume_in3, row["volume_slope1"]), ("surface", roof.surface_area_in2, row["surface_slope1"]),
                          ("height", roof.height_in, row["max_height"]), ("plan", roof.plan_area_in2, row["plan_area"]),
                          ("inner edges", sum(inner), row["inner_edge_length"])]


def unequal_slopes():
    for row in rows("convex_unequal.csv"):
        slopes = [float(word) for word in row["slopes"].split()]
        kinds = ["gable" if math.isinf(slope) else "hip" for slope in slopes]
        roof = frame.roof_solve(corners=corners(row["coords"]), kinds=kinds, slopes=[1 if math.isinf(slope) else slope for slope in slopes])
        yield row["id"], [("volume", roof.volume_in3, row["volume"]), ("surface", roof.surface_area_in2, row["surface"]),
                          ("height", roof.height_in, row["ridge_height"])]


def main():
    if len(sys.argv) != 2:
        print("not run: no folder of figures was given")
        return 77
    failed = 0
    for title, found in (("one slope", one_slope()), ("unequal slopes", unequal_slopes())):
        worst = [compare(name, pairs) for name, pairs in found]
        failed += sum(apart > MOST for apart in worst)
        print("%s: %d plans, %d differ, the worst by %.1e" % (title, len(worst), sum(apart > MOST for apart in worst), max(worst)))
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
