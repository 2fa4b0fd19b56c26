#!/bin/sh
# Builds everything with warnings as errors and passes all tests. Complete on a fresh Debian-like machine:
# installs what is missing (as root or with sudo) and needs no display.
set -eu
cd "$(dirname "$0")/.."
. cmake/packages.sh
# shellcheck disable=SC2086 # lists of names
install_missing $packages_run $packages_check

compiler_cache
cmake --preset dev
cmake --build --preset dev
# Tests of the window draw offscreen; the runtime folder must be private.
runtime=$(mktemp -d)
trap 'rm -rf "$runtime"' EXIT
chmod 700 "$runtime"
XDG_RUNTIME_DIR="$runtime" QT_QPA_PLATFORM=offscreen ctest --preset dev -j "$(nproc)"
cat <<'END'
All quick tests passed. Not run here, because they take long or measure:
  cmake --preset asan && cmake --build --preset asan && ctest --preset asan    (sanitizers; likewise tsan)
  build/dev/tests/bench/*                                                      (speed)
END
