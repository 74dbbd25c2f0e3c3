"""The plan as iCalendar, read back by icalendar and recurring-ical-events, and the
examples of RFC 5545 that those two are trusted by.

Every three hours means three hours that pass: nights in which the clock changes are held
to zoneinfo with PyPI's tzdata.
"""

import json
from datetime import datetime, timedelta, timezone
from zoneinfo import ZoneInfo

import icalendar
import pytest
import recurring_ical_events
from conftest import Present
from dateutil.rrule import rrulestr
from drawwell import Event, Export, Place

UTC = timezone.utc
NEW_YORK = ZoneInfo("America/New_York")


def moment(at: datetime, zone: str) -> dict:
    local = at.astimezone(ZoneInfo(zone))
    return {"at": local.isoformat(timespec="milliseconds"), "zone": zone}


def write(path, rhythm: dict, ends: list[datetime], zone: str):
    lines = [{"drawwell": "exchange", "version": 1}, {"fact": "rhythm", "id": "rhythm", **rhythm}]
    for number, end in enumerate(ends):
        lines.append({
            "fact": "session", "id": f"s{number}", "method": "electric_pump", "sides": "both", "settled": True,
            "started": moment(end - timedelta(minutes=15), zone), "ended": moment(end, zone),
        })
    path.write_text("\n".join(map(json.dumps, lines)))


RHYTHM = {
    "sessions_a_day": 8, "longest_interval": 180, "shortest_interval": 90,
    "sleep_from": "22:30", "sleep_until": "06:30", "lead_time": 10,
}


class Parent:
    """One whose sessions of the day were every three hours up to this moment."""

    def __init__(self, open_record, present, tmp_path, zone: str, last: datetime):
        present.at = last.astimezone(ZoneInfo(zone)) + timedelta(minutes=5)
        self.present, self.folder, self.zone, self.last = present, tmp_path, ZoneInfo(zone), last
        self.record = open_record(f"r-{zone.replace('/', '-')}-{last:%Y%m%d%H}")
        file = tmp_path / "in.jsonl"
        write(file, RHYTHM, [last - timedelta(hours=3 * n) for n in range(5, -1, -1)], zone)
        self.record.import_file(str(file), present.clock())

    def calendar(self) -> bytes:
        out = self.folder / "plan.ics"
        self.record.export(Export.CALENDAR(), str(out), self.present.clock())
        return out.read_bytes()

    def tonight(self):
        return self.record.show(Place.TONIGHT(), self.present.clock()).tonight


def live(calendar: icalendar.Calendar):
    return [event for event in calendar.walk("VEVENT") if event["STATUS"] != "CANCELLED"]


NIGHTS = [
    ("Europe/Berlin", datetime(2026, 3, 28, 21, 0)),
    ("Europe/Berlin", datetime(2026, 10, 24, 21, 0)),
    ("America/New_York", datetime(2026, 3, 7, 21, 0)),
    ("America/New_York", datetime(2026, 10, 31, 21, 0)),
    ("Australia/Lord_Howe", datetime(2026, 4, 4, 21, 0)),
    ("Australia/Lord_Howe", datetime(2026, 10, 3, 21, 0)),
]


@pytest.mark.parametrize(("zone", "evening"), NIGHTS, ids=lambda v: str(v))
def test_three_hours_stay_three_hours_where_the_clock_changes(open_record, present, tmp_path, zone, evening):
    here = ZoneInfo(zone)
    last = evening.replace(tzinfo=here).astimezone(UTC)
    parent = Parent(open_record, present, tmp_path, zone, last)
    before, after = (parent.last + timedelta(hours=h) for h in (0, 14))
    assert before.astimezone(here).utcoffset() != after.astimezone(here).utcoffset(), "the clock changes that night"
    events = live(icalendar.Calendar.from_ical(parent.calendar()))
    starts = [event.start for event in events]
    ends = [parent.last] + [event.end for event in events]
    gaps = [later - earlier for earlier, later in zip(ends, ends[1:])]
    assert all(timedelta(minutes=90) <= gap <= timedelta(hours=3) for gap in gaps), gaps
    # What is read on the screen is what zoneinfo says the wall shows then.
    shown = [row.title.split(",")[0] for row in parent.tonight().times.rows]
    assert shown == [start.astimezone(here).strftime("%H:%M") for start in starts]


