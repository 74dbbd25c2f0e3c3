"""The exchange form through the surface, read by Python's own JSON and clocks."""

import json
from collections import Counter
from datetime import datetime
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest
from conftest import Present
from drawwell import Event, Export, Place

DEMO_DATA = Path(__file__).parents[2] / "demo-data"
FAMILY = DEMO_DATA / "family.jsonl"


@pytest.fixture
def present():
    at, zone = (DEMO_DATA / "family.clock").read_text().strip().rstrip("]").split("[")
    return Present(datetime.fromisoformat(at).astimezone(ZoneInfo(zone)))


def facts(file):
    return [json.loads(line) for line in file.read_text(encoding="utf-8").splitlines()][1:]


def test_the_family_comes_out_as_it_went_in(open_record, present, tmp_path):
    record = open_record("family")
    screen = record.import_file(str(FAMILY), present.clock()).screen
    assert [group.key for group in screen.list.groups] == ["taken"], "no line was wrong"
    out = tmp_path / "out.jsonl"
    record.export(Export.RECORD(), str(out), present.clock())
    assert out.read_bytes() == FAMILY.read_bytes()


# What a day does not list: its settings, and milk that is kept, which has a shelf of its own.
ELSEWHERE = {"settings", "container", "milk_event", "cleaning"}


def test_each_day_has_the_sessions_that_pythons_clock_puts_in_it(open_record, present):
    """Days begin at 4 o'clock, wherever the family then was."""
    record = open_record("family", look_around=True)
    record.import_file(str(FAMILY), present.clock())
    expected = Counter()
    for fact in facts(FAMILY):
        if fact["fact"] not in ELSEWHERE and ("started" in fact or "at" in fact):
            moment = fact.get("started") or fact["at"]
            wall = datetime.fromisoformat(moment["at"]).astimezone(ZoneInfo(moment["zone"]))
            assert wall.isoformat(timespec="milliseconds") == moment["at"], "the zone gives the offset"
            expected[(wall.replace(tzinfo=None).timestamp() - 4 * 3600) // 86400] += 1
    today = (present.at.replace(tzinfo=None).timestamp() - 4 * 3600) // 86400
    for back in (0, 1, 19, 20, 54, 56, 137, 138):
        day = record.show(Place.DAY(days_back=back), present.clock()).day
        assert len(day.entries) == expected[today - back], f"{back} days back"


def test_a_wrong_line_is_told_and_the_others_are_taken(open_record, present, tmp_path):
    lines = FAMILY.read_text(encoding="utf-8").splitlines()[:30]
    lines[20] = lines[20][:40]
    broken = tmp_path / "broken.jsonl"
    broken.write_text("\n".join(lines), encoding="utf-8")
    record = open_record()
    groups = {group.key: group for group in record.import_file(str(broken), present.clock()).screen.list.groups}
    assert ["21" in row.title for row in groups["wrong"].rows] == [True]
    record.update(Event.UNDO(), present.clock())
    out = tmp_path / "out.jsonl"
    record.export(Export.RECORD(), str(out), present.clock())
    assert [fact for fact in facts(out) if not fact.get("taken_out")] == [], "undo takes the file back as a whole"
