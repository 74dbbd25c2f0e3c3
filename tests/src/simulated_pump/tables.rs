//! What is said of traces with known truth, in figures.

use std::io::Cursor;

use drawwell_core::answer::trace::{findings, Findings, Segment, LEAST_SAMPLES_IN_A_CYCLE};
use drawwell_core::quantity::{Quantity, SpeedUnit};
use drawwell_core::share::trace_file::read;

use super::wave::WAVES;
use super::{trace, Kind, Lost, Run, Truth};
use crate::chance::Chance;

/// How often something was right, of how often it was asked.
#[derive(Debug, Clone, Copy, Default)]
pub struct Right {
    /// So often,
    pub right: u32,
    /// of so many.
    pub of: u32,
}

impl Right {
    fn take(&mut self, right: bool) {
        *self = Self { right: self.right + u32::from(right), of: self.of + 1 };
    }

    /// None where it was never asked.
    pub fn share(&self) -> Option<f64> {
        (self.of > 0).then(|| f64::from(self.right) / f64::from(self.of))
    }

    fn and(self, other: Self) -> Self {
        Self { right: self.right + other.right, of: self.of + other.of }
    }
}

/// A row of the table: what befell its traces, and how often each was right.
#[derive(Debug, Clone, Default)]
pub struct Row {
    /// What befell them.
    pub name: String,
    /// Every run's rate to 1 %.
    pub rate: Right,
    /// Every run's highest vacuum to 2 mmHg.
    pub peak: Right,
    /// The number of missed cycles, to one.
    pub missed: Right,
    /// A collapse said where there was one.
    pub collapse: Right,
    /// None said where there was none.
    pub no_collapse: Right,
    /// A zero that moved, said.
    pub zero: Right,
    /// None said where it stayed.
    pub no_zero: Right,
    /// An end of the gauge, said.
    pub clip: Right,
    /// None said where there was none.
    pub no_clip: Right,
    /// As many bad readings left out as there were, to one and a quarter of them: some lie within a cycle's
    /// own course.
    pub spikes: Right,
}

/// What is asked of each figure.
pub const LEAST_RIGHT: f64 = 0.95;
/// So often the range of a drift is to hold it.
pub const DRIFT_HELD: std::ops::RangeInclusive<f64> = 0.88..=0.93;
/// And of what is said without cause.
pub const MOST_WITHOUT_CAUSE: f64 = 0.02;

