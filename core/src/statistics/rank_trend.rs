//! Whether a series rises or falls at all, by ranks: Mann-Kendall, and Hamed and
//! Rao's correction where neighbours resemble each other.

use super::{
    autocorrelation,
    normal::{two_sided_p, two_sided_z},
    order::{tie_sizes, twice_midranks},
    point::all_finite,
    robust_slope::median_slope,
    Point,
};

/// The outcome of a rank test for trend.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RankTrend {
    /// Pairs that rise less pairs that fall.
    pub s: i64,
    /// The variance of S where there is no trend.
    pub variance: f64,
    /// S in standard deviations, corrected for continuity.
    pub z: f64,
    /// The two-sided chance of such a z where there is no trend.
    pub p: f64,
    /// S as a share of all pairs (Kendall's tau-a).
    pub tau: f64,
}

/// The same where neighbours resemble each other.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CorrectedTrend {
    /// The test, its variance multiplied by [`variance_inflation`](Self::variance_inflation).
    pub trend: RankTrend,
    /// By what the variance was multiplied, at least 1.
    pub variance_inflation: f64,
    /// The same before it was bounded, as Hamed and Rao have it.
    pub unbounded_inflation: f64,
}

fn outcome(s: i64, variance: f64, n: usize) -> RankTrend {
    let n = n as f64;
    let z = if variance > 0.0 { (s - s.signum()) as f64 / variance.sqrt() } else { 0.0 };
    RankTrend { s, variance, z, p: two_sided_p(z), tau: s as f64 / (n * (n - 1.0) / 2.0) }
}

/// Mann's and Kendall's test.
pub fn mann_kendall(values: &[f64]) -> Option<RankTrend> {
    if values.len() < 2 || !all_finite(values) {
        return None;
    }
    let mut s = 0;
    for (place, a) in values.iter().enumerate() {
        s += values.iter().skip(place + 1).map(|b| i64::from(b > a) - i64::from(b < a)).sum::<i64>();
    }
    let steps = |k: u64| (k * (k - 1) * (2 * k + 5)) as f64;
    let ties: f64 = tie_sizes(values).into_iter().map(steps).sum();
    Some(outcome(s, (steps(values.len() as u64) - ties) / 18.0, values.len()))
}

/// Hamed and Rao's correction; `lags` of `None` looks at all.
pub fn hamed_rao(points: &[Point], lags: Option<usize>) -> Option<CorrectedTrend> {
    let values: Vec<f64> = points.iter().map(|point| point.value).collect();
    let plain = mann_kendall(&values)?;
    let (first, last) = (points.first()?.at, points.last()?.at);
    let (n, span) = (points.len() as f64, last - first + 1.0);
    let slope = median_slope(points)?;
    let level: Vec<f64> = points.iter().map(|point| point.value - (point.at - first + 1.0) * slope).collect();
    let ranked: Vec<Point> = points
        .iter()
        .zip(twice_midranks(&level))
        .map(|(point, rank)| Point { at: point.at, value: rank as f64 / 2.0 })
        .collect();
    let bound = two_sided_z(0.95)? / n.sqrt();
    let mut sum = 0.0;
    for (lag, found) in autocorrelation(&ranked, lags.unwrap_or(usize::MAX)).iter().enumerate().skip(1) {
        let expected = n * (span - lag as f64) / span;
        if found.value.abs() > bound * (found.pairs as f64 / expected).sqrt() {
            sum += expected * (expected - 1.0) * (expected - 2.0) * found.value;
        }
    }
    let unbounded_inflation = if n > 2.0 { 1.0 + 2.0 / (n * (n - 1.0) * (n - 2.0)) * sum } else { 1.0 };
    let variance_inflation = unbounded_inflation.max(1.0);
    let trend = outcome(plain.s, plain.variance * variance_inflation, values.len());
    Some(CorrectedTrend { trend, variance_inflation, unbounded_inflation })
}
