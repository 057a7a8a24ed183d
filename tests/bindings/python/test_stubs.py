"""The stubs say what is there (mypy's own stubtest), and let an editor see a wrong field. Skipped where mypy is not installed."""
import importlib.util
import os
import subprocess
import sys
import tempfile
import unittest

HERE = os.path.dirname(os.path.abspath(__file__))
PACKAGES = os.path.join(os.environ.get("FRAME_BUILD", "build"), "python")
PROGRAM = """
import frame
r = frame.rafter(run_in="6' 3", slope=0.5, depth_in=5.5, working=frame.working())
length: float = r.length_in
wrong: str = r.length_in
frame.rafter(run_inn=3)
r.lenght_in
for board in frame.stock_plan(pieces=[(1, 2)], stock=[(96, 7)]).boards:
    inches: float = board.pieces[0].length_in
r.drawing().write_svg("rafter.svg")
"""


@unittest.skipUnless(importlib.util.find_spec("mypy"), "mypy is not installed")
class Stubs(unittest.TestCase):
    def run_in_folder(self, module, *arguments):
        environment = dict(os.environ, PYTHONPATH=PACKAGES, MYPYPATH=PACKAGES)
        with tempfile.TemporaryDirectory() as folder:  # not the source root: stubtest would take that for the package
            with open(os.path.join(folder, "program.py"), "w", encoding="utf-8") as file:
                file.write(PROGRAM)
            return subprocess.run(
                [sys.executable, "-m", module, *arguments], cwd=folder, env=environment, capture_output=True, text=True
            )

    def test_stubtest(self):
        found = self.run_in_folder("mypy.stubtest", "frame", "--allowlist", os.path.join(HERE, "stubtest_allowed.txt"))
        self.assertEqual(found.returncode, 0, found.stdout + found.stderr)

    def test_program(self):
        found = self.run_in_folder("mypy", "program.py")
        lines = [int(line.split(":")[1]) for line in found.stdout.splitlines() if ": error:" in line]
        self.assertEqual(lines, [5, 6, 7], found.stdout + found.stderr)


if __name__ == "__main__":
    unittest.main()
