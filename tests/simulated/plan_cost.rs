//! What a plan costs, counted from its sessions alone: what the search adds up on its way, and knows
//! nothing of, is held to it.

use drawwell_core::answer::night::search::Wanted;
use drawwell_core::answer::night::search::{Begun, Cost, Minute, Task, Window, AVOIDED, STEP_MINUTES, UNEVEN};

fn minute(point: usize) -> Minute {
    point as Minute * STEP_MINUTES
}

fn is_avoided(task: &Task, point: usize) -> bool {
    task.avoided.iter().any(|a| a.contains(&point)) && !task.wanted.iter().any(|w| w.starts.contains(&point))
}

/// The long sleep that is asked of a window.
fn asked(task: &Task, window: Window) -> Minute {
    task.stretch.unwrap_or(0).min(window.until - window.from)
}

/// What a plan costs, counted from its sessions.
pub(crate) fn cost(task: &Task, starts: &[usize], lost: &dyn Fn(Minute, Minute) -> u64) -> Cost {
    let mut cost = Cost::default();
    let inside = |w: &Wanted| starts.iter().any(|s| w.starts.contains(s));
    cost.missed = task.wanted.iter().filter(|w| !inside(w)).count() as u32;
    cost.under_shortest += AVOIDED * starts.iter().filter(|s| is_avoided(task, **s)).count() as u32;
    let mut ended = task.since;
    let mut paced = task.paced_since.or(task.since);
    let ends = starts.iter().map(|s| (minute(*s) + task.lasts_at(*s), true)).chain([(task.ends(), false)]);
    for (next, is_session) in ends {
        if let Some(ended) = ended {
            let gap = next - ended;
            cost.over_longest += (gap - task.longest).max(0) as u32;
            let steps = (gap.max(0) / STEP_MINUTES).unsigned_abs();
            cost.soft += UNEVEN * u64::from(steps) * u64::from(steps) + lost(ended, next);
        }
        if let (Some(paced), true) = (paced, is_session) {
            cost.under_shortest += (task.shortest - (next - paced)).max(0) as u32;
        }
        (ended, paced) = (Some(next), Some(next));
    }
    for (i, window) in task.windows.iter().enumerate() {
        let begun = if i == 0 { task.begun } else { Begun::default() };
        let sleeps = task.sleeps(*window, starts);
        let from = window.from.max(task.since.unwrap_or(0).min(0));
        let ahead: Minute = sleeps.iter().map(|s| (s.until - s.from.max(from)).max(0)).sum();
        cost.awake += (window.until.min(task.ends()) - from - ahead).max(0) as u32;
        if window.until <= task.ends() {
            let longest = sleeps.iter().map(|s| s.lasts()).max().unwrap_or(0).max(begun.slept);
            cost.stretch_lacks += (asked(task, *window) - longest).max(0) as u32;
            let inside = |s: &&usize| (window.from..window.until).contains(&minute(**s));
            let sessions = begun.sessions + starts.iter().filter(inside).count() as u32;
            cost.night_lacks += task.night_sessions.saturating_sub(sessions);
        }
    }
    let mut began = 0;
    for day in &task.days {
        let sessions = starts.iter().filter(|s| (began..day.until).contains(&minute(**s))).count() as u32;
        if let Some(wish) = day.wish {
            cost.off_wish += wish.abs_diff(sessions + day.done);
        }
        began = day.until;
    }
    cost
}
