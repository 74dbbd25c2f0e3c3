//! The rules that Supply goes by, typed.

use super::Rules;
use crate::quantity::{Count, Production, Quantity, Share, Temperature};

/// The rules of Supply.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SupplyRules {
    /// A day counts where this share of it was observed.
    pub complete_day: Share,
    /// No level is told where more intervals than this are in doubt.
    pub bears_doubt: Share,
    /// Nor where so few of the days are complete while many are in doubt.
    pub least_complete: Share,
    /// A slope inside plus and minus this share of the level a week is of no importance.
    pub band_a_week: Share,
    /// The watch looks at a day where this share of it was observed.
    pub watched_day: Share,
    /// Reference value of the watch, in spreads of a day.
    pub watch_reference: f64,
    /// Decision value of the watch, in spreads of a day.
    pub watch_decision: f64,
    /// A temperature from here on is noted beside a change.
    pub fever: Temperature,
    /// The day of life on which a volume for preterm children is judged.
    pub volume_day: Count,
    /// Reached at or above this.
    pub volume_reached: Production,
    /// Between the bands at or above this.
    pub volume_between: Production,
    /// Intake for each kilogram of a preterm child up to the day it was due.
    pub need_a_kilogram: Production,
    /// No intake is told of a child younger than so many days.
    pub intake_from: Count,
    /// Born before so many completed weeks is preterm.
    pub preterm_below_weeks: Count,
}

impl SupplyRules {
    /// Reads them from the table.
    pub fn read(rules: &Rules) -> Self {
        let share = |key: &str| Share::of(rules.value(key) / 100.0);
        let count = |key: &str| Count::new(rules.value(key) as u32);
        let production = |key: &str| Production::from_canonical(rules.value(key));
        Self {
            complete_day: share("complete_day"),
            bears_doubt: share("bears_doubt"),
            least_complete: share("least_complete"),
            band_a_week: share("band_a_week"),
            watched_day: share("watched_day"),
            watch_reference: rules.value("watch_reference"),
            watch_decision: rules.value("watch_decision"),
            fever: Temperature::from_canonical(rules.value("fever")),
            volume_day: count("volume_day"),
            volume_reached: production("volume_reached"),
            volume_between: production("volume_between"),
            need_a_kilogram: production("need_a_kilogram"),
            intake_from: count("intake_from"),
            preterm_below_weeks: count("preterm_below"),
        }
    }
}
