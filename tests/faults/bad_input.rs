//! The table of bad input: each gets a trouble with kind, field and what to do,
//! and the record stays as it was, to the byte.

use drawwell_core::screen::shapes::{Event, Part, Place};
use drawwell_core::screen::words_of_trouble;
use drawwell_core::trouble::{Kind, Trouble};
use drawwell_tests::person::Person;

const RECORD: &[u8] = br#"{"fact":"pump","id":"pump-1","name":"Marl","levels":9}
{"fact":"session","id":"s","started":{"at":"2026-03-01T08:00:00+01:00","zone":"Europe/Berlin"},"ended":{"at":"2026-03-01T08:20:00+01:00","zone":"Europe/Berlin"},"method":"electric_pump","sides":"both","pump":"pump-1","marks":{"m1":{"at":"2026-03-01T08:01:00+01:00","zone":"Europe/Berlin","does":"pain"}}}
{"fact":"note","id":"n","at":{"at":"2026-03-01T09:00:00+01:00","zone":"Europe/Berlin"},"text":"hello"}
{"fact":"sign","id":"b","at":{"at":"2026-03-01T09:00:00+01:00","zone":"Europe/Berlin"}}"#;

fn person() -> Person {
    let mut person = Person::welcomed("2026-03-02T12:00:00+01:00", "Europe/Berlin").unwrap();
    person.import_file(RECORD).unwrap();
    person
}

fn enter(id: &str, field: &str, typed: &str) -> Event {
    Event::Enter { id: id.to_owned(), field: field.to_owned(), typed: typed.to_owned() }
}

#[test]
fn the_table() {
    let note = "x".repeat(5_000_000);
    let table: Vec<(&str, Event, &str, &str)> = vec![
        ("negative", enter("s", "amount_left", "-5"), "bad-range", "amount_left"),
        ("not a number", enter("s", "amount_left", "lots"), "bad-number", "amount_left"),
        ("no figure", enter("s", "amount_left", "."), "bad-number", "amount_left"),
        ("not a number, in letters", enter("s", "amount_left", "NaN"), "bad-number", "amount_left"),
        ("4,000 mL", enter("s", "amount_left", "4,000"), "bad-number-ambiguous", "amount_left"),
        ("4000 mL", enter("s", "amount_left", "4000"), "bad-range", "amount_left"),
        ("2000.1 mL", enter("s", "amount_left", "2000.1"), "bad-range", "amount_left"),
        ("1.000.000", enter("s", "amount_left", "1.000.000"), "bad-number-ambiguous", "amount_left"),
        ("a vacuum for an amount", enter("s", "amount_left", "60 mmHg"), "bad-unit", "amount_left"),
        ("ends on another day", enter("s", "ended/date", "2026-02-28"), "bad-ends-before", "ended"),
        ("lasts 30 h", enter("s", "ended/date", "2026-03-02"), "bad-too-long", "ended"),
        ("lies in the future", enter("s", "started/date", "2026-03-03"), "bad-future", "started"),
        ("a date that is none", enter("s", "started/date", "2026-02-30"), "bad-date", "started"),
        ("a time that is none", enter("s", "started", "25:00"), "bad-time", "started"),
        ("a time in words", enter("s", "started", "noon"), "bad-time", "started"),
        ("pain 11", enter("s", "pain_left_letdown", "11"), "bad-range", "pain_left_letdown"),
        ("pain -1", enter("s", "pain_left_letdown", "-1"), "bad-range", "pain_left_letdown"),
        ("pain 3.5", enter("s", "pain_left_letdown", "3.5"), "bad-range", "pain_left_letdown"),
        ("level beyond the pump's", enter("s", "level_expression", "10"), "bad-level", "level_expression"),
        ("unknown side", enter("s", "sides", "middle"), "bad-choice", "sides"),
        ("unknown side of a mark", enter("s", "marks/m1/side", "middle"), "bad-choice", "marks/m1"),
        ("unknown method", enter("s", "method", "steam"), "bad-choice", "method"),
        ("unknown field", enter("s", "colour", "blue"), "bad-field", "colour"),
        ("unknown mark", enter("s", "marks/zz", "8:05"), "bad-mark", "marks/zz"),
        ("a 5 MB note", enter("n", "text", &note), "bad-text-long", "text"),
        ("46 degrees", enter("b", "temperature", "46"), "bad-range", "temperature"),
        ("98.6 in Celsius", enter("b", "temperature", "98.6"), "bad-range", "temperature"),
        ("no such zone", enter("settings", "zone", "Mars/Olympus"), "bad-zone", "zone"),
        ("a day that begins at 13", enter("settings", "day_start", "13"), "bad-range", "day_start"),
        ("a start cleared", Event::Clear { id: "s".into(), field: "started".into() }, "bad-clear", "started"),
        ("an unknown record", enter("nobody", "text", "hi"), "trouble-no-such-record", ""),
        ("an unknown kind", Event::Add { kind: "unicorn".into(), days_back: 0 }, "bad-choice", "kind"),
        ("settings taken out", Event::Remove { id: "settings".into() }, "bad-field", ""),
        ("finish with none running", Event::Finish, "no-session-running", ""),
        ("pain with none running", Event::Pain { mark: "marks/m1".into(), score: 3 }, "no-session-running", ""),
        (
            "an end before the start",
            Event::FinishAt { session: "s".into(), unix_milliseconds: 0 },
            "bad-ends-before",
            "ended",
        ),
        (
            "a set-up that is none",
            Event::SetUp { field: "next_method".into(), value: "steam".into() },
            "bad-choice",
            "next_method",
        ),
        ("a set-up of another field", Event::SetUp { field: "hand".into(), value: "left".into() }, "bad-field", "hand"),
        ("an amount of no session", drawn("x", "60", "mL"), "trouble-no-such-record", ""),
        ("an amount that is no number", drawn("s", "much", "mL"), "bad-number", "amount_left"),
        ("an amount in no unit", drawn("s", "60", "cup"), "bad-unit", "amount_left"),
        ("an amount that no column holds", drawn("s", "2000.5", "mL"), "bad-range", "amount_left"),
        (
            "a caution dealt with by nobody known",
            Event::CautionDealt { key: "shivering".into(), how: "magic".into() },
            "bad-choice",
            "dealt_how",
        ),
        (
            "a caution that does not stand",
            Event::SignsAgain { key: "shivering".into(), still: true },
            "trouble-no-such-record",
            "",
        ),
        ("a word of no kind", Event::SinceBefore { word: "fine".into() }, "bad-choice", "since_before"),
        ("a call where no number was set", Event::Call { which: "today_call".into() }, "bad-phone", "today_call"),
        ("a call of what is no number", Event::Call { which: "sheet_name".into() }, "bad-field", "sheet_name"),
        ("a place that is not there", Event::Go { place: Place::Entry { id: "nobody".into() } }, "", ""),
    ];
    let mut person = person();
    let before = person.record().unwrap();
    for (what, event, key, field) in table {
        let answer = person.send(event);
        if key.is_empty() {
            assert!(answer.is_ok(), "{what}: the place before is shown instead");
        } else {
            let trouble = answer.unwrap_err();
            assert_eq!((trouble.key, trouble.field.as_str()), (key, field), "{what}");
            told(&person, what, &trouble);
        }
        assert_eq!(person.record().unwrap(), before, "{what}: the record is as it was");
    }
}

