//! The day: sums by the clock with what is unknown said; entries that can be
//! corrected, moved, taken out and brought back.

use drawwell_core::screen::shapes::{DayScreen, Event, Place, Screen};
use drawwell_core::time::Span;
use drawwell_tests::person::Person;

fn person() -> Person {
    let mut person = Person::welcomed("2026-03-02T12:00:00+01:00", "Europe/Berlin").unwrap();
    person.import_file(DAY).unwrap();
    person
}

fn day(person: &mut Person, days_back: u32) -> DayScreen {
    match person.show(&Place::Day { days_back }).unwrap() {
        Screen::Day { day, .. } => day,
        _ => panic!("a day"),
    }
}

const DAY: &[u8] = br#"{"fact":"session","id":"a","started":{"at":"2026-03-02T02:00:00+01:00","zone":"Europe/Berlin"},"ended":{"at":"2026-03-02T02:20:00+01:00","zone":"Europe/Berlin"},"method":"electric_pump","sides":"both","amount_left":{"value":50,"unit":"mL"},"amount_right":{"value":40,"unit":"mL"}}
{"fact":"session","id":"b","started":{"at":"2026-03-02T05:00:00+01:00","zone":"Europe/Berlin"},"ended":{"at":"2026-03-02T05:20:00+01:00","zone":"Europe/Berlin"},"method":"electric_pump","sides":"both","amount_left":{"value":30,"unit":"mL"},"amount_right":{"said":"unknown"}}
{"fact":"session","id":"c","started":{"at":"2026-03-02T08:00:00+01:00","zone":"Europe/Berlin"},"ended":{"at":"2026-03-02T08:20:00+01:00","zone":"Europe/Berlin"},"method":"electric_pump","sides":"both","amount_together":{"value":70,"unit":"mL"}}
{"fact":"session","id":"d","started":{"at":"2026-03-02T09:00:00+01:00","zone":"Europe/Berlin"},"ended":{"at":"2026-03-02T09:10:00+01:00","zone":"Europe/Berlin"},"method":"at_breast","sides":"left"}"#;

#[test]
fn sums_are_of_what_is_known_and_say_what_is_not_in_them() {
    let day = day(&mut person(), 0);
    assert_eq!(day.figure, "at least 190 mL");
    assert_eq!(day.caption, "3 sessions, one amount not known. The total is at least this.");
    let sides: Vec<_> = day.sides.iter().map(|s| (s.label.as_str(), s.text.as_str(), s.note.as_str())).collect();
    assert_eq!(sides, [("Left", "80 mL", ""), ("Right", "40 mL", "one not known"), ("Together", "70 mL", "")]);
}

#[test]
fn a_session_of_which_half_is_known_says_so() {
    let day = day(&mut person(), 0);
    let amounts: Vec<_> = day.entries.iter().map(|e| e.amount.as_str()).collect();
    assert_eq!(amounts, ["not weighed", "70 mL", "30 mL + ?", "90 mL"], "latest first");
    assert_eq!(day.picture.bars.iter().map(|b| b.open).collect::<Vec<_>>(), [false, true, false, false]);
}

#[test]
fn a_day_without_sessions_has_no_figure_rather_than_nought() {
    let day = day(&mut person(), 1);
    assert_eq!(day.figure, "–");
    assert!(day.empty.contains("something may be missing"));
}

#[test]
fn a_feed_at_the_breast_adds_nothing_to_what_was_collected() {
    let mut person = person();
    person.send(Event::Remove { id: "d".to_owned() }).unwrap();
    assert_eq!(day(&mut person, 0).figure, "at least 190 mL");
}

