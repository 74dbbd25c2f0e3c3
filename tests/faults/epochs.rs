//! Every new file of a device is a new epoch: no number of it is given out twice, whatever was
//! erased, put back or begun anew, and what was erased does not come back.

use drawwell_core::app::App;
use drawwell_core::journal::{Change, Dot, Journal, Stamp};
use drawwell_core::screen::shapes::{Clock, Event, Opening};
use drawwell_core::time::Instant;
use serde_json::json;

const NOW: Instant = Instant::from_unix_milliseconds(1_772_000_000_000);

fn clock() -> Clock {
    Clock { unix_milliseconds: NOW.unix_milliseconds(), zone: "UTC".to_owned(), offset_seconds: None }
}

fn phone(path: &std::path::Path) -> App {
    let opening = Opening { device: String::new(), language: "en".to_owned(), look_around: false };
    App::open(path.to_owned(), opening, &clock()).unwrap()
}

fn journal(path: &std::path::Path) -> Journal {
    Journal::open(path, "", NOW).unwrap().journal
}

fn note(journal: &mut Journal, text: &str) -> String {
    journal
        .act("add", "", NOW, |w| {
            let id = w.new_id();
            w.set(&id, "kind", &json!("note"))?;
            w.set(&id, "text", &json!(text))?;
            Ok(id)
        })
        .unwrap()
}

fn notes(journal: &Journal) -> Vec<String> {
    let mut found = Vec::new();
    journal
        .each_record(|_, _, fields| {
            found.extend(fields.get("text").and_then(|text| text.as_str()).map(str::to_owned));
            Ok(())
        })
        .unwrap();
    found.sort();
    found
}

/// Seen: after erasing the same name began again at number 1, and what the other phone had kept
/// of the first time was counted as known and lost.
#[test]
fn two_phones_erased_and_joined_again_lose_no_note() {
    let folder = tempfile::tempdir().unwrap();
    let paths = ["one.drawwell", "two.drawwell"].map(|name| folder.path().join(name));
    let mut said = Vec::new();
    for round in 0..3 {
        let mut changes = Vec::new();
        for (number, path) in paths.iter().enumerate() {
            drop(phone(path));
            let mut own = journal(path);
            said.push(format!("round {round} on {number}"));
            note(&mut own, said.last().unwrap());
            changes.push(own.changes().unwrap());
        }
        let mut two = journal(&paths[1]);
        assert_eq!(two.merge(&changes[0], NOW).unwrap().other, 0, "round {round}");
        // One of them is erased, and takes in again what the other has kept of it.
        let name = journal(&paths[0]).device().to_owned();
        phone(&paths[0]).update(Event::EraseRecord, &clock()).unwrap();
        let mut one = journal(&paths[0]);
        assert_ne!(one.device(), name, "another key, and so another name");
        note(&mut one, &format!("after erasing {round}"));
        said.push(format!("after erasing {round}"));
        let merged = one.merge(&two.changes().unwrap(), NOW).unwrap();
        assert_eq!((merged.other, merged.known), (0, 0));
        two.merge(&one.changes().unwrap(), NOW).unwrap();
        let mut all = said.clone();
        all.sort();
        assert_eq!((notes(&one), notes(&two)), (all.clone(), all), "round {round}");
    }
}

/// Two copies of one folder, opened in the same millisecond.
#[test]
fn two_copies_that_begin_anew_at_one_moment_take_two_names() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j.drawwell");
    note(&mut Journal::open(&path, "one", NOW).unwrap().journal, "first");
    let names: Vec<String> = (0..3)
        .map(|number| {
            let copy = folder.path().join(format!("copy-{number}.drawwell"));
            std::fs::copy(&path, &copy).unwrap();
            Journal::open(&copy, "one", NOW).unwrap().journal.device().to_owned()
        })
        .collect();
    assert!(names.iter().all(|name| name.starts_with("one.")), "{names:?}");
    assert!(names[0] != names[1] && names[1] != names[2] && names[0] != names[2], "{names:?}");
}

