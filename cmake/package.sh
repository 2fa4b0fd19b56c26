#!/bin/sh
# Builds the Debian package into build/release, and has lintian look it over.
set -eu
cd "$(dirname "$0")/.."
. cmake/packages.sh
# shellcheck disable=SC2086 # lists of names
install_missing $packages_run dpkg-dev fakeroot lintian
compiler_cache
cmake --preset release
cmake --build --preset release
(cd build/release && cpack)
lintian --fail-on error,warning build/release/*.deb
echo "The package: $(ls build/release/*.deb)"
