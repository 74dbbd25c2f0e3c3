"""The refill curves that are kept are those that SciPy still fits."""

import json
from pathlib import Path

import pytest
import refill_vectors


def alike(found, expected):
    if isinstance(expected, dict):
        return all(alike(found[name], part) for name, part in expected.items())
    if isinstance(expected, list):
        return len(found) == len(expected) and all(map(alike, found, expected))
    return found == pytest.approx(expected, rel=1e-6, abs=1e-8)


def test_what_is_kept_is_what_the_library_says():
    kept = json.loads((Path(__file__).parents[1] / "vectors" / "refill.json").read_text(encoding="utf-8"))
    anew = json.loads(refill_vectors.text())
    assert anew["made_with"] == kept["made_with"]
    for now, then in zip(anew["cases"], kept["cases"], strict=True):
        assert alike(now, then), then["expected"]
