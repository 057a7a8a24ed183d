#!/usr/bin/env python3
"""A program compiled with the headers of 0.1 runs with today's library: old_program.py SOURCE_DIR LIBRARY_DIR WORK_DIR

The program makes every calculation of that version, with the good inputs of the tests as far as the structs of 0.1 had the
fields, and prints every figure it knows of; behind each result stand bytes that must stay. It is compiled twice, with the
headers of then and of today, and both must say the same. Exit 77: no C compiler.
"""
import json
import os
import re
import shutil
import subprocess
import sys

FORMATS = {"double": ("%.17g", ""), "uint64_t": ("%llx", "(unsigned long long)"), "uint32_t": ("%lu", "(unsigned long)"),
           "size_t": ("%zu", ""), "const char *": ("%s", "text_of")}
START = """#include <inttypes.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static double tape(const char *text) {
    double inches = 0;
    if (frame_tape_parse(text, &inches)) exit(2);
    return inches;
}
static double slope(const char *text) {
    double value = 0;
    if (frame_slope_parse(text, &value)) exit(2);
    return value;
}
static int32_t word(const char *list, const char *text) {
    int32_t value = 0;
    if (frame_word_find(list, text, &value)) exit(3);
    return value;
}
static const char *text_of(const char *text) { return text ? text : "-"; }
static void stays(const unsigned char *guard, const char *what) {
    for (int i = 0; i < 64; i++)
        if (guard[i] != 0x5a) printf("%s: written past its end\\n", what), exit(4);
}
"""


class Headers:
    """The structs and calculations of a header without comments."""

    def __init__(self, text):
        self.structs = {name: re.findall(r"^\s+((?:const )?\w+ \*?)\s*(\w+(?:, \w+)*);", body, re.M) for name, body in
                        re.findall(r"typedef struct frame_(\w+) \{(.*?)\n\} frame_\1;", text, re.S)}
        self.structs = {name: [(kind.strip(), field) for kind, field in fields if "struct_size" not in field and not field.startswith("spare")]
                        for name, fields in self.structs.items()}
        self.words = set(re.findall(r"typedef int32_t frame_(\w+);", text)) - {"bool", "status"}
        self.calculations = re.findall(r"^FRAME_(?:CALCULATION|ANSWER)\((\w+)\);", text, re.M)
        self.answers = {name: [] for name in re.findall(r"^FRAME_ANSWER\((\w+)\);", text, re.M)}
        for name, item in re.findall(r"^FRAME_ANSWER_LIST\((\w+), (\w+), \w+\);", text, re.M):
            self.answers[name].append(item)


