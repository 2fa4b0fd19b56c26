"""The iCalendar file read back with python3-icalendar (RFC 5545), and its rules expanded with python3-dateutil: the same
days as our own, hostile names as nothing but text. usage: calendar_parity.py CALENDAR_PRINT"""
import collections
import datetime
import re
import subprocess
import sys
import unittest
import uuid

try:
    import icalendar
    from dateutil import rrule
except ImportError as missing:
    print(f"left out: {missing}; install python3-icalendar and python3-dateutil")
    sys.exit(77)

PRINT = sys.argv[1]
HOSTILE = ("Box\nEND:VEVENT\nBEGIN:VEVENT\nSUMMARY:injected;x,y\\z   Grüße " + "🐢" * 30)
FROM, UNTIL = datetime.datetime(2027, 1, 1), datetime.datetime(2033, 12, 31)


def printed(what):
    return subprocess.run([PRINT, what], capture_output=True, check=True, timeout=120).stdout


def expanded(event):
    first = datetime.datetime.combine(event["DTSTART"].dt, datetime.time())
    if "RRULE" not in event:
        return [first.date()]
    rule = rrule.rrulestr(event["RRULE"].to_ical().decode(), dtstart=first)
    return [day.date() for day in rule.between(FROM, UNTIL, inc=True)]


class Calendar(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.raw = printed("ics")
        cls.events = icalendar.Calendar.from_ical(cls.raw).walk("VEVENT")
        cls.own = collections.defaultdict(list)
        for line in printed("days").decode().splitlines():
            uid, day = line.split(" ")
            cls.own[uid].append(datetime.date.fromisoformat(day))

    def test_each_rule_means_the_days_that_we_mean(self):
        self.assertEqual(len(self.events), len(self.own))
        for event in self.events:
            rule = event["RRULE"].to_ical().decode() if "RRULE" in event else "once"
            with self.subTest(start=event["DTSTART"].dt, rule=rule):
                self.assertEqual(expanded(event), self.own[str(event["UID"])])

    def test_the_first_day_belongs_to_each_rule(self):
        # RFC 5545, 3.8.5.3: "The DTSTART property value SHOULD be synchronized with the recurrence rule".
        for event in self.events:
            self.assertIn(event["DTSTART"].dt, expanded(event))

    def test_a_hostile_name_is_text_and_nothing_else(self):
        for event in self.events:
            self.assertEqual(str(event["SUMMARY"]), f"Remove droppings and leftovers ({HOSTILE})")
        self.assertEqual(self.raw.count(b"\r\nBEGIN:VEVENT\r\n"), len(self.events))
        self.assertNotIn(b"\r\nSUMMARY:injected", self.raw)

    def test_lines_are_folded_at_75_octets_without_tearing_a_character(self):
        # RFC 5545, 3.1.
        self.assertTrue(self.raw.endswith(b"END:VCALENDAR\r\n"))
        self.assertNotIn(b"\n", self.raw.replace(b"\r\n", b""))
        self.assertNotIn(b"\r", self.raw.replace(b"\r\n", b""))
        for line in self.raw.split(b"\r\n"):
            self.assertLessEqual(len(line), 75, line)
            line.decode("utf-8")
        self.assertFalse(re.search(rb"[\x00-\x08\x0b\x0c\x0e-\x1f\x7f]", self.raw))

    def test_uids_are_name_based_uuids(self):
        # RFC 4122, 4.3, by Python's own uuid5: of the title without regard to case and blanks, and the task's id. What
        # Python's split() takes for blanks leaves the control character in the title.
        title = " ".join(HOSTILE.replace("z   G", "z \x01 G").split()).casefold()
        # Case folding by Unicode turns "ß" into "ss" in Python and leaves it in Qt, which folds character by character.
        title = title.replace("grüsse", "grüße")
        namespace = uuid.UUID("6c3d7f0e-52a4-4c58-9f0b-8d1f6a3e7b24")
        for number, event in enumerate(self.events, 1):
            self.assertEqual(str(event["UID"]), str(uuid.uuid5(namespace, f"{title}\nspot-clean/{number}")))

    def test_what_every_event_must_have(self):
        # RFC 5545, 3.6.1 (UID, DTSTAMP once) and 3.8.2.7 (transparent: the day is not taken).
        for event in self.events:
            self.assertIsInstance(event["DTSTART"].dt, datetime.date)
            self.assertNotIsInstance(event["DTSTART"].dt, datetime.datetime)
            self.assertEqual(event["DTSTAMP"].dt, datetime.datetime(2026, 11, 25, tzinfo=datetime.timezone.utc))
            self.assertEqual(event["TRANSP"], "TRANSPARENT")
            # Days from 1 January 2000 to 25 November 2026, by Python's calendar.
            self.assertEqual(event["SEQUENCE"], (datetime.date(2026, 11, 25) - datetime.date(2000, 1, 1)).days)
        self.assertEqual(len({str(event["UID"]) for event in self.events}), len(self.events))

    def test_the_same_input_gives_the_same_bytes(self):
        self.assertEqual(self.raw, printed("ics"))


if __name__ == "__main__":
    unittest.main(argv=[sys.argv[0]])
