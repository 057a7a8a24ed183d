#!/usr/bin/env python3
"""Every exported function is fed by the fuzzer: map.py LIBRARY NAMES"""
import subprocess
import sys

symbols = subprocess.run(["nm", "-D", "--defined-only", sys.argv[1]], check=True, capture_output=True, text=True).stdout
exported = {line.split()[-1].split("@")[0] for line in symbols.splitlines() if " T " in line}
exported = {name for name in exported if name.startswith("frame_")}
with open(sys.argv[2], encoding="utf-8") as file:
    fed = set(file.read().split())
for name in sorted(exported - fed):
    print("exported, but nothing feeds it: %s" % name)
for name in sorted(fed - exported):
    print("fed, but not exported: %s" % name)
print("%d functions, each with its feeder" % len(exported & fed))
sys.exit(not exported or exported != fed)
