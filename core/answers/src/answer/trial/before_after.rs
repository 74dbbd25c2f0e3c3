//! A change that was no trial: before it and after it, by the same measures. Weaker, since what
//! else changed then, and what changes by itself, is in it.

use super::outcome::{Apart, Outcome, Reached, Value};
use crate::answer::estimate::CONFIDENCE;
use crate::quantity::{Count, Share};
use crate::statistics::{first_autocorrelation, mean, median, non_overlap, shift};

/// What a session more like the one before tells less.
const MOST_ALIKE: f64 = 0.8;
/// Sessions on each side until anything is told.
pub const LEAST: usize = 6;

/// Before and after.
#[derive(Debug, Clone, PartialEq)]
pub struct BeforeAfter {
    /// After less before.
    pub apart: Apart,
    /// The same as shares of what was usual before: value, low, high.
    pub share: [Share; 3],
    /// NAP and Tau, after above before.
    pub non_overlap: (Share, Share),
    /// Sessions before.
    pub before: Count,
    /// Sessions after.
    pub after: Count,
}

/// A before and after, each in order of time. None where there are fewer than six on a side. The
/// shift is that of Hodges and Lehmann; its range is wider by as much as sessions are like the one
/// before: (1 + r) / (1 - r), for neighbours that are alike by r.
pub fn before_after(before: &[Reached], after: &[Reached], outcome: Outcome) -> Option<BeforeAfter> {
    let known: Vec<Value> = before.iter().chain(after).filter_map(|r| r.whole).collect();
    let expected: Option<Vec<f64>> = known.iter().map(|value| value.expected).collect();
    let usual = expected.and_then(|all| mean(&all));
    let values = |of: &[Reached]| -> Vec<f64> {
        let whole = of.iter().filter_map(|r| r.whole);
        whole
            .map(|value| match (value.expected, usual) {
                (Some(expected), Some(usual)) if expected > 0.0 => value.value * usual / expected,
                _ => value.value,
            })
            .collect()
    };
    let (first, second) = (values(before), values(after));
    if first.len() < LEAST || second.len() < LEAST {
        return None;
    }
    let alike = |of: &[f64]| {
        let middle = median(of).unwrap_or(0.0);
        let off: Vec<f64> = of.iter().map(|value| value - middle).collect();
        first_autocorrelation(&off).unwrap_or(0.0)
    };
    let alike = ((alike(&first) + alike(&second)) / 2.0).clamp(0.0, MOST_ALIKE);
    let found = shift(&first, &second, CONFIDENCE, (1.0 + alike) / (1.0 - alike))?;
    let usual = median(&first).filter(|usual| *usual > 0.0);
    let as_share = |value: f64| Share::of(usual.map_or(0.0, |usual| value / usual));
    let overlap = non_overlap(&first, &second)?;
    Some(BeforeAfter {
        apart: outcome.apart(found.shift, found.low, found.high),
        share: [found.shift, found.low, found.high].map(as_share),
        non_overlap: (Share::of(overlap.nap), Share::of(overlap.tau)),
        before: Count::new(first.len() as u32),
        after: Count::new(second.len() as u32),
    })
}
