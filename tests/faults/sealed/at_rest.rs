//! What lies on the disk: nothing of the invented family in any file of its record.

use std::collections::BTreeSet;

use drawwell_core::app::App;
use drawwell_core::journal::Key;
use drawwell_core::screen::shapes::{Clock, Event, Opening};

use super::*;

fn clock(hours: i64) -> Clock {
    let at = 1_786_703_000_000 + hours * 3_600_000;
    Clock { unix_milliseconds: at, zone: "Europe/Berlin".to_owned(), offset_seconds: None }
}

fn opening() -> Opening {
    Opening { device: "thumb".to_owned(), language: "en".to_owned(), look_around: false }
}

/// Every text of the family's file that is long enough to be told from chance.
fn sentences() -> BTreeSet<String> {
    let family = std::fs::read_to_string(drawwell_tests::place::demo_data("family.jsonl")).unwrap();
    family.split(['"', '\n']).filter(|part| part.len() >= 8 && part.is_ascii()).map(str::to_owned).collect()
}

/// Runs of letters in a file, as `strings` shows them.
fn runs(bytes: &[u8]) -> Vec<&str> {
    bytes
        .split(|byte| !(0x20..0x7f).contains(byte))
        .filter(|run| run.len() >= 8)
        .map(|run| std::str::from_utf8(run).unwrap())
        .collect()
}

/// Those of the family's texts that are found in a file.
fn found(bytes: &[u8], sentences: &BTreeSet<String>) -> Vec<String> {
    let all = runs(bytes).join("\n");
    sentences.iter().filter(|sentence| all.contains(sentence.as_str())).cloned().collect()
}

#[test]
fn no_sentence_of_the_invented_family_is_in_journal_log_or_copy() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.drawwell");
    let key = Key::make().unwrap();
    let family = std::fs::read(drawwell_tests::place::demo_data("family.jsonl")).unwrap();
    let mut app = App::open_with_key(path.clone(), Some(key), opening(), &clock(0)).unwrap();
    app.import_file(&mut &*family, &clock(0)).unwrap();
    app.maintain(&clock(1)).unwrap();
    app.update(Event::Start, &clock(2)).unwrap();
    let names = names(folder.path());
    for ending in ["record.drawwell", "record.drawwell-wal"] {
        assert!(names.iter().any(|name| name == ending), "{names:?}");
    }
    assert!(names.iter().any(|name| name.contains(".backup-")), "{names:?}");
    let sentences = sentences();
    assert!(sentences.len() > 100, "{}", sentences.len());
    for file in files(folder.path()) {
        let bytes = std::fs::read(&file).unwrap();
        assert_eq!(found(&bytes, &sentences), [""; 0], "{}", file.display());
        assert!(runs(&bytes).iter().all(|run| !run.contains("CREATE TABLE") && !run.contains("SQLite")));
    }
    drop(app);
    // The test can fail: the same record, not sealed, holds them.
    let open = folder.path().join("plain.drawwell");
    let mut app = App::open(open.clone(), opening(), &clock(0)).unwrap();
    app.import_file(&mut &*family, &clock(0)).unwrap();
    drop(app);
    assert!(found(&std::fs::read(&open).unwrap(), &sentences).len() > 50);
}
