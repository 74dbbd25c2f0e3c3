"""What is kept of the reference libraries is what they still say, and the program agrees."""

import json
import os
import subprocess
import warnings
from pathlib import Path

import pytest
from statistics_vectors import METHODS, made

VECTORS = Path(__file__).parents[1] / "vectors"
RUNNER = os.environ["DRAWWELL_HEADLESS"]


def alike(found, expected):
    """The same to nine figures; what is found may have more parts."""
    if isinstance(expected, dict):
        return all(alike(found[name], part) for name, part in expected.items())
    if isinstance(expected, list):
        return len(found) == len(expected) and all(map(alike, found, expected))
    if expected is None or found is None:
        return found == expected
    return found == pytest.approx(expected, rel=1e-9, abs=1e-13)


@pytest.mark.parametrize("method", METHODS, ids=lambda method: method.__name__)
def test_what_is_kept_is_what_the_libraries_say(method):
    kept = json.loads((VECTORS / f"{method.__name__}.json").read_text(encoding="utf-8"))
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", RuntimeWarning)
        anew = json.loads(json.dumps(made(method)))
    assert anew["made_with"] == kept["made_with"]
    for now, then in zip(anew["cases"], kept["cases"], strict=True):
        assert alike(now, then), then


def asked(requests):
    lines = "".join(json.dumps(request) + "\n" for request in requests)
    done = subprocess.run([RUNNER, "statistics"], input=lines, capture_output=True, text=True, check=True)
    return [json.loads(line) for line in done.stdout.splitlines()]


def cost(values, changes, penalty):
    edges = [0, *changes, len(values)]
    parts = [values[start:end] for start, end in zip(edges, edges[1:])]
    return sum(sum((value - sum(part) / len(part)) ** 2 for value in part) for part in parts) + penalty * len(changes)


@pytest.mark.parametrize("method", METHODS, ids=lambda method: method.__name__)
def test_the_program_says_the_same(method):
    name = method.__name__
    cases = json.loads((VECTORS / f"{name}.json").read_text(encoding="utf-8"))["cases"]
    answers = asked({"method": name.removesuffix("_gaps"), **case["request"]} for case in cases)
    for found, case in zip(answers, cases, strict=True):
        request, expected = case["request"], case["expected"]
        if name == "autocorrelation":
            found = {part: [lag[part] for lag in found] for part in ("value", "pairs")}
        if name == "pelt" and found != expected:
            # ruptures drops a start too early now and then; its segments cost more.
            both = [cost(request["values"], changes, request["penalty"]) for changes in (found, expected)]
            assert both[0] < both[1] - 1e-9, case
        elif name == "uncertain":
            # Sixteen places against SciPy's quadrature.
            assert found["below"] == pytest.approx(expected["below"], abs=1e-6), case
            assert found["uncertainty"] == pytest.approx(expected["uncertainty"], rel=1e-9), case
        else:
            assert alike(found, expected), case


def test_a_line_that_is_no_request_is_answered_as_one():
    assert "error" in asked(["no object"])[0]
    assert asked([{"method": "robust_slope", "values": [1.0]}, {"method": "quantile", "values": []}]) == [None, None]
