"""Series with what SciPy, statsmodels, pymannkendall and ruptures make of them.

`python statistics_vectors.py FOLDER` writes one JSON file a method. Series are on a grid
of quarters or of tenths, or not at all; with ties, gaps, trends, steps and likeness of
neighbours; always the same ones. Where a method has no peer for gaps, what stands here is
the published formula over the peer's parts, written without looking at the program's.
"""

import json
import sys
from importlib.metadata import version
from pathlib import Path

import numpy as np
import pymannkendall
import ruptures
from scipy import integrate, optimize, stats
from statsmodels.tsa.stattools import acf

SERIES = 200
MADE_WITH = ["numpy", "scipy", "statsmodels", "pymannkendall", "ruptures"]


def rounded(value):
    """Twelve figures, which is more than is compared."""
    if isinstance(value, dict):
        return {name: rounded(part) for name, part in value.items()}
    if isinstance(value, (list, tuple, np.ndarray)):
        return [rounded(part) for part in value]
    if isinstance(value, (int, np.integer)):
        return int(value)
    return float(f"{float(value):.12g}")


def values(chance, number, grid=None):
    """Likeness of neighbours, a trend, a step; on a grid of the given width."""
    likeness = chance.choice([0.0, 0.0, 0.3, 0.6, -0.4])
    noise = np.zeros(number)
    for day in range(number):
        noise[day] = likeness * (noise[day - 1] if day else 0.0) + chance.normal(0, 4)
    noise += chance.choice([0.0, 0.05, -0.2]) * np.arange(number)
    noise += chance.choice([0.0, 6.0]) * (np.arange(number) > chance.integers(number))
    grid = chance.choice([0.25, 0.25, 1.0, 3.0]) if grid is None else grid
    return np.round(np.round(noise / grid) * grid if grid else noise, 6)


def any_grid(chance):
    return chance.choice([0.0, 0.1, 0.25, 1.0, 3.0])


def with_gaps(chance, number):
    days = np.sort(chance.choice(np.arange(number), size=max(3, int(number * chance.uniform(0.4, 0.95))), replace=False))
    return days - days[0]


def robust_slope(chance, turn):
    number = int(chance.integers(3, 70)) if turn % 40 else 400
    at = np.arange(number) if turn % 3 == 0 else with_gaps(chance, 2 * number)
    if turn % 5 == 0:
        at = np.sort(chance.choice(at, size=len(at)))
        if len(set(at)) < 2:
            at = np.arange(len(at))
    found = values(chance, len(at), any_grid(chance))
    confidence = float(chance.choice([0.8, 0.9, 0.95, 0.99]))
    peer = stats.theilslopes(found, at, confidence)
    expected = {"slope": peer[0], "intercept": peer[1], "low": peer[2], "high": peer[3]}
    return {"at": at, "values": found, "confidence": confidence, "variance_inflation": 1.0}, expected


def trend(peer):
    return {"s": int(peer.s), "variance": peer.var_s, "z": peer.z, "p": peer.p, "tau": peer.Tau}


def mann_kendall(chance, turn):
    found = values(chance, int(chance.integers(3, 80)), any_grid(chance))
    return {"values": found}, trend(pymannkendall.original_test(found))


def hamed_rao(chance, turn):
    """The program's factor is at least 1; z and p are compared where the peer's is too."""
    found = values(chance, int(chance.integers(12, 90)))
    while len(set(found)) < 4:
        found = values(chance, len(found))
    lags = None if turn % 2 else int(chance.integers(1, 10))
    peer = pymannkendall.hamed_rao_modification_test(found, lag=lags)
    plain = pymannkendall.original_test(found)
    expected = {"unbounded_inflation": peer.var_s / plain.var_s}
    if peer.var_s >= plain.var_s:
        expected |= trend(peer)
    return {"values": found, "lags": lags}, expected


