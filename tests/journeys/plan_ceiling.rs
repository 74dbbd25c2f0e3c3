//! A setting that the consultant's plan says to stay below: it is said when the dial passes it, a
//! search ends at it, and the plan and the sheet say how sessions stood to it.

use drawwell_core::screen::shapes::{Event, Export, Place, Screen, Searched};
use drawwell_core::time::Span;
use drawwell_tests::person::Person;

const PASSED: &str = "Your plan says to go no higher than level 3 here.";

/// A parent with a pump of nine levels who accepted a plan.
fn accepted(parts: &[(&str, &[(&str, &str)])]) -> Person {
    let (mut person, mut desk) = drawwell_tests::visiting::acquainted().unwrap();
    person.import_file(br#"{"fact":"pump","id":"p","name":"Marl","levels":9}"#).unwrap();
    let plan = desk.writes_a_plan(parts).unwrap();
    let file = desk.takes(Event::Export { what: Export::Plan { plan } }).unwrap();
    person.import_file(&file).unwrap();
    person.press("plan-accept-all").unwrap();
    person
}

fn no_higher_than(level: &'static str) -> [(&'static str, &'static str); 3] {
    [("level", level), ("use_or_try", "at_most"), ("plan_phase", "expression")]
}

/// A session in the expression phase, with the dial turned up to a level.
fn begun_at(person: &mut Person, level: u32) {
    person.press("place-now").unwrap();
    person.press("start").unwrap();
    person.wait(Span::minutes(2)).unwrap();
    person.press("mark-expression-phase").unwrap();
    let Screen::Running { running, .. } = person.screen().unwrap() else { panic!("runs") };
    let shown: u32 = running.dials[0].value.parse().unwrap_or(0);
    if shown == level {
        return person.press("as-last-time-vacuum").unwrap_or(());
    }
    for _ in shown..level {
        person.press("mark-stronger").unwrap();
    }
    for _ in level..shown {
        person.press("mark-softer").unwrap();
    }
}

fn ended(person: &mut Person) {
    person.wait(Span::minutes(10)).unwrap();
    person.press("finish").unwrap();
    person.press("amounts-later").unwrap();
    person.wait(Span::hours(3)).unwrap();
}

fn sessions_at(person: &mut Person, levels: &[u32]) {
    for level in levels {
        begun_at(person, *level);
        ended(person);
    }
}

fn plan_says(person: &mut Person) -> String {
    let id = person.only("plan").unwrap()["id"].as_str().unwrap().to_owned();
    person.send(Event::Go { place: Place::Plan { id } }).unwrap();
    person.reads().unwrap()
}

#[test]
fn one_above_it_says_so_while_the_session_runs_and_one_at_it_does_not() {
    let mut person = accepted(&[("setting", &no_higher_than("3"))]);
    begun_at(&mut person, 3);
    assert!(!person.reads().unwrap().contains(PASSED));
    person.press("mark-stronger").unwrap();
    assert!(person.reads().unwrap().contains(PASSED));
    person.press("mark-softer").unwrap();
    assert!(!person.reads().unwrap().contains(PASSED));
}

#[test]
fn it_holds_for_its_phase_alone() {
    let mut person = accepted(&[("setting", &no_higher_than("3"))]);
    begun_at(&mut person, 3);
    person.press("mark-letdown-phase").unwrap();
    person.press("mark-stronger").unwrap();
    let Screen::Running { running, .. } = person.screen().unwrap() else { panic!("runs") };
    assert_eq!(running.dials[0].value, "4");
    assert!(!person.reads().unwrap().contains(PASSED));
}

#[test]
fn the_plan_and_the_sheet_say_how_sessions_stood_to_it() {
    let mut person = accepted(&[("setting", &no_higher_than("3"))]);
    assert!(plan_says(&mut person).contains("no session says a setting to compare"));
    sessions_at(&mut person, &[3, 2, 5, 3]);
    let said = "3 sessions at or below it, 1 above.";
    assert!(plan_says(&mut person).contains(said), "{}", plan_says(&mut person));
    let Screen::Sheet { sheet, .. } = person.show(&Place::Sheet).unwrap() else { panic!("a sheet") };
    let comfort = sheet.parts.iter().flat_map(|part| &part.sections).find(|section| section.key == "comfort").unwrap();
    let row = comfort.rows.iter().find(|row| row.label == "A setting to stay below").unwrap();
    assert!(row.note.starts_with("level 3. ") && row.note.contains(said), "{}", row.note);
}

/// What the dial was only taken to show is no session at a setting.
#[test]
fn a_setting_that_was_carried_over_is_not_known() {
    let mut person = accepted(&[("setting", &no_higher_than("3"))]);
    sessions_at(&mut person, &[5]);
    person.press("place-now").unwrap();
    person.press("start").unwrap();
    person.press("mark-expression-phase").unwrap();
    assert!(person.reads().unwrap().contains(PASSED), "the dial is where it was");
    ended(&mut person);
    assert!(plan_says(&mut person).contains("0 sessions at or below it, 1 above. Not known in 1."));
}

#[test]
fn a_search_ends_at_it_and_nobody_is_led_above() {
    let mut person = accepted(&[("setting", &no_higher_than("2")), ("search", &[("words", "Please.")])]);
    assert!(plan_says(&mut person).contains("No search since"));
    begun_at(&mut person, 0);
    person.press("place-kit").unwrap();
    person.press("comfort").unwrap();
    person.press("start-search").unwrap();
    for _ in 0..2 {
        person.press("search-at").unwrap();
        person.wait(Span::minutes(1)).unwrap();
        person.press("search-comfortable").unwrap();
    }
    assert!(person.reads().unwrap().contains("level 2 is as high as your plan goes, and it is comfortable."));
    assert!(person.find("search-beyond").unwrap().is_none());
    assert_eq!(person.only("search").unwrap()["search_ended"], "as_planned");
    assert!(plan_says(&mut person).contains("One search since"));
}

#[test]
fn one_that_is_out_of_date_holds_nothing() {
    let until = [("good_until", "2026-05-27")];
    let mut person = accepted(&[("plan", &until), ("setting", &no_higher_than("3"))]);
    begun_at(&mut person, 5);
    assert!(person.reads().unwrap().contains(PASSED));
    ended(&mut person);
    person.wait(Span::hours(96)).unwrap();
    begun_at(&mut person, 6);
    assert!(!person.reads().unwrap().contains(PASSED));
}

#[test]
fn one_that_was_not_accepted_holds_nothing() {
    let (mut person, mut desk) = drawwell_tests::visiting::acquainted().unwrap();
    person.import_file(br#"{"fact":"pump","id":"p","name":"Marl","levels":9}"#).unwrap();
    let plan = desk.writes_a_plan(&[("setting", &no_higher_than("3"))]).unwrap();
    let file = desk.takes(Event::Export { what: Export::Plan { plan } }).unwrap();
    person.import_file(&file).unwrap();
    begun_at(&mut person, 5);
    assert!(!person.reads().unwrap().contains(PASSED));
}

/// Nobody is led above a limit that can't be told in what the dial shows.
#[test]
fn a_search_does_not_begin_where_the_limit_cannot_be_compared() {
    let limit = [("vacuum", "180"), ("use_or_try", "at_most"), ("plan_phase", "expression")];
    let mut person = accepted(&[("setting", &limit)]);
    begun_at(&mut person, 2);
    let search = Event::StartSearch { searched: Searched::Vacuum, beyond: false };
    assert_eq!(person.send(search).unwrap_err().key, "bad-search-plan");
    assert!(person.only("search").is_err());
}
