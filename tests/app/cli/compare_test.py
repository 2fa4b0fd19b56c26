"""compare: two plans side by side."""
import fractions
import json
import unittest

from program import DATE, EXAMPLE, SOURCE, ProgramTest, cents, example_plan, main, run, run_once

UPGRADE = SOURCE / "examples" / "upgrade.loamstead.json"


class Compare(ProgramTest):
    def compared(self, first, second):
        return json.loads(self.done(run_once("compare", first, second, "--json", *DATE)).out, parse_float=cents)

    def assessed(self, plan):
        return json.loads(self.done(run_once("assess", plan, "--json", *DATE)).out, parse_float=cents)

    def test_both_sides_are_what_assess_says_of_them(self):
        compared = self.compared(EXAMPLE, UPGRADE)
        for side, plan in enumerate((EXAMPLE, UPGRADE)):
            alone = self.assessed(plan)
            self.assertEqual(compared["plans"][side], alone["plan"])
            for sum_ in ("startup", "running_per_year", "electricity_per_year", "net_present_cost"):
                self.assertEqual(compared["costs"][sum_][side], alone["costs"][sum_])
            box, same = compared["enclosures"][0], alone["enclosures"][0]
            self.assertEqual(box["ids"][side], same["id"])
            self.assertEqual(box["figures"]["floor_m2"][side]["likely"], same["space"]["floor_m2"])
            self.assertEqual(box["figures"]["connected_w"][side]["likely"], same["power"]["connected_w"])
            zones = [(case["case"], zone["zone"], zone["temperature_c"], zone["verdict"])
                     for case in same["heat"] for zone in case["zones"]]
            self.assertEqual(zones, [(zone["case"], zone["zone"], zone["temperature_c"][side], zone["verdict"][side])
                                     for zone in box["zones"] if zone["verdict"][side]])

    def test_a_box_that_only_one_plan_has_stands_alone(self):
        ids = [box["ids"] for box in self.compared(EXAMPLE, UPGRADE)["enclosures"]]
        self.assertEqual(ids, [["e1", "e1"], [None, "e2"]])

    def test_the_purchases_that_differ_make_the_whole_difference_of_the_orders(self):
        compared = self.compared(EXAMPLE, UPGRADE)
        sums = [sum(line["line_total"][side]["typical"] for line in compared["shopping"] if line["line_total"][side])
                for side in (0, 1)]
        orders = [sum(line["line_total"]["typical"] for line in self.assessed(plan)["shopping"] if line["line_total"])
                  for plan in (EXAMPLE, UPGRADE)]
        self.assertEqual(sums[0] - sums[1], orders[0] - orders[1])

    def test_a_plan_beside_itself_differs_in_nothing(self):
        compared = self.compared(EXAMPLE, EXAMPLE)
        self.assertEqual(compared["shopping"], [])
        self.assertEqual(compared["costs"]["payback"], "at-once")

    def test_the_pay_back_is_that_worked_out_by_hand(self):
        # Simple pay-back: what it costs more to start by what it costs less to run, as the JSON itself states both.
        # The first has a box already and burns its lamps longer, so that it costs less to start and more to run.
        plan = example_plan()
        plan["enclosures"][0]["photoperiod"] = {"on": "05:00", "off": "22:00"}
        dearest = max((line for line in self.assessed(EXAMPLE)["shopping"] if line["packs"] == 1),
                      key=lambda line: line["line_total"]["typical"])
        plan.setdefault("owned", []).append({"id": "mine", "item": dearest["item"], "quantity": 1})
        compared = self.compared(self.file("burns.json", plan), EXAMPLE)["costs"]
        start, yearly = ([side["typical"] for side in compared[sum_]] for sum_ in ("startup", "running_per_year"))
        self.assertEqual(compared["payback"], "after")
        by_hand = float((start[1] - start[0]) / (yearly[0] - yearly[1]))
        self.assertAlmostEqual(float(compared["payback_years"] / 100), by_hand, delta=by_hand * 5e-6)  # six digits

    def test_without_a_tariff_the_pay_back_is_not_known(self):
        plan = example_plan()
        plan["site"].pop("electricity_price_per_kwh")
        costs = self.compared(EXAMPLE, self.file("dark.json", plan))["costs"]
        self.assertEqual((costs["payback"], costs["payback_years"]), ("not-known", None))

    def test_what_is_owned_is_set_off_on_its_side(self):
        plan = example_plan()
        bought = next(line for line in self.assessed(EXAMPLE)["shopping"] if line["packs"] == 1)
        plan.setdefault("owned", []).append({"id": "mine", "item": bought["item"], "quantity": 1})
        compared = self.compared(EXAMPLE, self.file("owned.json", plan))
        self.assertEqual([(line["item"], line["packs"]) for line in compared["shopping"]], [(bought["item"], [1, 0])])
        start = [side["typical"] for side in compared["costs"]["startup"]]
        # With its share of the contingency, which is one line, rounded to a cent on either side.
        saved = bought["line_total"]["typical"] * (1 + fractions.Fraction(str(plan["budget"]["contingency"])))
        self.assertLessEqual(abs(start[0] - start[1] - saved), 1)

    def test_text_keeps_to_the_terminal_and_names_both(self):
        text = self.done(run_once("compare", EXAMPLE, UPGRADE, *DATE)).out
        self.assertTrue(all(len(line) <= 80 for line in text.splitlines()))
        for phrase in ("First:", "Second:", "Turtle table | Turtle, glass box", "(none) | Gecko", "invented"):
            self.assertIn(phrase, text)

    def test_one_plan_is_too_few_and_both_bad_ones_are_named(self):
        self.refused(run("compare", EXAMPLE), 2, "PLAN")
        bad, worse = self.file("bad.json", b"{}"), self.file("worse.json", b"[]")
        self.refused(run("compare", bad, worse), 3, "bad.json: ", "worse.json: ")


if __name__ == "__main__":
    main()
