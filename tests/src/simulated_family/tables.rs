//! What Supply makes of families with known truth, in figures.

use drawwell_core::answer::supply::course::course;
use drawwell_core::answer::supply::level::{level, Level};
use drawwell_core::answer::supply::{since, watch, Calendar, DayProduction, Of, Series, Spread};
use drawwell_core::guidance::{Rules, SupplyRules};
use drawwell_core::quantity::Quantity;
use drawwell_core::time::{DayStart, LocalDay, Zone};

use super::{live, Family, Told};

/// The rules as they are shipped.
pub fn rules() -> SupplyRules {
    SupplyRules::read(&Rules::default())
}

/// Days of a family, from the first included to the last excluded.
pub fn days(told: &Told, from: i32, to: i32) -> Vec<DayProduction> {
    let mut spread = Spread::new(&told.removals, Calendar { start: DayStart::MIDNIGHT, zone: Zone::UTC });
    (from..to).filter_map(|d| LocalDay::from_number(told.first.number() + d)).map(|day| spread.day(day)).collect()
}

/// How daily production came out, over 28 days of many families.
#[derive(Debug, Clone, Copy)]
pub struct Production {
    /// Mean of estimate over truth, less 1, where a level was told.
    pub bias: f64,
    /// How often a level was told.
    pub told: f64,
    /// How often it was said that too much is missing.
    pub too_much: f64,
    /// How often the range of the level held the long-run truth.
    pub level_held: f64,
    /// How often the range of the slope held none, which is the truth.
    pub slope_held: f64,
}

/// The first 14 days teach what is ordinary.
const TAUGHT: i32 = 14;
const SPAN: i32 = 28;

/// Lives that the truth in the long run is taken from.
const LIVES: u64 = 20;

/// Over so many families of a kind.
pub fn production(family: &Family, families: u64) -> Production {
    let rules = rules();
    let mean = |truth: &[f64]| truth.iter().sum::<f64>() / truth.len() as f64;
    // What such a family makes in the long run.
    let lives: Vec<f64> = (0..LIVES)
        .map(|seed| mean(live(family, 240, seed + 1_000_000).truth.get(10..230).unwrap_or_default()))
        .collect();
    let truth = mean(&lives);
    let (mut biases, mut too_much, mut level_held, mut slopes, mut slope_held) = (Vec::new(), 0, 0, 0, 0);
    for seed in 0..families {
        let told = live(family, (TAUGHT + SPAN + 1) as u32, seed);
        let series = Series::of(&days(&told, TAUGHT, TAUGHT + SPAN), Of::Both, &rules);
        match level(&series, &rules) {
            Level::Known(found) => {
                let then = told.truth.get(TAUGHT as usize..(TAUGHT + SPAN) as usize).unwrap_or_default();
                biases.push(found.value.canonical() / mean(then) - 1.0);
                level_held += u32::from(found.low.canonical() <= truth && truth <= found.high.canonical());
            }
            Level::TooMuchMissing => too_much += 1,
            Level::NeedsDays(_) => {}
        }
        if let Ok(found) = course(&series, &rules) {
            slopes += 1;
            slope_held += u32::from(found.drift.low.canonical() <= 0.0 && found.drift.high.canonical() >= 0.0);
        }
    }
    let told = biases.len().max(1) as f64;
    Production {
        bias: biases.iter().sum::<f64>() / told,
        told: biases.len() as f64 / families as f64,
        too_much: f64::from(too_much) / families as f64,
        level_held: f64::from(level_held) / told,
        slope_held: f64::from(slope_held) / f64::from(slopes.max(1)),
    }
}

/// How the watch behaves.
#[derive(Debug, Clone, Copy)]
pub struct Watched {
    /// False alarms in 100 quiet days.
    pub false_alarms: f64,
    /// Days to notice a lasting drop: the middle of the families.
    pub delay: Option<i64>,
    /// Nine in ten families are noticed within this; none where fewer are.
    pub late: Option<i64>,
}

/// Quiet days watched a family, after those that the own level needs.
const QUIET: i32 = 120;
const BEFORE: i32 = 20;
/// The drop comes on this day, and is looked for until the last.
const DROPS_ON: i32 = 60;
const UNTIL: i32 = 110;

/// Over so many families of a kind, quiet and with a drop to so many times what was made.
pub fn watched(family: &Family, falls_to: f64, families: u64) -> Watched {
    let rules = rules();
    let mut alarms = 0;
    let mut delays: Vec<i64> = Vec::new();
    for seed in 0..families {
        let told = live(family, (BEFORE + QUIET + 1) as u32, seed);
        let said = watch::watched(&watch::series(&days(&told, 1, BEFORE + QUIET), &rules), &rules);
        alarms += said.windows(2).filter(|w| matches!(w, [None, Some(_)])).count();
        let falls = Family { change: Some((DROPS_ON as u32, falls_to)), ..*family };
        let told = live(&falls, (UNTIL + 1) as u32, seed + 500_000);
        let series = watch::series(&days(&told, 1, UNTIL), &rules);
        let said = watch::watched(&series, &rules);
        let noticed = series
            .days
            .iter()
            .zip(&said)
            .find(|((day, _), drop)| day.days_since(told.first) >= i64::from(DROPS_ON) && drop.is_some());
        delays.push(noticed.map_or(i64::MAX, |((day, _), _)| day.days_since(told.first) - i64::from(DROPS_ON) + 1));
    }
    delays.sort_unstable();
    let at =
        |share: f64| delays.get((delays.len() as f64 * share) as usize).copied().filter(|delay| *delay != i64::MAX);
    Watched {
        false_alarms: alarms as f64 * 100.0 / (families as f64 * f64::from(QUIET)),
        delay: at(0.5),
        late: at(0.9),
    }
}

/// How changes of the past are found: one of this size, 40 days in.
#[derive(Debug, Clone, Copy)]
pub struct Found {
    /// How often a quiet family was told of a change.
    pub false_changes: f64,
    /// How often the change was found.
    pub found: f64,
    /// How often its range of dates held the day.
    pub date_held: f64,
    /// How often its range of sizes held the size.
    pub size_held: f64,
}

/// Over so many families of a kind.
pub fn found(family: &Family, becomes: f64, families: u64) -> Found {
    let rules = rules();
    let (mut quiet, mut found, mut date, mut size) = (0, 0, 0, 0);
    for seed in 0..families {
        let series = Series::of(&days(&live(family, 61, seed), 1, 60), Of::Both, &rules);
        quiet += u32::from(!since::changes(&series).is_empty());
        let told = live(&Family { change: Some((40, becomes)), ..*family }, 71, seed + 900_000);
        let changes = since::changes(&Series::of(&days(&told, 1, 70), Of::Both, &rules));
        let away = |change: &since::Change| (change.on.days_since(told.first) - 40).abs();
        let Some(change) = changes.iter().min_by_key(|c| away(c)) else { continue };
        found += 1;
        let held = change.earliest.days_since(told.first)..=change.latest.days_since(told.first);
        date += u32::from(held.contains(&40));
        let mean = |from: usize, to: usize| {
            told.truth.get(from..to).unwrap_or_default().iter().sum::<f64>() / (to - from) as f64
        };
        let truth = mean(40, 69) - mean(1, 40);
        size += u32::from(change.size.low.canonical() <= truth && truth <= change.size.high.canonical());
    }
    let share = |n: u32, of: f64| f64::from(n) / of.max(1.0);
    Found {
        false_changes: share(quiet, families as f64),
        found: share(found, families as f64),
        date_held: share(date, f64::from(found)),
        size_held: share(size, f64::from(found)),
    }
}
