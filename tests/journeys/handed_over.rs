//! A parent hands files to other programs: tables and a health record, whole or without
//! what they left out.

use drawwell_core::screen::shapes::{Effect, Event, Export};
use drawwell_core::share::parts::SharePart;
use drawwell_core::share::spreadsheet::Table;
use drawwell_tests::handed_over::{EVERY_KIND, NOW};
use drawwell_tests::person::Person;

fn person() -> Person {
    let mut person = Person::at(NOW.0, NOW.1).unwrap();
    person.import_file(EVERY_KIND.as_bytes()).unwrap();
    person
}

fn table_of(name: &str) -> Export {
    Export::Table { table: name.to_owned() }
}

fn export(person: &mut Person, what: Export) -> String {
    let clock = person.clock().clone();
    let mut out = Vec::new();
    person.app().unwrap().export(&what, &mut out, &clock).unwrap_or_else(|why| panic!("{what:?}: {why}"));
    String::from_utf8(out).unwrap()
}

/// The cells of a column, by its name.
fn column(table: &str, name: &str) -> Vec<String> {
    let mut reader = csv::Reader::from_reader(table.trim_start_matches('\u{feff}').as_bytes());
    let place = reader.headers().unwrap().iter().position(|header| header == name).expect(name);
    reader.records().map(|row| row.unwrap()[place].to_owned()).collect()
}

#[test]
fn every_table_and_its_schema_have_the_same_columns() {
    let mut person = person();
    for table in Table::ALL {
        let written = export(&mut person, table_of(table.name()));
        let schema = export(&mut person, Export::TableSchema { table: table.name().to_owned() });
        let schema: serde_json::Value = serde_json::from_str(&schema).unwrap();
        let names: Vec<&str> =
            schema["fields"].as_array().unwrap().iter().map(|f| f["name"].as_str().unwrap()).collect();
        let header = written.trim_start_matches('\u{feff}').lines().next().unwrap();
        assert_eq!(header, names.join(","), "{}", table.name());
    }
}

// RFC 4180: lines end in CRLF; a cell with a comma, a quote or a line break is quoted.
#[test]
fn a_table_is_written_as_rfc_4180_has_it() {
    let sessions = export(&mut person(), table_of("sessions"));
    assert!(sessions.ends_with("\r\n"));
    assert!(sessions.contains("\"'=1+1\r\nand \"\"more\"\", ünïcode 漢字 🍼\"\r\n"), "{sessions}");
}

#[test]
fn what_is_not_known_is_an_empty_cell_and_the_one_beside_it_says_why() {
    let sessions = export(&mut person(), table_of("sessions"));
    let ids = column(&sessions, "id");
    assert_eq!(ids, ["s1", "s2", "s3", "s4", "s5", "s6", "s7", "s8"], "what was taken out is not in it");
    let of = |name: &str| column(&sessions, name);
    assert_eq!(of("amount_left_ml"), ["62.5", "", "", "", "", "", "", ""]);
    assert_eq!(of("amount_left_said"), ["known", "", "later", "", "", "", "", ""]);
    assert_eq!(of("amount_right_ml"), ["", "", "", "0", "", "", "", ""]);
    assert_eq!(of("amount_right_said"), ["unknown", "", "", "known", "", "", "", ""]);
    assert_eq!(of("amount_together_ml")[1], "73.9338");
    assert_eq!(of("lasted_min")[0], "21.5042");
    assert_eq!(of("pain_highest"), ["6", "10", "", "", "", "", "", ""]);
    assert_eq!((of("level_letdown")[0].as_str(), of("level_expression")[0].as_str()), ("3", "4"));
    assert_eq!(of("started")[0], "2026-08-10T07:00:00.000+02:00");
}

#[test]
fn text_that_a_spreadsheet_could_run_is_made_harmless_and_figures_are_not_touched() {
    let mut person = person();
    let names = |person: &mut Person, table: &str| column(&export(person, table_of(table)), "name");
    assert_eq!(names(&mut person, "children"), ["'=Siskin", "'-Wren", ""]);
    assert_eq!(names(&mut person, "pumps"), ["'+Marl", ""]);
    assert_eq!(names(&mut person, "flanges"), ["'\ttab"]);
    assert_eq!(column(&export(&mut person, table_of("questions")), "question"), ["'@what about the night?"]);
    person
        .import_file(br#"{"fact":"check","id":"deep","at":{"at":"2026-08-03T10:00:00+02:00","zone":"Europe/Berlin"},"altitude":{"value":-410,"unit":"m"}}"#)
        .unwrap();
    assert_eq!(column(&export(&mut person, table_of("checks")), "altitude_m")[2], "-410");
}

#[test]
fn what_was_left_out_is_left_out_of_every_file() {
    let mut person = person();
    let whole = export(&mut person, table_of("sessions"));
    person.send(Event::LeaveOut { part: SharePart::Comfort.name().to_owned(), out: true }).unwrap();
    let without = export(&mut person, table_of("sessions"));
    for name in ["pain_highest", "pain_left_letdown", "level_expression", "vacuum_letdown_mmhg", "turned_down"] {
        assert!(whole.contains(name) && !without.contains(name), "{name}");
    }
    assert_eq!(export(&mut person, table_of("marks")).lines().count(), 1, "the marks are pain and settings");
    let pains = export(&mut person, Export::HealthRecord).matches("72514-3").count();
    assert_eq!(pains, 1, "what is left is a sign of the body, which is another part");
    for part in SharePart::ALL {
        person.send(Event::LeaveOut { part: part.name().to_owned(), out: true }).unwrap();
    }
    for table in Table::ALL {
        let written = export(&mut person, table_of(table.name()));
        assert_eq!(written.lines().count(), 1, "{}: {written}", table.name());
    }
    person.press("undo").unwrap();
}

#[test]
fn the_host_is_asked_where_each_file_goes() {
    let mut person = person();
    person.send(Event::Export { what: Export::Table { table: "feeds".to_owned() } }).unwrap();
    person.send(Event::Export { what: Export::HealthRecord }).unwrap();
    let asked: Vec<(Export, &str, &str)> = person
        .effects
        .iter()
        .filter_map(|effect| match effect {
            Effect::HandOver { what, file_name, content_type } => {
                Some((what.clone(), file_name.as_str(), content_type.as_str()))
            }
            _ => None,
        })
        .collect();
    assert_eq!(
        asked,
        [
            (table_of("feeds"), "drawwell-feeds-2026-08-14.csv", "text/csv"),
            (Export::HealthRecord, "drawwell-health-record-2026-08-14.json", "application/fhir+json"),
        ]
    );
    let why = person.send(Event::Export { what: Export::Table { table: "unicorns".to_owned() } }).unwrap_err();
    assert_eq!((why.key, why.field.as_str()), ("bad-choice", "table"));
}

#[test]
fn the_page_about_files_names_every_table_and_column() {
    let page = std::fs::read_to_string(concat!(env!("CARGO_MANIFEST_DIR"), "/../docs/files.md")).unwrap();
    let mut person = person();
    for table in Table::ALL {
        assert!(page.contains(&format!("**{}**", table.name())), "{}", table.name());
        let written = export(&mut person, table_of(table.name()));
        for name in written.trim_start_matches('\u{feff}').lines().next().unwrap().split(',') {
            assert!(page.contains(&format!("`{name}`")), "{}: {name}", table.name());
        }
    }
}
