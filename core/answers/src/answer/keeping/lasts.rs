//! How long what is kept lasts.

use crate::answer::estimate::Estimate;
use crate::quantity::{Production, Quantity, Volume};
use crate::time::Span;

/// For how long an amount is enough at a need a day, shortest and longest by the range of that
/// need: amount / need. None where there is no need to divide by.
pub fn lasts(kept: Volume, need: Estimate<Production>) -> Option<Estimate<Span>> {
    let days = |need: Production| {
        let days = kept.canonical() / need.canonical();
        (need.canonical() > 0.0 && days.is_finite()).then(|| Span::milliseconds((days * 86_400_000.0).round() as i64))
    };
    Some(Estimate { value: days(need.value)?, low: days(need.high)?, high: days(need.low)? })
}
