"""What SciPy, scikit-learn and an independent integration make of what Comfort rests on.

`python comfort_vectors.py FOLDER` writes one JSON file a method, always the same ones:
randomisation tests within a design (`scipy.stats.permutation_test`, and for blocks every draw
made), the exact range of the pseudo-median (every set of signs made), the range of a median
(`scipy.stats.quantile_test`), bounds of looks (Gauss and Legendre's rule, where the program takes
Simpson's), least squares of several terms (`scipy.stats.t`, `numpy.linalg`), and rising values
with weights (`sklearn.isotonic.IsotonicRegression`).
"""

import itertools
import json
import sys
from importlib.metadata import version
from pathlib import Path

import numpy as np
from scipy import optimize, stats
from sklearn.isotonic import IsotonicRegression

from statistics_vectors import any_grid, rounded, values

SERIES = 200
MADE_WITH = ["numpy", "scipy", "scikit-learn"]


def sums_of(block):
    first, second = block
    both = first + second
    return [sum(chosen) for chosen in itertools.combinations(both, len(first))]


def randomisation(chance, turn):
    """Pairs that a coin turned, one block of so many, or several blocks of any make."""
    grid = any_grid(chance)
    if turn % 3 == 0:
        pairs = int(chance.integers(2, 11))
        one, other = values(chance, pairs, grid), values(chance, pairs, grid)
        blocks = [[[a], [b]] for a, b in zip(one.tolist(), other.tolist())]
        peer = stats.permutation_test(
            (one, other), lambda x, y: np.sum(x) - np.sum(y), permutation_type="samples", n_resamples=np.inf
        )
        p = peer.pvalue
    elif turn % 3 == 1:
        first, second = int(chance.integers(2, 7)), int(chance.integers(2, 7))
        one, other = values(chance, first, grid), values(chance, second, grid)
        blocks = [[one.tolist(), other.tolist()]]
        peer = stats.permutation_test(
            (one, other), lambda x, y: np.mean(x) - np.mean(y), permutation_type="independent", n_resamples=np.inf
        )
        p = peer.pvalue
    else:
        blocks = []
        for _ in range(int(chance.integers(2, 5))):
            first, second = int(chance.integers(1, 4)), int(chance.integers(1, 3))
            blocks.append([values(chance, first, grid).tolist(), values(chance, second, grid).tolist()])
        done = sum(sum(first) for first, _ in blocks)
        sums = np.array([sum(drawn) for drawn in itertools.product(*map(sums_of, blocks))])
        near = 1e-9
        p = min(1.0, 2 * min(np.mean(sums <= done + near), np.mean(sums >= done - near)))
    return {"blocks": blocks}, p


def paired_range(chance, turn):
    """Every set of signs; the means of two in order."""
    number = int(chance.integers(2, 15))
    found = values(chance, number, any_grid(chance))
    confidence = float(chance.choice([0.8, 0.9, 0.95, 0.99]))
    signs = np.array(list(itertools.product([0, 1], repeat=number)))
    sums = signs @ np.arange(1, number + 1)
    cut = max((k for k in range(sums.max()) if 2 * np.mean(sums <= k) <= 1 - confidence + 1e-12), default=None)
    if cut is None:
        return {"values": found, "confidence": confidence}, None
    means = np.sort([(found[i] + found[j]) / 2 for i in range(number) for j in range(i, number)])
    expected = {"low": means[cut], "high": means[len(means) - 1 - cut], "confidence": 1 - 2 * np.mean(sums <= cut)}
    return {"values": found, "confidence": confidence}, expected | {"shift": np.median(means)}


def median_range(chance, turn):
    found = values(chance, int(chance.integers(1, 60)), any_grid(chance))
    confidence = float(chance.choice([0.8, 0.9, 0.95]))
    peer = stats.quantile_test(found, q=np.median(found), p=0.5).confidence_interval(confidence)
    if np.isnan(peer.low) or np.isnan(peer.high):
        return {"values": found, "confidence": confidence}, None
    return {"values": found, "confidence": confidence}, {"median": np.median(found), "low": peer.low, "high": peer.high}


