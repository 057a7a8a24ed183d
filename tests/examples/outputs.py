#!/usr/bin/env python3
"""The examples people start from print what is kept beside this script: outputs.py BUILD_DIR SOURCE_DIR [--write]"""
import ast
import contextlib
import io
import json
import os
import subprocess
import sys
import tempfile


def commands(build, source):
    python, lua = os.path.join(source, "examples/python"), os.path.join(source, "examples/lua")
    yield "shed_roof", ["lua5.4", os.path.join(lua, "shed_roof.lua"), "shed.svg"], "shed.svg"
    yield "homework", [sys.executable, os.path.join(python, "homework.py")], None
    yield "spans_csv", [sys.executable, os.path.join(python, "spans_csv.py"), os.path.join(python, "joists.csv"), "spans.csv"], "spans.csv"
    yield "nightly", [os.path.join(build, "examples/nightly"), "20000", "2"], None
    yield "form", [os.path.join(build, "examples/form"), "section"], None


TYPED = {"form": "2x11\n2x10\n2\n"}  # a size that is not made, one that is, two plies, and no more


def run(command, made, build, typed):
    environment = dict(os.environ, PYTHONPATH=os.path.join(build, "python"), LUA_CPATH=os.path.join(build, "lua", "?.so"))
    with tempfile.TemporaryDirectory() as folder:
        done = subprocess.run(command, cwd=folder, env=environment, input=typed, capture_output=True, text=True, check=False)
        printed = done.stdout + done.stderr + ("exit %d\n" % done.returncode if done.returncode else "")
        if made:
            with open(os.path.join(folder, made), encoding="utf-8") as file:
                text = file.read()
            printed += text if made.endswith(".csv") else "%s: %s\n" % (made, text.split(">")[0][:4])
    return printed


def notebook(path):
    """The code of a notebook's cells, run one after the other; what shows itself must be able to."""
    with open(path, encoding="utf-8") as file:
        cells = [cell for cell in json.load(file)["cells"] if cell["cell_type"] == "code"]
    names, printed = {}, io.StringIO()
    with contextlib.redirect_stdout(printed):
        for cell in cells:
            tree = ast.parse("".join(cell["source"]))
            last = ast.Expression(tree.body.pop().value) if isinstance(tree.body[-1], ast.Expr) else None
            exec(compile(tree, path, "exec"), names)  # the project's own notebook
            shown = eval(compile(last, path, "eval"), names) if last else None
            kinds = [kind for kind in ("_repr_html_", "_repr_svg_", "_repr_markdown_") if getattr(shown, kind, None) and getattr(shown, kind)()]
            if shown is not None:
                print(type(shown).__name__, "shows itself by", ", ".join(kinds) or "nothing")
    return printed.getvalue()


def main(build, source, write):
    sys.path.insert(0, os.path.join(build, "python"))
    found = {name: run(command, made, build, TYPED.get(name, "")) for name, command, made in commands(build, source)}
    found["header_notebook"] = notebook(os.path.join(source, "examples/python/header.ipynb"))
    wrong = 0
    for name, printed in found.items():
        path = os.path.join(source, "tests/examples", name + ".txt")
        if write:
            with open(path, "w", encoding="utf-8") as file:
                file.write(printed)
            continue
        with open(path, encoding="utf-8") as file:
            expected = file.read()
        if printed != expected:
            wrong += 1
            print("%s prints\n%s--- not\n%s" % (name, printed, expected))
    print("%d examples, %d print something else" % (len(found), wrong))
    return wrong


if __name__ == "__main__":
    sys.exit(main(*(os.path.abspath(path) for path in sys.argv[1:3]), "--write" in sys.argv))
