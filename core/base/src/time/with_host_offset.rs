//! A zone as the host's own clock shows it, and the one that a fact of then is kept in.

use super::host_offset::HostOffset;
use super::{Instant, Span, Zone};
use jiff::Timestamp;

impl Zone {
    /// This zone as the host's own clock shows it at an instant. What can be no wall is
    /// passed over, and so is what the data say as well.
    #[must_use]
    pub fn with_host_offset(self, offset_seconds: i32, now: Instant) -> Self {
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
        self.with(Some(HostOffset { offset_seconds, from, until }))
    }

    /// The zone that a fact of an instant is kept in: this one; where the host told of
    /// another wall, the one that always stands so, since this one's data would show the
    /// fact at another hour when it is read again.
    pub(super) fn kept_at(self, at: Instant) -> Self {
        let told = self.told.filter(|told| told.holds_at(at));
        told.and_then(HostOffset::zone_name).and_then(|name| Self::named(&name).ok()).unwrap_or(self)
    }
}

const AROUND_NOW: Span = Span::hours(7 * 24);

/// Walls stand in whole quarters of an hour, 12 h west to 14 h east of universal time.
const QUARTER: i32 = 900;

const WEST: i32 = -12 * 3600;

const EAST: i32 = 14 * 3600;
