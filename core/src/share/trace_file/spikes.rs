//! Lone rows that stand far out of the rest: a plug that was touched, a digit that was lost.
//!
//! A pump's own tips stand out too, but each cycle has one: what stands out far more than is
//! usual around it was not the pump. Every bound is a share of what the rows themselves do.

use std::collections::BTreeMap;
use std::ops::Range;

use crate::statistics::{median, quantile};

/// A bad row stands alone, or has one beside it.
const WIDEST: usize = 2;
/// Where rows lie further apart than this, one of them may be a cycle's whole rest: none is lone.
const COARSE_SECONDS: f64 = 0.06;
/// What is usual is looked at in pieces as long as a cycle of the slowest pattern, and in so many of
/// them to either side.
const PIECE_SECONDS: f64 = 2.5;
const ASIDE: usize = 4;
/// Standing out so many times as far as is usual around, and as is usual wherever the pressure moves,
const OF_USUAL: f64 = 2.5;
const OF_ALL: f64 = 1.25;
/// by this share of what the pressure moves at least.
const OF_MOVES: f64 = 0.08;
/// A piece moves where it does so by this share.
const MOVING: f64 = 0.25;
/// More of the rows than this are not lone ones: the trace is as it is.
const MOST: f64 = 0.01;
/// More values than this say nothing new about a quantile.
const MOST_LOOKED_AT: usize = 20_000;

/// The runs of rows to leave out, in order; None where none could be told.
pub(super) fn found(times: &[f64], values: &[f32], step: f64, longest_gap: f64) -> Option<Vec<Range<usize>>> {
    if step > COARSE_SECONDS {
        return None;
    }
    let every = (values.len() / MOST_LOOKED_AT).max(1);
    let some: Vec<f64> = values.iter().step_by(every).map(|value| f64::from(*value)).collect();
    let (low, high) = quantile(&some, 0.02).zip(quantile(&some, 0.98))?;
    let piece = ((PIECE_SECONDS / step).round() as usize).max(1);
    let mut all: Vec<(f64, Range<usize>)> = Vec::new();
    for up in [true, false] {
        let out = |at: usize, width: usize| stands_out(times, values, at, width, up, longest_gap);
        // Of any width: where samples lie far apart, a cycle's rest is now one of them and now two.
        let furthest: Vec<f64> = (0..values.len().div_ceil(piece))
            .map(|number| {
                let there = number * piece..(number + 1) * piece;
                there.flat_map(|at| (1..=WIDEST).map(move |width| out(at, width))).fold(0.0, f64::max)
            })
            .collect();
        let moving: Vec<f64> = values
            .chunks(piece)
            .zip(&furthest)
            .filter(|(piece, _)| spans(piece) >= MOVING * (high - low))
            .map(|(_, furthest)| *furthest)
            .collect();
        let least = (OF_ALL * median(&moving).unwrap_or(0.0)).max(OF_MOVES * (high - low));
        for (number, most) in furthest.iter().enumerate().filter(|(_, most)| **most > least) {
            let around = furthest.get(number.saturating_sub(ASIDE)..(number + ASIDE + 1).min(furthest.len()));
            let least = least.max(OF_USUAL * around.and_then(median).unwrap_or(0.0));
            if *most <= least {
                continue;
            }
            let there = (number * piece..(number + 1) * piece)
                .flat_map(|at| (1..=WIDEST).map(move |width| (out(at, width), at..at + width)));
            all.extend(there.filter(|(by, _)| *by > least));
        }
    }
    // The furthest first: beside a dip on an edge the good rows stand out as well, the other way.
    all.sort_by(|a, b| b.0.total_cmp(&a.0).then(a.1.start.cmp(&b.1.start)));
    let mut taken: BTreeMap<usize, usize> = BTreeMap::new();
    for (_, run) in all {
        let touches = taken.range(..=run.end).next_back().is_some_and(|(_, end)| *end >= run.start);
        if !touches {
            taken.insert(run.start, run.end);
        }
    }
    let mut apart: Vec<Range<usize>> = taken.into_iter().map(|(start, end)| start..end).collect();
    let rows: usize = apart.iter().map(ExactSizeIterator::len).sum();
    if rows as f64 > MOST * values.len() as f64 {
        apart.clear();
    }
    Some(apart)
}

fn spans(values: &[f32]) -> f64 {
    let (low, high) = values.iter().fold((f32::INFINITY, f32::NEG_INFINITY), |(l, h), v| (l.min(*v), h.max(*v)));
    f64::from(high - low)
}

/// How far rows stand above (or below) the row on either side; nothing beside a dropout.
fn stands_out(times: &[f64], values: &[f32], at: usize, width: usize, up: bool, longest_gap: f64) -> f64 {
    let Some(from) = at.checked_sub(1) else { return 0.0 };
    let (Some(part), Some(when)) = (values.get(from..at + width + 1), times.get(from..at + width + 1)) else {
        return 0.0;
    };
    let ([first, run @ .., last], [begins, .., ends]) = (part, when) else { return 0.0 };
    if ends - begins > (width + 1) as f64 * longest_gap {
        return 0.0;
    }
    let sign = if up { 1.0 } else { -1.0 };
    let [first, last] = [first, last].map(|value| sign * f64::from(*value));
    let least = run.iter().map(|value| sign * f64::from(*value)).fold(f64::INFINITY, f64::min);
    (least - first.max(last)).max(0.0)
}
