#!/bin/sh
# Every package, made and used the way a stranger would: the release archive with nothing but a C compiler and CMake, pip from the
# archive and from the wheel in fresh environments without a network, luarocks, and the Debian packages in a clean root.
#   run.sh BUILD_DIR SOURCE_DIR WORK_DIR [no-root]
# BUILD_DIR has been built. The last step needs root, debootstrap and a mirror; without them it says "not run".
set -eu
build=$1 source=$2 work=$3 root=${4:-}
python=/usr/bin/python3
rm -rf "$work"
mkdir -p "$work"
begin() { printf '%s\n' "-- $*"; }
fail() { printf '%s\n' "$*"; exit 1; }

begin "release archive, twice the same bytes"
archive=$($python "$source/lib/install/archive.py" "$build" "$source" "$work")
again=$($python "$source/lib/install/archive.py" "$build" "$source" "$work/again")
cmp "$archive" "$again"
stem=$(basename "$archive" .tar.gz)
tar xf "$archive" -C "$work"
tree=$work/$stem

begin "built from the archive without SWIG and without Python"
mkdir "$work/bin"
for program in cmake ninja gcc cc ld as ar ranlib sh pkg-config; do ln -s "$(command -v $program)" "$work/bin/$program"; done
env -i PATH="$work/bin" cmake -G Ninja -S "$tree" -B "$work/plain" -DCMAKE_BUILD_TYPE=Release -DFRAME_PYTHON=OFF >/dev/null
env -i PATH="$work/bin" ninja -C "$work/plain" >/dev/null
LUA_CPATH="$work/plain/lua/?.so" lua5.4 -e 'assert(require("frame").section{size="2x10"}.section_modulus_in3 == 21.390625)'

begin "pip from the source archive, then from the wheel"
use='import frame; assert frame.section(size="2x10").section_modulus_in3 == 21.390625; print("python: frame", frame.__version__)'
cd "$work"
for from in "$archive" wheel; do
    rm -rf venv
    $python -m venv venv
    if [ "$from" = wheel ]; then
        venv/bin/pip wheel -q --no-index --no-deps --no-build-isolation -w wheels "$archive"
        from=$(ls wheels/*.whl)
    fi
    env -i PATH=/usr/bin:/bin HOME="$work" venv/bin/pip install -q --no-index "$from"
    env -i PATH=/usr/bin:/bin venv/bin/python -c "$use"
    [ -e venv/lib/python3*/site-packages/frame/py.typed ] || fail "py.typed is not in the package"
done
if $python -c 'import mypy' 2>/dev/null; then
    PYTHONPATH=$(echo "$work"/venv/lib/python3*/site-packages) $python -m mypy.stubtest frame --allowlist "$source/tests/bindings/python/stubtest_allowed.txt" >stubtest.log 2>&1 ||
        { tail -n 20 stubtest.log; fail "the stubs do not tell what is there"; }
fi

begin "luarocks"
if command -v luarocks >/dev/null; then
    (cd "$tree" && luarocks --lua-version=5.4 --tree "$work/rocks" make >"$work/rocks.log" 2>&1) || { tail -n 20 "$work/rocks.log"; exit 1; }
    LUA_CPATH="$work/rocks/lib/lua/5.4/?.so" lua5.4 -e 'print("lua: frame", require("frame").version)'
else
    echo "not run: luarocks is not installed"
fi

begin "Debian packages"
cmake -G Ninja -S "$tree" -B "$work/debian" -DCMAKE_BUILD_TYPE=Release -DCMAKE_INSTALL_PREFIX=/usr -DFRAME_PYTHONS=$python >/dev/null
ninja -C "$work/debian" >/dev/null
(cd "$work/debian" && cpack -G DEB >"$work/cpack.log" 2>&1) || { tail -n 20 "$work/cpack.log"; exit 1; }
[ "$(ls "$work"/debian/*.deb | wc -l)" = 5 ] || fail "not five packages"
size=$(dpkg-deb --fsys-tarfile "$work"/debian/libframe-carpentry0_*.deb | tar -tvf - | awk '/^-.*libframe.so.0./ {print $3}')
echo "libframe.so, stripped: $size bytes"
[ "$size" -lt 3800000 ] || fail "libframe.so is over 3.8 million bytes (the goal is 3)"
if [ "$root" = no-root ] || [ "$(id -u)" != 0 ] || ! command -v debootstrap >/dev/null; then
    echo "not run: the clean root needs root and debootstrap"
    exit 0
fi
mirror=$(sed -nE 's#^URIs: *##p' /etc/apt/sources.list.d/*.sources 2>/dev/null | head -n 1)
mirror=${mirror:-$(sed -nE 's#^deb (\[[^]]*\] )?([^ ]+) .*#\2#p' /etc/apt/sources.list 2>/dev/null | head -n 1)}
clean=$work/root
debootstrap --variant=minbase --include=python3,lua5.4,gcc,libc6-dev,pkg-config bookworm "$clean" "$mirror" >"$work/debootstrap.log" 2>&1 || {
    echo "not run: debootstrap found no mirror"
    exit 0
}
cp "$work"/debian/*.deb "$source/tests/install/outside.c" "$clean/"
chroot "$clean" sh -ec '
    dpkg -i /*.deb >/dev/null
    python3 -c "import frame; print(\"clean root, python: frame\", frame.__version__)"
    lua5.4 -e "print(\"clean root, lua: frame\", require(\"frame\").version)"
    cc /outside.c $(pkg-config --cflags --libs frame-carpentry) -o /outside && /outside
    dpkg -r frame-carpentry-doc lua-frame-carpentry python3-frame-carpentry libframe-carpentry-dev libframe-carpentry0 >/dev/null'
