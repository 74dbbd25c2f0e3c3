//! A setting that was carried over from last time is what the dial is taken to show, and no
//! fact: until a hand touches or confirms it, nothing counts it as used.

use drawwell_core::journal::Journal;
use drawwell_core::record::mark::Phase;
use drawwell_core::record::Session;
use drawwell_core::screen::shapes::{Event, Export, Place, RunningScreen, Screen};
use drawwell_core::time::Span;
use drawwell_tests::person::Person;
use drawwell_tests::visiting::takes;
use serde_json::{json, Value};

/// A person who set level 3 by hand in one session, and began the next without touching a dial.
fn in_the_second_session() -> Person {
    let mut person = Person::welcomed("2026-05-25T08:00:00+02:00", "Europe/Berlin").unwrap();
    person.import_file(br#"{"fact":"pump","id":"p","name":"Marl","levels":9}"#).unwrap();
    person.press("place-now").unwrap();
    person.press("start").unwrap();
    for _ in 0..3 {
        person.press("mark-stronger").unwrap();
    }
    person.press("mark-faster").unwrap();
    finished(&mut person);
    person.wait(Span::hours(3)).unwrap();
    person.press("start").unwrap();
    person
}

fn finished(person: &mut Person) {
    person.wait(Span::minutes(12)).unwrap();
    person.press("finish").unwrap();
    person.press("amounts-later").unwrap();
}

fn running(person: &Person) -> RunningScreen {
    let Screen::Running { running, .. } = person.screen().unwrap() else { panic!("runs") };
    running.clone()
}

/// The column of the table of sessions.
fn levels(person: &mut Person) -> Vec<String> {
    let file = takes(person, Event::Export { what: Export::Table { table: "sessions".to_owned() } }).unwrap();
    let table = String::from_utf8(file).unwrap();
    let mut lines = table.trim_start_matches('\u{feff}').lines();
    let column = lines.next().unwrap().split(',').position(|name| name == "level_letdown").unwrap();
    lines.map(|line| line.split(',').nth(column).unwrap().to_owned()).collect()
}

fn sheet(person: &mut Person) -> String {
    serde_json::to_string(&person.show(&Place::Sheet).unwrap()).unwrap()
}

#[test]
fn what_was_carried_over_is_shown_as_such_and_counts_nowhere() {
    let mut person = in_the_second_session();
    let shown = running(&person);
    assert_eq!((shown.dials[0].value.as_str(), shown.dials[0].as_last_time.is_some()), ("3", true));
    assert_eq!(shown.dials[0].label, "Vacuum level\nsame as last time?");
    assert!(shown.strip.vacuum[0].label.contains("last time 3"), "{:?}", shown.strip.vacuum);
    finished(&mut person);
    assert_eq!(levels(&mut person), ["3", ""], "the second time nobody said what was set");
    let sheet = sheet(&mut person);
    assert!(sheet.contains("Marl: settings were not noted in 1 of 2 sessions."), "{sheet}");
}

#[test]
fn one_tap_confirms_it_from_the_beginning_on() {
    let mut person = in_the_second_session();
    person.wait(Span::minutes(5)).unwrap();
    person.press("as-last-time-vacuum").unwrap();
    let shown = running(&person);
    assert!(shown.dials.iter().all(|dial| dial.as_last_time.is_none()));
    let undone = person.find("undo").unwrap().unwrap().detail;
    assert_eq!(undone, "same as last time");
    finished(&mut person);
    assert_eq!(levels(&mut person), ["3", "3"]);
    assert!(!sheet(&mut person).contains("nobody said"));
}

/// A dial that is touched says its own; the other is still what it was last time.
#[test]
fn touching_one_dial_says_nothing_of_the_other() {
    let mut person = in_the_second_session();
    person.press("mark-stronger").unwrap();
    let shown = running(&person);
    assert_eq!(
        shown.dials.iter().map(|d| (d.value.as_str(), d.as_last_time.is_some())).collect::<Vec<_>>(),
        [("4", false), ("54", true)]
    );
    person.press("as-last-time-cycles").unwrap();
    let shown = running(&person);
    assert_eq!(
        shown.dials.iter().map(|d| (d.value.as_str(), d.as_last_time.is_some())).collect::<Vec<_>>(),
        [("4", false), ("54", false)]
    );
    finished(&mut person);
    assert_eq!(levels(&mut person), ["3", "4"], "the level that was set, not that of last time");
}

/// Where a phase begins, what was set for it last time is carried over too.
#[test]
fn the_setting_of_a_phase_is_carried_over_and_no_fact() {
    let mut person = in_the_second_session();
    person.press("as-last-time-vacuum").unwrap();
    person.press("mark-expression-phase").unwrap();
    person.press("mark-stronger").unwrap();
    finished(&mut person);
    person.wait(Span::hours(3)).unwrap();
    person.press("start").unwrap();
    person.press("as-last-time-vacuum").unwrap();
    person.wait(Span::minutes(2)).unwrap();
    person.press("mark-expression-phase").unwrap();
    assert!(running(&person).dials[0].as_last_time.is_some());
    finished(&mut person);
    let last: Value = {
        let record = person.record().unwrap();
        let mut lines = record.lines().map(|line| serde_json::from_str::<Value>(line).unwrap());
        lines.rfind(|fact| fact["fact"] == "session").unwrap()
    };
    let fields = last.as_object().unwrap().clone();
    let marks = fields["marks"].as_object().unwrap().iter().map(|(key, mark)| (format!("marks/{key}"), mark.clone()));
    let session = Session::read("s", &fields.clone().into_iter().chain(marks).collect());
    assert_eq!(session.used_in(Phase::Letdown).level.map(|l| l.get()), Some(3));
    assert_eq!(session.used_in(Phase::Expression).level, None);
}

/// A file of the fifth schema, as the program before wrote it: the first session set by hand,
/// the second begun without a touch, the third turned up within ten seconds of its beginning,
/// which changed the mark that the program had made.
#[test]
fn an_older_file_tells_what_was_set_from_what_was_carried_over() {
    let fixture = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("fixtures/schema-5-settings.drawwell");
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    std::fs::copy(&fixture, &path).unwrap();
    let now = Person::at("2026-08-02T08:00:00+02:00", "Europe/Berlin").unwrap().now();
    let mut journal = Journal::open(&path, "one", now).unwrap().journal;
    let used = |journal: &Journal| -> Vec<_> {
        let mut rows = journal.latest_sessions(now, 9).unwrap();
        rows.reverse();
        let of = |row: &drawwell_core::journal::Row| {
            let session = Session::read(&row.subject, &journal.record(&row.subject).unwrap().unwrap().1);
            [Phase::Letdown, Phase::Expression].map(|phase| session.used_in(phase).level.map(|level| level.get()))
        };
        rows.iter().map(of).collect()
    };
    let told = [[Some(3), Some(4)], [None, None], [Some(4), Some(4)]];
    assert_eq!(used(&journal), told);
    journal.rebuild().unwrap();
    assert_eq!(used(&journal), told, "built anew from its changes it says the same");
    // Out and in again by the exchange form.
    let mut person = Person::with_record(&path, "2026-08-02T08:00:00+02:00", "Europe/Berlin").unwrap();
    let record = person.record().unwrap();
    let mut other = Person::welcomed("2026-08-02T08:00:00+02:00", "Europe/Berlin").unwrap();
    other.import_file(record.as_bytes()).unwrap();
    let again = Journal::open(other.path(), "two", now).unwrap().journal;
    assert_eq!(used(&again), told);
    assert!(record.contains("\"carried\":false"), "what a hand set says so: {}", json!(record));
}
