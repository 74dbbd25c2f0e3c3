//! The normal distribution, as far as it is needed here. The error function is
//! the one of the crate `statrs`.

use std::f64::consts::SQRT_2;

use statrs::function::erf::{erfc, erfc_inv};

/// The chance of being at least so far from the middle, either way.
pub(super) fn two_sided_p(z: f64) -> f64 {
    erfc(z.abs() / SQRT_2).clamp(0.0, 1.0)
}

/// How far from the middle, either way, the given share lies: 1.96 for 0.95.
pub(super) fn two_sided_z(confidence: f64) -> Option<f64> {
    (confidence > 0.0 && confidence < 1.0).then(|| SQRT_2 * erfc_inv(1.0 - confidence))
}

/// The chance of lying below so many spreads.
pub(super) fn below(z: f64) -> f64 {
    0.5 * erfc(-z / SQRT_2)
}

/// How many spreads from the middle so much lies below.
pub(super) fn at_below(chance: f64) -> f64 {
    -SQRT_2 * erfc_inv(2.0 * chance)
}
