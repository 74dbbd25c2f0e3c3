//! Which flange to try, and what to look for.

use drawwell_core::screen::shapes::{FindingsScreen, Place, Screen};
use drawwell_core::time::Span;
use drawwell_core::trouble::Detail;
use drawwell_tests::person::Person;

fn person() -> Person {
    let mut person = Person::welcomed("2026-03-01T10:00:00+01:00", "Europe/Berlin").unwrap();
    person.press("place-kit").unwrap();
    person.press("fit").unwrap();
    person
}

fn findings(person: &mut Person) -> FindingsScreen {
    let Screen::Findings { findings, .. } = person.show(&Place::Fit).unwrap() else { panic!("findings") };
    findings
}

fn all_lines(found: &FindingsScreen) -> Vec<String> {
    found.lines.iter().chain(found.sections.iter().flat_map(|s| &s.lines)).cloned().collect()
}

#[test]
fn nothing_is_said_before_anything_was_measured() {
    let mut person = person();
    let found = findings(&mut person);
    assert_eq!((found.headline.as_str(), found.figure.as_str()), ("Not measured yet", ""));
    assert!(!found.sections.iter().any(|s| s.key.starts_with("fit-")));
}

#[test]
fn a_diameter_gives_sizes_from_the_stock_with_the_reason_and_no_verdict() {
    let mut person = person();
    person.press("measure").unwrap();
    person.enter("nipple_left_before", "16").unwrap();
    let found = findings(&mut person);
    assert_eq!(found.figure, "Left 16 to 20 mm");
    assert!(all_lines(&found).iter().any(|l| l.starts_with("You have not added the sizes in stock")));
    person
        .send(drawwell_core::screen::shapes::Event::Enter {
            id: "settings".to_owned(),
            field: "flange_sizes".to_owned(),
            typed: "24, 13 17 19;21".to_owned(),
        })
        .unwrap();
    let found = findings(&mut person);
    assert_eq!(found.figure, "Left 17, 19 mm");
    assert!(all_lines(&found).contains(&"16 mm wide: try 16 to 20 mm.".to_owned()));
    assert!(all_lines(&found).iter().any(|l| l.contains("not what is right")));
}

#[test]
fn one_point_six_is_asked_whether_it_was_centimetres_and_may_be_typed_as_such() {
    let mut person = person();
    person.press("measure").unwrap();
    let before = person.record().unwrap();
    let trouble = person.enter("nipple_left_before", "1.6").unwrap_err();
    assert_eq!(trouble.key, "bad-range-centimeters");
    assert!(trouble.needs.contains(&("meant", Detail::number(16.0, 1))), "{:?}", trouble.needs);
    for (typed, key) in [("4.9", "bad-range"), ("35.1", "bad-range"), ("0.4", "bad-range")] {
        assert_eq!(
            person.enter("nipple_left_before", typed).unwrap_err().key,
            if typed == "4.9" { "bad-range" } else { key },
            "{typed}"
        );
    }
    assert_eq!(person.record().unwrap(), before);
    for typed in ["5", "35", "1.6 cm"] {
        person.enter("nipple_left_before", typed).unwrap();
    }
    assert_eq!(findings(&mut person).figure, "Left 16 to 20 mm");
    assert_eq!(person.only("fit").unwrap()["nipple_left_before"]["typed"], "1.6", "as it was typed");
}

#[test]
fn signs_say_what_to_try_and_never_what_is_wrong() {
    let mut person = person();
    person.press("measure").unwrap();
    person.enter("nipple_left_before", "16").unwrap();
    person.enter("nipple_right_before", "16").unwrap();
    for field in ["only_at_highest", "areola_drawn_in"] {
        person.enter(field, "left").unwrap();
    }
    person.enter("rubbing", "right").unwrap();
    let found = findings(&mut person);
    let rows = |key: &str| {
        let section = found.sections.iter().find(|s| s.key == key).unwrap();
        section.rows.iter().map(|row| format!("{}: {}", row.title, row.detail)).collect::<Vec<_>>()
    };
    // Common practice, no source: milk only at the highest vacuum is a sign of one too big.
    assert!(rows("fit-left")
        .iter()
        .any(|r| r.starts_with("Milk only at the highest vacuum: The flange may be too big")));
    assert!(rows("fit-left").iter().any(|r| r.starts_with("Areola pulled into the tunnel: The flange may be too big")));
    assert!(rows("fit-right").iter().any(|r| r.starts_with("Nipple rubs: The flange may be too small")));
    assert_eq!(found.figure, "16 to 20 mm", "both sides are alike");
}

#[test]
fn sides_that_differ_are_measured_once_more_and_all_again_after_six_weeks() {
    let mut person = person();
    person.press("measure").unwrap();
    person.enter("nipple_left_before", "15").unwrap();
    person.enter("nipple_right_before", "17").unwrap();
    let lines = all_lines(&findings(&mut person));
    assert!(lines.iter().any(|l| l.starts_with("Left and right differ")));
    let found = findings(&mut person);
    let sides: Vec<&str> = found.figure.lines().collect();
    assert!(
        matches!(sides[..], [left, right] if left.starts_with("Left ") && right.starts_with("Right ")),
        "{sides:?}"
    );
    assert!(found.lines.is_empty(), "what there is to do comes before what there is to read");
    assert!(lines.iter().any(|l| l.starts_with("Measure again from 12 April 2026")), "{lines:?}");
    person.wait(Span::hours(24 * 43)).unwrap();
    let lines = all_lines(&findings(&mut person));
    assert!(lines.iter().any(|l| l.starts_with("It is time to measure again")), "{lines:?}");
}

#[test]
fn sizes_in_stock_that_are_none_are_refused() {
    let mut person = person();
    let mut enter = |typed: &str| {
        person
            .send(drawwell_core::screen::shapes::Event::Enter {
                id: "settings".to_owned(),
                field: "flange_sizes".to_owned(),
                typed: typed.to_owned(),
            })
            .map_err(|trouble| trouble.key)
    };
    assert_eq!(enter("many"), Err("bad-sizes"));
    assert_eq!(enter("17 nineteen"), Err("bad-sizes"));
    assert_eq!(enter("17 90"), Err("bad-range"));
    assert_eq!(enter("17,5 19 21 mm"), Ok(()));
}

#[test]
fn the_flange_of_the_invented_family_as_it_is_read() {
    let mut person = Person::of_the_invented_family().unwrap();
    person.press("place-kit").unwrap();
    insta::assert_snapshot!("kit_as_read", person.reads().unwrap());
    person.press("fit").unwrap();
    insta::assert_snapshot!("kit_fit_as_read", person.reads().unwrap());
}
