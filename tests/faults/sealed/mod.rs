//! A record that is sealed: nobody reads it without its key, a wrong key harms nothing, and on
//! the way there nothing is lost.

mod at_rest;
mod damaged;
mod killed_on_the_way;
mod moved_over;
mod recovery;
mod wrong_key;

use std::path::{Path, PathBuf};

use drawwell_core::journal::{Journal, Key};
use drawwell_core::time::Instant;
use serde_json::json;

const NOW: Instant = Instant::from_unix_milliseconds(1_772_000_000_000);
/// Stands in every note.
const SENTENCE: &[u8] = b"Nobody else shall read this";

fn write(journal: &mut Journal, notes: std::ops::Range<usize>) {
    for number in notes {
        let id = format!("n{number:04}");
        let text = format!("Nobody else shall read this: {number} {}", "x".repeat(100));
        journal
            .act("add", &id, NOW, |w| {
                w.set(&id, "kind", &json!("note"))?;
                w.set(&id, "text", &json!(text))
            })
            .unwrap();
    }
}

/// A record that is not sealed, with a key of its owner's, a safety copy and a log.
fn plain(path: &Path, notes: usize) {
    let mut journal = Journal::open(path, "one", NOW).unwrap().journal;
    write(&mut journal, 0..notes / 2);
    journal.keep_secrets(&[("opens", "AGE-SECRET-KEY-1NOBODY ELSE")]).unwrap();
    journal.back_up(NOW).unwrap().unwrap();
    write(&mut journal, notes / 2..notes);
}

fn open(path: &Path, key: &Key) -> Journal {
    let opened = Journal::open_with_key(path, "one", Some(key), NOW).unwrap();
    assert_eq!(opened.salvaged, None);
    opened.journal
}

fn texts(journal: &Journal) -> usize {
    (0..1000)
        .filter(|n| journal.record(&format!("n{n:04}")).unwrap().is_some_and(|(_, f)| f.contains_key("text")))
        .count()
}

/// The files of a folder whose bytes hold something.
fn holding(folder: &Path, what: &[u8]) -> Vec<PathBuf> {
    files(folder)
        .into_iter()
        .filter(|file| std::fs::read(file).unwrap().windows(what.len()).any(|part| part == what))
        .collect()
}

fn files(folder: &Path) -> Vec<PathBuf> {
    let mut files: Vec<PathBuf> = std::fs::read_dir(folder).unwrap().map(|file| file.unwrap().path()).collect();
    files.sort();
    files
}

fn names(folder: &Path) -> Vec<String> {
    files(folder).iter().map(|file| file.file_name().unwrap().to_string_lossy().into_owned()).collect()
}
