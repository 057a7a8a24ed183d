#!/bin/sh
# Reads every source of lib/ with clang-tidy, by the checks of .clang-tidy: lint.sh SOURCE_DIR BUILD_DIR
# BUILD_DIR has been configured and built. Exit 77: clang-tidy is not installed.
set -eu
command -v clang-tidy >/dev/null || { echo "not run: clang-tidy is not installed"; exit 77; }
log=$2/clang-tidy.log code=0
ls "$1"/lib/*/*.c | xargs -n 12 -P 2 clang-tidy -p "$2" --quiet --extra-arg=-Wno-unknown-warning-option \
    --extra-arg=-Wno-ignored-optimization-argument >"$log" 2>/dev/null || code=1
grep -E ' (warning|error): ' "$log" | sort -u || true
echo "$(ls "$1"/lib/*/*.c | wc -l) sources read"
exit $code
