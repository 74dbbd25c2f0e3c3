//! A damaged file is set aside, never deleted; what can be read is kept, the
//! rest comes from the newest safety copy, and the person is told.

use std::path::{Path, PathBuf};

use drawwell_core::journal::{Health, Journal, KEPT_BACKUPS};
use drawwell_core::screen::shapes::Event;
use drawwell_core::time::{Instant, Span};
use drawwell_tests::person::Person;
use proptest::prelude::*;
use serde_json::json;

const NOW: Instant = Instant::from_unix_milliseconds(1_772_000_000_000);
const NOTES: usize = 400;

fn write(journal: &mut Journal, from: usize, to: usize) {
    for n in from..to {
        let id = format!("n{n:04}");
        journal
            .act("add", &id, NOW, |w| {
                w.set(&id, "kind", &json!("note"))?;
                w.set(&id, "text", &json!(format!("note number {n} {}", "x".repeat(200))))
            })
            .unwrap();
    }
}

/// A journal of many notes, closed, all of it in the one file.
fn notes(path: &Path) {
    let mut journal = Journal::open(path, "one", NOW).unwrap().journal;
    write(&mut journal, 0, NOTES);
}

fn kept(journal: &Journal) -> usize {
    (0..NOTES).filter(|n| journal.record(&format!("n{n:04}")).unwrap().is_some()).count()
}

fn set_aside(folder: &Path) -> Vec<PathBuf> {
    std::fs::read_dir(folder)
        .unwrap()
        .map(|e| e.unwrap().path())
        .filter(|p| p.to_string_lossy().contains(".damaged-") && !p.to_string_lossy().ends_with("-shm"))
        .collect()
}

#[test]
fn truncated_what_is_left_is_kept() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    notes(&path);
    let bytes = std::fs::read(&path).unwrap();
    std::fs::write(&path, &bytes[..bytes.len() / 2]).unwrap();
    let opened = Journal::open(&path, "one", NOW).unwrap();
    let salvaged = opened.salvaged.unwrap();
    assert!(salvaged.from_file > 100, "{salvaged:?}");
    assert_eq!(
        std::fs::read(&salvaged.set_aside).unwrap().len(),
        bytes.len() / 2,
        "the damaged file is kept as it was"
    );
    assert!(kept(&opened.journal) > 50);
    assert_eq!(opened.journal.verify().unwrap(), Health::Sound);
}

#[test]
fn truncated_with_a_safety_copy_nothing_is_lost() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    notes(&path);
    Journal::open(&path, "one", NOW).unwrap().journal.back_up(NOW).unwrap().unwrap();
    let bytes = std::fs::read(&path).unwrap();
    std::fs::write(&path, &bytes[..bytes.len() / 2]).unwrap();
    let opened = Journal::open(&path, "one", NOW).unwrap();
    assert!(opened.salvaged.unwrap().from_backup > 0);
    assert_eq!(kept(&opened.journal), NOTES);
}

#[test]
fn with_its_first_page_gone_the_copy_stands_in() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    notes(&path);
    Journal::open(&path, "one", NOW).unwrap().journal.back_up(NOW).unwrap().unwrap();
    let mut bytes = std::fs::read(&path).unwrap();
    bytes[..4096].fill(0xA5);
    std::fs::write(&path, &bytes).unwrap();
    let opened = Journal::open(&path, "one", NOW).unwrap();
    assert_eq!(kept(&opened.journal), NOTES);
    assert_eq!(set_aside(folder.path()).len(), 1);
}

#[test]
fn a_flipped_letter_in_a_change_is_seen_and_not_believed() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    notes(&path);
    let mut bytes = std::fs::read(&path).unwrap();
    let needle = b"note number 17 ";
    let places: Vec<usize> =
        bytes.windows(needle.len()).enumerate().filter(|(_, w)| w == needle).map(|(i, _)| i).collect();
    for at in places {
        bytes[at] = b'N';
    }
    std::fs::write(&path, &bytes).unwrap();
    let journal = Journal::open(&path, "one", NOW).unwrap().journal;
    assert_eq!(journal.verify().unwrap(), Health::Damaged);
    drop(journal);
    let mended = Journal::recover(&path, "one", NOW).unwrap();
    assert_eq!(kept(&mended.journal), NOTES);
    let text = mended.journal.record("n0017").unwrap().unwrap().1;
    assert_eq!(text.get("text"), None, "a value that cannot be trusted is missing, not made up");
}

#[test]
fn a_flipped_letter_in_the_projection_is_seen_and_built_anew() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    notes(&path);
    let mut journal = Journal::open(&path, "one", NOW).unwrap().journal;
    let sound = journal.projection_text().unwrap();
    journal
        .connection()
        .execute("UPDATE field SET value = '\"other\"' WHERE subject = 'n0003' AND field = 'text'", [])
        .unwrap();
    assert_eq!(journal.verify().unwrap(), Health::ProjectionWrong);
    journal.rebuild().unwrap();
    assert_eq!(journal.projection_text().unwrap(), sound);
}

