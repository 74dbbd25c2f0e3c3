//! A session costs few taps, and every one of them is on disk.

use drawwell_core::screen::shapes::{Effect, Event, Part, Screen};
use drawwell_core::time::Span;
use drawwell_tests::person::Person;
use serde_json::Value;

const NIGHT: &str = "2026-03-01T02:10:00+01:00";

fn person() -> Person {
    Person::welcomed(NIGHT, "Europe/Berlin").unwrap()
}

#[test]
fn a_plain_session_costs_two_taps() {
    let mut person = person();
    person.press("start").unwrap();
    person.wait(Span::minutes(18)).unwrap();
    person.press("finish").unwrap();
    assert_eq!(person.taps, 2);
    let session = person.only("session").unwrap();
    assert_eq!(session["started"]["at"], "2026-03-01T02:10:00.000+01:00");
    assert_eq!(session["ended"]["at"], "2026-03-01T02:28:00.000+01:00");
    assert_eq!(session["started"]["zone"], "Europe/Berlin");
    assert_eq!(session.get("amount_left"), None, "nothing said of an amount is not nought");
}

#[test]
fn one_with_phases_a_letdown_and_both_amounts_costs_at_most_eight() {
    let mut person = person();
    person.press("start").unwrap();
    person.wait(Span::seconds(80)).unwrap();
    person.press("mark-letdown").unwrap();
    person.press("mark-expression-phase").unwrap();
    person.wait(Span::minutes(14)).unwrap();
    person.press("finish").unwrap();
    let Screen::Amounts { amounts, .. } = person.screen().unwrap() else { panic!("asks for amounts") };
    assert_eq!(amounts.columns.len(), 2);
    for part in [Part::Left, Part::Right] {
        person.draws(part, 0.5).unwrap();
    }
    person.press("amounts-done").unwrap();
    assert!(person.taps <= 8, "{} taps", person.taps);
    assert!(matches!(person.screen().unwrap(), Screen::Ready { .. }));
    let session = person.only("session").unwrap();
    assert_eq!(session["amount_left"]["value"], 60.0, "half of the 120 mL a new record's column holds");
    let marks: Vec<&str> =
        session["marks"].as_object().unwrap().values().map(|m| m["does"].as_str().unwrap()).collect();
    assert_eq!(marks, ["phase", "letdown", "phase"]);
}

#[test]
fn killed_in_the_middle_it_goes_on_where_it_was() {
    let mut person = person();
    person.press("start").unwrap();
    person.press("mark-letdown").unwrap();
    person.wait(Span::seconds(754)).unwrap();
    person.killed_and_opened().unwrap();
    let Screen::Running { running, .. } = person.screen().unwrap() else { panic!("still runs") };
    assert_eq!(running.figure, "12:34", "elapsed time comes from the record");
    assert_eq!(running.strip.notches.len(), 1);
    person.press("finish").unwrap();
    assert!(person.only("session").unwrap().get("ended").is_some());
}

#[test]
fn what_was_set_last_time_on_this_pump_and_sides_is_set_again_for_each_phase() {
    let mut person = person();
    person.import_file(PUMP).unwrap();
    person.press("place-now").unwrap();
    let levels = |person: &Person| match person.screen().unwrap() {
        Screen::Running { running, .. } => running.dials.iter().map(|d| d.value.clone()).collect::<Vec<_>>(),
        _ => panic!("a session runs"),
    };
    person.press("start").unwrap();
    assert_eq!(levels(&person), ["not set", "not set"]);
    for _ in 0..3 {
        person.press("mark-stronger").unwrap();
    }
    person.press("mark-faster").unwrap();
    assert_eq!(levels(&person), ["3", "80"], "a speed never set opens at the middle of the maker's range");
    person.wait(Span::minutes(2)).unwrap();
    person.press("mark-expression-phase").unwrap();
    for _ in 0..2 {
        person.press("mark-stronger").unwrap();
    }
    person.wait(Span::minutes(10)).unwrap();
    person.press("finish").unwrap();
    person.press("amounts-later").unwrap();
    person.wait(Span::hours(3)).unwrap();
    person.press("start").unwrap();
    assert_eq!(levels(&person), ["3", "80"]);
    person.wait(Span::minutes(2)).unwrap();
    person.press("mark-expression-phase").unwrap();
    assert_eq!(levels(&person), ["5", "80"]);
    person.press("finish").unwrap();
    person.press("amounts-later").unwrap();
    person.press("next_sides-left").unwrap();
    person.press("start").unwrap();
    assert_eq!(levels(&person), ["not set", "not set"], "one side is another setting than two");
}

