#!/bin/sh
# Built by gcc and by clang at -O2, the library gives the same answers to the last bit: compilers.sh SOURCE_DIR WORK_DIR
set -eu
command -v clang >/dev/null || { echo "not run: clang is not installed"; exit 77; }
for compiler in gcc clang; do
    CC=$compiler cmake -G Ninja -S "$1" -B "$2/$compiler" -DCMAKE_BUILD_TYPE=None -DCMAKE_C_FLAGS=-O2 -DFRAME_PYTHON=OFF -DFRAME_LUA=OFF >/dev/null
    ninja -C "$2/$compiler" frame_fuzz >/dev/null
    "$2/$compiler/tests/fuzz/frame_fuzz" --hash 5000 >"$2/$compiler.hash"
    echo "$compiler: $(cat "$2/$compiler.hash")"
done
cmp "$2/gcc.hash" "$2/clang.hash"
