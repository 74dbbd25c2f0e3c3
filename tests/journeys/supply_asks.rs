//! What Supply asks and says by itself: an amount, a gap, a lasting drop; and
//! what else changed then.

use drawwell_core::screen::shapes::{Event, Notice, Place, Screen};
use drawwell_core::time::Span;
use drawwell_tests::person::Person;
use drawwell_tests::written::Written;
use serde_json::json;

use crate::supply::{about, before, berlin, every_three_hours, go, person, supply};

/// Steady at 720 mL a day over twenty days, but for one session.
fn but_for_one(person: &Person, number: i64, left: Option<f64>) -> Written {
    let mut written = berlin();
    for n in 0..160 {
        let ended = before(person, Span::minutes(30 + 180 * (159 - n)));
        if n != number {
            written.both(&format!("s-{n}"), ended, about(45.0, n), about(45.0, n + 3));
        } else if let Some(left) = left {
            written.both(&format!("s-{n}"), ended, left, about(45.0, n + 3));
        }
    }
    written
}

fn asked(person: &mut Person, about: &str) -> Option<Notice> {
    supply(person, 28).asks.into_iter().find(|notice| notice.key.starts_with(about))
}

#[test]
fn an_amount_mistyped_by_ten_is_asked_about_kept_and_left_out_until_it_is_said_to_be_right() {
    let mut person = person();
    let written = but_for_one(&person, 150, Some(600.0));
    person.import_file(&written.file()).unwrap();
    let record = person.record().unwrap();
    assert!(record.contains("\"value\":600.0"), "it stands in the record as it was typed");
    let told = supply(&mut person, 28);
    assert_eq!((told.headline.as_str(), told.figure.as_str()), ("Steady", "about 720 mL a day"));
    let notice = asked(&mut person, "asks-amount").unwrap();
    assert!(notice.text.contains("600 mL"), "{}", notice.text);

    go(&mut person, Place::Supply { days: 28 });
    let without = supply(&mut person, 28).weeks.bars;
    person.press("amount-is-right").unwrap();
    assert_eq!(asked(&mut person, "asks-amount"), None);
    let with = supply(&mut person, 28).weeks.bars;
    assert_ne!(with, without, "it counts now");
    let more = supply(&mut person, 28).figure;
    assert_ne!(more, "about 720 mL a day");
    person.press("undo").unwrap();
    assert!(asked(&mut person, "asks-amount").is_some());
    assert_eq!(supply(&mut person, 28).weeks.bars, without);
    assert_eq!(person.record().unwrap(), record);
}

#[test]
fn a_gap_in_which_a_session_was_not_written_down_is_asked_about_and_can_be_said_to_be_whole() {
    let mut person = person();
    let written = but_for_one(&person, 155, None);
    person.import_file(&written.file()).unwrap();
    let record = person.record().unwrap();
    let notice = asked(&mut person, "asks-missing").unwrap();
    assert!(notice.text.contains("Was there a session between"), "{}", notice.text);
    let open = supply(&mut person, 28).weeks.bars;
    go(&mut person, Place::Supply { days: 28 });
    person.press("gap-is-whole").unwrap();
    assert_eq!(asked(&mut person, "asks-missing"), None);
    let whole = supply(&mut person, 28).weeks.bars;
    let observed = |bars: &[drawwell_core::screen::shapes::ProductionBar]| bars.iter().map(|b| b.observed).sum::<f32>();
    assert!(observed(&whole) > observed(&open) + 0.2, "six hours more are observed");
    person.press("undo").unwrap();
    assert_eq!(supply(&mut person, 28).weeks.bars, open);
    assert_eq!(person.record().unwrap(), record);
}

#[test]
fn a_missed_session_is_written_down_in_the_middle_of_the_gap_and_opened() {
    let mut person = person();
    let written = but_for_one(&person, 155, None);
    person.import_file(&written.file()).unwrap();
    let record = person.record().unwrap();
    go(&mut person, Place::Supply { days: 28 });
    person.press("add-missed").unwrap();
    let id = person.opened().unwrap();
    let line = person.record().unwrap();
    let added: serde_json::Value = line
        .lines()
        .map(|l| serde_json::from_str(l).unwrap())
        .find(|l: &serde_json::Value| l["id"] == json!(id))
        .unwrap();
    // Sessions at 21:00 and 03:00; the one that is missing was at midnight.
    assert_eq!(added["started"]["at"], "2026-05-20T00:00:00.000+02:00");
    assert_eq!(asked(&mut person, "asks-missing"), None, "the gap is explained");
    person.press("undo").unwrap();
    assert_eq!(person.record().unwrap(), record);
    assert!(asked(&mut person, "asks-missing").is_some());
}

#[test]
fn an_ordinary_record_is_asked_nothing() {
    let mut person = person();
    let written = every_three_hours(&person, 20, |_, n| about(45.0, n));
    person.import_file(&written.file()).unwrap();
    assert_eq!(supply(&mut person, 28).asks, []);
}

/// Forty days of which the last nine gave 40 % less.
fn dropped(person: &mut Person) {
    let written = every_three_hours(person, 40, |day, n| about(45.0, n) * if day < 31 { 1.0 } else { 0.6 });
    person.import_file(&written.file()).unwrap();
}

fn told_first(person: &Person) -> Option<Notice> {
    person.frame().unwrap().notices.iter().find(|n| n.key == "caution").cloned()
}

