"""The iCalendar file read back with python3-icalendar (RFC 5545) and with libical, and its rules expanded with
python3-dateutil and with libical: the same days as our own, hostile names as nothing but text.
usage: calendar_parity.py CALENDAR_PRINT"""
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

try:
    import gi
    gi.require_version("ICalGLib", "3.0")
    from gi.repository import ICalGLib
except (ImportError, ValueError):
    ICalGLib = None

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


def by_libical(raw):
    """(uid, summary, days) of each event."""
    kinds, properties = ICalGLib.ComponentKind, ICalGLib.PropertyKind
    calendar = ICalGLib.Component.new_from_string(raw.decode())
    event = calendar.get_first_component(kinds.VEVENT_COMPONENT)
    while event is not None:
        first = event.get_dtstart()
        rule = event.get_first_property(properties.RRULE_PROPERTY)
        days = [first]
        if rule is not None:
            days, each = [], ICalGLib.RecurIterator.new(rule.get_rrule(), first)
            while (day := each.next()) is not None and not day.is_null_time() and day.get_year() <= UNTIL.year:
                if day.get_year() >= FROM.year:
                    days.append(day)
        yield (event.get_uid(), event.get_summary(),
               [datetime.date(day.get_year(), day.get_month(), day.get_day()) for day in days])
        event = calendar.get_next_component(kinds.VEVENT_COMPONENT)


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

    @unittest.skipIf(ICalGLib is None, "python3-gi and gir1.2-ical-3.0 are not installed")
    def test_libical_reads_the_same_days_and_names(self):
        read = list(by_libical(self.raw))
        self.assertEqual(len(read), len(self.own))
        for uid, summary, days in read:
            self.assertEqual(days, self.own[uid])
            self.assertEqual(summary, f"Remove droppings and leftovers ({HOSTILE})")

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
