//! The wells that the removals of some weeks tell of.

use super::well::FillInterval;
use super::{Refill, Well, WellOf};
use crate::answer::supply::{Calendar, Side, Spread};
use crate::quantity::{Quantity, Volume};
use crate::record::Removal;
use crate::time::{Instant, Span};

/// Days that tell how milk comes back now: measured with families of known truth.
pub const LOOKS_BACK: Span = Span::hours(42 * 24);

/// The wells that removals tell of.
pub fn of_removals(removals: &[Removal], now: Instant, calendar: Calendar) -> Refill {
    let spread = Spread::new(removals, calendar);
    let zone_at = |at: Instant| {
        let before = removals.partition_point(|r| r.at <= at);
        before.checked_sub(1).and_then(|i| removals.get(i)).map_or(calendar.zone, |r| r.zone)
    };
    let sides: Vec<(Side, Vec<FillInterval>)> = Side::BOTH
        .into_iter()
        .map(|side| {
            let (judged, ordinary) = spread.judged_by(side);
            let told = judged.into_iter().map(|interval| FillInterval {
                zone: zone_at(interval.until),
                could_hide: ordinary.could_hide(&interval),
                interval,
            });
            (side, told.collect::<Vec<_>>())
        })
        .filter(|(_, told)| !told.is_empty())
        .collect();
    let known = || sides.iter().flat_map(|(_, told)| told).filter(|t| t.interval.milk.is_some());
    let alone = known().filter(|t| t.interval.of_this_side).count();
    if alone * 2 < known().count() {
        let wells: Vec<Well> =
            together(&sides).and_then(|both| Well::fit(WellOf::Together, &both, now)).into_iter().collect();
        return Refill { wells, alike: 0.0 };
    }
    let mut refill = Refill::default();
    let mut off: Vec<Vec<(Instant, f64)>> = Vec::new();
    for (side, told) in &sides {
        let of_this: Vec<FillInterval> = told.iter().filter(|t| t.interval.of_this_side).cloned().collect();
        let Some(well) = Well::fit(WellOf::Side(*side), &of_this, now) else { continue };
        let ends = of_this.iter().filter(|t| t.counts()).map(|t| t.interval.until).zip(&well.fit.residuals);
        off.push(ends.filter_map(|(at, off)| Some((at, (*off)?))).collect());
        refill.wells.push(well);
    }
    if let [left, right] = off.as_slice() {
        refill.alike = alike(left, right);
    }
    refill
}

/// What both sides gave together, where both ended an interval at once.
fn together(sides: &[(Side, Vec<FillInterval>)]) -> Option<Vec<FillInterval>> {
    let [(_, left), (_, right)] = sides else { return sides.first().map(|(_, told)| told.clone()) };
    let both = left.iter().filter_map(|told| {
        let mut told = told.clone();
        let l = &mut told.interval;
        let at = right.partition_point(|t| t.interval.until < l.until);
        let r = right.get(at).map(|t| &t.interval).filter(|r| r.until == l.until)?;
        l.milk = l.milk.zip(r.milk).map(|(l, r)| Volume::from_canonical(l.canonical() + r.canonical()));
        l.from = l.from.max(r.from);
        Some(told)
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
