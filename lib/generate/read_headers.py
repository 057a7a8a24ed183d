"""Reads the public headers: structs with their field facts, word lists, calculations and plain functions.

Only what the project's own headers use is understood; anything else stops with file and line. Python's standard library
only.
"""
import re

UNITS = (  # longest first: the unit is the end of the name
    ("_lb_per_in_per_in", "lb/in/in"), ("_lb_per_in", "lb/in"), ("_lb_in", "lb-in"), ("_in2", "in2"), ("_in3", "in3"),
    ("_in4", "in4"), ("_psf", "psf"), ("_psi", "psi"), ("_plf", "plf"), ("_pli", "lb/in"), ("_pcf", "pcf"),
    ("_deg", "deg"), ("_lb", "lb"), ("_in", "in"), ("_ft", "ft"), ("_ft2", "ft2"), ("_bf", "board feet"), ("_s", "s"),
    ("_hz", "Hz"), ("_mph", "mph"), ("_percent", "%"),
)
C_TYPES = {"double": "number", "int32_t": "integer", "frame_bool": "bool"}
RESERVED = set(  # words that C++, Python or Lua keep for themselves
    "and or not in is if else elif for while break continue return def class lambda from import global local end then "
    "repeat until nil true false None True False function goto do try except with yield pass raise assert del new delete "
    "this private public protected virtual template typename namespace operator auto register switch case default const "
    "static extern volatile struct union enum typedef sizeof int float double char short long signed unsigned void bool "
    "async await nonlocal finally as explicit friend inline mutable export catch throw".split())


class Trouble(Exception):
    """A header says something this reader does not understand."""


