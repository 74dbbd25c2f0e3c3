//! How old a child is, and how old counted from the day it was due.
//!
//! Corrected age is the age less the weeks by which the child came before 40 weeks
//! (American Academy of Pediatrics, Age terminology during the perinatal period,
//! Pediatrics 2004;114:1362). It is used up to three years of age there.

use chrono::{Datelike, NaiveDate};

/// Days from the first day of the last period to the day a child is due: 40 weeks.
const DUE_AFTER_DAYS: i64 = 280;
/// Corrected age is used until so many years of age.
const CORRECTED_UNTIL_YEARS: i64 = 3;

/// An age, in the units it is spoken of: weeks at first, then months, then years.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Age {
    /// In the first weeks.
    Weeks {
        /// Whole weeks.
        weeks: i64,
        /// Days beyond them.
        days: i64,
    },
    /// From then on to two years.
    Months {
        /// Whole months.
        months: i64,
    },
    /// From two years on.
    Years {
        /// Whole years.
        years: i64,
    },
    /// Counted from the day it was due: that is so many days ahead.
    NotYetDue {
        /// Days until then.
        days: i64,
    },
}

/// Up to so many weeks an age is said in weeks and days.
const IN_WEEKS_UP_TO: i64 = 26;

/// By how many days a child came before it was due, born at so many weeks and days.
pub fn early_by(weeks: u32, days: u32) -> i64 {
    DUE_AFTER_DAYS - i64::from(weeks) * 7 - i64::from(days)
}

impl Age {
    /// The age on a day of somebody born on another; none before birth.
    pub fn on(day: NaiveDate, birth: NaiveDate) -> Option<Self> {
        (day >= birth).then(|| Self::from(birth, day))
    }

    /// The age counted from the day it was due, for a child born at so many weeks and
    /// days; none beyond three years of age.
    pub fn corrected_on(day: NaiveDate, birth: NaiveDate, weeks: u32, days: u32) -> Option<Self> {
        let early = early_by(weeks, days);
        let due = birth.checked_add_signed(chrono::TimeDelta::days(early))?;
        match Self::on(day, birth)? {
            Self::Years { years } if years >= CORRECTED_UNTIL_YEARS => None,
            _ if day < due => Some(Self::NotYetDue { days: (due - day).num_days() }),
            _ => Some(Self::from(due, day)),
        }
    }

    fn from(begin: NaiveDate, day: NaiveDate) -> Self {
        let days = (day - begin).num_days();
        let months = months_between(begin, day);
        match () {
            () if days < IN_WEEKS_UP_TO * 7 => Self::Weeks { weeks: days / 7, days: days % 7 },
            () if months < 24 => Self::Months { months },
            () => Self::Years { years: months / 12 },
        }
    }
}

fn months_between(from: NaiveDate, to: NaiveDate) -> i64 {
    let whole = i64::from(to.year() - from.year()) * 12 + i64::from(to.month()) - i64::from(from.month());
    whole - i64::from(to.day() < from.day())
}
