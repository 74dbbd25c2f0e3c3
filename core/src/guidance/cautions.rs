//! The rules of cautions, typed, and where each caution comes from.

use std::sync::OnceLock;

use serde::Deserialize;

use super::Rules;
use crate::quantity::{Count, Quantity, Score, Share, Temperature};
use crate::time::Span;

/// The limits from which a caution is given.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CautionRules {
    /// With any sign at the breast.
    pub breast_fever: Temperature,
    /// With a red, hot or painful place.
    pub fever_with_place: Temperature,
    /// Signs that last this long without getting better.
    pub no_better_after: Span,
    /// A temperature and a sign no further apart than this are read together.
    pub signs_together: Span,
    /// How long what was written down stands.
    pub signs_hold: Span,
    /// Pain from here on is severe.
    pub severe_pain: Score,
    /// Pain that rises by this within a session.
    pub pain_rise: Score,
    /// So many sessions after each other with severe pain.
    pub pain_sessions: Count,
    /// A pull so much below the lower end of its range.
    pub pump_far_below: Share,
}

impl CautionRules {
    /// Reads them from the table.
    pub fn read(rules: &Rules) -> Self {
        let temperature = |key: &str| Temperature::from_canonical(rules.value(key));
        let hours = |key: &str| Span::minutes((rules.value(key) * 60.0).round() as i64);
        let score = |key: &str| Score::new(rules.value(key).ceil() as u32);
        Self {
            breast_fever: temperature("breast_fever"),
            fever_with_place: temperature("fever_with_place"),
            no_better_after: hours("no_better_after"),
            signs_together: hours("signs_together"),
            signs_hold: hours("signs_hold"),
            severe_pain: score("severe_pain"),
            pain_rise: score("pain_rise"),
            pain_sessions: Count::new(rules.value("pain_sessions").ceil() as u32),
            pump_far_below: Share::of(rules.value("pump_far_below") / 100.0),
        }
    }
}

/// How soon somebody must look.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Urgency {
    /// Emergency care, now.
    Now,
    /// A clinician, today.
    Today,
    /// The consultant, soon.
    Consultant,
}

impl Urgency {
    /// Stable name.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Now => "now",
            Self::Today => "today",
            Self::Consultant => "consultant",
        }
    }
}

/// Where a caution comes from.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CautionSource {
    /// Stable name; its words stand under `caution-<key>`.
    pub key: String,
    /// How soon somebody must look.
    pub urgency: Urgency,
    /// Where it comes from.
    pub source: String,
    /// The year of the source.
    pub year: u32,
    /// Whether it was written down from memory.
    #[serde(default)]
    pub from_memory: bool,
    /// Whether a clinician has reviewed it.
    #[serde(default)]
    pub reviewed: bool,
    /// The rules it goes by.
    #[serde(default)]
    pub rules: Vec<String>,
}

#[derive(Deserialize)]
struct Table {
    caution: Vec<CautionSource>,
}

impl CautionSource {
    /// All there are, the most urgent first.
    pub fn all() -> &'static [Self] {
        static ALL: OnceLock<Vec<CautionSource>> = OnceLock::new();
        // A table that cannot be read is caught by its test.
        ALL.get_or_init(|| toml::from_str::<Table>(super::rule::CAUTIONS).map(|t| t.caution).unwrap_or_default())
    }

    /// The one of this name.
    pub fn named(key: &str) -> Option<&'static Self> {
        Self::all().iter().find(|c| c.key == key)
    }
}
