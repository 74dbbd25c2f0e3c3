//! Which clock runs, and until when milk is good by it.

use super::state::State;
use crate::guidance::KeepingRules;
use crate::quantity::Temperature;
use crate::record::KeptIn;
use crate::time::{Instant, Moment, Span};

/// The clock that runs.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Clock {
    /// Fresh in the room.
    Room,
    /// In a cooler.
    Cooler,
    /// Fresh in the fridge.
    Fridge,
    /// Frozen.
    Freezer,
    /// Deep-frozen.
    DeepFreezer,
    /// Fully thawed, in the fridge.
    Thawed,
    /// Warmed, or in the room after it was cold.
    Warmed,
    /// What is left of a feed.
    AfterFeed,
}

impl Clock {
    /// Stable name.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Room => "room",
            Self::Cooler => "cooler",
            Self::Fridge => "fridge",
            Self::Freezer => "freezer",
            Self::DeepFreezer => "deep_freezer",
            Self::Thawed => "thawed",
            Self::Warmed => "warmed",
            Self::AfterFeed => "after_feed",
        }
    }
}

/// Why it is not told until when milk is good.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Untold {
    /// Nobody said where it is.
    PlaceUnknown,
    /// The room is warmer than the rules cover.
    TooWarm,
    /// The rules in force say nothing of this.
    NotInTheRules,
    /// It thaws: its time runs from when it is fully thawed.
    StillThawing,
    /// Thawed milk was frozen again.
    FrozenAgain,
    /// The rules of the unit hold, and are not entered.
    UnitsRules,
}

/// Until when milk is good.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum GoodUntil {
    /// Until then, that instant included.
    At {
        /// When.
        at: Instant,
        /// By which clock.
        clock: Clock,
        /// Acceptable until then, where the rules say so.
        acceptable: Option<Instant>,
        /// It counts from the start of a feed whose end is not noted.
        feed_goes_on: bool,
    },
    /// It can't be told.
    Untold(Untold),
}

impl GoodUntil {
    /// The instant, where there is one.
    pub const fn at(&self) -> Option<Instant> {
        match self {
            Self::At { at, .. } => Some(*at),
            Self::Untold(_) => None,
        }
    }

    /// The last instant at which it is good or acceptable.
    pub fn last(&self) -> Option<Instant> {
        match self {
            Self::At { at, acceptable, .. } => Some(acceptable.unwrap_or(*at)),
            Self::Untold(_) => None,
        }
    }

    /// What ends next: when it is best, and after that when it is acceptable.
    pub fn next_end(&self, now: Instant) -> Option<Instant> {
        self.at().filter(|at| now <= *at).or(self.last())
    }

    /// Whether that is over: the last instant itself is still good.
    pub fn is_over(&self, now: Instant) -> bool {
        self.last().is_some_and(|last| now > last)
    }

    fn by(clock: Clock, from: Instant, lasts: Option<Span>) -> Self {
        match lasts {
            Some(lasts) => Self::At { at: from.plus(lasts), clock, acceptable: None, feed_goes_on: false },
            None => Self::Untold(Untold::NotInTheRules),
        }
    }

    /// The earlier of two; what can't be told of one does not lengthen the other.
    pub(super) fn no_later_than(self, other: Option<Instant>) -> Self {
        match (self, other) {
            (Self::At { at, clock, feed_goes_on, .. }, Some(other)) if other < at => {
                Self::At { at: other, clock, acceptable: None, feed_goes_on }
            }
            (own, _) => own,
        }
    }
}

/// Where milk is, how it came there, and since when.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Leg<'c> {
    pub(super) state: State,
    pub(super) place: Option<KeptIn>,
    /// When it was put there.
    pub(super) since: Instant,
    pub(super) expressed: &'c Moment,
    pub(super) thawed: Option<Instant>,
    /// Whether it was ever cold.
    pub(super) was_cold: bool,
    pub(super) warmed: Option<Instant>,
    /// When a feed from it began, and ended where that was noted.
    pub(super) feed: Option<(Instant, Option<Instant>)>,
    pub(super) room: Option<Temperature>,
    /// Until when it was good before it came there.
    pub(super) before: Option<Instant>,
}

