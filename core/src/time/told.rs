//! What the host says of the clock on its wall, where the zone's data say something else.
//!
//! A law may be newer than the data the program carries, and a phone's own data newer than
//! both; or the other way round. Either way the person reads the host's wall, so for now it
//! is gone by it. "Now" is as far as the data see no change of the clock, and no further than
//! a week: beyond that the host has said nothing.

use jiff::Timestamp;

use super::{Instant, Span, Zone};

const AROUND_NOW: Span = Span::hours(7 * 24);
/// Walls stand in whole quarters of an hour, 12 h west to 14 h east of universal time.
const QUARTER: i32 = 900;
const WEST: i32 = -12 * 3600;
const EAST: i32 = 14 * 3600;

/// An offset that was told, and over which time it is gone by it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Told {
    offset_seconds: i32,
    from: Instant,
    until: Instant,
}

impl Told {
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
    fn zone_name(self) -> Option<String> {
        match (self.offset_seconds / 3600, self.offset_seconds % 3600) {
            (0, 0) => Some("UTC".to_owned()),
            // POSIX counts westwards.
            (hours, 0) => Some(format!("Etc/GMT{:+}", -hours)),
            _ => None,
        }
    }
}

impl Zone {
    /// This zone as the host's own clock shows it at an instant. What can be no wall is
    /// passed over, and so is what the data say as well.
    #[must_use]
    pub fn as_told(self, offset_seconds: i32, now: Instant) -> Self {
        let plain = self.with(None);
        let is_a_wall = (WEST..=EAST).contains(&offset_seconds) && offset_seconds % QUARTER == 0;
        let Ok(at) = Timestamp::from_millisecond(now.unix_milliseconds()) else { return plain };
        if !is_a_wall || plain.offset_seconds(now) == offset_seconds {
            return plain;
        }
        let instant = |at: Timestamp| Instant::from_unix_milliseconds(at.as_millisecond());
        let after = self.data().following(at).next().map(|change| instant(change.timestamp()));
        let before = match at.checked_add(jiff::SignedDuration::from_nanos(1)) {
            Ok(just_after) => self.data().preceding(just_after).next().map(|change| instant(change.timestamp())),
            Err(_) => None,
        };
        let (from, until) = (now.minus(AROUND_NOW), now.plus(AROUND_NOW));
        let from = before.map_or(from, |change| change.max(from));
        let until = after.map_or(until, |change| change.min(until));
        self.with(Some(Told { offset_seconds, from, until }))
    }

    /// The zone that a fact of an instant is kept in: this one; where the host told of
    /// another wall, the one that always stands so, since this one's data would show the
    /// fact at another hour when it is read again.
    pub(super) fn kept_at(self, at: Instant) -> Self {
        let told = self.told.filter(|told| told.holds_at(at));
        told.and_then(Told::zone_name).and_then(|name| Self::named(&name).ok()).unwrap_or(self)
    }
}
