//! What people see, kept as snapshots: the demo family on its last day.

use drawwell_core::screen::shapes::{Place, Screen};
use drawwell_core::time::Span;
use drawwell_tests::person::Person;

fn demo() -> Person {
    Person::of_the_invented_family().unwrap()
}

#[test]
fn before_a_session() {
    insta::assert_yaml_snapshot!(demo().show(&Place::Now).unwrap());
}

#[test]
fn the_day_before() {
    insta::assert_yaml_snapshot!(demo().show(&Place::Day { days_back: 1 }).unwrap());
}

#[test]
fn a_session_with_everything() {
    let mut person = Person::welcomed("2026-03-01T02:10:00+01:00", "Europe/Berlin").unwrap();
    person.press("start").unwrap();
    for key in ["mark-stronger", "mark-stronger", "mark-faster"] {
        person.press(key).unwrap();
    }
    person.wait(Span::seconds(95)).unwrap();
    person.press("mark-letdown").unwrap();
    person.press("mark-expression-phase").unwrap();
    person.wait(Span::minutes(6)).unwrap();
    person.press("mark-hurts").unwrap();
    person.press("pain-turned-down").unwrap();
    person.press("pain-5").unwrap();
    person.wait(Span::minutes(4)).unwrap();
    insta::assert_yaml_snapshot!("while_it_runs", person.screen().unwrap());
    person.press("finish").unwrap();
    person.draws(drawwell_core::screen::shapes::Part::Left, 0.42).unwrap();
    insta::assert_yaml_snapshot!("what_came", person.screen().unwrap());
    person.press("amounts-done").unwrap();
    insta::assert_snapshot!("in_the_exchange_form", person.record().unwrap());
    person.press("open-lacking").unwrap();
    insta::assert_snapshot!("its_form_as_read", person.reads().unwrap());
}

#[test]
fn every_height_and_place_of_every_picture_is_within_the_unit() {
    let mut person = demo();
    for days_back in 0..160 {
        let Screen::Day { day, .. } = person.show(&Place::Day { days_back }).unwrap() else { panic!("a day") };
        let mut all: Vec<f32> =
            day.picture.bars.iter().flat_map(|b| [Some(b.at), b.left, b.right, b.together]).flatten().collect();
        for strip in day.entries.iter().filter_map(|e| e.strip.as_ref()) {
            all.extend(strip.bands.iter().flat_map(|b| [b.from, b.to]));
            all.extend(strip.notches.iter().map(|n| n.at));
            all.extend(strip.vacuum.iter().chain(&strip.cycles).flat_map(|p| [p.at, p.height]));
            all.extend(strip.pains.iter().map(|p| p.at));
            assert!(strip.bands.windows(2).all(|w| w[0].to <= w[1].from + 1e-6));
            assert!(!strip.spoken.is_empty());
        }
        assert!(all.iter().all(|x| (0.0..=1.0).contains(x)), "{days_back} days back");
    }
}
