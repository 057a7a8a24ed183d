"""The station's description, as station.lua wrote it, taken up in Python: what changes if it snows more, and a stud asked about.
Usage: station.py DESCRIPTION.json"""
import json
import sys

import frame

with open(sys.argv[1], encoding="utf-8") as file:
    text = file.read()
station = frame.site_from_json(text)
today = frame.framing(site=station, sticks=False)
print("%d checks, %d fail; the hardest worked uses %.0f %%" % (today.check_total, today.failed_total, 100 * today.worst_ratio))

# What if there were 60 psf of snow on the ground? Sizes that were left open are chosen anew.
heavier = json.loads(text)
heavier["ground_snow_psf"] = 60
more = frame.framing(site=frame.site_from_json(json.dumps(heavier)), sticks=False)
changed = {o.name: o.section for o in more.options if o.taken}
for option in today.options:
    if option.taken and changed.get(option.name) != option.section:
        print("%s: %s today, %s under 60 psf of snow" % (option.name, option.section, changed.get(option.name)))

gone = frame.stud_removal(site=station, wall="cabin, lake side", at_in="16' 8\"")
print("a stud of the cabin's lake side carries %.0f lb; without it %.0f and %.0f lb go to its neighbours: %s" % (
    gone.load_lb, gone.left_after_lb, gone.right_after_lb, "it may go, shored first" if gone.passes else "it may not go"))
