#!/bin/sh
# Checks the files for the Linux desktop with the tools of those who read them: desktop_files.sh <source folder>
# desktop-file-validate (desktop-file-utils), appstreamcli (AppStream), update-mime-database (shared-mime-info), man.
# A missing tool is said and passed over; without any of them the test ends with 77 (skipped).
set -eu
linux=$1/resources/linux
ran=0
failed=0

# check <tool> <command...>
check() {
    tool=$1
    shift
    if ! command -v "$tool" >/dev/null 2>&1; then
        echo "$tool is not installed: passed over"
        return
    fi
    ran=$((ran + 1))
    if ! "$@"; then
        echo "$tool: not accepted" >&2
        failed=1
    fi
}

scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT

# The type must come out of the data base under the name that the desktop entry asks for.
mime_type_is_known() {
    mkdir "$scratch/packages"
    cp "$linux/loamstead.mime.xml" "$scratch/packages/"
    update-mime-database "$scratch" >/dev/null 2>&1
    type=$(sed -n 's/^MimeType=\(.*\);$/\1/p' "$linux"/*.desktop)
    [ -n "$type" ] && grep -q ":$type:\*\.loamstead\.json" "$scratch/globs2"
}

manual_has_no_warnings() {
    for page in "$linux"/*.1; do
        complaints=$(man --warnings -l "$page" 2>&1 >/dev/null)
        [ -z "$complaints" ] || { echo "$page: $complaints" >&2 && return 1; }
    done
}

# The desktop knows the program by its domain turned round, and the entry, the description and the icon by that name.
domain=$(sed -n 's/.*setOrganizationDomain(QStringLiteral("\([a-z]*\)\.\([a-z]*\)")).*/\2.\1/p' "$1/app/files/identity.cpp")
id=$domain.Loamstead
if [ -z "$domain" ] || ! grep -q "^Icon=$id\$" "$linux/$id.desktop" ||
    ! grep -q "<id>$id</id>" "$linux/$id.metainfo.xml"; then
    echo "the files are not named after the program's domain" >&2
    failed=1
fi

check desktop-file-validate desktop-file-validate "$linux/invalid.loamstead.Loamstead.desktop"
check appstreamcli appstreamcli validate --no-net "$linux/invalid.loamstead.Loamstead.metainfo.xml"
check update-mime-database mime_type_is_known
check man manual_has_no_warnings
[ "$ran" -gt 0 ] || exit 77
exit "$failed"
