"""Amounts after gaps, with the refill curve that SciPy fits to them.

`python refill_vectors.py FILE` writes them. The model is written here anew: log amounts,
`scipy.optimize.least_squares`, plain where there is no noise and with Tukey's biweight
where there is, its scale the middle of the absolute residuals, found by turns.
"""

import json
import sys
from importlib.metadata import version
from pathlib import Path

import numpy as np
from scipy import optimize

CASES = 80
MADE_WITH = ["numpy", "scipy"]
BIWEIGHT = 4.685
TO_SIGMA = 1.482602218505602


def rounded(value):
    return float(f"{float(value):.12g}")


def curve(at, gap, beside):
    log_rate, *slopes, levelling = at
    paced = gap * np.exp(beside @ np.array(slopes))
    if levelling == 0:
        return log_rate + np.log(paced)
    return log_rate + np.log(-np.expm1(-levelling * paced) / levelling)


def biweight(z):
    inside = np.clip(1 - z, 0, None)
    return np.array([(1 - inside**3) / 3, inside**2, -2 * inside])


def fitted(gap, amount, beside, noisy, straight):
    log = np.log(amount)

    def off(at):
        return log - curve(np.append(at, 0.0) if straight else at, gap, beside)

    exactly = {"xtol": 1e-15, "ftol": 1e-15, "gtol": 1e-15, "max_nfev": 2000}
    begin = [np.median(log - np.log(gap)), 0.0, 0.0, 0.0] + ([] if straight else [0.05])
    at = optimize.least_squares(off, begin, loss="soft_l1", f_scale=0.1, **exactly).x
    if not noisy:
        return optimize.least_squares(off, at, **exactly).x
    for _ in range(200):
        scale = np.median(np.abs(off(at))) * TO_SIGMA
        before, at = at, optimize.least_squares(off, at, loss=biweight, f_scale=BIWEIGHT * scale, **exactly).x
        if np.allclose(at, before, rtol=0, atol=1e-10):
            return at
    return None  # The scale goes to and fro between two amounts.


def case(chance, turn):
    noisy = turn % 4 > 0
    number = int(chance.integers(30, 50)) * 2 + 1
    gap = np.round(np.exp(chance.uniform(np.log(1.2), np.log(10.0), number)), 2)
    hour = chance.uniform(0, 2 * np.pi, number)
    beside = np.round(np.column_stack([-chance.uniform(0, 42, number), np.cos(hour), np.sin(hour)]), 4)
    truth = [np.log(chance.uniform(5, 40)), chance.normal(0, 0.004), *chance.normal(0, 0.08, 2), chance.choice([0.0, 0.05, 0.1, 0.2, 0.3])]
    if not noisy and truth[-1] == 0:
        truth[-1] = 0.02
    noise = chance.uniform(0.05, 0.15) if noisy else 0.0
    amount = np.exp(curve(truth, gap, beside) + chance.normal(0, noise, number))
    if turn % 4 == 3:
        amount[chance.choice(number, 2, replace=False)] *= [10.0, 0.1]
    amount = np.array([rounded(milk) for milk in amount])
    free = fitted(gap, amount, beside, noisy, False)
    if free is None:
        return case(chance, turn)
    expected = {"free_levelling": rounded(free[-1])}
    if free[-1] < 0:
        free = np.append(fitted(gap, amount, beside, noisy, True), 0.0)
    expected |= {"log_rate": rounded(free[0]), "slopes": [rounded(s) for s in free[1:4]], "levelling": rounded(free[-1])}
    request = {"gap": gap.tolist(), "amount": amount.tolist(), "beside": beside.tolist()}
    return {"request": request, "expected": expected}


def made():
    chance = np.random.default_rng(1996)
    cases = [case(chance, turn) for turn in range(CASES)]
    return {"made_with": {name: version(name) for name in MADE_WITH}, "cases": cases}


def text():
    file = made()
    lines = ",\n".join(json.dumps(case, separators=(",", ":")) for case in file["cases"])
    return f'{{"made_with":{json.dumps(file["made_with"])},"cases":[\n{lines}\n]}}\n'


if __name__ == "__main__":
    Path(sys.argv[1]).write_text(text(), encoding="utf-8")