class Program:
    def __init__(self, headers, inputs):
        self.headers, self.inputs, self.lines, self.names = headers, inputs, [], 0

    def set(self, target, struct, values):
        """Fills a struct from a dict, or from a list in the order of its fields. What 0.1 did not know is left out."""
        fields = self.headers.structs[struct]
        kinds = {field: kind for kind, field in fields}
        if not isinstance(values, dict):
            counts = {fields[i + 1][1] for i, (kind, _) in enumerate(fields) if kind.startswith("const ") and kind != "const char *"}
            values = dict(zip((field for _, field in fields if field not in counts), values))
        for name, value in values.items():
            if name in kinds:
                self.field(target, name, kinds[name], fields, value)

    def field(self, target, name, kind, fields, value):
        if kind == "const char *":
            self.lines.append("%s.%s = %s;" % (target, name, json.dumps(value)))
        elif kind.startswith("const "):
            self.list(target, name, kind[len("const "):].rstrip(" *"), fields, value)
        else:
            self.lines.append("%s.%s = %s;" % (target, name, self.value(name, kind, value)))

    def value(self, name, kind, value):
        if isinstance(value, bool):
            return "%d" % value
        if not isinstance(value, str):
            return repr(value)
        if kind == "double":
            return "%s(%s)" % ("slope" if name.startswith("slope") else "tape", json.dumps(value))
        return 'word("%s", %s)' % (kind[len("frame_"):], json.dumps(value))

    def list(self, target, name, kind, fields, items):
        self.names += 1
        array = "list%d" % self.names
        count = fields[[field for _, field in fields].index(name) + 1][1]
        self.lines.append("static %s %s[%d];" % (kind, array, len(items)))
        for place, item in enumerate(items):
            element = "%s[%d]" % (array, place)
            if kind == "double":
                self.lines.append("%s = %s;" % (element, self.value(name, "double", item)))
                continue
            if kind[len("frame_"):] in self.headers.words:
                self.lines.append("%s = %s;" % (element, self.value(name, kind, item)))
                continue
            self.lines.append("if (%s_init(&%s)) return 1;" % (kind, element))
            self.set(element, kind[len("frame_"):], item)
        self.lines += ["%s.%s = %s;" % (target, name, array), "%s.%s = %d;" % (target, count, len(items))]

    def show(self, struct, variable, label):
        for kind, field in self.headers.structs[struct]:
            form, cast = FORMATS.get(kind, ("%ld", "(long)"))
            call = "%s(%s.%s)" % (cast, variable, field) if cast else "%s.%s" % (variable, field)
            self.lines.append('printf("%s.%s %s\\n", %s);' % (label, field, form, call))

    def calculation(self, name):
        """A function that makes it and prints all of its result."""
        before, self.lines = self.lines, []
        self.lines += ["static frame_%s_in in;" % name, "static struct { frame_%s_out out; unsigned char guard[64]; } result;" % name,
                       "memset(result.guard, 0x5a, 64);", "if (frame_%s_in_init(&in)) return 1;" % name]
        self.set("in", name + "_in", self.inputs[name])
        failed = 'return printf("%s: %%s\\n", frame_error_text()), 1;' % name
        if name in self.headers.answers:
            self.lines += ["frame_%s *answer = NULL;" % name, "if (frame_%s_solve(&in, &answer, NULL)) %s" % (name, failed),
                           "if (frame_%s_result(answer, &result.out)) %s" % (name, failed)]
            for item in self.headers.answers[name]:
                full = "%s_%s" % (name, item)
                self.lines += ["for (size_t i = 0; i < frame_%s_count(answer); i++) {" % full,
                               "static struct { frame_%s item; unsigned char guard[64]; } one;" % full, "memset(one.guard, 0x5a, 64);",
                               "if (frame_%s_at(answer, i, &one.item)) return 1;" % full, 'stays(one.guard, "%s");' % full]
                self.show(full, "one.item", full)
                self.lines.append("}")
        else:
            self.lines.append("if (frame_%s(&in, &result.out, NULL)) %s" % (name, failed))
        self.lines.append('stays(result.guard, "%s");' % name)
        self.show(name + "_out", "result.out", name)
        if name in self.headers.answers:
            self.lines.append("frame_%s_free(answer);" % name)
        self.lines = before + ["static int make_%s(void) {" % name] + self.lines + ["return 0;", "}"]

    def text(self):
        for name in self.headers.calculations:
            self.calculation(name)
        calls = ["if (make_%s()) return 1;" % name for name in self.headers.calculations]
        return "\n".join([START] + self.lines + ["int main(void) {"] + calls + ["return 0;", "}"]) + "\n"


def run(source, library, work, compiler, headers, text):
    name = "then" if headers.endswith("headers_0.1.h") else "today"
    path = os.path.join(work, name)
    with open(path + ".c", "w", encoding="utf-8") as file:
        file.write('#include "%s"\n%s' % (headers, text))
    subprocess.run([compiler, "-std=gnu17", "-I" + os.path.join(source, "include"), path + ".c", "-o", path, "-L" + library, "-lframe", "-Wl,-rpath," + library],
                   check=True)
    return subprocess.run([path], capture_output=True, text=True)


def main(*paths):
    source, library, work = (os.path.abspath(path) for path in paths)
    compiler = shutil.which("cc") or shutil.which("gcc")
    if not compiler:
        print("not run: no C compiler")
        return 77
    old = os.path.join(source, "tests", "abi", "headers_0.1.h")
    with open(old, encoding="utf-8") as file:
        headers = Headers(file.read())
    with open(os.path.join(source, "tests", "bindings", "good_inputs.json"), encoding="utf-8") as file:
        program = Program(headers, json.load(file))
    text = program.text()
    os.makedirs(work, exist_ok=True)
    then = run(source, library, work, compiler, old, text)
    today = run(source, library, work, compiler, "frame/frame.h", text)
    print("%d calculations of 0.1, %d figures" % (len(headers.calculations), then.stdout.count("\n")))
    for one, name in ((then, "then"), (today, "today")):
        if one.returncode:
            print("with the headers of %s: exit %d\n%s" % (name, one.returncode, one.stdout[-500:]))
            return 1
    if then.stdout != today.stdout:
        for a, b in zip(then.stdout.split("\n"), today.stdout.split("\n")):
            if a != b:
                print("headers of 0.1: %s\nof today:       %s" % (a, b))
                break
        return 1
    return 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:4]))