#[test]
fn presses_of_a_dial_within_seconds_are_one_change_of_setting() {
    let mut person = person();
    person.press("start").unwrap();
    for _ in 0..4 {
        person.press("mark-stronger").unwrap();
        person.wait(Span::seconds(2)).unwrap();
    }
    person.wait(Span::minutes(1)).unwrap();
    person.press("mark-stronger").unwrap();
    let session = person.only("session").unwrap();
    let levels: Vec<&Value> = session["marks"].as_object().unwrap().values().filter_map(|m| m.get("level")).collect();
    assert_eq!(levels, [4, 5]);
}

#[test]
fn the_dial_stops_at_the_top_of_the_pump() {
    let mut person = person();
    person.import_file(PUMP).unwrap();
    person.press("place-now").unwrap();
    person.press("start").unwrap();
    for _ in 0..9 {
        person.press("mark-stronger").unwrap();
    }
    assert!(!person.find("mark-stronger").unwrap().unwrap().open);
    assert!(person.press("mark-stronger").is_err());
}

#[test]
fn amounts_can_wait_and_a_quiet_line_says_which_sessions_lack_theirs() {
    let mut person = person();
    person.press("start").unwrap();
    person.wait(Span::minutes(15)).unwrap();
    person.press("finish").unwrap();
    person.press("amounts-later").unwrap();
    let line = |person: &Person| person.frame().unwrap().notices.iter().map(|n| n.text.clone()).collect::<Vec<_>>();
    assert_eq!(line(&person), ["One session has no amount yet."]);
    person.press("open-lacking").unwrap();
    person.draws(Part::Left, 0.5).unwrap();
    person.press("amount-right-unknown").unwrap();
    person.press("place-now").unwrap();
    assert_eq!(line(&person), Vec::<String>::new(), "what is unknown for good is not waited for");
}

#[test]
fn the_amounts_are_asked_for_half_an_hour_and_then_left_alone() {
    let mut person = person();
    person.press("start").unwrap();
    person.wait(Span::minutes(15)).unwrap();
    person.press("finish").unwrap();
    person.wait(Span::minutes(30)).unwrap();
    assert!(matches!(person.screen().unwrap(), Screen::Amounts { .. }));
    person.wait(Span::minutes(1)).unwrap();
    assert!(matches!(person.screen().unwrap(), Screen::Ready { .. }));
}

#[test]
fn one_side_alone_asks_for_one_amount() {
    let mut person = person();
    person.press("next_sides-right").unwrap();
    person.press("start").unwrap();
    person.press("finish").unwrap();
    let Screen::Amounts { amounts, .. } = person.screen().unwrap() else { panic!("asks for amounts") };
    assert_eq!(amounts.columns.iter().map(|c| c.column.part).collect::<Vec<_>>(), [Part::Right]);
    assert!(amounts.together.options.is_empty());
}

#[test]
fn what_is_measured_together_is_not_split_by_the_program() {
    let mut person = person();
    person.press("start").unwrap();
    person.press("finish").unwrap();
    person.press("amounts-together").unwrap();
    person.press("amount-together-more").unwrap();
    person.press("amounts-done").unwrap();
    let session = person.only("session").unwrap();
    assert_eq!(session["amount_together"]["typed"], "5");
    assert_eq!((session.get("amount_left"), session.get("amount_right")), (None, None));
}

#[test]
fn a_feed_at_the_breast_is_not_asked_for_an_amount() {
    let mut person = person();
    person.press("next_method-at_breast").unwrap();
    person.press("start").unwrap();
    person.wait(Span::minutes(9)).unwrap();
    person.press("finish").unwrap();
    assert!(matches!(person.screen().unwrap(), Screen::Ready { .. }));
    assert!(person.frame().unwrap().notices.is_empty());
}

