//! Where a container is and how, after everything that happened to it.

use crate::record::KeptIn;

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

/// The state of milk that is put somewhere.
pub(super) fn put(state: State, place: KeptIn) -> State {
    match (place.freezes(), state) {
        (true, _) => State::Frozen,
        // Taken out of the freezer it thaws, whether that was said or not.
        (false, State::Frozen) => State::Thawing,
        (false, other) => other,
    }
}
