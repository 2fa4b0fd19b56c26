#!/bin/sh
# Shows what the program does on an example: builds the two programs, assesses the plan, writes its shopping list, sheets
# and a picture of the window to build/demo, and opens the window where there is a display. Complete on a fresh
# Debian-like machine: installs what is missing (as root or with sudo), asks nothing, needs no display.
set -eu
cd "$(dirname "$0")/.."
# shellcheck source=cmake/packages.sh
. cmake/packages.sh
# shellcheck disable=SC2086,SC2154 # a list of names, set in packages.sh
install_missing $packages_run

build=build/dev
plan=examples/first-setup.loamstead.json
out=build/demo
program=$build/app/desk/loamstead
cli=$build/app/cli/loamstead-cli

heading() {
    printf '\n== %s\n' "$1"
}

compiler_cache
heading "Building (the first time takes some minutes)"
cmake --preset dev
cmake --build --preset dev --target loamstead loamstead-cli
mkdir -p "$out"

# Nothing below needs a display; Qt wants a private folder for what it keeps while running.
runtime=$(mktemp -d)
trap 'rm -rf "$runtime"' EXIT
chmod 700 "$runtime"
offscreen() {
    XDG_RUNTIME_DIR="$runtime" QT_QPA_PLATFORM=offscreen "$@"
}

heading "loamstead-cli assess $plan"
offscreen "$cli" assess "$plan" >"$out/assessment.txt" # no pipe: it would hide a failure
cat "$out/assessment.txt"

heading "loamstead-cli shop $plan"
offscreen "$cli" shop "$plan" >"$out/shopping.txt"
cat "$out/shopping.txt"
offscreen "$cli" shop "$plan" --csv >"$out/shopping.csv"
offscreen "$cli" assess "$plan" --json >"$out/assessment.json"

heading "Printing the sheets"
for paper in a4 letter; do
    offscreen "$cli" sheet "$plan" --out "$out/sheets-$paper.pdf" --paper "$paper"
done

# The program that takes pictures belongs to the tests; a build without them does not have it.
if cmake --build --preset dev --target help | grep -q '^desk_pictures:'; then
    heading "Taking a picture of the window"
    cmake --build --preset dev --target desk_pictures
    pictures=$(find "$build/tests" -type f -name desk_pictures | head -n 1)
    for theme in light dark; do
        name=window-$theme
        [ "$theme" = dark ] || name=window
        offscreen "$pictures" --plan "$plan" --out "$out/$name.png" --size 1280x800 --theme "$theme"
    done
fi

heading "What was made"
ls -l "$out"
echo
echo "The window:       $program $plan"
echo "The command line: $cli --help"
echo "All checks:       sh cmake/check.sh"
if [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
    heading "Opening the window; the demo ends when it is closed"
    "$program" "$plan"
fi
