"""Money to the cent: every total in every example is the sum of its lines as printed."""
import fractions
import itertools
import json
import unittest

from program import DATE, SOURCE, ProgramTest, cents, main, run_once

EXAMPLES = sorted((SOURCE / "examples").glob("*.loamstead.json"))
LEVELS = ("low", "typical", "high")


def rounded(amount):
    """To a whole cent, half away from zero; amounts here are not negative."""
    return (2 * amount + 1) // 2


class Totals(ProgramTest):
    def results(self):
        self.assertGreaterEqual(len(EXAMPLES), 3)
        for plan in EXAMPLES:
            result = self.done(run_once("assess", plan, "--json", *DATE)).out
            yield json.loads(plan.read_text(encoding="utf-8")), json.loads(result, parse_float=cents)

    def test_a_line_is_its_price_times_its_packs(self):
        for _, result in self.results():
            priced = [line for line in result["shopping"] if line["line_total"]]
            self.assertTrue(priced)
            for line, level in itertools.product(priced, LEVELS):
                self.assertEqual(line["line_total"][level], line["packs"] * line["pack_price"][level])

    def test_the_start_is_the_sum_of_the_lines_and_the_contingency(self):
        for plan, result in self.results():
            assumed = {each["where"]: each["bracket"] for each in result["assumed"]}
            if "contingency" in plan["budget"]:
                shares = [fractions.Fraction(str(plan["budget"]["contingency"]))] * 3
            else:  # read as cents
                shares = [assumed["/budget/contingency"][end] / 100 for end in ("low", "likely", "high")]
            for level, share in zip(LEVELS, shares):
                lines = sum(line["line_total"][level] for line in result["shopping"] if line["line_total"])
                self.assertEqual(result["costs"]["startup"][level], lines + rounded(lines * share))

    def test_a_year_is_the_sum_of_its_lines(self):
        for _, result in self.results():
            for level in LEVELS:
                lines = sum(line["per_year"][level] for line in result["costs"]["lines"])
                self.assertEqual(result["costs"]["running_per_year"][level], lines)

    def test_twelve_months_are_the_lines_that_are_no_replacements(self):
        for _, result in self.results():
            months = result["costs"]["months"]
            self.assertEqual(len(months), 12)
            for level in LEVELS:
                used = sum(month[part][level] for month in months for part in ("electricity", "others"))
                lines = sum(line["per_year"][level] for line in result["costs"]["lines"] if not line["every_months"])
                self.assertEqual(used, lines)
                for month in months:
                    parts = sum(month[part][level] for part in ("electricity", "others", "replaced"))
                    self.assertEqual(month["spent"][level], parts)

    def test_the_horizon_begins_with_the_start_and_adds_up(self):
        for _, result in self.results():
            years = result["costs"]["horizon"]
            self.assertEqual(years[0]["spent_range"], result["costs"]["startup"])
            for level in LEVELS:
                sums = list(itertools.accumulate(year["spent_range"][level] for year in years))
                self.assertEqual([year["cumulative_range"][level] for year in years], sums)

    def test_what_has_no_price_is_listed_and_is_not_nothing(self):
        for _, result in self.results():
            without = sorted(line["need"] for line in result["shopping"] if not line["line_total"] and
                             line["amount_needed"] > 0)
            self.assertEqual(sorted(result["costs"]["unpriced"]), without)
            self.assertFalse([line for line in result["shopping"] if line["line_total"] and
                              line["packs"] > 0 and line["line_total"]["high"] == 0])


if __name__ == "__main__":
    main()
