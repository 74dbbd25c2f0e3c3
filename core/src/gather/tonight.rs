//! Plan and wells, gathered once.

use super::refill::curves;
use super::{night, supply, Record};
use crate::answer::night::{reminders, Gathered, Plan, Reminder};
use crate::answer::refill::Refill;
use crate::answer::supply::Calendar;
use crate::guidance::Rules;
use crate::record::Kind;
use crate::time::{Instant, LocalDay};
use crate::trouble::Trouble;

/// What Tonight looks at.
pub(crate) struct TonightInputs {
    pub(crate) gathered: Gathered,
    pub(crate) refill: Refill,
    /// The day of a drop since which it is told.
    pub(crate) refill_since: Option<LocalDay>,
    pub(crate) plan: Option<Plan>,
    pub(crate) rules: Rules,
    /// A child whose birth date is not known, by its record.
    pub(crate) child: Option<String>,
}

impl TonightInputs {
    pub(crate) fn read(record: &Record<'_>) -> Result<Self, Trouble> {
        let gathered = night::gathered(record)?;
        let calendar = Calendar { start: record.settings.day_start, zone: record.zone };
        let whole = curves(record, calendar, None)?;
        // Since a drop milk comes back as it does now, as soon as there is enough to tell that by.
        let dropped = supply::drop(record)?.map(|drop| drop.since);
        let since = dropped.map(|since| since.begins(record.zone, record.settings.day_start));
        let lately = since.map(|since| curves(record, calendar, Some(since))).transpose()?;
        let lately = lately.filter(|lately| lately.wells.len() == whole.wells.len());
        let refill_since = dropped.filter(|_| lately.is_some());
        let refill = lately.unwrap_or(whole);
        let plan = gathered.plan(&|from, until| refill.lost(from, until, gathered.zone));
        let rules = record.rules()?.clone();
        let children = record.journal.fields_of_kind(Kind::Child)?;
        let child = children.into_iter().find(|(_, fields)| !fields.contains_key("birth")).map(|(id, _)| id);
        Ok(Self { gathered, refill, refill_since, plan, rules, child })
    }

    /// The reminders that are to come.
    pub(crate) fn reminders(&self) -> Vec<Reminder> {
        match (&self.plan, self.gathered.running) {
            (Some(plan), None) => {
                reminders(plan, &self.gathered.frame, &self.gathered.rhythm, &self.gathered.changes, self.gathered.now)
            }
            _ => Vec::new(),
        }
    }

    /// Emptyings from the last that was to the end of the plan, as intervals.
    pub(crate) fn intervals(&self, until: Instant) -> Vec<(Instant, Instant)> {
        let Some(plan) = &self.plan else { return Vec::new() };
        let last = self.gathered.emptyings.iter().map(|e| e.at).filter(|at| *at <= self.gathered.now).max();
        let mut from = match last {
            Some(last) => last,
            None => return Vec::new(),
        };
        let mut found = Vec::new();
        for session in plan.sessions.iter().filter(|s| s.at <= until) {
            found.push((from, session.until));
            from = session.until;
        }
        found
    }
}