def hamed_rao_gaps(chance, turn):
    """The formula over statsmodels' correlation of ranks, days missing."""
    at = with_gaps(chance, int(chance.integers(20, 110)))
    found = values(chance, len(at))
    while len(set(found)) < 4:
        found = values(chance, len(at))
    span, number = int(at[-1]) + 1, len(at)
    slope = stats.theilslopes(found, at)[0]
    ranks = np.full(span, np.nan)
    ranks[at] = stats.rankdata(found - (at + 1) * slope)
    likeness = acf(ranks, missing="conservative", nlags=span - 1, fft=False)
    there = ~np.isnan(ranks)
    total = 0.0
    for lag in range(1, span):
        pairs = np.count_nonzero(there[lag:] & there[:-lag])
        expected = number * (span - lag) / span
        if abs(likeness[lag]) > stats.norm.ppf(0.975) / np.sqrt(number) * np.sqrt(pairs / expected):
            total += expected * (expected - 1) * (expected - 2) * likeness[lag]
    factor = 1 + 2 / (number * (number - 1) * (number - 2)) * total
    plain = pymannkendall.original_test(found)
    variance = plain.var_s * max(factor, 1.0)
    z = (plain.s - np.sign(plain.s)) / np.sqrt(variance)
    expected = {"s": int(plain.s), "variance": variance, "z": z, "p": 2 * stats.norm.sf(abs(z)), "tau": plain.Tau}
    return {"at": at, "values": found, "lags": None}, expected | {"unbounded_inflation": factor}


def autocorrelation(chance, turn):
    at = with_gaps(chance, int(chance.integers(5, 80)))
    found = values(chance, len(at), any_grid(chance))
    while len(set(found)) < 2:
        found = values(chance, len(at), 0.25)
    days = np.full(int(at[-1]) + 1, np.nan)
    days[at] = found
    lags = int(min(chance.integers(1, 15), len(days) - 1))
    there = ~np.isnan(days)
    pairs = [int(np.count_nonzero(there[lag:] & there[: len(there) - lag])) for lag in range(lags + 1)]
    likeness = acf(days, missing="conservative", nlags=lags, fft=False)
    return {"at": at, "values": found, "lags": lags}, {"value": likeness, "pairs": pairs}


def pelt(chance, turn):
    """No grid, for two ways to the same cost are both right."""
    found = values(chance, int(chance.integers(12, 70)), 0.0)
    found += np.round(chance.normal(0, 5, size=5), 3)[np.sort(chance.integers(0, 5, size=len(found)))]
    found = np.round(found, 6)
    least, penalty = int(chance.integers(1, 6)), float(np.round(chance.uniform(5, 200), 2))
    peer = ruptures.Pelt(model="l2", min_size=least, jump=1).fit(found).predict(pen=penalty)
    return {"values": found, "penalty": penalty, "min_segment": least}, peer[:-1]


def shift(chance, turn):
    """By its definition, all differences made; σ² from SciPy's ranks."""
    first = values(chance, int(chance.integers(1, 40)), any_grid(chance))
    second = values(chance, int(chance.integers(1, 40)), any_grid(chance))
    confidence, inflation = float(chance.choice([0.8, 0.9, 0.95])), float(chance.choice([1.0, 1.7]))
    apart = np.sort(np.subtract.outer(second, first).ravel())
    n, m = len(first), len(second)
    factor = stats.tiecorrect(stats.rankdata(np.concatenate([first, second])))
    reach = stats.norm.ppf((1 + confidence) / 2) * np.sqrt(inflation * n * m * (n + m + 1) / 3 * factor)
    low = max(int(np.round((n * m - reach) / 2)) - 1, 0)
    high = min(int(np.round((n * m + reach) / 2)), n * m - 1)
    request = {"values": first, "other": second, "confidence": confidence, "variance_inflation": inflation}
    return request, {"shift": np.median(apart), "low": apart[low], "high": apart[high]}


def paired_shift(chance, turn):
    """Ties and zeros only beyond fifty, where SciPy has the normal distribution too."""
    if turn % 4:
        found = values(chance, int(chance.integers(2, 40)), 0.0)
        peer = stats.wilcoxon(found, method="exact")
    else:
        found = values(chance, int(chance.integers(60, 90)), float(chance.choice([0.25, 1.0])))
        found[:55][found[:55] == 0] = 0.5
        peer = stats.wilcoxon(found, correction=True, zero_method="wilcox", method="asymptotic")
    ranks = stats.rankdata(np.abs(found[found != 0]))
    means = np.add.outer(found, found)[np.triu_indices(len(found))] / 2
    return {"values": found}, {"shift": np.median(means), "v": ranks[found[found != 0] > 0].sum(), "p": peer.pvalue}


def quantile(chance, turn):
    found, p = values(chance, int(chance.integers(1, 40)), any_grid(chance)), float(np.round(chance.uniform(), 3))
    return {"values": found, "p": p}, np.quantile(found, p, method="linear")


