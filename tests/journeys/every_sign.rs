//! What somebody wrote down reaches who must act: every field of a sign in every place, and
//! what became of each, however long ago it was.

use drawwell_core::guidance::{CautionSource, Urgency};
use drawwell_core::record::choices::WHERE_ON_BODY;
use drawwell_core::record::{FieldSpec, FieldType, Kind};
use drawwell_core::screen::shapes::{DeskEvent, Event, Export, Place, Screen};
use drawwell_core::text::Texts;
use drawwell_core::time::{Instant, Span, Zone};
use drawwell_tests::handed_over::health_record;
use drawwell_tests::person::Person;
use drawwell_tests::visiting::{shares, takes, Desk};
use drawwell_tests::written::Written;
use serde_json::{json, Value};

const NOW: &str = "2026-05-25T12:00:00+02:00";

fn person() -> Person {
    Person::welcomed(NOW, "Europe/Berlin").unwrap()
}

fn berlin() -> Zone {
    Zone::named("Europe/Berlin").unwrap()
}

/// The fields that say something of the body, and not when.
fn fields() -> impl Iterator<Item = &'static FieldSpec> {
    Kind::Sign.fields().iter().filter(|spec| Some(spec.key) != Kind::Sign.time_field())
}

/// A value that says that it is there, and how it reads.
fn there(spec: &FieldSpec) -> (Value, String) {
    let name = Texts::new("en").say(&format!("field-{}", spec.key.replace('_', "-")));
    match (spec.key, spec.field_type) {
        ("temperature", _) => (json!({"value": 39.2, "unit": "Cel"}), "39.2 °C".to_owned()),
        ("breast_pain", _) => (json!(9), "Breast pain 9 out of 10".to_owned()),
        ("since_before", _) => (json!("worse"), "Worse".to_owned()),
        ("note", _) => (json!("It throbs"), "It throbs".to_owned()),
        (_, FieldType::Flag) => (json!(true), name),
        (_, FieldType::Choice(words)) if words == WHERE_ON_BODY => (json!("left"), format!("{name} (left)")),
        other => panic!("a field that this test knows no value of: {other:?}"),
    }
}

/// A record with one entry of one field, so long ago.
fn with_one(spec: &FieldSpec, before: Span) -> (Person, Vec<u8>, String) {
    let mut person = person();
    let (value, reads) = there(spec);
    let mut written = Written::within(berlin());
    let at = written.moment(person.now().minus(before));
    written.fact("child", "c", &[("birth", json!("2026-03-01"))]);
    written.fact("sign", "b", &[("at", at), (spec.key, value)]);
    person.import_file(&written.file()).unwrap();
    (person, written.file(), reads)
}

/// The visit sheet as it goes on the page.
fn sheet(person: &mut Person) -> String {
    let clock = person.clock().clone();
    let Screen::Sheet { sheet, .. } = person.app().unwrap().show(&Place::Sheet, &clock).unwrap() else {
        panic!("sheet")
    };
    serde_json::to_string(&sheet.parts.iter().flat_map(|part| &part.sections).collect::<Vec<_>>()).unwrap()
}

#[test]
fn every_field_of_a_sign_is_told_on_the_day_in_its_entry_on_the_sheet_in_tables_and_the_health_record() {
    for spec in fields() {
        let (mut person, file, reads) = with_one(spec, Span::hours(24 * 5));
        person.open_day(5).unwrap();
        let day = person.reads().unwrap();
        assert!(day.contains(&reads), "{} on the day: {day}", spec.key);
        person.send(Event::Go { place: Place::Entry { id: "b".to_owned() } }).unwrap();
        let entry = person.reads().unwrap();
        let last = reads.trim_end_matches(" (left)");
        let said = if spec.key == "breast_pain" { "9" } else { last };
        let figure = said.trim_end_matches(" °C");
        assert!(entry.contains(figure), "{} in its entry", spec.key);
        let sheet = sheet(&mut person);
        assert!(sheet.contains(&reads), "{} on the sheet: {sheet}", spec.key);
        let table = takes(&mut person, Event::Export { what: Export::Table { table: "signs".to_owned() } }).unwrap();
        let table = String::from_utf8(table).unwrap();
        let mut lines = table.trim_start_matches('\u{feff}').lines();
        let column = lines.next().unwrap().split(',').position(|name| name.starts_with(spec.key)).unwrap();
        let cell = lines.next().unwrap().split(',').nth(column).unwrap();
        assert!(!cell.is_empty(), "{} in the table", spec.key);
        let record = String::from_utf8(health_record(&file, &[], None).unwrap()).unwrap();
        let code = match spec.key {
            // These have codes of LOINC.
            "temperature" => "8310-5".to_owned(),
            "breast_pain" => "72514-3".to_owned(),
            "note" => "It throbs".to_owned(),
            key => key.replace('_', "-"),
        };
        assert!(record.contains(&code), "{} in the health record: {code}", spec.key);
    }
}

