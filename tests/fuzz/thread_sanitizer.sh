#!/bin/sh
# Threads that call everything at once, under the thread sanitizer: thread_sanitizer.sh SOURCE_DIR WORK_DIR
set -eu
cmake -G Ninja -S "$1" -B "$2" -DCMAKE_BUILD_TYPE=None -DCMAKE_C_FLAGS="-O1 -g -fsanitize=thread" -DFRAME_PYTHON=OFF -DFRAME_LUA=OFF >/dev/null
ninja -C "$2" frame_threads >/dev/null
TSAN_OPTIONS=halt_on_error=1 "$2/tests/fuzz/frame_threads" 200
