"""Sphinx builds the handbook to HTML from the Markdown as it stands: sh docs/build (docs/index.md is where it begins).

A page of the handbook that has the name of a calculation gets the tables of its fields, from api.json: the facts stand in the
headers and nowhere else.
"""
import json
import os
import pprint
import re
import sys

from docutils import nodes
from docutils.utils.math import latex2mathml

HERE = os.path.dirname(os.path.abspath(__file__))
BUILD = os.environ.get("FRAME_BUILD", os.path.join(HERE, "..", "build"))

with open(os.path.join(HERE, "..", "include", "frame", "version.h"), encoding="utf-8") as file:
    _numbers = dict(re.findall(r"#define FRAME_VERSION_(\w+) (\d+)", file.read()))
with open(os.path.join(BUILD, "made", "api.json"), encoding="utf-8") as file:
    API = json.load(file)
with open(os.path.join(HERE, "..", "tests", "bindings", "good_inputs.json"), encoding="utf-8") as file:
    GOOD = json.load(file)
sys.path.insert(0, os.path.join(BUILD, "python"))
import frame  # noqa: E402  the library as built: the examples below are run with it

MOST_LINES = 70  # of an example's output
OF_ONE = {function["name"]: [0] for function in API["functions"]  # drawings of one sheet or board of many: the first
          if function["name"].endswith("_drawing") and any(a["type"] in ("size_t", "int32_t") for a in function["arguments"])}

project = "libframe"
author = "the libframe authors"
copyright = "2026, " + author
release = version = ".".join(_numbers[part] for part in ("MAJOR", "MINOR", "PATCH"))
extensions = ["myst_parser"]
myst_enable_extensions = ["dollarmath"]
myst_heading_anchors = 4
source_suffix = {".md": "markdown"}
suppress_warnings = ["myst.header"]  # the reference goes from rooms to functions
html_math_renderer = "mathml"
html_theme = "furo"
html_static_path = ["static"]
html_css_files = ["plain.css"]
html_title = "libframe " + release
html_show_sourcelink = False
# Nothing is fetched when a page is read.
html_theme_options = {"light_css_variables": {"font-stack": "Georgia, serif", "font-stack--monospace": "monospace"}}


def cell(text):
    return " ".join(str(text).split()).replace("|", "\\|")


def words_of(field):
    words = API["words"].get(field.get("words") or "")
    if not words or len(words["entries"]) > 16:
        return ""
    return " Words: " + ", ".join('"%s"' % entry["words"][0] for entry in words["entries"]) + "."


def inputs(struct):
    lines = ["| field | given | meaning |", "|---|---|---|"]
    for field in struct["fields"]:
        need = field.get("need", "")
        given = need if need != "default" else "else " + field.get("fallback_text", "")
        lines.append("| `%s` | %s; %s | %s |" % (
            field["name"], cell(given), cell(field.get("valid", "")), cell(field["meaning"] + words_of(field))))
    return lines


def results(struct):
    lines = ["| figure | meaning |", "|---|---|"]
    return lines + ["| `%s` | %s |" % (field["name"], cell(field["meaning"])) for field in struct["fields"]]


def example(name, folder):
    """A call with its output, and the picture the library draws of it: made now, by the library as it is."""
    given = GOOD.get(name, {})
    texts = [pprint.pformat(value, width=90, compact=True, sort_dicts=False).replace("\n", "\n" + " " * (5 + len(key))) for key, value in given.items()]
    call = "result = frame.%s(\n    %s)" % (name, ",\n    ".join("%s=%s" % pair for pair in zip(given, texts)))
    result = getattr(frame, name)(**json.loads(json.dumps(given)))
    printed = str(result).rstrip().split("\n")
    if len(printed) > MOST_LINES:
        printed[MOST_LINES:] = ["... (%d lines more)" % (len(printed) - MOST_LINES)]
    lines = ["", "## An example", "", "Run when this page was built.", "", "```python", "import frame", call, "print(result)", "```", "",
             "```text"] + printed + ["```"]
    if callable(getattr(result, "drawing", None)):
        picture = "example_%s.svg" % name
        with open(os.path.join(folder, "pictures", picture), "w", encoding="utf-8") as file:
            file.write(result.drawing(*OF_ONE.get(name + "_drawing", ())).svg())
        lines += ["", "Drawn by the library:", "", "![%s as drawn by the library](../pictures/%s)" % (name, picture)]
    return lines


def add_fields(app, docname, source):
    """After the page: an example, what goes in, with its range, and what comes out."""
    name = os.path.basename(docname)
    if not docname.startswith("handbook/") or name not in API["calculations"]:
        return
    of = API["calculations"][name]
    lines = example(name, str(app.srcdir)) + ["", "## All inputs", ""] + inputs(API["structs"][name + "_in"])
    lines += ["", "## All figures", ""] + results(API["structs"][name + "_out"])
    for item in of["lists"]:
        if item["struct"]:
            lines += ["", "Each of `%s`:" % item["plural"], ""] + results(API["structs"][item["struct"]])
    source[0] += "\n".join(lines) + "\n"


# -- formulas as MathML, which browsers read by themselves: no script, nothing to fetch --


def mathml(node, inline):
    return latex2mathml.tex2mathml(node.astext().strip(), inline)


def inline_math(translator, node):
    translator.body.append(mathml(node, True))
    raise nodes.SkipNode


def block_math(translator, node):
    translator.body.append('<div class="math">%s</div>' % mathml(node, False))
    raise nodes.SkipNode


def setup(app):
    app.add_html_math_renderer("mathml", (inline_math, None), (block_math, None))
    app.connect("source-read", add_fields)
    return {"parallel_read_safe": True}