/// 73 hours, 5 and 20 days back: what is urgent is still open, the rest says that it is out of
/// date or was answered; nothing is gone without a word.
#[test]
fn what_became_of_every_sign_is_told_however_long_ago_it_was() {
    for spec in fields().filter(|spec| !["since_before", "note"].contains(&spec.key)) {
        for before in [Span::hours(73), Span::hours(5 * 24), Span::hours(20 * 24)] {
            let (mut person, _, _) = with_one(spec, before);
            // The sheet of all of it.
            let mut written = Written::within(berlin());
            let since = written.moment(person.now().minus(Span::hours(27 * 24)));
            written.fact("visit", "v", &[("at", since)]);
            person.import_file(&written.file()).unwrap();
            let sheet = sheet(&mut person);
            let told = ["What happened next was not logged", "Out of date since", "Over: ", "and nothing since"];
            assert!(told.iter().any(|told| sheet.contains(told)), "{} {before:?}: {sheet}", spec.key);
            let urgent = CautionSource::all().iter().any(|c| {
                c.is_about(spec.key) && c.urgency < Urgency::Consultant && (c.rules.is_empty() || c.key == "fever")
            });
            let line = person.show(&Place::Now).unwrap();
            let line = line.frame().notices.iter().find(|n| n.key == "caution").map(|n| n.text.clone());
            assert_eq!(
                line.is_some_and(|text| text.starts_with("Still open since")),
                urgent,
                "{} {before:?}",
                spec.key
            );
        }
    }
}

/// Of many entries the extremes and what is urgent are told, and the rest by what is in it.
#[test]
fn the_sheet_tells_the_peak_and_says_how_many_more_there_are() {
    let mut person = person();
    let mut written = Written::within(berlin());
    let mut sign = |hours: i64, fields: &[(&str, Value)]| {
        let at = written.moment(person.now().minus(Span::hours(hours)));
        let mut all = vec![("at", at)];
        all.extend_from_slice(fields);
        written.fact("sign", &format!("b{hours}"), &all);
    };
    let degrees = |value: f64| ("temperature", json!({"value": value, "unit": "Cel"}));
    sign(200, &[degrees(39.2)]);
    sign(190, &[("fainting", json!(true))]);
    for n in 0..12 {
        sign(100 - n * 5, &[degrees(36.5 + n as f64 / 10.0), ("swelling", json!("left"))]);
    }
    person.import_file(&written.file()).unwrap();
    let sheet = sheet(&mut person);
    for told in ["39.2 °C", "Fainting", "And 5 more", "Swelling or engorgement (5)", "36.6 °C to 37 °C"] {
        assert!(sheet.contains(told), "{told}: {sheet}");
    }
}

/// The consultant sees at her desk what stood and what became of it.
#[test]
fn the_desk_lists_what_was_urgent_and_what_became_of_it() {
    let mut person = person();
    person.send(Event::Add { kind: "sign".to_owned(), days_back: 0 }).unwrap();
    person.press("fainting-yes").unwrap();
    person.wait(Span::hours(80)).unwrap();
    let mut desk = Desk::beside(&person).unwrap();
    let card = desk.caseload.own_card().unwrap();
    let file = shares(&mut person, &card).unwrap();
    desk.import_file(&file).unwrap();
    let (_, said, family) = desk.families().unwrap().remove(0);
    assert!(said.starts_with("Emergency: fainting"), "{said}");
    desk.send(Event::OnDesk { event: DeskEvent::OpenFamily { family } }).unwrap();
    let screen = desk.send(Event::Go { place: Place::Caution { key: "emergency".to_owned() } }).unwrap();
    let read = serde_json::to_string(&screen.beside).unwrap();
    assert!(read.contains("What happened next was not logged"), "{read}");
    assert!(!read.contains("CautionDealt"), "she deals with nothing in a family's record");

    let dealt = Event::CautionDealt { key: "emergency".to_owned(), how: "emergency_team".to_owned() };
    person.send(dealt).unwrap();
    person.wait(Span::hours(1)).unwrap();
    desk.clock = person.clock().clone();
    let file = shares(&mut person, &card).unwrap();
    desk.import_file(&file).unwrap();
    let (_, said, _) = desk.families().unwrap().remove(0);
    assert!(said.contains("fainting: Dealt with") && said.contains("An emergency team saw me"), "{said}");
}

