//! How soon letdowns come.

use std::collections::BTreeMap;

use chrono::Timelike;

use super::heard::Heard;
use crate::answer::estimate::{Estimate, CONFIDENCE};
use crate::quantity::{Count, Level, Quantity};
use crate::statistics::{median, median_range, shift};
use crate::time::{Instant, Span};

/// A time to the first letdown.
#[derive(Debug, Clone, PartialEq)]
pub struct Timing {
    /// The median, with its range where there are enough: six.
    pub median: Span,
    /// Its range.
    pub range: Option<(Span, Span)>,
    /// Sessions it rests on.
    pub sessions: Count,
}

/// What sessions are told apart by.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub enum Group {
    /// The level when it came.
    Level(Level),
    /// Cycles per minute, to the nearest five.
    Speed(u32),
    /// The vacuum, to the nearest twenty mmHg.
    Vacuum(u32),
    /// Where it took place.
    Place(String),
    /// A quarter of the day: from this hour.
    FromHour(u32),
}

/// Whether it comes later than it used to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Later {
    /// Later by so much.
    Later(Estimate<Span>),
    /// Sooner by so much, as a positive length.
    Sooner(Estimate<Span>),
    /// No sign of either.
    NoSign(Estimate<Span>),
    /// Too few sessions with one marked, then or now.
    CannotTellYet,
}

/// Letdowns.
#[derive(Debug, Clone, PartialEq)]
pub struct Letdowns {
    /// Time to the first.
    pub first: Option<Timing>,
    /// How many in a session, the median, of those that say.
    pub number: Option<(Count, Count)>,
    /// Time to the first by what sessions are told apart by, where a group has three.
    pub by: Vec<(Group, Timing)>,
    /// Against what it was before the last four weeks.
    pub later: Later,
    /// Sessions with one marked.
    pub marked: Count,
    /// Sessions without: nobody marked one, which is not none.
    pub not_marked: Count,
}

/// How far back it is looked for what is now, and as far again for what was before.
const NOW: Span = Span::hours(28 * 24);
const BEFORE: Span = Span::hours(56 * 24);
/// Sessions of a group until it is told.
const LEAST: usize = 3;
/// Sessions, then and now, until they are compared.
const LEAST_COMPARED: usize = 8;
const SECOND: f64 = 1000.0;

/// Letdowns of sessions in order of time, up to now. None where there are no sessions.
pub fn letdowns(heard: &[Heard], now: Instant) -> Option<Letdowns> {
    let age = |h: &Heard| now.since(h.at.instant());
    let within = |h: &&Heard| age(h) >= Span::milliseconds(0) && age(h) <= NOW;
    let recent: Vec<&Heard> = heard.iter().filter(within).collect();
    if recent.is_empty() {
        return None;
    }
    let marked: Vec<&&Heard> = recent.iter().filter(|h| h.first.is_some()).collect();
    let numbers: Vec<f64> = recent.iter().filter_map(|h| h.number).map(|number| f64::from(number.get())).collect();
    let of = |some: &[&Heard]| timing(&seconds(some.iter().copied()));
    let mut groups: BTreeMap<Group, Vec<&Heard>> = BTreeMap::new();
    for one in &recent {
        for group in groups_of(one) {
            groups.entry(group).or_default().push(one);
        }
    }
    let told = groups.into_iter().filter_map(|(group, some)| Some((group, of(&some)?)));
    let before: Vec<&Heard> = heard.iter().filter(|h| age(h) > NOW && age(h) <= BEFORE).collect();
    Some(Letdowns {
        first: of(&recent),
        number: median(&numbers).map(|middle| (Count::new(middle.round() as u32), Count::new(numbers.len() as u32))),
        by: told.filter(|(_, timing)| timing.sessions.get() as usize >= LEAST).collect(),
        later: later(&seconds(before.into_iter()), &seconds(recent.iter().copied())),
        marked: Count::new(marked.len() as u32),
        not_marked: Count::new((recent.len() - marked.len()) as u32),
    })
}

fn groups_of(heard: &Heard) -> Vec<Group> {
    let nearest = |value: f64, step: f64| ((value / step).round() * step) as u32;
    let how = &heard.how;
    let mut groups: Vec<Group> = Vec::new();
    groups.extend(how.level.map(Group::Level));
    groups.extend(how.speed.map(|speed| Group::Speed(nearest(speed.canonical(), 5.0))));
    groups.extend(how.vacuum.map(|vacuum| Group::Vacuum(nearest(vacuum.canonical(), 20.0))));
    groups.extend(how.place.clone().map(Group::Place));
    groups.push(Group::FromHour(heard.at.on_the_wall().hour() / 6 * 6));
    groups
}

fn seconds<'h>(heard: impl Iterator<Item = &'h Heard>) -> Vec<f64> {
    heard.filter_map(|h| h.first).map(|first| first.in_milliseconds() as f64 / SECOND).collect()
}

fn span(seconds: f64) -> Span {
    Span::milliseconds((seconds * SECOND).round() as i64)
}

fn timing(seconds: &[f64]) -> Option<Timing> {
    let range = median_range(seconds, CONFIDENCE).map(|range| (span(range.low), span(range.high)));
    Some(Timing { median: span(median(seconds)?), range, sessions: Count::new(seconds.len() as u32) })
}

fn later(before: &[f64], now: &[f64]) -> Later {
    if before.len() < LEAST_COMPARED || now.len() < LEAST_COMPARED {
        return Later::CannotTellYet;
    }
    let Some(found) = shift(before, now, CONFIDENCE, 1.0) else { return Later::CannotTellYet };
    let estimate = |value: f64, low: f64, high: f64| Estimate { value: span(value), low: span(low), high: span(high) };
    if found.low > 0.0 {
        Later::Later(estimate(found.shift, found.low, found.high))
    } else if found.high < 0.0 {
        Later::Sooner(estimate(-found.shift, -found.high, -found.low))
    } else {
        Later::NoSign(estimate(found.shift, found.low, found.high))
    }
}
