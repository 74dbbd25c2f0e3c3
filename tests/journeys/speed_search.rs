//! A search for the speed that brings the letdown: from the slowest up, over when it comes, never
//! at the pump's fastest.

use drawwell_core::screen::shapes::Screen;
use drawwell_core::time::Span;
use drawwell_tests::person::Person;

fn with_pump(fields: &str) -> Person {
    let mut person = Person::welcomed("2026-05-25T08:00:00+02:00", "Europe/Berlin").unwrap();
    let pump = format!(r#"{{"fact":"pump","id":"p","name":"Marl","levels":9{fields}}}"#);
    person.import_file(pump.as_bytes()).unwrap();
    person.press("place-now").unwrap();
    person.press("start").unwrap();
    person.press("place-kit").unwrap();
    person.press("comfort").unwrap();
    person.press("letdown").unwrap();
    person
}

const SPEEDS: &str = r#","cycles_low":{"value":40,"unit":"/min","typed":"40","typed_unit":"/min"},"cycles_high":{"value":80,"unit":"/min","typed":"80","typed_unit":"/min"}"#;

fn asks(person: &Person) -> String {
    let Screen::Running { running, .. } = person.screen().unwrap() else { panic!("runs") };
    running.pain.iter().find(|row| row.key == "search").map(|row| row.label.clone()).unwrap_or_default()
}

fn step(person: &mut Person, felt: &str) {
    person.press("search-at").unwrap();
    person.wait(Span::seconds(40)).unwrap();
    person.press(felt).unwrap();
}

#[test]
fn it_is_over_when_the_letdown_comes_and_says_at_which_speed() {
    let mut person = with_pump(SPEEDS);
    person.press("start-search-speed").unwrap();
    assert_eq!(asks(&person), "Try 40 a minute, at a comfortable vacuum");
    step(&mut person, "search-comfortable");
    assert_eq!(asks(&person), "Try 50 a minute, at a comfortable vacuum");
    step(&mut person, "search-letdown");
    assert_eq!(asks(&person), "At 50 a minute the letdown came. The search is over.");
    let search = person.only("search").unwrap();
    assert_eq!((search["searched"].as_str(), search["search_ended"].as_str()), (Some("speed"), Some("letdown_came")));
    person.press("undo").unwrap();
    assert_eq!(asks(&person), "At 50 a minute: letdown?", "a tap that was taken back leaves it going on");
}

#[test]
fn the_fastest_is_never_proposed_and_no_letdown_is_no_fault() {
    let mut person = with_pump(SPEEDS);
    person.press("start-search-speed").unwrap();
    for speed in [40, 50, 60, 70] {
        assert!(asks(&person).starts_with(&format!("Try {speed} a minute")), "{}", asks(&person));
        step(&mut person, "search-comfortable");
    }
    assert!(asks(&person).starts_with("No letdown up to 70 a minute."), "{}", asks(&person));
    assert_eq!(person.only("search").unwrap()["search_ended"], "no_letdown");
}

#[test]
fn a_speed_that_hurts_is_one_step_too_far() {
    let mut person = with_pump(SPEEDS);
    person.press("start-search-speed").unwrap();
    step(&mut person, "search-comfortable");
    step(&mut person, "search-hurts");
    assert_eq!(asks(&person), "Back to 40 a minute");
}

/// A letdown before any speed was set says nothing of a speed.
#[test]
fn a_letdown_at_a_speed_that_nobody_set_does_not_end_it() {
    let mut person = with_pump(SPEEDS);
    person.press("start-search-speed").unwrap();
    person.press("mark-letdown").unwrap();
    assert!(asks(&person).starts_with("Try 40 a minute"), "{}", asks(&person));
}

#[test]
fn it_is_offered_while_the_pump_stimulates_and_its_speeds_are_known() {
    let mut person = with_pump("");
    assert!(person.find("start-search-speed").unwrap().is_none(), "no speeds are noted");
    person = with_pump(SPEEDS);
    assert!(person.find("start-search-speed").unwrap().is_some());
    person.press("place-now").unwrap();
    person.press("mark-expression-phase").unwrap();
    person.press("place-kit").unwrap();
    assert!(person.find("start-search-speed").unwrap().is_none(), "the letdown is what it is for");
}
