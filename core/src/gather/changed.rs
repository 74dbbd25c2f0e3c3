//! A change that was no trial, with what came before and after it, and what else changed then.

use super::concurrent::facts;
use super::days::days;
use super::Record;
use crate::answer::supply::concurrent::{compared, Fact, When};
use crate::answer::supply::Calendar;
use crate::answer::trial::{before_after, BeforeAfter, Outcome, Reached};
use crate::guidance::SupplyRules;
use crate::record::{text, Kind};
use crate::time::{Instant, LocalDay};
use crate::trouble::Trouble;

/// Within so many days it may have had a part in it.
const ABOUT: u32 = 7;
/// Changes that are told, the latest.
const MOST: usize = 3;

/// What a change is told by: as a trial would be, but for the time to most of the milk, which
/// nobody reads off without one.
pub(super) const MEASURES: [Outcome; 3] = [Outcome::Amount, Outcome::Pain, Outcome::Letdown];

/// What sessions reached by one of them, in order of time.
pub(super) type Measured = (Outcome, Vec<(Instant, Reached)>);

/// A change on a day.
#[derive(Debug, Clone, PartialEq)]
pub struct Changed {
    /// The day.
    pub on: LocalDay,
    /// What came into use that day, by kind and id.
    pub what: Vec<(Kind, String)>,
    /// What else changed within days of it.
    pub beside: Vec<Fact>,
    /// Each measure that can be told: after less before.
    pub measures: Vec<(Outcome, BeforeAfter)>,
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
pub(super) fn changes(
    record: &Record<'_>,
    changed: &[(LocalDay, Kind, String)],
    measured: &[Measured],
) -> Result<Vec<Changed>, Trouble> {
    let mut found = Vec::new();
    for same in changed.chunk_by(|a, b| a.0 == b.0).rev() {
        let Some((on, ..)) = same.first().filter(|_| found.len() < MOST) else { break };
        let begins = on.begins(record.zone, record.settings.day_start);
        let of = |some: &[(Instant, Reached)]| some.iter().map(|(_, reached)| *reached).collect::<Vec<_>>();
        let told = measured.iter().filter_map(|(outcome, reached)| {
            let (before, after) = reached.split_at(reached.partition_point(|(at, _)| *at < begins));
            Some((*outcome, before_after(&of(before), &of(after), *outcome)?))
        });
        let measures: Vec<(Outcome, BeforeAfter)> = told.collect();
        if measures.is_empty() {
            continue;
        }
        let what: Vec<(Kind, String)> = same.iter().map(|(_, kind, id)| (*kind, id.clone())).collect();
        let mut beside = beside(record, *on)?;
        beside.retain(|fact| !what.iter().any(|(_, id)| fact.record.as_ref() == Some(id)));
        found.push(Changed { on: *on, what, beside, measures });
    }
    Ok(found)
}

/// What else changed about a day, as beside a change in supply.
fn beside(record: &Record<'_>, on: LocalDay) -> Result<Vec<Fact>, Trouble> {
    let when = When::about(on, ABOUT);
    let calendar = Calendar { start: record.settings.day_start, zone: record.zone };
    let (from, to) = compared(&when);
    let made = days(record, from, to.min(record.today().earlier_by(1)), calendar)?;
    facts(record, &when, &made, SupplyRules::read(record.rules()?).fever)
}
