#!/usr/bin/env python3
"""Runs the examples of a Markdown page: each code block in Python, Lua or C that is followed by a block of text must print
just that.   examples.py BUILD_DIR SOURCE_DIR PAGE.md [--write]"""
import os
import re
import subprocess
import sys
import tempfile

BLOCK = re.compile(r"```(python|lua|c)\n(.*?)```\n\s*```text\n(.*?)```", re.S)


def run(language, code, build, source):
    environment = dict(os.environ, PYTHONPATH=os.path.join(build, "python"), LUA_CPATH=os.path.join(build, "lua", "?.so"))
    with tempfile.TemporaryDirectory() as folder:
        path = os.path.join(folder, "example." + {"python": "py", "lua": "lua", "c": "c"}[language])
        with open(path, "w", encoding="utf-8") as file:
            file.write(code)
        if language == "c":
            program = os.path.join(folder, "example")
            subprocess.run(["cc", "-std=c17", "-Wall", "-Wextra", "-Werror", "-I", os.path.join(source, "include"), path,
                            os.path.join(build, "lib", "libframe.a"), "-lm", "-o", program], check=True)
            command = [program]
        else:
            command = [{"python": "python3", "lua": "lua5.4"}[language], path]
        done = subprocess.run(command, env=environment, cwd=folder, capture_output=True, text=True)
        return done.stdout if done.returncode == 0 else "exit %d\n%s%s" % (done.returncode, done.stdout, done.stderr)


def main(build, source, page, write):
    with open(page, encoding="utf-8") as file:
        text = file.read()
    found, wrong = 0, 0
    for match in list(BLOCK.finditer(text))[::-1]:
        language, code, expected = match.groups()
        printed = run(language, code, build, source)
        found += 1
        if printed != expected:
            wrong += 1
            print("%s: the %s example prints\n%s--- not\n%s" % (os.path.basename(page), language, printed, expected))
            text = text[:match.start(3)] + printed + text[match.end(3):]
    if write and wrong:
        with open(page, "w", encoding="utf-8") as file:
            file.write(text)
    if not found:
        print("%s: no example with its output" % page)
    return 1 if wrong or not found else 0


if __name__ == "__main__":
    sys.exit(main(*(os.path.abspath(path) for path in sys.argv[1:4]), "--write" in sys.argv))
