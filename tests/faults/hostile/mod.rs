//! Files, links and cards made to harm: what each tries, and that it comes to nothing. Each
//! test is a row of the table in `docs/trust.md`.

mod clocks;
mod files;
mod keys;
mod leaves;
mod limits;
mod numbers;
mod older;
mod phones;
mod plain_files;
mod plans;
mod read_on;
mod stranger;

use drawwell_core::journal::Journal;
use drawwell_core::screen::shapes::{Event, Export, Screen};
use drawwell_core::share::sealed::card::{Card, Whose};
use drawwell_core::share::sealed::own_keys::OwnKeys;
use drawwell_core::share::sealed::{seal, signed, SealFor};
use drawwell_core::time::Instant;
use drawwell_tests::person::Person;
use drawwell_tests::visiting::{self, Desk};
use serde_json::{json, Value};

const MADE: &str = "2026-05-25T04:06:00.000+02:00";
/// The same.
const NOW: Instant = Instant::from_unix_milliseconds(1_779_674_760_000);

fn person() -> Person {
    Person::welcomed("2026-05-25T04:06:00+02:00", "Europe/Berlin").unwrap()
}

fn acquainted() -> (Person, Desk) {
    visiting::acquainted().unwrap()
}

fn card(keys: &OwnKeys, name: &str) -> Card {
    Card {
        whose: Whose::Consultant,
        name: name.to_owned(),
        sealing_key: keys.sealing_key().unwrap(),
        signing_key: keys.signing_key().unwrap(),
    }
}

/// The keys of a person's phone.
fn keys_of(person: &Person) -> OwnKeys {
    let journal = Journal::open(person.path(), "thumb", person.now()).unwrap().journal;
    OwnKeys::read(&journal.secret("opens").unwrap().unwrap(), &journal.secret("signs").unwrap().unwrap()).unwrap()
}

/// What a person's family goes by among all: anybody who was given a file knows it.
fn family_of(person: &mut Person) -> String {
    person.only("settings").unwrap()["family"].as_str().unwrap().to_owned()
}

fn change(device: &str, number: i64, subject: &str, field: &str, value: Value) -> Value {
    let stamp = NOW.unix_milliseconds() << 16;
    json!({
        "device": device, "number": number, "stamp": stamp, "subject": subject, "field": field, "value": value,
        "replaces": [],
    })
}

/// The text of a family file, made by hand; `keys` say that they are the family's.
fn text_of(family: &str, made: &str, keys: Option<&OwnKeys>, changes: &[Value]) -> String {
    let seals = OwnKeys::make().unwrap();
    let header = json!({
        "drawwell": "family", "version": 2, "family": family, "made": { "at": made, "zone": "Europe/Berlin" },
        "sealing_key": keys.unwrap_or(&seals).sealing_key().unwrap(),
        "signing_key": keys.map(|keys| keys.signing_key().unwrap()),
        "left_out": [],
    });
    let lines = std::iter::once(&header).chain(changes).map(|line| format!("{line}\n"));
    lines.collect()
}

/// The same, signed, and sealed for a key.
fn forged(family: &str, made: &str, keys: &OwnKeys, changes: &[Value], to: &str) -> Vec<u8> {
    let text = signed::sign(&text_of(family, made, Some(keys), changes), "a record", keys).unwrap();
    seal(text.as_bytes(), &SealFor::Keys(vec![to.to_owned()])).unwrap()
}

fn sealing_key_of(desk: &mut Desk) -> String {
    Card::read(&desk.caseload.own_card().unwrap()).unwrap().sealing_key
}

fn note(person: &mut Person, text: &str) {
    person.send(Event::Add { kind: "note".to_owned(), days_back: 0 }).unwrap();
    person.enter("text", text).unwrap();
}

fn plan_of(desk: &mut Desk, parts: &[(&str, &[(&str, &str)])]) -> (String, Vec<u8>) {
    let plan = desk.writes_a_plan(parts).unwrap();
    let file = desk.takes(Event::Export { what: Export::Plan { plan: plan.clone() } }).unwrap();
    (plan, file)
}

/// Everything that stands on a page of findings.
fn page(person: &Person) -> String {
    assert!(matches!(person.screen().unwrap(), Screen::Findings { .. }), "{:?}", person.screen());
    person.reads().unwrap()
}
