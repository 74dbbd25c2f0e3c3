//! Why a family needs a look. No score: the order is that of the reasons.

use super::Record;
use crate::answer::caution::Caution;
use crate::guidance::{CaseloadRules, Urgency};
use crate::record::{date, Fields};
use crate::time::{Instant, LocalDay, Span};
use crate::trouble::Trouble;

/// A reason for a look.
#[derive(Debug, Clone, PartialEq)]
pub enum Reason {
    /// The record on this machine can't be read.
    CannotBeRead(&'static str),
    /// The record on this machine was damaged since it was shared; what could be read was kept.
    Salvaged,
    /// A caution stands.
    Caution {
        /// The caution.
        caution: Caution,
        /// What it is about, in the words of the family's record: a pump is named there.
        title: String,
    },
    /// A caution that was urgent and is over since the record was shared before.
    Was {
        /// What it was about.
        title: String,
        /// What became of it, in words.
        became: String,
    },
    /// A pump pulls below its range.
    PumpBelow {
        /// What it goes by.
        pump: String,
    },
    /// Nothing was written down for so long before the record was shared.
    Gap {
        /// The end of the last session.
        since: Instant,
        /// How long.
        lasted: Span,
    },
    /// The visit is due.
    VisitDue(LocalDay),
}

/// Where a reason stands among all: the first needs a look first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Rank(u8);

impl Rank {
    /// No reason at all.
    pub const NONE: Self = Self(u8::MAX);
}

/// What a reason is about, to find families by.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum About {
    /// A caution stands.
    Caution,
    /// The record here can't be read, or not all of it.
    Record,
    /// A pump pulls below its range.
    Pump,
    /// A caution that is over.
    Over,
    /// Nothing was written down for long.
    Gap,
    /// A visit is due.
    Visit,
}

impl About {
    /// All there are, in the order of their reasons.
    pub const ALL: [Self; 6] = [Self::Caution, Self::Record, Self::Pump, Self::Over, Self::Gap, Self::Visit];

    /// Its name in events and sentences.
    pub fn name(self) -> &'static str {
        match self {
            Self::Caution => "caution",
            Self::Record => "record",
            Self::Pump => "pump",
            Self::Over => "over",
            Self::Gap => "gap",
            Self::Visit => "visit",
        }
    }

    /// The one of this name.
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|about| about.name() == name)
    }
}

impl Reason {
    /// What it is about.
    pub fn about(&self) -> About {
        match self {
            Self::Caution { .. } => About::Caution,
            Self::CannotBeRead(_) | Self::Salvaged => About::Record,
            Self::PumpBelow { .. } => About::Pump,
            Self::Was { .. } => About::Over,
            Self::Gap { .. } => About::Gap,
            Self::VisitDue(_) => About::Visit,
        }
    }

    /// Whether it can't wait until tomorrow.
    pub fn is_urgent(&self) -> bool {
        matches!(self, Self::Caution { caution, .. } if matches!(caution.urgency(), Urgency::Now | Urgency::Today))
    }

    /// Where it stands among all reasons.
    pub fn rank(&self) -> Rank {
        Rank(match self {
            Self::Caution { caution, .. } => match caution.urgency() {
                Urgency::Now => 0,
                Urgency::Today => 1,
                Urgency::Soon => 2,
                Urgency::Consultant => 4,
            },
            Self::CannotBeRead(_) | Self::Salvaged => 3,
            Self::PumpBelow { .. } => 5,
            Self::Was { .. } => 6,
            Self::Gap { .. } => 7,
            Self::VisitDue(_) => 8,
        })
    }
}

/// Nothing written down for long, in a record that had sessions.
pub(crate) fn gap(record: &Record<'_>, rules: &CaseloadRules) -> Result<Option<Reason>, Trouble> {
    let latest = record.journal.latest_sessions(record.now, 1)?;
    let since = latest.first().and_then(|row| row.until.or(row.at));
    Ok(since.and_then(|since| {
        let lasted = record.now.since(since);
        (lasted >= rules.look_after_gap).then_some(Reason::Gap { since, lasted })
    }))
}

/// The next visit, where its day is near or past.
pub(crate) fn visit_due(case: &Fields, today: LocalDay, rules: &CaseloadRules) -> Option<Reason> {
    let due = LocalDay::on(date(case, "next_visit")?);
    (due.days_since(today) <= i64::from(rules.visit_ahead.get())).then_some(Reason::VisitDue(due))
}
