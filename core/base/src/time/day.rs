//! Local days that begin at the hour a family's day begins.

use chrono::{Datelike, Duration, NaiveDate, NaiveTime, Timelike};

use super::{resolve, Instant, Moment, Span, Zone};

/// The hour at which a new day begins, 0 to 12.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct DayStart(u32);

impl DayStart {
    /// From an hour; none above 12.
    pub fn at_hour(hour: u32) -> Option<Self> {
        (hour <= 12).then_some(Self(hour))
    }
    /// Midnight.
    pub const MIDNIGHT: Self = Self(0);
    /// The hour.
    pub fn hour(self) -> u32 {
        self.0
    }
}

/// A local day: the date on which it began.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct LocalDay(NaiveDate);

impl LocalDay {
    /// The day a moment belongs to, by its own wall clock.
    pub fn of(moment: &Moment, start: DayStart) -> Self {
        Self((moment.on_the_wall() - Duration::hours(i64::from(start.0))).date())
    }

    /// The day that began on a date.
    pub fn on(date: NaiveDate) -> Self {
        Self(date)
    }

    /// From the number of days since 1 January of year 1.
    pub fn from_number(number: i32) -> Option<Self> {
        NaiveDate::from_num_days_from_ce_opt(number).map(Self)
    }

    /// Days since 1 January of year 1.
    pub fn number(self) -> i32 {
        self.0.num_days_from_ce()
    }

    /// The date on which it began.
    pub fn date(self) -> NaiveDate {
        self.0
    }

    /// The day so many days before.
    pub fn earlier_by(self, days: u32) -> Self {
        Self(self.0 - Duration::days(i64::from(days)))
    }

    /// Whole days since an earlier day; negative where it is later.
    pub fn days_since(self, earlier: Self) -> i64 {
        (self.0 - earlier.0).num_days()
    }

    /// When it begins in a zone.
    pub fn begins(self, zone: Zone, start: DayStart) -> Instant {
        let time = NaiveTime::from_hms_opt(start.0, 0, 0).unwrap_or_default();
        resolve(self.0.and_time(time), zone).instant
    }

    /// How long it lasts in a zone: 24 h, or 23 or 25, or nothing at all.
    pub fn lasts(self, zone: Zone, start: DayStart) -> Span {
        Self(self.0 + Duration::days(1)).begins(zone, start).since(self.begins(zone, start))
    }

    /// Where a wall time stands within the day, 0 to 1.
    pub fn place_of(self, moment: &Moment, start: DayStart) -> f32 {
        let wall = moment.on_the_wall() - Duration::hours(i64::from(start.0));
        let seconds = (wall.date() - self.0).num_days() * 86_400 + i64::from(wall.time().num_seconds_from_midnight());
        (seconds as f32 / 86_400.0).clamp(0.0, 1.0)
    }
}
