#!/usr/bin/env python3
"""What was released stays: every struct's fields with their offsets, every word's number, every exported symbol.

    check.py BUILD_DIR SOURCE_DIR [--write]

Compares today's library with tests/abi/released.txt. What stands there must still be so. What is new is counted, and written
down with --write when a version is tagged; that only ever adds.
"""
import json
import os
import subprocess
import sys

SIZES = {"double": 8, "int32_t": 4, "uint32_t": 4, "uint64_t": 8, "size_t": 8, "frame_bool": 4}


def facts(api):
    lines = []
    for struct in api["structs"].values():
        offset = 0
        for c_type, name in struct["order"]:
            size = 8 if c_type.endswith("*") else SIZES.get(c_type, 4)
            lines.append("field %s.%s at %d, %d bytes, %s" % (struct["name"], name, offset, size, c_type))
            offset += size
        lines.append("mark %s 0x%08x" % (struct["name"], struct["id"]))
    for words in api["words"].values():
        for entry in words["entries"]:
            lines.append("word %s %s = %d" % (words["name"], entry["constant"], entry["value"]))
    return lines


def symbols(library):
    found = subprocess.run(["nm", "-D", "--defined-only", library], check=True, capture_output=True, text=True).stdout
    names = sorted({line.split()[-1].split("@")[0] for line in found.splitlines()})
    return ["symbol %s" % name for name in names if name.startswith("frame_")]


def main(build, source, write):
    with open(os.path.join(build, "made", "api.json"), encoding="utf-8") as file:
        today = facts(json.load(file))
    today += symbols(os.path.join(build, "lib", "libframe.so"))
    path = os.path.join(source, "tests", "abi", "released.txt")
    with open(path, encoding="utf-8") as file:
        released = file.read().splitlines()
    if not released and not write:
        print("nothing is released yet")
        return 77
    now, before = set(today), set(released)
    gone = [line for line in released if line not in now]
    new = [line for line in today if line not in before]
    for line in gone:
        print("released, but no longer so: %s" % line)
    if write and not gone:
        with open(path, "w", encoding="utf-8") as file:
            file.write("".join(line + "\n" for line in released + new))
        print("%d lines added" % len(new))
        return 0
    print("%d lines since the last tag; to release them: python3 tests/abi/check.py BUILD_DIR . --write" % len(new))
    return 1 if gone else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1], sys.argv[2], "--write" in sys.argv))
