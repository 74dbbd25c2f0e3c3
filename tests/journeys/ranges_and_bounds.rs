//! Ranges in two units, what was typed beside what it means, and ends that are rounded outward.

use drawwell_core::quantity::{parse_decimal, Rounding};
use drawwell_core::screen::shapes::{Event, Place, Screen};
use drawwell_core::time::Span;
use drawwell_core::trouble::Detail;
use drawwell_tests::person::Person;
use proptest::prelude::*;
use serde_json::Value;

fn person() -> Person {
    Person::welcomed("2026-03-01T10:00:00+01:00", "Europe/Berlin").unwrap()
}

/// What came of one line of the exchange form: the first reason, or none.
fn refused(line: &str) -> Option<String> {
    let mut person = person();
    person.import_file(line.as_bytes()).unwrap();
    let Screen::List { list, .. } = person.screen().unwrap() else { panic!("a report: {:?}", person.screen()) };
    let rows = list.groups.iter().flat_map(|group| &group.rows);
    rows.map(|row| row.title.clone()).find(|title| title.starts_with("Line"))
}

fn pump(low: &str, high: &str) -> String {
    format!(r#"{{"fact":"pump","id":"p","maximum_vacuum_low":{low},"maximum_vacuum_high":{high}}}"#)
}

/// UCUM: 37 kPa are 277.5 mm[Hg], 40 kPa are 300.
#[test]
fn a_makers_range_is_compared_by_what_it_means_in_whatever_units() {
    let (mmhg, kpa) =
        (|v: f64| format!(r#"{{"value":{v},"unit":"mm[Hg]"}}"#), |v: f64| format!(r#"{{"value":{v},"unit":"kPa"}}"#));
    for (low, high, taken) in [
        (mmhg(250.0), kpa(37.0), true),
        (kpa(40.0), mmhg(280.0), false),
        (kpa(33.3), kpa(37.0), true),
        (kpa(37.0), kpa(33.3), false),
        (mmhg(280.0), mmhg(250.0), false),
        (mmhg(250.0), mmhg(250.0), true),
        // 40 kPa are 300.03 mm[Hg]: on both sides of one end.
        (kpa(40.0), mmhg(300.0), false),
        (kpa(40.0), mmhg(300.1), true),
    ] {
        assert_eq!(refused(&pump(&low, &high)).is_none(), taken, "{low} to {high}");
    }
    let speed = |v: u32| format!(r#"{{"value":{v},"unit":"/min"}}"#);
    for (low, high, taken) in [(45, 60, true), (60, 60, true), (61, 60, false)] {
        let line = format!(r#"{{"fact":"pump","id":"p","cycles_low":{},"cycles_high":{}}}"#, speed(low), speed(high));
        assert_eq!(refused(&line).is_none(), taken, "{low} to {high} a minute");
    }
}

#[test]
fn a_range_that_falls_is_refused_where_it_is_typed() {
    let mut person = person();
    person.press("place-kit").unwrap();
    person.press("add-pump").unwrap();
    person.enter("maximum_vacuum_low", "250 mmHg").unwrap();
    person.enter("maximum_vacuum_high", "37 kPa").unwrap();
    assert_eq!(person.enter("maximum_vacuum_high", "33 kPa").unwrap_err().key, "bad-order");
    assert_eq!(person.enter("maximum_vacuum_low", "38 kPa").unwrap_err().key, "bad-order");
}

fn amount(value: f64, unit: &str, typed: &str, typed_unit: &str) -> String {
    format!(
        r#"{{"fact":"session","id":"s","started":{{"at":"2026-02-28T10:00:00+01:00","zone":"Europe/Berlin"}},"afterwards":true,"amount_left":{{"value":{value},"unit":"{unit}","typed":"{typed}","typed_unit":"{typed_unit}"}}}}"#
    )
}

#[test]
fn what_was_typed_agrees_to_its_own_last_figure_or_is_refused() {
    for (value, typed, typed_unit, taken) in [
        // 3.5 fl oz are 103.507 mL; half of a tenth is 1.479 mL.
        (103.5, "3.5", "[foz_us]", true),
        (104.9, "3.5", "[foz_us]", true),
        (105.1, "3.5", "[foz_us]", false),
        (102.1, "3.5", "[foz_us]", true),
        (101.9, "3.5", "[foz_us]", false),
        (103.5, "3.50", "[foz_us]", true),
        (104.0, "3.50", "[foz_us]", false),
        (60.5, "60", "mL", true),
        (60.51, "60", "mL", false),
        (60.5, "60,5", "mL", true),
        (60.44, "60,5", "mL", false),
        (80.0, "60", "mL", false),
    ] {
        let line = amount(value, "mL", typed, typed_unit);
        assert_eq!(refused(&line).is_none(), taken, "{value} mL beside {typed} {typed_unit}");
    }
    // 30 kPa by the conventional millimetre of mercury (133.322387415 Pa; BIPM, SI Brochure 8, 2006,
    // Table 8, from memory), and by UCUM's.
    for (value, taken) in [(30e3 / 133.322_387_415, true), (30e3 / 133.322, true), (233.0, false)] {
        let vacuum = format!(r#"{{"value":{value},"unit":"mm[Hg]","typed":"30","typed_unit":"kPa"}}"#);
        assert_eq!(refused(&pump(&vacuum, r#"{"value":300,"unit":"mm[Hg]"}"#)).is_none(), taken, "{value}");
    }
}

/// As the page of the exchange form says.
#[test]
fn what_came_in_goes_out_in_its_own_unit_and_what_was_typed_in_the_first() {
    let mut person = person();
    person.import_file(pump(r#"{"value":33.3,"unit":"kPa"}"#, r#"{"value":280,"unit":"mm[Hg]"}"#).as_bytes()).unwrap();
    let pump = person.only("pump").unwrap();
    assert_eq!(pump["maximum_vacuum_low"], serde_json::json!({ "value": 33.3, "unit": "kPa" }));
    person.send(Event::Go { place: Place::Entry { id: "p".to_owned() } }).unwrap();
    person.enter("maximum_vacuum_low", "34 kPa").unwrap();
    let typed = &person.only("pump").unwrap()["maximum_vacuum_low"];
    assert_eq!((typed["unit"].as_str(), typed["typed_unit"].as_str()), (Some("mm[Hg]"), Some("kPa")));
    assert!((typed["value"].as_f64().unwrap() - 255.0217).abs() < 1e-4, "{typed}");
}

/// A pump that was read three times a side with a gauge of class 1 and span 450: wrong by 4.5 mmHg.
fn with_a_gauge_that_may_be_wrong_by_four_and_a_half(settings: &str) -> Person {
    let mut person = person();
    let kit = format!(
        r#"{{"fact":"settings","id":"settings"{settings}}}
{{"fact":"pump","id":"p","name":"Marl","maximum_vacuum_low":{{"value":33.3,"unit":"kPa"}},"maximum_vacuum_high":{{"value":40,"unit":"kPa"}}}}
{{"fact":"gauge","id":"g","span":{{"value":450,"unit":"mm[Hg]"}},"accuracy_class":"1"}}
"#
    );
    person.import_file(kit.as_bytes()).unwrap();
    person.press("place-kit").unwrap();
    person.press("open-p").unwrap();
    person.press("check").unwrap();
    for typed in ["262", "263", "262", "262", "263", "262"] {
        let Screen::Check { check, .. } = person.screen().unwrap() else { panic!("a check") };
        let id = check.reading.id.clone();
        person.send(Event::Enter { id, field: "readings/next".to_owned(), typed: format!("{typed} mmHg") }).unwrap();
        person.wait(Span::seconds(40)).unwrap();
    }
    person.press("done").unwrap();
    person
}

#[test]
fn an_error_of_four_and_a_half_is_five_and_a_makers_range_is_what_its_maker_wrote() {
    let person = with_a_gauge_that_may_be_wrong_by_four_and_a_half("");
    let read = person.reads().unwrap();
    assert!(read.contains("off by 5 mmHg"), "{read}");
    // 33.3 and 40 kPa are 249.77 and 300.03 mmHg.
    assert!(read.contains("250 to 300 mmHg"), "{read}");
    let person = with_a_gauge_that_may_be_wrong_by_four_and_a_half(r#","vacuum_unit":"kPa""#);
    let read = person.reads().unwrap();
    // 4.5 mmHg are 0.59995 kPa.
    assert!(read.contains("off by 0.6 kPa") && read.contains("33.3 to 40 kPa"), "{read}");
}

/// The bounds of what a field takes are said so that a value at them is taken.
#[test]
fn a_bound_that_is_said_is_taken() {
    for unit in ["mmHg", "kPa", "cmH2O"] {
        let mut person = person();
        person.press("place-kit").unwrap();
        person.press("add-pump").unwrap();
        let trouble = person.enter("maximum_vacuum_low", &format!("9000 {unit}")).unwrap_err();
        let said = |name: &str| {
            let (_, detail) = trouble.needs.iter().find(|(key, _)| *key == name).unwrap();
            let Detail::Figure { value, places, rounding } = detail else { panic!("{detail:?}") };
            rounding.say(*value, *places)
        };
        for bound in [said("least"), said("most")] {
            person.enter("maximum_vacuum_low", &format!("{bound} {unit}")).unwrap();
        }
    }
}

proptest! {
    #[test]
    fn ends_are_rounded_outward_and_by_less_than_one_step(value in -2000.0..2000.0_f64, places in 0..4_usize) {
        let step = 10_f64.powi(-(places as i32));
        let read = |rounding: Rounding| parse_decimal(&rounding.say(value, places)).unwrap();
        let (down, up) = (read(Rounding::Down), read(Rounding::Up));
        prop_assert!(down <= value + 1e-5 * step && up >= value - 1e-5 * step, "{down} {value} {up}");
        prop_assert!(value - down < step * 1.000_01 && up - value < step * 1.000_01, "{down} {value} {up}");
        let nearest = read(Rounding::Nearest);
        prop_assert!(nearest == down || nearest == up, "{down} {nearest} {up}");
    }

    #[test]
    fn what_is_exact_stays_as_it_is(tenths in -20_000..20_000_i32) {
        let value = f64::from(tenths) / 10.0;
        for rounding in [Rounding::Down, Rounding::Nearest, Rounding::Up] {
            prop_assert_eq!(parse_decimal(&rounding.say(value, 1)).unwrap(), value);
        }
    }
}

#[test]
fn a_line_that_is_refused_leaves_nothing_behind() {
    let mut person = person();
    person.import_file(amount(80.0, "mL", "60", "mL").as_bytes()).unwrap();
    let facts = person.record().unwrap();
    let sessions = facts.lines().filter_map(|line| serde_json::from_str::<Value>(line).ok());
    assert_eq!(sessions.filter(|line| line["fact"] == "session").count(), 0);
}
