//! Families with a known limit of comfort. Each day has a limit of its own around it, so that
//! discomfort comes the more often the stronger the pump is set; the pump is set by steps, and its
//! curve is off by one error for the whole family, anywhere within the gauge's class.

use drawwell_core::answer::comfort::{comfort, Ceiling, Felt, Strength};
use drawwell_core::answer::supply::Side;
use drawwell_core::answer::Estimate;
use drawwell_core::guidance::{ComfortRules, Rules};
use drawwell_core::quantity::{Level, Quantity, Vacuum};
use drawwell_core::record::mark::Phase;
use drawwell_core::time::{Instant, Span};

use crate::chance::Chance;

/// A family.
#[derive(Debug, Clone, Copy)]
pub struct Limit {
    /// Sessions that say a setting and how it felt.
    pub sessions: u32,
    /// Steps of the dial, in mmHg.
    pub step: f64,
    /// How far the limit of a day lies around, in mmHg.
    pub spread: f64,
    /// The gauge's greatest error, in mmHg.
    pub gauge: f64,
    /// How far below and above its limit it is set.
    pub set: (f64, f64),
    /// Whether settings are known in mmHg; else in levels alone.
    pub in_vacuum: bool,
}

impl Limit {
    /// Set finely, and the pump shows mmHg.
    pub const FINE: Self =
        Self { sessions: 40, step: 5.0, spread: 12.0, gauge: 0.0, set: (60.0, 25.0), in_vacuum: true };
    /// Set by levels, in mmHg by a gauge of class 1.6 over 760 mmHg.
    pub const BY_LEVELS: Self = Self { step: 20.0, gauge: 12.0, ..Self::FINE };
}

/// What one family is told.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Said {
    /// A ceiling, and by how much it is off, in mmHg; and whether its range holds the truth.
    At(f64, bool),
    /// That it lies at so much or above, off by so much.
    AtLeast(f64),
    /// That it lies below the weakest.
    Below,
    /// Nothing yet.
    Nothing,
}

/// How often the answers are right.
#[derive(Debug, Clone, Copy, Default)]
pub struct Row {
    /// The share that is told a ceiling.
    pub told: f64,
    /// How far it is off, up or down, on average.
    pub off: f64,
    /// By how much it lies over the truth on average.
    pub bias: f64,
    /// Told within 10 mmHg.
    pub within_ten: f64,
    /// Told within one level.
    pub within_level: f64,
    /// Told more than one level over the truth, or at least so much: of all families.
    pub too_high: f64,
    /// The range held the truth.
    pub held: f64,
}

/// One family.
pub fn said(of: &Limit, seed: u64) -> Said {
    let mut chance = Chance::seeded(seed);
    let middle = chance.between(150.0, 240.0);
    let off = chance.between(-of.gauge, of.gauge);
    let dial = chance.between(0.0, of.step);
    // Where discomfort comes in one of five.
    let truth = middle - 0.8416 * of.spread;
    let now = Instant::from_unix_milliseconds(1_790_000_000_000);
    let mut felt = Vec::new();
    for number in 0..of.sessions {
        let at = now.minus(Span::minutes(i64::from(of.sessions - number) * 200));
        let wanted = chance.between(middle - of.set.0, middle + of.set.1);
        let level = ((wanted - dial) / of.step).round().max(1.0);
        let limit = middle + of.spread * chance.normal();
        let mut tell = |level: f64, comfortable: bool| {
            // Levels are further apart than what they are said to pull is off.
            let pulls = Vacuum::from_canonical(dial + level * of.step - off);
            let error = of.gauge;
            let by = |of: f64| Vacuum::from_canonical(pulls.canonical() + of);
            let vacuum = Estimate { value: pulls, low: by(-0.9 * error), high: by(0.9 * error) };
            felt.push(Felt {
                session: format!("s{number}"),
                at,
                pump: Some("p".into()),
                side: Side::Left,
                phase: Phase::Expression,
                strength: Strength { level: Some(Level::new(level as u32)), vacuum: of.in_vacuum.then_some(vacuum) },
                comfortable,
            });
        };
        let hurts = |level: f64| dial + level * of.step > limit;
        tell(level, !hurts(level));
        if hurts(level) && !hurts(level - 1.0) && chance.happens(0.6) {
            tell(level - 1.0, true);
        }
    }
    let rules = ComfortRules::read(&Rules::default());
    let Some(found) = comfort(&felt, Side::Left, Phase::Expression, now, &rules) else { return Said::Nothing };
    let in_mmhg = |level: Level| dial + f64::from(level.get()) * of.step;
    match (found.in_vacuum, found.in_levels) {
        (Some(told), _) => match told.ceiling {
            Ceiling::At(at) => {
                let held = at.low.canonical() <= truth && truth <= at.high.canonical();
                Said::At(at.value.canonical() - truth, held)
            }
            Ceiling::RareUpTo(at) => Said::AtLeast(at.canonical() - truth),
            Ceiling::NotRareFrom(_) => Said::Below,
            Ceiling::NeverVaried | Ceiling::CannotTellYet(_) => Said::Nothing,
        },
        (None, Some(told)) => match told.ceiling {
            Ceiling::At(at) => {
                Said::At(in_mmhg(at.value) - truth, in_mmhg(at.low) <= truth && truth <= in_mmhg(at.high))
            }
            Ceiling::RareUpTo(at) => Said::AtLeast(in_mmhg(at) - truth),
            Ceiling::NotRareFrom(_) => Said::Below,
            Ceiling::NeverVaried | Ceiling::CannotTellYet(_) => Said::Nothing,
        },
        (None, None) => Said::Nothing,
    }
}

/// Many families.
pub fn row(of: &Limit, families: u64) -> Row {
    let all: Vec<Said> = (0..families).map(|seed| said(of, seed)).collect();
    let level = of.step.max(20.0);
    let told: Vec<(f64, bool)> =
        all.iter().filter_map(|said| if let Said::At(off, held) = said { Some((*off, *held)) } else { None }).collect();
    let share = |count: usize, of: usize| count as f64 / of.max(1) as f64;
    let mean = |of: &dyn Fn(f64) -> f64| told.iter().map(|(off, _)| of(*off)).sum::<f64>() / told.len().max(1) as f64;
    let too_high = |said: &&Said| matches!(said, Said::At(off, _) | Said::AtLeast(off) if *off > level);
    Row {
        told: share(told.len(), all.len()),
        off: mean(&f64::abs),
        bias: mean(&|off| off),
        within_ten: share(told.iter().filter(|(off, _)| off.abs() <= 10.0).count(), told.len()),
        within_level: share(told.iter().filter(|(off, _)| off.abs() <= level).count(), told.len()),
        too_high: share(all.iter().filter(too_high).count(), all.len()),
        held: share(told.iter().filter(|(_, held)| *held).count(), told.len()),
    }
}
