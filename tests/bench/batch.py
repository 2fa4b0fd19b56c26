"""A club's day: batch.py PROGRAM SOURCE_FOLDER [ADOPTERS [ROOMS]]. Makes a list of invented adopters, one row in twenty
broken, with at most ROOMS different climates among them (as whole degrees of a living room give), and tells how long
the sheets take and how much memory at the most. A time measured on a busy machine proves nothing."""
import pathlib
import random
import resource
import subprocess
import sys
import tempfile
import time

PROGRAM, SOURCE = sys.argv[1], pathlib.Path(sys.argv[2])
ADOPTERS = int(sys.argv[3]) if len(sys.argv) > 3 else 1000
ROOMS = int(sys.argv[4]) if len(sys.argv) > 4 else 60


def rows():
    chance = random.Random(1)  # always the same list
    rooms = [(day, night) for day in range(17, 25) for night in range(14, day)]
    chance.shuffle(rooms)
    rooms = rooms[:ROOMS]
    for number in range(1, ADOPTERS + 1):
        day, night = rooms[chance.randrange(len(rooms))]
        owned = chance.choice(["", "", "thermostat-on-off", "scale; disinfectant", "bark: 20"])
        if number % 20 == 0:
            day = chance.choice(["warm", "99999999", "=1+1", "nan"])
        yield f"Adopter {number},{number},{day},{night},{owned}"


def main():
    with tempfile.TemporaryDirectory() as folder:
        folder = pathlib.Path(folder)
        adopters = folder / "adopters.csv"
        adopters.write_text("\n".join(["name,number,winter_day_c,winter_night_c,owned", *rows()]) + "\n")
        begin = time.monotonic()
        done = subprocess.run([PROGRAM, "batch", SOURCE / "examples" / "club-template.loamstead.json", adopters, "--out",
                               folder / "out", "--date", "2026-11-25", *sys.argv[5:]], capture_output=True, text=True)
        seconds = time.monotonic() - begin
        used = resource.getrusage(resource.RUSAGE_CHILDREN)
        made = len(list((folder / "out").glob("*.pdf")))
        print(done.stdout.strip(), done.stderr.strip().splitlines()[-1])
        print(f"{ADOPTERS} adopters, at most {ROOMS} climates: {made} made in {seconds:.0f} s, "
              f"{used.ru_utime + used.ru_stime:.0f} s of processor time, at most {used.ru_maxrss / 1024:.0f} MB")


main()
