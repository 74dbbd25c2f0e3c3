//! A disk that is full or may not be written: the record opens to be read.

use drawwell_core::journal::Journal;
use drawwell_core::screen::shapes::Event;
use drawwell_core::trouble::Kind;
use drawwell_tests::person::Person;

use super::{note, person, NOW};

/// The same with what the log held in the file, as it is once the program was closed.
fn closed(person: &mut Person) -> std::path::PathBuf {
    let path = person.path().to_owned();
    let store = rusqlite::Connection::open(&path).unwrap();
    store.query_row("PRAGMA wal_checkpoint(TRUNCATE)", [], |_| Ok(())).unwrap();
    path
}

/// A folder that may not be written would be none to the superuser; a log that is a folder can't
/// be made by anybody.
#[test]
fn where_nothing_can_be_written_the_record_is_read_and_says_so() {
    let mut first = person();
    note(&mut first, "Left is back.");
    let path = closed(&mut first);
    let folder = tempfile::tempdir().unwrap();
    let other = folder.path().join("record.drawwell");
    std::fs::copy(&path, &other).unwrap();
    std::fs::create_dir(folder.path().join("record.drawwell-wal")).unwrap();
    let journal = Journal::open(&other, "thumb", NOW).unwrap().journal;
    assert!(journal.is_read_only());
    drop(journal);
    let before = std::fs::read(&other).unwrap();
    let mut person = Person::with_record(&other, "2026-05-25T05:06:00+02:00", "Europe/Berlin").unwrap();
    let said = person.reads().unwrap();
    assert!(said.contains("You can read the record, but nothing can be saved"), "{said}");
    assert!(person.record().unwrap().contains("Left is back."));
    let refused = person.send(Event::Add { kind: "note".to_owned(), days_back: 0 }).unwrap_err();
    assert!(matches!(refused.kind, Kind::ReadOnly | Kind::Full), "{refused}");
    assert_eq!(std::fs::read(&other).unwrap(), before);
}
