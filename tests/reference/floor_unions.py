#!/usr/bin/env python3
"""Areas of unions of turned rectangles on a floor, by Shapely (GEOS): writes floor_unions.csv beside this file.

A row per rectangle; rows with the same `case` belong together and repeat the area of their union within the floor
of 1.2 m by 0.6 m. Made with Shapely 1.8.5 (Debian 12). The tests read the table; they never run this script.
"""
import csv
import pathlib
import random

from shapely import affinity
from shapely.geometry import box
from shapely.ops import unary_union

FLOOR = box(0.0, 0.0, 1.2, 0.6)
rng = random.Random(20260101)
path = pathlib.Path(__file__).with_suffix(".csv")
with path.open("w", newline="") as out:
    rows = csv.writer(out, lineterminator="\n")
    rows.writerow(["case", "x_m", "y_m", "length_m", "width_m", "rotation_deg", "union_m2"])
    for case in range(40):
        parts = []
        for _ in range(1 + case % 12):
            x, y = round(rng.uniform(-0.1, 1.1), 3), round(rng.uniform(-0.1, 0.5), 3)
            length, width = round(rng.uniform(0.03, 0.4), 3), round(rng.uniform(0.03, 0.3), 3)
            turn = rng.choice([0.0, 0.0, 45.0, 90.0, round(rng.uniform(-180.0, 180.0), 1)])
            parts.append((x, y, length, width, turn))
        shapes = [affinity.rotate(box(x, y, x + l, y + w), t, origin="center") for x, y, l, w, t in parts]
        area = unary_union(shapes).intersection(FLOOR).area
        for part in parts:
            rows.writerow([case, *part, f"{area:.12f}"])
