//! The same equations for the refill curve: a record, and what the hours after it bring.

use drawwell_core::answer::supply::Calendar;
use drawwell_core::quantity::{Quantity, Volume};
use drawwell_core::record::{Answered, Milk, Removal, Sides};
use drawwell_core::time::{DayStart, Instant, Span, Zone};

use super::{heavy, leaves, read, Slowing, Wandering, STEP};
use crate::chance::Chance;
use crate::refilling_family::{Record, RefillingFamily};

/// The morning of the first day: 1 March 2026, 06:00 UTC.
const FIRST: i64 = 1_772_344_800_000;
/// What never flattens, in mL.
const WITHOUT_END: f64 = 1e6;
/// A day's rate spreads by so much, and is so much like the day before.
const DAY: (f64, f64) = (0.1, 0.3);

/// A family that lives on.
pub struct Living<'a> {
    family: &'a RefillingFamily,
    breasts: [Slowing; 2],
    wandering: Wandering,
    hour: f64,
    paced: f64,
    pace: f64,
    lasts: f64,
}

impl<'a> Living<'a> {
    fn new(family: &'a RefillingFamily, days: u32, chance: &mut Chance) -> Self {
        let breasts = family
            .breasts
            .map(|breast| Slowing { capacity: breast.capacity.unwrap_or(WITHOUT_END), holds: breast.rate });
        let wandering = Wandering::over_days(DAY.0, DAY.1, chance);
        Self { family, breasts, wandering, hour: 0.0, paced: 0.0, pace: 1.0, lasts: f64::from(days) * 24.0 }
    }

    fn fill(&mut self, until: f64, chance: &mut Chance, wanders: bool) {
        while self.hour < until - 1e-9 {
            if self.hour >= self.paced - 1e-9 {
                self.pace = if wanders { self.wandering.next(chance) } else { 1.0 };
                self.paced = self.hour + STEP;
            }
            let to = until.min(self.paced);
            let of_day = 1.0 + self.family.hours * ((self.hour + 6.0 - 4.0) / 24.0 * std::f64::consts::TAU).cos();
            let drift = (self.family.drift * (self.hour - self.lasts) / 24.0).exp();
            for (breast, own) in self.breasts.iter_mut().zip(self.family.breasts) {
                breast.fill(own.rate * self.pace * of_day * drift, to - self.hour);
            }
            self.hour = to;
        }
    }

    /// What the next hours bring, in the mean, where sessions end after these gaps.
    pub fn brings(&self, gaps: &[f64]) -> f64 {
        let wandering = Wandering { memory: 0.0, spread: 0.0, at: 0.0 };
        let mut on = Living { wandering, family: self.family, ..*self };
        let mut still = Chance::seeded(1);
        let mut all = 0.0;
        for gap in gaps {
            on.fill(on.hour + gap, &mut still, false);
            all += on.breasts.each_mut().map(|b| b.empty(self.family.left_behind)).iter().sum::<f64>();
        }
        all
    }

    /// What they truly bring.
    pub fn lives_on(mut self, gaps: &[f64], chance: &mut Chance) -> f64 {
        let mut all = 0.0;
        for gap in gaps {
            self.fill(self.hour + gap, chance, true);
            all += self.session(chance).iter().sum::<f64>();
        }
        all
    }

    fn session(&mut self, chance: &mut Chance) -> [f64; 2] {
        let usually = self.family.left_behind;
        let noise = self.family.noise;
        self.breasts.each_mut().map(|breast| {
            let left = leaves(usually, chance);
            (breast.empty(left) * (1.0 + 0.5 * noise * heavy(chance)).clamp(0.3, 2.0)).max(0.0)
        })
    }
}

/// What is written down over so many days, and the family as it then is.
pub fn record<'a>(family: &'a RefillingFamily, days: u32, chance: &mut Chance) -> (Record, Living<'a>) {
    let mut living = Living::new(family, days, chance);
    let mut removals = Vec::new();
    let mut tired = chance.normal();
    let mut ended = 0.0;
    for day in 0..days {
        tired = 0.6 * tired + 0.8 * chance.normal();
        let night = family.night * (0.15 * chance.normal()).exp();
        let each = (24.0 - night) / f64::from(family.sessions.saturating_sub(1).max(1));
        for nth in 0..family.sessions {
            let at = f64::from(day) * 24.0 + f64::from(nth) * each + 0.3 * chance.normal();
            if at <= living.hour + 0.75 {
                continue;
            }
            living.fill(at, chance, true);
            ended = at;
            let took = living.session(chance);
            let is_night = nth == 0 || nth + 1 == family.sessions;
            let forgets = family.missing * if is_night { 1.8 } else { 0.75 } * (0.7 * tired - 0.245).exp();
            // The last is written down: the present is what follows it.
            let is_last = day + 1 == days && nth + 1 == family.sessions;
            if !is_last && chance.happens(forgets.min(0.95)) {
                continue;
            }
            let mut slip = 1.0;
            if chance.happens(family.mistyped) {
                slip = if chance.happens(0.5) { 10.0 } else { 0.1 };
            }
            let milk = if !is_last && chance.happens(family.unknown) {
                Milk::Unknown
            } else {
                let [left, right] = took.map(|ml| read(ml, chance));
                Milk::Sides {
                    left: Some(Volume::from_canonical(left * slip)),
                    right: Some(Volume::from_canonical(right)),
                }
            };
            removals.push(Removal {
                began: None,
                session: format!("s{}", removals.len()),
                at: Instant::from_unix_milliseconds(FIRST + (at * 3_600_000.0) as i64),
                zone: Zone::UTC,
                sides: Sides::Both,
                milk,
                answered: Answered::default(),
            });
        }
    }
    let now = Instant::from_unix_milliseconds(FIRST).plus(Span::milliseconds((ended * 3_600_000.0) as i64));
    let calendar = Calendar { start: DayStart::MIDNIGHT, zone: Zone::UTC };
    (Record { removals, now, calendar }, living)
}
