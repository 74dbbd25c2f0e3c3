//! The hybrid logical clock: wall time where it moves on, a counter where not.
//!
//! Kulkarni, Demirbas, Madappa, Avva and Leone, "Logical Physical Clocks", 2014.

use crate::limits;
use crate::time::{Instant, Span};

/// How far another device's clock may lead before ours stops following it.
pub const FOLLOWS_UP_TO: Span = limits::AHEAD;

/// A stamp: 47 bits of Unix milliseconds, 16 bits of counter.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Stamp(i64);

impl Stamp {
    /// Before everything.
    pub const ZERO: Self = Self(0);

    /// From its stored form.
    pub const fn from_raw(raw: i64) -> Self {
        Self(raw)
    }
    /// Its stored form.
    pub const fn raw(self) -> i64 {
        self.0
    }
    /// The wall time in it.
    pub const fn instant(self) -> Instant {
        Instant::from_unix_milliseconds(self.0 >> 16)
    }
    /// The first stamp of a millisecond.
    pub fn at(instant: Instant) -> Self {
        Self(instant.unix_milliseconds().clamp(0, i64::MAX >> 17) << 16)
    }
    /// The next stamp after this one, at a wall time.
    #[must_use]
    pub fn next(self, now: Instant) -> Self {
        Self(self.0.saturating_add(1)).max(Self::at(now))
    }
    /// This stamp, or the last one that a clock at a wall time may be ahead.
    #[must_use]
    pub fn no_further_than(self, now: Instant) -> Self {
        self.min(Self::at(now.plus(FOLLOWS_UP_TO)))
    }
    /// This clock after it has seen another's stamp: it follows, but not
    /// further than [`FOLLOWS_UP_TO`] ahead of the present.
    #[must_use]
    pub fn having_seen(self, other: Self, now: Instant) -> Self {
        self.max(other.no_further_than(now))
    }
}
