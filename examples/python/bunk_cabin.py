"""The bunk cabin of the lakeside field station, shorter than in Lua: its floor, its roof and the nails that tie it.

Usage: bunk_cabin.py FOLDER      writes FOLDER/index.html, cuts.csv and cuts.json
"""
import os
import sys

import frame

cabin = frame.building(
    name="Bunk cabin, lakeside field station",
    floors=[dict(name="cabin floor", length_in="20'", span_in="11' 5\"", size="2x10", species="SPF", grade="No.2",
                 live_psf=40)],
    roofs=[dict(name="cabin roof", length_in="20'", run_in="6'", slope="7 in 12", overhang_in=16, size="2x8", species="SPF",
                grade="No.2", dead_psf=12, snow_psf=35, roof_live_psf=20)],
    nailings=[dict(name="rafter to ceiling joist", ties="cabin roof", nail="16d", count=5, species="SPF",
                   load_duration_factor=1.15)],
    stock=[dict(size="2x10", length_in="12'", price=21.40), dict(size="2x10", length_in="20'", price=39.80),
           dict(size="2x8", length_in="10'", price=12.90), dict(size="2x8", length_in="20'", price=29.10)],
)

for check in cabin.checks:
    verdict = "passes" if check.passes else "FAILS"
    print(f"{check.name:24} {100 * check.ratio:5.1f} %  {verdict}, {check.governs} governs")
print(f"{cabin.boards_used} boards for {cabin.cost:.2f}")

folder = sys.argv[1] if len(sys.argv) > 1 else "."
os.makedirs(folder, exist_ok=True)
cabin.packet().write(folder)
