"""How long the program's statistics take beside SciPy's and pymannkendall's.

Not a test: `cargo xtask bench statistics` runs it over a release build. The same series
goes to both, each side times itself, and the median of the rounds counts.
"""

import json
import os
import statistics
import subprocess
import time

import numpy as np
import pymannkendall
from scipy import stats

RUNNER = os.environ["DRAWWELL_HEADLESS"]
DAYS = 3650


def series(days):
    """Amounts a day with a slow fall, likeness of neighbours and noise."""
    chance = np.random.default_rng(20261125)
    noise = np.zeros(days)
    for day in range(1, days):
        noise[day] = 0.4 * noise[day - 1] + chance.normal(0, 60)
    return np.round(800 - 0.02 * np.arange(days) + noise, 2)


def ours(method, values, rounds=101, **arguments):
    request = {"method": method, "values": values.tolist(), "repeat": rounds, **arguments}
    done = subprocess.run(
        [RUNNER, "statistics"], input=json.dumps(request), capture_output=True, text=True, check=True
    )
    return statistics.median(json.loads(done.stdout)) / 1e9


def peer(deed, rounds=5):
    times = []
    for _ in range(rounds):
        start = time.perf_counter()
        deed()
        times.append(time.perf_counter() - start)
    return statistics.median(times)


def main():
    values = series(DAYS)
    slope = {"confidence": 0.95, "variance_inflation": 1.0}

    def corrected(lag):
        return pymannkendall.hamed_rao_modification_test(values, lag=lag)

    rows = [
        ("robust slope with its range", "robust_slope", slope, "scipy theilslopes", lambda: stats.theilslopes(values)),
        ("Mann-Kendall", "mann_kendall", {}, "pymannkendall", lambda: pymannkendall.original_test(values)),
        ("Hamed-Rao, all lags", "hamed_rao", {}, "pymannkendall", lambda: corrected(None)),
        ("Hamed-Rao, three lags", "hamed_rao", {"lags": 3}, "pymannkendall", lambda: corrected(3)),
    ]
    print(f"{DAYS} days, medians")
    for name, method, arguments, other, deed in rows:
        mine, theirs = ours(method, values, **arguments), peer(deed)
        print(f"{name:<30}{mine * 1e3:9.2f} ms   {other} {theirs * 1e3:9.1f} ms   {theirs / mine:8.0f} x")


if __name__ == "__main__":
    main()
