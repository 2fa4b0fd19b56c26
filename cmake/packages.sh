# Installs what a fresh Debian-like machine lacks. Sourced by demo.sh and check.sh; says what it does.
# `packages_run` is needed to build and run, `packages_check` besides for the outside checks.
packages_run="g++ cmake ninja-build ccache qt6-base-dev libqt6svg6-dev libqt6svg6 libqt6charts6-dev libqt6opengl6-dev \
libxkbcommon-dev qt6-tools-dev qt6-tools-dev-tools qt6-l10n-tools qt6-translations-l10n catch2 nlohmann-json3-dev \
libeigen3-dev fonts-dejavu-core poppler-utils"
packages_check="calculix-ccx python3 python3-jsonschema python3-icalendar python3-dateutil python3-gi gir1.2-ical-3.0 units glpk-utils desktop-file-utils appstream shared-mime-info man-db"

# Debian renamed some development packages between releases: take the first of each pair that exists.
package_name() {
    case "$1" in
    libqt6svg6-dev) set -- libqt6svg6-dev qt6-svg-dev ;;
    libqt6charts6-dev) set -- libqt6charts6-dev qt6-charts-dev ;;
    libqt6opengl6-dev) set -- libqt6opengl6-dev qt6-base-dev ;;
    esac
    for candidate in "$@"; do
        # A name that others only provide is "shown" without a word, and never becomes installed itself.
        if [ -n "$(apt-cache show "$candidate" 2>/dev/null)" ]; then
            echo "$candidate"
            return
        fi
    done
    echo "$1"
}

installed() {
    dpkg-query -W -f='${Status}' "$1" 2>/dev/null | grep -q 'install ok installed'
}

install_missing() {
    if ! command -v apt-get >/dev/null 2>&1; then
        echo "This is not a Debian-like machine: please install the equivalents of: $*" >&2
        return 0
    fi
    missing=""
    for package in "$@"; do
        installed "$package" || installed "$(package_name "$package")" || missing="$missing $package"
    done
    [ -z "$missing" ] && return 0
    as_root=""
    if [ "$(id -u)" -ne 0 ]; then
        if ! command -v sudo >/dev/null 2>&1; then
            echo "These packages are missing and there is no sudo to install them:$missing" >&2
            return 1
        fi
        as_root="sudo"
    fi
    $as_root apt-get update -qq || return 1
    wanted=""
    for package in $missing; do
        name=$(package_name "$package")
        installed "$name" || wanted="$wanted $name"
    done
    [ -z "$wanted" ] && return 0
    echo "Installing:$wanted"
    # shellcheck disable=SC2086 # a list of names
    $as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends $wanted >/dev/null || return 1
}

# Lets the compiler cache recognise the same sources in another folder, and files that use precompiled headers.
compiler_cache() {
    CCACHE_BASEDIR=$PWD
    CCACHE_NOHASHDIR=1
    CCACHE_SLOPPINESS=pch_defines,time_macros
    export CCACHE_BASEDIR CCACHE_NOHASHDIR CCACHE_SLOPPINESS
}
