//! Two spans of days against each other.

use super::level::{level, Level};
use super::{DayProduction, Of, Series};
use crate::answer::{Estimate, CONFIDENCE};
use crate::guidance::SupplyRules;
use crate::quantity::{Production, Quantity};
use crate::statistics::shift;
use crate::time::Span;

/// What one span of days says.
#[derive(Debug, Clone, PartialEq)]
pub struct SpanOfDays {
    /// How much a day.
    pub level: Level,
    /// The longest gap that is sure.
    pub longest_gap: Option<Span>,
    series: Series,
}

impl SpanOfDays {
    /// Over some days.
    pub fn of(days: &[DayProduction], rules: &SupplyRules) -> Self {
        let series = Series::of(days, Of::Both, rules);
        Self { level: level(&series, rules), longest_gap: days.iter().filter_map(|day| day.longest_gap).max(), series }
    }

    /// How much more a day than in an earlier span (Hodges and Lehmann's shift, its range
    /// widened where days are like the day before); none where either can't be told.
    pub fn more_than(&self, earlier: &Self) -> Option<Estimate<Production>> {
        self.level.known().and(earlier.level.known())?;
        let inflation = self.series.inflation().max(earlier.series.inflation());
        let found = shift(&earlier.series.values(), &self.series.values(), CONFIDENCE, inflation)?;
        Some(Estimate {
            value: Production::from_canonical(found.shift),
            low: Production::from_canonical(found.low),
            high: Production::from_canonical(found.high),
        })
    }
}
