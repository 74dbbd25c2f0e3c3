//! Whether a network may count this family today.

use super::Record;
use crate::answer::consent::{withdrawn_last, Consent};
use crate::record::{Fields, Kind};
use crate::time::Instant;
use crate::trouble::Trouble;

/// The consent that holds today, if any.
///
/// # Errors
/// Where the store can't be read.
pub fn holding(record: &Record<'_>) -> Result<Option<Consent>, Trouble> {
    let all = all(record)?;
    Ok(Consent::holding(all.iter().map(|(id, fields)| (id.as_str(), fields)), record.now, record.today().date()))
}

/// When it was withdrawn last.
///
/// # Errors
/// Where the store can't be read.
pub fn withdrawn(record: &Record<'_>) -> Result<Option<Instant>, Trouble> {
    Ok(withdrawn_last(all(record)?.iter().map(|(id, fields)| (id.as_str(), fields))))
}

fn all(record: &Record<'_>) -> Result<Vec<(String, Fields)>, Trouble> {
    let mut all = Vec::new();
    for row in record.journal.of_kind(Kind::Consent)? {
        all.extend(record.journal.record(&row.subject)?.map(|(_, fields)| (row.subject, fields)));
    }
    Ok(all)
}
