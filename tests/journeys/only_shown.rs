//! What is only shown writes nothing: days that had to be worked out are kept with a tap, and at a
//! desk when a family's file comes in.

use std::path::Path;

use drawwell_core::screen::shapes::{DeskEvent, Event, Place};
use drawwell_core::time::{Instant, Span, Zone};
use drawwell_tests::person::Person;
use drawwell_tests::visiting::{shares, Desk};
use drawwell_tests::written::Written;

const SUPPLY: Place = Place::Supply { days: 28 };

fn expresses_for_ten_days(person: &mut Person) {
    let mut written = Written::within(Zone::named("Europe/Berlin").unwrap());
    for n in 0..80 {
        let ended: Instant = person.now().minus(Span::minutes(30 + (79 - n) * 180));
        written.both(&format!("s-{n:04}"), ended, 50.0, 50.0);
    }
    person.import_file(&written.file()).unwrap();
}

/// Days that are kept as they were worked out, by a reader of the file beside the program.
fn kept(record: &Path) -> i64 {
    let store = rusqlite::Connection::open(record).unwrap();
    store.query_row("SELECT count(*) FROM day_production", [], |row| row.get(0)).unwrap()
}

#[test]
fn days_are_kept_with_a_tap_and_not_by_looking() {
    let mut person = Person::welcomed("2026-05-20T12:30:00+02:00", "Europe/Berlin").unwrap();
    expresses_for_ten_days(&mut person);
    let record = person.path().to_owned();
    // What the tap before showed, the file let go of.
    rusqlite::Connection::open(&record).unwrap().execute("DELETE FROM day_production", []).unwrap();
    let looked = person.show(&SUPPLY).unwrap();
    assert_eq!(kept(&record), 0, "it was only looked at");
    person.send(Event::Go { place: SUPPLY }).unwrap();
    assert!(kept(&record) >= 10, "{}", kept(&record));
    assert_eq!(person.show(&SUPPLY).unwrap(), looked, "kept or not, it says the same");
}

#[test]
fn a_desk_keeps_a_familys_days_when_its_file_comes_in_and_only_reads_after_that() {
    let mut person = Person::welcomed("2026-05-20T12:30:00+02:00", "Europe/Berlin").unwrap();
    expresses_for_ten_days(&mut person);
    let mut desk = Desk::beside(&person).unwrap();
    let card = desk.caseload.own_card().unwrap();
    let file = shares(&mut person, &card).unwrap();
    desk.import_file(&file).unwrap();
    let families = desk.folder().join("families");
    let is_record = |path: &Path| path.extension().is_some_and(|ending| ending == "drawwell");
    let all = std::fs::read_dir(families).unwrap().map(|entry| entry.unwrap().path());
    let record = all.into_iter().find(|path| is_record(path)).unwrap();
    assert!(kept(&record) >= 10, "{}", kept(&record));
    rusqlite::Connection::open(&record).unwrap().execute("DELETE FROM day_production", []).unwrap();
    let family = desk.families().unwrap().into_iter().next().unwrap().2;
    desk.send(Event::OnDesk { event: DeskEvent::OpenFamily { family } }).unwrap();
    desk.send(Event::Go { place: SUPPLY }).unwrap();
    assert_eq!(kept(&record), 0, "a family's record is only read");
}
