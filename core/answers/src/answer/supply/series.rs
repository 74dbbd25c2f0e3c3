//! Days that are complete enough, as a series with gaps.

use super::day::{DayProduction, PartOfDay};
use super::intervals::Side;
use crate::answer::RestsOn;
use crate::guidance::SupplyRules;
use crate::quantity::{Count, Production, Quantity, Share};
use crate::statistics::{autocorrelation, mean, Point};
use crate::time::LocalDay;

/// Of what a series is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Of {
    /// Both sides together.
    Both,
    /// One side.
    Side(Side),
    /// A part of the day, both sides, as if it were like that for 24 h.
    Part(PartOfDay),
}

/// Production by day, complete days only.
#[derive(Debug, Clone, PartialEq)]
pub struct Series {
    /// The days that count, in order.
    pub days: Vec<(LocalDay, Production)>,
    /// How much of each of these was observed.
    pub shares: Vec<Share>,
    /// What it rests on.
    pub rests_on: RestsOn,
    /// Days that stand for one point: 1, or 7 where weeks were made of them.
    pub days_a_point: u32,
}

/// A series has no more points than this: longer ones are read by weeks, or
/// by several weeks, as many as it takes. A year has its course in its weeks.
const MOST_POINTS: usize = 90;
/// Changes of level are looked for day by day in so many days.
const CHANGES_BY_DAY_UP_TO: usize = 400;
/// Below so many days each stands for itself.
const READ_BY_DAY_UP_TO: usize = 120;

impl Series {
    /// Takes the days that are complete enough by the rules.
    pub fn of(days: &[DayProduction], of: Of, rules: &SupplyRules) -> Self {
        Self::from_share(days, of, rules.complete_day)
    }

    /// Takes the days of which at least this share was observed.
    pub fn from_share(days: &[DayProduction], of: Of, least: Share) -> Self {
        let (mut counted, mut shares) = (Vec::new(), Vec::new());
        let (mut observed, mut doubtful, mut ended) = (0.0, 0, 0);
        for day in days {
            let (production, share) = match of {
                Of::Both => (day.production(), day.observed()),
                Of::Side(side) => day.of_side(side),
                Of::Part(part) => day.of_part(part),
            };
            observed += share.fraction();
            doubtful += day.sessions_missing.get() + day.unclear.get();
            ended += day.intervals.get();
            if let Some(production) = production.filter(|_| share >= least) {
                counted.push((day.day, production));
                shares.push(share);
            }
        }
        let all = days.len().max(1) as f64;
        let nowhere = LocalDay::from_number(1).unwrap_or(LocalDay::on(chrono::NaiveDate::MIN));
        Self {
            rests_on: RestsOn {
                from: days.first().map_or(nowhere, |d| d.day),
                to: days.last().map_or(nowhere, |d| d.day),
                days: Count::new(days.len() as u32),
                complete: Count::new(counted.len() as u32),
                observed: Share::of(observed / all),
                doubtful: Share::of(f64::from(doubtful) / f64::from(ended.max(1))),
            },
            days: counted,
            shares,
            days_a_point: 1,
        }
    }

    /// The same by weeks where it is long; as it is where not. A point needs
    /// half of its days.
    #[must_use]
    pub fn by_week_where_long(self) -> Self {
        self.by_week_above(READ_BY_DAY_UP_TO)
    }

    /// As [`Self::by_week_where_long`], but by day for as long as a change of
    /// level is worth a date.
    #[must_use]
    pub fn to_find_changes(self) -> Self {
        self.by_week_above(CHANGES_BY_DAY_UP_TO)
    }

    fn by_week_above(self, most: usize) -> Self {
        if self.days.len() <= most {
            return self;
        }
        let days = 7 * self.days.len().div_ceil(7 * MOST_POINTS) as i32;
        let of = |day: LocalDay| day.number().div_euclid(days);
        let mut points: Vec<(LocalDay, Production)> = Vec::new();
        for part in self.days.chunk_by(|a, b| of(a.0) == of(b.0)) {
            let values: Vec<f64> = part.iter().map(|(_, p)| p.canonical()).collect();
            let middle = part.first().and_then(|(d, _)| LocalDay::from_number(of(*d) * days + days / 2));
            if let (Some(day), Some(mean), true) = (middle, mean(&values), 2 * values.len() as i32 >= days) {
                points.push((day, Production::from_canonical(mean)));
            }
        }
        Self { shares: vec![Share::ALL; points.len()], days: points, days_a_point: days as u32, ..self }
    }

    /// The same up to a number of its days.
    #[must_use]
    pub fn up_to(&self, count: usize) -> Self {
        let mut so_far = self.clone();
        so_far.days.truncate(count);
        so_far.shares.truncate(count);
        so_far
    }

    /// As points: days since the first day looked at, mL a day.
    pub(super) fn points(&self) -> Vec<Point> {
        let at = |day: LocalDay| day.days_since(self.rests_on.from) as f64;
        self.days.iter().map(|(day, p)| Point { at: at(*day), value: p.canonical() }).collect()
    }

    /// The bare values.
    pub(super) fn values(&self) -> Vec<f64> {
        self.days.iter().map(|(_, p)| p.canonical()).collect()
    }

    /// How much wider a range is because a day is like the day before:
    /// (1 + r)/(1 − r) with the first autocorrelation r, its downward lean of
    /// (1 + 3r)/n put right (Kendall 1954, from memory), and never below 1.
    pub(super) fn inflation(&self) -> f64 {
        inflation_of(&self.points())
    }
}

/// As [`Series::inflation`], over any points.
pub(super) fn inflation_of(points: &[Point]) -> f64 {
    let n = points.len() as f64;
    let first = autocorrelation(points, 1).get(1).map_or(0.0, |lag| lag.value);
    let r = (first + (1.0 + 3.0 * first.max(0.0)) / n.max(1.0)).clamp(0.0, MOST_MEMORY);
    (1.0 + r) / (1.0 - r)
}

/// No day is held to be more like the day before than this.
const MOST_MEMORY: f64 = 0.7;