/// A damaged record keeps its keys, and goes on under a name that it did not have.
#[test]
fn a_salvaged_phone_that_is_named_after_its_key_goes_on_under_another_name() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.drawwell");
    drop(phone(&path));
    let mut own = journal(&path);
    let name = own.device().to_owned();
    note(&mut own, "kept");
    own.back_up(NOW).unwrap().unwrap();
    drop(own);
    std::fs::write(&path, vec![7_u8; 5000]).unwrap();
    drop(phone(&path));
    let mut own = journal(&path);
    assert!(own.device().starts_with(&format!("{name}.")), "{} after {name}", own.device());
    note(&mut own, "after");
    assert_eq!(notes(&own), ["after", "kept"]);
}

fn change(device: &str, sequence: i64, subject: &str, field: &str, value: serde_json::Value) -> Change {
    Change {
        dot: Dot { device: device.to_owned(), sequence },
        stamp: Stamp::at(NOW),
        subject: subject.to_owned(),
        field: field.to_owned(),
        value: value.to_string(),
        replaces: Vec::new(),
    }
}

fn of_two() -> Vec<Change> {
    vec![
        change("two", 1, "n", "kind", json!("note")),
        change("two", 2, "n", "text", json!("gone")),
        change("two", 3, "m", "kind", json!("note")),
        change("two", 4, "m", "text", json!("stays")),
    ]
}

/// What was erased here is not brought back by who has it still.
#[test]
fn what_was_erased_here_does_not_come_back_with_a_merge() {
    let folder = tempfile::tempdir().unwrap();
    let mut one = Journal::open(&folder.path().join("j"), "one", NOW).unwrap().journal;
    one.merge(&of_two(), NOW).unwrap();
    one.erase(&["n".to_owned()], NOW).unwrap();
    let merged = one.merge(&of_two(), NOW).unwrap();
    assert_eq!((merged.taken, merged.known, merged.erased, merged.other), (0, 2, 2, 0));
    assert_eq!(notes(&one), ["stays"]);
    assert!(!one.changes().unwrap().iter().any(|change| change.value.contains("gone")));
}

/// What another phone erased goes here too, in whatever order it is heard of, and undo brings
/// none of it back.
#[test]
fn what_another_phone_erased_goes_here_too() {
    let erased = change("two", 5, "n", "erased", json!(true));
    let orders: [Vec<Change>; 3] = [
        of_two().into_iter().chain([erased.clone()]).collect(),
        std::iter::once(erased.clone()).chain(of_two()).collect(),
        vec![erased],
    ];
    for (number, order) in orders.into_iter().enumerate() {
        let folder = tempfile::tempdir().unwrap();
        let mut one = Journal::open(&folder.path().join("j"), "one", NOW).unwrap().journal;
        one.merge(&of_two(), NOW).unwrap();
        let (_, differences) = one.would_merge(&order, NOW).unwrap();
        assert!(differences.iter().any(|d| d.subject == "n" && d.after.is_null()), "it is told before");
        one.merge_as_an_act("bring-in", &order, NOW).unwrap();
        assert_eq!(notes(&one), ["stays"], "order {number}");
        one.undo(NOW).unwrap();
        assert!(!one.changes().unwrap().iter().any(|change| change.value.contains("gone")), "order {number}");
        let said = one.projection_text().unwrap();
        one.rebuild().unwrap();
        assert_eq!(one.projection_text().unwrap(), said);
    }
}

/// A number that is met with other content is told, and neither of the two is lost silently.
#[test]
fn a_number_met_with_other_content_is_told() {
    let folder = tempfile::tempdir().unwrap();
    let mut one = Journal::open(&folder.path().join("j"), "one", NOW).unwrap().journal;
    one.merge(&of_two(), NOW).unwrap();
    let other = [change("two", 2, "k", "text", json!("another note under a number that was used"))];
    let merged = one.merge(&other, NOW).unwrap();
    assert_eq!((merged.taken, merged.known, merged.other), (0, 0, 1));
    assert_eq!(notes(&one), ["gone", "stays"]);
}
