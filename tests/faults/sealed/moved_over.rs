//! A record that was not sealed comes under its key, with its copies and what was set aside.

use drawwell_core::journal::{Health, Journal, Key};
use drawwell_core::trouble::Kind;

use super::*;

#[test]
fn it_says_the_same_and_no_file_of_it_can_be_read() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.drawwell");
    plain(&path, 60);
    let before = Journal::open(&path, "one", NOW).unwrap().journal;
    let (says, changes) = (before.projection_text().unwrap(), before.changes().unwrap());
    drop(before);
    assert!(holding(folder.path(), SENTENCE).len() >= 2, "the record and its copy");
    let key = Key::make().unwrap();
    let mut journal = open(&path, &key);
    assert_eq!((journal.projection_text().unwrap(), journal.changes().unwrap()), (says, changes));
    assert_eq!(journal.secret("opens").unwrap().unwrap(), "AGE-SECRET-KEY-1NOBODY ELSE");
    assert_eq!(journal.device(), "one", "it is the same record still, and goes on under its name");
    assert_eq!(journal.undoable().unwrap().unwrap().name, "add");
    assert_eq!(journal.verify().unwrap(), Health::Sound);
    write(&mut journal, 60..70);
    journal.back_up(NOW.plus(drawwell_core::time::Span::hours(7))).unwrap().unwrap();
    assert_eq!(holding(folder.path(), SENTENCE), [""; 0].map(PathBuf::from), "log and copies too");
    assert_eq!(holding(folder.path(), b"AGE-SECRET-KEY"), [""; 0].map(PathBuf::from));
    #[cfg(unix)]
    for file in files(folder.path()) {
        use std::os::unix::fs::PermissionsExt;
        assert_eq!(std::fs::metadata(&file).unwrap().permissions().mode() & 0o777, 0o600, "{}", file.display());
    }
    drop(journal);
    assert!(names(folder.path()).iter().all(|name| !name.ends_with("sealing") && !name.ends_with("sealed")));
    assert_eq!(texts(&open(&path, &key)), 70);
}

#[test]
fn a_copy_of_before_is_sealed_and_still_stands_in_for_a_damaged_record() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.drawwell");
    plain(&path, 60);
    let key = Key::make().unwrap();
    drop(open(&path, &key));
    std::fs::write(&path, vec![7_u8; 9000]).unwrap();
    let opened = Journal::open_with_key(&path, "one", Some(&key), NOW).unwrap();
    assert!(opened.salvaged.unwrap().from_backup > 0);
    assert_eq!(texts(&opened.journal), 30);
    assert_eq!(opened.journal.secret("opens").unwrap().unwrap(), "AGE-SECRET-KEY-1NOBODY ELSE");
}

/// What was set aside is damaged, and may be no store any more: its bytes are kept, sealed.
#[test]
fn what_was_set_aside_is_sealed_byte_by_byte() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.drawwell");
    plain(&path, 60);
    let mut bytes = std::fs::read(&path).unwrap();
    let cut = bytes.len() - 5000;
    bytes.truncate(cut);
    std::fs::write(&path, &bytes).unwrap();
    let key = Key::make().unwrap();
    let opened = Journal::open_with_key(&path, "one", Some(&key), NOW).unwrap();
    let aside = opened.salvaged.unwrap().set_aside;
    assert!(texts(&opened.journal) >= 50);
    assert_eq!(holding(folder.path(), SENTENCE), [""; 0].map(PathBuf::from));
    let store = rusqlite::Connection::open(&aside).unwrap();
    store.pragma_update(None, "key", format!("x'{}'", key.figures())).unwrap();
    let mut statement = store.prepare("SELECT bytes FROM piece ORDER BY number").unwrap();
    let pieces: Vec<Vec<u8>> = statement.query_map([], |row| row.get(0)).unwrap().collect::<Result<_, _>>().unwrap();
    assert_eq!(pieces.concat(), bytes);
}

#[test]
fn a_file_that_is_not_ours_or_newer_is_not_moved() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    let key = Key::make().unwrap();
    rusqlite::Connection::open(&path).unwrap().execute_batch("CREATE TABLE recipe(name TEXT)").unwrap();
    let before = std::fs::read(&path).unwrap();
    assert_eq!(Journal::open_with_key(&path, "one", Some(&key), NOW).unwrap_err().key, "trouble-not-a-record");
    assert_eq!(std::fs::read(&path).unwrap(), before);
    let path = folder.path().join("newer.drawwell");
    plain(&path, 4);
    rusqlite::Connection::open(&path).unwrap().pragma_update(None, "user_version", 99).unwrap();
    let before = std::fs::read(&path).unwrap();
    assert_eq!(Journal::open_with_key(&path, "one", Some(&key), NOW).unwrap_err().kind, Kind::Newer);
    assert_eq!(std::fs::read(&path).unwrap(), before);
}

#[test]
fn while_another_program_has_it_open_it_is_busy_and_stays_as_it_is() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.drawwell");
    plain(&path, 10);
    let other = Journal::open(&path, "one", NOW).unwrap().journal;
    let key = Key::make().unwrap();
    assert_eq!(Journal::open_with_key(&path, "one", Some(&key), NOW).unwrap_err().kind, Kind::Busy);
    assert_eq!(texts(&other), 10);
    drop(other);
    assert_eq!(texts(&open(&path, &key)), 10);
}

/// A record of every released schema is brought up to date on the way.
#[test]
fn a_record_of_an_older_schema_is_moved_too() {
    for fixture in ["schema-1", "schema-2", "schema-3", "schema-4", "schema-5", "schema-7", "schema-8"] {
        let fixture = Path::new(env!("CARGO_MANIFEST_DIR")).join(format!("fixtures/{fixture}.drawwell"));
        let folder = tempfile::tempdir().unwrap();
        let (one, two) = (folder.path().join("one.drawwell"), folder.path().join("two.drawwell"));
        std::fs::copy(&fixture, &one).unwrap();
        std::fs::copy(&fixture, &two).unwrap();
        let plain = Journal::open(&one, "one", NOW).unwrap().journal;
        let sealed = open(&two, &Key::make().unwrap());
        assert_eq!(sealed.changes().unwrap(), plain.changes().unwrap());
        assert_eq!(sealed.projection_text().unwrap(), plain.projection_text().unwrap());
    }
}