def median_absolute_deviation(chance, turn):
    found = values(chance, int(chance.integers(1, 40)), any_grid(chance))
    return {"values": found}, stats.median_abs_deviation(found)


def uncertain(chance, turn):
    """Two rectangles and a scaled t by quadrature of SciPy's distribution, and where the
    rest is nothing the rectangles by themselves."""
    wide, narrow = float(np.round(chance.uniform(0.5, 30), 3)), float(np.round(chance.uniform(0.05, 1) ** 2 * 3, 3))
    freedom = int(chance.choice([2, 3, 4, 5, 8, 11, 40, 300]))
    spread = float(np.round(chance.uniform(0.2, 6), 3))
    value = float(np.round(chance.normal(0, wide), 3))
    law = stats.t(freedom, scale=spread)

    def below(apart):
        return integrate.quad(lambda v: law.cdf(apart - v), -wide, wide, epsabs=1e-12, limit=200)[0] / (2 * wide)

    found = integrate.quad(lambda v: below(value - v), -narrow, narrow, epsabs=1e-12, limit=200)[0] / (2 * narrow)
    request = {"wide": wide, "narrow": narrow, "standard_error": spread, "freedom": freedom, "value": value}
    return request, {"below": found, "uncertainty": np.sqrt((wide**2 + narrow**2) / 3 + spread**2)}


def rising(chance, turn):
    number = int(chance.integers(1, 40))
    found = values(chance, number, any_grid(chance)) + np.arange(number) * float(chance.choice([0, 0.5, 2]))
    weights = chance.integers(1, 6, size=number).astype(float)
    return {"values": found, "weights": weights}, optimize.isotonic_regression(found, weights=weights).x


def two_sided_t(chance, turn):
    confidence = float(np.round(chance.uniform(0.05, 0.995), 4))
    freedom = float(np.round(chance.choice([1, 2, 3, 5, 12, 40, 1990, 2010, 1e5, 1e9]) + chance.choice([0, 0, 0.37]), 2))
    return {"confidence": confidence, "freedom": freedom}, stats.t.ppf((1 + confidence) / 2, freedom)


def bend(chance, turn):
    """Level, then straight: NumPy's least squares at each whole place, SciPy's Student's t."""
    number = int(chance.integers(8, 60))
    at = (np.arange(number) if turn % 3 else with_gaps(chance, 2 * number)).astype(float)
    number = len(at)
    turns = at[0] + chance.uniform(0, 0.8) * (at[-1] - at[0])
    found = 50 + chance.normal(0, 2, size=number) + chance.choice([0.0, 0.5, -1.5]) * np.maximum(0, at - turns)
    found = np.round(found, 6)
    inflation = float(chance.choice([1.0, 1.6]))
    if number < 7:
        return {"at": at, "values": found, "confidence": 0.9, "variance_inflation": inflation}, None
    places = np.arange(at[0], at[-3] + 1)

    def fit(place):
        design = np.column_stack([np.ones(number), np.maximum(0, at - place)])
        best = np.linalg.lstsq(design, found, rcond=None)[0]
        return best, float(((found - design @ best) ** 2).sum())

    fits = [fit(place) for place in places]
    squares = np.array([left for _, left in fits])
    best = int(squares.argmin())
    t = stats.t.ppf(0.95, number - 3)
    inside = places[squares <= squares[best] * (1 + t**2 * inflation / (number - 3))]
    return {"at": at, "values": found, "confidence": 0.9, "variance_inflation": inflation}, {
        "at": places[best],
        "earliest": inside[0],
        "latest": inside[-1],
        "level": fits[best][0][0],
        "slope": fits[best][0][1],
        "squares": squares[best],
    }


# Each with a number of its own to draw from, which it keeps: its series stay the same ones.
METHODS = {
    robust_slope: 0,
    mann_kendall: 1,
    hamed_rao: 2,
    hamed_rao_gaps: 3,
    autocorrelation: 4,
    pelt: 5,
    shift: 6,
    paired_shift: 7,
    quantile: 9,
    median_absolute_deviation: 10,
    uncertain: 11,
    rising: 12,
    two_sided_t: 13,
    bend: 14,
}


def made(method):
    """A file's worth: how it was made, and the cases."""
    chance = np.random.default_rng([20261125, METHODS[method]])
    cases = []
    for turn in range(SERIES):
        request, expected = method(chance, turn)
        request = {name: rounded(part) if part is not None else None for name, part in request.items()}
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
