//! The time between two emptyings of one side, and what may be taken from it.

use crate::quantity::Volume;
use crate::time::{Instant, Span};

/// One breast.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Side {
    /// The left.
    Left,
    /// The right.
    Right,
}

impl Side {
    /// Left, then right.
    pub const BOTH: [Self; 2] = [Self::Left, Self::Right];
}

/// An interval longer than this is not read as one interval: secretion levels
/// off long before (volume from about 7 h: Lai 2020, doi:10.1136/archdischild-2018-316551),
/// and days in which nothing was written down look the same.
pub const LONGEST_INTERVAL: Span = Span::hours(18);

/// Nor is one of more than two days, even where no session was missed.
pub const LONGEST_WHOLE: Span = Span::hours(48);

/// What may be taken from an interval.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum IntervalStatus {
    /// It counts.
    Counts,
    /// It ended in an amount that nobody knows.
    Unknown,
    /// It is too long to be one interval.
    TooLong,
    /// Its amount fits an ordinary, shorter interval: a session may be missing.
    SessionMissing,
    /// It may hide a session, or may not: too unclear to count, too little to ask.
    Unclear,
    /// Its amount is far from what ordinarily comes: it may be mistyped.
    AmountInDoubt,
}

/// The time between two emptyings of one side, and what came at its end.
#[derive(Debug, Clone, PartialEq)]
pub struct Interval {
    /// The session that ended it.
    pub session: String,
    /// The emptying before.
    pub from: Instant,
    /// The emptying that ended it.
    pub until: Instant,
    /// What this side gave; half of what was measured from both together.
    pub milk: Option<Volume>,
    /// Whether `milk` was measured from this side alone.
    pub of_this_side: bool,
    /// What may be taken from it.
    pub status: IntervalStatus,
    pub(super) answered: crate::record::Answered,
}

impl Interval {
    /// How long it may be to count.
    pub(super) fn longest(&self) -> Span {
        if self.answered.gap_is_whole {
            LONGEST_WHOLE
        } else {
            LONGEST_INTERVAL
        }
    }

    /// Whether the person said that no session is missing in it.
    pub(crate) fn is_answered_whole(&self) -> bool {
        self.answered.gap_is_whole
    }

    /// Whether the person said that a session is missing in it.
    pub fn is_answered_missing(&self) -> bool {
        self.answered.gap_hides_one
    }

    /// How long it was.
    pub fn lasted(&self) -> Span {
        self.until.since(self.from)
    }
}
