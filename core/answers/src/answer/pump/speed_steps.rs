//! What a step of a pump's speed dial is in cycles per minute: counted by tapping along.

use crate::answer::{Estimate, CONFIDENCE};
use crate::quantity::{Count, Quantity, Speed, SpeedUnit};
use crate::record::Taps;
use crate::statistics::{least_squares_line, median, two_sided_t, Point};

/// Cycles that are counted: a tap at the beginning of each, and one at the end of the last.
pub const CYCLES_COUNTED: u32 = 10;
/// An interval this many times the usual one has a cycle in it that was not tapped.
const MISSED: f64 = 1.6;
/// One this small a share of it was tapped twice.
const TWICE: f64 = 0.5;

/// Why taps say nothing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NoCount {
    /// So many more taps are needed.
    Needs(Count),
    /// A tap was missed, or made twice.
    Uneven,
}

/// The cycles per minute of a pump that was tapped along with: the slope of a line through the taps, with the
/// range that their scatter leaves (Student's t).
///
/// # Errors
/// [`NoCount`]: why they say nothing.
pub fn counted(taps: &Taps) -> Result<Estimate<Speed>, NoCount> {
    let seconds: Vec<f64> = taps.spans().iter().map(|span| span.in_milliseconds() as f64 / 1000.0).collect();
    let missing = (CYCLES_COUNTED + 1).saturating_sub(u32::try_from(seconds.len()).unwrap_or(u32::MAX));
    if missing > 0 {
        return Err(NoCount::Needs(Count::new(missing)));
    }
    let between: Vec<f64> = seconds.iter().zip(seconds.iter().skip(1)).map(|(one, next)| next - one).collect();
    let usual = median(&between).ok_or(NoCount::Uneven)?;
    if between.iter().any(|span| *span > MISSED * usual || *span < TWICE * usual) {
        return Err(NoCount::Uneven);
    }
    let points: Vec<Point> =
        seconds.iter().enumerate().map(|(at, value)| Point { at: at as f64, value: *value }).collect();
    let line = least_squares_line(&points).ok_or(NoCount::Uneven)?;
    let reach = two_sided_t(CONFIDENCE, points.len() as f64 - 2.0).ok_or(NoCount::Uneven)? * line.slope_sd;
    if line.slope <= reach {
        return Err(NoCount::Uneven);
    }
    let rate = |period: f64| Speed::of(60.0 / period, SpeedUnit::PerMinute);
    Ok(Estimate { value: rate(line.slope), low: rate(line.slope + reach), high: rate(line.slope - reach) })
}