#[test]
fn start_asks_the_host_for_one_alarm_and_a_lit_screen_and_finish_lets_go_of_both() {
    let mut person = person();
    person.press("start").unwrap();
    let two_hours = person.now().plus(Span::hours(2)).unix_milliseconds();
    assert!(person.effects.iter().any(|e| matches!(e,
        Effect::SetAlarm { key, unix_milliseconds, .. } if key == "session-running" && *unix_milliseconds == two_hours)));
    assert!(person.effects.contains(&Effect::KeepScreenOn { on: true }));
    person.effects.clear();
    person.press("finish").unwrap();
    assert!(person.effects.contains(&Effect::ClearAlarm { key: "session-running".to_owned() }));
    assert!(person.effects.contains(&Effect::KeepScreenOn { on: false }));
}

#[test]
fn a_second_start_does_not_make_a_second_session() {
    let mut person = person();
    person.press("start").unwrap();
    person.send(Event::Start).unwrap();
    assert!(person.only("session").is_ok());
}

const PUMP: &[u8] = br#"{"fact":"pump","id":"pump-1","name":"Marl","levels":9,"cycles_low":{"value":40,"unit":"/min"},"cycles_high":{"value":120,"unit":"/min"}}"#;

/// One side, then the other: one session, each change a fact, and both sides asked for.
#[test]
fn a_session_can_change_its_side() {
    let mut person = person();
    person.press("next_sides-left").unwrap();
    person.press("start").unwrap();
    person.wait(Span::minutes(8)).unwrap();
    assert_eq!(person.find("mark-other-side").unwrap().unwrap().detail, "to Right");
    person.press("mark-other-side").unwrap();
    assert!(person.frame().unwrap().subtitle.starts_with("Right,"), "{}", person.frame().unwrap().subtitle);
    assert_eq!(person.find("mark-other-side").unwrap().unwrap().detail, "to Left", "and back");
    person.wait(Span::minutes(7)).unwrap();
    person.press("finish").unwrap();
    let Screen::Amounts { amounts, .. } = person.screen().unwrap() else { panic!("asks for amounts") };
    assert_eq!(amounts.columns.iter().map(|c| c.column.part).collect::<Vec<_>>(), [Part::Left, Part::Right]);
    let session = person.only("session").unwrap();
    assert_eq!(session["sides"], "both");
    let sides: Vec<_> = session["marks"].as_object().unwrap().values().filter(|m| m["does"] == "other_side").collect();
    assert_eq!(sides.len(), 1);
    assert_eq!(sides[0]["side"], "right");
}

#[test]
fn a_change_of_side_is_taken_back_whole_and_not_offered_where_both_go_at_once() {
    let mut person = person();
    person.press("start").unwrap();
    assert_eq!(person.find("mark-other-side").unwrap(), None, "both at once");
    let refused = person.send(Event::Mark { deed: drawwell_core::screen::shapes::Deed::ChangeSide }).unwrap_err();
    assert_eq!(refused.key, "bad-both-sides");
    person.press("undo").unwrap();
    person.press("next_sides-right").unwrap();
    person.press("start").unwrap();
    person.press("mark-other-side").unwrap();
    person.press("undo").unwrap();
    assert_eq!(person.only("session").unwrap()["sides"], "right");
    assert_eq!(person.find("mark-other-side").unwrap().unwrap().detail, "to Left");
}

/// A length that somebody wishes is shown, and nothing else.
#[test]
fn a_wished_length_is_shown_beside_the_time() {
    let mut person = person();
    person
        .send(Event::Enter { id: "settings".to_owned(), field: "session_length".to_owned(), typed: "0:20".to_owned() })
        .unwrap();
    person.press("place-now").unwrap();
    person.press("start").unwrap();
    let Screen::Running { running, .. } = person.screen().unwrap() else { panic!() };
    assert!(running.caption.ends_with("of 20 min"), "{}", running.caption);
    assert!(running.strip.key.is_empty() || !running.strip.key.contains("letdown"), "{}", running.strip.key);
    person.press("mark-letdown").unwrap();
    let Screen::Running { running, .. } = person.screen().unwrap() else { panic!() };
    assert!(running.strip.key.contains("letdown"), "{}", running.strip.key);
}
