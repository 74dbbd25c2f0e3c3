"""The standard atmosphere by another library, at geopotential heights.

`python air_vectors.py FILE` writes them with the version they were made with.
"""

import json
import sys
from importlib.metadata import version
from pathlib import Path

from ambiance import Atmosphere

EARTH = 6_356_766.0
"""Radius that turns a geometric height into a geopotential one (ICAO Doc 7488)."""


def rows():
    found = []
    for meters in range(-400, 9001, 100):
        geometric = EARTH * meters / (EARTH - meters)
        found.append({"meters": meters, "hectopascal": round(float(Atmosphere(geometric).pressure[0]) / 100, 6)})
    return found


def made():
    return {"made_with": {"ambiance": version("ambiance")}, "rows": rows()}


def text():
    file = made()
    lines = ",\n".join(json.dumps(row, separators=(",", ":")) for row in file["rows"])
    return f'{{"made_with":{json.dumps(file["made_with"])},"rows":[\n{lines}\n]}}\n'


if __name__ == "__main__":
    Path(sys.argv[1]).write_text(text(), encoding="utf-8")
