//! Files that nobody signed: what they may bring into a record that is not empty.

use drawwell_core::screen::shapes::Event;
use drawwell_tests::person::Person;

use super::{acquainted, note, page};

const BY_A_STRANGER: &str = r#"{"drawwell":"exchange","version":1}
{"fact":"consultant","id":"c-1","name":"Ada","sealing_key":"age1x","signing_key":"RWx"}
{"fact":"plan","id":"plan-x","at":{"at":"2026-05-24T04:06:00.000+02:00","zone":"Europe/Berlin"},"plan_from":"Ada","came":{"at":"2026-05-24T04:06:00.000+02:00","zone":"Europe/Berlin"}}
{"fact":"plan_part","id":"plan-x-1","plan":"plan-x","plan_part":"words","words":"Set it to 9."}
{"fact":"settings","id":"settings","family":"theirs-1","left_out":"body,notes","emergency_call":"+49 30 123456"}
{"fact":"rules","id":"rules","breast_fever":41.0}
{"fact":"rhythm","id":"rhythm","sessions_a_day":2,"calendar":{"given":7,"sessions":[]}}
{"fact":"caution_dealt","id":"d-1","at":{"at":"2026-05-24T04:06:00.000+02:00","zone":"Europe/Berlin"},"dealt_how":"nobody_needed","caution":"emergency","seen":{"at":"2026-05-25T04:06:00.000+02:00","zone":"Europe/Berlin"}}
{"fact":"note","id":"n-1","at":{"at":"2026-05-24T04:06:00.000+02:00","zone":"Europe/Berlin"},"text":"A note."}
"#;

fn used() -> Person {
    let (mut person, _) = acquainted();
    note(&mut person, "Left is back.");
    person
}

/// Seen: "A plan from … waits", unsigned, on the same page as a signed one.
#[test]
fn it_brings_no_consultant_no_plan_and_nothing_that_is_the_record_s_own() {
    let mut person = used();
    let settings = person.only("settings").unwrap();
    person.import_file(BY_A_STRANGER.as_bytes()).unwrap();
    let record = person.record().unwrap();
    for left in ["c-1", "plan-x", "plan-x-1", "theirs-1", "calendar"] {
        assert!(!record.contains(left), "{left}");
    }
    let now = person.only("settings").unwrap();
    assert_eq!((&now["family"], &now["left_out"]), (&settings["family"], &settings["left_out"]));
    let said = person.reads().unwrap();
    assert!(said.contains("only while the record is empty") && said.contains("3 things were not imported"), "{said}");
    person.press("place-now").unwrap();
    assert!(!person.reads().unwrap().contains("is waiting for your answer"));
}

#[test]
fn rules_whom_to_call_the_rhythm_and_cautions_dealt_with_come_after_a_question_that_says_them() {
    let mut person = used();
    let record = person.record().unwrap();
    person.opens(BY_A_STRANGER.as_bytes()).unwrap();
    assert_eq!(person.record().unwrap(), record, "nothing before it is answered");
    let said = page(&person);
    for told in ["from 38.5 °C to 41 °C", "+49 30 123456", "Sessions a day: 2", "One caution as dealt with"] {
        assert!(said.contains(told), "{told}: {said}");
    }
    person.press("leave-asked").unwrap();
    assert_eq!(person.record().unwrap(), record);
    person.import_file(BY_A_STRANGER.as_bytes()).unwrap();
    assert!(person.record().unwrap().contains("A note."));
    person.send(Event::Undo).unwrap();
    // Both are there, and say nothing.
    let said = |record: &str| {
        record
            .lines()
            .filter(|line| !line.contains("\"rules\"") && !line.contains("\"rhythm\""))
            .map(str::to_owned)
            .collect::<Vec<_>>()
    };
    assert_eq!(said(&person.record().unwrap()), said(&record));
    assert!(!person.record().unwrap().contains("41.0"));
}

/// A copy of one's own comes back whole into a new phone; that words were the same is said there.
#[test]
fn into_an_empty_record_it_comes_whole_but_for_what_was_compared() {
    let copy = used().record().unwrap();
    assert!(copy.contains("\"compared\""));
    let mut new = Person::at("2026-05-26T04:06:00+02:00", "Europe/Berlin").unwrap();
    new.import_file(copy.as_bytes()).unwrap();
    assert_eq!(new.only("settings").unwrap()["family"].as_str(), used().only("settings").unwrap()["family"].as_str());
    assert!(new.only("consultant").unwrap().get("compared").is_none());
    // And once more says nothing new.
    let record = new.record().unwrap();
    new.opens(record.as_bytes()).unwrap();
    assert!(new.find("take-asked").unwrap().is_none());
    assert_eq!(new.record().unwrap(), record);
}
