//! A second sort of families with known truth, apart from the first in every equation, so
//! that what holds for both is no property of one.
//!
//! A breast slows by the square of how full it is, dH/dt = r (1 − (H/C)²), so that
//! H = C tanh(artanh(H₀/C) + r t / C); what was left behind slows it too. A session leaves
//! exp(−d) of what is there, d being how long it went on. The rate wanders by the hour (a
//! process of Ornstein and Uhlenbeck), readings are off by Student's t with four degrees of
//! freedom, and who is tired writes less down: more is missing at night, and more on some
//! days. Invented, as the first.

pub mod refill;

use drawwell_core::quantity::{Quantity, Volume};
use drawwell_core::record::{Answered, Milk, Removal, Sides};
use drawwell_core::time::{Instant, LocalDay, Zone};

use crate::chance::Chance;
use crate::simulated_family::{Family, WrittenDown};

const HOUR: f64 = 3_600_000.0;
/// 2026-01-01T00:00:00Z.
const BEGINS: i64 = 1_767_225_600_000;
/// The rate wanders in steps so long, in hours.
const STEP: f64 = 0.5;

/// One breast: what it holds slows it.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Slowing {
    pub(crate) capacity: f64,
    pub(crate) holds: f64,
}

impl Slowing {
    /// Fills over some hours at a rate, and says how much was made.
    pub(crate) fn fill(&mut self, rate: f64, hours: f64) -> f64 {
        let full = (self.holds / self.capacity).clamp(0.0, 0.999_999);
        let after = self.capacity * (full.atanh() + rate * hours / self.capacity).tanh();
        let made = (after - self.holds).max(0.0);
        self.holds += made;
        made
    }

    /// Takes what a session takes.
    pub(crate) fn empty(&mut self, left_behind: f64) -> f64 {
        let taken = self.holds * (1.0 - left_behind);
        self.holds -= taken;
        taken
    }
}

/// What a session leaves of what was there, so much in the middle of them.
pub(crate) fn leaves(usually: f64, chance: &mut Chance) -> f64 {
    if usually <= 0.0 {
        return 0.0;
    }
    (usually.ln() * (0.3 * chance.normal()).exp()).exp().min(0.9)
}

/// A wandering rate: each value is `memory` of the one before, and its spread stays `spread`.
pub(crate) struct Wandering {
    memory: f64,
    spread: f64,
    at: f64,
}

impl Wandering {
    /// Such that the mean of a day spreads by so much and is so much like the day before.
    pub(crate) fn over_days(day_spread: f64, day_memory: f64, chance: &mut Chance) -> Self {
        let lasts = (1.5 * day_memory).max(0.1);
        let of_a_day = 2.0 * lasts * lasts * ((-1.0 / lasts).exp() - 1.0 + 1.0 / lasts);
        let spread = day_spread / of_a_day.sqrt();
        Self { memory: (-STEP / 24.0 / lasts).exp(), spread, at: spread * chance.normal() }
    }

    /// The next value, as a factor of the rate; 1 in the mean.
    pub(crate) fn next(&mut self, chance: &mut Chance) -> f64 {
        let fresh = self.spread * (1.0 - self.memory * self.memory).sqrt();
        self.at = self.memory * self.at + fresh * chance.normal();
        (self.at - self.spread * self.spread / 2.0).exp()
    }
}

/// Student's t with four degrees of freedom.
fn heavy(chance: &mut Chance) -> f64 {
    let squares: f64 = (0..4).map(|_| chance.normal().powi(2)).sum();
    chance.normal() / (squares / 4.0).sqrt()
}

/// As it is read off a bottle: to 2 mL where it is little, else to 5.
fn read(milliliters: f64, chance: &mut Chance) -> f64 {
    let off = milliliters * (1.0 + 0.03 * heavy(chance));
    let to = if off < 40.0 { 2.0 } else { 5.0 };
    ((off / to).round() * to).max(0.0)
}

