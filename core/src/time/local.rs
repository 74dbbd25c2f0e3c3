//! From the time on the wall to an instant, across clock changes.

use chrono::{Duration, MappedLocalTime, NaiveDateTime, TimeZone};

use super::{Instant, Zone};

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
    match zone.0.from_local_datetime(&wall) {
        MappedLocalTime::Single(t) => {
            Resolved { instant: Instant::from_unix_milliseconds(t.timestamp_millis()), surprise: Surprise::None }
        }
        MappedLocalTime::Ambiguous(first, _) => {
            Resolved { instant: Instant::from_unix_milliseconds(first.timestamp_millis()), surprise: Surprise::Twice }
        }
        MappedLocalTime::None => Resolved { instant: after_gap(wall, zone), surprise: Surprise::Skipped },
    }
}

/// Finds the end of a gap by bisection: the offset before the gap puts the
/// wall time after it, the offset after the gap before it.
fn after_gap(wall: NaiveDateTime, zone: Zone) -> Instant {
    let as_utc = Instant::from_unix_milliseconds(wall.and_utc().timestamp_millis());
    let day = Duration::hours(26).num_milliseconds();
    let mut low = as_utc.unix_milliseconds() - day;
    let mut high = as_utc.unix_milliseconds() + day;
    let is_after = |ms: i64| {
        let at = Instant::from_unix_milliseconds(ms);
        ms + i64::from(zone.offset_seconds(at)) * 1000 >= as_utc.unix_milliseconds()
    };
    while high - low > 1 {
        let middle = low + (high - low) / 2;
        if is_after(middle) {
            high = middle;
        } else {
            low = middle;
        }
    }
    Instant::from_unix_milliseconds(high)
}
