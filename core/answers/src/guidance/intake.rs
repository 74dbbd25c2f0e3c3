//! Published intake of human milk by age, as data.

use super::{IntakeRange, PublishedIntake};

use super::tables::Tables;

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
