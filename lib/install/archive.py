#!/usr/bin/env python3
"""Packs a release archive: the sources and all that is generated from them, so that a C compiler and CMake are enough.

    archive.py BUILD_DIR SOURCE_DIR OUT_DIR

Writes OUT_DIR/frame-carpentry-VERSION.tar.gz, which is also the source archive that pip builds from and the one the
rockspec names. The same commit gives the same bytes.
"""
import gzip
import io
import os
import re
import subprocess
import sys
import tarfile

MADE = {  # where it stands in a build: where it goes in made/
    "made": "",
    "made/bindings": "bindings",
    "python/frame": "python/frame",
    "lua": "lua",
    "docs": "docs",
}
KINDS = (".c", ".h", ".json", ".py", ".pyi", ".typed", ".lua", ".md")


def version(source):
    with open(os.path.join(source, "include/frame/version.h"), encoding="utf-8") as file:
        found = dict(re.findall(r"#define FRAME_VERSION_(\w+) (\d+)", file.read()))
    return ".".join(found[part] for part in ("MAJOR", "MINOR", "PATCH"))


def kept_files(source):
    """What the project keeps, with the time of the last change to it."""
    def git(*words):
        return subprocess.run(["git", "-C", source, *words], check=True, capture_output=True, text=True).stdout
    return git("ls-files").split("\n")[:-1], int(git("log", "-1", "--format=%ct"))


def made_files(build):
    for folder, goes_to in MADE.items():
        for name in sorted(os.listdir(os.path.join(build, folder))):
            if name.endswith(KINDS):
                yield os.path.join(build, folder, name), os.path.join("made", goes_to, name)


def filled(path, number):
    with open(path, encoding="utf-8") as file:
        return file.read().replace("@VERSION@", number).encode()


def main(build, source, out):
    number = version(source)
    stem = "frame-carpentry-" + number
    names, when = kept_files(source)
    buffer = io.BytesIO()
    with tarfile.open(fileobj=buffer, mode="w", format=tarfile.PAX_FORMAT) as archive:
        def add(name, content, mode=0o644):
            info = tarfile.TarInfo(stem + "/" + name)
            info.size, info.mtime, info.mode = len(content), when, mode
            archive.addfile(info, io.BytesIO(content))
        for name in names:
            path = os.path.join(source, name)
            with open(path, "rb") as file:
                add(name, file.read(), 0o755 if os.access(path, os.X_OK) else 0o644)
        for path, name in made_files(build):
            with open(path, "rb") as file:
                add(name, file.read())
        add("pyproject.toml", filled(os.path.join(source, "bindings/python/package/pyproject.toml"), number))
        add("PKG-INFO", ("Metadata-Version: 2.1\nName: frame-carpentry\nVersion: %s\n" % number).encode())
        add("frame-carpentry-%s-1.rockspec" % number,
            filled(os.path.join(source, "bindings/lua/package/frame-carpentry.rockspec"), number))
    os.makedirs(out, exist_ok=True)
    target = os.path.join(out, stem + ".tar.gz")
    with open(target, "wb") as file, gzip.GzipFile("", "wb", 9, file, mtime=when) as packed:
        packed.write(buffer.getvalue())
    print(target)


if __name__ == "__main__":
    main(*sys.argv[1:4])
