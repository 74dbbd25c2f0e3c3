//! When: instants, zones, local days with a day-start hour.
//!
//! In: an instant and an IANA zone, or a local time as typed. Out: [`Moment`]
//! (UTC milliseconds, offset and zone, as each fact keeps them), [`LocalDay`],
//! and spans of elapsed time. There is no clock here. Read [`Moment`] first.

mod day;
mod host_offset;
mod instant;
mod local;
mod moment;
mod months;
mod typed;
mod with_host_offset;
mod zone;

pub use day::{DayStart, LocalDay};
pub use instant::{Instant, Span};
pub use local::{resolve, Resolved, Surprise};
pub use moment::{Moment, NotAMoment};
pub use months::Months;
pub use typed::{parse_clock_time, parse_date, parse_minutes, say_minutes, ClockTime};
pub use zone::{zone_data, UnknownZone, Zone};