class Reader:
    def __init__(self):
        self.structs = {}       # name (without frame_) -> struct
        self.words = {}         # name -> word list
        self.calculations = {}  # name -> calculation
        self.functions = []     # plain functions
        self.handles = set()
        self.elements = set()

    # -- one header ----------------------------------------------------------------------------------------------
    def read(self, room, path):
        with open(path, encoding="utf-8") as file:
            text = without_directives(file.read())
        self.path, self.text, self.room = path, text, room
        self.words_before = set(self.words)
        for match in re.finditer(r"(/\*\*(?!<)(?:(?!\*/).)*\*/)\s*([^/\s](?:(?!/\*)[^;{])*)(;|\{)", text, re.S):
            comment, head, end = match.group(1), " ".join(match.group(2).split()), match.group(3)
            self.line = text.count("\n", 0, match.start(2)) + 1
            self.declaration(sentence(comment), head, end, match.end())

    def trouble(self, message, line=None):
        raise Trouble("%s:%d: %s" % (self.path, line or self.line, message))

    def declaration(self, doc, head, end, at):
        if head.startswith("#"):
            return
        struct = re.fullmatch(r"typedef struct (frame_\w+)", head)
        if struct and end == "{":
            return self.struct(struct.group(1)[6:], doc, at)
        if struct is None and head.startswith("typedef struct frame_"):
            names = re.fullmatch(r"typedef struct (frame_\w+) (frame_\w+)", head)
            if names:
                self.handles.add(names.group(1)[6:])
            return
        alias = re.fullmatch(r"typedef int32_t (frame_\w+)", head)
        if alias:
            return self.word_list(alias.group(1)[6:], doc, at)
        macro = re.fullmatch(r"(FRAME_[A-Z_]+)\(([\w, ]+)\)", head)
        if macro:
            return self.macro(macro.group(1), [a.strip() for a in macro.group(2).split(",")], doc)
        if head.startswith("FRAME_API"):
            return self.function(head[len("FRAME_API"):].strip(), doc)
        if head.startswith(("static inline", "enum ")):
            return
        self.trouble("cannot read this declaration: %s" % head)

    # -- words ---------------------------------------------------------------------------------------------------
    def word_list(self, name, doc, at):
        rest = self.text[at:]
        entries, found = [], re.match(r"\s*enum frame_%s_values \{(.*?)\n\};" % name, rest, re.S)
        if found:
            first = self.text.count("\n", 0, at + found.start(1)) + 1
            previous = -1
            for number, line in enumerate(found.group(1).split("\n")):
                if not line.strip():
                    continue
                entry = re.fullmatch(r'\s*(FRAME_\w+)(?: = (-?\d+))?,?\s*/\*\*< ((?:"[^"]+"(?: \| )?)+)\. (.*?) ?\*/', line)
                if not entry:
                    self.trouble('expected NAME = NUMBER, /**< "word" | "other". Sentence. */', first + number)
                value = int(entry.group(2)) if entry.group(2) else previous + 1
                previous = value
                entries.append({"constant": entry.group(1), "value": value, "meaning": entry.group(4).strip(),
                                "words": re.findall(r'"([^"]+)"', entry.group(3))})
            if re.search(r"[^\s]", re.sub(r"/\*\*<.*?\*/", "", found.group(1))) and not entries:
                self.trouble("an empty word list")
        if name == "bool":
            return
        self.words[name] = {"name": name, "room": self.room, "doc": doc, "entries": entries, "found": not entries}

    # -- structs -------------------------------------------------------------------------------------------------
    def struct(self, name, doc, at):
        end = self.text.find("\n} frame_%s;" % name, at)
        if end < 0:
            self.trouble("the struct's last line must be: } frame_%s;" % name)
        body = self.text[at:end]
        if "struct_size" not in body:
            return  # a plain struct, such as the allocator: no facts
        first_line = self.text.count("\n", 0, at)
        fields, order, spares = [], [], []
        lines = join_comments(body.split("\n"))
        for offset, line in lines:
            if not line.strip():
                continue
            number = first_line + offset + 1
            self.field(line.strip(), number, fields, order, spares)
        kind = "in" if name.endswith("_in") else "out" if name.endswith("_out") else "item"
        self.one_way(kind, fields)
        for field in fields:
            if field["kind"] in ("list", "numbers", "words") and not field.get("count"):
                self.trouble("%s: its count must stand in the next line" % field["name"])
        self.structs[name] = {"name": name, "room": self.room, "doc": doc, "fields": fields, "order": order,
                              "kind": kind, "spares": spares, "line": self.line, "path": self.path}

    def one_way(self, kind, fields):
        """A struct goes in or comes out: a field that reads as the other has a default that was not understood, or one too many."""
        lines = [field.pop("line") for field in fields]
        comes_out = [field["need"] == "result" for field in fields]
        expected = {"in": False, "out": True}.get(kind, all(comes_out))
        for field, line, out in zip(fields, lines, comes_out):
            if out and not expected:
                self.trouble("%s: says neither required nor optional nor a default that a %s can have (a number, a word of its list, yes "
                             "or no, or a \"phrase\")" % (field["name"], field["kind"]), line)
            if expected and not out:
                self.trouble("%s: an out-struct has no %s fields" % (field["name"], field["need"]), line)

    def field(self, line, number, fields, order, spares):
        known = len(fields)
        self.read_field(line, number, fields, order, spares)
        for field in fields[known:]:
            field["line"] = number

    def read_field(self, line, number, fields, order, spares):
        if line.startswith("uint32_t struct_size, struct_id;"):
            order += [("uint32_t", "struct_size"), ("uint32_t", "struct_id")]
            return
        spare = re.fullmatch(r"(int32_t|uint32_t) (spare\d*);(?: */\*\*<.*\*/)?", line)
        if spare:
            order.append((spare.group(1), spare.group(2)))
            spares.append(spare.group(2))
            return
        match = re.fullmatch(r"((?:const )?\w+)( \*?)(\w+); */\*\*< (.*?) ?\*/", line)
        if not match:
            self.trouble("expected TYPE NAME; /**< FACTS. Sentence. */", number)
        c_type, star, name, comment = match.group(1), match.group(2).strip(), match.group(3), " ".join(match.group(4).split())
        if name in RESERVED:
            self.trouble("%s is a reserved word in C++, Python or Lua" % name, number)
        order.append((c_type + (" *" if star else ""), name))
        if c_type == "size_t":
            count = re.fullmatch(r"count(?: : (\S+?)\.\.(\S+?))?\.(.*)", comment)
            if not count or not fields or fields[-1]["kind"] not in ("list", "numbers", "words"):
                self.trouble("a size_t is the count of the list in the line before: /**< count. */", number)
            fields[-1]["count"] = name
            fields[-1]["most"] = float(count.group(2)) if count.group(2) else 1e6
            fields[-1]["least"] = float(count.group(1)) if count.group(1) else 1 if fields[-1]["need"] == "required" else 0
            return
        if c_type == "uint32_t":
            if comment.startswith("count") and fields and fields[-1]["kind"] == "range":
                fields[-1]["count"] = name
                return
            span = re.match(r"range : (\w+)\. ?(.*)", comment)
            if not span:
                self.trouble("a uint32_t is a range (/**< range : pieces. ... */) or its count", number)
            fields.append({"name": name, "c_type": c_type, "kind": "range", "need": "result", "words": span.group(1),
                           "meaning": span.group(2), "unit": ""})
            return
        if c_type == "uint64_t":
            bits = re.match(r"bits : (\w+)\. ?(.*)", comment)
            if not bits:
                self.trouble("a uint64_t is a set of bits: /**< bits : LIST. Sentence. */", number)
            fields.append({"name": name, "c_type": c_type, "kind": "bits", "need": "result", "words": bits.group(1),
                           "meaning": bits.group(2), "unit": ""})
            return
        field = {"name": name, "c_type": c_type, "unit": unit_of(name), "words": ""}
        self.field_kind(field, c_type, star, number)
        facts = re.match(r'(required|optional|"[^"]+"|-?[\w.+-]+|[a-z][a-z ]*?)(?: : (\S+?)\.\.(\S+?))?\. (.*)', comment + " ")
        is_input = facts and (facts.group(1) in ("required", "optional") or facts.group(3) or facts.group(1).startswith('"')
                              or self.is_default(field, facts.group(1)))
        if is_input:
            self.input_facts(field, facts, number)
        else:
            field.update(need="result", meaning=comment)
        fields.append(field)

    def is_default(self, field, text):
        if field["kind"] == "word":
            return any(text in e["words"] for e in self.words[field["words"]]["entries"])
        if field["kind"] == "bool":
            return text in ("yes", "no")
        if field["kind"] in ("number", "integer"):
            return re.fullmatch(r"-?\d+(\.\d+)?", text) is not None
        return False

    def field_kind(self, field, c_type, star, number):
        if c_type == "const char" and star:
            field["kind"] = "text"
        elif c_type == "const double" and star:
            field["kind"] = "numbers"
        elif c_type.startswith("const frame_") and star and c_type[len("const frame_"):] in self.handles:
            field["kind"], field["words"] = "handle", c_type[len("const frame_"):]
        elif c_type.startswith("const frame_") and star and c_type[len("const frame_"):] in self.words:
            field["kind"], field["words"] = "words", c_type[len("const frame_"):]
        elif c_type.startswith("const frame_") and star:
            field["kind"], field["element"] = "list", c_type[len("const frame_"):]
            if field["element"] not in self.structs:
                self.trouble("%s: its element struct must stand before" % field["name"], number)
        elif c_type in C_TYPES and not star:
            field["kind"] = C_TYPES[c_type]
        elif c_type.startswith("frame_") and c_type[6:] in self.words and not star:
            field["kind"], field["words"] = "word", c_type[6:]
        else:
            self.trouble("%s: type %s is not one a struct may hold" % (field["name"], c_type + star), number)

    def input_facts(self, field, facts, number):
        need, low, high, meaning = facts.groups()
        field["meaning"] = meaning.strip()
        field["need"] = need if need in ("required", "optional") else "default"
        if field["kind"] == "handle" and field["need"] != "optional":
            self.trouble("%s: a handle in a struct is optional" % field["name"], number)
        if field["need"] == "default":
            field["fallback_text"] = need.strip('"')
            if not need.startswith('"'):
                field["fallback"] = self.fallback(field, need, number)
        if low is not None:
            field["low_open"], field["high_open"] = low.startswith(">"), high.startswith("<")
            field["low"], field["high"] = float(low.lstrip(">")), float(high.lstrip("<"))
            field["low_text"], field["high_text"] = low, high
            if field["low"] > field["high"]:
                self.trouble("%s: the range is empty" % field["name"], number)
        elif field["kind"] in ("number", "integer", "numbers"):
            self.trouble("%s: a number needs a range" % field["name"], number)

    def fallback(self, field, text, number):
        if field["kind"] == "word":
            for entry in self.words[field["words"]]["entries"]:
                if text in entry["words"]:
                    return entry["value"]
            self.trouble("%s: default \"%s\" is not a word of %s" % (field["name"], text, field["words"]), number)
        if field["kind"] == "bool":
            if text not in ("yes", "no"):
                self.trouble("%s: default must be yes or no" % field["name"], number)
            return int(text == "yes")
        try:
            return float(text)
        except ValueError:
            self.trouble("%s: default %s is not a number" % (field["name"], text), number)

    # -- macros and functions ------------------------------------------------------------------------------------
    def macro(self, macro, arguments, doc):
        name = arguments[0]
        if macro in ("FRAME_CALCULATION", "FRAME_ANSWER"):
            for part in ("_in", "_out"):
                if name + part not in self.structs:
                    self.trouble("%s: frame_%s%s must stand before" % (name, name, part))
            self.calculations[name] = {"name": name, "room": self.room, "doc": doc, "views": [], "lists": [],
                                       "answer": macro == "FRAME_ANSWER"}
            if macro == "FRAME_ANSWER":
                self.handles.add(name)
        elif macro == "FRAME_ANSWER_LIST":
            item = "%s_%s" % (name, arguments[1])
            if item not in self.structs:
                self.trouble("frame_%s must stand before its list" % item)
            self.calculations[name]["lists"].append({"item": arguments[1], "plural": arguments[2], "struct": item, "doc": doc})
        elif macro == "FRAME_ANSWER_NUMBERS":
            self.calculations[name]["lists"].append({"item": "", "plural": arguments[1], "struct": "", "doc": doc})
        elif macro == "FRAME_VIEW":
            self.calculations[name]["views"].append({"view": arguments[1], "doc": doc, "room": self.room})
        elif macro == "FRAME_ELEMENT":
            self.elements.add(name)
        else:
            self.trouble("unknown macro %s" % macro)

    def function(self, head, doc):
        match = re.fullmatch(r"((?:const )?\w+ \*?)(frame_\w+)\((.*)\)", head)
        if not match:
            self.trouble("cannot read this function: %s" % head)
        returns, name, text = match.group(1).strip(), match.group(2)[6:], match.group(3)
        arguments = []
        if text != "void":
            for argument in text.split(","):
                part = re.fullmatch(r"(.*?[ *])(\w+)", argument.strip())
                if not part:
                    self.trouble("%s: cannot read the argument %s" % (name, argument.strip()))
                arguments.append({"type": part.group(1).strip(), "name": part.group(2)})
        self.functions.append({"name": name, "room": self.room, "returns": returns, "arguments": arguments, "doc": doc})


