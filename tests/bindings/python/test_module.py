"""The Python package as a student meets it: results that read and print, signatures that say the defaults, errors that name
the field."""
import copy
import inspect
import os
import pickle
import subprocess
import sys
import tempfile
import threading
import time
import unittest

import frame

import good

RAFTER = dict(
    run_in="6' 3-1/2\"", slope="7 in 12", ledger_thickness_in=1.5, overhang_in="14", depth_in=5.5, seat_in=3.5
)


class Refusals(unittest.TestCase):
    def refused(self, status, field, call, *args, **given):
        with self.assertRaises(frame.Error) as caught:
            call(*args, **given)
        error = caught.exception
        self.assertEqual((error.status, error.field), (status, field), str(error))
        self.assertIn(field, str(error))
        return error

    def test_fields(self):
        error = self.refused("unknown field", "widht_in", frame.section, widht_in=1)
        self.assertEqual(error.valid, "width_in")
        self.assertIsInstance(error, frame.InputError)
        self.assertIsInstance(error, ValueError)
        self.refused("unknown name", "size", frame.section, size="2x11")
        self.refused("wrong type", "size", frame.section, size=10)
        self.refused("wrong type", "plies", frame.section, size="2x10", plies="2")
        self.refused("wrong type", "plies", frame.section, size="2x10", plies=True)
        self.refused("wrong type", "green", frame.section, size="2x10", green=1)
        self.refused("out of range", "plies", frame.section, size="2x10", plies=10**400)
        self.refused("out of range", "width_in", frame.section, width_in=-1e300, depth_in=3)
        self.refused("not a number", "width_in", frame.section, width_in=float("nan"), depth_in=3)
        self.refused("unreadable", "width_in", frame.section, width_in="wide", depth_in=3)
        self.refused("unknown name", "size", frame.section, size="2x\0")
        self.refused("wrong type", "working", frame.section, size="2x10", working=3)

    def test_paths(self):
        self.refused(
            "out of range", "pieces[1].length_in", frame.stock_plan, pieces=[(10, 1), (-3, 1)], stock=[(96, 7)]
        )
        self.refused(
            "wrong type",
            "pieces[1].count",
            frame.stock_plan,
            pieces=[(10, 1), {"length_in": 3, "count": "x"}],
            stock=[(96, 7)],
        )
        self.refused(
            "unknown field", "stock[0].lenght_in", frame.stock_plan, pieces=[(10, 1)], stock=[{"lenght_in": 3}]
        )
        self.refused("wrong type", "pieces[0]", frame.stock_plan, pieces=[10], stock=[(96, 7)])
        self.refused("wrong type", "pieces", frame.stock_plan, pieces=3, stock=[(96, 7)])
        self.refused("impossible", "pieces[0].length_in", frame.stock_plan, pieces=[(100, 1)], stock=[(96, 7)])

    def test_exceptions_of_values(self):
        class Angry:
            def __float__(self):
                raise ZeroDivisionError("angry")

        with self.assertRaises(ZeroDivisionError):
            frame.section(width_in=Angry(), depth_in=3)
        with self.assertRaises(ZeroDivisionError):
            frame.stock_plan(pieces=[(Angry(), 1)], stock=[(96, 7)])


