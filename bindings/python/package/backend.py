"""Builds the Python package from a release archive, with a C compiler and nothing else (PEP 517, no requirements).

The library is compiled into the extension: there is no shared library to find at run time. What SWIG and the generators
write came with the archive, in made/.
"""
import base64
import concurrent.futures
import glob
import hashlib
import os
import re
import shlex
import subprocess
import sys
import sysconfig
import tarfile
import tempfile
import zipfile

NAME = "frame-carpentry"
ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__)))))
# As lib/CMakeLists.txt and bindings/CMakeLists.txt have it.
COMMON = ["-O2", "-DNDEBUG", "-fPIC", "-fvisibility=hidden", "-ffp-contract=off"]
LIBRARY = ["-std=c17", "-D_POSIX_C_SOURCE=200809L"]
BINDING = ["-std=gnu17"]


def path(*parts):
    return os.path.join(ROOT, *parts)


def version():
    with open(path("include", "frame", "version.h"), encoding="utf-8") as file:
        found = dict(re.findall(r"#define FRAME_VERSION_(\w+) (\d+)", file.read()))
    return ".".join(found[part] for part in ("MAJOR", "MINOR", "PATCH"))


def sources():
    library = glob.glob(path("lib", "*", "*.c")) + glob.glob(path("made", "*.c"))
    binding = glob.glob(path("bindings", "shared", "*.c")) + glob.glob(path("bindings", "python", "*.c"))
    binding += [path("made", "bindings", name) for name in ("bound_made.c", "frame_python.c")]
    if not glob.glob(path("made", "*.c")):
        raise SystemExit("made/ is missing: the Python package is built from a release archive (docs/packages.md)")
    return [(name, LIBRARY) for name in sorted(library)] + [(name, BINDING) for name in sorted(binding)]


def compiler():
    return shlex.split(os.environ.get("CC") or sysconfig.get_config_var("CC") or "cc")


def compile_one(job):
    source, flags, target = job
    folders = [path("include"), path("lib"), path("made"), path("made", "bindings"), path("bindings", "shared"),
               path("bindings", "python"), sysconfig.get_paths()["include"]]
    command = compiler() + flags + COMMON + ["-I" + folder for folder in folders] + ["-c", source, "-o", target]
    done = subprocess.run(command, capture_output=True, text=True, check=False)
    if done.returncode:
        raise SystemExit("%s\n%s" % (" ".join(command), done.stderr))
    return target


def build_extension(work):
    jobs = [(source, flags, os.path.join(work, "%d.o" % i)) for i, (source, flags) in enumerate(sources())]
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count() or 1) as pool:
        objects = list(pool.map(compile_one, jobs))
    target = os.path.join(work, "_frame" + sysconfig.get_config_var("EXT_SUFFIX"))
    link = ["-shared", "-lm"]
    if sys.platform.startswith("linux"):
        exports = os.path.join(work, "exports.map")
        with open(exports, "w", encoding="ascii") as file:
            file.write("{ global: PyInit__frame; local: *; };\n")
        link += ["-Wl,--version-script=" + exports, "-Wl,-s"]
    elif sys.platform == "darwin":
        link = ["-bundle", "-undefined", "dynamic_lookup", "-Wl,-exported_symbol,_PyInit__frame"]
    subprocess.run(compiler() + objects + link + ["-o", target], check=True)
    return target


def metadata():
    with open(path("README.md"), encoding="utf-8") as file:
        readme = file.read()
    head = ["Metadata-Version: 2.1", "Name: " + NAME, "Version: " + version(),
            "Summary: Wood framing: does it fit, does it hold, what do I buy and cut", "Requires-Python: >=3.8",
            "Description-Content-Type: text/markdown"]
    return "\n".join(head) + "\n\n" + readme


def wheel_tag():
    python = "cp%d%d" % sys.version_info[:2]
    return "%s-%s-%s" % (python, python, re.sub(r"[-.]", "_", sysconfig.get_platform()))


def wheel_text():
    return "Wheel-Version: 1.0\nGenerator: frame-carpentry\nRoot-Is-Purelib: false\nTag: %s\n" % wheel_tag()


class Wheel:
    """A zip file that keeps a list of what is in it."""

    def __init__(self, name):
        self.zip = zipfile.ZipFile(name, "w", zipfile.ZIP_DEFLATED)
        self.record = []

    def add(self, name, content):
        info = zipfile.ZipInfo(name, (2020, 1, 1, 0, 0, 0))  # the same file from the same sources
        info.external_attr = 0o644 << 16
        info.compress_type = zipfile.ZIP_DEFLATED
        self.zip.writestr(info, content)
        digest = base64.urlsafe_b64encode(hashlib.sha256(content).digest()).rstrip(b"=").decode()
        self.record.append("%s,sha256=%s,%d" % (name, digest, len(content)))

    def close(self, info):
        name = info + "/RECORD"
        self.zip.writestr(name, "\n".join(self.record + [name + ",,"]) + "\n")
        self.zip.close()


def read(name):
    with open(name, "rb") as file:
        return file.read()


def build_wheel(wheel_directory, config_settings=None, metadata_directory=None):
    stem = "frame_carpentry-" + version()
    name = "%s-%s.whl" % (stem, wheel_tag())
    wheel = Wheel(os.path.join(wheel_directory, name))
    for file in sorted(glob.glob(path("made", "python", "frame", "*"))):
        wheel.add("frame/" + os.path.basename(file), read(file))
    with tempfile.TemporaryDirectory() as work:
        extension = build_extension(work)
        wheel.add("frame/" + os.path.basename(extension), read(extension))
    info = stem + ".dist-info"
    wheel.add(info + "/METADATA", metadata().encode())
    wheel.add(info + "/WHEEL", wheel_text().encode())
    wheel.add(info + "/LICENSE", read(path("LICENSE")))
    wheel.close(info)
    return name


def build_sdist(sdist_directory, config_settings=None):
    """The archive this folder came from, packed again."""
    stem = "%s-%s" % (NAME, version())
    name = stem + ".tar.gz"
    with tarfile.open(os.path.join(sdist_directory, name), "w:gz") as archive:
        archive.add(ROOT, stem, filter=lambda item: None if "__pycache__" in item.name else item)
    return name
