"""The waveforms that are kept are those the script makes, and SciPy still finds the same in them."""

import json
from pathlib import Path

import pytest
from trace_waveforms import WAVEFORMS, made

FOLDER = Path(__file__).parents[1] / "vectors" / "traces"


@pytest.fixture(scope="module")
def anew():
    return made()


# Where a top is flat, another processor's last figure decides which of its rows is the peak,
# and the first and the last peak make the rate.
LOOSELY = {"rate": 0.02}


def alike(found, expected, rel=1e-4):
    if isinstance(expected, dict):
        parts = ((found.get(name), part, LOOSELY.get(name, rel)) for name, part in expected.items())
        return found.keys() == expected.keys() and all(alike(*part) for part in parts)
    if isinstance(expected, list):
        return len(found) == len(expected) and all(alike(*pair, rel) for pair in zip(found, expected))
    if isinstance(expected, float):
        return found == pytest.approx(expected, rel=rel, abs=1e-9)
    return found == expected


def test_every_waveform_is_kept_as_it_is_made(anew):
    _, cases = anew
    assert {path.stem for path in FOLDER.glob("*.csv")} == {name for name, _, _ in cases}
    assert len(cases) == len(WAVEFORMS) >= 12
    for name, text, _ in cases:
        kept = (FOLDER / f"{name}.csv").read_text(encoding="utf-8").splitlines()
        # Another processor's cosine may end in another figure, and be rounded the other way.
        different = [rows for rows in zip(kept, text.splitlines(), strict=True) if rows[0] != rows[1]]
        assert len(different) <= 5, (name, different[:5])


def test_what_is_expected_is_what_scipy_finds(anew):
    made_with, cases = anew
    kept = json.loads((FOLDER / "expected.json").read_text(encoding="utf-8"))
    assert made_with == kept["made_with"]
    assert kept["cases"].keys() == {name for name, _, _ in cases}
    for name, _, expected in cases:
        assert alike(json.loads(json.dumps(expected)), kept["cases"][name]), name
