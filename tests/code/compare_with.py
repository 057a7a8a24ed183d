#!/usr/bin/env python3
"""Compares every look-up with a folder of figures as read: compare_with.py VERIFY FIGURES [FILE ...]

(PYTHONPATH must have the module frame of the build.)

VERIFY is the program verify that the build makes of tests/verification. FIGURES is a folder of CSV files with a cell a line, as
they were read in the publications; it is not part of the project, and without it nothing is compared. Every cell is asked for
through its look-up, once for each edition its row names; figures marked doubtful are asked for as printed. What is served of the
code's own text must be known no better than its cell is, and a cell marked as a misprint must be refused or come with a note.
Prints, for each file, how many cells were asked for, how they are known, how many agree, and each that does not; files that no
look-up of the code book is for are named. Python's standard library only.
"""
import collections
import csv
import glob
import math
import os
import re
import subprocess
import sys
import tempfile

GRADES = {"SS": "Select Structural", "No1": "No.1", "No2": "No.2", "No3": "No.3"}
# Readings that contradict the code's own text, and how many of their cells do.
OTHERWISE = {"spans/irc2021_R507.6_deck_no2.csv": (31, "the sheet prints the row of redwood under Douglas fir-larch, hem-fir and spruce-pine-fir, and one figure "
                                                   "of southern pine otherwise; the text of four editions agrees with itself")}
ASKS = {}  # file name pattern -> function(row) -> (calculation, inputs, printed figures), or None for a cell no look-up is for


