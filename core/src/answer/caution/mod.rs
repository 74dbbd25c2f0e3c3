//! Caution: must somebody look now?
//!
//! In: signs that were written down, pain of the sessions, what the watch and the pump
//! checks say, and what was dealt with. Out: every [`Caution`] there was, each with what it
//! was seen in and what became of it. [`sign`] reads an entry; [`body`], [`fever`] and
//! [`lasting`] read signs, [`comfort`] pain, [`pull`] a pump; [`life`] says how a caution
//! begins and ends. Nothing here is a diagnosis. Limits and sources are data:
//! [`crate::guidance::CautionRules`].

pub mod birth;
pub mod body;
pub mod comfort;
mod fever;
mod lasting;
mod life;
pub mod pull;
pub mod sign;

use crate::guidance::{CautionSource, Urgency};
use crate::quantity::{Count, Score, Temperature, Vacuum};
use crate::time::{Instant, Span};

pub use birth::Births;
pub use life::{Became, Dealt};
pub use sign::{BodySign, Where};

/// Something that somebody must look at, or had to.
#[derive(Debug, Clone, PartialEq)]
pub struct Caution {
    /// Stable name; where it comes from stands under it in the table.
    pub source: &'static CautionSource,
    /// Of which record it is, where there may be several: a pump.
    pub of: Option<String>,
    /// The first fact it rests on.
    pub began: Instant,
    /// The latest: one that is later than what was dealt with brings it back.
    pub seen: Instant,
    /// What it was seen in, by time.
    pub because: Vec<Because>,
    /// What became of it.
    pub became: Became,
}

/// A fact that a caution rests on, or that answers it.
#[derive(Debug, Clone, PartialEq)]
pub enum Because {
    /// A temperature, as measured.
    Temperature(Instant, Temperature),
    /// A sign, by its field, and where.
    Sign(Instant, &'static str, Option<Where>),
    /// A sign that was looked for and is not there.
    NotThere(Instant, &'static str),
    /// It was said to be better.
    Better(Instant),
    /// Signs since then, and still so long after.
    Since(Instant, Span),
    /// Signs that were written down last then, and nothing after.
    NoWordSince(Instant),
    /// Pain of the breast itself.
    BreastPain(Instant, Score),
    /// Pain within a session, from and to.
    PainRose(Instant, Score, Score),
    /// Pain at the end of a session.
    PainHigh(Instant, Score),
    /// Pain from a score on, in so many of the latest so many sessions, the last of them then.
    PainOften(Instant, Score, Count, Count),
    /// It hurt without a score, or was turned down, in so many of the latest so many sessions.
    HurtsOften(Instant, Count, Count),
    /// A session that was otherwise.
    Session(Instant),
    /// An entry of temperature or signs that said more.
    Entry(Instant),
    /// Less milk since a day: as the watch says it.
    Drop(crate::answer::supply::watch::Drop),
    /// What a pump pulls at most by the readings, and the lower end of its range.
    Pull(Instant, Vacuum, Vacuum),
}

impl Because {
    /// When it was; none where it is of a day.
    pub fn at(&self) -> Option<Instant> {
        match self {
            Self::Temperature(at, ..)
            | Self::Sign(at, ..)
            | Self::NotThere(at, ..)
            | Self::Better(at)
            | Self::Since(at, ..)
            | Self::NoWordSince(at)
            | Self::BreastPain(at, ..)
            | Self::PainRose(at, ..)
            | Self::PainHigh(at, ..)
            | Self::PainOften(at, ..)
            | Self::HurtsOften(at, ..)
            | Self::Session(at)
            | Self::Entry(at)
            | Self::Pull(at, ..) => Some(*at),
            Self::Drop(_) => None,
        }
    }
}

impl Caution {
    /// A caution of the table that one finding makes; none where it is not in it.
    pub fn new(key: &str, seen: Instant, because: Vec<Because>) -> Option<Self> {
        let source = CautionSource::named(key)?;
        Some(Self { source, of: None, began: seen, seen, because, became: Became::Stands })
    }

    /// The same, dealt with where somebody did.
    #[must_use]
    pub fn dealt_with(mut self, dealt: &[Dealt]) -> Self {
        let key = self.key();
        if let Some(found) = dealt.iter().filter(|d| d.key == key && d.seen >= self.seen).min_by_key(|d| d.at) {
            self.became = Became::Dealt { at: found.at, how: found.how.clone(), note: found.note.clone() };
        }
        self
    }

    /// The name under which it is dealt with: its own, and the record it is of.
    pub fn key(&self) -> String {
        match &self.of {
            Some(of) => format!("{}:{of}", self.source.key),
            None => self.source.key.clone(),
        }
    }

    /// How soon somebody must look.
    pub fn urgency(&self) -> Urgency {
        self.source.urgency
    }

    /// Whether it stands.
    pub fn stands(&self) -> bool {
        self.became == Became::Stands
    }

    /// Whether what it rests on is of now; else it waits for somebody to say what came of it.
    pub fn is_of_now(&self, now: Instant, hold: Span) -> bool {
        now.since(self.seen) <= hold
    }
}

/// In the order of the page: what stands before what is over, what is urgent before what the
/// consultant hears, of it what is of now before what waits, the most urgent first, and the
/// latest of those before.
pub fn in_order(cautions: &mut [Caution], now: Instant, hold: Span) {
    cautions.sort_by_key(|caution| {
        let over = caution.became.over_at();
        let waits = over.is_none() && !caution.is_of_now(now, hold);
        let calm = caution.urgency() == Urgency::Consultant;
        (over.is_some(), calm, waits, caution.urgency(), std::cmp::Reverse(over.unwrap_or(caution.seen)))
    });
}
