//! What the host says of the clock on its wall, where the zone's data say something else.
//!
//! A law may be newer than the data the program carries, and a phone's own data newer than
//! both; or the other way round. Either way the person reads the host's wall, so for now it
//! is gone by it. "Now" is as far as the data see no change of the clock, and no further than
//! a week: beyond that the host has said nothing.

use super::Instant;

/// An offset that was told, and over which time it is gone by it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct HostOffset {
    pub(super) offset_seconds: i32,
    pub(super) from: Instant,
    pub(super) until: Instant,
}

impl HostOffset {
    pub(super) fn offset_seconds(self) -> i32 {
        self.offset_seconds
    }
    pub(super) fn holds_at(self, at: Instant) -> bool {
        self.from <= at && at < self.until
    }
    /// The end of its time that is nearer to an instant outside it.
    pub(super) fn edge_towards(self, at: Instant) -> Instant {
        at.max(self.from).min(self.until)
    }
    /// The IANA zone whose wall always stands so. There is none for parts of an hour.
    pub(super) fn zone_name(self) -> Option<String> {
        match (self.offset_seconds / 3600, self.offset_seconds % 3600) {
            (0, 0) => Some("UTC".to_owned()),
            // POSIX counts westwards.
            (hours, 0) => Some(format!("Etc/GMT{:+}", -hours)),
            _ => None,
        }
    }
}
