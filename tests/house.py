#!/usr/bin/env python3
"""The order of the rooms, from the includes: each room may include only the rooms below it.  house.py SOURCE_DIR"""
import os
import re
import sys

# From the ground up; rooms on one line do not use each other.
FLOORS = [["version", "base", "fields"], ["text"], ["tape"], ["working", "drawing"], ["material"], ["load", "marks", "timber"],
          ["strength", "joint", "code"], ["roof", "layout", "takeoff"], ["building"], ["packet"]]
FLOOR = {room: number for number, rooms in enumerate(FLOORS) for room in rooms}


def room_of(path, source):
    relative = os.path.relpath(path, source)
    parts = relative.split(os.sep)
    return parts[1] if parts[0] == "lib" else parts[2].split(".")[0]


def included(path):
    with open(path, encoding="utf-8") as file:
        for number, line in enumerate(file, 1):
            found = re.match(r'#include (?:<frame/(\w+)(?:/\w+)?\.h>|"(\w+)/\w+\.h"|"(\w+)_facts\.h")', line)
            if found:
                yield number, next(group for group in found.groups() if group)


def floors_told(source):
    """The floors as docs/architecture.md has them, from the ground up."""
    with open(os.path.join(source, "docs", "architecture.md"), encoding="utf-8") as file:
        rows = re.findall(r"^\| \d+ \| ([\w, ]+) \|", file.read(), re.M)
    return [sorted(row.split(", ")) for row in reversed(rows)]


def main(source):
    wrong = 0
    if floors_told(source) != [sorted(set(rooms) - {"version", "fields"}) for rooms in FLOORS]:
        print("docs/architecture.md tells other floors than tests/house.py holds the rooms to")
        wrong += 1
    for folder in (os.path.join(source, "lib"), os.path.join(source, "include", "frame")):
        for where, _, names in os.walk(folder):
            for name in names:
                path = os.path.join(where, name)
                if not name.endswith((".c", ".h")) or name == "frame.h":
                    continue
                room = room_of(path, source)
                if room not in FLOOR:
                    print("%s: %s is no room of the house" % (os.path.relpath(path, source), room))
                    wrong += 1
                    continue
                for number, other in included(path):
                    if other != room and not FLOOR.get(other, 99) < FLOOR[room] and {room, other} - {"base", "fields", "version"}:
                        print("%s:%d: %s may not use %s" % (os.path.relpath(path, source), number, room, other))
                        wrong += 1
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
