#!/usr/bin/env python3
"""The station's numbers by hand, from the description and the standards' formulas alone, against what the library wrote.
Usage: station_by_hand.py FOLDER [PYTHON_MODULES]      FOLDER holds description.json and all.json"""
import json
import math
import sys

folder = sys.argv[1]
with open(folder + "/all.json", encoding="utf-8") as file:
    made = json.load(file)
with open(folder + "/description.json", encoding="utf-8") as file:
    described = json.load(file)
figures = made["figures"]
tried = 0


def expect(what, found, wanted, share=1e-9):
    global tried
    tried += 1
    if abs(found - wanted) > share * max(abs(wanted), 1e-9):
        sys.exit("%s: the library says %.9g, by hand it is %.9g" % (what, found, wanted))


def check(name):
    return next(c for c in made["checks"] if c["name"].startswith(name))


def on(name, kind):
    return sum(load[kind] for load in made["loads"] if load["on"] == name and load["on_kind"] == "wall")


# Snow on the roofs: ASCE 7-16 7.3, p_f = 0.7 C_e C_t I_s p_g; C_s is 1 up to 45 degrees on a cold roof that is not slippery (7.4.2).
snow = 0.7 * 1.0 * 1.2 * 1.0 * 40

# Areas on plan in square feet. The boathouse: 24 x 16 and 10 x 10; its eaves, a foot wide, along 14 + 10 + 26 + 24 + 16 ft (not at the ice
# house), three outer corners more, one inner corner less.
boathouse = 24 * 16 + 10 * 10 + (14 + 10 + 26 + 24 + 16) * 1 + 3 - 1
cabin = 20 * (12 + 2 * 16 / 12)
# Openings: a hatch of 30 x 24 in, a well of 38 x 60 in with a stair of 36 in: 34 in in 5 risers of 6.8 in, 4 treads of 24 - 2 x 6.8 in.
hatch, well, stair = 30 * 24 / 144, 38 * 60 / 144, 3 * 4 * (24 - 2 * 6.8) / 12
floor, deck = 20 * 12 - hatch, 14 * 10 - well
# The drift against the ice house, 10 ft wide: ASCE 7-16 7.7.1 with 18 ft of roof behind the step, for which 20 ft stand
# (figure 7.6-1), and 26 ft before it.
h_d = max(0.43 * 20 ** (1 / 3) * 50**0.25 - 1.5, 0.75 * (0.43 * 26 ** (1 / 3) * 50**0.25 - 1.5))
gamma = 0.13 * 40 + 14
if h_d > 5 - snow / gamma:
    sys.exit("the drift would be higher than the step")
drift = 10 * (h_d * gamma) * (4 * h_d) / 2
expect("snow on all", figures["snow_lb"], snow * (boathouse + cabin) + 40 * deck + drift)
expect("roof live load on all", figures["roof_live_lb"], 20 * (boathouse + cabin))
expect("floor live load", figures["live_lb"], 40 * (floor + deck + stair))
expect("wind", figures["wind_lb"], -18 * (boathouse + cabin))
for kind in ("dead", "live", "roof_live", "snow", "wind"):
    expect(kind + " down to the ground", figures["ground_%s_lb" % kind], figures["%s_lb" % kind])

# The dead load: roofs along their slopes, floors, walls on their faces, and the weight of beams and posts, which the list of loads names.
roofs = 12 * boathouse * math.sqrt(1 + 0.5**2) + 12 * cabin * math.sqrt(1 + (7 / 12) ** 2)
floors = 10 * (floor + deck + stair)
walls = 10 * 9 * (173.5 + 114.5 + 301 + 288 + 181) / 12 + 10 * 97.125 / 12 * (240 + 240 + 133 + 133) / 12
rest = figures["dead_lb"] - roofs - floors - walls
# Beams and posts at 62.4 G/(1 + 0.108 G) 1.12 pcf: SPF 0.42, DFL 0.50, Hem-Fir 0.43; their volumes from the list of sticks.
timbers = sum(s["weight_lb"] for s in made["sticks"] if s["name"] in ("post", "beam", "beam ply"))
if not timbers < rest < timbers + 450:  # hips, valley and ridges lie in the rest too
    sys.exit("weight of beams and posts: %.1f lb, left over are %.1f lb" % (timbers, rest))
tried += 1

# The cabin's lake side takes half of its roof: ridge board, a pair of rafters is an arch (statics).
expect("snow on the cabin's lake side", on("cabin, lake side", "snow_lb"), snow * 20 * (6 + 16 / 12))
expect("dead load on it", on("cabin, lake side", "dead_lb"), 12 * math.sqrt(1 + (7 / 12) ** 2) * 20 * (6 + 16 / 12))

# The thrust at a pair: what would hang on a ridge, R, times a b / ((a + b) rise).
per_foot = (snow + 12 * math.sqrt(1 + (7 / 12) ** 2)) * 16 / 12
overhang = 16 / 12
ridge = 2 * per_foot * (6 / 2 - overhang * overhang / 2 / 6)
thrust = ridge * 6 * 6 / (12 * 3.5)
joint = next(j for j in made["joints"] if j["name"].startswith("rafter to tie"))
expect("thrust at a rafter of the cabin", joint["demand_lb"], thrust)

