#!/bin/sh
# Every line that the README quotes of the program is said by the program.
# Usage: readme.sh <loamstead-cli> <source folder>
set -eu
cli=$1
cd "$2"
said=$(mktemp)
quoted=$(mktemp)
trap 'rm -f "$said" "$quoted"' EXIT
# shellcheck disable=SC2046 # the words of the command, as the README gives them
"$cli" $(sed -n 's/^`loamstead-cli \(assess .*\)`, in part:$/\1/p' README.md) >"$said"
sed -n '/^```text$/,/^```$/p' README.md | grep -v '^```' >"$quoted"
[ -s "$quoted" ] || { echo "README.md quotes nothing of the program"; exit 1; }
missing=0
while IFS= read -r line; do
    [ -z "$line" ] || [ "$line" = "…" ] && continue
    if ! grep -qxF -- "$line" "$said"; then
        echo "README.md quotes what the program does not say: $line"
        missing=1
    fi
done <"$quoted"
exit $missing
