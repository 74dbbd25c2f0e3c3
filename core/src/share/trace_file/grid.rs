//! Rows laid onto an even grid, so that no more is kept than is needed.

use std::ops::Range;

use super::spikes;
use crate::answer::trace::{Samples, Seconds};
use crate::quantity::Count;
use crate::statistics::quantile;
use crate::trouble::Trouble;

/// The finest grid: 50 samples a second show a pump's every movement.
const FINEST_STEP: f64 = 0.02;
/// A rate that is 50 a second but for what rounding does is kept as it is.
const ROUNDING: f64 = 0.01;
/// A gap of more steps than this, and longer than so many seconds, is a dropout.
const DROPOUT_STEPS: f64 = 3.0;
const DROPOUT_SECONDS: f64 = 0.25;
/// No trace is longer.
const LONGEST_SECONDS: f64 = 24.0 * 3_600.0;
/// A sample this close to a place of the grid stands on it, as a share of a step: seconds since
/// 1970 are not written finer in 53 bits.
const ON_THE_GRID: f64 = 1e-3;
/// From so many rows on in one place of the grid its highest and its lowest are left out.
const TRIMMED_FROM: f64 = 5.0;
/// Quantiles that tell on which side of zero the vacuum stands.
const ENDS: [f64; 2] = [0.005, 0.995];
/// More values than this say nothing new about a quantile.
const MOST_LOOKED_AT: usize = 20_000;

/// The rows, as far as they came.
pub(super) struct Grid {
    step: f64,
    /// Samples closer than the step are averaged.
    bins: bool,
    bin: Bin,
    longest_gap: f64,
    times: Vec<f64>,
    pressures: Vec<f32>,
    pub(super) dropouts: u32,
    pub(super) dropped: f64,
}

/// What was laid.
pub(super) struct Resampled {
    pub(super) samples: Samples,
    /// Lone rows far out of the rest, which were left out; None where none could be told.
    pub(super) spikes: Option<Count>,
}

#[derive(Default)]
struct Bin {
    number: f64,
    count: f64,
    time: f64,
    pressure: f64,
    ends: Option<(f64, f64)>,
}

impl Bin {
    fn take(&mut self, at: f64, pressure: f64) {
        self.count += 1.0;
        self.time += at;
        self.pressure += pressure;
        let (low, high) = self.ends.unwrap_or((pressure, pressure));
        self.ends = Some((low.min(pressure), high.max(pressure)));
    }

    fn middle(&self) -> Option<(f64, f64)> {
        let (low, high) = self.ends?;
        let pressure = match self.count >= TRIMMED_FROM && low < high {
            // A lone bad row among many is no part of their mean.
            true => (self.pressure - low - high) / (self.count - 2.0),
            false => self.pressure / self.count,
        };
        Some((self.time / self.count, pressure))
    }
}

impl Grid {
    pub(super) fn of(native_step: f64) -> Self {
        let bins = native_step < FINEST_STEP * (1.0 - ROUNDING);
        Self {
            step: if bins { FINEST_STEP } else { native_step },
            bins,
            bin: Bin::default(),
            longest_gap: (DROPOUT_STEPS * native_step).max(DROPOUT_SECONDS) * (1.0 + ON_THE_GRID),
            times: Vec::new(),
            pressures: Vec::new(),
            dropouts: 0,
            dropped: 0.0,
        }
    }

    /// Takes the next sample, in seconds from the first.
    pub(super) fn take(&mut self, at: f64, pressure: f64) -> Result<(), Trouble> {
        if at > LONGEST_SECONDS {
            return Err(Trouble::bad("", "bad-trace-long"));
        }
        if !self.bins {
            self.keep(at, pressure);
            return Ok(());
        }
        let number = (at / self.step + ON_THE_GRID).floor();
        if number != self.bin.number {
            self.keep_bin();
            self.bin.number = number;
        }
        self.bin.take(at, pressure);
        Ok(())
    }

    fn keep_bin(&mut self) {
        if let Some((at, pressure)) = std::mem::take(&mut self.bin).middle() {
            self.keep(at, pressure);
        }
    }

    fn keep(&mut self, at: f64, pressure: f64) {
        if let Some(gap) = self.times.last().map(|before| at - before).filter(|gap| *gap > self.longest_gap) {
            self.dropouts = self.dropouts.saturating_add(1);
            self.dropped += gap;
        }
        self.times.push(at);
        self.pressures.push(pressure as f32);
    }

    /// Keeps what still waits.
    pub(super) fn end(&mut self) {
        self.keep_bin();
    }

    /// Seconds from the first sample to the last.
    pub(super) fn duration(&self) -> f64 {
        self.times.last().zip(self.times.first()).map_or(0.0, |(last, first)| last - first)
    }

    /// Lays the rows, turned round where vacuum is below zero in the file.
    pub(super) fn samples(mut self, turn: bool) -> Option<Resampled> {
        if turn {
            self.pressures.iter_mut().for_each(|value| *value = -*value);
        }
        let bad = spikes::found(&self.times, &self.pressures, self.step, self.longest_gap);
        self.leave_out(bad.as_deref().unwrap_or_default());
        let values = self.resampled();
        let spikes = bad.map(|bad| Count::new(u32::try_from(bad.len()).unwrap_or(u32::MAX)));
        let origin = self.times.first().copied().unwrap_or(0.0);
        self.times.iter_mut().for_each(|at| *at -= origin);
        let samples = Samples::new(Seconds::new(self.step), values)?;
        Some(Resampled { samples: samples.read_at(self.times, self.pressures), spikes })
    }

    fn leave_out(&mut self, runs: &[Range<usize>]) {
        if runs.is_empty() {
            return;
        }
        let good = |count: usize| {
            let mut next = runs.iter().peekable();
            (0..count).map(move |at| {
                while next.peek().is_some_and(|run| run.end <= at) {
                    next.next();
                }
                !next.peek().is_some_and(|run| run.contains(&at))
            })
        };
        let (mut of_times, mut of_pressures) = (good(self.times.len()), good(self.pressures.len()));
        self.times.retain(|_| of_times.next().unwrap_or(true));
        self.pressures.retain(|_| of_pressures.next().unwrap_or(true));
    }

    /// Whether vacuum stands below zero in the file; one bad row does not say so.
    pub(super) fn is_turned(&self) -> bool {
        let every = (self.pressures.len() / MOST_LOOKED_AT).max(1);
        let some: Vec<f64> = self.pressures.iter().step_by(every).map(|value| f64::from(*value)).collect();
        let [low, high] = ENDS.map(|share| quantile(&some, share).unwrap_or(0.0).abs());
        low > high
    }

    /// Straight lines from row to row, read off at the grid's places.
    fn resampled(&self) -> Vec<f32> {
        let Some((&origin, &first)) = self.times.first().zip(self.pressures.first()) else { return Vec::new() };
        let close = ON_THE_GRID * self.step;
        let mut values = vec![first];
        let rows = || self.times.iter().zip(&self.pressures).map(|(at, value)| (*at, f64::from(*value)));
        for ((before, from), (at, to)) in rows().zip(rows().skip(1)) {
            let dropout = at - before > self.longest_gap;
            loop {
                let place = origin + values.len() as f64 * self.step;
                if place > at + close {
                    break;
                }
                let value = if (at - place).abs() <= close {
                    to
                } else if dropout {
                    f64::NAN
                } else {
                    from + (to - from) * (place - before) / (at - before)
                };
                values.push(value as f32);
            }
        }
        values.shrink_to_fit();
        values
    }
}
