//! Two spans of days beside each other.

use drawwell_core::screen::shapes::{Event, FindingsScreen, Place, Screen};
use drawwell_core::time::{Span, Zone};
use drawwell_tests::person::Person;
use drawwell_tests::written::Written;

fn person() -> Person {
    Person::welcomed("2026-06-20T10:00:00+02:00", "Europe/Berlin").unwrap()
}

/// Every three hours for forty days; the last fourteen give another share.
fn forty_days(person: &mut Person, share: f64) {
    let mut written = Written::within(Zone::named("Europe/Berlin").unwrap());
    for n in 0..320_i64 {
        let ended = person.now().minus(Span::minutes(180 * n + 90));
        let wobble = 1.0 + f64::from((n * 7 % 11) as i32 - 5) / 100.0;
        let milk = 45.0 * wobble * if n < 8 * 14 { share } else { 1.0 };
        written.both(&format!("s-{n}"), ended, milk, milk);
    }
    person.import_file(&written.file()).unwrap();
}

fn compared(person: &mut Person, days: u32) -> FindingsScreen {
    person.send(Event::Go { place: Place::Compare { days } }).unwrap();
    let Screen::Findings { findings, .. } = person.screen().unwrap() else { panic!("{:?}", person.screen()) };
    findings.clone()
}

fn row(findings: &FindingsScreen, title: &str) -> String {
    findings.sections[0].rows.iter().find(|row| row.title == title).unwrap().detail.clone()
}

#[test]
fn a_fortnight_is_held_against_the_fortnight_before() {
    let mut person = person();
    forty_days(&mut person, 0.8);
    let findings = compared(&mut person, 14);
    assert_eq!(findings.headline, "6 June to 19 June");
    assert_eq!(findings.caption, "compared with 23 May to 5 June");
    // 720 mL a day before, a fifth less now: about 144 mL, and the range is on one side.
    let more = row(&findings, "More or less a day");
    let value: i32 = more.split(' ').next().unwrap().replace('\u{2212}', "-").parse().unwrap();
    assert!((-155..=-130).contains(&value), "{more}");
    assert!(!more.contains('+'), "the whole range lies below: {more}");
    assert_eq!(row(&findings, "Highest pain logged"), "not known; before: not known", "missing is not nought");
    assert!(
        row(&findings, "Longest gap on one side").starts_with("3 h"),
        "{}",
        row(&findings, "Longest gap on one side")
    );
}

#[test]
fn what_did_not_change_has_nothing_within_its_range() {
    let mut person = person();
    forty_days(&mut person, 1.0);
    let more = row(&compared(&mut person, 14), "More or less a day");
    assert!(more.contains('+') && more.contains('\u{2212}'), "{more}");
}

#[test]
fn without_days_nothing_is_said() {
    let mut person = person();
    let findings = compared(&mut person, 7);
    assert_eq!(findings.sections[0].rows[0].title, "No milk was logged yet.");
    // Forty days, and thirty asked for twice: the earlier span is not there to compare.
    forty_days(&mut person, 1.0);
    let findings = compared(&mut person, 28);
    assert!(row(&findings, "Milk a day").contains("before:"), "{:?}", findings.sections[0].rows);
}

#[test]
fn since_the_last_visit_is_as_many_days_as_there_were() {
    let mut person = person();
    forty_days(&mut person, 1.0);
    let visit = r#"{"fact":"visit","id":"v","at":{"at":"2026-06-10T10:00:00+02:00","zone":"Europe/Berlin"}}"#;
    person.import_file(visit.as_bytes()).unwrap();
    let findings = compared(&mut person, 0);
    assert_eq!(
        (findings.headline.as_str(), findings.caption.as_str()),
        ("10 June to 19 June", "compared with 31 May to 9 June")
    );
}
