"""The standard atmosphere that is kept is what the other library still says."""

from pathlib import Path

import air_vectors


def test_what_is_kept_is_what_the_library_says():
    kept = (Path(__file__).parents[1] / "vectors" / "standard_atmosphere.json").read_text(encoding="utf-8")
    assert air_vectors.text() == kept
