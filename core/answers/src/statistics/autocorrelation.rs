//! How far a series resembles itself some days later, where days are missing.

use super::{mean, Point};

/// The longest series in days that is looked at day by day: 270 years.
const LONGEST: f64 = 100_000.0;

/// What a series has in common with itself a number of days later.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Lag {
    /// The correlation: Σ over pairs present ÷ Σ of all squares, about the mean.
    pub value: f64,
    /// How many pairs were there.
    pub pairs: usize,
}

/// Correlation at lag 0, 1, … up to `lags` days or as far as the series goes.
///
/// ρₖ = Σ (yₜ - ȳ)(yₜ₊ₖ - ȳ) / Σ (yₜ - ȳ)², the upper sum over the pairs that are
/// both there (Parzen 1963; `acf(missing="conservative")` in statsmodels). It is
/// not divided by how many those were, so a series with gaps shows less of its
/// likeness, as it should: what is not there adds nothing to a sum's variance.
///
/// Empty where places are not whole and increasing, or all values are equal.
pub fn autocorrelation(points: &[Point], lags: usize) -> Vec<Lag> {
    let Some(days) = by_day(points) else { return Vec::new() };
    let Some(middle) = mean(&points.iter().map(|point| point.value).collect::<Vec<_>>()) else { return Vec::new() };
    let apart: Vec<f64> = days.iter().map(|day| day.map_or(0.0, |value| value - middle)).collect();
    let there: Vec<u32> = days.iter().map(|day| u32::from(day.is_some())).collect();
    let squares: f64 = apart.iter().map(|value| value * value).sum();
    if !(squares > 0.0 && squares.is_finite()) {
        return Vec::new();
    }
    let whole = points.len() == days.len();
    let at = |lag: usize| Lag {
        value: together(apart.get(lag..).unwrap_or_default(), &apart) / squares,
        pairs: match whole {
            true => days.len() - lag,
            false => there.iter().zip(there.iter().skip(lag)).map(|(a, b)| a & b).sum::<u32>() as usize,
        },
    };
    (0..=lags.min(days.len() - 1)).map(at).collect()
}

/// The sum of products, in eight sums side by side, which is what a processor does at once.
fn together(later: &[f64], earlier: &[f64]) -> f64 {
    let earlier = earlier.get(..later.len()).unwrap_or_default();
    let (eights, others) = (later.chunks_exact(8), earlier.chunks_exact(8));
    let rest: f64 = eights.remainder().iter().zip(others.remainder()).map(|(a, b)| a * b).sum();
    let mut sums = [0.0; 8];
    for (eight, other) in eights.zip(others) {
        for (sum, (a, b)) in sums.iter_mut().zip(eight.iter().zip(other)) {
            *sum += a * b;
        }
    }
    sums.iter().sum::<f64>() + rest
}

/// Whether places are whole days, increasing, and not absurdly far apart.
pub(super) fn is_by_day(points: &[Point]) -> bool {
    let (Some(first), Some(last)) = (points.first(), points.last()) else { return false };
    points.windows(2).all(|pair| matches!(pair, [a, b] if a.at < b.at))
        && points.iter().all(|point| point.at.fract() == 0.0)
        && last.at - first.at < LONGEST
}

/// The series with its missing days.
fn by_day(points: &[Point]) -> Option<Vec<Option<f64>>> {
    let (first, last) = (points.first()?, points.last()?);
    if !is_by_day(points) {
        return None;
    }
    let mut days = vec![None; (last.at - first.at) as usize + 1];
    for point in points {
        *days.get_mut((point.at - first.at) as usize)? = Some(point.value);
    }
    Some(days)
}
