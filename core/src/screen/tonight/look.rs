//! Plan and wells, gathered once.

use crate::answer::night::{reminders, Gathered, Plan, Reminder};
use crate::answer::refill::{curves, Refill};
use crate::answer::supply::Calendar;
use crate::guidance::Rules;
use crate::record::{Kind, RULES};
use crate::screen::View;
use crate::time::Instant;
use crate::trouble::Trouble;

/// What Tonight looks at.
pub(crate) struct Look {
    pub(crate) gathered: Gathered,
    pub(crate) refill: Refill,
    pub(crate) plan: Option<Plan>,
    pub(crate) rules: Rules,
    /// A child whose birth date is not known, by its record.
    pub(crate) child: Option<String>,
}

impl Look {
    pub(crate) fn read(view: &View<'_>) -> Result<Self, Trouble> {
        let gathered = Gathered::read(view.journal, view.now, view.zone, view.settings.day_start)?;
        let calendar = Calendar { start: view.settings.day_start, zone: view.zone };
        let refill = curves(view.journal, view.now, calendar)?;
        let plan = gathered.plan(&|from, until| refill.lost(from, until, gathered.zone));
        let rules = Rules::read(&view.record(RULES)?.1);
        let children = view.journal.fields_of_kind(Kind::Child)?;
        let child = children.into_iter().find(|(_, fields)| !fields.contains_key("birth")).map(|(id, _)| id);
        Ok(Self { gathered, refill, plan, rules, child })
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
