//! The wells of a record, from its last weeks alone: the cost is the same after ten years.

use super::Record;
use crate::answer::refill::from_removals::{of_removals, LOOKS_BACK};
use crate::answer::refill::Refill;
use crate::answer::supply::Calendar;
use crate::time::{Instant, Span};
use crate::trouble::Trouble;

/// The wells as they are now. Only the last weeks are read, or what came since an instant.
///
/// # Errors
/// Where the store can't be read.
pub fn curves(record: &Record<'_>, calendar: Calendar, since: Option<Instant>) -> Result<Refill, Trouble> {
    let from = since.map_or(record.now.minus(LOOKS_BACK), |since| since.max(record.now.minus(LOOKS_BACK)));
    let removals = record.journal.removals(from, record.now.plus(Span::milliseconds(1)))?;
    Ok(of_removals(&removals, record.now, calendar))
}
