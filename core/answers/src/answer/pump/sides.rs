//! Left and right held against each other.

use super::Pull;
use crate::answer::{Estimate, CONFIDENCE};
use crate::quantity::{Quantity, Vacuum};
use crate::statistics::Uncertain;

/// How left and right differ.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SidesApart {
    /// Left less right.
    pub by: Estimate<Vacuum>,
    /// Whether the range leaves no room for "alike".
    pub apart: bool,
}

/// Left less right. Both were read on one gauge, so that its error is in both and
/// falls out; what is left is how readings repeat and how finely they were read.
pub fn apart(left: &Pull, right: &Pull) -> Option<SidesApart> {
    let variance = |pull: &Pull| pull.repeat.spread.canonical().powi(2) / f64::from(pull.readings.get());
    let step = |pull: &Pull| pull.error.resolution.canonical() / 2.0;
    let law = Uncertain::new(
        left.law.middle() - right.law.middle(),
        [step(left), step(right)],
        (variance(left) + variance(right)).sqrt(),
        f64::from(left.repeat.freedom.get().min(right.repeat.freedom.get())),
    )?;
    let (low, high) = law.range(CONFIDENCE)?;
    let vacuum = Vacuum::from_canonical;
    Some(SidesApart {
        by: Estimate { value: vacuum(law.middle()), low: vacuum(low), high: vacuum(high) },
        apart: low > 0.0 || high < 0.0,
    })
}
