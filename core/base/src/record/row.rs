//! A record as it stands in the journal's index.

use super::Kind;
use crate::time::{Instant, LocalDay};

/// A record in the index.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Row {
    /// Its id.
    pub subject: String,
    /// Its kind.
    pub kind: Kind,
    /// When it was, if it stands in a day.
    pub at: Option<Instant>,
    /// When it ended.
    pub until: Option<Instant>,
    /// The local day it belongs to.
    pub day: Option<LocalDay>,
    /// A session that has not ended.
    pub running: bool,
    /// An amount can still be written down.
    pub lacks: bool,
    /// Taken out by the person.
    pub taken_out: bool,
    /// A session that has ended and of which pain was said, in fields of its own or in a mark.
    pub pain: bool,
}
