"""How long it takes until the library is there: `import frame` over the bare interpreter, `require "frame"` over bare Lua.

    start.py BUILD_DIR        the least of thirty starts each, by turns, of the processor's time
"""
import os
import resource
import subprocess
import sys
import tempfile

BUILD = os.path.abspath(sys.argv[1] if len(sys.argv) > 1 else "build")
STARTS = 30
CACHE = tempfile.TemporaryDirectory()  # compiled once, as where it is installed
os.environ.pop("PYTHONDONTWRITEBYTECODE", None)
os.environ["PYTHONPYCACHEPREFIX"] = CACHE.name
PAIRS = (
    ("import frame, over bare Python (goal 30 ms)", {"PYTHONPATH": os.path.join(BUILD, "python")},
     ("/usr/bin/python3", "-c", "pass"), ("/usr/bin/python3", "-c", "import frame")),
    ('require "frame", over bare Lua (goal 10 ms)', {"LUA_CPATH": os.path.join(BUILD, "lua", "?.so")},
     ("lua5.4", "-e", ""), ("lua5.4", "-e", 'require "frame"')),
)


def start(command, variables):
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    subprocess.run(command, env=dict(os.environ, **variables), check=True)
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    return (after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime) * 1e3


for what, variables, bare, loaded in PAIRS:
    times = [(start(bare, variables), start(loaded, variables)) for _ in range(STARTS)]
    least_bare, least = (min(column) for column in zip(*times))
    print("%-46s %6.1f ms (%.1f of %.1f)" % (what, least - least_bare, least, least_bare))
