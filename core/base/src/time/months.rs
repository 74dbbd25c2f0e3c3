//! Months of the calendar.

use chrono::Months as CalendarMonths;

use super::local::resolve;
use super::{LocalDay, Moment};

/// So many months of the calendar.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Months(u32);

impl Months {
    /// So many.
    pub const fn new(months: u32) -> Self {
        Self(months)
    }

    /// How many.
    pub const fn get(self) -> u32 {
        self.0
    }

    /// The same time of the wall so many months on; where that month is shorter, on its last day.
    /// None where the calendar ends, or the zone is not known.
    pub fn after(self, from: &Moment) -> Option<Moment> {
        let zone = from.zone()?;
        let wall = from.on_the_wall().checked_add_months(CalendarMonths::new(self.0))?;
        Some(Moment::new(resolve(wall, zone).instant, zone))
    }

    /// The day so many months on, as [`Self::after`] has it.
    pub fn after_day(self, from: LocalDay) -> Option<LocalDay> {
        from.date().checked_add_months(CalendarMonths::new(self.0)).map(LocalDay::on)
    }
}
