//! Whether production holds, rises or falls.

use statrs::distribution::{ContinuousCDF, Normal, StudentsT};

use super::level::{level, Level};
use super::series::{inflation_of, Series};
use crate::answer::{Estimate, CONFIDENCE};
use crate::guidance::SupplyRules;
use crate::quantity::{Count, Drift, Production, Quantity, Share};
use crate::statistics::{hamed_rao, robust_slope, CorrectedTrend, Point, RobustSlope};
use crate::time::LocalDay;

/// What a course is called.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Heading {
    /// The range of the slope lies inside the band of no importance.
    Holding,
    /// The range, a little wider than it is told, lies above nothing, and its middle is worth a word.
    Rising,
    /// The same below nothing.
    Falling,
}

/// The course of a series.
#[derive(Debug, Clone, PartialEq)]
pub struct Course {
    /// What it is called; none where that cannot be told yet.
    pub heading: Option<Heading>,
    /// How it changes, in mL per day per week (Theil 1950, Sen 1968).
    pub drift: Estimate<Drift>,
    /// The same as a share of the level, per week; none where the level is nothing.
    pub share_a_week: Option<Estimate<Share>>,
    /// Mann's and Kendall's test with Hamed's and Rao's correction (1998).
    pub trend: Option<CorrectedTrend>,
    /// How it changes a day, with its range.
    line: RobustSlope,
    from: LocalDay,
    points: usize,
    middle_at: f64,
    middle: f64,
    half_width: f64,
}

/// Complete days below which no slope is worked out.
pub const COURSE_NEEDS: u32 = 6;
const DAYS_A_WEEK: f64 = 7.0;
/// Lags looked at for days that are like the days before. More of them make the
/// test cry wolf more often on series as short as these.
const LAGS: usize = 3;

impl Course {
    /// The middle of the course on a day, and the range it may lie in there.
    pub fn on(&self, day: LocalDay) -> Estimate<Production> {
        let at = day.days_since(self.from) as f64;
        let away = at - self.middle_at;
        let value = self.middle + self.line.slope * away;
        let ends = [self.line.low * away, self.line.high * away].map(|by| self.middle + by);
        let low = ends.iter().copied().fold(value, f64::min);
        let high = ends.iter().copied().fold(value, f64::max);
        Estimate {
            value: Production::from_canonical(value.max(0.0)),
            low: Production::from_canonical((value - (value - low).hypot(self.half_width)).max(0.0)),
            high: Production::from_canonical(value + (high - value).hypot(self.half_width)),
        }
    }

    /// How many points it was drawn through.
    pub fn points(&self) -> Count {
        Count::new(self.points as u32)
    }
}

/// The course of a series; how many more complete days it needs where there
/// are too few for any.
///
/// # Errors
/// [`Level`]: how many more complete days it needs, or that too much is missing.
pub fn course(series: &Series, rules: &SupplyRules) -> Result<Course, Level> {
    let found = level(series, rules);
    let Level::Known(level) = found else {
        let complete = series.rests_on.complete.get();
        return Err(match found {
            Level::NeedsDays(_) => Level::NeedsDays(Count::new(COURSE_NEEDS.saturating_sub(complete).max(1))),
            other => other,
        });
    };
    let points = series.points();
    let missing = COURSE_NEEDS.saturating_sub(points.len() as u32);
    if missing > 0 {
        return Err(Level::NeedsDays(Count::new(missing)));
    }
    let trend = hamed_rao(&points, Some(LAGS.min(points.len() - 1)));
    let corrected = trend.as_ref().map_or(1.0, |t| t.variance_inflation);
    // Hamed and Rao count significant lags only; days that are a little like
    // the day before would pass for independent. Never narrower than plain.
    let line = robust_slope(&points, CONFIDENCE, 1.0).and_then(|plain| {
        let along = |p: &Point| p.value - plain.slope * p.at;
        let left: Vec<Point> = points.iter().map(|p| Point { at: p.at, value: along(p) }).collect();
        let inflation = corrected.max(inflation_of(&left)).max(1.0);
        robust_slope(&points, CONFIDENCE, inflation * few_days(points.len() as f64 / inflation))
    });
    let Some(line) = line else { return Err(Level::NeedsDays(Count::new(1))) };
    let week = |a_day: f64| a_day * DAYS_A_WEEK;
    let of = level.value.canonical();
    let share_a_week = (of > 0.0).then(|| Estimate {
        value: Share::of(week(line.slope) / of),
        low: Share::of(week(line.low) / of),
        high: Share::of(week(line.high) / of),
    });
    let band = rules.band_a_week;
    let heading = match &share_a_week {
        Some(s) => heading(s, band),
        // Nothing came on any day: that holds.
        None => (line.low == 0.0 && line.high == 0.0).then_some(Heading::Holding),
    };
    Ok(Course {
        heading,
        drift: Estimate {
            value: Drift::from_canonical(week(line.slope)),
            low: Drift::from_canonical(week(line.low)),
            high: Drift::from_canonical(week(line.high)),
        },
        share_a_week,
        trend,
        from: series.rests_on.from,
        points: points.len(),
        middle_at: points.iter().map(|p| p.at).sum::<f64>() / points.len() as f64,
        middle: of,
        half_width: (level.high.canonical() - level.low.canonical()) / 2.0,
        line,
    })
}

/// How much wider a range is, as a factor of its variance, because its spread
/// is itself known from so few days: Student's t over the normal, squared.
fn few_days(days: f64) -> f64 {
    let at = 0.5 + CONFIDENCE / 2.0;
    let normal = Normal::standard().inverse_cdf(at);
    StudentsT::new(0.0, 1.0, (days - 2.0).max(1.0)).map_or(1.0, |t| (t.inverse_cdf(at) / normal).powi(2))
}

/// A course is called rising or falling where its range, a little wider than it is told, lies
/// to one side of nothing, and its middle is worth a word: so much of the band. Measured with
/// families of known truth; a range that had to lie beyond the band said nothing of seven in
/// ten families that changed by 8 % a week.
const SURER: f64 = 1.15;
const WORTH_OF_BAND: f64 = 0.8;

/// Inside the band, to one side of nothing, or not yet.
fn heading(share_a_week: &Estimate<Share>, band: Share) -> Option<Heading> {
    let (low, high, band) = (share_a_week.low.fraction(), share_a_week.high.fraction(), band.fraction());
    let value = share_a_week.value.fraction();
    let worth = WORTH_OF_BAND * band;
    if low >= -band && high <= band {
        Some(Heading::Holding)
    } else if value - SURER * (value - low) > 0.0 && value > worth {
        Some(Heading::Rising)
    } else if value + SURER * (high - value) < 0.0 && value < -worth {
        Some(Heading::Falling)
    } else {
        None
    }
}
