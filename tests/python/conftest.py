"""A record of the test's own, and a clock that stands where it is put."""

from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

import pytest
from drawwell import Clock, Drawwell, Opening

BERLIN = ZoneInfo("Europe/Berlin")


class Present:
    """The moment of the next call; it moves only when told."""

    def __init__(self, at: datetime):
        self.at = at

    def passes(self, **span):
        self.at += timedelta(**span)
        return self.clock()

    def clock(self) -> Clock:
        zone = getattr(self.at.tzinfo, "key", "UTC")
        return Clock(unix_milliseconds=round(self.at.timestamp() * 1000), zone=zone)


@pytest.fixture
def present():
    return Present(datetime(2026, 5, 9, 14, 20, tzinfo=BERLIN))


@pytest.fixture
def open_record(tmp_path, present):
    """Opens a record by name; the same name twice is the same record."""

    def open_it(name="record", look_around=False):
        opening = Opening(device="python", language="en", look_around=look_around)
        return Drawwell.open(str(tmp_path / f"{name}.drawwell"), opening, present.clock())

    return open_it
