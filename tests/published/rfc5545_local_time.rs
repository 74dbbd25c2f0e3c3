//! RFC 5545 section 3.3.5, "DATE-TIME": local times that do not exist, or come
//! twice. The RFC's own two examples in America/New_York.

use drawwell_core::time::{resolve, Instant, Surprise, Zone};

fn wall(text: &str) -> chrono::NaiveDateTime {
    chrono::NaiveDateTime::parse_from_str(text, "%Y-%m-%dT%H:%M").unwrap()
}

fn utc(text: &str) -> Instant {
    Instant::from_unix_milliseconds(chrono::DateTime::parse_from_rfc3339(text).unwrap().timestamp_millis())
}

#[test]
fn a_time_that_comes_twice_is_the_first() {
    // "TZID=America/New_York:20071104T013000 indicates November 4, 2007 at 1:30 A.M. EDT (UTC-04:00)."
    let found = resolve(wall("2007-11-04T01:30"), Zone::named("America/New_York").unwrap());
    assert_eq!(found.instant, utc("2007-11-04T05:30:00Z"));
    assert_eq!(found.surprise, Surprise::Twice);
}

#[test]
fn a_time_that_was_skipped_is_the_next_that_exists() {
    // The RFC reads 20070311T023000 with the offset before the gap: 3:30 EDT, 07:30Z.
    // We take the first instant after the gap, as zoneinfo's users and alarm clocks
    // do when they ring "at the next valid time": 3:00 EDT, 07:00Z. Both are after
    // the gap and within the hour that was skipped; the difference is told in
    // DEVELOPERS.md.
    let found = resolve(wall("2007-03-11T02:30"), Zone::named("America/New_York").unwrap());
    assert_eq!(found.surprise, Surprise::Skipped);
    assert_eq!(found.instant, utc("2007-03-11T07:00:00Z"));
    assert!(found.instant <= utc("2007-03-11T07:30:00Z"));
}

#[test]
fn the_minutes_around_a_gap_and_an_overlap_exist_once() {
    let zone = Zone::named("America/New_York").unwrap();
    for (local, universal) in [
        ("2007-03-11T01:59", "2007-03-11T06:59:00Z"),
        ("2007-03-11T03:00", "2007-03-11T07:00:00Z"),
        ("2007-11-04T00:59", "2007-11-04T04:59:00Z"),
        ("2007-11-04T02:00", "2007-11-04T07:00:00Z"),
    ] {
        let found = resolve(wall(local), zone);
        assert_eq!((found.instant, found.surprise), (utc(universal), Surprise::None), "{local}");
    }
}
