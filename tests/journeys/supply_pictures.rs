//! Supply of the demo family as it is read and spoken; every picture within
//! the unit.

use drawwell_core::screen::shapes::{Event, Place, Screen};
use drawwell_tests::person::Person;
use serde_json::Value;

use crate::supply::supply;

fn demo() -> Person {
    Person::of_the_invented_family().unwrap()
}

#[test]
fn supply_as_it_is_read() {
    let mut person = demo();
    person.send(Event::Go { place: Place::Supply { days: 28 } }).unwrap();
    insta::assert_snapshot!(person.reads().unwrap());
}

#[test]
fn what_lies_behind_it_as_it_is_read() {
    let mut person = demo();
    person.send(Event::Go { place: Place::Supply { days: 28 } }).unwrap();
    person.press("supply-more").unwrap();
    insta::assert_snapshot!(person.reads().unwrap());
}

/// The word, the figure, one line and the picture are met first; all else lies behind one tap, and
/// over the same days.
#[test]
fn supply_meets_the_eye_with_a_word_a_figure_a_line_and_a_picture() {
    let mut person = demo();
    person.send(Event::Go { place: Place::Supply { days: 14 } }).unwrap();
    let Screen::Supply { supply, .. } = person.screen().unwrap() else { panic!("supply") };
    assert!(!supply.headline.is_empty() && !supply.figure.is_empty() && !supply.weeks.bars.is_empty());
    assert!(supply.lines.is_empty() && supply.changes.is_empty() && supply.sides.is_empty());
    assert!(supply.hours.bars.is_empty() && supply.parts.rows.is_empty() && supply.against.rows.is_empty());
    person.press("supply-more").unwrap();
    let Screen::Supply { frame, supply } = person.screen().unwrap() else { panic!("more") };
    assert!(!supply.lines.is_empty() && !supply.sides.is_empty() && !supply.hours.bars.is_empty());
    assert!(supply.weeks.bars.is_empty(), "the picture is not drawn twice");
    assert!(frame.back.is_some());
    person.press("supply-figures").unwrap();
    person.press("back").unwrap();
    person.press("back").unwrap();
    let Screen::Supply { supply, .. } = person.screen().unwrap() else { panic!("supply") };
    assert!(!supply.weeks.bars.is_empty(), "back to the picture");
}

/// That every day counts and that the log has holes is no contradiction: what a day needs is said with it.
#[test]
fn how_many_days_count_and_how_much_was_logged_do_not_contradict_each_other() {
    let mut person = demo();
    person.send(Event::Go { place: Place::Supply { days: 28 } }).unwrap();
    let Screen::Supply { supply, .. } = person.screen().unwrap() else { panic!("supply") };
    assert!(!supply.caption.contains(" of "), "all of them count: {}", supply.caption);
    person.press("supply-more").unwrap();
    let Screen::Supply { supply, .. } = person.screen().unwrap() else { panic!("more") };
    let observed = supply.lines.iter().find(|line| line.starts_with("Your log covers")).unwrap();
    assert!(observed.contains("A day counts once 60% of it is logged."), "{observed}");
}

#[test]
fn the_figures_behind_as_they_are_read() {
    let mut person = demo();
    person.send(Event::Go { place: Place::SupplyFigures { days: 28 } }).unwrap();
    insta::assert_snapshot!(person.reads().unwrap());
}

#[test]
fn supply_as_it_is_spoken() {
    let mut person = demo();
    let mut spoken = Vec::new();
    for days in [7, 14, 28, 0] {
        let told = supply(&mut person, days);
        spoken.push(format!("-- {days} --\n{}\n{}\n{}", told.spoken, told.weeks.spoken, told.hours.spoken));
        spoken.extend(told.changes.iter().map(|change| change.spoken.clone()));
        for side in &told.sides {
            spoken.push(format!("{}\n{}", side.column.spoken, side.weeks.spoken));
        }
    }
    assert!(spoken.iter().all(|line| !line.trim().is_empty()));
    insta::assert_snapshot!(spoken.join("\n"));
}

/// Every number of a picture; `ask_again_milliseconds` and counts are none.
fn positions<'a>(value: &'a Value, path: &str, out: &mut Vec<(String, &'a Value)>) {
    match value {
        Value::Object(map) => map.iter().filter(|(key, _)| *key != "event").for_each(|(key, inner)| {
            if ["from", "to", "at", "height", "low", "middle", "high", "observed", "by_the_clock", "ghost"]
                .contains(&key.as_str())
                && !inner.is_object()
            {
                out.push((format!("{path}/{key}"), inner));
            }
            positions(inner, &format!("{path}/{key}"), out);
        }),
        Value::Array(all) => all.iter().enumerate().for_each(|(i, v)| positions(v, &format!("{path}/{i}"), out)),
        _ => {}
    }
}

/// A number that is not finite is written as `null` in JSON: where a height may
/// be none that is an answer, elsewhere it is a fault.
const MAY_BE_NONE: &[&str] = &["height", "by_the_clock", "ghost"];

#[test]
fn every_height_and_place_of_supply_is_within_the_unit() {
    let mut person = demo();
    let mut looked_at = 0;
    for back in 0..30 {
        person.wait(drawwell_core::time::Span::hours(if back == 0 { 0 } else { -5 * 24 - 1 })).unwrap();
        for days in [7, 14, 28, 0] {
            let screen = person.show(&Place::Supply { days }).unwrap();
            assert!(matches!(screen, Screen::Supply { .. }));
            let json = serde_json::to_value(&screen).unwrap();
            let mut found = Vec::new();
            positions(&json, "", &mut found);
            for (path, value) in &found {
                let name = path.rsplit('/').next().unwrap();
                let within = value.as_f64().is_some_and(|x| (0.0..=1.0).contains(&x));
                assert!(within || (value.is_null() && MAY_BE_NONE.contains(&name)), "{back} {days} {path}: {value}");
            }
            looked_at += found.len();
            if let Screen::Supply { supply, .. } = &screen {
                let heights = supply.weeks.bars.iter().flat_map(|b| [b.height, b.by_the_clock]).flatten();
                let sides = supply.sides.iter().flat_map(|s| s.weeks.bars.iter().filter_map(|b| b.height));
                let hours = supply.hours.bars.iter().filter_map(|b| b.height);
                assert!(heights.chain(sides).chain(hours).all(f32::is_finite));
            }
        }
    }
    assert!(looked_at > 10_000, "{looked_at}");
}
