//! Refill: how fast milk comes back after an emptying, and whether that slows.
//!
//! In: a side's judged intervals of the last weeks. Out: a [`Well`] a side: the rate just
//! after an emptying and the level it flattens to, V = C · (1 − exp(−r·Δ / C)), each with
//! its range, or that the record cannot tell. [`from_removals`] takes the record's removals, [`well`] fits
//! one, [`ahead`] tells what planned intervals bring and what a choice costs.

pub mod ahead;
pub mod from_removals;
pub mod well;

pub use ahead::{Ahead, Difference};
pub use well::{Flattens, Well, WellOf};

use crate::quantity::{Production, Quantity, Volume};
use crate::time::{Instant, Span, Zone};

/// The wells of a record.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Refill {
    /// Left and right, or one for both where they were measured together.
    pub wells: Vec<Well>,
    /// How alike the two sides' noise is within a session, 0 to 1.
    pub(crate) alike: f64,
}

impl Refill {
    /// Milk lost to slower refilling over an interval, all wells; nothing where it cannot
    /// be told.
    pub fn lost(&self, from: Instant, until: Instant, zone: Zone) -> Volume {
        let lost = self.wells.iter().map(|w| w.lost(from, until, zone).canonical()).sum();
        Volume::from_canonical(lost)
    }

    /// What all wells hold so long after an emptying.
    pub fn holds(&self, emptied: Instant, now: Instant, zone: Zone) -> Volume {
        Volume::from_canonical(self.wells.iter().map(|w| w.expected(emptied, now, zone).canonical()).sum())
    }
}

/// The rate of one interval: what came over the time since the emptying before. None where
/// no time passed.
///
/// Source: Daly et al., Exp Physiol 1996;81:861-875.
pub fn plain_rate(milk: Volume, lasted: Span) -> Option<Production> {
    let hours = lasted.in_milliseconds() as f64 / 3_600_000.0;
    (hours > 0.0).then(|| Production::from_canonical(milk.canonical() / hours * 24.0))
}
