//! Over an empty record: begin, look around, or bring a record in.

use drawwell_core::screen::shapes::{Effect, Screen};
use drawwell_tests::person::Person;

fn person() -> Person {
    Person::at("2026-03-01T02:10:00+01:00", "Europe/Berlin").unwrap()
}

#[test]
fn an_empty_record_offers_to_look_around_with_the_invented_family() {
    let mut person = person();
    assert!(matches!(person.screen().unwrap(), Screen::Welcome { .. }));
    person.press("look-around").unwrap();
    assert_eq!(person.effects, [Effect::OpenLookAround]);
    assert!(person.record().unwrap().lines().count() <= 1, "the person's own record is untouched");
}

#[test]
fn begin_is_asked_once() {
    let mut person = person();
    person.press("begin").unwrap();
    assert!(matches!(person.screen().unwrap(), Screen::Ready { .. }));
    person.killed_and_opened().unwrap();
    assert!(matches!(person.screen().unwrap(), Screen::Ready { .. }));
    assert_eq!(person.frame().unwrap().undo, None, "beginning is nothing to undo");
}

#[test]
fn a_record_that_was_brought_in_needs_no_welcome() {
    let mut person = person();
    person.press("pick-record").unwrap();
    assert!(matches!(person.effects[0], Effect::PickFile { .. }));
    person
        .bring_in(br#"{"fact":"note","id":"n","at":{"at":"2026-02-01T10:00:00+01:00","zone":"Europe/Berlin"},"text":"hello"}"#)
        .unwrap();
    person.press("place-now").unwrap();
    assert!(matches!(person.screen().unwrap(), Screen::Ready { .. }));
}
