//! Mean, variance and the correlation of neighbours, without losing figures.

use super::point::all_finite;

/// The mean. The first estimate is corrected by the mean of what is left over,
/// so that large values with small differences lose nothing.
pub fn mean(values: &[f64]) -> Option<f64> {
    if values.is_empty() || !all_finite(values) {
        return None;
    }
    let n = values.len() as f64;
    let rough = values.iter().map(|value| value / n).sum::<f64>();
    let better = rough + values.iter().map(|value| value - rough).sum::<f64>() / n;
    better.is_finite().then_some(better)
}

/// The sample variance, divided by n - 1: two passes and the correction for what
/// the rounded mean leaves over (Chan, Golub & LeVeque, American Statistician
/// 1983;37:242-247). At least two values.
pub fn variance(values: &[f64]) -> Option<f64> {
    let middle = mean(values)?;
    let n = values.len() as f64;
    let (squares, left_over) = values.iter().fold((0.0, 0.0), |(squares, left_over), value| {
        let apart = value - middle;
        (squares + apart * apart, left_over + apart)
    });
    let found = (squares - left_over * left_over / n) / (n - 1.0);
    (n > 1.0 && found.is_finite()).then_some(found.max(0.0))
}

/// The square root of the sample variance.
pub fn standard_deviation(values: &[f64]) -> Option<f64> {
    variance(values).map(f64::sqrt)
}

/// The correlation of each value with the one before:
/// r₁ = Σ (yᵢ - ȳ)(yᵢ₊₁ - ȳ) / Σ (yᵢ - ȳ)². None where all are equal.
pub fn first_autocorrelation(values: &[f64]) -> Option<f64> {
    let middle = mean(values)?;
    let together: f64 = values.iter().zip(values.iter().skip(1)).map(|(a, b)| (a - middle) * (b - middle)).sum();
    let alone: f64 = values.iter().map(|value| (value - middle) * (value - middle)).sum();
    let found = together / alone;
    (alone > 0.0 && found.is_finite()).then_some(found)
}
