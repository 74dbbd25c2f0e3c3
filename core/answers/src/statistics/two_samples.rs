//! How far one sample lies from another, by medians of differences.

use super::{
    normal::{two_sided_p, two_sided_z},
    order::{midway, tie_sizes, twice_midranks},
    point::all_finite,
};

/// Up to so many differences all sets of signs are counted.
const COUNTED: usize = 50;

/// How far the second sample lies above the first.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Shift {
    /// The median of all differences, second less first.
    pub shift: f64,
    /// Lower end of its range.
    pub low: f64,
    /// Upper end of its range.
    pub high: f64,
}

/// The shift of Hodges and Lehmann with its distribution-free range.
///
/// The shift is the median of the N = nm differences, its range the differences of
/// rank (N ± z σ) / 2, where σ² = nm (n + m + 1 - Σ (t³ - t) / ((n + m)(n + m - 1))) / 3 is
/// the variance of U - U' over groups of t equal values (Hodges & Lehmann, Annals of
/// Mathematical Statistics 1963;34:598-611; Moses's range, Hollander & Wolfe, Nonparametric
/// Statistical Methods, chapter 4). σ² is multiplied by `variance_inflation`: 1 where
/// neighbours do not resemble each other. Ranks are rounded as for the robust slope,
/// outwards and to the whole sample where it is too small for such a confidence.
pub fn shift(first: &[f64], second: &[f64], confidence: f64, variance_inflation: f64) -> Option<Shift> {
    let z = two_sided_z(confidence)?;
    let both: Vec<f64> = first.iter().chain(second).copied().collect();
    if !(all_finite(&both) && variance_inflation.is_finite() && variance_inflation >= 0.0) {
        return None;
    }
    let number = first.len() as u64 * second.len() as u64;
    let last = number.checked_sub(1)?;
    let (pairs, n) = (number as f64, both.len() as f64);
    let ties: f64 = tie_sizes(&both).map(|t| (t * t * t - t) as f64).sum();
    let variance = pairs / 3.0 * (n + 1.0 - ties / (n * (n - 1.0)));
    let reach = z * (variance * variance_inflation).max(0.0).sqrt();
    let low = (((pairs - reach) / 2.0).round_ties_even() - 1.0).max(0.0) as u64;
    let high = (((pairs + reach) / 2.0).round_ties_even() as u64).min(last);
    let below = sorted(first.iter().map(|value| -value));
    let above = sorted(second.iter().copied());
    let at = |rank| least_with(|sum| sums_up_to(&below, &above, sum) > rank);
    let found = Shift { shift: midway(at(last / 2), at(number / 2)), low: at(low), high: at(high) };
    all_finite(&[found.shift, found.low, found.high]).then_some(found)
}

/// How far pairs lie from nothing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PairedShift {
    /// The pseudo-median: the median of the means of any two differences.
    pub shift: f64,
    /// Wilcoxon's V: the sum of the ranks of the differences above zero.
    pub v: f64,
    /// The two-sided chance of a V so far from its middle where there is no shift.
    pub p: f64,
}

/// Wilcoxon's signed ranks and the pseudo-median of Hodges and Lehmann, each difference
/// taken with itself too (Hollander & Wolfe, Nonparametric Statistical Methods, chapter 3).
///
/// Differences of zero count for the pseudo-median and not for V, equal sizes share
/// the mean of their ranks. Up to 50 differences p is exact for these ranks; beyond, it
/// is that of a normal distribution, corrected for ties and continuity.
pub fn paired_shift(differences: &[f64]) -> Option<PairedShift> {
    let n = differences.len() as u64;
    if n == 0 || !all_finite(differences) {
        return None;
    }
    let ordered = sorted(differences.iter().copied());
    let with_itself = |sum: f64| ordered.partition_point(|value| value + value <= sum) as u64;
    let number = n * (n + 1) / 2;
    let at = |rank| least_with(|sum| (sums_up_to(&ordered, &ordered, sum) + with_itself(sum)) / 2 > rank) / 2.0;
    let shift = midway(at((number - 1) / 2), at(number / 2));

    let other: Vec<f64> = differences.iter().copied().filter(|value| *value != 0.0).collect();
    let sizes: Vec<f64> = other.iter().map(|value| value.abs()).collect();
    let ranks = twice_midranks(&sizes);
    let twice: i64 = ranks.iter().zip(&other).filter(|(_, value)| **value > 0.0).map(|(rank, _)| rank).sum();
    let p = if other.len() <= COUNTED { counted(&ranks, twice) } else { nearly(&sizes, twice) };
    shift.is_finite().then_some(PairedShift { shift, v: twice as f64 / 2.0, p })
}

/// The share of all sets of signs whose sum of ranks is as far out, twice over.
fn counted(ranks: &[i64], sum: i64) -> f64 {
    let most: i64 = ranks.iter().sum();
    let mut ways = vec![0.0; most as usize + 1];
    if let Some(none) = ways.first_mut() {
        *none = 1.0;
    }
    for rank in ranks {
        let before = ways.clone();
        for (way, without) in ways.iter_mut().skip(*rank as usize).zip(before) {
            *way += without;
        }
    }
    let tail: f64 = ways.iter().take(sum.min(most - sum) as usize + 1).sum();
    (2.0 * tail / 2.0_f64.powi(ranks.len() as i32)).min(1.0)
}

fn nearly(sizes: &[f64], twice: i64) -> f64 {
    let n = sizes.len() as f64;
    let ties: f64 = tie_sizes(sizes).map(|t| (t * t * t - t) as f64).sum();
    let variance = n * (n + 1.0) * (2.0 * n + 1.0) / 24.0 - ties / 48.0;
    let apart = (twice as f64 / 2.0 - n * (n + 1.0) / 4.0).abs();
    two_sided_p((apart - 0.5).max(0.0) / variance.sqrt())
}

fn sorted(values: impl Iterator<Item = f64>) -> Vec<f64> {
    let mut values: Vec<f64> = values.collect();
    values.sort_unstable_by(f64::total_cmp);
    values
}

/// How many sums of one value from each are at most so large. Both are in order, so
/// the more the first gives the less may the second.
fn sums_up_to(first: &[f64], second: &[f64], most: f64) -> u64 {
    let mut rest = second;
    let mut sums = 0;
    for value in first {
        while let Some((_, smaller)) = rest.split_last().filter(|(largest, _)| value + **largest > most) {
            rest = smaller;
        }
        sums += rest.len() as u64;
    }
    sums
}

/// The least number that has a property which all greater ones have: found by halving
/// the numbers there are, of which 64 steps leave one.
fn least_with(property: impl Fn(f64) -> bool) -> f64 {
    let (mut low, mut high) = (place_of(f64::NEG_INFINITY), place_of(f64::INFINITY));
    while low < high {
        let middle = low + (high - low) / 2;
        if property(number_at(middle)) {
            high = middle;
        } else {
            low = middle + 1;
        }
    }
    // Minus zero is zero.
    number_at(low) + 0.0
}

/// A number's place among all numbers in order.
fn place_of(number: f64) -> i128 {
    let bits = number.to_bits() as i64;
    i128::from(bits ^ (((bits >> 63) as u64) >> 1) as i64)
}

fn number_at(place: i128) -> f64 {
    let bits = place as i64;
    f64::from_bits((bits ^ (((bits >> 63) as u64) >> 1) as i64) as u64)
}
