//! Every zone from 2018 to 2030, every change of its clock, held to PyPI's tzdata as Python's
//! zoneinfo reads it. `tests/python/zone_vectors.py` made the vectors, and
//! `tests/python/test_zones.py` holds them to what it would make today.

use std::collections::BTreeSet;
use std::path::Path;

use chrono::{DateTime, NaiveDate, NaiveDateTime};
use drawwell_core::screen::shapes::{Export, Place, Screen};
use drawwell_core::time::{resolve, DayStart, Instant, LocalDay, Moment, Span, Surprise, Zone};
use drawwell_tests::person::Person;
use drawwell_tests::written::Written;
use serde_json::{json, Value};

struct Change {
    at: i64,
    before: i32,
    after: i32,
    row: Value,
}

struct History {
    zones: Vec<String>,
    offset: i32,
    changes: Vec<Change>,
}

struct Vectors {
    from: i64,
    until: i64,
    histories: Vec<History>,
}

fn whole(value: &Value) -> i64 {
    value.as_i64().unwrap()
}

fn seconds(value: &Value) -> i32 {
    i32::try_from(whole(value)).unwrap()
}

fn vectors() -> Vectors {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("vectors/zones.json");
    let file: Value = serde_json::from_slice(&std::fs::read(path).unwrap()).unwrap();
    let history = |row: &Value| {
        let offset = seconds(&row["offset"]);
        let mut before = offset;
        let mut changes = Vec::new();
        for row in row["changes"].as_array().unwrap() {
            let after = seconds(&row["offset"]);
            changes.push(Change { at: whole(&row["at"]), before, after, row: row.clone() });
            before = after;
        }
        let zones = row["zones"].as_array().unwrap().iter().map(|name| name.as_str().unwrap().to_owned()).collect();
        History { zones, offset, changes }
    };
    let histories = file["histories"].as_array().unwrap().iter().map(history).collect();
    Vectors { from: whole(&file["from"]), until: whole(&file["until"]), histories }
}

fn instant(seconds: i64) -> Instant {
    Instant::from_unix_milliseconds(seconds * 1000)
}

fn wall(seconds: i64) -> NaiveDateTime {
    DateTime::from_timestamp(seconds, 0).unwrap().naive_utc()
}

fn date(value: &Value) -> LocalDay {
    LocalDay::on(value.as_str().unwrap().parse::<NaiveDate>().unwrap())
}

fn day_start(value: &Value) -> DayStart {
    DayStart::at_hour(u32::try_from(whole(value)).unwrap()).unwrap()
}

/// Each zone by its own name, with the history it shares.
fn every_zone(vectors: &Vectors) -> impl Iterator<Item = (Zone, &History)> {
    vectors.histories.iter().flat_map(|history| {
        history.zones.iter().map(move |name| (Zone::named(name).unwrap_or_else(|_| panic!("{name}")), history))
    })
}

#[test]
fn the_same_names_are_known() {
    let vectors = vectors();
    let theirs: BTreeSet<&str> =
        vectors.histories.iter().flat_map(|history| history.zones.iter().map(String::as_str)).collect();
    assert_eq!(Zone::names().collect::<BTreeSet<_>>(), theirs);
    for name in &theirs {
        assert_eq!(Zone::named(name).unwrap().name(), *name);
    }
    for no_name in ["europe/berlin", "Europe/Atlantis", "", "Europe/Berlin "] {
        assert!(Zone::named(no_name).is_err(), "{no_name:?}");
    }
}

#[test]
fn every_offset_of_every_hour_is_theirs() {
    let vectors = vectors();
    for (zone, history) in every_zone(&vectors) {
        let mut changes = history.changes.iter().peekable();
        let mut offset = history.offset;
        for at in (vectors.from..vectors.until).step_by(3600) {
            while let Some(change) = changes.next_if(|change| change.at <= at) {
                let just_before = Instant::from_unix_milliseconds(change.at * 1000 - 1);
                assert_eq!(zone.offset_seconds(just_before), change.before, "{} {}", zone.name(), change.at);
                assert_eq!(zone.offset_seconds(instant(change.at)), change.after, "{} {}", zone.name(), change.at);
                offset = change.after;
            }
            assert_eq!(zone.offset_seconds(instant(at)), offset, "{} {at}", zone.name());
        }
    }
}

