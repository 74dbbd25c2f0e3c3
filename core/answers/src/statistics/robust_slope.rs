//! The Theil-Sen line: the median of all slopes between two points.

use super::{
    normal::two_sided_z,
    order::{median, midway, rank_steps, tie_steps},
    point::all_finite,
    slopes::Slopes,
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
    /// Median of the values - slope · median of the places.
    pub intercept: f64,
    /// How many pairs it rests on.
    pub pairs: u64,
}

/// The Theil-Sen slope with Sen's range.
///
/// slope = median of (yⱼ - yᵢ) / (xⱼ - xᵢ) over the N pairs with xᵢ < xⱼ. Its range
/// is the slopes of rank (N ± z σ) / 2, where σ² is the variance of Kendall's S, less
/// what ties in y and x take from it (Theil 1950; Sen, "Estimates of the regression
/// coefficient based on Kendall's tau", JASA 1968;63:1379-1389, eq. 2.6). The
/// intercept is Conover's (Practical Nonparametric Statistics, 1980). All as
/// `scipy.stats.theilslopes(method="separate")` has it, with σ² multiplied by
/// `variance_inflation`: 1 where neighbours do not resemble each other,
/// [`hamed_rao`](super::hamed_rao)'s where they do.
///
/// Points may come in any order and share places. It takes n log n steps.
///
/// ```
/// use drawwell_answers::statistics::{robust_slope, Point};
/// let points: Vec<Point> =
///     [1.0, 2.0, 3.0, 4.0, 5.0, 16.0, 7.0].into_iter().zip(1..).map(|(value, at)| Point { at: at.into(), value }).collect();
/// assert_eq!(robust_slope(&points, 0.95, 1.0).map(|found| found.slope), Some(1.0));
/// ```
pub fn robust_slope(points: &[Point], confidence: f64, variance_inflation: f64) -> Option<RobustSlope> {
    let z = two_sided_z(confidence)?;
    let at: Vec<f64> = points.iter().map(|point| point.at).collect();
    let values: Vec<f64> = points.iter().map(|point| point.value).collect();
    if !(all_finite(&at) && all_finite(&values) && variance_inflation.is_finite() && variance_inflation >= 0.0) {
        return None;
    }
    let slopes = Slopes::of(points);
    let last = slopes.pairs().checked_sub(1)?;
    let variance = (rank_steps(points.len() as u64) - tie_steps(&at) - tie_steps(&values)) / 18.0;
    let reach = z * (variance * variance_inflation).max(0.0).sqrt();
    let pairs = slopes.pairs() as f64;
    let low = (((pairs - reach) / 2.0).round_ties_even() - 1.0).max(0.0) as u64;
    let high = (((pairs + reach) / 2.0).round_ties_even() as u64).min(last);
    let found = slopes.at_ranks(&[(last / 2, slopes.pairs() / 2), (low, low), (high, high)])?;
    let [(lower, upper), (low, _), (high, _)] = <[(f64, f64); 3]>::try_from(found).ok()?;
    let slope = midway(lower, upper);
    let intercept = median(&values)? - slope * median(&at)?;
    let found = RobustSlope { slope, low, high, intercept, pairs: slopes.pairs() };
    all_finite(&[slope, low, high, intercept]).then_some(found)
}

/// The slope alone, of points that are finite.
pub(super) fn median_slope(points: &[Point]) -> Option<f64> {
    let slopes = Slopes::of(points);
    let last = slopes.pairs().checked_sub(1)?;
    let found = slopes.at_ranks(&[(last / 2, slopes.pairs() / 2)])?;
    found.first().map(|(lower, upper)| midway(*lower, *upper)).filter(|slope| slope.is_finite())
}
