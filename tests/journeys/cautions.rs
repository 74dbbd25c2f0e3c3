//! Signs in two taps, the one calm line, what it opens to, dealt with and back again.

use drawwell_core::screen::shapes::{Effect, Event, FindingsScreen, Notice, Place, Screen, Tone};
use drawwell_core::time::Span;
use drawwell_tests::person::Person;
use serde_json::{json, Value};

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

/// Every fact of a kind, as the exchange form has it, in its order.
fn facts(person: &mut Person, kind: &str) -> Vec<Value> {
    let record = person.record().unwrap();
    let lines = record.lines().map(|line| serde_json::from_str::<Value>(line).unwrap());
    lines.filter(|fact| fact["fact"] == kind).collect()
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
    for said in [
        "Someone should examine you today.",
        "If nobody answers today, call the out-of-hours service or go to an emergency department.",
        "Keep to your usual schedule until you have asked.",
        "Your milk can usually still be given. On a neonatal unit, ask first.",
    ] {
        assert!(page.lines.iter().any(|line| line == said), "{said}: {:?}", page.lines);
    }
    let seen = page.sections.iter().find(|s| s.key == "seen").unwrap();
    assert_eq!(seen.lines, ["38.7 °C, today at 04:06", "Redness, right, today at 04:06"]);
    let sources = page.sections.iter().find(|s| s.key == "sources").unwrap();
    assert!(
        sources.lines[0].contains("Clinical Protocol 4, revised 2014; replaced by Clinical Protocol 36 (2022)")
            && sources.lines[1] == "Not yet reviewed by a clinician."
    );
    assert!(
        sources.rows[0].detail.starts_with("38.5 °C. Academy of Breastfeeding Medicine"),
        "{}",
        sources.rows[0].detail
    );
    // What was written down from memory says so on its own line.
    let milk = sources.rows.iter().find(|row| row.title.starts_with("Your milk")).unwrap();
    assert!(milk.detail.contains("from memory"), "{}", milk.detail);
}

#[test]
fn what_is_dealt_with_goes_and_a_new_fact_brings_it_back() {
    let mut person = person();
    shivers(&mut person);
    person.press("open-caution").unwrap();
    person.press("dealt-advice_by_phone").unwrap();
    assert_eq!(line(&mut person, Place::Now), None);
    person.send(Event::Go { place: Place::Cautions }).unwrap();
    let read = person.reads().unwrap();
    assert!(read.contains("Dealt with today at 04:06. I got advice by phone"), "{read}");
    person.press("undo").unwrap();
    assert!(line(&mut person, Place::Now).is_some(), "undo brings it back");
    person.press("redo").unwrap();
    assert_eq!(line(&mut person, Place::Now), None);
    person.wait(Span::hours(3)).unwrap();
    shivers(&mut person);
    assert!(line(&mut person, Place::Now).is_some());
}

/// Nothing urgent lapses in silence: after three days it asks what came of it, and one tap says.
#[test]
fn what_nobody_answered_asks_what_came_of_it_until_somebody_says() {
    for (answer, written) in [("signs-gone", json!(false)), ("signs-still", json!(true))] {
        let mut person = person();
        shivers(&mut person);
        person.wait(Span::hours(73)).unwrap();
        let text = line(&mut person, Place::Now).unwrap().text;
        assert_eq!(text, "Still open since 25 May at 04:06: shivering. What happened?");
        person.wait(Span::hours(20 * 24)).unwrap();
        assert!(line(&mut person, Place::Supply { days: 28 }).is_some(), "nor does it three weeks later");
        person.send(Event::Go { place: Place::Caution { key: "shivering".to_owned() } }).unwrap();
        assert_eq!(page(&person).headline, "Still open");
        person.press(answer).unwrap();
        let signs: Vec<Value> = facts(&mut person, "sign");
        assert_eq!(signs.last().unwrap()["shivering"], written, "{answer} is a fact of its own");
        let after = line(&mut person, Place::Now).map(|line| line.text);
        let asks = (answer == "signs-still").then(|| "Please call your midwife or doctor today: shivering".to_owned());
        assert_eq!(after, asks);
    }
}

/// One lump and nothing since is asked about, and only what was answered is told.
#[test]
fn a_sign_and_nothing_since_asks_better_same_or_worse() {
    let mut person = person();
    person.press("add-sign").unwrap();
    person.press("lump-left").unwrap();
    person.wait(Span::hours(25)).unwrap();
    person.send(Event::Go { place: Place::Now }).unwrap();
    let asked = person.frame().unwrap().notices.iter().find(|n| n.key == "asks-since-before").cloned().unwrap();
    assert_eq!((asked.tone, asked.text.as_str()), (Tone::Asks, "You logged: lump or blocked duct. How is it now?"));
    assert_eq!(line(&mut person, Place::Now), None, "it is no caution");
    person.press("since-before-same").unwrap();
    let told = line(&mut person, Place::Now).unwrap().text;
    assert_eq!(told, "Please call your midwife or doctor today: lump or blocked duct, and not better");
    person.press("undo").unwrap();
    person.press("since-before-better").unwrap();
    assert_eq!(line(&mut person, Place::Now), None);
    assert!(person.frame().unwrap().notices.iter().all(|n| n.key != "asks-since-before"));
}

