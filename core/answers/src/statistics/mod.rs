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
mod inversions;
mod last_level;
mod line;
mod moments;
mod normal;
mod order;
mod pettitt;
mod point;
mod rank_trend;
mod rising;
mod robust_slope;
mod saturation;
mod slopes;
mod student;
mod two_samples;
mod uncertain;

pub use autocorrelation::{autocorrelation, Lag};
pub use bend::{bend, Bend};
pub use biweight::{robust_pelt, BIWEIGHT_BOUND};
pub use change_points::{pelt, segment_range};
pub use last_level::{last_level, Beforehand, Guess, LastLevel, Value};
pub use line::{least_squares_line, Line};
pub use moments::{first_autocorrelation, mean, standard_deviation, variance};
pub use order::{median, median_absolute_deviation, quantile, robust_spread, TO_SIGMA};
pub use pettitt::{pettitt, Pettitt};
pub use point::Point;
pub use rank_trend::{hamed_rao, mann_kendall, CorrectedTrend, RankTrend};
pub use rising::rising;
pub use robust_slope::{robust_slope, RobustSlope};
pub use saturation::{grown, grown_elasticity, grown_slope, pace, Collected, Saturation};
pub use student::two_sided_t;
pub use two_samples::{paired_shift, shift, PairedShift, Shift};
pub use uncertain::Uncertain;
