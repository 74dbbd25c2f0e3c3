//! What became of a container, and what is left in it.

use super::clock::{good_until, GoodUntil, Leg, Untold};
use super::in_force::InForce;
use super::state::{put, Odd, State};
use crate::quantity::{Quantity, Volume};
use crate::record::{Container, Happened, KeptIn, MilkEvent, Taken};
use crate::time::Instant;

/// How much left a container, by how.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TakenOut {
    /// How.
    pub how: Taken,
    /// How much; none where all that was left was taken and nobody knows how much that was.
    pub amount: Option<Volume>,
}

/// A container as it is.
#[derive(Debug, Clone, PartialEq)]
pub struct Kept {
    /// Its id.
    pub id: String,
    /// What stands on its label.
    pub label: Option<String>,
    /// When its milk was expressed.
    pub expressed: Instant,
    /// What it was filled with, where that is known.
    pub held: Option<Volume>,
    /// What left it, in order of time.
    pub taken: Vec<TakenOut>,
    /// What is left in it; none where nobody knows, and nothing where it is gone.
    pub left: Option<Volume>,
    /// By how much more was taken out than it held.
    pub overdrawn: Volume,
    /// Whether all of it is gone.
    pub is_gone: bool,
    /// Where it is.
    pub place: Option<KeptIn>,
    /// How the milk is.
    pub state: State,
    /// Since when it is there.
    pub since: Instant,
    /// Whether the child began to drink from it.
    pub is_begun: bool,
    /// Until when it is good.
    pub good_until: GoodUntil,
    /// It was past its time before it came where it is: since then.
    pub lapsed_before: Option<Instant>,
    /// What can't have been so.
    pub odd: Vec<Odd>,
}

impl Kept {
    /// Whether it is past its time.
    pub fn is_past(&self, now: Instant) -> bool {
        self.lapsed_before.is_some() || self.good_until.is_over(now)
    }

    /// Whether it can be used now, as far as the rules say.
    pub fn is_usable(&self, now: Instant) -> bool {
        let told = !matches!(self.good_until, GoodUntil::Untold(Untold::FrozenAgain | Untold::TooWarm));
        !self.is_gone && !self.is_past(now) && told
    }
}

/// Amounts are kept to a tenth of a mL: so that sums add up in any order.
fn tenths(volume: Volume) -> i64 {
    (volume.canonical() * 10.0).round() as i64
}

fn volume(tenths: i64) -> Volume {
    Volume::from_canonical(tenths as f64 / 10.0)
}

/// A container with what happened to it up to now. Events come in any order; each counts at its
/// own time, those at one instant by their ids.
pub fn keep(container: &Container, events: &[MilkEvent], rules: &InForce, now: Instant) -> Kept {
    let mut own: Vec<&MilkEvent> =
        events.iter().filter(|event| event.container == container.id && event.at.instant() <= now).collect();
    own.sort_by(|a, b| (a.at.instant(), &a.id).cmp(&(b.at.instant(), &b.id)));
    let mut all = Course::of(container, now);
    for event in own {
        all.happens(event, rules);
    }
    all.ends(rules)
}

struct Course<'c> {
    container: &'c Container,
    leg: Leg<'c>,
    held: Option<i64>,
    out: i64,
    taken: Vec<TakenOut>,
    is_gone: bool,
    lapsed_before: Option<Instant>,
    odd: Vec<Odd>,
}

impl<'c> Course<'c> {
    fn of(container: &'c Container, now: Instant) -> Self {
        let expressed = container.expressed.instant();
        let place = container.kept_in;
        let leg = Leg {
            state: place.map_or(State::Fresh, |place| put(State::Fresh, place)),
            place,
            since: expressed,
            expressed: &container.expressed,
            thawed: None,
            was_cold: place.is_some_and(|place| place != KeptIn::Room),
            warmed: None,
            feed: None,
            room: container.room,
            before: None,
        };
        let mut odd = Vec::new();
        odd.extend((expressed > now).then_some(Odd::InFuture));
        Self {
            container,
            leg,
            held: container.amount.map(tenths),
            out: 0,
            taken: Vec::new(),
            is_gone: false,
            lapsed_before: None,
            odd,
        }
    }

