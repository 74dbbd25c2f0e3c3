//! Pettitt's test: whether a series changed its level once, by ranks.

use super::{order::twice_midranks, point::all_finite};

/// The outcome of Pettitt's test.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pettitt {
    /// The greatest distance of the running rank sum from what chance expects.
    pub k: i64,
    /// The first index after the change.
    pub index: usize,
    /// The two-sided chance of such a K where nothing changed, nearly; a little too
    /// large where there are ties.
    pub p: f64,
}

/// K = max |Uₜ| with Uₜ = 2 Σ ranks up to t - t(n + 1), and p = 2 exp(-6K² / (n³ + n²))
/// (Pettitt, "A non-parametric approach to the change-point problem", Applied Statistics
/// 1979;28:126-135). Equal values share the mean of their ranks; of equal distances the
/// first is told. At least two values. It takes n log n steps.
pub fn pettitt(values: &[f64]) -> Option<Pettitt> {
    if values.len() < 2 || !all_finite(values) {
        return None;
    }
    let n = values.len() as i64;
    let (mut sum, mut k, mut index) = (0_i64, -1, 0);
    for (place, twice) in (1..values.len()).zip(twice_midranks(values)) {
        sum += twice - (n + 1);
        if sum.abs() > k {
            (k, index) = (sum.abs(), place);
        }
    }
    let (n, distance) = (n as f64, k as f64);
    let p = 2.0 * (-6.0 * distance * distance / (n * n * n + n * n)).exp();
    Some(Pettitt { k, index, p: p.min(1.0) })
}
