//! What leaves: nothing that was overwritten, nothing that was taken out, no sign that turns a
//! name round.

use drawwell_core::journal::{Change, Journal};
use drawwell_core::screen::shapes::Event;
use drawwell_core::share::family_file;
use drawwell_core::share::sealed::card::Card;
use drawwell_core::share::sealed::own_keys::OwnKeys;
use drawwell_core::share::sealed::{open, OpenWith};
use drawwell_tests::person::Person;
use drawwell_tests::visiting::shares;

use super::{card, note, person, NOW};

fn shared(person: &mut Person, keys: &OwnKeys) -> String {
    let file = shares(person, &card(keys, "Ada").write()).unwrap();
    String::from_utf8(open(&file, &OpenWith::Keys(vec![keys.opens().to_owned()])).unwrap()).unwrap()
}

fn changes(file: &str) -> Vec<Change> {
    family_file::read(file.as_bytes()).unwrap().changes
}

fn merged(files: &[Vec<Change>]) -> String {
    let folder = tempfile::tempdir().unwrap();
    let mut journal = Journal::open(&folder.path().join("j"), "desk", NOW).unwrap().journal;
    for file in files {
        assert_eq!(journal.merge(file, NOW).unwrap().other, 0);
    }
    journal.rebuild().unwrap();
    assert_eq!(journal.verify().unwrap(), drawwell_core::journal::Health::Sound);
    journal.projection_text().unwrap()
}

/// Seen: overwritten and taken-out texts were in the sealed file.
#[test]
fn overwritten_and_taken_out_words_are_not_in_the_sealed_file_and_the_fold_is_the_same() {
    let mut person = person();
    let keys = OwnKeys::make().unwrap();
    note(&mut person, "He shouts at me.");
    let before = shared(&mut person, &keys);
    assert!(before.contains("He shouts at me."));
    let first = opened(&mut person);
    person.send(Event::Enter { id: first, field: "text".into(), typed: "Tired.".into() }).unwrap();
    note(&mut person, "Nobody shall read this.");
    let second = last_note(&mut person);
    let between = shared(&mut person, &keys);
    person.send(Event::Remove { id: second.clone() }).unwrap();
    let after = shared(&mut person, &keys);
    assert!(between.contains("Tired.") && !between.contains("He shouts at me."));
    assert!(!after.contains("He shouts at me.") && !after.contains("Nobody shall read this."), "{after}");
    assert!(after.contains("\"gone\":true"));
    // Whatever order the files come in, the desk says the same.
    let (one, two, three) = (changes(&before), changes(&between), changes(&after));
    let all = merged(&[one.clone(), two.clone(), three.clone()]);
    for order in [[&three, &two, &one], [&two, &three, &one], [&three, &one, &two]] {
        assert_eq!(merged(&order.map(Clone::clone)), all);
    }
    assert!(text_of(std::slice::from_ref(&three)).contains("Tired."));
    // Brought back, it is given again.
    person.send(Event::BringBack { id: second }).unwrap();
    let back = shared(&mut person, &keys);
    assert!(back.contains("Nobody shall read this."));
    assert!(text_of(&[three, changes(&back)]).contains("Nobody shall read this."));
}

fn text_of(files: &[Vec<Change>]) -> String {
    let folder = tempfile::tempdir().unwrap();
    let mut journal = Journal::open(&folder.path().join("j"), "desk", NOW).unwrap().journal;
    for file in files {
        journal.merge(file, NOW).unwrap();
    }
    let mut text = String::new();
    journal
        .each_record(|id, kind, fields| {
            text += &format!("{id} {kind:?} {fields:?}\n");
            Ok(())
        })
        .unwrap();
    text
}

fn notes(person: &mut Person) -> Vec<String> {
    let record = person.record().unwrap();
    let lines = record.lines().filter_map(|line| serde_json::from_str::<serde_json::Value>(line).ok());
    lines.filter(|line| line["fact"] == "note").map(|line| line["id"].as_str().unwrap().to_owned()).collect()
}

fn opened(person: &mut Person) -> String {
    notes(person).remove(0)
}

fn last_note(person: &mut Person) -> String {
    notes(person).pop().unwrap()
}

/// Unicode UAX #9: a right-to-left override turns the rest of a name round.
#[test]
fn signs_that_turn_a_name_round_are_seen_and_stripped_from_what_leaves() {
    let keys = OwnKeys::make().unwrap();
    let mut turned = card(&keys, "");
    turned.name = "Ada\u{202e}hsraM\n1".to_owned();
    assert_eq!(Card::read(&turned.write()).unwrap().name, "AdahsraM1");
    let mut person = person();
    person.send(Event::Add { kind: "pump".to_owned(), days_back: 0 }).unwrap();
    person.enter("name", "Her\u{202e}on").unwrap();
    person.press("place-kit").unwrap();
    let said = person.reads().unwrap();
    assert!(said.contains("Her\u{fffd}on") && !said.contains('\u{202e}'), "{said}");
}

#[test]
fn a_line_break_in_a_calendar_s_own_name_begins_no_line_of_it() {
    let kept = serde_json::json!({ "given": 1, "sessions": [
        { "uid": "a\r\nATTENDEE:mailto:x@example.org", "sequence": 0, "at": 0, "until": 1 },
        { "uid": "b", "sequence": 0, "at": 0, "until": 1 },
    ] });
    let read = drawwell_core::share::calendar::Exported::read(Some(&kept));
    assert!(!format!("{read:?}").contains("ATTENDEE"));
    assert!(format!("{read:?}").contains("\"b\""));
}