    fn is_odd(&mut self, what: Odd) {
        if !self.odd.contains(&what) {
            self.odd.push(what);
        }
    }

    fn good_until(&self, rules: &InForce) -> GoodUntil {
        if self.odd.contains(&Odd::FrozenAgain) {
            return GoodUntil::Untold(Untold::FrozenAgain);
        }
        match rules {
            InForce::Rules(rules) => good_until(&self.leg, rules),
            InForce::StepsBack(_) => GoodUntil::Untold(Untold::UnitsRules),
        }
    }

    fn happens(&mut self, event: &MilkEvent, rules: &InForce) {
        let at = event.at.instant();
        if at < self.container.expressed.instant() {
            self.is_odd(Odd::BeforeExpressed);
        }
        if self.is_gone {
            self.is_odd(Odd::AfterGone);
        }
        let until = self.good_until(rules);
        if until.is_over(at) && self.lapsed_before.is_none() && !matches!(event.what, Happened::Taken(_)) {
            self.lapsed_before = until.last();
        }
        match event.what {
            Happened::Moved(place) => {
                if place.freezes() && self.leg.state >= State::Thawing {
                    self.is_odd(Odd::FrozenAgain);
                }
                let was = self.leg.state;
                self.leg.state = put(was, place);
                // Frozen milk has a time of its own; all other keeps what it had.
                self.leg.before = until.last().filter(|_| was != State::Frozen);
                self.leg.was_cold |= place != KeptIn::Room;
                self.leg.place = Some(place);
                self.leg.since = at;
                self.leg.room = None;
            }
            Happened::Thawing | Happened::Thawed if self.leg.state == State::Fresh => {
                self.is_odd(Odd::ThawedBeforeFrozen);
            }
            Happened::Thawing => self.thaws(at, State::Thawing),
            Happened::Thawed => {
                self.thaws(at, State::Thawed);
                self.leg.thawed = self.leg.thawed.or(Some(at));
            }
            Happened::Warmed => self.leg.warmed = self.leg.warmed.or(Some(at)),
            Happened::Begun => self.leg.feed = self.leg.feed.or(Some((at, None))),
            Happened::FeedEnded => {
                let began = self.leg.feed.map_or(at, |(began, _)| began);
                self.leg.feed = Some((began, Some(at)));
            }
            Happened::Taken(how) => self.takes(how, event.taken.map(tenths)),
        }
    }

    /// It thaws in the fridge, where nothing else was said.
    fn thaws(&mut self, at: Instant, state: State) {
        self.leg.state = self.leg.state.max(state);
        if self.leg.place.is_some_and(KeptIn::freezes) {
            (self.leg.place, self.leg.since) = (Some(KeptIn::Fridge), at);
        }
    }

    fn takes(&mut self, how: Taken, amount: Option<i64>) {
        let left = self.held.map(|held| (held - self.out).max(0));
        let amount = amount.or(left);
        let all = match (amount, left) {
            (None, _) => true,
            (Some(amount), Some(left)) => amount >= left,
            (Some(_), None) => false,
        };
        self.out += amount.unwrap_or(0);
        self.is_gone |= all;
        self.taken.push(TakenOut { how, amount: amount.map(volume) });
    }

    fn ends(mut self, rules: &InForce) -> Kept {
        let overdrawn = self.held.map_or(0, |held| (self.out - held).max(0));
        if overdrawn > 0 {
            self.is_odd(Odd::TakenTwice);
        }
        let left = match (self.is_gone, self.held) {
            (true, _) => Some(0),
            (false, held) => held.map(|held| (held - self.out).max(0)),
        };
        Kept {
            id: self.container.id.clone(),
            label: self.container.label.clone(),
            expressed: self.container.expressed.instant(),
            held: self.held.map(volume),
            left: left.map(volume),
            overdrawn: volume(overdrawn),
            is_gone: self.is_gone,
            place: self.leg.place,
            state: self.leg.state,
            since: self.leg.since,
            is_begun: self.leg.feed.is_some(),
            good_until: self.good_until(rules),
            lapsed_before: self.lapsed_before,
            taken: self.taken,
            odd: self.odd,
        }
    }
}
