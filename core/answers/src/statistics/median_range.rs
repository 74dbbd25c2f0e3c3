//! A median with its exact range.

use statrs::distribution::{Binomial, DiscreteCDF};

use super::order::median;
use super::point::all_finite;

/// A median and the values that it lies between.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MedianRange {
    /// The median.
    pub median: f64,
    /// Lower end of its range.
    pub low: f64,
    /// Upper end of its range.
    pub high: f64,
}

/// The median and its range by the values in order: as many are cut off at each end as keep the
/// chance of missing, which is that of a fair coin's tails, at or under α (Conover, Practical
/// Nonparametric Statistics, 3rd edition, 1999, 3.2). None where all of them are too few.
pub fn median_range(values: &[f64], confidence: f64) -> Option<MedianRange> {
    if !(confidence > 0.0 && confidence < 1.0 && all_finite(values)) {
        return None;
    }
    let middle = median(values)?;
    let coin = Binomial::new(0.5, values.len() as u64).ok()?;
    let alpha = (1.0 - confidence) / 2.0;
    // The k-th and the k-th from the end miss with the chance of fewer than k heads.
    let cut = (1..=values.len()).take_while(|k| coin.cdf(*k as u64 - 1) <= alpha).last()?;
    let mut ordered = values.to_vec();
    ordered.sort_unstable_by(f64::total_cmp);
    let low = ordered.get(cut - 1).copied()?;
    let high = ordered.get(ordered.len() - cut).copied()?;
    Some(MedianRange { median: middle, low, high })
}
