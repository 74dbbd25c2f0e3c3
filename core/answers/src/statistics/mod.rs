//! Textbook methods, each with its formula and its source. Nothing here knows
//! what the numbers mean.
//!
//! In: plain numbers, or [`Point`]s where a series has gaps. Out: estimates with
//! their ranges. What cannot be worked out (too few values, a value that is not
//! finite, a range turned round) is `None` or empty; nothing panics and no NaN
//! comes out. Read [`robust_slope`] first: most of the others rest on the same
//! idea, that ranks and medians do not mind one mistyped value.
//!
//! Numbers are `f64` here and only here: a slope or a rank has no unit until the
//! one who asked gives it one back.

mod autocorrelation;
mod bend;
mod biweight;
mod change_points;
mod draws;
mod inversions;
mod last_level;
mod line;
mod median_range;
mod moments;
mod non_overlap;
mod normal;
mod order;
mod pettitt;
mod point;
mod randomisation;
mod rank_trend;
mod regression;
mod rising;
mod rising_chance;
mod robust_slope;
mod saturation;
mod signed_range;
mod slopes;
mod spending;
mod student;
mod two_samples;
mod uncertain;

pub use autocorrelation::{autocorrelation, Lag};
pub use bend::{bend, Bend};
pub use biweight::{robust_pelt, BIWEIGHT_BOUND};
pub use change_points::{pelt, segment_range};
pub use draws::Draws;
pub use last_level::{last_level, Beforehand, Guess, LastLevel, Value};
pub use line::{least_squares_line, Line};
pub use median_range::{median_range, MedianRange};
pub use moments::{first_autocorrelation, mean, standard_deviation, variance};
pub use non_overlap::{non_overlap, NonOverlap};
pub use order::{median, median_absolute_deviation, quantile, robust_spread, TO_SIGMA};
pub use pettitt::{pettitt, Pettitt};
pub use point::Point;
pub use randomisation::{randomisation, Assignments, RandomBlock, Randomised};
pub use rank_trend::{hamed_rao, mann_kendall, CorrectedTrend, RankTrend};
pub use regression::{Observed, Regression};
pub use rising::rising;
pub use rising_chance::{Answered, RisingChance};
pub use robust_slope::{robust_slope, RobustSlope};
pub use saturation::{grown, grown_elasticity, grown_slope, pace, Collected, Saturation};
pub use signed_range::{paired_range, PairedRange};
pub use spending::{bounds, nominal, spent};
pub use student::two_sided_t;
pub use two_samples::{paired_shift, shift, PairedShift, Shift};
pub use uncertain::Uncertain;