def without_directives(text):
    """Blanks the preprocessor's lines and keeps the count of lines."""
    return re.sub(r"^(?:#(?:[^\n]*\\\n)*[^\n]*|FRAME_BEGIN|FRAME_END)", lambda m: "\n" * m.group(0).count("\n"), text, flags=re.M)


def sentence(comment):
    lines = [re.sub(r"^\s*\* ?", "", line).rstrip() for line in comment[3:-2].split("\n")]
    return "\n".join(lines).strip()


def join_comments(lines):
    """Fact comments may run on over lines."""
    joined, open_at = [], None
    for number, line in enumerate(lines):
        if open_at is not None:
            joined[-1][1] += " " + line.strip().lstrip("* ")
        else:
            joined.append([number, line])
        if "/**<" in line and "*/" not in line:
            open_at = number
        if open_at is not None and "*/" in line:
            open_at = None
    return joined


def unit_of(name):
    for end, unit in sorted(UNITS, key=lambda pair: -len(pair[0])):
        if name.endswith(end) or name == end[1:]:
            return unit
    return ""


def struct_id(name):
    """FNV-1a over the struct's C name: stable without a register of numbers."""
    value = 2166136261
    for byte in ("frame_" + name).encode():
        value = ((value ^ byte) * 16777619) & 0xFFFFFFFF
    return value


def valid_text(field, words):
    if field["kind"] in ("word", "words"):
        entries = words[field["words"]]["entries"]
        return ", ".join('"%s"' % e["words"][0] for e in entries) if entries else "a name of the list %s" % field["words"]
    if field["kind"] == "bool":
        return "yes or no"
    if field["kind"] == "handle":
        return "a %s" % field["words"]
    if field["kind"] == "list":
        return "%d to %d items" % (field["least"], field["most"])
    if "low_text" in field:
        return "%s..%s%s" % (field["low_text"], field["high_text"], " " + field["unit"] if field["unit"] else "")
    return "text" if field["kind"] == "text" else ""
