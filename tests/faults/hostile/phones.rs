//! A record that comes to a phone: from its family's own phones, after a question, as one act.

use drawwell_core::screen::shapes::{Event, Place, Secret};
use drawwell_core::share::sealed::card::Card;
use drawwell_core::share::sealed::own_keys::OwnKeys;
use drawwell_core::share::sealed::signed;
use drawwell_tests::person::Person;
use drawwell_tests::visiting::takes;
use serde_json::json;

use super::{acquainted, change, family_of, keys_of, note, page, text_of, MADE};

fn signed_by(keys: &OwnKeys, family: &str, changes: &[serde_json::Value]) -> Vec<u8> {
    signed::sign(&text_of(family, MADE, Some(keys), changes), "a record", keys).unwrap().into_bytes()
}

/// Seen: thresholds, the rhythm and a consultant changed unasked.
#[test]
fn a_stranger_who_knows_the_family_changes_nothing_on_its_phone() {
    let (mut person, _) = acquainted();
    note(&mut person, "Left is back.");
    let (family, record) = (family_of(&mut person), person.record().unwrap());
    let changes =
        [change("x", 1, "rules", "breast_fever", json!(41.0)), change("x", 2, "rhythm", "sessions_a_day", json!(2))];
    let his = OwnKeys::make().unwrap();
    assert_eq!(person.import_file(&signed_by(&his, &family, &changes)).unwrap_err().key, "family-file-stranger");
    let unsigned = text_of(&family, MADE, None, &changes);
    let sealed = |text: &[u8]| {
        let to = keys_of(&person).sealing_key().unwrap();
        drawwell_core::share::sealed::seal(text, &drawwell_core::share::sealed::SealFor::Keys(vec![to])).unwrap()
    };
    let file = sealed(unsigned.as_bytes());
    assert_eq!(person.import_file(&file).unwrap_err().key, "family-file-unsigned");
    assert_eq!(person.record().unwrap(), record);
}

#[test]
fn what_an_own_phone_says_is_asked_about_and_undo_takes_all_of_it_back() {
    let (mut person, _) = acquainted();
    note(&mut person, "Left is back.");
    let (family, keys, record) = (family_of(&mut person), keys_of(&person), person.record().unwrap());
    let changes = [
        change("other", 1, "rules", "kind", json!("rules")),
        change("other", 2, "rules", "breast_fever", json!(38.1)),
        change("other", 3, "n", "kind", json!("note")),
        change("other", 4, "n", "text", json!("From the other phone.")),
    ];
    let file = signed_by(&keys, &family, &changes);
    person.opens(&file).unwrap();
    assert_eq!(person.record().unwrap(), record, "nothing before it is answered");
    let said = page(&person);
    assert!(said.contains("One new entry") && said.contains("from 38.5 °C to 38.1 °C"), "{said}");
    person.press("leave-asked").unwrap();
    assert_eq!(person.record().unwrap(), record);
    person.opens(&file).unwrap();
    person.press("take-asked").unwrap();
    assert!(person.record().unwrap().contains("From the other phone."));
    person.send(Event::Undo).unwrap();
    assert_eq!(person.record().unwrap(), record);
    person.send(Event::Redo).unwrap();
    assert!(person.record().unwrap().contains("From the other phone."));
}

/// Whom to trust is said on each phone: not even an own one says it for another.
#[test]
fn no_consultant_comes_in_with_a_record() {
    let (mut person, _) = acquainted();
    let consultant = person.only("consultant").unwrap();
    let id = consultant["id"].as_str().unwrap();
    let his = super::card(&OwnKeys::make().unwrap(), "Ada");
    let changes = [
        change("other", 1, id, "signing_key", json!(his.signing_key)),
        change("other", 2, "c", "kind", json!("consultant")),
        change("other", 3, "c", "signing_key", json!(his.signing_key)),
        change("other", 4, "n", "kind", json!("note")),
    ];
    let file = signed_by(&keys_of(&person), &family_of(&mut person), &changes);
    person.import_file(&file).unwrap();
    assert_eq!(person.only("consultant").unwrap(), consultant);
}

/// Two phones of one family: each knows the other by its card, once the words were compared.
#[test]
fn a_phone_is_the_family_s_own_once_its_card_was_compared() {
    let mut one = super::person();
    note(&mut one, "From one.");
    let typed =
        |id: &str| Event::EnterSecret { id: id.into(), secret: Secret { words: "otter plum kite anchor".into() } };
    let file = takes(&mut one, typed("seal-passphrase")).unwrap();
    let mut two = Person::at("2026-05-25T04:10:00+02:00", "Europe/Berlin").unwrap();
    two.import_file(&file).unwrap();
    two.send(typed("open-passphrase")).unwrap();
    note(&mut two, "From two.");
    let back = takes(&mut two, typed("seal-passphrase")).unwrap();
    one.wait(drawwell_core::time::Span::minutes(10)).unwrap();
    one.import_file(&back).unwrap();
    assert_eq!(one.send(typed("open-passphrase")).unwrap_err().key, "family-file-stranger");
    two.send(Event::Go { place: Place::OwnCard }).unwrap();
    let said = two.reads().unwrap();
    let line = said.lines().find(|line| line.starts_with("drawwell:phone?")).unwrap().to_owned();
    assert!(said.contains(&Card::read(&line).unwrap().words().join(" ")));
    one.send(Event::TakeCardIn { card: line }).unwrap();
    one.press("words-same").unwrap();
    one.import_file(&back).unwrap();
    one.send(typed("open-passphrase")).unwrap();
    one.press("take-asked").unwrap();
    assert!(one.record().unwrap().contains("From two."));
}
