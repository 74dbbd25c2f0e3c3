//! How long a pump ran in a session.

use super::{flag, text, Fields, Kind, Session};
use crate::time::{Instant, Span};

/// A session seen as a pump running.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Run {
    /// The pump.
    pub pump: String,
    /// When it began.
    pub at: Instant,
    /// How long it lasted; none where the end is not known.
    pub lasted: Option<Span>,
}

impl Run {
    /// Reads a session's fields; none while it runs, where it was taken out, or
    /// where no pump is named.
    pub fn read(id: &str, fields: &Fields) -> Option<Self> {
        let session = Session::read(id, fields);
        if text(fields, "kind") != Some(Kind::Session.name()) || flag(fields, "taken_out") || session.is_running() {
            return None;
        }
        let at = session.started.as_ref()?.instant();
        let lasted = session.ended.as_ref().map(|ended| ended.instant().since(at));
        Some(Self { pump: session.pump?, at, lasted })
    }
}
