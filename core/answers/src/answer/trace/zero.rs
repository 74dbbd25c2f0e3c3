//! A gauge whose zero moves: every cycle's rest moves, and its peak with it.
//!
//! Peaks are reckoned from the baseline of their cycle. The zero at the trace's beginning is
//! taken for right, since nothing in the trace says better.

use super::collapse::Fall;
use super::cycle::Cycle;
use super::phases;
use super::rounding::rounded;
use super::squares::Squares;
use super::AsRead;
use crate::answer::{Estimate, CONFIDENCE};
use crate::statistics::{median, robust_slope, Point, RobustSlope};

/// It is told from so many cycles of a run on.
const LEAST_CYCLES: usize = 8;
/// It moved by this share of the amplitude at least, and by so much of the noise: less is of no matter.
const OF_AMPLITUDE: f64 = 0.03;
const OF_NOISE: f64 = 1.5;
/// The course of it is laid through medians of so many cycles,
const GROUP: usize = 6;
/// from knot to knot so many seconds apart, and through no more knots than that.
const KNOT_SECONDS: f64 = 12.0;
const MOST_KNOTS: usize = 60;
/// How much a bend of it weighs against a median of rests.
const STIFFNESS: f64 = 1.0;
/// Peaks stay where they move by less than this share of it all along: then the pump lets go less.
const STAY: f64 = 0.5;

/// What a rest that moves says.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Moves {
    /// The gauge's zero moves, and peaks with it.
    Zero(Zero),
    /// Peaks stay, and the rest rises by so much: the pump lets go less and less.
    Rest(Estimate<AsRead>),
}

/// The zero's course, in the trace's own unit.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Zero {
    /// By how much it moved from the first cycle to the last.
    pub(super) moved: Estimate<AsRead>,
    /// Where it stood at each cycle.
    pub(super) course: Vec<f64>,
}

fn time(cycle: &Cycle) -> f64 {
    (cycle.from + cycle.to) / 2.0
}

fn slope(cycles: &[Cycle], value: fn(&Cycle) -> f64) -> Option<RobustSlope> {
    if cycles.len() < LEAST_CYCLES {
        return None;
    }
    let points: Vec<Point> = cycles.iter().map(|cycle| Point { at: time(cycle), value: value(cycle) }).collect();
    robust_slope(&points, CONFIDENCE, 1.0)
}

/// Runs of cycles without those of a pull that falls, whose peaks say nothing of the zero.
fn steady(segments: &[(usize, usize)], falls: &[Fall]) -> Vec<(usize, usize)> {
    let mut parts: Vec<(usize, usize)> = segments.to_vec();
    for fall in falls {
        let (from, to) = (fall.last + 1, fall.first + 1);
        parts = parts
            .into_iter()
            .flat_map(|(begins, ends)| [(begins, ends.min(from.max(begins))), (begins.max(to.min(ends)), ends)])
            .filter(|(begins, ends)| begins < ends)
            .collect();
        parts.dedup();
    }
    parts
}

/// Where the zero moved, over segments of steady pull.
pub(super) fn moves(
    cycles: &[Cycle],
    (segments, falls): (&[(usize, usize)], &[Fall]),
    (noise, amplitude): (f64, f64),
    peaks_tell: bool,
) -> Option<Moves> {
    let of = |bounds: &[(usize, usize)]| -> Vec<&[Cycle]> {
        bounds.iter().filter_map(|(from, to)| cycles.get(*from..*to)).collect()
    };
    let parts = of(&steady(segments, falls));
    let (mut moved, mut spread, mut seen, mut go_along) = (0.0, 0.0, 0.0, false);
    for part in &parts {
        let (Some(found), Some(lasts)) = (slope(part, |cycle| cycle.rest), lasts(part)) else { continue };
        moved += found.slope * lasts;
        spread += ((found.high - found.low) / 2.0 * lasts).powi(2);
        let peaks = slope(part, |cycle| cycle.peak).map_or(0.0, |found| found.slope);
        go_along |= peaks.abs() >= STAY * found.slope.abs();
        seen += lasts;
    }
    let whole = time(cycles.last()?) - time(cycles.first()?);
    if seen <= 0.0 {
        return None;
    }
    // What it did in between is taken to be like what it did while it could be seen.
    let (moved, spread) = (moved * whole / seen, spread.sqrt() * whole / seen);
    let least = (OF_AMPLITUDE * amplitude).max(OF_NOISE * noise).max(spread);
    if moved.abs() < least {
        return None;
    }
    let by = |moved: f64| {
        let [value, low, high] = [moved, moved - spread, moved + spread].map(|value| AsRead::new(rounded(value)));
        Estimate { value, low, high }
    };
    if peaks_tell && !go_along {
        return (moved > 0.0).then(|| Moves::Rest(by(moved)));
    }
    let course = course(cycles, segments, falls)?;
    let moved = *course.last()?;
    (moved.abs() >= least).then(|| Moves::Zero(Zero { moved: by(moved), course }))
}

