//! Two gauges held against each other on one pump.

use super::Pull;
use crate::answer::CONFIDENCE;
use crate::quantity::{Quantity, Vacuum};
use crate::statistics::two_sided_t;

/// What two gauges read of one pump.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TwoGauges {
    /// By how much the first reads more than the second.
    pub by: Vacuum,
    /// The most that both may differ where each is as good as it is said to be.
    pub allowed: Vacuum,
}

impl TwoGauges {
    /// Whether both can be right.
    pub fn agree(&self) -> bool {
        self.by.canonical().abs() <= self.allowed.canonical()
    }
}

/// Both may be right as long as they differ by no more than the greatest error of each, half of what each can be
/// read to, and what the readings of both scatter by (JCGM 100:2008, 5.1.2 and annex G for the last).
/// Which of them is wrong the pump does not say.
pub fn two_gauges(one: &Pull, other: &Pull) -> Option<TwoGauges> {
    let of = |pull: &Pull| pull.repeat.spread.canonical().powi(2) / f64::from(pull.readings.get());
    let bounds = |pull: &Pull| pull.error.greatest.canonical() + pull.error.resolution.canonical() / 2.0;
    let freedom = f64::from(one.repeat.freedom.get() + other.repeat.freedom.get());
    let scatter = two_sided_t(CONFIDENCE, freedom)? * (of(one) + of(other)).sqrt();
    Some(TwoGauges {
        by: Vacuum::from_canonical(one.estimate.value.canonical() - other.estimate.value.canonical()),
        allowed: Vacuum::from_canonical(bounds(one) + bounds(other) + scatter),
    })
}