class Results(unittest.TestCase):
    def test_figures(self):
        two = frame.section(size="2x10", plies=2)
        self.assertEqual((two.area_in2, two.known), (27.75, "read"))
        self.assertEqual(two, frame.section("2 X 10", 2.0))
        self.assertNotEqual(two, frame.section("2x10"))
        self.assertIn("27.75", str(two))
        self.assertEqual(str(two), repr(two))
        self.assertIn("<pre>", two._repr_html_())
        self.assertTrue(set(two.to_dict()) <= set(dir(two)))
        self.assertEqual(two.to_dict()["area_in2"], 27.75)
        self.assertTrue(two.assumed[0].startswith("turned"))
        self.assertEqual(two.assumed_names[0], "turned")
        self.assertTrue(frame.section(size="2x6", plies=2, turned="flat").has_caution("flat_plies"))
        with self.assertRaisesRegex(AttributeError, "nearest is 'area_in2'"):
            two.areain2
        with self.assertRaises(AttributeError):
            two.area_in2 = 3
        with self.assertRaises(TypeError):
            hash(two)
        with self.assertRaises(TypeError):
            frame.Result()

    def test_numbers_of_other_kinds(self):
        from decimal import Decimal
        from fractions import Fraction

        self.assertEqual(frame.section(width_in=Fraction(3, 2), depth_in=Decimal("9.25")).area_in2, 13.875)

    def test_a_year_for_an_edition(self):
        given = dict(use="floor", size="2x10", species="DFL", grade="No.2", spacing_in=16, live_psf=40, dead_psf=10)
        self.assertEqual(frame.code_joist_span(edition=2021, **given), frame.code_joist_span(edition="2021", **given))
        for edition in (2021.0, 3, True):
            with self.assertRaises(frame.Error):
                frame.code_joist_span(edition=edition, **given)

    def test_a_handle_in_a_field(self):
        given = dict(use="floor", size="2x10", species="DFL", grade="No.2", spacing_in=16, live_psf=40, dead_psf=10, edition=2021)
        blocks = frame._live_blocks()
        overlay = frame.code_overlay("lookup,size,span_in,source\njoist_span,2x10,10',Ordinance 12\n")
        result = frame.code_joist_span(overlay=overlay, **given)
        columns = frame.batch("code_joist_span", overlay=overlay, **dict(given, spacing_in=[12, 16]))
        limits = frame.code_stairs(edition=2021, overlay=overlay)
        del overlay
        self.assertEqual((result.span_in, result.source), (120, "Ordinance 12"))
        self.assertEqual(list(columns.span_in), [120, 120])
        self.assertEqual(pickle.loads(pickle.dumps(result)), result)
        self.assertEqual(pickle.loads(pickle.dumps(limits)), limits)
        self.assertNotEqual(result, frame.code_joist_span(**given))
        del result, columns, limits
        self.assertEqual(frame._live_blocks(), blocks)

    def test_copies_and_pickles(self):
        for result in (
            frame.section(size="2x10"),
            frame.rafter(**RAFTER),
            self.plan(),
            self.plan().boards[1],
            self.plan().pieces[0],
            frame.rafter(**RAFTER).stick().marks[2],
        ):
            again = pickle.loads(pickle.dumps(result))
            self.assertEqual(result, again)
            self.assertEqual(result.to_dict(), again.to_dict())
            self.assertEqual(copy.deepcopy(result), result)
        self.assertEqual(str(pickle.loads(pickle.dumps(self.plan()))), str(self.plan()))

    def test_damaged_pickles(self):
        function, (name, given, out, lists) = self.plan().__reduce__()
        for bad in (
            (name, given, out, 3),
            (name, given, 3, lists),
            (name, 7, out, lists),
            (name, given, out, ((1, 2), lists[1])),
            ("nothing", given, out, lists),
            (name, ("x",) + given[1:], out, lists),
        ):
            with self.assertRaises((ValueError, TypeError)):
                function(*bad)
        board = lists[0][0]
        wild = tuple((2**32 - 1, 2**32 - 1) if isinstance(v, tuple) else v for v in board)
        self.assertEqual(function(name, given, out, ((wild,), lists[1])).boards[0].pieces, ())

    def plan(self):
        return frame.stock_plan(
            pieces=[(105.1, 14, "rafter"), {"length_in": "22-1/2", "count": 26}], stock=[("8'", 7.1), ("12'", 10.9)]
        )

    def test_answers(self):
        plan = self.plan()
        self.assertEqual(sum(len(board.pieces) for board in plan.boards), 40)
        self.assertEqual(plan.boards[0].pieces[0], plan.pieces[0])
        board = plan.boards[0]
        del plan
        self.assertTrue(board.pieces[0].length_in > 0)  # an item keeps its answer
        self.assertEqual(frame.layout_marks(length_in="8'", spacing_in=16).marks_in[1], 15.25)

    def test_views_and_handles(self):
        rafter = frame.rafter(**RAFTER)
        stick = rafter.stick()
        self.assertGreater(len(stick.marks), 4)
        self.assertAlmostEqual(stick.lengths().top_edge_in, rafter.length_in, 9)
        plate = frame.stick(thickness_in=3.5, depth_in=1.5, start_x_in=1.75, start_y_in=-30, start_z_in=-0.75,
                            end_x_in=1.75, end_y_in=30, end_z_in=-0.75)
        contact = stick.contact(plate)
        self.assertAlmostEqual(sum(face.area_in2 for face in contact.faces), stick.fit(plate).contact_in2, 9)
        self.assertEqual({corner.face for corner in contact.corners}, set(range(len(contact.faces))))
        with tempfile.TemporaryDirectory() as folder:
            path = os.path.join(folder, "rafter.svg")
            rafter.drawing().write_svg(path)
            with open(path, encoding="utf-8") as file:
                self.assertEqual(file.read(), rafter.drawing()._repr_svg_())
            with self.assertRaises(frame.LimitError):
                rafter.drawing().write_svg(os.path.join(folder, "none", "rafter.svg"))
        with self.assertRaises(frame.Error):
            frame.section(size="2x10", working=stick)
        with self.assertRaises(TypeError):
            pickle.dumps(stick)

    def test_working(self):
        working = frame.working()
        frame.section(size="2x10", plies=2, working=working)
        self.assertIn("27.75", str(working))
        self.assertIn("<math", working._repr_html_())
        self.assertEqual(working.steps[0].symbol, "n")
        self.assertEqual([line.verdict for line in working.mark({"A": 27.75, "S": 64}).lines], ["agrees", "differs"])
        self.assertEqual(working.mark([("A", 27.75)]).lines[0].verdict, "agrees")


