//! Two ways compared: what decides is chosen first, the order is drawn and kept, each session
//! says which is next, and it stops at once where pain rises.

use drawwell_core::screen::shapes::{Event, FindingsScreen, Place, Screen};
use drawwell_core::time::Span;
use drawwell_tests::person::Person;
use serde_json::Value;

/// A person who set a comparison up, and has not begun it.
fn set_up(design: &str, outcome: &str) -> (Person, String) {
    let mut person = Person::welcomed("2026-05-25T08:00:00+02:00", "Europe/Berlin").unwrap();
    person.import_file(br#"{"fact":"pump","id":"p","name":"Marl","levels":9}"#).unwrap();
    person.press("place-kit").unwrap();
    person.press("add-trial").unwrap();
    let id = person.opened().unwrap();
    person.enter("way_a", "level 4").unwrap();
    person.enter("way_b", "level 6").unwrap();
    person.enter("trial_sessions", "8").unwrap();
    assert!(!person.find("begin-trial").unwrap().unwrap().open, "first it is chosen what decides");
    person.enter("trial_design", design).unwrap();
    person.enter("outcome", outcome).unwrap();
    (person, id)
}

fn begun(design: &str, outcome: &str, seed: u32) -> (Person, String) {
    let (mut person, id) = set_up(design, outcome);
    person.send(Event::BeginTrial { id: id.clone(), seed: Some(seed) }).unwrap();
    person.press("place-now").unwrap();
    (person, id)
}

fn trial(person: &mut Person) -> Value {
    person.only("trial").unwrap()
}

fn shown(person: &mut Person, id: &str) -> FindingsScreen {
    let Screen::Findings { findings, .. } = person.show(&Place::Trial { id: id.to_owned() }).unwrap() else {
        panic!("findings")
    };
    findings
}

fn session(person: &mut Person, how: Option<&str>, hurts: Option<u32>) {
    person.press("start").unwrap();
    person.wait(Span::minutes(10)).unwrap();
    if let Some(how) = how {
        person.press(how).unwrap();
    }
    if let Some(score) = hurts {
        person.press("mark-hurts").unwrap();
        person.press(&format!("pain-{score}")).unwrap();
    }
    person.press("finish").unwrap();
    person.press("amounts-later").unwrap();
    person.wait(Span::hours(3)).unwrap();
}

/// splitmix64 from a seed of nothing draws a, b, b, a, b, a, b, b (worked out by a second program in Python).
#[test]
fn the_order_is_drawn_from_the_seed_when_it_begins_and_kept() {
    let (mut person, _) = begun("sessions", "pain", 0);
    let kept = trial(&mut person);
    assert_eq!(
        (kept["drawn"].as_str(), kept["seed"].as_u64()),
        (Some("abbabaab"), Some(0)),
        "a seed of zero draws too"
    );
    let id = kept["id"].as_str().unwrap().to_owned();
    person.send(Event::BeginTrial { id, seed: Some(7) }).unwrap();
    assert_eq!(trial(&mut person), kept, "nobody draws again until it suits");
}

#[test]
fn without_a_seed_the_clock_gives_one_and_it_is_kept() {
    let (mut person, _) = set_up("sessions", "pain");
    person.press("begin-trial").unwrap();
    let seed = trial(&mut person)["seed"].as_u64().unwrap();
    let clock = u64::try_from(person.clock().unix_milliseconds).unwrap();
    assert_eq!(seed, clock & u64::from(u32::MAX));
}

#[test]
fn each_session_says_which_is_next_and_counts_as_it_was_done() {
    let (mut person, id) = begun("sessions", "pain", 0);
    assert!(person.reads().unwrap().contains("Next: A (level 4)."));
    session(&mut person, Some("trial-as-drawn"), None);
    assert!(person.reads().unwrap().contains("Next: B (level 6)."));
    session(&mut person, Some("trial-other-way"), None);
    session(&mut person, None, None);
    let found = shown(&mut person, &id);
    assert_eq!(found.headline, "Can’t tell yet");
    assert!(found.lines.contains(&"Next: A (level 4).".to_owned()), "{:?}", found.lines);
    assert!(found.lines.iter().any(|line| line.starts_with("One session was not done as drawn.")), "{:?}", found.lines);
    assert!(found.lines.iter().any(|line| line.starts_with("Of one session nobody noted")), "{:?}", found.lines);
    let order = found.sections.iter().find(|section| section.key == "trial-order").unwrap();
    assert_eq!(order.rows.len(), 3);
}

#[test]
fn a_side_each_says_the_side_and_a_session_of_one_side_is_not_of_it() {
    let (mut person, _) = begun("sides", "amount", 0);
    assert!(person.reads().unwrap().contains("Next: A (level 4) on the left."));
    person.press("next_sides-left").unwrap_or_else(|_| person.press("sides-left").unwrap());
    person.press("start").unwrap();
    assert!(person.find("trial-as-drawn").unwrap().is_none());
}

#[test]
fn pain_that_rises_by_two_stops_it_at_once() {
    let (mut person, id) = begun("sessions", "pain", 0);
    session(&mut person, Some("trial-as-drawn"), Some(1));
    assert!(trial(&mut person).get("trial_ended").is_none());
    session(&mut person, Some("trial-as-drawn"), Some(2));
    assert_eq!(trial(&mut person)["trial_ended"], "pain_rose");
    assert!(shown(&mut person, &id).lines.contains(&"Pain rose".to_owned()));
    assert!(!person.reads().unwrap().contains("Next:"));
}

#[test]
fn it_goes_on_where_the_tap_that_ended_it_is_taken_back() {
    let (mut person, _) = begun("sessions", "pain", 0);
    person.press("start").unwrap();
    person.press("mark-hurts").unwrap();
    person.press("pain-7").unwrap();
    assert_eq!(trial(&mut person)["trial_ended"], "pain_rose");
    person.press("undo").unwrap();
    assert_eq!(trial(&mut person).get("trial_ended"), None);
    person.press("redo").unwrap();
    assert_eq!(trial(&mut person)["trial_ended"], "pain_rose");
}

#[test]
fn a_caution_stops_it_too() {
    let (mut person, _) = begun("sessions", "pain", 0);
    person.wait(Span::hours(1)).unwrap();
    person.press("add-sign").unwrap();
    person.enter("temperature", "39").unwrap();
    person.press("redness-left").unwrap();
    assert_eq!(trial(&mut person)["trial_ended"], "caution");
}

#[test]
fn all_planned_sessions_done_is_an_end_and_a_new_one_ends_the_old() {
    let (mut person, _) = begun("sessions", "pain", 0);
    for _ in 0..8 {
        session(&mut person, Some("trial-as-drawn"), Some(0));
    }
    assert_eq!(trial(&mut person)["trial_ended"], "finished");
    let (mut person, first) = begun("sessions", "pain", 0);
    person.press("place-kit").unwrap();
    person.press("add-trial").unwrap();
    for (field, value) in [("way_a", "x"), ("way_b", "y"), ("trial_design", "sessions"), ("outcome", "letdown")] {
        person.enter(field, value).unwrap();
    }
    person.press("begin-trial").unwrap();
    let record = person.record().unwrap();
    let old = record.lines().find(|line| line.contains(&first) && line.contains("\"trial\"")).unwrap();
    assert!(old.contains("\"trial_ended\":\"changed\""), "{old}");
}

#[test]
fn one_that_is_removed_closes_with_its_pages() {
    let (mut person, id) = begun("sessions", "pain", 0);
    person.press("place-kit").unwrap();
    person.press(&format!("open-{id}")).unwrap();
    person.press("details").unwrap();
    person.press("take-out").unwrap();
    assert!(matches!(person.screen().unwrap(), Screen::List { .. }), "back in Kit");
    person.press("place-now").unwrap();
    assert!(!person.reads().unwrap().contains("Next:"));
}

#[test]
fn it_can_be_stopped_by_hand() {
    let (mut person, id) = begun("sessions", "pain", 0);
    person.send(Event::Go { place: Place::Trial { id } }).unwrap();
    person.press("stop-trial").unwrap();
    assert_eq!(trial(&mut person)["trial_ended"], "stopped");
    assert!(person.find("stop-trial").unwrap().is_none());
}