#[test]
fn a_drop_that_lasts_is_said_on_the_first_screen_and_put_away_for_good() {
    let mut person = person();
    dropped(&mut person);
    go(&mut person, Place::Now);
    let notice = told_first(&person).unwrap();
    assert_eq!(notice.text, "Please let your consultant know: less milk than before");
    person.press("open-caution").unwrap();
    assert!(person.reads().unwrap().contains("less milk than usual for you"));
    person.press("caution-open-supply").unwrap();
    assert!(matches!(person.screen().unwrap(), Screen::Supply { .. }));
    go(&mut person, Place::Now);
    person.press("open-caution").unwrap();
    person.press("dealt-consultant_knows").unwrap();
    assert!(matches!(person.screen().unwrap(), Screen::Ready { .. }), "and it leads back");
    assert_eq!(told_first(&person), None);

    // The next day is as low: the same drop, and not a word of it.
    let mut written = berlin();
    for n in 1..9 {
        let ended = person.now().plus(Span::minutes(180 * n - 30));
        written.both(&format!("next-{n}"), ended, 27.0, 27.0);
    }
    person.wait(Span::hours(24)).unwrap();
    person.import_file(&written.file()).unwrap();
    go(&mut person, Place::Now);
    assert_eq!(told_first(&person), None);
    assert!(supply(&mut person, 28).asks.iter().any(|n| n.key == "supply-drop"), "in Supply it still stands");
}

#[test]
fn a_steady_supply_is_never_said_to_drop() {
    let mut person = person();
    let written = every_three_hours(&person, 40, |_, n| about(45.0, n));
    person.import_file(&written.file()).unwrap();
    go(&mut person, Place::Now);
    assert_eq!(told_first(&person), None);
}

/// As [`dropped`], with facts on the day it began, 11 May.
fn dropped_with(person: &mut Person, temperature: f64) {
    let mut written = berlin();
    let drop = before(person, Span::minutes(30 + 9 * 24 * 60));
    for n in 0..31 * 8 {
        let ended = drop.minus(Span::minutes(180 * (31 * 8 - 1 - n)));
        written.both(&format!("s-{n}"), ended, about(45.0, n), about(45.0, n));
    }
    // Seven sessions a day in place of eight, and 432 mL a day in place of 720.
    for n in 1..=9 * 7 {
        let ended = drop.plus(Span::minutes(n * 24 * 60 / 7));
        written.both(&format!("less-{n}"), ended, about(30.86, n), about(30.86, n));
    }
    let day = before(person, Span::hours(24 * 9));
    let at = written.moment(day);
    let warm = json!({ "value": temperature, "unit": "Cel", "typed": temperature.to_string(), "typed_unit": "Cel" });
    let size = json!({ "value": 21.0, "unit": "mm", "typed": "21", "typed_unit": "mm" });
    written.fact("sign", "fever", &[("at", at.clone()), ("temperature", warm)]);
    written.fact("life_event", "work", &[("at", at), ("what", json!("back_to_work"))]);
    written.fact(
        "flange",
        "narrow",
        &[("size", size), ("name", json!("The narrow one")), ("in_use_since", json!("2026-05-11"))],
    );
    person.import_file(&written.file()).unwrap();
}

#[test]
fn what_else_changed_stands_beside_a_change_and_is_never_called_a_cause() {
    let mut person = person();
    dropped_with(&mut person, 38.0);
    let told = supply(&mut person, 28);
    let change = told.changes.first().unwrap();
    assert!(change.title.contains("less"), "{}", change.title);
    assert_eq!(change.beside_label, "What else changed then. It does not show the cause:");
    let beside: Vec<&str> = change.beside.iter().map(|row| row.title.as_str()).collect();
    for expected in ["You started using The narrow one", "Fever", "Fewer sessions a day", "Back to work"] {
        assert!(beside.contains(&expected), "{expected}: {beside:?}");
    }
    go(&mut person, Place::Supply { days: 28 });
    let read = person.reads().unwrap().to_lowercase().replace("it does not show the cause", "");
    for claim in ["cause", "because", "due to", "led to", "result of"] {
        assert!(!read.contains(claim), "{claim}");
    }
    person.send(Event::Go { place: Place::Entry { id: "narrow".to_owned() } }).unwrap();
}

#[test]
fn fever_is_listed_from_the_rule_on_and_not_below_it() {
    for (temperature, listed) in [(38.0, true), (37.9, false)] {
        let mut person = person();
        dropped_with(&mut person, temperature);
        let beside = supply(&mut person, 28).changes.remove(0).beside;
        assert_eq!(beside.iter().any(|row| row.title == "Fever"), listed, "{temperature}: {beside:?}");
    }
}

#[test]
fn an_answer_to_a_short_session_after_the_gap_holds_for_the_emptying_that_both_are() {
    let mut person = person();
    let mut written = but_for_one(&person, 155, None);
    // Half an hour after the session that ended the gap comes a short one more.
    written.both("more", before(&person, Span::minutes(30 + 180 * 3 - 30)), 2.0, 2.0);
    person.import_file(&written.file()).unwrap();
    assert_eq!(asked(&mut person, "asks-missing").unwrap().key, "asks-missing-more");
    go(&mut person, Place::Supply { days: 28 });
    person.press("gap-is-whole").unwrap();
    assert_eq!(asked(&mut person, "asks-missing"), None, "it is not asked for ever");
}
