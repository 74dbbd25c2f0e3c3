//! A trace as it was read: samples on an even grid, the unit, what was noted.

use super::Seconds;
use crate::quantity::{Count, Share, VacuumUnit};

/// Pressure over time, sample after sample at one step.
#[derive(Debug, Clone, PartialEq)]
pub struct Samples {
    step: Seconds,
    values: Vec<f32>,
    rows: Option<Rows>,
}

/// The rows that samples were laid from, each at its own time.
#[derive(Debug, Clone, PartialEq)]
struct Rows {
    /// In seconds from the first sample, rising.
    times: Vec<f64>,
    values: Vec<f32>,
}

impl Samples {
    /// From a step above nothing and values in the trace's own unit, positive below
    /// ambient; NaN where there was none.
    pub fn new(step: Seconds, values: Vec<f32>) -> Option<Self> {
        (step.get().is_finite() && step.get() > 0.0).then_some(Self { step, values, rows: None })
    }
    /// With the rows they were laid from: times in seconds from the first, rising, and as many values.
    pub fn read_at(self, times: Vec<f64>, values: Vec<f32>) -> Self {
        let rows = (times.len() == values.len()).then_some(Rows { times, values });
        Self { rows, ..self }
    }
    /// From one sample to the next.
    pub fn step(&self) -> Seconds {
        self.step
    }
    /// The values as read; NaN in a dropout.
    pub fn values(&self) -> &[f32] {
        &self.values
    }
    /// The values as they were read, and whether they are: a sample laid between two rows resembles both.
    pub(super) fn as_read(&self) -> (&[f32], bool) {
        self.rows.as_ref().map_or((&self.values, false), |rows| (&rows.values, true))
    }
    /// What was read between two times, with its times; samples where nothing else is known.
    pub(super) fn between(&self, from: f64, to: f64) -> Vec<(f64, f64)> {
        let of = |at: f64, value: f32| (at, f64::from(value));
        if let Some(rows) = &self.rows {
            let first = rows.times.partition_point(|at| *at < from);
            let there = rows.times.get(first..).unwrap_or_default().iter().take_while(|at| **at <= to);
            return there.zip(rows.values.iter().skip(first)).map(|(at, value)| of(*at, *value)).collect();
        }
        let step = self.step.get();
        let first = (from / step).ceil().max(0.0) as usize;
        let there = self.values.iter().enumerate().skip(first).map(|(place, value)| of(place as f64 * step, *value));
        there.take_while(|(at, _)| *at <= to).filter(|(_, value)| value.is_finite()).collect()
    }
    /// From the first sample to the last.
    pub fn duration(&self) -> Seconds {
        Seconds::new(self.values.len().saturating_sub(1) as f64 * self.step.get())
    }
}

/// The unit of the times in a file.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TimeUnit {
    /// Seconds.
    Second,
    /// Milliseconds.
    Millisecond,
    /// Microseconds.
    Microsecond,
    /// Minutes.
    Minute,
}

impl TimeUnit {
    /// How long one of it is.
    pub const fn length(self) -> Seconds {
        Seconds::new(match self {
            Self::Second => 1.0,
            Self::Millisecond => 1e-3,
            Self::Microsecond => 1e-6,
            Self::Minute => 60.0,
        })
    }
}

/// What was noted while a file was read.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Notes {
    /// Rows with a time and a pressure.
    pub rows: Count,
    /// Rows after the first of those that had none; blank and comment lines are not counted.
    pub passed_over: Count,
    /// The line number, from 1, of the first row passed over.
    pub first_passed_over: Option<Count>,
    /// Places where samples are missing.
    pub dropouts: Count,
    /// How long they last together.
    pub dropped: Seconds,
    /// Lone readings far out of the rest, which were left out; None where nobody looked for them.
    pub spikes: Option<Count>,
    /// From one row to the next, as a rule.
    pub native_step: Seconds,
    /// Vacuum was below zero in the file.
    pub sign_turned: bool,
    /// The unit of the times where the file did not say it.
    pub time_unit_assumed: Option<TimeUnit>,
    /// Several rows shared a time and were spread evenly.
    pub times_spread: bool,
    /// How many of the rows stand exactly at the highest vacuum.
    pub at_extreme: Share,
}

/// A file of time and pressure, read.
#[derive(Debug, Clone, PartialEq)]
pub struct TraceFile {
    /// Pressure over time.
    pub samples: Samples,
    /// The unit of the pressure, where the file said it.
    pub unit: Option<VacuumUnit>,
    /// What was noted.
    pub notes: Notes,
}
