//! A figure with its range and what it rests on.

use crate::quantity::{Count, Share};
use crate::time::LocalDay;

/// A value and the range that holds the truth nine times in ten.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Estimate<Q> {
    /// The value.
    pub value: Q,
    /// The lower end of its range.
    pub low: Q,
    /// The upper end.
    pub high: Q,
}

/// How often a range is to hold the truth.
pub const CONFIDENCE: f64 = 0.9;

/// What an estimate rests on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RestsOn {
    /// The first day looked at.
    pub from: LocalDay,
    /// The last.
    pub to: LocalDay,
    /// Days looked at.
    pub days: Count,
    /// Days complete enough to count.
    pub complete: Count,
    /// How much of the time was observed.
    pub observed: Share,
    /// How many of the intervals may hide a session that was not written down.
    pub doubtful: Share,
}
