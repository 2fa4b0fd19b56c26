"""shop: one order over one or several plans."""
import csv
import io
import json
import unittest

from program import DATE, EXAMPLE, SOURCE, ProgramTest, cents, example_plan, main, run


class Shop(ProgramTest):
    def order(self, *plans):
        return json.loads(self.done(run("shop", *plans, "--json", *DATE)).out, parse_float=cents)

    def test_the_order_of_one_plan_is_the_shopping_of_its_assessment(self):
        assessed = json.loads(self.done(run("assess", EXAMPLE, "--json", *DATE)).out, parse_float=cents)
        bought = lambda lines: [(each["need"], each["item"], each["packs"], each["line_total"]) for each in lines]
        self.assertEqual(bought(self.order(EXAMPLE)["shopping"]), bought(assessed["shopping"]))

    def test_the_total_is_the_sum_of_the_lines(self):
        order = self.order(EXAMPLE)
        for level in ("low", "typical", "high"):
            self.assertEqual(order["total"][level],
                             sum(line["line_total"][level] for line in order["shopping"] if line["line_total"]))

    def test_one_order_over_two_plans_costs_at_most_what_two_orders_do(self):
        one = self.order(EXAMPLE)["total"]["typical"]
        both = self.order(EXAMPLE, self.file("copy.json", example_plan()))
        self.assertLessEqual(both["total"]["typical"], 2 * one)
        self.assertGreater(both["total"]["typical"], one)

    def test_enclosures_of_two_plans_are_told_apart(self):
        order = self.order(EXAMPLE, self.file("copy.json", example_plan()))
        named = {name for line in order["shopping"] for name in line["for"]}
        self.assertEqual(len(named), 2 * len(example_plan()["enclosures"]))

    def test_of_several_lists_each_thing_is_bought_where_the_whole_costs_least(self):
        def written(name, list_):
            return self.file(name, json.dumps(list_, ensure_ascii=False).encode("utf-8"))

        def priced(channel, factor):
            copy = json.loads((SOURCE / "resources/prices/illustrative.json").read_text(encoding="utf-8"))
            copy["channel"] = channel
            for item in copy["items"]:
                for pack in item["packs"]:
                    for level in ("low", "typical", "high"):
                        pack[level] = round(pack[level] * factor(item))
            return copy

        dear = written("dear.json", priced("shop", lambda item: 1))
        club = priced("club", lambda item: 0.5 if item["serves"].startswith("substrate.") else 3)
        club["delivery"] = {"low": 1, "typical": 2, "high": 3}
        whole = json.loads(self.done(run("shop", EXAMPLE, "--json", "--prices", dear, "--prices",
                                         written("club.json", club), *DATE)).out, parse_float=cents)
        bought_at = {line["need"].split(".")[0]: line["channel"] for line in whole["shopping"] if line["packs"]}
        self.assertEqual(bought_at["substrate"], "club")
        self.assertEqual(bought_at["measure"], "shop")
        self.assertEqual([each["channel"] for each in whole["deliveries"]], ["shop", "club"])
        lines = sum(line["line_total"]["typical"] for line in whole["shopping"] if line["line_total"])
        self.assertEqual(whole["total"]["typical"], lines + 200)
        alone = json.loads(self.done(run("shop", EXAMPLE, "--json", "--prices", dear, *DATE)).out, parse_float=cents)
        self.assertLess(whole["total"]["typical"], alone["total"]["typical"])

    def test_lists_of_two_currencies_are_not_mixed(self):
        list_ = json.loads((SOURCE / "resources/prices/illustrative.json").read_text(encoding="utf-8"))
        euro = self.file("euro.json", {**list_, "currency": "EUR"})
        usd = self.file("usd.json", list_)
        self.refused(run("shop", EXAMPLE, "--prices", usd, "--prices", euro, *DATE), 3, "EUR", "USD")

    def test_csv_has_a_row_for_each_line_and_as_many_cells_in_each(self):
        text = self.done(run("shop", EXAMPLE, "--csv", *DATE)).out
        rows = list(csv.reader(io.StringIO(text, newline="")))
        self.assertEqual(len(rows), 1 + len(self.order(EXAMPLE)["shopping"]))
        self.assertEqual({len(row) for row in rows}, {len(rows[0])})
        self.assertTrue(text.endswith("\r\n"))

    def test_text_names_the_total_and_that_the_prices_are_invented(self):
        text = self.done(run("shop", EXAMPLE, *DATE)).out
        self.assertIn("Total", text)
        self.assertIn("invented", text)
        self.assertTrue(all(len(line) <= 80 for line in text.splitlines()))

    def test_csv_and_json_together_are_wrong_usage(self):
        self.refused(run("shop", EXAMPLE, "--csv", "--json"), 2, "can't both")

    def test_every_bad_plan_is_named(self):
        bad = self.file("bad.json", b"{}")
        worse = self.file("worse.json", b"[]")
        self.refused(run("shop", EXAMPLE, bad, worse), 3, "bad.json: ", "worse.json: ")

    def test_a_bad_row_of_a_price_list_is_named(self):
        path = self.file("prices.csv", b"id,name\r\nx,y\r\n")
        self.refused(run("shop", EXAMPLE, "--prices", path), 3, "prices.csv: ", "column")

    def test_a_price_list_comes_from_standard_input(self):
        prices = (SOURCE / "resources/prices/illustrative.json").read_bytes()
        piped = self.done(run("shop", EXAMPLE, "--json", *DATE, "--prices", "-", stdin=prices))
        self.assertEqual(piped.bytes, self.done(run("shop", EXAMPLE, "--json", *DATE)).bytes)


if __name__ == "__main__":
    main()
