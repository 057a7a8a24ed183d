"""What the bindings are made of: api.json, sorted into calculations, handles and plain functions.

A function of the headers is bound by its shape alone: which arguments are given, which is the answer, whose method it is.
Nothing here names a function. Python's standard library only.
"""
import json
import keyword
import re
import textwrap

# The rooms the bindings themselves stand on: their functions are not handed through.
GROUND = ("base", "fields", "text")
LUA_WORDS = ("end", "function", "local", "nil", "repeat", "then", "until", "do", "goto", "elseif", "true", "false")
SCALARS = {"double": "number", "int32_t": "integer", "frame_bool": "bool", "size_t": "size"}


class Api:
    def __init__(self, path):
        with open(path, encoding="utf-8") as file:
            data = json.load(file)
        self.version = data["version"]
        self.structs, self.words, self.calculations = data["structs"], data["words"], data["calculations"]
        self.raw = [f for f in data["functions"] if f["room"] not in GROUND]
        names = {f["name"] for f in self.raw}
        self.handles = {
            name: {"name": name, "methods": [], "lists": [], "makers": []}
            for name in data["handles"]
            if name not in self.calculations and name + "_free" in names
        }
        # Lists of words a room keeps as a table of its own: species, grades, sizes.
        self.menus = [
            w
            for w in self.words.values()
            if w["found"] and {w["name"] + end for end in ("_find", "_name", "_count", "_at")} <= names
        ]
        self.functions, self.answer_methods, self.not_bound = [], [], []
        for raw in self.raw:
            self.sort(raw, names)
        for function in self.all_functions():
            function["writes"] = self.writes(function)

    # -- one function --
    def sort(self, raw, names):
        name = raw["name"]
        if name.endswith("_free") or any(name in (m["name"] + "_count", m["name"] + "_at") for m in self.menus):
            return
        if name.endswith("_count") and name[:-6] + "_at_sized" in names:
            return  # bound with its list
        if any(a["type"] == "const frame_watcher *" for a in raw["arguments"]):
            return  # the languages give a function itself
        function = self.shape(raw)
        if isinstance(function, str):
            self.not_bound.append((name, function))
            return
        owner = self.owner(raw)
        function["owner"] = owner
        if owner and name.endswith("_at_sized"):
            item = name[len(owner) + 1 : -len("_at_sized")]
            if owner in self.handles:
                self.handles[owner]["lists"].append(
                    {
                        "item": item,
                        "plural": plural(item),
                        "struct": function["result"]["struct"],
                        "doc": function["doc"],
                        "function": name[: -len("_at_sized")],
                    }
                )
            return
        if owner in self.handles:
            self.handles[owner]["methods"].append(function)
        elif owner:
            self.answer_methods.append(function)
        elif function["result"]["form"] == "handle":
            made = function["result"]["handle"]
            rest = name[len(made) + 1 :] if name.startswith(made + "_") else None
            if rest == "new":
                self.handles[made]["makers"].append(function)
            else:
                self.functions.append(function)
        else:
            self.functions.append(function)

    def owner(self, raw):
        if not raw["arguments"]:
            return None
        kind = handle_of(raw["arguments"][0]["type"])
        if kind and raw["name"].startswith(kind + "_") and (kind in self.handles or kind in self.calculations):
            return kind
        return None

    def shape(self, raw):
        """Sorts a C signature into what is given and what comes back; a text says why it cannot be bound."""
        arguments, i, given, result = raw["arguments"], 0, [], None
        owner = self.owner(raw)
        while i < len(arguments):
            c_type, name = arguments[i]["type"], arguments[i]["name"]
            after = arguments[i + 1]["type"] if i + 1 < len(arguments) else ""
            last = i == len(arguments) - 1
            argument = self.given(c_type, name, after)
            found = None if argument else self.answer(c_type, name, after, last, i == len(arguments) - 2)
            if argument:
                argument["shown"] = "fields" if name == "in" else name
                given.append(argument)
                i += 2 if argument["form"] in ("structs", "numbers") else 1
            elif found:
                result = found
                i += 2 if found["form"] in ("struct", "chars") else 1
            else:
                return "argument %s %s" % (c_type, name)
        if raw["returns"] != "frame_status":
            if result:
                return "returns %s beside an answer" % raw["returns"]
            result = self.returned(raw["returns"])
            if not result:
                return "returns %s" % raw["returns"]
        name = re.sub("_sized$", "", raw["name"])
        return {
            "name": name,
            "c_name": raw["name"],
            "room": raw["room"],
            "doc": raw["doc"],
            "returns": raw["returns"],
            "arguments": arguments,
            "given": given[1:] if owner else given,
            "self": given[0] if owner else None,
            "result": result or {"form": "nothing"},
        }

    def given(self, c_type, name, after):
        if c_type in SCALARS:
            return {"name": name, "form": SCALARS[c_type]}
        if c_type == "const char *":
            return {"name": name, "form": "text"}
        if c_type == "const double *" and after == "size_t":
            return {"name": name, "form": "numbers"}
        inner = re.fullmatch(r"const frame_(\w+) \*", c_type)
        if inner and inner.group(1) in self.structs:
            return {"name": name, "form": "structs" if after == "size_t" else "struct", "struct": inner.group(1)}
        kind = handle_of(c_type)
        if kind in self.handles or kind in self.calculations:
            return {"name": name, "form": "handle", "handle": kind, "answer": kind in self.calculations}
        if c_type.startswith("frame_") and c_type[6:] in self.words:
            return {"name": name, "form": "word", "words": c_type[6:]}
        return None

    def answer(self, c_type, name, after, last, last_but_one):
        if c_type == "frame_text *" and last:
            return {"form": "text"}
        if c_type == "char *" and after == "size_t" and last_but_one:
            return {"form": "chars"}
        out = re.fullmatch(r"(double|int32_t|frame_bool) \*", c_type)
        if out and last:
            return {"form": SCALARS[out.group(1)], "name": name}
        out = re.fullmatch(r"frame_(\w+) \*\*", c_type)
        if out and last and out.group(1) in self.handles:
            return {"form": "handle", "handle": out.group(1)}
        out = re.fullmatch(r"frame_(\w+) \*", c_type)
        if out and out.group(1) in self.structs and after == "size_t" and last_but_one:
            return {"form": "struct", "struct": out.group(1)}
        if out and out.group(1) in self.words and last:
            return {"form": "word", "words": out.group(1)}
        return None

    def returned(self, c_type):
        if c_type in SCALARS:
            return {"form": SCALARS[c_type]}
        if c_type == "const char *":
            return {"form": "text"}
        if c_type == "void":
            return {"form": "nothing"}
        if c_type.startswith("frame_") and c_type[6:] in self.words:
            return {"form": "word", "words": c_type[6:]}
        return None

    def writes(self, function):
        """The method that writes the text of another to a file (svg: write_svg, render: write), unless the header has it."""
        if not function["owner"] or not any(a["type"] == "frame_text *" for a in function["arguments"]):
            return ""
        name = "write" if method_name(function) == "render" else "write_" + method_name(function)
        return "" if "%s_%s" % (function["owner"], name) in [raw["name"] for raw in self.raw] else name

    # -- facts --
    def inputs(self, struct):
        """The fields of a struct that are given, in order."""
        return [f for f in self.structs[struct]["fields"] if f["need"] != "result"]

    def all_functions(self):
        """Every function SWIG wraps, but for the calculations."""
        for handle in self.handles.values():
            yield from handle["makers"] + handle["methods"]
        yield from self.answer_methods + self.functions


