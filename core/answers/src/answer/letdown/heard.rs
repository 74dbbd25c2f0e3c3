//! What a session says of its letdowns.

use crate::quantity::{Count, Level, Quantity, Speed, Vacuum};
use crate::record::mark::Phase;
use crate::record::{text, whole_number, Fields, MarkKind, Session};
use crate::time::{Instant, Moment, Span};

/// How a session was done when its first letdown came.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct How {
    /// The level, where a hand set it.
    pub level: Option<Level>,
    /// The vacuum as the pump shows it, where a hand set it.
    pub vacuum: Option<Vacuum>,
    /// Cycles per minute, where a hand set them.
    pub speed: Option<Speed>,
    /// Where it took place.
    pub place: Option<String>,
}

/// What a session says of its letdowns.
#[derive(Debug, Clone, PartialEq)]
pub struct Heard {
    /// The session.
    pub session: String,
    /// When it began.
    pub at: Moment,
    /// How long after that the first letdown was marked; none where none was.
    pub first: Option<Span>,
    /// How many there were, as marked or as counted afterwards; none where nobody said.
    pub number: Option<Count>,
    /// How it was done.
    pub how: How,
    /// How long the first letdown phase lasted, where both its ends were marked.
    pub stimulated: Option<Span>,
}

/// Reads a session; none of one at the breast, of one that runs, or without its time.
pub fn heard_in(session: &Session, fields: &Fields) -> Option<Heard> {
    let at = session.started.clone().filter(|_| session.collects() && !session.is_running())?;
    let began = at.instant();
    let mut times: Vec<Instant> =
        session.marks.iter().filter(|(_, m)| m.kind == MarkKind::Letdown).map(|(_, m)| m.at.instant()).collect();
    times.retain(|time| *time >= began);
    let marked = (!times.is_empty()).then(|| Count::new(times.len() as u32));
    // None counted is none felt: it says no number.
    let counted = whole_number(fields, "letdowns").filter(|number| *number > 0).map(Count::new);
    let set = times.first().map(|first| session.used_at(*first)).unwrap_or_else(|| session.used_in(Phase::Letdown));
    let phases = session.phases();
    let of_letdown = phases.iter().position(|(phase, _)| *phase == Phase::Letdown);
    let stimulated = of_letdown.and_then(|place| {
        let (_, from) = phases.get(place)?;
        let (_, until) = phases.get(place + 1)?;
        Some(until.since(*from))
    });
    Some(Heard {
        session: session.id.clone(),
        first: times.first().map(|first| first.since(began)),
        number: marked.max(counted),
        how: How {
            level: set.level,
            vacuum: set.vacuum.map(|vacuum| vacuum.quantity()).filter(|v| v.canonical() > 0.0),
            speed: set.cycles.map(|cycles| cycles.quantity()),
            place: text(fields, "where").map(str::to_owned),
        },
        stimulated,
        at,
    })
}
