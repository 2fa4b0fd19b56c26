#!/usr/bin/env python3
"""Compares core/units.hpp with the GNU units program (Debian package "units", 2.22; its database cites NIST and CODATA).

Usage: units_parity.py <units_print>. Ends with 77 where units is not installed.
"""
import math
import shutil
import subprocess
import sys

SKIPPED = 77


def by_units(source: str, target: str) -> float:
    run = subprocess.run(
        ["units", "--terse", "--output-format", "%.17g", source, target],
        capture_output=True, text=True, check=True)
    return float(run.stdout.strip())


def main() -> int:
    if shutil.which("units") is None:
        print("skipped: the units program is not installed (Debian package units)")
        return SKIPPED
    printed = subprocess.run([sys.argv[1]], capture_output=True, text=True, check=True).stdout
    lines = printed.splitlines()
    wrong = 0
    for line in lines:
        source, target, ours, tolerance = line.split("|")
        theirs = by_units(source, target)
        if not math.isclose(float(ours), theirs, rel_tol=float(tolerance), abs_tol=0.0):
            wrong += 1
            print(f"{source} in {target}: ours {ours}, units says {theirs!r}")
    print(f"{len(lines)} conversions compared, {wrong} differ")
    return 1 if wrong or len(lines) < 20 else 0


if __name__ == "__main__":
    sys.exit(main())