#[test]
fn an_entry_is_corrected_and_what_was_typed_comes_back_as_typed() {
    let mut person = person();
    person.send(Event::Go { place: Place::Entry { id: "a".to_owned() } }).unwrap();
    person.enter("amount_left", "2 fl oz").unwrap();
    let record = person.record().unwrap();
    assert!(record.contains(r#""amount_left":{"typed":"2","typed_unit":"[foz_us]","unit":"mL","value":59.147059125}"#));
    assert_eq!(day(&mut person, 0).sides[0].text, "89 mL");
}

#[test]
fn moving_a_session_to_another_day_takes_its_end_with_it() {
    let mut person = person();
    person.send(Event::Go { place: Place::Entry { id: "a".to_owned() } }).unwrap();
    person.enter("started/date", "2026-03-01").unwrap();
    assert_eq!(day(&mut person, 1).figure, "90 mL");
    assert_eq!(day(&mut person, 0).figure, "at least 100 mL");
    let record = person.record().unwrap();
    assert!(record.contains(r#""ended":{"at":"2026-03-01T02:20:00.000+01:00""#));
}

#[test]
fn an_earlier_start_lengthens_and_a_later_end_crosses_midnight() {
    let mut person = person();
    person.send(Event::Go { place: Place::Entry { id: "a".to_owned() } }).unwrap();
    person.enter("started", "1:50").unwrap();
    let length = |person: &mut Person| day(person, 0).entries[3].detail.clone();
    assert_eq!(length(&mut person), "Both · 30 min");
    person.enter("started/date", "2026-03-01").unwrap();
    person.enter("started", "23:50").unwrap();
    person.enter("ended", "0:20").unwrap();
    assert_eq!(day(&mut person, 1).entries[0].detail, "Both · 30 min");
}

#[test]
fn taken_out_counts_nowhere_and_can_be_brought_back() {
    let mut person = person();
    person.open_day(0).unwrap();
    person.press("open-a").unwrap();
    person.press("take-out").unwrap();
    assert!(matches!(person.screen().unwrap(), Screen::Day { .. }), "back in the day");
    let without = day(&mut person, 0);
    assert_eq!((without.figure.as_str(), without.taken_out.len()), ("at least 100 mL", 1));
    person.press("bring-back-a").unwrap();
    let with = day(&mut person, 0);
    assert_eq!((with.figure.as_str(), with.taken_out.len()), ("at least 190 mL", 0));
}

#[test]
fn two_sessions_that_overlap_on_one_side_are_shown_as_such_and_kept() {
    let mut person = person();
    person.send(Event::Go { place: Place::Entry { id: "b".to_owned() } }).unwrap();
    person.enter("started", "2:10").unwrap();
    person.enter("ended", "2:30").unwrap();
    let day = day(&mut person, 0);
    let cares: Vec<_> = day.entries.iter().map(|e| (e.id.as_str(), e.care.as_str())).collect();
    assert_eq!(cares[2..], [("b", "overlaps another"), ("a", "overlaps another")]);
    assert_eq!(day.figure, "at least 190 mL", "both are kept and counted");
}

#[test]
fn sessions_that_meet_end_to_start_do_not_overlap() {
    let mut person = person();
    person.send(Event::Go { place: Place::Entry { id: "b".to_owned() } }).unwrap();
    person.enter("started", "2:20").unwrap();
    person.enter("ended", "2:40").unwrap();
    assert!(day(&mut person, 0).entries.iter().all(|e| e.care.is_empty()));
}

#[test]
fn anything_can_be_entered_afterwards() {
    let mut person = person();
    for kind in ["session", "feed", "sign", "note"] {
        person.open_day(0).unwrap();
        person.press("day-earlier").unwrap();
        person.press(&format!("add-{kind}")).unwrap();
        assert!(matches!(person.screen().unwrap(), Screen::Form { .. }), "{kind}");
    }
    assert_eq!(day(&mut person, 1).entries.len(), 4);
    assert_eq!(day(&mut person, 1).entries[3].detail, "Left · length not known", "a length nobody wrote is unknown");
}

#[test]
fn a_session_written_down_afterwards_never_runs() {
    let mut person = person();
    person.open_day(0).unwrap();
    person.press("add-session").unwrap();
    person.press("place-now").unwrap();
    assert!(matches!(person.screen().unwrap(), Screen::Ready { .. }));
}

#[test]
fn signs_and_temperature_are_told_in_the_unit_that_was_chosen() {
    let mut person = person();
    person.open_day(0).unwrap();
    person.press("add-sign").unwrap();
    person.enter("temperature", "101.3 F").unwrap();
    person.press("redness-left").unwrap();
    let day = day(&mut person, 0);
    assert_eq!((day.entries[0].amount.as_str(), day.entries[0].detail.as_str()), ("38.5 °C", "Redness (left)"));
}

#[test]
fn back_leads_to_where_an_entry_was_opened_from() {
    let mut person = person();
    person.open_day(0).unwrap();
    person.press("open-a").unwrap();
    person.press("back").unwrap();
    assert!(matches!(person.screen().unwrap(), Screen::Day { .. }));
    person.wait(Span::minutes(1)).unwrap();
    assert!(person.frame().unwrap().back.is_some(), "a day leads back to the first place");
}
