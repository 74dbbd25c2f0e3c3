//! The usual cycle of a segment, and every cycle's height measured by it.
//!
//! A peak falls between two readings, and its highest one stands too high by what noise adds. Laid one
//! over the other by the instant at which they rise, cycles fall between each other's readings: their
//! medians are one cycle, finely read and with next to no noise. How high each reaches is then how
//! many times the usual one it is, by least squares over all of its readings. No shape is assumed.

use super::cycle::depth;
use super::cycle::Cycle;
use super::file::Samples;
use super::top::{height, Top};
use super::typical::{usual_amplitude, usual_period};
use crate::statistics::{least_squares_line, median, Point};

/// Fewer cycles are no usual one, and more say nothing new.
const LEAST_CYCLES: usize = 6;
const MOST_CYCLES: usize = 200;
/// Each is laid by what is usual for it and so many on either side: a pull may sink or rise all along.
/// Those that differ from that by more than this share are left out.
const NEIGHBOURS: usize = 4;
const ALIKE: f64 = 0.2;
/// From so long before its rise to so long after it, in periods: with its rest, and without the next.
const FROM: f64 = -0.3;
const TO: f64 = 0.65;
/// It is drawn in pieces as fine as this share of a period, where each holds so many readings.
const FINEST: f64 = 0.01;
const LEAST_IN_A_PIECE: f64 = 9.0;
/// A piece that holds fewer is of a cycle or two that were read at other instants, and left out.
const FEWEST_IN_A_PIECE: usize = 4;
/// From this share of the height on, noise of its pieces matters.
const LOUD: f64 = 0.003;
/// The spread of a median of normal values, in those of their mean.
const MEDIAN_SPREAD: f64 = 1.2533;
/// A cycle that differs from it by more than so much of the noise, or of the amplitude, is another one.
const MISFIT_NOISE: f64 = 3.0;
const MISFIT: f64 = 0.06;

/// The usual cycle, from its own rest up: where its pieces stand, and how high.
struct Usual {
    from: f64,
    to: f64,
    pieces: Vec<Point>,
    highest: f64,
}

/// Measures each cycle of a segment anew.
pub(super) fn measure(samples: &Samples, noise: f64, cycles: &mut [Cycle]) {
    let Some(usual) = Usual::of(samples, noise, cycles) else { return };
    let least = (MISFIT_NOISE * noise).max(MISFIT * usual.highest);
    for cycle in cycles {
        let Some(peak) = cycle.rises.and_then(|rises| usual.peak(samples, rises, least)) else { continue };
        if peak.is_finite() && peak > cycle.rest {
            cycle.peak = peak;
        }
    }
}

/// How high the pieces reach, each of which has so much noise left.
fn highest(pieces: &[Point], noise: f64) -> Option<f64> {
    let mut values: Vec<f64> = pieces.iter().map(|piece| piece.value).collect();
    let top = values.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let mut noise = noise;
    if noise > LOUD * top {
        // The highest of many is too high by what noise adds; that of threes by less.
        values = values.windows(3).map(|three| three.iter().sum::<f64>() / 3.0).collect();
        noise /= 3.0_f64.sqrt();
    }
    let (place, highest) = values.iter().copied().enumerate().max_by(|a, b| a.1.total_cmp(&b.1))?;
    let depth = depth(noise, highest);
    let below = |value: &f64| *value < highest - depth;
    let before = values.get(..place)?.iter().rev().take_while(|value| !below(value)).count();
    let after = values.get(place..)?.iter().take_while(|value| !below(value)).count();
    let samples = values.get(place - before..place + after)?;
    // Where every cycle was read at the same instants, pieces stand far apart and a fit goes over them.
    Some(height(&Top { samples, depth, cycle: values.len() }, noise, highest).min(top))
}

impl Usual {
    fn of(samples: &Samples, noise: f64, cycles: &[Cycle]) -> Option<Self> {
        let (period, amplitude) = (usual_period(cycles)?, usual_amplitude(cycles)?);
        let alike: Vec<(f64, f64, f64)> = (0..cycles.len())
            .filter_map(|at| {
                let around = cycles.get(at.saturating_sub(NEIGHBOURS)..(at + NEIGHBOURS + 1).min(cycles.len()))?;
                let (cycle, usual) = (cycles.get(at)?, usual_amplitude(around)?);
                let alike = (cycle.amplitude() - usual).abs() <= ALIKE * usual;
                Some((cycle.rises.filter(|_| alike)?, cycle.rest, amplitude / usual))
            })
            .collect();
        if alike.len() < LEAST_CYCLES {
            return None;
        }
        let (from, to) = (FROM * period, TO * period);
        let every = alike.len().div_ceil(MOST_CYCLES);
        let mut all: Vec<Point> = Vec::new();
        for (rises, rest, scale) in alike.into_iter().step_by(every) {
            let there = samples.between(rises + from, rises + to);
            all.extend(there.into_iter().map(|(at, value)| Point { at: at - rises, value: (value - rest) * scale }));
        }
        all.sort_unstable_by(|a, b| a.at.total_cmp(&b.at));
        let fine = (FINEST * period).max(LEAST_IN_A_PIECE * (to - from) / all.len() as f64);
        let pieces: Vec<Point> = all
            .chunk_by(|a, b| ((a.at - from) / fine).floor() == ((b.at - from) / fine).floor())
            .filter(|piece| piece.len() >= FEWEST_IN_A_PIECE)
            .filter_map(|piece| {
                let of = |value: fn(&Point) -> f64| median(&piece.iter().map(value).collect::<Vec<_>>());
                Some(Point { at: of(|point| point.at)?, value: of(|point| point.value)? })
            })
            .collect();
        let spread = MEDIAN_SPREAD * noise / (all.len() as f64 / pieces.len() as f64).sqrt();
        let highest = highest(&pieces, spread)?;
        (highest > 0.0).then_some(Self { from, to, pieces, highest })
    }

    fn at(&self, after: f64) -> Option<f64> {
        let next = self.pieces.partition_point(|piece| piece.at < after);
        let (one, other) = (self.pieces.get(next.checked_sub(1)?)?, self.pieces.get(next)?);
        Some(one.value + (other.value - one.value) * (after - one.at) / (other.at - one.at))
    }

    /// The highest vacuum of a cycle that rises at an instant; None where it is not like this one.
    fn peak(&self, samples: &Samples, rises: f64, least: f64) -> Option<f64> {
        let points: Vec<Point> = samples
            .between(rises + self.from, rises + self.to)
            .into_iter()
            .filter_map(|(at, value)| Some(Point { at: self.at(at - rises)?, value }))
            .collect();
        let line = least_squares_line(&points)?;
        (line.residual_sd <= least && line.slope > 0.0).then_some(line.intercept + line.slope * self.highest)
    }
}
