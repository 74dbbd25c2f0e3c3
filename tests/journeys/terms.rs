//! A word that is new opens its meaning where it stands: two sentences, and where they come from.

use drawwell_core::guidance::Word;
use drawwell_core::screen::shapes::{Event, Place, Screen};
use drawwell_tests::person::Person;

fn places() -> Vec<Place> {
    let pump = Place::Pump { id: "pump-heron".to_owned() };
    let days = 28;
    let supply = [Place::Supply { days }, Place::SupplyMore { days }];
    let others =
        [Place::Tonight, Place::Kit, pump, Place::Fit, Place::Day { days_back: 0 }, Place::Family, Place::Sheet];
    supply.into_iter().chain(others).collect()
}

#[test]
fn each_word_opens_its_meaning_in_two_sentences_with_its_source_and_leads_back() {
    let mut person = Person::of_the_invented_family().unwrap();
    let mut met = std::collections::BTreeSet::new();
    for place in places() {
        person.send(Event::Go { place: place.clone() }).unwrap();
        let terms = person.frame().unwrap().terms.clone();
        assert!(!terms.is_empty(), "{place:?}");
        for term in terms {
            assert!(term.label.starts_with("What is ") && term.label.ends_with('?'), "{}", term.label);
            person.press(&term.key).unwrap();
            let Screen::Findings { frame, findings } = person.screen().unwrap() else { panic!("{:?}", term.key) };
            assert_eq!(frame.title, term.label);
            assert_eq!(findings.headline.split_inclusive(". ").count(), 2, "two sentences: {}", findings.headline);
            assert!(!findings.caption.is_empty(), "{}: where that comes from", term.key);
            met.insert(term.key.clone());
            person.press("back").unwrap();
            let shown = person.frame().unwrap().terms.iter().any(|again| again.key == term.key);
            assert!(shown, "{place:?}: back to where it stood");
        }
    }
    let all = Word::ALL.map(|word| format!("term-{}", word.name()));
    assert_eq!(met, all.into_iter().collect(), "every word is met where it stands");
}

#[test]
fn a_word_that_is_none_is_refused() {
    let mut person = Person::welcomed("2026-03-02T12:00:00+01:00", "Europe/Berlin").unwrap();
    assert_eq!(person.show(&Place::Term { word: "beach".into() }).unwrap_err().key, "trouble-no-such-record");
}
