# Shared by examples/run, tests/run and .ci/run: named steps, quiet when all is well, timed, and the first that fails is
# named with the end of what it said. Debian 12.
set -eu
cd "${top:-$(dirname "$0")/..}"
root=$(pwd)
logs=$root/build/logs
mkdir -p "$logs"
export DEBIAN_FRONTEND=noninteractive

# step NAME COMMAND...: runs it, its output kept in build/logs.
step() {
    name=$1
    shift
    log=$logs/$(printf %s "$name" | tr ' /' '--').log
    begun=$(date +%s)
    if "$@" >"$log" 2>&1; then
        printf '%-42s %4s s\n' "$name" "$(($(date +%s) - begun))"
    else
        code=$?
        printf '%-42s FAILED after %s s (exit %s)\n' "$name" "$(($(date +%s) - begun))" "$code"
        echo "--- the end of what it said; all of it is in ${log#"$root"/}"
        grep -nE 'FAILED|error:|Error|Failed|\*\*\*' "$log" | tail -n 15 || true
        echo "---"
        tail -n 30 "$log"
        exit 1
    fi
}

# install PACKAGE...: those that are missing, with apt-get, as root or through sudo.
install_missing() {
    missing=
    for package in "$@"; do
        [ "$(dpkg-query -W -f '${db:Status-Status}' "$package" 2>/dev/null)" = installed ] || missing="$missing $package"
    done
    [ -n "$missing" ] || return 0
    as=
    if [ "$(id -u)" != 0 ]; then
        command -v sudo >/dev/null || { echo "missing:$missing; install them as root: apt-get install$missing"; return 1; }
        as=sudo
    fi
    $as apt-get update -q && $as apt-get install -y -q --no-install-recommends $missing
}

build_packages='gcc libc6-dev cmake ninja-build pkg-config check python3 python3-dev swig lua5.4 liblua5.4-dev'
test_packages='python3-numpy python3-jsonschema python3-ezdxf mypy libxml2-utils locales g++'
long_packages='clang-tidy python3-distributed python3-sphinx python3-myst-parser furo luarocks python3-venv debootstrap file gcc-mingw-w64-x86-64 wine64 valgrind chromium librsvg2-bin poppler-utils clang libclang-rt-14-dev python3-scipy'

configure() {
    dir=$1
    shift
    CC=${CC:-gcc} cmake -G Ninja -S . -B "$dir" "$@"
}
