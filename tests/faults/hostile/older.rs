//! What a version before this one left: `tests/fixtures/before-trust`, made by it.

use std::path::PathBuf;

use drawwell_core::caseload::Caseload;
use drawwell_core::journal::Journal;
use drawwell_core::screen::shapes::{Clock, DeskEvent, Event, Export, Opening, Place};
use drawwell_core::time::Span;
use drawwell_tests::person::Person;
use drawwell_tests::visiting::takes;

use super::{page, NOW};

fn fixture(name: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("fixtures/before-trust").join(name)
}

fn phone() -> (Person, tempfile::TempDir) {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.drawwell");
    std::fs::copy(fixture("schema-6.drawwell"), &path).unwrap();
    (Person::with_record(&path, "2026-05-25T05:30:00+02:00", "Europe/Berlin").unwrap(), folder)
}

fn desk() -> (Caseload, Clock, tempfile::TempDir) {
    let folder = tempfile::tempdir().unwrap();
    std::fs::create_dir(folder.path().join("families")).unwrap();
    std::fs::copy(fixture("desk.drawwell"), folder.path().join("desk.drawwell")).unwrap();
    for file in std::fs::read_dir(fixture("families")).unwrap().map(Result::unwrap) {
        std::fs::copy(file.path(), folder.path().join("families").join(file.file_name())).unwrap();
    }
    let at = NOW.plus(Span::hours(2)).unix_milliseconds();
    let clock = Clock { unix_milliseconds: at, zone: "Europe/Berlin".to_owned(), offset_seconds: None };
    let opening = Opening { device: "desk".to_owned(), language: "en".to_owned(), look_around: false };
    (Caseload::open(folder.path().to_owned(), opening, &clock).unwrap(), clock, folder)
}

#[test]
fn a_file_of_the_sixth_schema_is_brought_up_to_date_and_undo_knows_what_was_done() {
    let (mut person, folder) = phone();
    assert!(person.record().unwrap().contains("Left is back."));
    let journal = Journal::open(&folder.path().join("record.drawwell"), "thumb", person.now()).unwrap().journal;
    assert_eq!(journal.device(), "thumb", "a file that was never marked is not taken for a copy");
    assert_eq!(journal.undoable().unwrap().unwrap().name, "plan-in");
    drop(journal);
    person.send(Event::Undo).unwrap();
    assert!(!person.record().unwrap().contains("\"level\":9"));
    person.send(Event::Redo).unwrap();
    assert!(person.record().unwrap().contains("\"level\":9"));
}

/// A card that was kept before words were asked about is hers once they are compared.
#[test]
fn a_card_of_before_is_compared_once_and_then_her_plans_of_before_come_in() {
    let (mut person, _folder) = phone();
    let consultant = person.only("consultant").unwrap()["id"].as_str().unwrap().to_owned();
    let waits = std::fs::read(fixture("not-taken.drawwell-plan")).unwrap();
    assert_eq!(person.import_file(&waits).unwrap_err().key, "plan-not-compared");
    assert_eq!(
        takes(&mut person, Event::Export { what: Export::SealedFor { consultant: consultant.clone() } })
            .unwrap_err()
            .key,
        "consultant-not-compared"
    );
    person.send(Event::TakeCardIn { card: std::fs::read_to_string(fixture("card.txt")).unwrap() }).unwrap();
    person.press("words-same").unwrap();
    person.import_file(&waits).unwrap();
    assert!(page(&person).contains("You are doing well."));
    let record = person.record().unwrap();
    person.import_file(&std::fs::read(fixture("taken.drawwell-plan")).unwrap()).unwrap();
    assert_eq!(person.record().unwrap(), record, "the one that is here says nothing new");
    takes(&mut person, Event::Export { what: Export::SealedFor { consultant } }).unwrap();
}

/// A desk that knew the family before files were signed: an unsigned one says what to do, and the
/// first signed one of the same key pins.
#[test]
fn a_desk_of_before_takes_the_family_s_signed_file_and_pins_its_key() {
    let (mut desk, clock, folder) = desk();
    let old = std::fs::read(fixture("shared.drawwell-family")).unwrap();
    assert_eq!(desk.import_file(&mut old.as_slice(), &clock).unwrap_err().key, "family-file-unsigned");
    let (mut person, _phone) = phone();
    person.send(Event::TakeCardIn { card: std::fs::read_to_string(fixture("card.txt")).unwrap() }).unwrap();
    person.press("words-same").unwrap();
    let consultant = person.only("consultant").unwrap()["id"].as_str().unwrap().to_owned();
    let file = takes(&mut person, Event::Export { what: Export::SealedFor { consultant } }).unwrap();
    desk.import_file(&mut file.as_slice(), &clock).unwrap();
    drop(desk);
    let journal = Journal::open(&folder.path().join("desk.drawwell"), "desk", NOW).unwrap().journal;
    let (_, case) = journal.fields_of_kind(drawwell_core::record::Kind::CaseFamily).unwrap().remove(0);
    assert!(case["signing_keys"].as_str().unwrap().starts_with("RW"));
}

/// And a plan that was sent before plans were counted is a later one when it is sent again.
#[test]
fn a_plan_that_was_sent_before_is_followed_by_its_correction() {
    let (mut desk, clock, _folder) = desk();
    let (mut person, _phone) = phone();
    person.send(Event::TakeCardIn { card: std::fs::read_to_string(fixture("card.txt")).unwrap() }).unwrap();
    person.press("words-same").unwrap();
    let plan = person.only("plan").unwrap()["id"].as_str().unwrap().trim_start_matches("plan-").to_owned();
    desk.update(Event::OnDesk { event: DeskEvent::OpenDesk { place: Place::Plan { id: plan.clone() } } }, &clock)
        .unwrap();
    let screen = desk.update(Event::AddPlanPart { plan: plan.clone(), part: "words".into() }, &clock).unwrap();
    let drawwell_core::screen::shapes::Screen::Form { form, .. } = &screen.caseload.beside else { panic!("a form") };
    let enter = Event::Enter { id: form.id.clone(), field: "words".into(), typed: "Rest.".into() };
    desk.update(enter, &clock).unwrap();
    let update = desk.update(Event::Export { what: Export::Plan { plan } }, &clock).unwrap();
    let drawwell_core::screen::shapes::Effect::HandOver { what, .. } = &update.effects[0] else { panic!("a file") };
    let mut file = Vec::new();
    desk.export(what, &mut file, &clock).unwrap();
    person.wait(Span::hours(2)).unwrap();
    person.import_file(&file).unwrap();
    assert!(page(&person).contains("Rest."), "{}", page(&person));
}
