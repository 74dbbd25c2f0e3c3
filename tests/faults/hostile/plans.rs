//! Plans: a later one takes the place of an earlier, and none is dropped in silence.

use drawwell_core::screen::shapes::{DeskEvent, Event, Export, Place};
use drawwell_core::share::sealed::{open, own_keys::OwnKeys, signed, OpenWith};
use drawwell_core::time::Span;
use drawwell_tests::person::Person;
use drawwell_tests::visiting::{takes_card, Desk};

use super::{acquainted, family_of, keys_of, page, plan_of};

type Parts<'a> = &'a [(&'a str, &'a [(&'a str, &'a str)])];
const NINE: Parts<'_> =
    &[("setting", &[("pump_name", "Heron"), ("level", "9"), ("use_or_try", "use")]), ("aim", &[("aim", "600")])];

/// Sets the level of the plan's setting on the desk, and sends it again.
fn corrected(desk: &mut Desk, plan: &str, level: &str) -> Vec<u8> {
    let screen =
        desk.send(Event::OnDesk { event: DeskEvent::OpenDesk { place: Place::Plan { id: plan.to_owned() } } }).unwrap();
    let open = drawwell_tests::person::offered(&screen.beside, &part(&screen.beside)).unwrap();
    let Event::Go { place: Place::Entry { id } } = open.event else { panic!("{open:?}") };
    desk.clock.unix_milliseconds += 60_000;
    desk.send(Event::Enter { id, field: "level".into(), typed: level.into() }).unwrap();
    desk.takes(Event::Export { what: Export::Plan { plan: plan.to_owned() } }).unwrap()
}

/// The key of the first part's row.
fn part(screen: &drawwell_core::screen::shapes::Screen) -> String {
    let drawwell_core::screen::shapes::Screen::Findings { findings, .. } = screen else { panic!("{screen:?}") };
    findings.sections.iter().flat_map(|s| &s.rows).next().unwrap().open.as_ref().unwrap().key.clone()
}

fn waits(person: &mut Person) {
    person.wait(Span::minutes(5)).unwrap();
}

/// Seen: level 9 corrected to 4 and sent again; the phone kept 9 and said nothing.
#[test]
fn a_corrected_plan_takes_the_place_of_what_was_not_answered() {
    let (mut person, mut desk) = acquainted();
    let (plan, file) = plan_of(&mut desk, NINE);
    person.import_file(&file).unwrap();
    assert!(page(&person).contains("level 9"));
    waits(&mut person);
    person.import_file(&corrected(&mut desk, &plan, "4")).unwrap();
    assert!(page(&person).contains("level 4") && !page(&person).contains("level 9"));
    assert_eq!(person.import_file(&file).unwrap_err().key, "plan-older");
    person.send(Event::Undo).unwrap();
    assert!(page(&person).contains("level 9"), "one act, which undo takes back");
}

#[test]
fn what_was_answered_and_is_another_now_is_asked_again_beside_what_it_was() {
    let (mut person, mut desk) = acquainted();
    let (plan, file) = plan_of(&mut desk, NINE);
    person.import_file(&file).unwrap();
    person.press("plan-accept-all").unwrap();
    waits(&mut person);
    person.import_file(&corrected(&mut desk, &plan, "4")).unwrap();
    let said = page(&person);
    assert!(said.contains("You had accepted: Heron \u{b7} level 9") && said.contains("Heron \u{b7} level 4"), "{said}");
    assert_eq!(said.matches("You accepted this.").count(), 1, "the aim stays answered: {said}");
    person.press("place-now").unwrap();
    person.press("open-plan").unwrap();
}

