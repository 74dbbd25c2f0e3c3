//! A caution: where it comes from, what it rests on, and what became of it.

use super::because::{Became, Because, Dealt};
use crate::guidance::{CautionSource, Urgency};
use crate::time::{Instant, Span};

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
