#!/bin/sh
# Installs the build given into a fresh folder and builds an outside program against it: by the CMake package and by
# pkg-config, shared and static; and makes sure that it does not build without. run.sh BUILD_DIR SOURCE_DIR
set -eu
build=$1 source=$2
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cmake --install "$build" --prefix "$work/prefix" >/dev/null
mv "$work/prefix" "$work/moved" # nothing may remember where it was installed
prefix=$work/moved
libdir=$(dirname "$(find "$prefix" -name 'libframe.so.0' | head -n 1)")
run() { LD_LIBRARY_PATH=$libdir "$@"; }

mkdir "$work/program"
cp "$source/tests/install/outside.c" "$work/program/"
cp "$source/tests/install/CMakeLists.txt.in" "$work/program/CMakeLists.txt"
if cmake -S "$work/program" -B "$work/none" >/dev/null 2>&1; then
    echo "the package was found without being installed: the test proves nothing"
    exit 1
fi
cmake -G Ninja -S "$work/program" -B "$work/cmake" -DCMAKE_PREFIX_PATH="$prefix" >/dev/null
cmake --build "$work/cmake" >/dev/null
run "$work/cmake/shared_way"
"$work/cmake/static_way"

export PKG_CONFIG_PATH="$libdir/pkgconfig"
pkg-config --validate frame-carpentry
if cc "$work/program/outside.c" -o "$work/none.out" 2>/dev/null; then
    echo "the program builds without the library: the test proves nothing"
    exit 1
fi
cc -std=c17 -Wall -Wextra -Werror "$work/program/outside.c" $(pkg-config --cflags --libs frame-carpentry) -o "$work/by_pc"
run "$work/by_pc"
cc -std=c17 "$work/program/outside.c" $(pkg-config --cflags frame-carpentry) "$libdir/libframe.a" $(pkg-config --libs-only-l --static frame-carpentry | sed 's/-lframe//') -o "$work/by_pc_static"
"$work/by_pc_static"
[ "$(pkg-config --modversion frame-carpentry)" = "$("$work/by_pc_static" | sed -E 's/libframe ([0-9.]+):.*/\1/')" ]

# Needs libc and libm at run time, nothing else; exports frame_* and nothing else.
needed=$(readelf -d "$libdir/libframe.so.0" | sed -n 's/.*NEEDED.*\[\(.*\)\]/\1/p' | grep -vE '^(lib(c|m)\.so\.6|ld-linux[-a-z0-9_]*\.so\.[0-9])$' || true)
[ -z "$needed" ] || { echo "libframe.so also needs: $needed"; exit 1; }
strangers=$(nm -D --defined-only "$libdir/libframe.so.0" | awk '{print $3}' | grep -vE '^(frame_|FRAME_0\.1)' || true)
[ -z "$strangers" ] || { echo "libframe.so also exports: $strangers"; exit 1; }
readelf -d "$libdir/libframe.so.0" | grep -q 'SONAME.*\[libframe.so.0\]'
