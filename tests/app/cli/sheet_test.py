"""sheet: that a PDF is written where it should be. What stands on its pages is tested with the sheets."""
import json
import shutil
import subprocess
import unicodedata
import unittest

from program import DATE, EXAMPLE, ProgramTest, cents, main, run, run_once


class Sheet(ProgramTest):
    def pages(self, path):
        content = path.read_bytes()
        self.assertTrue(content.startswith(b"%PDF-"))
        return content

    def test_a_pdf_is_written_without_a_display(self):
        out = self.folder / "sheets.pdf"
        result = self.done(run("sheet", EXAMPLE, "--out", out, *DATE))
        self.assertEqual(result.out, "")
        self.pages(out)

    def test_paper_is_a4_or_letter(self):
        # ISO 216: 210 x 297 mm is 595 x 842 points; ANSI Y14.1: 8.5 x 11 in is 612 x 792 points (from memory).
        for paper, box in [("a4", rb"/MediaBox \[0[. 0]* 59[45]"), ("letter", rb"/MediaBox \[0[. 0]* 612")]:
            out = self.folder / f"{paper}.pdf"
            self.done(run("sheet", EXAMPLE, "--out", out, "--paper", paper, *DATE))
            self.assertRegex(self.pages(out), box)

    def test_one_sheet_alone_is_smaller_than_both(self):
        both, one = self.folder / "both.pdf", self.folder / "one.pdf"
        self.done(run("sheet", EXAMPLE, "--out", both, *DATE))
        self.done(run("sheet", EXAMPLE, "--out", one, "--only", "budget", *DATE))
        self.assertLess(self.pages(one).count(b"/MediaBox"), self.pages(both).count(b"/MediaBox"))

    def test_the_running_card_and_the_year_can_be_had_alone(self):
        for only in ["running", "year", "running,year"]:
            out = self.folder / "care.pdf"
            self.done(run("sheet", EXAMPLE, "--out", out, "--only", only, *DATE))
            self.pages(out)

    def text_of(self, *options):
        if shutil.which("pdftotext") is None:
            self.skipTest("pdftotext (poppler-utils) is not installed")
        out = self.folder / "text.pdf"
        self.done(run("sheet", EXAMPLE, "--out", out, *DATE, *options))
        done = subprocess.run(["pdftotext", "-layout", str(out), "-"], capture_output=True, timeout=60)
        text = unicodedata.normalize("NFKC", done.stdout.decode("utf-8"))  # ligatures as letters
        return " ".join(text.split())

    def test_totals_on_paper_are_those_of_the_json(self):
        costs = json.loads(run_once("assess", EXAMPLE, "--json", *DATE).out, parse_float=cents)["costs"]
        text = self.text_of("--only", "decision,shopping,budget").replace(",", "")
        ten = {name: costs["startup"][name] + 10 * costs["running_per_year"][name]
               for name in ["low", "typical", "high"]}  # the example looks at five years; by hand
        for name in ["low", "typical", "high"]:
            for amount in [costs["startup"][name], costs["running_per_year"][name], ten[name]]:
                self.assertIn(f"{int(amount) // 100}.{int(amount) % 100:02d}", text)

    def test_only_what_is_named_is_printed_and_all_without_it(self):
        titles = {"decision": "Decision sheet", "shopping": "Shopping sheet", "budget": "Budget sheet",
                  "build": "Build sheet", "proving": "Proving sheet", "running": "Running card", "year": "The year", "holiday": "Holiday card"}
        everything = self.text_of()
        for name, title in titles.items():
            self.assertIn(title, everything)
        text = self.text_of("--only", "holiday,decision")
        self.assertLess(text.index("Decision sheet"), text.index("Holiday card"))
        self.assertNotIn("Build sheet", text)

    def test_who_hands_it_out_stands_at_the_head_as_it_was_given(self):
        text = self.text_of("--only", "holiday", "--club", "<b>Fen & Pond</b> club", "--contact", "Tuesdays\nby post")
        self.assertTrue(text.startswith("<b>Fen & Pond</b> club Tuesdays by post Holiday card"), text[:80])

    def test_both_units(self):
        # 28.5 degC by 1.8 and 32 is 83.3 degF, by hand.
        self.assertIn("28.5 °C [83.3 °F]", self.text_of("--only", "holiday", "--units", "both"))
        self.refused(run("assess", EXAMPLE, "--units", "both"), 2, "“both”")

    def test_out_must_be_given(self):
        self.refused(run("sheet", EXAMPLE), 2, "--out")

    def test_an_unknown_sheet_or_paper_is_wrong_usage(self):
        out = self.folder / "x.pdf"
        self.refused(run("sheet", EXAMPLE, "--out", out, "--only", "shoping"), 2, "Did you mean “shopping”?")
        self.refused(run("sheet", EXAMPLE, "--out", out, "--paper", "a5"), 2, "“a5”")
        self.assertFalse(out.exists())

    def test_a_folder_that_does_not_exist_is_file_trouble(self):
        result = run("sheet", EXAMPLE, "--out", self.folder / "none" / "x.pdf", *DATE)
        self.assertEqual(result.status, 4, result.err)
        self.assertIn("x.pdf", result.err)


if __name__ == "__main__":
    main()
