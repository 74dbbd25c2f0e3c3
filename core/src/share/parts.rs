//! The parts of what is shared, and which of them the person leaves out.
//!
//! One list for the visit sheet, the files for other programs and the sealed record: what
//! is left out of one is left out of all.

use std::collections::BTreeSet;

use crate::record::{text, Fields, Kind};

/// A part of what is shared.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum SharePart {
    /// The name that the parent chose.
    Who,
    /// The child: age, weights.
    Child,
    /// How much milk: amounts and what is worked out of them.
    Supply,
    /// When sessions and feeds were, and the plan.
    Sessions,
    /// Pain and settings.
    Comfort,
    /// Pumps, parts, flanges, gauges, checks, traces, fit.
    Kit,
    /// Temperature, signs, cautions.
    Body,
    /// What changed in life.
    Changes,
    /// Questions for the consultant.
    Questions,
    /// Notes in the person's own words.
    Notes,
}

impl SharePart {
    /// Every part, in the order of the sheet.
    pub const ALL: &'static [Self] = &[
        Self::Who,
        Self::Child,
        Self::Supply,
        Self::Sessions,
        Self::Comfort,
        Self::Kit,
        Self::Body,
        Self::Changes,
        Self::Questions,
        Self::Notes,
    ];

    /// Stable name.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Who => "who",
            Self::Child => "child",
            Self::Supply => "supply",
            Self::Sessions => "sessions",
            Self::Comfort => "comfort",
            Self::Kit => "kit",
            Self::Body => "body",
            Self::Changes => "changes",
            Self::Questions => "questions",
            Self::Notes => "notes",
        }
    }

    /// The part of this name.
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|part| part.name() == name)
    }

    /// The part that a field of a record belongs to; none for what goes along with any
    /// (how the person wants things, rules, visits, keys).
    pub fn of(kind: Kind, field: &str) -> Option<Self> {
        if matches!(field, "note" | "text") {
            return Some(Self::Notes);
        }
        match kind {
            Kind::Child | Kind::Weight => Some(Self::Child),
            Kind::Session => Some(match field {
                "amount_left" | "amount_right" | "amount_together" | "weight_before" | "weight_after"
                | "amount_is_right" => Self::Supply,
                "turned_down" | "marks" => Self::Comfort,
                _ if field.starts_with("pain_")
                    || field.starts_with("trial")
                    || field.starts_with(crate::record::MARKS) =>
                {
                    Self::Comfort
                }
                _ if ["level_", "vacuum_", "cycles_"].iter().any(|of| field.starts_with(of)) => Self::Comfort,
                _ => Self::Sessions,
            }),
            Kind::Feed if field == "amount" => Some(Self::Supply),
            Kind::Container | Kind::MilkEvent => Some(Self::Supply),
            Kind::Cleaning => Some(Self::Sessions),
            Kind::Feed | Kind::Rhythm | Kind::FixedPoint | Kind::PlanChange => Some(Self::Sessions),
            Kind::Pump | Kind::Part | Kind::Flange | Kind::Gauge | Kind::Check | Kind::Trace | Kind::Fit => {
                Some(Self::Kit)
            }
            Kind::Search | Kind::Trial => Some(Self::Comfort),
            Kind::Sign | Kind::CautionDealt => Some(Self::Body),
            Kind::LifeEvent => Some(Self::Changes),
            Kind::Question => Some(Self::Questions),
            Kind::Note => Some(Self::Notes),
            Kind::Settings if field == "sheet_name" => Some(Self::Who),
            Kind::Settings if field == "aim" => Some(Self::Supply),
            Kind::Settings
            | Kind::Rules
            | Kind::Keeping
            | Kind::Visit
            | Kind::Consultant
            | Kind::Consent
            | Kind::Plan
            | Kind::PlanPart
            | Kind::CaseFamily => None,
        }
    }
}

/// The parts that are left out.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct LeftOut(BTreeSet<SharePart>);

impl LeftOut {
    /// As the settings record says it.
    pub fn read(settings: &Fields) -> Self {
        Self(text(settings, "left_out").unwrap_or_default().split(',').filter_map(SharePart::named).collect())
    }

    /// As the settings record keeps it.
    pub fn write(&self) -> String {
        self.0.iter().map(|part| part.name()).collect::<Vec<_>>().join(",")
    }

    /// Whether a part is left out.
    pub fn has(&self, part: SharePart) -> bool {
        self.0.contains(&part)
    }

    /// Leaves a part out, or takes it in again.
    pub fn set(&mut self, part: SharePart, out: bool) {
        match out {
            true => self.0.insert(part),
            false => self.0.remove(&part),
        };
    }

    /// Whether records of a kind go along at all: not those whose time is left out.
    pub fn lets_any(&self, kind: Kind) -> bool {
        let first = kind.time_field().or_else(|| kind.fields().first().map(|spec| spec.key));
        first.is_none_or(|field| self.lets(kind, field))
    }

    /// Whether a field of a record goes along.
    pub fn lets(&self, kind: Kind, field: &str) -> bool {
        SharePart::of(kind, field).is_none_or(|part| !self.has(part))
    }
}