#[test]
fn after_a_salvage_the_device_goes_on_under_a_name_not_used_before() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    notes(&path);
    let bytes = std::fs::read(&path).unwrap();
    std::fs::write(&path, &bytes[..bytes.len() / 2]).unwrap();
    let mut journal = Journal::open(&path, "one", NOW).unwrap().journal;
    write(&mut journal, NOTES, NOTES + 1);
    let last = journal.changes().unwrap().pop().unwrap();
    assert!(last.dot.device.starts_with("one."), "{:?}", last.dot);
    drop(journal);
    assert!(Journal::open(&path, "one", NOW).unwrap().journal.device().starts_with("one."));
}

#[test]
fn the_person_is_told_and_can_put_it_away() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.drawwell");
    notes(&path);
    let bytes = std::fs::read(&path).unwrap();
    std::fs::write(&path, &bytes[..bytes.len() / 2]).unwrap();
    let mut person = Person::with_record(&path, "2026-03-02T12:00:00+01:00", "Europe/Berlin").unwrap();
    let told = |p: &Person| p.frame().unwrap().notices.iter().any(|n| n.key == "salvaged");
    assert!(told(&person));
    person.press("place-kit").unwrap();
    assert!(told(&person), "it stays until it is put away");
    person.press("dismiss").unwrap();
    assert!(!told(&person));
}

#[test]
fn damage_found_while_open_is_mended_and_the_next_tap_goes_on() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.drawwell");
    notes(&path);
    let mut person = Person::with_record(&path, "2026-03-02T12:00:00+01:00", "Europe/Berlin").unwrap();
    let clock = person.clock().clone();
    person.app().unwrap().maintain(&clock).unwrap();
    // Damage in a page that opening did not read.
    let mut bytes = std::fs::read(&path).unwrap();
    let needle = b"note number 399 ";
    for at in bytes.windows(needle.len()).enumerate().filter(|(_, w)| w == needle).map(|(i, _)| i).collect::<Vec<_>>() {
        bytes[at] = b'N';
    }
    std::fs::write(&path, &bytes).unwrap();
    person.wait(Span::hours(30)).unwrap();
    let clock = person.clock().clone();
    let trouble = person.app().unwrap().maintain(&clock).unwrap_err();
    assert_eq!(trouble.key, "trouble-damaged-mended");
    person.send(Event::Start).unwrap();
    assert!(person.record().unwrap().contains("note number 398"));
    assert_eq!(set_aside(folder.path()).len(), 1);
}

#[test]
fn copies_are_made_by_themselves_apart_in_time_and_thinned() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    let mut journal = Journal::open(&path, "one", NOW).unwrap().journal;
    write(&mut journal, 0, 3);
    assert!(journal.back_up(NOW).unwrap().is_some());
    assert_eq!(journal.back_up(NOW.plus(Span::minutes(359))).unwrap(), None, "not within six hours");
    for n in 1..=20 {
        assert!(journal.back_up(NOW.plus(Span::hours(6 * n))).unwrap().is_some());
    }
    assert_eq!(journal.backups().len(), KEPT_BACKUPS);
    assert_eq!(journal.last_backup(), Some(NOW.plus(Span::hours(120))));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(40))]
    /// Whatever bytes are overwritten, opening and mending never panics, never
    /// deletes, and what is kept is what was written.
    #[test]
    fn any_damage_is_survived(places in proptest::collection::vec((any::<proptest::sample::Index>(), any::<u8>()), 1..40)) {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("j");
        {
            let mut journal = Journal::open(&path, "one", NOW).unwrap().journal;
            write(&mut journal, 0, 60);
        }
        let mut bytes = std::fs::read(&path).unwrap();
        for (at, byte) in places {
            let at = at.index(bytes.len());
            bytes[at] = byte;
        }
        std::fs::write(&path, &bytes).unwrap();
        let opened = match Journal::open(&path, "one", NOW) {
            Ok(opened) => opened,
            // Told as another program's or a newer file: then it is untouched.
            Err(_) => { prop_assert_eq!(std::fs::read(&path).unwrap(), bytes); return Ok(()); }
        };
        let mut journal = match opened.journal.verify() {
            Ok(Health::Sound | Health::ProjectionWrong) => opened.journal,
            Ok(Health::Damaged) | Err(_) => {
                drop(opened.journal);
                Journal::recover(&path, "one", NOW).unwrap().journal
            }
        };
        journal.rebuild().unwrap();
        for n in 0..60 {
            if let Some((_, fields)) = journal.record(&format!("n{n:04}")).unwrap() {
                if let Some(text) = fields.get("text") {
                    prop_assert_eq!(text.clone(), json!(format!("note number {n} {}", "x".repeat(200))));
                }
            }
        }
    }
}
