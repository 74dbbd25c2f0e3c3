//! The IANA time zone database: zones that break simple assumptions. The same
//! cases are held against Python's zoneinfo through the surface in
//! `tests/python/test_zones.py`, which is the second opinion.

use drawwell_core::time::{resolve, DayStart, Instant, LocalDay, Moment, Span, Surprise, Zone};

fn zone(name: &str) -> Zone {
    Zone::named(name).unwrap()
}

fn wall(text: &str) -> chrono::NaiveDateTime {
    chrono::NaiveDateTime::parse_from_str(text, "%Y-%m-%dT%H:%M").unwrap()
}

fn utc(text: &str) -> Instant {
    Instant::from_unix_milliseconds(chrono::DateTime::parse_from_rfc3339(text).unwrap().timestamp_millis())
}

fn day(text: &str) -> LocalDay {
    LocalDay::on(chrono::NaiveDate::parse_from_str(text, "%Y-%m-%d").unwrap())
}

#[test]
fn lord_howe_moves_by_half_an_hour() {
    // 2026-10-04 at 02:00 (+10:30) the clock goes to 02:30 (+11).
    let lord_howe = zone("Australia/Lord_Howe");
    let found = resolve(wall("2026-10-04T02:15"), lord_howe);
    assert_eq!((found.instant, found.surprise), (utc("2026-10-03T15:30:00Z"), Surprise::Skipped));
    assert_eq!(day("2026-10-04").lasts(lord_howe, DayStart::MIDNIGHT), Span::minutes(23 * 60 + 30));
    // 2026-04-05 at 02:00 (+11) it goes back to 01:30 (+10:30).
    let found = resolve(wall("2026-04-05T01:45"), lord_howe);
    assert_eq!((found.instant, found.surprise), (utc("2026-04-04T14:45:00Z"), Surprise::Twice));
    assert_eq!(day("2026-04-05").lasts(lord_howe, DayStart::MIDNIGHT), Span::minutes(24 * 60 + 30));
}

#[test]
fn apia_has_no_30_december_2011() {
    let apia = zone("Pacific/Apia");
    let found = resolve(wall("2011-12-30T12:00"), apia);
    assert_eq!((found.instant, found.surprise), (utc("2011-12-30T10:00:00Z"), Surprise::Skipped));
    assert_eq!(day("2011-12-30").lasts(apia, DayStart::MIDNIGHT), Span::hours(0));
    assert_eq!(day("2011-12-29").begins(apia, DayStart::MIDNIGHT).plus(Span::hours(24)), utc("2011-12-30T10:00:00Z"));
}

#[test]
fn kathmandu_stands_at_five_forty_five() {
    let at = utc("2026-03-01T00:00:00Z");
    assert_eq!(zone("Asia/Kathmandu").offset_seconds(at), (5 * 60 + 45) * 60);
    let moment = Moment::new(at, zone("Asia/Kathmandu"));
    assert_eq!(moment.to_rfc3339(), "2026-03-01T05:45:00.000+05:45");
}

#[test]
fn a_day_of_a_clock_change_has_23_or_25_hours() {
    let berlin = zone("Europe/Berlin");
    assert_eq!(day("2026-03-29").lasts(berlin, DayStart::MIDNIGHT), Span::hours(23));
    assert_eq!(day("2026-10-25").lasts(berlin, DayStart::MIDNIGHT), Span::hours(25));
    let four = DayStart::at_hour(4).unwrap();
    assert_eq!(day("2026-03-28").lasts(berlin, four), Span::hours(23), "a day from four contains the change");
    assert_eq!(day("2026-03-29").lasts(berlin, four), Span::hours(24));
}

#[test]
fn three_hours_are_three_hours_across_a_clock_change() {
    let berlin = zone("Europe/Berlin");
    let before = resolve(wall("2026-03-29T00:30"), berlin).instant;
    let after = Moment::new(before.plus(Span::hours(3)), berlin);
    assert_eq!(after.to_rfc3339(), "2026-03-29T04:30:00.000+02:00");
}

#[test]
fn a_day_that_begins_at_four_holds_the_night_before_it() {
    let four = DayStart::at_hour(4).unwrap();
    let at = |text: &str| Moment::from_parts(text, "Europe/Berlin").unwrap();
    assert_eq!(LocalDay::of(&at("2026-03-02T03:59:59+01:00"), four), day("2026-03-01"));
    assert_eq!(LocalDay::of(&at("2026-03-02T04:00:00+01:00"), four), day("2026-03-02"));
}
