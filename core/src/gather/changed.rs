//! A change that was no trial, with what came before and after it, and what else changed then.

use super::Record;
use crate::answer::trial::{before_after, BeforeAfter, Outcome, Reached};
use crate::record::{text, Kind};
use crate::time::{Instant, LocalDay, Span};
use crate::trouble::Trouble;

/// Within so many days it may have had a part in it.
const BESIDE: i64 = 7;

/// A change on a day.
#[derive(Debug, Clone, PartialEq)]
pub struct Changed {
    /// The day.
    pub on: LocalDay,
    /// What came into use that day, by kind and id.
    pub what: Vec<(Kind, String)>,
    /// What else changed within days of it.
    pub beside: Vec<(Kind, String)>,
    /// The milk of a session, after less before.
    pub milk: BeforeAfter,
}

/// The days since an instant on which a pump, a flange or a part came into use.
///
/// # Errors
/// Where the store can't be read.
pub fn days_of_change(record: &Record<'_>, since: Instant) -> Result<Vec<(LocalDay, Kind, String)>, Trouble> {
    let mut days = Vec::new();
    for kind in [Kind::Pump, Kind::Flange, Kind::Part] {
        for (id, fields) in record.journal.fields_of_kind(kind)? {
            let on =
                text(&fields, "in_use_since").and_then(|on| chrono::NaiveDate::parse_from_str(on, "%Y-%m-%d").ok());
            let Some(on) = on.map(LocalDay::on) else { continue };
            let begins = on.begins(record.zone, record.settings.day_start);
            if begins > since && begins < record.now {
                days.push((on, kind, id));
            }
        }
    }
    days.sort_by_key(|(on, ..)| *on);
    Ok(days)
}

/// Each of those days with its before and after, the latest first; those alone with enough sessions
/// on both sides.
///
/// # Errors
/// Where the store can't be read.
pub fn changes(
    record: &Record<'_>,
    days: &[(LocalDay, Kind, String)],
    reached: &[(Instant, Reached)],
) -> Result<Vec<Changed>, Trouble> {
    let mut found = Vec::new();
    for same in days.chunk_by(|a, b| a.0 == b.0).rev() {
        let Some((on, ..)) = same.first() else { continue };
        let begins = on.begins(record.zone, record.settings.day_start);
        let split = reached.partition_point(|(at, _)| *at < begins);
        let (before, after) = reached.split_at(split);
        let of = |some: &[(Instant, Reached)]| some.iter().map(|(_, reached)| *reached).collect::<Vec<_>>();
        let Some(milk) = before_after(&of(before), &of(after), Outcome::Amount) else { continue };
        let near = |day: LocalDay| day != *on && day.days_since(*on).abs() <= BESIDE;
        let kit = days.iter().filter(|(day, ..)| near(*day)).map(|(_, kind, id)| (*kind, id.clone()));
        let mut beside: Vec<(Kind, String)> = kit.collect();
        for row in record.journal.of_kind_since(Kind::LifeEvent, begins.minus(Span::hours(24 * BESIDE)))? {
            let until = begins.plus(Span::hours(24 * (BESIDE + 1)));
            if row.at.is_some_and(|at| at < until) {
                beside.push((Kind::LifeEvent, row.subject));
            }
        }
        let what = same.iter().map(|(_, kind, id)| (*kind, id.clone())).collect();
        found.push(Changed { on: *on, what, beside, milk });
    }
    Ok(found)
}
