//! What is usual among cycles: how long one takes, how far it moves.

use super::cycle::Cycle;
use crate::statistics::median;

/// Periods that differ by less than this share are one rate: a motor's own wander stays below.
pub(super) const SAME_PERIOD: f64 = 0.15;

/// Whether segments have one rate, however strong each is.
pub(super) fn is_one_rate(cycles: &[Cycle], segments: &[(usize, usize)]) -> bool {
    let periods: Vec<f64> =
        segments.iter().filter_map(|(from, to)| cycles.get(*from..*to).and_then(usual_period)).collect();
    let longest = periods.iter().copied().fold(0.0, f64::max);
    let shortest = periods.iter().copied().fold(f64::INFINITY, f64::min);
    longest < (1.0 + SAME_PERIOD) * shortest
}

/// The median of periods, once more without those that hold a missed cycle.
pub(super) fn usual_period(cycles: &[Cycle]) -> Option<f64> {
    let periods: Vec<f64> = cycles.iter().filter_map(|cycle| cycle.period).collect();
    let first = median(&periods)?;
    let single: Vec<f64> = periods.into_iter().filter(|period| *period < MISSED_FROM * first).collect();
    median(&single)
}

pub(super) fn usual_amplitude(cycles: &[Cycle]) -> Option<f64> {
    median(&cycles.iter().map(Cycle::amplitude).collect::<Vec<_>>())
}

/// From so many usual periods on a cycle was missed in between.
pub(super) const MISSED_FROM: f64 = 1.6;

/// From so many on nothing was missed: the pump had stopped.
pub const STOPPED_FROM: f64 = 6.0;
