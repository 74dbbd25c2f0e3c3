//! Checks held against each other over time: how a pump wears, whether a new part
//! brought it back, and when its lower limit would be reached.

use super::{GaugeError, Pull};
use crate::answer::{Estimate, CONFIDENCE};
use crate::guidance::MONTH_HOURS;
use crate::quantity::{Count, Quantity, Vacuum, Wear};
use crate::statistics::{mean, two_sided_t, Uncertain};
use crate::time::{Instant, Span};

/// One check's pull at the highest level, on one side.
#[derive(Debug, Clone, PartialEq)]
pub struct Point {
    /// When.
    pub at: Instant,
    /// The check.
    pub check: String,
    /// The gauge.
    pub gauge: String,
    /// What it pulled.
    pub pull: Pull,
}

/// A part that came into use.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct NewPart {
    /// When.
    pub at: Instant,
    /// Its record.
    pub part: String,
}

/// A pull that came back when a part was new: it was the part.
#[derive(Debug, Clone, PartialEq)]
pub struct CameBack {
    /// The parts that were new.
    pub parts: Vec<String>,
    /// When it was seen.
    pub at: Instant,
    /// By how much.
    pub by: Estimate<Vacuum>,
}

/// How far a pull fell since the first check of its stretch.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fell {
    /// By so much; what rose is below nothing.
    pub by: Estimate<Vacuum>,
    /// What the gauge, or both gauges together, may be wrong by.
    pub gauge_error: Vacuum,
    /// Whether the fall is more than that.
    pub beyond_error: bool,
    /// Since then.
    pub since: Instant,
}

/// When the lower limit would be reached if the course went on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Forecast {
    /// So many more checks are needed.
    Needs(Count),
    /// It does not fall.
    NotFalling,
    /// It stands at or below the limit now.
    Reached,
    /// Not within the ten years that are looked ahead.
    NotInSight,
    /// Between these; the later is open where the slowest course never does.
    Between(Instant, Option<Instant>),
}

/// How a pump wears on one side.
#[derive(Debug, Clone, PartialEq)]
pub struct Course {
    /// From this check on it is one course: the first, or the one at which it came back.
    pub from: Instant,
    /// Its checks.
    pub checks: Count,
    /// By the month, with the range that holds the truth nine times in ten.
    pub slope: Option<Estimate<Wear>>,
    /// The line's height at the present.
    pub now: Option<Vacuum>,
    /// How far it fell over the course.
    pub fell: Option<Fell>,
    /// The last time that it came back with a new part.
    pub came_back: Option<CameBack>,
    /// Parts that were new within the course without it coming back.
    pub new_without_effect: Vec<String>,
    /// When the lower limit would be reached.
    pub forecast: Forecast,
    line: Option<Line>,
}

impl Course {
    /// What the pump pulls at an instant by the line of its checks, with the range
    /// that holds the line nine times in ten.
    pub fn on(&self, at: Instant) -> Option<Estimate<Vacuum>> {
        self.line.as_ref()?.on(at)
    }
}

/// Checks from which a slope has a range.
const LEAST_CHECKS: usize = 3;
/// How often the range of a forecast is to hold the truth.
pub const FORECAST_CONFIDENCE: f64 = 0.8;
/// How far is looked ahead, and how finely.
const LOOKS_AHEAD: Span = Span::hours(87_660);
const STEP: Span = Span::hours(24);

/// The course of checks in order of time, with the parts that came into use and the
/// lower limit that is watched.
pub fn course(points: &[Point], parts: &[NewPart], limit: Option<Vacuum>, now: Instant) -> Option<Course> {
    let came_back = came_back(points, parts);
    let from = came_back.as_ref().map_or(points.first()?.at, |back| back.at);
    let stretch: Vec<&Point> = points.iter().filter(|point| point.at >= from).collect();
    let line = Line::through(&stretch);
    Some(Course {
        from,
        checks: Count::new(stretch.len() as u32),
        slope: line.as_ref().and_then(Line::slope),
        now: line.as_ref().map(|line| Vacuum::from_canonical(line.at(now))),
        fell: fell(&stretch),
        new_without_effect: parts
            .iter()
            .filter(|part| part.at > from && stretch.iter().any(|point| point.at >= part.at))
            .map(|part| part.part.clone())
            .collect(),
        came_back,
        forecast: match (&line, limit) {
            (Some(line), Some(limit)) => line.reaches(limit, now),
            _ => Forecast::Needs(Count::new(LEAST_CHECKS.saturating_sub(stretch.len()) as u32)),
        },
        line,
    })
}