#[test]
fn times_typed_around_every_change_are_theirs() {
    for (zone, history) in every_zone(&vectors()) {
        for typed in history.changes.iter().flat_map(|change| change.row["typed"].as_array().unwrap()) {
            let surprise = match typed[2].as_str().unwrap() {
                "once" => Surprise::None,
                "skipped" => Surprise::Skipped,
                "twice" => Surprise::Twice,
                other => panic!("{other}"),
            };
            let found = resolve(wall(whole(&typed[0])), zone);
            assert_eq!(
                (found.instant, found.surprise),
                (instant(whole(&typed[1])), surprise),
                "{} {typed}",
                zone.name()
            );
        }
    }
}

#[test]
fn the_days_around_every_change_begin_and_hold_what_theirs_do() {
    for (zone, history) in every_zone(&vectors()) {
        for change in &history.changes {
            for begins in change.row["begins"].as_array().unwrap() {
                let found = date(&begins[0]).begins(zone, day_start(&begins[1]));
                assert_eq!(found, instant(whole(&begins[2])), "{} {begins}", zone.name());
            }
            for belongs in change.row["belongs"].as_array().unwrap() {
                let moment = Moment::new(instant(whole(&belongs[0])), zone);
                let found = LocalDay::of(&moment, day_start(&belongs[1]));
                assert_eq!(found, date(&belongs[2]), "{} {belongs}", zone.name());
            }
        }
    }
}

/// Starts of a calendar's sessions, in seconds of Unix time.
fn starts(calendar: &str) -> Vec<i64> {
    let mut found: Vec<i64> = calendar
        .split("BEGIN:VEVENT")
        .skip(1)
        .filter(|event| !event.contains("STATUS:CANCELLED"))
        .map(|event| {
            let start = event.lines().find_map(|line| line.strip_prefix("DTSTART:")).unwrap();
            NaiveDateTime::parse_from_str(start, "%Y%m%dT%H%M%SZ").unwrap().and_utc().timestamp()
        })
        .collect();
    found.sort_unstable();
    found
}

/// The night of every change in every history: what Tonight shows is on their wall at the
/// instants that the calendar carries, and no gap grows or shrinks with the clock.
#[test]
fn tonight_shows_their_wall_and_the_calendar_the_same_instants() {
    let vectors = vectors();
    let mut nights = 0;
    for history in vectors.histories.iter().filter(|history| !history.changes.is_empty()) {
        let name = &history.zones[0];
        let zone = Zone::named(name).unwrap();
        let mut written = Written::within(zone);
        written.fact(
            "rhythm",
            "rhythm",
            &[
                ("sessions_a_day", json!(8)),
                ("longest_interval", json!(180)),
                ("shortest_interval", json!(90)),
                ("sleep_from", json!("22:30")),
                ("sleep_until", json!("06:30")),
            ],
        );
        for (number, change) in history.changes.iter().enumerate() {
            for before in 0..6 {
                let ended = instant(change.at).minus(Span::hours(3 + 3 * before));
                written.session(&format!("s{number}-{before}"), ended, &[]);
            }
        }
        let first = instant(history.changes[0].at).minus(Span::hours(24));
        let mut person = Person::at(&Moment::new(first, Zone::UTC).to_rfc3339(), name).unwrap();
        person.import_file(&written.file()).unwrap();
        for change in &history.changes {
            let now = instant(change.at).minus(Span::minutes(170));
            person.wait(now.since(person.now())).unwrap();
            let mut file = Vec::new();
            let clock = person.clock().clone();
            person.app().unwrap().export(&Export::Calendar, &mut file, &clock).unwrap();
            let Screen::Tonight { tonight, .. } = person.show(&Place::Tonight).unwrap() else { panic!("tonight") };
            let shown: Vec<&str> = tonight.times.rows.iter().map(|row| row.title.split(',').next().unwrap()).collect();
            let starts = starts(&String::from_utf8(file).unwrap());
            let on_the_wall = |at: &i64| {
                let offset = if *at < change.at { change.before } else { change.after };
                wall(*at + i64::from(offset)).format("%H:%M").to_string()
            };
            assert_eq!(shown, starts.iter().map(on_the_wall).collect::<Vec<_>>(), "{name} {}", change.at);
            assert!(starts.iter().any(|at| *at >= change.at) && starts.len() > 3, "{name} {}: {starts:?}", change.at);
            let gaps = starts.windows(2).map(|pair| pair[1] - pair[0]);
            assert!(gaps.clone().all(|gap| (5400..=3 * 3600 + 900).contains(&gap)), "{name} {}: {starts:?}", change.at);
            nights += 1;
        }
    }
    assert!(nights > 1000, "{nights}");
}