def all_line(api):
    """__all__ of the Python package: what is made from the headers, and what it has of its own."""
    names = sorted(
        list(api.handles)
        + list(api.calculations)
        + [f["name"] for f in api.functions]
        + [plural(m["name"]) for m in api.menus]
        + [
            "Batch",
            "Error",
            "Handle",
            "ImpossibleError",
            "InputError",
            "InternalError",
            "LimitError",
            "RefusedError",
            "Result",
            "batch",
            "calculations",
            "explain",
            "fields",
            "words",
        ]
    )
    return textwrap.wrap("__all__ = [%s]" % ", ".join('"%s"' % n for n in names), 118, subsequent_indent="           ")


def handle_of(c_type):
    match = re.fullmatch(r"(?:const )?frame_(\w+) \*", c_type)
    return match.group(1) if match else None


def plural(word):
    if word.endswith("es") or word.endswith("series"):
        return word
    if word.endswith("y") and word[-2] not in "aeiou":
        return word[:-1] + "ies"
    return word + ("es" if word.endswith(("s", "x", "ch", "sh")) else "s")


def method_name(function):
    """Without its handle's name; a word that Python or Lua keep for themselves gets a line after it."""
    name = function["name"][len(function["owner"]) + 1 :]
    return name + "_" if keyword.iskeyword(name) or name in LUA_WORDS else name


def may_be_left_out(function, argument):
    """A trailing argument may be left out where the header says what its absence means."""
    place = [a["name"] for a in function["given"]].index(argument["name"])
    return all(leaves_out(function, a) for a in function["given"][place:])


def leaves_out(function, argument):
    doc = function["doc"]
    if argument["form"] == "text":
        return "NULL" in doc.replace("NULL is allowed", "")
    if argument["form"] in ("number", "integer"):
        return "FRAME_NOT_GIVEN" in doc
    return argument["form"] == "word" and argument["words"] == "render_format"


def plain(text):
    """A header's sentence without C's spelling."""
    text = re.sub(r"\s*Free\s+(?:it|the\s+\w+)\s+with\s+frame_\w+_free(?:: it owns[^.]*)?\.", "", text)
    text = re.sub(r"\bframe_(\w+?)_(?:solve|sized)\b", r"\1", text)
    text = re.sub(r"\bframe_(\w+)", r"\1", text)
    text = text.replace("FRAME_NOT_GIVEN_INT", "nothing").replace("FRAME_NOT_GIVEN", "nothing")
    text = re.sub(r"\bNULL\b", "nothing", text)

    def status(match):
        return '"%s"' % match.group(1).lower().replace("_", " ")

    return re.sub(r"\bFRAME_([A-Z_]+)\b", status, text)
