#!/bin/sh
# libFuzzer over every public function, with the address and undefined behaviour sanitizers: run.sh SECONDS [FUNCTION]
# What it finds is kept in WORK (build/fuzz); tests/fuzz/saved/ holds inputs that reach much of the library, replayed as a test.
set -eu
cd "$(dirname "$0")/../.."
work=build/fuzz
CC=clang cmake -G Ninja -S . -B "$work" -DCMAKE_BUILD_TYPE=None -DFRAME_PYTHON=OFF -DFRAME_LUA=OFF \
    -DCMAKE_C_FLAGS="-O1 -g -fsanitize=fuzzer-no-link,address,undefined -fno-sanitize-recover=all" >/dev/null
ninja -C "$work" frame_feed >/dev/null
clang -O1 -g -fsanitize=fuzzer,address,undefined -Iinclude -Ilib -Itests/fuzz -I"$work/made" tests/fuzz/fuzz.c \
    "$work/tests/fuzz/libframe_feed.a" "$work/lib/libframe.a" -lm -o "$work/frame_libfuzzer"
mkdir -p "$work/found"
FRAME_FUZZ_ONLY=${2:-} && [ -n "$FRAME_FUZZ_ONLY" ] && export FRAME_FUZZ_ONLY || unset FRAME_FUZZ_ONLY
cd "$work" && ./frame_libfuzzer -max_total_time="${1:-60}" -max_len=1500 -timeout=20 -len_control=0 -rss_limit_mb=2048 -print_final_stats=1 found ../../tests/fuzz/saved
