//! Samples laid onto an even grid as they come, so that no more is kept than is needed.

use crate::answer::trace::{Samples, Seconds};
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

/// The grid, as far as it is laid.
pub(super) struct Grid {
    step: f64,
    /// Samples closer than the step are averaged.
    bins: bool,
    bin: Bin,
    longest_gap: f64,
    origin: f64,
    last: Option<(f64, f64)>,
    values: Vec<f32>,
    pub(super) dropouts: u32,
    pub(super) dropped: f64,
}

#[derive(Default)]
struct Bin {
    number: f64,
    count: f64,
    time: f64,
    pressure: f64,
}

impl Bin {
    fn middle(&self) -> Option<(f64, f64)> {
        (self.count > 0.0).then(|| (self.time / self.count, self.pressure / self.count))
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
            origin: 0.0,
            last: None,
            values: Vec::new(),
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
            self.lay(at, pressure);
            return Ok(());
        }
        let number = (at / self.step + ON_THE_GRID).floor();
        if number != self.bin.number {
            self.lay_bin();
            self.bin.number = number;
        }
        self.bin.count += 1.0;
        self.bin.time += at;
        self.bin.pressure += pressure;
        Ok(())
    }

    fn lay_bin(&mut self) {
        if let Some((at, pressure)) = std::mem::take(&mut self.bin).middle() {
            self.lay(at, pressure);
        }
    }

    /// Straight lines from sample to sample, read off at the grid's places.
    fn lay(&mut self, at: f64, pressure: f64) {
        let Some((before, pressure_before)) = self.last.replace((at, pressure)) else {
            self.origin = at;
            self.values.push(pressure as f32);
            return;
        };
        let gap = at - before;
        let dropout = gap > self.longest_gap;
        if dropout {
            self.dropouts = self.dropouts.saturating_add(1);
            self.dropped += gap;
        }
        let close = ON_THE_GRID * self.step;
        loop {
            let place = self.origin + self.values.len() as f64 * self.step;
            if place > at + close {
                return;
            }
            let value = if (at - place).abs() <= close {
                pressure
            } else if dropout {
                f64::NAN
            } else {
                pressure_before + (pressure - pressure_before) * (place - before) / gap
            };
            self.values.push(value as f32);
        }
    }

    /// Seconds from the first sample to the last.
    pub(super) fn duration(&self) -> f64 {
        self.last.map_or(0.0, |(at, _)| at - self.origin)
    }

    /// What was laid, turned round where vacuum is below zero in the file.
    pub(super) fn samples(mut self, turn: bool) -> Option<Samples> {
        if turn {
            self.values.iter_mut().for_each(|value| *value = -*value);
        }
        self.values.shrink_to_fit();
        Samples::new(Seconds::new(self.step), self.values)
    }

    /// Lays what still waits.
    pub(super) fn end(&mut self) {
        self.lay_bin();
    }
}
