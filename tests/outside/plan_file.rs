//! A plan, taken apart as docs/plan.md says: Debian's `age`, `gunzip`, and `minisign`.

use std::io::Read;

use drawwell_core::journal::Journal;
use drawwell_core::screen::shapes::{Event, Export};
use drawwell_core::share::sealed::card::Card;
use drawwell_tests::person::Person;
use drawwell_tests::visiting::{shares, Desk};
use flate2::read::GzDecoder;

use super::run;

#[test]
fn a_plan_opens_with_age_and_minisign_checks_it() {
    let folder = tempfile::tempdir().unwrap();
    let path = |name: &str| folder.path().join(name).to_str().unwrap().to_owned();
    let mut person = Person::welcomed("2026-05-25T04:06:00+02:00", "Europe/Berlin").unwrap();
    let mut desk = Desk::beside(&person).unwrap();
    let card = desk.caseload.own_card().unwrap();
    let file = shares(&mut person, &card).unwrap();
    desk.import_file(&file).unwrap();
    let plan = desk.writes_a_plan(&[("rhythm", &[("sessions_a_day", "6")])]).unwrap();
    std::fs::write(path("plan.age"), desk.takes(Event::Export { what: Export::Plan { plan } }).unwrap()).unwrap();

    let journal = Journal::open(person.path(), "reader", person.now()).unwrap().journal;
    std::fs::write(path("family.key"), journal.secret("opens").unwrap().unwrap()).unwrap();
    let done = run("age", &["-d", "-i", &path("family.key"), "-o", &path("packed"), &path("plan.age")]);
    assert!(done.status.success(), "{}", String::from_utf8_lossy(&done.stderr));
    let mut signed = String::new();
    GzDecoder::new(std::fs::File::open(path("packed")).unwrap()).read_to_string(&mut signed).unwrap();
    let lines: Vec<&str> = signed.split_inclusive('\n').collect();
    std::fs::write(path("plan.minisig"), lines[..4].concat()).unwrap();
    std::fs::write(path("plan"), lines[4..].concat()).unwrap();
    let key = Card::read(&card).unwrap().signing_key;
    let done = run("minisign", &["-V", "-m", &path("plan"), "-P", &key]);
    assert!(done.status.success(), "{}", String::from_utf8_lossy(&done.stderr));
    assert!(lines[5].contains("\"fact\":\"plan\"") && lines[6].contains("\"sessions_a_day\":6"), "{signed}");
}
