"""What Comfort's statistics are held to is what the libraries still say."""

import json
from pathlib import Path

import pytest
from comfort_vectors import METHODS, made

VECTORS = Path(__file__).parents[1] / "vectors"


def alike(found, expected):
    if isinstance(expected, dict):
        return found.keys() == expected.keys() and all(alike(found[name], part) for name, part in expected.items())
    if isinstance(expected, list):
        return len(found) == len(expected) and all(map(alike, found, expected))
    if expected is None or found is None:
        return found == expected
    return found == pytest.approx(expected, rel=1e-8, abs=1e-12)


@pytest.mark.parametrize("method", METHODS, ids=lambda method: method.__name__)
def test_what_is_kept_is_what_the_libraries_say(method):
    kept = json.loads((VECTORS / f"{method.__name__}.json").read_text(encoding="utf-8"))
    anew = json.loads(json.dumps(made(method)))
    assert anew["made_with"] == kept["made_with"]
    for now, then in zip(anew["cases"], kept["cases"], strict=True):
        assert alike(now, then), then
