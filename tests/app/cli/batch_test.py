"""batch: every good row gets its sheets and every bad one a reason, whatever stands between; killed and started again,
or cut into slices, it comes to the same bytes."""
import csv
import io
import json
import os
import pathlib
import re
import signal
import subprocess
import time
import unittest

from program import DATE, PROGRAM, SOURCE, ProgramTest, main, run

TEMPLATE = SOURCE / "examples" / "club-template.loamstead.json"
GOOD = "Ada,19,16\nBo,19,16\nCy,20,16\nDi,19,16\n"
HEADER = "name,winter_day_c,winter_night_c\n"


def rows_of(path):
    return list(csv.DictReader(io.StringIO(path.read_text(encoding="utf-8"))))


def text_of(pdf):
    return subprocess.run(["pdftotext", pdf, "-"], capture_output=True, check=True).stdout.decode("utf-8")


class Batch(ProgramTest):
    def list(self, content, name="adopters.csv"):
        return self.file(name, content if isinstance(content, bytes) else content.encode("utf-8"))

    def batch(self, adopters, *words, out="out", only=("--only", "shopping")):
        return run("batch", TEMPLATE, adopters, "--out", self.folder / out, *only, *DATE, *words)

    def files(self, out="out"):
        return {path.name: path.read_bytes() for path in sorted((self.folder / out).iterdir())}

    def test_all_good_rows_are_delivered_and_all_bad_ones_named(self):
        bad = [("J\xfcrgen,19,16".encode("latin-1"), ""), (b"Eva,warm,16", "winter_day_c"), (b"Fay,1e99,16", "winter_day_c"),
               (b"Gil,99999999999,16", "winter_day_c"), (b"Hal,500,16", "winter_day_c"), (b"Ida;19;16", ""),
               (b"Jo,19,16,too,many", ""), (b"\"Kim,19,16", ""), (b",19,16", "name"), (b"Lea,=1+1,16", "winter_day_c"),
               (b"Max,19,nan", "winter_night_c")]
        good = [b"../../x,19,16", b"=cmd|' /C calc'!A0,19,16", b"CON,\"19,5\",16", b"\"Quoted, \"\"name\"\"\",19,16",
                b"Last,19,16"]
        lines = [line for pair in zip([line for line, _ in bad], good * 3) for line in pair]
        result = self.batch(self.list(b"\xef\xbb\xbf" + HEADER.encode() + b"\r\n".join(lines) + b"\r\n"))
        self.assertEqual(result.status, 3, result.err)
        failed = rows_of(self.folder / "out" / "failed.csv")
        self.assertEqual([(row["row"], row["column"]) for row in failed],
                         [(str(2 + 2 * i), column) for i, (_, column) in enumerate(bad)])
        self.assertTrue(all(row["reason"] for row in failed))
        made = rows_of(self.folder / "out" / "summary.csv")
        self.assertEqual([row["row"] for row in made], [str(3 + 2 * i) for i in range(len(bad))])
        for name in self.files():
            self.assertRegex(name, r"^([0-9]{4}-[a-z0-9-]+\.pdf|(batch|failed|summary|club-order)[a-z-]*\.(jsonl?|csv|txt))$")
        self.assertEqual(len([name for name in self.files() if name.endswith(".pdf")]), len(bad))
        # Nothing was left beside the folder.
        self.assertEqual(sorted(path.name for path in self.folder.iterdir()), ["adopters.csv", "out"])

    def test_names_stay_out_of_what_is_told(self):
        adopters = self.list(HEADER + "Secretname,19,16\nHiddenname,Othername,16\n")
        result = self.batch(adopters, "--progress")
        self.assertEqual(result.status, 3)
        self.assertIn("1 of 1", result.err)
        self.assertIn("row 3 fails, column winter_day_c", result.err)
        for told in (result.out, result.err):
            self.assertNotRegex(told.lower(), "secretname|hiddenname|othername")
        self.assertIn("Secretname", text_of(self.folder / "out" / "0002-secretname.pdf"))

    def test_started_again_nothing_is_made_twice(self):
        adopters = self.list(HEADER + GOOD)
        self.assertIn("4 made, 0 were there before", self.done(self.batch(adopters)).out)
        before = self.files()
        self.assertIn("0 made, 4 were there before", self.done(self.batch(adopters)).out)
        self.assertEqual(self.files(), before)

    def test_killed_half_way_and_started_again_it_comes_to_the_same(self):
        adopters = self.list(HEADER + "".join(f"Nr {day},{day},{day - 3}\n" for day in (19, 20)) * 45)
        self.done(self.batch(adopters, out="whole"))
        process = subprocess.Popen([PROGRAM, "batch", TEMPLATE, adopters, "--out", self.folder / "out", "--only",
                                    "shopping", *DATE], stderr=subprocess.DEVNULL)
        for _ in range(6000):
            if len(list((self.folder / "out").glob("*.pdf"))) >= 5 or process.poll() is not None:
                break
            time.sleep(0.05)
        process.send_signal(signal.SIGKILL)
        process.wait()
        made = len(list((self.folder / "out").glob("*.pdf")))
        self.assertGreater(made, 0)
        journal = next((self.folder / "out").glob("batch-part-*.jsonl"))
        with open(journal, "ab") as torn:
            torn.write(b'{"row": 99, "fi')
        result = self.done(self.batch(adopters))
        self.assertNotIn(" 0 were there before", result.out)
        self.assertEqual(self.files(), self.files("whole"))

    def test_slices_put_together_are_the_whole(self):
        adopters = self.list(HEADER + GOOD + "Bad,warm,1\n")
        self.batch(adopters, out="whole")
        for i in (1, 2, 3):
            result = self.batch(adopters, "--slice", f"{i}/3")
            self.assertEqual(result.status, 3)
            self.assertFalse((self.folder / "out" / "summary.csv").exists())
        result = self.batch(adopters)
        self.assertIn("0 made, 4 were there before", result.out)
        self.assertEqual(self.files(), self.files("whole"))

    def test_one_row_can_be_made_again_alone(self):
        adopters = self.list(HEADER + GOOD)
        self.done(self.batch(adopters))
        before = self.files()
        (self.folder / "out" / "0003-bo.pdf").unlink()
        self.assertIn("1 made", self.done(self.batch(adopters, "--row", "3")).out)
        self.assertEqual(self.files(), before)
        changed = self.list(HEADER + GOOD.replace("Bo,19", "Bea,21"))
        self.refused(self.batch(changed), 4, "Row 3 says something else")
        self.assertEqual(self.files(), before)
        self.done(self.batch(changed, "--row", "3"))
        self.assertEqual(sorted(name for name in self.files() if name.endswith(".pdf")),
                         ["0002-ada.pdf", "0003-bea.pdf", "0004-cy.pdf", "0005-di.pdf"])
        self.refused(self.batch(changed, "--row", "9"), 3, "Row 9")

    def test_a_row_that_is_mended_is_added(self):
        self.assertEqual(self.batch(self.list(HEADER + "Ada,19,16\nBo,x,16\n")).status, 3)
        self.assertIn("1 made, 1 were there", self.done(self.batch(self.list(HEADER + "Ada,19,16\nBo,19,16\n"))).out)
        self.assertEqual(rows_of(self.folder / "out" / "failed.csv"), [])

    def test_nothing_of_anyone_elses_is_written_over(self):
        adopters = self.list(HEADER + GOOD)
        out = self.folder / "out"
        out.mkdir()
        (out / "0002-ada.pdf").write_bytes(b"mine")
        self.refused(self.batch(adopters), 4, "holds other files")
        self.assertEqual(self.files(), {"0002-ada.pdf": b"mine"})
        self.done(self.batch(adopters, out="ours"))
        before = self.files("ours")
        self.refused(self.batch(adopters, "--units", "us", out="ours"), 4, "something else (units)")
        self.refused(run("batch", TEMPLATE, adopters, "--out", self.folder / "ours", "--only", "shopping", "--date",
                         "2026-11-26"), 4, "date (there: 2026-11-25)")
        self.assertEqual(self.files("ours"), before)
        (self.folder / "ours" / "0002-ada.pdf").write_bytes(b"mine")
        result = self.done(self.batch(adopters, out="ours"))
        self.assertIn("row 2 were changed", result.err)
        self.assertEqual((self.folder / "ours" / "0002-ada.pdf").read_bytes(), b"mine")

    def test_the_club_order_is_what_shop_makes_of_the_same_plans(self):
        self.done(self.batch(self.list("name\nAda\nBo\nCy\n")))
        shop = self.done(run("shop", TEMPLATE, TEMPLATE, TEMPLATE, "--csv", *DATE)).out
        ours = rows_of(self.folder / "out" / "club-order.csv")
        theirs = list(csv.DictReader(io.StringIO(shop)))
        for row in ours + theirs:
            del row["for"]  # here one enclosure of the template's, there three
        self.assertEqual(ours, theirs)

    def test_what_is_owned_or_lent_is_not_bought(self):
        lent = self.file("lent.csv", b"item,quantity\nscale,1\n")
        adopters = self.list("name,owned\nAda,infrared-thermometer\nBo,\n")
        self.done(self.batch(adopters, "--lent", lent))
        order = {row["item"]: row for row in rows_of(self.folder / "out" / "club-order.csv")}
        self.assertEqual(order["scale"]["packs"], "0")
        self.assertEqual(order["infrared-thermometer"]["packs"], "1")
        self.assertEqual(order["hygrometer"]["packs"], "2")
        self.assertIn("On loan, to be given back, and so not to be bought: Kitchen scale", text_of(self.folder / "out" / "0002-ada.pdf"))
        self.refused(self.batch(adopters, "--lent", self.file("bad.csv", b"item\nscael\n"), out="x"), 3, "row 2", "scale")

    def test_the_sheets_are_those_of_the_sheet_command(self):
        self.done(self.batch(self.list("name\nAda\n"), only=()))
        plan = json.loads(TEMPLATE.read_text(encoding="utf-8"))
        plan["title"] = "Ada · " + plan["title"]
        alone = self.folder / "alone.pdf"
        self.done(run("sheet", self.file("ada.json", plan), "--out", alone, *DATE))
        self.assertEqual((self.folder / "out" / "0002-ada.pdf").read_bytes(), alone.read_bytes())

    def test_the_same_files_give_the_same_bytes_in_any_time_zone(self):
        adopters = self.list(HEADER + "Ada,19,16\n")
        self.done(self.batch(adopters))
        os.environ["TZ"] = "Asia/Kathmandu"  # an offset of 5:45 h is written at length
        try:
            self.done(self.batch(adopters, out="there"))
        finally:
            del os.environ["TZ"]
        self.assertEqual(self.files(), self.files("there"))
        pdf = self.files("there")["0002-ada.pdf"]
        self.assertIn(b"/CreationDate (D:20261125120000Z)", pdf)
        # ISO 32000-1, 7.5.4: each entry of the table names the byte at which its object begins (from memory).
        table = int(re.search(rb"startxref\n([0-9]+)\n%%EOF", pdf)[1])
        entries = re.findall(rb"([0-9]{10}) [0-9]{5} n", pdf[table:])
        self.assertGreater(len(entries), 10)
        for number, entry in enumerate(entries, 1):
            self.assertTrue(pdf[int(entry):].startswith(b"%d 0 obj" % number))

    def test_units_and_currency_are_the_rows_own(self):
        self.batch(self.list("name,units,currency,winter_day_c\nAda,us,,20\nBo,metric,EUR,20\n"), only=("--only", "shopping,running"))
        summary = rows_of(self.folder / "out" / "summary.csv")
        self.assertEqual([row["currency"] for row in summary], ["USD", ""])
        self.assertEqual(summary[1]["startup_typical"], "")
        self.assertIn("°F", text_of(self.folder / "out" / "0002-ada.pdf"))
        self.assertIn("°C", text_of(self.folder / "out" / "0003-bo.pdf"))
        order = rows_of(self.folder / "out" / "club-order.csv")
        self.assertTrue(all(row["currency"] == "USD" for row in order if row["packs"] != "0"))

    def test_a_list_without_its_columns_is_refused_as_a_whole(self):
        self.refused(self.batch(self.list("winter_day_c\n19\n")), 3, "neither “name” nor “number”")
        self.refused(self.batch(self.list("")), 3, "empty")
        self.refused(self.batch(self.list("name,winter\nAda,19\n".encode("utf-16"))), 3)
        self.refused(self.batch(self.folder / "none.csv"), 4, "does not exist")
        self.assertFalse((self.folder / "out").exists())
        result = self.done(self.batch(self.list("name,winter_day\nAda,19\n")))
        self.assertIn("“winter_day” is not known", result.err)

    def test_wrong_usage(self):
        adopters = self.list(HEADER + GOOD)
        self.refused(run("batch", TEMPLATE, adopters), 2, "--out")
        self.refused(self.batch(adopters, "--slice", "3/2"), 2, "3/2")
        self.refused(self.batch(adopters, "--row", "1"), 2, "--row")
        self.refused(self.batch(adopters, "--row", "2", "--slice", "1/2"), 2, "--row")
        self.refused(run("batch", TEMPLATE, "--out", self.folder / "out"), 2, "needs PLAN LIST.csv")

    def test_the_example_list_is_good(self):
        result = self.done(run("batch", TEMPLATE, SOURCE / "examples" / "adopters.csv", "--lent",
                               SOURCE / "examples" / "what-we-lend.csv", "--out", self.folder / "out", *DATE))
        self.assertIn("5 made", result.out)
        self.assertEqual(len(list((self.folder / "out").glob("*.pdf"))), 5)


if __name__ == "__main__":
    main()
