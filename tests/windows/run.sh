#!/bin/sh
# Cross-builds the library for Windows with mingw-w64 and runs the unit tests under wine.
#   run.sh SOURCE_DIR WORK_DIR
# Left out, and said so: tests that need what Windows or wine has not (POSIX locales, folders and clocks). Exit 77: no wine or mingw.
set -eu
source=$1 work=$2
cross=x86_64-w64-mingw32-gcc
wine=$(command -v wine64 || echo /usr/lib/wine/wine64)
command -v $cross >/dev/null && [ -x "$wine" ] || { echo "not run: gcc-mingw-w64-x86-64 and wine64 are needed"; exit 77; }
export WINEDEBUG=-all WINEPREFIX="$work/wine"
cmake -G Ninja -S "$source" -B "$work" -DCMAKE_TOOLCHAIN_FILE="$source/lib/install/windows.cmake" -DCMAKE_BUILD_TYPE=Release \
    -DFRAME_PYTHON=OFF -DFRAME_LUA=OFF -DBUILD_TESTING=OFF >/dev/null
ninja -C "$work" >/dev/null
mkdir -p "$work/tests"
passed=0 failed=
for test in "$source"/tests/*/test_*.c; do
    name=$(basename "$(dirname "$test")").$(basename "$test" .c)
    if grep -qE 'scratch.h|setlocale|newlocale|<unistd.h>|<sys/|<pthread.h>|fmemopen|open_memstream|clock_gettime' "$test"; then
        echo "left out: $name (POSIX: locales, folders or clocks)"
        continue
    fi
    $cross -std=gnu17 -O1 -w -D__USE_MINGW_ANSI_STDIO=1 -ffp-contract=off -DFRAME_TESTS_DIR="\"$source/tests\"" \
        -I"$source/tests/windows/check" -I"$source/include" -I"$source/lib" -I"$work/made" "$test" "$work/lib/libframe.a" -lm -static -lpthread \
        -o "$work/tests/$name.exe" || { failed="$failed $name(build)"; continue; }
    if (cd "$work" && "$wine" "tests/$name.exe") >"$work/tests/$name.log" 2>&1; then
        passed=$((passed + 1))
    else
        failed="$failed $name"
        echo "failed: $name"
        tail -n 5 "$work/tests/$name.log"
    fi
done
echo "under wine: $passed test programs passed, failed:${failed:- none}"
[ -z "$failed" ]
