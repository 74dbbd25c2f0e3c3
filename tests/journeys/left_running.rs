//! A session left running for hours asks gently when it ended.

use drawwell_core::screen::shapes::{Screen, Tone};
use drawwell_core::time::Span;
use drawwell_tests::person::Person;

fn left_running(hours: i64, minutes: i64) -> Person {
    let mut person = Person::welcomed("2026-03-01T02:10:00+01:00", "Europe/Berlin").unwrap();
    person.press("start").unwrap();
    person.wait(Span::minutes(7)).unwrap();
    person.press("mark-letdown").unwrap();
    person.wait(Span::minutes(hours * 60 + minutes - 7)).unwrap();
    person
}

fn question(person: &Person) -> Option<String> {
    person.frame().unwrap().notices.iter().find(|n| n.tone == Tone::Asks).map(|n| n.text.clone())
}

#[test]
fn it_asks_from_two_hours_on_and_not_before() {
    assert_eq!(question(&left_running(1, 59)), None);
    assert_eq!(question(&left_running(2, 0)).unwrap(), "This session has been running for 2 h. When did it end?");
}

#[test]
fn it_can_have_ended_as_usual_or_at_its_last_mark() {
    let mut person = left_running(5, 0);
    assert_eq!(person.find("ended-usual").unwrap().unwrap().label, "At 02:30, my usual length");
    person.press("ended-last-mark").unwrap();
    assert_eq!(person.only("session").unwrap()["ended"]["at"], "2026-03-01T02:17:00.000+01:00");
    assert!(matches!(person.screen().unwrap(), Screen::Ready { .. }));
}

#[test]
fn still_going_is_not_asked_again_for_two_hours() {
    let mut person = left_running(2, 30);
    person.press("still-running").unwrap();
    person.wait(Span::minutes(119)).unwrap();
    assert_eq!(question(&person), None);
    person.wait(Span::minutes(1)).unwrap();
    assert!(question(&person).is_some());
}

#[test]
fn after_a_day_finish_is_refused_with_a_way_out_and_the_record_stays() {
    let mut person = left_running(30, 0);
    let before = person.record().unwrap();
    let trouble = person.press("finish").unwrap_err();
    assert_eq!((trouble.key, trouble.field.as_str()), ("bad-too-long", "ended"));
    assert_eq!(person.record().unwrap(), before);
    person.press("ended-usual").unwrap();
    assert!(person.only("session").unwrap().get("ended").is_some());
}
