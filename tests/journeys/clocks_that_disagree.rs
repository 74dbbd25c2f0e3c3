//! Where the zone's data and a clock say different things: the data were older when a fact was
//! kept, or the host knows another wall than the data do.

use std::path::Path;

use drawwell_core::journal::Journal;
use drawwell_core::screen::shapes::{Event, Place, Screen};
use drawwell_core::time::{resolve, zone_data, Instant, LocalDay, Moment, Span, Surprise, Zone};
use drawwell_tests::person::Person;
use drawwell_tests::written::Written;
use rusqlite::Connection;
use serde_json::json;

const HOUR: i32 = 3600;

/// A record of Vancouver that was kept by IANA 2025b, which had the clock go back on 1 November
/// 2026. It did not: a session at 23:20 by those data was at 00:20 on the wall.
fn kept_by_older_data(folder: &Path) -> Person {
    let path = folder.join("record.drawwell");
    let fixture = Path::new(env!("CARGO_MANIFEST_DIR")).join("fixtures/schema-5.drawwell");
    std::fs::copy(fixture, &path).unwrap();
    Person::with_record(&path, "2026-11-22T12:00:00-07:00", "America/Vancouver").unwrap()
}

fn entries(person: &mut Person, days_back: u32) -> Vec<String> {
    let Screen::Day { day, .. } = person.show(&Place::Day { days_back }).unwrap() else { panic!("a day") };
    day.entries.iter().map(|entry| entry.time.clone()).collect()
}

#[test]
fn what_was_kept_under_older_data_keeps_its_instant_and_stands_on_the_wall_of_the_newer() {
    let folder = tempfile::tempdir().unwrap();
    let mut person = kept_by_older_data(folder.path());
    assert_eq!(entries(&mut person, 1), ["00:20"], "the session, on the 21st and not on the evening before");
    assert_eq!(entries(&mut person, 2), ["23:10"], "the note, an hour later than it was typed");
    let session = person.only("session").unwrap();
    assert_eq!(session["started"]["at"], "2026-11-20T23:20:00.000-08:00", "it goes out as it came in");
    assert_eq!(person.only("note").unwrap()["at"]["at"], "2026-11-20T22:10:00.000-08:00");
    let journal = Journal::open(person.path(), "thumb", person.now()).unwrap().journal;
    let day = |of: u32| LocalDay::on(chrono::NaiveDate::from_ymd_opt(2026, 11, of).unwrap());
    let sessions = |of| journal.rollup(day(of)).unwrap().sessions.get();
    assert_eq!((sessions(20), sessions(21)), (0, 1));
}

#[test]
fn a_record_follows_each_release_of_the_data_once() {
    let folder = tempfile::tempdir().unwrap();
    let path = kept_by_older_data(folder.path()).path().to_owned();
    let ask = |sql: &str| Connection::open(&path).unwrap().query_row(sql, [], |row| row.get::<_, String>(0)).unwrap();
    let change = |sql: &str| Connection::open(&path).unwrap().execute(sql, []).unwrap();
    assert_eq!(ask("SELECT zone_data FROM built"), zone_data());
    // Days by other data, as an older or a newer program would leave them.
    change("UPDATE record SET day = day - 1");
    let day = "SELECT cast(day AS TEXT) FROM record WHERE kind = 'session'";
    let wrong = ask(day);
    drop(Journal::open(&path, "thumb", Instant::from_unix_milliseconds(0)).unwrap());
    assert_eq!(ask(day), wrong, "nothing is done where the data are the same");
    change("UPDATE built SET zone_data = '2025b'");
    drop(Journal::open(&path, "thumb", Instant::from_unix_milliseconds(0)).unwrap());
    assert_ne!(ask(day), wrong);
    assert_eq!(ask("SELECT zone_data FROM built"), zone_data());
}

#[test]
fn family_says_which_release_the_zones_are_of() {
    let mut person = Person::welcomed("2026-11-22T12:00:00-07:00", "America/Vancouver").unwrap();
    person.send(Event::Go { place: Place::Family }).unwrap();
    let said = person.reads().unwrap();
    assert!(said.contains(&format!("release {} of the IANA", zone_data())), "{said}");
}

