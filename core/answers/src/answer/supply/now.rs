//! How much a day now: the level since it last changed, however lately that was.
//!
//! All that may be is weighed ([`last_level`]): that nothing changed, that the level changed
//! on any of the last weeks' days, that it goes straight up or down. So the figure follows a
//! change while that is still uncertain, and its range is the wider for it.

use super::course::Heading;
use super::series::Series;
use super::{DayProduction, Of};
use crate::answer::Estimate;
use crate::guidance::SupplyRules;
use crate::quantity::{Production, Quantity, Share};
use crate::statistics::{last_level, mean, median, Beforehand, LastLevel, Value};
use crate::time::LocalDay;

/// A change of level.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Turn {
    /// The first day of the level, as far as can be told.
    pub since: LocalDay,
    /// The earliest it may have been.
    pub earliest: LocalDay,
    /// The latest.
    pub latest: LocalDay,
    /// The level before.
    pub before: Production,
    /// The level since.
    pub now: Production,
    /// How much more, as a share of the level before; below nothing it is less.
    pub share: Share,
    /// How much likelier it is than that nothing changed.
    pub odds: f64,
    /// The same where a straight course counts for more.
    certain: f64,
}

impl Turn {
    /// Whether it is as good as certain: then the level since is what is said.
    pub fn is_certain(&self) -> bool {
        self.certain >= CERTAIN
    }
}

/// How it stands now.
#[derive(Debug, Clone, PartialEq)]
pub struct Stands {
    /// How much a day.
    pub level: Estimate<Production>,
    /// The change before it, where there may well be one.
    pub turn: Option<Turn>,
    /// The same, were it to go straight up or down.
    pub straight: Estimate<Production>,
    /// How much likelier a change is than none.
    pub odds: f64,
}

impl Stands {
    /// How much a day beside what its course is called: one that goes up or down says where it
    /// has come to.
    pub fn for_heading(&self, heading: Option<Heading>) -> Estimate<Production> {
        match heading {
            Some(Heading::Rising | Heading::Falling) if !self.turn.is_some_and(|turn| turn.is_certain()) => {
                self.straight
            }
            _ => self.level,
        }
    }
}

/// Days that are looked at for what was before.
pub const LOOKS_BACK: i64 = 42;
/// Days that the level is told from at most, where nothing changed in them.
pub const TOLD_FROM: i64 = 28;
/// Complete days that it takes to tell a change from what was before.
const LEAST: usize = 10;
/// Variance of ln of a day's production that an hour not seen adds, for each hour seen.
const UNSEEN: f64 = 0.02;
/// Less than this part of the middle of all days is taken as that: nothing has no logarithm.
const LEAST_PART: f64 = 0.05;
/// A day begins a new level once in so many, levels lie so far apart on the log scale, and
/// one family in so many goes straight, so steeply a day.
const BEFOREHAND: Beforehand = Beforehand { change: 0.03, levels: 0.3, line: 0.25, slopes: 0.015 };
/// A change is told with its date where it is so much likelier than none.
const CERTAIN: f64 = 5.0;
/// And where it was found in the past by another method, so much likelier.
const CONFIRMS: f64 = 6.0;
/// A straight course counts so many times, since steps follow one well.
const STRAIGHT: f64 = 2.0;
/// Dates of one step are those whose step is at least this part of the likeliest one's.
const SAME_STEP: f64 = 0.6;
/// The range of dates holds the day so often; of levels each end so often not.
const DATES_HOLD: f64 = 0.93;
const BEYOND: f64 = 0.05;
/// As many spreads to either side.
const REACH: f64 = 1.7;

/// How it stands after the last of some days, told from no more than `told_from` of them.
pub fn stands(days: &[DayProduction], told_from: i64, rules: &SupplyRules) -> Option<Stands> {
    after(&Series::from_share(days, Of::Both, rules.watched_day), told_from, rules)
}

/// The same of a series that holds days seen in part too.
pub(super) fn after(series: &Series, told_from: i64, rules: &SupplyRules) -> Option<Stands> {
    let last = series.days.last()?.0;
    let from = series.days.partition_point(|(day, _)| last.days_since(*day) >= LOOKS_BACK);
    let days = series.days.get(from..)?;
    let shares = series.shares.get(from..)?;
    let recent = days.partition_point(|(day, _)| last.days_since(*day) >= told_from);
    let values = values(days, shares, last)?;
    let thought = last_level(&values, recent, &BEFOREHAND)?;
    let turn = if days.len() >= LEAST { turn(&thought, days, rules) } else { None };
    let odds = turn.map_or(0.0, |turn| turn.odds);
    let smeared = smeared(&thought, days, recent);
    let told = |log: f64| Production::from_canonical(log.exp() * smeared);
    let (straight, apart) = (thought.line_ends.middle, REACH * thought.line_ends.variance.sqrt());
    Some(Stands {
        level: Estimate {
            value: told(thought.now()),
            low: told(thought.quantile(BEYOND)?),
            high: told(thought.quantile(1.0 - BEYOND)?),
        },
        turn: turn.filter(|turn| turn.odds >= rules.watch_decision),
        odds,
        straight: Estimate { value: told(straight), low: told(straight - apart), high: told(straight + apart) },
    })
}

