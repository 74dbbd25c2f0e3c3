//! From the time on the wall to an instant, across clock changes.

use chrono::NaiveDateTime;
use jiff::tz::{AmbiguousOffset, Offset, TimeZone};
use jiff::Timestamp;

use super::{Instant, Span, Zone};

/// What was odd about a local time.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Surprise {
    /// It exists once.
    None,
    /// The clock skipped it; the next valid instant stands for it.
    Skipped,
    /// It came twice; the earlier stands for it, once.
    Twice,
}

/// An instant found for a local time.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Resolved {
    /// The instant.
    pub instant: Instant,
    /// What was odd about it.
    pub surprise: Surprise,
}

/// The instant of a time on the wall. A skipped time is taken as the first
/// instant after the gap; a time that comes twice as the earlier one.
///
/// RFC 5545 3.3.5 reads a skipped 02:30 with the offset from before the gap
/// (03:30); both are valid readings of what a person meant. We ring and record
/// at the next valid instant and say so.
pub fn resolve(wall: NaiveDateTime, zone: Zone) -> Resolved {
    // As if it stood on the wall of universal time.
    let wall = Instant::from_unix_milliseconds(wall.and_utc().timestamp_millis());
    let by_data = by_data(wall, zone.data());
    let Some(told) = zone.told else { return by_data };
    let with_host_offset = wall.minus(Span::seconds(i64::from(told.offset_seconds())));
    match (told.holds_at(with_host_offset), !told.holds_at(by_data.instant)) {
        (true, false) => Resolved { instant: with_host_offset, surprise: Surprise::None },
        (false, true) => by_data,
        (true, true) => Resolved { instant: with_host_offset.min(by_data.instant), surprise: Surprise::Twice },
        (false, false) => Resolved { instant: told.edge_towards(with_host_offset), surprise: Surprise::Skipped },
    }
}

fn by_data(wall: Instant, data: &TimeZone) -> Resolved {
    let found = |instant, surprise| Resolved { instant, surprise };
    let Ok(as_universal) = Timestamp::from_millisecond(wall.unix_milliseconds()) else {
        return found(wall, Surprise::None);
    };
    let with = |offset: Offset| wall.minus(Span::seconds(i64::from(offset.seconds())));
    match data.to_ambiguous_timestamp(TimeZone::UTC.to_datetime(as_universal)).offset() {
        AmbiguousOffset::Unambiguous { offset } => found(with(offset), Surprise::None),
        AmbiguousOffset::Fold { before, .. } => found(with(before), Surprise::Twice),
        // With the offset from after the gap it lies before it.
        AmbiguousOffset::Gap { before, after } => {
            let change = Timestamp::from_millisecond(with(after).unix_milliseconds())
                .ok()
                .and_then(|at| data.following(at).find(|change| change.offset() == after));
            let at = change.map(|change| Instant::from_unix_milliseconds(change.timestamp().as_millisecond()));
            found(at.unwrap_or(with(before)), Surprise::Skipped)
        }
    }
}
