"""A field added to a header shows up everywhere with no other edit: in the C tables, init, validation and layout, in api.json,
in signatures, docstrings and stubs, in the Lua annotations, in the reference and the schema, and at run time in both languages.

Works on a scratch copy of the headers and generators; where a compiler is there, the copy's C is compiled and run.
"""
import json
import os
import shutil
import subprocess
import sys
import tempfile
import unittest

SOURCE = os.environ.get("FRAME_SOURCE", ".")
IN_ANCHOR = "    double width_in;"
FIELD = "    double camber_in;      /**< 0.25 : >0..3. Camber given to the member before it is loaded. */\n"
OUT_ANCHOR = "    double area_in2;"
OUT_FIELD = "    double camber_ratio;         /**< Camber over depth, a figure of this test alone. */\n"


def before(text, struct, anchor, line):
    place = text.index(anchor, text.index("typedef struct frame_%s {" % struct))
    return text[:place] + line + text[place:]


def read(*parts):
    with open(os.path.join(*parts), encoding="utf-8") as file:
        return file.read()


class NewField(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.folder = tempfile.mkdtemp()
        copy = lambda *parts: shutil.copytree(
            os.path.join(SOURCE, *parts), os.path.join(cls.folder, *parts)
        )  # noqa: E731
        for parts in (("include",), ("lib",), ("bindings",)):
            copy(*parts)
        header = os.path.join(cls.folder, "include", "frame", "material.h")
        text = before(read(header), "section_in", IN_ANCHOR, FIELD)
        text = before(text, "section_out", OUT_ANCHOR, OUT_FIELD)
        with open(header, "w", encoding="utf-8") as file:
            file.write(text)
        cls.made = os.path.join(cls.folder, "made")
        cls.run_generator("lib/generate/headers.py", os.path.join(cls.folder, "include"), cls.made)
        cls.api = os.path.join(cls.made, "api.json")
        for script, target in (
            ("interface", "bindings"),
            ("python_module", "python"),
            ("lua_annotations", "annotations.lua"),
            ("reference", "reference.md"),
            ("schema", "schema.json"),
        ):
            cls.run_generator("bindings/generate/%s.py" % script, cls.api, os.path.join(cls.made, target))

    @classmethod
    def tearDownClass(cls):
        shutil.rmtree(cls.folder)

    @classmethod
    def run_generator(cls, script, *arguments):
        subprocess.run([sys.executable, os.path.join(cls.folder, *script.split("/")), *arguments], check=True)

    def test_tables(self):
        text = read(self.made, "material_facts.c")
        self.assertIn('{"camber_in", "in", "Camber given to the member before it is loaded.", ">0..3 in", "0.25"', text)
        self.assertIn(".camber_in = FRAME_NOT_GIVEN", text)
        self.assertIn("read->camber_in = 0.25", text)
        self.assertIn("read->camber_in > 0.0 && read->camber_in <= 3.0", text)
        self.assertIn("offsetof(frame_section_in, camber_in)", text)
        self.assertIn("FRAME_ASSUMED_SECTION_IN_CAMBER_IN", read(self.made, "material_facts.h"))

    def test_api(self):
        fields = json.loads(read(self.api))["structs"]["section_in"]["fields"]
        self.assertEqual(
            [(f["fallback"], f["low"], f["high"]) for f in fields if f["name"] == "camber_in"], [(0.25, 0, 3)]
        )

    def test_python(self):
        text = read(self.made, "python", "__init__.py")
        start = text.index("\ndef section(")
        signature = text[start : text.index(":\n", start)]
        self.assertIn("camber_in=_d", signature)
        self.assertIn("camber_in: else 0.25. Camber given to the member before it is loaded. [>0..3 in]", text)
        self.assertIn("camber_ratio: Camber over depth", text)
        stubs = read(self.made, "python", "__init__.pyi")
        self.assertIn("camber_in: Union[_Measure, None] = ...", stubs)
        self.assertIn("def camber_ratio(self) -> float: ...", stubs)
        compile(text, "__init__.py", "exec")

    def test_lua(self):
        text = read(self.made, "annotations.lua")
        self.assertIn("---@field camber_in? frame.measure Else 0.25. Camber given", text)
        self.assertIn("---@field camber_ratio number Camber over depth", text)

    def test_documents(self):
        self.assertIn("| `camber_in` | else 0.25 | >0..3 in | Camber given", read(self.made, "reference.md"))
        self.assertIn("| `camber_ratio` |", read(self.made, "reference.md"))
        field = json.loads(read(self.made, "schema.json"))["$defs"]["section_in"]["properties"]["camber_in"]
        self.assertEqual(field["anyOf"][0], {"type": "number", "exclusiveMinimum": 0, "maximum": 3})
        self.assertEqual((field["default"], field["x-unit"]), (0.25, "in"))

    def test_bindings(self):
        text = read(self.made, "bindings", "bound_made.c")
        start = text.index("section_in_fields[]")
        self.assertEqual(text[start : text.index("};", start)].count("BOUND_"), 7)

    def test_compiles(self):
        """The copy's tables, their layout asserts among them, and a program that uses the field."""
        compiler = shutil.which("cc")
        if not compiler:
            self.skipTest("no C compiler here")
        program = os.path.join(self.folder, "program.c")
        with open(program, "w", encoding="utf-8") as file:
            file.write(PROGRAM)
        flags = [
            "-std=c17",
            "-fsyntax-only",
            "-Wall",
            "-Wextra",
            "-Werror",
            "-I" + os.path.join(self.folder, "include"),
            "-I" + os.path.join(self.folder, "lib"),
            "-I" + self.made,
        ]
        found = subprocess.run(
            [compiler, *flags, program, os.path.join(self.made, "material_facts.c")], capture_output=True, text=True
        )
        self.assertEqual(found.returncode, 0, found.stderr)

    @unittest.skipUnless(os.environ.get("FRAME_LONG"), "builds the whole library anew: with FRAME_LONG=1")
    def test_run_time(self):
        """The copy, built: the field is checked and its default told in C, Python and Lua; the bad-input test feeds it."""
        for parts in (("tests",), ("CMakeLists.txt",), ("examples",), ("docs",), ("LICENSE",)):
            path = os.path.join(SOURCE, *parts)
            if os.path.isdir(path):
                shutil.copytree(path, os.path.join(self.folder, *parts))
            elif os.path.exists(path):
                shutil.copy(path, self.folder)
        build = os.path.join(self.folder, "build")
        for command in (
            ["cmake", "-G", "Ninja", "-S", self.folder, "-B", build, "-DCMAKE_BUILD_TYPE=Debug"],
            ["ninja", "-C", build, "-j2", "frame_lua", "bad_input_test_bad_input", "bindings/all"],
            [os.path.join(build, "tests", "bad_input_test_bad_input")],
        ):
            found = subprocess.run(command, capture_output=True, text=True)
            self.assertEqual(found.returncode, 0, found.stdout[-4000:] + found.stderr[-4000:])
        program = (
            "import frame\nassert 'camber_in = 0.25' in ' '.join(frame.section(size='2x10').assumed)\n"
            "try: frame.section(size='2x10', camber_in='4')\nexcept frame.Error as error: print(error)"
        )
        found = subprocess.run(
            [sys.executable, "-c", program],
            env=dict(os.environ, PYTHONPATH=os.path.join(build, "python")),
            capture_output=True,
            text=True,
        )
        self.assertEqual(found.stdout.strip(), "camber_in: 4 is not in >0..3 in", found.stderr)
        program = (
            "local frame = require 'frame' print(select(2, pcall(frame.section, {size = '2x10', camber_in = '4'})))"
        )
        found = subprocess.run(
            ["lua5.4", "-e", program],
            env=dict(os.environ, LUA_CPATH=os.path.join(build, "lua", "?.so")),
            capture_output=True,
            text=True,
        )
        self.assertEqual(found.stdout.strip(), "camber_in: 4 is not in >0..3 in", found.stderr)


PROGRAM = """
#include <frame/frame.h>
#include "material_facts.h"
int main(void) {
    frame_section_in in;
    frame_section_out out = {0};
    frame_section_in_init(&in);
    in.camber_in = 1;
    return out.camber_ratio > 0 && FRAME_ASSUMED_SECTION_IN_CAMBER_IN >= 0;
}
"""

if __name__ == "__main__":
    unittest.main()
