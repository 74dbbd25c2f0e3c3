//! The straight line of least squares.

use super::{mean, Point};

/// A line through points, and how well it is known.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Line {
    /// Height at zero.
    pub intercept: f64,
    /// Rise for each step.
    pub slope: f64,
    /// Standard deviation of the intercept.
    pub intercept_sd: f64,
    /// Standard deviation of the slope.
    pub slope_sd: f64,
    /// Standard deviation of what the line leaves over, on n - 2 degrees of freedom.
    pub residual_sd: f64,
    /// Share of the variation that the line takes up.
    pub r_squared: f64,
}

/// Ordinary least squares, about the means (Draper & Smith, Applied Regression
/// Analysis, 1998, chapter 1). At least three points, not all at one place, and
/// not all of one height.
pub fn least_squares_line(points: &[Point]) -> Option<Line> {
    let middle_at = mean(&points.iter().map(|point| point.at).collect::<Vec<_>>())?;
    let middle = mean(&points.iter().map(|point| point.value).collect::<Vec<_>>())?;
    let apart = || points.iter().map(|point| (point.at - middle_at, point.value - middle));
    let across: f64 = apart().map(|(x, _)| x * x).sum();
    let both: f64 = apart().map(|(x, y)| x * y).sum();
    let up: f64 = apart().map(|(_, y)| y * y).sum();
    let n = points.len() as f64;
    let slope = both / across;
    let left_over: f64 = apart().map(|(x, y)| (y - slope * x).powi(2)).sum();
    let residual_sd = (left_over / (n - 2.0)).sqrt();
    let line = Line {
        intercept: middle - slope * middle_at,
        slope,
        intercept_sd: residual_sd * (1.0 / n + middle_at * middle_at / across).sqrt(),
        slope_sd: residual_sd / across.sqrt(),
        residual_sd,
        r_squared: 1.0 - left_over / up,
    };
    let numbers = [line.intercept, line.slope, line.intercept_sd, line.slope_sd, line.residual_sd, line.r_squared];
    (points.len() > 2 && super::point::all_finite(&numbers)).then_some(line)
}
