//! Caution from a pump that pulls far below its range.

use super::{Because, Caution};
use crate::answer::pump::{Judged, Limits, Pull, Verdict};
use crate::guidance::CautionRules;
use crate::quantity::{Quantity, Vacuum};
use crate::time::Instant;

/// A pull judged below its range whose whole range of likely values lies under the lower
/// end by the share of the rule.
pub fn caution(
    pump: &str,
    at: Instant,
    pull: &Pull,
    judged: &Judged,
    limits: &Limits,
    rules: &CautionRules,
) -> Option<Caution> {
    let low = limits.low.filter(|_| judged.verdict == Verdict::Below)?;
    let far = Vacuum::from_canonical(low.canonical() * (1.0 - rules.pump_far_below.fraction()));
    if pull.estimate.high >= far {
        return None;
    }
    let caution = Caution::new("pump-far-below", at, vec![Because::Pull(at, pull.estimate.value, low)])?;
    Some(Caution { of: Some(pump.to_owned()), ..caution })
}
