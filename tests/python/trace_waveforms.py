"""Makes pressure traces of known truth, and what SciPy finds in them.

    python tests/python/trace_waveforms.py tests/vectors/traces

One CSV a waveform, and `expected.json`: the truth it was made with, and the peaks that
`scipy.signal.find_peaks` finds by prominence in the figures as they stand in the file.
Values are mmHg below ambient until they are written. Seeds are fixed.
"""

import json
import sys
from pathlib import Path

import numpy as np
import scipy
from scipy.signal import find_peaks

KPA = 7.500637554192106  # mmHg, UCUM: 1000 / 133.322
CMH2O = 0.7355612126970793  # mmHg, UCUM: 98.0665 / 133.322
# As the core has it: a cycle moves a quarter of what the trace moves.
PROMINENCE = 0.25
LEAST_APART = 0.3  # seconds


class Waveform:
    """Cycles one after the other, each with its period, its height and whether it comes."""

    def __init__(self, name, shape, rest=0.0):
        self.name, self.shape, self.rest = name, shape, rest
        self.starts, self.periods, self.heights = [], [], []
        self.end = 0.0
        self.truth = {}

    def still(self, seconds):
        self.end += seconds
        return self

    def cycle(self, period, height):
        self.starts.append(self.end)
        self.periods.append(period)
        self.heights.append(height)
        self.end += period
        return self

    def cycles(self, count, rate, height):
        for _ in range(count):
            self.cycle(60.0 / rate, height)
        return self

    def at(self, times):
        values = np.full(len(times), float(self.rest))
        starts = np.array(self.starts)
        which = np.searchsorted(starts, times + 1e-9, side="right") - 1
        for index, (start, period, height) in enumerate(zip(self.starts, self.periods, self.heights)):
            inside = (which == index) & (times < start + period - 1e-9)
            values[inside] += (height - self.rest) * self.shape(times[inside] - start, period)
        return values


def sine(since, period):
    return (1 - np.cos(2 * np.pi * since / period)) / 2


def trapezoid(wait, rise, hold, release, leak=0.0):
    """`leak` is a share of the height by the second, while it is held."""

    def shape(since, period):
        held = np.clip(since - wait - rise, 0, hold)
        up = np.clip((since - wait) / rise, 0, 1)
        level = up * (1 - leak * held)
        down = np.clip((since - wait - rise - hold) / release, 0, 1)
        return level * (1 - down)

    return shape


def sharp(rise, pull, fall):
    """Up as a piston pulls, towards its end ever slower; at once down, as a valve lets air in."""

    def shape(since, period):
        up = (1 - np.exp(-since / pull)) / (1 - np.exp(-rise / pull))
        tail = np.exp(-(period - rise) / fall)
        down = (np.exp(-(since - rise) / fall) - tail) / (1 - tail)
        return np.where(since < rise, up, down)

    return shape


def steady(wave, rate=50.0):
    return np.arange(int(round(wave.end * rate)) + 1) / rate


def written(wave, times, values, *, separator=",", comma=False, header=True, time="time (s)", unit="mmHg",
            factor=1.0, sign=1, places=2, time_text=None, time_places=3):
    """The text of the file, and the figures as they stand in it, in mmHg below ambient."""
    figures = np.round(sign * values / factor, places)
    time_text = time_text or (lambda at: f"{at:.{time_places}f}")
    rows = [separator.join([time_text(at), f"{value:.{places}f}"]) for at, value in zip(times, figures)]
    if comma:
        rows = [row.replace(".", ",") for row in rows]
    if header:
        rows.insert(0, separator.join([time, f"pressure [{unit}]"]))
    return "\n".join(rows) + "\n", sign * figures * factor


def peaks(times, values):
    moves = np.diff(np.quantile(values, [0.02, 0.98]))[0]
    # Two highest samples of one top that are equal to the last figure are one peak.
    step = np.median(np.diff(times))
    found, _ = find_peaks(values, prominence=PROMINENCE * moves, distance=LEAST_APART / step)
    return {
        "count": len(found),
        "rate": round(float(60.0 / np.median(np.diff(times[found]))), 6),
        "peak": round(float(np.median(values[found])), 6),
        "highest": round(float(values[found].max()), 6),
    }


def noise(seed, count, spread):
    return np.random.default_rng(seed).normal(0.0, spread, count)


def case(wave, times, values, truth, parts=None, **how):
    text, figures = written(wave, times, values, **how)
    parts = parts or [(times[0], times[-1])]
    found = [peaks(times[part], figures[part]) for part in ((times >= a) & (times <= b) for a, b in parts)]
    return wave.name, text, {"truth": truth, "scipy": found}


def clean_sine():
    wave = Waveform("sine", sine).cycles(45, 60.0, 250.0)
    times = steady(wave)
    truth = {"rate": 60.0, "peak": 250.0, "rest": 0.0, "cycles": 45, "missed_share": 0.0, "weak_share": 0.0,
             # 10 to 90 % of a raised cosine, and the share of it above 90 %.
             "rise": float((np.arccos(-0.8) - np.arccos(0.8)) / (2 * np.pi)),
             "at_vacuum": float(np.arccos(0.8) / np.pi)}
    return case(wave, times, wave.at(times), truth)


