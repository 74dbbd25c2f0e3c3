//! Published intake of human milk by age, as data.

use serde::Deserialize;

use super::tables::Tables;

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

impl PublishedIntake {
    /// As it is shipped.
    pub fn shipped() -> &'static Self {
        &Tables::shipped().intake
    }

    /// How far children of an age differ, where that was published.
    pub fn range_at(&self, day: i64) -> Option<&IntakeRange> {
        self.range.iter().find(|range| (range.from_day..=range.to_day).contains(&day))
    }
}
