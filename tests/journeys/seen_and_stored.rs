//! What crosses is what the person saw, and what is told is no more than was known: amounts,
//! gaps, the first days, an ending, a plan beside what was used.

use drawwell_core::screen::shapes::{Event, Export, Part, Place, Screen, SupplyScreen};
use drawwell_core::time::{Instant, Moment, Span, Zone};
use drawwell_tests::person::Person;
use drawwell_tests::visiting::{shares, Desk};
use drawwell_tests::written::{milliliters, Written};
use serde_json::json;

fn berlin() -> Zone {
    Zone::named("Europe/Berlin").unwrap()
}

fn at(text: &str) -> Instant {
    Moment::from_parts(text, "Europe/Berlin").unwrap().instant()
}

/// The scale of a column grows with what other sessions brought. Where a file comes in between
/// the drawing and the letting go, the amount that was read is the one that is kept.
#[test]
fn an_amount_is_what_was_read_and_not_a_height_on_another_scale() {
    let mut person = Person::welcomed("2026-05-25T08:00:00+02:00", "Europe/Berlin").unwrap();
    person.press("place-now").unwrap();
    person.press("start").unwrap();
    person.wait(Span::minutes(15)).unwrap();
    person.press("finish").unwrap();
    let read = |person: &Person| {
        let Screen::Amounts { amounts, .. } = person.screen().unwrap() else { panic!("amounts") };
        let column = amounts.columns[0].clone();
        let reading = column.readings.iter().find(|reading| reading.at == 0.5).unwrap().clone();
        (amounts.session.clone(), column.unit, reading)
    };
    let (session, unit, seen) = read(&person);
    assert_eq!(seen.label, "60 mL");
    let mut written = Written::within(berlin());
    written.both("other", at("2026-05-25T05:00:00+02:00"), 240.0, 240.0);
    person.import_file(&written.file()).unwrap();
    person.send(Event::Go { place: Place::Now }).unwrap();
    assert_ne!(read(&person).2.label, "60 mL", "the scale is another by now");
    person.send(Event::DrawAmount { session, part: Part::Left, typed: seen.typed, unit }).unwrap();
    let record = person.record().unwrap();
    assert!(record.contains(r#""amount_left":{"typed":"60","typed_unit":"mL","unit":"mL","value":60.0}"#), "{record}");
}

/// Ounces are read and kept as they were read.
#[test]
fn an_amount_in_ounces_is_kept_as_it_was_read() {
    let mut person = Person::welcomed("2026-05-25T08:00:00+02:00", "Europe/Berlin").unwrap();
    let ounces =
        Event::Enter { id: "settings".to_owned(), field: "volume_unit".to_owned(), typed: "[foz_us]".to_owned() };
    person.send(ounces).unwrap();
    person.press("place-now").unwrap();
    person.press("start").unwrap();
    person.press("finish").unwrap();
    person.draws(Part::Right, 0.5).unwrap();
    let session = person.only("session").unwrap();
    assert_eq!(
        (&session["amount_right"]["typed"], &session["amount_right"]["typed_unit"]),
        (&json!("2"), &json!("[foz_us]"))
    );
}

/// Sides by turns every four hours: each rests for eight, and no gap is longer than four.
#[test]
fn a_gap_on_the_sheet_is_between_sessions_whichever_side() {
    let mut person = Person::welcomed("2026-05-25T12:00:00+02:00", "Europe/Berlin").unwrap();
    let mut written = Written::within(berlin());
    for n in 1..=60_i64 {
        let (side, amount) = if n % 2 == 0 { ("left", "amount_left") } else { ("right", "amount_right") };
        let ended = person.now().minus(Span::hours(4 * n));
        written.session(&format!("s{n}"), ended, &[("sides", json!(side)), (amount, milliliters(60.0 + n as f64))]);
    }
    written.fact("child", "c", &[("birth", json!("2026-03-01"))]);
    person.import_file(&written.file()).unwrap();
    let Screen::Sheet { sheet, .. } = person.show(&Place::Sheet).unwrap() else { panic!("sheet") };
    let rhythm = sheet.parts.iter().flat_map(|part| &part.sections).find(|section| section.key == "rhythm").unwrap();
    let row = |label: &str| rhythm.rows.iter().find(|row| row.label.starts_with(label)).unwrap().clone();
    assert_eq!(row("Longest gap of a day, median").value, "4 h");
    assert!(row("Days with more than 7 h").value.starts_with("0 of"), "{:?}", row("Days with more"));
    let nights = sheet.parts.iter().flat_map(|part| &part.sections).find(|section| section.key == "nights").unwrap();
    assert!(nights.lines.iter().any(|line| line.contains("4 h")), "{:?}", nights.lines);
    // Where a side is meant, it is said.
    let figures = serde_json::to_string(&person.show(&Place::SupplyFigures { days: 7 }).unwrap()).unwrap();
    assert!(figures.contains("longest gap on one side 8 h"), "{figures}");
}

fn supply(person: &mut Person) -> SupplyScreen {
    crate::supply::supply(person, 28)
}

/// Eight sessions a day that bring more each day, up to the present.
fn rising(person: &Person, days: i64, birth: &str) -> Vec<u8> {
    let mut written = Written::within(berlin());
    written.fact("child", "c", &[("birth", json!(birth)), ("name", json!("Wren"))]);
    for n in 0..days * 8 {
        let ended = person.now().minus(Span::hours(24 * days)).plus(Span::hours(3 * n + 3));
        let each = 5.0 + 4.0 * (n / 8) as f64;
        written.both(&format!("s{n}"), ended, each, each + 1.0);
    }
    written.file()
}

/// In the first two weeks each day stands by itself: a mean of a rise says nothing.
#[test]
fn the_first_two_weeks_are_told_day_by_day() {
    for (birth, by_day) in [("2026-05-12", true), ("2026-05-11", false)] {
        let mut person = Person::welcomed("2026-05-25T12:00:00+02:00", "Europe/Berlin").unwrap();
        person.import_file(&rising(&person, 9, birth)).unwrap();
        let supply = supply(&mut person);
        assert_eq!(supply.headline == "Day by day", by_day, "{birth}: {}", supply.headline);
        assert_eq!(supply.figure.is_empty(), by_day, "{birth}: {}", supply.figure);
        let told = supply.lines.iter().filter(|line| line.contains(", day ")).count();
        assert_eq!(told > 5, by_day, "{birth}: {:?}", supply.lines);
        let intake = supply.against.rows.iter().any(|row| row.title.contains("Intake"));
        assert_eq!(intake, !by_day, "no share of a mean that is none: {birth}");
    }
}

/// Less milk is what an ending asks for: the watch says nothing while it goes on.
#[test]
fn a_drop_is_not_told_while_expressing_is_being_ended_by_plan() {
    for (from, told) in [("2026-06-30", true), ("2026-05-20", false)] {
        let mut person = Person::welcomed("2026-05-25T12:00:00+02:00", "Europe/Berlin").unwrap();
        let mut written = Written::within(berlin());
        written.fact("child", "c", &[("birth", json!("2026-01-01"))]);
        written.fact("rhythm", "rhythm", &[("fewer_from", json!(from))]);
        for n in 0..40 * 8_i64 {
            let ended = person.now().minus(Span::hours(24 * 40)).plus(Span::hours(3 * n + 3));
            let each = if n >= 34 * 8 { 22.0 } else { 45.0 } + (n % 5) as f64;
            written.both(&format!("s{n}"), ended, each, each);
        }
        person.import_file(&written.file()).unwrap();
        let screen = person.show(&Place::Now).unwrap();
        let said = screen.frame().notices.iter().any(|notice| notice.text.contains("less milk than before"));
        assert_eq!(said, told, "ending from {from}");
        assert_eq!(supply(&mut person).asks.iter().any(|ask| ask.key == "supply-drop"), told, "{from}");
    }
}

/// Each tap's screen asks the watch, and what it said of other days is said no more.
#[test]
fn a_drop_goes_with_the_days_it_was_seen_in() {
    let mut person = Person::welcomed("2026-05-25T12:00:00+02:00", "Europe/Berlin").unwrap();
    let mut written = Written::within(berlin());
    for n in 0..40 * 8_i64 {
        let ended = person.now().minus(Span::hours(24 * 40)).plus(Span::hours(3 * n + 3));
        let each = if n >= 34 * 8 { 22.0 } else { 45.0 } + (n % 5) as f64;
        written.both(&format!("s{n}"), ended, each, each);
    }
    person.import_file(&written.file()).unwrap();
    let told = |person: &mut Person| {
        person.send(Event::Go { place: Place::Now }).unwrap();
        person.screen().unwrap().frame().notices.iter().any(|notice| notice.text.contains("less milk than before"))
    };
    assert!(told(&mut person), "and again, of the same days");
    assert!(told(&mut person));
    for n in 34 * 8..40 * 8 {
        person.send(Event::Remove { id: format!("s{n}") }).unwrap();
    }
    assert!(!told(&mut person));
    for n in 34 * 8..40 * 8 {
        person.send(Event::BringBack { id: format!("s{n}") }).unwrap();
    }
    assert!(told(&mut person));
}

/// A plan's setting is held against what was used on that pump, the pump's own range, and where
/// it hurt; levels of two pumps are two things.
#[test]
fn a_planned_setting_is_compared_on_its_own_pump_alone() {
    let mut person = Person::welcomed("2026-05-25T12:00:00+02:00", "Europe/Berlin").unwrap();
    let mut desk = Desk::beside(&person).unwrap();
    let card = desk.caseload.own_card().unwrap();
    let high = |value: f64| json!({"value": value, "unit": "mm[Hg]"});
    let mut written = Written::within(berlin());
    written.fact("pump", "w", &[("name", json!("Ward pump")), ("maximum_vacuum_high", high(300.0))]);
    written.fact("pump", "h", &[("name", json!("Heron")), ("levels", json!(9))]);
    let on = |pump: &str, level: u32, pain: u32| {
        vec![("pump", json!(pump)), ("level_expression", json!(level)), ("pain_left_expression", json!(pain))]
    };
    written.session("a", at("2026-05-24T08:00:00+02:00"), &on("h", 6, 5));
    written.session("b", at("2026-05-24T12:00:00+02:00"), &on("h", 5, 0));
    written.session("c", at("2026-05-24T16:00:00+02:00"), &[("pump", json!("w"))]);
    person.import_file(&written.file()).unwrap();
    let file = shares(&mut person, &card).unwrap();
    desk.import_file(&file).unwrap();
    let mut said = |fields: &[(&str, &str)]| -> Vec<String> {
        person.wait(Span::minutes(5)).unwrap();
        desk.clock = person.clock().clone();
        let plan = desk.writes_a_plan(&[("setting", fields)]).unwrap();
        let file = {
            let update = desk.caseload.update(Event::Export { what: Export::Plan { plan } }, &desk.clock).unwrap();
            let drawwell_core::screen::shapes::Effect::HandOver { what, .. } = update.effects[0].clone() else {
                panic!()
            };
            let mut file = Vec::new();
            desk.caseload.export(&what, &mut file, &desk.clock).unwrap();
            file
        };
        person.import_file(&file).unwrap();
        let Screen::Findings { findings, .. } = person.screen().unwrap() else { panic!("{:?}", person.screen()) };
        let section = findings.sections.iter().find(|section| section.title.starts_with("A setting")).unwrap();
        section.lines[1..].to_vec()
    };
    let ward = said(&[("pump_name", "Ward pump"), ("level", "7"), ("vacuum", "340")]);
    assert_eq!(
        ward,
        [
            "Ward pump is made for at most 300 mmHg.",
            "No setting has been logged on Ward pump yet, so we can’t compare.",
        ],
        "level 7 on another pump says nothing of this one"
    );
    assert_eq!(said(&[("pump_name", "Heron"), ("level", "5")]), [""; 0], "as it was used, and it did not hurt");
    let higher = said(&[("pump_name", "Heron"), ("level", "6")]);
    assert_eq!(
        higher,
        [
            "This is stronger than your last setting on this pump. Turn it down as soon as it hurts.",
            "It hurt at level 6 on 24 May. Turn it down as soon as it hurts.",
        ]
    );
    let beyond: Vec<String> = said(&[("pump_name", "Heron"), ("level", "10")]);
    assert!(beyond[0] == "Heron has 9 levels.", "{beyond:?}");
    assert!(said(&[("pump_name", "Marl"), ("level", "5")])[0].starts_with("Your record has no pump called Marl."));
    assert!(said(&[("level", "5")])[0].starts_with("The plan does not name a pump."));
}
