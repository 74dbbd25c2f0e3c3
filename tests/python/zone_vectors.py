"""Every zone from 2018 to 2030 by PyPI's tzdata, read by Python's zoneinfo.

`PYTHONTZPATH= python zone_vectors.py FILE` writes them with the version they were made with.
Zones whose clocks went alike in these years stand together. Of every change of a clock: the
instant and the offset after it; times typed around it; when the days around it begin; and to
which day instants around it belong. Instants are seconds of Unix time, walls are seconds as
if they stood on the wall of universal time.
"""

import json
import sys
from datetime import date, datetime, time, timedelta, timezone
from importlib.metadata import version
from pathlib import Path
from zoneinfo import ZoneInfo, available_timezones

UTC = timezone.utc
FROM = int(datetime(2018, 1, 1, tzinfo=UTC).timestamp())
UNTIL = int(datetime(2031, 1, 1, tzinfo=UTC).timestamp())
STEP = 6 * 3600
DAY_STARTS = (0, 4)


def local(at: int, zone: ZoneInfo) -> datetime:
    return datetime.fromtimestamp(at, zone)


def offset(at: int, zone: ZoneInfo) -> int:
    return int(local(at, zone).utcoffset().total_seconds())


def changes(zone: ZoneInfo) -> list[tuple[int, int]]:
    """Each change of offset, to the second."""
    found, before = [], offset(FROM, zone)
    for at in range(FROM, UNTIL, STEP):
        after = offset(at + STEP, zone)
        if after != before:
            low, high = at, at + STEP
            while high - low > 1:
                middle = (low + high) // 2
                low, high = (middle, high) if offset(middle, zone) == before else (low, middle)
            found.append((high, after))
        before = after
    return found


def exists(wall: datetime, fold: int, zone: ZoneInfo) -> int | None:
    instant = wall.replace(tzinfo=zone, fold=fold).astimezone(UTC)
    same = instant.astimezone(zone).replace(tzinfo=None, fold=0) == wall
    return int(instant.timestamp()) if same else None


def resolved(wall: datetime, zone: ZoneInfo) -> tuple[int, str]:
    """A time that exists is itself, one that comes twice the earlier, and one that was skipped
    the next minute that exists."""
    first, second = exists(wall, 0, zone), exists(wall, 1, zone)
    if first is not None:
        return first, "once" if first == second else "twice"
    while first is None:
        wall += timedelta(minutes=1)
        first = exists(wall, 0, zone)
    return first, "skipped"


def as_wall(seconds: int) -> datetime:
    return datetime.fromtimestamp(seconds, UTC).replace(tzinfo=None)


def around(at: int, before: int, after: int, zone: ZoneInfo) -> dict:
    first, last = sorted((at + before, at + after))
    walls = [first - 60, first, (first + last) // 120 * 60, last - 60, last]
    begins, belongs = [], []
    for hour in DAY_STARTS:
        middle = as_wall(at + before).date()
        for day in (middle + timedelta(days=by) for by in (0, 1)):
            begin, _ = resolved(datetime.combine(day, time(hour)), zone)
            begins.append([day.isoformat(), hour, begin])
            belongs.append([begin - 1, hour, belongs_to(begin - 1, hour, zone)])
        belongs += [[near, hour, belongs_to(near, hour, zone)] for near in (at - 1, at, at + 1800)]
    return {
        "at": at,
        "offset": after,
        "typed": [[wall, *resolved(as_wall(wall), zone)] for wall in walls],
        "begins": begins,
        "belongs": belongs,
    }


def belongs_to(at: int, hour: int, zone: ZoneInfo) -> str:
    wall = local(at, zone).replace(tzinfo=None) - timedelta(hours=hour)
    return date.isoformat(wall.date())


def histories() -> list[dict]:
    alike: dict[tuple, list[str]] = {}
    for name in sorted(available_timezones()):
        zone = ZoneInfo(name)
        alike.setdefault((offset(FROM, zone), tuple(changes(zone))), []).append(name)
    found = []
    for (before, told), names in alike.items():
        zone, rows = ZoneInfo(names[0]), []
        first = before
        for at, after in told:
            rows.append(around(at, before, after, zone))
            before = after
        found.append({"zones": names, "offset": first, "changes": rows})
    return found


def text() -> str:
    made_with = json.dumps({"tzdata": version("tzdata")})
    rows = ",\n".join(json.dumps(history, separators=(",", ":")) for history in histories())
    return f'{{"made_with":{made_with},"from":{FROM},"until":{UNTIL},"histories":[\n{rows}\n]}}\n'


if __name__ == "__main__":
    Path(sys.argv[1]).write_text(text(), encoding="utf-8")
