//! Quantities as whole numbers: tenths, the ends of a range outward.

use drawwell_core::answer::Estimate;
use drawwell_core::quantity::Quantity;

/// No figure of a family is larger; SQL wraps silently, so this bounds what is added up.
const MOST: f64 = 1e9;

/// Tenths of the canonical unit.
pub(super) fn tenths<Q: Quantity>(quantity: Q) -> i64 {
    (10.0 * quantity.canonical()).round().clamp(-MOST, MOST) as i64
}

/// A value and its range, in tenths.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Tenths {
    pub(super) value: i64,
    pub(super) low: i64,
    pub(super) high: i64,
}

impl<Q: Quantity> From<Estimate<Q>> for Tenths {
    fn from(estimate: Estimate<Q>) -> Self {
        let whole = |tenths: f64| tenths.clamp(-MOST, MOST) as i64;
        Self {
            value: tenths(estimate.value),
            low: whole((10.0 * estimate.low.canonical()).floor()),
            high: whole((10.0 * estimate.high.canonical()).ceil()),
        }
    }
}
