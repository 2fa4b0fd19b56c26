"""prices: a price list in short, two beside one another, and from one format to the other."""
import csv
import io
import json
import unittest
from decimal import Decimal

from program import DATE, SOURCE, ProgramTest, main, run, run_once

SHIPPED = SOURCE / "resources" / "prices" / "illustrative.json"


def shipped():
    return json.loads(SHIPPED.read_text(encoding="utf-8"), parse_float=str)


class Prices(ProgramTest):
    def state(self, prices, *words):
        return json.loads(self.done(run("prices", self.file("own.json", prices), "--json", *words)).out)

    def two(self, change):
        """The shipped list and a changed copy."""
        prices = json.loads(SHIPPED.read_text(encoding="utf-8"))
        change(prices)
        return SHIPPED, self.file("own.json", prices)

    def test_the_shipped_list_has_a_price_for_everything(self):
        prices = shipped()
        text = self.done(run_once("prices", SHIPPED, *DATE)).out
        for phrase in (prices["title"].split()[0], prices["currency"], "invented", f"items: {len(prices['items'])}"):
            self.assertIn(phrase, text)
        self.assertNotIn("No price for", text)
        self.assertTrue(all(len(line) <= 80 for line in text.splitlines()))

    def test_old_lists_are_warned_of(self):
        prices = json.loads(SHIPPED.read_text(encoding="utf-8"))
        prices["date"] = "2025-10-25"  # thirteen months before the day
        path = self.file("old.json", prices)
        self.assertIn("Warning: the list is more than 12 months old", self.done(run("prices", path, *DATE)).out)
        self.assertTrue(self.state(prices, *DATE)["old"])
        self.assertFalse(self.state(prices, "--date", "2026-09-25")["old"])  # eleven months after it

    def test_what_has_no_price_or_no_stock_is_named_and_no_zero(self):
        prices = json.loads(SHIPPED.read_text(encoding="utf-8"))
        kind = prices["items"][0]["serves"]
        prices["items"] = [item for item in prices["items"] if item["serves"] != kind]
        for pack in prices["items"][0]["packs"]:
            pack["in_stock"] = False
        state = self.state(prices, *DATE)
        self.assertEqual(state["no_price_for"], [kind])
        self.assertEqual(state["out_of_stock"], [prices["items"][0]["id"]])
        text = self.done(run("prices", self.file("own.json", prices), *DATE)).out
        self.assertIn(f"({kind})", text)
        self.assertIn("Not in stock", text)

    def test_a_list_beside_itself_differs_in_nothing(self):
        self.assertIn("Nothing differs.", self.done(run_once("prices", SHIPPED, SHIPPED)).out)

    def test_a_rise_is_exact_in_every_form(self):
        def dearer(prices):
            pack = prices["items"][0]["packs"][0]
            pack["high"] = 100000.10
            pack["typical"] = 99999.90
        first, second = self.two(dearer)
        before = shipped()["items"][0]["packs"][0]
        rise = Decimal("99999.9") - Decimal(str(before["typical"]))
        found = json.loads(self.done(run("prices", first, second, "--json")).out, parse_float=Decimal,
                           parse_int=Decimal)["packs"]
        self.assertEqual([(pack["pack"], pack["changes"], pack["rise"]) for pack in found],
                         [(before["id"], ["price"], rise)])
        rows = list(csv.DictReader(io.StringIO(self.done(run("prices", first, second, "--csv")).out)))
        self.assertEqual([Decimal(row["rise"]) for row in rows], [rise])
        back = list(csv.DictReader(io.StringIO(self.done(run("prices", second, first, "--csv")).out)))
        self.assertEqual([Decimal(row["rise"]) for row in back], [-rise])  # a number, without an apostrophe
        self.assertIn(f"+{rise}", self.done(run("prices", first, second)).out)

    def test_two_currencies_are_not_compared_and_that_is_said(self):
        lists = self.two(lambda prices: prices.update(currency="EUR"))
        self.assertIn("prices are not compared", " ".join(self.done(run("prices", *lists)).out.split()))
        found = json.loads(self.done(run("prices", *lists, "--json")).out)
        self.assertEqual((found["prices_compared"], found["packs"]), (False, []))
        self.assertIn("prices are not compared", self.done(run("prices", *lists, "--csv")).err)

    def test_a_list_goes_to_csv_and_back_without_a_difference(self):
        table, again = self.folder / "list.csv", self.folder / "again.json"
        self.done(run("prices", SHIPPED, "--out", table))
        self.done(run("prices", table, "--out", again))
        self.assertIn("Nothing differs.", self.done(run("prices", SHIPPED, again)).out)

    def test_nothing_is_written_over(self):
        there = self.file("there.csv", b"mine")
        self.refused(run("prices", SHIPPED, "--out", there), 4, "there.csv", "nothing is written over")
        self.assertEqual(there.read_bytes(), b"mine")

    def test_wrong_usage_and_bad_lists_are_refused(self):
        self.refused(run("prices", SHIPPED, "--csv"), 2, "difference of two lists")
        self.refused(run("prices", SHIPPED, SHIPPED, "--csv", "--json"), 2, "can't both")
        self.refused(run("prices", SHIPPED, "--out", self.folder / "list.txt"), 2, ".csv or .json")
        self.refused(run("prices", SHIPPED, "--date", "soon"), 2, "not a date")
        bad, worse = self.file("bad.json", b"{}"), self.file("worse.csv", b"a,b\n")
        self.refused(run("prices", bad, worse), 3, "bad.json: ", "worse.csv: ")


if __name__ == "__main__":
    main()
