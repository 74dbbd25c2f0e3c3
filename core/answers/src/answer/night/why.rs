//! Why a session is when it is.

use super::occurrences::PointOccurrence;
use super::search::Found;
use super::task::{Minute, Task};
use crate::record::PointKind;
use crate::time::{Instant, Span};

/// Why then.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Why {
    /// It was to be earlier and did not come.
    Late,
    /// It was moved here by hand.
    ByHand,
    /// A fixed point wants it.
    Stands(PointKind),
    /// It is a block of repeated short sessions.
    Block,
    /// Without it the gap would be this long, and that is over the longest.
    KeepsLongest(Span),
    /// So many are to be in the night.
    InTheNight,
    /// Just before sleep, so that the sleep is whole.
    BeforeSleep,
    /// On waking.
    OnWaking,
    /// Evenly between its neighbours.
    Evenly,
}

/// Within this of the sleep window a session is before it, or after it.
const BESIDE: Minute = 60;

/// Why the session at a point of the grid is there.
pub(super) fn of(
    task: &Task,
    found: &Found,
    point: usize,
    by_hand: bool,
    stands: Option<&PointOccurrence>,
    late: Option<Instant>,
) -> Why {
    let place = found.starts.iter().position(|p| *p == point).unwrap_or(0);
    if late.is_some() && place == 0 {
        return Why::Late;
    }
    if by_hand {
        return Why::ByHand;
    }
    match stands {
        Some(PointOccurrence { kind: Some(kind), .. }) => return Why::Stands(*kind),
        Some(PointOccurrence { kind: None, .. }) => return Why::Block,
        None => {}
    }
    let begins = Task::minute(point);
    let ended = match place.checked_sub(1).and_then(|before| found.starts.get(before)) {
        Some(before) => Some(Task::minute(*before) + task.lasts_at(*before)),
        None => task.since,
    };
    let next = found.starts.get(place + 1).map(|p| Task::minute(*p));
    let next_ends = found.starts.get(place + 1).map_or(task.ends(), |p| Task::minute(*p) + task.lasts_at(*p));
    let without = ended.map_or(0, |ended| next_ends - ended);
    let inside = task.windows.iter().any(|w| (w.from..w.until).contains(&begins));
    if inside {
        return match without > task.longest {
            true => Why::KeepsLongest(Span::minutes(without.into())),
            false if task.night_sessions > 0 => Why::InTheNight,
            false => Why::Evenly,
        };
    }
    for window in &task.windows {
        if (window.until..=window.until + BESIDE).contains(&begins) && ended.is_none_or(|e| e < window.until) {
            return Why::OnWaking;
        }
        let is_last = next.is_none_or(|next| next >= window.from);
        if (window.from - BESIDE..window.from).contains(&begins) && is_last {
            return Why::BeforeSleep;
        }
    }
    Why::Evenly
}