/// The words name the field in the person's language, say what to do, and hold
/// nothing personal.
fn told(_: &Person, what: &str, trouble: &Trouble) {
    let texts = drawwell_core::text::Texts::new("en");
    let (says, does) = words_of_trouble(&texts, trouble);
    for sentence in [&says, &does] {
        assert!(!sentence.contains(['\u{27e8}', '{']), "{what}: {sentence}");
        // The words of a choice are told as a file would write them.
        assert!(trouble.key == "bad-choice" || !sentence.contains('_'), "{what}: {sentence}");
        assert!(sentence.ends_with('.') || sentence.ends_with('?'), "{what}: {sentence}");
        assert!(sentence.len() < 200, "{what}: {sentence}");
        assert!(!sentence.contains("hello") && !sentence.contains("Marl"), "{what}: {sentence}");
    }
    assert!(matches!(trouble.kind, Kind::BadInput | Kind::Missing), "{what}");
}

/// What is drawn as a reading of the left column.
fn drawn(session: &str, typed: &str, unit: &str) -> Event {
    Event::DrawAmount { session: session.into(), part: Part::Left, typed: typed.into(), unit: unit.into() }
}

/// RFC 3966, 5.1.1: figures, `*`, `#`, a leading plus, and what stands between for the eye.
#[test]
fn a_number_to_call_takes_what_a_dialler_takes() {
    let mut person = person();
    for (typed, taken) in [
        ("112", true),
        ("+49 (30) 555-01.23", true),
        ("*31#0305550123", true),
        ("1", false),
        ("call me", false),
        ("112;ext=1", false),
        ("tel:112", false),
        ("1\u{0661}2", false),
        ("12345678901234567890123456789012345678901", false),
    ] {
        let event = Event::Enter { id: "settings".into(), field: "emergency_call".into(), typed: typed.into() };
        let answer = person.send(event);
        assert_eq!(answer.is_ok(), taken, "{typed}");
        if let Err(trouble) = answer {
            assert_eq!((trouble.key, trouble.field.as_str()), ("bad-phone", "emergency_call"), "{typed}");
            told(&person, typed, &trouble);
        }
    }
}

#[test]
fn the_bounds_themselves_are_taken() {
    let mut person = person();
    for (id, field, typed) in [
        ("s", "amount_left", "0"),
        ("s", "amount_left", "2000"),
        ("s", "pain_left_letdown", "0"),
        ("s", "pain_left_letdown", "10"),
        ("s", "level_expression", "9"),
        ("b", "temperature", "45"),
        ("settings", "day_start", "12"),
        ("n", "text", &"x".repeat(4000)),
    ] {
        person.send(enter(id, field, typed)).unwrap_or_else(|t| panic!("{field} {typed}: {t}"));
    }
}