def trapezoids():
    wave = Waveform("trapezoid", trapezoid(0.2, 0.2, 0.45, 0.15), 10.0).cycles(40, 50.0, 240.0)
    times = steady(wave)
    truth = {"rate": 50.0, "peak": 240.0, "rest": 10.0, "cycles": 40, "missed_share": 0.0, "weak_share": 0.0,
             "rise": 0.16, "release": 0.12, "at_vacuum": (0.45 + 0.02 + 0.015) / 1.2, "leak": 0.0}
    return case(wave, times, wave.at(times), truth, separator=";", comma=True)


def sharp_and_slow():
    wave = Waveform("sharp", sharp(0.25, 0.06, 0.3), 0.0).cycles(45, 54.0, 230.0)
    times = steady(wave)
    values = wave.at(times) + noise(3, len(times), 0.5)
    return case(wave, times, values, {"rate": 54.0, "peak": 230.0, "cycles": 45, "missed_share": 0.0, "weak_share": 0.0})


def noisy():
    wave = Waveform("noise", trapezoid(0.3, 0.2, 0.4, 0.25), 12.0).cycles(40, 48.0, 220.0)
    times = steady(wave)
    values = wave.at(times) + noise(4, len(times), 3.0)
    truth = {"rate": 48.0, "peak": 220.0, "rest": 12.0, "cycles": 40, "noise": 3.0, "leak": 0.0, "missed_share": 0.0,
             "weak_share": 0.0}
    return case(wave, times, values, truth)


def noisy_sine():
    wave = Waveform("noisy-sine", sine, 20.0).cycles(50, 66.0, 180.0)
    times = steady(wave)
    values = wave.at(times) + noise(15, len(times), 3.0)
    truth = {"rate": 66.0, "peak": 180.0, "rest": 20.0, "cycles": 50, "noise": 3.0, "missed_share": 0.0, "weak_share": 0.0}
    return case(wave, times, values, truth, header=False)


def drifting():
    wave = Waveform("drift", trapezoid(0.25, 0.2, 0.5, 0.25), 8.0)
    by_minute = -18.0
    for _ in range(48):
        wave.cycle(1.25, 260.0 + by_minute * (wave.end + 0.625) / 60.0)
    times = steady(wave)
    values = wave.at(times) + noise(5, len(times), 0.6)
    truth = {"rate": 48.0, "peak": float(np.median(wave.heights)), "rest": 8.0, "cycles": 48, "peak_drift": by_minute,
             "missed_share": 0.0, "weak_share": 0.0}
    return case(wave, times, values, truth, separator="\t")


def leaking():
    height, leak = 230.0, 18.0
    wave = Waveform("leak", trapezoid(0.3, 0.2, 0.7, 0.2, leak / height)).cycles(36, 40.0, height)
    times = steady(wave)
    values = wave.at(times) + noise(6, len(times), 1.0)
    truth = {"rate": 40.0, "peak": height, "cycles": 36, "leak": leak, "missed_share": 0.0, "weak_share": 0.0}
    return case(wave, times, values, truth)


def missing():
    wave = Waveform("missed", trapezoid(0.2, 0.2, 0.4, 0.2), 5.0)
    come = np.random.default_rng(7).random(55) > 0.2
    come[[0, 1, -1]] = True
    for comes in come:
        wave.cycle(1.0, 235.0 if comes else 5.0)
    times = steady(wave)
    values = wave.at(times) + noise(70, len(times), 1.0)
    truth = {"rate": 60.0, "peak": 235.0, "cycles": int(come.sum()), "missed_share": float(1 - come.mean()), "weak_share": 0.0}
    return case(wave, times, values, truth)


def weakened():
    wave = Waveform("weak", trapezoid(0.2, 0.2, 0.4, 0.2), 5.0)
    weak = np.random.default_rng(8).random(55) < 0.15
    for is_weak in weak:
        wave.cycle(1.0, 105.0 if is_weak else 235.0)
    times = steady(wave)
    values = wave.at(times) + noise(80, len(times), 1.0)
    truth = {"rate": 60.0, "peak": 235.0, "cycles": 55, "weak_share": float(weak.mean()), "missed_share": 0.0}
    return case(wave, times, values, truth)


def two_phases(name, first, second, seed):
    (count, rate, height), (other_count, other_rate, other_height) = first, second
    wave = Waveform(name, sine).cycles(count, rate, height)
    switch = wave.end
    wave.cycles(other_count, other_rate, other_height)
    times = steady(wave)
    values = wave.at(times) + noise(seed, len(times), 1.0)
    truth = {"cycles": count + other_count, "switch": switch, "missed_share": 0.0, "weak_share": 0.0,
             "phases": [{"phase": "letdown", "rate": rate, "peak": height, "cycles": count},
                        {"phase": "expression", "rate": other_rate, "peak": other_height, "cycles": other_count}]}
    return case(wave, times, values, truth, parts=[(0.0, switch - 0.02), (switch - 0.02, wave.end)], separator=" ",
                time="t", unit="mm[Hg]")


