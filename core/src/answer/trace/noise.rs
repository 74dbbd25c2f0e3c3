//! How much of a trace is noise.

use crate::statistics::{median, TO_SIGMA};

/// Differences are taken of so many places at most; more say nothing new.
const MOST_PLACES: usize = 100_000;

/// Differences of second, fourth and sixth order, and the sum of their squares: the
/// variance of such a difference is that of the noise, times so much.
const DIFFERENCES: [(&[f64], f64); 3] = [
    (&[1.0, -2.0, 1.0], 6.0),
    (&[1.0, -4.0, 6.0, -4.0, 1.0], 70.0),
    (&[1.0, -6.0, 15.0, -20.0, 15.0, -6.0, 1.0], 924.0),
];

/// The standard deviation of the noise, in the trace's own unit.
///
/// 1.4826 times the median size of the p-th difference, over √(Σ c²): a difference takes
/// away what runs smoothly and leaves noise (Rice, "Bandwidth choice for nonparametric
/// regression", Ann Stat 1984;12:1215-1230; Hall, Kay & Titterington, Biometrika
/// 1990;77:521-528). What it leaves of the signal only adds, so the least of the
/// second, fourth and sixth order is taken: at 20 samples a second a cycle is not smooth to
/// the second alone.
pub(super) fn noise(values: &[f32]) -> f64 {
    let each = DIFFERENCES.iter().filter_map(|(weights, squares)| {
        let every = (values.len() / MOST_PLACES).max(1);
        let sizes: Vec<f64> = values
            .windows(weights.len())
            .step_by(every)
            .map(|window| {
                window.iter().zip(*weights).map(|(value, weight)| f64::from(*value) * weight).sum::<f64>().abs()
            })
            .filter(|size| size.is_finite())
            .collect();
        median(&sizes).map(|size| TO_SIGMA * size / squares.sqrt())
    });
    let least = each.fold(f64::INFINITY, f64::min);
    if least.is_finite() {
        least
    } else {
        0.0
    }
}