/// How far a later pull lies below an earlier one. On one gauge its error is in both
/// and falls out; on two it counts twice.
fn difference(earlier: &Point, later: &Point) -> Option<Estimate<Vacuum>> {
    let same = earlier.gauge == later.gauge;
    let half = |error: GaugeError| match same {
        true => error.resolution.canonical() / 2.0,
        false => error.greatest.canonical(),
    };
    let variance = |pull: &Pull| pull.repeat.spread.canonical().powi(2) / f64::from(pull.readings.get());
    let law = Uncertain::new(
        earlier.pull.law.middle() - later.pull.law.middle(),
        [half(earlier.pull.error), half(later.pull.error)],
        (variance(&earlier.pull) + variance(&later.pull)).sqrt(),
        f64::from(earlier.pull.repeat.freedom.get().min(later.pull.repeat.freedom.get())),
    )?;
    let (low, high) = law.range(CONFIDENCE)?;
    let vacuum = Vacuum::from_canonical;
    Some(Estimate { value: vacuum(law.middle()), low: vacuum(low), high: vacuum(high) })
}

/// The last pair of neighbours between which a part came into use and the pull rose
/// by more than readings differ anyway.
fn came_back(points: &[Point], parts: &[NewPart]) -> Option<CameBack> {
    points.iter().zip(points.iter().skip(1)).rev().find_map(|(before, after)| {
        let new: Vec<String> =
            parts.iter().filter(|p| p.at > before.at && p.at <= after.at).map(|p| p.part.clone()).collect();
        let rose = difference(after, before)?;
        (!new.is_empty() && rose.low.canonical() > 0.0).then_some(CameBack { parts: new, at: after.at, by: rose })
    })
}

fn fell(stretch: &[&Point]) -> Option<Fell> {
    let [first, .., last] = stretch else { return None };
    let by = difference(first, last)?;
    let of = |point: &Point| point.pull.error.greatest.canonical();
    let gauge_error = if first.gauge == last.gauge { of(first).max(of(last)) } else { of(first) + of(last) };
    Some(Fell {
        by,
        gauge_error: Vacuum::from_canonical(gauge_error),
        beyond_error: by.value.canonical() > gauge_error,
        since: first.at,
    })
}

fn months(span: Span) -> f64 {
    span.in_milliseconds() as f64 / 3_600_000.0 / MONTH_HOURS
}

/// The straight line of least squares through the checks of a stretch.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Line {
    from: Instant,
    middle_at: f64,
    middle: f64,
    slope: f64,
    across: f64,
    count: f64,
    /// Variance of one check about the line, and its degrees of freedom.
    variance: f64,
    freedom: f64,
    /// Variance of the gauge's own error, which all checks share.
    shared: f64,
}

impl Line {
    fn through(stretch: &[&Point]) -> Option<Self> {
        let first = stretch.first()?;
        if stretch.len() < LEAST_CHECKS {
            return None;
        }
        let at: Vec<f64> = stretch.iter().map(|point| months(point.at.since(first.at))).collect();
        let heights: Vec<f64> = stretch.iter().map(|point| point.pull.law.middle()).collect();
        let (middle_at, middle) = (mean(&at)?, mean(&heights)?);
        let across: f64 = at.iter().map(|x| (x - middle_at).powi(2)).sum();
        if across <= 0.0 {
            return None;
        }
        let slope = at.iter().zip(&heights).map(|(x, y)| (x - middle_at) * (y - middle)).sum::<f64>() / across;
        let left_over: f64 = at.iter().zip(&heights).map(|(x, y)| (y - middle - slope * (x - middle_at)).powi(2)).sum();
        let count = stretch.len() as f64;
        let freedom = count - 2.0;
        // Checks cannot agree better than their readings repeat and are read.
        let one_gauge = stretch.iter().all(|point| point.gauge == first.gauge);
        let third_of_square = |half: f64| half * half / 3.0;
        let of_one = |point: &&Point| {
            let pull = &point.pull;
            let repeat = pull.repeat.spread.canonical().powi(2) / f64::from(pull.readings.get());
            let own = if one_gauge { 0.0 } else { third_of_square(pull.error.greatest.canonical()) };
            repeat + own + third_of_square(pull.error.resolution.canonical() / 2.0)
        };
        let least = stretch.iter().map(of_one).sum::<f64>() / count;
        let greatest = stretch.iter().map(|point| point.pull.error.greatest.canonical()).fold(0.0, f64::max);
        Some(Self {
            from: first.at,
            middle_at,
            middle,
            slope,
            across,
            count,
            variance: (left_over / freedom).max(least),
            freedom,
            shared: if one_gauge { third_of_square(greatest) } else { third_of_square(greatest) / count },
        })
    }

