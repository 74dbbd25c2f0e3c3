//! The facts that cautions rest on, and what became of a caution.

use crate::quantity::{Count, Score, Temperature, Vacuum};
use crate::time::{Instant, Span};

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

/// On which side a sign is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Where {
    /// Left.
    Left,
    /// Right.
    Right,
    /// Both.
    Both,
}

impl Where {
    /// Stable name.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Left => "left",
            Self::Right => "right",
            Self::Both => "both",
        }
    }
}

/// What became of a caution.
#[derive(Debug, Clone, PartialEq)]
pub enum Became {
    /// It stands.
    Stands,
    /// Somebody dealt with it.
    Dealt {
        /// When.
        at: Instant,
        /// Who looked at it, one of [`crate::record::choices::DEALT_HOW`], where that was said.
        how: Option<String>,
        /// More, in the person's own words.
        note: Option<String>,
    },
    /// A later fact says that it is no longer so.
    Answered {
        /// When.
        at: Instant,
        /// The fact.
        by: Because,
    },
    /// Nobody said anything more of it.
    OutOfDate {
        /// From when on.
        at: Instant,
    },
}

impl Became {
    /// When it was over; none where it stands.
    pub fn over_at(&self) -> Option<Instant> {
        match self {
            Self::Stands => None,
            Self::Dealt { at, .. } | Self::Answered { at, .. } | Self::OutOfDate { at } => Some(*at),
        }
    }
}

/// A caution that was dealt with: what was seen by then is over.
#[derive(Debug, Clone, PartialEq)]
pub struct Dealt {
    /// Its name.
    pub key: String,
    /// The latest fact that was seen by then.
    pub seen: Instant,
    /// When.
    pub at: Instant,
    /// Who looked at it, one of [`crate::record::choices::DEALT_HOW`], where that was said.
    pub how: Option<String>,
    /// More, in the person's own words.
    pub note: Option<String>,
}
