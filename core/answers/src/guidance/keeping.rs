//! Sets of rules by which milk is kept.

use super::rows::KeepingRow;
use super::tables::Tables;
use crate::quantity::{Quantity, Temperature};
use crate::record::{span, text, whole_number, Fields};
use crate::time::{Months, Span};

/// How long milk keeps, by one source. What a set does not say is none.
#[derive(Debug, Clone, PartialEq)]
pub struct KeepingRules {
    /// Stable name.
    pub key: String,
    /// Where it comes from; of a unit its name.
    pub source: String,
    /// The year of the source.
    pub year: Option<u32>,
    /// Whether it was written down from memory.
    pub from_memory: bool,
    /// No time in a room holds where it is warmer than this.
    pub room_to: Option<Temperature>,
    /// Fresh in a room.
    pub room: Option<Span>,
    /// In a cooler with ice packs.
    pub cooler: Option<Span>,
    /// Fresh in the fridge.
    pub fridge: Option<Span>,
    /// In the freezer: best before, and acceptable until.
    pub freezer: Option<(Months, Months)>,
    /// In a deep freezer, likewise.
    pub deep_freezer: Option<(Months, Months)>,
    /// In the fridge, from fully thawed.
    pub thawed: Option<Span>,
    /// Warmed, or back in the room after it was cold.
    pub warmed: Option<Span>,
    /// What is left of a feed, from its end.
    pub after_feed: Option<Span>,
    /// Parts are sanitised daily under this age.
    pub sanitise_under: Option<Span>,
}

impl KeepingRules {
    fn of_row(row: &KeepingRow) -> Self {
        let hours = |hours: i64| Some(Span::hours(hours));
        let months = |best: u32, most: u32| Some((Months::new(best), Months::new(most)));
        Self {
            key: row.key.clone(),
            source: row.source.clone(),
            year: Some(row.year),
            from_memory: row.from_memory,
            room_to: Some(Temperature::from_canonical(row.room_to_celsius)),
            room: hours(row.room_hours),
            cooler: hours(row.cooler_hours),
            fridge: hours(row.fridge_hours),
            freezer: months(row.freezer_months_best, row.freezer_months),
            deep_freezer: months(row.deep_freezer_months_best, row.deep_freezer_months),
            thawed: hours(row.thawed_hours),
            warmed: hours(row.warmed_hours),
            after_feed: hours(row.after_feed_hours),
            sanitise_under: Some(Span::hours(24 * row.sanitise_under_days)),
        }
    }

    /// Every set that is shipped, the one that holds at home first.
    pub fn shipped() -> Vec<Self> {
        Tables::shipped().keeping.iter().map(Self::of_row).collect()
    }

    /// The rules that a unit gave, as far as they were entered. None where nothing was.
    pub fn of_unit(fields: &Fields) -> Option<Self> {
        let months = |key: &str| whole_number(fields, key).map(|months| (Months::new(months), Months::new(months)));
        let found = Self {
            key: "unit".to_owned(),
            source: text(fields, "unit_name").unwrap_or_default().to_owned(),
            year: whole_number(fields, "unit_year"),
            from_memory: false,
            room_to: None,
            room: span(fields, "unit_room"),
            cooler: span(fields, "unit_cooler"),
            fridge: span(fields, "unit_fridge"),
            freezer: months("unit_freezer"),
            deep_freezer: months("unit_deep_freezer"),
            thawed: span(fields, "unit_thawed"),
            warmed: span(fields, "unit_warmed"),
            after_feed: span(fields, "unit_after_feed"),
            sanitise_under: None,
        };
        let says_something = [found.room, found.cooler, found.fridge, found.thawed, found.warmed, found.after_feed]
            .iter()
            .any(Option::is_some)
            || found.freezer.is_some()
            || found.deep_freezer.is_some();
        says_something.then_some(found)
    }
}
