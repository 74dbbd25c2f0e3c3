//! The day: sums by the clock with what is unknown said; entries that can be
//! corrected, moved, taken out and brought back.

use drawwell_core::screen::shapes::{DayScreen, Event, FieldKind, FormScreen, Place, Screen};
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
    let details: Vec<_> = day(&mut person, 1).entries.iter().map(|entry| entry.detail.clone()).collect();
    assert!(details.contains(&"Left · length not known".into()), "a length nobody wrote is unknown: {details:?}");
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

/// The labels of the days that can be chosen, and which one is seen.
fn choices(person: &mut Person) -> (Vec<String>, Vec<String>) {
    let Screen::Day { day, .. } = person.screen().unwrap() else { panic!("a day") };
    let chosen = day.choice.days.iter().filter(|day| day.chosen).map(|day| day.label.clone()).collect();
    (day.choice.days.iter().map(|day| day.label.clone()).collect(), chosen)
}

#[test]
fn days_of_a_week_are_one_tap_away_by_their_names_and_others_by_weeks() {
    let mut person = person();
    person.open_day(0).unwrap();
    let (days, chosen) = choices(&mut person);
    assert_eq!(days[..3], ["Today", "Yesterday", "Saturday 28 February"]);
    assert_eq!(chosen, ["Today"]);
    assert!(!days.iter().any(|day| day == "A week after"), "nothing lies ahead of today");
    person.press("day-weeks-back").unwrap();
    person.press("day-week-back").unwrap();
    assert_eq!(person.frame().unwrap().title, "Monday 26 January", "35 days before 2 March");
    assert_eq!(choices(&mut person).1, [""; 0]);
    person.press("day-week-on").unwrap();
    assert_eq!(person.frame().unwrap().title, "Monday 2 February");
    person.press("day-1").unwrap();
    assert_eq!(person.frame().unwrap().title, "Yesterday");
    assert_eq!(choices(&mut person).1, ["Yesterday"]);
}

#[test]
fn a_day_of_another_year_says_its_year() {
    let mut person = person();
    assert_eq!(frame_title(&mut person, 61), "31 December 2025");
    assert_eq!(frame_title(&mut person, 60), "Thursday 1 January");
}

fn frame_title(person: &mut Person, days_back: u32) -> String {
    person.show(&Place::Day { days_back }).unwrap().frame().title.clone()
}

#[test]
fn each_session_says_its_sides_where_they_were_measured_apart() {
    let day = day(&mut person(), 0);
    let sides: Vec<_> = day.entries.iter().map(|e| e.sides.as_str()).collect();
    assert_eq!(sides, ["", "", "Left 30 mL · Right not known", "Left 50 mL · Right 40 mL"]);
    assert!(day.entries[3].spoken.contains("Left 50 mL · Right 40 mL"));
}

/// The form of an entry: its groups in order, and the row of a field.
fn form(person: &mut Person) -> FormScreen {
    match person.screen().unwrap() {
        Screen::Form { form, .. } => form.clone(),
        screen => panic!("{screen:?}"),
    }
}

fn value(form: &FormScreen, field: &str) -> String {
    let rows = form.groups.iter().flat_map(|group| &group.rows);
    rows.into_iter().find(|row| row.field == field).unwrap().value.clone()
}

#[test]
fn the_amount_comes_first_and_days_are_chosen_by_name() {
    let mut person = person();
    person.send(Event::Go { place: Place::Entry { id: "a".to_owned() } }).unwrap();
    assert_eq!(form(&mut person).groups[0].key, "amount");
    let form = form(&mut person);
    let row = form.groups.iter().flat_map(|group| &group.rows).find(|row| row.field == "started/date").unwrap();
    assert_eq!((row.kind, row.value.as_str()), (FieldKind::Day, "Today"));
    assert_eq!(row.options.iter().map(|day| day.label.as_str()).collect::<Vec<_>>(), ["Today", "Yesterday"]);
    person.press("started/date-2026-03-01").unwrap();
    assert_eq!(day(&mut person, 1).figure, "90 mL");
    person.press("less-started/date").unwrap();
    assert_eq!(day(&mut person, 2).figure, "90 mL");
}

/// A session of the day before yesterday is logged where nothing else can have been: the longest
/// time between two sessions. The present is where one of today begins.
#[test]
fn a_session_of_a_past_day_begins_in_the_middle_of_its_longest_gap() {
    let begins = |sessions: &[(&str, &str)]| {
        let mut person = Person::welcomed("2026-03-02T12:00:00+01:00", "Europe/Berlin").unwrap();
        let mut file = String::new();
        for (number, (from, until)) in sessions.iter().enumerate() {
            file += &format!(
                r#"{{"fact":"session","id":"s{number}","started":{{"at":"{from}:00+01:00","zone":"Europe/Berlin"}},"ended":{{"at":"{until}:00+01:00","zone":"Europe/Berlin"}},"method":"electric_pump","sides":"both"}}"#
            );
            file.push('\n');
        }
        if !file.is_empty() {
            person.import_file(file.as_bytes()).unwrap();
        }
        person.send(Event::Add { kind: "session".into(), days_back: 2 }).unwrap();
        let form = form(&mut person);
        format!("{} {}", value(&form, "started/date"), value(&form, "started"))
    };
    assert_eq!(begins(&[]), "Saturday 28 February 12:00", "the middle of an empty day");
    let day = [
        ("2026-02-28T06:00", "2026-02-28T06:20"),
        ("2026-02-28T09:00", "2026-02-28T09:20"),
        ("2026-02-28T15:00", "2026-02-28T15:20"),
        ("2026-02-28T18:00", "2026-02-28T18:20"),
        ("2026-03-01T01:00", "2026-03-01T01:30"),
    ];
    assert_eq!(begins(&day), "Saturday 28 February 21:40", "between 18:20 and 1:00");
    assert_eq!(begins(&day[..4]), "Saturday 28 February 03:00", "before 6:00, where the days around are empty");
    let around = [
        ("2026-02-27T22:00", "2026-02-27T22:00"),
        ("2026-02-28T10:00", "2026-02-28T10:20"),
        ("2026-02-28T14:00", "2026-02-28T14:20"),
        ("2026-02-28T20:00", "2026-02-28T20:20"),
        ("2026-03-01T02:00", "2026-03-01T02:20"),
    ];
    assert_eq!(begins(&around), "Saturday 28 February 04:00", "the night from 22:00 to 10:00");
    // A gap that has its middle in the day before is that day's.
    let other = [
        ("2026-02-27T14:00", "2026-02-27T14:00"),
        ("2026-02-28T06:00", "2026-02-28T06:20"),
        ("2026-02-28T12:00", "2026-02-28T12:20"),
        ("2026-02-28T20:00", "2026-02-28T20:20"),
        ("2026-03-01T02:00", "2026-03-01T02:20"),
    ];
    assert_eq!(begins(&other), "Saturday 28 February 16:10", "between 12:20 and 20:00");
}

#[test]
fn a_session_of_today_begins_now() {
    let mut person = person();
    person.send(Event::Add { kind: "session".into(), days_back: 0 }).unwrap();
    assert_eq!(value(&form(&mut person), "started"), "12:00");
}
