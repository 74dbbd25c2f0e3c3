//! What the readings of one place say.

use super::doubts::at_end_of_span;
use super::GaugeError;
use crate::answer::{Estimate, CONFIDENCE};
use crate::quantity::{Count, Quantity, Vacuum};
use crate::record::{Gauge, GaugeCheck, Reading, ReadingPlace};
use crate::statistics::{mean, variance, Uncertain};

/// Readings of one place from which a spread can be told: the law of a mean on
/// fewer has no bounds worth reading.
pub const LEAST_READINGS: u32 = 3;

/// How readings of a check repeat: pooled over its places (GUM, JCGM 100:2008, 4.2.4).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Repeat {
    /// The standard deviation of one reading.
    pub spread: Vacuum,
    /// Readings beyond the first of each place.
    pub freedom: Count,
}

impl Repeat {
    /// Over all places of a check.
    pub fn of(check: &GaugeCheck) -> Self {
        let mut places: Vec<ReadingPlace> = Vec::new();
        let (mut squares, mut freedom) = (0.0, 0);
        for (_, reading) in &check.readings {
            if places.contains(&reading.place) {
                continue;
            }
            places.push(reading.place);
            let values = values(check.readings.iter().map(|(_, r)| r).filter(|r| r.place == reading.place));
            if let Some(variance) = variance(&values) {
                let own = values.len() as u32 - 1;
                squares += variance * f64::from(own);
                freedom += own;
            }
        }
        let spread = if freedom > 0 { (squares / f64::from(freedom)).sqrt() } else { 0.0 };
        Self { spread: Vacuum::from_canonical(spread), freedom: Count::new(freedom) }
    }
}

/// What a pump pulls at one place, and the law of what it may truly be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pull {
    pub(super) law: Uncertain,
    /// The mean of the readings, and the range that holds the truth nine times in ten.
    pub estimate: Estimate<Vacuum>,
    /// How many readings it rests on.
    pub readings: Count,
    /// How they repeat.
    pub repeat: Repeat,
    /// What the gauge may be wrong by.
    pub error: GaugeError,
}

/// Why there is no pull to tell.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NoPull {
    /// Nothing was read there.
    NotRead,
    /// How far the gauge may be wrong is not known.
    GaugeUnknown,
    /// The gauge stood at its end: the truth may lie beyond.
    AtEndOfSpan,
    /// So many more readings are needed.
    Needs(Count),
}

pub(super) fn values<'r>(readings: impl Iterator<Item = &'r Reading>) -> Vec<f64> {
    readings.map(|reading| reading.vacuum.quantity().canonical()).collect()
}

impl Pull {
    /// From those readings of a check that are wanted.
    ///
    /// # Errors
    /// [`NoPull`]: why they say nothing.
    pub fn of(check: &GaugeCheck, gauge: Option<&Gauge>, wanted: impl Fn(&Reading) -> bool) -> Result<Self, NoPull> {
        let all = || check.readings.iter().map(|(_, reading)| reading);
        let values = values(all().filter(|reading| wanted(reading)));
        let Some(middle) = mean(&values) else { return Err(NoPull::NotRead) };
        let error = gauge.and_then(|gauge| GaugeError::of(gauge, all())).ok_or(NoPull::GaugeUnknown)?;
        if all().filter(|reading| wanted(reading)).any(|reading| at_end_of_span(reading, gauge)) {
            return Err(NoPull::AtEndOfSpan);
        }
        let repeat = Repeat::of(check);
        let missing = (LEAST_READINGS - 1).saturating_sub(repeat.freedom.get());
        if missing > 0 {
            return Err(NoPull::Needs(Count::new(missing)));
        }
        Self::with(middle, Count::new(values.len() as u32), repeat, error).ok_or(NoPull::NotRead)
    }

    /// A mean of so many readings.
    pub(super) fn with(middle: f64, readings: Count, repeat: Repeat, error: GaugeError) -> Option<Self> {
        let standard_error = repeat.spread.canonical() / f64::from(readings.get()).sqrt();
        let law = Uncertain::new(middle, error.half_widths(), standard_error, f64::from(repeat.freedom.get()))?;
        let (low, high) = law.range(CONFIDENCE)?;
        let estimate = Estimate {
            value: Vacuum::from_canonical(middle),
            low: Vacuum::from_canonical(low),
            high: Vacuum::from_canonical(high),
        };
        Some(Self { law, estimate, readings, repeat, error })
    }
}
