//! A family as the list and what narrows it know it.

use crate::gather::reasons::Reason;
use crate::time::Moment;

/// A family in the list.
#[derive(Debug, Clone)]
pub(crate) struct Row {
    /// Its record on the desk.
    pub(crate) id: String,
    /// What the consultant calls it.
    pub(crate) name: Option<String>,
    /// When its record was shared last.
    pub(crate) shared: Option<Moment>,
    /// Why it needs a look, the first reason first.
    pub(crate) reasons: Vec<Reason>,
}

impl Row {
    /// Whether a reason of it can't wait until tomorrow.
    pub(crate) fn is_urgent(&self) -> bool {
        self.reasons.iter().any(Reason::is_urgent)
    }
}
