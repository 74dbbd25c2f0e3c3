//! What had come by when, in one session: read off the containers while it ran.

use super::amount_scale::AmountScale;
use super::Record;
use crate::answer::trial::{time_to_most as most_of, SoFar};
use crate::quantity::{Entered, Quantity, Volume};
use crate::record::{text, Amount, Fields, MarkKind, Session};
use crate::time::Span;
use crate::trouble::Trouble;

/// Steps above the last reading that are offered: close ones, and some further off.
const OFFERED: [u32; 7] = [1, 2, 3, 4, 6, 8, 12];

/// The readings of a session, in order of time.
pub(crate) fn readings(session: &Session) -> Vec<SoFar> {
    let Some(began) = session.started.as_ref().map(|at| at.instant()) else { return Vec::new() };
    let read = session.marks.iter().filter_map(|(_, mark)| match &mark.kind {
        MarkKind::SoFar { amount } => Some((mark.at.instant().since(began), amount.quantity())),
        _ => None,
    });
    read.collect()
}

/// When most of a session's milk had come; none where its readings don't tell.
pub(crate) fn time_to_most(session: &Session) -> Option<Span> {
    let lasted = session.ended.as_ref()?.instant().since(session.started.as_ref()?.instant());
    most_of(&readings(session), (lasted, all_of(session)?))
}

/// What came in all, where it is known of each side that took part.
fn all_of(session: &Session) -> Option<Volume> {
    let known = |amount: &Option<Amount>| amount.as_ref().and_then(Amount::known);
    if let Some(together) = known(&session.together) {
        return Some(together);
    }
    let sides = [(session.sides.left(), &session.left), (session.sides.right(), &session.right)];
    let own = sides.into_iter().filter(|(takes_part, _)| *takes_part);
    let all: Option<Vec<f64>> = own.map(|(_, amount)| known(amount).map(Quantity::canonical)).collect();
    all.map(|all| Volume::from_canonical(all.iter().sum()))
}

/// Whether a session is of a comparison that is decided by it.
pub(crate) fn is_asked(record: &Record<'_>, fields: &Fields) -> Result<bool, Trouble> {
    let Some(trial) = text(fields, "trial") else { return Ok(false) };
    let Some((_, trial)) = record.journal.record(trial)? else { return Ok(false) };
    Ok(text(&trial, "outcome") == Some("time_to_most") && text(&trial, "trial_ended").is_none())
}

/// Amounts that the containers may hold next, in the unit that is read: what they held last and
/// some steps more.
pub(crate) fn offered(record: &Record<'_>, session: &Session) -> Result<Vec<Entered<Volume>>, Trouble> {
    let step = AmountScale::for_session(record, session)?.step();
    let last = readings(session).last().map_or(0.0, |(_, held)| held.in_unit(step.unit));
    let from = (last / step.by + 1e-9).floor();
    let offered = OFFERED.iter().map(|steps| (from + f64::from(*steps)) * step.by);
    Ok(offered.map(|amount| Entered::of((amount * 1000.0).round() / 1000.0, step.unit)).collect())
}