impl Row {
    /// Figures in order, with the least that is asked of each.
    pub fn figures(&self) -> [(&'static str, Right, f64); 10] {
        let said_falsely = 1.0 - MOST_WITHOUT_CAUSE;
        [
            ("rate to 1 %", self.rate, LEAST_RIGHT),
            ("peak to 2 mmHg", self.peak, LEAST_RIGHT),
            ("missed to one", self.missed, LEAST_RIGHT),
            ("collapse said", self.collapse, LEAST_RIGHT),
            ("and where none", self.no_collapse, said_falsely),
            ("moved zero said", self.zero, LEAST_RIGHT),
            ("and where none", self.no_zero, said_falsely),
            ("end of the gauge said", self.clip, LEAST_RIGHT),
            ("and where none", self.no_clip, said_falsely),
            ("bad readings left out", self.spikes, LEAST_RIGHT),
        ]
    }

    /// How much of what may be wrong is, in the worst of its figures.
    pub fn wrong(&self) -> f64 {
        self.figures()
            .iter()
            .filter_map(|(_, right, least)| Some((1.0 - right.share()?) / (1.0 - least)))
            .fold(0.0, f64::max)
    }

    fn and(self, other: &Self) -> Self {
        Self {
            name: self.name,
            rate: self.rate.and(other.rate),
            peak: self.peak.and(other.peak),
            missed: self.missed.and(other.missed),
            collapse: self.collapse.and(other.collapse),
            no_collapse: self.no_collapse.and(other.no_collapse),
            zero: self.zero.and(other.zero),
            no_zero: self.no_zero.and(other.no_zero),
            clip: self.clip.and(other.clip),
            no_clip: self.no_clip.and(other.no_clip),
            spikes: self.spikes.and(other.spikes),
        }
    }

    fn take(&mut self, truth: &Truth, found: Option<&Findings>) {
        let steady = || truth.runs.iter().filter(|run| run.cycles >= LEAST_CYCLES);
        let near = |of: &dyn Fn(&Run, &Segment) -> bool, found: &Findings, run: &Run| {
            over(found, run).is_some_and(|segment| of(run, segment))
        };
        let all = |of: &dyn Fn(&Run, &Segment) -> bool, only_steady: bool| {
            found.is_some_and(|found| steady().filter(|run| run.steady || !only_steady).all(|run| near(of, found, run)))
        };
        self.rate.take(all(&rate_is_near, false));
        // What a gauge shows at its end says nothing where its zero moves as well.
        if truth.clipped.is_none() || truth.zero == 0.0 {
            self.peak.take(all(&|run, segment| (segment.cycles.peak.usual.get() - run.peak).abs() <= 2.0, true));
        }
        self.missed.take(found.is_some_and(|found| found.overall.missed.get().abs_diff(truth.missed) <= 1));
        let collapse = found.is_some_and(says_collapse);
        let zero = found.is_some_and(says_zero);
        let clip = found.is_some_and(|found| found.clipped.is_some());
        match truth.lost {
            // What a gauge's end hides of a fall cannot be said.
            Some(lost) if truth.clipped.is_some() && shown(truth, lost) > 0.6 => {}
            Some(_) => self.collapse.take(collapse),
            None => self.no_collapse.take(!collapse),
        }
        match truth.zero.abs() > 0.0 {
            true => self.zero.take(zero),
            false => self.no_zero.take(!zero),
        }
        let spikes = found.and_then(|found| found.notes.spikes).map_or(u32::MAX, |spikes| spikes.get());
        // What lies within the cycle's own course cannot be told from it.
        self.spikes.take(spikes.abs_diff(truth.spikes) <= 1 + truth.spikes / 4);
        match truth.clipped {
            Some(_) => self.clip.take(clip),
            None => self.no_clip.take(!clip),
        }
    }
}

/// Runs of fewer cycles are not asked about.
const LEAST_CYCLES: usize = 14;

fn says_collapse(found: &Findings) -> bool {
    found.collapses.as_ref().is_some_and(|all| !all.is_empty())
}

fn says_zero(found: &Findings) -> bool {
    found.zero.is_some()
}

/// What was left of the peak that the gauge showed.
fn shown(truth: &Truth, lost: Lost) -> f64 {
    let before = truth.runs.iter().find(|run| run.to == lost.from).map_or(f64::NAN, |run| run.peak);
    let after = truth.runs.iter().find(|run| run.from == lost.to).map_or(f64::NAN, |run| run.peak);
    after / before
}

/// The segment that lies most over a run.
pub fn over<'f>(found: &'f Findings, run: &Run) -> Option<&'f Segment> {
    let shared = |segment: &Segment| segment.to.get().min(run.to) - segment.from.get().max(run.from);
    let most = found.segments.iter().max_by(|a, b| shared(a).total_cmp(&shared(b)))?;
    // While the pull is lost, what lies over most of it is enough.
    let least = if run.steady { 0.6 * (run.to - run.from) } else { 0.0 };
    (shared(most) >= least).then_some(most)
}

fn rate_is_near(run: &Run, segment: &Segment) -> bool {
    let rate = segment.cycles.rate.map(|rate| rate.value.in_unit(SpeedUnit::PerMinute));
    rate.is_some_and(|rate| (rate / run.rate - 1.0).abs() <= 0.01)
}

