//! The plan: the times from now to tomorrow evening, from what was really done.
//!
//! It is made from the last thing that happened and not from the present, so that it stands
//! still while nothing happens; a session that was due and did not come moves the rest, and
//! none is made up for.

use super::facts::{Basis, Facts};
use super::occurrences::{PointOccurrence, Stretch};
use super::schedule::{grid, Schedule};
use super::task::STEP_MINUTES;
use super::unmet::{self, UnmetConstraint};
use super::why::{self, Why};
use crate::record::{PlanChange, PlanDone, PointKind};
use crate::time::{Instant, Span};

/// A session to come.
#[derive(Debug, Clone, PartialEq)]
pub struct Planned {
    /// It begins.
    pub at: Instant,
    /// It is over.
    pub until: Instant,
    /// It was set by hand, or stands.
    pub fixed: bool,
    /// It is a feed at the breast.
    pub feed: bool,
    /// Why then.
    pub why: Why,
}

/// A night of the plan.
#[derive(Debug, Clone, PartialEq)]
pub struct Night {
    /// The sleep window.
    pub window: Stretch,
    /// The sleeps that are left of it, those that were before now too.
    pub sleeps: Vec<Stretch>,
}

impl Night {
    /// All sleep together.
    pub fn slept(&self) -> Span {
        Span::milliseconds(self.sleeps.iter().map(|s| s.lasts().in_milliseconds()).sum())
    }
    /// The longest of them.
    pub fn longest(&self) -> Span {
        self.sleeps.iter().map(|s| s.lasts()).max().unwrap_or(Span::milliseconds(0))
    }
}

/// The times from now to tomorrow evening.
#[derive(Debug, Clone, PartialEq)]
pub struct Plan {
    /// What it goes by.
    pub basis: Basis,
    /// Sessions to come, in order.
    pub sessions: Vec<Planned>,
    /// The next was to be at this time, which is past.
    pub late_since: Option<Instant>,
    /// The night that is or that comes.
    pub night: Night,
    /// What gives way.
    pub unmet: Vec<UnmetConstraint>,
    /// What stands from the evening on, for the picture.
    pub occurrences: Vec<PointOccurrence>,
    /// It reaches to here.
    pub until: Instant,
}

/// Silence longer than this says nothing about what was done: as for intervals.
pub const SILENCE: Span = crate::answer::supply::intervals::LONGEST_INTERVAL;

/// A session within this of its time is on time.
const ON_TIME: Span = Span::minutes(STEP_MINUTES as i64);

/// Makes the plan. None where no number of sessions a day is known: then there is nothing
/// to space them by.
pub fn plan(facts: &Facts<'_>) -> Option<Plan> {
    facts.frame.sessions?;
    let last = facts.emptyings.iter().map(|e| e.at).filter(|at| *at <= facts.now).max();
    // A clock that was set back leaves emptyings ahead of it: they were just now.
    let ahead = facts.emptyings.iter().any(|e| e.at > facts.now);
    let last = if ahead || facts.running.is_some() { Some(facts.now) } else { last };
    let basis = match last {
        None => Basis::FrameAlone,
        Some(since) if facts.now.since(since) > SILENCE => Basis::Silence { since },
        Some(at) => Basis::Emptying(at),
    };
    let from = match basis {
        Basis::Emptying(at) => {
            facts.changes.iter().filter(|c| moves_the_plan(c)).map(|c| c.at.min(facts.now)).fold(at, Instant::max)
        }
        _ => facts.now,
    };
    let schedule = Schedule::build(facts, basis, from, None);
    let first = schedule.found.starts.first().map(|p| schedule.at(*p));
    match first {
        Some(due) if due.plus(ON_TIME) <= facts.now => {
            // It did not come: from now on, and nothing is made up for.
            let late = Schedule::build(facts, basis, facts.now, Some(due));
            Some(late.into_plan(facts, Some(due)))
        }
        _ => Some(schedule.into_plan(facts, None)),
    }
}

fn moves_the_plan(change: &PlanChange) -> bool {
    !matches!(change.done, PlanDone::Snoozed { .. })
}

impl Schedule {
    fn into_plan(self, facts: &Facts<'_>, late_since: Option<Instant>) -> Plan {
        let frame = facts.frame;
        // Tonight is the night that is not over yet; the plan reaches to the evening after it.
        let tonight = self.nights.iter().position(|n| n.until > facts.now).unwrap_or(0);
        let until = self.nights.get(tonight + 1).map_or(self.instant(self.task.ends()), |n| n.from);
        let shown: Vec<usize> = self.found.starts.iter().copied().filter(|p| self.at(*p) <= until).collect();
        let sessions = shown
            .iter()
            .map(|point| {
                let at = self.at(*point);
                let stands = self.stands_for(*point);
                let by_hand = self.pins.iter().any(|pin| grid(*pin) == at || *pin == at);
                Planned {
                    at,
                    until: at.plus(Span::minutes(self.task.lasts_at(*point).into())),
                    fixed: by_hand || stands.is_some(),
                    feed: stands.is_some_and(|s| s.kind == Some(PointKind::Feed)),
                    why: why::of(&self.task, &self.found, *point, by_hand, stands, late_since),
                }
            })
            .collect();
        let window = self.nights.get(tonight).copied().unwrap_or(Stretch { from: facts.now, until: facts.now });
        let sleeps = self.sleeps(facts, window);
        Plan {
            basis: self.basis,
            sessions,
            late_since,
            unmet: unmet::constraints(&self, frame, tonight, until),
            night: Night { window, sleeps },
            occurrences: self.occurrences,
            until,
        }
    }
}
