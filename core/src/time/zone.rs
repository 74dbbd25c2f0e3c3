//! IANA zones, from the data the program carries itself.

use chrono::{Offset, TimeZone};
use thiserror::Error;

use super::Instant;

/// A zone of the IANA database.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Zone(pub(super) chrono_tz::Tz);

/// A name that the program's zone data does not know.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("no zone of this name is known")]
pub struct UnknownZone;

impl Zone {
    /// Universal time.
    pub const UTC: Self = Self(chrono_tz::Tz::UTC);

    /// The zone of this IANA name, such as `Pacific/Apia`.
    pub fn named(name: &str) -> Result<Self, UnknownZone> {
        name.parse().map(Self).map_err(|_| UnknownZone)
    }

    /// Its IANA name.
    pub fn name(self) -> &'static str {
        self.0.name()
    }

    /// Seconds east of UTC at an instant.
    pub fn offset_seconds(self, at: Instant) -> i32 {
        chrono::DateTime::from_timestamp_millis(at.unix_milliseconds())
            .map_or(0, |utc| self.0.offset_from_utc_datetime(&utc.naive_utc()).fix().local_minus_utc())
    }
}