class Signatures(unittest.TestCase):
    def test_every_calculation(self):
        for name in frame.calculations():
            function = getattr(frame, name)
            shown = inspect.signature(function).parameters
            fields = frame.fields(name)
            self.assertEqual(
                [f["name"] for f in fields if f["need"] != "result"] + ["working", "unknown"], list(shown), name
            )
            for field in fields:
                self.assertIn(field["name"], function.__doc__)
                default = repr(shown[field["name"]].default)
                self.assertEqual(default == "<required>", field["need"] == "required", (name, field["name"]))
                self.assertEqual(default == "None", field["need"] == "optional", (name, field["name"]))
            self.assertIn(name, frame.explain(name))
            for text in (function.__doc__, frame.explain(name)):
                self.assertNotRegex(text, r"\bFRAME_|\bframe_|_free\b|\bNULL\b")

    def test_no_name_is_hidden(self):
        methods = {"to_dict", "has_caution"}
        for name in frame.calculations():
            names = {f["name"] for f in frame.fields(name + "_out")}
            self.assertFalse(names & methods, name)
            given = {f["name"] for f in frame.fields(name)}
            self.assertFalse(given & {"working", "unknown", "outer", "want", "calculation"}, name)

    def test_functions(self):
        self.assertEqual(frame.tape_format(94.77), "7' 10-3/4\"")
        self.assertEqual(frame.tape_format(94.77, denominator=8, style="inches"), '94-3/4"')
        self.assertEqual(str(inspect.signature(frame.tape_format)).split(",")[1], " denominator=16")
        with self.assertRaisesRegex(frame.Error, "denominator"):
            frame.tape_format(94.77, denominater=8)
        self.assertEqual(frame.species_find("S-P-F"), "Spruce-Pine-Fir")
        self.assertIn("Spruce-Pine-Fir", frame.species())

    def test_import_is_light(self):
        code = "import sys; before = set(sys.modules); import frame; print(*sorted(set(sys.modules) - before))"
        loaded = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True).stdout.split()
        self.assertEqual(set(loaded) - {"swig_runtime_data4"}, {"frame", "frame._frame", "frame._more"})


