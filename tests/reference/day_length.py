#!/usr/bin/env python3
"""Hours from sunrise to sunset by PyEphem: writes day_length.csv beside this file.

Upper limb, refraction of 34 minutes of arc at the horizon, sea level, longitude 0, year 2025, every tenth day.
Made with PyEphem 4.1.4 (Debian 12). The tests read the table; they never run this script.
"""
import csv
import datetime
import math
import pathlib

import ephem

path = pathlib.Path(__file__).with_suffix(".csv")
with path.open("w", newline="") as out:
    rows = csv.writer(out, lineterminator="\n")
    rows.writerow(["latitude_deg", "day_of_year", "hours"])
    for latitude in (-60, -45, -30, -15, 0, 15, 30, 40, 50, 60):
        for day in range(2, 366, 10):
            place = ephem.Observer()
            place.lat, place.lon, place.elevation = math.radians(latitude), 0.0, 0.0
            place.pressure, place.horizon = 0, "-0:34"
            place.date = datetime.datetime(2025, 1, 1, 12) + datetime.timedelta(days=day - 1)
            rise, fall = place.previous_rising(ephem.Sun()), place.next_setting(ephem.Sun())
            rows.writerow([latitude, day, f"{(fall - rise) * 24.0:.4f}"])
