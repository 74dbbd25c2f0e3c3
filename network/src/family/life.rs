//! A family's time: days of life, and days counted from the one that was due. No date leaves here.

use drawwell_core::answer::age::early_by;
use drawwell_core::gather::Record;
use drawwell_core::record::{date, whole_number, Fields, Kind};
use drawwell_core::time::{DayStart, Instant, LocalDay, Moment, Zone};
use drawwell_core::trouble::Trouble;

/// Days from the first day of the last period to the day a child is due: 40 weeks.
const DUE_AFTER: i64 = 280;

/// A day as rows have it, each part with why it is not known.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct DayOfLife {
    /// The day of life; that of birth is 0.
    pub(super) day: Result<i64, &'static str>,
    /// The same, counted from the day that was due.
    pub(super) corrected: Result<i64, &'static str>,
}

/// When the children were born that the milk is for, and how early.
#[derive(Debug, Clone, Copy)]
pub(super) struct Life {
    birth: Option<LocalDay>,
    start: DayStart,
    zone: Zone,
    /// Completed days of gestation.
    pub(super) gestation: Result<i64, &'static str>,
    /// How many were born together.
    pub(super) children: i64,
}

impl Life {
    /// Of the children who were born last.
    pub(super) fn of(record: &Record<'_>) -> Result<Self, Trouble> {
        let all: Vec<Fields> =
            record.journal.fields_of_kind(Kind::Child)?.into_iter().map(|(_, fields)| fields).collect();
        let born = |fields: &Fields| date(fields, "birth").map(LocalDay::on).filter(|day| *day <= record.today());
        let birth = all.iter().filter_map(born).max();
        let together: Vec<&Fields> = all.iter().filter(|fields| birth.is_some() && born(fields) == birth).collect();
        let mut gestations: Vec<Option<i64>> = together.iter().map(|fields| gestation(fields)).collect();
        gestations.dedup();
        Ok(Self {
            birth,
            start: record.settings.day_start,
            zone: record.zone,
            gestation: match gestations.as_slice() {
                [] => Err("no_child"),
                [Some(days)] => Ok(*days),
                [None] => Err("not_said"),
                _ => Err("twins_differ"),
            },
            children: together.len() as i64,
        })
    }

    /// A local day.
    pub(super) fn day(&self, day: LocalDay) -> DayOfLife {
        let of_life = match self.birth {
            None => Err("no_birth"),
            Some(birth) if day < birth => Err("before_birth"),
            Some(birth) => Ok(day.days_since(birth)),
        };
        let corrected = of_life.and_then(|day| Ok(day - (DUE_AFTER - self.gestation.map_err(|_| "no_gestation")?)));
        DayOfLife { day: of_life, corrected }
    }

    /// The local day of an instant, by the wall where the family is.
    pub(super) fn at(&self, at: Instant) -> DayOfLife {
        self.day(LocalDay::of(&Moment::new(at, self.zone), self.start))
    }

    /// When a week of life is over; none where no birth is known.
    pub(super) fn week_ends(&self, week: i64) -> Option<Instant> {
        let days = i32::try_from(7 * week).ok()?;
        Some(LocalDay::from_number(self.birth?.number().checked_add(days)?)?.begins(self.zone, self.start))
    }
}

fn gestation(fields: &Fields) -> Option<i64> {
    let weeks = whole_number(fields, "gestation_weeks")?;
    let days = whole_number(fields, "gestation_days").unwrap_or(0);
    Some(DUE_AFTER - early_by(weeks, days))
}
