//! What else changed then: facts within the range of dates of a change. They
//! stand beside it; nothing here says that one made the other.

use super::day::DayProduction;
use super::since::Change;
use crate::quantity::Count;
use crate::statistics::{median, shift};
use crate::time::{LocalDay, Span};

/// When something changed: the day, and the range of days it may have been.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct When {
    /// The first day of the new.
    pub on: LocalDay,
    /// The earliest day it may have been.
    pub earliest: LocalDay,
    /// The latest.
    pub latest: LocalDay,
}

impl When {
    /// A day that is known, with those about it in which something may have had a part in it.
    pub fn about(on: LocalDay, days: u32) -> Self {
        let latest = LocalDay::from_number(on.number().saturating_add_unsigned(days)).unwrap_or(on);
        Self { on, earliest: on.earlier_by(days), latest }
    }
}

impl From<&Change> for When {
    fn from(change: &Change) -> Self {
        Self { on: change.on, earliest: change.earliest, latest: change.latest }
    }
}

/// Something that happened on a day.
#[derive(Debug, Clone, PartialEq)]
pub struct Fact {
    /// The day.
    pub day: LocalDay,
    /// What.
    pub what: What,
    /// The record it stands in, if it is one.
    pub record: Option<String>,
}

/// What can stand beside a change.
#[derive(Debug, Clone, PartialEq)]
pub enum What {
    /// A pump, part or flange came into use: its kind.
    NewKit(crate::record::Kind),
    /// Something that was noted of life: fever, a medicine, work.
    Noted(String),
    /// A temperature at or above the rule.
    Fever,
    /// Fewer or more emptyings a day: before and after.
    Emptyings(Count, Count),
    /// A longer or shorter longest gap: before and after.
    LongestGap(Span, Span),
    /// Another usual setting: before and after, as a level on the dial.
    Setting(Count, Count),
}

/// Days before and after that are compared.
const COMPARES: i64 = 10;
/// Fewer days than this to a side say nothing.
const LEAST_DAYS: usize = 5;
/// How sure each of the three comparisons is to be (emptyings, gap, setting), so that one in
/// twenty changes has false company at most (Bonferroni).
const SURE: f64 = 1.0 - 0.05 / 3.0;
/// Emptyings a day, or hours of the longest gap, that are worth a word.
const EMPTYINGS_APART: f64 = 0.5;
const GAP_APART_HOURS: f64 = 1.0;

/// The days in which facts stand beside a change: its range, and two days before.
pub fn window(change: &When) -> (LocalDay, LocalDay) {
    (change.earliest.earlier_by(2), change.latest)
}

/// What is before and after: one value for each day near a change, in order.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct TwoSides {
    before: Vec<f64>,
    after: Vec<f64>,
}

impl TwoSides {
    /// Takes what a day says, where it is near enough to a change.
    pub fn take(&mut self, change: &When, day: LocalDay, value: f64) {
        let apart = day.days_since(change.on);
        if (0..COMPARES).contains(&apart) {
            self.after.push(value);
        } else if (-COMPARES..0).contains(&apart) {
            self.before.push(value);
        }
    }

    /// The middle before and after, where the two differ by more than chance makes them
    /// (the shift of Hodges and Lehmann 1963, whose range leaves out nothing), and by so much.
    pub fn differ_by(&self, least: f64) -> Option<(f64, f64)> {
        if self.before.len() < LEAST_DAYS || self.after.len() < LEAST_DAYS {
            return None;
        }
        let found = shift(&self.before, &self.after, SURE, 1.0)?;
        let (before, after) = median(&self.before).zip(median(&self.after))?;
        let is_apart = found.low > 0.0 || found.high < 0.0;
        (is_apart && found.shift.abs() >= least).then_some((before, after))
    }
}

/// The days around a change that are compared.
pub fn compared(change: &When) -> (LocalDay, LocalDay) {
    let last = LocalDay::from_number(change.on.number() + COMPARES as i32 - 1).unwrap_or(change.on);
    (change.on.earlier_by(COMPARES as u32), last)
}

/// What the days themselves say: fewer sessions, a longer gap.
pub fn from_days(change: &When, days: &[DayProduction]) -> Vec<Fact> {
    let (mut emptyings, mut gaps) = (TwoSides::default(), TwoSides::default());
    for day in days {
        if day.emptyings.get() > 0 {
            // What was likely not written down was done all the same.
            let sides = day.sides.iter().filter(|side| side.takes_part).count().max(1) as f64;
            let likely = f64::from(day.sessions_missing.get()) + f64::from(day.unclear.get()) / 2.0;
            emptyings.take(change, day.day, f64::from(day.emptyings.get()) + likely / sides);
        }
        if let Some(gap) = day.longest_gap {
            gaps.take(change, day.day, gap.in_minutes() as f64 / 60.0);
        }
    }
    let mut facts = Vec::new();
    let mut tell = |what: What| facts.push(Fact { day: change.on, what, record: None });
    let count = |emptyings: f64| Count::new(emptyings.round() as u32);
    let span = |hours: f64| Span::minutes((hours * 60.0).round() as i64);
    if let Some((before, after)) = emptyings.differ_by(EMPTYINGS_APART).map(|(b, a)| (count(b), count(a))) {
        if before != after {
            tell(What::Emptyings(before, after));
        }
    }
    if let Some((before, after)) = gaps.differ_by(GAP_APART_HOURS) {
        tell(What::LongestGap(span(before), span(after)));
    }
    facts
}
