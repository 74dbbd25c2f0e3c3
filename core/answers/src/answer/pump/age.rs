//! A pump's years against what motors usually last.

use chrono::NaiveDate;

use super::Grade;
use crate::guidance::KitRules;
use crate::time::Span;

/// How old a pump is, as far as it was written down.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Age {
    /// Since it came into use.
    pub span: Span,
    /// Where that stands against what a personal grade motor usually lasts (common
    /// practice, no source); none for other grades.
    pub against_life: Option<AgainstLife>,
}

/// Where an age stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum AgainstLife {
    /// Before it.
    Before,
    /// Within it.
    Within,
    /// Beyond it.
    Beyond,
}

/// How old a pump is today.
pub fn age(in_use_since: NaiveDate, today: NaiveDate, grade: Option<Grade>, rules: &KitRules) -> Age {
    let span = Span::hours((today - in_use_since).num_days() * 24);
    let (from, to) = rules.motor_life;
    let against = match span {
        span if span < from => AgainstLife::Before,
        span if span <= to => AgainstLife::Within,
        _ => AgainstLife::Beyond,
    };
    Age { span, against_life: (grade == Some(Grade::Personal)).then_some(against) }
}
