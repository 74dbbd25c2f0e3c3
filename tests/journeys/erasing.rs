//! The record erased from the phone for good, with what remains said before.

use drawwell_core::screen::shapes::{Effect, Event, Place, Screen};
use drawwell_tests::person::Person;

#[test]
fn the_page_says_what_goes_and_what_remains_and_one_press_erases_it() {
    let mut person = Person::welcomed("2026-05-25T04:06:00+02:00", "Europe/Berlin").unwrap();
    person.import_file(b"{\"fact\":\"note\",\"id\":\"n\",\"text\":\"Marigold\"}\n").unwrap();
    let clock = person.clock().clone();
    person.app().unwrap().maintain(&clock).unwrap();
    let beside = |person: &Person| {
        let folder = std::fs::read_dir(person.path().parent().unwrap()).unwrap();
        folder.flatten().filter(|entry| entry.path().is_file()).map(|entry| entry.path()).collect::<Vec<_>>()
    };
    assert!(beside(&person).iter().any(|path| path.to_string_lossy().contains(".backup-")));
    person.press("place-visit").unwrap();
    person.press("open-family").unwrap();
    person.press("open-erasing").unwrap();
    let reads = person.reads().unwrap();
    assert!(reads.contains("One safety copy of it") && reads.contains("What your consultant has"), "{reads}");
    let update = person.app().unwrap().update(Event::EraseRecord, &clock).unwrap();
    assert!(matches!(update.screen, Screen::Welcome { .. }), "it begins anew");
    assert!(update.effects.iter().all(|effect| !matches!(effect, Effect::SetAlarm { .. })), "nothing calls any more");
    assert!(!person.record().unwrap().contains("Marigold"));
    for path in beside(&person) {
        let bytes = std::fs::read(&path).unwrap();
        assert!(!bytes.windows(8).any(|part| part == b"Marigold"), "{path:?}");
    }
    person.send(Event::Go { place: Place::Now }).unwrap();
    person.send(Event::Undo).unwrap();
    assert!(!person.record().unwrap().contains("Marigold"), "no undo brings it back");
}
