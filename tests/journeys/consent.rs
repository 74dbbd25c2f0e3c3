//! Nobody is counted by a network who did not say yes, and one tap takes the yes back.

use drawwell_core::gather::{consent, Record};
use drawwell_core::journal::Journal;
use drawwell_core::record::ConsentScope;
use drawwell_core::screen::shapes::{Event, Place};
use drawwell_core::time::{Span, Zone};
use drawwell_tests::person::Person;

fn person() -> Person {
    Person::welcomed("2026-05-25T14:06:00+02:00", "Europe/Berlin").unwrap()
}

/// What holds for a network that reads the file so long after.
fn holds(person: &Person, later: Span) -> Option<ConsentScope> {
    let copy = tempfile::tempdir().unwrap();
    let path = copy.path().join("copy.drawwell");
    let text = person.path();
    for ending in ["", "-wal"] {
        let mut from = text.as_os_str().to_owned();
        from.push(ending);
        let mut to = path.as_os_str().to_owned();
        to.push(ending);
        if std::path::Path::new(&from).exists() {
            std::fs::copy(from, to).unwrap();
        }
    }
    let now = person.now().plus(later);
    let journal = Journal::open(&path, "network", now).unwrap().journal;
    let record = Record::new(&journal, now, Zone::named("Europe/Berlin").unwrap()).unwrap();
    consent::holding(&record).unwrap().map(|given| given.scope)
}

#[test]
fn nobody_is_counted_who_was_not_asked() {
    let mut person = person();
    assert_eq!(holds(&person, Span::minutes(1)), None);
    person.press("place-visit").unwrap();
    assert!(person.reads().unwrap().contains("No network counts you"));
}

#[test]
fn two_questions_give_it_and_it_ends_by_itself() {
    let mut person = person();
    for key in ["place-visit", "open-consent", "scope-network", "months-3"] {
        person.press(key).unwrap();
    }
    let reads = person.reads().unwrap();
    assert!(reads.contains("To see how its clinics do"), "{reads}");
    let days = |days: i64| Span::hours(24 * days);
    assert_eq!(holds(&person, days(1)), Some(ConsentScope::Network));
    assert_eq!(holds(&person, days(92)), Some(ConsentScope::Network), "25 August is the last day");
    assert_eq!(holds(&person, days(93)), None);
}

#[test]
fn the_question_can_be_left_open() {
    let mut person = person();
    for key in ["place-visit", "open-consent", "scope-research", "skip"] {
        person.press(key).unwrap();
    }
    assert!(person.reads().unwrap().contains("No network counts you"));
    assert_eq!(holds(&person, Span::minutes(1)), None);
}

#[test]
fn one_tap_takes_it_back_and_undo_gives_it_again() {
    let mut person = person();
    for key in ["place-visit", "open-consent", "scope-research", "months-open"] {
        person.press(key).unwrap();
    }
    assert_eq!(holds(&person, Span::hours(24 * 3650)), Some(ConsentScope::Research));
    person.press("withdraw-consent").unwrap();
    assert_eq!(holds(&person, Span::minutes(1)), None);
    person.send(Event::Undo).unwrap();
    assert_eq!(holds(&person, Span::minutes(1)), Some(ConsentScope::Research));
}

/// One phone gave it while the other, which had not seen that, had withdrawn later.
#[test]
fn a_withdrawal_ends_every_yes_that_was_given_before_it() {
    let mut person = person();
    let line = |id: &str, at: &str, withdrawn: &str| {
        format!(
            r#"{{"fact":"consent","id":"{id}","at":{{"at":"2026-05-{at}T10:00:00+02:00","zone":"Europe/Berlin"}},"consent_scope":"network"{withdrawn}}}"#
        )
    };
    let gone = r#","withdrawn":{"at":"2026-05-20T10:00:00+02:00","zone":"Europe/Berlin"}"#;
    let file = [line("one", "10", gone), line("two", "12", "")].join("\n");
    person.import_file(file.as_bytes()).unwrap();
    assert_eq!(holds(&person, Span::minutes(1)), None);
    for key in ["place-visit", "open-consent", "scope-network", "months-3"] {
        person.press(key).unwrap();
    }
    assert_eq!(holds(&person, Span::minutes(1)), Some(ConsentScope::Network), "a later yes counts");
}

#[test]
fn what_is_none_of_the_answers_is_refused() {
    let mut person = person();
    let odd = |scope: &str, months| Event::GiveConsent { scope: scope.to_owned(), months };
    for event in [odd("everything", None), odd("network", Some(0)), odd("network", Some(37))] {
        assert!(person.send(event).is_err());
    }
    assert_eq!(holds(&person, Span::minutes(1)), None);
    person.show(&Place::Consent { scope: None }).unwrap();
}

/// Nobody signed the file: it says no yes for a person whose record is not empty.
#[test]
fn no_file_says_yes_for_somebody() {
    let mut person = person();
    person.import_file(b"{\"fact\":\"note\",\"id\":\"n\",\"text\":\"Mine\"}\n").unwrap();
    let yes = r#"{"fact":"consent","id":"c","at":{"at":"2026-05-10T10:00:00+02:00","zone":"Europe/Berlin"},"consent_scope":"research"}"#;
    person.import_file(yes.as_bytes()).ok();
    assert_eq!(holds(&person, Span::minutes(1)), None);
    assert!(!person.record().unwrap().contains("consent_scope"));
}
