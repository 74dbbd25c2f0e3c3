//! Pumps, parts, flanges, children and settings.

use drawwell_core::screen::shapes::{Event, Place, Screen};
use drawwell_tests::person::Person;

fn person() -> Person {
    Person::welcomed("2026-03-01T02:10:00+01:00", "Europe/Berlin").unwrap()
}

#[test]
fn a_pump_is_written_down_in_the_units_of_the_family() {
    let mut person = person();
    person.send(Event::Go { place: Place::Entry { id: "settings".to_owned() } }).unwrap();
    person.press("vacuum_unit-kPa").unwrap();
    person.press("place-kit").unwrap();
    person.press("add-pump").unwrap();
    person.enter("name", "Marl").unwrap();
    person.press("grade-personal").unwrap();
    person.enter("levels", "9").unwrap();
    person.enter("maximum_vacuum_low", "33.3").unwrap();
    person.enter("maximum_vacuum_high", "40").unwrap();
    person.enter("in_use_since", "3.1.2026").unwrap();
    person.press("place-kit").unwrap();
    assert!(person.reads().unwrap().contains("Personal-use · 9 levels · 33.3 to 40 kPa · since 3 January 2026"));
    let pump = person.only("pump").unwrap();
    assert_eq!(
        (pump["maximum_vacuum_low"]["typed"].as_str(), pump["maximum_vacuum_low"]["typed_unit"].as_str()),
        (Some("33.3"), Some("kPa"))
    );
}

#[test]
fn parts_flanges_and_children_have_names_of_their_own_making() {
    let mut person = person();
    person.press("place-kit").unwrap();
    person.press("add-flange").unwrap();
    person.press("more-size").unwrap();
    person.press("place-kit").unwrap();
    person.press("add-part").unwrap();
    person.press("part-valve").unwrap();
    person.press("place-visit").unwrap();
    person.press("open-family").unwrap();
    person.press("add-child").unwrap();
    person.enter("gestation_weeks", "29").unwrap();
    person.enter("birth", "2026-02-20").unwrap();
    person.press("place-kit").unwrap();
    let kit = person.reads().unwrap();
    assert!(kit.contains("Flange 24 mm") && kit.contains("Valve"), "{kit}");
    person.press("place-visit").unwrap();
    person.press("open-family").unwrap();
    assert!(person.reads().unwrap().contains("at 29 weeks and 0 days · born 20 February 2026"));
}

#[test]
fn settings_change_what_is_read_and_never_what_is_stored() {
    let mut person = person();
    person.press("start").unwrap();
    person.press("finish").unwrap();
    for _ in 0..59 {
        person.press("amount-left-more-fine").unwrap();
    }
    person.press("amounts-done").unwrap();
    let stored = person.only("session").unwrap()["amount_left"].clone();
    person.send(Event::Go { place: Place::Entry { id: "settings".to_owned() } }).unwrap();
    person.press("volume_unit-[foz_us]").unwrap();
    person.press("hour_clock-12").unwrap();
    person.press("hand-left").unwrap();
    let day = person.show(&Place::Day { days_back: 0 }).unwrap();
    let Screen::Day { frame, day } = day else { panic!("a day") };
    assert_eq!(day.sides[0].text, "2 fl oz");
    assert_eq!(day.entries[0].time, "2:10 am");
    assert_eq!(frame.look.hand, drawwell_core::screen::shapes::Hand::Left);
    assert_eq!(person.only("session").unwrap()["amount_left"], stored);
}

#[test]
fn the_hour_at_which_a_day_begins_moves_sessions_between_days() {
    let mut person = person();
    person.press("start").unwrap();
    person.press("finish").unwrap();
    let count = |person: &mut Person, days_back| match person.show(&Place::Day { days_back }).unwrap() {
        Screen::Day { day, .. } => day.entries.len(),
        _ => panic!("a day"),
    };
    assert_eq!(count(&mut person, 0), 1);
    person
        .send(Event::Enter { id: "settings".to_owned(), field: "day_start".to_owned(), typed: "4".to_owned() })
        .unwrap();
    // At ten past two the day that began at four yesterday still goes on.
    assert_eq!(count(&mut person, 0), 1);
    person.wait(drawwell_core::time::Span::hours(3)).unwrap();
    assert_eq!((count(&mut person, 0), count(&mut person, 1)), (0, 1));
}

#[test]
fn a_zone_that_was_chosen_goes_before_the_devices() {
    let mut person = person();
    person
        .send(Event::Enter { id: "settings".to_owned(), field: "zone".to_owned(), typed: "Asia/Kathmandu".to_owned() })
        .unwrap();
    person.press("place-now").unwrap();
    person.press("start").unwrap();
    assert_eq!(person.only("session").unwrap()["started"]["at"], "2026-03-01T06:55:00.000+05:45");
}
