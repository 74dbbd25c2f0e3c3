"""Local times as they are typed, held to Python's zoneinfo with PyPI's tzdata.

The rule: a time that exists is itself; one that comes twice is the earlier; one
that was skipped is the next that exists. zoneinfo finds the same by walking
minute by minute, which the program does not.
"""

import json
import random
from datetime import date, datetime, timedelta, timezone
from zoneinfo import ZoneInfo

import pytest
from drawwell import Event

UTC = timezone.utc
ZONES = [
    "Europe/Berlin",
    "Europe/London",
    "Europe/Dublin",
    "America/New_York",
    "America/St_Johns",
    "America/Sao_Paulo",
    "Africa/Cairo",
    "Asia/Kathmandu",
    "Asia/Tehran",
    "Australia/Lord_Howe",
    "Pacific/Chatham",
    "Pacific/Apia",
    "Antarctica/Troll",
]


def next_that_exists(wall: datetime, zone: ZoneInfo) -> datetime:
    """The instant zoneinfo gives, and where it gives none, the next minute's."""
    while True:
        instant = wall.replace(tzinfo=zone, fold=0).astimezone(UTC)
        if instant.astimezone(zone).replace(tzinfo=None) == wall:
            return instant
        wall += timedelta(minutes=1)


def changes_of_clock(zone: ZoneInfo, years: range) -> list[datetime]:
    """The wall time just before each change of offset."""
    found = []
    at = datetime(years.start, 1, 1, tzinfo=UTC)
    while at.year < years.stop:
        later = at + timedelta(hours=1)
        if at.astimezone(zone).utcoffset() != later.astimezone(zone).utcoffset():
            found.append(at.astimezone(zone).replace(tzinfo=None))
        at = later
    return found


def write_down(record, clock, on: date, typed: str, tmp_path) -> datetime:
    """The instant a note gets when its date and time are typed."""
    note = record.update(Event.ADD(kind="note", days_back=0), clock).screen.form.id
    record.update(Event.ENTER(id=note, field="at/date", typed=on.isoformat()), clock)
    record.update(Event.ENTER(id=note, field="at", typed=typed), clock)
    copy = tmp_path / "copy.jsonl"
    record.take_out("record", str(copy), clock)
    for line in copy.read_text().splitlines():
        fact = json.loads(line)
        if fact.get("id") == note:
            return datetime.fromisoformat(fact["at"]["at"])
    raise AssertionError("the note is in the copy")


@pytest.mark.parametrize("name", ZONES)
def test_typed_times_around_every_kind_of_clock_change(name, open_record, present, tmp_path):
    zone = ZoneInfo(name)
    present.at = datetime(2026, 11, 20, 12, 0, tzinfo=zone)
    record, clock = open_record(), present.clock()
    chance = random.Random(name)
    walls = [datetime(2026, 2, 1, 7, 40), datetime(2019, 7, 1, 23, 59)]
    for change in changes_of_clock(zone, range(2018, 2026))[:6]:
        walls += [change + timedelta(minutes=chance.randint(-90, 150)) for _ in range(4)]
    for wall in walls:
        found = write_down(record, clock, wall.date(), wall.strftime("%H:%M"), tmp_path)
        assert found.astimezone(UTC) == next_that_exists(wall.replace(second=0), zone), wall


def test_apias_missing_day_begins_where_the_next_one_does(open_record, present, tmp_path):
    zone = ZoneInfo("Pacific/Apia")
    present.at = datetime(2026, 11, 20, 12, 0, tzinfo=zone)
    record, clock = open_record(), present.clock()
    note = record.update(Event.ADD(kind="note", days_back=0), clock).screen.form.id
    record.update(Event.ENTER(id=note, field="at/date", typed="2011-12-30"), clock)
    copy = tmp_path / "copy.jsonl"
    record.take_out("record", str(copy), clock)
    at = json.loads(copy.read_text().splitlines()[-1])["at"]["at"]
    assert datetime.fromisoformat(at) == next_that_exists(datetime(2011, 12, 30, 12, 0), zone)
    assert at.startswith("2011-12-31T00:00")
