#!/bin/sh
# Every public header, alone and all together, as C11, C17 and C++17, strictest warnings, no output. run.sh SOURCE_DIR
set -eu
include=$1/include
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
for header in "$include"/frame/*.h "$include"/frame/*/*.h; do
    name=${header#"$include"/}
    printf '#include <%s>\n#include <%s>\nint nothing(void);\nint nothing(void) { return 0; }\n' "$name" "$name" >"$work/one.c"
    cp "$work/one.c" "$work/one.cc"
    for standard in c11 c17; do
        ${CC:-cc} -std=$standard -Wall -Wextra -pedantic -Werror -Wmissing-prototypes -I"$include" -c "$work/one.c" -o "$work/one.o"
    done
    if command -v c++ >/dev/null; then
        c++ -std=c++17 -Wall -Wextra -pedantic -Werror -I"$include" -c "$work/one.cc" -o "$work/one.o"
    else
        ${CC:-cc} -x c++ -std=c++17 -fsyntax-only -Wall -Wextra -pedantic -Werror -I"$include" "$work/one.cc"
    fi
done
missing=$(for header in "$include"/frame/*.h; do
    name=$(basename "$header")
    [ "$name" = frame.h ] || [ "$name" = version.h ] || grep -q "<frame/$name>" "$include/frame/frame.h" || echo "$name"
done)
[ -z "$missing" ] || { echo "frame.h leaves out: $missing"; exit 1; }