/// What the parent leaves out leaves a line, apart from what was never written down.
#[test]
fn what_was_left_out_leaves_a_line_on_the_sheet() {
    let mut person = person();
    person.send(Event::Add { kind: "sign".to_owned(), days_back: 0 }).unwrap();
    person.press("redness-left").unwrap();
    let said = |person: &mut Person| {
        let clock = person.clock().clone();
        let file = person.app().unwrap();
        let Screen::Sheet { sheet, .. } = file.show(&Place::Sheet, &clock).unwrap() else { panic!("sheet") };
        sheet
    };
    assert!(said(&mut person).left_out.is_none());
    person.send(Event::LeaveOut { part: "body".to_owned(), out: true }).unwrap();
    person.send(Event::LeaveOut { part: "questions".to_owned(), out: true }).unwrap();
    let left = said(&mut person).left_out.unwrap();
    assert_eq!(
        left.lines,
        ["Removed by the parent: Cautions, temperature and signs."],
        "there was no question to leave out"
    );
}

/// The person's own words beside what came of a caution go with the notes.
#[test]
fn a_note_of_what_came_of_it_is_left_out_with_the_notes() {
    let mut person = person();
    let mut written = Written::within(berlin());
    let seen = written.moment(person.now().minus(Span::hours(3)));
    let at = written.moment(person.now().minus(Span::hours(2)));
    written.fact("sign", "b", &[("at", seen.clone()), ("shivering", json!(true)), ("note", json!("Shook all night"))]);
    let dealt = [("at", at), ("dealt_how", json!("doctor_or_midwife")), ("note", json!("Told to rest"))];
    let caution = [("caution", json!("shivering")), ("seen", seen)];
    written.fact("caution_dealt", "e", &[dealt.to_vec(), caution.to_vec()].concat());
    person.import_file(&written.file()).unwrap();
    let own_words = |sheet: &str| ["Told to rest", "Shook all night"].map(|words| sheet.contains(words));
    assert_eq!(own_words(&sheet(&mut person)), [true, true]);
    person.send(Event::LeaveOut { part: "notes".to_owned(), out: true }).unwrap();
    let without = sheet(&mut person);
    assert_eq!(own_words(&without), [false, false], "{without}");
    assert!(without.contains("A doctor or midwife saw me"), "who saw her is no note: {without}");
}

/// A caution is of the instant it rests on: one that is dealt with at a time before a fact that
/// comes later from another phone stands again.
#[test]
fn a_fact_that_comes_later_from_elsewhere_is_not_dealt_with() {
    let mut person = person();
    person.send(Event::Add { kind: "sign".to_owned(), days_back: 0 }).unwrap();
    person.press("shivering-yes").unwrap();
    let dealt = Event::CautionDealt { key: "shivering".to_owned(), how: "advice_by_phone".to_owned() };
    person.send(dealt).unwrap();
    let stands = |person: &mut Person| {
        let screen = person.show(&Place::Now).unwrap();
        screen.frame().notices.iter().any(|n| n.key == "caution")
    };
    assert!(!stands(&mut person));
    let mut written = Written::within(berlin());
    let later: Instant = person.now().plus(Span::minutes(1));
    let at = written.moment(later);
    written.fact("sign", "other", &[("at", at), ("shivering", json!(true))]);
    person.wait(Span::minutes(5)).unwrap();
    person.import_file(&written.file()).unwrap();
    assert!(stands(&mut person));
}
