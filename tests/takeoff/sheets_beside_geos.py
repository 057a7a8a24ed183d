"""Plans of sheets checked by GEOS, through Debian's shapely: parts whole and of the right number, on their sheet, a kerf apart,
clear of holes; what is kept is clear of the parts, and is all there is of that size. Exit 77: shapely is not here."""
import math
import random
import sys

try:
    from shapely.geometry import Polygon, box
except ImportError:
    print("not run: no shapely")
    sys.exit(77)

import frame


def polygon(corners):
    return Polygon([(c.x_in, c.y_in) for c in corners])


def kept_of(plan, number):
    """The offcuts of a sheet with their holes taken out."""
    for place, offcut in enumerate(plan.offcuts):
        if offcut.sheet == number and offcut.hole_of < 0:
            outline = polygon(offcut.corners)
            for hole in plan.offcuts:
                if hole.hole_of == place:
                    outline = outline.difference(polygon(hole.corners))
            yield offcut, outline


def check_rest(wood, placed, holes, kept, kerf):
    rest = wood
    for part in placed:
        rest = rest.difference(part.buffer(kerf * 1.5 + 1e-3))
    for hole in holes:
        rest = rest.difference(hole)
    for _, outline in kept:
        rest = rest.difference(outline.buffer(1e-3))
    least = 10.0  # a circle that wide and not kept would have been lost
    for piece in getattr(rest, "geoms", [rest]):
        assert piece.buffer(-least / 2).is_empty, "a large piece is not kept"


def check_sheet(sheet, number, plan, wood, holes, parts, kerf):
    placed = [polygon(p.corners) for p in sheet.placements]
    for place, outline in zip(sheet.placements, placed):
        wanted = Polygon(parts[place.part][0])
        assert abs(outline.area - wanted.area) < 1e-6 * wanted.area, "a part has another area"
        assert abs(outline.length - wanted.length) < 1e-6 * wanted.length, "a part has another outline"
        assert wood.buffer(1e-6).contains(outline), "a part is off its sheet"
        assert all(outline.intersection(h).area < 1e-5 for h in holes), "a part lies over a hole"
    for i, one in enumerate(placed):
        for other in placed[:i]:
            assert one.distance(other) >= kerf - 1e-6, "two parts are too near"
            assert one.intersection(other).area < 1e-5, "two parts overlap"
    kept = list(kept_of(plan, number))
    for offcut, outline in kept:
        assert outline.is_valid and abs(outline.area - offcut.area_in2) < 1e-4, "an offcut has another area"
        assert wood.buffer(1e-6).contains(outline), "an offcut is off its sheet"
        assert all(outline.distance(p) >= kerf - 1e-4 for p in placed), "an offcut reaches into a part's kerf"
    check_rest(wood, placed, holes, kept, kerf)


def check(parts, sheets, offcuts=(), holes=(), **more):
    kerf = more.get("kerf_in", 0.125)
    plan = frame.sheet_plan(parts=parts, sheets=sheets, offcuts=list(offcuts), holes=list(holes), least_offcut_in=3, **more)
    counts = [0] * len(parts)
    for place in plan.placements:
        counts[place.part] += 1
    assert counts == [p[1] for p in parts], "parts are missing"
    for number, sheet in enumerate(plan.sheets):
        wood = Polygon(offcuts[sheet.offcut][0]) if sheet.offcut >= 0 else box(0, 0, sheet.x_in, sheet.y_in)
        gaps = [Polygon(h[1]) for h in holes if h[0] == sheet.offcut]
        check_sheet(sheet, number, plan, wood, gaps, parts, kerf)
    return plan


def star(chance):
    count = chance.randint(3, 9)
    angles = [(i + chance.uniform(-.3, .3)) * 2 * math.pi / count for i in range(count)]
    return [(chance.uniform(6, 23) * math.cos(a), chance.uniform(6, 23) * math.sin(a)) for a in angles]


def random_part(chance):
    if chance.random() < 0.4:
        w, h = chance.uniform(4, 46), chance.uniform(4, 46)
        return [(0, 0), (w, 0), (w, h), (0, h)]
    while True:
        corners = star(chance)
        if Polygon(corners).is_valid:
            return corners


def main():
    chance = random.Random(5)
    for job in range(24):
        parts = [(random_part(chance), chance.randint(1, 4)) for _ in range(chance.randint(1, 7))]
        on_hand = [([(5, 5), (60, 9), (50, 60), (30, 20), (7, 50)], 1)] if job % 3 == 0 else []
        holes = [(0, [(40, 20), (44, 21), (41, 25)])] if job % 6 == 0 else []
        check(parts, [(48, 96, 20, None)], on_hand, holes, turns=("none", "half", "quarter", "any")[job % 4],
              reversible=job % 5 == 0, kerf_in=(0.125, 0.0)[job % 2], cuts=("free", "straight")[job % 3 == 1],
              time_limit_s=0.05)
    plan = check([([(0, 0), (96, 0), (96, 48), (0, 48)], 3)], [(48, 96, 20, None)])
    assert plan.sheets_used == 3 and plan.optimal and not list(plan.offcuts)
    print("24 random jobs and one known: GEOS agrees")


if __name__ == "__main__":
    main()