def figures_of(path):
    """The rows of another file of figures."""
    with open(os.path.join(sys.argv[2], path), encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


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


WOODS = {"southern pine": ["SP"], "DF-L/HF/SPF": ["DFL", "HF", "SPF"], "any": ["SPF"],
         "redwood/western cedars/ponderosa pine/red pine": ["Redwood", "Western Cedars", "Ponderosa Pine", "Red Pine"]}


def loads(row):
    """The load column as the look-ups take it: 40 psf of live load, or more of snow."""
    load = row.get("live_or_ground_snow_psf") or row.get("live_psf") or row.get("live_or_snow_psf") or "40"
    return {"live_psf": "40", "ground_snow_psf": load if int(load) > 40 else "0"}


@asks("code/deck_joist.csv", "prescriptive/deck_joist_dca6*.csv")
def deck_joist(row):
    species = WOODS[row["species"]]
    inputs = dict(loads(row), size=row["size"], spacing_in=row["spacing_in"])
    base = row.get("max_span_in") or row["span_no_overhang_in"]
    yield from (("code_deck_joist_span", dict(inputs, species=s), {"span_in": base}) for s in species)
    second = row.get("second_value_in") or row.get("max_overhang_in") or row.get("span_with_overhang_in")
    if not second:
        return
    if row.get("second_value_kind") == "span_with_cantilever" or "span_with_overhang_in" in row:
        yield "code_deck_joist_span", dict(inputs, species=species[0], cantilevered="yes"), {"span_in": second}
    else:  # the longest cantilever, where a quarter of the longest span is no less
        yield "code_deck_joist_span", dict(inputs, species=species[0]), {"cantilever_in": str(min(float(second), float(base) / 4))}


@asks("code/deck_joist_cantilever.csv")
def deck_cantilever(row):
    """A cell that permits none is 0; or the joist itself may not span so far at any spacing, and is refused."""
    spans = {(r["live_or_ground_snow_psf"], r["species"], r["size"]): int(r["max_span_in"])
             for r in figures_of("code/deck_joist.csv") if r["edition"].startswith("IRC 2021") and r["spacing_in"] == "12"}
    inputs = dict(loads(row), size=row["size"], species=WOODS[row["species"]][0], spacing_in="12", back_span_in=row["back_span_ft"] + "'")
    beyond = 12 * int(row["back_span_ft"]) > spans[row["live_psf"], row["species"], row["size"]]
    return "code_deck_joist_span", inputs, {"cantilever_in": row["max_cantilever_in"] or ("outside scope" if beyond else "0")}


@asks("spans/irc2021_R507*.csv")
def deck_joist_again(row):
    inputs = {"size": row["size"], "spacing_in": row["spacing_in"], "live_psf": "40", "ground_snow_psf": "0"}
    printed = {"span_in": str(12 * int(row["span_ft"]) + int(row["span_in"]))}
    for species in row["species"].split("/"):
        yield "code_deck_joist_span", dict(inputs, species=species), printed


@asks("code/deck_beam.csv", "code/deck_beam_irc2024.csv")
def deck_beam(row):
    pairs = [pair.split("&") for pair in row.get("joist_span_and_cantilever_ft", "").split("; ") if pair]
    for size in row["size"].split(" or "):
        plies, _, ply = size.rpartition("-")
        inputs = dict(loads(row), size=ply, plies=plies or "1", doubtful="yes", species=WOODS[row["species"]][0])
        printed = {"span_in": row["max_beam_span_in"]}
        if not pairs:
            yield "code_deck_beam_span", dict(inputs, joist_span_in=row["joist_span_ft"] + "'"), printed
        for span, cantilever in pairs:
            yield "code_deck_beam_span", dict(inputs, joist_span_in=span + "'", joist_cantilever_in=cantilever + "'"), printed


@asks("code/deck_joist_span_factor.csv")
def deck_factor(row):
    ratio = {"0": "0", "1/12": "10", "1/10": "12", "1/8": "15", "1/6": "20", "1/4": "30"}[row["ratio_value"].split(" ")[0]]
    inputs = {"size": "2x10", "plies": "3", "species": "SP", "live_psf": "40", "joist_span_in": "120", "joist_cantilever_in": ratio}
    return "code_deck_beam_span", inputs, {"effective_joist_span_in": "%g" % (120 * float(row["factor_on_joist_span"]))}


@asks("code/deck_post_height.csv")
def deck_post(row):
    inputs = dict(loads(row), size=row["size"], species=WOODS[row["species"]][0])
    if row["tributary_ft2"] != "any":
        inputs["tributary_ft2"] = row["tributary_ft2"]
    return "code_deck_post", inputs, {"height_in": row["max_height_in"] or "0"}


@asks("prescriptive/deck_post_footing_dca6.csv")
def guide_post(row):
    for number, species in enumerate(("SP", "DFL", "HF", "Redwood", "SPF"), 1):
        height = row["post_height_col%d_ft" % number]
        yield ("code_deck_guide_post", {"species": species, "beam_span_in": row["beam_span_ft"] + "'", "joist_span_in": row["joist_span_max_ft"] + "'"},
               {"height_in": "0" if height == "NP" else str(12 * int(height)), "round_diameter_in": row["footing_round_dia_in"],
                "square_side_in": row["footing_square_in"], "thickness_in": row["footing_thickness_in"]})


@asks("code/deck_footing.csv")
def deck_footing(row):
    inputs = dict(loads(row), tributary_ft2=row["tributary_ft2"], soil_psf=row["soil_psf"], doubtful="yes")
    return "code_deck_footing", inputs, {"square_side_in": row["square_side_in"], "round_diameter_in": row["round_dia_in"],
                                         "thickness_in": row["thickness_in"]}


@asks("code/ledger_fastener_spacing.csv")
def ledger(row):
    kind, sheathing = row["fastener"].split(", max ")
    inputs = dict(loads(row), fastener=kind, sheathing_in="1" if sheathing.startswith("1 ") else "0.5",
                  joist_span_in=row["joist_span_ft"] + "'")
    return "code_ledger_spacing", inputs, {"spacing_in": row["max_spacing_in"]}


@asks("code/ledger_edge_distance.csv")
def ledger_edge(row):
    field = {"top edge min": "top_in", "bottom edge min": "bottom_in"}.get(row["item"])
    field = ("ledger_" if row["member"] == "ledger" else "band_") + field if field else {"end min": "end_in"}.get(row["item"], "row_spacing_in")
    return "code_ledger_spacing", {"fastener": "bolt", "live_psf": "40", "sheathing_in": "0.5", "joist_span_in": "10'"}, {field: row["value_in"]}


@asks("code/heel_joint_nails.csv")
def heel(row):
    load = row["load_psf"] if row["load_kind"] == "ground snow" else "0"
    inputs = {"slope": row["slope_rise_in_12"] + "/12", "spacing_in": row["spacing_in"], "ground_snow_psf": load,
              "roof_span_in": row["roof_span_ft"] + "'"}
    return "code_heel_nails", inputs, {"nails": row["nails_16d_common"], "table_nails": row["nails_16d_common"]}


HEEL = {"slope": "4/12", "spacing_in": "24", "ground_snow_psf": "70", "roof_span_in": "36'"}  # 29 nails in 2015 and 2018, 26 since


@asks("code/heel_joint_rules.csv", "prescriptive/heel_joint_rules.csv")
def heel_rule(row):
    """The rules as they change a joint of many nails."""
    whole = 29 if "2015" in row["edition"] or "2018" in row["edition"] else 26
    up = lambda factor: str(math.ceil(whole * factor - 1e-9))  # noqa: E731
    rule = row["rule"]
    if row["edition"] not in ("IRC 2015", "IRC 2018", "IRC 2021/2024", "IRC 2021"):
        return None
    if rule.startswith("nail count multiplier"):
        ratio = {"1/3": "0.3333333", "1/4": "0.25", "1/5": "0.2", "1/6": "0.1666666"}.get(row["condition"], "0.05")
        return "code_heel_nails", dict(HEEL, tie_height_ratio=ratio), {"nails": up(float(row["value"]))}
    if rule.startswith("40d box"):
        return "code_heel_nails", dict(HEEL, nail="40d box"), {"nails": up(float(row["value"]))}
    if rule.startswith("nail count cut"):
        return "code_heel_nails", dict(HEEL, clinched="yes"), {"nails": up(1 - float(row["value"]) / 100)}
    if rule.startswith("10d common"):
        return "code_heel_nails", dict(HEEL, nail="10d common"), {"nails": up(float(row["value"]))}
    if rule.startswith("slope to enter"):
        return "code_heel_nails", dict(HEEL, slope="6/12", tie="rafter ties"), {"nails": up(1)}
    if rule.startswith("roof live load column"):
        return "code_heel_nails", dict(HEEL, roof_live_psf=str(float(row["value"]) + 0.1)), {"nails": "outside scope"}
    if rule.startswith("no heel joint"):
        return "code_heel_nails", dict(HEEL, ridge_carried="yes"), {"nails": row["value"]}
    if rule.startswith("with struts"):
        return "code_heel_nails", dict(HEEL, span_ratio="0.5"), {"nails": up(0.5)}
    if rule.startswith("ceiling joist to ceiling joist"):
        return "code_heel_nails", HEEL, {"nails": up(float(row["value"]))}
    if rule.startswith("above this HC/HR"):
        return "code_heel_nails", dict(HEEL, tie_height_ratio="0.34"), {"nails": "outside scope"}
    return None


@asks("code/rafter_uplift.csv")
def rafter_uplift(row):
    inputs = {"slope": "4/12" if row["pitch"].startswith("<") else "5/12", "spacing_in": row["spacing_in"], "wind_mph": row["wind_ult_mph"],
              "roof_span_in": row["roof_span_ft"] + "'", "exposure": row["exposure"], "roof_height_in": "30'", "overhang_in": "24"}
    value = row["uplift_lb_asd"].replace(",", "")
    return "code_uplift", inputs, {"uplift_lb": value, "table_lb": value}


@asks("code/floor_cantilever.csv")
def floor_cantilever(row):
    inputs = {"carries": "balcony" if "balcony" in row["table"] else "wall and roof", "size": row["size"], "spacing_in": row["spacing_in"],
              "ground_snow_psf": row["ground_snow_psf"], "roof_width_in": row["roof_width_ft"] and row["roof_width_ft"] + "'"}
    return "code_floor_cantilever", inputs, {"cantilever_in": row["max_cantilever_in"], "uplift_lb": row["uplift_at_backspan_lb"]}


@asks("code/king_studs.csv")
def king(row):
    inputs = {"header_span_in": row["header_span_ft"] + "'"}
    if row["condition"].startswith("studs at"):
        inputs["stud_spacing_in"] = row["condition"].split(" ")[2]
    else:
        inputs.update(exposure="B", wind_mph="110" if "below 115" in row["condition"] else "139")
    return "code_king_studs", inputs, {"full_height_studs": row["full_height_studs_each_end"]}


@asks("code/stud_size_spacing.csv")
def stud(row):
    inputs = {"size": row["stud"], "supports": row["supports"] or "nothing", "height_in": row["max_height_ft"] + "'",
              "exterior": "no" if row["stud"] == "2x3" else "yes"}
    return "code_stud", inputs, {"spacing_in": row["max_spacing_in"], "height_in": str(12 * int(row["max_height_ft"]))}


@asks("code/stud_tall_R602.3_6.csv")
def tall_stud(row):
    """A stud as printed may stand at the row's spacing; a smaller one, or any where design is required, may not."""
    inputs = {"supports": row["supports"], "height_in": row["stud_height_ft"] + "'", "wind_mph": row["ultimate_wind_mph"], "ground_snow_psf": "30",
              "exposure": "B", "span_in": row["max_roof_floor_span_ft"] + "'", "grade": "No.2"}
    less = {"12": "<0", "16": "<12", "24": "<16"}[row["spacing_in"]]
    for size in ("2x4", "2x6"):
        holds = row["stud"] != "DR" and size >= row["stud"]
        yield "code_stud", dict(inputs, size=size), {"spacing_in": ">" + row["spacing_in"] if holds else less}


@asks("code/panel_spans.csv")
def panel(row):
    printed = {"roof_span_held_in": "max_roof_span_edge_supported_in", "roof_span_free_in": "max_roof_span_no_edge_support_in",
               "roof_total_psf": "total_load_at_max_span_psf", "roof_live_psf": "live_load_at_max_span_psf", "live_16_psf": "live_load_16in_psf",
               "live_24_psf": "live_load_24in_psf", "floor_span_in": "max_subfloor_span_in"}
    return "code_panel_span", {"rating": row["span_rating"]}, {name: row[column] for name, column in printed.items() if row[column]}


FINDS = {}  # file name pattern -> function(rows) giving for each cell asked for, edition by edition, what differs or ""


def finds(*patterns):
    def keep(function):
        for pattern in patterns:
            FINDS[pattern] = function
        return function
    return keep


def joint_words():
    """The first words of each joint of the schedule, by its name."""
    path = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..", "lib", "code", "code_joints.csv")
    with open(path, encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(line for line in file if not line.startswith("#")))
    return {row["joint"].split(", at braced")[0].split(", not at")[0]: (row["first"].split("|")[0], row["second"].split("|")[0]) for row in rows}


def number(text):
    return float(text) if text else None


@finds("code/fastening_schedule.csv")
def fastening(rows):
    """Each way: its nail, its number or spacing and where it is driven. One way was read wrongly there: 12-3 x 0.131 as 1d."""
    import frame
    words = joint_words()
    for row in rows:
        first, second = words[row["connection"]]
        misread = row["fastener"] == "1d"
        length, diameter, count = ("3", "0.131", "12") if misread else (row["nail_length_in"], row["nail_dia_in"], row["count"])
        for edition in editions_of(row["edition"]):
            ways = frame.code_fastening(first=first, second=second, edition=edition).ways
            same = [w for w in ways if (w.length_in, w.diameter_in, w.count, w.spacing_in) == (
                number(length), number(diameter), int(count) if count else None, number(row["spacing_in"])) and
                w.location == row["location"] and w.item == int(row["item"]) and
                (misread or w.fastener.startswith(row["fastener"].split("x0")[0][:3]) or "code_heel_nails" in w.fastener)]
            yield "" if same else "%s %s %s" % (edition, row["connection"], row["fastener"])


@finds("code/sheathing_nailing.csv")
def sheathing_nailing(rows):
    import frame
    for row in rows:
        uses = {"": ["roof", "wall", "subfloor"], "roof": ["roof"]}.get(row["use"], ["wall", "subfloor"])
        sheet = "panel"
        if row["group"] == "other wall sheathing":
            sheet, uses = ("gypsum" if "gypsum" in row["use"] else "fiberboard"), ["wall"]
        elif row["group"].startswith("combination"):
            sheet, uses = "combination", ["subfloor"]
        for edition in editions_of(row["edition"]):
            for use in uses:
                for thickness in (row["panel_thickness_min_in"], row["panel_thickness_max_in"]):
                    ways = frame.code_sheathing(sheet=sheet, use=use, thickness_in=thickness or "1/2", edition=edition).ways
                    fastener = row["fastener"].replace('1_/4"', '1-1/4"').replace(" )", ")")
                    same = [w for w in ways if w.fastener == fastener and (w.length_in, w.diameter_in, w.edge_in, w.field_in, w.item) == (
                        number(row["length_in"]), number(row["dia_in"]), number(row["edge_spacing_in"]), number(row["field_spacing_in"]), int(row["item"]))]
                    yield "" if same else "%s %s %s %s" % (edition, use, thickness, row["fastener"])


@finds("code/wall_sheathing_wind.csv")
def wall_sheathing(rows):
    import frame
    for row in rows:
        for edition in editions_of(row["edition"]):
            ways = frame.code_sheathing(sheet="panel", use="wall", thickness_in=row["thickness_in"], stud_spacing_in=float(row["stud_spacing_in"]),
                                        exposure=row["exposure"], edition=edition).ways
            same = [w for w in ways if w.item == 0 and w.wind_mph == float(row["max_wind_mph"]) and w.penetration_in == float(row["penetration_in"]) and
                    w.fastener[:2] == row["nail"][:2] and (w.edge_in, w.field_in) == (number(row["edge_spacing_in"]), number(row["field_spacing_in"]))]
            yield "" if same else "%s %s %s" % (edition, row["nail"], row["exposure"])


STORIES = {"top or only story": (1, 1), "second story below the top of three, or first of two": (2, 1), "first of three stories": (3, 1)}


@finds("code/wall_bracing_length.csv")
def bracing(rows):
    import frame
    for row in rows:
        stories, story = STORIES[row["block"]]
        for method in row["method"].split(", "):
            # CS-G goes under a roof alone, the held portals in one story or the first of two: other rules than the table
            if (method == "CS-G" and stories > 1) or (method in ("ABW", "PFH", "PFG") and stories > 2):
                continue
            for edition in editions_of(row["edition"]):
                wind = 139.999999 if row["wind_ult_mph"] == "140" else float(row["wind_ult_mph"])
                try:
                    got = frame.code_bracing(
                        method=method, edition=edition, stories=stories, story=story, wind_mph=wind, exposure="B", seismic="A",
                        line_spacing_in=12 * float(row["line_spacing_ft"]), lines=2, eave_to_ridge_in=120, wall_height_in=120, gypsum_inside=True,
                        blocked=True).table_wind_in / 12
                    same = row["length_ft"] and abs(got - float(row["length_ft"])) < 1e-5
                except frame.Error as error:
                    same = error.status == "refused" and "not permitted" in row["flag"]
                yield "" if same else "%s %s %s" % (edition, method, row)


@finds("code/braced_panel_min_length.csv")
def braced_panels(rows):
    import frame
    for row in rows:
        for method in row["method"].split(", "):
            for edition in editions_of(row["edition"]):
                opening = row["condition"].rsplit(" ", 2)[1] if row["condition"].endswith(" in") else 0
                panel = {"start_in": 0, "length_in": 300, "opening_height_in": float(opening)}
                if "Note" in row["min_length_in"]:
                    panel["portal_height_in"] = 120
                got = frame.code_wall_line(
                    method=method, edition=edition, required_in=0, line_length_in=300, wall_height_in=12 * float(row["wall_height_ft"]),
                    seismic="D1" if "D_0" in row["condition"] else "B", floors_above=1 if "one story" in row["condition"] else 0, ends_held=True,
                    panels=[panel]).panels[0].least_in
                printed = number(row["min_length_in"]) if "Note" not in row["min_length_in"] else got
                yield "" if got == printed else "%s %s %s" % (edition, method, row)


def rule_editions(text):
    """The editions a rule is said to hold for; none for the books of other places and years."""
    years = ("2015", "2018", "2021", "2024")
    if text in ("IRC", "IRC all"):
        return years
    if text in ("IBC 2018", "DCA 6"):
        return (text,)
    found = re.fullmatch(r"IRC ([\d/]+)(?:-(\d+))?(?: \(WA\))?", text)
    if not found:
        return ()
    first, last = found.group(1).split("/"), found.group(2)
    return tuple(year for year in years if (first[0] <= year <= last if last else year in first))


@finds("prescriptive/framing_rules.csv", "prescriptive/wall_rules.csv", "prescriptive/stair_guard_rules.csv", "prescriptive/deck_rules.csv",
       "prescriptive/deck_rules_2.csv", "prescriptive/deck_post_rules.csv", "prescriptive/fastening_notes.csv", "prescriptive/notch_bore.csv",
       "prescriptive/rafter_uplift_rules.csv", "prescriptive/heel_joint_rules.csv", "code/heel_joint_rules.csv", "prescriptive/lumber_subfloor.csv",
       "prescriptive/wall_bracing.csv", "code/loads_rules_irc.csv", "prescriptive/loads_rules.csv")
def rules(rows):
    """Every rule is found by its clause or words in each of its editions, with its value."""
    import frame

    def found(words, edition, value, elsewhere):
        try:
            rules = frame.code_rules(words=words, edition=edition, elsewhere=elsewhere).rules
        except frame.Error:
            return False
        figure = number(value) if re.fullmatch(r"-?\d+(\.\d+)?", value) else None
        return any(rule.value == figure if figure is not None else value == (rule.text or "") for rule in rules)

    for row in rows:
        if row["edition"].startswith("ASCE"):
            continue
        value = row.get("value", row.get("min_thickness_in", ""))
        clause = (re.match(r"R\d+(\.\d+)*", row.get("clause") or row.get("table") or "") or [""])[0]
        item = re.sub(r"[^\w ]", " ", row.get("item") or row.get("rule") or row.get("note") or "floor sheathing")
        short = ".".join(clause.split(".")[:2])
        words = [w for w in (clause, short, item) if w]
        for edition in rule_editions(row["edition"]) or ("2021",):
            elsewhere = not rule_editions(row["edition"])
            if edition == "2024" and short in ("R311.7", "R312.1", "R311", "R312"):
                words += ["stairs"]  # stairs and guards are R318 to R321 there
            yield "" if any(found(each, edition, value, elsewhere) for each in words) else "%s %s %s %s" % (edition, clause, item, value)


KNOWN = {"read": 0, "computed": 1, "secondary": 2, "memory": 3}  # from best to worst
MISPRINT = re.compile("doubtful|misprint|text prints")


def value_of(text):
    """A figure of the folder as the module takes it: numbers as such, the tape's notation and words as they are."""
    if text in ("yes", "no"):
        return text == "yes"
    try:
        return int(text) if text.isdigit() else float(text)
    except ValueError:
        return text


def said_of(row, calculation, inputs):
    """What is wrong with how a cell's figure is said to be known, or with the silence about its misprint; "" for nothing."""
    import frame
    given = {name: value_of(value) for name, value in inputs.items() if value not in ("", None)}
    ask = getattr(frame, calculation)
    try:
        known = KNOWN[ask(**given).known]
    except frame.Error:
        return ""  # the comparison of figures says whether that is as it must be
    if row["_file"].startswith("code/") and known < KNOWN[row["known"]]:
        return "%s %s: known as %s, served as better" % (calculation, given, row["known"])
    if MISPRINT.search(row["flag"] or ""):
        try:
            if not ask(**dict(given, **({"doubtful": False} if "doubtful" in given else {}))).note:
                return "%s %s: a misprint without a word about it" % (calculation, given)
        except frame.Error as error:
            return "" if error.status == "refused" else str(error)
    return ""


def compare(verify, path, name, ask):
    """Gives how many cells were asked for by how they are known, what no look-up is for, and each cell that differs."""
    sheets, cells, left, wrong = collections.OrderedDict(), collections.Counter(), collections.Counter(), []
    with open(path, encoding="utf-8", newline="") as file:
        for row in csv.DictReader(file):
            row["_file"] = name
            asked = ask(row)
            asked = [asked] if isinstance(asked, tuple) else list(asked or [])
            if not asked:
                left[row.get("table") or row.get("clause")] += 1
            for calculation, inputs, printed in asked:
                for edition in editions_of(row["edition"]) or [""]:
                    known = dict(inputs, **({"edition": edition} if edition and "edition" not in inputs else {}))
                    columns = tuple(known) + tuple("printed.%s" % name for name in printed)
                    sheets.setdefault((calculation, columns), []).append(list(known.values()) + list(printed.values()))
                    cells[row["known"]] += len(printed)
                    said = said_of(row, calculation, known)
                    if said:
                        wrong.append(said)
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
    return cells, left, said + wrong


def counts(cells):
    return ", ".join("%d %s" % (cells[known], known) for known in KNOWN if cells[known])


def line(name, cells, differ, more=""):
    total = sum(cells.values())
    print("%-42s %6d asked for %6d equal %4d differ   (%s)%s" % (name, total, total - differ, differ, counts(cells), more))


def pulled(rows, last):
    """The rows one by one; last[0] is the one being asked for."""
    for row in rows:
        last[0] = row
        yield row


def by_figures(verify, figures, wanted, total):
    differing = 0
    for pattern, ask in ASKS.items():
        for path in sorted(glob.glob(os.path.join(figures, pattern))):
            name = os.path.relpath(path, figures)
            if wanted and os.path.basename(path) not in wanted:
                continue
            cells, left, said = compare(verify, path, name, ask)
            otherwise, why = OTHERWISE.get(name, (0, ""))
            differing += abs(len(said) - otherwise)
            total.update(cells)
            line(name, cells, len(said), "; elsewhere: %d" % sum(left.values()) if left else "")
            print("".join("    %s\n" % text for text in said) if len(said) != otherwise else "    as known: %s\n" % why if why else "", end="")
    return differing


def by_finding(figures, wanted, total):
    differing = 0
    for pattern, find in FINDS.items():
        for path in sorted(glob.glob(os.path.join(figures, pattern))):
            name = os.path.relpath(path, figures)
            if wanted and os.path.basename(path) not in wanted:
                continue
            cells, last, wrong = collections.Counter(), [None], []
            for said in find(pulled(figures_of(name), last)):
                cells[last[0]["known"]] += 1
                if said:
                    wrong.append(said)
            differing += len(wrong)
            total.update(cells)
            line(name, cells, len(wrong))
            print("".join("    %s\n" % text for text in wrong), end="")
    return differing


def main(verify, figures, *wanted):
    total = collections.Counter()
    differing = by_figures(verify, figures, wanted, total) + by_finding(figures, wanted, total)
    line("all", total, differing)
    files = [os.path.relpath(path, figures) for folder in ("code", "spans", "prescriptive") for path in glob.glob(os.path.join(figures, folder, "*.csv"))]
    asked = [os.path.relpath(path, figures) for pattern in list(ASKS) + list(FINDS) for path in glob.glob(os.path.join(figures, pattern))]
    rows = {name: len(figures_of(name)) for name in files}
    print("%d cells and rules in %d files; without a look-up of the code book: %s" % (
        sum(rows.values()), len(files), ", ".join("%s (%d)" % (name, rows[name]) for name in sorted(set(files) - set(asked))) or "none"))
    return 1 if differing else 0


if __name__ == "__main__":
    if len(sys.argv) < 3 or not os.path.isdir(os.path.join(sys.argv[2], "code")):
        print("not run: needs the program verify and a folder of figures, which is not part of the project")
        sys.exit(77)
    sys.exit(main(*sys.argv[1:]))
