#!/usr/bin/env python3
"""The station's plans in DXF read by a program that is none of ours (Debian's python3-ezdxf), and its figures compared with the list of sticks.
Usage: dxf_reader.py FOLDER      77: skipped, the reader is not there"""
import json
import math
import sys

try:
    import ezdxf
except ImportError:
    print("python3-ezdxf is not installed: skipped")
    sys.exit(77)

folder = sys.argv[1]
with open(folder + "/all.json", encoding="utf-8") as file:
    sticks = json.load(file)["sticks"]
drawing = ezdxf.readfile(folder + "/station.dxf")
faults = drawing.audit().errors
if faults:
    sys.exit("the reader finds fault: %s" % faults[0].message)
outlines = list(drawing.modelspace().query("POLYLINE"))
if len(outlines) != len(sticks):
    sys.exit("%d outlines, not %d" % (len(outlines), len(sticks)))


def corners(outline):
    return [(v.dxf.location.x, v.dxf.location.y) for v in outline.vertices]


worst = 0
for outline, stick in zip(outlines, sticks):
    at = corners(outline)
    if not outline.is_closed or len(at) < 4:
        sys.exit("%s: its outline is not closed, or has %d corners" % (stick["name"], len(at)))
    # A stick's axis lies within its outline: the outline is as long in plan as the axis, or longer by its thickness at the most.
    start, end = (stick["start_x_in"], stick["start_y_in"]), (stick["end_x_in"], stick["end_y_in"])
    run = math.dist(start, end)
    if run < 1e-6:  # upright: its axis stands in its outline, or on it
        for k in (0, 1):
            if not min(c[k] for c in at) - 1e-5 <= start[k] <= max(c[k] for c in at) + 1e-5:
                sys.exit("%s of %s stands outside its outline" % (stick["name"], stick["of"]))
        continue
    ux, uy = (end[0] - start[0]) / run, (end[1] - start[1]) / run
    along = [(c[0] - start[0]) * ux + (c[1] - start[1]) * uy for c in at]
    rise = abs(stick["end_z_in"] - stick["start_z_in"])
    depth = 12 * rise / math.hypot(run, rise)  # a sloping stick's ends lean: by its depth at the most
    short, over = max(0, min(along)) + max(0, run - max(along)), max(along) - min(along) - run
    worst = max(worst, short)
    if short > 1e-5 or over > depth + 1e-5:
        sys.exit("%s of %s: %.6f in long in plan, its outline is from %.6f to %.6f" % (stick["name"], stick["of"], run, min(along), max(along)))
levels = {stick["level"] for stick in sticks}
layers = {outline.dxf.layer for outline in outlines}
if not len(levels) <= len(layers) <= 6 * len(levels):
    sys.exit("%d layers for %d levels" % (len(layers), len(levels)))
print("DXF: %d closed outlines on %d layers, their axes within %.1e in" % (len(outlines), len(layers), worst))
