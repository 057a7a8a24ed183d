"""Thousands of calls of everything there is, good and bad, leave the library's memory balanced and the process no larger.

FRAME_CALLS of each good call, a tenth of them of each variation (a wrong value, with a working, what is done with a result), or
as many as FRAME_SECONDS allow: how many that were is printed. What there is comes from api.json; arguments are made from the forms of the parameters. A handful of texts that mean something
are tried for each text, so that readers of notations meet good and bad ones.
"""
import gc
import os
import sys
import time
import unittest

import frame

import good

SOURCE, BUILD = os.environ.get("FRAME_SOURCE", "."), os.environ.get("FRAME_BUILD", "build")
sys.path.insert(0, os.path.join(SOURCE, "bindings", "generate"))
sys.dont_write_bytecode = True
from api import Api, method_name  # noqa: E402

CALLS = int(os.environ.get("FRAME_CALLS", "10000"))
SECONDS = float(os.environ.get("FRAME_SECONDS", "0.1"))
VARIED = (" with ", " and ")  # in the name of a variation
MOST_GROWTH = 2 << 20
TEXTS = ("8 in 12", "7' 6\"", "2x10", "SPF", "No.2", "30 deg", "no such thing")

api = Api(os.path.join(BUILD, "made", "api.json"))


def resident():
    with open("/proc/self/statm", encoding="ascii") as file:
        return int(file.read().split()[1]) * os.sysconf("SC_PAGE_SIZE")


def example_of(field):
    if field["need"] != "required" and field["kind"] != "list":
        return None
    if field["kind"] in ("number", "integer"):
        return min(max(1, field["low"]), field["high"])
    if field["kind"] == "word":
        return frame.words(field["words"])[0]
    if field["kind"] == "bool":
        return True
    if field["kind"] == "words":
        return [frame.words(field["words"])[0]]
    if field["kind"] == "text":
        return "text"
    return [[example_of(f) for f in api.inputs(field["element"])]] if field["kind"] == "list" else [1.0, 2.0]


def arguments(function, text):
    made = []
    for place, argument in enumerate(function["given"]):
        form = argument["form"]
        if form == "struct":
            values = [example_of(f) for f in api.inputs(argument["struct"])]
            made += values if place == len(function["given"]) - 1 else [tuple(values)]
        elif form == "structs":
            made.append([[example_of(f) for f in api.inputs(argument["struct"])]])
        else:
            made.append(
                {"number": 1.5, "integer": 4, "size": 0, "bool": True, "text": text, "numbers": [1.0, 2.0]}.get(form)
                if form not in ("word", "handle")
                else frame.words(argument["words"])[0]
                if form == "word"
                else make(argument["handle"])
            )
    return made


def make(handle):
    """The view of a calculation, else a handle of its own maker."""
    if handle == "marking":
        working = frame.working()
        frame.section(size="2x10", working=working)
        return working.mark({"A": 13})
    if handle == "contact":
        return make("stick").contact(make("stick"))
    if handle == "passage":
        wall = frame.wall(**good.copy(good.INPUTS["wall"]))
        return wall.passage(way="across", edition="2021", x_in=24, z_in=50, width_in=4)
    if handle == "contact":
        return make("stick").contact(make("stick"))
    if handle == "saw_list":
        assembly = frame.assembly()
        assembly.add_stick(frame.rafter(**good.copy(good.INPUTS["rafter"])).stick(), "rafter", 0, 0, 0, 30)
        return assembly.saw_list()
    for name, calculation in api.calculations.items():
        if handle == name or handle in [view["view"] for view in calculation["views"]]:
            result = getattr(frame, name)(**good.copy(good.INPUTS.get(name, {})))
            return result if handle == name else getattr(result, handle)()
    maker = api.handles[handle]["makers"][0]
    return getattr(frame, handle)(*arguments(maker, TEXTS[0]))


