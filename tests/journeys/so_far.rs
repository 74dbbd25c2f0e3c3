//! How much has come so far, read off while a session runs: it decides a comparison by the time to
//! most of the milk, and is asked for nothing else.

use drawwell_core::screen::shapes::{Event, Place, Screen};
use drawwell_core::time::Span;
use drawwell_tests::person::Person;

fn comparing(outcome: &str, design: &str) -> (Person, String) {
    let mut person = Person::welcomed("2026-05-25T08:00:00+02:00", "Europe/Berlin").unwrap();
    person.press("place-kit").unwrap();
    person.press("add-trial").unwrap();
    let id = person.opened().unwrap();
    for (field, typed) in
        [("way_a", "warm"), ("way_b", "cold"), ("trial_sessions", "12"), ("trial_design", design), ("outcome", outcome)]
    {
        person.enter(field, typed).unwrap();
    }
    (person, id)
}

fn running(outcome: &str) -> (Person, String) {
    let (mut person, id) = comparing(outcome, "sessions");
    person.send(Event::BeginTrial { id: id.clone(), seed: Some(0) }).unwrap();
    person.press("place-now").unwrap();
    (person, id)
}

#[test]
fn it_is_asked_where_a_comparison_is_decided_by_it_alone() {
    for (outcome, asked) in [("time_to_most", true), ("pain", false)] {
        let (mut person, _) = running(outcome);
        person.press("start").unwrap();
        assert_eq!(person.reads().unwrap().contains("How much have you got so far, in all?"), asked, "{outcome}");
    }
}

#[test]
fn a_reading_is_one_tap_and_says_the_one_before() {
    let (mut person, _) = running("time_to_most");
    person.press("start").unwrap();
    person.wait(Span::minutes(3)).unwrap();
    person.press("so-far-20").unwrap();
    assert!(person.reads().unwrap().contains("How much so far, in all? At 03:00 it was 20 mL."));
    assert!(person.find("so-far-20").unwrap().is_none(), "more is offered, and no less");
    person.press("undo").unwrap();
    assert!(person.find("so-far-20").unwrap().is_some());
}

#[test]
fn less_than_before_is_refused_with_what_to_do_and_nothing_is_changed() {
    let (mut person, _) = running("time_to_most");
    person.press("start").unwrap();
    person.press("so-far-30").unwrap();
    let before = person.only("session").unwrap();
    for (typed, unit) in [("20", "mL"), ("-5", "mL"), ("2500", "mL"), ("30", "kg"), ("much", "mL")] {
        assert!(person.send(Event::SoFar { typed: typed.into(), unit: unit.into() }).is_err(), "{typed} {unit}");
        assert_eq!(person.only("session").unwrap(), before);
    }
}

/// Most of it at 4 minutes warm and at 8 minutes cold, by straight lines between readings: 40 of
/// 50 mL lie between 30 at 3 and 50 at 5, and between 30 at 7 and 50 at 9.
#[test]
fn the_time_to_most_of_it_is_told_of_each_pair() {
    let (mut person, id) = running("time_to_most");
    for _ in 0..12 {
        person.press("start").unwrap();
        person.press("trial-as-drawn").unwrap();
        let warm = person.reads().unwrap().contains("Chance says: A (warm).");
        person.wait(Span::minutes(if warm { 3 } else { 7 })).unwrap();
        person.press("so-far-30").unwrap();
        person.wait(Span::minutes(2)).unwrap();
        person.send(Event::SoFar { typed: "50".into(), unit: "mL".into() }).unwrap();
        person.wait(Span::minutes(5)).unwrap();
        person.press("finish").unwrap();
        let Screen::Amounts { amounts, .. } = person.screen().unwrap() else { panic!("amounts") };
        let session = amounts.session.clone();
        for (field, typed) in [("amount_left", "25"), ("amount_right", "25")] {
            person.send(Event::Enter { id: session.clone(), field: field.into(), typed: typed.into() }).unwrap();
        }
        person.press("amounts-done").unwrap();
        person.wait(Span::hours(3)).unwrap();
    }
    let Screen::Findings { findings, .. } = person.show(&Place::Trial { id }).unwrap() else { panic!("findings") };
    assert_eq!(findings.figure, "\u{2212}4 min");
    assert!(findings.caption.contains("6 pairs"), "{}", findings.caption);
}

/// Prime and others (Int Breastfeed J 2009;4:10): 95.5 % of letdowns came on both sides at once.
#[test]
fn a_side_each_cannot_be_compared_by_time() {
    for outcome in ["letdown", "time_to_most"] {
        let (mut person, id) = comparing(outcome, "sides");
        let trouble = person.send(Event::BeginTrial { id, seed: Some(0) });
        assert!(trouble.is_err(), "{outcome}");
        assert!(person.only("trial").unwrap().get("drawn").is_none());
    }
}
