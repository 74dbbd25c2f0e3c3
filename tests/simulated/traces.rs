//! Traces by chance with known truth: rates from 40 to 120, gauges that read ten to two
//! hundred times a second, with jitter, noise, drift, leaks, missed and weak cycles, one
//! pattern or two. How often what is said of them is right.

use std::fmt::Write;
use std::io::Cursor;

use drawwell_core::answer::trace::{findings, Cycles, Findings, Pattern, LEAST_SAMPLES_IN_A_CYCLE};
use drawwell_core::quantity::{Quantity, SpeedUnit};
use drawwell_core::share::trace_file::read;
use drawwell_core::statistics::median;
use drawwell_tests::chance::Chance;
use drawwell_tests::simulated_pump::tables::{drift_held, rows, told_up_to};

const SESSIONS: u64 = 300;

/// One pattern of a session.
struct Part {
    rate: f64,
    height: f64,
    cycles: usize,
}

struct Session {
    parts: Vec<Part>,
    rest: f64,
    noise: f64,
    /// A share of the height by the second, while it is held.
    leak: f64,
    /// By the minute.
    drift: f64,
    missed: f64,
    weak: f64,
    held: f64,
    rate_of_gauge: f64,
}

struct Truth {
    came: u32,
    missed: u32,
    weak: u32,
    switch: f64,
    peaks: Vec<f64>,
}

impl Session {
    fn by_chance(chance: &mut Chance) -> Self {
        let slow = chance.between(40.0, 75.0);
        let height = chance.between(120.0, 300.0);
        let mut parts = vec![Part { rate: slow, height, cycles: chance.whole(40, 80) as usize }];
        if chance.happens(0.5) {
            let rate = slow * chance.between(1.4, 2.0);
            let height = height * chance.between(0.3, 0.7);
            parts.insert(0, Part { rate, height, cycles: chance.whole(30, 60) as usize });
        }
        let two = parts.len() == 2;
        Self {
            parts,
            rest: chance.between(0.0, 30.0),
            noise: if chance.happens(0.3) { 0.0 } else { chance.between(0.1, 3.0) },
            leak: if chance.happens(0.5) { 0.0 } else { chance.between(0.02, 0.12) },
            drift: if two || chance.happens(0.5) { 0.0 } else { chance.between(-20.0, 5.0) },
            missed: if chance.happens(0.5) { 0.0 } else { chance.between(0.02, 0.15) },
            weak: if chance.happens(0.5) { 0.0 } else { chance.between(0.02, 0.15) },
            held: chance.between(0.35, 0.5),
            rate_of_gauge: [10.0, 20.0, 50.0, 100.0, 200.0][chance.whole(0, 4) as usize],
        }
    }

    /// Rows as a gauge writes them, and what is true of them.
    fn rows(&self, chance: &mut Chance) -> (String, Truth) {
        let mut truth = Truth { came: 0, missed: 0, weak: 0, switch: 0.0, peaks: Vec::new() };
        // Begin, period and height of each cycle; a missed one has no height.
        let mut cycles = Vec::new();
        let mut from = 0.5;
        for (which, part) in self.parts.iter().enumerate() {
            if which == 1 {
                truth.switch = from;
            }
            for at in 0..part.cycles {
                let period = 60.0 / part.rate;
                let edge = at < 2 || at + 2 >= part.cycles;
                let (missed, weak) = (!edge && chance.happens(self.missed), !edge && chance.happens(self.weak));
                let height = part.height + self.drift * (from + period / 2.0) / 60.0;
                let height = match (missed, weak) {
                    (true, _) => 0.0,
                    (_, true) => 0.4 * height,
                    _ => height,
                };
                truth.missed += u32::from(missed);
                truth.weak += u32::from(!missed && weak);
                truth.came += u32::from(!missed);
                if !missed {
                    truth.peaks.push(height + self.rest);
                }
                cycles.push((from, period, height));
                from += period;
            }
        }
        let mut text = "time (s),vacuum (mmHg)\n".to_owned();
        let mut cycle = cycles.iter().peekable();
        for at in 0..((from + 0.5) * self.rate_of_gauge) as u32 {
            let jitter = if self.rate_of_gauge > 60.0 { 0.0 } else { chance.between(-0.05, 0.05) };
            let at = (f64::from(at) + 0.1 + jitter) / self.rate_of_gauge;
            while cycle.peek().is_some_and(|(from, period, _)| from + period <= at) {
                cycle.next();
            }
            let pulled = match cycle.peek() {
                Some((from, period, height)) if *from <= at => height * self.shape((at - from) / period, *period),
                _ => 0.0,
            };
            writeln!(text, "{at:.4},{:.2}", self.rest + pulled + self.noise * chance.normal()).unwrap();
        }
        (text, truth)
    }

    /// A cycle: a fifth of it up, held, a sixth of it down, then rest.
    fn shape(&self, share: f64, period: f64) -> f64 {
        let smooth = |share: f64| (1.0 - (std::f64::consts::PI * share.clamp(0.0, 1.0)).cos()) / 2.0;
        let held = (share - 0.2).clamp(0.0, self.held) * period;
        smooth(share / 0.2) * (1.0 - self.leak * held) * (1.0 - smooth((share - 0.2 - self.held) / 0.16))
    }
}

/// How often something was right, of how often it was told.
#[derive(Default)]
struct Right(u32, u32);

impl Right {
    fn take(&mut self, right: bool) {
        *self = Self(self.0 + u32::from(right), self.1 + 1);
    }

