"""`suggest`: equipment as plans that open."""
import json
import pathlib
import tempfile
import unittest

from program import DATE, SOURCE, ProgramTest, main, run_once

PLAN = SOURCE / "examples" / "first-setup.loamstead.json"


class Suggest(ProgramTest):
    def test_each_suggestion_is_a_file_that_opens_and_is_as_good_as_it_says(self):
        with tempfile.TemporaryDirectory() as folder:
            out = pathlib.Path(folder) / "suggested"
            result = json.loads(self.done(run_once("suggest", PLAN, "--json", "--out", out, *DATE)).out)
            self.assertEqual(result["format"], "loamstead-suggestions")
            merits = [merit for one in result["suggestions"] for merit in one["merits"]]
            self.assertEqual(sorted(merits), ["cheapest-over-years", "cheapest-to-buy", "widest-margin"])
            self.assertEqual(len(list(out.iterdir())), len(result["suggestions"]))
            for one in result["suggestions"]:
                self.assertEqual(json.loads(pathlib.Path(one["file"]).read_text(encoding="utf-8")), one["plan"])
                assessed = json.loads(self.done(run_once("assess", one["file"], "--json", *DATE)).out)
                found = [each["code"] for each in assessed["findings"] if each["verdict"] in ("danger", "falls short")]
                told = [each["code"] for each in one["obstacles"] + one["besides"]]
                self.assertEqual(sorted(found), sorted(told))
                self.assertEqual(one["meets"], not one["obstacles"] and one["missed_k"] == 0)
                self.assertEqual(assessed["costs"]["startup"], one["costs"]["startup"])
            again = run_once("suggest", PLAN, "--out", out, *DATE)
            self.assertEqual(again.status, 4)
            self.assertIn("already", again.err)

    def test_a_sum_that_is_none_is_refused(self):
        for wrong in ("much", "-5", "1e3", "10.005"):
            refused = run_once("suggest", PLAN, f"--budget={wrong}", *DATE)
            self.assertEqual(refused.status, 2, wrong)
            self.assertIn(wrong, refused.err)


if __name__ == "__main__":
    main()
