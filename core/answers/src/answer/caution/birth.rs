//! When children were born, as far as that is known.

use crate::time::{Instant, Span};

/// The births of a family.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Births {
    /// Those whose date is known.
    pub known: Vec<Instant>,
    /// Whether there is a child whose date is not.
    pub any_unknown: bool,
}

impl Births {
    /// How long after the latest birth before it an instant is; none where that is not known.
    pub fn since_latest(&self, at: Instant) -> Option<Span> {
        self.known.iter().filter(|birth| **birth <= at).max().map(|birth| at.since(*birth))
    }

    /// Whether so long has passed since each birth: not where one is not known, is to come,
    /// or where there is none.
    pub fn are_longer_ago_than(&self, span: Span, at: Instant) -> bool {
        !self.any_unknown && !self.known.is_empty() && self.known.iter().all(|birth| at.since(*birth) > span)
    }
}