class Watching(unittest.TestCase):
    """A function looks at a long search and may stop it; the lock is let go meanwhile."""

    def plan(self, **more):
        pieces = [(200 + (i * i * 37 % 15000) / 100 + i / 4096, 1) for i in range(200)]
        return frame.stock_plan(pieces=pieces, stock=[(1000, 1)], kerf_in=0, **more)

    def test_stops(self):
        seen = []
        plan = self.plan(watch=lambda best, bound: seen.append((best, bound)) or len(seen) < 2)
        self.assertEqual((plan.ended, len(seen)), ("cancelled", 2))
        self.assertLessEqual(plan.cost, seen[-1][0])

    def test_raises(self):
        with self.assertRaises(ZeroDivisionError):
            self.plan(watch=lambda best, bound: 1 / 0)
        with self.assertRaises(frame.Error):
            self.plan(watch=3)

    def test_other_threads_run(self):
        ran, over = [0], [False]

        def run():
            while not over[0]:
                ran[0] += 1
                time.sleep(0.001)

        thread = threading.Thread(target=run)
        thread.start()
        self.plan(time_limit_s=0.5)
        over[0] = True
        thread.join()
        self.assertGreater(ran[0], 20)


class StockRoom(unittest.TestCase):
    def test_next_job(self):
        room = frame.stock_room()
        room.put([{"length_in": "16'", "price": 14, "available": 1, "size": "2x6"}])
        plan = frame.stock_plan(pieces=[{"length_in": "8' 4\"", "size": "2x6"}], room=room, kept_offcut_in=24)
        room.take(plan)
        self.assertIn("offcut,91.875,0,board,1,2x6", room.csv())
        self.assertEqual(frame.stock_room_from_json(room.json()).csv(), room.csv())
        self.assertEqual(room.short(plan), "1 x 16' 0\" 2x6\n")
        self.assertIn("8' 4\"", plan.cuts())
        self.assertIn("svg", plan.drawing(0).svg())


class Coverage(unittest.TestCase):
    def test_everything_is_bound(self):
        with open(
            os.path.join(os.environ.get("FRAME_BUILD", "build"), "made", "bindings", "not_bound.txt"), encoding="utf-8"
        ) as file:
            self.assertEqual(file.read(), "", "these functions do not keep to the shapes of docs/bindings.md")

    def test_names(self):
        self.assertEqual(sorted(n for n in dir(frame) if not n.startswith("_")), sorted(frame.__all__))
        for name in frame.__all__:
            self.assertTrue(getattr(frame, name).__doc__, name)


