//! What a session is asked about, and when.

use super::Record;
use crate::record::Session;
use crate::time::Span;
use crate::trouble::Trouble;

/// How long after a session its amounts are asked for on the first screen.
const ASKS_FOR_AMOUNTS: Span = Span::minutes(30);
/// A session that ran this long is asked about.
pub(crate) const ASKS_ABOUT_LONG: Span = Span::hours(2);

/// The session whose amounts are asked for now, if any: the one that ended
/// last, a short while ago, and has not been settled.
pub(crate) fn for_amounts_of(record: &Record<'_>) -> Result<Option<Session>, Trouble> {
    let Some(row) = record.journal.latest_sessions(record.now, 1)?.into_iter().next() else { return Ok(None) };
    let Some(until) = row.until else { return Ok(None) };
    if record.now.since(until) > ASKS_FOR_AMOUNTS {
        return Ok(None);
    }
    let session = record.session(&row.subject)?;
    let asks = session.collects() && !session.settled && !session.afterwards;
    Ok(asks.then_some(session))
}
