//! Files of other programs, and files of ours that are no record: refused by their name,
//! and the record stays as it was, to the byte.

use drawwell_core::screen::shapes::Export;
use drawwell_core::screen::words_of_trouble;
use drawwell_core::share::file_kind::{detect, FileKind};
use drawwell_core::share::spreadsheet::Table;
use drawwell_core::text::Texts;
use drawwell_core::trouble::Kind;
use drawwell_tests::handed_over::{health_record, EVERY_KIND, NOW, PAGE};
use drawwell_tests::person::Person;

fn person() -> Person {
    let mut person = Person::at(NOW.0, NOW.1).unwrap();
    person.import_file(EVERY_KIND.as_bytes()).unwrap();
    person
}

fn refused(person: &mut Person, what: &str, file: &[u8], key: &str) {
    let before = person.record().unwrap();
    let why = person.import_file(file).expect_err(what);
    assert_eq!((why.kind, why.key), (Kind::BadInput, key), "{what}");
    let (says, does) = words_of_trouble(&Texts::new("en"), &why);
    for sentence in [&says, &does] {
        assert!(sentence.ends_with('.') && !sentence.contains(['\u{27e8}', '{']), "{what}: {sentence}");
    }
    assert!(does.contains("Nothing was changed."), "{what}");
    assert_eq!(person.record().unwrap(), before, "{what}: the record is as it was");
}

#[test]
fn a_file_that_is_no_record_is_refused_by_its_name() {
    let mut person = person();
    let ours = health_record(EVERY_KIND.as_bytes(), &[], Some(PAGE)).unwrap();
    let elsewhere = b"{\n  \"id\": \"f001\",\n  \"resourceType\": \"Observation\",\n  \"status\": \"final\"\n}\n";
    let zeros = vec![0_u8; 4096];
    let wide: Vec<u8> = "\u{feff}Dear consultant,".encode_utf16().flat_map(u16::to_le_bytes).collect();
    let sqlite = std::fs::read(person.path()).unwrap();
    let table: Vec<(&str, &[u8], &str)> = vec![
        ("our health record", &ours, "bad-file-health-record"),
        ("a health record from elsewhere", elsewhere, "bad-file-health-record"),
        ("FHIR as XML", b"<?xml version=\"1.0\"?><Bundle xmlns=\"http://hl7.org/fhir\"/>", "bad-file-markup"),
        ("a list in JSON", b"[{\"time\": 1, \"mmHg\": 2}]", "bad-file-other-json"),
        ("another program's JSON", b"{\"version\": 3, \"feeds\": []}", "bad-file-other-json"),
        ("the visit sheet", PAGE, "bad-file-page"),
        ("a zip", b"PK\x03\x04\x14\0\0\0", "bad-file-packed"),
        ("a gzip", b"\x1f\x8b\x08\0", "bad-file-packed"),
        ("a photograph", b"\xff\xd8\xff\xe0\0\x10JFIF", "bad-file-picture"),
        ("the plan as a calendar", b"BEGIN:VCALENDAR\r\nVERSION:2.0\r\n", "bad-file-calendar"),
        ("the store itself", &sqlite, "bad-file-store"),
        ("a letter", b"Dear consultant,\nall is well.\n", "bad-file-unknown"),
        ("zeros", &zeros, "bad-file-unknown"),
        ("a letter in UTF-16", &wide, "bad-file-unknown"),
    ];
    for (what, file, key) in table {
        refused(&mut person, what, file, key);
    }
}

#[test]
fn every_table_of_ours_is_known_again_also_after_a_spreadsheet_wrote_it() {
    let mut person = person();
    let clock = person.clock().clone();
    for table in Table::ALL {
        let mut file = Vec::new();
        person.app().unwrap().export(&Export::Table { table: table.name().to_owned() }, &mut file, &clock).unwrap();
        refused(&mut person, table.name(), &file, "bad-file-own-table");
        let text = String::from_utf8(file).unwrap();
        let (header, _) = text.trim_start_matches('\u{feff}').split_once("\r\n").unwrap();
        assert_eq!(detect(text.as_bytes()), FileKind::OwnTable(*table), "{header}");
        for written in
            [header.replace(',', ";"), header.replace(',', "\t"), format!("\"{}\"", header.replace(',', "\",\""))]
        {
            assert_eq!(detect(written.as_bytes()), FileKind::OwnTable(*table), "{written}");
        }
    }
}

#[test]
fn a_trace_in_utf_16_is_still_a_trace() {
    let text: String = (0..600)
        .map(|row| format!("{:.2};{:.1}\r\n", f64::from(row) * 0.05, 90.0 - 60.0 * (f64::from(row) * 0.25).cos()))
        .collect();
    for mark in ["", "\u{feff}"] {
        let wide: Vec<u8> = format!("{mark}{text}").encode_utf16().flat_map(u16::to_le_bytes).collect();
        let mut person = person();
        person.import_file(&wide).unwrap();
        assert!(person.record().unwrap().contains("\"fact\":\"trace\""));
    }
}

#[test]
fn a_trace_and_a_record_are_none_of_these() {
    for (text, is) in [
        ("time,pressure\n0.00,-12.5\n0.01,-13.0\n", FileKind::Text),
        ("id,mmHg\n1,2\n", FileKind::Text),
        ("{\"drawwell\":\"exchange\",\"version\":1}\n", FileKind::Record),
        ("{\"fact\":\"note\",\"id\":\"n\",\"text\":\"\\\"resourceType\\\"\"}", FileKind::Record),
        ("\u{feff}{\"fact\":\"note\",\"id\":\"n\"}", FileKind::Record),
        ("", FileKind::Record),
    ] {
        assert_eq!(detect(text.as_bytes()), is, "{text}");
    }
}
