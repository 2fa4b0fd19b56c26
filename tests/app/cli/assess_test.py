"""assess: what it says, in which form, and how it ends."""
import csv
import json
import unittest

from program import DATE, EXAMPLE, SOURCE, ProgramTest, cents, example_plan, main, run, run_once

# The members that `assess --json` promises, in their order of nesting; a list stands for each of its elements.
PROMISED = {
    "format": None, "version": None, "plan": None, "date": None,
    "assumed": [{"where": None, "bracket": None}],
    "enclosures": [{
        "id": None, "name": None,
        "space": {"floor_m2": None, "usable_floor_m2": None, "required_floor_m2": None, "governing_rule": None,
                  "verdict": None, "outgrown_in_years": None,
                  "rules": [{"id": None, "required_m2": None, "kind": None, "source": None, "confidence": None,
                             "verdict": None}]},
        "substrate": [{"material": None, "expanded_l": None, "dry_kg": None}],
        "mass": {"total_kg": None},
        "heat": [{"case": None, "power_w": None, "loss_w": None,
                  "zones": [{"zone": None, "measure": None, "instrument": None, "temperature_c": None,
                             "target_c": {"min": None, "max": None}, "verdict": None, "direction": None}]}],
        "humidity": [{"case": None, "relative_humidity": None, "target": {"min": None, "max": None},
                      "evaporation_l_per_day": None, "misting_needed_l_per_day": None, "verdict": None,
                      "direction": None}],
        "uv": {"uvi_at_basking": None, "ferguson_zone": None, "target_uvi": {"min": None, "max": None},
               "verdict": None, "direction": None},
        "power": {"connected_w": None, "daily_kwh": None, "outlets": {"timed": None, "always_on": None}},
        "water": {"daily_l": None, "conditioner_ml_per_day": None},
        "days": [{"season": None, "complete": None, "unrest_k": None, "kwh": None,
                  "spread_k": {"basking": {"low": None, "likely": None, "high": None}, "warm": None, "cool": None},
                  "points": [{"hour": None, "lamps_on": None, "room_c": None, "basking_c": None, "warm_c": None,
                              "cool_c": None, "hottest_c": None, "coldest_c": None, "digging_c": None,
                              "relative_humidity": None, "power_w": None}]}],
        "drills": [{"case": None, "complete": None, "kwh": None, "spread_k": None, "points": [{"hour": None}],
                    "limits": [{"species": None, "direction": None, "limit_c": None, "earliest_h": None,
                                "likely_h": None, "source": None, "confidence": None}]}],
        "warm_up": {"settled_h": {"basking": None, "warm": None, "cool": None}, "points": [{"hour": None}]}}],
    "circuits": [{"id": None, "load_fraction": None, "verdict": None}],
    "stands": [{"id": None, "load_kg": None, "verdict": None}],
    "shopping": [{"item": None, "pack": None, "packs": None, "pack_price": None, "line_total": None, "for": None}],
    "costs": {"currency": None, "startup": {"low": None, "typical": None, "high": None},
              "running_per_year": {"low": None, "typical": None, "high": None}, "electricity_per_year": None,
              "horizon": [{"year": None, "typical": None, "cumulative": None}], "net_present_cost": None},
    "findings": [{"code": None, "verdict": None, "direction": None, "where": None, "text": None, "remedy": None,
                  "because": {"rule": None, "inputs": None, "source": None}}],
}
VERDICTS = {"fits", "tight", "falls short", "danger", "not known"}
MONEY_KEYS = {"pack_price", "line_total", "startup", "running_per_year", "electricity_per_year", "net_present_cost"}