fn lasts(part: &[Cycle]) -> Option<f64> {
    Some(time(part.last()?) - time(part.first()?))
}

/// Which segments rest alike: those of one pattern, and a pull before and after it was lost.
fn alike(cycles: &[Cycle], segments: &[(usize, usize)], falls: &[Fall]) -> Vec<usize> {
    let mut found: Vec<usize> = Vec::new();
    for (number, (from, _)) in segments.iter().enumerate() {
        let fell = falls.iter().any(|fall| (fall.last..=fall.first + 1).contains(from));
        let same = |other: &usize| {
            segments
                .get(*other)
                .zip(segments.get(number))
                .is_some_and(|(one, other)| phases::are_one(cycles, *one, *other))
        };
        let before = number.checked_sub(1).filter(|_| fell).or_else(|| (0..number).find(same));
        found.push(before.and_then(|before| found.get(before).copied()).unwrap_or(number));
    }
    found
}

/// Where the zero stands at each cycle: the smoothest course that leaves every pattern its own rest,
/// by least squares with a price on every bend (Whittaker, Proc Edinburgh Math Soc 1922;41:63-75). It
/// begins at nothing.
fn course(cycles: &[Cycle], segments: &[(usize, usize)], falls: &[Fall]) -> Option<Vec<f64>> {
    let ends = cycles.last().map(time)?;
    let knots = ((ends / KNOT_SECONDS).ceil() as usize).clamp(2, MOST_KNOTS);
    let apart = ends / knots as f64;
    // Knots after the first, and the rests.
    let size = knots + segments.len();
    let hat = |at: f64| -> [(Option<usize>, f64); 2] {
        let place = (at / apart).clamp(0.0, knots as f64);
        let low = (place.floor() as usize).min(knots - 1);
        let share = place - low as f64;
        [(low.checked_sub(1), 1.0 - share), (Some(low), share)]
    };
    let mut squares = Squares::of(size);
    for ((from, to), rests) in segments.iter().zip(alike(cycles, segments, falls)) {
        for (at, rest) in medians(cycles.get(*from..*to)?) {
            let [low, high] = hat(at);
            squares.take(&[low, high, (Some(knots + rests), 1.0)], rest, 1.0);
        }
    }
    for knot in 0..knots.saturating_sub(1) {
        squares.take(&[(knot.checked_sub(1), 1.0), (Some(knot), -2.0), (Some(knot + 1), 1.0)], 0.0, STIFFNESS);
    }
    let found = squares.solved()?;
    let of =
        |(place, share): (Option<usize>, f64)| place.and_then(|at| found.get(at)).map_or(0.0, |value| value * share);
    Some(cycles.iter().map(|cycle| hat(time(cycle)).map(of).iter().sum()).collect())
}

/// Medians of a few cycles each.
fn medians(part: &[Cycle]) -> Vec<(f64, f64)> {
    let groups = (part.len() / GROUP).max(1);
    (0..groups)
        .filter_map(|number| {
            let [from, to] = [number, number + 1].map(|at| at * part.len() / groups);
            let there = part.get(from..to)?;
            let of = |value: fn(&Cycle) -> f64| median(&there.iter().map(value).collect::<Vec<_>>());
            Some((of(time)?, of(|cycle| cycle.rest)?))
        })
        .collect()
}
