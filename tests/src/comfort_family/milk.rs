//! Families with a known milk curve: what comes follows the gap, the side, the hour, the length,
//! and the vacuum as the family's truth has it, times chance of the session and of the side.

use drawwell_core::answer::milk_by_vacuum::{milk_by_vacuum, ByChoice, MilkAt, Says};
use drawwell_core::answer::supply::Side;
use drawwell_core::guidance::{ComfortRules, Rules};
use drawwell_core::quantity::{Quantity, Vacuum, Volume};
use drawwell_core::time::{Instant, Moment, Span, Zone};

use crate::chance::Chance;

/// What more vacuum truly does.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Truth {
    /// Nothing.
    Flat,
    /// A quarter more from the weakest to the strongest.
    Rises,
    /// A little more up to the middle, a third less from there to the strongest.
    Bends,
}

/// How settings are chosen.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Chosen {
    /// By whim.
    Anyhow,
    /// Like the one before, mostly.
    Slowly,
    /// Stronger when less came than usual, softer when more did.
    StrongerAfterLess,
    /// Stronger within the session where less is coming: nobody can see it afterwards.
    StrongerWhileLess,
}

/// A family.
#[derive(Debug, Clone, Copy)]
pub struct Yield {
    /// What is true.
    pub truth: Truth,
    /// How it is set.
    pub chosen: Chosen,
    /// Sessions.
    pub sessions: u32,
    /// Chance of a session, as a share.
    pub noise: f64,
    /// Days are like the day before by so much.
    pub memory: f64,
}

impl Yield {
    /// What is usual.
    pub const USUAL: Self = Self { truth: Truth::Flat, chosen: Chosen::Anyhow, sessions: 60, noise: 0.15, memory: 0.3 };
}

/// How often each is said.
#[derive(Debug, Clone, Copy, Default)]
pub struct Row {
    /// More came at the higher settings.
    pub rises: f64,
    /// No sign that more brings more.
    pub no_sign: f64,
    /// Less came at the higher settings.
    pub less: f64,
    /// Not yet.
    pub not_yet: f64,
    /// Chosen, so that it may be the other way round: said with it.
    pub may_mislead: f64,
    /// And a sign was seen.
    pub sign: f64,
}

fn true_log(truth: Truth, place: f64) -> f64 {
    match truth {
        Truth::Flat => 0.0,
        Truth::Rises => 1.25_f64.ln() * place,
        Truth::Bends if place <= 0.5 => 0.1 * place,
        Truth::Bends => 0.05 + (2.0_f64 / 3.0).ln() * (place - 0.5) * 2.0,
    }
}

/// What one family is told.
pub fn said(of: &Yield, seed: u64) -> (Says, ByChoice) {
    let mut chance = Chance::seeded(seed ^ 0x6d69_6c6b);
    let zone = Zone::named("Europe/Berlin").unwrap_or(Zone::UTC);
    let mut now = Instant::from_unix_milliseconds(1_780_000_000_000);
    let rate = chance.between(15.0, 35.0);
    let (mut day, mut last, mut place) = (0.0, 0.0, 0.5_f64);
    let mut all = Vec::new();
    for number in 0..of.sessions {
        let gap = chance.between(1.8, 5.5);
        now = now.plus(Span::milliseconds((gap * 3_600_000.0) as i64));
        if number % 7 == 0 {
            day = of.memory * day + (1.0 - of.memory * of.memory).sqrt() * of.noise * 0.6 * chance.normal();
        }
        let of_session = of.noise * chance.normal();
        place = match of.chosen {
            Chosen::Anyhow => chance.unit(),
            Chosen::Slowly => (place + 0.15 * chance.normal()).clamp(0.0, 1.0),
            Chosen::StrongerAfterLess => {
                (0.5 + 0.6 * (place - 0.5) - 1.2 * last + 0.08 * chance.normal()).clamp(0.0, 1.0)
            }
            Chosen::StrongerWhileLess => (0.5 - 1.2 * of_session + 0.15 * chance.normal()).clamp(0.0, 1.0),
        };
        let set = (140.0 + 100.0 * place) / 10.0;
        let vacuum = set.round() * 10.0;
        last = day + of_session;
        let at = Moment::new(now, zone);
        let lasted = chance.between(12.0, 22.0);
        for (side, share) in [(Side::Left, 0.45), (Side::Right, 0.55)] {
            let hour = (now.unix_milliseconds() as f64 / 3_600_000.0 % 24.0) / 24.0 * std::f64::consts::TAU;
            let log = (rate * share * gap).ln() - 0.02 * gap
                + 0.12 * hour.cos()
                + 0.15 * (lasted / 16.0).ln()
                + true_log(of.truth, place)
                + day
                + of_session
                + 0.1 * chance.normal();
            let milk = (log.exp() / 2.5).round() * 2.5;
            all.push(MilkAt {
                session: format!("s{number}"),
                at: at.clone(),
                side: Some(side),
                setting: Vacuum::from_canonical(vacuum),
                milk: Volume::from_canonical(milk),
                expected: None,
                gap: Span::milliseconds((gap * 3_600_000.0) as i64),
                lasted: Some(Span::milliseconds((lasted * 60_000.0) as i64)),
                drawn: false,
            });
        }
    }
    let rules = ComfortRules::read(&Rules::default());
    match milk_by_vacuum(&all, None, &rules) {
        Some(found) => (found.says, found.by_choice),
        None => (Says::NeverVaried, ByChoice::Chosen),
    }
}

/// Many families.
pub fn row(of: &Yield, families: u64) -> Row {
    let mut row = Row::default();
    for seed in 0..families {
        let (says, by_choice) = said(of, seed);
        let one = 1.0 / families as f64;
        match says {
            Says::Rises(_) => row.rises += one,
            Says::NoSignOfMore(_) => row.no_sign += one,
            Says::LessAtHigher(_) => row.less += one,
            Says::NeverVaried | Says::CannotTellYet(_) => row.not_yet += one,
        }
        row.may_mislead += if by_choice == ByChoice::Drawn { 0.0 } else { one };
        row.sign += if by_choice == ByChoice::StrongerAfterLess { one } else { 0.0 };
    }
    row
}
