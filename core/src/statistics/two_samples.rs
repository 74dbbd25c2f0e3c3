//! How far one sample lies from another, by medians of differences.

use super::{
    normal::two_sided_z,
    order::{median_of_sorted, tie_sizes, twice_midranks},
    point::all_finite,
};

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

/// Hodges and Lehmann's shift with its distribution-free range.
pub fn shift(first: &[f64], second: &[f64], confidence: f64, variance_inflation: f64) -> Option<Shift> {
    let z = two_sided_z(confidence)?;
    let both: Vec<f64> = first.iter().chain(second).copied().collect();
    let sound = all_finite(&both) && variance_inflation.is_finite() && variance_inflation >= 0.0;
    if !sound {
        return None;
    }
    let mut apart: Vec<f64> = first.iter().flat_map(|a| second.iter().map(move |b| b - a)).collect();
    apart.sort_unstable_by(f64::total_cmp);
    let pairs = apart.len() as f64;
    let n = both.len() as f64;
    let ties: f64 = tie_sizes(&both).into_iter().map(|t| (t * t * t - t) as f64).sum();
    let variance = pairs / 3.0 * (n + 1.0 - ties / (n * (n - 1.0)));
    let reach = z * (variance * variance_inflation).max(0.0).sqrt();
    let low = (((pairs - reach) / 2.0).round_ties_even() - 1.0).max(0.0) as usize;
    let high = (((pairs + reach) / 2.0).round_ties_even() as usize).min(apart.len().checked_sub(1)?);
    Some(Shift { shift: median_of_sorted(&apart)?, low: *apart.get(low)?, high: *apart.get(high)? })
}

/// How far pairs lie from nothing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PairedShift {
    /// The pseudo-median: the median of the means of all two differences.
    pub shift: f64,
    /// Wilcoxon's V: the sum of the ranks of the differences above zero.
    pub v: f64,
    /// The two-sided chance of such a V where there is no shift.
    pub p: f64,
}

/// Wilcoxon's signed ranks.
pub fn paired_shift(differences: &[f64]) -> Option<PairedShift> {
    if differences.is_empty() || !all_finite(differences) {
        return None;
    }
    let mut walsh = Vec::new();
    for (place, a) in differences.iter().enumerate() {
        walsh.extend(differences.iter().skip(place).map(|b| (a + b) / 2.0));
    }
    walsh.sort_unstable_by(f64::total_cmp);
    let other: Vec<f64> = differences.iter().copied().filter(|value| *value != 0.0).collect();
    let sizes: Vec<f64> = other.iter().map(|value| value.abs()).collect();
    let twice: i64 = twice_midranks(&sizes).iter().zip(&other).filter(|(_, d)| **d > 0.0).map(|(rank, _)| rank).sum();
    let n = other.len() as u64;
    let v = twice as f64 / 2.0;
    // How many of the 2ⁿ sets of ranks have each sum.
    let most = (n * (n + 1) / 2) as usize;
    let mut ways = vec![0.0; most + 1];
    if let Some(first) = ways.first_mut() {
        *first = 1.0;
    }
    for rank in 1..=n as usize {
        for sum in (rank..=most).rev() {
            let more = ways.get(sum - rank).copied().unwrap_or_default();
            if let Some(way) = ways.get_mut(sum) {
                *way = (*way + more) / 1.0;
            }
        }
    }
    let all: f64 = ways.iter().sum();
    let small = v.min(most as f64 - v);
    let tail: f64 = ways.iter().take(small as usize + 1).sum::<f64>() / all;
    Some(PairedShift { shift: median_of_sorted(&walsh)?, v, p: (2.0 * tail).min(1.0) })
}
