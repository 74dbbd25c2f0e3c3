//! When the person is called: to set up, when it is due, when it is late. They follow from
//! the record and the present alone; only those of the next session are ever set.

use super::frame::Frame;
use super::plan::Plan;
use crate::record::{PlanChange, PlanDone, Reminding, Rhythm};
use crate::time::{Instant, Span};

/// Put off by this.
pub const PUT_OFF: Span = Span::minutes(10);

/// What is reminded of.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Reminds {
    /// Set up: the session is soon.
    SetUp,
    /// It is time.
    Due,
    /// It was to be a while ago.
    Late,
}

impl Reminds {
    /// In the order they come.
    pub const ALL: [Self; 3] = [Self::SetUp, Self::Due, Self::Late];

    /// Stable name.
    pub const fn name(self) -> &'static str {
        match self {
            Self::SetUp => "set-up",
            Self::Due => "due",
            Self::Late => "late",
        }
    }
}

/// A call to come.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Reminder {
    /// What it is about.
    pub reminds: Reminds,
    /// When it comes.
    pub at: Instant,
    /// When the session is planned.
    pub planned: Instant,
    /// Without a sound.
    pub quiet: bool,
}

/// The reminders of the next session that are still to come, in order of time, no two at
/// one instant. None where the parent wants none.
pub fn reminders(plan: &Plan, frame: &Frame, rhythm: &Rhythm, changes: &[PlanChange], now: Instant) -> Vec<Reminder> {
    let Some(next) = plan.sessions.first() else { return Vec::new() };
    let planned = plan.late_since.unwrap_or(next.at);
    let put_off = changes.iter().rev().find_map(|change| match change.done {
        PlanDone::Snoozed { to } if change.of == planned => Some(to),
        _ => None,
    });
    let due = put_off.unwrap_or(planned);
    let mut times = vec![(Reminds::Due, due), (Reminds::Late, due.plus(frame.rules.late_after))];
    if frame.lead > Span::minutes(0) && put_off.is_none() {
        times.push((Reminds::SetUp, due.minus(frame.lead)));
    }
    times.sort_by_key(|(reminds, at)| (*at, *reminds));
    times.dedup_by_key(|(_, at)| *at);
    times
        .into_iter()
        .filter(|(_, at)| *at > now)
        .filter_map(|(reminds, at)| {
            let by_night = plan.night.window.holds(at);
            let way = if by_night { rhythm.night_reminders.or(rhythm.reminders) } else { rhythm.reminders };
            let quiet = match way? {
                Reminding::None => return None,
                Reminding::Quiet => true,
                Reminding::Sound => false,
            };
            Some(Reminder { reminds, at, planned, quiet })
        })
        .collect()
}
