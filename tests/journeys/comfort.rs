//! It hurts: one tap, and what can be added to it.

use drawwell_core::screen::shapes::Screen;
use drawwell_core::time::Span;
use drawwell_tests::person::Person;
use serde_json::Value;

fn running() -> Person {
    let mut person = Person::welcomed("2026-03-01T02:10:00+01:00", "Europe/Berlin").unwrap();
    person.press("start").unwrap();
    for _ in 0..5 {
        person.press("mark-stronger").unwrap();
    }
    person.wait(Span::minutes(3)).unwrap();
    person
}

fn marks(person: &mut Person, does: &str) -> Vec<Value> {
    let session = person.only("session").unwrap();
    session["marks"].as_object().unwrap().values().filter(|m| m["does"] == does).cloned().collect()
}

#[test]
fn one_tap_says_that_it_hurt_and_a_missing_score_is_not_nought() {
    let mut person = running();
    person.press("mark-hurts").unwrap();
    let pains = marks(&mut person, "pain");
    assert_eq!(pains.len(), 1);
    assert_eq!(pains[0].get("score"), None);
}

#[test]
fn score_and_side_are_a_tap_each() {
    let mut person = running();
    person.press("mark-hurts").unwrap();
    person.press("pain-left").unwrap();
    person.press("pain-6").unwrap();
    let pains = marks(&mut person, "pain");
    assert_eq!((pains[0]["score"].as_u64(), pains[0]["side"].as_str()), (Some(6), Some("left")));
    let Screen::Running { running, .. } = person.screen().unwrap() else { panic!("still runs") };
    assert!(running.pain.is_empty(), "asked once");
}

#[test]
fn turning_down_for_discomfort_is_a_fact_of_its_own() {
    let mut person = running();
    person.press("mark-hurts").unwrap();
    person.press("pain-turned-down").unwrap();
    let turned: Vec<Value> =
        marks(&mut person, "setting").into_iter().filter(|m| m.get("for_discomfort").is_some()).collect();
    assert_eq!(turned.len(), 1);
    assert_eq!(turned[0]["level"], 4);
    person.wait(Span::seconds(3)).unwrap();
    person.press("mark-softer").unwrap();
    let levels: Vec<u64> = marks(&mut person, "setting").iter().filter_map(|m| m["level"].as_u64()).collect();
    assert_eq!(levels, [5, 4, 3], "softer by itself is no discomfort, and does not overwrite the one that was");
}

#[test]
fn the_score_is_asked_for_three_minutes_and_then_left_alone() {
    let asks = |person: &Person| matches!(person.screen().unwrap(), Screen::Running { running, .. } if !running.pain.is_empty());
    let mut person = running();
    person.press("mark-hurts").unwrap();
    person.wait(Span::minutes(3)).unwrap();
    assert!(asks(&person));
    person.wait(Span::seconds(1)).unwrap();
    assert!(!asks(&person));
}

#[test]
fn the_program_never_offers_more_vacuum_by_itself() {
    let person = running();
    let told = person.reads().unwrap().to_lowercase();
    for urging in ["increase", "turn it up", "try more", "higher setting"] {
        assert!(!told.contains(urging), "{urging}");
    }
}
