//! The Theil-Sen line: the median of all slopes between two points.

use super::{
    normal::two_sided_z,
    order::{median, median_of_sorted, tie_sizes},
    point::all_finite,
    Point,
};

/// A slope that a quarter of the points may be wrong without moving far.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RobustSlope {
    /// Rise for each step: the median over all pairs.
    pub slope: f64,
    /// Lower end of its range.
    pub low: f64,
    /// Upper end of its range.
    pub high: f64,
    /// Median of the values - slope · median of the places (Conover 1980).
    pub intercept: f64,
    /// How many pairs it rests on.
    pub pairs: u64,
}

/// The Theil-Sen slope with Sen's range.
pub fn robust_slope(points: &[Point], confidence: f64, variance_inflation: f64) -> Option<RobustSlope> {
    let z = two_sided_z(confidence)?;
    let at: Vec<f64> = points.iter().map(|point| point.at).collect();
    let values: Vec<f64> = points.iter().map(|point| point.value).collect();
    if !(all_finite(&at) && all_finite(&values) && variance_inflation.is_finite() && variance_inflation >= 0.0) {
        return None;
    }
    let mut slopes = Vec::new();
    for (place, a) in points.iter().enumerate() {
        for b in points.iter().skip(place + 1).filter(|b| b.at != a.at) {
            slopes.push((b.value - a.value) / (b.at - a.at));
        }
    }
    slopes.sort_unstable_by(f64::total_cmp);
    let slope = median_of_sorted(&slopes)?;
    let steps = |k: u64| (k * (k - 1) * (2 * k + 5)) as f64;
    let ties = |of: &[f64]| tie_sizes(of).into_iter().map(steps).sum::<f64>();
    let variance = (steps(points.len() as u64) - ties(&at) - ties(&values)) / 18.0;
    let reach = z * (variance * variance_inflation).max(0.0).sqrt();
    let pairs = slopes.len() as f64;
    let low = (((pairs - reach) / 2.0).round_ties_even() - 1.0).max(0.0) as usize;
    let high = (((pairs + reach) / 2.0).round_ties_even() as usize).min(slopes.len() - 1);
    let found = RobustSlope {
        slope,
        low: *slopes.get(low)?,
        high: *slopes.get(high)?,
        intercept: median(&values)? - slope * median(&at)?,
        pairs: slopes.len() as u64,
    };
    all_finite(&[found.slope, found.low, found.high, found.intercept]).then_some(found)
}

/// The slope alone.
pub(super) fn median_slope(points: &[Point]) -> Option<f64> {
    robust_slope(points, 0.95, 1.0).map(|found| found.slope)
}
