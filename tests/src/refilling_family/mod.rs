//! Families whose breasts fill in a known way: V = C · (1 − exp(−r·Δ / C)), faster and
//! slower by the time of day, drifting over weeks, with noise, missing sessions and slips.

pub mod tables;

use drawwell_core::answer::supply::Calendar;
use drawwell_core::quantity::{Quantity, Volume};
use drawwell_core::record::{Answered, Milk, Removal, Sides};
use drawwell_core::time::{DayStart, Instant, Span, Zone};

use crate::chance::Chance;

/// How one breast fills.
#[derive(Debug, Clone, Copy)]
pub struct Breast {
    /// mL/h just after an emptying, on the last day, in the mean of the day.
    pub rate: f64,
    /// mL that it flattens to; none where it never does.
    pub capacity: Option<f64>,
}

impl Breast {
    /// mL after so many hours, at a rate that is so many times its own.
    pub fn holds(&self, hours: f64, times: f64) -> f64 {
        let straight = self.rate * times * hours;
        match self.capacity {
            Some(capacity) => capacity * (1.0 - (-straight / capacity).exp()),
            None => straight,
        }
    }
}

/// A family.
#[derive(Debug, Clone, Copy)]
pub struct RefillingFamily {
    /// Left and right.
    pub breasts: [Breast; 2],
    /// Sessions a day.
    pub sessions: u32,
    /// The longest sleep of a night, in hours, in the mean; half of the nights it is cut.
    pub night: f64,
    /// Spread of what comes, of 1.
    pub noise: f64,
    /// How much the time of day makes of the rate, of 1.
    pub hours: f64,
    /// How much the rate changes by the day, of 1.
    pub drift: f64,
    /// Sessions that were not written down.
    pub missing: f64,
    /// Amounts that nobody knows.
    pub unknown: f64,
    /// Amounts that were mistyped.
    pub mistyped: f64,
    /// Share that is left in the breast at each session, in the mean; it comes next time.
    pub left_behind: f64,
}

/// A record of a family, and what is true of it.
pub struct Record {
    /// What was written down, by time.
    pub removals: Vec<Removal>,
    /// The end of the last session.
    pub now: Instant,
    /// Where its days begin.
    pub calendar: Calendar,
}

/// The morning of the first day of each: 1 March 2026, 06:00 UTC.
const FIRST: i64 = 1_772_344_800_000;

fn hours(value: f64) -> Span {
    Span::milliseconds((value * 3_600_000.0) as i64)
}

impl RefillingFamily {
    /// How many times its own rate a breast fills at an instant.
    fn times(&self, at: Instant, now: Instant) -> f64 {
        let hour = (at.unix_milliseconds().rem_euclid(86_400_000)) as f64 / 3_600_000.0;
        let days = at.since(now).in_milliseconds() as f64 / 86_400_000.0;
        (1.0 + self.hours * (std::f64::consts::TAU * (hour - 4.0) / 24.0).cos()) * (self.drift * days).exp()
    }

    /// mL in the mean after an interval.
    pub fn truly(&self, breast: &Breast, from: Instant, until: Instant, now: Instant) -> f64 {
        let gap = until.since(from).in_milliseconds() as f64 / 3_600_000.0;
        let steps = 24;
        let mean = (0..steps)
            .map(|i| self.times(from.plus(hours(gap * (f64::from(i) + 0.5) / f64::from(steps))), now))
            .sum::<f64>()
            / f64::from(steps);
        breast.holds(gap, mean)
    }

    /// What is written down over so many days.
    pub fn record(&self, days: u32, chance: &mut Chance) -> Record {
        let begin = Instant::from_unix_milliseconds(FIRST);
        let mut ends = Vec::new();
        for day in 0..days {
            let waking = begin.plus(Span::hours(i64::from(day) * 24));
            let long = if chance.happens(0.5) { self.night } else { self.night * chance.between(0.45, 0.8) };
            let by_day = 24.0 - long;
            let mut at = 0.0;
            for _ in 0..self.sessions {
                ends.push(waking.plus(hours(at + chance.between(-0.35, 0.35))));
                at += by_day / f64::from(self.sessions - 1).max(1.0);
                if at > by_day + 0.01 {
                    break;
                }
            }
        }
        ends.sort();
        let now = ends.last().copied().unwrap_or(begin);
        let sigma = (1.0 + self.noise * self.noise).ln().sqrt();
        let mut left = [0.0; 2];
        let mut before: Option<Instant> = None;
        let mut removals = Vec::new();
        for (i, at) in ends.iter().enumerate() {
            let mut gave = [0.0; 2];
            if let Some(before) = before {
                for ((breast, left), gave) in self.breasts.iter().zip(&mut left).zip(&mut gave) {
                    let held = self.truly(breast, before, *at, now) + *left;
                    let leaves = (self.left_behind * chance.between(0.0, 2.0)).min(0.9);
                    *left = held * leaves;
                    let noise = (sigma * chance.normal() - sigma * sigma / 2.0).exp();
                    *gave = held * (1.0 - leaves) * noise;
                }
            }
            before = Some(*at);
            if chance.happens(self.missing) {
                continue;
            }
            let [mut left_gave, right_gave] = gave;
            if chance.happens(self.mistyped) {
                left_gave *= if chance.happens(0.5) { 10.0 } else { 0.1 };
            }
            let milk = match chance.happens(self.unknown) {
                true => Milk::Unknown,
                false => Milk::Sides {
                    left: Some(Volume::from_canonical(left_gave)),
                    right: Some(Volume::from_canonical(right_gave)),
                },
            };
            removals.push(Removal {
                began: None,
                session: format!("s{i}"),
                at: *at,
                zone: Zone::UTC,
                sides: Sides::Both,
                milk,
                answered: Answered::default(),
            });
        }
        Record { removals, now, calendar: Calendar { start: DayStart::MIDNIGHT, zone: Zone::UTC } }
    }
}

/// A family by chance: one of those that are to be met.
pub fn some_family(chance: &mut Chance, straight: bool) -> RefillingFamily {
    let rate = (chance.between(5.0_f64.ln(), 40.0_f64.ln())).exp();
    let capacity = (!straight).then(|| rate * (chance.between(2.5_f64.ln(), 14.0_f64.ln())).exp());
    let other = chance.between(0.6, 1.6);
    RefillingFamily {
        breasts: [
            Breast { rate, capacity },
            Breast { rate: rate * other, capacity: capacity.map(|c| c * other * chance.between(0.8, 1.25)) },
        ],
        sessions: chance.whole(5, 9) as u32,
        night: chance.between(5.0, 8.5),
        noise: chance.between(0.08, 0.25),
        hours: chance.between(0.0, 0.15),
        drift: chance.between(-0.006, 0.006),
        missing: chance.between(0.0, 0.1),
        unknown: chance.between(0.0, 0.1),
        mistyped: chance.between(0.0, 0.01),
        left_behind: 0.0,
    }
}