def calculation_calls():
    for name in frame.calculations():
        function, given = getattr(frame, name), good.copy(good.INPUTS.get(name, {}))
        bad = dict(given, no_such_field=1)
        worse = {key: value for key, value in given.items()}
        first = next(f for f in frame.fields(name) if f["need"] != "result" and f["kind"] != "text")
        worse[first["name"]] = object()

        def with_working(function=function, given=given):
            function(working=frame.working(), **given)

        def use(function=function, given=given):
            result = function(**given)
            result == function(**given)
            str(result), result.to_dict(), result.__reduce__()

        yield name, lambda function=function, given=given: function(**given)
        yield name + " with a field it does not have", lambda function=function, bad=bad: function(**bad)
        yield name + " with a wrong value", lambda function=function, worse=worse: function(**worse)
        yield name + " with a working", with_working
        yield name + " and its result", use
        for view in api.calculations[name]["views"]:
            yield "%s.%s" % (name, view["view"]), lambda function=function, given=given, view=view["view"]: getattr(
                function(**given), view
            )()


def function_calls():
    for function in api.functions:
        call = getattr(frame, function["name"])
        for text in TEXTS if any(a["form"] == "text" for a in function["given"]) else TEXTS[:1]:
            yield function["name"], lambda call=call, values=arguments(function, text): call(*values)
        yield function["name"] + " with wrong values", lambda call=call, values=[object()] * len(
            function["given"]
        ): call(*values)


def method_calls():
    for handle in api.handles.values():
        for maker in handle["makers"]:
            call = getattr(frame, handle["name"])
            yield handle["name"], lambda call=call, values=arguments(maker, TEXTS[0]): call(*values)
        for function in handle["methods"]:
            name, values = method_name(function), arguments(function, "notes.txt")
            if name.startswith("save"):
                continue  # writes files; its memory is that of what it writes, called above
            yield "%s.%s" % (handle["name"], name), lambda handle=handle["name"], name=name, values=values: getattr(
                make(handle), name
            )(*values)
            yield "%s.%s with wrong values" % (handle["name"], name), lambda handle=handle[
                "name"
            ], name=name, count=len(values): getattr(make(handle), name)(*[object()] * count)
        for item in handle["lists"]:
            yield "%s.%s" % (handle["name"], item["plural"]), lambda handle=handle["name"], plural=item[
                "plural"
            ]: getattr(make(handle), plural)
    for function in api.answer_methods:
        values = arguments(function, TEXTS[0])
        yield "%s.%s" % (function["owner"], method_name(function)), lambda owner=function["owner"], name=method_name(
            function
        ), values=values: getattr(make(owner), name)(*values)


def repeat(call, calls, seconds):
    """Gives how many calls there were."""
    end = time.monotonic() + seconds
    for i in range(calls):
        try:
            call()
        except (frame.Error, TypeError):
            pass
        if not i % 8 and time.monotonic() > end:
            return i + 1
    return calls


class Growth(unittest.TestCase):
    def balanced(self, calls):
        self.assertTrue(calls)
        for name, call in calls:
            repeat(call, 100, 0.02)  # what is remembered once (words, names) is remembered now
        gc.collect()
        blocks, size, counts = frame._live_blocks(), resident(), {}
        for name, call in calls:
            share = 10 if any(part in name for part in VARIED) else 1
            count = repeat(call, CALLS // share, SECONDS / min(share, 3))
            if share == 1:
                counts[name] = max(count, counts.get(name, 0))
            gc.collect()
            self.assertEqual(frame._live_blocks(), blocks, name)
        self.assertLess(resident() - size, MOST_GROWTH)
        self.tell(counts)

    def tell(self, counts):
        full = sum(count == CALLS for count in counts.values())
        fewest = sorted(counts.items(), key=lambda pair: pair[1])[:3]
        print("%s: %d of %d called %d times; fewest: %s" % (self.id().split(".")[-1], full, len(counts), CALLS,
              ", ".join("%s %d" % pair for pair in fewest)))

    def test_calculations(self):
        self.balanced(list(calculation_calls()))

    def test_functions(self):
        self.balanced(list(function_calls()))

    def test_methods(self):
        self.balanced(list(method_calls()))

    def test_columns(self):
        def columns():
            frame.batch(frame.section, size=["2x4", "2x6"], plies=[1, 2], outer=True).to_dict()

        def bad():
            frame.batch(frame.section, size=["2x4", "9x9"], plies=[1, 2])

        self.balanced([("batch", columns), ("bad batch", bad)])


if __name__ == "__main__":
    unittest.main()