/// The caution names what was tapped, and calls with the number that the family set; the
/// dialler opens, and nothing dials by itself.
#[test]
fn it_names_what_was_tapped_and_opens_the_dialler() {
    let mut person = person();
    person.press("add-sign").unwrap();
    person.press("short_of_breath-yes").unwrap();
    assert_eq!(line(&mut person, Place::Now).unwrap().text, "Get emergency care now: short of breath");
    person.press("open-caution").unwrap();
    let until_then = page(&person).sections.into_iter().find(|section| section.key == "until-then").unwrap().lines;
    for said in ["Do not drive yourself.", "This is not a diagnosis."] {
        assert!(until_then.iter().any(|line| line == said), "{said}: {until_then:?}");
    }
    assert_eq!(page(&person).lines, ["Call emergency services now, or have someone take you there."]);
    assert!(person.find("set-number").unwrap().is_some(), "without a number it says where to set it");
    let set = Event::Enter { id: "settings".to_owned(), field: "emergency_call".to_owned(), typed: "112".to_owned() };
    person.send(set).unwrap();
    person.send(Event::Go { place: Place::Now }).unwrap();
    person.press("call-emergency-call").unwrap();
    assert!(matches!(person.effects.last(), Some(Effect::Dial { number }) if number == "112"), "{:?}", person.effects);
}

#[test]
fn the_most_urgent_is_said_and_how_many_more() {
    let mut person = person();
    shivers(&mut person);
    person.press("fainting-yes").unwrap();
    let line = line(&mut person, Place::Now).unwrap();
    assert_eq!(line.text, "Get emergency care now: fainting. And 1 more.");
    person.press("open-caution").unwrap();
    let Screen::List { list, .. } = person.screen().unwrap() else { panic!("{:?}", person.screen()) };
    let rows: Vec<&str> = list.groups[0].rows.iter().map(|r| r.title.as_str()).collect();
    assert_eq!(rows, ["Fainting", "Shivering"]);
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
    assert_eq!(findings.headline, "Nothing here now");
    let dealt = Event::CautionDealt { key: "shivering".to_owned(), how: "consultant_knows".to_owned() };
    let refused = person.send(dealt).unwrap_err();
    assert_eq!(refused.key, "trouble-no-such-record");
}

/// The consultant may set a limit anew.
#[test]
fn a_limit_that_was_set_anew_is_the_one_that_counts() {
    let mut person = person();
    person.press("add-sign").unwrap();
    person.enter("temperature", "37.8").unwrap();
    person.press("swelling-left").unwrap();
    assert_eq!(line(&mut person, Place::Now), None);
    let set = Event::Enter { id: "rules".to_owned(), field: "breast_fever".to_owned(), typed: "37.8".to_owned() };
    person.send(set).unwrap();
    assert!(line(&mut person, Place::Now).is_some());
    person.send(Event::Go { place: Place::Caution { key: "breast-fever".to_owned() } }).unwrap();
    let sources = page(&person).sections.into_iter().find(|s| s.key == "sources").unwrap();
    assert!(sources.rows[0].detail.starts_with("37.8 °C, set by your consultant."), "{}", sources.rows[0].detail);
}

#[test]
fn pain_that_rises_is_told_and_never_with_more_vacuum() {
    let mut person = person();
    begins_and_hurts(&mut person);
    assert_eq!(line(&mut person, Place::Kit), None, "not while it runs");
    person.press("finish").unwrap();
    assert_eq!(
        line(&mut person, Place::Kit).unwrap().text,
        "Please let your consultant know: pain that rises during a session"
    );
    person.send(Event::Go { place: Place::Caution { key: "pain-rises".to_owned() } }).unwrap();
    let page = page(&person);
    assert!(page.lines[0].starts_with("Turn the vacuum down"));
    assert!(page.sections[0].lines[0].ends_with("pain went from 2 to 5 out of 10"), "{}", page.sections[0].lines[0]);
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
    assert_eq!(row.options.len(), 16);
    assert!(row.options.iter().all(|option| !option.chosen));
    person.press("shivering-yes").unwrap();
    person.press("fainting-yes").unwrap();
    let Screen::Form { form, .. } = person.screen().unwrap() else { panic!("{:?}", person.screen()) };
    assert_eq!(form.groups[0].rows[0].value, "Shivering, Fainting");
    person.press("shivering-yes").unwrap();
    assert_eq!(person.only("sign").unwrap().get("shivering"), None, "a second tap takes it back");
}
