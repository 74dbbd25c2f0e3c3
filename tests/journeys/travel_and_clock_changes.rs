//! Facts keep the clock they were written by.

use drawwell_core::screen::shapes::{Event, Place, Screen};
use drawwell_core::time::Span;
use drawwell_tests::person::Person;

#[test]
fn elapsed_time_is_elapsed_time_across_a_clock_change() {
    let mut person = Person::welcomed("2026-03-29T01:50:00+01:00", "Europe/Berlin").unwrap();
    person.press("start").unwrap();
    person.wait(Span::minutes(20)).unwrap();
    let Screen::Running { running, .. } = person.screen().unwrap() else { panic!("runs") };
    assert_eq!(running.figure, "20:00");
    person.press("finish").unwrap();
    assert_eq!(person.only("session").unwrap()["ended"]["at"], "2026-03-29T03:10:00.000+02:00");
}

#[test]
fn a_typed_time_that_was_skipped_or_came_twice_is_taken_and_told() {
    for (date, typed, taken, told) in [
        ("2026-03-29", "2:30", "2026-03-29T03:00:00.000+02:00", "skipped"),
        ("2026-10-25", "2:30", "2026-10-25T02:30:00.000+02:00", "came twice"),
    ] {
        let mut person = Person::welcomed("2026-11-01T12:00:00+01:00", "Europe/Berlin").unwrap();
        person.open_day(0).unwrap();
        person.press("add-note").unwrap();
        person.enter("at/date", date).unwrap();
        person.enter("at", typed).unwrap();
        assert_eq!(person.only("note").unwrap()["at"]["at"], taken);
        assert!(person.frame().unwrap().notices.iter().any(|n| n.text.contains(told)), "{told}");
    }
}

#[test]
fn a_session_abroad_keeps_its_own_clock_and_day() {
    let mut person = Person::welcomed("2026-03-01T23:30:00+01:00", "Europe/Berlin").unwrap();
    person.travel("America/New_York").unwrap();
    person.press("start").unwrap();
    person.press("finish").unwrap();
    person.travel("Europe/Berlin").unwrap();
    let Screen::Day { day, .. } = person.show(&Place::Day { days_back: 0 }).unwrap() else { panic!("a day") };
    assert_eq!(day.entries[0].time, "17:30");
    let id = day.entries[0].id.clone();
    person.send(Event::Go { place: Place::Entry { id } }).unwrap();
    assert!(person.reads().unwrap().contains("America/New_York"), "another zone is said");
}

#[test]
fn just_after_midnight_a_late_time_means_the_evening_before() {
    let mut person = Person::welcomed("2026-03-02T00:10:00+01:00", "Europe/Berlin").unwrap();
    person.open_day(0).unwrap();
    person.press("add-note").unwrap();
    person.enter("at", "23:50").unwrap();
    assert_eq!(person.only("note").unwrap()["at"]["at"], "2026-03-01T23:50:00.000+01:00");
}

#[test]
fn a_clock_set_back_does_not_keep_a_session_from_ending() {
    let mut person = Person::welcomed("2026-03-02T10:00:00+01:00", "Europe/Berlin").unwrap();
    person.press("start").unwrap();
    person.wait(Span::minutes(-90)).unwrap();
    person.press("finish").unwrap();
    let session = person.only("session").unwrap();
    assert_eq!(session["ended"], session["started"]);
    assert!(person.frame().unwrap().notices.iter().any(|n| n.key == "clock-went-back"));
}

#[test]
fn a_zone_that_is_not_known_is_said_and_loses_nothing() {
    let mut person = Person::welcomed("2026-03-02T10:00:00+01:00", "Europe/Berlin").unwrap();
    person.travel("Atlantis/Sunken").unwrap();
    person.press("start").unwrap();
    assert!(person.frame().unwrap().notices.iter().any(|n| n.key == "zone-unknown"));
    assert_eq!(person.only("session").unwrap()["started"]["at"], "2026-03-02T09:00:00.000+00:00");
}
