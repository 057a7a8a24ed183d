#!/usr/bin/env python3
"""Reads include/frame/*.h, and the parts that a room's header includes (include/frame/ROOM/*.h), and writes what follows from their field facts: C tables and validation, and api.json.

    headers.py INCLUDE_DIR OUTPUT_DIR [--list]

--list prints the names of the C files it writes, for the build. Stops with file and line at what it cannot read.
"""
import json
import os
import re
import sys

import read_headers
import write_c

# The rooms from the ground up: a header may use those before it. (fields belongs to base.)
ROOMS = ["version", "base", "fields", "text", "tape", "working", "drawing", "material", "load", "marks", "timber", "strength",
         "joint", "code", "roof", "layout", "takeoff", "building", "packet"]


def headers(include):
    folder = os.path.join(include, "frame")
    present = {name[:-2] for name in os.listdir(folder) if name.endswith(".h")} - {"frame"}
    strangers = present - set(ROOMS)
    if strangers:
        raise read_headers.Trouble("%s: not a room of the house: %s" % (folder, ", ".join(sorted(strangers))))
    return [(room, os.path.join(folder, room + ".h")) for room in ROOMS if room in present]


def parts(room, path):
    """The header itself, or, where it only gathers parts, those."""
    with open(path, encoding="utf-8") as file:
        names = re.findall(r"^#include <frame/%s/(\w+)\.h>$" % room, file.read(), re.M)
    folder = path[:-2]
    strangers = {name[:-2] for name in os.listdir(folder)} - set(names) if os.path.isdir(folder) else None
    if strangers:
        raise read_headers.Trouble("%s leaves out %s" % (path, ", ".join(sorted(strangers))))
    return [os.path.join(folder, name + ".h") for name in names] + [path]


def save(path, text):
    """Writes only what changed, so that the build does not start over."""
    try:
        with open(path, encoding="utf-8") as file:
            if file.read() == text:
                return
    except OSError:
        pass
    with open(path, "w", encoding="utf-8") as file:
        file.write(text)


def api(reader, version):
    structs = {name: {key: value for key, value in struct.items() if key not in ("line", "path")}
               for name, struct in reader.structs.items()}
    for struct in structs.values():
        struct["id"] = read_headers.struct_id(struct["name"])
        for field in struct["fields"]:
            field["valid"] = read_headers.valid_text(field, reader.words)
    return {"version": version, "structs": structs, "words": reader.words, "calculations": reader.calculations,
            "functions": reader.functions, "handles": sorted(reader.handles), "elements": sorted(reader.elements)}


def check_names(reader):
    ids = {}
    for name in reader.structs:
        other = ids.setdefault(read_headers.struct_id(name), name)
        if other != name:
            raise read_headers.Trouble("structs %s and %s have the same mark: rename one" % (other, name))
    for struct in reader.structs.values():
        for field in struct["fields"]:
            if field["kind"] == "bits" and field["words"] != "assumed" and field["words"] not in reader.words:
                raise read_headers.Trouble("%s:%d: %s.%s: no word list %s" % (
                    struct["path"], struct["line"], struct["name"], field["name"], field["words"]))


def main(arguments):
    include, output = arguments[:2]
    found = headers(include)
    rooms = [room for room, _ in found if room != "version"]
    if "--list" in arguments:
        print(";".join(["%s_facts.c" % room for room in rooms] + ["registry.c"]))
        return
    reader = read_headers.Reader()
    version = {}
    for room, path in found:
        if room == "version":
            with open(path, encoding="utf-8") as file:
                version = dict(line.split()[1:3] for line in file if line.startswith("#define FRAME_VERSION_M") or
                               line.startswith("#define FRAME_VERSION_P"))
            continue
        for part in parts(room, path):
            reader.read(room, part)
    check_names(reader)
    os.makedirs(output, exist_ok=True)
    for room in rooms:
        save(os.path.join(output, "%s_facts.h" % room), write_c.room_header(room, reader))
        save(os.path.join(output, "%s_facts.c" % room), write_c.room_source(room, reader))
    save(os.path.join(output, "registry.c"), write_c.registry(reader))
    number = ".".join(version["FRAME_VERSION_" + part] for part in ("MAJOR", "MINOR", "PATCH"))
    save(os.path.join(output, "api.json"), json.dumps(api(reader, number), indent=1) + "\n")


if __name__ == "__main__":
    try:
        main(sys.argv[1:])
    except read_headers.Trouble as trouble:
        sys.exit(str(trouble))