/// What is thought of a change among some days of a series, the last of which still has the
/// level that it began.
pub(super) fn confirmed(series: &Series, from: usize, to: usize, rules: &SupplyRules) -> Option<Turn> {
    let (days, shares) = (series.days.get(from..to)?, series.shares.get(from..to)?);
    let values = values(days, shares, days.last()?.0)?;
    turn(&last_level(&values, 0, &BEFOREHAND)?, days, rules).filter(|turn| turn.certain >= CONFIRMS)
}

fn values(days: &[(LocalDay, Production)], shares: &[Share], last: LocalDay) -> Option<Vec<Value>> {
    let all: Vec<f64> = days.iter().map(|(_, p)| p.canonical()).collect();
    let least = LEAST_PART * median(&all).filter(|middle| *middle > 0.0)?;
    let of = |((day, made), share): (&(LocalDay, Production), &Share)| {
        let seen = share.fraction().max(0.05);
        Value {
            at: day.days_since(last) as f64,
            value: made.canonical().max(least).ln(),
            doubt: UNSEEN * (1.0 - seen) / seen,
        }
    };
    Some(days.iter().zip(shares).map(of).collect())
}

/// What a mean is above the middle of logarithms (Duan, JASA 1983).
fn smeared(thought: &LastLevel, days: &[(LocalDay, Production)], recent: usize) -> f64 {
    let likeliest = thought.began.iter().enumerate().max_by(|a, b| a.1.total_cmp(b.1)).map_or(0, |(at, _)| at);
    let by_spread = (thought.spread.powi(2) / 2.0).exp();
    let of_level = days.get(likeliest.max(recent)..).unwrap_or_default();
    let made: Vec<f64> = of_level.iter().map(|(_, p)| p.canonical()).filter(|made| *made > 0.0).collect();
    let logs: Vec<f64> = made.iter().map(|made| made.ln()).collect();
    match mean(&made).zip(mean(&logs)) {
        Some((made, log)) if logs.len() >= LEAST => (made / log.exp()).clamp(1.0, 1.15),
        _ => by_spread,
    }
}

/// The change before the level that stands, where one is as good as certain.
fn turn(thought: &LastLevel, days: &[(LocalDay, Production)], rules: &SupplyRules) -> Option<Turn> {
    let least = rules.watch_reference * thought.spread;
    let sides = [-1.0, 1.0].map(|sign| {
        let is_one = |(i, _): &(usize, &f64)| {
            let (level, before) = (thought.levels.get(*i), thought.before.get(*i));
            *i > 0 && level.zip(before).is_some_and(|(l, b)| sign * (l.middle - b) >= least)
        };
        let those: Vec<(usize, f64)> =
            thought.began.iter().enumerate().filter(is_one).map(|(i, chance)| (i, *chance)).collect();
        (those.iter().map(|(_, chance)| chance).sum::<f64>(), those)
    });
    let (chance, those) = sides.into_iter().max_by(|a, b| a.0.total_cmp(&b.0))?;
    // Against that nothing changed; a small step more within a level speaks for neither.
    let against = |straight: f64| Some(chance / (thought.began.first()? + straight * thought.line).max(1e-12));
    let (odds, certain) = (against(1.0)?, against(STRAIGHT)?);
    // A small step more within the new level is no other date of this one.
    let size = |i: usize| {
        let (level, before) = (thought.levels.get(i), thought.before.get(i));
        level.zip(before).map_or(0.0, |(level, before)| (level.middle - before).abs())
    };
    let likeliest = those.iter().max_by(|a, b| a.1.total_cmp(&b.1))?.0;
    let those: Vec<(usize, f64)> = those.into_iter().filter(|(i, _)| size(*i) >= SAME_STEP * size(likeliest)).collect();
    let chance: f64 = those.iter().map(|(_, own)| own).sum();
    let at = |share: f64| {
        let mut sum = 0.0;
        those.iter().find(|(_, own)| {
            sum += own;
            sum >= share * chance
        })
    };
    let outside = (1.0 - DATES_HOLD) / 2.0;
    let index = at(0.5)?.0;
    let day = |index: usize| days.get(index).map(|(day, _)| *day);
    // It began after the last day of the level before that was seen.
    let earliest = day(at(outside)?.0.checked_sub(1)?).and_then(|day| LocalDay::from_number(day.number() + 1));
    let weighed = |of: &dyn Fn(usize) -> f64| those.iter().map(|(i, own)| own * of(*i)).sum::<f64>() / chance;
    let level = weighed(&|i| thought.levels.get(i).map_or(0.0, |l| l.middle));
    let before = weighed(&|i| thought.before.get(i).copied().unwrap_or(0.0));
    let told = |log: f64| Production::from_canonical(log.exp() * (thought.spread.powi(2) / 2.0).exp());
    Some(Turn {
        since: day(index)?,
        earliest: earliest?,
        latest: day(at(1.0 - outside)?.0)?,
        before: told(before),
        now: told(level),
        share: Share::of((level - before).exp() - 1.0),
        odds,
        certain,
    })
}
