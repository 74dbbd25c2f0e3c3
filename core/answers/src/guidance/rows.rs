//! What stands in a row of a table.

use serde::Deserialize;

/// A rule as it is shipped.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Rule {
    /// Stable name.
    pub key: String,
    /// Its value, in `unit`.
    pub value: f64,
    /// UCUM code; empty for a pure number.
    pub unit: String,
    /// The least it can be set to.
    pub least: f64,
    /// The most.
    pub most: f64,
    /// Where it comes from.
    pub source: String,
    /// The year of the source.
    pub year: u32,
    /// Whether it was written down from memory.
    #[serde(default)]
    pub from_memory: bool,
}

/// How soon somebody must look.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Urgency {
    /// Emergency care, now.
    Now,
    /// A clinician, today.
    Today,
    /// A doctor, in the next days.
    Soon,
    /// The consultant, soon.
    Consultant,
}

impl Urgency {
    /// Stable name.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Now => "now",
            Self::Today => "today",
            Self::Soon => "soon",
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
    /// The fields of a sign that it is about.
    #[serde(default)]
    pub signs: Vec<String>,
    /// Whether any one of its signs makes it; the others have a logic of their own.
    #[serde(default)]
    pub any_sign: bool,
    /// Whether it is out of date some time after it was seen. Nothing urgent is.
    #[serde(default)]
    pub lapses: bool,
    /// What is said beside it, by the keys of [`Advice`].
    #[serde(default)]
    pub advice: Vec<String>,
}

/// A line that is said beside a caution, and where it comes from.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Advice {
    /// Stable name; its words stand under `advice-<key>`.
    pub key: String,
    /// Where it comes from.
    pub source: String,
    /// The year of the source.
    pub year: u32,
    /// Whether it was written down from memory.
    #[serde(default)]
    pub from_memory: bool,
}

/// Where a figure comes from.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize, Default)]
#[serde(deny_unknown_fields)]
pub struct Cited {
    /// Where it comes from.
    pub source: String,
    /// The year of the source.
    pub year: u32,
}

/// Intake for each kilogram on a day of life.
#[derive(Debug, Clone, Copy, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct EachKilogram {
    /// Day of life.
    pub day: i64,
    /// mL a day for each kilogram.
    pub milliliters: f64,
}

/// The lowest and the highest intake of a study, at some ages.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct IntakeRange {
    /// From this day of life.
    pub from_day: i64,
    /// To this one, with it.
    pub to_day: i64,
    /// mL a day.
    pub low: f64,
    /// mL a day.
    pub high: f64,
    /// Where it comes from.
    pub source: String,
    /// The year of the source.
    pub year: u32,
    /// Whether it was written down from memory.
    #[serde(default)]
    pub from_memory: bool,
}

/// What was published.
#[derive(Debug, Clone, PartialEq, Deserialize, Default)]
#[serde(deny_unknown_fields)]
pub struct PublishedIntake {
    /// The curve by age.
    pub curve: Cited,
    /// The points by weight.
    pub by_weight: Cited,
    /// Points by weight, by age.
    pub each_kilogram: Vec<EachKilogram>,
    /// How far children differ, by age.
    pub range: Vec<IntakeRange>,
}

/// What a study or a guidance says on how many sessions a day.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Evidence {
    /// Stable name; its words stand under `evidence-<key>`.
    pub key: String,
    /// Sessions a day, at least.
    pub sessions: u32,
    /// Where it comes from.
    pub source: String,
    /// The year of the source.
    pub year: u32,
    /// Whether it was written down from memory.
    #[serde(default)]
    pub from_memory: bool,
}

/// A word of the trade, and where its meaning comes from.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Term {
    /// Stable name; its words stand under `term-<key>-ask` and `term-<key>-is`.
    pub key: String,
    /// Where its meaning comes from.
    #[serde(default)]
    pub source: Option<String>,
    /// The year of the source.
    #[serde(default)]
    pub year: Option<u32>,
    /// Whether it was written down from memory.
    #[serde(default)]
    pub from_memory: bool,
    /// Whether that is how the word is used, and no source says so.
    #[serde(default)]
    pub common_practice: bool,
}

/// A set as it is shipped.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct KeepingRow {
    pub(super) key: String,
    pub(super) source: String,
    pub(super) year: u32,
    #[serde(default)]
    pub(super) from_memory: bool,
    pub(super) room_to_celsius: f64,
    pub(super) room_hours: i64,
    pub(super) cooler_hours: i64,
    pub(super) fridge_hours: i64,
    pub(super) freezer_months_best: u32,
    pub(super) freezer_months: u32,
    pub(super) deep_freezer_months_best: u32,
    pub(super) deep_freezer_months: u32,
    pub(super) thawed_hours: i64,
    pub(super) warmed_hours: i64,
    pub(super) after_feed_hours: i64,
    pub(super) sanitise_under_days: i64,
}