    fn at(&self, at: Instant) -> f64 {
        self.middle + self.slope * (months(at.since(self.from)) - self.middle_at)
    }

    fn on(&self, at: Instant) -> Option<Estimate<Vacuum>> {
        let x = months(at.since(self.from)) - self.middle_at;
        let spread = (self.variance * (1.0 / self.count + x * x / self.across)).sqrt();
        let (middle, reach) = (self.at(at), two_sided_t(CONFIDENCE, self.freedom)? * spread);
        let vacuum = |value: f64| Vacuum::from_canonical(value.max(0.0));
        Some(Estimate { value: vacuum(middle), low: vacuum(middle - reach), high: vacuum(middle + reach) })
    }

    fn slope(&self) -> Option<Estimate<Wear>> {
        let reach = two_sided_t(CONFIDENCE, self.freedom)? * (self.variance / self.across).sqrt();
        let wear = Wear::from_canonical;
        Some(Estimate { value: wear(self.slope), low: wear(self.slope - reach), high: wear(self.slope + reach) })
    }

    /// Whether the limit may be what the pump pulls at an instant: the line lies no
    /// further from it than its error allows (Fieller, JRSS B 1954;16:175-185, solved
    /// by looking; degrees of freedom after Welch and Satterthwaite, GUM G.4.1, since
    /// the gauge's own error is known and the scatter is estimated).
    fn may_stand_at(&self, limit: Vacuum, at: Instant) -> bool {
        let x = months(at.since(self.from)) - self.middle_at;
        let scatter = self.variance * (1.0 / self.count + x * x / self.across);
        let whole = scatter + self.shared;
        let freedom = whole * whole / (scatter * scatter / self.freedom).max(f64::MIN_POSITIVE);
        let apart = (self.at(at) - limit.canonical()).abs();
        two_sided_t(FORECAST_CONFIDENCE, freedom).is_some_and(|t| apart <= t * whole.sqrt())
    }

    fn reaches(&self, limit: Vacuum, now: Instant) -> Forecast {
        if self.at(now) <= limit.canonical() {
            return Forecast::Reached;
        }
        if self.slope >= 0.0 {
            return Forecast::NotFalling;
        }
        let horizon = now.plus(LOOKS_AHEAD);
        // The line itself may stand at the limit where it meets it; from there the
        // chance falls off to both sides.
        let hours = (limit.canonical() - self.at(now)) / self.slope * MONTH_HOURS;
        let meets = now.plus(Span::hours((hours.ceil() as i64).min(LOOKS_AHEAD.in_minutes() / 60)));
        if !self.may_stand_at(limit, meets) {
            return Forecast::NotInSight;
        }
        let soonest = match self.may_stand_at(limit, now) {
            true => now,
            false => self.turns(limit, now, meets),
        };
        let latest = (!self.may_stand_at(limit, horizon)).then(|| self.turns(limit, horizon, meets));
        Forecast::Between(soonest, latest)
    }
    /// The day at which it turns from one that cannot be to one that may.
    fn turns(&self, limit: Vacuum, mut cannot: Instant, mut may: Instant) -> Instant {
        while cannot.since(may).in_milliseconds().abs() > STEP.in_milliseconds() {
            let half = cannot.plus(Span::milliseconds(may.since(cannot).in_milliseconds() / 2));
            match self.may_stand_at(limit, half) {
                true => may = half,
                false => cannot = half,
            }
        }
        may
    }
}