def test_a_flight_across_zones_keeps_the_elapsed_gap(open_record, present, tmp_path):
    last = datetime(2026, 6, 3, 14, 0, tzinfo=UTC)
    parent = Parent(open_record, present, tmp_path, "Europe/Berlin", last)
    at_home = [e.start for e in live(icalendar.Calendar.from_ical(parent.calendar()))]
    present.at = present.at.astimezone(NEW_YORK)
    abroad = live(icalendar.Calendar.from_ical(parent.calendar()))
    ends = [last] + [event.end for event in abroad]
    assert all(later - earlier <= timedelta(hours=3) for earlier, later in zip(ends, ends[1:]))
    assert at_home[0].utcoffset() == timedelta(0)


def test_alarms_ring_when_they_are_said_to(open_record, present, tmp_path):
    parent = Parent(open_record, present, tmp_path, "Europe/Berlin", datetime(2026, 6, 3, 18, 0, tzinfo=UTC))
    events = live(icalendar.Calendar.from_ical(parent.calendar()))
    assert len(events) > 5
    for event in events:
        rings = sorted(alarm.trigger for alarm in event.alarms.times)
        assert rings == [event.start - timedelta(minutes=10), event.start]


def test_a_second_reader_finds_each_session_once(open_record, present, tmp_path):
    parent = Parent(open_record, present, tmp_path, "Europe/Berlin", datetime(2026, 6, 3, 18, 0, tzinfo=UTC))
    calendar = icalendar.Calendar.from_ical(parent.calendar())
    found = recurring_ical_events.of(calendar).between(parent.last, parent.last + timedelta(days=3))
    assert [e.start for e in found] == [e.start for e in calendar.walk("VEVENT")]
    assert not [part for part in calendar.walk() if part.errors]


def test_a_calendar_that_takes_the_plan_in_again_holds_what_is_planned(open_record, present, tmp_path):
    """Keeps events by UID as RFC 5546 asks: the highest SEQUENCE holds, cancelled ones go."""
    parent = Parent(open_record, present, tmp_path, "Europe/Berlin", datetime(2026, 6, 3, 18, 0, tzinfo=UTC))
    held = {}

    def take_in():
        for event in icalendar.Calendar.from_ical(parent.calendar()).walk("VEVENT"):
            known = held.get(event["UID"])
            if known is None or (event["SEQUENCE"], event["DTSTAMP"].dt) >= (known["SEQUENCE"], known["DTSTAMP"].dt):
                held[event["UID"]] = event

    take_in()
    for hours in (2, 5, 9, 14):
        parent.present.passes(hours=hours)
        screen = parent.tonight()
        if screen.actions:
            parent.record.update(screen.actions[1].event, parent.present.clock())
        take_in()
        coming = sorted(e.start for e in held.values() if e["STATUS"] != "CANCELLED" and e.end > parent.present.at)
        shown = [row.title.split(",")[0] for row in parent.tonight().times.rows]
        assert [at.astimezone(parent.zone).strftime("%H:%M") for at in coming] == shown


# RFC 5545 3.8.5.3, each with DTSTART;TZID=America/New_York:19970902T090000.
RULES = [
    ("FREQ=DAILY;COUNT=10", 10, "19970911T090000"),
    ("FREQ=DAILY;INTERVAL=10;COUNT=5", 5, "19971012T090000"),
    ("FREQ=MINUTELY;INTERVAL=15;COUNT=6", 6, "19970902T101500"),
    ("FREQ=WEEKLY;COUNT=10", 10, "19971104T090000"),
    ("FREQ=DAILY;UNTIL=19971224T000000Z", 113, "19971223T090000"),
    # Printed as 09:00, 12:00, 15:00; 17:00Z is 13:00 there, so that the last falls away.
    ("FREQ=HOURLY;INTERVAL=3;UNTIL=19970902T170000Z", 2, "19970902T120000"),
    # As the erratum has it.
    ("FREQ=HOURLY;INTERVAL=3;UNTIL=19970902T210000Z", 3, "19970902T150000"),
]


@pytest.mark.parametrize(("rule", "count", "last"), RULES)
def test_the_witnesses_read_the_examples_of_rfc_5545(rule, count, last):
    """Two readers that get these right are trusted with our file."""
    start = datetime(1997, 9, 2, 9, tzinfo=NEW_YORK)
    event = icalendar.Event.new(start=start, uid="rfc", summary="example")
    event.add("rrule", icalendar.vRecur.from_ical(rule))
    calendar = icalendar.Calendar.new(subcomponents=[event])
    found = recurring_ical_events.of(calendar).between(start, start + timedelta(days=200))
    by_dateutil = list(rrulestr(rule, dtstart=start))
    assert len(found) == len(by_dateutil) == count
    for reader in (found[-1].start, by_dateutil[-1]):
        assert reader.strftime("%Y%m%dT%H%M%S") == last
