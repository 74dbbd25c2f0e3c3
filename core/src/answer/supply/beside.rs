//! What else changed then: facts within the range of dates of a change. They
//! stand beside it; nothing here says that one made the other.

use super::day::DayProduction;
use super::since::Change;
use crate::quantity::Count;
use crate::statistics::median;
use crate::time::{LocalDay, Span};

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
/// Emptyings a day, or hours of the longest gap, that are worth a word.
const EMPTYINGS_APART: f64 = 1.0;
const GAP_APART_HOURS: f64 = 1.0;

/// The days in which facts stand beside a change: its range, and two days before.
pub fn window(change: &Change) -> (LocalDay, LocalDay) {
    (change.earliest.earlier_by(2), change.latest)
}

/// What the days themselves say: fewer sessions, a longer gap.
pub fn from_days(change: &Change, days: &[DayProduction]) -> Vec<Fact> {
    let near = |day: &&DayProduction, after: bool| {
        let apart = day.day.days_since(change.on);
        if after {
            (0..COMPARES).contains(&apart)
        } else {
            (-COMPARES..0).contains(&apart)
        }
    };
    let compare = |of: &dyn Fn(&DayProduction) -> Option<f64>| {
        let side = |after: bool| {
            let values: Vec<f64> = days.iter().filter(|d| near(d, after)).filter_map(of).collect();
            median(&values).filter(|_| values.len() >= 3)
        };
        side(false).zip(side(true))
    };
    let mut facts = Vec::new();
    let mut tell = |what: What| facts.push(Fact { day: change.on, what, record: None });
    let emptyings = |d: &DayProduction| (d.emptyings.get() > 0).then(|| f64::from(d.emptyings.get()));
    if let Some((before, after)) = compare(&emptyings).filter(|(b, a)| (b - a).abs() >= EMPTYINGS_APART) {
        tell(What::Emptyings(Count::new(before.round() as u32), Count::new(after.round() as u32)));
    }
    let gap = |d: &DayProduction| d.longest_gap.map(|g| g.in_minutes() as f64 / 60.0);
    if let Some((before, after)) = compare(&gap).filter(|(b, a)| (b - a).abs() >= GAP_APART_HOURS) {
        let span = |hours: f64| Span::minutes((hours * 60.0).round() as i64);
        tell(What::LongestGap(span(before), span(after)));
    }
    facts
}
