//! The exact range of Hodges and Lehmann's pseudo-median.

use super::point::all_finite;
use super::two_samples::PairedShift;
use super::{order::midway, two_samples::paired_shift};

/// A pseudo-median with its exact range.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PairedRange {
    /// The pseudo-median, with Wilcoxon's V and its chance.
    pub found: PairedShift,
    /// Lower end of its range.
    pub low: f64,
    /// Upper end of its range.
    pub high: f64,
    /// How sure the range is: at least what was asked for.
    pub confidence: f64,
}

/// So many differences are counted; more are not asked for.
const MOST: usize = 400;

/// The range that Wilcoxon's signed ranks leave: the means of any two differences in order, of
/// which as many are cut off at each end as keep the chance of missing at or under α (Hollander
/// & Wolfe, Nonparametric Statistical Methods, chapter 3; Tukey 1949). The chance is counted
/// over all signs, so it holds for whatever was drawn by coins, however values are spread; with
/// ties it is at least as sure. None where even the widest range is not so sure: six differences
/// for 95 in 100.
///
/// ```
/// use drawwell_answers::statistics::paired_range;
/// assert!(paired_range(&[1.0, 2.0, 3.0, 4.0, 5.0], 0.95).is_none());
/// let found = paired_range(&[1.0, 2.0, 3.0, 4.0, 5.0, 6.0], 0.95).unwrap();
/// assert_eq!((found.low, found.high, found.confidence), (1.0, 6.0, 1.0 - 2.0 / 64.0));
/// ```
pub fn paired_range(differences: &[f64], confidence: f64) -> Option<PairedRange> {
    let n = differences.len();
    if !(confidence > 0.0 && confidence < 1.0) || n > MOST || !all_finite(differences) {
        return None;
    }
    let found = paired_shift(differences)?;
    let (cut, missed) = cut_off(n, 1.0 - confidence)?;
    let mut means: Vec<f64> = Vec::with_capacity(n * (n + 1) / 2);
    for (place, one) in differences.iter().enumerate() {
        means.extend(differences.iter().skip(place).map(|other| midway(*one, *other)));
    }
    means.sort_unstable_by(f64::total_cmp);
    let low = means.get(cut).copied()?;
    let high = means.get(means.len().checked_sub(cut + 1)?).copied()?;
    Some(PairedRange { found, low, high, confidence: 1.0 - missed })
}

/// How many means may be cut off at each end, and the chance that misses.
fn cut_off(n: usize, alpha: f64) -> Option<(usize, f64)> {
    let mut chances = vec![0.0; n * (n + 1) / 2 + 1];
    if let Some(none) = chances.first_mut() {
        *none = 1.0;
    }
    for rank in 1..=n {
        let before = chances.clone();
        chances.iter_mut().for_each(|chance| *chance /= 2.0);
        for (chance, without) in chances.iter_mut().skip(rank).zip(before) {
            *chance += without / 2.0;
        }
    }
    let mut below = 0.0;
    let mut found = None;
    for (sum, chance) in chances.iter().enumerate() {
        below += chance;
        // Halves of whole numbers add up to within this.
        if 2.0 * below > alpha * (1.0 + 1e-12) {
            break;
        }
        found = Some((sum, 2.0 * below));
    }
    found
}
