//! How long it took until most of the milk had come.

use crate::quantity::{Production, Quantity, Share, Volume};
use crate::time::Span;

/// Most of it: four fifths, as studies of expression have it (Prime et al., Breastfeed Med
/// 2011;6:183-190).
pub const MOST: f64 = 0.8;

/// What had come by then, since the start.
pub type SoFar = (Span, Volume);

/// The first time at which a share of all that came had come, straight between two readings. None
/// where nothing came, a reading falls below the one before, or times do not rise.
pub fn time_to(share: Share, course: &[SoFar]) -> Option<Span> {
    let all = course.last()?.1.canonical();
    let wanted = share.fraction() * all;
    let rises = course.windows(2).all(|pair| match pair {
        [(from, less), (until, more)] => until > from && more.canonical() >= less.canonical(),
        _ => true,
    });
    if !(rises && all > 0.0 && wanted > 0.0 && wanted <= all) {
        return None;
    }
    let at = course.iter().position(|(_, volume)| volume.canonical() >= wanted)?;
    let (until, more) = course.get(at)?;
    let start = (Span::milliseconds(0), Volume::from_canonical(0.0));
    let (from, less) = at.checked_sub(1).and_then(|before| course.get(before)).unwrap_or(&start);
    let part = (wanted - less.canonical()) / (more.canonical() - less.canonical());
    let milliseconds = (until.in_milliseconds() - from.in_milliseconds()) as f64 * part;
    Some(Span::milliseconds(from.in_milliseconds() + milliseconds.round() as i64))
}

/// Readings on either side of the moment lie no further apart than this: a straight line between
/// readings further apart would make up when it was.
const CLOSE: Span = Span::minutes(4);

/// When most of it had come, by what containers held while the session ran and what there was at
/// its end. None where no two readings are close enough about that moment.
pub fn time_to_most(readings: &[SoFar], all: SoFar) -> Option<Span> {
    let mut course: Vec<SoFar> = readings.iter().copied().filter(|(at, _)| *at < all.0).collect();
    course.push(all);
    let found = time_to(Share::of(MOST), &course)?;
    let until = course.iter().map(|(at, _)| *at).find(|at| *at >= found)?;
    let from = course.iter().map(|(at, _)| *at).rev().find(|at| *at < found).unwrap_or(Span::milliseconds(0));
    let apart = Span::milliseconds(until.in_milliseconds() - from.in_milliseconds());
    (apart <= CLOSE).then_some(found)
}

/// How fast milk flowed between two readings; none where no time passed.
pub fn flow(from: SoFar, until: SoFar) -> Option<Production> {
    let hours = until.0.in_milliseconds() as f64 - from.0.in_milliseconds() as f64;
    let came = until.1.canonical() - from.1.canonical();
    (hours > 0.0 && came >= 0.0).then(|| Production::from_canonical(came / (hours / 3_600_000.0) * 24.0))
}
