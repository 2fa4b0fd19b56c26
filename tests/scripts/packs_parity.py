#!/usr/bin/env python3
"""Compares the choice of packs with GLPK's integer solver on random instances, for every aim.

GLPK is run by its program glpsol (Debian package "glpk-utils"). It solves min c x with a x >= amount, x whole and not
negative, where c is the price, one a pack, or the yield. Its optimum is compared, not its x: several x may be as good.
The instances come from a fixed seed.

Usage: packs_parity.py <packs_print>. Ends with 77 where glpsol is not installed.
"""
import pathlib
import random
import shutil
import subprocess
import sys
import tempfile

SKIPPED = 77
INSTANCES = 600
AIMS = ("cheapest", "fewest packs", "least left over")
TENTH_L = 10  # yields and amounts are whole tenths of a litre, so that glpsol sees whole numbers


def instance(dice):
    """The amount in tenths of a litre, and packs as (yield in tenths, price in minor units)."""
    largest = dice.choice((24, 120, 700))
    packs = [(dice.randint(largest // 8 + 1, largest), dice.randint(50, 6000)) for _ in range(dice.randint(1, 6))]
    if dice.random() < 0.3:  # as shops do it: a little less by the litre for the larger pack
        packs = [(size, round(size * 35 * (1.1 - 0.3 * size / largest))) for size, _ in packs]
    return dice.randint(1, 12 * largest), packs


def as_line(amount, packs):
    words = [str(amount / TENTH_L), str(len(packs))]
    for size, price in packs:
        words += [str(size / TENTH_L), str(price)]
    return " ".join(words)


def by_glpk(folder, amount, packs, weights):
    """The least sum of the weights, as glpsol proves it."""
    def terms(factors):
        return " + ".join(f"{factor} x{i}" for i, factor in enumerate(factors))

    model, solution = folder / "model.lp", folder / "solution.txt"
    model.write_text(f"Minimize\n obj: {terms(weights)}\nSubject To\n cover: {terms(size for size, _ in packs)} "
                     f">= {amount}\nGenerals\n {' '.join(f'x{i}' for i in range(len(packs)))}\nEnd\n")
    # Gomory's and rounding cuts: instances with almost equal rates would take branching alone too long.
    run = subprocess.run(["glpsol", "--lp", model, "--gomory", "--mir", "--tmlim", "60", "--write", solution],
                         capture_output=True, text=True, check=False)
    result = [line.split() for line in solution.read_text().splitlines() if line.startswith("s mip")]
    if run.returncode != 0 or not result or result[0][4] != "o":
        raise RuntimeError(f"glpsol has not proved an optimum:\n{model.read_text()}\n{run.stdout}")
    return round(float(result[0][5]))


def ours(program, instances):
    """For each instance and aim (price, packs, left over in tenths of a litre); None where nothing was chosen."""
    text = "".join(as_line(*each) + "\n" for each in instances)
    run = subprocess.run([program], input=text, capture_output=True, text=True, check=True)

    def choice(words):
        if words == "no choice":
            return None
        price, packs, left_over = words.split()
        return int(price), int(packs), round(float(left_over) * TENTH_L)

    return [[choice(words) for words in line.split(" | ")] for line in run.stdout.splitlines()]


def main():
    if shutil.which("glpsol") is None:
        print("skipped: glpsol is not installed (Debian package glpk-utils)")
        return SKIPPED
    dice = random.Random(20261127)
    instances = [instance(dice) for _ in range(INSTANCES)]
    chosen = ours(sys.argv[1], instances)
    wrong = abs(len(chosen) - INSTANCES)
    with tempfile.TemporaryDirectory() as name:
        for (amount, packs), choices in zip(instances, chosen):
            weights = ([price for _, price in packs], [1] * len(packs), [size for size, _ in packs])
            for aim, each in enumerate(choices):
                best = by_glpk(pathlib.Path(name), amount, packs, weights[aim])
                best -= amount if aim == 2 else 0  # the least yield, less what is needed
                if each is None or each[aim] != best:
                    wrong += 1
                    print(f"{AIMS[aim]}: ours {each}, glpsol {best}: {as_line(amount, packs)}")
    print(f"{INSTANCES} instances by {len(AIMS)} aims compared, {wrong} differ")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
