//! Families with known truth: each side fills ever slower towards its
//! capacity, a session removes most but not all, amounts are read to 5 mL, and
//! a session that nobody wrote down removes milk all the same.
//!
//! What is known is the milk that was truly made on each day. Invented, and
//! proof of the arithmetic only: a rate of 22 mL/h a breast lies inside 0 to
//! 56 mL/h (Daly 1996), a capacity of 180 mL inside 81 to 606 mL a breast
//! (check-values 2.2, seen in a reprint).

pub mod tables;

use drawwell_core::quantity::{Quantity, Volume};
use drawwell_core::record::{Answered, Milk, Removal, Sides};
use drawwell_core::time::{Instant, LocalDay, Zone};

use crate::chance::Chance;

/// How a family lives and writes down.
#[derive(Debug, Clone, Copy)]
pub struct Family {
    /// Rate of an empty breast, left and right, in mL/h.
    pub rates: [f64; 2],
    /// Capacity of a breast, in mL.
    pub capacity: f64,
    /// Sessions a day.
    pub sessions: u32,
    /// The gap at night, in hours.
    pub night: f64,
    /// How often a session is not written down.
    pub unlogged: f64,
    /// Spread of a day's rate, as a share of it.
    pub day_spread: f64,
    /// How like the day before a day is, 0 to 1.
    pub day_memory: f64,
    /// How often a session is a feed at the breast.
    pub at_breast: f64,
    /// How often such a feed is weighed.
    pub weighed: f64,
    /// From a day on, the rate is so many times what it was.
    pub change: Option<(u32, f64)>,
    /// The rate changes by this share each week, from a day on.
    pub drift_a_week: f64,
    /// The day from which it does.
    pub drift_from: u32,
    /// Share that a session leaves in the breast, in the middle of them.
    pub left_behind: f64,
    /// Whether the last session of each day, the one at night, is never written down.
    pub never_written: bool,
    /// How often a session is written down twice.
    pub doubles: f64,
    /// How often an amount is off by a digit.
    pub slips: f64,
}

impl Family {
    /// Eight sessions a day, everything written down.
    pub const USUAL: Self = Self {
        rates: [20.0, 24.0],
        capacity: 180.0,
        sessions: 8,
        night: 5.0,
        unlogged: 0.0,
        day_spread: 0.15,
        day_memory: 0.2,
        at_breast: 0.0,
        weighed: 0.0,
        change: None,
        drift_a_week: 0.0,
        drift_from: 0,
        left_behind: 0.15,
        never_written: false,
        doubles: 0.0,
        slips: 0.0,
    };
}

/// Which equations a family lives by.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Simulator {
    /// Those of this module.
    First,
    /// Those of [`crate::tired_family`].
    Second,
}

impl Simulator {
    /// Both.
    pub const BOTH: [Self; 2] = [Self::First, Self::Second];

    /// What it is called in a table.
    pub fn name(self) -> &'static str {
        match self {
            Self::First => "first",
            Self::Second => "second",
        }
    }

    /// Lives so many days and writes down.
    pub fn live(self, family: &Family, days: u32, seed: u64) -> WrittenDown {
        match self {
            Self::First => live(family, days, seed),
            Self::Second => crate::tired_family::live(family, days, seed),
        }
    }
}

/// What was written down, and what was true.
#[derive(Debug, Clone)]
pub struct WrittenDown {
    /// As the journal would give it.
    pub removals: Vec<Removal>,
    /// Milk truly made on each day, in mL.
    pub truth: Vec<f64>,
    /// The first day.
    pub first: LocalDay,
}

const HOUR: f64 = 3_600_000.0;
/// 2026-01-01T00:00:00Z.
const BEGINS: i64 = 1_767_225_600_000;

/// When the sessions of a day are, in hours of it: the gap at night lies
/// before the first, the others share the rest of the day.
fn hours_of_day(family: &Family, chance: &mut Chance) -> Vec<f64> {
    let wake = 6.0;
    let gap = (24.0 - family.night) / f64::from(family.sessions.saturating_sub(1).max(1));
    (0..family.sessions).map(|n| wake + f64::from(n) * gap + 0.3 * chance.normal()).map(|h| h.max(0.2)).collect()
}

