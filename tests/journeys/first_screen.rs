//! Over an empty record: begin, look around, or bring a record in.

use drawwell_core::app::App;
use drawwell_core::screen::shapes::{Effect, Event, Export, Opening, Screen};
use drawwell_tests::handed_over::EVERY_KIND;
use drawwell_tests::person::Person;

fn person() -> Person {
    Person::at("2026-03-01T02:10:00+01:00", "Europe/Berlin").unwrap()
}

#[test]
fn an_empty_record_offers_to_look_around_with_the_invented_family() {
    let mut person = person();
    assert!(matches!(person.screen().unwrap(), Screen::Welcome { .. }));
    person.press("look-around").unwrap();
    assert_eq!(person.effects, [Effect::OpenLookAround]);
    assert!(person.record().unwrap().lines().count() <= 1, "the person's own record is untouched");
}

#[test]
fn begin_is_asked_once() {
    let mut person = person();
    person.press("begin").unwrap();
    assert!(matches!(person.screen().unwrap(), Screen::Question { .. }), "questions that can be skipped");
    person.killed_and_opened().unwrap();
    assert!(matches!(person.screen().unwrap(), Screen::Ready { .. }));
    assert_eq!(person.frame().unwrap().undo, None, "beginning is nothing to undo");
}

#[test]
fn a_record_that_was_brought_in_needs_no_welcome() {
    let mut person = person();
    person.press("pick-record").unwrap();
    assert!(matches!(person.effects[0], Effect::PickFile { .. }));
    person
        .import_file(br#"{"fact":"note","id":"n","at":{"at":"2026-02-01T10:00:00+01:00","zone":"Europe/Berlin"},"text":"hello"}"#)
        .unwrap();
    person.press("place-now").unwrap();
    assert!(matches!(person.screen().unwrap(), Screen::Ready { .. }));
}

/// A file or a consultant's card that comes while somebody looks around is meant for their
/// own record: the invented one takes none, and says so.
#[test]
fn what_comes_while_somebody_looks_around_is_not_put_into_the_invented_record() {
    let person = person();
    let folder = tempfile::tempdir().unwrap();
    let opening = Opening { device: "around".to_owned(), language: "en".to_owned(), look_around: true };
    let clock = person.clock();
    let mut app = App::open(folder.path().join("around.drawwell"), opening, clock).unwrap();
    app.import_file(&mut EVERY_KIND.as_bytes(), clock).unwrap();
    let record = |app: &mut App| {
        let mut file = Vec::new();
        app.export(&Export::Record, &mut file, clock).unwrap();
        file
    };
    let before = record(&mut app);
    let card = "drawwell:consultant?name=Ada&seal=x&sign=y";
    for file in [card.as_bytes(), b"age-encryption.org/v1\n", b"time,pressure\n0,0\n", EVERY_KIND.as_bytes()] {
        let refused = app.import_file(&mut &*file, clock).unwrap_err();
        assert_eq!(refused.key, "trouble-invented", "{}", String::from_utf8_lossy(&file[..12]));
    }
    let refused = app.update(Event::TakeCardIn { card: card.to_owned() }, clock).unwrap_err();
    assert_eq!(refused.key, "trouble-invented");
    assert!(record(&mut app) == before, "it is as it was");
}

/// A first session is led by the screens themselves: a line on each, and none once there was one.
#[test]
fn the_first_session_is_led_by_the_screens() {
    let mut person = Person::welcomed("2026-03-01T02:10:00+01:00", "Europe/Berlin").unwrap();
    let leads = |person: &Person| match person.screen().unwrap() {
        Screen::Ready { ready, .. } => ready.lead.clone(),
        Screen::Running { running, .. } => running.lead.clone(),
        Screen::Amounts { amounts, .. } => amounts.lead.clone(),
        _ => panic!("the first place"),
    };
    for first in [true, false] {
        assert_eq!(leads(&person).contains("Start"), first);
        person.press("start").unwrap();
        assert_eq!(leads(&person).contains("Finish"), first);
        person.wait(drawwell_core::time::Span::minutes(10)).unwrap();
        person.press("finish").unwrap();
        assert_eq!(leads(&person).contains("water"), first);
        person.press("amounts-later").unwrap();
    }
}