def phases():
    return two_phases("two-phases", (50, 110.0, 90.0), (30, 52.0, 230.0), 9)


def light_phase():
    return two_phases("light-phase", (60, 120.0, 45.0), (26, 45.0, 280.0), 16)


def kilopascals():
    wave = Waveform("kilopascal", sine, 15.0).cycles(45, 54.0, 255.0)
    jitter = np.random.default_rng(10)
    times = np.arange(int(wave.end * 20)) / 20.0
    times = np.round(times + jitter.uniform(-0.008, 0.008, len(times)), 3)
    times = times - times[0]
    values = wave.at(times) + noise(100, len(times), 0.4)

    def clock(at):
        at = round(1000 * at) + 1000 * (23 * 3600 + 59 * 60 + 40)
        seconds, part = divmod(at, 1000)
        return f"{seconds // 3600 % 24:02d}:{seconds // 60 % 60:02d}:{seconds % 60:02d}.{part:03d}"

    truth = {"rate": 54.0, "peak": 255.0, "rest": 15.0, "cycles": 45, "unit": "kPa", "sign_turned": True,
             "missed_share": 0.0, "weak_share": 0.0}
    return case(wave, times, values, truth, unit="kPa", factor=KPA, sign=-1, places=3, time="clock", time_text=clock)


def water():
    wave = Waveform("water", trapezoid(0.15, 0.2, 0.3, 0.15), 6.0).cycles(45, 75.0, 200.0)
    times = steady(wave, 200.0)
    values = wave.at(times) + noise(11, len(times), 1.0)
    truth = {"rate": 75.0, "peak": 200.0, "rest": 6.0, "cycles": 45, "unit": "cm[H2O]", "missed_share": 0.0,
             "weak_share": 0.0}
    return case(wave, times, values, truth, unit="cmH2O", factor=CMH2O, time="ms", places=1,
                time_text=lambda at: f"{1000 * at:.0f}")


def clipping():
    wave = Waveform("clipped", sine).cycles(45, 60.0, 260.0)
    times = steady(wave)
    values = np.minimum(wave.at(times) + noise(12, len(times), 1.0), 200.0)
    truth = {"rate": 60.0, "peak": 200.0, "cycles": 45, "clipped": 200.0, "missed_share": 0.0, "weak_share": 0.0}
    return case(wave, times, values, truth)


def dropping_out():
    wave = Waveform("dropouts", trapezoid(0.2, 0.2, 0.4, 0.2), 5.0).cycles(55, 60.0, 225.0)
    times = steady(wave)
    gaps = [(10.31, 10.99), (25.01, 28.27), (40.49, 41.51)]
    there = ~np.any([(times > a) & (times < b) for a, b in gaps], axis=0)
    # The row after the gap less the row before it.
    lost = [times[times >= b][0] - times[times <= a][-1] for a, b in gaps]
    values = wave.at(times) + noise(13, len(times), 1.0)
    truth = {"rate": 60.0, "peak": 225.0, "dropouts": 3, "dropped": float(sum(lost)), "missed_share": 0.0,
             "weak_share": 0.0}
    return case(wave, times[there], values[there], truth)


def off_zero():
    wave = Waveform("offset", trapezoid(0.2, 0.2, 0.4, 0.2), 12.0).still(3.0).cycles(45, 60.0, 242.0).still(1.0)
    times = steady(wave)
    values = wave.at(times) + noise(14, len(times), 1.0)
    truth = {"rate": 60.0, "peak": 242.0, "rest": 12.0, "cycles": 45, "offset": 12.0, "missed_share": 0.0,
             "weak_share": 0.0}
    return case(wave, times, values, truth)


def above_ambient():
    wave = Waveform("above-ambient", sine, -14.0).cycles(45, 60.0, 226.0)
    times = steady(wave)
    values = wave.at(times)
    truth = {"rate": 60.0, "peak": 226.0, "rest": -14.0, "cycles": 45, "above_ambient": 14.0, "missed_share": 0.0,
             "weak_share": 0.0}
    return case(wave, times, values, truth)


WAVEFORMS = [
    clean_sine, trapezoids, sharp_and_slow, noisy, noisy_sine, drifting, leaking, missing, weakened, phases, light_phase,
    kilopascals, water, clipping, dropping_out, off_zero, above_ambient,
]


def made():
    """Name, text and expectations of every waveform, and what they were made with."""
    return {"numpy": np.__version__, "scipy": scipy.__version__}, [waveform() for waveform in WAVEFORMS]


def main(folder):
    folder = Path(folder)
    made_with, cases = made()
    for name, text, _ in cases:
        (folder / f"{name}.csv").write_text(text, encoding="utf-8")
    expected = {"made_with": made_with, "cases": {name: expected for name, _, expected in cases}}
    (folder / "expected.json").write_text(json.dumps(expected, indent=1) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main(sys.argv[1])
