#!/usr/bin/env python3
"""Hours from sunrise to sunset near and beyond the polar circles by PyEphem: writes polar_day_length.csv beside this file.

Upper limb, refraction of 34 minutes of arc at the horizon, sea level, longitude 0, year 2025, every tenth day. A day on
which the sun neither rises nor sets within twelve hours of noon has 24 or 0 hours; one on which only one of both happens
within them is left out, as it is no whole day. Made with PyEphem 4.1.4 (Debian 12). The tests read the table; they never
run this script.
"""
import csv
import datetime
import math
import pathlib

import ephem


def hours(latitude, day):
    place = ephem.Observer()
    place.lat, place.lon, place.elevation = math.radians(latitude), 0.0, 0.0
    place.pressure, place.horizon = 0, "-0:34"
    noon = ephem.Date(datetime.datetime(2025, 1, 1, 12) + datetime.timedelta(days=day - 1))
    place.date = noon
    try:
        rise = place.previous_rising(ephem.Sun())
        fall = place.next_setting(ephem.Sun())
    except ephem.AlwaysUpError:
        return 24.0
    except ephem.NeverUpError:
        return 0.0
    if noon - rise > 0.5 or fall - noon > 0.5:
        return None
    return (fall - rise) * 24.0


path = pathlib.Path(__file__).with_suffix(".csv")
with path.open("w", newline="") as out:
    rows = csv.writer(out, lineterminator="\n")
    rows.writerow(["latitude_deg", "day_of_year", "hours"])
    for latitude in (-78, -70, 66, 70, 78):
        for day in range(2, 366, 10):
            length = hours(latitude, day)
            if length is not None:
                rows.writerow([latitude, day, f"{length:.4f}"])
