//! Which containers to use first for an amount.

use super::kept::Kept;
use crate::quantity::{Quantity, Volume};
use crate::time::Instant;

/// What to use for an amount.
#[derive(Debug, Clone, PartialEq)]
pub struct Chosen {
    /// The containers, the soonest to lapse first.
    pub ids: Vec<String>,
    /// What is in them together.
    pub together: Volume,
    /// More than was wished; none where there is less than was wished.
    pub left_over: Option<Volume>,
}

/// No more than this is wished for at once, in tenths of a mL.
const MOST_WISHED: usize = 20_000;

/// What to use first for an amount: the container that lapses first is always in it; of all sets
/// that have it and hold enough, one that leaves the least over, and of such the one that takes
/// what lapses soonest. Exact, by sums of tenths of a mL (Bellman, Dynamic Programming, 1957). Where
/// all together is less than was wished, all. None where nothing can be used.
///
/// Containers count that are not past their time and of which it is known what is left.
pub fn use_first(kept: &[&Kept], wished: Volume, now: Instant) -> Option<Chosen> {
    let mut usable: Vec<(&Kept, usize)> = kept
        .iter()
        .filter(|one| one.is_usable(now))
        .filter_map(|one| Some((*one, tenths(one.left?)?)))
        .filter(|(_, left)| *left > 0)
        .collect();
    // What has no end that is told goes last.
    let end = |one: &Kept| one.good_until.at().unwrap_or(Instant::from_unix_milliseconds(i64::MAX));
    usable.sort_by(|(a, _), (b, _)| (end(a), a.expressed, &a.id).cmp(&(end(b), b.expressed, &b.id)));
    let wished = tenths(wished)?.min(MOST_WISHED);
    let all: usize = usable.iter().map(|(_, left)| left).sum();
    if usable.is_empty() || wished == 0 {
        return None;
    }
    let picked = match all <= wished {
        true => (0..usable.len()).collect(),
        false => least_over(&usable.iter().map(|(_, left)| *left).collect::<Vec<_>>(), wished),
    };
    let chosen: Vec<&(&Kept, usize)> = picked.iter().filter_map(|place| usable.get(*place)).collect();
    let together: usize = chosen.iter().map(|(_, left)| left).sum();
    Some(Chosen {
        ids: chosen.iter().map(|(one, _)| one.id.clone()).collect(),
        together: volume(together),
        left_over: together.checked_sub(wished).map(volume),
    })
}

/// The places of a set with the first that holds the wished with the least over, and the earliest of
/// such in order of places. There is one: all together hold more.
fn least_over(held: &[usize], wished: usize) -> Vec<usize> {
    let Some((first, rest)) = held.split_first() else { return Vec::new() };
    let Some(open) = wished.checked_sub(*first).filter(|open| *open > 0) else { return vec![0] };
    // A set with the least over has no container that it could do without: it never holds more than the
    // wished and the largest one.
    let most = open + rest.iter().max().copied().unwrap_or(0);
    // Which sums the containers from each place on can make.
    let mut sums: Vec<Vec<bool>> = vec![vec![false; most + 1]; rest.len() + 1];
    if let Some(none) = sums.last_mut().and_then(|last| last.first_mut()) {
        *none = true;
    }
    for place in (0..rest.len()).rev() {
        let (head, tail) = sums.split_at_mut(place + 1);
        let (Some(here), Some(next), Some(own)) = (head.last_mut(), tail.first(), rest.get(place)) else { continue };
        for (sum, makes) in here.iter_mut().enumerate() {
            let with = sum.checked_sub(*own).and_then(|before| next.get(before)).copied().unwrap_or(false);
            *makes = with || next.get(sum).copied().unwrap_or(false);
        }
    }
    let makes = |place: usize, sum: usize| sums.get(place).and_then(|all| all.get(sum)).copied().unwrap_or(false);
    let Some(target) = (open..=most).find(|sum| makes(0, *sum)) else { return (0..held.len()).collect() };
    let mut picked = vec![0];
    let mut open = target;
    for (place, own) in rest.iter().enumerate() {
        if let Some(before) = open.checked_sub(*own).filter(|before| makes(place + 1, *before)) {
            picked.push(place + 1);
            open = before;
        }
        if open == 0 {
            break;
        }
    }
    picked
}

fn tenths(volume: Volume) -> Option<usize> {
    let tenths = (volume.canonical() * 10.0).round();
    (tenths.is_finite() && tenths >= 0.0).then_some(tenths as usize)
}

fn volume(tenths: usize) -> Volume {
    Volume::from_canonical(tenths as f64 / 10.0)
}
