#!/usr/bin/env python3
"""Writes one C function for every public function of the library, fed by tests/fuzz/feed.c: generate.py API_JSON OUT.c

What has a shape that this script does not know stops it, so that nothing is left out by silence; what cannot be called with
made-up arguments stands in LEFT_OUT with its reason.
"""
import json
import sys

LEFT_OUT = {  # function: why, and what calls it instead
    "allocator_set": "only before the first use; tests/fuzz/sweep.c sets one",
    "watch_new": "tests/takeoff/test_stock_plan.c: it takes a function",
    "number_read": "tests/text/test_number.c: its second result points into the first argument",
}
PATHS = ("path", "folder")
NO_OUTCOME = ("status_at", "error_status")  # what they return is told, not what came of the call


class Maker:
    def __init__(self, api):
        self.api = api
        self.kinds = sorted(set(api["handles"]) - {"struct", "calculation"} | {"text"})  # those two are never freed
        self.names = []  # public functions covered, with their calls
        self.lines = []

    def kind(self, name):
        return self.kinds.index(name)

    # -- one call from a list of arguments --

    def call(self, function):
        name, arguments, returns = function["name"], function["arguments"], function["returns"]
        before, given, after = [], [], []
        size_of = {}  # sized out-structs: the argument that holds their size
        names = [a["name"] for a in arguments]
        if name in NO_OUTCOME:
            returns = "int32_t"
        status = returns == "frame_status"
        for at, argument in enumerate(arguments):
            c_type, arg = argument["type"], argument["name"]
            star = c_type.count("*")
            bare = c_type.replace("const ", "").replace("*", "").strip()
            short = bare[len("frame_"):] if bare.startswith("frame_") else bare
            if arg in size_of:
                given.append(size_of[arg])
            elif c_type == "double":
                given.append("feed_number(f)")
            elif c_type == "size_t":
                given.append("feed_below(f, 40)")
            elif c_type in ("int32_t", "frame_status"):
                given.append("(int32_t)feed_below(f, 400) - 20")
            elif c_type == "const char *":
                given.append("feed_path(f)" if arg in PATHS else "feed_text(f)")
            elif c_type == "char *":
                before.append("char %s[80]; memset(%s, 'x', sizeof %s);" % (arg, arg, arg))
                given.append(arg)
                size_of[names[at + 1]] = "feed_below(f, sizeof %s)" % arg
            elif c_type in ("double *", "int32_t *", "size_t *", "frame_size *", "frame_species *", "frame_grade *") or (
                    star == 1 and short in self.api["words"] and not c_type.startswith("const ")):
                before.append("%s %s = 77;" % (bare, arg))
                given.append("&" + arg)
                if status:
                    after.append('if (status && %s != 77) feed_broken("refused, and yet touched %s");' % (arg, arg))
                after.append("feed_figure(f, (double)%s);" % arg)
            elif star == 0 and short in self.api["words"]:
                given.append('feed_word(f, "%s")' % short)
            elif star == 2 and short in self.kinds:
                before.append("frame_%s *%s = FEED_UNTOUCHED;" % (short, arg))
                given.append("&" + arg)
                after.append("feed_made(f, status, %s, %d);" % (arg, self.kind(short)))
            elif star == 1 and short in self.kinds:
                take = "feed_take" if name.endswith("_free") else "feed_handle"
                before.append("%s%s = %s(f, %d);" % (c_type, arg, take, self.kind(short)))
                if not name.endswith("_free"):
                    before.append("if (!%s) return;" % arg)
                given.append(arg)
            elif c_type == "const frame_struct *":
                given.append("feed_facts(f)")
            elif c_type == "const frame_field *":
                given.append("feed_field(f)")
            elif c_type == "const frame_calculation *":
                given.append("feed_calculation(f)")
            elif c_type == "const void *":
                return self.special(name)
            elif star == 1 and short in self.api["structs"] and c_type.startswith("const "):
                following = names[at + 1] if at + 1 < len(names) else ""
                if following.endswith("_count"):
                    before.append("size_t %s; %s%s = feed_array(f, \"%s\", &%s);" % (following, c_type, arg, short, following))
                    size_of[following] = following
                    given.append(arg)
                else:
                    given.append('feed_struct(f, "%s")' % short)
            elif star == 1 and short in self.api["structs"]:
                before.append("%s *%s = feed_out(f, sizeof *%s);" % (bare, arg, arg))
                given.append(arg)
                size_of[names[at + 1]] = "sizeof *" + arg
                after.append('feed_judge(f, status, "%s", sizeof *%s);' % (short, arg))
            else:
                return self.special(name)
        self.write(name, before, given, after, returns)

    def write(self, name, before, given, after, returns):
        # In order, one after the other: compilers may evaluate arguments in any order.
        before = before + ["__auto_type given_%d = %s;" % (i, text) for i, text in enumerate(given) if "feed_" in text]
        given = ["given_%d" % i if "feed_" in text else text for i, text in enumerate(given)]
        call = "frame_%s(%s)" % (name, ", ".join(given))
        judged = any("feed_judge" in line or "feed_made" in line for line in after)
        if returns == "frame_status":
            call = "const frame_status status = %s;" % call
            if not judged:
                after = ["feed_status(f, status);"] + after
        elif returns == "void":
            call += ";"
        elif returns == "const char *":
            call = "feed_chars(f, %s);" % call
        elif returns.endswith("*"):
            call = "(void)%s;" % call
        else:
            call = "feed_figure(f, (double)%s);" % call
        self.add("frame_" + name, before + [call] + after)

    def add(self, symbol, body):
        self.names.append(symbol)
        self.lines.append("static void run_%s(feed *f) {\n    (void)f;\n%s}\n" % (symbol, "".join("    %s\n" % line for line in body)))

    def special(self, name):
        bodies = {
            "result_text": ["/* feed_judge calls it on what came back */",
                            "frame_text *text = feed_handle(f, %d);" % self.kind("text"), "if (!text) return;",
                            "frame_section_in in; frame_section_out out; frame_section_in_init(&in);",
                            'in.size = feed_word(f, "size");',
                            "if (!frame_section(&in, &out, NULL)) feed_status(f, frame_result_text(&out, text));"],
            "struct_init": ["const frame_struct *facts = feed_facts(f);",
                            "const size_t size = feed_below(f, FEED_OUT);", "memset(f->out, 0xA5, sizeof f->out);",
                            "feed_status(f, frame_struct_init(facts, f->out, size));",
                            'if (f->out[size] != 0xA5) feed_broken("wrote past the size given");'],
            "batch": ["feed_batch(f);"],
        }
        if name not in bodies:
            raise SystemExit("tests/fuzz/generate.py: frame_%s has a shape it does not know: teach it, or say why not" % name)
        self.add("frame_" + name, bodies[name])

    # -- calculations and answers --

    def calculation(self, of):
        name = of["name"]
        self.init("%s_in" % name, "%s_in_init_sized" % name)
        given = 'const frame_%s_in *in = feed_struct(f, "%s_in");' % (name, name)
        work = "frame_working *working = feed_byte(f) & 1 ? feed_handle(f, %d) : NULL;" % self.kind("working")
        for view in of["views"]:
            self.add("frame_%s_%s" % (name, view["view"]), [
                given, "frame_%s *made = FEED_UNTOUCHED;" % view["view"],
                "const frame_status status = frame_%s_%s(in, &made);" % (name, view["view"]),
                "feed_made(f, status, made, %d);" % self.kind(view["view"])])
        if not of["answer"]:
            self.add("frame_%s_sized" % name, [
                given, work, "frame_%s_out *out = feed_out(f, sizeof *out);" % name,
                "const frame_status status = frame_%s(in, out, working);" % name,
                'feed_judge(f, status, "%s_out", sizeof *out);' % name])
            return
        kind = self.kind(name)
        self.add("frame_%s_solve" % name, [
            given, work, "frame_%s *answer = FEED_UNTOUCHED;" % name,
            "const frame_status status = frame_%s_solve(in, &answer, working);" % name,
            "if (!status) walk_%s(f, answer);" % name, "feed_made(f, status, answer, %d);" % kind])
        self.add("frame_%s_free" % name, ["frame_%s_free(feed_take(f, %d));" % (name, kind)])
        self.walk(of)

    def walk(self, of):
        name = of["name"]
        body = ["frame_%s_out *out = feed_out(f, sizeof *out);" % name,
                'feed_judge(f, frame_%s_result(answer, out), "%s_out", sizeof *out);' % (name, name)]
        self.names.append("frame_%s_result_sized" % name)
        for item in of["lists"]:
            one = "frame_%s_%s" % (name, item["item"])
            if not item["struct"]:
                self.names.append("frame_%s_%s" % (name, item["plural"]))
                body += ["{ size_t count = 0; const double *numbers = frame_%s_%s(answer, &count);" % (name, item["plural"]),
                         "  for (size_t i = 0; i < count; i++) feed_figure(f, numbers[i]); }"]
                continue
            self.names += [one + "_count", one + "_at_sized"]
            body += ["{ const size_t count = %s_count(answer);" % one,
                     "  for (size_t i = 0; i <= count && i < 40; i++) {",
                     "    %s *item = feed_out(f, sizeof *item);" % one,
                     "    const frame_status status = %s_at(answer, i, item);" % one,
                     "    if (!status != (i < count)) feed_broken(\"item %%zu of %%zu: status %%d\", i, count, status);",
                     '    feed_judge(f, status, "%s_%s", sizeof *item);' % (name, item["item"]), "  } }"]
        body = [line.replace("%%", "%") for line in body]
        self.lines.insert(0, "static void walk_%s(feed *f, const frame_%s *answer) {\n%s}\n" % (
            name, name, "".join("    %s\n" % line for line in body)))

    def init(self, struct, function):
        self.add("frame_" + function, [
            "frame_%s object;" % struct, "const size_t size = feed_below(f, sizeof object + 1);", "memset(&object, 0xA5, sizeof object);",
            "feed_status(f, frame_%s(&object, size));" % function,
            "for (size_t i = size; i < sizeof object; i++)",
            '    if (((unsigned char *)&object)[i] != 0xA5) feed_broken("wrote past the size given");'])

    # -- the file --

    def make(self):
        for function in self.api["functions"]:
            if function["name"] not in LEFT_OUT:
                self.call(function)
        for of in self.api["calculations"].values():
            self.calculation(of)
        listed = {field["element"] for struct in self.api["structs"].values() for field in struct["fields"] if field.get("element")}
        for element in sorted(set(self.api["elements"]) | listed | {"working_answer"}):
            self.init(element, element + "_init_sized")
        called = [line.split("(")[0].split("run_")[1] for line in self.lines if "void run_" in line.split("(")[0]]
        head = ['#include "feed.h"', "", "#include <string.h>", ""]
        head += ["static void free_%s(void *handle) { frame_%s_free(handle); }" % (kind, kind) for kind in self.kinds]
        kinds = ",\n".join('    {"%s", free_%s}' % (kind, kind) for kind in self.kinds)
        calls = ",\n".join('    {"%s", run_%s}' % (name, name) for name in called)
        return "%s\nvoid feed_batch(feed *f);\n\n%s\nconst feed_kind feed_kinds[] = {\n%s};\nconst size_t feed_kind_count = %d;\n\n" \
            "const feed_call feed_calls[] = {\n%s};\nconst size_t feed_call_count = %d;\n" % (
                "\n".join(head), "\n".join(self.lines), kinds, len(self.kinds), calls, len(called))


def main(api_path, out):
    with open(api_path, encoding="utf-8") as file:
        maker = Maker(json.load(file))
    text = maker.make()
    with open(out, "w", encoding="utf-8") as file:
        file.write(text)
    with open(out + ".names", "w", encoding="utf-8") as file:
        file.writelines(name + "\n" for name in sorted(maker.names) + ["frame_" + name for name in LEFT_OUT])


if __name__ == "__main__":
    main(sys.argv[1], sys.argv[2])
