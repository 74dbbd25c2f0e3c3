//! Since when production goes up or down, where it was level before.

use super::series::{inflation_of, Series};
use crate::statistics::{bend, Point};
use crate::time::LocalDay;

/// The day on which production began to go up or down.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Began {
    /// Likeliest.
    pub on: LocalDay,
    /// The earliest day it may have been.
    pub earliest: LocalDay,
    /// The latest.
    pub latest: LocalDay,
}

/// A bend is told in place of a step where it leaves less than this part of the squares.
const LEAVES_LESS: f64 = 0.8;

/// Whether days that were level and then go straight are nearer to what came than two levels.
pub(super) fn bent_rather(all: &Series, step: LocalDay) -> bool {
    let points = logs(all);
    let at = step.days_since(all.rests_on.from) as f64;
    let (before, after): (Vec<Point>, Vec<Point>) = points.iter().partition(|p| p.at < at);
    if before.is_empty() || after.is_empty() {
        return false;
    }
    let squares = |part: &[Point]| {
        let middle = part.iter().map(|p| p.value).sum::<f64>() / part.len().max(1) as f64;
        part.iter().map(|p| (p.value - middle).powi(2)).sum::<f64>()
    };
    let stepped = squares(&before) + squares(&after);
    bend(&points, DATES, 1.0).is_some_and(|bent| bent.squares < LEAVES_LESS * stepped)
}

/// The days as logarithms: what goes up or down does so as a share.
fn logs(along: &Series) -> Vec<Point> {
    let mut points = along.points();
    points.retain(|p| p.value > 0.0);
    points.iter_mut().for_each(|p| p.value = p.value.ln());
    points
}

/// A range of dates longer than this part of the days is none to be told.
const WIDEST: f64 = 0.6;

/// The range of dates that is worked out; told of 28 days it holds the day about nine times in ten.
const DATES: f64 = 0.95;

/// Since when the days go straight, as a share of what they make. None where they may well have
/// done so from the first on.
pub(super) fn began(along: &Series) -> Option<Began> {
    let points = logs(along);
    let plain = bend(&points, DATES, 1.0)?;
    let at = |p: &Point| p.value - plain.level - plain.slope * (p.at - plain.at).max(0.0);
    let left: Vec<Point> = points.iter().map(|p| Point { at: p.at, value: at(p) }).collect();
    let found = bend(&points, DATES, inflation_of(&left))?;
    let (first, last) = (points.first()?.at, points.last()?.at);
    let is_told = found.earliest > first && found.latest - found.earliest <= WIDEST * (last - first);
    let day = |at: f64| LocalDay::from_number(along.rests_on.from.number() + at.round() as i32);
    let began = Began { on: day(found.at)?, earliest: day(found.earliest)?, latest: day(found.latest)? };
    is_told.then_some(began)
}