/// The kinds of trace that make a row.
pub fn kinds() -> Vec<(String, Kind)> {
    let mut all: Vec<(&str, Kind)> = vec![
        ("one pattern", Kind::default()),
        ("two phases", Kind { two_phases: true, ..Kind::default() }),
        ("rests", Kind { rests: true, two_phases: true, ..Kind::default() }),
        ("missed and weak cycles", Kind { misses: true, weak: true, ..Kind::default() }),
        ("clip", Kind { clip: true, two_phases: true, ..Kind::default() }),
        ("spikes", Kind { spikes: true, two_phases: true, ..Kind::default() }),
        ("moved zero", Kind { zero: true, two_phases: true, ..Kind::default() }),
        ("collapse", Kind { collapse: true, ..Kind::default() }),
        ("collapse, two phases", Kind { collapse: true, two_phases: true, ..Kind::default() }),
        ("slow loss", Kind { sag: true, ..Kind::default() }),
        ("collapse and moved zero", Kind { collapse: true, zero: true, ..Kind::default() }),
        ("no noise", Kind { noise: Some(0.0), two_phases: true, ..Kind::default() }),
        ("loud", Kind { noise: Some(2.0), two_phases: true, ..Kind::default() }),
    ];
    let anything = Kind { anything: true, ..Kind::default() };
    all.extend(WAVES.iter().enumerate().map(|(n, name)| (*name, Kind { wave: Some(n), ..anything })));
    all.into_iter()
        .flat_map(|(name, kind)| {
            [25.0, 50.0].map(|readings| {
                (format!("{name}, {readings:.0} readings a second"), Kind { readings: Some(readings), ..kind })
            })
        })
        .collect()
}

/// One row of so many traces.
pub fn row(name: &str, kind: &Kind, traces: u64) -> Row {
    let mut row = Row { name: name.to_owned(), ..Row::default() };
    for seed in 0..traces {
        let (text, truth) = trace(kind, seed);
        let found = read(&mut Cursor::new(text)).ok().and_then(|file| findings(&file).ok());
        row.take(&truth, found.as_ref());
    }
    row
}

/// How often the range of a sound pump's drift holds it, on a pull that wanders and sinks evenly.
pub fn drift_held(noise: f64, readings: f64, traces: u64) -> Right {
    let kind = Kind { sag: true, noise: Some(noise), readings: Some(readings), ..Kind::default() };
    let mut held = Right::default();
    for seed in 0..traces {
        let (text, truth) = trace(&kind, DRIFTS + seed);
        let found = read(&mut Cursor::new(text)).ok().and_then(|file| findings(&file).ok());
        if let Some(drift) = found.and_then(|found| found.overall.peak_drift) {
            held.take(drift.low.get() <= truth.drift && truth.drift <= drift.high.get());
        }
    }
    held
}

/// Where seeds of the drifts begin, so that they are not those of the rows.
const DRIFTS: u64 = 1_000_000;

/// The fastest rate that a gauge of so many readings a second can tell, as it is said, and how often no
/// cycle but one is lost up to it.
pub fn told_up_to(readings: f64, traces: u64) -> (f64, Right) {
    let mut right = Right::default();
    let mut fastest = f64::NAN;
    for seed in 0..traces {
        let mut chance = Chance::seeded(seed);
        // A gauge that reads so slowly says its limit before a trace is tried against it.
        let limit = 60.0 * readings / LEAST_SAMPLES_IN_A_CYCLE;
        let rate = limit * chance.between(0.85, 0.97);
        let (text, truth) = trace(&Kind { rate: Some(rate), readings: Some(readings), ..Kind::default() }, seed);
        let found = read(&mut Cursor::new(text)).ok().and_then(|file| findings(&file).ok());
        if let Some(said) = found.as_ref().and_then(|found| found.fastest) {
            fastest = said.in_unit(SpeedUnit::PerMinute);
        }
        right.take(found.is_some_and(|found| {
            found.overall.count.get().abs_diff(truth.came) <= 2 && found.overall.missed.get() <= 1
        }));
    }
    (fastest, right)
}

/// All rows, the worst first, and what they are together.
pub fn rows(traces: u64) -> (Vec<Row>, Row) {
    let mut rows: Vec<Row> = kinds().iter().map(|(name, kind)| row(name, kind, traces)).collect();
    let all = rows.iter().fold(Row { name: "all".to_owned(), ..Row::default() }, |all, row| all.and(row));
    rows.sort_by(|a, b| b.wrong().total_cmp(&a.wrong()));
    (rows, all)
}
