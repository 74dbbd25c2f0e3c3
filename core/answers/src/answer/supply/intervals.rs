//! From removals to intervals: what a side gave at the end of an interval was
//! made over that interval.

pub use super::interval::{Interval, IntervalStatus, Side, LONGEST_INTERVAL, LONGEST_WHOLE};
use super::ordinary::{Judgement, Ordinary};
use crate::quantity::{Quantity, Volume};
use crate::record::{Milk, Removal};
use crate::time::{Instant, Span};

/// Removals within this of each other are one emptying: repeated short
/// sessions, or a feed and the expressing after it.
pub const ONE_EMPTYING: Span = Span::minutes(60);
/// Two removals of one side that end so near to each other are one session written down
/// twice, where they gave alike: after an emptying little is left.
pub const ONE_SESSION: Span = Span::minutes(15);
/// Nearer than this they are one, whatever they gave: no session is so short.
pub const SURELY_ONE: Span = Span::minutes(5);
/// Amounts are alike within this part of the larger, or so many mL.
const ALIKE: (f64, f64) = (0.1, 5.0);
/// Less than this may well come twice.
const LITTLE: f64 = 10.0;

/// What a removal took from one side: none where the side took no part.
fn from_side(removal: &Removal, side: Side) -> Option<(Option<Volume>, bool)> {
    let takes_part = match side {
        Side::Left => removal.sides.left(),
        Side::Right => removal.sides.right(),
    };
    takes_part.then(|| match (removal.milk, side) {
        (Milk::Unknown, _) => (None, false),
        (Milk::Sides { left, .. }, Side::Left) => (left, true),
        (Milk::Sides { right, .. }, Side::Right) => (right, true),
        (Milk::Together(both), _) => (Some(Volume::from_canonical(both.canonical() / 2.0)), false),
    })
}

/// Two removals that can't both be as they are written down.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Twice {
    /// They ended about together and gave alike: likely one session, written down twice.
    Alike,
    /// One began before the other had ended, on the same side.
    Overlaps,
}

/// No session is longer: further back nothing can overlap.
const LONGEST_SESSION: Span = Span::hours(4);
/// Clocks are read in passing: sessions that share less than this overlap by a slip.
const SLIP: Span = Span::minutes(2);

/// Whether a removal and one before it are likely one. What was answered goes before.
pub fn twice(before: &Removal, removal: &Removal) -> Option<Twice> {
    let apart = removal.at.since(before.at);
    if removal.answered.amount_is_right || apart > LONGEST_SESSION {
        return None;
    }
    let sum = |milk: Milk| match milk {
        Milk::Unknown => None,
        Milk::Sides { left, right } => Some([left, right].into_iter().flatten().map(Quantity::canonical).sum::<f64>()),
        Milk::Together(both) => Some(both.canonical()),
    };
    let (one, other) = sum(before.milk).zip(sum(removal.milk))?;
    if one.min(other) < LITTLE {
        return None;
    }
    let is_alike = (one - other).abs() <= (ALIKE.0 * one.max(other)).max(ALIKE.1);
    let ends_with_it = apart <= ONE_SESSION && removal.sides == before.sides;
    if ends_with_it && (is_alike || apart <= SURELY_ONE) {
        return Some(Twice::Alike);
    }
    let (a, b) = (before.sides, removal.sides);
    let on_one_side = (a.left() && b.left()) || (a.right() && b.right());
    // Each is longer than a slip of the clock, and so is what they share.
    let began = [before.began, removal.began].into_iter().flatten().max();
    let shared = began.filter(|_| removal.began.is_some()).map(|began| before.at.since(began));
    (on_one_side && shared.is_some_and(|shared| shared > SLIP)).then_some(Twice::Overlaps)
}

/// The one before that a removal is likely one with. `removals` are by time.
fn one_before(removals: &[Removal], at: usize) -> Option<(&Removal, Twice)> {
    let removal = removals.get(at)?;
    let near = removals.get(..at)?.iter().rev().take_while(|before| removal.at.since(before.at) <= LONGEST_SESSION);
    near.into_iter().find_map(|before| twice(before, removal).map(|how| (before, how)))
}

/// Removals that are likely one with another before: that one, the second, and why. `removals`
/// are by time.
pub fn doubles(removals: &[Removal]) -> impl Iterator<Item = (&Removal, &Removal, Twice)> {
    let before = |(at, removal)| one_before(removals, at).map(|(before, how)| (before, removal, how));
    removals.iter().enumerate().filter_map(before)
}

/// The intervals of a side, in order of time, none judged yet. What was likely written down
/// twice counts once. `removals` are
/// by time.
pub fn intervals(removals: &[Removal], side: Side) -> Vec<Interval> {
    let mut found: Vec<Interval> = Vec::new();
    let mut last: Option<Instant> = None;
    for (at, removal) in removals.iter().enumerate() {
        if one_before(removals, at).is_some() {
            continue;
        }
        let Some((milk, of_this_side)) = from_side(removal, side) else { continue };
        let Some(from) = last else {
            last = Some(removal.at);
            continue;
        };
        last = Some(removal.at);
        if found.is_empty() && removal.at.since(from) <= ONE_EMPTYING {
            // It still belongs to the first emptying there is.
            continue;
        }
        if let Some(open) = found.last_mut().filter(|open| removal.at.since(open.until) <= ONE_EMPTYING) {
            open.until = removal.at;
            open.milk =
                open.milk.zip(milk).map(|(before, more)| Volume::from_canonical(before.canonical() + more.canonical()));
            open.of_this_side &= of_this_side;
            open.session.clone_from(&removal.session);
            // A question names the last of them; an answer to any holds for all.
            open.answered.gap_is_whole |= removal.answered.gap_is_whole;
            open.answered.gap_hides_one |= removal.answered.gap_hides_one;
            open.answered.amount_is_right |= removal.answered.amount_is_right;
            continue;
        }
        found.push(Interval {
            session: removal.session.clone(),
            from,
            until: removal.at,
            milk,
            of_this_side,
            status: IntervalStatus::Counts,
            answered: removal.answered,
        });
    }
    for interval in &mut found {
        interval.status = match interval.milk {
            None => IntervalStatus::Unknown,
            Some(_) if interval.answered.gap_hides_one => IntervalStatus::SessionMissing,
            Some(_) if interval.lasted() > interval.longest() => IntervalStatus::TooLong,
            Some(_) => IntervalStatus::Counts,
        };
    }
    found
}

/// Judges an interval by what ordinarily comes; what the person answered goes
/// before.
pub(super) fn judge(interval: &mut Interval, ordinary: &Ordinary) {
    if interval.status != IntervalStatus::Counts {
        return;
    }
    interval.status = match ordinary.judge(interval) {
        Judgement::SessionMissing if !interval.answered.gap_is_whole => IntervalStatus::SessionMissing,
        Judgement::Unclear if !interval.answered.gap_is_whole => IntervalStatus::Unclear,
        Judgement::FarOff if !interval.answered.amount_is_right => IntervalStatus::AmountInDoubt,
        _ => IntervalStatus::Counts,
    };
}
