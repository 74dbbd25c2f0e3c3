//! A pull that is lost within a minute while the rate stays.
//!
//! Slower, it is a drift; at another rate, another pattern. Heights are counted from each
//! cycle's own rest, so that a gauge whose zero moves loses no pull.

use super::cycle::Cycle;
use super::rounding::rounded;
use super::typical::usual_period;
use super::typical::STOPPED_FROM;
use super::{AsRead, Seconds};
use crate::statistics::median;

/// It falls to so much of what it was, or less: by a third.
const FALLS_TO: f64 = 2.0 / 3.0;
/// Within so many seconds.
const WITHIN_SECONDS: f64 = 60.0;
/// So many cycles say what it was before, and what it is after,
const BESIDE: usize = 12;
/// and so many at least: fewer are weak ones.
const LEAST_BESIDE: usize = 6;
/// A cycle and so many on either side of it say where it stands.
const NEIGHBOURS: usize = 2;
/// Before it the pull stands where it begins to fall from, and after it stays below, but for this
/// much.
const STAYS: f64 = 0.1;
/// The rate stays where periods differ by less than this share.
const SAME_PERIOD: f64 = 0.15;
/// It has begun after this share of it, and is over where less than this share of it is ahead.
const BEGUN: f64 = 0.08;
const SETTLED: f64 = 0.05;
/// More of them than this are told as the first ones.
pub(super) const MOST: usize = 6;

/// A pull that was lost.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Collapse {
    /// When it began to fall,
    pub from: Seconds,
    /// and when it no longer did.
    pub to: Seconds,
    /// Highest vacuum of a cycle before,
    pub before: AsRead,
    /// and after.
    pub after: AsRead,
}

/// A fall among the cycles: from the last that is whole to the first that is as low as they get.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Fall {
    pub(super) last: usize,
    pub(super) first: usize,
}

/// Falls in order, none within another.
pub(super) fn falls(cycles: &[Cycle]) -> Vec<Fall> {
    let heights: Vec<f64> = cycles.iter().map(Cycle::amplitude).collect();
    let level = |from: usize, to: usize| heights.get(from..to.min(heights.len())).and_then(median);
    let smooth: Vec<f64> =
        (0..heights.len()).map(|at| level(at.saturating_sub(NEIGHBOURS), at + NEIGHBOURS + 1).unwrap_or(0.0)).collect();
    let mut found: Vec<Fall> = Vec::new();
    let mut from = 0;
    while from < cycles.len() && found.len() < MOST {
        match fall(cycles, &heights, &smooth, from) {
            Some(fall) => {
                from = fall.first.max(from + 1);
                found.push(fall);
            }
            None => from += 1,
        }
    }
    found
}

/// The fall that begins at a cycle.
fn fall(cycles: &[Cycle], heights: &[f64], smooth: &[f64], begins: usize) -> Option<Fall> {
    let rest = cycles.get(begins)?.rest.max(0.0);
    let whole = *smooth.get(begins)?;
    // Peaks fall by a third: what they stand on does not fall with them.
    let low = FALLS_TO * (whole + rest) - rest;
    let at = cycles.get(begins)?.from;
    let within = |cycle: &Cycle| cycle.from - at <= WITHIN_SECONDS;
    let ends = (begins + 1..cycles.len())
        .take_while(|at| cycles.get(*at).is_some_and(within))
        .find(|at| smooth.get(*at).is_some_and(|height| *height <= low))?;
    let before = cycles.get(begins.saturating_sub(BESIDE)..=begins)?;
    let after = cycles.get(ends..(ends + BESIDE).min(cycles.len()))?;
    if before.len() < LEAST_BESIDE || after.len() < LEAST_BESIDE {
        return None;
    }
    let stood = median(heights.get(begins.saturating_sub(BESIDE)..=begins)?)?;
    let stays = median(heights.get(ends..(ends + BESIDE).min(heights.len()))?)?;
    if (stood - whole).abs() > STAYS * whole || stays > low + STAYS * whole {
        return None;
    }
    // Over the whole of it nothing stands still, and the rate is one.
    let all = cycles.get(begins.saturating_sub(BESIDE)..(ends + BESIDE).min(cycles.len()))?;
    let usual = usual_period(all)?;
    let [one, other] = [usual_period(before)?, usual_period(after)?];
    if (one / other).ln().abs() > (1.0 + SAME_PERIOD).ln() {
        return None;
    }
    let fallen = cycles.get(begins..ends)?;
    if fallen.iter().filter_map(|cycle| cycle.period).any(|period| period >= STOPPED_FROM * usual) {
        return None;
    }
    Some(ends_of(smooth, (begins, ends), stood))
}

/// Where it truly begins and ends: it was looked for from as early as a minute before, and went on
/// after the third.
fn ends_of(smooth: &[f64], (begins, ends): (usize, usize), stood: f64) -> Fall {
    let height = |at: usize| smooth.get(at).copied().unwrap_or(0.0);
    let ahead = |at: usize| smooth.get(at..(at + BESIDE).min(smooth.len())).and_then(median).unwrap_or(0.0);
    let settled = (ends..smooth.len().saturating_sub(LEAST_BESIDE))
        .find(|at| height(*at) - ahead(*at) <= SETTLED * (stood - height(*at)))
        .unwrap_or(ends);
    let lowest = ahead(settled);
    let gone = |at: usize| (stood - height(at)) / (stood - lowest);
    let low = (ends..=settled).find(|at| gone(*at) >= 1.0 - SETTLED).unwrap_or(settled);
    let whole = (begins..=ends).rev().find(|at| gone(*at) <= BEGUN).unwrap_or(begins);
    Fall { last: whole, first: low }
}

/// What is said of a fall.
pub(super) fn of_fall(cycles: &[Cycle], fall: Fall) -> Option<Collapse> {
    let peaks = |from: usize, to: usize| {
        let there = cycles.get(from..to.min(cycles.len()))?;
        median(&there.iter().map(Cycle::peak).collect::<Vec<_>>()).map(|peak| AsRead::new(rounded(peak)))
    };
    let when = |at: f64| Seconds::new(rounded(at));
    Some(Collapse {
        from: when(cycles.get(fall.last)?.from),
        to: when(cycles.get(fall.first)?.from),
        before: peaks(fall.last.saturating_sub(BESIDE), fall.last + 1)?,
        after: peaks(fall.first, fall.first + BESIDE)?,
    })
}
