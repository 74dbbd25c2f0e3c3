//! What happens to them, by the day since the birth.
//!
//! Tavi is born eleven weeks early. The parent expresses on Lantern Ward and,
//! once sent home alone, at home too; takes Tavi home after eight weeks; goes
//! back to work after four months. Pell is the elder child. Along the way a
//! flange is exchanged that was too big, a valve wears out and is replaced, a
//! fever passes, two days go unlogged, and two weekends are spent elsewhere.

use chrono::{Duration, NaiveDate, NaiveDateTime, NaiveTime};
use drawwell_core::time::{resolve, Moment, Zone};

use super::curve::along;

/// Days since the birth at which things change.
pub(super) const SENT_HOME_ALONE: i64 = 4;
pub(super) const BETTER_FLANGE: i64 = 33;
pub(super) const FIRST_AT_BREAST: i64 = 36;
pub(super) const HOME_TOGETHER: i64 = 58;
pub(super) const FEVER: i64 = 74;
pub(super) const NEW_VALVE: i64 = 107;
pub(super) const BACK_TO_WORK: i64 = 125;
pub(super) const WATCHING_AGAIN: i64 = 148;
pub(super) const LAST: i64 = 155;

/// The last session lies before this minute of the last day.
pub(super) const LAST_MINUTE: i64 = 12 * 60;

/// Where life goes on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Life {
    /// All day on the ward.
    OnWard,
    /// Days on the ward, nights at home.
    BetweenWardAndHome,
    /// At home with Tavi.
    AtHome,
    /// At home with Tavi on a day of work.
    AtWork,
    /// A weekend elsewhere.
    Away,
}

pub(super) fn life(day: i64) -> Life {
    let weekday = day_of(day).format("%u").to_string();
    match day {
        _ if away(day).is_some() => Life::Away,
        _ if day < SENT_HOME_ALONE => Life::OnWard,
        _ if day < HOME_TOGETHER => Life::BetweenWardAndHome,
        _ if day >= BACK_TO_WORK && ["2", "3", "4", "5"].contains(&weekday.as_str()) => Life::AtWork,
        _ => Life::AtHome,
    }
}

fn away(day: i64) -> Option<&'static str> {
    match day {
        99..=101 => Some("Atlantic/Azores"),
        135..=136 => Some("Europe/Helsinki"),
        _ => None,
    }
}

/// Days of which nothing was written down: Pell was ill.
pub(super) fn unlogged(day: i64) -> bool {
    (88..=89).contains(&day)
}

/// The calendar's name for a day.
pub(super) fn day_of(day: i64) -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, 3, 12).unwrap_or_default() + Duration::days(day)
}

/// The calendar's name, as a field keeps it.
pub(super) fn date(day: i64) -> String {
    day_of(day).format("%Y-%m-%d").to_string()
}

/// A time on the wall of wherever they are that day.
pub(super) fn moment(day: i64, second: i64) -> Moment {
    let zone = Zone::named(away(day).unwrap_or("Europe/Berlin")).unwrap_or(Zone::UTC);
    let wall = NaiveDateTime::new(day_of(day), NaiveTime::MIN) + Duration::seconds(second);
    Moment::new(resolve(wall, zone).instant, zone)
}

/// What both sides together would make in a day if they were never full, in mL.
pub(super) fn made_in_a_day(day: f64) -> f64 {
    const MADE: &[(f64, f64)] = &[
        (0.0, 8.0),
        (1.0, 34.0),
        (2.0, 90.0),
        (3.0, 190.0),
        (4.0, 300.0),
        (6.0, 480.0),
        (9.0, 640.0),
        (14.0, 770.0),
        (21.0, 850.0),
        (45.0, 930.0),
        (74.0, 980.0),
        (76.0, 860.0),
        (80.0, 970.0),
        (120.0, 990.0),
        (155.0, 960.0),
    ];
    along(MADE, day)
}

/// How much of its pull the left valve of the pump at home still passes on.
pub(super) fn valve_passes(day: f64) -> f64 {
    const PASSES: &[(f64, f64)] = &[(93.0, 1.0), (99.0, 0.84), (106.9, 0.52), (107.0, 1.0)];
    along(PASSES, day)
}

/// How much it hurts, 0 to 10, as a rule: less once the flange fits.
pub(super) fn hurts(day: f64) -> f64 {
    const HURTS: &[(f64, f64)] = &[
        (0.0, 0.5),
        (3.0, 2.0),
        (8.0, 4.0),
        (20.0, 4.6),
        (33.0, 4.8),
        (36.0, 2.6),
        (42.0, 0.8),
        (72.0, 0.2),
        (74.0, 3.4),
        (78.0, 0.6),
        (90.0, 0.0),
    ];
    along(HURTS, day)
}

/// What Tavi weighs, in g.
pub(super) fn tavi_weighs(day: f64) -> f64 {
    const WEIGHS: &[(f64, f64)] = &[
        (0.0, 1240.0),
        (4.0, 1130.0),
        (12.0, 1240.0),
        (30.0, 1620.0),
        (58.0, 2440.0),
        (90.0, 3420.0),
        (125.0, 4330.0),
        (155.0, 4980.0),
    ];
    along(WEIGHS, day)
}
