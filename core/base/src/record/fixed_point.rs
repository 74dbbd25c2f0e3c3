//! A point of the day that stands: a shift, a break, a care time, a feed.

use chrono::{Datelike, NaiveDate, Weekday};

use super::{clock_time, date, text, Fields};
use crate::time::ClockTime;

/// Whether a session is to be in it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SessionIn {
    /// One is.
    Wanted,
    /// None can be.
    Not,
    /// It does not matter.
    Either,
}

/// What it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PointKind {
    /// A shift at work.
    Shift,
    /// A break.
    Break,
    /// A care time on the unit.
    CareTime,
    /// A feed.
    Feed,
    /// Anything else.
    Other,
}

impl PointKind {
    fn named(name: Option<&str>) -> Self {
        match name {
            Some("shift") => Self::Shift,
            Some("break") => Self::Break,
            Some("care_time") => Self::CareTime,
            Some("feed") => Self::Feed,
            _ => Self::Other,
        }
    }

    /// As the record and the sentences name it.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Shift => "shift",
            Self::Break => "break",
            Self::CareTime => "care_time",
            Self::Feed => "feed",
            Self::Other => "other",
        }
    }
}

/// A point of the day that stands.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct FixedPoint {
    /// Its record.
    pub id: String,
    /// What it is.
    pub kind: PointKind,
    /// When it begins, by the clock on the wall.
    pub from: ClockTime,
    /// When it is over; a point that ends as it begins takes a session's time.
    pub until: ClockTime,
    /// Whether a session is to be in it.
    pub session: SessionIn,
    /// The days it stands on, as in [`super::choices::DAYS`].
    days: String,
    /// The one date it stands on.
    on: Option<NaiveDate>,
}

impl FixedPoint {
    /// Reads a record of it; none where it says no time.
    pub fn read(id: &str, fields: &Fields) -> Option<Self> {
        let from = clock_time(fields, "from")?;
        let kind = PointKind::named(text(fields, "what"));
        Some(Self {
            id: id.to_owned(),
            kind,
            from,
            until: clock_time(fields, "until").unwrap_or(from),
            session: match (text(fields, "session_in"), kind) {
                (Some("in_it"), _) => SessionIn::Wanted,
                (Some("not_in_it"), _) => SessionIn::Not,
                (Some("either"), _) => SessionIn::Either,
                (_, PointKind::Shift) => SessionIn::Not,
                (_, PointKind::Break | PointKind::CareTime | PointKind::Feed) => SessionIn::Wanted,
                (_, PointKind::Other) => SessionIn::Either,
            },
            days: text(fields, "days").unwrap_or("every_day").to_owned(),
            on: date(fields, "on"),
        })
    }

    /// The days it stands on, as in [`super::choices::DAYS`].
    pub fn days(&self) -> &str {
        &self.days
    }

    /// The one date it stands on.
    pub fn date(&self) -> Option<NaiveDate> {
        self.on
    }

    /// Whether it stands on a date. One that names a date stands on that alone.
    pub fn stands_on(&self, day: NaiveDate) -> bool {
        if let Some(on) = self.on {
            return on == day;
        }
        let weekday = day.weekday();
        let at_the_weekend = matches!(weekday, Weekday::Sat | Weekday::Sun);
        match self.days.as_str() {
            "monday_to_friday" => !at_the_weekend,
            "saturday_sunday" => at_the_weekend,
            "monday" => weekday == Weekday::Mon,
            "tuesday" => weekday == Weekday::Tue,
            "wednesday" => weekday == Weekday::Wed,
            "thursday" => weekday == Weekday::Thu,
            "friday" => weekday == Weekday::Fri,
            "saturday" => weekday == Weekday::Sat,
            "sunday" => weekday == Weekday::Sun,
            _ => true,
        }
    }
}
