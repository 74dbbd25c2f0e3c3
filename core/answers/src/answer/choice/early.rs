//! Until when letdown comes easiest, so that a weaker pump may do.

use chrono::{NaiveDate, TimeDelta};

use crate::guidance::KitRules;

/// The early weeks of a child.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Early {
    /// The last day of them.
    pub until: NaiveDate,
    /// Whether that day has passed.
    pub over: bool,
}

/// The early weeks of a child born on a day, as they stand today: letdown comes easiest in them
/// (common practice, no source).
pub fn early(birth: NaiveDate, today: NaiveDate, rules: &KitRules) -> Option<Early> {
    let days = rules.early_weeks.in_minutes() / (24 * 60);
    let until = birth.checked_add_signed(TimeDelta::try_days(days)?)?;
    Some(Early { until, over: today > until })
}
