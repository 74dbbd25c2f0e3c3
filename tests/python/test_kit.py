"""A check with a gauge through the surface, its chance worked out once more with SciPy."""

from datetime import datetime
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from drawwell import Event, Place
from scipy import integrate, stats

BERLIN = ZoneInfo("Europe/Berlin")
KIT = """{"fact":"pump","id":"p","name":"Marl","maximum_vacuum_low":{"value":250,"unit":"mm[Hg]"},"maximum_vacuum_high":{"value":280,"unit":"mm[Hg]"}}
{"fact":"gauge","id":"g","span":{"value":450,"unit":"mm[Hg]"},"reads_in":"mm[Hg]","accuracy_class":"1.6","resolution":{"value":2,"unit":"mm[Hg]"}}
"""


@pytest.fixture
def checked(open_record, present, tmp_path):
    """Brings the kit in and writes readings down, as a thumb does."""
    present.at = datetime(2026, 3, 1, 10, 0, tzinfo=BERLIN)
    file = tmp_path / "kit.jsonl"
    file.write_text(KIT, encoding="utf-8")
    record = open_record()
    record.import_file(str(file), present.clock())

    def check(*readings):
        record.update(Event.BEGIN_CHECK(pump="p"), present.clock())
        for reading in readings:
            screen = record.here(present.clock())
            event = Event.ENTER(id=screen.check.reading.id, field="readings/next", typed=str(reading))
            record.update(event, present.passes(seconds=40))
        return record.show(Place.PUMP(id="p"), present.clock()).findings

    return check


def chance_within(readings, low, high, greatest=7.2, step=1.0):
    """Mean, two rectangles and a scaled t, by SciPy's quadrature."""
    values = np.array(readings, float)
    law = stats.t(len(values) - 1, loc=values.mean(), scale=values.std(ddof=1) / np.sqrt(len(values)))

    def below(limit):
        def over(wide):
            return integrate.quad(lambda v: law.cdf(limit - wide - v), -step, step)[0] / (2 * step)

        return integrate.quad(over, -greatest, greatest)[0] / (2 * greatest)

    return below(high) - below(low)


@pytest.mark.parametrize("readings", [(252, 254, 252), (256, 254, 250), (246, 248, 250), (276, 278, 274)])
def test_the_chance_is_what_scipy_makes_of_it(checked, readings):
    found = checked(*readings)
    chance = chance_within(readings, 250, 280)
    # What is said is the chance within, or below where that is nearly sure.
    assert 0.05 < chance < 0.95
    assert f"Left: {100 * chance:.0f}% sure it is in range (250 to 280 mmHg)" in " ".join(found.lines + [line for part in found.sections for line in part.lines])
    assert found.headline == "Can’t tell with this gauge"


def test_a_pump_that_surely_meets_its_range_says_so_and_one_that_surely_does_not(checked):
    assert checked(264, 266, 264).headline == "Within its maker’s range"


def test_a_weak_one_is_said_to_be_below(checked):
    assert checked(230, 232, 230).headline == "Below its maker’s range"
