//! What can't be done with a container, and why.

use super::kept::Kept;
use super::state::State;
use crate::quantity::{Quantity, Volume};
use crate::record::Happened;

/// Why something can't be done with a container.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Refusal {
    /// Thawed milk is not frozen again.
    FrozenAgain,
    /// What was never frozen does not thaw.
    NotFrozen,
    /// All of it is gone.
    Gone,
    /// There is less in it than that.
    MoreThanThereIs,
}

/// Whether something may be done with a container as it is now; `amount` where only some is
/// taken out.
pub fn refused(kept: &Kept, what: Happened, amount: Option<Volume>) -> Option<Refusal> {
    if kept.is_gone {
        return Some(Refusal::Gone);
    }
    let less = |amount: Volume| kept.left.is_some_and(|left| amount.canonical() > left.canonical() + TENTH);
    match what {
        Happened::Moved(place) if place.freezes() && kept.state >= State::Thawing => Some(Refusal::FrozenAgain),
        Happened::Thawing | Happened::Thawed if kept.state == State::Fresh => Some(Refusal::NotFrozen),
        Happened::Thawing | Happened::Thawed if kept.state == State::Thawed => Some(Refusal::NotFrozen),
        Happened::Taken(_) if amount.is_some_and(less) => Some(Refusal::MoreThanThereIs),
        _ => None,
    }
}

/// Less than this is rounding, in mL.
const TENTH: f64 = 0.05;