/// A parent in Berlin whose device knows of a law that the data do not: since some day in June
/// the clock stands an hour further on.
fn an_hour_ahead_of_the_data(at: &str) -> Person {
    let mut person = Person::welcomed(at, "Europe/Berlin").unwrap();
    person.is_told(Some(3 * HOUR)).unwrap();
    person
}

#[test]
fn the_wall_of_the_device_goes_before_the_data_for_now() {
    let mut person = an_hour_ahead_of_the_data("2026-06-09T23:30:00+02:00");
    assert_eq!(person.frame().unwrap().subtitle, "Wednesday 10 June");
    person.press("start").unwrap();
    person.wait(Span::minutes(15)).unwrap();
    person.press("finish").unwrap();
    let session = person.only("session").unwrap();
    assert_eq!(session["started"]["at"], "2026-06-10T00:30:00.000+03:00");
    assert_eq!(session["started"]["zone"], "Etc/GMT-3", "a zone that stands so for good");
    assert_eq!(entries(&mut person, 0), ["00:30"], "it falls on the day of the wall");
    assert_eq!(entries(&mut person, 1), Vec::<String>::new());
    // So it is read again without the device, and after the program was killed.
    person.is_told(None).unwrap();
    person.killed_and_opened().unwrap();
    person.wait(Span::hours(2)).unwrap();
    assert_eq!(entries(&mut person, 0), ["00:30"]);
}

#[test]
fn a_typed_time_is_one_of_the_wall_that_was_told() {
    let mut person = an_hour_ahead_of_the_data("2026-06-09T12:00:00+02:00");
    person.open_day(0).unwrap();
    person.press("add-note").unwrap();
    assert!(!person.reads().unwrap().contains("Etc/GMT"), "it is no other zone: {}", person.reads().unwrap());
    person.enter("at", "7:40").unwrap();
    assert_eq!(person.only("note").unwrap()["at"]["at"], "2026-06-09T07:40:00.000+03:00");
}

#[test]
fn tonight_is_read_off_the_wall_that_was_told() {
    let mut written = Written::within(Zone::UTC);
    written.fact("rhythm", "rhythm", &[("sessions_a_day", json!(8)), ("longest_interval", json!(180))]);
    let mut person = Person::welcomed("2026-06-09T18:00:00+02:00", "Europe/Berlin").unwrap();
    written.session("s", person.now().minus(Span::minutes(30)), &[]);
    person.import_file(&written.file()).unwrap();
    let times = |person: &mut Person| {
        let Screen::Tonight { tonight, .. } = person.show(&Place::Tonight).unwrap() else { panic!("tonight") };
        tonight.times.rows[0].title.split(',').next().unwrap().to_owned()
    };
    let by_data = times(&mut person);
    person.is_told(Some(3 * HOUR)).unwrap();
    let hour = |time: &str| time.split_once(':').unwrap().0.parse::<u32>().unwrap();
    assert_eq!(hour(&times(&mut person)), hour(&by_data) + 1);
}

#[test]
fn what_was_told_is_not_said_of_another_zone_nor_believed_where_it_can_be_no_wall() {
    for (told, starts) in [
        (2 * HOUR, "2026-06-09T23:30:00.000+02:00"),
        (15 * HOUR, "2026-06-09T23:30:00.000+02:00"),
        (2 * HOUR + 7 * 60, "2026-06-09T23:30:00.000+02:00"),
        (14 * HOUR, "2026-06-10T11:30:00.000+14:00"),
        (-12 * HOUR, "2026-06-09T09:30:00.000-12:00"),
    ] {
        let mut person = Person::welcomed("2026-06-09T23:30:00+02:00", "Europe/Berlin").unwrap();
        person.is_told(Some(told)).unwrap();
        person.press("start").unwrap();
        assert_eq!(person.only("session").unwrap()["started"]["at"], starts, "{told}");
    }
    let mut person = an_hour_ahead_of_the_data("2026-06-09T23:30:00+02:00");
    person
        .send(Event::Enter { id: "settings".into(), field: "zone".into(), typed: "America/New_York".into() })
        .unwrap();
    person.send(Event::Go { place: Place::Now }).unwrap();
    person.press("start").unwrap();
    assert_eq!(person.only("session").unwrap()["started"]["at"], "2026-06-09T17:30:00.000-04:00");
}

