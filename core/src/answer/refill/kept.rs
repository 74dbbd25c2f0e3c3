//! The wells of a record, from its last weeks alone: the cost is the same after ten years.

use super::{Refill, Well, WellOf};
use crate::answer::supply::{Calendar, Interval, Side, Spread};
use crate::journal::Journal;
use crate::quantity::{Quantity, Volume};
use crate::record::Removal;
use crate::time::{Instant, Span, Zone};
use crate::trouble::Trouble;

/// Days that tell how milk comes back now: measured with families of known truth.
pub const LOOKS_BACK: Span = Span::hours(42 * 24);

/// The wells as they are now. Only the last weeks are read.
pub fn curves(journal: &Journal, now: Instant, calendar: Calendar) -> Result<Refill, Trouble> {
    let removals = journal.removals(now.minus(LOOKS_BACK), now.plus(Span::milliseconds(1)))?;
    Ok(of_removals(&removals, now, calendar))
}

/// The wells that removals tell of.
pub fn of_removals(removals: &[Removal], now: Instant, calendar: Calendar) -> Refill {
    let spread = Spread::new(removals, calendar);
    let zone_at = |at: Instant| {
        let before = removals.partition_point(|r| r.at <= at);
        before.checked_sub(1).and_then(|i| removals.get(i)).map_or(calendar.zone, |r| r.zone)
    };
    let sides: Vec<(Side, Vec<(Interval, Zone)>)> = Side::BOTH
        .into_iter()
        .map(|side| {
            let judged = spread.judged_together(side);
            (side, judged.into_iter().map(|i| (zone_at(i.until), i)).map(|(zone, i)| (i, zone)).collect())
        })
        .filter(|(_, intervals): &(Side, Vec<_>)| !intervals.is_empty())
        .collect();
    let known = || sides.iter().flat_map(|(_, i)| i).filter(|(i, _)| i.milk.is_some());
    let alone = known().filter(|(i, _)| i.of_this_side).count();
    if alone * 2 < known().count() {
        let wells: Vec<Well> =
            together(&sides).and_then(|both| Well::fit(WellOf::Together, &both, now)).into_iter().collect();
        return Refill { wells, alike: 0.0 };
    }
    let mut refill = Refill::default();
    let mut off: Vec<Vec<(Instant, f64)>> = Vec::new();
    for (side, intervals) in &sides {
        let of_this: Vec<(Interval, Zone)> = intervals.iter().filter(|(i, _)| i.of_this_side).cloned().collect();
        let Some(well) = Well::fit(WellOf::Side(*side), &of_this, now) else { continue };
        let ends = of_this.iter().filter(|(i, _)| Well::counts(i)).map(|(i, _)| i.until).zip(&well.fit.residuals);
        off.push(ends.filter_map(|(at, off)| Some((at, (*off)?))).collect());
        refill.wells.push(well);
    }
    if let [left, right] = off.as_slice() {
        refill.alike = alike(left, right);
    }
    refill
}

/// What both sides gave together, where both ended an interval at once.
fn together(sides: &[(Side, Vec<(Interval, Zone)>)]) -> Option<Vec<(Interval, Zone)>> {
    let [(_, left), (_, right)] = sides else { return sides.first().map(|(_, i)| i.clone()) };
    let both = left.iter().filter_map(|(l, zone)| {
        let at = right.partition_point(|(r, _)| r.until < l.until);
        let (r, _) = right.get(at).filter(|(r, _)| r.until == l.until)?;
        let milk = l.milk.zip(r.milk).map(|(l, r)| Volume::from_canonical(l.canonical() + r.canonical()));
        let mut both = l.clone();
        both.milk = milk;
        both.from = l.from.max(r.from);
        Some((both, *zone))
    });
    Some(both.collect())
}

/// How alike two sides are off in the same sessions: their correlation, none below nothing.
fn alike(left: &[(Instant, f64)], right: &[(Instant, f64)]) -> f64 {
    let (mut both, mut squares) = (0.0, [0.0; 2]);
    for (at, l) in left {
        let Some((_, r)) = right.get(right.partition_point(|(other, _)| other < at)).filter(|(other, _)| other == at)
        else {
            continue;
        };
        both += l * r;
        squares = [squares.first().unwrap_or(&0.0) + l * l, squares.last().unwrap_or(&0.0) + r * r];
    }
    let scale = squares.iter().product::<f64>().sqrt();
    if scale > 0.0 {
        (both / scale).clamp(0.0, 1.0)
    } else {
        0.0
    }
}
