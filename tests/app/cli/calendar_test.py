"""calendar: tasks on days, as RFC 5545 wants them. That other programs read the file as it is meant is tested by
tests/scripts/calendar_parity.py."""
import datetime
import json
import re
import unittest

from program import DATE, EXAMPLE, ProgramTest, example_plan, main, run, run_once

START = ["--start", "2027-01-31"]


def events_of(text):
    """Unfolded (3.1), each event as a dictionary of raw values."""
    unfolded = text.replace("\r\n ", "")
    return [dict(line.split(":", 1) for line in block.split("\r\n") if line)
            for block in re.findall(r"BEGIN:VEVENT\r\n(.*?\r\n)END:VEVENT\r\n", unfolded, re.S)]


class Calendar(ProgramTest):
    def events(self, plan=EXAMPLE, *words):
        return events_of(self.done(run_once("calendar", plan, "--out", "-", *START, *DATE, *words)).bytes.decode())

    def by_uid(self, plan):
        return {event["UID"]: event for event in self.events(plan)}

    def test_replacements_stand_on_the_days_that_assess_names(self):
        # --date and --start are one day here: nothing is shifted.
        words = ["--out", "-", "--start", DATE[1], *DATE]
        events = events_of(self.done(run("calendar", EXAMPLE, *words)).bytes.decode())
        assessed = json.loads(self.done(run_once("assess", EXAMPLE, "--json", *DATE)).out)
        due = sorted(one["due"].replace("-", "") for one in assessed["costs"]["replacements"])
        self.assertGreater(len(due), 2)
        found = sorted(event["DTSTART;VALUE=DATE"] for event in events if event["CATEGORIES"] == "replacement")
        self.assertEqual(found, due)

    def test_what_is_edited_keeps_its_uid_and_a_later_day_counts_higher(self):
        before = self.by_uid(EXAMPLE)
        plan = example_plan()
        plan["enclosures"][0]["name"] = "Renamed"
        plan["enclosures"][0]["moisture"]["water_changes_per_day"] = 3
        plan["title"] = "  " + plan["title"].upper()
        edited = self.by_uid(self.file("edited.json", plan))
        self.assertEqual(set(before), set(edited))
        self.assertNotEqual(before, edited)
        later = events_of(run("calendar", EXAMPLE, "--out", "-", *START, "--date", "2026-11-26").bytes.decode())
        for event in later:
            self.assertEqual(int(event["SEQUENCE"]), int(before[event["UID"]]["SEQUENCE"]) + 1)

    def test_another_title_is_another_calendar(self):
        plan = example_plan()
        plan["title"] = "Another one"
        self.assertFalse(set(self.by_uid(EXAMPLE)) & set(self.by_uid(self.file("other.json", plan))))

    def test_the_same_files_and_date_give_the_same_bytes(self):
        words = ["calendar", EXAMPLE, "--out", "-", *START, *DATE]
        self.assertEqual(self.done(run(*words)).bytes, self.done(run(*words)).bytes)

    def test_a_file_is_written_and_replaced_only_where_it_is_a_calendar_of_ours(self):
        out = self.folder / "care.ics"
        self.assertEqual(self.done(run("calendar", EXAMPLE, "--out", out, *START, *DATE)).out, "")
        first = out.read_bytes()
        self.done(run("calendar", EXAMPLE, "--out", out, "--start", "2027-02-28", *DATE))
        self.assertNotEqual(out.read_bytes(), first)
        others = self.file("holidays.ics", b"BEGIN:VCALENDAR\r\nPRODID:-//Somebody else//EN\r\n")
        self.refused(run("calendar", EXAMPLE, "--out", others, *START, *DATE), 4, "holidays.ics", "Name another file")
        self.assertIn(b"Somebody else", others.read_bytes())

    def test_marks_of_the_format_in_a_name_are_escaped(self):
        # Line breaks are refused with the plan; RFC 5545, 3.3.11 escapes the rest.
        plan = example_plan()
        plan["enclosures"][0]["name"] = "a;b,c\\n:END:VEVENT"
        event = self.events(self.file("marks.json", plan))[0]
        self.assertTrue(event["SUMMARY"].endswith(r"(a\;b\,c\\n:END:VEVENT)"), event["SUMMARY"])
        plan["title"] = "x\r\nEND:VEVENT"
        self.refused(run("calendar", self.file("lines.json", plan), "--out", "-", *START, *DATE), 3, "/title")

    def test_the_reader_chooses_units_and_language(self):
        us = self.done(run("calendar", EXAMPLE, "--out", "-", *START, *DATE, "--units", "us")).bytes.decode()
        self.assertIn("qt of fresh", us.replace("\r\n ", ""))
        self.done(run("calendar", EXAMPLE, "--out", "-", *START, *DATE, "--language", "de"))

    def test_out_and_start_must_be_given(self):
        self.refused(run("calendar", EXAMPLE, *START), 2, "--out")
        self.refused(run("calendar", EXAMPLE, "--out", "-"), 2, "--start")
        for start in ["2027-02-29", "27-2-2", "0999-01-01", "2300-01-01", "soon"]:
            self.refused(run("calendar", EXAMPLE, "--out", "-", "--start", start), 2, f"“{start}” is not a date")

    def test_days_are_whole_and_after_the_start(self):
        for event in self.events():
            day = datetime.datetime.strptime(event["DTSTART;VALUE=DATE"], "%Y%m%d").date()
            self.assertGreaterEqual(day, datetime.date(2027, 1, 31))

    def test_a_folder_that_does_not_exist_is_file_trouble(self):
        self.refused(run("calendar", EXAMPLE, "--out", self.folder / "none" / "x.ics", *START, *DATE), 4, "x.ics")


if __name__ == "__main__":
    main()
