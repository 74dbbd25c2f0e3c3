//! Signs in two taps, the one calm line, what it opens to, dealt with and back again.

use drawwell_core::screen::shapes::{Event, FindingsScreen, Notice, Place, Screen, Tone};
use drawwell_core::time::Span;
use drawwell_tests::person::Person;

fn person() -> Person {
    let mut person = Person::welcomed("2026-05-25T04:06:00+02:00", "Europe/Berlin").unwrap();
    person.press("place-now").unwrap();
    person
}

fn line(person: &mut Person, place: Place) -> Option<Notice> {
    let screen = person.show(&place).unwrap();
    screen.frame().notices.iter().find(|n| n.key == "caution").cloned()
}

fn page(person: &Person) -> FindingsScreen {
    let Screen::Findings { findings, .. } = person.screen().unwrap() else { panic!("findings: {:?}", person.screen()) };
    findings.clone()
}

/// Begins a session in which pain rises.
fn begins_and_hurts(person: &mut Person) {
    person.press("start").unwrap();
    for score in [2, 5] {
        person.press("mark-hurts").unwrap();
        person.press(&format!("pain-{score}")).unwrap();
        person.wait(Span::minutes(3)).unwrap();
    }
}

/// From the first screen, two taps put a sign on disk.
fn shivers(person: &mut Person) {
    person.send(Event::Go { place: Place::Now }).unwrap();
    person.press("add-sign").unwrap();
    person.press("shivering-yes").unwrap();
}

#[test]
fn two_taps_write_a_sign_down_and_one_calm_line_stands_on_every_screen() {
    let mut person = person();
    assert_eq!(line(&mut person, Place::Now), None);
    shivers(&mut person);
    for place in [Place::Now, Place::Tonight, Place::Supply { days: 28 }, Place::Kit, Place::Visit, Place::Family] {
        let line = line(&mut person, place.clone()).unwrap_or_else(|| panic!("{place:?}"));
        assert_eq!(
            (line.tone, line.text.as_str()),
            (Tone::Caution, "Please call your midwife or doctor today: shivering")
        );
    }
    assert_eq!(person.only("sign").unwrap()["shivering"], true);
}

#[test]
fn it_opens_to_what_was_seen_what_to_do_and_where_that_comes_from() {
    let mut person = person();
    person.press("add-sign").unwrap();
    person.enter("temperature", "38.7").unwrap();
    person.press("redness-right").unwrap();
    person.press("open-caution").unwrap();
    let page = page(&person);
    assert_eq!(page.headline, "Please call your midwife or doctor today");
    assert!(page.lines.iter().any(|l| l == "This is not a diagnosis."));
    assert!(page.lines[0].contains("is disputed"), "{}", page.lines[0]);
    let seen = page.sections.iter().find(|s| s.key == "seen").unwrap();
    assert_eq!(seen.lines, ["38.7 °C, today at 04:06", "Redness, right, today at 04:06"]);
    let sources = page.sections.iter().find(|s| s.key == "sources").unwrap();
    assert!(
        sources.lines[0].contains("Clinical Protocol 4 (2014)")
            && sources.lines[1] == "Not yet reviewed by a clinician."
    );
    assert!(
        sources.rows[0].detail.starts_with("38.5 °C. Academy of Breastfeeding Medicine"),
        "{}",
        sources.rows[0].detail
    );
}

#[test]
fn what_is_dealt_with_goes_and_a_new_fact_brings_it_back() {
    let mut person = person();
    shivers(&mut person);
    person.press("open-caution").unwrap();
    person.press("caution-dealt").unwrap();
    assert_eq!(line(&mut person, Place::Now), None);
    person.press("undo").unwrap();
    assert!(line(&mut person, Place::Now).is_some(), "undo brings it back");
    person.press("redo").unwrap();
    assert_eq!(line(&mut person, Place::Now), None);
    person.wait(Span::hours(3)).unwrap();
    shivers(&mut person);
    assert!(line(&mut person, Place::Now).is_some());
    let mut other = person;
    other.wait(Span::hours(73)).unwrap();
    assert_eq!(line(&mut other, Place::Now), None, "what was written down stands for three days");
}

