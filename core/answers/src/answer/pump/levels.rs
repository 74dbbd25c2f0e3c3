//! Levels on the dial, in mmHg.

use super::doubts::at_end_of_span;
use super::pull::values;
use super::{GaugeError, Repeat};
use crate::answer::{Estimate, CONFIDENCE};
use crate::quantity::{Count, Level, Quantity, Vacuum};
use crate::record::gauge::SetUp;
use crate::record::{Gauge, GaugeCheck, Reading, Sides};
use crate::statistics::{mean, rising, Uncertain};
use crate::time::Instant;

/// What a level pulls.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LevelPull {
    /// The level.
    pub level: Level,
    /// What it pulls, and the range that holds the truth nine times in ten.
    pub vacuum: Estimate<Vacuum>,
    /// How many readings it rests on; none where it lies between levels that were read.
    pub readings: Count,
}

impl LevelPull {
    /// Whether it was read, and does not lie between.
    pub fn was_read(&self) -> bool {
        self.readings.get() > 0
    }
}

/// The rising curve of a check: what its levels pull, in order.
#[derive(Debug, Clone, PartialEq)]
pub struct LevelCurve {
    /// The check it comes from.
    pub check: String,
    /// It holds from here, until another check makes another.
    pub from: Instant,
    /// How the check was done.
    pub set_up: SetUp,
    read: Vec<LevelPull>,
}

/// Where no place was read twice nothing is known of how readings repeat; the gauge's
/// own errors are then all there is.
const KNOWN_WELL: f64 = 1e6;

impl LevelCurve {
    /// The curve of a check, for a side or for both; `last` is the pump's last level,
    /// which "the highest" stands for. None where no level was read, or how far the
    /// gauge may be wrong is not known.
    ///
    /// Means of each level are made to rise ([`rising`], weighted by readings); each
    /// carries the gauge's error, its resolution, half of what the sides differ by
    /// where it stands for both, and how readings repeat.
    pub fn of(check: &GaugeCheck, gauge: &Gauge, last: Option<Level>, sides: Sides) -> Option<Self> {
        let error = GaugeError::of(gauge, check.readings.iter().map(|(_, reading)| reading))?;
        let repeat = Repeat::of(check);
        let level_of = |reading: &Reading| reading.place.level.or(last);
        let usable = |reading: &&Reading| !at_end_of_span(reading, Some(gauge));
        let all: Vec<&Reading> = check.readings.iter().map(|(_, reading)| reading).filter(usable).collect();
        let wanted: Vec<&Reading> =
            all.iter().copied().filter(|r| r.place.side == sides || r.place.side == Sides::Both).collect();
        let wanted = if sides == Sides::Both || wanted.is_empty() { all } else { wanted };
        let mut levels: Vec<Level> = wanted.iter().filter_map(|reading| level_of(reading)).collect();
        levels.sort_unstable();
        levels.dedup();
        let means: Vec<Mean> = levels
            .iter()
            .filter_map(|level| {
                Mean::of(&wanted.iter().copied().filter(|r| level_of(r) == Some(*level)).collect::<Vec<_>>())
            })
            .collect();
        let curve = rising(&means.iter().map(|m| (m.middle, f64::from(m.readings))).collect::<Vec<_>>());
        let read: Vec<LevelPull> = levels
            .iter()
            .zip(&means)
            .zip(curve)
            .filter_map(|((level, mean), middle)| level_pull(*level, mean, middle, repeat, error))
            .collect();
        (!read.is_empty()).then_some(Self {
            check: check.id.clone(),
            from: check.at.as_ref()?.instant(),
            set_up: check.set_up,
            read,
        })
    }

    /// The levels that were read, in order.
    pub fn read(&self) -> &[LevelPull] {
        &self.read
    }

    /// What a level pulls. One that lies between two that were read lies, since a
    /// stronger level pulls no less, between theirs; outside them nothing is known.
    pub fn at(&self, level: Level) -> Option<LevelPull> {
        if let Some(read) = self.read.iter().find(|read| read.level == level) {
            return Some(*read);
        }
        let below = self.read.iter().rev().find(|read| read.level < level)?;
        let above = self.read.iter().find(|read| read.level > level)?;
        let steps = f64::from(above.level.get() - below.level.get());
        let share = f64::from(level.get() - below.level.get()) / steps;
        let between = |low: Vacuum, high: Vacuum| {
            Vacuum::from_canonical(low.canonical() + (high.canonical() - low.canonical()) * share)
        };
        Some(LevelPull {
            level,
            vacuum: Estimate {
                value: between(below.vacuum.value, above.vacuum.value),
                low: below.vacuum.low,
                high: above.vacuum.high,
            },
            readings: Count::new(0),
        })
    }
}

/// The mean of a level over its sides.
struct Mean {
    middle: f64,
    readings: u32,
    /// Half of what the sides differ by.
    apart: f64,
}

impl Mean {
    fn of(readings: &[&Reading]) -> Option<Self> {
        let of_side =
            |side: Sides| mean(&values(readings.iter().copied().filter(|reading| reading.place.side == side)));
        let sides: Vec<f64> = [Sides::Left, Sides::Right, Sides::Both].into_iter().filter_map(of_side).collect();
        let low = sides.iter().copied().reduce(f64::min)?;
        let high = sides.iter().copied().reduce(f64::max)?;
        Some(Self { middle: mean(&sides)?, readings: readings.len() as u32, apart: (high - low) / 2.0 })
    }
}

fn level_pull(level: Level, mean: &Mean, middle: f64, repeat: Repeat, error: GaugeError) -> Option<LevelPull> {
    let [greatest, step] = error.half_widths();
    let known = repeat.freedom.get() > 1;
    let (spread, freedom) =
        if known { (repeat.spread.canonical(), f64::from(repeat.freedom.get())) } else { (0.0, KNOWN_WELL) };
    let law = Uncertain::new(middle, [greatest, step + mean.apart], spread / f64::from(mean.readings).sqrt(), freedom)?;
    let (low, high) = law.range(CONFIDENCE)?;
    let vacuum = Vacuum::from_canonical;
    Some(LevelPull {
        level,
        vacuum: Estimate { value: vacuum(middle), low: vacuum(low.max(0.0)), high: vacuum(high) },
        readings: Count::new(mean.readings),
    })
}
