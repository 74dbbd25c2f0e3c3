//! Where a container is and how, after everything that happened to it.

use super::kept::Kept;
use crate::quantity::{Quantity, Volume};
use crate::record::{Happened, KeptIn};

/// How the milk is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum State {
    /// Never frozen.
    Fresh,
    /// Frozen.
    Frozen,
    /// On the way from frozen.
    Thawing,
    /// Fully thawed.
    Thawed,
}

/// Something that can't have been so, or that ends the milk's time.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Odd {
    /// Expressed later than now.
    InFuture,
    /// Something happened to it before it was expressed.
    BeforeExpressed,
    /// It thawed without having been frozen.
    ThawedBeforeFrozen,
    /// It was frozen again after it thawed.
    FrozenAgain,
    /// Something happened to it after all of it was gone.
    AfterGone,
    /// More was taken out than it held: on two phones, it may be.
    TakenTwice,
}

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

/// The state of milk that is put somewhere.
pub(super) fn put(state: State, place: KeptIn) -> State {
    match (place.freezes(), state) {
        (true, _) => State::Frozen,
        // Taken out of the freezer it thaws, whether that was said or not.
        (false, State::Frozen) => State::Thawing,
        (false, other) => other,
    }
}