# Cabin joists, 2x8 SPF No.2 at 16 in, from middle to middle of the beams: NDS 2018 table 4A F_b 875 psi, C_F 1.2, C_r 1.15; D + L.
S = 1.5 * 7.25**2 / 6
M = 50 * 16 / 12 * (138.5 / 12) ** 2 / 8 * 12
expect("cabin joists", check("cabin floor, joists, 2x8")["ratio"], M / S / (875 * 1.2 * 1.15))

# Deck joists, 2x8 Hem-Fir No.2, wet and incised: F_b 850, C_F 1.2, C_M 1 as F_b C_F is under 1150, C_i 0.8, C_r 1.15; D + 0.75 (L + S), C_D 1.15.
M = (10 + 0.75 * 40 + 0.75 * 40) * 16 / 12 * (96 / 12) ** 2 / 8 * 12
expect("deck joists", check("landing deck, joists, 2x8")["ratio"], M / S / (850 * 1.15 * 1.2 * 0.8 * 1.15))

# The header joist at the head of the swimmers' stair: half of the stair.
head = [l for l in made["loads"] if l["of"] == "swimmers' stair" and l["on"].startswith("swimmers' well, header joist")]
expect("the stair's head", sum(l["live_lb"] for l in head), 40 * stair / 2)

# A post: 6x6 DFL No.1 (table 4D): F_c 1000, E_min 580,000; C_P by NDS 3.7.1 with c 0.8; load and height from the lists.
name = "cabin beam, forest side, post 2"
load = {k: sum(l[k] for l in made["loads"] if l["of"] == name) for k in ("dead_lb", "live_lb", "roof_live_lb", "snow_lb", "wind_lb")}
post = next(s for s in made["sticks"] if s["of"] == name)
D, L, Lr, W, snow_lb = load["dead_lb"], load["live_lb"], load["roof_live_lb"], load["wind_lb"], load["snow_lb"]
worst = 0
for total, C_D in ((D, 0.9), (D + L, 1.0), (D + Lr, 1.25), (D + snow_lb, 1.15), (D + 0.75 * L + 0.75 * Lr, 1.25),
                   (D + 0.75 * L + 0.75 * snow_lb, 1.15), (D + 0.6 * W, 1.6), (D + 0.75 * L + 0.45 * W + 0.75 * snow_lb, 1.6),
                   (D + 0.75 * L + 0.45 * W + 0.75 * Lr, 1.6)):
    star = 1000 * C_D
    a = 0.822 * 580000 / (post["length_in"] / 5.5) ** 2 / star
    C_P = (1 + a) / 1.6 - math.sqrt(((1 + a) / 1.6) ** 2 - a / 0.8)
    worst = max(worst, total / 5.5**2 / (star * C_P))
expect("a post of the cabin", check(name)["ratio"], worst)

# Its footing at 2,000 psf of soil.
footing = next(f for f in made["footings"] if f["name"] == name)
most = max(D + L, D + Lr, D + snow_lb, D + 0.75 * L + 0.75 * max(snow_lb, Lr))
expect("its footing's load", footing["service_lb"], most)
expect("its footing", footing["needed_in2"], 144 * most / 2000)

# A hip over an outer corner, 8 ft of run: jacks at 16 in from the corner, each a simple beam with a foot of overhang, each strip cut off by
# the hip at 45 degrees; the last full strip ends at 88 in, that at the ridge's end hangs on the ridge. By the lever to the ridge.
at_ridge = 0
for a, b in zip([0] + [8 + 16 * i for i in range(5)], [8 + 16 * i for i in range(6)]):
    area, run = (b * b - a * a) / 2, (b**3 - a**3) / 3 / ((b * b - a * a) / 2)
    middle = (b**3 - a**3) / 6 / area
    up = snow / 144 * (area * middle / run - 12 * (b - a) * 6 / run)
    at_ridge += 2 * up * run / 96
found = sum(l["snow_lb"] for l in made["loads"] if l["of"] == "boathouse roof, hip 1" and l["y_in"] < 100)
expect("a hip's end at the ridge", found, at_ridge)

# The description keeps to its schema.
if len(sys.argv) > 2:
    sys.path.insert(0, sys.argv[2])
    try:
        import jsonschema
    except ImportError:
        print("jsonschema is not installed: the schema was not tried")
    else:
        import frame

        schema = json.loads(frame.site_schema())
        jsonschema.Draft202012Validator.check_schema(schema)
        jsonschema.Draft202012Validator(schema).validate(described)
        for change in ({"walls": [{"name": "x"}]}, {"ground_snow_psf": -1}, {"colour": "red"}):
            if jsonschema.Draft202012Validator(schema).is_valid(dict(described, **change)):
                sys.exit("the schema lets %r pass" % change)
        tried += 1
print("%d figures of the station agree with those found by hand" % tried)
