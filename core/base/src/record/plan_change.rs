//! A planned session that was moved, left out, or put off.

use super::{moment, text, Fields};
use crate::time::Instant;

/// What was done with it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Done {
    /// It is to be at this time instead.
    Moved {
        /// The new time.
        to: Instant,
    },
    /// It is left out.
    Skipped,
    /// The reminder comes again at this time; the plan stays.
    Snoozed {
        /// When it comes again.
        to: Instant,
    },
}

/// A change of the plan by hand.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PlanChange {
    /// When it was said.
    pub at: Instant,
    /// The planned time it is about.
    pub of: Instant,
    /// What was done.
    pub done: Done,
}

impl PlanChange {
    /// Reads a record of it; none where it cannot be read.
    pub fn read(fields: &Fields) -> Option<Self> {
        let at = moment(fields, "at")?.instant();
        let of = moment(fields, "of")?.instant();
        let to = moment(fields, "to").map(|m| m.instant());
        let done = match (text(fields, "change")?, to) {
            ("moved", Some(to)) => Done::Moved { to },
            ("snoozed", Some(to)) => Done::Snoozed { to },
            ("skipped", _) => Done::Skipped,
            _ => return None,
        };
        Some(Self { at, of, done })
    }
}