def bounds(chance, turn):
    """Bounds by Gauss and Legendre, looks anywhere."""
    number = int(chance.integers(1, 9))
    looks = np.round(np.sort(chance.choice(np.arange(4, 40), size=number, replace=False)) / 40, 6)
    looks[-1] = 1.0
    alpha = float(chance.choice([0.05, 0.1, 0.01]))
    spent = 4 * stats.norm.sf(stats.norm.ppf(1 - alpha / 4) / np.sqrt(looks))
    found, density, before, gone = [], None, 0.0, 0.0
    for look, all_spent in zip(looks, spent):
        spread = np.sqrt(look - before)

        def crossing(edge):
            if density is None:
                return 2 * stats.norm.sf(edge / spread)
            place, weight = density
            return np.sum(weight * (stats.norm.sf((edge - place) / spread) + stats.norm.cdf((-edge - place) / spread)))

        edge = optimize.brentq(lambda at: crossing(at) - (all_spent - gone), 1e-6, 12)
        place, weight = np.polynomial.legendre.leggauss(300)
        place, weight = place * edge, weight * edge
        if density is None:
            height = stats.norm.pdf(place, scale=spread)
        else:
            height = stats.norm.pdf(place[:, None] - density[0][None, :], scale=spread) @ density[1]
        density, before, gone = (place, weight * height), look, all_spent
        found.append(edge / np.sqrt(look))
    return {"chance": alpha, "looks": looks}, found


def regression(chance, turn):
    number, terms = int(chance.integers(8, 60)), int(chance.integers(1, 6))
    beside = np.round(chance.normal(0, 3, size=(number, terms)), 3)
    beside[:, 0] = 1.0
    found = np.round(beside @ chance.normal(0, 2, size=terms) + values(chance, number, 0.0), 4)
    of = np.round(chance.normal(0, 1, size=terms), 3)
    confidence = float(chance.choice([0.8, 0.9, 0.95]))
    fit, _, rank, _ = np.linalg.lstsq(beside, found, rcond=None)
    assert rank == terms
    left = found - beside @ fit
    freedom = number - terms
    spread = np.sqrt(left @ left / freedom)
    error = spread * np.sqrt(of @ np.linalg.inv(beside.T @ beside) @ of)
    expected = {"combined": of @ fit, "error": error, "spread": spread, "reach": stats.t.ppf(0.5 + confidence / 2, freedom)}
    return {"beside": beside.tolist(), "values": found, "of": of, "confidence": confidence}, expected


def rising_sklearn(chance, turn):
    found = values(chance, int(chance.integers(2, 50)), any_grid(chance))
    weights = np.round(chance.uniform(0.2, 5, size=len(found)), 3)
    peer = IsotonicRegression().fit_transform(np.arange(len(found)), found, sample_weight=weights)
    return {"values": found, "weights": weights}, peer


# Each with a number of its own to draw from, which it keeps.
METHODS = {randomisation: 0, paired_range: 1, median_range: 2, bounds: 3, regression: 4, rising_sklearn: 5}


def made(method):
    """A file's worth: how it was made, and the cases."""
    chance = np.random.default_rng([20261127, METHODS[method]])
    cases = []
    for turn in range(SERIES):
        request, expected = method(chance, turn)
        request = {name: rounded(part) for name, part in request.items()}
        cases.append({"request": request, "expected": None if expected is None else rounded(expected)})
    return {"made_with": {name: version(name) for name in MADE_WITH}, "cases": cases}


def write(folder):
    for method in METHODS:
        file = made(method)
        lines = ",\n".join(json.dumps(case, separators=(",", ":")) for case in file["cases"])
        text = f'{{"made_with":{json.dumps(file["made_with"])},"cases":[\n{lines}\n]}}\n'
        (folder / f"{method.__name__}.json").write_text(text, encoding="utf-8")


if __name__ == "__main__":
    write(Path(sys.argv[1]))