    fn share(&self) -> f64 {
        f64::from(self.0) / f64::from(self.1)
    }
}

#[derive(Default)]
struct Held {
    rate: Right,
    peak: Right,
    counts: Right,
    weak: Right,
    missed: Right,
    patterns: Right,
    switch: Right,
    leak: Right,
    drift: Right,
}

#[test]
fn what_is_said_of_a_trace_is_as_often_right_as_it_is_to_be() {
    let mut held = Held::default();
    for number in 0..SESSIONS {
        let mut chance = Chance::seeded(number);
        let session = Session::by_chance(&mut chance);
        // It is said that these cannot be told.
        let fastest = 60.0 * session.rate_of_gauge / LEAST_SAMPLES_IN_A_CYCLE;
        if session.parts.iter().any(|part| part.rate > 0.97 * fastest) {
            continue;
        }
        let (text, truth) = session.rows(&mut chance);
        let found = findings(&read(&mut Cursor::new(text)).unwrap()).unwrap();
        held.take(&session, &truth, &found);
    }
    // Drifts are few here; how often their range holds them is asked of more below.
    let shares = [
        ("rate to 1 %", &held.rate, 0.97),
        ("peak to 2 mmHg", &held.peak, 0.95),
        ("number of cycles", &held.counts, 0.95),
        ("weak cycles", &held.weak, 0.95),
        ("missed cycles", &held.missed, 0.95),
        ("number of patterns", &held.patterns, 0.98),
        ("switch to 2 s", &held.switch, 0.98),
        ("leak to 2 % a second", &held.leak, 0.95),
        ("range of the drift", &held.drift, 0.78),
    ];
    for (what, right, least) in &shares {
        println!("{what:<20} {:.3} of {} (at least {least})", right.share(), right.1);
    }
    for (what, right, least) in shares {
        assert!(right.share() >= least && right.1 > 50, "{what}: {}", right.share());
    }
}

impl Held {
    fn take(&mut self, session: &Session, truth: &Truth, found: &Findings) {
        let parts = found.segments.len() == session.parts.len();
        self.patterns.take(parts);
        let both = || session.parts.iter().zip(&found.segments).map(|(part, segment)| (part, segment.cycles));
        let rate = |part: &Part, cycles: Cycles| {
            cycles.rate.is_some_and(|rate| (rate.value.in_unit(SpeedUnit::PerMinute) / part.rate - 1.0).abs() < 0.01)
        };
        self.rate.take(parts && both().all(|(part, cycles)| rate(part, cycles)));
        // A leaking top is highest for a moment, which may lie between two samples.
        let within = |height: f64| 2.0 + session.leak * height * 2.0 / session.rate_of_gauge;
        let near = |cycles: Cycles, peak: f64| (cycles.peak.usual.get() - peak).abs() <= within(peak);
        let overall = &found.overall;
        self.peak.take(match session.parts.len() {
            1 => near(*overall, median(&truth.peaks).unwrap()),
            _ => parts && both().all(|(part, cycles)| near(cycles, part.height + session.rest)),
        });
        self.counts.take(overall.count.get() == truth.came);
        self.missed.take(overall.missed.get() == truth.missed);
        let weak = overall.weak_share.fraction() * f64::from(overall.count.get());
        self.weak.take((weak - f64::from(truth.weak)).abs() < 0.1);
        if session.parts.len() == 2 {
            let near = found.switches.first().is_some_and(|at| (at.get() - truth.switch).abs() <= 2.0);
            self.switch.take(near && found.pattern == Pattern::LetdownAndExpression);
        } else if let Some(leak) = overall.leak {
            let height = median(&truth.peaks).unwrap() - session.rest;
            self.leak.take((leak.value.get() - session.leak * height).abs() <= 0.02 * height);
        }
        if session.drift != 0.0 {
            let range = overall.peak_drift.map(|drift| drift.low.get()..=drift.high.get());
            self.drift.take(range.is_some_and(|range| range.contains(&session.drift)));
        }
    }
}

/// Few of a row, so that it does not take long: a row may miss its bar by what chance allows (two in
/// fifteen), all of them together may not.
#[test]
fn traces_on_imperfect_gauges_are_told_right() {
    let (rows, all) = rows(15);
    for (what, right, least) in all.figures() {
        println!("{what:<24} {:?} of {}", right.share(), right.of);
        assert!(right.share().unwrap() >= least && right.of > 40, "{what}: {right:?}");
    }
    for row in rows {
        for (what, right, _) in row.figures() {
            assert!(right.of - right.right <= 2, "{}: {what} {right:?}", row.name);
        }
    }
}

/// 88 to 93 in 100 are asked; of 250 traces chance takes or gives four (two of its spreads).
#[test]
fn the_range_of_a_drift_holds_it_as_often_as_it_says_with_noise_and_without() {
    for noise in [0.0, 1.0] {
        let share = drift_held(noise, 50.0, 250).share().unwrap();
        println!("noise {noise}: {share:.3}");
        assert!((0.84..=0.97).contains(&share), "noise {noise}: {share}");
    }
}

#[test]
fn up_to_the_rate_that_is_said_a_slow_gauge_loses_no_cycle() {
    for (readings, fastest) in [(10.0, 120.0), (12.5, 150.0)] {
        let (said, right) = told_up_to(readings, 20);
        assert!((said - fastest).abs() < 1.5, "{said}");
        assert!(right.share().unwrap() >= 0.95, "{readings}: {right:?}");
    }
}