class Columns(unittest.TestCase):
    def test_lists(self):
        spans = frame.batch(frame.section, size=["2x4", "2x6"], plies=[1, 2, 9], outer=True)
        self.assertEqual(spans.shape, (2, 3))
        self.assertEqual(list(spans.area_in2[:2]), [5.25, 10.5])
        self.assertEqual(spans.status, ["ok", "ok", "out of range"] * 2)
        self.assertTrue(spans.area_in2[2] != spans.area_in2[2])
        self.assertEqual(spans.known[1:3], ["read", None])
        self.assertTrue(spans.assumed[0][0].startswith("turned"))
        one = frame.batch("section", size="2x4", plies=[1, 2], want=["area_in2"])
        self.assertEqual(list(one.area_in2), [5.25, 10.5])
        self.assertNotIn("depth_in", dir(one))

    def test_every_calculation(self):
        """A row of a batch is a call."""
        tried = 0
        for name, given in good.INPUTS.items():
            scalars = {f["name"] for f in frame.fields(name) if f["kind"] in ("number", "integer", "word", "bool")}
            columns = {key: [value] * 3 if key in scalars else value for key, value in given.items()}
            try:
                rows = frame.batch(name, **columns)
            except frame.Error as error:
                self.assertEqual(error.field, "calculation", str(error))  # its answer varies in length
                continue
            one = getattr(frame, name)(**given)
            for field in frame.fields(name + "_out"):
                if field["kind"] == "text":
                    continue
                single, row = getattr(one, field["name"]), getattr(rows, field["name"])[2]
                same = row != row if single is None and field["kind"] == "number" else row == single
                self.assertTrue(same, "%s.%s: %r in a batch, %r in a call" % (name, field["name"], row, single))
                tried += 1
        self.assertGreater(tried, 50)

    def test_buffers(self):
        from array import array

        widths = array("d", [1.5, 3.0, 4.5])
        result = frame.batch(frame.section, width_in=widths, depth_in=3)
        self.assertEqual(list(result.area_in2), [4.5, 9, 13.5])
        result = frame.batch(frame.section, width_in=memoryview(widths)[::2], depth_in=["3", '6"'])
        self.assertEqual(list(result.area_in2), [4.5, 27])

    def test_refusals(self):
        with self.assertRaisesRegex(frame.Error, r"size\[1\]"):
            frame.batch(frame.section, size=["2x4", "9x9"])
        with self.assertRaisesRegex(frame.Error, "widht_in"):
            frame.batch(frame.section, widht_in=[1, 2])
        with self.assertRaises(ValueError):
            frame.batch(frame.section, width_in=[1, 2], depth_in=[1, 2, 3])
        with self.assertRaises(frame.Error):
            frame.batch("nothing", width_in=[1])

    def test_numpy(self):
        try:
            import numpy
        except ImportError:
            self.skipTest("no numpy here")
        widths = numpy.linspace(1, 4, 7)
        for given in (widths, widths[::2], widths[::-1], widths.astype("float32"), widths.reshape(7, 1)[:, 0]):
            result = frame.batch(frame.section, width_in=given, depth_in=numpy.float64(3))
            self.assertIsInstance(result.area_in2, numpy.ndarray)
            numpy.testing.assert_allclose(result.area_in2, 3 * given, rtol=1e-15)
        self.assertEqual(frame.section(width_in=numpy.float32(1.5), depth_in=numpy.int64(3)).area_in2, 4.5)
        self.assertEqual(frame.section(size="2x4", plies=numpy.int32(2), green=numpy.bool_(False)).area_in2, 10.5)


class Threads(unittest.TestCase):
    def test_two_at_once(self):
        failures = []

        def work(length):
            try:
                for _ in range(200):
                    plan = frame.stock_plan(pieces=[(length, 20)], stock=[("8'", 7.1), ("12'", 10.9)])
                    assert all(piece.length_in == length for piece in plan.pieces)
                    try:
                        frame.section(width_in=length, depth_in=-length)
                    except frame.Error as error:
                        assert error.value == "-%d" % length, error
            except BaseException as error:
                failures.append(error)

        threads = [threading.Thread(target=work, args=(length,)) for length in (30, 40)]
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()
        self.assertEqual(failures, [])

    def test_one_working_for_two(self):
        """A working belongs to one call at a time: another thread's is refused, and nothing is spoiled."""
        working, failures, refusals = frame.working(), [], []

        def work():
            try:
                for _ in range(300):
                    try:
                        frame.stock_plan(
                            pieces=[(30, 200), (17, 300)], stock=[("8'", 7.1), ("12'", 10.9)], working=working
                        )
                        working.clear()
                    except frame.InputError as error:
                        assert error.status == "conflict" and error.field in ("working", "self"), error
                        refusals.append(error)
            except BaseException as error:
                failures.append(error)

        threads = [threading.Thread(target=work) for _ in range(2)]
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()
        self.assertEqual(failures, [])


if __name__ == "__main__":
    unittest.main()
