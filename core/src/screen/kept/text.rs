//! Words for a container: what it is called, how much is in it, until when it is good.

use crate::answer::keeping::{Clock, GoodUntil, InForce, Kept, Odd, State, Untold};
use crate::guidance::KeepingRules;
use crate::screen::View;
use crate::time::{Instant, LocalDay, Moment};

/// What it is called.
pub(super) fn name(view: &View<'_>, label: Option<&str>) -> String {
    match label.map(str::trim).filter(|label| !label.is_empty()) {
        Some(label) => view.words().with("kept-name", &[("label", label.into())]),
        None => view.words().say("kept-no-label"),
    }
}

/// How much is in it.
pub(super) fn left(view: &View<'_>, kept: &Kept) -> String {
    match kept.left {
        Some(left) => view.words().volume(left),
        None => view.words().say("kept-amount-unknown"),
    }
}

/// Whether a day may be said as today or tomorrow: on a screen, and not on a label that is read later.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Days {
    /// It is read now.
    AsOfToday,
    /// It is read on another day.
    ByDate,
}

/// A day and a time of the wall.
pub(super) fn when(view: &View<'_>, at: Instant, days: Days) -> String {
    let words = view.words();
    let moment = Moment::new(at, view.zone);
    // After midnight the wall has another date than the day that goes on: a label says the wall's.
    let date = match days {
        Days::AsOfToday => words.day(LocalDay::of(&moment, view.settings.day_start), view.today()),
        Days::ByDate => words.plain_date(moment.on_the_wall().date()),
    };
    words.with("kept-when", &[("date", date.into()), ("time", words.clock(&moment).into())])
}

/// By months only the day is said.
fn day_of(view: &View<'_>, at: Instant) -> String {
    view.words().plain_date(Moment::new(at, view.zone).on_the_wall().date())
}

fn by_months(clock: Clock) -> bool {
    matches!(clock, Clock::Freezer | Clock::DeepFreezer)
}

/// Until when it is good, or why that is not told.
pub(super) fn good_until(view: &View<'_>, kept: &Kept, days: Days) -> String {
    let words = view.words();
    let when = |at: Instant| when(view, at, days);
    if let Some(lapsed) = kept.lapsed_before {
        return words.with("kept-lapsed-before", &[("when", when(lapsed).into())]);
    }
    match kept.good_until {
        GoodUntil::At { at, clock, acceptable, .. } if kept.good_until.is_over(view.now) => {
            let last = acceptable.unwrap_or(at);
            let when = if by_months(clock) { day_of(view, last) } else { when(last) };
            words.with("kept-past", &[("when", when.into())])
        }
        GoodUntil::At { at, clock, acceptable, feed_goes_on } => {
            let key = match (by_months(clock), acceptable, feed_goes_on) {
                (true, Some(_), _) if view.now > at => "kept-past-best",
                (true, Some(_), _) => "kept-best-until",
                (_, _, true) => "kept-until-feed-goes-on",
                _ => "kept-until",
            };
            let text = |at: Instant| if by_months(clock) { day_of(view, at) } else { when(at) };
            let acceptable = acceptable.map(text).unwrap_or_default();
            words.with(key, &[("when", text(at).into()), ("acceptable", acceptable.into())])
        }
        GoodUntil::Untold(why) => words.say(match why {
            Untold::PlaceUnknown => "kept-place-unknown",
            Untold::TooWarm => "kept-too-warm",
            Untold::NotInTheRules => "kept-not-in-the-rules",
            Untold::StillThawing => "kept-still-thawing",
            Untold::FrozenAgain => "kept-frozen-again",
            Untold::UnitsRules => "kept-units-rules",
        }),
    }
}

/// Which clock runs, for who wants to know.
pub(super) fn clock(view: &View<'_>, kept: &Kept) -> Option<String> {
    match kept.good_until {
        GoodUntil::At { clock, .. } => Some(view.words().say(match clock {
            Clock::Room => "kept-clock-room",
            Clock::Cooler => "kept-clock-cooler",
            Clock::Fridge => "kept-clock-fridge",
            Clock::Freezer => "kept-clock-freezer",
            Clock::DeepFreezer => "kept-clock-deep-freezer",
            Clock::Thawed => "kept-clock-thawed",
            Clock::Warmed => "kept-clock-warmed",
            Clock::AfterFeed => "kept-clock-after-feed",
        })),
        GoodUntil::Untold(_) => None,
    }
}

/// Where it is, and how.
pub(super) fn place(view: &View<'_>, kept: &Kept) -> String {
    let words = view.words();
    let place = match kept.place {
        Some(place) => words.say(&format!("choice-kept-in-{}", place.name())),
        None => words.say("kept-somewhere"),
    };
    match kept.state {
        State::Fresh | State::Frozen => place,
        State::Thawing => words.with("kept-thawing", &[("place", place.into())]),
        State::Thawed => words.with("kept-thawed", &[("place", place.into())]),
    }
}

/// What can't have been so.
pub(super) fn odd(view: &View<'_>, kept: &Kept) -> Vec<String> {
    let words = view.words();
    let say = |odd: &Odd| match odd {
        Odd::InFuture => words.say("kept-odd-in-future"),
        Odd::BeforeExpressed => words.say("kept-odd-before-expressed"),
        Odd::ThawedBeforeFrozen => words.say("kept-odd-thawed-before-frozen"),
        Odd::FrozenAgain => words.say("kept-odd-frozen-again"),
        Odd::AfterGone => words.say("kept-odd-after-gone"),
        Odd::TakenTwice => words.with("kept-odd-taken-twice", &[("amount", words.volume(kept.overdrawn).into())]),
    };
    kept.odd.iter().map(say).collect()
}

/// Which rules are in force, with their source and year.
pub(super) fn rules(view: &View<'_>, in_force: &InForce) -> String {
    match in_force.rules() {
        Some(rules) => source(view, rules),
        None => view.words().say("kept-units-rules-not-entered"),
    }
}

/// Where a set comes from.
pub(super) fn source(view: &View<'_>, rules: &KeepingRules) -> String {
    let words = view.words();
    let name = words.say(&format!("choice-keeping-rules-{}", rules.key));
    let source = match (rules.source.is_empty(), rules.from_memory) {
        (true, _) => String::new(),
        (false, true) => words.with("kept-source-from-memory", &[("source", rules.source.as_str().into())]),
        (false, false) => rules.source.clone(),
    };
    match (source.is_empty(), rules.year) {
        (false, Some(year)) => words.with(
            "kept-by-rules-of",
            &[("name", name.into()), ("source", source.into()), ("year", year.to_string().into())],
        ),
        (true, Some(year)) => {
            words.with("kept-by-rules-year", &[("name", name.into()), ("year", year.to_string().into())])
        }
        (false, None) => words.with("kept-by-rules-source", &[("name", name.into()), ("source", source.into())]),
        (true, None) => words.with("kept-by-rules", &[("name", name.into())]),
    }
}