/// Hours of a day at which sessions end, the gap at night before the first.
fn hours_of_day(family: &Family, chance: &mut Chance) -> Vec<f64> {
    let gaps = family.sessions.saturating_sub(1).max(1);
    let each = (24.0 - family.night) / f64::from(gaps);
    let mut at = 6.5 + 0.35 * chance.normal();
    let mut hours = vec![at];
    let lengths: Vec<f64> = (0..gaps).map(|_| (0.12 * chance.normal()).exp()).collect();
    let all: f64 = lengths.iter().sum();
    for length in lengths {
        at += each * length * f64::from(gaps) / all;
        hours.push(at);
    }
    hours.truncate(family.sessions as usize);
    hours
}

/// Lives so many days and writes down.
pub fn live(family: &Family, days: u32, seed: u64) -> WrittenDown {
    let mut chance = Chance::seeded(seed ^ 0x7469_7265_6466_616d);
    let mut wandering = Wandering::over_days(family.day_spread, family.day_memory, &mut chance);
    let first = LocalDay::on(chrono::NaiveDate::from_ymd_opt(2026, 1, 1).unwrap_or_default());
    let mut breasts = [Slowing { capacity: family.capacity, holds: 30.0 }; 2];
    let mut truth = vec![0.0; days as usize];
    let mut removals = Vec::new();
    let (mut now, mut tired, mut pace) = (0.0_f64, chance.normal(), 1.0);
    let mut paced_until = 0.0;
    for day in 0..days {
        tired = 0.6 * tired + 0.8 * chance.normal();
        let hours = hours_of_day(family, &mut chance);
        let last = hours.len().saturating_sub(1);
        for (nth, hour) in hours.into_iter().enumerate() {
            let at = f64::from(day) * 24.0 + hour;
            if at <= now + 0.25 {
                continue;
            }
            while now < at - 1e-9 {
                if now >= paced_until - 1e-9 {
                    pace = wandering.next(&mut chance);
                    paced_until = now + STEP;
                }
                let midnight = ((now / 24.0).floor() + 1.0) * 24.0;
                let until = at.min(paced_until).min(if midnight > now + 1e-9 { midnight } else { midnight + 24.0 });
                let of_day = (now / 24.0).floor().max(0.0);
                let stepped = family.change.filter(|(from, _)| of_day >= f64::from(*from)).map_or(1.0, |(_, by)| by);
                let weeks = ((now - 24.0 * f64::from(family.drift_from)) / 168.0).max(0.0);
                let drifted = (weeks * family.drift_a_week.ln_1p()).exp();
                let by_the_hour = 1.0 + 0.1 * ((now - 3.0) / 24.0 * std::f64::consts::TAU).cos();
                for (breast, rate) in breasts.iter_mut().zip(family.rates) {
                    let made = breast.fill(rate * pace * stepped * drifted * by_the_hour, until - now);
                    if let Some(all) = truth.get_mut(of_day as usize) {
                        *all += made;
                    }
                }
                now = until;
            }
            let took = breasts.each_mut().map(|breast| {
                let left = leaves(family.left_behind, &mut chance);
                breast.empty(left)
            });
            let is_night = !(6.0..22.0).contains(&at.rem_euclid(24.0));
            let forgets = family.unlogged * if is_night { 1.8 } else { 0.75 } * (0.7 * tired - 0.245).exp();
            let unwritten = family.never_written && nth == last;
            if chance.happens(forgets.min(0.95)) || unwritten {
                continue;
            }
            let mut slip = 1.0;
            if chance.happens(family.slips) {
                slip = if chance.happens(0.5) { 10.0 } else { 0.1 };
            }
            let mut side = |ml: f64, slip: f64| Some(Volume::from_canonical(read(ml, &mut chance) * slip));
            let sides = Milk::Sides { left: side(took[0], slip), right: side(took[1], 1.0) };
            let milk = if !chance.happens(family.at_breast) {
                sides
            } else if chance.happens(family.weighed) {
                Milk::Together(Volume::from_canonical(took.iter().sum::<f64>() + 3.0 * heavy(&mut chance)))
            } else {
                Milk::Unknown
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
            let again = chance.happens(family.doubles).then(|| Removal {
                session: format!("d{}", removals.len()),
                at: removal.at.plus(drawwell_core::time::Span::minutes(chance.whole(0, 4))),
                ..removal.clone()
            });
            removals.push(removal);
            removals.extend(again);
        }
    }
    WrittenDown { removals, truth, first }
}
