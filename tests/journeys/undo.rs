//! Undo for every act, several steps deep, also after a restart.

use drawwell_core::screen::shapes::{Event, Screen};
use drawwell_core::time::Span;
use drawwell_tests::person::Person;

fn person() -> Person {
    Person::welcomed("2026-03-01T02:10:00+01:00", "Europe/Berlin").unwrap()
}

fn undo_says(person: &Person) -> Option<String> {
    person.frame().unwrap().undo.as_ref().map(|a| a.detail.clone())
}

/// A session, a correction and a pump: eight acts.
fn eight_acts(person: &mut Person) -> Vec<String> {
    let mut states = vec![person.record().unwrap()];
    for key in ["start", "mark-letdown", "mark-hurts", "pain-4", "mark-expression-phase", "finish", "amount-left-more"]
    {
        person.press(key).unwrap();
        person.wait(Span::minutes(1)).unwrap();
        states.push(person.record().unwrap());
    }
    person.press("place-kit").unwrap();
    person.press("add-pump").unwrap();
    states.push(person.record().unwrap());
    states
}

#[test]
fn every_act_can_be_taken_back_and_done_again() {
    let mut person = person();
    let states = eight_acts(&mut person);
    for state in states.iter().rev().skip(1) {
        person.send(Event::Undo).unwrap();
        assert_eq!(&person.record().unwrap(), state);
    }
    assert_eq!(undo_says(&person), None);
    for state in states.iter().skip(1) {
        person.send(Event::Redo).unwrap();
        assert_eq!(&person.record().unwrap(), state);
    }
    assert_eq!(person.frame().unwrap().redo, None);
}

#[test]
fn undo_goes_on_after_a_restart() {
    let mut person = person();
    let states = eight_acts(&mut person);
    for state in states.iter().rev().skip(1) {
        person.killed_and_opened().unwrap();
        person.send(Event::Undo).unwrap();
        assert_eq!(&person.record().unwrap(), state);
    }
}

#[test]
fn undo_says_what_it_would_take_back() {
    let mut person = person();
    person.press("start").unwrap();
    assert_eq!(undo_says(&person).unwrap(), "session started");
    person.press("mark-letdown").unwrap();
    assert_eq!(undo_says(&person).unwrap(), "letdown");
}

#[test]
fn a_new_act_makes_an_end_of_redo() {
    let mut person = person();
    person.press("start").unwrap();
    person.press("mark-letdown").unwrap();
    person.press("undo").unwrap();
    assert!(person.frame().unwrap().redo.is_some());
    person.press("mark-hurts").unwrap();
    assert_eq!(person.frame().unwrap().redo, None);
}

#[test]
fn undoing_finish_lets_the_session_run_on_and_its_alarm_ring() {
    let mut person = person();
    person.press("start").unwrap();
    person.wait(Span::minutes(4)).unwrap();
    person.press("finish").unwrap();
    person.effects.clear();
    person.press("undo").unwrap();
    assert!(matches!(person.screen().unwrap(), Screen::Running { .. }));
    assert!(person.effects.iter().any(|e| matches!(e, drawwell_core::screen::shapes::Effect::SetAlarm { .. })));
}

#[test]
fn a_file_brought_in_is_taken_back_as_a_whole() {
    let mut person = person();
    person.press("start").unwrap();
    person.press("finish").unwrap();
    let before = person.record().unwrap();
    let demo = std::fs::read(drawwell_tests::place::demo_data("family.jsonl")).unwrap();
    person.wait(Span::hours(24 * 300)).unwrap();
    person.import_file(&demo).unwrap();
    assert_ne!(person.record().unwrap(), before);
    person.press("undo").unwrap();
    assert_eq!(person.record().unwrap(), before);
}

#[test]
fn with_nothing_to_undo_it_says_so() {
    let mut person = person();
    person.send(Event::Undo).unwrap();
    assert!(person.frame().unwrap().notices.iter().any(|n| n.key == "nothing-to-undo"));
}
