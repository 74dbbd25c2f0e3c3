"""Supply through the surface, over the invented family.

A day's production is worked out here once more, from the exchange form alone:
what a side gave at the end of an interval was made over that interval, days
begin at four by the clock of zoneinfo with PyPI's tzdata, and a day of 23 hours
is scaled to 24.
"""

import json
import re
from datetime import date, datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest
from drawwell import Event, Place

DEMO = Path(__file__).resolve().parents[2] / "demo-data" / "family.jsonl"
BERLIN = ZoneInfo("Europe/Berlin")
HOUR = timedelta(hours=1)
# Removals within an hour of each other are one emptying; longer than 18 h is no
# one interval (the program's own constants, said in core/answers/src/answer/supply).
ONE_EMPTYING, LONGEST = HOUR, 18 * HOUR


@pytest.fixture
def family(open_record, present):
    present.at = datetime(2026, 8, 14, 12, 40, tzinfo=BERLIN)
    record = open_record()
    record.import_file(str(DEMO), present.clock())
    return record


def sessions():
    """Each session's end, and what each side gave; None where it is not known."""
    for line in DEMO.read_text().splitlines():
        fact = json.loads(line)
        if fact.get("fact") != "session" or "ended" not in fact:
            continue
        sides, given = fact.get("sides", "both"), {}
        for side in ("left", "right"):
            if sides not in ("both", side):
                continue
            together = fact.get("amount_together", {}).get("value")
            alone = fact.get(f"amount_{side}", {}).get("value")
            if fact.get("method") == "at_breast":
                before, after = (fact.get(f"weight_{when}", {}).get("value") for when in ("before", "after"))
                # 1.03 g/mL, from memory.
                whole = None if before is None or after is None or after < before else (after - before) / 1.03
                given[side] = whole if whole is None or sides != "both" else whole / 2
            elif together is not None and sides == "both":
                given[side] = together / 2
            else:
                given[side] = alone
        yield datetime.fromisoformat(fact["ended"]["at"]), given


def intervals(side):
    found, last = [], None
    for at, given in sorted(sessions(), key=lambda session: session[0]):
        if side not in given:
            continue
        milk = given[side]
        if last is not None and found and at - found[-1][1] <= ONE_EMPTYING:
            before = found[-1]
            found[-1] = (before[0], at, None if None in (before[2], milk) else before[2] + milk)
        elif last is not None:
            found.append((last, at, milk))
        last = at
    return [i for i in found if i[2] is not None and timedelta(0) < i[1] - i[0] <= LONGEST]


def produced(day: date):
    """mL in 24 h, and the length of the day in hours."""
    begins = datetime(day.year, day.month, day.day, 4, tzinfo=BERLIN).timestamp()
    next_day = day + timedelta(days=1)
    ends = datetime(next_day.year, next_day.month, next_day.day, 4, tzinfo=BERLIN).timestamp()
    rates, observed = 0.0, []
    for side in ("left", "right"):
        milk = seconds = 0.0
        for start, end, volume in intervals(side):
            inside = min(ends, end.timestamp()) - max(begins, start.timestamp())
            if inside > 0:
                seconds += inside
                milk += volume * inside / (end - start).total_seconds()
        rates += milk / seconds * 86400
        observed.append(seconds / (ends - begins))
    return rates, sum(observed) / 2, (ends - begins) / 3600


def test_supply_of_the_family_is_said_through_the_surface(family, present):
    screen = family.show(Place.SUPPLY(days=28), present.clock())
    assert screen.is_supply()
    supply = screen.supply
    assert supply.headline == "Steady"
    figure = int(re.fullmatch(r"about (\d+) mL a day", supply.figure).group(1))
    days = [date(2026, 8, 13) - timedelta(days=back) for back in range(28)]
    mean = sum(produced(day)[0] for day in days) / len(days)
    # Figures are said in steps of five; what may hide a session is left out there.
    assert abs(figure - mean) < 10, (figure, mean)
    assert 29 == len(supply.weeks.bars), "28 days and today"


def figures_of_days(record, clock, days):
    screen = record.show(Place.SUPPLY_FIGURES(days=days), clock)
    group = next(group for group in screen.list.groups if group.key == "figures-days")
    return {row.title: row.detail for row in group.rows}


@pytest.mark.parametrize("back", [0, 1, 2, 3])
def test_a_day_of_23_hours_and_its_neighbours_are_made_of_their_intervals(family, present, back):
    # The clock goes forward on 29 March at two: in the day that began at four on the 28th.
    day = date(2026, 3, 30) - timedelta(days=back)
    present.at = datetime(2026, 3, 31, 12, 0, tzinfo=BERLIN)
    told = figures_of_days(family, present.clock(), 14)[f"{day:%A} {day.day} {day:%B}"]
    made, observed = re.match(r"(\d+) mL made, (\d+)% logged", told).groups()
    expected, share, hours = produced(day)
    assert hours == (23 if day == date(2026, 3, 28) else 24)
    assert abs(int(made) - expected) <= 5, (told, expected)
    assert abs(int(observed) - share * 100) <= 1, (told, share)
