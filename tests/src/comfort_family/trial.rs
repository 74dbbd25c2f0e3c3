//! Families that try two ways of which one truly brings so much more. It is looked at after each
//! pair, and stopped at the first answer: the worst that looking early can do.

use drawwell_core::answer::trial::{
    answer, order, Apart, Design, Done, Milk, Outcome, Reached, SetUp, TrialAnswer, Verdict, Way,
};
use drawwell_core::guidance::{ComfortRules, Rules};
use drawwell_core::quantity::{Count, Quantity, Volume};
use drawwell_core::time::{Instant, Span};

use crate::chance::Chance;

/// A trial.
#[derive(Debug, Clone, Copy)]
pub struct Tried {
    /// How it is compared.
    pub design: Design,
    /// So much more with the first way, as a share.
    pub more: f64,
    /// Sessions planned.
    pub planned: u32,
    /// Chance of a session, as a share.
    pub noise: f64,
    /// Chance of a side.
    pub of_side: f64,
    /// How often a session is done the other way than drawn.
    pub not_followed: f64,
    /// How often nobody knows what came.
    pub unknown: f64,
    /// Whether the refill curve says what was to be expected.
    pub expected: bool,
}

impl Tried {
    /// What is usual.
    pub const USUAL: Self = Self {
        design: Design::Sides,
        more: 0.0,
        planned: 40,
        noise: 0.15,
        of_side: 0.1,
        not_followed: 0.0,
        unknown: 0.05,
        expected: true,
    };
}

/// How often it is right.
#[derive(Debug, Clone, Copy, Default)]
pub struct Row {
    /// The first way is called better.
    pub first: f64,
    /// The second way is.
    pub second: f64,
    /// No difference that matters.
    pub none: f64,
    /// It can't be told.
    pub not_told: f64,
    /// How far the figure is off at the end, in per cent of what comes.
    pub off: f64,
    /// The same, not set against what was to be expected.
    pub off_plain: f64,
    /// The range at the end held the truth.
    pub held: f64,
    /// Sessions until it was told, of those told, on average.
    pub sessions: f64,
}

fn tried(of: &Tried, seed: u64) -> (SetUp, Vec<Done>, f64) {
    let mut chance = Chance::seeded(seed ^ 0x7472_6961);
    let set_up = SetUp {
        design: of.design,
        outcome: Outcome::Amount,
        planned: Count::new(of.planned),
        about_the_pump: false,
        seed: seed as u32,
    };
    let drawn = order(set_up.seed, set_up.planned);
    let rate = chance.between(15.0, 35.0);
    let left_makes = chance.between(0.7, 1.3);
    let mut now = Instant::from_unix_milliseconds(1_780_000_000_000);
    let mut truth = 0.0;
    let mut day = 0.0;
    let mut done = Vec::new();
    for (place, drawn) in drawn.iter().enumerate() {
        let gap = chance.between(1.8, 5.5);
        now = now.plus(Span::milliseconds((gap * 3_600_000.0) as i64));
        if place % 7 == 0 {
            day = 0.3 * day + 0.1 * chance.normal();
        }
        let way = if chance.happens(of.not_followed) { drawn.other() } else { *drawn };
        let of_session = day + of.noise * chance.normal();
        let mut milk = |of_side: f64, way: Way| {
            let usual = rate * of_side * gap * (1.0 - 0.03 * gap);
            let gain = if way == Way::A { 1.0 + of.more } else { 1.0 };
            let amount = usual * gain * (of_session + of.of_side * chance.normal()).exp();
            // Another law of filling than the truth, as a curve that was fitted would have.
            let expected = rate * of_side * gap * (1.0 - 0.02 * gap) * 1.05;
            Milk {
                amount: Volume::from_canonical((amount / 2.5).round() * 2.5),
                expected: of.expected.then(|| Volume::from_canonical(expected)),
            }
        };
        let on_right = if of.design == Design::Sides { way.other() } else { way };
        let (left, right) = (milk(left_makes, way), milk(1.0, on_right));
        truth += of.more / (1.0 + of.more / 2.0) / f64::from(of.planned);
        let known = !chance.happens(of.unknown);
        let reached = if known { Reached::milk(Some(left), Some(right)) } else { Reached::default() };
        done.push(Done {
            session: format!("s{place}"),
            at: now,
            place,
            drawn: *drawn,
            done: Some(way),
            pump: None,
            reached,
        });
    }
    (set_up, done, truth)
}

/// What one trial says when all planned sessions are done.
pub fn one(of: &Tried, seed: u64) -> TrialAnswer {
    let (set_up, done, _) = tried(of, seed);
    answer(&done, &set_up, &ComfortRules::read(&Rules::default()))
}

/// Many trials.
pub fn row(of: &Tried, families: u64) -> Row {
    let rules = ComfortRules::read(&Rules::default());
    let mut row = Row::default();
    let (mut told, mut ranges) = (0.0, 0.0);
    for seed in 0..families {
        let (set_up, done, truth) = tried(of, seed);
        let found = answer(&done, &set_up, &rules);
        let one = 1.0 / families as f64;
        match found.verdict {
            Verdict::Better(Way::A) => row.first += one,
            Verdict::Better(Way::B) => row.second += one,
            Verdict::NoDifferenceThatMatters => row.none += one,
            Verdict::CannotTellYet | Verdict::CannotTell => row.not_told += one,
        }
        if let Some(pairs) = found.told_after {
            row.sessions += f64::from(pairs.get()) * 2.0;
            told += 1.0;
        }
        if let (Some([value, low, high]), Some(Apart::Milk(plain)), Some(Apart::Milk(set))) =
            (found.share, found.plain, found.apart)
        {
            ranges += 1.0;
            row.off += (value.fraction() - truth).abs();
            let usual = set.value.canonical() / value.fraction();
            if usual.is_finite() && usual.abs() > 1.0 {
                row.off_plain += (plain.value.canonical() / usual - truth).abs();
            }
            row.held += f64::from(u8::from(low.fraction() <= truth && truth <= high.fraction()));
        }
    }
    row.off *= 100.0 / f64::max(ranges, 1.0);
    row.off_plain *= 100.0 / f64::max(ranges, 1.0);
    row.held /= f64::max(ranges, 1.0);
    row.sessions /= f64::max(told, 1.0);
    row
}
