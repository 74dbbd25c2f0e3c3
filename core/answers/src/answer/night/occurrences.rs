//! What stands over the days ahead: nights and fixed points, from the clock on the wall to
//! instants.

use chrono::{Duration, NaiveDate};

use super::frame::Frame;
use crate::record::{FixedPoint, PointKind, SessionIn};
use crate::time::{resolve, ClockTime, Instant, Moment, Span, Zone};

/// From an instant to another.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Stretch {
    /// It begins.
    pub from: Instant,
    /// It is over.
    pub until: Instant,
}

impl Stretch {
    /// How long it is.
    pub fn lasts(self) -> Span {
        self.until.since(self.from)
    }
    /// Whether an instant lies in it.
    pub fn holds(self, at: Instant) -> bool {
        (self.from..self.until).contains(&at)
    }
}

/// A fixed point on one day.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PointOccurrence {
    /// Its record; empty for a block.
    pub id: String,
    /// What it is; none for a block of repeated short sessions.
    pub kind: Option<PointKind>,
    /// When.
    pub stretch: Stretch,
    /// Whether a session is to be in it.
    pub session: SessionIn,
}

/// Wall times of a date as a stretch; one that ends as or before it begins ends the next day.
/// A time the clock skips is the next valid instant, one that comes twice the first.
pub fn on_date(date: NaiveDate, from: ClockTime, until: ClockTime, zone: Zone) -> Stretch {
    let last = if until.0 <= from.0 { date + Duration::days(1) } else { date };
    Stretch { from: resolve(date.and_time(from.0), zone).instant, until: resolve(last.and_time(until.0), zone).instant }
}

fn date_of(at: Instant, zone: Zone) -> NaiveDate {
    Moment::new(at, zone).on_the_wall().date()
}

fn dates(from: Instant, until: Instant, zone: Zone) -> impl Iterator<Item = NaiveDate> {
    let (first, last) = (date_of(from, zone) - Duration::days(1), date_of(until, zone));
    (0..=(last - first).num_days().max(0)).map(move |day| first + Duration::days(day))
}

/// The sleep windows that end after one instant and begin before another, in order, each
/// with the date of the evening.
pub fn nights(frame: &Frame, from: Instant, until: Instant, zone: Zone) -> Vec<Stretch> {
    let (begins, ends) = frame.sleep.value;
    let mut found: Vec<Stretch> = dates(from, until, zone)
        .map(|date| on_date(date, begins, ends, zone))
        .filter(|night| night.until > from && night.from < until && night.until > night.from)
        .collect();
    found.sort();
    found.dedup();
    found
}

/// The fixed points and blocks that end after one instant and begin before another, in order.
pub fn points(frame: &Frame, points: &[FixedPoint], from: Instant, until: Instant, zone: Zone) -> Vec<PointOccurrence> {
    let mut found = Vec::new();
    for date in dates(from, until, zone) {
        for point in points.iter().filter(|p| p.stands_on(date)) {
            let mut stretch = on_date(date, point.from, point.until, zone);
            if point.until == point.from {
                stretch.until = stretch.from.plus(frame.lasts.value);
            }
            found.push(PointOccurrence {
                id: point.id.clone(),
                kind: Some(point.kind),
                stretch,
                session: point.session,
            });
        }
        if let Some(block) = frame.block {
            let begins = resolve(date.and_time(block.at.0), zone).instant;
            let stretch = Stretch { from: begins, until: begins.plus(block.lasts()) };
            found.push(PointOccurrence { id: String::new(), kind: None, stretch, session: SessionIn::Wanted });
        }
    }
    found.retain(|s| s.stretch.until > from && s.stretch.from < until);
    found.sort_by(|a, b| (a.stretch, &a.id).cmp(&(b.stretch, &b.id)));
    found.dedup();
    found
}
