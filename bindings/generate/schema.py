#!/usr/bin/env python3
"""Writes a JSON Schema (draft 2020-12) of what every calculation is given: schema.py API.json OUTPUT.json"""
import json
import sys

from api import Api, plain
from interface import save


def number(field):
    made = {"type": "integer" if field["kind"] == "integer" else "number"}
    for end, name in (("low", "Minimum"), ("high", "Maximum")):
        bound = int(field[end]) if field[end] == int(field[end]) else field[end]
        made["exclusive" + name if field[end + "_open"] else name.lower()] = bound
    return made


def notation(field):
    name = field["name"]
    return field["unit"] in ("in", "deg") or name == "slope" or name.startswith("slope_") or name.endswith("_slope")


def word(api, field):
    entries = api.words[field["words"]]["entries"]
    if not entries:
        return {"type": "string", "description": "a name of the list %s" % field["words"]}
    return {"enum": [w for entry in entries for w in entry["words"]]}


def schema_of(api, field):
    kind = field["kind"]
    if kind in ("number", "integer"):
        made = number(field)
        if kind == "number" and notation(field):
            made = {"anyOf": [made, {"type": "string", "description": "the trade's notation"}]}
    elif kind == "word":
        made = word(api, field)
    elif kind == "bool":
        made = {"type": "boolean"}
    elif kind == "text":
        made = {"type": "string"}
    elif kind == "numbers":
        made = {
            "type": "array",
            "items": number(field),
            "minItems": int(field["least"]),
            "maxItems": int(field["most"]),
        }
    elif kind == "words":
        made = {
            "type": "array",
            "items": word(api, field),
            "minItems": int(field["least"]),
            "maxItems": int(field["most"]),
        }
    else:
        made = {
            "type": "array",
            "items": {"$ref": "#/$defs/%s" % field["element"]},
            "minItems": int(field["least"]),
            "maxItems": int(field["most"]),
        }
    made["description"] = plain(field["meaning"])
    if "fallback" in field:
        value = field["fallback"]
        made["default"] = field["fallback_text"] if kind == "word" else bool(value) if kind == "bool" else value
    if field["unit"]:
        made["x-unit"] = field["unit"]
    return made


def struct_schema(api, name):
    fields = [f for f in api.inputs(name) if f["kind"] != "handle"]  # a handle is no value that JSON could hold
    made = {
        "type": "object",
        "description": plain(api.structs[name]["doc"]),
        "additionalProperties": False,
        "properties": {f["name"]: schema_of(api, f) for f in fields},
    }
    required = [f["name"] for f in fields if f["need"] == "required"]
    if required:
        made["required"] = required
    return made


def schema(api):
    names = [n for n, s in api.structs.items() if s["kind"] != "out" and api.inputs(n)]
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": "libframe %s: what each calculation is given" % api.version,
        "$defs": {name: struct_schema(api, name) for name in names},
        "type": "object",
        "additionalProperties": False,
        "properties": {name: {"$ref": "#/$defs/%s_in" % name} for name in api.calculations},
    }


if __name__ == "__main__":
    save(sys.argv[2], json.dumps(schema(Api(sys.argv[1])), indent=1) + "\n")
