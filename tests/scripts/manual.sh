#!/bin/sh
# The manual page and --help of the command line name the same commands and options: manual.sh <loamstead-cli> <page>
set -eu
cli=$1
page=$2
failed=0
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT

complain() {
    echo "$1" >&2
    failed=1
}

options_in() {
    grep -oE -- '--[a-z][a-z-]*' | sort -u
}

"$cli" --help >"$scratch/help"
sed -n '/^Commands:/,/^$/s/^  \([a-z]*\) .*/\1/p' "$scratch/help" >"$scratch/commands"
sed -n 's/^\.SS \([a-z]*\) .*/\1/p' "$page" >"$scratch/page-commands"
[ -s "$scratch/commands" ] || complain "--help lists no command"
diff "$scratch/commands" "$scratch/page-commands" || complain "^ commands: < in --help, > in the manual page"

while read -r command; do
    "$cli" "$command" --help >>"$scratch/help"
done <"$scratch/commands"
options_in <"$scratch/help" >"$scratch/options"
sed 's/\\-/-/g' "$page" | options_in >"$scratch/page-options"
diff "$scratch/options" "$scratch/page-options" || complain "^ options: < in --help, > in the manual page"
exit "$failed"