/// A zone without a name here is universal time to the data, and to the device its own wall.
#[test]
fn a_zone_that_is_not_known_still_has_the_wall_of_the_device() {
    let mut person = Person::welcomed("2026-03-02T10:00:00+01:00", "Europe/Berlin").unwrap();
    person.travel("Atlantis/Sunken").unwrap();
    person.is_told(Some(5 * HOUR + HOUR / 2)).unwrap();
    person.press("start").unwrap();
    assert_eq!(person.only("session").unwrap()["started"]["at"], "2026-03-02T14:30:00.000+05:30");
}

fn utc(text: &str) -> Instant {
    Moment::from_parts(text, "UTC").unwrap().instant()
}

/// The host says how its wall stands now and no more. By the data Berlin's clock goes back at
/// 2026-10-25T01:00Z.
#[test]
fn what_was_told_holds_a_week_each_way_and_not_beyond_a_change_of_the_clock() {
    let berlin = Zone::named("Europe/Berlin").unwrap();
    for (now, from, until) in [
        ("2026-07-15T12:00:00Z", "2026-07-08T12:00:00Z", "2026-07-22T12:00:00Z"),
        ("2026-10-22T12:00:00Z", "2026-10-15T12:00:00Z", "2026-10-25T01:00:00Z"),
        ("2026-10-25T01:00:00Z", "2026-10-25T01:00:00Z", "2026-11-01T01:00:00Z"),
        ("2026-10-28T12:00:00Z", "2026-10-25T01:00:00Z", "2026-11-04T12:00:00Z"),
    ] {
        let told = berlin.with_host_offset(4 * HOUR, utc(now));
        let hair = Span::milliseconds(1);
        let holds = |at: Instant| told.offset_seconds(at) == 4 * HOUR;
        assert!(holds(utc(from)) && !holds(utc(from).minus(hair)), "from {from}");
        assert!(holds(utc(until).minus(hair)) && !holds(utc(until)), "until {until}");
        assert_eq!(Moment::new(utc(until), told).zone_name(), "Europe/Berlin");
    }
}

#[test]
fn a_time_typed_where_it_begins_or_ends_to_hold_is_skipped_or_comes_twice() {
    let berlin = Zone::named("Europe/Berlin").unwrap();
    let now = utc("2026-07-15T12:00:00Z");
    // From two hours ahead of universal time to four on the 8th at 12:00Z, and back on the 22nd.
    let (east, west) = (berlin.with_host_offset(4 * HOUR, now), berlin.with_host_offset(0, now));
    for (zone, wall, instant, surprise) in [
        (east, "2026-07-08T13:59", "2026-07-08T11:59:00Z", Surprise::None),
        (east, "2026-07-08T14:00", "2026-07-08T12:00:00Z", Surprise::Skipped),
        (east, "2026-07-08T15:59", "2026-07-08T12:00:00Z", Surprise::Skipped),
        (east, "2026-07-08T16:00", "2026-07-08T12:00:00Z", Surprise::None),
        (east, "2026-07-22T13:59", "2026-07-22T09:59:00Z", Surprise::None),
        (east, "2026-07-22T14:00", "2026-07-22T10:00:00Z", Surprise::Twice),
        (east, "2026-07-22T15:59", "2026-07-22T11:59:00Z", Surprise::Twice),
        (east, "2026-07-22T16:00", "2026-07-22T14:00:00Z", Surprise::None),
        (west, "2026-07-08T13:00", "2026-07-08T11:00:00Z", Surprise::Twice),
        (west, "2026-07-22T13:00", "2026-07-22T12:00:00Z", Surprise::Skipped),
    ] {
        let wall = chrono::NaiveDateTime::parse_from_str(wall, "%Y-%m-%dT%H:%M").unwrap();
        let found = resolve(wall, zone);
        assert_eq!((found.instant, found.surprise), (utc(instant), surprise), "{wall}");
    }
}
