//! A trace as it was read: samples on an even grid, the unit, what was noted.

use super::Seconds;
use crate::quantity::{Count, Share, VacuumUnit};

/// Pressure over time, sample after sample at one step.
#[derive(Debug, Clone, PartialEq)]
pub struct Samples {
    step: Seconds,
    values: Vec<f32>,
}

impl Samples {
    /// From a step above nothing and values in the trace's own unit, positive below
    /// ambient; NaN where there was none.
    pub fn new(step: Seconds, values: Vec<f32>) -> Option<Self> {
        (step.get().is_finite() && step.get() > 0.0).then_some(Self { step, values })
    }
    /// From one sample to the next.
    pub fn step(&self) -> Seconds {
        self.step
    }
    /// The values as read; NaN in a dropout.
    pub fn values(&self) -> &[f32] {
        &self.values
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