/// Lives so many days and writes down.
pub fn live(family: &Family, days: u32, seed: u64) -> WrittenDown {
    let mut chance = Chance::seeded(seed);
    // Of their own, so that a family without them lives as before.
    let mut habits = Chance::seeded(seed ^ 0x6861_6269_7473);
    let first = LocalDay::on(chrono::NaiveDate::from_ymd_opt(2026, 1, 1).unwrap_or_default());
    let mut removals = Vec::new();
    let mut held = [40.0, 40.0];
    let mut now = 0.0;
    let mut day_effect = 0.0;
    let mut effects = Vec::new();
    for _ in 0..=days {
        let fresh = family.day_spread * (1.0 - family.day_memory.powi(2)).sqrt() * chance.normal();
        day_effect = family.day_memory * day_effect + fresh;
        effects.push(day_effect.exp());
    }
    let mut truth = vec![0.0; days as usize];
    let rate_at = |hour: f64, rate: f64| {
        let day = (hour / 24.0).floor().max(0.0);
        let effect = effects.get(day as usize).copied().unwrap_or(1.0);
        let stepped = family.change.filter(|(from, _)| day >= f64::from(*from)).map_or(1.0, |(_, times)| times);
        let weeks = ((hour - 24.0 * f64::from(family.drift_from)) / 168.0).max(0.0);
        let drifted = (1.0 + family.drift_a_week).powf(weeks);
        // More towards morning.
        let of_day = 1.0 + 0.12 * ((hour - 4.0) / 24.0 * std::f64::consts::TAU).cos();
        rate * effect * stepped * drifted * of_day
    };
    let mut fill = |held: &mut [f64; 2], from: f64, until: f64| {
        let mut at = from;
        while at < until - 1e-9 {
            let step = (until - at).min(0.25).min(((at / 24.0).floor() + 1.0) * 24.0 - at + 1e-9);
            for (rate, milk) in family.rates.iter().zip(held.iter_mut()) {
                let made = (family.capacity - *milk).max(0.0)
                    * (1.0 - (-rate_at(at + step / 2.0, *rate) * step / family.capacity).exp());
                *milk += made;
                if let Some(day) = truth.get_mut((at / 24.0).floor() as usize) {
                    *day += made;
                }
            }
            at += step;
        }
    };
    for day in 0..days {
        let mut hours = hours_of_day(family, &mut chance);
        hours.sort_by(f64::total_cmp);
        let last = hours.len().saturating_sub(1);
        for (nth, hour) in hours.into_iter().enumerate() {
            let at = f64::from(day) * 24.0 + hour;
            if at <= now {
                continue;
            }
            fill(&mut held, now, at);
            now = at;
            let letdown = 1.0 - family.left_behind + 0.05 * chance.normal();
            let mut took = [0.0; 2];
            for (milk, taken) in held.iter_mut().zip(&mut took) {
                *taken = *milk * (letdown + 0.05 * chance.normal()).clamp(0.4, 1.0);
                *milk -= *taken;
            }
            if chance.happens(family.unlogged) || (family.never_written && nth == last) {
                continue;
            }
            let read = |ml: f64, slip: f64| Some(Volume::from_canonical((ml / 5.0).round() * 5.0 * slip));
            let slip = if habits.happens(family.slips) { 10.0 } else { 1.0 };
            let milk = if chance.happens(family.at_breast) {
                if chance.happens(family.weighed) {
                    Milk::Together(Volume::from_canonical(took.iter().sum::<f64>() + 2.0 * chance.normal()))
                } else {
                    Milk::Unknown
                }
            } else {
                Milk::Sides { left: read(took[0], slip), right: read(took[1], 1.0) }
            };
            let removal = Removal {
                began: None,
                session: format!("s{}", removals.len()),
                at: Instant::from_unix_milliseconds(BEGINS + (at * HOUR) as i64),
                zone: Zone::UTC,
                sides: Sides::Both,
                milk,
                answered: Answered::default(),
            };
            let again = habits.happens(family.doubles);
            removals.push(removal.clone());
            if again {
                removals.push(Removal { session: format!("d{}", removals.len()), ..removal });
            }
        }
    }
    WrittenDown { removals, truth, first }
}
