//! Caution: must somebody look now?
//!
//! In: signs that were written down, pain of the latest sessions, what the watch and the
//! pump checks say. Out: [`Caution`]s, each with what it was seen in and the latest fact it
//! rests on. [`body`] reads signs, [`comfort`] pain, [`pull`] a pump. Nothing here is a
//! diagnosis. Limits and sources are data: [`crate::guidance::CautionRules`].

pub mod body;
pub mod comfort;
pub mod pull;

use crate::guidance::{CautionSource, Urgency};
use crate::quantity::{Score, Temperature, Vacuum};
use crate::time::{Instant, Span};

pub use body::{BodySign, Where};

/// Something that somebody must look at.
#[derive(Debug, Clone, PartialEq)]
pub struct Caution {
    /// Stable name; where it comes from stands under it in the table.
    pub source: &'static CautionSource,
    /// Of which record it is, where there may be several: a pump.
    pub of: Option<String>,
    /// The latest fact it rests on: one that is later brings it back.
    pub seen: Instant,
    /// What it was seen in.
    pub because: Vec<Because>,
}

/// A fact that a caution rests on.
#[derive(Debug, Clone, PartialEq)]
pub enum Because {
    /// A temperature, as measured.
    Temperature(Instant, Temperature),
    /// A sign, by its field, and where.
    Sign(Instant, &'static str, Option<Where>),
    /// Signs since then, and how long by now.
    Since(Instant, Span),
    /// Pain within a session, from and to.
    PainRose(Instant, Score, Score),
    /// Pain at the end of a session.
    PainHigh(Instant, Score),
    /// Less milk since a day: as the watch says it.
    Drop(crate::answer::supply::watch::Drop),
    /// What a pump pulls at most by the readings, and the lower end of its range.
    Pull(Instant, Vacuum, Vacuum),
}

impl Caution {
    /// A caution of the table; none where it is not in it.
    pub fn new(key: &str, seen: Instant, because: Vec<Because>) -> Option<Self> {
        Some(Self { source: CautionSource::named(key)?, of: None, seen, because })
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
}

/// A caution that was dealt with: what was seen by then is over.
#[derive(Debug, Clone, PartialEq)]
pub struct Dealt {
    /// Its name.
    pub key: String,
    /// The latest fact that was seen by then.
    pub seen: Instant,
}

/// What still stands, the most urgent first and the latest of those before.
pub fn standing(mut cautions: Vec<Caution>, dealt: &[Dealt]) -> Vec<Caution> {
    cautions.retain(|caution| {
        let key = caution.key();
        !dealt.iter().any(|d| d.key == key && d.seen >= caution.seen)
    });
    cautions.sort_by_key(|caution| (caution.urgency(), std::cmp::Reverse(caution.seen)));
    cautions
}
