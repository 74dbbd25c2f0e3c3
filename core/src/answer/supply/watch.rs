//! The running watch: speaks up when a lasting drop is real.
//!
//! A one-sided cumulative sum (Page 1954) of each complete day against the
//! parent's own level of the weeks before. Its settings come from simulation,
//! not from theory: the table stands in DEVELOPERS.md and is made by a command.

use super::series::inflation_of;
use super::{DayProduction, Of, Series};
use crate::guidance::SupplyRules;
use crate::quantity::{Production, Quantity, Share};
use crate::statistics::{median, robust_spread, Cusum, Point};
use crate::time::LocalDay;

/// A drop that the watch holds to be real.
#[derive(Debug, Clone, PartialEq)]
pub struct Drop {
    /// The first day below, as far as can be told.
    pub since: LocalDay,
    /// The day on which the watch spoke up.
    pub noticed: LocalDay,
    /// The level before.
    pub before: Production,
    /// The level since.
    pub now: Production,
    /// How much less, as a share of the level before.
    pub share: Share,
}

/// Complete days that an own level is made of at most and at least.
const BASE_MOST: usize = 28;
const BASE_LEAST: usize = 10;
/// The latest complete days are left out of the own level.
const LEAVES_OUT: usize = 5;
/// The spread of days is held to be at least this share of the level.
const LEAST_SPREAD: f64 = 0.06;

/// How much a day of which less was observed is less of a witness.
const UNOBSERVED_WIDENS: f64 = 0.6;

/// What the watch says after each complete day of a series. `at` each index:
/// whether it holds a drop to be real then.
pub fn watched(series: &Series, rules: &SupplyRules) -> Vec<Option<Drop>> {
    let points = series.points();
    let Some(mut sum) = Cusum::lower(rules.watch_reference, rules.watch_decision) else { return Vec::new() };
    let mut said = Vec::with_capacity(points.len());
    let mut own: Option<(f64, f64)> = None;
    let mut began = 0;
    let mut noticed: Option<usize> = None;
    for (i, point) in points.iter().enumerate() {
        // While a drop gathers, the level before it stays the measure.
        if sum.sum() <= 0.0 {
            own = own_level(&points, i).or(own);
            began = i;
            noticed = None;
        }
        let Some((level, spread)) = own else {
            said.push(None);
            continue;
        };
        let observed = series.shares.get(i).map_or(1.0, |s| s.fraction());
        let spread = spread * (1.0 + UNOBSERVED_WIDENS * (1.0 - observed)).sqrt();
        if sum.step(Some((point.value - level) / spread)) {
            noticed = noticed.or(Some(i));
        }
        said.push(noticed.filter(|_| sum.signals()).and_then(|noticed| drop_of(series, began, i, noticed, level)));
        // A level that has become the usual one is measured anew.
        if i >= began + BASE_MOST {
            sum.reset();
        }
    }
    said
}

/// The days that the watch looks at: it makes do with less of a day than a
/// course, and weighs it by what was observed.
pub fn series(days: &[DayProduction], rules: &SupplyRules) -> Series {
    Series::from_share(days, Of::Both, rules.watched_day)
}

/// What the watch says now.
pub fn now(days: &[DayProduction], rules: &SupplyRules) -> Option<Drop> {
    watched(&series(days, rules), rules).pop().flatten()
}

fn own_level(points: &[Point], i: usize) -> Option<(f64, f64)> {
    let upto = i.saturating_sub(LEAVES_OUT);
    let base = points.get(upto.saturating_sub(BASE_MOST)..upto)?;
    if base.len() < BASE_LEAST {
        return None;
    }
    let values: Vec<f64> = base.iter().map(|p| p.value).collect();
    let level = median(&values).filter(|l| *l > 0.0)?;
    let spread = robust_spread(&values)?.max(LEAST_SPREAD * level);
    Some((level, spread * inflation_of(base).sqrt()))
}

fn drop_of(series: &Series, began: usize, i: usize, noticed: usize, level: f64) -> Option<Drop> {
    let since: Vec<f64> = series.days.get(began..=i)?.iter().map(|(_, p)| p.canonical()).collect();
    let now = median(&since)?;
    Some(Drop {
        since: series.days.get(began)?.0,
        noticed: series.days.get(noticed)?.0,
        before: Production::from_canonical(level),
        now: Production::from_canonical(now),
        share: Share::of(1.0 - now / level),
    })
}