/// Seen: a plan dated 2200 locked out every later one.
#[test]
fn a_plan_dated_more_than_a_day_ahead_is_refused_and_one_that_is_here_locks_nothing_out() {
    for (ahead, refused) in [(Span::hours(24), false), (Span::seconds(24 * 3600 + 1), true)] {
        let (mut person, mut desk) = acquainted();
        desk.clock.unix_milliseconds += ahead.in_milliseconds();
        let (_, file) = plan_of(&mut desk, NINE);
        assert_eq!(person.import_file(&file).err().map(|why| why.key), refused.then_some("plan-ahead"));
    }
    let (mut person, mut desk) = acquainted();
    let century = Span::hours(24 * 365 * 174);
    let now = person.now();
    desk.clock.unix_milliseconds += century.in_milliseconds();
    let (_, file) = plan_of(&mut desk, NINE);
    person.wait(century).unwrap();
    person.import_file(&file).unwrap();
    person.wait(Span::milliseconds(now.since(person.now()).in_milliseconds())).unwrap();
    desk.clock = person.clock().clone();
    let (_, file) = plan_of(&mut desk, NINE);
    person.import_file(&file).unwrap();
}

#[test]
fn the_name_shown_is_the_card_s_and_not_the_plan_s() {
    let (mut person, mut desk) = acquainted();
    let consultant = person.only("consultant").unwrap()["id"].as_str().unwrap().to_owned();
    person.send(Event::Enter { id: consultant, field: "name".into(), typed: "Ada Marsh".into() }).unwrap();
    desk.send(Event::OnDesk { event: DeskEvent::OpenDesk { place: Place::Desk } }).unwrap();
    desk.send(Event::Enter { id: "settings".into(), field: "sheet_name".into(), typed: "Your midwife".into() })
        .unwrap();
    let (_, file) = plan_of(&mut desk, NINE);
    person.import_file(&file).unwrap();
    let said = page(&person);
    assert!(said.contains("A plan from Ada Marsh") && !said.contains("Your midwife"), "{said}");
}

#[test]
fn one_number_with_two_contents_is_told_and_never_known() {
    let (mut person, mut desk) = acquainted();
    let (_, file) = plan_of(&mut desk, NINE);
    person.import_file(&file).unwrap();
    let record = person.record().unwrap();
    let plain = open(&file, &OpenWith::Keys(vec![keys_of(&person).opens().to_owned()])).unwrap();
    let text = String::from_utf8(plain).unwrap();
    let text: String = text.lines().skip(4).map(|line| format!("{line}\n")).collect();
    let hers = desk_keys(&desk);
    let again = signed::sign(&text.replace("\"level\":9", "\"level\":4"), "a plan", &hers).unwrap();
    assert_eq!(person.import_file(again.as_bytes()).unwrap_err().key, "plan-other-content");
    assert_eq!(person.record().unwrap(), record);
}

/// Another consultant of the family's does not write over the plan of the first.
#[test]
fn a_plan_is_only_followed_by_one_of_the_same_key() {
    let (mut person, mut desk) = acquainted();
    let (_, file) = plan_of(&mut desk, NINE);
    person.import_file(&file).unwrap();
    let other = OwnKeys::make().unwrap();
    takes_card(&mut person, &super::card(&other, "Pell").write()).unwrap();
    let plain = open(&file, &OpenWith::Keys(vec![keys_of(&person).opens().to_owned()])).unwrap();
    let text: String = String::from_utf8(plain).unwrap().lines().skip(4).map(|line| format!("{line}\n")).collect();
    let text = text.replace("\"revision\":1", "\"revision\":2");
    assert!(text.contains(&family_of(&mut person)));
    let theirs = signed::sign(&text, "a plan", &other).unwrap();
    assert_eq!(person.import_file(theirs.as_bytes()).unwrap_err().key, "plan-other-content");
}

fn desk_keys(desk: &Desk) -> OwnKeys {
    let path = desk.folder().join("desk.drawwell");
    let now = drawwell_core::time::Instant::from_unix_milliseconds(desk.clock.unix_milliseconds);
    let journal = drawwell_core::journal::Journal::open(&path, "desk", now).unwrap().journal;
    OwnKeys::read(&journal.secret("opens").unwrap().unwrap(), &journal.secret("signs").unwrap().unwrap()).unwrap()
}
