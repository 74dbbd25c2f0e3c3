//! What was to be expected after a gap, by the refill curve.

use super::Record;
use crate::answer::refill::{Refill, WellOf};
use crate::quantity::Volume;
use crate::time::Instant;

/// What was to be expected of a side, by the wells as they are now.
pub(super) fn expected(
    refill: &Refill,
    of: WellOf,
    from: Instant,
    until: Instant,
    record: &Record<'_>,
) -> Option<Volume> {
    let well = refill.wells.iter().find(|well| well.of == of)?;
    Some(well.expected(from, until, record.zone))
}