/// Until when milk is good there, by a set of rules.
pub(super) fn good_until(leg: &Leg<'_>, rules: &KeepingRules) -> GoodUntil {
    let expressed = leg.expressed.instant();
    let in_place = match (leg.state, leg.place) {
        (_, None) => GoodUntil::Untold(Untold::PlaceUnknown),
        (State::Frozen, Some(place)) => frozen(leg, place, rules),
        (State::Thawing, Some(KeptIn::Room)) => {
            GoodUntil::by(Clock::Warmed, leg.since, rules.warmed).no_later_than(leg.before)
        }
        (State::Thawing, Some(_)) => GoodUntil::Untold(Untold::StillThawing),
        (State::Thawed, Some(place)) => {
            let thawed = GoodUntil::by(Clock::Thawed, leg.thawed.unwrap_or(leg.since), rules.thawed);
            match place {
                KeptIn::Room => {
                    GoodUntil::by(Clock::Warmed, leg.thawed.unwrap_or(leg.since).max(leg.since), rules.warmed)
                        .no_later_than(thawed.at())
                }
                _ => thawed,
            }
        }
        (State::Fresh, Some(KeptIn::Room)) if leg.was_cold => {
            GoodUntil::by(Clock::Warmed, leg.since, rules.warmed).no_later_than(leg.before)
        }
        (State::Fresh, Some(KeptIn::Room)) => match leg.room.zip(rules.room_to) {
            Some((room, most)) if room > most => GoodUntil::Untold(Untold::TooWarm),
            _ => GoodUntil::by(Clock::Room, expressed, rules.room),
        },
        (State::Fresh, Some(KeptIn::Cooler)) => {
            let fridge = rules.fridge.map(|fridge| expressed.plus(fridge));
            GoodUntil::by(Clock::Cooler, leg.since, rules.cooler).no_later_than(fridge)
        }
        // Put to freeze it is frozen: it can't be fresh there.
        (State::Fresh, Some(_)) => GoodUntil::by(Clock::Fridge, expressed, rules.fridge),
    };
    let warmed = match leg.warmed {
        Some(at) => GoodUntil::by(Clock::Warmed, at, rules.warmed).no_later_than(in_place.at()),
        None => in_place,
    };
    match leg.feed {
        Some((_, Some(ended))) => GoodUntil::by(Clock::AfterFeed, ended, rules.after_feed).no_later_than(warmed.at()),
        Some((began, None)) => {
            match GoodUntil::by(Clock::AfterFeed, began, rules.after_feed).no_later_than(warmed.at()) {
                GoodUntil::At { at, clock, acceptable, .. } => {
                    GoodUntil::At { at, clock, acceptable, feed_goes_on: true }
                }
                untold @ GoodUntil::Untold(_) => untold,
            }
        }
        None => warmed,
    }
}

/// By months of the calendar, from when it was expressed.
fn frozen(leg: &Leg<'_>, place: KeptIn, rules: &KeepingRules) -> GoodUntil {
    let (clock, months) = match place {
        KeptIn::DeepFreezer => (Clock::DeepFreezer, rules.deep_freezer),
        _ => (Clock::Freezer, rules.freezer),
    };
    let Some((best, most)) = months else { return GoodUntil::Untold(Untold::NotInTheRules) };
    let end = |months: crate::time::Months| months.after(leg.expressed).map(|moment| moment.instant());
    match (end(best), end(most)) {
        (Some(at), acceptable) => GoodUntil::At {
            at,
            clock,
            acceptable: acceptable.filter(|acceptable| *acceptable > at),
            feed_goes_on: false,
        },
        (None, _) => GoodUntil::Untold(Untold::NotInTheRules),
    }
}
