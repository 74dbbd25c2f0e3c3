//! The life of a caution: it stands, was dealt with, is no longer true, or is out of date.
//!
//! What is urgent stands until somebody dealt with it or a later fact answers it; it never
//! lapses by itself. What a consultant is to hear of lapses, and that is said too.

use super::because::{Became, Because, Dealt};
use super::Caution;
use crate::guidance::CautionSource;
use crate::time::{Instant, Span};

/// The cautions of one name, built from facts in order of time.
pub(super) struct Track<'d> {
    source: &'static CautionSource,
    dealt: &'d [Dealt],
    hold: Span,
    past: Vec<Caution>,
    open: Option<Caution>,
}

impl<'d> Track<'d> {
    /// None where the table has no such caution. `hold` is how long one that lapses is told.
    pub(super) fn new(key: &str, dealt: &'d [Dealt], hold: Span) -> Option<Self> {
        Some(Self { source: CautionSource::named(key)?, dealt, hold, past: Vec::new(), open: None })
    }

    /// What it is about.
    pub(super) fn source(&self) -> &'static CautionSource {
        self.source
    }

    /// Whether it stands by an instant.
    pub(super) fn is_open(&mut self, by: Instant) -> bool {
        self.settle(by);
        self.open.is_some()
    }

    /// A fact that it rests on. True where a caution begins with it.
    pub(super) fn add(&mut self, at: Instant, because: Because) -> bool {
        self.settle(at);
        match &mut self.open {
            Some(open) => {
                open.seen = open.seen.max(at);
                // How long it has lasted is said once, as it was last.
                if matches!(because, Because::Since(..)) {
                    open.because.retain(|known| !matches!(known, Because::Since(..)));
                }
                if !open.because.contains(&because) {
                    open.because.push(because);
                }
                false
            }
            None => {
                let (source, became) = (self.source, Became::Stands);
                self.open = Some(Caution { source, of: None, began: at, seen: at, because: vec![because], became });
                true
            }
        }
    }

    /// A fact by which it is no longer so.
    pub(super) fn answer(&mut self, at: Instant, by: Because) {
        self.settle(at);
        self.close(Became::Answered { at, by });
    }

    fn close(&mut self, became: Became) {
        self.past.extend(self.open.take().map(|open| Caution { became, ..open }));
    }

    /// Closes what was dealt with or out of date by an instant.
    fn settle(&mut self, by: Instant) {
        let Some(open) = &self.open else { return };
        let key = open.key();
        let dealt = self.dealt.iter().filter(|d| d.key == key && d.seen >= open.seen && d.at <= by);
        if let Some(dealt) = dealt.min_by_key(|d| d.at) {
            let (at, how, note) = (dealt.at, dealt.how.clone(), dealt.note.clone());
            return self.close(Became::Dealt { at, how, note });
        }
        let until = open.seen.plus(self.hold);
        if self.source.lapses && by > until {
            self.close(Became::OutOfDate { at: until });
        }
    }

    /// All of them, by when they began.
    pub(super) fn by(mut self, now: Instant) -> Vec<Caution> {
        self.settle(now);
        self.past.extend(self.open.take());
        for caution in &mut self.past {
            caution.because.sort_by_key(Because::at);
        }
        self.past
    }
}
