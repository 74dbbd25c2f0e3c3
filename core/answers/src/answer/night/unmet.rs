//! What gives way where not all can be kept, and by how much.

use super::frame::Frame;
use super::schedule::{minutes, Schedule};
use super::task::{Minute, Task, Window};
use crate::quantity::Count;
use crate::record::PointKind;
use crate::time::{Instant, Span};

/// A part of the frame that cannot be kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum UnmetConstraint {
    /// A gap is longer than the longest.
    Longest {
        /// From the end of one.
        from: Instant,
        /// To the end of the next.
        until: Instant,
        /// So much longer.
        by: Span,
    },
    /// A gap is shorter than the shortest that was set.
    Shortest {
        /// From the end of one.
        from: Instant,
        /// To the end of the next.
        until: Instant,
        /// So much shorter.
        by: Span,
    },
    /// The one long sleep is shorter than wished for.
    Sleep {
        /// The longest there is.
        longest: Span,
        /// What was wished for.
        wished: Span,
    },
    /// Fewer sessions in the night than asked for.
    NightSessions {
        /// So many there are.
        planned: Count,
        /// So many were asked for.
        asked: Count,
    },
    /// Fewer, or more, sessions in the day to come than wished for.
    Sessions {
        /// So many fit.
        planned: Count,
        /// So many were wished for.
        wished: Count,
    },
    /// A fixed point has no session.
    Point {
        /// What it is; none for a block.
        kind: Option<PointKind>,
        /// When it begins.
        at: Instant,
    },
}

/// What gives way from now to the evening the plan reaches to.
pub(super) fn constraints(schedule: &Schedule, frame: &Frame, tonight: usize, until: Instant) -> Vec<UnmetConstraint> {
    let task = &schedule.task;
    let mut all = gaps(schedule, frame, until);
    if let Some(night) = schedule.nights().get(tonight) {
        let window = Window { from: minutes_to(schedule, night.from), until: minutes_to(schedule, night.until) };
        all.extend(of_the_night(schedule, frame, window, tonight));
    }
    // The first whole day to come; of the one that has begun nothing is asked.
    if let (Some(day), Some(begins)) = (task.days.get(1), task.days.first().map(|d| d.until)) {
        let planned = schedule.found.starts.iter().filter(|p| (begins..day.until).contains(&Task::minute(**p))).count();
        if let Some(wish) = day.wish.filter(|wish| *wish as usize != planned) {
            all.push(UnmetConstraint::Sessions { planned: Count::new(planned as u32), wished: Count::new(wish) });
        }
    }
    for wanted in &task.wanted {
        let at = schedule.at(wanted.starts.start);
        if at <= until && !schedule.found.starts.iter().any(|s| wanted.starts.contains(s)) {
            let stands = schedule
                .occurrences()
                .iter()
                .find(|s| s.stretch.holds(at) || s.stretch.from.since(at) == Span::milliseconds(0));
            all.push(UnmetConstraint::Point { kind: stands.and_then(|s| s.kind), at });
        }
    }
    all
}

fn minutes_to(schedule: &Schedule, at: Instant) -> Minute {
    minutes(at.since(schedule.at(0)))
}

fn gaps(schedule: &Schedule, frame: &Frame, until: Instant) -> Vec<UnmetConstraint> {
    let task = &schedule.task;
    let mut all = Vec::new();
    let mut ended = task.since;
    for start in schedule.starts_until(until) {
        let ends = Task::minute(start) + task.lasts_at(start);
        if let Some(ended) = ended {
            let gap = Span::minutes((ends - ended).into());
            let longest = Span::minutes(task.longest.into());
            let (from, until) =
                (schedule.at(0).plus(Span::minutes(ended.into())), schedule.at(0).plus(Span::minutes(ends.into())));
            // What is past cannot give way any more.
            let was_over = ended + task.longest < 0;
            if gap > longest && !was_over {
                all.push(UnmetConstraint::Longest { from, until, by: minus(gap, longest) });
            }
            if let Some(shortest) = frame.shortest.filter(|shortest| gap < *shortest) {
                all.push(UnmetConstraint::Shortest { from, until, by: minus(shortest, gap) });
            }
        }
        ended = Some(ends);
    }
    all
}

fn minus(longer: Span, shorter: Span) -> Span {
    Span::milliseconds(longer.in_milliseconds() - shorter.in_milliseconds())
}

fn of_the_night(schedule: &Schedule, frame: &Frame, window: Window, tonight: usize) -> Vec<UnmetConstraint> {
    let task = &schedule.task;
    let begun = if tonight == 0 { task.begun } else { Default::default() };
    let mut all = Vec::new();
    if let Some(wished) = frame.stretch {
        let wished = wished.min(Span::minutes((window.until - window.from).into()));
        let sleeps = task.sleeps(window, &schedule.found.starts);
        let longest = sleeps.iter().map(|s| s.lasts()).max().unwrap_or(0).max(begun.slept);
        let longest = Span::minutes(longest.into());
        if longest < wished {
            all.push(UnmetConstraint::Sleep { longest, wished });
        }
    }
    let inside =
        schedule.found.starts.iter().filter(|p| (window.from..window.until).contains(&Task::minute(**p))).count();
    let planned = begun.sessions + inside as u32;
    if planned < task.night_sessions {
        all.push(UnmetConstraint::NightSessions {
            planned: Count::new(planned),
            asked: Count::new(task.night_sessions),
        });
    }
    all
}
