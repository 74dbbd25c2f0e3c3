//! Numbers of changes: none is counted as known that is not, and no device gives out another's.

use drawwell_core::journal::{Change, Dot, Journal, Stamp};
use drawwell_core::screen::shapes::{Clock, Opening};
use drawwell_core::trouble::Trouble;
use serde_json::json;

use super::NOW;

fn change(device: &str, sequence: i64, text: &str) -> Change {
    Change {
        dot: Dot { device: device.to_owned(), sequence },
        stamp: Stamp::at(NOW),
        subject: "n".to_owned(),
        field: "text".to_owned(),
        value: json!(text).to_string(),
        replaces: Vec::new(),
    }
}

fn journal(folder: &tempfile::TempDir, device: &str) -> Journal {
    Journal::open(&folder.path().join("j.drawwell"), device, NOW).unwrap().journal
}

fn writes(journal: &mut Journal, text: &str) -> Result<(), Trouble> {
    journal.act("enter", "n", NOW, |w| w.set("n", "text", &json!(text)))
}

fn reads(journal: &Journal) -> Option<String> {
    let fields =
        journal
            .connection()
            .query_row("SELECT value FROM field WHERE subject = 'n' AND field = 'text'", [], |r| r.get(0));
    fields.ok()
}

/// Seen: a change with this device's highest number made every later tap answer OK and none
/// reach the journal.
#[test]
fn a_number_of_this_device_s_own_is_refused_from_outside() {
    let folder = tempfile::tempdir().unwrap();
    let mut own = journal(&folder, "one");
    writes(&mut own, "mine").unwrap();
    let merged = own.merge(&[change("one", (1 << 40) - 1, "made up"), change("one", 2, "made up")], NOW).unwrap();
    assert_eq!((merged.taken, merged.known, merged.other), (0, 0, 2));
    for text in ["after", "and again"] {
        writes(&mut own, text).unwrap();
        assert_eq!(reads(&own).unwrap(), json!(text).to_string());
    }
}

/// A journal into which an older version took such a change goes on under another name.
#[test]
fn a_journal_whose_numbers_were_used_up_goes_on_under_another_name() {
    let folder = tempfile::tempdir().unwrap();
    let mut own = journal(&folder, "one");
    writes(&mut own, "mine").unwrap();
    own.connection()
        .execute("UPDATE change SET row = (row & ~1099511627775) | 1099511627775, device_seq = 1099511627775", [])
        .unwrap();
    assert_eq!(writes(&mut own, "lost?").unwrap_err().key, "trouble-not-kept", "a tap that is not kept is told");
    drop(own);
    let mut own = journal(&folder, "one");
    assert!(own.device().starts_with("one."));
    writes(&mut own, "kept").unwrap();
    assert_eq!(reads(&own).unwrap(), "\"kept\"");
}

/// Seen: another phone's coming numbers taken first made its true changes vanish.
#[test]
fn the_same_name_with_other_content_is_told_and_not_counted_as_known() {
    let folder = tempfile::tempdir().unwrap();
    let mut own = journal(&folder, "one");
    own.merge(&[change("two", 1, "made up")], NOW).unwrap();
    let merged = own.merge(&[change("two", 1, "true")], NOW).unwrap();
    assert_eq!((merged.taken, merged.known, merged.other), (0, 0, 1));
    let merged = own.merge(&[change("two", 1, "made up")], NOW).unwrap();
    assert_eq!((merged.known, merged.other), (1, 0));
}

/// Seen: a data folder that was copied to a second computer lost the other's notes.
#[test]
fn a_copied_folder_is_noticed_and_both_go_on_without_losing_a_note() {
    let (here, there) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
    writes(&mut journal(&here, "one"), "first").unwrap();
    std::fs::copy(here.path().join("j.drawwell"), there.path().join("j.drawwell")).unwrap();
    let (mut one, mut two) = (journal(&here, "one"), journal(&there, "one"));
    assert_eq!(one.device(), "one");
    assert!(two.device().starts_with("one."), "{}", two.device());
    let note = |journal: &mut Journal, id: &str| {
        journal.act("add", id, NOW, |w| w.set(id, "text", &json!(id))).unwrap();
    };
    note(&mut one, "here");
    note(&mut two, "there");
    let merged = one.merge(&two.changes().unwrap(), NOW).unwrap();
    assert_eq!((merged.taken, merged.other), (1, 0));
    two.merge(&one.changes().unwrap(), NOW).unwrap();
    assert_eq!(one.changes().unwrap(), two.changes().unwrap());
    drop(two);
    assert!(journal(&there, "one").device().starts_with("one."), "and keeps that name");
}

/// Nobody can foresee the numbers of a device whose name is a hash of its key.
#[test]
fn a_device_that_the_host_does_not_name_is_named_after_its_key() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.drawwell");
    let clock = Clock { unix_milliseconds: NOW.unix_milliseconds(), zone: "UTC".to_owned(), offset_seconds: None };
    let opening = || Opening { device: String::new(), language: "en".to_owned(), look_around: false };
    let open = || drawwell_core::app::App::open(path.clone(), opening(), &clock).unwrap();
    drop(open());
    let name = Journal::open(&path, "", NOW).unwrap().journal.device().to_owned();
    assert!(name.len() == 25 && name.starts_with('d'), "{name}");
    drop(open());
    let journal = Journal::open(&path, "", NOW).unwrap().journal;
    assert_eq!(journal.device(), name);
    let keys = drawwell_core::share::sealed::own_keys::OwnKeys::read(
        &journal.secret("opens").unwrap().unwrap(),
        &journal.secret("signs").unwrap().unwrap(),
    );
    assert_eq!(keys.unwrap().device_name().unwrap(), name);
}