class Assess(ProgramTest):
    def assessed(self, plan=None, *options):
        if plan is None and not options:
            return self.done(run_once("assess", EXAMPLE, "--json", *DATE))
        path = EXAMPLE if plan is None else self.file("plan.json", plan)
        return self.done(run("assess", path, "--json", *DATE, *options))

    def check_members(self, promised, given, where):
        for key, inner in promised.items():
            self.assertIn(key, given, where)
            if isinstance(inner, dict) and given[key] is not None:
                self.check_members(inner, given[key], f"{where}/{key}")
            if isinstance(inner, list):
                self.assertGreater(len(given[key]), 0, f"{where}/{key} shows nothing to check")
                for element in given[key]:
                    self.check_members(inner[0], element, f"{where}/{key}")

    def verdicts(self, node):
        if isinstance(node, list):
            for each in node:
                yield from self.verdicts(each)
        elif isinstance(node, dict):
            if "verdict" in node:
                yield node
            for each in node.values():
                yield from self.verdicts(each)

    def test_json_has_every_promised_member(self):
        given = json.loads(self.assessed().out)
        self.check_members(PROMISED, given, "")
        self.assertEqual(given["format"], "loamstead-assessment")
        self.assertEqual(given["date"], "2026-11-25")
        self.assertEqual([each["case"] for each in given["enclosures"][0]["heat"]][:4],
                         ["winter-day", "winter-night", "summer-day", "summer-night"])

    def test_verdicts_and_directions_are_the_promised_words(self):
        nodes = list(self.verdicts(json.loads(self.assessed().out)))
        self.assertGreater(len(nodes), 20)
        for node in nodes:
            self.assertIn(node["verdict"], VERDICTS)
            self.assertIn(node.get("direction"), {None, "above", "below"})

    def test_ranges_are_ordered(self):
        for heat in json.loads(self.assessed().out)["enclosures"][0]["heat"]:
            for zone in heat["zones"]:
                given = zone["temperature_c"]
                if given is not None:
                    self.assertLessEqual(given["low"], given["likely"])
                    self.assertLessEqual(given["likely"], given["high"])

    def test_a_day_runs_through_24_hours_and_draws_what_its_points_draw(self):
        for day in json.loads(self.assessed().out)["enclosures"][0]["days"]:
            points = day["points"]
            self.assertEqual((points[0]["hour"], points[-1]["hour"]), (0, 24))
            self.assertTrue(any(point["lamps_on"] for point in points))
            drawn = sum((b["hour"] - a["hour"]) * b["power_w"] for a, b in zip(points, points[1:])) / 1000
            self.assertAlmostEqual(drawn, day["kwh"], delta=0.05 * day["kwh"])

    def test_the_field_is_a_table_of_its_own_beside_the_report(self):
        path = self.folder / "field.csv"
        told = self.done(run("assess", EXAMPLE, "--json", *DATE, "--field", path))
        self.assertEqual(told.bytes, self.assessed().bytes)
        with open(path, newline="", encoding="utf-8") as file:
            rows = list(csv.DictReader(file))
        self.assertEqual(list(rows[0]), ["enclosure", "case", "part", "x_m", "y_m", "z_m", "surface_c",
                                         "outside_c", "ground_c", "operative_c", "beam_w_m2",
                                         "relative_humidity"])
        enclosure = json.loads(told.out)["enclosures"][0]
        known = [heat["case"] for heat in enclosure["heat"] if heat["power_w"] is not None]
        self.assertEqual(list(dict.fromkeys(row["case"] for row in rows)), known)
        shell = example_plan()["enclosures"][0]["shell"]
        self.assertEqual({row["part"] for row in rows} - {"top"}, {"floor", "front", "back", "left", "right"})
        floor = [row for row in rows if row["part"] == "floor"]
        for row in floor:
            self.assertTrue(0 < float(row["x_m"]) < shell["length_m"] and 0 < float(row["y_m"]) < shell["width_m"])
        # Cells tile the floor: as many of one case as its length and width hold steps.
        one = [row for row in floor if row["case"] == known[0]]
        self.assertEqual(len(one), len({row["x_m"] for row in one}) * len({row["y_m"] for row in one}))
        warm = next(zone for zone in enclosure["heat"][0]["zones"] if zone["zone"] == "warm")["temperature_c"]
        ground = [float(row["ground_c"]) for row in one]
        self.assertTrue(min(ground) <= warm["likely"] <= max(ground))

    def test_the_map_of_humidity_is_the_column_of_the_field_and_driest_where_it_is_warmest(self):
        path = self.folder / "field.csv"
        told = self.done(run("assess", EXAMPLE, "--json", *DATE, "--field", path))
        with open(path, newline="", encoding="utf-8") as file:
            floor = [row for row in csv.DictReader(file) if row["part"] == "floor"]
        for case in json.loads(told.out)["enclosures"][0]["humidity"]:
            rows = [row for row in floor if row["case"] == case["case"]]
            cells = [cell for row in case["map"]["likely"] for cell in row]
            self.assertEqual(len(cells), case["map"]["columns"] * case["map"]["rows"])
            for cell, row in zip(cells, rows, strict=True):
                self.assertAlmostEqual(cell, float(row["relative_humidity"]), delta=0.00051)
            warmest = max(rows, key=lambda row: float(row["ground_c"]))
            self.assertEqual(float(warmest["relative_humidity"]),
                             min(float(row["relative_humidity"]) for row in rows))
            self.assertLess(case["dew_point_c"], float(warmest["ground_c"]))

    def test_the_field_can_take_the_reports_place_but_not_stand_beside_json(self):
        path = self.folder / "field.csv"
        self.done(run("assess", EXAMPLE, *DATE, "--field", path))
        self.assertEqual(self.done(run("assess", EXAMPLE, *DATE, "--field", "-")).bytes, path.read_bytes())
        self.refused(run("assess", EXAMPLE, "--json", *DATE, "--field", "-"), 2, "standard output")
        self.assertEqual(run("assess", EXAMPLE, "--json", "--field").status, 2)

    def test_a_field_that_cant_be_written_ends_with_4_and_leaves_nothing(self):
        path = self.folder / "missing" / "field.csv"
        self.refused(run("assess", EXAMPLE, *DATE, "--field", path), 4, "field.csv", "can't be written")
        self.assertFalse(path.parent.exists())

    def test_money_is_a_literal_with_the_currencys_own_digits(self):
        given = json.loads(self.assessed().out, parse_float=lambda text: text)
        seen = []

        def look(node, is_money):
            if isinstance(node, dict):
                for key, value in node.items():
                    look(value, is_money or key in MONEY_KEYS)
            elif isinstance(node, list):
                for value in node:
                    look(value, is_money)
            elif is_money and node is not None:
                seen.append(node)
                self.assertRegex(str(node), r"^-?\d+\.\d\d$")

        look(given["shopping"], False)
        look(given["costs"], False)
        self.assertGreater(len(seen), 50)

    def test_the_start_is_the_sum_of_the_lines_as_printed(self):
        """Sum of the lines plus the reserve that always comes on top; without a reserve, the sum itself."""
        plan = example_plan()
        plan.setdefault("budget", {})["contingency"] = 0
        given = json.loads(self.assessed(plan).out, parse_float=cents)
        lines = [line["line_total"]["typical"] for line in given["shopping"] if line["line_total"]]
        self.assertEqual(sum(lines), given["costs"]["startup"]["typical"])

    def test_the_same_plan_and_date_give_the_same_bytes(self):
        self.assertEqual(self.assessed().bytes, run("assess", EXAMPLE, "--json", *DATE).bytes)
        self.assertEqual(run_once("assess", EXAMPLE, *DATE).bytes, run("assess", EXAMPLE, *DATE).bytes)

    def test_standard_input_is_read_like_a_file(self):
        result = self.done(run("assess", "-", "--json", *DATE, stdin=EXAMPLE.read_bytes()))
        self.assertEqual(result.bytes, self.assessed().bytes)

    def test_findings_have_text_and_cite_a_rule(self):
        for finding in json.loads(self.assessed().out)["findings"]:
            self.assertGreater(len(finding["text"]), 10, finding["code"])
            self.assertNotRegex(finding["text"], r"[{}\[\]]|no words yet")
            self.assertTrue(finding["because"]["rule"].startswith("rule."), finding["code"])

    def test_what_the_plan_leaves_out_is_listed_as_assumed(self):
        plan = example_plan()
        plan["site"]["room"].pop("heat_wave_c", None)
        assumed = json.loads(self.assessed(plan).out)["assumed"]
        entry = [each for each in assumed if each["where"] == "/site/room/heat_wave_c"]
        self.assertEqual(len(entry), 1)
        self.assertLess(entry[0]["bracket"]["low"], entry[0]["bracket"]["high"])

    def test_strict_ends_with_1_exactly_where_something_falls_short(self):
        findings = json.loads(self.assessed().out)["findings"]
        bad = any(each["verdict"] in ("falls short", "danger") for each in findings)
        strict = run("assess", EXAMPLE, "--json", "--strict", *DATE)
        self.assertEqual(strict.status, 1 if bad else 0)
        self.assertEqual(strict.bytes, self.assessed().bytes)
        plan = example_plan()
        plan["site"]["room"]["sun_reaches"] = "yes"  # a danger whatever else the plan holds
        self.assertEqual(run("assess", self.file("sunny.json", plan), "--strict", *DATE).status, 1)
        empty = {"format": "loamstead-plan", "version": 1, "title": "Nothing", "currency": "USD",
                 "jurisdiction": "none", "site": {"room": {}}, "enclosures": []}
        self.assertEqual(run("assess", self.file("empty.json", empty), "--strict", *DATE).status, 0)

    def test_bad_json_is_bad_input_with_its_line(self):
        path = self.file("broken.json", b'{"format": "loamstead-plan",\n  "version": 1,,\n}')
        self.refused(run("assess", path), 3, "broken.json", "not valid JSON at line 2")

    def test_every_problem_is_told_with_its_pointer(self):
        plan = example_plan()
        plan["site"]["latitude_deg"] = 91
        plan["enclosures"][0]["shell"]["length_m"] = "long"
        plan["enclosures"][0]["setpiont"] = 1
        result = run("assess", self.file("bad.json", plan))
        self.refused(result, 3, "bad.json: /site/latitude_deg: 91 is too large",
                     "bad.json: /enclosures/0/shell/length_m: ", "bad.json: /enclosures/0/setpiont: ")

    def test_a_mistyped_key_is_refused_with_the_nearest_known_one(self):
        plan = example_plan()
        plan["site"]["room"]["heatwave_c"] = plan["site"]["room"].pop("heat_wave_c", 33)
        self.refused(run("assess", self.file("bad.json", plan)), 3, "Did you mean “heat_wave_c”?")

    def test_a_newer_version_is_refused_in_a_clear_sentence(self):
        plan = example_plan()
        plan["version"] = 99
        self.refused(run("assess", self.file("newer.json", plan)), 3, "99")

    def test_an_older_version_is_read(self):
        self.done(run("assess", SOURCE / "tests/data/plan/version-0.json", "--json", *DATE))

    def test_a_huge_file_is_refused(self):
        path = self.folder / "huge.json"
        with open(path, "wb") as file:
            file.truncate(100 * 1024 * 1024)
        self.refused(run("assess", path), 4, "larger than 8 MB")

    def test_us_units_change_what_is_shown_and_nothing_else(self):
        metric = self.done(run_once("assess", EXAMPLE, *DATE)).out
        us = self.done(run("assess", EXAMPLE, *DATE, "--units", "us")).out
        self.assertIn("°C", metric)
        self.assertIn("°F", us)
        self.assertNotIn("°C", us)
        self.assertEqual(self.assessed().bytes, self.assessed(None, "--units", "us").bytes)

    def test_a_price_list_of_ones_own_is_used(self):
        prices = json.loads((SOURCE / "resources/prices/illustrative.json").read_text(encoding="utf-8"))
        prices["items"] = []
        given = json.loads(self.assessed(None, "--prices", self.file("none.json", prices)).out)
        self.assertTrue(given["shopping"])
        self.assertTrue(all(line["line_total"] is None for line in given["shopping"]))
        self.assertTrue(given["costs"]["unpriced"])


if __name__ == "__main__":
    main()
