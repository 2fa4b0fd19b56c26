#!/bin/sh
# Checks what every committed text file must keep: tree.sh <source folder>
#   - no path of somebody's machine and no mark of unfinished work;
#   - sizes: no source file over 500 lines, nine in ten under 250, the median under 100;
#   - text ends with a line feed and has no carriage returns;
#   - shell scripts parse;
#   - the documents name files that are there.
# Ends with 77 (skipped) where the folder is no git checkout: then nobody can say what is committed.
set -eu
cd "$1"
if ! git rev-parse --is-inside-work-tree >/dev/null 2>&1; then
    echo "not a git checkout: skipped"
    exit 77
fi
failed=0
list=$(mktemp)
trap 'rm -f "$list"' EXIT

complain() {
    echo "$1" >&2
    failed=1
}

# Looks for a pattern in the tracked text files, this one excepted, which has to spell what it looks for. The folder of
# nobody in particular serves tests as an example.
refuse() {
    if git grep -nIE -e "$1" --and --not -e '/home/someone/' -- . ':!LICENSE' ':!tests/scripts/tree.sh' >&2; then
        complain "^ $2"
    fi
}

# A path from the root is meant, not a member of a JSON Pointer or a part of an address.
refuse '(^|[^A-Za-z0-9_.>})*-])/(work|tmp|home|root)(/|$|[^A-Za-z0-9_-])' 'a path of a machine'
# The three letters alone are also a code of ISO 4217, so they count in comments only.
refuse '\b(TO''DO|FIX''ME|TB''D)\b|(//|#) *XX''X\b' 'a mark of unfinished work'
refuse '(pypi|npmjs|crates|rubygems)\.(org|com|io)|index-url' 'the address of a package registry'

git ls-files -- '*.cpp' '*.hpp' '*.cmake' '*.sh' | while IFS= read -r file; do
    [ ! -f "$file" ] || echo "$(wc -l <"$file") $file"
done | sort -n >"$list"
count=$(wc -l <"$list")
median=$(sed -n "$(((count + 1) / 2))s/ .*//p" "$list")
nine_in_ten=$(sed -n "$((count * 9 / 10))s/ .*//p" "$list")
echo "$count source files: median $median lines, nine in ten up to $nine_in_ten, longest $(tail -n 1 "$list")"
[ "$count" -ge 100 ] || complain "too few source files were found to be true"
[ "$median" -lt 100 ] || complain "the median source file has $median lines; under 100 is the habit"
[ "$nine_in_ten" -lt 250 ] || complain "one file in ten has more than $nine_in_ten lines; under 250 is the habit"
while read -r lines file; do
    [ "$lines" -le 500 ] || complain "$file: $lines lines; 500 is the most"
done <"$list"

if git grep -lI "$(printf '\r')" -- . >&2; then
    complain "^ carriage returns"
fi
git grep -Il '' -- . >"$list"
while IFS= read -r file; do
    [ ! -s "$file" ] || [ -z "$(tail -c 1 "$file")" ] || complain "$file: the last line has no end"
done <"$list"

git ls-files -- '*.sh' >"$list"
while IFS= read -r file; do
    [ ! -f "$file" ] || sh -n "$file" || complain "$file: does not parse"
done <"$list"

# Documents name files that are there. A name with a wildcard or a placeholder is passed over.
for document in DEVELOPERS.md README.md tests/README.md; do
    [ -f "$document" ] || continue
    # shellcheck disable=SC2016 # backquotes as they stand in the document
    grep -oE '`(core|app|cmake|resources|examples|tests)/[A-Za-z0-9_./-]+`' "$document" | tr -d '`' | sort -u >"$list"
    while IFS= read -r name; do
        [ -e "$name" ] || complain "$document: $name is not there"
    done <"$list"
done
# tests/README.md: a heading names the folder, the first column the files.
awk '/^## tests/ { folder = $2 } /^\| `/ { split($0, cells, "|"); print folder " " cells[2] }' tests/README.md |
    tr -d '`,' | while read -r folder names; do
    for name in $names; do
        [ -f "$folder/$name" ] || echo "$folder/$name"
    done
done >"$list"
[ ! -s "$list" ] || complain "tests/README.md names what is not there: $(tr '\n' ' ' <"$list")"
exit "$failed"
