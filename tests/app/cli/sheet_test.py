"""sheet: that a PDF is written where it should be. What stands on its pages is tested with the sheets."""
import unittest

from program import DATE, EXAMPLE, ProgramTest, main, run


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