#[test]
fn the_most_urgent_is_said_and_how_many_more() {
    let mut person = person();
    shivers(&mut person);
    person.press("fainting-yes").unwrap();
    let line = line(&mut person, Place::Now).unwrap();
    assert_eq!(line.text, "Please get emergency care now: a sign that cannot wait. And 1 more.");
    person.press("open-caution").unwrap();
    let Screen::List { list, .. } = person.screen().unwrap() else { panic!("{:?}", person.screen()) };
    let rows: Vec<&str> = list.groups[0].rows.iter().map(|r| r.title.as_str()).collect();
    assert_eq!(rows, ["A sign that cannot wait", "Shivering"]);
    person.press("open-shivering").unwrap();
    assert_eq!(page(&person).caption, "Shivering");
}

#[test]
fn a_caution_that_no_longer_stands_says_so_and_one_unknown_is_refused() {
    let mut person = person();
    let Screen::Findings { findings, .. } = person.show(&Place::Caution { key: "shivering".to_owned() }).unwrap()
    else {
        panic!("findings")
    };
    assert_eq!(findings.headline, "This one no longer stands");
    let refused = person.send(Event::CautionDealt { key: "shivering".to_owned() }).unwrap_err();
    assert_eq!(refused.key, "trouble-no-such-record");
}

/// The consultant may set a limit anew.
#[test]
fn a_limit_that_was_set_anew_is_the_one_that_counts() {
    let mut person = person();
    person.press("add-sign").unwrap();
    person.enter("temperature", "38.2").unwrap();
    person.press("swelling-left").unwrap();
    assert_eq!(line(&mut person, Place::Now), None);
    let set = Event::Enter { id: "rules".to_owned(), field: "breast_fever".to_owned(), typed: "38".to_owned() };
    person.send(set).unwrap();
    assert!(line(&mut person, Place::Now).is_some());
    person.send(Event::Go { place: Place::Caution { key: "breast-fever".to_owned() } }).unwrap();
    let sources = page(&person).sections.into_iter().find(|s| s.key == "sources").unwrap();
    assert!(sources.rows[0].detail.starts_with("38 °C, as your consultant set it."), "{}", sources.rows[0].detail);
}

#[test]
fn pain_that_rises_is_told_and_never_with_more_vacuum() {
    let mut person = person();
    begins_and_hurts(&mut person);
    assert_eq!(line(&mut person, Place::Kit), None, "not while it runs");
    person.press("finish").unwrap();
    assert_eq!(
        line(&mut person, Place::Kit).unwrap().text,
        "Please tell your consultant: pain that rises during a session"
    );
    person.send(Event::Go { place: Place::Caution { key: "pain-rises".to_owned() } }).unwrap();
    let page = page(&person);
    assert!(page.lines[0].starts_with("Turn the vacuum down"));
    assert!(page.sections[0].lines[0].ends_with("pain went from 2 to 5 of 10"), "{}", page.sections[0].lines[0]);
}

/// Ten sessions a day for three days lie between; those said nothing of pain.
#[test]
fn pain_is_not_forgotten_behind_sessions_without_any() {
    let mut person = person();
    begins_and_hurts(&mut person);
    person.press("finish").unwrap();
    person.press("amounts-later").unwrap();
    for _ in 0..29 {
        person.wait(Span::minutes(138)).unwrap();
        person.press("start").unwrap();
        person.press("mark-letdown").unwrap();
        person.press("finish").unwrap();
        person.press("amounts-later").unwrap();
    }
    assert!(line(&mut person, Place::Kit).is_some_and(|line| line.text.contains("pain that rises")));
    person.wait(Span::hours(6)).unwrap();
    assert_eq!(line(&mut person, Place::Kit), None, "72 hours are over");
}

/// What cannot wait stands first and all at once; when it was is right as it stands, so it comes late.
#[test]
fn the_form_of_a_sign_begins_with_what_is_only_there_or_not() {
    let mut person = person();
    person.press("add-sign").unwrap();
    let Screen::Form { form, .. } = person.screen().unwrap() else { panic!("{:?}", person.screen()) };
    let groups: Vec<_> = form.groups.iter().map(|group| group.key.as_str()).collect();
    assert_eq!(groups, ["at-once", "body", "breast", "when", "note"]);
    let [row] = form.groups[0].rows.as_slice() else { panic!("{:?}", form.groups[0].rows) };
    assert_eq!(row.options.len(), 7);
    assert!(row.options.iter().all(|option| !option.chosen));
    person.press("shivering-yes").unwrap();
    person.press("fainting-yes").unwrap();
    let Screen::Form { form, .. } = person.screen().unwrap() else { panic!("{:?}", person.screen()) };
    assert_eq!(form.groups[0].rows[0].value, "Shivering, Fainting");
    person.press("shivering-yes").unwrap();
    assert_eq!(person.only("sign").unwrap().get("shivering"), None, "a second tap takes it back");
}
